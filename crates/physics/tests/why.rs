//! The difference of two shots, shared out over the properties in which they differ.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a test fails by panicking")]

mod roll_support;

use pithball_physics::lane::Hand;
use pithball_physics::roll::{RigidBall, SameHand, ShotError, release_inertia_kg_m2, roll};
use pithball_physics::units::{M_PER_IN, RAD_S_PER_RPM};
use pithball_physics::why::{Lanes, Outcome, Property, Thrown, Unshared, Why, WhyError, why};
use roll_support::*;

fn told(a: &Thrown, b: &Thrown, hand: SameHand) -> Why {
    why(a, b, Lanes { a_under_b: &a.shot.lane, b_under_a: &b.shot.lane }, hand).unwrap()
}

fn numbers(outcome: &Outcome) -> [f64; 5] {
    let Outcome { hook_boards, board_at_pins, entry_angle_rad, breakpoint_board, breakpoint_m } = *outcome;
    [hook_boards, board_at_pins, entry_angle_rad, breakpoint_board, breakpoint_m]
}

fn league() -> Thrown {
    Thrown { ball: ball([2.53, 2.52, 2.48], [0.0, 0.0, 0.02]), shot: shot(17.0, 300.0, 45.0, 12.0, 1.5, oiled()) }
}

#[track_caller]
fn sums(told: &Why) {
    let whole = numbers(&told.whole.unwrap());
    let parts = told.parts.as_ref().unwrap();
    for (at, whole) in whole.iter().enumerate() {
        let sum: f64 = parts.iter().map(|(_, part)| numbers(part)[at]).sum();
        close(sum, *whole, 1e-12, "the parts sum to the whole");
    }
}

#[test]
fn the_parts_of_any_two_shots_sum_to_the_whole() {
    let mut dice = Dice(20);
    let mut shared = 0;
    for _ in 0..16 {
        let mut any = || Thrown { ball: dice.ball(0.02), shot: dice.shot() };
        let (a, mut b) = (any(), any());
        b.ball.mass_kg *= 0.95;
        b.ball.inertia_kg_m2 *= 0.95;
        b.shot.release = a.shot.release;
        b.shot.lane = a.shot.lane.clone();
        for hand in [SameHand::Revs, SameHand::Effort] {
            let told = told(&a, &b, hand);
            if told.parts.is_some() {
                sums(&told);
                shared += 1;
            } else {
                assert!(told.unshared.is_some());
            }
        }
    }
    assert!(shared > 8, "{shared} of 32");
}

#[test]
fn the_whole_is_what_roll_says_of_each_to_the_last_bit() {
    let a = league();
    let mut b = a.clone();
    b.ball = ball([2.57, 2.55, 2.50], [0.01, 0.0, 0.03]);
    let told = told(&a, &b, SameHand::Revs);
    assert_eq!(told.a, Outcome::of(&roll(&a.ball, &a.shot).unwrap()));
    assert_eq!(told.b, Outcome::of(&roll(&b.ball, &b.shot).unwrap()));
    sums(&told);
}

#[test]
fn names_may_change_places() {
    let a = league();
    let mut b = a.clone();
    b.ball = ball([2.57, 2.55, 2.50], [0.01, 0.0, 0.03]);
    b.shot.layout.pin_to_pap_m *= 0.5;
    let (there, back) = (told(&a, &b, SameHand::Revs), told(&b, &a, SameHand::Revs));
    let pairs = there.parts.unwrap().into_iter().zip(back.parts.unwrap());
    for ((property, part), (same, other)) in pairs {
        assert_eq!(property, same);
        for (x, y) in numbers(&part).iter().zip(numbers(&other)) {
            close(*x, -y, 1e-12, "the negative");
        }
    }
}

#[test]
fn nothing_differs_between_a_shot_and_itself() {
    let a = league();
    for hand in [SameHand::Revs, SameHand::Effort] {
        let told = told(&a, &a.clone(), hand);
        assert_eq!(told.parts, Some(vec![]));
        assert_eq!(told.whole, Some(Outcome::default()));
    }
}

