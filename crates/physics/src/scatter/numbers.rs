//! The numbers of a ball, the windows they must keep to, and why one does not.

use nalgebra::Vector3;

use crate::recipe::Recipe;
use crate::spec::{self, RULES, Rule, RuleId, Verdict as Rules};
use crate::units::{KG_PER_LB, M_PER_IN};
use crate::weigh::Weighed;

/// A number that scatters.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Number {
    /// Weight, lb.
    Weight,
    /// Lowest RG, in.
    LowRg,
    /// Middle RG, in.
    MiddleRg,
    /// Highest RG, in.
    HighRg,
    /// High minus low RG, in.
    Differential,
    /// High minus middle RG, in.
    IntermediateDifferential,
    /// Top weight, oz.
    TopWeight,
    /// From the pin (the +z pole) to where the centre of gravity is marked,
    /// along the cover, in.
    PinToCg,
    /// From the pin to where the low-RG axis leaves the ball, along the cover, in.
    LowRgMark,
    /// From the high-RG axis as the recipe has it to where it is, along the
    /// cover, in; nearer end.
    HighRgMark,
}

/// Every number, in the order of a record.
pub const NUMBERS: [Number; 10] = [
    Number::Weight,
    Number::LowRg,
    Number::MiddleRg,
    Number::HighRg,
    Number::Differential,
    Number::IntermediateDifferential,
    Number::TopWeight,
    Number::PinToCg,
    Number::LowRgMark,
    Number::HighRgMark,
];

/// What the maker sells as good; a limit that is `None` is not held to.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Window {
    /// Smallest.
    pub at_least: Option<f64>,
    /// Largest.
    pub at_most: Option<f64>,
}

impl Window {
    fn misses(&self, value: f64) -> bool {
        self.at_least.is_some_and(|low| value < low) || self.at_most.is_some_and(|high| value > high)
    }

    fn near(&self, value: f64, error: f64) -> bool {
        [self.at_least, self.at_most].into_iter().flatten().any(|limit| (value - limit).abs() <= error)
    }
}

/// The maker's window of every number, in the order of [`NUMBERS`].
pub type Windows = [Window; NUMBERS.len()];

/// Published limits that a poured ball can break, each by its rule.
pub const PUBLISHED: [RuleId; 8] = [
    RuleId::Weight,
    RuleId::Diameter,
    RuleId::Density,
    RuleId::LowRg,
    RuleId::HighRg,
    RuleId::Differential,
    RuleId::LowRgMark,
    RuleId::HighRgMark,
];

/// Why a ball is no good.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Reason {
    /// A piece sticks out of the ball, or the piece cannot be: scrap.
    SticksOut,
    /// A piece touches another that it stands clear of in the recipe: scrap.
    Touches,
    /// A piece breaks out of another that holds it in the recipe: scrap.
    BreaksOut,
    /// Outside a published limit, by its place in [`PUBLISHED`]: scrap.
    Published(usize),
    /// Outside the maker's window of a number, by its place in [`NUMBERS`]: a second.
    Window(usize),
}

const FIRST_WINDOW: usize = 3 + PUBLISHED.len();

impl Reason {
    /// Every reason there is.
    pub fn all() -> impl Iterator<Item = Self> {
        [Self::SticksOut, Self::Touches, Self::BreaksOut]
            .into_iter()
            .chain((0..PUBLISHED.len()).map(Self::Published))
            .chain((0..NUMBERS.len()).map(Self::Window))
    }

    /// The reason's bit in a record.
    pub(super) fn bit(self) -> u32 {
        1 << match self {
            Self::SticksOut => 0,
            Self::Touches => 1,
            Self::BreaksOut => 2,
            Self::Published(n) => 3 + n,
            Self::Window(n) => FIRST_WINDOW + n,
        }
    }

    /// Whether any of the reasons in a record is one for scrap.
    pub(super) fn scrap(reasons: u32) -> bool {
        reasons & ((1 << FIRST_WINDOW) - 1) != 0
    }
}

/// The rule of a published limit.
pub(super) fn rule(id: RuleId) -> Option<&'static Rule> {
    RULES.iter().find(|rule| rule.id == id)
}

