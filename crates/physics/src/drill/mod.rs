//! Drilling: from a layout and a grip to holes in the ball.
//!
//! The words are those of the trade (common practice, no source), put on the
//! sphere as follows. All lengths on the surface are arcs of great circles.
//!
//! - The pin is the ball's +z, the mass bias side its +x, and pin-to-PAP and
//!   drilling angle place the positive axis point (PAP) as the shot file says.
//! - The vertical axis line (VAL) is the great circle through the PAP at the
//!   VAL angle from the arc PAP → pin, measured at the PAP from the VAL's upper
//!   half towards the grip: at 0 the pin stands straight above the PAP, at 90°
//!   level with it on the grip's side.
//! - The midline is the great circle that crosses the VAL at a right angle
//!   `pap_up_m` below the PAP; the grip centre lies on it `pap_over_m` from the
//!   VAL. So the PAP is found from the grip centre by going `pap_over_m` along
//!   the midline and `pap_up_m` up the VAL.
//! - The centre line is the great circle through the grip centre square to the
//!   midline: fingers above, thumb below, the bridge's middle on it.
//! - A span runs from the gripping edge of the thumb to the gripping edge of a
//!   finger (the full span, inside inserts), along the arc between the holes'
//!   middles. The bridge is what stays between the two finger holes as drilled.
//! - The grip centre is half the mean span from the thumb's gripping edge;
//!   without a thumb it is the middle of the bridge (model choice).
//! - A pitch is how far a hole's axis misses the ball's centre. Forward leans
//!   the hole's bottom under the palm: a finger's down the centre line, the
//!   thumb's up it. Side, where positive, leans it towards the PAP's side.
//! - An insert or sleeve fills the drilled hole but for the gripping hole. It is
//!   a piece of its own that ends where its rim would leave the ball, less
//!   [`INSERT_BELOW_M`] (model choice: a few hundredths of an inch of cover stand for
//!   the insert's top).
//!
//! An edge of a hole is taken as that of a straight hole of the same diameter,
//! arcsin(r/R) from its middle, whatever its pitch (model choice).

mod balance;
mod conflict;
mod place;

pub use balance::{AxisMove, Statics, axis_move, statics};
pub use conflict::{Conflict, THIN_WEB_M, conflicts};
pub use place::{Marks, arc_rad};

use nalgebra::Vector3;
use thiserror::Error;

use crate::lane::Hand;
use crate::recipe::{Hole, Piece, Shape, Solid};

/// How far below the ball's surface an insert's top rim ends.
pub const INSERT_BELOW_M: f64 = 1e-4;
/// A layout and a grip.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plan {
    /// The bowler's hand: a left-hander's holes are a right-hander's mirror image.
    pub hand: Hand,
    /// Arc from pin to PAP, 0 to half the circumference.
    pub pin_to_pap_m: f64,
    /// Angle at the pin from the ball's +x to the arc pin → PAP, −360° to 360°.
    pub drilling_angle_rad: f64,
    /// Angle at the PAP from the upper VAL to the arc PAP → pin, towards the
    /// grip, −360° to 360°.
    pub val_angle_rad: f64,
    /// From the grip centre along the midline to the VAL, up to a quarter of
    /// the circumference.
    pub pap_over_m: f64,
    /// From the midline up the VAL to the PAP; below 0: down. As far.
    pub pap_up_m: f64,
    /// The holes.
    pub grip: Grip,
}

/// The holes of a grip.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Grip {
    /// Middle finger, then ring finger.
    pub fingers: [Bore; 2],
    /// What stays between the two finger holes as drilled, along the surface.
    pub bridge_m: f64,
    /// None for a two-handed grip without one.
    pub thumb: Option<Thumb>,
}

/// A thumb and how far the fingers are from it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Thumb {
    /// The hole.
    pub bore: Bore,
    /// Full spans to the middle and the ring finger.
    pub spans_m: [f64; 2],
}

/// A hole for a finger or thumb.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bore {
    /// Diameter of the gripping hole, inside its insert where it has one.
    pub diameter_m: f64,
    /// Depth of the flat bottom along the hole's axis.
    pub depth_m: f64,
    /// How far the axis misses the ball's centre towards the palm; below 0: reverse.
    pub forward_pitch_m: f64,
    /// How far it misses the centre towards the PAP's side; below 0: away from it.
    pub side_pitch_m: f64,
    /// What lines the drilled hole.
    pub insert: Option<Insert>,
}

