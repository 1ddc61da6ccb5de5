//! What `drill` prints: a ball before and after its grip is drilled.

use nalgebra::Vector3;
use physics::drill::{Bored, Conflict, Marks, arc_rad, axis_move, conflicts, statics};
use physics::recipe;
use physics::spec::{RuleId, check, check_statics};
use physics::units::{KG_PER_OZ, M_PER_IN};
use physics::weigh::Weighed;
use serde::Serialize;

use crate::ball::{BallFile, Hole};
use crate::checked::{RuleDoc, verdict};
use crate::laid::{DrilledBall, digit_name, insert_name};
use crate::tree::read_off;
use crate::weighed::{RgIn, WeighedDoc};
use crate::{Phrase, phrase};

/// A ball drilled for a hand. Directions are unit vectors in the ball frame.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct DrilledDoc {
    /// The holes of the grip, as a ball file has them.
    pub holes: Vec<Hole>,
    /// What lines them.
    pub inserts: Vec<InsertDoc>,
    /// Points and lines of the layout.
    pub marks: MarksDoc,
    /// The ball before drilling.
    pub before: WeighedDoc,
    /// The ball after drilling.
    pub after: WeighedDoc,
    /// What drilling changed: after less before.
    pub change: ChangeDoc,
    /// Static weights about the grip.
    pub statics: StaticsDoc,
    /// Where the axis of highest RG went.
    pub high_axis: AxisMoveDoc,
    /// Where the axis of lowest RG went.
    pub low_axis: AxisMoveDoc,
    /// What is wrong with the holes as they lie, the ball's own among them.
    pub conflicts: Vec<ConflictDoc>,
    /// The published rules for drilled balls.
    pub rules: Vec<RuleDoc>,
    /// What to mind.
    pub cautions: [Phrase; 3],
}

/// A finger insert or thumb sleeve.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct InsertDoc {
    /// What it is called.
    pub name: &'static str,
    /// The hole it lines.
    pub hole: &'static str,
    /// Diameter of the drill.
    pub drilled_diameter_in: f64,
    /// Length of the tube as it is weighed: to just below the ball's surface.
    pub length_in: f64,
    /// Weight of the tube.
    pub weight_oz: f64,
}

/// Points and lines of a layout.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct MarksDoc {
    /// The pin.
    pub pin: [f64; 3],
    /// The positive axis point.
    pub pap: [f64; 3],
    /// The mass bias side of the ball as its file draws it.
    pub mass_bias: [f64; 3],
    /// The grip centre.
    pub grip_centre: [f64; 3],
    /// Where the vertical axis line crosses the midline.
    pub foot: [f64; 3],
    /// From the grip centre to the fingers; the midline lies square to it.
    pub up: [f64; 3],
    /// From the grip centre to the PAP's side; the centre line lies square to it.
    pub over: [f64; 3],
    /// The vertical axis line lies square to this.
    pub val_pole: [f64; 3],
    /// Arc from the pin to the grip centre.
    pub pin_to_grip_centre_in: f64,
    /// Arc from the pin to the vertical axis line, the pin buffer; below 0: on
    /// the far side from the grip.
    pub pin_to_val_in: f64,
    /// Arc from the PAP to the grip centre.
    pub pap_to_grip_centre_in: f64,
}

/// After less before.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct ChangeDoc {
    /// Weight.
    pub weight_oz: f64,
    /// What the drill took out, before inserts went in.
    pub drilled_out_oz: f64,
    /// Principal radii of gyration.
    pub rg_in: RgIn,
    /// High minus low RG.
    pub differential_in: f64,
    /// High minus middle RG.
    pub intermediate_differential_in: f64,
}

/// Static weights on a scale arm of the ball's radius, about the grip centre.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct StaticsDoc {
    /// Top weight; below 0: bottom weight.
    pub top_oz: f64,
    /// Finger weight; below 0: thumb weight.
    pub finger_oz: f64,
    /// Weight on the PAP's side (positive side); below 0: on the other.
    pub side_oz: f64,
    /// Bound on the error of each.
    pub error_oz: f64,
    /// `pass`, `fail`, `too_close` or `not_applicable`, for each of the three.
    pub verdicts: [&'static str; 3],
}