/// Each change by itself is the whole reason.
#[test]
fn one_change_has_all_of_the_difference() {
    let a = league();
    let scaled = |ball: &RigidBall, by: f64| RigidBall {
        mass_kg: ball.mass_kg * by,
        inertia_kg_m2: ball.inertia_kg_m2 * by,
        ..*ball
    };
    type Change = Box<dyn Fn(&mut Thrown)>;
    let changed: [(Property, Change); 6] = [
        (Property::Weight, Box::new(move |b| b.ball = scaled(&b.ball, 0.9))),
        (Property::Size, Box::new(|b| b.ball.radius_m *= 0.99)),
        (Property::CentreOfGravity, Box::new(|b| b.ball.cg_m.x += 0.001)),
        (Property::Layout, Box::new(|b| b.shot.layout.drilling_angle_rad += 0.5)),
        (Property::Release, Box::new(|b| b.shot.release.speed_m_s *= 1.03)),
        (Property::Lane, Box::new(|b| b.shot.lane = lane(&[(0.0, 42.0, 0.04), (42.0, 63.0, 0.2)]))),
    ];
    for (property, change) in changed {
        let mut b = a.clone();
        change(&mut b);
        let told = told(&a, &b, SameHand::Revs);
        let parts = told.parts.unwrap();
        let own = parts.iter().find(|(p, _)| *p == property).unwrap().1;
        for (x, y) in numbers(&own).iter().zip(numbers(&told.whole.unwrap())) {
            // Scaling a tensor may leave rounding in its RGs.
            close(*x, y, 1e-9, "all of it");
        }
        if parts.len() > 1 {
            assert_eq!(property, Property::Weight, "{parts:?}");
        }
    }
}

/// Mass changed with RG and friction kept changes nothing: gravity, friction and inertia all go
/// with the mass. So weight has no part of its own (as the equations of motion say).
#[test]
fn weight_by_itself_changes_nothing() {
    let a = league();
    let mut b = a.clone();
    b.ball.mass_kg *= 0.8;
    b.ball.inertia_kg_m2 *= 0.8;
    let whole = told(&a, &b, SameHand::Revs).whole.unwrap();
    assert!(numbers(&whole).iter().all(|x| x.abs() < 1e-6), "{whole:?}");
}

/// A lower RG alone, let go with the same revs, ends at a smaller angle once both balls roll
/// (FACTS 6: the final velocity (v₀ + kRω₀×ẑ)/(1+k), independent of the friction).
#[test]
fn a_lower_rg_by_itself_enters_at_a_smaller_angle_and_all_of_it_is_its_own() {
    let mut a = league();
    a.ball = ball([2.52; 3], [0.0; 3]);
    let mut b = a.clone();
    b.ball = ball([2.47; 3], [0.0; 3]);
    let told = told(&a, &b, SameHand::Revs);
    let whole = told.whole.unwrap();
    assert!(whole.entry_angle_rad < 0.0);
    let parts = told.parts.unwrap();
    assert_eq!(parts[0].0, Property::Rg);
    close(parts[0].1.entry_angle_rad, whole.entry_angle_rad, 1e-9, "RG's part");
}

/// The same effort: spin goes with one over the moment about the release axis, for a sphere's
/// tensor with one over RG².
#[test]
fn the_same_effort_gives_a_lower_rg_more_revs() {
    let mut a = league();
    a.ball = ball([2.52; 3], [0.0; 3]);
    let mut b = a.clone();
    b.ball = ball([2.47; 3], [0.0; 3]);
    let told = told(&a, &b, SameHand::Effort);
    close(told.b_spin_rad_s / RAD_S_PER_RPM, 300.0 * (2.52_f64 / 2.47).powi(2), 1e-9, "revs");
    sums(&told);
    let i = release_inertia_kg_m2(&a.ball, &a.shot);
    close(i, MASS_KG * (2.52 * M_PER_IN).powi(2), 1e-12, "moment about the release axis");
}

/// The moment about the release axis of an uneven ball: pin on the PAP is the low axis itself, and
/// a quarter turn away the mean of the others at 45°, for both hands.
#[test]
fn the_moment_about_the_release_axis_follows_the_layout() {
    let mut a = league();
    a.ball = ball([2.56, 2.52, 2.47], [0.0; 3]);
    let kg_m2 = |rg_in: f64| MASS_KG * (rg_in * M_PER_IN).powi(2);
    for hand in [Hand::Right, Hand::Left] {
        a.shot.hand = hand;
        a.shot.layout.pin_to_pap_m = 0.0;
        close(release_inertia_kg_m2(&a.ball, &a.shot), kg_m2(2.47), 1e-12, "low");
        a.shot.layout.pin_to_pap_m = core::f64::consts::FRAC_PI_2 * R_M;
        a.shot.layout.drilling_angle_rad = 0.0;
        close(release_inertia_kg_m2(&a.ball, &a.shot), kg_m2(2.56), 1e-12, "high");
        a.shot.layout.drilling_angle_rad = core::f64::consts::FRAC_PI_4;
        close(release_inertia_kg_m2(&a.ball, &a.shot), 0.5 * (kg_m2(2.56) + kg_m2(2.52)), 1e-12, "between");
    }
}

