use core::f64::consts::PI;

use nalgebra::{Matrix3, Rotation3, Vector3};
use proptest::prelude::*;

use super::*;
use crate::recipe::{Hole, Piece, Recipe, Shape, Solid};
use crate::units::M_PER_IN;

const R: f64 = 4.25 * M_PER_IN;

fn solid(shape: Shape) -> Solid {
    Solid { shape, squash: [1.0; 2], turn_rad: [0.0; 3], at_m: Vector3::zeros() }
}

fn piece(solid: Solid) -> Piece {
    Piece { density_kg_m3: 1500.0, solid, cuts: Vec::new() }
}

fn recipe(pieces: Vec<Piece>) -> Recipe {
    Recipe { diameter_m: 2.0 * R, cover_density_kg_m3: 1200.0, pieces, holes: Vec::new() }
}

fn cut(recipe: &Recipe, normal: [f64; 3], depth_m: f64) -> Section {
    let ball = Ball::new(recipe).expect("a valid recipe");
    section(&ball, Plane::new(normal.into(), depth_m).expect("a plane"))
}

fn area(section: &Section, part: Part) -> f64 {
    section.regions.iter().find(|r| r.part == part).map_or(0.0, |r| r.area_m2)
}

#[track_caller]
fn near(found: f64, expected: f64) {
    assert!((found - expected).abs() <= 1e-3 * expected.abs(), "{found} is not {expected}");
}

/// The signed area of the outlines must be that of the strips.
fn outlines_close(section: &Section) {
    for region in &section.regions {
        let signed: f64 = region
            .loops
            .iter()
            .flat_map(|l| l.iter().zip(l.iter().cycle().skip(1)))
            .map(|(a, b)| (a[0] * b[1] - b[0] * a[1]) / 2.0)
            .sum();
        let lengths = region.loops.iter().flat_map(|l| l.iter().zip(l.iter().cycle().skip(1)));
        let length: f64 = lengths.map(|(a, b)| (a[0] - b[0]).hypot(a[1] - b[1])).sum();
        let slack = CHORD_TOLERANCE_M * length;
        assert!((signed - region.area_m2).abs() < slack, "{:?}: {signed} {}", region.part, region.area_m2);
    }
}

#[test]
fn axes_are_right_handed_and_the_pin_is_up() {
    for normal in [[0.0, -1.0, 0.0], [1.0, 0.0, 0.0], [0.3, 0.4, -0.5], [0.0, 0.0, 2.0], [0.0, 0.0, -1.0]] {
        let plane = Plane::new(normal.into(), 0.01).expect("a plane");
        assert!((plane.u.cross(&plane.v) - plane.normal).norm() < 1e-15);
        assert!(plane.v.z >= 0.0);
    }
    let front = Plane::new(Vector3::new(0.0, -3.0, 0.0), 0.0).expect("a plane");
    assert_eq!((front.u, front.v), (Vector3::x(), Vector3::z()));
    let top = Plane::new(Vector3::new(0.0, 0.0, 3.0), 0.0).expect("a plane");
    assert_eq!((top.u, top.v), (Vector3::x(), Vector3::y()));
    assert_eq!(Plane::new(Vector3::zeros(), 0.0), None);
    assert_eq!(Plane::new(Vector3::x(), f64::NAN), None);
}

#[test]
fn a_plane_outside_the_ball_cuts_nothing() {
    let ball = recipe(vec![piece(solid(Shape::Sphere { diameter_m: R }))]);
    for depth_m in [R, -R, 2.0 * R, 1e300] {
        assert!(cut(&ball, [1.0, 2.0, 3.0], depth_m).regions.is_empty(), "{depth_m}");
    }
}

/// A plane at distance d cuts a sphere in a disc of area π(r² − d²).
#[test]
fn spheres_are_cut_in_discs() {
    let r = 0.08;
    for normal in [[0.0, 0.0, 1.0], [0.0, -1.0, 0.0], [0.3, -0.7, 0.2]] {
        for depth_m in [0.0, 0.03, -0.0799] {
            let section = cut(&recipe(vec![piece(solid(Shape::Sphere { diameter_m: 2.0 * r }))]), normal, depth_m);
            let inner = PI * (r * r - depth_m * depth_m);
            near(area(&section, Part::Piece(0)), inner);
            near(area(&section, Part::Cover), PI * (R * R - depth_m * depth_m) - inner);
            assert_eq!(section.regions[0].loops.len(), 2, "a disc with a hole");
            outlines_close(&section);
        }
    }
}