/// A finger insert or thumb sleeve: a tube as deep as the hole.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Insert {
    /// Thickness of its wall, above 0.
    pub wall_m: f64,
    /// Density, above 0.
    pub density_kg_m3: f64,
}

/// Which hole.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Digit {
    /// Middle finger.
    Middle,
    /// Ring finger.
    Ring,
    /// Thumb.
    Thumb,
}

/// One hole of the grip, in the ball.
#[derive(Clone, Debug, PartialEq)]
pub struct Bored {
    /// Whose.
    pub digit: Digit,
    /// The gripping hole: what is air in the drilled ball.
    pub hole: Hole,
    /// Diameter of the drill: that of the hole, and the insert's wall on either side.
    pub drilled_diameter_m: f64,
    /// The insert, as a piece poured last.
    pub insert: Option<Piece>,
}

/// Where everything lies.
#[derive(Clone, Debug, PartialEq)]
pub struct Drilling {
    /// Radius of the ball.
    pub radius_m: f64,
    /// Points and lines of the layout.
    pub marks: Marks,
    /// Middle finger, ring finger, and the thumb where there is one.
    pub bores: Vec<Bored>,
}

/// Why a ball cannot be drilled so.
#[derive(Clone, Copy, Debug, PartialEq, Error)]
pub enum DrillError {
    /// A number is out of its range.
    #[error("{quantity} of {digit:?} is {found}; accepted: {accepted}")]
    OutOfRange {
        /// Whose hole; none for the layout itself.
        digit: Option<Digit>,
        /// Which field.
        quantity: &'static str,
        /// Its value.
        found: f64,
        /// What is accepted.
        accepted: &'static str,
    },
    /// Spans and bridge make no triangle.
    #[error("the spans differ by more than the fingers are apart")]
    Spans,
    /// An insert has no room below the ball's surface.
    #[error("the hole of {digit:?} is too shallow for an insert")]
    Shallow {
        /// Whose hole.
        digit: Digit,
    },
}

impl Bored {
    /// What the insert weighs: its tube, as far as it is a piece of the ball.
    pub fn insert_mass_kg(&self) -> f64 {
        let Some(piece) = &self.insert else { return 0.0 };
        let Shape::Cylinder { diameter_m, height_m } = piece.solid.shape else { return 0.0 };
        let inside_m = self.hole.diameter_m;
        let area_m2 = core::f64::consts::FRAC_PI_4 * (diameter_m * diameter_m - inside_m * inside_m);
        piece.density_kg_m3 * area_m2 * height_m
    }
}

impl Bore {
    fn drilled_diameter_m(&self) -> f64 {
        self.diameter_m + 2.0 * self.insert.map_or(0.0, |insert| insert.wall_m)
    }
}

/// Lays a plan out on a ball of this radius.
///
/// Exact but for rounding: arcs come out as given to 1e-12 of the radius.
///
/// # Errors
/// [`DrillError`] where a number is out of its range, spans and bridge cannot
/// go together, or an insert does not fit.
pub fn drill(radius_m: f64, plan: &Plan) -> Result<Drilling, DrillError> {
    plan.check(radius_m)?;
    let marks = Marks::new(radius_m, plan);
    let places = place::digits(radius_m, plan, &marks)?;
    let [middle, ring] = plan.grip.fingers;
    let thumb = plan.grip.thumb.map(|thumb| (Digit::Thumb, thumb.bore));
    let bores = [(Digit::Middle, middle), (Digit::Ring, ring)].into_iter().chain(thumb).zip(places);
    let bores = bores.map(|((digit, bore), place)| bored(radius_m, digit, &bore, &place));
    Ok(Drilling { radius_m, marks, bores: bores.collect::<Result<_, _>>()? })
}

/// Where a hole enters and how its axis may lean: unit vectors at the entry.
pub(crate) struct Entry {
    at: Vector3<f64>,
    forward: Vector3<f64>,
    side: Vector3<f64>,
}

fn bored(radius_m: f64, digit: Digit, bore: &Bore, entry: &Entry) -> Result<Bored, DrillError> {
    // The axis misses the centre by exactly the pitch: sin of its angle to the radius is pitch/R.
    let lean = (entry.forward * bore.forward_pitch_m + entry.side * bore.side_pitch_m) / radius_m;
    let axis = lean - entry.at * (1.0 - lean.norm_squared()).max(0.0).sqrt();
    let hole = Hole { entry: entry.at, axis, diameter_m: bore.diameter_m, depth_m: bore.depth_m };
    let insert = bore.insert.map(|insert| sleeve(radius_m, &hole, &insert).ok_or(DrillError::Shallow { digit }));
    Ok(Bored { digit, hole, drilled_diameter_m: bore.drilled_diameter_m(), insert: insert.transpose()? })
}

