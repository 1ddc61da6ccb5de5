//! Which parts stand where: together, or pulled apart along the pin axis.

use nalgebra::Vector3;
use physics::section::Plane;

use crate::look::Look;
use crate::model::Model;

/// Gap between parts pulled apart, in radii of the ball.
const GAP: f64 = 0.14;

/// How far a sawn part stands out before the one around it while the two still
/// overlap, in radii of the ball: cut faces in one plane would show through each other.
const STEP: f64 = 0.06;

/// One part, or half of one, as it is shown.
#[derive(Clone, Debug)]
pub(crate) struct Shown {
    /// 0 is the cover, n the n-th piece.
    pub(crate) part: usize,
    /// What lies beyond is gone; in the part's own place in the ball.
    pub(crate) plane: Option<Plane>,
    /// How far the part has been moved.
    pub(crate) offset_m: Vector3<f64>,
}

/// Everything shown and the room it takes.
#[derive(Clone, Debug)]
pub(crate) struct Arrangement {
    pub(crate) shown: Vec<Shown>,
    pub(crate) half_width_m: f64,
    pub(crate) half_height_m: f64,
}

/// A part with the stretch of the pin axis it takes.
struct Stacked {
    part: usize,
    plane: Option<Plane>,
    from_m: f64,
    to_m: f64,
}

/// Sawn, the parts stand one above the other as half solids. Whole, a part
/// that holds others opens like a shell: its lower half goes below them and
/// its upper half above.
pub(crate) fn arrange(model: &Model, look: &Look) -> Arrangement {
    let radius_m = model.radius_m();
    let apart = look.exploded.clamp(0.0, 1.0);
    if apart == 0.0 {
        let still = |part| Shown { part, plane: look.plane, offset_m: Vector3::zeros() };
        let shown = (0..model.parts()).filter(|&part| look.shows(part)).map(still).collect();
        return Arrangement { shown, half_width_m: radius_m, half_height_m: radius_m };
    }
    let stack = stack(model, look);
    let lengths: f64 = stack.iter().map(|s| s.to_m - s.from_m).sum();
    let total_m = lengths + GAP * radius_m * stack.len().saturating_sub(1) as f64;
    let mut base_m = -total_m / 2.0;
    let mut shown = Vec::with_capacity(stack.len());
    let forward_m = 4.0 * apart * (1.0 - apart) * STEP * radius_m;
    for (n, Stacked { part, plane, from_m, to_m }) in stack.into_iter().enumerate() {
        let out = look.plane.map_or(Vector3::zeros(), |plane| plane.normal);
        let offset_m = Vector3::z() * (apart * (base_m - from_m)) + out * (n as f64 * forward_m);
        shown.push(Shown { part, plane, offset_m });
        base_m += to_m - from_m + GAP * radius_m;
    }
    let half_height_m = radius_m + apart * (total_m / 2.0 - radius_m).max(0.0);
    Arrangement { shown, half_width_m: radius_m, half_height_m }
}

fn stack(model: &Model, look: &Look) -> Vec<Stacked> {
    let mut parts: Vec<usize> = (0..model.parts()).filter(|&part| look.shows(part)).collect();
    let held = |outer: usize| (0..model.parts()).filter(move |&inner| model.encloses(outer, inner));
    let middle_m = |part: usize| f64::midpoint(model.bounds(part).low.z, model.bounds(part).high.z);
    // Those that hold most come first; among equals, the lower.
    parts.sort_by(|&a, &b| held(b).count().cmp(&held(a).count()).then(middle_m(a).total_cmp(&middle_m(b))));
    let whole = |part: usize, plane| {
        let bounds = model.bounds(part);
        Stacked { part, plane, from_m: bounds.low.z, to_m: bounds.high.z }
    };
    if look.plane.is_some() {
        return parts.into_iter().map(|part| whole(part, look.plane)).collect();
    }
    let (mut lower, mut upper) = (Vec::new(), Vec::new());
    for part in parts {
        let inner: Vec<usize> = held(part).collect();
        let z_m = inner.iter().map(|&p| middle_m(p)).sum::<f64>() / inner.len().max(1) as f64;
        let planes = [Vector3::z(), -Vector3::z()].map(|n| Plane::new(n, n.z * z_m));
        match planes {
            [Some(above), Some(below)] if !inner.is_empty() => {
                let Stacked { from_m, to_m, .. } = whole(part, None);
                lower.push(Stacked { part, plane: Some(above), from_m, to_m: z_m });
                upper.push(Stacked { part, plane: Some(below), from_m: z_m, to_m });
            }
            _ => lower.push(whole(part, None)),
        }
    }
    lower.extend(upper.into_iter().rev());
    lower
}
