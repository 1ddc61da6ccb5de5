#![allow(clippy::expect_used, reason = "a check that fails stops its test")]

use core::f64::consts::{FRAC_PI_2, PI};

use nalgebra::Matrix3;
use proptest::prelude::*;

use super::*;
use crate::ball::Ball;
use crate::lane::{Friction, Zone};
use crate::recipe::Recipe;
use crate::roll::{self, Layout, Release, RigidBall, Shot};
use crate::units::{KG_PER_OZ, M_PER_IN, M_S_PER_MPH, RAD_S_PER_RPM};
use crate::weigh::{Weighed, weigh};

const R: f64 = 4.275 * M_PER_IN;

fn bore(diameter_in: f64, depth_in: f64, pitches_in: [f64; 2]) -> Bore {
    let [forward_pitch_m, side_pitch_m] = pitches_in.map(|pitch| pitch * M_PER_IN);
    Bore {
        diameter_m: diameter_in * M_PER_IN,
        depth_m: depth_in * M_PER_IN,
        forward_pitch_m,
        side_pitch_m,
        insert: None,
    }
}

fn plan() -> Plan {
    let fingers = [bore(0.9, 1.25, [0.25, -0.3]), bore(0.85, 1.25, [0.2, 0.3])];
    let thumb = Thumb { bore: bore(1.0, 2.75, [-0.25, 0.125]), spans_m: [3.5 * M_PER_IN, 3.6 * M_PER_IN] };
    Plan {
        hand: Hand::Right,
        pin_to_pap_m: 4.5 * M_PER_IN,
        drilling_angle_rad: 60.0_f64.to_radians(),
        val_angle_rad: 40.0_f64.to_radians(),
        pap_over_m: 5.0 * M_PER_IN,
        pap_up_m: 0.5 * M_PER_IN,
        grip: Grip { fingers, bridge_m: 0.25 * M_PER_IN, thumb: Some(thumb) },
    }
}

fn drilled(plan: &Plan) -> Drilling {
    drill(R, plan).expect("a plan that can be drilled")
}

fn angle(a: &Vector3<f64>, b: &Vector3<f64>) -> f64 {
    libm::atan2(a.cross(b).norm(), a.dot(b))
}

/// The angle at `p` between the arcs to `a` and to `b`.
fn angle_at(p: &Vector3<f64>, a: &Vector3<f64>, b: &Vector3<f64>) -> f64 {
    angle(&p.cross(a), &p.cross(b))
}

#[track_caller]
fn near(found: f64, expected: f64, within: f64, what: &str) {
    assert!((found - expected).abs() <= within, "{what}: {found}, not {expected}");
}

#[track_caller]
fn same(found: &Vector3<f64>, expected: [f64; 3], what: &str) {
    assert!((found - Vector3::from(expected)).amax() < 1e-12, "{what}: {found:?}, not {expected:?}");
}

/// Edge of a straight hole from its middle, on the surface.
fn edge_m(diameter_m: f64) -> f64 {
    R * libm::asin(0.5 * diameter_m / R)
}

