//! The layout file, `NAME.layout.json`, and a ball drilled after it.

use physics::drill::{self, Digit, DrillError, Plan, drill};
use physics::recipe;
use physics::units::{KG_M3_PER_G_CC, M_PER_IN};
use schemars::JsonSchema;
use serde::Serialize;

use crate::ball::{BallFile, Hole, Piece};
use crate::build::accepted_words;
use crate::drilling::Drilling;
use crate::limits;
use crate::node::Node;
use crate::problem::Problem;
use crate::shape::{Form, Shape};
use crate::shot::{Hand, Throw};
use crate::tree::{Tree, rounded, short};
use crate::{Phrase, phrase};

/// Which edition of the layout file this is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub enum LayoutVersion {
    /// The first.
    #[serde(rename = "pithball.layout/1")]
    V1,
}

/// How a ball is drilled for a hand.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct LayoutFile {
    /// `pithball.layout/1`.
    pub format: LayoutVersion,
    /// What the layout is called.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub name: Option<String>,
    /// A line about it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub note: Option<String>,
    /// Hand, layout and grip.
    #[serde(flatten)]
    pub laid: Laid,
}

/// All that drilling depends on beside the ball: the same keys in a layout file
/// and in a shot file.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Laid {
    /// The bowler's hand.
    pub hand: Hand,
    /// Where the PAP lies from the pin.
    pub layout: PinLayout,
    /// Where the grip lies from the PAP, and its holes.
    pub drilling: Drilling,
}

/// Where the positive axis point (PAP) lies from the pin.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct PinLayout {
    /// Arc on the surface from the pin to the PAP, 0 to 20.
    #[schemars(range(min = limits::PIN_TO_PAP_IN.min, max = limits::PIN_TO_PAP_IN.max))]
    pub pin_to_pap_in: f64,
    /// Angle at the pin between the arc to the PAP and the arc to the mass bias
    /// side (+x of the ball), −360 to 360.
    #[schemars(range(min = limits::TURN_DEG.min, max = limits::TURN_DEG.max))]
    pub drilling_angle_deg: f64,
}

/// A ball with its grip drilled.
#[derive(Clone, Debug, PartialEq)]
pub struct DrilledBall {
    /// The ball file with the holes, and an insert as a piece poured last.
    pub file: BallFile,
    /// Where everything lies.
    pub drilling: drill::Drilling,
}

impl LayoutFile {
    /// Reads a layout file from JSON text in UTF-8.
    ///
    /// # Errors
    /// The first mistake in the file, with its place.
    pub fn read(json: &[u8]) -> Result<Self, Problem> {
        let tree = Tree::parse(json)?;
        let node = Node::root(&tree);
        let format = node.key("format")?.choice(&[("pithball.layout/1", LayoutVersion::V1)])?;
        let file = node.object(&["format", "name", "note", "hand", "layout", "drilling"])?;
        Ok(Self {
            format,
            name: file.find_text("name")?,
            note: file.find_text("note")?,
            laid: Laid {
                hand: Hand::read(&file.get("hand")?)?,
                layout: PinLayout::read(&file.get("layout")?)?,
                drilling: Drilling::read(&file.get("drilling")?)?,
            },
        })
    }
}

impl PinLayout {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let layout = node.object(&["pin_to_pap_in", "drilling_angle_deg"])?;
        Ok(Self {
            pin_to_pap_in: layout.get_number("pin_to_pap_in", &limits::PIN_TO_PAP_IN)?,
            drilling_angle_deg: layout.get_number("drilling_angle_deg", &limits::TURN_DEG)?,
        })
    }
}

impl Throw {
    /// What is drilled before the ball is thrown; none where nothing is.
    pub fn laid(&self) -> Option<Laid> {
        let layout =
            PinLayout { pin_to_pap_in: self.layout.pin_to_pap_in, drilling_angle_deg: self.layout.drilling_angle_deg };
        self.drilling.clone().map(|drilling| Laid { hand: self.hand, layout, drilling })
    }
}

impl Laid {
    /// Drills a ball. Holes that it has already stay.
    ///
    /// # Errors
    /// Where the grip cannot be drilled into a ball of this size.
    pub fn drill(&self, ball: &BallFile) -> Result<DrilledBall, Problem> {
        let drilling = drill(0.5 * ball.diameter_in * M_PER_IN, &self.plan()).map_err(|error| problem(&error))?;
        let mut file = ball.clone();
        let mut holes = file.holes.take().unwrap_or_default();
        for bored in &drilling.bores {
            let Some(bore) = self.drilling.bore(bored.digit) else { continue };
            holes.push(Hole {
                name: Some(digit_name(bored.digit).to_owned()),
                entry: bored.hole.entry.into(),
                axis: Some(bored.hole.axis.into()),
                diameter_in: bore.diameter_in,
                depth_in: bore.depth_in,
                drilled_diameter_in: bored.insert.is_some().then(|| bore.drilled_diameter_in()),
            });
            file.pieces
                .extend(bored.insert.as_ref().and_then(|piece| insert(bored.digit, piece, bore.drilled_diameter_in())));
        }
        file.holes = Some(holes);
        Ok(DrilledBall { file, drilling })
    }

