//! Near misses: two surfaces that come close between two nodes of a rule may
//! pass through one another there, unseen from the nodes.

/// How near to nothing, against how much it falls, the least value of a
/// parabola must come before the function it stands for may pass through.
const NEAR: f64 = 0.5;

/// The lowest point of a parabola through three points.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Dip {
    pub(super) at: f64,
    pub(super) least: f64,
    /// Whether what the parabola stands for may fall below nothing.
    pub(super) may_cross: bool,
}

impl Dip {
    /// Through three points of ascending `x`, if the middle one lies lowest.
    pub(super) fn through(x: [f64; 3], y: [f64; 3]) -> Option<Self> {
        if y[1] >= y[0] || y[1] >= y[2] {
            return None;
        }
        let (u, v) = (x[0] - x[1], x[2] - x[1]);
        let (before, after) = ((y[0] - y[1]) / u, (y[2] - y[1]) / v);
        let bend = (after - before) / (v - u);
        let slope = before - bend * u;
        let least = y[1] - 0.25 * slope * slope / bend;
        let may_cross = least <= NEAR * (0.5 * (y[0] + y[2]) - least);
        Some(Self { at: x[1] - 0.5 * slope / bend, least, may_cross })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_parabola_is_found_again() {
        let y = |x: f64| 3.0 * (x - 0.2) * (x - 0.2) + 0.01;
        let dip = Dip::through([-1.0, 0.0, 2.0], [y(-1.0), y(0.0), y(2.0)]).expect("the middle lies lowest");
        assert!((dip.at - 0.2).abs() < 1e-15 && (dip.least - 0.01).abs() < 1e-15 && dip.may_cross);
        assert_eq!(Dip::through([0.0, 1.0, 2.0], [1.0, 2.0, 3.0]), None);
        let high = Dip::through([-1.0, 0.0, 1.0], [101.0, 100.0, 101.0]).expect("the middle lies lowest");
        assert!(!high.may_cross);
    }
}