/// Every arc and angle of a plan measured on the ball again.
fn measure_again(plan: &Plan) {
    let drilling = drilled(plan);
    let m = &drilling.marks;
    for v in [m.pap, m.foot, m.grip_centre, m.up, m.over, m.val_pole] {
        near(v.norm(), 1.0, 1e-12, "length");
    }
    near(R * angle(&m.pin, &m.pap), plan.pin_to_pap_m, 1e-12, "pin to PAP");
    near(angle_at(&m.pin, &m.mass_bias, &m.pap), plan.drilling_angle_rad, 1e-11, "drilling angle");
    // A point further up the VAL than any PAP: a quarter of the way round from the foot.
    near(angle_at(&m.pap, &m.up, &m.pin), plan.val_angle_rad.abs(), 1e-11, "VAL angle");
    near(R * angle(&m.foot, &m.pap), plan.pap_up_m.abs(), 1e-9, "up the VAL");
    near(R * angle(&m.foot, &m.grip_centre), plan.pap_over_m, 1e-12, "along the midline");
    // The right-angled triangle of grip centre, foot and PAP (Pythagoras on the sphere).
    let cosine = libm::cos(plan.pap_over_m / R) * libm::cos(plan.pap_up_m / R);
    near(m.grip_centre.dot(&m.pap), cosine, 1e-12, "grip centre to PAP");
    near(m.up.dot(&m.over), 0.0, 1e-12, "midline square to centre line");
    // Seen from outside the bowler's own side is to the right of up for a right-hander.
    let right = m.up.cross(&m.grip_centre) * plan.hand.side();
    near(right.dot(&m.over), 1.0, 1e-12, "handed");
    let entry = |n: usize| drilling.bores[n].hole.entry;
    let [middle, ring] = plan.grip.fingers;
    let bridge_m =
        R * angle(&entry(0), &entry(1)) - edge_m(middle.drilled_diameter_m()) - edge_m(ring.drilled_diameter_m());
    near(bridge_m, plan.grip.bridge_m, 1e-11, "bridge");
    let bridge = (entry(0) + entry(1)).normalize();
    near(bridge.dot(&m.over), 0.0, 1e-12, "the bridge's middle on the centre line");
    assert!(entry(1).dot(&m.over) > entry(0).dot(&m.over), "the ring finger on the PAP's side");
    if let Some(thumb) = &plan.grip.thumb {
        for (n, finger) in [middle, ring].iter().enumerate() {
            let span_m = R * angle(&entry(2), &entry(n)) - edge_m(thumb.bore.diameter_m) - edge_m(finger.diameter_m);
            near(span_m, thumb.spans_m[n], 1e-11, "span");
        }
        let mean_m = 0.5 * (thumb.spans_m[0] + thumb.spans_m[1]);
        let below_m = R * angle(&entry(2), &m.grip_centre) - edge_m(thumb.bore.diameter_m);
        near(below_m, 0.5 * mean_m, 1e-11, "grip centre half the span from the thumb");
        assert!(entry(2).dot(&m.up) < 0.0 && entry(2).dot(&m.over).abs() < 1e-12);
    } else {
        near(angle(&bridge, &m.grip_centre), 0.0, 1e-9, "grip centre in the bridge");
    }
    let bores = plan.grip.fingers.into_iter().chain(plan.grip.thumb.map(|thumb| thumb.bore));
    for (bored, bore) in drilling.bores.iter().zip(bores) {
        let Hole { entry, axis, .. } = &bored.hole;
        near(axis.norm(), 1.0, 1e-12, "axis");
        let misses_m = R * entry.cross(axis).norm();
        near(misses_m, libm::hypot(bore.forward_pitch_m, bore.side_pitch_m), 1e-12, "pitch");
        // How far the bottom lies to the PAP's side of a straight hole's, and under the palm.
        let lean = axis + entry * -entry.dot(axis);
        near((lean.dot(&m.over) * bore.side_pitch_m).signum(), 1.0, 0.0, "side pitch");
        let palm = if bored.digit == Digit::Thumb { m.up } else { -m.up };
        near((lean.dot(&palm) * bore.forward_pitch_m).signum(), 1.0, 0.0, "forward pitch");
    }
}

#[test]
fn arcs_and_angles_come_out_as_given() {
    measure_again(&plan());
    let mut without = plan();
    without.grip.thumb = None;
    measure_again(&without);
    without.hand = Hand::Left;
    measure_again(&without);
}

proptest! {
    #[test]
    fn any_layout_comes_out_as_given(
        left in any::<bool>(),
        pin_in in 0.5..6.5_f64,
        drilling_deg in 1.0..179.0_f64,
        val_deg in 1.0..179.0_f64,
        over_in in 3.0..6.5_f64,
        up_in in 0.1..1.5_f64,
        spans_in in [3.0..4.2_f64, 3.0..4.2_f64],
        bridge_in in 0.1..0.5_f64,
    ) {
        let mut any = plan();
        any.hand = if left { Hand::Left } else { Hand::Right };
        any.pin_to_pap_m = pin_in * M_PER_IN;
        any.drilling_angle_rad = drilling_deg.to_radians();
        any.val_angle_rad = val_deg.to_radians();
        any.pap_over_m = over_in * M_PER_IN;
        any.pap_up_m = up_in * M_PER_IN;
        any.grip.bridge_m = bridge_in * M_PER_IN;
        // Spans may differ by less than the fingers are apart.
        let [middle_in, ring_in] = spans_in;
        let ring_in = ring_in.clamp(middle_in - 0.5, middle_in + 0.5);
        if let Some(thumb) = &mut any.grip.thumb {
            thumb.spans_m = [middle_in, ring_in].map(|span| span * M_PER_IN);
        }
        measure_again(&any);
    }
}

