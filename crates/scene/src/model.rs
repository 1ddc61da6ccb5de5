//! A ball's shapes as the picture needs them, kept while the ball stays the same.

use nalgebra::Vector3;
use physics::ball::Ball;
use physics::recipe::Recipe;

use crate::skin::{self, Mesh};
use crate::surface;

/// Room beyond a part's box within which another still lies inside it.
const SLACK_M: f64 = 1e-5;

/// Lowest and highest corner of a part.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Bounds {
    pub(crate) low: Vector3<f64>,
    pub(crate) high: Vector3<f64>,
}

impl Bounds {
    fn holds(&self, other: &Self) -> bool {
        (other.low - self.low).min() > -SLACK_M && (self.high - other.high).min() > -SLACK_M
    }
}

/// A ball, and what has been derived from it so far.
#[derive(Clone, Debug)]
pub struct Model {
    recipe: Recipe,
    ball: Ball,
    bounds: Vec<Bounds>,
}

impl Model {
    /// A ball with its recipe.
    pub fn new(recipe: &Recipe, ball: &Ball) -> Self {
        let half = Vector3::repeat(recipe.diameter_m / 2.0);
        let mut bounds = vec![Bounds { low: -half, high: half }];
        bounds.extend(recipe.pieces.iter().map(|piece| {
            let mut own = Bounds { low: half, high: -half };
            for patch in surface::piece(piece) {
                for row in 0..=patch.rows {
                    for column in 0..patch.columns {
                        let place = patch.point(row as f64, column as f64).0;
                        own = Bounds { low: own.low.inf(&place), high: own.high.sup(&place) };
                    }
                }
            }
            own
        }));
        Self { recipe: recipe.clone(), ball: ball.clone(), bounds }
    }

    /// Whether this is the model of that recipe.
    pub fn is_of(&self, recipe: &Recipe) -> bool {
        self.recipe == *recipe
    }

    /// What the materials are asked of.
    pub fn ball(&self) -> &Ball {
        &self.ball
    }

    /// Radius of the ball.
    pub fn radius_m(&self) -> f64 {
        self.recipe.diameter_m / 2.0
    }

    /// Number of parts, the cover with the pieces.
    pub fn parts(&self) -> usize {
        self.bounds.len()
    }

    pub(crate) fn bounds(&self, part: usize) -> &Bounds {
        &self.bounds[part]
    }

    /// Whether one part lies within the bounds of an earlier one.
    pub(crate) fn encloses(&self, outer: usize, inner: usize) -> bool {
        outer < inner && self.bounds[outer].holds(&self.bounds[inner])
    }

    /// What shows of the whole ball from outside, one mesh a part.
    pub fn skin(&self) -> Vec<Mesh> {
        skin::meshes(&self.ball, &self.recipe, &surface::skin(&self.recipe))
    }

    /// The complete closed surface of each part.
    pub fn surfaces(&self) -> Vec<Mesh> {
        skin::meshes(&self.ball, &self.recipe, &surface::all(&self.recipe))
    }
}