/// A ball's numbers and what is wrong with it.
#[derive(Clone, Debug)]
pub(super) struct Verdict {
    /// NaN where the ball has no such number.
    pub(super) values: [f64; NUMBERS.len()],
    pub(super) reasons: u32,
    /// Whether an error of the numbers may decide.
    pub(super) close: bool,
}

impl Verdict {
    /// A ball that cannot be made has no numbers.
    pub(super) fn cannot_be(reason: Reason) -> Self {
        Self { values: [f64::NAN; NUMBERS.len()], reasons: reason.bit(), close: false }
    }
}

/// The numbers of a weighed ball; `nominal` is the ball of the recipe itself,
/// on which the axes were marked.
pub(super) fn values(weighed: &Weighed, nominal: &Weighed) -> [f64; NUMBERS.len()] {
    let [low, middle, high] = weighed.rg_m.map(|rg_m| rg_m / M_PER_IN);
    let radius_in = weighed.radius_m / M_PER_IN;
    let along = |from: &Vector3<f64>, to: &Vector3<f64>| radius_in * libm::atan2(from.cross(to).norm(), from.dot(to));
    let pin = Vector3::z();
    // An axis that the ball leaves free cannot be marked.
    let single = |a: f64, b: f64| b - a > weighed.relative_error.max(1e-9) * b;
    let marked = single(nominal.rg_m[1], nominal.rg_m[2]) && single(middle, high);
    let mark = if nominal.axes[2].dot(&weighed.axes[2]) < 0.0 { -nominal.axes[2] } else { nominal.axes[2] };
    [
        weighed.mass_kg / KG_PER_LB,
        low,
        middle,
        high,
        high - low,
        high - middle,
        weighed.top_weight_oz(),
        if weighed.cg_m.norm() > 1e-9 * weighed.radius_m { along(&pin, &weighed.cg_m) } else { f64::NAN },
        if single(low, middle) { along(&pin, &weighed.axes[0]) } else { f64::NAN },
        if marked { along(&mark, &weighed.axes[2]) } else { f64::NAN },
    ]
}

/// Holds a ball to the published limits and to the maker's windows. `error`
/// is what each number may be wrong by, beyond what `weighed` itself says.
pub(super) fn judged(
    recipe: &Recipe,
    weighed: &Weighed,
    nominal: &Weighed,
    windows: &Windows,
    error: &[f64; NUMBERS.len()],
) -> Verdict {
    let values = values(weighed, nominal);
    let mut verdict = Verdict { values, reasons: 0, close: false };
    for finding in spec::check(recipe, weighed, None) {
        let Some(n) = PUBLISHED.iter().position(|id| *id == finding.rule.id) else { continue };
        match finding.verdict {
            Rules::Fail => verdict.reasons |= Reason::Published(n).bit(),
            Rules::TooClose => verdict.close = true,
            _ => {}
        }
    }
    for (n, id) in PUBLISHED.iter().enumerate() {
        let Some((rule, number)) = rule(*id).zip(number(*id)) else { continue };
        let limit = Window { at_least: rule.at_least, at_most: rule.at_most };
        let (value, error) = (values[number as usize], error[number as usize]);
        verdict.close |= limit.near(value, error);
        // The recipe has no mark for this axis: the mark is where the recipe's own axis is.
        if *id == RuleId::HighRgMark && limit.misses(value) {
            verdict.reasons |= Reason::Published(n).bit();
        }
    }
    for (n, window) in windows.iter().enumerate() {
        if window.misses(values[n]) {
            verdict.reasons |= Reason::Window(n).bit();
        }
        verdict.close |= window.near(values[n], error[n]);
    }
    verdict
}

/// The number that a published limit is about.
pub(super) fn number(id: RuleId) -> Option<Number> {
    match id {
        RuleId::Weight => Some(Number::Weight),
        RuleId::LowRg => Some(Number::LowRg),
        RuleId::HighRg => Some(Number::HighRg),
        RuleId::Differential => Some(Number::Differential),
        RuleId::LowRgMark => Some(Number::LowRgMark),
        RuleId::HighRgMark => Some(Number::HighRgMark),
        _ => None,
    }
}