#[test]
fn layouts_worked_out_by_hand() {
    // All arcs a quarter of the way round: the PAP is +x, a quarter from the pin.
    let mut quarter = plan();
    quarter.pin_to_pap_m = FRAC_PI_2 * R;
    quarter.drilling_angle_rad = 0.0;
    quarter.pap_over_m = FRAC_PI_2 * R;
    quarter.pap_up_m = 0.0;
    // Pin level with the PAP on the grip's side: the grip centre is at the pin.
    quarter.val_angle_rad = FRAC_PI_2;
    let m = drilled(&quarter).marks;
    same(&m.pap, [1.0, 0.0, 0.0], "PAP");
    same(&m.grip_centre, [0.0, 0.0, 1.0], "grip centre");
    same(&m.up, [0.0, 1.0, 0.0], "fingers");
    same(&m.over, [1.0, 0.0, 0.0], "over");
    // Pin straight above the PAP: the pin lies up the VAL, the grip to its left.
    quarter.val_angle_rad = 0.0;
    let m = drilled(&quarter).marks;
    same(&m.up, [0.0, 0.0, 1.0], "fingers");
    same(&m.grip_centre, [0.0, -1.0, 0.0], "grip centre");
    near(m.to_val_m(&m.pin, R), 0.0, 1e-12, "a pin on the VAL");
    // Half an eighth: the PAP 45° up the VAL from the midline.
    quarter.pap_up_m = PI / 4.0 * R;
    let m = drilled(&quarter).marks;
    let half = 0.5_f64.sqrt();
    same(&m.foot, [half, 0.0, -half], "foot");
    same(&m.up, [half, 0.0, half], "fingers");
    same(&m.grip_centre, [0.0, -1.0, 0.0], "grip centre");
    // A pin that is the PAP: the VAL angle is measured from where it just was.
    quarter.pin_to_pap_m = 0.0;
    quarter.pap_up_m = 0.0;
    let m = drilled(&quarter).marks;
    same(&m.pap, [0.0, 0.0, 1.0], "PAP at the pin");
    same(&m.up, [-1.0, 0.0, 0.0], "fingers");
}

#[test]
fn a_left_hander_is_the_mirror_image() {
    let right = drilled(&plan());
    let left = drilled(&Plan { hand: Hand::Left, ..plan() });
    let mirrored = |v: &Vector3<f64>| [v.x, -v.y, v.z];
    for (a, b) in [
        (right.marks.pap, left.marks.pap),
        (right.marks.grip_centre, left.marks.grip_centre),
        (right.marks.up, left.marks.up),
        (right.marks.over, left.marks.over),
    ] {
        same(&b, mirrored(&a), "mark");
    }
    for (a, b) in right.bores.iter().zip(&left.bores) {
        same(&b.hole.entry, mirrored(&a.hole.entry), "entry");
        same(&b.hole.axis, mirrored(&a.hole.axis), "axis");
    }
}

#[test]
fn the_pap_is_where_the_shot_puts_it() {
    let weighed = weigh(&Ball::new(&uniform()).expect("a ball"));
    for hand in [Hand::Right, Hand::Left] {
        let plan = Plan { hand, ..plan() };
        let release = Release {
            speed_m_s: 17.0 * M_S_PER_MPH,
            spin_rad_s: 300.0 * RAD_S_PER_RPM,
            axis_rotation_rad: 0.8,
            axis_tilt_rad: 0.2,
            launch_angle_rad: 0.0,
            board: 20.0,
        };
        let Plan { pin_to_pap_m, drilling_angle_rad, .. } = plan;
        let layout = Layout { pin_to_pap_m, drilling_angle_rad, start_turn_rad: 0.3 };
        let lane = Friction::from_zones(&[Zone { from_m: 0.0, to_m: 20.0, mu: 0.1 }]).expect("a lane");
        let shot = Shot { hand, release, layout, lane };
        let trace = roll::trace(&RigidBall::from(&weighed), &shot, 0.01).expect("a shot");
        let axis = trace.samples[0].axis_body * hand.side();
        assert!((axis - drilled(&plan).marks.pap).amax() < 1e-12);
    }
}

