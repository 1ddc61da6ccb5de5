//! Closed forms of handbooks and textbooks. Each solid is weighed by itself:
//! a light ball that holds it, less the light ball.
//!
//! Sources, by the letter used below:
//! - W: Wikipedia, "List of moments of inertia" (sphere, shells, ellipsoid,
//!   cuboid, cylinder, cone), <https://en.wikipedia.org/wiki/List_of_moments_of_inertia>.
//! - F: MathWorld, "Conical Frustum" (volume, centroid; after Eshbach, Handbook
//!   of Engineering Fundamentals, 1975, p. 453), <https://mathworld.wolfram.com/ConicalFrustum.html>.
//! - T: Hill, Learning Scientific Programming with Python, 2nd ed., problem
//!   P8.2.3 (volume and moments of a torus),
//!   <https://scipython.com/books/book2/chapter-8-scipy/problems/volume-and-moment-of-inertia-of-a-torus>.
//! - R: any solid of revolution, I_z = ½πρ∫r⁴dz and I_x = πρ∫(r⁴/4 + r²z²)dz:
//!   the textbook disc method, done here in exact polynomials.
//! - P: the parallel-axis (Huygens-Steiner) theorem, in any mechanics textbook.

use core::f64::consts::PI;

use nalgebra::Vector3;
use physics::units::M_PER_IN;
use pithball_tests::body::{Body, alone, parallel, weighed};
use pithball_tests::close::{bodies_close, close, tensors_close, vectors_within};
use pithball_tests::make::*;

/// What the project promises where a closed form exists.
const EXACT: f64 = 1e-10;
/// Density of a solid weighed by itself.
const RHO: f64 = 1000.0;

fn inches<const N: usize>(x: [f64; N]) -> [f64; N] {
    x.map(|x| x * M_PER_IN)
}

#[test]
fn solid_sphere() {
    // W: 2/5 m R².
    let [r] = inches([1.9]);
    bodies_close("sphere", &alone(&sphere(3.8), &[]), &Body::sphere(RHO, r), r, EXACT);
}

#[test]
fn thick_shell() {
    // W: 2/5 m (R⁵ − r⁵)/(R³ − r³), by a cut and by a lighter inner piece.
    let [outer, inner] = inches([2.0, 1.7]);
    let mass = RHO * 4.0 / 3.0 * PI * (outer.powi(3) - inner.powi(3));
    let moment = 0.4 * mass * (outer.powi(5) - inner.powi(5)) / (outer.powi(3) - inner.powi(3));
    let want = Body::new(mass, [moment; 3]);
    bodies_close("cut shell", &alone(&sphere(4.0), &[sphere(3.4)]), &want, outer, EXACT);
}

#[test]
fn thin_shell() {
    // W: 2/3 m R². About its middle radius a shell of thickness t differs from that by
    // 5/12·(t/R)²: expand (R⁵ − r⁵)/(R³ − r³).
    let (middle_in, thick_in) = (3.0, 0.006);
    let shell = alone(&sphere(2.0 * middle_in + thick_in), &[sphere(2.0 * middle_in - thick_in)]);
    let r = middle_in * M_PER_IN;
    let ratio = shell.inertia_kg_m2[(0, 0)] / (shell.mass_kg * r * r);
    close("thin shell", ratio, 2.0 / 3.0, (thick_in / middle_in).powi(2));
}

#[test]
fn ellipsoid_by_its_axes_and_as_a_squashed_sphere() {
    // W: (b² + c²)/5 about x, and so on.
    let [a, b, c] = inches([0.8, 1.1, 1.6]);
    let mass = RHO * 4.0 / 3.0 * PI * a * b * c;
    let moments = [b * b + c * c, a * a + c * c, a * a + b * b].map(|s| mass * s / 5.0);
    let want = Body::new(mass, moments);
    bodies_close("ellipsoid", &alone(&ellipsoid(1.6, 2.2, 3.2), &[]), &want, c, EXACT);
    let squashed = sphere(3.2).squash([0.5, 0.6875]);
    bodies_close("squashed sphere", &alone(&squashed, &[]), &want, c, EXACT);
}

