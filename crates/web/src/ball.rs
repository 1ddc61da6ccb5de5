//! A ball the page holds.

use format::{
    BallFile, CheckedDoc, CoverDoc, DrilledBall, DrilledDoc, Laid, Problem, RolledDoc, SAMPLE_INTERVAL_S, SectionDoc,
    Throw, WeighedDoc, part_number, phrase,
};
use nalgebra::Vector3;
use physics::cover::{Poured, Under};
use physics::drill::statics;
use physics::roll::{RigidBall, trace};
use physics::section::{Plane, section};
use physics::units::M_PER_IN;
use physics::weigh::{Weighed, weigh};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::wire::{json_text, thrown, to_page};

/// A ball built and weighed, drilled or not.
#[wasm_bindgen]
pub struct Ball {
    pub(crate) ball: physics::ball::Ball,
    pub(crate) file: BallFile,
    /// Before inserts; none in a ball without.
    bare: Option<Bare>,
    pub(crate) weighed: Weighed,
    pub(crate) drilled: Option<Drilled>,
}

/// A ball before inserts: what lines a hole is no core under the cover.
pub(crate) struct Bare {
    file: BallFile,
    ball: physics::ball::Ball,
}

/// How a ball was drilled, and what it was before.
pub(crate) struct Drilled {
    laid: Laid,
    pub(crate) drilling: physics::drill::Drilling,
    file: BallFile,
    weighed: Weighed,
}

#[wasm_bindgen]
impl Ball {
    /// Builds the ball of a file, given as text or object.
    ///
    /// # Errors
    /// A `Problem` where the file or the ball is wrong.
    #[wasm_bindgen(constructor)]
    pub fn new(file: &JsValue) -> Result<Ball, JsValue> {
        let file = BallFile::read(json_text(file)?.as_bytes()).map_err(thrown)?;
        Self::made(file, None)
    }

    /// This ball drilled as a shot file says; the ball as it is where the shot
    /// drills nothing. A drilled ball is drilled afresh from what it was before.
    ///
    /// # Errors
    /// A `Problem` where the shot is wrong or cannot be drilled.
    pub fn drilled(&self, shot: &JsValue) -> Result<Ball, JsValue> {
        let throw = Throw::read(json_text(shot)?.as_bytes()).map_err(thrown)?;
        self.drilled_for(&throw)
    }

    /// What drilling did, as a `Drilled`; null for a ball not drilled by a shot.
    ///
    /// # Errors
    /// None in practice: only where the page cannot take an object.
    pub fn drilling(&self) -> Result<JsValue, JsValue> {
        let doc = self.drilled.as_ref().zip(self.as_drilled());
        let doc = doc.map(|(from, made)| DrilledDoc::new(&from.file, &from.weighed, &made, &self.weighed));
        to_page(&doc)
    }

    /// The ball's file, with the holes and inserts that were drilled.
    ///
    /// # Errors
    /// None in practice: only where the page cannot take an object.
    pub fn file(&self) -> Result<JsValue, JsValue> {
        to_page(&self.file)
    }

    /// What the ball weighs, as a `Weighed`.
    ///
    /// # Errors
    /// None in practice: only where the page cannot take an object.
    pub fn weigh(&self) -> Result<JsValue, JsValue> {
        to_page(&WeighedDoc::new(&self.file, &self.weighed))
    }

    /// The ball against every published limit, as a `Checked`.
    ///
    /// # Errors
    /// None in practice: only where the page cannot take an object.
    pub fn check(&self) -> Result<JsValue, JsValue> {
        let statics = self.drilled.as_ref().map(|drilled| statics(&self.weighed, &drilled.drilling.marks));
        let findings = physics::spec::check(&self.file.recipe(), &self.weighed, statics.as_ref());
        to_page(&CheckedDoc::new(&self.file, &findings))
    }

    /// The ball's cover, as a `Cover`: before inserts, where it has any.
    ///
    /// # Errors
    /// None in practice: only where the page cannot take an object.
    pub fn cover(&self) -> Result<JsValue, JsValue> {
        to_page(&CoverDoc::new(&self.file, self.before_inserts().1))
    }

    /// Thickness of the cover in a direction in inches, the radius where no piece
    /// lies below; NaN where a hole opens and where the direction is none.
    pub fn cover_along(&self, direction: &[f64]) -> f64 {
        let direction = vector(direction).filter(|direction| direction.norm() > 0.0);
        let under = direction.map(|direction| Poured::new(self.before_inserts().1).under(&direction));
        under.as_ref().and_then(Under::cover_m).map_or(f64::NAN, |cover_m| cover_m / M_PER_IN)
    }

