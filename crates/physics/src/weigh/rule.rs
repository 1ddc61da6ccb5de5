//! The quadrature rules: Gauss–Legendre across a half-plane, Gauss–Kronrod or
//! the trapezoid round the axis.
//!
//! All but the trapezoid run under x = sin(πs/2), which turns the square-root
//! ends that silhouettes leave into smooth ones. The trapezoid converges
//! exponentially on a smooth whole turn (L. N. Trefethen and J. A. C. Weideman,
//! SIAM Review 56 (2014) 385, doi:10.1137/130932132).

use std::sync::OnceLock;

/// A rule on [−1, 1].
#[derive(Clone, Debug)]
pub(super) struct Gauss {
    /// Nodes and weights, ascending.
    pub(super) nodes: Vec<(f64, f64)>,
}

/// A rule with a smaller one on some of its nodes.
#[derive(Clone, Debug)]
pub(super) struct Pair {
    /// Node on [−1, 1], weight, and weight in the smaller rule (0: not in it).
    pub(super) nodes: Vec<(f64, f64, f64)>,
}

/// Orders of the rules across, coarse and fine by turns so that their
/// difference shows in the error of the rule round the axis.
const ORDERS: [[usize; 2]; 3] = [[7, 8], [10, 11], [15, 16]];

#[derive(Debug)]
pub(super) struct Rules {
    pub(super) across: [[Gauss; 2]; 3],
    pub(super) stretch: Pair,
    pub(super) turn: Pair,
}

/// The rules, worked out once.
pub(super) fn rules() -> &'static Rules {
    static RULES: OnceLock<Rules> = OnceLock::new();
    RULES.get_or_init(|| Rules { across: ORDERS.map(|pair| pair.map(gauss)), stretch: kronrod(), turn: trapezoid() })
}

/// x = sin(πs/2) and dx/ds.
fn eased(s: f64) -> (f64, f64) {
    let (sin, cos) = libm::sincos(core::f64::consts::FRAC_PI_2 * s);
    (sin, core::f64::consts::FRAC_PI_2 * cos)
}

/// Nodes by Newton's method on the Legendre recurrence (Press et al.,
/// Numerical Recipes, 3rd ed., 4.6.1), then eased.
fn gauss(order: usize) -> Gauss {
    let n = order as f64;
    let node = |k: usize| {
        let mut s = -libm::cos(core::f64::consts::PI * (k as f64 + 0.75) / (n + 0.5));
        let mut slope = 1.0;
        for _ in 0..60 {
            let (mut p, mut last) = (1.0, 0.0);
            for j in 0..order {
                let j = j as f64;
                (p, last) = (((2.0 * j + 1.0) * s * p - j * last) / (j + 1.0), p);
            }
            slope = n * (s * p - last) / (s * s - 1.0);
            let step = p / slope;
            s -= step;
            if step.abs() < 1e-16 {
                break;
            }
        }
        let (x, stretch) = eased(s);
        (x, stretch * 2.0 / ((1.0 - s * s) * slope * slope))
    };
    Gauss { nodes: (0..order).map(node).collect() }
}

/// Gauss–Kronrod 7–15. Source of nodes and weights: R. Piessens et al.,
/// QUADPACK (1983), `qk15`.
fn kronrod() -> Pair {
    const NODES: [f64; 8] = [
        0.991_455_371_120_812_6,
        0.949_107_912_342_758_5,
        0.864_864_423_359_769_1,
        0.741_531_185_599_394_4,
        0.586_087_235_467_691_1,
        0.405_845_151_377_397_2,
        0.207_784_955_007_898_47,
        0.0,
    ];
    const KRONROD: [f64; 8] = [
        0.022_935_322_010_529_224,
        0.063_092_092_629_978_56,
        0.104_790_010_322_250_18,
        0.140_653_259_715_525_92,
        0.169_004_726_639_267_9,
        0.190_350_578_064_785_4,
        0.204_432_940_075_298_9,
        0.209_482_141_084_727_82,
    ];
    const GAUSS: [f64; 4] =
        [0.129_484_966_168_869_7, 0.279_705_391_489_276_67, 0.381_830_050_505_118_9, 0.417_959_183_673_469_4];
    let node = |n: usize| {
        let k = n.min(14 - n);
        let (x, stretch) = eased(if n < 7 { -NODES[k] } else { NODES[k] });
        (x, stretch * KRONROD[k], if k % 2 == 1 { stretch * GAUSS[k / 2] } else { 0.0 })
    };
    Pair { nodes: (0..15).map(node).collect() }
}

/// Sixteen equal steps round a whole turn, the even ones a rule of eight.
fn trapezoid() -> Pair {
    let node = |n: usize| (n as f64 / 8.0 - 1.0, 0.125, if n.is_multiple_of(2) { 0.25 } else { 0.0 });
    Pair { nodes: (0..16).map(node).collect() }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn square_root_ends_are_integrated_closely() {
        let half_disc = |x: f64| (1.0 - x * x).sqrt();
        let want = core::f64::consts::FRAC_PI_2;
        let sum = |g: &Gauss| g.nodes.iter().map(|(x, w)| w * half_disc(*x)).sum::<f64>();
        for (rules, tolerance) in rules().across.iter().zip([2e-7, 2e-12, 1e-14]) {
            for rule in rules {
                assert!((sum(rule) - want).abs() < tolerance, "{} {}", rule.nodes.len(), sum(rule) - want);
            }
        }
        let pair = &rules().stretch;
        let large: f64 = pair.nodes.iter().map(|(x, w, _)| w * half_disc(*x)).sum();
        let small: f64 = pair.nodes.iter().map(|(x, _, w)| w * half_disc(*x)).sum();
        assert!((large - want).abs() < 1e-14 && (small - want).abs() < 2e-7);
        let turn: f64 = rules().turn.nodes.iter().map(|(x, w, _)| w * libm::cos(3.0 * x).powi(2)).sum();
        assert!(turn.is_finite());
    }
}
