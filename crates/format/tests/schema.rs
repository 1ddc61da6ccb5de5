//! The published schemas are those of the code, and say what the reader says.

#![allow(clippy::expect_used, reason = "a check that fails stops its test")]

use pithball_format::{ball_schema, shot_schema};
use serde_json::Value;

const BALL: &str = include_str!("../../../schemas/ball.schema.json");
const SHOT: &str = include_str!("../../../schemas/shot.schema.json");

#[test]
fn the_published_schemas_are_those_of_the_code() {
    for (published, generated) in [(BALL, ball_schema()), (SHOT, shot_schema())] {
        let published: Value = serde_json::from_str(published).expect("a schema is JSON");
        assert_eq!(published, generated, "print it again with `pithball schema`");
    }
}
