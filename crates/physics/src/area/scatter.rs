//! Throws that differ as a hand's do.

use core::f64::consts::TAU;

use crate::roll::Release;
use crate::units::{M_S_PER_MPH, RAD_S_PER_RPM};

/// Throws of the scatter.
pub const SCATTER: usize = 1024;

/// How much a hand varies: standard deviations of independent normal spreads.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spread {
    /// Of the board.
    pub board: f64,
    /// Of the launch angle.
    pub launch_angle_rad: f64,
    /// Of the speed.
    pub speed_m_s: f64,
    /// Of the rate of spin.
    pub spin_rad_s: f64,
}

/// A steady league bowler: half a board, 0.2°, 0.3 mph, 10 rev/min. No figure
/// is published: model choice.
pub const SPREAD: Spread = Spread {
    board: 0.5,
    launch_angle_rad: core::f64::consts::PI / 900.0,
    speed_m_s: 0.3 * M_S_PER_MPH,
    spin_rad_s: 10.0 * RAD_S_PER_RPM,
};

/// Element `at`, from 1 on, of van der Corput's sequence to a prime base:
/// the digits of `at` mirrored behind the point. With four primes, Halton's
/// points, which fill the cube more evenly than chance would (J. H. Halton,
/// Numerische Mathematik 2, 1960, p. 84).
fn mirrored(mut at: usize, base: usize) -> f64 {
    let (mut value, mut place) = (0.0, 1.0);
    while at > 0 {
        place /= base as f64;
        value += place * (at % base) as f64;
        at /= base;
    }
    value
}

/// Two independent normal numbers of two even ones above 0 and below 1 (G. E.
/// P. Box and M. E. Muller, Annals of Mathematical Statistics 29, 1958, p. 610).
fn normal(u: f64, v: f64) -> [f64; 2] {
    let size = (-2.0 * libm::log(u)).sqrt();
    let (sin, cos) = libm::sincos(TAU * v);
    [size * cos, size * sin]
}

/// Throw `at` of the scatter about a release.
pub(super) fn varied(of: &Release, at: usize) -> Release {
    let even = |base| mirrored(at + 1, base);
    let [board, angle] = normal(even(2), even(3));
    let [speed, spin] = normal(even(5), even(7));
    Release {
        board: of.board + SPREAD.board * board,
        launch_angle_rad: of.launch_angle_rad + SPREAD.launch_angle_rad * angle,
        speed_m_s: of.speed_m_s + SPREAD.speed_m_s * speed,
        // A hand that gives next to no spin does not give less than none.
        spin_rad_s: (of.spin_rad_s + SPREAD.spin_rad_s * spin).max(0.0),
        ..*of
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_scatter_has_the_spread_it_says_and_no_drift() {
        let of = Release {
            speed_m_s: 8.0,
            spin_rad_s: 30.0,
            axis_rotation_rad: 0.8,
            axis_tilt_rad: 0.2,
            launch_angle_rad: 0.05,
            board: 20.0,
        };
        let all: Vec<Release> = (0..SCATTER).map(|at| varied(&of, at)).collect();
        let check = |what: &str, middle: f64, spread: f64, of: fn(&Release) -> f64| {
            let mean = all.iter().map(of).sum::<f64>() / SCATTER as f64;
            let square = all.iter().map(|release| (of(release) - mean).powi(2)).sum::<f64>() / SCATTER as f64;
            assert!((mean - middle).abs() < 0.02 * spread, "{what}: mean {mean}");
            assert!((square.sqrt() / spread - 1.0).abs() < 0.02, "{what}: spread {}", square.sqrt());
        };
        check("board", 20.0, SPREAD.board, |r| r.board);
        check("angle", 0.05, SPREAD.launch_angle_rad, |r| r.launch_angle_rad);
        check("speed", 8.0, SPREAD.speed_m_s, |r| r.speed_m_s);
        check("spin", 30.0, SPREAD.spin_rad_s, |r| r.spin_rad_s);
        let mixed = |p: fn(&Release) -> f64, q: fn(&Release) -> f64| {
            all.iter().map(|r| p(r) * q(r)).sum::<f64>() / SCATTER as f64
        };
        let board = |r: &Release| (r.board - 20.0) / SPREAD.board;
        let angle = |r: &Release| (r.launch_angle_rad - 0.05) / SPREAD.launch_angle_rad;
        let speed = |r: &Release| (r.speed_m_s - 8.0) / SPREAD.speed_m_s;
        assert!(
            mixed(board, angle).abs() < 0.03 && mixed(board, speed).abs() < 0.05 && mixed(angle, speed).abs() < 0.05
        );
    }
}
