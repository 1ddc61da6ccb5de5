//! Balls made at random, weighed as they stand and turned as a whole: two
//! sums over other lines, which must agree within what both say of themselves.

use nalgebra::{Rotation3, Vector3};

use super::{hole, piece, turned};
use crate::ball::Ball;
use crate::recipe::{Recipe, Shape, Solid};
use crate::weigh::{TOLERANCE, weigh};

/// D. E. Knuth's MMIX generator (The Art of Computer Programming 2, 3rd ed., 3.3.4).
struct Dice(u64);

impl Dice {
    fn roll(&mut self) -> f64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 11) as f64 / (1_u64 << 53) as f64
    }

    fn from(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.roll()
    }

    fn vector(&mut self, size: f64) -> Vector3<f64> {
        Vector3::from_fn(|_, _| self.from(-size, size))
    }

    fn shape(&mut self, size: f64) -> Shape {
        let mut d = || self.from(0.2, 1.0) * size;
        let [a, b, c] = [d(), d(), d()];
        match (self.roll() * 7.0) as u32 {
            0 => Shape::Sphere { diameter_m: a },
            1 => Shape::Ellipsoid { size_m: [a, b, c] },
            2 => Shape::Cylinder { diameter_m: a, height_m: b },
            3 => Shape::Frustum { bottom_diameter_m: a, top_diameter_m: 0.5 * b, height_m: c },
            4 => Shape::Ring { ring_diameter_m: 0.7 * a, tube_diameter_m: 0.3 * b },
            5 => Shape::Box { size_m: [0.7 * a, 0.7 * b, 0.7 * c] },
            _ => {
                let [a, b, c] = [0.5 * a, 0.5 * b, 0.5 * c];
                Shape::Lathe { profile_m: vec![[0.0, -a], [b, -0.8 * a], [0.6 * b, 0.0], [c, 0.7 * a], [0.0, a]] }
            }
        }
    }

    fn solid(&mut self, size: f64) -> Solid {
        let shape = self.shape(size);
        let turn_rad = if self.roll() < 0.6 { self.vector(3.0).into() } else { [0.0; 3] };
        let squash = if self.roll() < 0.2 { [self.from(0.7, 1.2), self.from(0.7, 1.2)] } else { [1.0; 2] };
        let mut at_m = self.vector(0.03);
        if self.roll() < 0.5 {
            (at_m.x, at_m.y) = (0.0, 0.0);
        }
        Solid { shape, squash, turn_rad, at_m }
    }

    fn recipe(&mut self) -> Recipe {
        let mut pieces = Vec::new();
        for _ in 0..1 + (self.roll() * 4.0) as usize {
            let mut piece = piece(self.from(500.0, 3500.0), self.solid(0.13));
            if self.roll() < 0.3 {
                piece.cuts.push(self.solid(0.08));
            }
            pieces.push(piece);
        }
        let mut holes = Vec::new();
        for _ in 0..(self.roll() * 3.0) as usize {
            let entry = self.vector(1.0);
            let mut pitched = hole(entry.into(), self.from(0.01, 0.03), self.from(0.03, 0.08));
            pitched.axis = self.vector(0.3) - entry.normalize();
            holes.push(pitched);
        }
        Recipe { diameter_m: 0.2172, cover_density_kg_m3: 1150.0, pieces, holes }
    }
}

#[test]
fn random_balls_agree_with_themselves_turned() {
    let turn = Rotation3::from_euler_angles(0.4, -0.7, 1.1);
    let mut weighed = 0;
    for seed in 0..12 {
        let mut dice = Dice(seed);
        // The first rolls of neighbouring seeds are alike.
        for _ in 0..10 {
            dice.roll();
        }
        let recipe = dice.recipe();
        // A piece at random may stick out of the ball.
        let (Ok(ball), Ok(other)) = (Ball::new(&recipe), Ball::new(&turned(&recipe, &turn))) else { continue };
        let (made, other) = (weigh(&ball), weigh(&other));
        assert!(made.relative_error <= TOLERANCE && other.relative_error <= TOLERANCE, "seed {seed}");
        let bound = made.relative_error + other.relative_error;
        assert!((other.mass_kg / made.mass_kg - 1.0).abs() <= bound, "seed {seed}");
        let back = turn.matrix().transpose() * other.inertia_kg_m2 * turn.matrix();
        assert!((back - made.inertia_kg_m2).amax() <= bound * made.inertia_kg_m2.amax(), "seed {seed}");
        for (a, b) in made.rg_m.iter().zip(&other.rg_m) {
            assert!(((a / b).powi(2) - 1.0).abs() <= 2.0 * bound, "seed {seed}");
        }
        weighed += 1;
    }
    assert!(weighed >= 8);
}
