//! Places where a careless method divides by zero or takes the wrong side:
//! faces that touch, surfaces that coincide, pieces that hide one another,
//! holes through everything, walls of no thickness. The right answer is known
//! for each.

use core::f64::consts::PI;

use nalgebra::Vector3;
use physics::recipe::Recipe;
use physics::units::M_PER_IN;
use physics::weigh::Weighed;
use pithball_tests::body::{Body, weighed};
use pithball_tests::close::{bodies_close, close, within};
use pithball_tests::make::*;

/// Two recipes that are the same ball.
#[track_caller]
fn same(what: &str, a: &Recipe, b: &Recipe) -> Weighed {
    let (a, b) = (weighed(a), weighed(b));
    let allowed = a.relative_error + b.relative_error + 1e-13;
    bodies_close(what, &Body::from(&a), &Body::from(&b), a.radius_m, allowed);
    a
}

fn cubic_in(w: &Weighed, part: usize) -> f64 {
    w.shares[part].volume_m3 / M_PER_IN.powi(3)
}

#[test]
fn faces_that_touch() {
    // One cylinder, or the same in two, three or four slices, upright and tilted.
    for turn in [[0.0; 3], [33.0, 21.0, -14.0]] {
        let axis = pithball_tests::turned::turn_of(turn.map(f64::to_radians)) * Vector3::z();
        let whole = ball(8.55, 1.18).pour(2.0, cylinder(3.0, 3.0).turn(turn));
        for slices in 2..5 {
            let height = 3.0 / f64::from(slices);
            let mut stack = ball(8.55, 1.18);
            for k in 0..slices {
                let up = axis * (height * (f64::from(k) + 0.5) - 1.5);
                stack = stack.pour(2.0, cylinder(3.0, height).turn(turn).at(up.into()));
            }
            same("slices", &whole, &stack);
        }
    }
}

#[test]
fn spheres_that_touch() {
    // Inside the ball at one point, inside each other at one point, side by side at one point.
    let recipe = ball(8.0, 1.2).pour(0.9, sphere(6.0).at([0.0, 0.0, 1.0])).pour(2.0, sphere(2.0).at([0.0, 0.0, 3.0]));
    let recipe = recipe.pour(1.5, sphere(1.0).at([0.0, 0.0, 1.5]));
    let body = |g_cc: f64, d: f64, z: f64| {
        Body::sphere(g_cc * 1000.0, d / 2.0 * M_PER_IN).moved(Vector3::new(0.0, 0.0, z * M_PER_IN))
    };
    let want = body(1.2, 8.0, 0.0).with(body(0.9 - 1.2, 6.0, 1.0)).with(body(2.0 - 0.9, 2.0, 3.0)).with(body(
        1.5 - 0.9,
        1.0,
        1.5,
    ));
    bodies_close("touching spheres", &Body::from(&weighed(&recipe)), &want, 0.1, 1e-6);
    // The same, drawn off every axis.
    let turn = nalgebra::Rotation3::from_euler_angles(0.3, 1.1, -0.7);
    let turned = weighed(&pithball_tests::turned::turned(&recipe, &turn));
    bodies_close("touching spheres, turned", &Body::from(&turned), &want.turned(&turn), 0.1, 1e-6);
}

#[test]
fn surfaces_that_coincide() {
    let core = |density| ball(8.55, 1.18).pour(density, cylinder(3.0, 2.0).turn([20.0, 10.0, 0.0]));
    // A piece poured into exactly the place of another hides it.
    let again = core(3.0).pour(2.0, cylinder(3.0, 2.0).turn([20.0, 10.0, 0.0]));
    let got = same("the same place", &again, &core(2.0));
    within("hidden piece", cubic_in(&got, 1), 0.0, 1e-9);
    // A cut that takes all leaves nothing; a lathe, a frustum and a cylinder of one form are one.
    let emptied = ball(8.55, 1.18).pour_cut(3.0, cylinder(3.0, 2.0), vec![cylinder(3.0, 2.0)]);
    same("all cut away", &emptied, &ball(8.55, 1.18));
    let upright = ball(8.55, 1.18).pour(2.0, cylinder(3.0, 2.0));
    let frustum_on_it = upright.clone().pour(2.0, frustum(3.0, 3.0, 2.0));
    same("frustum on cylinder", &frustum_on_it, &upright);
    let lathe_on_it = upright.clone().pour(2.0, lathe(&[[0.0, -1.0], [1.5, -1.0], [1.5, 1.0], [0.0, 1.0]]));
    same("lathe on cylinder", &lathe_on_it, &upright);
    // A piece as large as the ball is the ball.
    let full = ball(8.55, 1.18).pour(1.3, sphere(8.55));
    let got = same("as large as the ball", &full, &ball(8.55, 1.3));
    within("no cover left", cubic_in(&got, 0), 0.0, 1e-9);
    // A box beside a box, a face in common, over a third that spans both.
    let pair = ball(8.55, 1.18).pour(1.0, cuboid(4.0, 2.0, 2.0)).pour(2.0, cuboid(2.0, 2.0, 2.0).at([-1.0, 0.0, 0.0]));
    let pair = pair.pour(2.0, cuboid(2.0, 2.0, 2.0).at([1.0, 0.0, 0.0]));
    same("two halves", &pair, &ball(8.55, 1.18).pour(2.0, cuboid(4.0, 2.0, 2.0)));
}

