//! Which tolerance a number's spread comes from: Sobol's indices.
//!
//! The first-order index is the part of a number's variance that one tolerance
//! causes by itself, the total index the part that goes away with it. First
//! order after Saltelli et al., Computer Physics Communications 181, 2010,
//! table 2 (b), total after Jansen, Computer Physics Communications 117, 1999
//! (table 2 (f) there).

/// First-order and total index of one number for one tolerance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Index {
    /// The part of the variance that the tolerance causes by itself.
    pub first: f64,
    /// The part of the variance that goes away with it.
    pub total: f64,
    /// Twice the standard error that `total` would have of independent points;
    /// of points as even as these it is less.
    pub total_error: f64,
}

/// Values at both points of a pair, and at the first with each coordinate of
/// the second in turn.
pub(super) fn base_point<const M: usize>(
    pair: &[Vec<f64>; 2],
    outputs: impl Fn(&[f64]) -> [f64; M],
    results: &mut Vec<f64>,
) {
    let [a, b] = pair;
    results.extend(outputs(a));
    results.extend(outputs(b));
    let mut mixed = a.clone();
    for n in 0..a.len() {
        mixed[n] = b[n];
        results.extend(outputs(&mixed));
        mixed[n] = a[n];
    }
}

/// Indices of one output for every one of `d` coordinates, from the results of
/// all base points; `None` where the output does not vary.
pub(super) fn indices(results: &[f64], d: usize, outputs: usize, output: usize) -> Option<Vec<Index>> {
    let value = |point: &[f64], row: usize| point[row * outputs + output];
    let points: Vec<&[f64]> = results.chunks_exact((d + 2) * outputs).collect();
    let both = || points.iter().flat_map(|point| [value(point, 0), value(point, 1)]);
    let count = 2.0 * points.len() as f64;
    let mean = both().sum::<f64>() / count;
    let variance = both().map(|value| (value - mean) * (value - mean)).sum::<f64>() / count;
    let largest = both().fold(0.0, |most: f64, value| most.max(value.abs()));
    if variance.is_nan() || variance <= 1e-20 * largest * largest {
        return None;
    }
    let index = |n: usize| {
        let (mut first, mut total, mut squares) = (0.0, 0.0, 0.0);
        for point in &points {
            let (a, b, mixed) = (value(point, 0), value(point, 1), value(point, n + 2));
            let changed = 0.5 * (a - mixed) * (a - mixed);
            first += (b - mean) * (mixed - a);
            total += changed;
            squares += changed * changed;
        }
        let all = points.len() as f64;
        let (first, total) = (first / all, total / all);
        let standard_error = ((squares / all - total * total).max(0.0) / (all - 1.0)).sqrt();
        Index { first: first / variance, total: total / variance, total_error: 2.0 * standard_error / variance }
    };
    Some((0..d).map(index).collect())
}