#[test]
fn cylinder_upright_and_squashed() {
    // W: r²/2 about its axis, (3r² + h²)/12 across; an elliptic one: (a² + b²)/4, (3b² + h²)/12.
    let [r, h] = inches([1.4, 2.6]);
    let mass = RHO * PI * r * r * h;
    let across = mass * (3.0 * r * r + h * h) / 12.0;
    let want = Body::new(mass, [across, across, mass * r * r / 2.0]);
    bodies_close("cylinder", &alone(&cylinder(2.8, 2.6), &[]), &want, h, EXACT);
    let (a, b) = (1.3 * r, 0.7 * r);
    let mass = RHO * PI * a * b * h;
    let about = |s: f64| mass * (3.0 * s * s + h * h) / 12.0;
    let want = Body::new(mass, [about(b), about(a), mass * (a * a + b * b) / 4.0]);
    bodies_close("elliptic cylinder", &alone(&cylinder(2.8, 2.6).squash([1.3, 0.7]), &[]), &want, h, EXACT);
}

#[test]
fn frustum_and_cone() {
    // F: volume and centroid. R: I_z = 0.3 m (r₂⁵ − r₁⁵)/(r₂³ − r₁³); about a diameter of the base
    // ½I_z + m H²/10·(r₁² + 3r₁r₂ + 6r₂²)/(r₁² + r₁r₂ + r₂²). W has the cone about its apex.
    for (bottom_in, top_in, height_in) in [(3.0, 1.2, 2.4), (1.0, 2.9, 1.7), (2.6, 0.0, 2.2), (0.0, 2.6, 2.2)] {
        let [r1, r2, h] = inches([bottom_in / 2.0, top_in / 2.0, height_in]);
        let square = r1 * r1 + r1 * r2 + r2 * r2;
        let mass = RHO * PI * h / 3.0 * square;
        let rise = h / 4.0 * (r1 * r1 + 2.0 * r1 * r2 + 3.0 * r2 * r2) / square;
        let axial = 0.3 * mass * (r2.powi(5) - r1.powi(5)) / (r2.powi(3) - r1.powi(3));
        let base = 0.5 * axial + mass * h * h / 10.0 * (r1 * r1 + 3.0 * r1 * r2 + 6.0 * r2 * r2) / square;
        let across = base - mass * rise * rise;
        let want = Body::new(mass, [across, across, axial]).moved(Vector3::new(0.0, 0.0, rise - h / 2.0));
        bodies_close("frustum", &alone(&frustum(bottom_in, top_in, height_in), &[]), &want, h, EXACT);
    }
}

#[test]
fn cap_of_a_sphere() {
    // Cap of height h: V = πh²(3R − h)/3, z̄ = 3(2R − h)²/[4(3R − h)], I_z = m·h(20R² − 15Rh + 3h²)/[10(3R − h)]
    // (R, from the sphere's centre). Made by a cut: not a closed form of ours, hence to a millionth.
    let (diameter_in, height_in) = (4.0, 1.1);
    let [r, h] = inches([diameter_in / 2.0, height_in]);
    let mass = RHO * PI * h * h * (3.0 * r - h) / 3.0;
    let rise = 3.0 * (2.0 * r - h).powi(2) / (4.0 * (3.0 * r - h));
    let axial = mass * h * (20.0 * r * r - 15.0 * r * h + 3.0 * h * h) / (10.0 * (3.0 * r - h));
    for tilt in [[0.0; 3], [35.0, -20.0, 65.0]] {
        let below = cuboid(5.0, 5.0, 5.0).at([0.0, 0.0, diameter_in / 2.0 - height_in - 2.5]);
        let got = alone(&sphere(diameter_in).turn(tilt), &[below]);
        let axis = pithball_tests::turned::turn_of(tilt.map(f64::to_radians)) * Vector3::z();
        close("cap: mass", got.mass_kg, mass, 1e-6);
        vectors_within("cap: centre", &got.cg_m, &(axis * rise), 1e-6 * r);
        close("cap: about its axis", axis.dot(&(got.inertia_kg_m2 * axis)), axial, 1e-6);
    }
}

