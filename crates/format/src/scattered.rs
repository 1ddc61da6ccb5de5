//! What `scatter` prints: thousands of balls within their tolerances.

use physics::scatter::{
    Costs, Dearness, Distribution, NUMBERS, Number, PUBLISHED, QUANTILES, Reason, ScatterError, Share, Source,
};
use physics::spec::RULES;
use physics::units::M_PER_IN;
use physics::weigh::weigh;
use serde::Serialize;

use crate::ball::BallFile;
use crate::checked::rule_name;
use crate::limits;
use crate::problem::Problem;
use crate::tolerances::{SpreadWord, TolerancesFile};
use crate::{Phrase, phrase};

/// A ball and its tolerances made ready to be sampled.
#[derive(Debug)]
pub struct Scatter {
    scatter: physics::scatter::Scatter,
    ball: BallFile,
    tolerances: TolerancesFile,
    /// Place in the tolerances file of every tolerance and what it is of.
    sources: Vec<(Source, String)>,
}

/// What came of it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ScatteredDoc {
    /// The ball's name.
    pub ball: String,
    /// Balls sampled.
    pub balls: usize,
    /// The seed.
    pub seed: u32,
    /// `even` or `bell`.
    pub spread: SpreadWord,
    /// Within the published limits and the maker's own windows.
    pub passed: ShareDoc,
    /// Within the published limits, outside a window of the maker's.
    pub seconds: ShareDoc,
    /// Outside a published limit, or spoiled.
    pub scrap: ShareDoc,
    /// How many balls each reason is true of, most first; a ball may have several.
    pub reasons: Vec<ReasonDoc>,
    /// Every number over the balls that could be made.
    pub numbers: Vec<DistributionDoc>,
    /// Every tolerance, the dearest first.
    pub costs: Vec<CostDoc>,
    /// Points from which the sensitivities were computed.
    pub base_points: usize,
    /// What passes, seconds and scrap mean, and what was assumed.
    pub notes: [Phrase; 5],
}

/// A part of the balls.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct ShareDoc {
    /// How many.
    pub count: usize,
    /// Their part of all, 0 to 1.
    pub share: f64,
    /// 95 % interval after Wilson, as if the balls were independent.
    pub wilson_95: [f64; 2],
}

/// Why balls are no good.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ReasonDoc {
    /// `scrap` or `second`.
    pub makes: &'static str,
    /// A fixed word for programs.
    pub reason: String,
    /// In words.
    pub name: Phrase,
    /// How many balls.
    pub count: usize,
}

/// How one number spreads.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct DistributionDoc {
    /// A fixed word for programs, with the unit at its end.
    pub number: &'static str,
    /// In words.
    pub name: Phrase,
    /// `lb`, `in` or `oz`.
    pub unit: &'static str,
    /// What the recipe itself has; null where it has none.
    pub nominal: Option<f64>,
    /// What each may be wrong by.
    pub error: f64,
    /// Balls that have this number.
    pub count: usize,
    /// Their mean.
    pub mean: f64,
    /// Their standard deviation.
    pub deviation: f64,
    /// The smallest.
    pub least: f64,
    /// The largest.
    pub most: f64,
    /// Where 1, 5, 25, 50, 75, 95 and 99 per cent of the balls lie below.
    pub quantiles: [QuantileDoc; QUANTILES.len()],
    /// A histogram, from the smallest to the largest.
    pub bins: Vec<BinDoc>,
    /// The maker's window; null where there is none.
    pub accept: Option<[Option<f64>; 2]>,
    /// The published limits; null where there are none.
    pub published: Option<[Option<f64>; 2]>,
}

/// Where a part of the balls lies below.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct QuantileDoc {
    /// Which part, in per cent.
    pub percent: f64,
    /// Where.
    pub at: f64,
}

/// A bar of a histogram.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct BinDoc {
    /// From.
    pub from: f64,
    /// To.
    pub to: f64,
    /// How many balls.
    pub count: usize,
}