#[test]
fn hidden_pieces() {
    let core = |recipe: Recipe| recipe.pour(1.6, ellipsoid(4.0, 4.4, 5.0).at([0.1, 0.2, 0.0]).turn([15.0, 0.0, 0.0]));
    for hidden in [sphere(2.0), cuboid(1.0, 1.5, 2.0).turn([10.0, 20.0, 30.0]), ring(2.0, 0.5).at([0.2, 0.1, 0.3])] {
        let got = same("hidden", &core(ball(8.55, 1.18).pour(3.7, hidden)), &core(ball(8.55, 1.18)));
        let whole = 4.0 / 3.0 * PI * 4.275_f64.powi(3);
        within("volume of a hidden piece", cubic_in(&got, 1), 0.0, got.relative_error * whole);
    }
}

#[test]
fn cuts_that_miss_and_cuts_that_meet() {
    let plain = ball(8.55, 1.18).pour(2.0, cylinder(3.0, 2.0));
    let misses = vec![sphere(1.0).at([0.0, 0.0, 2.5]), cuboid(1.0, 1.0, 1.0).at([2.0, 0.0, 0.5])];
    same("cuts that only touch", &ball(8.55, 1.18).pour_cut(2.0, cylinder(3.0, 2.0), misses), &plain);
    // The same cut twice, and a cut inside a cut.
    let cut = || cuboid(1.0, 1.0, 1.0).at([0.3, 0.0, 0.0]).turn([0.0, 20.0, 0.0]);
    let once = ball(8.55, 1.18).pour_cut(2.0, cylinder(3.0, 2.0), vec![cut()]);
    let twice = ball(8.55, 1.18).pour_cut(2.0, cylinder(3.0, 2.0), vec![cut(), cut(), sphere(0.4).at([0.3, 0.0, 0.0])]);
    let got = same("the same cut three times", &twice, &once);
    within("what is left", cubic_in(&got, 1), PI * 4.5 - 1.0, 1e-5);
}

#[test]
fn a_hole_through_everything() {
    // Straight through nested spheres, past the centre and out the other side: what a
    // drill of radius a takes from each sphere of radius r is 4π/3·(r³ − (r² − a²)^1.5).
    let layers = [(8.55, 1.18), (7.0, 0.95), (4.0, 1.9), (2.0, 3.0)];
    let hole = 0.6;
    let drilled = layers[1..].iter().fold(ball(8.55, 1.18), |b, &(d, g)| b.pour(g, sphere(d)));
    for entry in [[0.0, 0.0, 1.0], [0.3, -0.4, 0.7]] {
        let got = weighed(&drilled.clone().drill(entry, 2.0 * hole, 9.0));
        let left = |d: f64| 4.0 / 3.0 * PI * (d * d / 4.0 - hole * hole).powf(1.5);
        for (n, &(d, density)) in layers.iter().enumerate() {
            let want = left(d) - layers.get(n + 1).map_or(0.0, |l| left(l.0));
            within("volume left", cubic_in(&got, n), want, 4e-4);
            close("mass left", got.shares[n].mass_kg, want * M_PER_IN.powi(3) * density * 1e3, 1e-4);
        }
        let mass: f64 = layers
            .iter()
            .enumerate()
            .map(|(n, l)| (left(l.0) - layers.get(n + 1).map_or(0.0, |l| left(l.0))) * l.1 * 1e3 * M_PER_IN.powi(3))
            .sum();
        close("mass", got.mass_kg, mass, 1e-6);
        within("balanced", got.cg_m.norm() / got.radius_m, 0.0, 1e-6);
    }
}

