//! What lies under a point of the surface, along the radius.

use nalgebra::Vector3;

use crate::ball::Ball;
use crate::walk::{Crossings, Stack, Stretches};

/// A ball whose holes take away surface and nothing below it: the cover as it
/// was poured, and where holes open in it.
#[derive(Clone, Debug)]
pub struct Poured {
    pub(super) radius_m: f64,
    /// The ball without its holes; their solids stay among the solids.
    pub(super) stack: Stack,
    holes: Vec<usize>,
}

/// What lies under a point of the surface.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Under {
    /// The way in along the radius to the first piece: 0 where one comes to the
    /// surface, the radius where there is none. Under a hole's opening, what was
    /// there before it was drilled. Exact to rounding.
    pub thickness_m: f64,
    /// Straight to the wall (or bottom) of the nearest hole; below 0 where a hole opens,
    /// infinite in a ball without holes.
    pub to_hole_m: f64,
}

impl Under {
    /// The thickness, `None` where a hole opens: there is no cover to measure.
    pub fn cover_m(&self) -> Option<f64> {
        (self.to_hole_m > 0.0).then_some(self.thickness_m)
    }
}

impl Poured {
    /// Makes a ball ready to be asked about its cover.
    pub fn new(ball: &Ball) -> Self {
        let mut stack = ball.stack.clone();
        let holes = core::mem::take(&mut stack.without);
        Self { radius_m: ball.radius_m, stack, holes }
    }

    /// What lies under the surface in `direction` (any length above 0).
    pub fn under(&self, direction: &Vector3<f64>) -> Under {
        let direction = direction.normalize();
        let thickness_m = self
            .core(&Vector3::zeros(), &direction)
            .map_or(self.radius_m, |(out_m, _)| (self.radius_m - out_m).max(0.0));
        Under { thickness_m, to_hole_m: self.to_hole_m(&direction) }
    }

    /// What lies under the whole surface: row by row from the pin down, `columns`
    /// to a row from +x round towards +y, each in the middle of its patch of equal
    /// steps of angle.
    pub fn map(&self, rows: usize, columns: usize) -> Vec<Under> {
        let middle = |n: usize, of: usize, angle: f64| (n as f64 + 0.5) / of as f64 * angle;
        let mut map = Vec::with_capacity(rows * columns);
        for row in 0..rows {
            let (sine, cosine) = libm::sincos(middle(row, rows, core::f64::consts::PI));
            for column in 0..columns {
                let (s, c) = libm::sincos(middle(column, columns, core::f64::consts::TAU));
                map.push(self.under(&Vector3::new(sine * c, sine * s, cosine)));
            }
        }
        map
    }

    /// How far from a point out along a unit vector a piece reaches, and which.
    pub(super) fn core(&self, from: &Vector3<f64>, direction: &Vector3<f64>) -> Option<(f64, usize)> {
        let mut found = Stretches::new();
        self.stack.walk(from, direction, &mut Crossings::new(), &mut found);
        let last = found.iter().rev().take_while(|stretch| stretch.to > 0.0).find(|stretch| stretch.part > 0);
        last.map(|stretch| (stretch.to, stretch.part - 1))
    }

    /// [`Under::to_hole_m`] at a unit vector.
    pub(super) fn to_hole_m(&self, direction: &Vector3<f64>) -> f64 {
        let at = direction * self.radius_m;
        self.holes.iter().map(|&hole| self.stack.solids[hole].clearance(&at)).fold(f64::INFINITY, f64::min)
    }

    /// Whether no hole is drilled.
    pub(super) fn whole(&self) -> bool {
        self.holes.is_empty()
    }
}
