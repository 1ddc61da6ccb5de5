//! A shot with its ball weighed as it is thrown.

use physics::roll::RigidBall;
use physics::weigh::{Weighed, weigh};
use physics::why::Thrown;

use crate::ball::BallFile;
use crate::phrase;
use crate::problem::Problem;
use crate::shot::{BallRef, ShotFile, Throw};

/// A shot with its ball, drilled as the shot says, weighed.
#[derive(Clone, Debug, PartialEq)]
pub struct WeighedShot {
    /// The ball as it is thrown.
    pub ball: BallFile,
    /// How it is thrown.
    pub throw: Throw,
    /// What the ball weighs as it is thrown.
    pub weighed: Weighed,
}

impl ShotFile {
    /// Drills and weighs the ball that stands in this file.
    ///
    /// # Errors
    /// A mistake in the ball or its drilling, with its place; a ball given as a
    /// path, which whoever reads files has to read.
    pub fn weighed(&self) -> Result<WeighedShot, Problem> {
        let file = match &self.ball {
            BallRef::Object(file) => file,
            BallRef::Path(path) => {
                return Err(Problem::new(
                    "ball",
                    format!("{path:?}").into(),
                    phrase!("ball-itself", "the ball itself"),
                ));
            }
        };
        let ball = match self.throw.laid() {
            Some(laid) => laid.drill(file)?.file,
            None => BallFile::clone(file),
        };
        let built = ball.build().map_err(|problem| problem.within("ball"))?;
        Ok(WeighedShot { weighed: weigh(&built), ball, throw: self.throw.clone() })
    }
}

impl WeighedShot {
    /// Ball and shot as physics takes them.
    ///
    /// # Errors
    /// Where the lane is wrong, or its oil is given as a path.
    pub fn thrown(&self) -> Result<Thrown, Problem> {
        Ok(Thrown { ball: RigidBall::from(&self.weighed), shot: self.throw.shot(&self.ball.cover)? })
    }
}
