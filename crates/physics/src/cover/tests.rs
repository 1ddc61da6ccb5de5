#![allow(clippy::expect_used, reason = "a check that fails stops its test")]

use super::*;
use crate::recipe::{Hole, Piece, Recipe, Shape, Solid};
use crate::section::{Plane, section};

const R_IN: f64 = 4.275;

fn m(inches: f64) -> f64 {
    inches * M_PER_IN
}

fn solid(shape: Shape, at_in: [f64; 3], turn_rad: [f64; 3]) -> Solid {
    Solid { shape, squash: [1.0; 2], turn_rad, at_m: Vector3::from(at_in) * M_PER_IN }
}

fn sphere(diameter_in: f64, at_in: [f64; 3]) -> Solid {
    solid(Shape::Sphere { diameter_m: m(diameter_in) }, at_in, [0.0; 3])
}

fn cylinder(diameter_in: f64, height_in: f64, at_in: [f64; 3]) -> Solid {
    solid(Shape::Cylinder { diameter_m: m(diameter_in), height_m: m(height_in) }, at_in, [0.0; 3])
}

fn piece(solid: Solid, cuts: Vec<Solid>) -> Piece {
    Piece { density_kg_m3: 1000.0, solid, cuts }
}

fn hole(entry: [f64; 3], axis: [f64; 3], diameter_in: f64, depth_in: f64) -> Hole {
    Hole { entry: entry.into(), axis: axis.into(), diameter_m: m(diameter_in), depth_m: m(depth_in) }
}

fn ball(pieces: Vec<Piece>, holes: Vec<Hole>) -> Ball {
    let recipe = Recipe { diameter_m: m(2.0 * R_IN), cover_density_kg_m3: 1180.0, pieces, holes };
    Ball::new(&recipe).expect("a ball")
}

fn one(solid: Solid) -> Ball {
    ball(vec![piece(solid, vec![])], vec![])
}

fn thinnest(ball: &Ball) -> Thinnest {
    cover(ball).thinnest.expect("a core")
}

#[track_caller]
fn close_in(found_m: f64, expected_in: f64, within_in: f64) {
    let found_in = found_m / M_PER_IN;
    assert!((found_in - expected_in).abs() <= within_in, "{found_in} in, expected {expected_in} in");
}

#[test]
fn a_sphere_in_the_middle_is_as_thin_all_over() {
    let covered = cover(&one(sphere(7.0, [0.0; 3])));
    let thinnest = covered.thinnest.expect("a core");
    close_in(thinnest.thickness_m, 0.775, 1e-12);
    assert!(thinnest.error_m < 1e-12);
    close_in(covered.mean_m, 0.775, 1e-12);
    assert_eq!([covered.under_usual_share, covered.under_most_share, covered.as_thin_share], [0.0, 1.0, 1.0]);
}

#[test]
fn a_shifted_sphere_is_thinnest_on_the_side_it_is_shifted_to() {
    let covered = cover(&one(sphere(6.0, [0.3, 0.0, 0.4])));
    let found = covered.thinnest.expect("a core");
    close_in(found.thickness_m, R_IN - 3.5, 1e-12);
    assert!((found.direction - Vector3::new(0.6, 0.0, 0.8)).norm() < 1e-12);
    // Along the radius the sphere ends at d cos + √(r² − d² sin²); mean over equal steps of cos.
    let (r, d, steps) = (3.0_f64, 0.5_f64, 100_000);
    let reach = |n: i32| {
        let cos = (2.0 * f64::from(n) + 1.0) / f64::from(steps) - 1.0;
        d * cos + (r * r - d * d * (1.0 - cos * cos)).sqrt()
    };
    let mean = (0..steps).map(reach).sum::<f64>() / f64::from(steps);
    close_in(covered.mean_m, R_IN - mean, 1e-4);
}

#[test]
fn an_ellipsoid_is_farthest_at_its_pole_or_where_the_shift_says() {
    let egg = |at_in| one(solid(Shape::Ellipsoid { size_m: [m(3.0), m(4.0), m(6.0)] }, at_in, [0.0; 3]));
    close_in(thinnest(&egg([0.0, 0.0, 0.5])).thickness_m, R_IN - 3.5, 1e-12);
    // Shifted square to the long axis by c: by Lagrange |p|² = a²(1 − u²) + (a²c/(a² − b²))², u = bc/(a² − b²).
    let (a, b, c): (f64, f64, f64) = (3.0, 2.0, 0.7);
    let gap = a * a - b * b;
    let far = (a * a * (1.0 - (b * c / gap).powi(2)) + (a * a * c / gap).powi(2)).sqrt();
    close_in(thinnest(&egg([0.0, c, 0.0])).thickness_m, R_IN - far, 1e-12);
}