/// Along its axis a cylinder shows a rectangle, across a circle, aslant an ellipse.
#[test]
fn cylinders_are_cut_in_rectangles_circles_and_ellipses() {
    let (r, h) = (0.03, 0.1);
    let ball = recipe(vec![piece(solid(Shape::Cylinder { diameter_m: 2.0 * r, height_m: h }))]);
    let along = cut(&ball, [1.0, 1.0, 0.0], 0.01);
    near(area(&along, Part::Piece(0)), 2.0 * (r * r - 1e-4_f64).sqrt() * h);
    assert_eq!(along.regions[1].loops, [along.regions[1].loops[0].clone()]);
    assert_eq!(along.regions[1].loops[0].len(), 4, "four corners: {:?}", along.regions[1].loops);
    near(area(&cut(&ball, [0.0, 0.0, 1.0], 0.02), Part::Piece(0)), PI * r * r);
    let slant = 0.4_f64;
    let aslant = cut(&ball, [0.0, slant.sin(), slant.cos()], 0.0);
    near(area(&aslant, Part::Piece(0)), PI * r * r / slant.cos());
    outlines_close(&aslant);
}

#[test]
fn a_thin_disc_is_not_missed() {
    let thin = Shape::Cylinder { diameter_m: 0.1, height_m: 1e-5 };
    for z in [0.0, 0.0123, 0.0371] {
        let ball = recipe(vec![piece(Solid { at_m: Vector3::new(0.0, 0.0, z), ..solid(thin.clone()) })]);
        near(area(&cut(&ball, [0.0, 1.0, 0.0], 0.0), Part::Piece(0)), 0.1 * 1e-5);
        near(
            area(&cut(&ball, [0.0, 1.0, 0.1], 0.1 * z / 1.01_f64.sqrt()), Part::Piece(0)),
            0.1 * 1e-5 * 1.01_f64.sqrt(),
        );
    }
}

/// A box cut across a body diagonal through its centre shows a regular
/// hexagon with side a/√2: area 3√3/4 a².
#[test]
fn a_cube_shows_a_hexagon() {
    let a = 0.06;
    let section = cut(&recipe(vec![piece(solid(Shape::Box { size_m: [a; 3] }))]), [1.0, 1.0, 1.0], 0.0);
    near(area(&section, Part::Piece(0)), 0.75 * 3.0_f64.sqrt() * a * a);
    assert_eq!(section.regions[1].loops[0].len(), 6);
}

/// Through its axis a ring shows two circles, across it an annulus.
#[test]
fn rings_show_circles_and_annuli() {
    let (ring, tube) = (0.04, 0.01);
    let ball = recipe(vec![piece(solid(Shape::Ring { ring_diameter_m: 2.0 * ring, tube_diameter_m: 2.0 * tube }))]);
    let through = cut(&ball, [0.0, 1.0, 0.0], 0.0);
    near(area(&through, Part::Piece(0)), 2.0 * PI * tube * tube);
    assert_eq!(through.regions[1].loops.len(), 2);
    let across = cut(&ball, [0.0, 0.0, 1.0], 0.0);
    near(area(&across, Part::Piece(0)), PI * ((ring + tube).powi(2) - (ring - tube).powi(2)));
    assert_eq!(across.regions[0].loops.len(), 3, "the cover inside and outside the ring");
}

/// Ellipsoid x²/a² + y²/b² + z²/c² = 1 cut by z = h: πab(1 − h²/c²).
#[test]
fn ellipsoids_and_squash_are_the_same_thing() {
    let [a, b, c] = [0.06, 0.04, 0.05];
    let turn_rad = [0.3, -0.4, 0.5];
    let made = [
        Solid { turn_rad, ..solid(Shape::Ellipsoid { size_m: [2.0 * a, 2.0 * b, 2.0 * c] }) },
        Solid { turn_rad, squash: [a / c, b / c], ..solid(Shape::Sphere { diameter_m: 2.0 * c }) },
    ];
    let axis = Rotation3::from_euler_angles(0.3, -0.4, 0.5) * Vector3::z();
    for solid in made {
        let section = cut(&recipe(vec![piece(solid)]), axis.into(), 0.02);
        near(area(&section, Part::Piece(0)), PI * a * b * (1.0 - (0.02_f64 / c).powi(2)));
    }
}

/// Circle of radius r at distance d from one of radius s: the lens.
fn lens(r: f64, s: f64, d: f64) -> f64 {
    let a = ((d * d + r * r - s * s) / (2.0 * d * r)).acos();
    let b = ((d * d + s * s - r * r) / (2.0 * d * s)).acos();
    r * r * (a - a.sin() * a.cos()) + s * s * (b - b.sin() * b.cos())
}