#[test]
fn torus() {
    // T: V = 2π²R a², R² + ¾a² about its axis, ½R² + ⅝a² about a diameter.
    let [big, a] = inches([1.5, 0.4]);
    let mass = RHO * 2.0 * PI * PI * big * a * a;
    let across = mass * (0.5 * big * big + 0.625 * a * a);
    let want = Body::new(mass, [across, across, mass * (big * big + 0.75 * a * a)]);
    bodies_close("torus", &alone(&ring(3.0, 0.8), &[]), &want, big, EXACT);
}

#[test]
fn box_by_its_edges() {
    // W: (b² + c²)/12 about x, and so on.
    let [a, b, c] = inches([0.9, 1.7, 2.8]);
    let mass = RHO * a * b * c;
    let want = Body::new(mass, [b * b + c * c, a * a + c * c, a * a + b * b].map(|s| mass * s / 12.0));
    bodies_close("box", &alone(&cuboid(0.9, 1.7, 2.8), &[]), &want, c, EXACT);
    let squashed = cuboid(1.8, 1.0, 2.8).squash([0.5, 1.7]);
    bodies_close("squashed box", &alone(&squashed, &[]), &want, c, EXACT);
}

/// R over the straight edges of a profile, in metres.
fn disc_method(profile: &[[f64; 2]]) -> Body {
    let (mut volume, mut first, mut second, mut fourth) = (0.0, 0.0, 0.0, 0.0);
    let next = profile.iter().cycle().skip(1);
    for ([r0, z0], [r1, z1]) in profile.iter().zip(next) {
        // Boole's rule: exact up to the fifth degree.
        for (t, weight) in [(0.0, 7.0), (0.25, 32.0), (0.5, 12.0), (0.75, 32.0), (1.0, 7.0)] {
            let (r, z, dz) = (r0 + t * (r1 - r0), z0 + t * (z1 - z0), (z1 - z0) * weight / 90.0);
            volume += PI * r * r * dz;
            first += PI * r * r * z * dz;
            second += PI * r * r * z * z * dz;
            fourth += PI * r.powi(4) * dz;
        }
    }
    let sign = RHO * volume.signum();
    let (mass, rise) = (sign * volume, first / volume);
    let across = sign * (fourth / 4.0 + second) - mass * rise * rise;
    Body::new(mass, [across, across, sign * fourth / 2.0]).moved(Vector3::new(0.0, 0.0, rise))
}

#[test]
fn polygon_of_revolution() {
    for profile_in in [
        vec![[0.0, -1.9], [1.4, -1.5], [1.0, 0.4], [1.6, 1.2], [0.0, 1.7]],
        vec![[1.2, -0.6], [2.0, -0.6], [2.0, 0.6], [1.2, 0.6]],
        vec![[0.8, -1.5], [1.3, -1.1], [1.0, 1.4]],
        vec![[0.0, 1.0], [0.7, 1.4], [0.3, 0.2], [1.5, -0.1], [1.1, -1.8], [0.4, -1.2], [0.0, -1.6]],
    ] {
        let profile: Vec<[f64; 2]> = profile_in.iter().map(|&p| inches(p)).collect();
        let want = disc_method(&profile);
        bodies_close("lathe", &alone(&lathe(&profile_in), &[]), &want, 0.05, EXACT);
        let reversed: Vec<[f64; 2]> = profile_in.into_iter().rev().collect();
        bodies_close("the other way round", &alone(&lathe(&reversed), &[]), &want, 0.05, EXACT);
    }
}

