//! The published limits as named rules, with source and date.

/// Which rule.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum RuleId {
    /// Weight of the ball.
    Weight,
    /// Diameter of the ball.
    Diameter,
    /// Density of the densest part.
    Density,
    /// Lowest RG.
    LowRg,
    /// Highest RG.
    HighRg,
    /// High minus low RG.
    Differential,
    /// Low-RG axis beside the pin.
    LowRgMark,
    /// High-RG axis beside its mark.
    HighRgMark,
    /// Static balance of a drilled ball.
    StaticBalance,
    /// Number of holes.
    Holes,
    /// No hole but for the grip.
    BalanceHole,
    /// No voids, no liquid.
    Voids,
    /// Hardness of the cover.
    Hardness,
    /// Roughness of the cover.
    Roughness,
    /// Friction of the cover.
    Friction,
    /// Roundness.
    Roundness,
}

/// The unit of a rule's value and limits.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unit {
    /// Pounds (avoirdupois).
    Lb,
    /// Inches.
    In,
    /// Grams per cubic centimetre, the published grams per millilitre.
    GCc,
    /// Ounces (avoirdupois).
    Oz,
    /// Holes.
    Holes,
    /// Shore durometer, scale D.
    ShoreD,
    /// Microinches, average roughness Ra.
    MicroIn,
    /// A coefficient: no unit.
    Ratio,
    /// A rule without a number.
    None,
}

/// A published limit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rule {
    /// Which.
    pub id: RuleId,
    /// What it is called, in plain words.
    pub name: &'static str,
    /// Unit of the limits.
    pub unit: Unit,
    /// Smallest value allowed.
    pub at_least: Option<f64>,
    /// Largest value allowed.
    pub at_most: Option<f64>,
    /// Which balls it is for; empty: all.
    pub applies: &'static str,
    /// What would tell where it cannot be computed, or how it is computed.
    pub otherwise: &'static str,
    /// Since when, and what stood before.
    pub edition: &'static str,
}

/// Where every rule here was published.
const SOURCE: &str = "United States Bowling Congress, Equipment Specifications and Certifications, as read from \
                          its notices and pages quoting it, not from the manual itself";

/// Most unbalance of a drilled ball in each of three directions.
pub(super) const STATIC_BALANCE_OZ: f64 = 3.0;
const UNDATED: &str = "undated where it was read";
const HEAVY: &str = "balls of 13 lb and up";
const DRILLED: &str = "drilled balls";

impl Rule {
    /// Where it was published.
    pub const fn source(&self) -> &'static str {
        SOURCE
    }

    const fn new(id: RuleId, name: &'static str, unit: Unit, at_least: Option<f64>, at_most: Option<f64>) -> Self {
        Self { id, name, unit, at_least, at_most, applies: "", otherwise: "", edition: UNDATED }
    }

    const fn applies(self, applies: &'static str) -> Self {
        Self { applies, ..self }
    }

    const fn otherwise(self, otherwise: &'static str) -> Self {
        Self { otherwise, ..self }
    }

    const fn edition(self, edition: &'static str) -> Self {
        Self { edition, ..self }
    }
}

/// Static balance, for each of three directions.
pub(super) const STATIC_BALANCE: Rule =
    Rule::new(RuleId::StaticBalance, "static balance, each way", Unit::Oz, None, Some(STATIC_BALANCE_OZ))
        .applies("drilled balls over 10 lb")
        .otherwise(
            "Top, side and finger or thumb weight are measured from the middle of the grip, which a recipe does not \
         name: the unbalance in the worst direction there is, on a scale arm of the ball's radius. Where that is \
         over the limit, only a balance scale with the grip marked tells.",
        )
        .edition("in force now; 3 oz, 1 oz and 1 oz before");

/// Every published limit, those that can be computed first.
pub const RULES: [Rule; 16] = [
    Rule::new(RuleId::Weight, "weight", Unit::Lb, None, Some(16.0)).otherwise("There is no least weight."),
    Rule::new(RuleId::Diameter, "diameter", Unit::In, Some(8.5), Some(8.595))
        .otherwise("The same rule as a circumference of 26.704 to 27.002 in."),
    Rule::new(RuleId::Density, "density of any piece", Unit::GCc, None, Some(3.8))
        .otherwise("The densest part as the recipe gives it."),
    Rule::new(RuleId::LowRg, "lowest RG", Unit::In, Some(2.46), None)
        .applies(HEAVY)
        .edition("since July 2010; 2.430 in before"),
    Rule::new(RuleId::HighRg, "highest RG", Unit::In, None, Some(2.8)).applies(HEAVY),
    Rule::new(RuleId::Differential, "differential", Unit::In, None, Some(0.06)).edition("since 2005; 0.080 in before"),
    Rule::new(RuleId::LowRgMark, "low-RG axis to the pin's centre", Unit::In, None, Some(1.0))
        .otherwise(
            "Along the cover, from the pin at the recipe's +z pole. Where low and middle RG are the same the ball has \
             no one low-RG axis to mark; a laboratory would spin the ball to find it.",
        )
        .edition("31 January 2012"),
    STATIC_BALANCE,
    Rule::new(RuleId::Holes, "holes for gripping", Unit::Holes, None, Some(5.0))
        .applies(DRILLED)
        .edition("since 1 August 2020"),
    Rule::new(RuleId::HighRgMark, "high-RG axis to its mark", Unit::In, None, Some(1.5))
        .otherwise("A recipe has no such mark; a laboratory would spin the ball and measure to the mark on it.")
        .edition("31 January 2012"),
    Rule::new(RuleId::BalanceHole, "no balance hole: every hole is used to grip", Unit::None, None, None)
        .applies(DRILLED)
        .otherwise("Whoever watches the bowler's hand sees which holes are used.")
        .edition("since 1 August 2020"),
    Rule::new(RuleId::Voids, "solid: no liquid, no voids", Unit::None, None, None).otherwise(
        "A recipe fills the whole ball, so it cannot show a void; a laboratory would look into the ball itself.",
    ),
    Rule::new(RuleId::Hardness, "hardness of the cover", Unit::ShoreD, Some(73.0), None)
        .otherwise("A laboratory presses a Shore D durometer into the cover.")
        .edition("in force now; 72 before"),
    Rule::new(RuleId::Roughness, "average roughness of the cover", Unit::MicroIn, None, Some(50.0))
        .otherwise("A laboratory draws a profilometer across the cover (Ra)."),
    Rule::new(RuleId::Friction, "coefficient of friction of the cover", Unit::Ratio, None, Some(0.32))
        .otherwise("A laboratory drags the cover over a lane surface."),
    Rule::new(RuleId::Roundness, "roundness", Unit::In, None, Some(0.01))
        .applies(HEAVY)
        .otherwise("A recipe is a perfect sphere; a laboratory measures the ball across in many directions."),
];
