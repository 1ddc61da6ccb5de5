//! What workers work out of a ball.

use format::{AxisAsked, BallMapDoc, FiguresDoc, LeverDoc, Throw};
use physics::ball::Part;
use physics::cover::Poured;
use physics::ladder::By;
use physics::roll::RigidBall;
use physics::units::M_PER_IN;
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;

use crate::ball::Ball;
use crate::wire::{json_text, thrown, to_page};

#[wasm_bindgen]
impl Ball {
    /// What lies under the whole surface, row by row from the pin down, each row
    /// from +x round towards +y, two numbers a place: thickness of the cover in
    /// inches (the radius where no piece lies below; in a hole's opening as it
    /// was poured) and how far it is to the nearest hole's wall (below 0 in an
    /// opening; infinite without holes). At most 360 rows and 720 columns.
    pub fn cover_map(&self, rows: u32, columns: u32) -> Vec<f64> {
        let map = Poured::new(self.before_inserts().1).map(rows.min(360) as usize, columns.min(720) as usize);
        map.iter().flat_map(|under| [under.thickness_m, under.to_hole_m]).map(|metres| metres / M_PER_IN).collect()
    }

    /// The ball at 16 to 10 lb by changing the parts of these numbers (0 is
    /// the cover), as a `Ladder`.
    ///
    /// # Errors
    /// A `Problem` where the choice makes no sense.
    pub fn ladder(&self, parts: &[u32], by_size: bool) -> Result<JsValue, JsValue> {
        let chosen: Vec<Part> = parts.iter().map(|n| n.checked_sub(1).map_or(Part::Cover, piece)).collect();
        let by = if by_size { By::Size } else { By::Density };
        to_page(&self.file.ladder(&chosen, by).map_err(thrown)?)
    }

    /// The shot's oil over games of this throw, as a `Worn`. A few milliseconds a game.
    ///
    /// # Errors
    /// A `Problem` where the shot is wrong, has no oil, or cannot be followed.
    pub fn wear(&self, shot: &JsValue, games: u32) -> Result<JsValue, JsValue> {
        let throw = Throw::read(json_text(shot)?.as_bytes()).map_err(thrown)?;
        let other = self.other_for(&throw)?;
        let ball = other.as_ref().unwrap_or(self);
        let throws = [(RigidBall::from(&ball.weighed), &ball.file.cover, &throw)];
        to_page(&format::wear(&throws, games).map_err(thrown)?)
    }

    /// What controls `from..to` move, a `Lever[]`; any worker may do any of them.
    ///
    /// # Errors
    /// None in practice: the ball is one that can be made.
    pub fn levers(&self, from: usize, to: usize) -> Result<JsValue, JsValue> {
        let levers: Vec<LeverDoc> = self.file.lever_docs(from, to).map_err(thrown)?;
        to_page(&levers)
    }

    /// What every control moves, ranked, a `Levers`.
    ///
    /// # Errors
    /// None in practice: the ball is one that can be made.
    pub fn all_levers(&self) -> Result<JsValue, JsValue> {
        let levers = self.file.lever_docs(0, self.file.controls()).map_err(thrown)?;
        to_page(&self.file.levers(levers))
    }

    /// Rows `from..to` of a map over two controls, each `(Figures | null)[]`.
    ///
    /// # Errors
    /// A `Problem` at `x` or `y` where there is no such control or range.
    #[allow(clippy::too_many_arguments, reason = "two sides of a map, flat for the page")]
    pub fn map_rows(
        &self,
        x: &str,
        x_range: &[f64],
        y: &str,
        y_range: &[f64],
        count: usize,
        from: usize,
        to: usize,
    ) -> Result<JsValue, JsValue> {
        let asked = [axis(x, x_range, count), axis(y, y_range, count)];
        to_page(&self.file.map_rows(asked, from, to).map_err(thrown)?)
    }

    /// A map without its rows: both sides, the present ball, the limits; a `BallMap`.
    ///
    /// # Errors
    /// As `map_rows`.
    pub fn map(&self, x: &str, x_range: &[f64], y: &str, y_range: &[f64], count: usize) -> Result<JsValue, JsValue> {
        let asked = [axis(x, x_range, count), axis(y, y_range, count)];
        let rows: Vec<Vec<Option<FiguresDoc>>> = Vec::new();
        let map: BallMapDoc = self.file.map(asked, rows).map_err(thrown)?;
        to_page(&map)
    }

    /// How the ball is poured, a `Poured`; a usual waste (model choice) where it is not given.
    ///
    /// # Errors
    /// A `Problem` where the waste is not 0 to 0.9.
    pub fn pour(&self, waste: Option<f64>) -> Result<JsValue, JsValue> {
        to_page(&self.file.pour(waste).map_err(thrown)?)
    }
}

fn piece(n: u32) -> Part {
    Part::Piece(n as usize)
}

fn axis<'a>(control: &'a str, range: &[f64], count: usize) -> AxisAsked<'a> {
    let end = |n: usize| range.get(n).copied().unwrap_or(f64::NAN);
    AxisAsked { control, from: end(0), to: end(1), count }
}
