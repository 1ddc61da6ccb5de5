//! The ball over two of its controls: what contours are drawn from.

use crate::ball::Ball;
use crate::control::Control;
use crate::figures::Figures;
use crate::recipe::Recipe;
use crate::weigh::weigh_within;

/// Relative error bound of a map's numbers.
pub const MAP_TOLERANCE: f64 = 1e-5;

/// One row of a map: the ball with `y` at `y_value` and `x` at each of
/// `x_values` (SI); `None` where it cannot be made, or has no such control.
pub fn row(recipe: &Recipe, [x, y]: [Control; 2], x_values: &[f64], y_value: f64) -> Vec<Option<Figures>> {
    let at = |x_value: &f64| {
        let recipe = x.with(&y.with(recipe, y_value)?, *x_value)?;
        Some(Figures::from(&weigh_within(&Ball::new(&recipe).ok()?, MAP_TOLERANCE)))
    };
    x_values.iter().map(at).collect()
}
