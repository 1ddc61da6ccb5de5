//! What the sampled balls say, all together.

use super::numbers::values;
pub use super::sensitivity::Index;
use super::sensitivity::indices;
use super::{NUMBERS, Number, OUTPUTS, RECORD, Reason, Scatter, Source};

/// Quantiles of every number.
pub const QUANTILES: [f64; 7] = [0.01, 0.05, 0.25, 0.5, 0.75, 0.95, 0.99];
/// Bars of a histogram.
const BINS: usize = 24;
/// Two-sided 95 % point of the normal distribution.
const NORMAL_95: f64 = 1.959_963_984_540_054;

/// What came of a plan.
#[derive(Clone, Debug, PartialEq)]
pub struct Scattered {
    /// Balls sampled.
    pub balls: usize,
    /// Within the published limits and the maker's windows.
    pub passed: Share,
    /// Within the published limits, outside a window of the maker's.
    pub seconds: Share,
    /// Outside a published limit, or spoiled.
    pub scrap: Share,
    /// How many balls each reason is true of; a ball may have several.
    pub reasons: Vec<(Reason, usize)>,
    /// Every number over the balls that could be made.
    pub distributions: Vec<Distribution>,
    /// Every tolerance, the one that costs most good balls first.
    pub costs: Vec<Costs>,
    /// Base points of the sensitivities.
    pub base_points: usize,
}

/// A part of the balls.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Share {
    /// How many.
    pub count: usize,
    /// Their part of all.
    pub share: f64,
    /// 95 % interval after Wilson, J. Am. Stat. Assoc. 22, 1927, as if the
    /// balls were independent: honest near 0 and 1, wide for a
    /// quasi-random sample.
    pub wilson: [f64; 2],
}

/// How one number spreads.
#[derive(Clone, Debug, PartialEq)]
pub struct Distribution {
    /// Which.
    pub number: Number,
    /// What the recipe itself has; `None` where it has none.
    pub nominal: Option<f64>,
    /// What the numbers may be wrong by where the fit gave them.
    pub error: f64,
    /// Balls that have this number.
    pub count: usize,
    /// Their mean.
    pub mean: f64,
    /// Their standard deviation.
    pub deviation: f64,
    /// The smallest and the largest.
    pub range: [f64; 2],
    /// Where the [`QUANTILES`] lie.
    pub quantiles: [f64; QUANTILES.len()],
    /// Bars of equal width from the smallest to the largest.
    pub bins: Vec<Bin>,
}

/// A bar of a histogram.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bin {
    /// From.
    pub from: f64,
    /// To; only the last bar holds a ball that lies there.
    pub to: f64,
    /// How many balls.
    pub count: usize,
}

/// What one tolerance costs.
#[derive(Clone, Debug, PartialEq)]
pub struct Costs {
    /// Which.
    pub source: Source,
    /// How far.
    pub within: f64,
    /// By number, and last whether a ball passes; `None` where nothing varies.
    pub indices: Vec<Dearness>,
}

/// A tolerance's part in the spread of one number.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Dearness {
    /// Which number; `None`: whether the ball passes.
    pub number: Option<Number>,
    /// The indices; `None` where the number does not vary.
    pub index: Option<Index>,
}

pub(super) fn scattered(scatter: &Scatter, results: &[f64]) -> Option<Scattered> {
    let (balls, d) = (scatter.plan.balls, scatter.plan.tolerances.len());
    let row = OUTPUTS.len() + 1;
    if results.len() != balls * RECORD + super::BASE_POINTS * (d + 2) * row {
        return None;
    }
    let (records, base) = results.split_at(balls * RECORD);
    let records: Vec<&[f64]> = records.chunks_exact(RECORD).collect();
    let reasons: Vec<u32> = records.iter().map(|record| record[RECORD - 1] as u32).collect();
    let share = |which: &dyn Fn(u32) -> bool| Share::of(&reasons, which);
    Some(Scattered {
        balls,
        passed: share(&|reasons| reasons == 0),
        seconds: share(&|reasons| reasons != 0 && !Reason::scrap(reasons)),
        scrap: share(&Reason::scrap),
        reasons: Reason::all()
            .map(|reason| (reason, reasons.iter().filter(|all| **all & reason.bit() != 0).count()))
            .filter(|(_, count)| *count > 0)
            .collect(),
        distributions: (0..NUMBERS.len()).filter_map(|n| distribution(scatter, &records, n)).collect(),
        costs: costs(scatter, base, d, row),
        base_points: super::BASE_POINTS,
    })
}

