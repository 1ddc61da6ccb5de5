//! What `ladder` prints: one ball at other weights.

use physics::ball::Part;
use physics::ladder::{By, LadderError, Rung, Trouble, WEIGHTS_LB, floating_mass_kg, ladder};
use physics::spec::{Finding, Verdict, check};
use physics::units::{KG_M3_PER_G_CC, KG_PER_LB, M_PER_IN};
use physics::weigh::weigh;
use serde::Serialize;

use crate::ball::{BallFile, Cut};
use crate::checked::{rule_name, unit, word};
use crate::materials::usual_g_cc;
use crate::node::one_of;
use crate::problem::Problem;
use crate::shape::Form;
use crate::weighed::RgIn;
use crate::{Phrase, phrase};

/// A ball's weight line, heaviest first.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct LadderDoc {
    /// The ball at every weight.
    pub rungs: Vec<RungDoc>,
    /// What changes: `density` or `size`.
    pub by: &'static str,
    /// The parts that change, in the recipe's order.
    pub parts: Vec<String>,
    /// A ball of this volume that weighs less floats in water of 1.000 g/cc.
    pub floating_weight_lb: f64,
}

/// The ball at one weight. Its numbers are null where it cannot be made.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct RungDoc {
    /// The weight asked for.
    pub weight_lb: f64,
    /// Density that the first changed part has, or would have to have where
    /// the weight cannot be reached otherwise; null where none would do.
    pub density_g_cc: Option<f64>,
    /// Principal radii of gyration.
    pub rg_in: Option<RgIn>,
    /// High minus low RG.
    pub differential_in: Option<f64>,
    /// High minus middle RG.
    pub intermediate_differential_in: Option<f64>,
    /// Top weight on a scale arm of the ball's radius.
    pub top_weight_oz: Option<f64>,
    /// Whether the ball can be had.
    pub feasible: bool,
    /// Why not, in one sentence.
    pub why: Option<Phrase>,
    /// What to mind where it can be had.
    pub caution: Option<Phrase>,
    /// Changed parts whose material does not usually have the density they get, a
    /// sentence each; empty where the ball cannot be had.
    pub unusual: Vec<Phrase>,
    /// Published limits that the ball would not keep to.
    pub limits_broken: Vec<BrokenDoc>,
    /// Factor on the sizes; null where no size will do.
    pub size_factor: Option<f64>,
    /// Every part that changes.
    pub changed: Vec<ChangedDoc>,
    /// Whether the ball floats in water of 1.000 g/cc.
    pub floats: bool,
    /// The ball file at this weight, its name with the weight; null where there is none.
    pub ball: Option<BallFile>,
}

/// A published limit that a ball would not keep to.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct BrokenDoc {
    /// The fixed word of the rule, as `check` prints it.
    pub rule: &'static str,
    /// What the rule is called.
    pub name: Phrase,
    /// The value against the limit, in words.
    pub message: Phrase,
}

/// A part that changes from weight to weight.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ChangedDoc {
    /// What it is called.
    pub name: String,
    /// Its density at this weight, or what it would have to be, 0 or less
    /// included; null where none would do.
    pub density_g_cc: Option<f64>,
    /// Lowest and highest density that its material usually has; null where
    /// the file names none that is known.
    pub usual_g_cc: Option<[f64; 2]>,
}

impl BallFile {
    /// The part of this name.
    ///
    /// # Errors
    /// Where no part has this name, or more than one: which ones there are.
    pub fn part_named(&self, name: &str) -> Result<Part, Problem> {
        let pieces = (0..self.pieces.len()).map(Part::Piece);
        let parts: Vec<Part> = std::iter::once(Part::Cover).chain(pieces).collect();
        let named: Vec<Part> = parts.iter().copied().filter(|part| self.part_name(*part) == name).collect();
        match named[..] {
            [part] => Ok(part),
            // Whatever the cover is called, it is the cover.
            [] if name == "cover" => Ok(Part::Cover),
            _ => {
                let names: Vec<String> = parts.iter().map(|part| format!("{:?}", self.part_name(*part))).collect();
                let name = format!("{name:?}");
                let message = if named.is_empty() {
                    phrase!("no-part-called", "No part of the ball is called {name}.", name = &name)
                } else {
                    phrase!("parts-called", "More than one part of the ball is called {name}.", name = &name)
                };
                Err(Problem::new("piece", name.into(), one_of(&names)).saying(message))
            }
        }
    }

