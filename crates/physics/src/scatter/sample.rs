//! Quasi-random deviations: Owen-scrambled Sobol points.
//!
//! Burley, Practical hash-based Owen scrambling, Journal of Computer Graphics
//! Techniques 9(4), 2020, with the direction numbers of Joe and Kuo, SIAM J.
//! Sci. Comput. 30, 2008, as the crate `sobol_burley` has them.

use super::Plan;

/// Points of one scrambling; later ones are of another. Many scramblings of few
/// points would lose what makes the sequence even: tried on a linear model of
/// twenty tolerances, 16 of 1,024 points spread the tails 1.7 times as far as
/// random points do, one of 16,384 points spreads them 0.6 times as far.
const POINTS: usize = 1 << 16;

/// How often which deviation occurs (model choice).
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Spread {
    /// Any deviation within the tolerance equally often, none outside.
    Even,
    /// Normal, the tolerance being three standard deviations: 0.27 % lie outside.
    Bell,
}

/// Deviations of the `n`-th ball, each in parts of its tolerance.
pub(super) fn ball(plan: &Plan, n: usize) -> Vec<f64> {
    let seed = scrambling(plan.seed, n / POINTS);
    (0..plan.tolerances.len()).map(|dimension| one(plan, n % POINTS, dimension, seed)).collect()
}

/// Two independent sets of deviations for the sensitivities.
pub(super) fn pair(plan: &Plan, n: usize, d: usize) -> [Vec<f64>; 2] {
    [0, d].map(|first| (first..first + d).map(|dimension| one(plan, n, dimension, !plan.seed)).collect())
}

/// Deviations of the `n`-th ball by which the fit is checked.
pub(super) fn check(plan: &Plan, n: usize) -> Vec<f64> {
    let seed = scrambling(plan.seed ^ 0x5555_5555, 0);
    (0..plan.tolerances.len()).map(|dimension| one(plan, n, dimension, seed)).collect()
}

fn scrambling(seed: u32, n: usize) -> u32 {
    // The golden ratio's bits keep the seeds of neighbours apart.
    seed.wrapping_add((n as u32).wrapping_mul(0x9E37_79B9))
}

fn one(plan: &Plan, n: usize, dimension: usize, seed: u32) -> f64 {
    // The middle of the sequence's cell: neither 0 nor 1.
    let p = f64::from(sobol_burley::sample(n as u32, dimension as u32, seed)) + 0.5 / f64::from(1 << 24);
    match plan.spread {
        Spread::Even => 2.0 * p - 1.0,
        Spread::Bell => normal(p) / 3.0,
    }
}

/// Where the standard normal distribution reaches `p`, 0 < p < 1, to about
/// 1 in 10¹⁶: Wichura, Algorithm AS 241 (PPND16), Applied Statistics 37, 1988.
#[allow(clippy::excessive_precision, reason = "the published coefficients as they are")]
fn normal(p: f64) -> f64 {
    const MIDDLE: [[f64; 8]; 2] = [
        [
            2.509_080_928_730_122_672_7e3,
            3.343_057_558_358_812_810_5e4,
            6.726_577_092_700_870_085_3e4,
            4.592_195_393_154_987_145_7e4,
            1.373_169_376_550_946_112_5e4,
            1.971_590_950_306_551_442_7e3,
            1.331_416_678_917_843_774_5e2,
            3.387_132_872_796_366_608_0,
        ],
        [
            5.226_495_278_852_854_561_0e3,
            2.872_908_573_572_194_267_4e4,
            3.930_789_580_009_271_061_0e4,
            2.121_379_430_158_659_586_7e4,
            5.394_196_021_424_751_107_7e3,
            6.871_870_074_920_579_083_0e2,
            4.231_333_070_160_091_125_2e1,
            1.0,
        ],
    ];
    const TAIL: [[f64; 8]; 2] = [
        [
            7.745_450_142_783_414_076_40e-4,
            2.272_384_498_926_918_458_33e-2,
            2.417_807_251_774_506_117_70e-1,
            1.270_458_252_452_368_382_58,
            3.647_848_324_763_204_605_04,
            5.769_497_221_460_691_405_50,
            4.630_337_846_156_545_295_90,
            1.423_437_110_749_683_577_34,
        ],
        [
            1.050_750_071_644_416_843_24e-9,
            5.475_938_084_995_344_946_00e-4,
            1.519_866_656_361_645_719_66e-2,
            1.481_039_764_274_800_745_90e-1,
            6.897_673_349_851_000_045_50e-1,
            1.676_384_830_183_803_849_40,
            2.053_191_626_637_758_821_87,
            1.0,
        ],
    ];
    let ratio = |[num, den]: &[[f64; 8]; 2], r: f64| {
        let value = |c: &[f64; 8]| c.iter().fold(0.0, |sum, c| sum * r + c);
        value(num) / value(den)
    };
    let q = p - 0.5;
    if q.abs() <= 0.425 {
        return q * ratio(&MIDDLE, 0.180_625 - q * q);
    }
    // A sample is never nearer to 0 or 1 than 2⁻²⁵, where this is 4.2: the
    // published formula's far tail, from 5 up, cannot be reached.
    let r = (-libm::log(if q < 0.0 { p } else { 1.0 - p })).sqrt();
    let x = ratio(&TAIL, r - 1.6);
    if q < 0.0 { -x } else { x }
}

#[cfg(test)]
mod tests {
    use super::normal;

    #[test]
    fn quantiles_of_the_normal_distribution() {
        // Python 3's own statistics.NormalDist().inv_cdf.
        for (p, x) in [
            (0.5, 0.0),
            (0.3, -0.524_400_512_708_040_7),
            (0.975, 1.959_963_984_540_054),
            (0.001, -3.090_232_306_167_813_5),
            (0.999_999_9, 5.199_337_582_290_661),
            (3e-8, -5.418_801_167_397_944),
        ] {
            assert!((normal(p) - x).abs() <= 1e-14 * x.abs(), "{p}: {}", normal(p));
        }
    }
}