/// Where an axis of the ball went.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct AxisMoveDoc {
    /// Before; `null` where the ball had no one such axis.
    pub before: Option<[f64; 3]>,
    /// After.
    pub after: Option<[f64; 3]>,
    /// The angle between.
    pub moved_deg: Option<f64>,
    /// The same along the surface.
    pub moved_in: Option<f64>,
    /// Along the surface from the pin to the axis's nearer end, after.
    pub to_pin_in: Option<f64>,
    /// Along the surface from the PAP to the axis's nearer end, after.
    pub to_pap_in: Option<f64>,
}

/// Something wrong with a hole, or two.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ConflictDoc {
    /// `meet`, `thin_web`, `leaves_ball` or `over_pin`.
    pub kind: &'static str,
    /// The holes.
    pub holes: Vec<String>,
    /// How far they meet or reach out, or what is left between them; `null`
    /// where there is no such length.
    pub size_in: Option<f64>,
    /// One plain sentence.
    pub message: Phrase,
}

fn cautions() -> [Phrase; 3] {
    [
        phrase!(
            "drill-chips",
            "Drilling throws hot, sharp chips and dust: it is work for a qualified pro shop with the right tools."
        ),
        phrase!(
            "drill-fit",
            "A grip that does not fit can hurt the hand: spans and pitches are measured on the bowler, not on a screen."
        ),
        phrase!(
            "drill-rules",
            "The current edition of the rules decides, and a balance scale tells the static weights of a real ball."
        ),
    ]
}

impl DrilledDoc {
    /// Puts a drilled ball beside the same ball undrilled; `before` and `after`
    /// are the two weighed.
    pub fn new(undrilled: &BallFile, before: &Weighed, drilled: &DrilledBall, after: &Weighed) -> Self {
        let DrilledBall { file, drilling } = drilled;
        let recipe = file.recipe();
        let (docs, marks) = ([WeighedDoc::new(undrilled, before), WeighedDoc::new(file, after)], &drilling.marks);
        let [before_doc, after_doc] = docs;
        let static_weights = statics(after, marks);
        let own = file.holes.as_deref().unwrap_or_default();
        let holes = own.iter().skip(own.len() - drilling.bores.len().min(own.len())).cloned().collect();
        // What was drilled is as wide as the insert's outside.
        let all = file.before_inserts().recipe().holes;
        let findings = check(&recipe, after, Some(&static_weights));
        let drilled_rules = [RuleId::StaticBalance, RuleId::Holes, RuleId::BalanceHole];
        let axis = |which| AxisMoveDoc::new(before, after, marks, which);
        Self {
            holes,
            inserts: drilling.bores.iter().filter_map(InsertDoc::new).collect(),
            marks: MarksDoc::new(marks, drilling.radius_m),
            change: ChangeDoc::new(&before_doc, &after_doc, drilling.bores.iter().map(Bored::insert_mass_kg).sum()),
            statics: StaticsDoc {
                top_oz: static_weights.top_oz,
                finger_oz: static_weights.finger_oz,
                side_oz: static_weights.side_oz,
                error_oz: static_weights.error_oz,
                verdicts: check_statics(after, &static_weights).map(verdict),
            },
            high_axis: axis(2),
            low_axis: axis(0),
            conflicts: conflicts(drilling.radius_m, &all).iter().map(|found| ConflictDoc::new(file, found)).collect(),
            rules: findings
                .iter()
                .filter(|finding| drilled_rules.contains(&finding.rule.id))
                .map(|finding| RuleDoc::new(file, finding))
                .collect(),
            cautions: cautions(),
            before: before_doc,
            after: after_doc,
        }
    }
}

impl InsertDoc {
    fn new(bored: &Bored) -> Option<Self> {
        let piece = bored.insert.as_ref()?;
        let recipe::Shape::Cylinder { height_m, .. } = piece.solid.shape else { return None };
        Some(Self {
            name: insert_name(bored.digit),
            hole: digit_name(bored.digit),
            drilled_diameter_in: bored.drilled_diameter_m / M_PER_IN,
            length_in: height_m / M_PER_IN,
            weight_oz: bored.insert_mass_kg() / KG_PER_OZ,
        })
    }
}

