//! What is under a pixel, asked of the ball itself.

use nalgebra::Vector3;
use physics::ball::Line;

use crate::arrange::{Arrangement, arrange};
use crate::camera::{Camera, Stance};
use crate::look::Look;
use crate::model::Model;
use crate::skin::number;

/// What a ray meets first.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pick {
    /// 0 is the cover, n the n-th piece.
    pub part: usize,
    /// Where in the ball (before parts were pulled apart), in metres.
    pub at_m: Vector3<f64>,
}

/// The camera for a look at an arrangement.
pub(crate) fn camera(look: &Look, arrangement: &Arrangement) -> Camera {
    Camera::new(&Stance {
        width_px: look.width_px.max(1.0),
        height_px: look.height_px.max(1.0),
        yaw_rad: look.yaw_rad,
        pitch_rad: look.pitch_rad,
        zoom: look.zoom.max(1e-3),
        half_width_m: arrangement.half_width_m,
        half_height_m: arrangement.half_height_m,
    })
}

/// What a device pixel shows, counted from the top left.
pub fn pick(model: &Model, look: &Look, x_px: f64, y_px: f64) -> Option<Pick> {
    let arrangement = arrange(model, look);
    let ray = camera(look, &arrangement).ray(x_px, y_px);
    first(model, &arrangement, &ray).map(|(_, pick)| pick)
}

/// The first material along a ray, and how far away it is.
pub(crate) fn first(model: &Model, arrangement: &Arrangement, ray: &Line) -> Option<(f64, Pick)> {
    let mut nearest: Option<(f64, Pick)> = None;
    for shown in &arrangement.shown {
        let line = Line { origin_m: ray.origin_m - shown.offset_m, ..*ray };
        let (mut from_m, mut to_m) = (0.0, f64::INFINITY);
        if let Some(plane) = &shown.plane {
            let slope = plane.normal.dot(&line.direction);
            let room_m = plane.depth_m - plane.normal.dot(&line.origin_m);
            if slope < 0.0 {
                from_m = (room_m / slope).max(0.0);
            } else if slope > 0.0 {
                to_m = room_m / slope;
            } else if room_m < 0.0 {
                continue;
            }
        }
        let own = model
            .ball()
            .runs(&line)
            .into_iter()
            .find(|run| number(run.part) == shown.part && run.to_m > from_m && run.from_m < to_m);
        let Some(run) = own else { continue };
        let t_m = run.from_m.max(from_m);
        if nearest.is_none_or(|(best, _)| t_m < best) {
            nearest = Some((t_m, Pick { part: shown.part, at_m: line.origin_m + line.direction * t_m }));
        }
    }
    nearest
}

#[cfg(test)]
mod tests;