#[test]
fn a_later_piece_displaces_an_earlier_one() {
    let sphere = |x: f64, diameter_m: f64| {
        piece(Solid { at_m: Vector3::new(x, 0.0, 0.0), ..solid(Shape::Sphere { diameter_m }) })
    };
    let section = cut(&recipe(vec![sphere(-0.02, 0.08), sphere(0.03, 0.06)]), [0.0, -1.0, 0.0], 0.0);
    near(area(&section, Part::Piece(1)), PI * 0.03 * 0.03);
    near(area(&section, Part::Piece(0)), PI * 0.04 * 0.04 - lens(0.04, 0.03, 0.05));
    outlines_close(&section);
}

#[test]
fn touching_and_coincident_surfaces_leave_no_slivers() {
    let cylinder = |z: f64, height_m: f64| {
        piece(Solid { at_m: Vector3::new(0.0, 0.0, z), ..solid(Shape::Cylinder { diameter_m: 0.06, height_m }) })
    };
    // Two cylinders end to end, flush, the second one's twin wholly hidden.
    let ball = recipe(vec![cylinder(-0.02, 0.04), cylinder(0.015, 0.03), cylinder(0.015, 0.03)]);
    let section = cut(&ball, [1.0, 0.0, 0.0], 0.0);
    assert_eq!(area(&section, Part::Piece(1)), 0.0);
    near(area(&section, Part::Piece(0)), 0.06 * 0.04);
    near(area(&section, Part::Piece(2)), 0.06 * 0.03);
    assert_eq!(section.regions.iter().map(|r| r.loops.len()).collect::<Vec<_>>(), [2, 1, 1]);
    // Two spheres that touch.
    let sphere = |x: f64| piece(Solid { at_m: Vector3::new(x, 0.0, 0.0), ..solid(Shape::Sphere { diameter_m: 0.06 }) });
    let section = cut(&recipe(vec![sphere(-0.03), sphere(0.03)]), [0.0, -1.0, 0.0], 0.0);
    for n in 0..2 {
        near(area(&section, Part::Piece(n)), PI * 0.03 * 0.03);
    }
    outlines_close(&section);
}

#[test]
fn cuts_are_filled_by_what_lies_below_and_holes_by_nothing() {
    let mut core = piece(solid(Shape::Cylinder { diameter_m: 0.08, height_m: 0.08 }));
    core.cuts.push(solid(Shape::Ring { ring_diameter_m: 0.08, tube_diameter_m: 0.02 }));
    let mut ball = recipe(vec![core]);
    ball.holes.push(Hole { entry: Vector3::x(), axis: -Vector3::x(), diameter_m: 0.02, depth_m: 0.03 });
    let section = cut(&ball, [0.0, 1.0, 0.0], 0.0);
    near(area(&section, Part::Piece(0)), 0.08 * 0.08 - PI * 0.01 * 0.01);
    let cap = R * R * (0.01 / R).asin() + 0.01 * (R * R - 1e-4).sqrt();
    let slot = cap - 0.02 * (R - 0.03);
    near(area(&section, Part::Cover), PI * R * R - slot - (0.08 * 0.08 - PI * 0.01 * 0.01));
    outlines_close(&section);
}

#[test]
fn a_label_lies_well_inside_its_region() {
    let section = cut(&recipe(vec![piece(solid(Shape::Sphere { diameter_m: 0.16 }))]), [0.0, 1.0, 0.0], 0.0);
    let [u, v] = section.regions[0].label_at_m;
    assert!((u.hypot(v) - (0.08 + R) / 2.0).abs() < 2e-3, "the middle of the shell");
    let [u, v] = section.regions[1].label_at_m;
    assert!(u.hypot(v) < 2e-3, "the middle of the disc");
}

fn any_shape() -> impl Strategy<Value = Shape> {
    let size = 0.008..0.04_f64;
    prop_oneof![
        size.clone().prop_map(|diameter_m| Shape::Sphere { diameter_m }),
        [size.clone(), size.clone(), size.clone()].prop_map(|size_m| Shape::Ellipsoid { size_m }),
        [size.clone(), size.clone(), size.clone()].prop_map(|size_m| Shape::Box { size_m }),
        (size.clone(), size.clone()).prop_map(|(diameter_m, height_m)| Shape::Cylinder { diameter_m, height_m }),
        (size.clone(), size.clone()).prop_map(|(d, height_m)| Shape::Frustum {
            bottom_diameter_m: d,
            top_diameter_m: 0.0,
            height_m
        }),
        (size.clone(), 0.004..0.02_f64)
            .prop_map(|(ring_diameter_m, tube_diameter_m)| Shape::Ring { ring_diameter_m, tube_diameter_m }),
        size.prop_map(|s| Shape::Lathe {
            profile_m: vec![[0.0, -s], [0.7 * s, -0.8 * s], [0.5 * s, 0.0], [0.8 * s, 0.6 * s], [0.0, s]]
        }),
    ]
}