impl MarksDoc {
    fn new(marks: &Marks, radius_m: f64) -> Self {
        let arc_in = |a: &Vector3<f64>, b: &Vector3<f64>| radius_m * arc_rad(a, b) / M_PER_IN;
        Self {
            pin: marks.pin.into(),
            pap: marks.pap.into(),
            mass_bias: marks.mass_bias.into(),
            grip_centre: marks.grip_centre.into(),
            foot: marks.foot.into(),
            up: marks.up.into(),
            over: marks.over.into(),
            val_pole: marks.val_pole.into(),
            pin_to_grip_centre_in: arc_in(&marks.pin, &marks.grip_centre),
            pin_to_val_in: marks.to_val_m(&marks.pin, radius_m) / M_PER_IN,
            pap_to_grip_centre_in: arc_in(&marks.pap, &marks.grip_centre),
        }
    }
}

impl ChangeDoc {
    fn new(before: &WeighedDoc, after: &WeighedDoc, inserts_kg: f64) -> Self {
        let (a, b) = (&before.rg_in, &after.rg_in);
        Self {
            weight_oz: (after.mass_kg - before.mass_kg) / KG_PER_OZ,
            drilled_out_oz: (before.mass_kg - after.mass_kg + inserts_kg) / KG_PER_OZ,
            rg_in: RgIn { low: b.low - a.low, middle: b.middle - a.middle, high: b.high - a.high },
            differential_in: after.differential_in - before.differential_in,
            intermediate_differential_in: after.intermediate_differential_in - before.intermediate_differential_in,
        }
    }
}

impl AxisMoveDoc {
    fn new(before: &Weighed, after: &Weighed, marks: &Marks, which: usize) -> Self {
        let moved = axis_move(before, after, which);
        let radius_in = after.radius_m / M_PER_IN;
        let to = |point: &Vector3<f64>| moved.to_rad(point).map(|angle| radius_in * angle);
        Self {
            before: moved.before.map(Into::into),
            after: moved.after.map(Into::into),
            moved_deg: moved.moved_rad.map(f64::to_degrees),
            moved_in: moved.moved_rad.map(|angle| radius_in * angle),
            to_pin_in: to(&marks.pin),
            to_pap_in: to(&marks.pap),
        }
    }
}

impl ConflictDoc {
    fn new(file: &BallFile, conflict: &Conflict) -> Self {
        let inches = |metres: f64| read_off(metres / M_PER_IN);
        let name = |hole: usize| file.hole_name(hole);
        let said = |hole: usize| file.hole_said(hole);
        let of = |kind, holes: &[usize], size_m: Option<f64>, message| Self {
            kind,
            holes: holes.iter().map(|hole| name(*hole)).collect(),
            size_in: size_m.map(|size_m| size_m / M_PER_IN),
            message,
        };
        match *conflict {
            Conflict::Meet { holes: [a, b], by_m } => of(
                "meet",
                &[a, b],
                Some(by_m),
                phrase!(
                    "holes-meet",
                    "Holes run into each other by {by} in: {a} and {b}.",
                    by = inches(by_m),
                    a = said(a),
                    b = said(b)
                ),
            ),
            Conflict::ThinWeb { holes: [a, b], web_m } => of(
                "thin_web",
                &[a, b],
                Some(web_m),
                phrase!(
                    "thin-web",
                    "Only {left} in is left between {a} and {b}; common practice, no source, leaves 0.125 in or more.",
                    left = inches(web_m),
                    a = said(a),
                    b = said(b)
                ),
            ),
            Conflict::LeavesBall { hole, by_m } => of(
                "leaves_ball",
                &[hole],
                Some(by_m),
                phrase!(
                    "hole-leaves",
                    "A hole comes out of the ball by {by} in: {hole}.",
                    by = inches(by_m),
                    hole = said(hole)
                ),
            ),
            Conflict::OverPin { hole } => of(
                "over_pin",
                &[hole],
                None,
                phrase!("hole-over-pin", "A hole takes away the mark of the pin: {hole}.", hole = said(hole)),
            ),
        }
    }
}
