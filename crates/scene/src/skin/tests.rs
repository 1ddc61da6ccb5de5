use core::f64::consts::PI;

use nalgebra::Vector3;
use physics::recipe::{Hole, Piece, Shape, Solid};

use super::*;
use crate::model::Model;

const R: f64 = 4.25 * M_PER_IN;

fn solid(shape: Shape) -> Solid {
    Solid { shape, squash: [1.0; 2], turn_rad: [0.2, -0.1, 0.4], at_m: Vector3::new(0.003, -0.002, 0.004) }
}

fn recipe(pieces: Vec<Piece>) -> Recipe {
    Recipe { diameter_m: 2.0 * R, cover_density_kg_m3: 1200.0, pieces, holes: Vec::new() }
}

fn piece(solid: Solid) -> Piece {
    Piece { density_kg_m3: 1500.0, solid, cuts: Vec::new() }
}

fn surfaces(recipe: &Recipe) -> Vec<Mesh> {
    Model::new(recipe, &Ball::new(recipe).expect("a valid recipe")).surfaces()
}

/// By the divergence theorem, the sum of the signed tetrahedra from the origin.
/// Positive only where the triangles wind outwards.
fn volume_m3(mesh: &Mesh) -> f64 {
    let at = |n: u32| Vector3::from(mesh.positions[n as usize].map(f64::from));
    mesh.triangles.chunks(3).map(|t| at(t[0]).dot(&at(t[1]).cross(&at(t[2]))) / 6.0).sum()
}

/// Facets cut corners: `slack` is how much volume they may lose.
#[track_caller]
fn near(found: f64, expected: f64, slack: f64) {
    assert!((found / expected - 1.0).abs() < slack, "{found} is not {expected}");
}

fn normals_agree(mesh: &Mesh) {
    for t in mesh.triangles.chunks(3) {
        let [a, b, c] = [t[0], t[1], t[2]].map(|n| Vector3::from(mesh.positions[n as usize].map(f64::from)));
        let normal = Vector3::from(mesh.normals[t[0] as usize].map(f64::from));
        let face = (b - a).cross(&(c - a));
        if face.norm() > 1e-9 {
            assert!(face.normalize().dot(&normal) > 0.5, "{face} {normal}");
        }
    }
}

#[test]
fn single_solids_enclose_their_volume() {
    let (d, h) = (0.08, 0.06);
    let cases = [
        (Shape::Sphere { diameter_m: d }, PI * d.powi(3) / 6.0),
        (Shape::Ellipsoid { size_m: [0.06, 0.08, 0.1] }, PI * 0.06 * 0.08 * 0.1 / 6.0),
        (Shape::Cylinder { diameter_m: d, height_m: h }, PI * d * d / 4.0 * h),
        (Shape::Frustum { bottom_diameter_m: 0.08, top_diameter_m: 0.0, height_m: h }, PI * 0.04 * 0.04 * h / 3.0),
        (Shape::Ring { ring_diameter_m: d, tube_diameter_m: 0.02 }, 2.0 * PI * PI * (d / 2.0) * 0.01 * 0.01),
        (Shape::Box { size_m: [0.03, 0.05, 0.07] }, 0.03 * 0.05 * 0.07),
        (
            // A cylinder less a cone on top, in both orders round.
            Shape::Lathe { profile_m: vec![[0.0, 0.0], [0.03, 0.0], [0.03, 0.03]] },
            PI * 0.03_f64.powi(3) * (1.0 - 1.0 / 3.0),
        ),
        (
            Shape::Lathe { profile_m: vec![[0.03, 0.03], [0.03, 0.0], [0.0, 0.0]] },
            PI * 0.03_f64.powi(3) * (1.0 - 1.0 / 3.0),
        ),
    ];
    for (shape, expected) in cases {
        let squashed = Solid { squash: [0.7, 1.1], ..solid(shape) };
        let meshes = surfaces(&recipe(vec![piece(squashed)]));
        near(volume_m3(&meshes[1]), 0.77 * expected, 0.03);
        near(volume_m3(&meshes[0]), 4.0 / 3.0 * PI * R.powi(3) - 0.77 * expected, 0.01);
        meshes.iter().for_each(normals_agree);
    }
}

