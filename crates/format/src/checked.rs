//! What `check` prints: a ball against the published limits.

use physics::ball::Part;
use physics::spec::{Finding, Imbalance, Rule, RuleId, Unit, Verdict};
use serde::Serialize;

use crate::ball::BallFile;
use crate::{Phrase, phrase};

/// A ball held to every published limit.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct CheckedDoc {
    /// Every rule, those that can be computed first.
    pub rules: Vec<RuleDoc>,
    /// What decides in the end.
    pub decides: Phrase,
}

/// One rule and what came of it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct RuleDoc {
    /// A fixed word for programs.
    pub rule: &'static str,
    /// What it is called.
    pub name: Phrase,
    /// `pass`, `fail`, `too_close`, `not_applicable` or `not_computed`.
    pub verdict: &'static str,
    /// The value held to the rule; null where there is none.
    pub found: Option<f64>,
    /// Bound on the error of `found`.
    pub error: Option<f64>,
    /// The name of the part that the value belongs to.
    pub part: Option<String>,
    /// Of static balance, what `found` is: `largest over the grip`, or where the
    /// grip is not known `whole imbalance`, which none of the three can exceed.
    /// Null for other rules.
    pub found_is: Option<Phrase>,
    /// Unit of the numbers; empty where they have none.
    pub unit: &'static str,
    /// Smallest value allowed.
    pub at_least: Option<f64>,
    /// Largest value allowed.
    pub at_most: Option<f64>,
    /// Which balls the rule is for.
    pub applies: Phrase,
    /// What would tell where it cannot be computed, or how it is computed.
    pub note: Phrase,
    /// Where it was published.
    pub source: Phrase,
    /// Since when, and what stood before.
    pub edition: Phrase,
}

impl CheckedDoc {
    /// Puts what physics found into words, with the names of its file.
    pub fn new(file: &BallFile, findings: &[Finding]) -> Self {
        let rules = findings.iter().map(|finding| RuleDoc::new(file, finding)).collect();
        Self {
            rules,
            decides: phrase!(
                "decides",
                "The current edition of the rules decides; this is the ball as its file gives it."
            ),
        }
    }
}

impl RuleDoc {
    pub(crate) fn new(file: &BallFile, finding: &Finding) -> Self {
        let rule = finding.rule;
        Self {
            rule: word(rule.id),
            name: rule_name(rule),
            verdict: verdict(finding.verdict),
            found: finding.found,
            error: finding.found.map(|_| finding.error),
            part: finding.part.map(|part| file.part_name(part).to_owned()),
            found_is: finding.imbalance.map(|imbalance| match imbalance {
                Imbalance::OverGrip => phrase!("largest-over-grip", "largest over the grip"),
                Imbalance::Whole => phrase!("whole-imbalance", "whole imbalance"),
            }),
            unit: unit(rule.unit),
            at_least: rule.at_least,
            at_most: rule.at_most,
            applies: if rule.applies.is_empty() {
                phrase!("all-balls", "all balls")
            } else {
                rule_text(rule, "applies", rule.applies)
            },
            note: rule_text(rule, "note", rule.otherwise),
            source: Phrase::known("rule", "source", rule.source()),
            edition: rule_text(rule, "edition", rule.edition),
        }
    }
}

/// A fixed text of a rule, known by the rule and which of its texts it is.
fn rule_text(rule: &Rule, which: &str, text: &str) -> Phrase {
    if text.is_empty() { Phrase::default() } else { Phrase::known("rule", &format!("{} {which}", word(rule.id)), text) }
}

pub(crate) fn rule_name(rule: &Rule) -> Phrase {
    rule_text(rule, "name", rule.name)
}

impl BallFile {
    /// What a part is called.
    pub fn part_name(&self, part: Part) -> &str {
        match part {
            Part::Cover => self.cover_name(),
            Part::Piece(piece) => self.pieces.get(piece).map_or("", |piece| &piece.name),
        }
    }
}

pub(crate) fn verdict(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Pass => "pass",
        Verdict::Fail => "fail",
        Verdict::TooClose => "too_close",
        Verdict::NotApplicable => "not_applicable",
        Verdict::NotComputed => "not_computed",
    }
}

pub(crate) fn unit(unit: Unit) -> &'static str {
    match unit {
        Unit::Lb => "lb",
        Unit::In => "in",
        Unit::GCc => "g/cc",
        Unit::Oz => "oz",
        Unit::Holes => "holes",
        Unit::ShoreD => "Shore D",
        Unit::MicroIn => "µin",
        Unit::Ratio | Unit::None => "",
    }
}

pub(crate) fn word(id: RuleId) -> &'static str {
    match id {
        RuleId::Weight => "weight",
        RuleId::Diameter => "diameter",
        RuleId::Density => "density",
        RuleId::LowRg => "low_rg",
        RuleId::HighRg => "high_rg",
        RuleId::Differential => "differential",
        RuleId::LowRgMark => "low_rg_mark",
        RuleId::HighRgMark => "high_rg_mark",
        RuleId::StaticBalance => "static_balance",
        RuleId::Holes => "holes",
        RuleId::BalanceHole => "balance_hole",
        RuleId::Voids => "voids",
        RuleId::Hardness => "hardness",
        RuleId::Roughness => "roughness",
        RuleId::Friction => "friction",
        RuleId::Roundness => "roundness",
    }
}