/// What one tolerance costs.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct CostDoc {
    /// Where it stands in the tolerances file.
    pub place: String,
    /// The part it is of; null: the ball as a whole.
    pub part: Option<String>,
    /// What of it, in words.
    pub what: Phrase,
    /// How far.
    pub within: f64,
    /// `%`, `in` or `deg`.
    pub unit: &'static str,
    /// Its part in whether a ball passes and in the spread of every number.
    pub of: Vec<DearnessDoc>,
}

/// A tolerance's part in one spread.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct DearnessDoc {
    /// `passing`, or the number's word.
    pub number: &'static str,
    /// Part of the variance that it causes by itself; null where nothing varies.
    pub first: Option<f64>,
    /// Part of the variance that goes away with it.
    pub total: Option<f64>,
    /// Twice the standard error of `total`.
    pub total_error: Option<f64>,
}

fn notes() -> [Phrase; 5] {
    [
        phrase!(
            "scatter-passed",
            "Passed: within the published limits and within the maker's own windows. Seconds: within the published limits, \
     outside a window of the maker's (common practice, no source). Scrap: outside a published limit, or spoiled."
        ),
        phrase!(
            "scatter-spoiled",
            "Spoiled: a piece sticks out of the ball, touches a piece it stands clear of in the recipe, or breaks out of one \
     that holds it there (model choice)."
        ),
        phrase!(
            "scatter-strays",
            "Every tolerance strays by itself; pieces poured together in one mould may stray together (model choice)."
        ),
        phrase!(
            "scatter-interval",
            "Owen-scrambled Sobol points. The interval is Wilson's for independent balls, which is wide for points as even as \
     these."
        ),
        phrase!(
            "scatter-sensitivities",
            "Sensitivities are Sobol's indices (first order after Saltelli 2010, total after Jansen 1999)."
        ),
    ]
}

impl Scatter {
    /// Weighs the ball and what every tolerance does to it.
    ///
    /// # Errors
    /// Where the ball cannot be made or the tolerances are not for it.
    pub fn new(ball: &BallFile, tolerances: &TolerancesFile) -> Result<Self, ScatterProblem> {
        let of_ball = ScatterProblem::Ball;
        let weighed = weigh(&ball.build().map_err(of_ball)?);
        let (plan, places) = tolerances.plan(ball, &weighed).map_err(ScatterProblem::Tolerances)?;
        let sources = plan.tolerances.iter().map(|tolerance| tolerance.source).zip(places.iter().cloned()).collect();
        let scatter = physics::scatter::Scatter::new(&ball.recipe(), plan);
        Ok(Self {
            scatter: scatter.map_err(|error| problem(&error, ball, &places))?,
            ball: ball.clone(),
            tolerances: tolerances.clone(),
            sources,
        })
    }

    /// How many units of work there are.
    pub fn units(&self) -> usize {
        self.scatter.units()
    }

    /// The results of units `from..to`, one after the other.
    pub fn run(&self, from: usize, to: usize) -> Vec<f64> {
        (from..to.min(self.units())).flat_map(|unit| self.scatter.run(unit)).collect()
    }

    /// Everything from the results of all units, in their order; `None` where
    /// that is not what was handed in.
    pub fn merge(&self, results: &[f64]) -> Option<ScatteredDoc> {
        let scattered = self.scatter.merge(results)?;
        let mut reasons: Vec<ReasonDoc> = scattered.reasons.iter().map(|(r, count)| reason(*r, *count)).collect();
        reasons.sort_by_key(|reason| std::cmp::Reverse(reason.count));
        Some(ScatteredDoc {
            ball: self.ball.name.clone(),
            balls: scattered.balls,
            seed: self.tolerances.seed,
            spread: self.tolerances.spread.unwrap_or(SpreadWord::Even),
            passed: share(&scattered.passed),
            seconds: share(&scattered.seconds),
            scrap: share(&scattered.scrap),
            reasons,
            numbers: scattered.distributions.iter().map(|one| self.distribution(one)).collect(),
            costs: scattered.costs.iter().map(|costs| self.cost(costs)).collect(),
            base_points: scattered.base_points,
            notes: notes(),
        })
    }