/// Two spheres of radius r at distance d share π(4r + d)(2r − d)²/12.
#[test]
fn overlapping_pieces_share_out_their_volume() {
    let (r, d) = (0.04_f64, 0.05_f64);
    let sphere = |x: f64| Piece {
        solid: Solid { at_m: Vector3::new(x, 0.0, 0.0), ..solid(Shape::Sphere { diameter_m: 2.0 * r }) },
        ..piece(solid(Shape::Sphere { diameter_m: 1.0 }))
    };
    let meshes = surfaces(&recipe(vec![sphere(-d / 2.0), sphere(d / 2.0)]));
    let ball = 4.0 / 3.0 * PI * r.powi(3);
    let lens = PI * (4.0 * r + d) * (2.0 * r - d).powi(2) / 12.0;
    near(volume_m3(&meshes[2]), ball, 0.02);
    near(volume_m3(&meshes[1]), ball - lens, 0.02);
    meshes.iter().for_each(normals_agree);
}

#[test]
fn cuts_and_holes_have_closed_walls() {
    let still = |shape| Solid { shape, squash: [1.0; 2], turn_rad: [0.0; 3], at_m: Vector3::zeros() };
    let mut core = piece(still(Shape::Cylinder { diameter_m: 0.08, height_m: 0.08 }));
    core.cuts.push(still(Shape::Cylinder { diameter_m: 0.03, height_m: 0.2 }));
    let mut ball = recipe(vec![core]);
    ball.holes.push(Hole { entry: Vector3::x(), axis: -Vector3::x(), diameter_m: 0.02, depth_m: 0.03 });
    let meshes = surfaces(&ball);
    let core = PI * (0.04 * 0.04 - 0.015 * 0.015) * 0.08;
    near(volume_m3(&meshes[1]), core, 0.02);
    // The drilled cylinder less the cap of the ball that its rim never reached.
    let bottom = R - 0.03;
    let rim = (R * R - 1e-4).sqrt();
    let hole = PI * 1e-4 * (rim - bottom) + PI * (R - rim).powi(2) * (3.0 * R - (R - rim)) / 3.0;
    near(volume_m3(&meshes[0]), 4.0 / 3.0 * PI * R.powi(3) - core - hole, 0.005);
    meshes.iter().for_each(normals_agree);
}

#[test]
fn a_small_vent_hole_is_not_missed() {
    let mut ball = recipe(Vec::new());
    ball.holes.push(Hole {
        entry: Vector3::new(0.31, -0.4, 0.77),
        axis: -Vector3::new(0.31, -0.4, 0.77),
        diameter_m: 0.1 * M_PER_IN,
        depth_m: 0.02,
    });
    let skin = Model::new(&ball, &Ball::new(&ball).expect("a valid recipe")).skin();
    let middle = ball.holes[0].entry.normalize() * R;
    let near_rim = skin[0].edges.iter().flatten().filter(|&&end| {
        let off = (Vector3::from(end.map(f64::from)) - middle).norm();
        (off / (0.05 * M_PER_IN) - 1.0).abs() < 0.1
    });
    assert!(near_rim.count() > 16, "a rim all round");
    let longest = skin[0].edges.iter().map(|[a, b]| (Vector3::from(*a) - Vector3::from(*b)).norm()).fold(0.0, f32::max);
    assert!(longest < 0.5 * M_PER_IN as f32, "edges are cut as finely as surfaces: {longest}");
}

#[test]
fn pictures_stay_light() {
    let pieces = vec![
        piece(solid(Shape::Sphere { diameter_m: 7.0 * M_PER_IN })),
        piece(solid(Shape::Cylinder { diameter_m: 3.0 * M_PER_IN, height_m: 4.0 * M_PER_IN })),
        piece(Solid {
            at_m: Vector3::new(0.0, 0.0, 2.5 * M_PER_IN),
            ..solid(Shape::Cylinder { diameter_m: 3.0 * M_PER_IN, height_m: 0.7 * M_PER_IN })
        }),
    ];
    let triangles: usize = surfaces(&recipe(pieces)).iter().map(|mesh| mesh.triangles.len() / 3).sum();
    assert!(triangles < 40_000, "{triangles}");
}
