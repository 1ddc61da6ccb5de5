//! The grip of a shot or layout file: what is drilled, and where.

use physics::drill;
use physics::units::{KG_M3_PER_G_CC, M_PER_IN};
use schemars::JsonSchema;
use serde::Serialize;

use crate::limits;
use crate::node::{Node, Object};
use crate::problem::Problem;

/// The bowler's grip: with pin-to-PAP and drilling angle it says where every
/// hole goes. Lengths on the ball are arcs along its surface.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct Drilling {
    /// Angle at the PAP from the upper half of the vertical axis line (VAL) to
    /// the arc PAP → pin, towards the grip; −360 to 360. At 0 the pin stands
    /// straight above the PAP, at 90 level with it on the grip's side.
    #[schemars(range(min = limits::TURN_DEG.min, max = limits::TURN_DEG.max))]
    pub val_angle_deg: f64,
    /// From the grip centre along the midline to the VAL, towards the bowler's
    /// own side, 0 to 12.
    #[schemars(range(min = limits::PAP_OVER_IN.min, max = limits::PAP_OVER_IN.max))]
    pub pap_over_in: f64,
    /// From the midline up the VAL to the PAP; below 0: down; −6 to 6.
    #[schemars(range(min = limits::PAP_UP_IN.min, max = limits::PAP_UP_IN.max))]
    pub pap_up_in: f64,
    /// What stays between the two finger holes as drilled, 0 to 3.
    #[schemars(range(min = limits::BRIDGE_IN.min, max = limits::BRIDGE_IN.max))]
    pub bridge_in: f64,
    /// The middle finger's hole.
    pub middle: Bore,
    /// The ring finger's hole.
    pub ring: Bore,
    /// The thumb's hole; left out for a two-handed grip without one.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub thumb: Option<ThumbBore>,
}

/// A hole for a finger.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct Bore {
    /// Diameter of the gripping hole, inside its insert where it has one,
    /// above 0 and up to 3.
    #[schemars(extend("exclusiveMinimum" = 0), range(max = limits::BORE_IN.max))]
    pub diameter_in: f64,
    /// Depth of the flat bottom along the hole's axis, above 0 and up to 6.
    #[schemars(extend("exclusiveMinimum" = 0), range(max = limits::DEPTH_IN.max))]
    pub depth_in: f64,
    /// How far the hole's axis misses the ball's centre towards the palm
    /// (forward); below 0: away from it (reverse); −2 to 2, 0 where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = limits::PITCH_IN.min, max = limits::PITCH_IN.max))]
    pub forward_pitch_in: Option<f64>,
    /// How far it misses the centre towards the PAP's side; below 0: away from
    /// it; −2 to 2, 0 where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = limits::PITCH_IN.min, max = limits::PITCH_IN.max))]
    pub side_pitch_in: Option<f64>,
    /// A finger insert, as deep as the hole.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub insert: Option<Insert>,
}

/// A hole for the thumb.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct ThumbBore {
    /// Diameter of the gripping hole, inside its sleeve where it has one,
    /// above 0 and up to 3.
    #[schemars(extend("exclusiveMinimum" = 0), range(max = limits::BORE_IN.max))]
    pub diameter_in: f64,
    /// Depth of the flat bottom along the hole's axis, above 0 and up to 6.
    #[schemars(extend("exclusiveMinimum" = 0), range(max = limits::DEPTH_IN.max))]
    pub depth_in: f64,
    /// How far the hole's axis misses the ball's centre towards the palm
    /// (forward); below 0: away from it (reverse); −2 to 2, 0 where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = limits::PITCH_IN.min, max = limits::PITCH_IN.max))]
    pub forward_pitch_in: Option<f64>,
    /// How far it misses the centre towards the PAP's side; below 0: away from
    /// it; −2 to 2, 0 where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = limits::PITCH_IN.min, max = limits::PITCH_IN.max))]
    pub side_pitch_in: Option<f64>,
    /// A thumb sleeve, as deep as the hole.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub insert: Option<Insert>,
    /// Full span to the middle finger: from gripping edge to gripping edge,
    /// inside inserts, above 0 and up to 6.
    #[schemars(extend("exclusiveMinimum" = 0), range(max = limits::SPAN_IN.max))]
    pub middle_span_in: f64,
    /// Full span to the ring finger, above 0 and up to 6.
    #[schemars(extend("exclusiveMinimum" = 0), range(max = limits::SPAN_IN.max))]
    pub ring_span_in: f64,
}

/// What lines a hole: the hole is drilled wider by its wall all round.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct Insert {
    /// Thickness of the wall, above 0 and up to 1.
    #[schemars(extend("exclusiveMinimum" = 0), range(max = limits::WALL_IN.max))]
    pub wall_in: f64,
    /// Density, above 0 and up to 25.
    #[schemars(extend("exclusiveMinimum" = 0), range(max = limits::DENSITY_G_CC.max))]
    pub density_g_cc: f64,
}