#[test]
fn turned_and_squashed_shapes_come_as_near_as_their_surface_does() {
    let shapes = [
        Shape::Ellipsoid { size_m: [m(3.0), m(3.01), m(5.2)] },
        Shape::Box { size_m: [m(2.0), m(3.0), m(4.0)] },
        Shape::Frustum { bottom_diameter_m: m(4.0), top_diameter_m: m(2.0), height_m: m(3.5) },
        Shape::Ring { ring_diameter_m: m(4.0), tube_diameter_m: m(1.0) },
    ];
    for shape in shapes {
        let mut body = solid(shape, [0.3, -0.2, 0.4], [0.4, -0.8, 1.3]);
        body.squash = [1.15, 0.9];
        let made = one(body);
        let (found, poured) = (thinnest(&made), Poured::new(&made));
        assert!(found.error_m < 1e-12);
        // No direction has less, and some direction near the place has as little.
        let least = |directions: &mut dyn Iterator<Item = Vector3<f64>>| {
            directions.map(|direction| poured.under(&direction).thickness_m).fold(f64::INFINITY, f64::min)
        };
        let anywhere = least(&mut evenly(40_000));
        assert!(anywhere >= found.thickness_m - 1e-12);
        let near = least(&mut evenly(20_000).map(|d| found.direction + d * 1e-5));
        assert!((near - found.thickness_m).abs() < m(2e-5), "{near} {}", found.thickness_m);
    }
}

#[test]
fn what_is_cut_away_does_not_come_near_the_surface() {
    // A cylinder whose ends are cut off is a shorter cylinder: 4 in across, from −1.2 to 1.5 in.
    let caps = [cylinder(6.0, 2.0, [0.0, 0.0, 2.5]), cylinder(6.0, 2.0, [0.0, 0.0, -2.2])];
    let found = thinnest(&ball(vec![piece(cylinder(4.0, 5.0, [0.0; 3]), caps.to_vec())], vec![]));
    let expected = R_IN - 2.0_f64.hypot(1.5);
    close_in(found.thickness_m, expected, 2e-5);
    assert!(found.thickness_m - m(expected) >= -1e-12 && found.thickness_m - found.error_m <= m(expected));
    // All turns about one axis: a flat search, as sure as it is asked to be.
    assert!(found.error_m < m(1e-5), "{} in", found.error_m / M_PER_IN);
}

#[test]
fn a_scallop_that_takes_the_nearest_side_leaves_its_rim() {
    // A sphere of 3 in shifted by 0.6 in, its near side cut off at z = 2.4 in: the rim of the cut is
    // √(9 − 1.8²) = 2.4 in out.
    let knife = solid(Shape::Box { size_m: [m(8.0), m(8.0), m(4.0)] }, [0.0, 0.0, 1.8 + 2.0], [0.0; 3]);
    let found = thinnest(&ball(vec![piece(sphere(6.0, [0.0, 0.0, 0.6]), vec![knife])], vec![]));
    let expected = R_IN - 2.4 * 2.0_f64.sqrt();
    close_in(found.thickness_m, expected, 2e-5);
    assert!(found.thickness_m - found.error_m <= m(expected) + 1e-12);
    assert!(found.error_m < m(4e-3), "{} in", found.error_m / M_PER_IN);
}

#[test]
fn a_cut_filled_by_another_piece_is_no_cover() {
    let knife = solid(Shape::Box { size_m: [m(8.0), m(8.0), m(4.0)] }, [0.0, 0.0, 4.0], [0.0; 3]);
    let pieces = vec![piece(sphere(6.4, [0.0; 3]), vec![]), piece(sphere(6.0, [0.0, 0.0, 0.2]), vec![knife])];
    let found = thinnest(&ball(pieces, vec![]));
    close_in(found.thickness_m, R_IN - 3.2, 1e-12);
    assert!(found.error_m < 1e-12);
}

#[test]
fn without_a_core_there_is_no_thinnest_place() {
    let solid_ball = ball(vec![], vec![hole([1.0, 0.0, 0.0], [-1.0, 0.0, 0.0], 1.0, 2.0)]);
    let covered = cover(&solid_ball);
    assert_eq!(covered.thinnest, None);
    close_in(covered.mean_m, R_IN, 1e-12);
    let poured = Poured::new(&solid_ball);
    assert_eq!(poured.under(&Vector3::x()).cover_m(), None);
    let far = poured.under(&-Vector3::x());
    close_in(far.cover_m().expect("no hole"), R_IN, 1e-12);
    // Across the ball, the hole's bottom is R + R − 2 in away.
    close_in(far.to_hole_m, 2.0 * R_IN - 2.0, 1e-12);
    assert_eq!(covered.holes[0].to_core, None);
}

