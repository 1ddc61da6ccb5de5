//! Single solids against parry3d's mass properties: its own formulas for ball,
//! box, cylinder and cone, its convex hull for a box with a corner cut off, its
//! meshes for the torus and for squashed shapes.

#![allow(clippy::unwrap_used, reason = "a check that cannot be set up must fail loudly")]

use core::f64::consts::TAU;

use nalgebra::{Matrix3, Rotation3, Vector3};
use parry3d_f64::mass_properties::MassProperties;
use parry3d_f64::math::Vector;
use parry3d_f64::transformation::convex_hull;
use physics::units::M_PER_IN;
use pithball_tests::body::{Body, alone};
use pithball_tests::close::bodies_close;
use pithball_tests::make::{Place, cuboid, cylinder, ellipsoid, frustum, ring, sphere};
use pithball_tests::turned::{angles_of, turn_of};

const RHO: f64 = 1000.0;

/// What parry found, in inches, as a body in metres.
fn body(found: &MassProperties) -> Body {
    let m = found.reconstruct_inertia_matrix();
    let columns = [m.x_axis, m.y_axis, m.z_axis].map(|c| Vector3::new(c.x, c.y, c.z));
    let com = found.local_com;
    Body {
        mass_kg: found.mass() * M_PER_IN.powi(3),
        cg_m: Vector3::new(com.x, com.y, com.z) * M_PER_IN,
        inertia_kg_m2: Matrix3::from_columns(&columns) * M_PER_IN.powi(5),
    }
}

/// parry's axis is y, ours z.
fn upright(found: &MassProperties) -> Body {
    body(found).turned(&Rotation3::from_axis_angle(&Vector3::x_axis(), core::f64::consts::FRAC_PI_2))
}

#[test]
fn its_own_formulas() {
    let solids = [
        ("ball", sphere(3.4), body(&MassProperties::from_ball(RHO, 1.7))),
        ("box", cuboid(1.2, 2.0, 3.1), body(&MassProperties::from_cuboid(RHO, Vector::new(0.6, 1.0, 1.55)))),
        ("cylinder", cylinder(2.6, 3.0), upright(&MassProperties::from_cylinder(RHO, 1.5, 1.3))),
        ("cone", frustum(2.6, 0.0, 3.0), upright(&MassProperties::from_cone(RHO, 1.5, 1.3))),
    ];
    for (name, solid, want) in solids {
        bodies_close(name, &alone(&solid, &[]), &want, 0.05, 1e-10);
        let (turn, at) = ([30.0, -50.0, 75.0], [0.4, -0.7, 0.5]);
        let moved = want.turned(&turn_of(turn.map(f64::to_radians))).moved(Vector3::from(at) * M_PER_IN);
        bodies_close(name, &alone(&solid.turn(turn).at(at), &[]), &moved, 0.05, 1e-10);
    }
}

#[test]
fn a_box_with_a_corner_cut_off_is_a_convex_hull() {
    // The plane x + y + z = 2.2 takes a corner off a box of edges 2, 2.4 and 3.
    let (half, level) = ([1.0, 1.2, 1.5], 2.2);
    let mut points = Vec::new();
    for n in 0..8 {
        let corner: [f64; 3] = core::array::from_fn(|i| if n >> i & 1 == 0 { -half[i] } else { half[i] });
        if corner.iter().sum::<f64>() < level {
            points.push(Vector::new(corner[0], corner[1], corner[2]));
            continue;
        }
        for i in 0..3 {
            let mut point = corner;
            point[i] -= corner.iter().sum::<f64>() - level;
            points.push(Vector::new(point[0], point[1], point[2]));
        }
    }
    let (vertices, faces) = convex_hull(&points);
    let want = body(&MassProperties::from_convex_polyhedron(RHO, &vertices, &faces));
    let way = Vector3::new(1.0, 1.0, 1.0).normalize();
    let mut knife = cuboid(9.0, 9.0, 6.0);
    knife.turn_rad = angles_of(&Rotation3::rotation_between(&Vector3::z(), &way).unwrap());
    knife.at_m = way * (level / 3.0_f64.sqrt() + 3.0) * M_PER_IN;
    let got = alone(&cuboid(2.0, 2.4, 3.0).turn([10.0, 20.0, 30.0]), &[knife]);
    let want = want.turned(&turn_of([10.0, 20.0, 30.0].map(f64::to_radians)));
    bodies_close("cut box", &got, &want, 0.05, 2e-6);
}

/// A closed curve (r, z) turned about z, meshed n by n, and extrapolated from
/// n and 2n: what is left of the error is of fourth order.
fn meshed(curve: impl Fn(f64) -> [f64; 2], squash: [f64; 2]) -> Body {
    let at = |n: u32| {
        let mut vertices = Vec::new();
        for i in 0..n {
            let [r, z] = curve(TAU * f64::from(i) / f64::from(n));
            for j in 0..n {
                let (sin, cos) = (TAU * f64::from(j) / f64::from(n)).sin_cos();
                vertices.push(Vector::new(r * cos * squash[0], r * sin * squash[1], z));
            }
        }
        let corner = |i: u32, j: u32| (i % n) * n + j % n;
        let quads = (0..n).flat_map(|i| (0..n).map(move |j| (i, j)));
        let faces: Vec<[u32; 3]> = quads
            .flat_map(|(i, j)| {
                let [a, b, c, d] = [corner(i, j), corner(i, j + 1), corner(i + 1, j + 1), corner(i + 1, j)];
                [[a, b, c], [a, c, d]]
            })
            .collect();
        body(&MassProperties::from_trimesh(RHO, &vertices, &faces))
    };
    let (coarse, fine) = (at(240), at(480));
    Body {
        mass_kg: (4.0 * fine.mass_kg - coarse.mass_kg) / 3.0,
        cg_m: (fine.cg_m * 4.0 - coarse.cg_m) / 3.0,
        inertia_kg_m2: (fine.inertia_kg_m2 * 4.0 - coarse.inertia_kg_m2) / 3.0,
    }
}

#[test]
fn meshes() {
    let torus = |t: f64| [1.4 + 0.5 * t.cos(), 0.5 * t.sin()];
    bodies_close("torus", &alone(&ring(2.8, 1.0), &[]), &meshed(torus, [1.0, 1.0]), 0.05, 1e-7);
    let squashed = ring(2.8, 1.0).squash([1.3, 0.7]);
    bodies_close("squashed torus", &alone(&squashed, &[]), &meshed(torus, [1.3, 0.7]), 0.05, 1e-7);
    let egg = |t: f64| [1.2 * t.cos().max(0.0), 1.9 * t.sin()];
    let solid = ellipsoid(2.4 * 0.8, 2.4 * 1.1, 3.8);
    bodies_close("ellipsoid", &alone(&solid, &[]), &meshed(egg, [0.8, 1.1]), 0.05, 1e-7);
}