    /// This ball at the usual weights, by changing `chosen` alone.
    ///
    /// # Errors
    /// Where the ball cannot be made, or the choice makes no sense.
    pub fn ladder(&self, chosen: &[Part], by: By) -> Result<LadderDoc, Problem> {
        let weighed = weigh(&self.build()?);
        let targets_kg = WEIGHTS_LB.map(|weight_lb| weight_lb * KG_PER_LB);
        let rungs = ladder(&self.recipe(), chosen, by, &targets_kg).map_err(|error| self.ladder_problem(&error))?;
        let floating_kg = floating_mass_kg(&weighed);
        let pieces = (0..self.pieces.len()).map(Part::Piece);
        let parts: Vec<Part> = std::iter::once(Part::Cover).chain(pieces).filter(|p| chosen.contains(p)).collect();
        Ok(LadderDoc {
            rungs: rungs.iter().map(|rung| self.rung(rung, &parts, by, floating_kg)).collect(),
            by: match by {
                By::Density => "density",
                By::Size => "size",
            },
            parts: parts.iter().map(|part| self.part_name(*part).to_owned()).collect(),
            floating_weight_lb: floating_kg / KG_PER_LB,
        })
    }

    fn ladder_problem(&self, error: &LadderError) -> Problem {
        match error {
            LadderError::Recipe(error) => self.problem(error),
            LadderError::NoSuchPart { pieces } => {
                let accepted = phrase!("some-part", "the cover or one of the {count} pieces", count = *pieces);
                Problem::new("piece", phrase!("another", "another"), accepted)
                    .saying(phrase!("no-such-part", "The ball has no such part."))
            }
            LadderError::CoverSize => Problem::new(
                "by",
                phrase!("cover-size", "size of the cover"),
                phrase!("cover-density", "the density of the cover, or a piece"),
            )
            .saying(phrase!("cover-no-size", "The cover has no size of its own: it is as large as the ball.")),
        }
    }

    fn rung(&self, rung: &Rung, parts: &[Part], by: By, floating_kg: f64) -> RungDoc {
        let changed: Vec<ChangedDoc> = parts
            .iter()
            .map(|part| ChangedDoc {
                name: self.part_name(*part).to_owned(),
                density_g_cc: rung.density_factor.map(|factor| factor * self.density_g_cc(*part)),
                usual_g_cc: self.material(*part).and_then(usual_g_cc),
            })
            .collect();
        let weighed = rung.made.as_ref().map(|(_, weighed)| weighed);
        let inches = |metres: f64| metres / M_PER_IN;
        RungDoc {
            weight_lb: rung.target_kg / KG_PER_LB,
            density_g_cc: changed.first().and_then(|part| part.density_g_cc),
            rg_in: weighed.map(|weighed| {
                let [low, middle, high] = weighed.rg_m.map(inches);
                RgIn { low, middle, high }
            }),
            differential_in: weighed.map(|weighed| inches(weighed.differential_m())),
            intermediate_differential_in: weighed.map(|weighed| inches(weighed.intermediate_differential_m())),
            top_weight_oz: weighed.map(physics::weigh::Weighed::top_weight_oz),
            feasible: rung.trouble.is_none(),
            why: rung.trouble.map(|trouble| why(trouble, &changed)),
            caution: caution(rung.trouble, &changed),
            unusual: if rung.trouble.is_none() { changed.iter().filter_map(unusual).collect() } else { Vec::new() },
            limits_broken: rung.made.as_ref().map_or_else(Vec::new, |(recipe, weighed)| {
                check(recipe, weighed, None).iter().filter_map(broken).collect()
            }),
            size_factor: rung.size_factor,
            changed,
            floats: rung.target_kg < floating_kg,
            ball: rung.made.is_some().then(|| self.at_rung(rung, parts, by)),
        }
    }

