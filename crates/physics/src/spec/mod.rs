//! A ball against the published limits, rule by rule.
//!
//! The rules are those of the United States Bowling Congress, Equipment
//! Specifications and Certifications, as read from its notices and from pages
//! that quote it, not from the manual itself. The current edition always
//! decides, and what a laboratory measures is not decided here at all.

mod rules;

use crate::ball::Part;
use crate::drill::Statics;
use crate::recipe::Recipe;
use crate::units::{KG_M3_PER_G_CC, KG_PER_LB, KG_PER_OZ, M_PER_IN};
use crate::weigh::Weighed;
pub use rules::{RULES, Rule, RuleId, Unit};

/// The RG rules and the roundness rule are for balls of this weight and up.
pub const HEAVY_FROM_LB: f64 = 13.0;
/// The static balance rule is for drilled balls over this weight.
pub const BALANCE_OVER_LB: f64 = 10.0;
/// Relative room for the rounding of a unit's conversion of a number that the
/// recipe gives: 8.500 in stays 8.500 in after a way through metres.
const ROUNDING: f64 = 1e-12;

/// What came of holding a ball to a rule.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// Within the limit by more than the error of the value.
    Pass,
    /// Outside the limit by more than the error of the value.
    Fail,
    /// So near the limit that the error of the value decides: no verdict.
    TooClose,
    /// The rule is not for this ball; `Rule::applies` says for which.
    NotApplicable,
    /// Not to be told from a recipe; `Rule::otherwise` says what would tell.
    NotComputed,
}

/// One rule and what came of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Finding {
    /// The rule.
    pub rule: &'static Rule,
    /// What came of it.
    pub verdict: Verdict,
    /// The value held to the rule, in the rule's unit; `None` where there is none.
    pub found: Option<f64>,
    /// Bound on the error of `found`, same unit.
    pub error: f64,
    /// The part the value belongs to, where it belongs to one.
    pub part: Option<Part>,
    /// What `found` is where the rule is static balance and there is a value.
    pub imbalance: Option<Imbalance>,
}

/// What a drilled ball's static balance was measured along.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Imbalance {
    /// The grip is known: the largest of its top or bottom, finger or thumb, and
    /// side weight.
    OverGrip,
    /// The grip is not known: all of it, whichever way it lies. None of the
    /// three can be more.
    Whole,
}

/// A value and its error bound, or why there is none.
enum Found {
    Value { value: f64, error: f64, part: Option<Part> },
    No(Verdict),
}

/// Holds a ball to every published limit, in the order of [`RULES`].
///
/// `weighed` must be the weighed ball of `recipe`. A verdict is given only
/// where the value is away from the limit by more than its own error. Where
/// the grip's `statics` are known, static balance is the largest of the three.
pub fn check(recipe: &Recipe, weighed: &Weighed, statics: Option<&Statics>) -> Vec<Finding> {
    let finding = |rule: &'static Rule| {
        let finding = judge(rule, found(rule.id, recipe, weighed, statics));
        let imbalance = if statics.is_some() { Imbalance::OverGrip } else { Imbalance::Whole };
        let of_balance = rule.id == RuleId::StaticBalance && finding.found.is_some();
        let finding = Finding { imbalance: of_balance.then_some(imbalance), ..finding };
        let by_weight = matches!(rule.id, RuleId::LowRg | RuleId::HighRg);
        let unsure = by_weight && (weighed.mass_kg / KG_PER_LB - HEAVY_FROM_LB).abs() <= weight_error_lb(weighed);
        match finding.verdict {
            // Whether the rule is for this ball at all is within the error.
            Verdict::Fail if unsure => Finding { verdict: Verdict::TooClose, ..finding },
            _ => finding,
        }
    };
    RULES.iter().map(finding).collect()
}

/// A drilled ball's top or bottom, finger or thumb, and side weight, each held
/// to the rule of static balance.
pub fn check_statics(weighed: &Weighed, statics: &Statics) -> [Verdict; 3] {
    [statics.top_oz, statics.finger_oz, statics.side_oz].map(|oz| {
        if no_balance_rule(weighed) {
            return Verdict::NotApplicable;
        }
        let value = Found::Value { value: oz.abs(), error: statics.error_oz, part: None };
        judge(&rules::STATIC_BALANCE, value).verdict
    })
}

/// Bound on the error of the weight; at least what a ball made to weigh a round
/// number of pounds may miss it by.
fn weight_error_lb(weighed: &Weighed) -> f64 {
    (weighed.relative_error * weighed.mass_kg / KG_PER_LB).max(1e-9)
}

