//! The quadrature rules: Gauss–Legendre across a half-plane, Clenshaw–Curtis or
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

/// A rule with a rule of half and one of a quarter of the steps on its nodes.
#[derive(Clone, Debug)]
pub(super) struct Nested {
    /// Node on [−1, 1], ascending, and its weight in the three rules.
    pub(super) nodes: Vec<(f64, [f64; 3])>,
}

/// Orders of the pairs of rules across.
const ORDERS: [[usize; 2]; 3] = [[7, 8], [7, 8], [11, 12]];

#[derive(Debug)]
pub(super) struct Rules {
    /// Pairs to compare, from coarse to fine.
    pub(super) across: [[Gauss; 2]; 3],
    /// Along a stretch of azimuth, from coarse to fine.
    pub(super) stretch: [Nested; 3],
    /// Round a whole turn.
    pub(super) turn: Nested,
}

/// The rules, worked out once.
pub(super) fn rules() -> &'static Rules {
    static RULES: OnceLock<Rules> = OnceLock::new();
    RULES.get_or_init(|| Rules {
        across: ORDERS.map(|pair| pair.map(gauss)),
        stretch: [8, 16, 32].map(clenshaw_curtis),
        turn: trapezoid(16),
    })
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

/// Clenshaw–Curtis with `steps` steps, eased; the ends have no weight and are
/// left out. Source of the weights: J. Waldvogel, BIT 46 (2006) 195,
/// doi:10.1007/s10543-006-0045-4, eq. (2.4).
fn clenshaw_curtis(steps: usize) -> Nested {
    let weight = |steps: usize, k: usize| {
        let n = steps as f64;
        let terms = (1..=steps / 2).map(|j| {
            let b = if 2 * j == steps { 1.0 } else { 2.0 };
            b / (4.0 * (j * j) as f64 - 1.0) * libm::cos(2.0 * core::f64::consts::PI * (j * k) as f64 / n)
        });
        2.0 / n * (1.0 - terms.sum::<f64>())
    };
    let node = |k: usize| {
        let (x, stretch) = eased(-libm::cos(core::f64::consts::PI * k as f64 / steps as f64));
        let weights = [1, 2, 4].map(|by| if k.is_multiple_of(by) { stretch * weight(steps / by, k / by) } else { 0.0 });
        (x, weights)
    };
    Nested { nodes: (1..steps).map(node).collect() }
}

/// Equal steps round a whole turn.
fn trapezoid(steps: usize) -> Nested {
    let n = steps as f64;
    let weight = |k: usize, by: usize| if k.is_multiple_of(by) { 2.0 * by as f64 / n } else { 0.0 };
    Nested { nodes: (0..steps).map(|k| (2.0 * k as f64 / n - 1.0, [1, 2, 4].map(|by| weight(k, by)))).collect() }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn square_root_ends_are_integrated_closely() {
        let half_disc = |x: f64| (1.0 - x * x).sqrt();
        let want = core::f64::consts::FRAC_PI_2;
        let sum = |g: &Gauss| g.nodes.iter().map(|(x, w)| w * half_disc(*x)).sum::<f64>();
        for (rules, tolerance) in rules().across.iter().zip([2e-7, 2e-7, 1e-12]) {
            for rule in rules {
                assert!((sum(rule) - want).abs() < tolerance, "{} {}", rule.nodes.len(), sum(rule) - want);
            }
        }
        for (rule, tolerances) in
            rules().stretch.iter().zip([[2e-5, 3e-2, 1.0], [1e-11, 2e-5, 3e-2], [1e-14, 1e-11, 2e-5]])
        {
            for (k, tolerance) in tolerances.into_iter().enumerate() {
                let sum: f64 = rule.nodes.iter().map(|(x, w)| w[k] * half_disc(*x)).sum();
                assert!((sum - want).abs() < tolerance, "{} {k} {}", rule.nodes.len(), sum - want);
            }
        }
    }

    #[test]
    fn the_trapezoid_is_exact_on_low_harmonics() {
        for k in 0..3 {
            let sum = |f: &dyn Fn(f64) -> f64| {
                rules().turn.nodes.iter().map(|(x, w)| w[k] * f(core::f64::consts::PI * x)).sum::<f64>()
            };
            assert!((sum(&|_| 1.0) - 2.0).abs() < 1e-15);
            assert!(sum(&|a| libm::cos(3.0 * a)).abs() < 1e-14);
        }
    }
}