    /// This file with the rung's factor on the chosen parts, and its weight in the name.
    fn at_rung(&self, rung: &Rung, parts: &[Part], by: By) -> Self {
        let mut file = self.clone();
        file.name = format!("{}, {:.0} lb", without_weight(&self.name), rung.target_kg / KG_PER_LB);
        for part in parts {
            match (part, by) {
                (Part::Cover, _) => file.cover.density_g_cc *= rung.density_factor.unwrap_or(1.0),
                (Part::Piece(n), By::Density) => file.pieces[*n].density_g_cc *= rung.density_factor.unwrap_or(1.0),
                (Part::Piece(n), By::Size) => {
                    let (piece, factor) = (&mut file.pieces[*n], rung.size_factor.unwrap_or(1.0));
                    grow(&mut piece.shape.form, factor);
                    piece.cuts.iter_mut().flatten().for_each(|cut| grow_cut(cut, factor));
                }
            }
        }
        file
    }

    fn material(&self, part: Part) -> Option<&str> {
        match part {
            Part::Cover => self.cover.material.as_deref(),
            Part::Piece(piece) => self.pieces.get(piece)?.material.as_deref(),
        }
    }

    pub(crate) fn density_g_cc(&self, part: Part) -> f64 {
        match part {
            Part::Cover => self.cover.density_g_cc,
            Part::Piece(piece) => self.pieces.get(piece).map_or(f64::NAN, |piece| piece.density_g_cc),
        }
    }
}

/// A name less the weight that an earlier rung gave it.
fn without_weight(name: &str) -> &str {
    let weight = |end: &str| end.strip_suffix(" lb").is_some_and(|number| number.parse::<u8>().is_ok());
    name.rsplit_once(", ").filter(|(_, end)| weight(end)).map_or(name, |(name, _)| name)
}

/// A cut grows with its piece, about the piece's origin.
fn grow_cut(cut: &mut Cut, factor: f64) {
    grow(&mut cut.shape.form, factor);
    cut.at_in.iter_mut().flatten().for_each(|inches| *inches *= factor);
}

fn grow(form: &mut Form, factor: f64) {
    let sizes: Vec<&mut f64> = match form {
        Form::Sphere { diameter_in } => vec![diameter_in],
        Form::Ellipsoid { size_in } | Form::Box { size_in } => size_in.iter_mut().collect(),
        Form::Cylinder { diameter_in, height_in } => vec![diameter_in, height_in],
        Form::Frustum { bottom_diameter_in, top_diameter_in, height_in } => {
            vec![bottom_diameter_in, top_diameter_in, height_in]
        }
        Form::Ring { ring_diameter_in, tube_diameter_in } => vec![ring_diameter_in, tube_diameter_in],
        Form::Lathe { profile_in } => profile_in.iter_mut().flatten().collect(),
    };
    sizes.into_iter().for_each(|inches| *inches *= factor);
}

/// Lightest filler there is: hollow glass microspheres alone (from memory, unverified).
const LIGHTEST_G_CC: f64 = 0.125;

/// A density that physics allows but no filler has.
fn caution(trouble: Option<Trouble>, changed: &[ChangedDoc]) -> Option<Phrase> {
    let lightest = changed.iter().filter_map(|part| part.density_g_cc).fold(f64::INFINITY, f64::min);
    let unheard_of = trouble.is_none() && lightest < LIGHTEST_G_CC;
    unheard_of.then(|| {
        phrase!(
            "rung-too-light",
            "Lighter than any filler: hollow glass spheres alone are about {least} g/cc (from memory).",
            least = LIGHTEST_G_CC
        )
    })
}