    fn plan(&self) -> Plan {
        Plan {
            hand: self.hand.to_physics(),
            pin_to_pap_m: self.layout.pin_to_pap_in * M_PER_IN,
            drilling_angle_rad: self.layout.drilling_angle_deg.to_radians(),
            val_angle_rad: self.drilling.val_angle_deg.to_radians(),
            pap_over_m: self.drilling.pap_over_in * M_PER_IN,
            pap_up_m: self.drilling.pap_up_in * M_PER_IN,
            grip: self.drilling.grip(),
        }
    }
}

/// What a hole is called.
pub(crate) fn digit_name(digit: Digit) -> &'static str {
    match digit {
        Digit::Middle => "middle finger",
        Digit::Ring => "ring finger",
        Digit::Thumb => "thumb",
    }
}

/// The same where it is said.
pub(crate) fn digit_words(digit: Digit) -> Phrase {
    match digit {
        Digit::Middle => phrase!("hole-middle", "middle finger"),
        Digit::Ring => phrase!("hole-ring", "ring finger"),
        Digit::Thumb => phrase!("hole-thumb", "thumb"),
    }
}

/// What its lining is called.
pub(crate) fn insert_name(digit: Digit) -> &'static str {
    match digit {
        Digit::Middle => "middle finger insert",
        Digit::Ring => "ring finger insert",
        Digit::Thumb => "thumb sleeve",
    }
}

fn insert(digit: Digit, piece: &recipe::Piece, diameter_in: f64) -> Option<Piece> {
    let recipe::Shape::Cylinder { height_m, .. } = piece.solid.shape else { return None };
    let form = Form::Cylinder { diameter_in, height_in: height_m / M_PER_IN };
    Some(Piece {
        name: insert_name(digit).to_owned(),
        material: None,
        density_g_cc: piece.density_kg_m3 / KG_M3_PER_G_CC,
        shape: Shape { form, squash: None },
        at_in: Some((piece.solid.at_m / M_PER_IN).into()),
        turn_deg: Some(piece.solid.turn_rad.map(f64::to_degrees)),
        cuts: None,
        insert: Some(true),
    })
}

fn problem(error: &DrillError) -> Problem {
    match *error {
        DrillError::OutOfRange { digit, quantity, found, accepted } => {
            let length = short(rounded(found / M_PER_IN));
            let degrees = short(rounded(found.to_degrees()));
            let (key, found) = match quantity {
                "pin_to_pap_m" => ("layout.pin_to_pap_in", length),
                "drilling_angle_rad" => ("layout.drilling_angle_deg", degrees),
                "val_angle_rad" => ("drilling.val_angle_deg", degrees),
                "pap_over_m" => ("drilling.pap_over_in", length),
                "pap_up_m" => ("drilling.pap_up_in", length),
                "bridge_m" => ("drilling.bridge_in", length),
                "middle_span_m" => ("middle_span_in", length),
                "ring_span_m" => ("ring_span_in", length),
                "diameter_m" => ("diameter_in", length),
                "wall_m" => ("insert.wall_in", length),
                "depth_m" => ("depth_in", length),
                "forward_pitch_m" => ("forward_pitch_in", length),
                _ => ("side_pitch_in", length),
            };
            let found = match quantity {
                "wall_m" => phrase!("drilled-hole-of", "a drilled hole of {wide} in", wide = found),
                _ => found.into(),
            };
            Problem::new(place(digit, key), found, accepted_words(accepted))
        }
        DrillError::Spans => Problem::new(
            "drilling.thumb.middle_span_in",
            phrase!("spans-apart", "spans that differ by more than the fingers are apart"),
            phrase!(
                "spans-close",
                "two spans that differ by less than the distance between the middles of the finger holes"
            ),
        )
        .saying(phrase!(
            "spans-cannot",
            "The two spans differ by more than the fingers are apart, so the holes cannot go together."
        )),
        DrillError::Shallow { digit } => Problem::new(
            place(Some(digit), "depth_in"),
            phrase!("hole-shallow", "a hole too shallow for its insert"),
            phrase!("hole-deep-enough", "a hole deep enough that its insert ends below the ball's surface"),
        )
        .saying(phrase!(
            "hole-too-shallow",
            "The {hole} hole is too shallow for an insert of this size.",
            hole = digit_words(digit)
        )),
    }
}

fn place(digit: Option<Digit>, key: &str) -> String {
    match digit {
        None => key.to_owned(),
        Some(Digit::Middle) => format!("drilling.middle.{key}"),
        Some(Digit::Ring) => format!("drilling.ring.{key}"),
        Some(Digit::Thumb) => format!("drilling.thumb.{key}"),
    }
}
