//! What theory keeps constant while a ball slips and rolls.
//!
//! Sources: S. A. Chaplygin, "On a ball's rolling on a horizontal plane"
//! (1903; Regular and Chaotic Dynamics 7, 131, 2002); J. H. Jellett, A
//! Treatise on the Theory of Friction (1872); E. J. Routh, Advanced Dynamics
//! of a System of Rigid Bodies (1884), § 243.

#![allow(clippy::unwrap_used, reason = "a test fails by panicking")]

mod roll_support;

use nalgebra::Vector3;
use pithball_physics::roll::{Sample, ShotError, trace};
use roll_support::{Dice, MASS_KG, R_M, ball, cg, close, energy, lane, spin_momentum};

/// The largest error of a constant that a run of this accuracy may show,
/// relative: orientation is held to some 1e-5.
const WITHIN: f64 = 2e-6;

#[test]
fn momentum_about_the_contact_of_any_centred_ball() {
    let mut dice = Dice(23);
    for _ in 0..40 {
        let (ball, shot) = (dice.ball(0.0), dice.shot());
        let run = trace(&ball, &shot, 0.05).unwrap();
        let about = |s: &Sample| {
            let v = Vector3::new(s.velocity_m_s.x, s.velocity_m_s.y, 0.0);
            spin_momentum(&ball, s) + Vector3::z().cross(&v) * (MASS_KG * R_M)
        };
        let first = about(&run.samples[0]);
        for s in &run.samples {
            close((about(s) - first).norm() / first.norm(), 0.0, WITHIN, "L + mR·z×v");
        }
    }
}

/// The contact is at rest: a ball that rolls by its phase may creep.
fn grips(s: &Sample) -> bool {
    s.slip_m_s.norm() == 0.0
}

#[test]
fn energy_of_any_ball_never_grows_and_stays_while_it_rolls() {
    let mut dice = Dice(29);
    let mut rolling = 0;
    for _ in 0..60 {
        let (ball, shot) = (dice.ball(0.05), dice.shot());
        let run = match trace(&ball, &shot, 0.01) {
            Err(ShotError::Hops { .. }) => continue,
            run => run.unwrap(),
        };
        for pair in run.samples.windows(2) {
            let (before, after) = (energy(&ball, &pair[0]), energy(&ball, &pair[1]));
            assert!(after <= before * (1.0 + WITHIN), "energy grew from {before} to {after}");
            if pair.iter().all(grips) {
                close(after, before, WITHIN * before, "energy while rolling");
                rolling += 1;
            }
        }
    }
    assert!(rolling > 200, "only {rolling} samples rolled");
}

#[test]
fn jellett_and_routh_of_a_top_with_its_weight_on_its_axis() {
    let mut dice = Dice(31);
    let mut rolling = 0;
    for _ in 0..60 {
        let low = dice.between(2.46, 2.7);
        let high = low + dice.between(0.0, 0.06);
        let top = ball([high, high, low], [0.0, 0.0, dice.between(-0.06, 0.06)]);
        let (i1, i3, a) = (top.inertia_kg_m2.m11, top.inertia_kg_m2.m33, top.cg_m.z);
        let run = match trace(&top, &dice.shot(), 0.002) {
            Err(ShotError::Hops { .. }) => continue,
            run => run.unwrap(),
        };
        let scale = i1 * run.samples[0].omega_rad_s.norm();
        let jellett = |s: &Sample| spin_momentum(&top, s).dot(&(-Vector3::z() * R_M - cg(&top, s)));
        let routh = |s: &Sample| {
            let axis = s.turn * Vector3::z();
            let (cos, sin2) = (axis.z, 1.0 - axis.z * axis.z);
            let arm = R_M * cos + a;
            let root = (i1 * i3 + MASS_KG * i3 * arm * arm + MASS_KG * i1 * R_M * R_M * sin2).sqrt();
            (axis.dot(&s.omega_rad_s) * root, s.omega_rad_s.norm() * root)
        };
        let first = jellett(&run.samples[0]);
        for s in &run.samples {
            close(jellett(s), first, 1e-5 * scale * R_M, "Jellett's constant");
        }
        // From each moment at which the ball grips the lane until it lets go again.
        for grip in run.samples.split(|s| !grips(s)).filter(|grip| !grip.is_empty()) {
            for s in grip {
                let (found, size) = routh(s);
                close(found, routh(&grip[0]).0, 5e-6 * size, "Routh's constant");
                rolling += 1;
            }
        }
    }
    assert!(rolling > 200, "only {rolling} samples rolled");
}

/// Coulomb's law itself, at every sample: the slip never speeds the ball
/// without friction, and a rolling ball's contact is at rest.
#[test]
fn contact_rests_while_rolling_and_normal_force_averages_the_weight() {
    let mut dice = Dice(37);
    for _ in 0..20 {
        let (ball, mut shot) = (dice.ball(0.03), dice.shot());
        shot.lane = lane(&[(0.0, 63.0, 0.5)]);
        let run = trace(&ball, &shot, 0.002).unwrap();
        let weight = MASS_KG * 9.806_65;
        let mean = run.samples.iter().map(|s| s.normal_n).sum::<f64>() / run.samples.len() as f64;
        // The centre of gravity ends about as high as it began.
        close(mean / weight, 1.0, 0.02, "mean normal force");
        for s in run.samples.iter().filter(|s| grips(s)) {
            let contact = s.velocity_m_s - nalgebra::Vector2::new(s.omega_rad_s.y, -s.omega_rad_s.x) * R_M;
            close(contact.norm(), 0.0, 1e-9, "velocity of the contact");
        }
    }
}