fn uniform() -> Recipe {
    Recipe { diameter_m: 2.0 * R, cover_density_kg_m3: 1200.0, pieces: vec![], holes: vec![] }
}

fn weighed_with(drilling: &Drilling) -> Weighed {
    let mut recipe = uniform();
    recipe.holes = drilling.bores.iter().map(|bored| bored.hole.clone()).collect();
    recipe.pieces = drilling.bores.iter().filter_map(|bored| bored.insert.clone()).collect();
    weigh(&Ball::new(&recipe).expect("inserts lie in the ball"))
}

#[test]
fn an_insert_weighs_what_its_tube_does() {
    let plain = drilled(&plan());
    let mut lined = plan();
    let insert = Insert { wall_m: 0.1 * M_PER_IN, density_kg_m3: 1500.0 };
    for finger in &mut lined.grip.fingers {
        finger.insert = Some(insert);
    }
    measure_again(&lined);
    let lined = drilled(&lined);
    let mut expected = 0.0;
    for bored in &lined.bores[..2] {
        let Some(Piece { solid: Solid { shape: Shape::Cylinder { diameter_m, height_m }, .. }, .. }) = &bored.insert
        else {
            unreachable!("both fingers have an insert");
        };
        near(*diameter_m, bored.drilled_diameter_m, 1e-15, "drilled");
        // As long as the hole is deep, but for the rounding of the ball over it.
        assert!(*height_m < bored.hole.depth_m && *height_m > bored.hole.depth_m - 0.15 * M_PER_IN, "{height_m}");
        let area_m2 = PI / 4.0 * (diameter_m * diameter_m - bored.hole.diameter_m * bored.hole.diameter_m);
        expected += (1500.0 - 1200.0) * area_m2 * height_m;
    }
    let difference_kg = weighed_with(&lined).mass_kg - weighed_with(&plain).mass_kg;
    // Holes of the same size in both, though a wider bridge moves them a little.
    near(difference_kg / expected, 1.0, 2e-3, "an insert's weight");
    assert_eq!(lined.bores[2].insert, None);
}

#[test]
fn plans_that_cannot_be_drilled() {
    let refused = |change: fn(&mut Plan)| {
        let mut plan = plan();
        change(&mut plan);
        drill(R, &plan).expect_err("a plan that cannot be drilled")
    };
    let quantity = |error| match error {
        DrillError::OutOfRange { quantity, digit, .. } => (quantity, digit),
        other => unreachable!("{other}"),
    };
    assert_eq!(quantity(refused(|p| p.pin_to_pap_m = 4.0 * R)), ("pin_to_pap_m", None));
    assert_eq!(quantity(refused(|p| p.pap_over_m = f64::NAN)), ("pap_over_m", None));
    assert_eq!(quantity(refused(|p| p.grip.fingers[1].depth_m = 0.0)), ("depth_m", Some(Digit::Ring)));
    assert_eq!(quantity(refused(|p| p.grip.fingers[0].side_pitch_m = R)), ("side_pitch_m", Some(Digit::Middle)));
    let apart: fn(&mut Plan) = |p| {
        if let Some(thumb) = &mut p.grip.thumb {
            thumb.spans_m[0] = 1.0 * M_PER_IN;
        }
    };
    assert_eq!(refused(apart), DrillError::Spans);
    let shallow: fn(&mut Plan) = |p| {
        p.grip.fingers[0].depth_m = 0.02 * M_PER_IN;
        p.grip.fingers[0].insert = Some(Insert { wall_m: 0.1 * M_PER_IN, density_kg_m3: 1200.0 });
    };
    assert_eq!(refused(shallow), DrillError::Shallow { digit: Digit::Middle });
}