    fn distribution(&self, one: &Distribution) -> DistributionDoc {
        let (number, name, unit) = words(one.number);
        let window = self.scatter.windows()[NUMBERS.iter().position(|other| *other == one.number).unwrap_or_default()];
        let limits = physics::scatter::published(one.number);
        DistributionDoc {
            number,
            name,
            unit,
            nominal: one.nominal,
            error: one.error,
            count: one.count,
            mean: one.mean,
            deviation: one.deviation,
            least: one.range[0],
            most: one.range[1],
            quantiles: std::array::from_fn(|n| QuantileDoc { percent: 100.0 * QUANTILES[n], at: one.quantiles[n] }),
            bins: one.bins.iter().map(|bin| BinDoc { from: bin.from, to: bin.to, count: bin.count }).collect(),
            accept: some([window.at_least, window.at_most]),
            published: some([limits.at_least, limits.at_most]),
        }
    }

    fn cost(&self, costs: &Costs) -> CostDoc {
        let place = self.sources.iter().find(|(source, _)| *source == costs.source).map(|(_, place)| place.clone());
        let piece = |n: usize| self.ball.pieces.get(n).map(|piece| piece.name.clone());
        let axis = |axis: usize| ["x", "y", "z"].get(axis).copied().unwrap_or_default();
        let (density, size) = (phrase!("what-density", "density"), phrase!("what-size", "size"));
        let core = |n| phrase!("what-core-place", "place of the core along {axis}", axis = axis(n));
        let along = |n| phrase!("what-place", "place along {axis}", axis = axis(n));
        let tilt = |n| phrase!("what-tilt", "tilt about {axis}", axis = axis(n));
        let (part, what, within, unit) = match costs.source {
            Source::CoverDensity => (Some(self.ball.cover_name().to_owned()), density, 100.0 * costs.within, "%"),
            Source::Diameter => (None, phrase!("what-diameter", "diameter"), costs.within / M_PER_IN, "in"),
            Source::CoreShift(n) => (None, core(n), costs.within / M_PER_IN, "in"),
            Source::Density(n) => (piece(n), density, 100.0 * costs.within, "%"),
            Source::Size(n) => (piece(n), size, 100.0 * costs.within, "%"),
            Source::At(n, along_axis) => (piece(n), along(along_axis), costs.within / M_PER_IN, "in"),
            Source::Tilt(n, about) => (piece(n), tilt(about), costs.within.to_degrees(), "deg"),
        };
        let of = costs.indices.iter().map(dearness).collect();
        CostDoc { place: place.unwrap_or_default(), part, what, within, unit, of }
    }
}

/// Which of the two files a problem is in.
#[derive(Clone, Debug, PartialEq)]
pub enum ScatterProblem {
    /// The ball file.
    Ball(Problem),
    /// The tolerances file.
    Tolerances(Problem),
}

impl From<ScatterProblem> for Problem {
    fn from(problem: ScatterProblem) -> Self {
        match problem {
            ScatterProblem::Ball(problem) => problem.within("ball"),
            ScatterProblem::Tolerances(problem) => problem.within("tolerances"),
        }
    }
}

fn problem(error: &ScatterError, ball: &BallFile, places: &[String]) -> ScatterProblem {
    let most = physics::scatter::MOST_TOLERANCES;
    let tolerances = match error {
        ScatterError::Recipe(error) => return ScatterProblem::Ball(ball.problem(error)),
        ScatterError::Tolerances { found: 0 } => {
            let found = phrase!("no-tolerance", "no tolerance above 0");
            Problem::new("", found, phrase!("at-least-one", "at least one"))
                .saying(phrase!("nothing-to-scatter", "There is nothing to scatter."))
        }
        ScatterError::Tolerances { found } => {
            let message = phrase!(
                "too-many-tolerances",
                "There are too many tolerances at once: give fewer pieces tolerances of fewer kinds."
            );
            let found = phrase!("so-many-tolerances", "{count} tolerances", count = *found);
            Problem::new("", found, phrase!("at-most", "at most {most}", most = most)).saying(message)
        }
        ScatterError::Balls { found } => Problem::new("balls", (*found).into(), limits::BALLS.words()),
        ScatterError::Tolerance { place } => Problem::new(
            places.get(*place).map_or("", String::as_str),
            phrase!("tolerance-too-wide", "a tolerance that leaves nothing of the ball"),
            phrase!("smaller-one", "a smaller one"),
        ),
    };
    ScatterProblem::Tolerances(tolerances)
}