/// A density that the part's material does not usually have.
fn unusual(part: &ChangedDoc) -> Option<Phrase> {
    let (density, [low, high]) = (part.density_g_cc?, part.usual_g_cc?);
    let usual = if low == high { format!("{low:.2}").into() } else { usual_range([low, high]) };
    let outside = !(low..=high).contains(&density);
    outside.then(|| {
        phrase!(
            "rung-unusual",
            "{name} would be {density} g/cc, its material usually {usual}.",
            name = &part.name,
            density = format!("{density:.2}"),
            usual = usual
        )
    })
}

fn usual_range([low, high]: [f64; 2]) -> Phrase {
    phrase!("a-to-b", "{a} to {b}", a = format!("{low:.2}"), b = format!("{high:.2}"))
}

fn broken(finding: &Finding) -> Option<BrokenDoc> {
    let (rule, found) = (finding.rule, finding.found.filter(|_| finding.verdict == Verdict::Fail)?);
    let (side, limit) = match (rule.at_least, rule.at_most) {
        (Some(least), _) if found < least => (phrase!("limit-under", "under"), least),
        (_, Some(most)) => (phrase!("limit-over", "over"), most),
        _ => return None,
    };
    let unit = unit(rule.unit);
    let message = phrase!(
        "limit-broken",
        "{rule} {found} {unit}, {side} the published {limit} {unit}.",
        rule = rule_name(rule),
        found = format!("{found:.3}"),
        unit = unit,
        side = side,
        limit = format!("{limit:.3}")
    );
    Some(BrokenDoc { rule: word(rule.id), name: rule_name(rule), message })
}

/// One sentence, with the density it would need against what is usual.
fn why(trouble: Trouble, changed: &[ChangedDoc]) -> Phrase {
    let limit = physics::ladder::MOST_DENSITY_KG_M3 / KG_M3_PER_G_CC;
    let needed = changed.iter().filter_map(|part| {
        let density = format!("{:.2}", part.density_g_cc?);
        Some(match part.usual_g_cc {
            None => phrase!("part-at", "{name} at {density} g/cc", name = &part.name, density = density),
            Some(usual) => phrase!(
                "part-at-usually",
                "{name} at {density} g/cc (usually {usual})",
                name = &part.name,
                density = density,
                usual = usual_range(usual)
            ),
        })
    });
    let and = |one, next| phrase!("and", "{one} and {next}", one = one, next = next);
    let needed = needed.reduce(and).unwrap_or_default();
    let instead = |trouble: Phrase| match changed.first().and_then(|part| part.density_g_cc) {
        Some(_) => phrase!(
            "rung-instead",
            "{trouble}; at the present size it would take {needed}.",
            trouble = trouble,
            needed = needed.clone()
        ),
        None => {
            phrase!("rung-no-density", "{trouble}; at the present size no density would do either.", trouble = trouble)
        }
    };
    match trouble {
        Trouble::DensityNotPositive => {
            phrase!(
                "rung-too-heavy",
                "The rest of the ball is too heavy already: it would take {needed}.",
                needed = needed
            )
        }
        Trouble::DensityAboveLimit => {
            phrase!(
                "rung-too-dense",
                "It would take {needed}, over the published limit of {limit} g/cc.",
                needed = needed,
                limit = format!("{limit:.2}")
            )
        }
        Trouble::FillsNothing => {
            phrase!("rung-fills-nothing", "It fills nothing of the ball: later pieces take its place.")
        }
        Trouble::SticksOut => instead(phrase!("rung-sticks-out", "It would stick out of the ball first")),
        Trouble::VanishesFirst => instead(phrase!("rung-vanishes", "It would shrink to nothing first")),
        Trouble::NoSize => instead(phrase!("rung-no-size", "No size gives this weight")),
    }
}