#[test]
fn holes_in_each_others_way() {
    let straight = |degrees: f64, diameter_in: f64, depth_in: f64| {
        let (sin, cos) = degrees.to_radians().sin_cos();
        let entry = Vector3::new(sin, 0.0, cos);
        Hole { entry, axis: -entry, diameter_m: diameter_in * M_PER_IN, depth_m: depth_in * M_PER_IN }
    };
    assert_eq!(conflicts(R, &[straight(20.0, 1.0, 2.5), straight(60.0, 1.0, 2.5)]), []);
    // Two straight holes 20° apart, both 2 in deep: nearest at the bottoms,
    // where their axes are 2·(4.275 − 2)·sin 10° apart.
    let apart_in = 2.0 * 2.275 * 10.0_f64.to_radians().sin();
    let [Conflict::ThinWeb { holes: [0, 1], web_m }] =
        conflicts(R, &[straight(30.0, 0.7, 2.0), straight(50.0, 0.7, 2.0)])[..]
    else {
        unreachable!("one thin web");
    };
    near(web_m / M_PER_IN, apart_in - 0.7, 1e-12, "web");
    let [Conflict::Meet { by_m, .. }] = conflicts(R, &[straight(30.0, 0.9, 2.0), straight(50.0, 0.9, 2.0)])[..] else {
        unreachable!("they meet");
    };
    near(by_m / M_PER_IN, 0.9 - apart_in, 1e-12, "overlap");
    assert_eq!(conflicts(R, &[straight(3.0, 1.0, 2.0)]), [Conflict::OverPin { hole: 0 }]);
    // 4 mm beyond the far side: a bottom at the surface's other side comes out.
    let through = straight(90.0, 1.0, 8.55);
    let [Conflict::LeavesBall { hole: 0, by_m }] = conflicts(R, &[through])[..] else {
        unreachable!("it comes out");
    };
    near(by_m / M_PER_IN, libm::hypot(4.275, 0.5) - 4.275, 1e-9, "beyond");
}

#[test]
fn static_weights_are_the_moment_seen_from_the_grip() {
    let drilling = drilled(&plan());
    let weighed = weighed_with(&drilling);
    let found = statics(&weighed, &drilling.marks);
    let all = Vector3::new(found.top_oz, found.finger_oz, found.side_oz).norm();
    near(all, weighed.mass_kg * weighed.cg_m.norm() / R / KG_PER_OZ, 1e-12, "the whole moment");
    // What is drilled out of a uniform ball was about the grip centre: bottom weight.
    assert!(found.top_oz < -1.0 && found.top_oz.abs() > 3.0 * found.side_oz.abs(), "{found:?}");
    // Half an ounce of top weight: the centre of gravity 0.5 oz·R/m towards the grip.
    let cg_m = drilling.marks.grip_centre * (0.5 * KG_PER_OZ * R / weighed.mass_kg);
    let put = statics(&Weighed { cg_m, ..weighed }, &drilling.marks);
    near(put.top_oz, 0.5, 1e-12, "top");
    near(put.finger_oz, 0.0, 1e-12, "finger");
    near(put.side_oz, 0.0, 1e-12, "side");
}

#[test]
fn an_axis_that_moved_and_one_that_was_not_there() {
    let ball = |rg_in: [f64; 3], turn: f64| {
        let (sin, cos) = turn.sin_cos();
        let axes = [Vector3::z(), Vector3::new(-sin, cos, 0.0), Vector3::new(cos, sin, 0.0)];
        let rg_m = rg_in.map(|rg| rg * M_PER_IN);
        let inertia = axes
            .iter()
            .zip(rg_m)
            .fold(Matrix3::zeros(), |sum, (axis, rg)| sum + axis * axis.transpose() * (6.8 * rg * rg));
        Weighed {
            radius_m: R,
            mass_kg: 6.8,
            cg_m: Vector3::zeros(),
            inertia_kg_m2: inertia,
            rg_m,
            axes,
            relative_error: 1e-8,
            shares: vec![],
        }
    };
    let moved = axis_move(&ball([2.48, 2.52, 2.53], 0.0), &ball([2.48, 2.52, 2.53], 0.2), 2);
    near(moved.moved_rad.expect("it moved"), 0.2, 1e-12, "high axis");
    let low = axis_move(&ball([2.48, 2.52, 2.53], 0.0), &ball([2.48, 2.52, 2.53], 0.2), 0);
    near(low.moved_rad.expect("it stayed"), 0.0, 1e-12, "low axis");
    let new = axis_move(&ball([2.48, 2.53, 2.53], 0.0), &ball([2.48, 2.52, 2.53], 0.2), 2);
    assert_eq!((new.before, new.moved_rad), (None, None));
    assert!(new.after.is_some());
}