fn some(window: [Option<f64>; 2]) -> Option<[Option<f64>; 2]> {
    window.iter().any(Option::is_some).then_some(window)
}

fn share(share: &Share) -> ShareDoc {
    ShareDoc { count: share.count, share: share.share, wilson_95: share.wilson }
}

fn dearness(dear: &Dearness) -> DearnessDoc {
    DearnessDoc {
        number: dear.number.map_or("passing", |number| words(number).0),
        first: dear.index.map(|index| index.first),
        total: dear.index.map(|index| index.total),
        total_error: dear.index.map(|index| index.total_error),
    }
}

fn reason(reason: Reason, count: usize) -> ReasonDoc {
    let (makes, reason, name) = match reason {
        Reason::SticksOut => {
            ("scrap", "sticks_out".to_owned(), phrase!("reason-sticks-out", "a piece sticks out of the ball"))
        }
        Reason::Touches => ("scrap", "touches".to_owned(), phrase!("reason-touches", "a piece touches another")),
        Reason::BreaksOut => (
            "scrap",
            "breaks_out".to_owned(),
            phrase!("reason-breaks-out", "a piece breaks out of the one that holds it"),
        ),
        Reason::Published(n) => {
            let rule = PUBLISHED.get(n).and_then(|id| RULES.iter().find(|rule| rule.id == *id));
            let name = rule.map_or_else(Phrase::default, rule_name);
            let word = PUBLISHED.get(n).map_or("", |id| crate::checked::word(*id));
            (
                "scrap",
                format!("published_{word}"),
                phrase!("reason-published", "outside the published limit: {name}", name = name),
            )
        }
        Reason::Window(n) => {
            let (word, name, _) = NUMBERS.get(n).map_or_else(|| ("", Phrase::default(), ""), |number| words(*number));
            (
                "second",
                format!("window_{word}"),
                phrase!("reason-window", "outside the maker's window: {name}", name = name),
            )
        }
    };
    ReasonDoc { makes, reason, name, count }
}

/// A number's word for programs, its name and its unit.
pub(crate) fn words(number: Number) -> (&'static str, Phrase, &'static str) {
    match number {
        Number::Weight => ("weight_lb", phrase!("number-weight_lb", "weight"), "lb"),
        Number::LowRg => ("low_rg_in", phrase!("number-low_rg_in", "low RG"), "in"),
        Number::MiddleRg => ("middle_rg_in", phrase!("number-middle_rg_in", "middle RG"), "in"),
        Number::HighRg => ("high_rg_in", phrase!("number-high_rg_in", "high RG"), "in"),
        Number::Differential => ("differential_in", phrase!("number-differential_in", "differential"), "in"),
        Number::IntermediateDifferential => (
            "intermediate_differential_in",
            phrase!("number-intermediate_differential_in", "intermediate differential"),
            "in",
        ),
        Number::TopWeight => ("top_weight_oz", phrase!("number-top_weight_oz", "top weight"), "oz"),
        Number::PinToCg => ("pin_to_cg_in", phrase!("number-pin_to_cg_in", "pin to CG"), "in"),
        Number::LowRgMark => ("low_rg_mark_in", phrase!("number-low_rg_mark_in", "low-RG axis from the pin"), "in"),
        Number::HighRgMark => {
            ("high_rg_mark_in", phrase!("number-high_rg_mark_in", "high-RG axis from its mark"), "in")
        }
    }
}