fn judge(rule: &'static Rule, found: Found) -> Finding {
    match found {
        Found::No(verdict) => Finding { rule, verdict, found: None, error: 0.0, part: None, imbalance: None },
        Found::Value { value, error, part } => {
            let over = |limit: Option<f64>, sign: f64| limit.map_or(f64::NEG_INFINITY, |limit| sign * (value - limit));
            // How far outside the nearer limit; below 0: inside.
            let outside = over(rule.at_most, 1.0).max(over(rule.at_least, -1.0));
            let verdict = if outside > error {
                Verdict::Fail
            } else if outside <= -error || error <= ROUNDING * value.abs() {
                Verdict::Pass
            } else {
                Verdict::TooClose
            };
            Finding { rule, verdict, found: Some(value), error, part, imbalance: None }
        }
    }
}

fn found(id: RuleId, recipe: &Recipe, weighed: &Weighed, statics: Option<&Statics>) -> Found {
    let relative = weighed.relative_error;
    let weight_lb = weighed.mass_kg / KG_PER_LB;
    let heavy = weight_lb >= HEAVY_FROM_LB - weight_error_lb(weighed);
    let [low_in, _, high_in] = weighed.rg_m.map(|rg_m| rg_m / M_PER_IN);
    let value = |value: f64, error: f64| Found::Value { value, error, part: None };
    let exact = |exact: f64| value(exact, ROUNDING * exact);
    match id {
        RuleId::Weight => value(weight_lb, relative * weight_lb),
        RuleId::Diameter => exact(recipe.diameter_m / M_PER_IN),
        RuleId::Density => {
            let (part, density) = densest(recipe);
            let density_g_cc = density / KG_M3_PER_G_CC;
            Found::Value { value: density_g_cc, error: ROUNDING * density_g_cc, part: Some(part) }
        }
        RuleId::LowRg | RuleId::HighRg | RuleId::Roundness if !heavy => Found::No(Verdict::NotApplicable),
        RuleId::LowRg => value(low_in, relative * low_in),
        RuleId::HighRg => value(high_in, relative * high_in),
        RuleId::Differential => value(high_in - low_in, relative * (high_in + low_in)),
        RuleId::LowRgMark => low_axis_from_pin(weighed),
        RuleId::StaticBalance => static_balance(recipe, weighed, statics),
        RuleId::Holes | RuleId::BalanceHole if recipe.holes.is_empty() => Found::No(Verdict::NotApplicable),
        RuleId::Holes => value(recipe.holes.len() as f64, 0.0),
        RuleId::HighRgMark
        | RuleId::BalanceHole
        | RuleId::Voids
        | RuleId::Hardness
        | RuleId::Roughness
        | RuleId::Friction
        | RuleId::Roundness => Found::No(Verdict::NotComputed),
    }
}

/// The densest part of the recipe, kg/m³.
fn densest(recipe: &Recipe) -> (Part, f64) {
    let cover = (Part::Cover, recipe.cover_density_kg_m3);
    let pieces = recipe.pieces.iter().enumerate().map(|(n, piece)| (Part::Piece(n), piece.density_kg_m3));
    pieces.fold(cover, |most, next| if next.1 > most.1 { next } else { most })
}

/// From the pin (the +z pole) to where the low-RG axis leaves the ball, along
/// the cover, in inches.
fn low_axis_from_pin(weighed: &Weighed) -> Found {
    let Some(error_rad) = weighed.axis_error_rad(0) else {
        // Every axis across is as low as this one: nothing to mark.
        return Found::No(Verdict::NotComputed);
    };
    let axis = weighed.axes[0];
    let angle_rad = libm::atan2(libm::hypot(axis.x, axis.y), axis.z);
    let radius_in = weighed.radius_m / M_PER_IN;
    Found::Value { value: radius_in * angle_rad, error: radius_in * error_rad, part: None }
}

/// Whether the ball is too light for the rule of static balance.
fn no_balance_rule(weighed: &Weighed) -> bool {
    weighed.mass_kg / KG_PER_LB < BALANCE_OVER_LB - weight_error_lb(weighed)
}

/// Unbalance of a drilled ball, in ounces, on a scale arm of the ball's radius.
///
/// The rule measures along three directions that the grip gives. Where the
/// grip is not known, the worst direction there is counts: where that has not
/// too much, all three pass; otherwise the grip decides.
fn static_balance(recipe: &Recipe, weighed: &Weighed, statics: Option<&Statics>) -> Found {
    if recipe.holes.is_empty() || no_balance_rule(weighed) {
        return Found::No(Verdict::NotApplicable);
    }
    if let Some(Statics { top_oz, finger_oz, side_oz, error_oz }) = statics {
        let value = top_oz.abs().max(finger_oz.abs()).max(side_oz.abs());
        return Found::Value { value, error: *error_oz, part: None };
    }
    let worst_oz = weighed.mass_kg * weighed.cg_m.norm() / weighed.radius_m / KG_PER_OZ;
    // No point of the ball is farther than R out: R times the error of the mass.
    let error_oz = weighed.relative_error * weighed.mass_kg / KG_PER_OZ;
    if worst_oz + error_oz > rules::STATIC_BALANCE_OZ {
        return Found::No(Verdict::NotComputed);
    }
    Found::Value { value: worst_oz, error: error_oz, part: None }
}

#[cfg(test)]
mod tests;