#[test]
fn a_hole_drilled_twice() {
    let core = ball(8.55, 1.18).pour(1.9, ellipsoid(4.0, 4.0, 5.0));
    let once = core.clone().drill_along([0.2, 0.3, 1.0], [0.0, 0.1, -1.0], 1.0, 3.0);
    let twice = once.clone().drill_along([0.2, 0.3, 1.0], [0.0, 0.1, -1.0], 1.0, 3.0);
    same("twice", &twice, &once);
    let wider = core.drill_along([0.2, 0.3, 1.0], [0.0, 0.1, -1.0], 1.0, 2.0).drill_along(
        [0.2, 0.3, 1.0],
        [0.0, 0.1, -1.0],
        1.0,
        3.0,
    );
    same("shallow, then deep", &wider, &once);
}

#[test]
fn walls_of_next_to_no_thickness() {
    // Shells and discs of a hundredth down to a millionth of an inch weigh their area times their thickness.
    for thin in [1e-2, 1e-4, 1e-6] {
        let shell = ball(8.55, 1.0).pour(3.0, sphere(6.0)).pour(1.0, sphere(6.0 - 2.0 * thin));
        let got = weighed(&shell);
        let want = 4.0 / 3.0 * PI * (27.0 - (3.0 - thin).powi(3));
        within("shell", cubic_in(&got, 1), want, 1e-9);
        let disc = ball(8.55, 1.0).pour(3.0, cylinder(4.0, thin).turn([40.0, 10.0, 0.0]));
        close("disc", cubic_in(&weighed(&disc), 1), 4.0 * PI * thin, 1e-9);
        // A sliver between two pieces that nearly meet, and one cut off by the ball's own holes.
        let gap = ball(8.55, 1.0)
            .pour(3.0, cuboid(2.0, 2.0, 2.0 - thin).turn([0.0, 0.0, 25.0]))
            .pour(2.0, cuboid(2.0, 2.0, 2.0).turn([0.0, 0.0, 25.0]).at([0.0, 0.0, 2.0]));
        let got = weighed(&gap);
        within("lower box", cubic_in(&got, 1), 4.0 * (2.0 - thin), 1e-5);
        within("upper box", cubic_in(&got, 2), 8.0, 1e-5);
    }
}

#[test]
fn points_of_cones_and_crossing_edges() {
    // Two cones that meet at their points, a third whose edge runs through both.
    let hourglass = ball(8.55, 1.18)
        .pour(2.0, frustum(0.0, 3.0, 2.0).at([0.0, 0.0, 1.0]))
        .pour(2.0, frustum(3.0, 0.0, 2.0).at([0.0, 0.0, -1.0]));
    let lathed = ball(8.55, 1.18)
        .pour(2.0, lathe(&[[0.0, -2.0], [1.5, -2.0], [0.0, 0.0]]))
        .pour(2.0, lathe(&[[0.0, 0.0], [1.5, 2.0], [0.0, 2.0]]));
    same("hourglass", &hourglass, &lathed);
    let box_through = |recipe: Recipe| recipe.pour(1.0, cuboid(3.0, 3.0, 2.0).at([1.5, 0.0, 0.0]));
    same("edge through the points", &box_through(hourglass), &box_through(lathed));
    // A needle through the common point.
    let recipe =
        ball(8.55, 1.18).pour(2.0, sphere(2.0).at([0.0, 0.0, 1.0])).pour(2.0, sphere(2.0).at([0.0, 0.0, -1.0]));
    let got = weighed(&recipe.pour(3.0, cylinder(0.01, 5.0)));
    close("needle", cubic_in(&got, 3), PI * 0.005 * 0.005 * 5.0, 1e-9);
}

#[test]
fn a_ring_whose_hole_closes() {
    // Tube as wide as the ring (a horn torus) is the limit of both kinds on either side.
    let volume = |tube: f64| cubic_in(&weighed(&ball(8.55, 1.18).pour(2.0, ring(2.0, tube))), 1);
    close("horn torus", volume(2.0), 2.0 * PI * PI, 1e-10);
    close("just open", volume(2.0 - 1e-9), 2.0 * PI * PI, 1e-8);
    close("just closed", volume(2.0 + 1e-9), 2.0 * PI * PI, 1e-8);
}