    /// The flat cut across `normal` at `depth_in` from the centre, as a `Section`.
    ///
    /// # Errors
    /// A `Problem` where the plane has no direction or no place.
    pub fn section(&self, normal: &[f64], depth_in: f64) -> Result<JsValue, JsValue> {
        let plane = vector(normal).and_then(|normal| Plane::new(normal, depth_in * M_PER_IN)).ok_or_else(|| {
            let found = phrase!("plane-at", "{normal} at {depth}", normal = format!("{normal:?}"), depth = depth_in);
            let accepted = phrase!("a-plane", "three finite numbers, not all 0, and a finite depth");
            let problem = Problem::new("plane", found, accepted);
            thrown(problem.saying(phrase!("no-plane", "The saw plane has no direction.")))
        })?;
        let poured = Poured::new(self.before_inserts().1);
        to_page(&SectionDoc::new(&self.file, &poured, &section(&self.ball, plane)))
    }

    /// Rolls the ball, drilled as the shot says, as a `Roll`.
    ///
    /// # Errors
    /// A `Problem` where the shot is wrong or cannot be followed.
    pub fn roll(&self, shot: &JsValue) -> Result<JsValue, JsValue> {
        let throw = Throw::read(json_text(shot)?.as_bytes()).map_err(thrown)?;
        let shot = throw.shot(&self.file.cover).map_err(thrown)?;
        let other = self.other_for(&throw)?;
        let ball = other.as_ref().unwrap_or(self);
        let traced = trace(&RigidBall::from(&ball.weighed), &shot, SAMPLE_INTERVAL_S)
            .map_err(|error| thrown(Problem::from(&error)))?;
        to_page(&RolledDoc::new(&ball.file, &traced))
    }

    /// Number of the part at a point of the ball in inches; −1 outside the
    /// ball, in a hole, or where the point is no point.
    pub fn part_at(&self, at_in: &[f64]) -> i32 {
        vector(at_in)
            .and_then(|at_in| self.ball.part_at(&(at_in * M_PER_IN)))
            .and_then(|part| i32::try_from(part_number(part)).ok())
            .unwrap_or(-1)
    }
}

impl Ball {
    fn as_drilled(&self) -> Option<DrilledBall> {
        let Drilled { drilling, .. } = self.drilled.as_ref()?;
        Some(DrilledBall { file: self.file.clone(), drilling: drilling.clone() })
    }

    fn made(file: BallFile, drilled: Option<Drilled>) -> Result<Self, JsValue> {
        let ball = file.build().map_err(thrown)?;
        let weighed = weigh(&ball);
        let bare = Bare::of(&file)?;
        Ok(Self { ball, file, bare, weighed, drilled })
    }

    /// The ball whose cover is measured: file and ball.
    pub(crate) fn before_inserts(&self) -> (&BallFile, &physics::ball::Ball) {
        self.bare.as_ref().map_or((&self.file, &self.ball), |bare| (&bare.file, &bare.ball))
    }

    /// The ball drilled as a throw says; none where this one is.
    pub(crate) fn other_for(&self, throw: &Throw) -> Result<Option<Self>, JsValue> {
        if throw.laid().as_ref() == self.drilled.as_ref().map(|drilled| &drilled.laid) {
            return Ok(None);
        }
        self.drilled_for(throw).map(Some)
    }

    fn drilled_for(&self, throw: &Throw) -> Result<Self, JsValue> {
        let (file, weighed) = match &self.drilled {
            Some(drilled) => (&drilled.file, &drilled.weighed),
            None => (&self.file, &self.weighed),
        };
        let Some(laid) = throw.laid() else {
            let (ball, bare) = (file.build().map_err(thrown)?, Bare::of(file)?);
            return Ok(Self { ball, file: file.clone(), bare, weighed: weighed.clone(), drilled: None });
        };
        let DrilledBall { file: made, drilling } = laid.drill(file).map_err(thrown)?;
        Self::made(made, Some(Drilled { laid, drilling, file: file.clone(), weighed: weighed.clone() }))
    }
}

impl Bare {
    fn of(file: &BallFile) -> Result<Option<Self>, JsValue> {
        let bare = file.before_inserts();
        if bare == *file {
            return Ok(None);
        }
        Ok(Some(Self { ball: bare.build().map_err(thrown)?, file: bare }))
    }
}

fn vector(numbers: &[f64]) -> Option<Vector3<f64>> {
    <[f64; 3]>::try_from(numbers).ok().map(Vector3::from)
}