#[test]
fn a_hole_over_the_core_leaves_the_rest_of_its_depth() {
    let straight = |depth_in| vec![hole([0.0, 0.6, 0.8], [0.0, -0.6, -0.8], 1.0, depth_in)];
    let core = || vec![piece(sphere(5.0, [0.0; 3]), vec![])];
    let [short] = cover(&ball(core(), straight(1.5))).holes[..] else { panic!("one hole") };
    // The flat bottom is R − depth out, and the core ends at 2.5 in.
    let gap = short.to_core.expect("a core");
    assert_eq!(short.core_from_m, None);
    close_in(gap.least_m, R_IN - 1.5 - 2.5, 1e-3);
    assert!(gap.least_m >= m(R_IN - 4.0) - 1e-12 && gap.least_m - gap.error_m <= m(R_IN - 4.0) + 1e-12);
    assert!(gap.error_m <= m(1.1e-3));
    let [deep] = cover(&ball(core(), straight(2.75))).holes[..] else { panic!("one hole") };
    close_in(deep.core_from_m.expect("it opens"), R_IN - 2.5, 1e-12);
    assert_eq!(deep.to_core.expect("a core").least_m, 0.0);
}

#[test]
fn a_hole_that_grazes_the_core_opens_into_it_though_its_axis_does_not() {
    // Straight down beside a cylinder of radius 1 in: the axis 1.6 in out, the wall 0.6 or 0.65 in nearer.
    let beside = |diameter_in| {
        let up = (R_IN * R_IN - 1.6 * 1.6_f64).sqrt();
        let drilled = hole([1.6, 0.0, up], [0.0, 0.0, -1.0], diameter_in, 4.0);
        let made = ball(vec![piece(cylinder(2.0, 4.0, [0.0; 3]), vec![])], vec![drilled]);
        cover(&made).holes[0]
    };
    let gap = beside(0.9).to_core.expect("a core");
    close_in(gap.least_m, 1.6 - 1.0 - 0.45, 1e-3);
    let open = beside(1.3);
    assert_eq!((open.core_from_m, open.to_core.expect("a core").least_m), (None, 0.0));
}

#[test]
fn webs_between_holes() {
    // Straight to the centre, 30° apart: nearest at the inner rims of their bottoms, (R − depth, r) from the
    // centre along and across each axis.
    let (r, depth, half) = (0.45, 2.5, 15.0_f64.to_radians());
    let (s, k) = half.sin_cos();
    let straight = |side: f64| hole([side * s, 0.0, k], [-side * s, 0.0, -k], 2.0 * r, depth);
    let webs = cover(&ball(vec![], vec![straight(1.0), straight(-1.0)])).webs;
    assert_eq!(webs[0].holes, [0, 1]);
    close_in(webs[0].gap.least_m, 2.0 * ((R_IN - depth) * s - r * k), 1e-9);
    close_in(webs[0].gap.error_m, 0.0, 1e-6);
    close_in(webs[0].depth_m, R_IN - (R_IN - depth) * k - r * s, 1e-9);
    // Parallel: as far apart all the way down.
    let up = (R_IN * R_IN - 1.0_f64).sqrt();
    let upright = |x: f64| hole([x, 0.0, up], [0.0, 0.0, -1.0], 0.9, 2.0);
    let webs = cover(&ball(vec![], vec![upright(1.0), upright(-1.0)])).webs;
    close_in(webs[0].gap.least_m, 2.0 - 0.9, 1e-9);
    // Meeting inside.
    let webs = cover(&ball(vec![], vec![straight(1.0), hole([0.0, 0.0, 1.0], [0.0, 0.0, -1.0], 1.0, 4.0)])).webs;
    close_in(webs[0].gap.least_m, 0.0, 1e-9);
    // Spreading inward: nearest at the surface, on the rims.
    let spread = |side: f64| hole([side * 0.2, 0.0, 1.0], [side * 0.3, 0.0, -1.0], 0.5, 2.0);
    let web = cover(&ball(vec![], vec![spread(1.0), spread(-1.0)])).webs[0];
    let out = Vector3::new(-0.3, 0.0, 1.0).normalize();
    let entry = Vector3::new(0.2, 0.0, 1.0).normalize() * R_IN;
    // The rim's innermost point: the wall's line through entry − r x̂, x̂ square to the axis, up to the sphere.
    let foot = entry - Vector3::new(out.z, 0.0, -out.x) * 0.25;
    let (b, c) = (foot.dot(&out), foot.norm_squared() - R_IN * R_IN);
    let rim = foot + out * (-b + (b * b - c).sqrt());
    close_in(web.gap.least_m, 2.0 * rim.x, 1e-9);
    assert!(web.depth_m < m(0.2));
}

