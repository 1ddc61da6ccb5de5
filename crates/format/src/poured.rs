//! What `pour` prints: how a ball is poured.

use physics::ball::Part;
use physics::pouring::{COST, LEAST_POCKET_M3, LINES_ACROSS, Pouring, USUAL_WASTE, pouring};
use physics::spec::{RULES, RuleId};
use physics::units::{KG_PER_LB, M_PER_IN};
use serde::Serialize;

use crate::ball::BallFile;
use crate::limits;
use crate::problem::Problem;
use crate::{Phrase, phrase};

/// Cubic centimetres in a cubic metre.
const CC_PER_M3: f64 = 1e6;
/// Lightest filler there is: hollow glass microspheres alone (from memory, unverified).
const LIGHTEST_G_CC: f64 = 0.125;
/// Narrower channels hardly let a filled resin through (model choice).
const NARROW_IN: f64 = 0.25;

/// How a ball is poured.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct PouredDoc {
    /// The ball's name.
    pub ball: String,
    /// Every pour, in order.
    pub pours: Vec<PourDoc>,
    /// Different moulds.
    pub moulds: usize,
    /// Part of each pour that is lost.
    pub waste: f64,
    /// Mass mixed, waste included.
    pub mixed_lb: f64,
    /// Relative cost; a pour by itself is 1.
    pub cost_index: f64,
    /// What the cost index is the sum of.
    pub cost: Vec<CostPartDoc>,
    /// Whether nothing stands in the way.
    pub pourable: bool,
    /// What stands in the way, one sentence each.
    pub faults: Vec<Phrase>,
    /// What to mind, one sentence each.
    pub cautions: Vec<Phrase>,
    /// What was assumed.
    pub notes: [Phrase; 4],
}

/// One pour.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct PourDoc {
    /// Number of the part: 0 is the cover.
    pub part: usize,
    /// What it is called.
    pub name: String,
    /// What is set into the mould before.
    pub around: Vec<String>,
    /// Those of them that nothing holds.
    pub floating: Vec<String>,
    /// Number of the mould, from 1.
    pub mould: usize,
    /// Density.
    pub density_g_cc: f64,
    /// Volume that it fills in the ball.
    pub volume_cc: f64,
    /// What must be mixed, waste included.
    pub mixed_cc: f64,
    /// Mass of that.
    pub mixed_lb: f64,
    /// Closed pockets that the pour cannot reach, about.
    pub pockets_cc: Vec<f64>,
    /// Width of every cut: the channels of what is poured round it.
    pub channels_in: Vec<f64>,
}

/// A part of the cost index.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct CostPartDoc {
    /// What.
    pub what: Phrase,
    /// How many, or how much.
    pub count: f64,
    /// What each counts.
    pub each: f64,
    /// Both multiplied.
    pub cost: f64,
}

impl BallFile {
    /// How this ball is poured; `waste` is the part of each pour that is lost,
    /// 0 to 0.9, a usual one (model choice) where it is `None`.
    ///
    /// # Errors
    /// Where the ball cannot be made or the waste is no such part.
    pub fn pour(&self, waste: Option<f64>) -> Result<PouredDoc, Problem> {
        let waste = waste.unwrap_or(USUAL_WASTE);
        if !(0.0..=0.9).contains(&waste) {
            return Err(Problem::new("waste", waste.into(), limits::WASTE.words()));
        }
        let made = pouring(&self.recipe(), waste).map_err(|error| self.problem(&error))?;
        let pours: Vec<PourDoc> = made.pours.iter().map(|pour| self.pour_doc(pour)).collect();
        let faults = self.faults(&made, &pours);
        let cost = |what, count: f64, each: f64| CostPartDoc { what, count, each, cost: count * each };
        Ok(PouredDoc {
            ball: self.name.clone(),
            moulds: made.moulds,
            waste,
            mixed_lb: made.mixed_kg / KG_PER_LB,
            cost_index: made.cost_index,
            cost: vec![
                cost(phrase!("cost-pours", "pours"), made.pours.len() as f64, COST.pour),
                cost(phrase!("cost-moulds", "moulds"), made.moulds as f64, COST.mould),
                cost(phrase!("cost-settings", "pieces set into a mould"), made.settings as f64, COST.setting),
                cost(phrase!("cost-cuts", "cuts"), made.cuts as f64, COST.cut),
                cost(phrase!("cost-kg", "kilograms mixed"), made.mixed_kg, COST.kg),
            ],
            pourable: faults.is_empty(),
            faults,
            cautions: self.cautions(&made, &pours),
            notes: notes(),
            pours,
        })
    }