impl Share {
    fn of(reasons: &[u32], which: &dyn Fn(u32) -> bool) -> Self {
        let count = reasons.iter().filter(|reasons| which(**reasons)).count();
        let n = reasons.len() as f64;
        let share = count as f64 / n;
        let z2 = NORMAL_95 * NORMAL_95;
        let (middle, half) = (
            (share + 0.5 * z2 / n) / (1.0 + z2 / n),
            NORMAL_95 / (1.0 + z2 / n) * (share * (1.0 - share) / n + 0.25 * z2 / (n * n)).sqrt(),
        );
        Self { count, share, wilson: [(middle - half).max(0.0), (middle + half).min(1.0)] }
    }
}

fn distribution(scatter: &Scatter, records: &[&[f64]], n: usize) -> Option<Distribution> {
    let mut all: Vec<f64> = records.iter().map(|record| record[n]).filter(|value| value.is_finite()).collect();
    all.sort_unstable_by(f64::total_cmp);
    let (low, high) = (*all.first()?, *all.last()?);
    let count = all.len();
    let mean = all.iter().sum::<f64>() / count as f64;
    let variance = all.iter().map(|value| (value - mean) * (value - mean)).sum::<f64>() / count as f64;
    // Between two of the sorted balls in proportion (definition 7 of Hyndman
    // and Fan, The American Statistician 50, 1996).
    let quantile = |p: f64| {
        let at = p * (count - 1) as f64;
        let below = at as usize;
        let above = (below + 1).min(count - 1);
        all[below] + (at - below as f64) * (all[above] - all[below])
    };
    let edge = |k: usize| if k == BINS { high } else { low + (high - low) * k as f64 / BINS as f64 };
    let mut bins: Vec<Bin> = (0..BINS).map(|k| Bin { from: edge(k), to: edge(k + 1), count: 0 }).collect();
    if high > low {
        let mut k = 0;
        for value in &all {
            while k + 1 < BINS && *value >= bins[k].to {
                k += 1;
            }
            bins[k].count += 1;
        }
    } else {
        bins = vec![Bin { from: low, to: high, count }];
    }
    let nominal = &scatter.deviations.nominal;
    Some(Distribution {
        number: NUMBERS[n],
        nominal: Some(values(nominal, nominal)[n]).filter(|value| value.is_finite()),
        error: scatter.deviations.error[n],
        count,
        mean,
        deviation: variance.sqrt(),
        range: [low, high],
        quantiles: QUANTILES.map(quantile),
        bins,
    })
}

fn costs(scatter: &Scatter, base: &[f64], d: usize, row: usize) -> Vec<Costs> {
    let numbers = OUTPUTS.map(Some).into_iter().chain([None]);
    let by_number: Vec<_> = numbers.enumerate().map(|(n, number)| (number, indices(base, d, row, n))).collect();
    let mut costs: Vec<Costs> = scatter
        .plan
        .tolerances
        .iter()
        .enumerate()
        .map(|(k, tolerance)| Costs {
            source: tolerance.source,
            within: tolerance.within,
            indices: by_number
                .iter()
                .map(|(number, all)| Dearness { number: *number, index: all.as_ref().map(|all| all[k]) })
                .collect(),
        })
        .collect();
    // By passing; where every ball passes, or none, by the differential.
    let differential = OUTPUTS.iter().position(|number| *number == Number::Differential);
    let dear = |costs: &Costs| {
        let total = |n: Option<usize>| n.and_then(|n| costs.indices[n].index).map(|index| index.total);
        total(Some(OUTPUTS.len())).or_else(|| total(differential)).unwrap_or(0.0)
    };
    costs.sort_by(|a, b| dear(b).total_cmp(&dear(a)));
    costs
}
