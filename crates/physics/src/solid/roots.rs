//! Real roots of low-degree polynomials, kept accurate near double roots.

use smallvec::SmallVec;

/// Real roots in ascending order.
pub(crate) type Roots = SmallVec<[f64; 4]>;

/// Real roots of `a t² + 2 b t + c`, ascending. A double root may come back
/// twice; a polynomial that vanishes everywhere has none.
///
/// Source: the cancellation-free form q = −(b + sign(b)√D), t = q/a, c/q
/// (Press et al., Numerical Recipes, 3rd ed., eq. 5.6.4–5.6.5).
pub(crate) fn quadratic(a: f64, b: f64, c: f64) -> Option<(f64, f64)> {
    let disc = b * b - a * c;
    if disc.is_nan() || disc < 0.0 {
        return None;
    }
    let q = -(b + disc.sqrt().copysign(b));
    if q == 0.0 {
        // b = 0 and a·c = 0: either t = 0 twice, or no isolated root.
        return if a != 0.0 { Some((0.0, 0.0)) } else { None };
    }
    let second = c / q;
    if a == 0.0 {
        return Some((second, second));
    }
    let first = q / a;
    if !first.is_finite() {
        return Some((second, second));
    }
    Some(if first <= second { (first, second) } else { (second, first) })
}

/// Real roots of `c[0] + c[1] t + … + c[4] t⁴` in [`lo`, `hi`], ascending.
///
/// Between neighbouring roots of the derivative the polynomial is monotone, so
/// each sign change holds exactly one root, found by safeguarded Newton.
pub(crate) fn quartic_in(c: [f64; 5], lo: f64, hi: f64) -> Roots {
    let d1 = [c[1], 2.0 * c[2], 3.0 * c[3], 4.0 * c[4]];
    let d2 = [d1[1], 2.0 * d1[2], 3.0 * d1[3]];
    let mut stops: Roots = SmallVec::new();
    if let Some((a, b)) = quadratic(d2[2], 0.5 * d2[1], d2[0]) {
        stops.extend([a, b]);
    }
    let turning = roots_between(&d1, &stops, lo, hi);
    roots_between(&c, &turning, lo, hi)
}

/// Value of a polynomial, lowest coefficient first.
fn value(c: &[f64], t: f64) -> f64 {
    c.iter().rev().fold(0.0, |sum, k| sum * t + k)
}

fn slope(c: &[f64], t: f64) -> f64 {
    let mut sum = 0.0;
    for (n, k) in c.iter().enumerate().skip(1).rev() {
        sum = sum * t + n as f64 * k;
    }
    sum
}

/// One root in each stretch between the `stops` over which the sign changes.
fn roots_between(c: &[f64], stops: &[f64], lo: f64, hi: f64) -> Roots {
    let mut roots: Roots = SmallVec::new();
    let mut from = lo;
    let mut f_from = value(c, from);
    for &stop in stops.iter().filter(|s| **s > lo && **s < hi).chain([&hi]) {
        let f_stop = value(c, stop);
        if (f_from < 0.0) != (f_stop < 0.0) {
            roots.push(bracketed(c, from, f_from, stop));
        }
        from = stop;
        f_from = f_stop;
    }
    roots
}

/// Newton's method that falls back on bisection whenever it would leave the bracket.
fn bracketed(c: &[f64], mut a: f64, f_a: f64, mut b: f64) -> f64 {
    let mut t = 0.5 * (a + b);
    for _ in 0..80 {
        let f = value(c, t);
        if f == 0.0 {
            return t;
        }
        if (f < 0.0) == (f_a < 0.0) {
            a = t;
        } else {
            b = t;
        }
        let newton = t - f / slope(c, t);
        let next = if newton > a && newton < b { newton } else { 0.5 * (a + b) };
        if (next - t).abs() <= 1e-16 * (a.abs() + b.abs()) || next == t {
            return next;
        }
        t = next;
    }
    t
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn quadratic_keeps_small_roots() {
        // (t − 1e-9)(t − 1e9)
        let Some((a, b)) = quadratic(1.0, -0.5 * (1e9 + 1e-9), 1.0) else { panic!("two roots") };
        assert!((a - 1e-9).abs() < 1e-24 && (b - 1e9).abs() < 1e-6);
        assert_eq!(quadratic(0.0, 1.0, -3.0), Some((1.5, 1.5)));
        assert_eq!(quadratic(1.0, 0.0, 1.0), None);
        assert_eq!(quadratic(0.0, 0.0, 1.0), None);
    }

    #[test]
    fn quartic_finds_all_four() {
        // (t²−1)(t²−4) = t⁴ − 5t² + 4
        let roots = quartic_in([4.0, 0.0, -5.0, 0.0, 1.0], -10.0, 10.0);
        let want = [-2.0, -1.0, 1.0, 2.0];
        assert_eq!(roots.len(), 4);
        for (root, want) in roots.iter().zip(want) {
            assert!((root - want).abs() < 1e-14, "{root} {want}");
        }
    }
}