/// Friction given for each lane under each cover: the cover's part and the lane's are told apart.
#[test]
fn cover_and_lane_are_told_apart() {
    let zones = |oil, dry| lane(&[(0.0, 40.0, oil), (40.0, 63.0, dry)]);
    let mut a = league();
    a.shot.lane = zones(0.04, 0.2);
    let mut b = a.clone();
    b.shot.lane = zones(0.06, 0.18);
    let (a_under_b, b_under_a) = (zones(0.05, 0.16), zones(0.05, 0.22));
    let told = why(&a, &b, Lanes { a_under_b: &a_under_b, b_under_a: &b_under_a }, SameHand::Revs).unwrap();
    sums(&told);
    let of = |lane| {
        let mut shot = a.shot.clone();
        shot.lane = lane;
        numbers(&Outcome::of(&roll(&a.ball, &shot).unwrap()).unwrap())
    };
    let (start, end) = (of(a.shot.lane.clone()), of(b.shot.lane.clone()));
    let (cover_first, lane_first) = (of(a_under_b), of(b_under_a));
    for (property, part) in told.parts.unwrap() {
        for (at, part) in numbers(&part).into_iter().enumerate() {
            let expected = match property {
                Property::Cover => 0.5 * (cover_first[at] - start[at] + end[at] - lane_first[at]),
                Property::Lane => 0.5 * (lane_first[at] - start[at] + end[at] - cover_first[at]),
                other => panic!("{other:?}"),
            };
            close(part, expected, 1e-12, "by hand");
        }
    }
}

#[test]
fn what_cannot_be_told_says_why() {
    let a = league();
    let mut gutter = a.clone();
    gutter.shot.release.launch_angle_rad = 0.2;
    let missed = told(&a, &gutter, SameHand::Revs);
    assert!(matches!(missed.unshared, Some(Unshared::BEnds(_))) && missed.whole.is_none() && missed.a.is_some());
    assert!(matches!(told(&gutter, &a, SameHand::Revs).unshared, Some(Unshared::AEnds(_))));

    let mut wrong = a.clone();
    wrong.shot.release.board = 60.0;
    let lanes = Lanes { a_under_b: &a.shot.lane, b_under_a: &a.shot.lane };
    assert!(matches!(why(&a, &wrong, lanes, SameHand::Revs), Err(WhyError::B(ShotError::OutOfRange { .. }))));
    assert!(matches!(why(&wrong, &a, lanes, SameHand::Revs), Err(WhyError::A(ShotError::OutOfRange { .. }))));

    // A tenth of the moment would take ten times the revs: more than any hand gives.
    let mut light = a.clone();
    light.ball.inertia_kg_m2 *= 0.1;
    assert!(matches!(told(&a, &light, SameHand::Effort).unshared, Some(Unshared::BCannot(_))));

    // The launch of one with the board of the other end of the lane: some mixture drops off.
    let mut inside = a.clone();
    inside.shot.release.board = 30.0;
    inside.shot.release.launch_angle_rad = 0.06;
    inside.shot.layout.pin_to_pap_m *= 1.1;
    let fine = told(&a, &inside, SameHand::Revs);
    assert!(fine.parts.is_some(), "{fine:?}");
}

/// A mixture of a flat ball and a long one that no rigid body can be is said, not rolled.
#[test]
fn a_mixture_that_is_no_rigid_body_is_said() {
    let a = Thrown { ball: ball([2.5, 2.5, 0.6], [0.0; 3]), ..league() };
    let mut b = a.clone();
    b.ball = ball([3.4, 2.5, 2.4], [0.0; 3]);
    let told = told(&a, &b, SameHand::Revs);
    assert!(told.whole.is_some() && told.parts.is_none(), "{told:?}");
    assert!(
        matches!(told.unshared, Some(Unshared::MixtureCannot(ShotError::OutOfRange { quantity: "inertia_kg_m2", .. }))),
        "{told:?}"
    );
}
