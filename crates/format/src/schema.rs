//! JSON Schemas of the files, generated from the types.

use schemars::generate::SchemaSettings;
use schemars::transform::{Transform, transform_subschemas};
use schemars::{JsonSchema, Schema};
use serde_json::{Value, json};

use crate::ball::BallFile;
use crate::laid::LayoutFile;
use crate::lesson::LessonFile;
use crate::oil::OilFile;
use crate::progress::ProgressFile;
use crate::shelf::ShelfFile;
use crate::shot::ShotFile;
use crate::target::TargetFile;
use crate::tolerances::TolerancesFile;

/// JSON Schema (draft 2020-12) of the ball file.
pub fn ball_schema() -> Value {
    schema::<BallFile>("Pithball ball file")
}

/// JSON Schema (draft 2020-12) of the shot file.
pub fn shot_schema() -> Value {
    schema::<ShotFile>("Pithball shot file")
}

/// JSON Schema (draft 2020-12) of the layout file.
pub fn layout_schema() -> Value {
    schema::<LayoutFile>("Pithball layout file")
}

/// JSON Schema (draft 2020-12) of the oil file.
pub fn oil_schema() -> Value {
    schema::<OilFile>("Pithball oil file")
}

/// JSON Schema (draft 2020-12) of the shelf file.
pub fn shelf_schema() -> Value {
    schema::<ShelfFile>("Pithball shelf file")
}

/// JSON Schema (draft 2020-12) of the target file.
pub fn target_schema() -> Value {
    schema::<TargetFile>("Pithball target file")
}

/// JSON Schema (draft 2020-12) of the tolerances file.
pub fn tolerances_schema() -> Value {
    schema::<TolerancesFile>("Pithball tolerances file")
}

/// JSON Schema (draft 2020-12) of a lesson: of the head of the file with the
/// steps below its headings, each with its heading and prose, in one object.
pub fn lesson_schema() -> Value {
    schema::<LessonFile>("Pithball lesson file")
}

/// JSON Schema (draft 2020-12) of the progress file.
pub fn progress_schema() -> Value {
    schema::<ProgressFile>("Pithball progress file")
}

fn schema<T: JsonSchema>(title: &str) -> Value {
    let mut schema = SchemaSettings::draft2020_12()
        .for_serialize()
        .with_transform(WithoutNull)
        .into_generator()
        .into_root_schema_for::<T>();
    schema.insert("title".to_owned(), json!(title));
    schema.to_value()
}

/// A key that may be left out may still not be `null`.
#[derive(Clone)]
struct WithoutNull;

impl Transform for WithoutNull {
    fn transform(&mut self, schema: &mut Schema) {
        transform_subschemas(self, schema);
        if let Some(Value::Array(types)) = schema.get_mut("type") {
            types.retain(|name| name != "null");
            if let [one] = types.as_slice() {
                let one = one.clone();
                schema.insert("type".to_owned(), one);
            }
        }
        if let Some(Value::Array(any)) = schema.get_mut("anyOf") {
            any.retain(|of| of.get("type") != Some(&json!("null")));
            if let [Value::Object(one)] = any.as_slice() {
                let one = one.clone();
                schema.remove("anyOf");
                for (key, value) in one {
                    schema.insert(key, value);
                }
            }
        }
    }
}