#[test]
fn holes_take_surface_away_and_make_no_cover_thinner() {
    // Pitched holes over a core in the middle: the radii beside them meet their walls, yet
    // the cover there is as it was poured, all over.
    let core = || vec![piece(sphere(7.0, [0.0; 3]), vec![])];
    let drilled =
        vec![hole([0.0, 0.0, 1.0], [0.2, 0.0, -1.0], 1.0, 2.5), hole([0.0, 1.0, 0.0], [0.0, -1.0, 0.3], 1.25, 0.5)];
    let covered = cover(&ball(core(), drilled));
    close_in(covered.thinnest.as_ref().expect("a core").thickness_m, 0.775, 1e-12);
    close_in(covered.mean_m, 0.775, 1e-12);
    assert_eq!([covered.under_usual_share, covered.under_most_share, covered.as_thin_share], [0.0, 1.0, 1.0]);
}

#[test]
fn the_thinnest_place_is_one_that_no_hole_takes() {
    // A core shifted by 0.4 in towards +x, where a straight hole opens that does not even reach it: the
    // thinnest cover left is on its rim, at the angle asin(r/R), by the law of cosines.
    let shallow = hole([1.0, 0.0, 0.0], [-1.0, 0.0, 0.0], 1.0, 0.3);
    let covered = cover(&ball(vec![piece(sphere(6.0, [0.4, 0.0, 0.0]), vec![])], vec![shallow]));
    let found = covered.thinnest.expect("a core");
    let sine = 0.5 / R_IN;
    let expected = R_IN - (0.4 * (1.0 - sine * sine).sqrt() + (9.0 - 0.16 * sine * sine).sqrt());
    close_in(found.thickness_m, expected, 2e-3);
    assert!(found.thickness_m - found.error_m <= m(expected) + 1e-12);
    assert!(found.thickness_m >= m(expected) - 1e-12);
    assert!(found.error_m < m(4e-3), "{} in", found.error_m / M_PER_IN);
}

#[test]
fn the_map_goes_on_under_holes_and_says_where_they_are() {
    let straight = hole([0.0, 0.0, 1.0], [0.0, 0.0, -1.0], 1.0, 2.0);
    let poured = Poured::new(&ball(vec![piece(sphere(7.0, [0.0; 3]), vec![])], vec![straight]));
    let all = poured.map(6, 8);
    assert_eq!(all.len(), 48);
    for (n, under) in all.iter().enumerate() {
        close_in(under.thickness_m, 0.775, 1e-12);
        // Half a step of 30° from the pin: R sin 15° out from the axis, less the radius.
        if n < 8 {
            close_in(under.to_hole_m, R_IN * 15.0_f64.to_radians().sin() - 0.5, 1e-9);
        }
    }
    let at_pin = poured.under(&Vector3::z());
    close_in(at_pin.to_hole_m, -0.5, 1e-12);
    assert_eq!(at_pin.cover_m(), None);
}

#[test]
fn the_narrowest_cover_of_a_cut() {
    let made = one(sphere(6.0, [0.0, 0.3, 0.4]));
    let cut = |normal: [f64; 3], depth_in| {
        let plane = Plane::new(normal.into(), m(depth_in)).expect("a plane");
        on_section(&Poured::new(&made), &section(&made, plane), |_| true)
    };
    let found = cut([1.0, 0.0, 0.0], 0.0).expect("a core");
    close_in(found.thickness_m, R_IN - 3.5, 1e-8);
    let [u, v] = found.surface_m;
    close_in(u.hypot(v), R_IN, 1e-9);
    assert_eq!(cut([1.0, 0.0, 0.0], 3.2), None);
}

#[test]
fn a_cut_is_not_measured_where_a_hole_opens_nor_over_what_is_no_core() {
    let pieces = vec![piece(sphere(6.0, [0.0; 3]), vec![]), piece(cylinder(1.0, 2.0, [0.0, 0.0, R_IN - 1.1]), vec![])];
    let made = ball(pieces, vec![]);
    let across = section(&made, Plane::new(Vector3::x(), 0.0).expect("a plane"));
    let narrowest =
        |poured: &Poured, core: &dyn Fn(usize) -> bool| on_section(poured, &across, core).expect("a core").thickness_m;
    let poured = Poured::new(&made);
    let rim = 0.5_f64.hypot(R_IN - 0.1);
    close_in(narrowest(&poured, &|_| true), R_IN - rim, 1e-8);
    let bare = Poured::new(&one(sphere(6.0, [0.0; 3])));
    close_in(narrowest(&bare, &|piece| piece == 0), R_IN - 3.0, 1e-8);
    let opened =
        ball(vec![piece(sphere(6.0, [0.0; 3]), vec![])], vec![hole([0.0, 0.0, 1.0], [0.0, 0.0, -1.0], 1.1, 2.0)]);
    close_in(narrowest(&Poured::new(&opened), &|_| true), R_IN - 3.0, 2e-3);
}