#[test]
fn a_profile_of_ten_thousand_points_is_a_sphere() {
    // W: the sphere again, less what chords of a ten-thousandth of half a turn cut off (1e-8).
    let points: Vec<[f64; 2]> = (0..10_000)
        .map(|i| {
            let t = PI * i as f64 / 9_999.0;
            [if i == 0 || i == 9_999 { 0.0 } else { 1.8 * t.sin() }, -1.8 * t.cos()]
        })
        .collect();
    let exact: Vec<[f64; 2]> = points.iter().map(|&p| inches(p)).collect();
    let got = alone(&lathe(&points), &[]);
    bodies_close("polygon", &got, &disc_method(&exact), 0.05, EXACT);
    bodies_close("sphere", &got, &Body::sphere(RHO, 1.8 * M_PER_IN), 0.05, 1e-7);
}

#[test]
fn parallel_axes() {
    // P, and the tensor of a turned body.
    let turn = [25.0, -40.0, 130.0];
    let away = [0.7, -0.4, 0.9];
    for solid in [cuboid(0.9, 1.7, 2.8), cylinder(1.6, 2.0).squash([1.2, 0.8]), ring(2.0, 0.6), frustum(2.0, 0.6, 1.8)]
    {
        let here = alone(&solid, &[]);
        let there = alone(&solid.clone().turn(turn).at(away), &[]);
        let rotation = pithball_tests::turned::turn_of(turn.map(f64::to_radians));
        let want = here.turned(&rotation).moved(Vector3::from(inches(away)));
        bodies_close("turned and moved", &there, &want, 0.05, EXACT);
        let about_origin = there.inertia_kg_m2 + parallel(there.mass_kg, &there.cg_m);
        let steiner = want.inertia_kg_m2 + parallel(want.mass_kg, &want.cg_m);
        tensors_close("about the ball's centre", &about_origin, &steiner, EXACT);
    }
}

#[test]
fn nested_concentric_spheres() {
    // W: shells add up: m = Σρ·4/3π(R³ − r³), I = Σρ·8/15π(R⁵ − r⁵).
    let layers = [(8.55, 1.18), (7.0, 0.95), (5.0, 1.4), (3.2, 2.0), (1.6, 3.6)];
    let mut recipe = ball(layers[0].0, layers[0].1);
    for &(diameter_in, density) in &layers[1..] {
        recipe = recipe.pour(density, sphere(diameter_in));
    }
    let (mut mass, mut moment) = (0.0, 0.0);
    for (n, &(diameter_in, density)) in layers.iter().enumerate() {
        let [outer, inner] = inches([diameter_in / 2.0, layers.get(n + 1).map_or(0.0, |l| l.0 / 2.0)]);
        mass += density * 1e3 * 4.0 / 3.0 * PI * (outer.powi(3) - inner.powi(3));
        moment += density * 1e3 * 8.0 / 15.0 * PI * (outer.powi(5) - inner.powi(5));
    }
    let got = weighed(&recipe);
    assert!(got.relative_error <= EXACT);
    bodies_close("layers", &Body::from(&got), &Body::new(mass, [moment; 3]), 0.1, EXACT);
    close("differential", 1.0 + got.differential_m(), 1.0, EXACT);
}

#[test]
fn displaced_pieces_by_addition_and_subtraction() {
    // A piece wholly inside another adds the difference of the densities; inside two, of the innermost.
    let core = ellipsoid(4.0, 3.6, 5.0).at([0.1, 0.0, 0.3]).turn([8.0, 0.0, 20.0]);
    let heart = cuboid(0.8, 0.6, 1.2).at([0.2, 0.1, 0.6]).turn([0.0, 30.0, 10.0]);
    let puck = cylinder(1.4, 0.4).at([0.0, 0.0, 3.4]);
    let recipe =
        ball(8.55, 1.2).pour(0.9, sphere(7.6)).pour(1.9, core.clone()).pour(3.1, heart.clone()).pour(2.4, puck.clone());
    let filler = Body::sphere(RHO, 3.8 * M_PER_IN);
    let want = Body::sphere(1200.0, 4.275 * M_PER_IN)
        .with(filler.times(0.9 - 1.2))
        .with(alone(&core, &[]).times(1.9 - 0.9))
        .with(alone(&heart, &[]).times(3.1 - 1.9))
        .with(alone(&puck, &[]).times(2.4 - 0.9));
    let got = weighed(&recipe);
    assert!(got.relative_error <= EXACT);
    bodies_close("by subtraction", &Body::from(&got), &want, 0.1, EXACT);
    let volumes: f64 = got.shares.iter().map(|s| s.volume_m3).sum();
    close("volumes fill the ball", volumes, 4.0 / 3.0 * PI * (4.275 * M_PER_IN).powi(3), EXACT);
    close("masses add up", got.shares.iter().map(|s| s.mass_kg).sum(), got.mass_kg, EXACT);
    close("shares add up", got.shares.iter().map(|s| s.rg_share).sum(), 1.0, EXACT);
    for (share, density) in got.shares.iter().zip([1200.0, 900.0, 1900.0, 3100.0, 2400.0]) {
        close("each share's mass is its volume times its density", share.mass_kg, share.volume_m3 * density, EXACT);
    }
}

