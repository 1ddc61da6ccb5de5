//! Cavalieri's principle: the areas of flat cuts, summed through the ball, are
//! the volumes that weigh finds. Two parts of the program that share only the
//! material rule.

#![allow(clippy::unwrap_used, reason = "a check that cannot be set up must fail loudly")]

use nalgebra::Vector3;
use physics::ball::{Ball, Part};
use physics::recipe::Recipe;
use physics::section::{Plane, section};
use pithball_tests::body::weighed;
use pithball_tests::close::within;
use pithball_tests::make::*;

/// Volumes of the cover and of every piece from 120 parallel cuts (middle of each slice).
fn sliced(recipe: &Recipe, normal: Vector3<f64>) -> Vec<f64> {
    const SLICES: usize = 120;
    let ball = Ball::new(recipe).unwrap();
    let thick = recipe.diameter_m / SLICES as f64;
    let mut volumes = vec![0.0; ball.pieces() + 1];
    for n in 0..SLICES {
        let depth = (n as f64 + 0.5) * thick - recipe.diameter_m / 2.0;
        for region in section(&ball, Plane::new(normal, depth).unwrap()).regions {
            let part = match region.part {
                Part::Cover => 0,
                Part::Piece(n) => n + 1,
            };
            volumes[part] += region.area_m2 * thick;
        }
    }
    volumes
}

#[test]
fn areas_of_cuts_add_up_to_volumes() {
    let core = lathe(&[[0.0, -1.9], [1.4, -1.5], [1.0, 0.4], [1.6, 1.2], [0.0, 1.7]]).turn([0.0, 12.0, 0.0]);
    let channel = cylinder(0.6, 6.0).turn([80.0, 0.0, 20.0]);
    let balls = [
        ball(8.55, 1.18).pour(0.95, sphere(7.0)).pour_cut(1.9, core.clone(), vec![channel]).drill(
            [0.3, -0.4, 1.0],
            1.0,
            2.75,
        ),
        ball(8.55, 1.18)
            .pour(2.0, ellipsoid(3.0, 4.0, 5.0).at([0.2, 0.0, 0.3]).turn([30.0, 0.0, 40.0]))
            .pour(1.5, ring(3.6, 0.9).squash([1.2, 0.8]).turn([15.0, 25.0, 0.0]))
            .pour(2.8, cuboid(1.0, 1.5, 2.0).at([0.5, 0.5, 0.5]).turn([10.0, 20.0, 30.0])),
    ];
    for recipe in &balls {
        let got = weighed(recipe);
        let whole: f64 = got.shares.iter().map(|s| s.volume_m3).sum();
        for normal in [Vector3::z(), Vector3::new(1.0, -0.6, 0.4)] {
            for (n, (sliced, share)) in sliced(recipe, normal).iter().zip(&got.shares).enumerate() {
                within(&format!("part {n}"), *sliced, share.volume_m3, 5e-4 * whole);
            }
        }
    }
}