impl Drilling {
    pub(crate) fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let drilling =
            node.object(&["val_angle_deg", "pap_over_in", "pap_up_in", "bridge_in", "middle", "ring", "thumb"])?;
        Ok(Self {
            val_angle_deg: drilling.get_number("val_angle_deg", &limits::TURN_DEG)?,
            pap_over_in: drilling.get_number("pap_over_in", &limits::PAP_OVER_IN)?,
            pap_up_in: drilling.get_number("pap_up_in", &limits::PAP_UP_IN)?,
            bridge_in: drilling.get_number("bridge_in", &limits::BRIDGE_IN)?,
            middle: Bore::read_finger(&drilling.get("middle")?)?,
            ring: Bore::read_finger(&drilling.get("ring")?)?,
            thumb: drilling.find("thumb").map(|node| ThumbBore::read(&node)).transpose()?,
        })
    }

    /// The hole of a finger or of the thumb; none for the thumb of a grip without.
    pub(crate) fn bore(&self, digit: drill::Digit) -> Option<Bore> {
        match digit {
            drill::Digit::Middle => Some(self.middle),
            drill::Digit::Ring => Some(self.ring),
            drill::Digit::Thumb => self.thumb.as_ref().map(ThumbBore::bore),
        }
    }

    pub(crate) fn grip(&self) -> drill::Grip {
        drill::Grip {
            fingers: [self.middle, self.ring].map(Bore::to_physics),
            bridge_m: self.bridge_in * M_PER_IN,
            thumb: self.thumb.map(|thumb| drill::Thumb {
                bore: thumb.bore().to_physics(),
                spans_m: [thumb.middle_span_in, thumb.ring_span_in].map(|span_in| span_in * M_PER_IN),
            }),
        }
    }
}

impl Bore {
    fn read_finger(node: &Node<'_>) -> Result<Self, Problem> {
        Self::read(&node.object(&["diameter_in", "depth_in", "forward_pitch_in", "side_pitch_in", "insert"])?)
    }

    fn read(bore: &Object<'_>) -> Result<Self, Problem> {
        let pitch = |key| bore.find(key).map(|node| node.number(&limits::PITCH_IN)).transpose();
        Ok(Self {
            diameter_in: bore.get_number("diameter_in", &limits::BORE_IN)?,
            depth_in: bore.get_number("depth_in", &limits::DEPTH_IN)?,
            forward_pitch_in: pitch("forward_pitch_in")?,
            side_pitch_in: pitch("side_pitch_in")?,
            insert: bore.find("insert").map(|node| Insert::read(&node)).transpose()?,
        })
    }

    fn to_physics(self) -> drill::Bore {
        drill::Bore {
            diameter_m: self.diameter_in * M_PER_IN,
            depth_m: self.depth_in * M_PER_IN,
            forward_pitch_m: self.forward_pitch_in.unwrap_or(0.0) * M_PER_IN,
            side_pitch_m: self.side_pitch_in.unwrap_or(0.0) * M_PER_IN,
            insert: self.insert.map(|insert| drill::Insert {
                wall_m: insert.wall_in * M_PER_IN,
                density_kg_m3: insert.density_g_cc * KG_M3_PER_G_CC,
            }),
        }
    }

    /// Diameter of the drill.
    pub(crate) fn drilled_diameter_in(&self) -> f64 {
        self.diameter_in + 2.0 * self.insert.map_or(0.0, |insert| insert.wall_in)
    }
}

impl ThumbBore {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let thumb = node.object(&[
            "diameter_in",
            "depth_in",
            "forward_pitch_in",
            "side_pitch_in",
            "insert",
            "middle_span_in",
            "ring_span_in",
        ])?;
        let Bore { diameter_in, depth_in, forward_pitch_in, side_pitch_in, insert } = Bore::read(&thumb)?;
        Ok(Self {
            diameter_in,
            depth_in,
            forward_pitch_in,
            side_pitch_in,
            insert,
            middle_span_in: thumb.get_number("middle_span_in", &limits::SPAN_IN)?,
            ring_span_in: thumb.get_number("ring_span_in", &limits::SPAN_IN)?,
        })
    }

    fn bore(&self) -> Bore {
        let Self { diameter_in, depth_in, forward_pitch_in, side_pitch_in, insert, .. } = *self;
        Bore { diameter_in, depth_in, forward_pitch_in, side_pitch_in, insert }
    }
}

impl Insert {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let insert = node.object(&["wall_in", "density_g_cc"])?;
        Ok(Self {
            wall_in: insert.get_number("wall_in", &limits::WALL_IN)?,
            density_g_cc: insert.get_number("density_g_cc", &limits::DENSITY_G_CC)?,
        })
    }
}