fn any_solid() -> impl Strategy<Value = Solid> {
    let at = [-0.03..0.03_f64, -0.03..0.03, -0.03..0.03];
    (any_shape(), [0.6..1.5_f64, 0.6..1.5], [-3.0..3.0_f64, -1.5..1.5, -3.0..3.0], at)
        .prop_map(|(shape, squash, turn_rad, at)| Solid { shape, squash, turn_rad, at_m: at.into() })
}

fn any_recipe() -> impl Strategy<Value = Recipe> {
    let pieces = prop::collection::vec((any_solid(), prop::collection::vec(any_solid(), 0..2)), 0..5);
    let direction = [-1.0..1.0_f64, -1.0..1.0, 0.2..1.0];
    let holes = prop::collection::vec((direction, 0.006..0.03_f64, 0.01..0.09_f64), 0..3);
    (pieces, holes).prop_map(|(pieces, holes)| Recipe {
        diameter_m: 2.0 * R,
        cover_density_kg_m3: 1200.0,
        pieces: pieces.into_iter().map(|(solid, cuts)| Piece { density_kg_m3: 1500.0, solid, cuts }).collect(),
        holes: holes
            .into_iter()
            .map(|(entry, diameter_m, depth_m)| Hole {
                entry: entry.into(),
                axis: -Vector3::from(entry),
                diameter_m,
                depth_m,
            })
            .collect(),
    })
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// Whatever the ball: a point of the plane is in the region of its part.
    #[test]
    fn regions_agree_with_the_material_at_points(
        recipe in any_recipe(),
        normal in [-1.0..1.0_f64, -1.0..1.0, -1.0..1.0],
        depth_m in -0.09..0.09_f64,
    ) {
        prop_assume!(Vector3::from(normal).norm() > 0.1);
        let ball = Ball::new(&recipe).expect("a valid recipe");
        let plane = Plane::new(normal.into(), depth_m).expect("a plane");
        let section = section(&ball, plane);
        outlines_close(&section);
        let mut wrong = 0;
        for i in 0..60 {
            for j in 0..60 {
                let at = [(f64::from(i) / 29.5 - 1.0) * R, (f64::from(j) / 29.5 - 1.0) * R];
                let expected = ball.part_at(&plane.point(at[0], at[1]));
                // Within the outlines' tolerance of a boundary either answer is right.
                let aside = [[1.0, 1.0], [-1.0, 1.0], [1.0, -1.0], [-1.0, -1.0]];
                let clear = aside.iter().all(|[a, b]| {
                    let by = 2.0 * CHORD_TOLERANCE_M;
                    ball.part_at(&plane.point(at[0] + a * by, at[1] + b * by)) == expected
                });
                if !clear {
                    continue;
                }
                for region in &section.regions {
                    if region.contains(at) != (Some(region.part) == expected) {
                        wrong += 1;
                    }
                }
                if expected.is_some_and(|part| section.regions.iter().all(|r| r.part != part)) {
                    wrong += 1;
                }
            }
        }
        prop_assert_eq!(wrong, 0);
        for region in &section.regions {
            prop_assert!(region.contains(region.label_at_m));
        }
    }

    /// Turning ball and plane together changes no area.
    #[test]
    fn areas_turn_with_the_ball(recipe in any_recipe(), turn in [-3.0..3.0_f64, -1.5..1.5, -3.0..3.0]) {
        let rotation: Matrix3<f64> = *Rotation3::from_euler_angles(turn[0], turn[1], turn[2]).matrix();
        let mut turned = recipe.clone();
        for piece in &mut turned.pieces {
            let own = Rotation3::from_euler_angles(piece.solid.turn_rad[0], piece.solid.turn_rad[1], piece.solid.turn_rad[2]);
            let (a, b, c) = Rotation3::from_matrix_unchecked(rotation * own.matrix()).euler_angles();
            piece.solid.turn_rad = [a, b, c];
            piece.solid.at_m = rotation * piece.solid.at_m;
        }
        for hole in &mut turned.holes {
            hole.entry = rotation * hole.entry;
            hole.axis = rotation * hole.axis;
        }
        let before = cut(&recipe, [0.2, -1.0, 0.1], 0.005);
        let after = cut(&turned, (rotation * Vector3::new(0.2, -1.0, 0.1)).into(), 0.005);
        let total = PI * R * R;
        for n in 0..=recipe.pieces.len() {
            let part = n.checked_sub(1).map_or(Part::Cover, Part::Piece);
            let (a, b) = (area(&before, part), area(&after, part));
            prop_assert!((a - b).abs() < 2e-4 * total, "{:?}: {} {}", part, a, b);
        }
    }
}