/// The insert as a solid cylinder of the drilled hole; the gripping hole is
/// taken out of it as out of all else. None where it would have no height.
fn sleeve(radius_m: f64, hole: &Hole, insert: &Insert) -> Option<Piece> {
    let (out, bottom) = (-hole.axis, hole.entry * radius_m + hole.axis * hole.depth_m);
    let diameter_m = hole.diameter_m + 2.0 * insert.wall_m;
    let low = bottom.dot(&out);
    // The point of the rim farthest from the centre lies on the side the axis misses it.
    let reach = (bottom - out * low).norm() + 0.5 * diameter_m;
    let high = (radius_m * radius_m - reach * reach).max(0.0).sqrt() - INSERT_BELOW_M;
    let height_m = high - low;
    (height_m > 0.0).then(|| Piece {
        density_kg_m3: insert.density_kg_m3,
        solid: Solid {
            shape: Shape::Cylinder { diameter_m, height_m },
            squash: [1.0; 2],
            // Turned about x, then y, the z axis becomes `out`.
            turn_rad: [-libm::asin(out.y.clamp(-1.0, 1.0)), libm::atan2(out.x, out.z), 0.0],
            at_m: bottom + out * (0.5 * height_m),
        },
        cuts: Vec::new(),
    })
}

impl Plan {
    fn check(&self, radius_m: f64) -> Result<(), DrillError> {
        use core::f64::consts::{FRAC_PI_2, PI, TAU};
        let within = |digit, quantity, found: f64, low: f64, high: f64, accepted| {
            if found >= low - 1e-12 * low.abs() && found <= high + 1e-12 * high.abs() {
                Ok(())
            } else {
                Err(DrillError::OutOfRange { digit, quantity, found, accepted })
            }
        };
        let quarter_m = FRAC_PI_2 * radius_m;
        let half = "0 to half the ball's circumference";
        let a_quarter = "up to a quarter of the ball's circumference";
        within(None, "pin_to_pap_m", self.pin_to_pap_m, 0.0, PI * radius_m, half)?;
        within(None, "drilling_angle_rad", self.drilling_angle_rad, -TAU, TAU, "-2π to 2π")?;
        within(None, "val_angle_rad", self.val_angle_rad, -TAU, TAU, "-2π to 2π")?;
        within(None, "pap_over_m", self.pap_over_m, -quarter_m, quarter_m, a_quarter)?;
        within(None, "pap_up_m", self.pap_up_m, -quarter_m, quarter_m, a_quarter)?;
        within(None, "bridge_m", self.grip.bridge_m, 0.0, quarter_m, a_quarter)?;
        let [middle, ring] = self.grip.fingers;
        let thumb = self.grip.thumb.map(|thumb| (Digit::Thumb, thumb.bore));
        for (digit, bore) in [(Digit::Middle, middle), (Digit::Ring, ring)].into_iter().chain(thumb) {
            let digit = Some(digit);
            let most_m = 0.5 * radius_m;
            let wide = "above 0, the drilled hole up to half the ball's radius";
            within(digit, "diameter_m", bore.diameter_m, f64::MIN_POSITIVE, most_m, wide)?;
            within(digit, "wall_m", bore.drilled_diameter_m(), bore.diameter_m, most_m, wide)?;
            within(digit, "depth_m", bore.depth_m, f64::MIN_POSITIVE, 2.0 * radius_m, "above 0, up to the diameter")?;
            for (what, pitch_m) in [("forward_pitch_m", bore.forward_pitch_m), ("side_pitch_m", bore.side_pitch_m)] {
                within(digit, what, pitch_m, -most_m, most_m, "up to half the ball's radius")?;
            }
        }
        for (n, span_m) in self.grip.thumb.iter().flat_map(|thumb| thumb.spans_m).enumerate() {
            let what = ["middle_span_m", "ring_span_m"][n % 2];
            within(Some(Digit::Thumb), what, span_m, 0.0, quarter_m, a_quarter)?;
        }
        Ok(())
    }
}

#[cfg(test)]
mod tests;