    fn pour_doc(&self, pour: &physics::pouring::Pour) -> PourDoc {
        let name = |n: &usize| self.pieces.get(*n).map_or_else(String::new, |piece| piece.name.clone());
        let (part, density_g_cc) = match pour.part {
            Part::Cover => (0, self.cover.density_g_cc),
            Part::Piece(n) => (n + 1, self.pieces.get(n).map_or(f64::NAN, |piece| piece.density_g_cc)),
        };
        PourDoc {
            part,
            name: self.part_name(pour.part).to_owned(),
            around: pour.around.iter().map(name).collect(),
            floating: pour.floating.iter().map(name).collect(),
            mould: pour.mould + 1,
            density_g_cc,
            volume_cc: pour.volume_m3 * CC_PER_M3,
            mixed_cc: pour.mixed_m3 * CC_PER_M3,
            mixed_lb: pour.mixed_kg / KG_PER_LB,
            pockets_cc: pour.pockets_m3.iter().map(|volume| volume * CC_PER_M3).collect(),
            channels_in: pour.channels_m.iter().map(|width| width / M_PER_IN).collect(),
        }
    }

    fn faults(&self, made: &Pouring, pours: &[PourDoc]) -> Vec<Phrase> {
        let mut faults = Vec::new();
        let densest = RULES.iter().find(|rule| rule.id == RuleId::Density).and_then(|rule| rule.at_most);
        for pour in pours {
            let name = &pour.name;
            if let Some(most) = densest.filter(|most| pour.density_g_cc > *most) {
                faults.push(phrase!(
                    "pour-too-dense",
                    "{name}: {density} g/cc is over the published limit of {most} g/cc.",
                    name = name,
                    density = pour.density_g_cc,
                    most = format!("{most:.2}")
                ));
            }
            for floating in &pour.floating {
                faults.push(phrase!(
                    "pour-floats",
                    "{piece} floats while {name} is poured: it stands off the pin's axis and touches nothing that is held.",
                    piece = floating,
                    name = name
                ));
            }
            for pocket in &pour.pockets_cc {
                faults.push(phrase!(
                    "pour-pocket",
                    "{name}: a closed pocket of about {pocket} cc has no channel; it stays empty, and voids are not \
                     allowed (published limit). Cut a channel, or pour it by itself.",
                    name = name,
                    pocket = format!("{pocket:.1}")
                ));
            }
        }
        for n in &made.hidden {
            let name = self.part_name(Part::Piece(*n));
            faults.push(phrase!(
                "pour-hidden",
                "{name} fills nothing of the ball: later pieces take its place. It is not poured.",
                name = name
            ));
        }
        faults
    }

    fn cautions(&self, made: &Pouring, pours: &[PourDoc]) -> Vec<Phrase> {
        let mut cautions = Vec::new();
        for (pour, own) in made.pours.iter().zip(pours) {
            if own.density_g_cc < LIGHTEST_G_CC {
                cautions.push(phrase!(
                    "pour-too-light",
                    "{name}: lighter than any filler; hollow glass spheres alone are about {least} g/cc (from memory).",
                    name = &own.name,
                    least = LIGHTEST_G_CC
                ));
            }
            let Part::Piece(n) = pour.part else { continue };
            let cuts = self.pieces.get(n).and_then(|piece| piece.cuts.as_ref());
            for (k, width) in own.channels_in.iter().enumerate().filter(|(_, width)| **width < NARROW_IN) {
                let name = cuts.and_then(|cuts| cuts.get(k)).and_then(|cut| cut.name.clone());
                cautions.push(phrase!(
                    "pour-narrow",
                    "{name}: {cut} is {width} in wide; a filled resin hardly flows through less than {least} in (model choice).",
                    name = &own.name,
                    cut = name.map_or_else(|| phrase!("cut-number", "cut {number}", number = k + 1), Phrase::from),
                    width = format!("{width:.2}"),
                    least = NARROW_IN
                ));
            }
        }
        cautions
    }
}

fn notes() -> [Phrase; 4] {
    [
        phrase!(
            "pour-note-order",
            "What lies inside is cast first: the recipe's last piece first, the cover last. Every piece has a mould of its \
         own; pieces of one shape with nothing set into them share one (model choice)."
        ),
        phrase!(
            "pour-note-held",
            "The pin holds what stands on its axis, the mould's wall what reaches through it, and either what overlaps \
         them (model choice)."
        ),
        phrase!(
            "pour-note-pockets",
            "Pockets are looked for on {lines} by {lines} lines across the ball: channels narrower than 0.07 in and \
             pockets under {least} cc may be missed.",
            lines = LINES_ACROSS,
            least = format!("{:.1}", LEAST_POCKET_M3 * CC_PER_M3)
        ),
        phrase!(
            "pour-note-cost",
            "Cost index = {pour} × pours + {mould} × moulds + {setting} × pieces set into a mould + {cut} × cuts + {kg} × \
             kilograms mixed (model choice; it compares balls and is no price).",
            pour = COST.pour,
            mould = COST.mould,
            setting = COST.setting,
            cut = COST.cut,
            kg = COST.kg
        ),
    ]
}