/// Radius 4.2975 in; cover 1.20 g/cc down to 3.5475 in; filler 0.90; ellipsoid core 2.60 g/cc.
/// Worked figures, computed from W and P apart from this program and rounded as shown.
#[test]
fn layered_reference_ball() {
    let rows = [
        ([1.6, 1.6, 2.4], 0.0, 13.9668, [2.66106, 2.66106, 2.64741], 0.0),
        ([1.6, 1.6, 2.4], 0.3, 13.9668, [2.66275, 2.66275, 2.64741], 0.03395),
        ([1.5, 1.7, 2.4], 0.0, 13.9606, [2.66290, 2.66019, 2.64800], 0.0),
        ([1.5, 1.7, 2.4], 0.3, 13.9606, [2.66459, 2.66188, 2.64800], 0.03383),
    ];
    for (semi, shift, weight_lb, rg_in, cg_in) in rows {
        let core = ellipsoid(2.0 * semi[0], 2.0 * semi[1], 2.0 * semi[2]).at([0.0, 0.0, shift]);
        let got = weighed(&ball(8.595, 1.2).pour(0.9, sphere(7.095)).pour(2.6, core));
        assert!(got.relative_error <= EXACT);
        let body = Body::from(&got);
        let half = |digits: i32| 0.5001 * 10f64.powi(-digits);
        let near = pithball_tests::close::within;
        near("weight, lb", got.mass_kg / physics::units::KG_PER_LB, weight_lb, half(4));
        near("centre of gravity, in", got.cg_m.z / M_PER_IN, cg_in, half(5));
        for (axis, want) in [Vector3::x(), Vector3::y(), Vector3::z()].iter().zip(rg_in) {
            near("RG, in", body.rg_m(axis) / M_PER_IN, want, half(5));
        }
    }
}

#[test]
fn rg_about_any_axis() {
    // P's companion: RG(n)² = Σ nᵢ² RGᵢ² over the principal axes.
    let core = cuboid(2.0, 2.6, 4.0).turn([20.0, 35.0, -50.0]).at([0.3, 0.1, 0.2]);
    let got = weighed(&ball(8.55, 1.18).pour(2.3, core));
    let body = Body::from(&got);
    for n in [Vector3::new(1.0, 2.0, -0.5), Vector3::new(-0.2, 0.3, 0.9), Vector3::x()] {
        let n = n.normalize();
        let sum: f64 = got.axes.iter().zip(got.rg_m).map(|(axis, rg)| (axis.dot(&n) * rg).powi(2)).sum();
        close("RG about an axis", body.rg_m(&n), sum.sqrt(), 1e-12);
    }
    for (axis, rg) in got.axes.iter().zip(got.rg_m) {
        close("a principal axis is a unit vector", axis.norm(), 1.0, 1e-12);
        close("RG about it", body.rg_m(axis), rg, 1e-12);
    }
    close("low × high = middle", got.axes[0].cross(&got.axes[2]).dot(&got.axes[1]), 1.0, 1e-12);
    assert!(got.rg_m[0] <= got.rg_m[1] && got.rg_m[1] <= got.rg_m[2]);
    assert!(got.axes[0].z >= 0.0 && got.axes[2].x >= 0.0);
}
