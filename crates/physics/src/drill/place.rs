//! Points and lines of a layout on the sphere.

use nalgebra::Vector3;

use super::{Bore, DrillError, Entry, Plan};

/// Points of the layout, unit vectors in the ball frame.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Marks {
    /// The pin, +z.
    pub pin: Vector3<f64>,
    /// The mass bias side, +x: where the high-RG axis of an asymmetric core should lie.
    pub mass_bias: Vector3<f64>,
    /// The positive axis point.
    pub pap: Vector3<f64>,
    /// Where the VAL crosses the midline.
    pub foot: Vector3<f64>,
    /// The grip centre.
    pub grip_centre: Vector3<f64>,
    /// From the grip centre towards the fingers, along the centre line; the
    /// midline lies square to it.
    pub up: Vector3<f64>,
    /// From the grip centre towards the PAP's side, along the midline; the
    /// centre line lies square to it.
    pub over: Vector3<f64>,
    /// The VAL lies square to this: from the VAL straight away from the grip.
    pub val_pole: Vector3<f64>,
}

impl Marks {
    /// Follows the layout from the pin to the grip centre.
    pub(super) fn new(radius_m: f64, plan: &Plan) -> Self {
        let side = plan.hand.side();
        let (sin_p, cos_p) = libm::sincos(plan.pin_to_pap_m / radius_m);
        let (sin_d, cos_d) = libm::sincos(side * plan.drilling_angle_rad);
        let pap = Vector3::new(sin_p * cos_d, sin_p * sin_d, cos_p);
        // Along the arc to the pin; where pin and PAP are one, as just before they are.
        let to_pin = Vector3::new(-cos_p * cos_d, -cos_p * sin_d, sin_p);
        // Seen from outside, a right-hander's grip is to the left of the PAP:
        // from up the VAL to the pin is a turn to the left.
        let (sin_v, cos_v) = libm::sincos(-side * plan.val_angle_rad);
        let up_at_pap = to_pin * cos_v + pap.cross(&to_pin) * sin_v;
        let (sin_u, cos_u) = libm::sincos(plan.pap_up_m / radius_m);
        let foot = pap * cos_u - up_at_pap * sin_u;
        let up = up_at_pap * cos_u + pap * sin_u;
        let val_pole = up.cross(&foot) * side;
        let (sin_o, cos_o) = libm::sincos(plan.pap_over_m / radius_m);
        let grip_centre = foot * cos_o - val_pole * sin_o;
        let over = val_pole * cos_o + foot * sin_o;
        Self { pin: Vector3::z(), mass_bias: Vector3::x(), pap, foot, grip_centre, up, over, val_pole }
    }

    /// From the grip centre this far up the centre line, and which way is up there.
    fn along(&self, angle_rad: f64) -> (Vector3<f64>, Vector3<f64>) {
        let (sin, cos) = libm::sincos(angle_rad);
        (self.grip_centre * cos + self.up * sin, self.up * cos - self.grip_centre * sin)
    }

    /// Signed distance of a point from the VAL, positive on the grip's side;
    /// of the pin, what the trade calls the pin buffer.
    pub fn to_val_m(&self, point: &Vector3<f64>, radius_m: f64) -> f64 {
        -radius_m * libm::asin(self.val_pole.dot(point).clamp(-1.0, 1.0))
    }
}

/// Angle between two directions: times the radius, the arc between their points.
pub fn arc_rad(a: &Vector3<f64>, b: &Vector3<f64>) -> f64 {
    libm::atan2(a.cross(b).norm(), a.dot(b))
}

/// Arc from the middle of a hole of this diameter to its edge, as an angle.
fn edge_rad(diameter_m: f64, radius_m: f64) -> f64 {
    libm::asin((0.5 * diameter_m / radius_m).min(1.0))
}

/// Entries of middle finger, ring finger and thumb, as far as there are any.
pub(super) fn digits(radius_m: f64, plan: &Plan, marks: &Marks) -> Result<Vec<Entry>, DrillError> {
    let [middle, ring] = plan.grip.fingers;
    let drilled = |bore: &Bore| edge_rad(bore.drilled_diameter_m(), radius_m);
    let gripped = |bore: &Bore| edge_rad(bore.diameter_m, radius_m);
    // Half the arc from finger to finger.
    let half_rad = 0.5 * (plan.grip.bridge_m / radius_m + drilled(&middle) + drilled(&ring));
    let (sin_half, cos_half) = libm::sincos(half_rad);
    let (bridge_rad, thumb_rad, cos_lean) = match plan.grip.thumb {
        None => (0.0, None, 0.0),
        Some(thumb) => {
            let [middle_m, ring_m] = thumb.spans_m;
            let thumb_edge = gripped(&thumb.bore);
            let [cos_m, cos_r] = [(middle_m, &middle), (ring_m, &ring)]
                .map(|(span_m, bore)| libm::cos(span_m / radius_m + thumb_edge + gripped(bore)));
            // The median of a spherical triangle: cos a + cos b = 2 cos(median) cos(c/2).
            let cos_median = (cos_m + cos_r) / (2.0 * cos_half);
            if cos_median.abs() >= 1.0 {
                return Err(DrillError::Spans);
            }
            let median = libm::acos(cos_median);
            let cos_lean = (cos_m - cos_r) / (2.0 * libm::sin(median) * sin_half);
            if cos_lean.abs() > 1.0 {
                return Err(DrillError::Spans);
            }
            let below = thumb_edge + 0.25 * (middle_m + ring_m) / radius_m;
            (median - below, Some(below), cos_lean)
        }
    };
    let (bridge, up) = marks.along(bridge_rad);
    let to_middle = -up * cos_lean - marks.over * (1.0 - cos_lean * cos_lean).max(0.0).sqrt();
    let fingers = [1.0, -1.0].map(|way| {
        let at = bridge * cos_half + to_middle * (way * sin_half);
        entry(plan, at, &-up)
    });
    let thumb = thumb_rad.map(|below| {
        let (at, up) = marks.along(-below);
        let mut thumb = entry(plan, at, &up);
        // Up the centre line the PAP's side is on the other hand than down it.
        thumb.side = -thumb.side;
        thumb
    });
    Ok(fingers.into_iter().chain(thumb).collect())
}

/// An entry with the part of `forward` that is level there.
fn entry(plan: &Plan, at: Vector3<f64>, forward: &Vector3<f64>) -> Entry {
    let forward = (forward - at * at.dot(forward)).normalize();
    Entry { at, forward, side: at.cross(&forward) * plan.hand.side() }
}
