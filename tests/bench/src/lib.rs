//! What `cargo xtask bench` times, natively and in a browser: the same code on
//! the same files, without reading them and without turning results into JSON.

use std::hint::black_box;

use format::{BallFile, Lane, OilFile, OilRef, ShotFile};
use physics::ball::Ball;
use physics::roll::{RigidBall, Shot, roll};
use physics::weigh::weigh;
use wasm_bindgen::prelude::wasm_bindgen;

/// A ball to be weighed again and again.
#[wasm_bindgen]
pub struct Weighing(Ball);

#[wasm_bindgen]
impl Weighing {
    /// From the text of a ball file.
    ///
    /// # Errors
    /// What is wrong with the file.
    #[wasm_bindgen(constructor)]
    pub fn new(ball: &str) -> Result<Self, String> {
        read_ball(ball).map(Self)
    }

    /// Weighs the ball so many times; the sum of the masses in kilograms.
    pub fn run(&self, times: u32) -> f64 {
        (0..times).map(|_| weigh(black_box(&self.0)).mass_kg).sum()
    }

    /// The bound on the relative error that weighing reports.
    pub fn error(&self) -> String {
        format!("{:.1e}", weigh(&self.0).relative_error)
    }
}

/// A shot to be rolled again and again.
#[wasm_bindgen]
pub struct Rolling {
    ball: RigidBall,
    shot: Shot,
}

#[wasm_bindgen]
impl Rolling {
    /// From the text of a ball file, of a shot file, whose own ball is not
    /// looked at, and of the oil file that the shot names, if it does.
    ///
    /// # Errors
    /// What is wrong with a file.
    #[wasm_bindgen(constructor)]
    pub fn new(ball: &str, shot: &str, oil: Option<String>) -> Result<Self, String> {
        let said = |problem: format::Problem| problem.to_string();
        let cover = BallFile::read(ball.as_bytes()).map_err(said)?.cover;
        let ball = RigidBall::from(&weigh(&read_ball(ball)?));
        let mut file = ShotFile::read(shot.as_bytes()).map_err(said)?;
        if let (Lane::Oiled(lane), Some(oil)) = (&mut file.throw.lane, oil) {
            lane.oil = OilRef::Object(Box::new(OilFile::read(oil.as_bytes()).map_err(said)?));
        }
        Ok(Self { ball, shot: file.throw.shot(&cover).map_err(said)? })
    }

    /// Rolls the shot so many times; the sum of the times on the lane in seconds.
    ///
    /// # Errors
    /// Where the motion cannot be followed.
    pub fn run(&self, times: u32) -> Result<f64, String> {
        let once = |_| roll(&self.ball, black_box(&self.shot)).map(|summary| summary.end_time_s);
        (0..times).map(once).sum::<Result<f64, _>>().map_err(|error| error.to_string())
    }

    /// The bounds on the error at the pins that rolling reports.
    ///
    /// # Errors
    /// Where the motion cannot be followed.
    pub fn error(&self) -> Result<String, String> {
        let summary = roll(&self.ball, &self.shot).map_err(|error| error.to_string())?;
        Ok(summary.at_pins.map_or_else(
            || "not at the pins".into(),
            |pins| format!("{:.1e} board, {:.1e}°", pins.board_error, pins.entry_angle_error_rad.to_degrees()),
        ))
    }
}

fn read_ball(text: &str) -> Result<Ball, String> {
    let file = BallFile::read(text.as_bytes()).map_err(|problem| problem.to_string())?;
    file.build().map_err(|problem| problem.to_string())
}
