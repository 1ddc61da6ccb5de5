//! Recipes in inches and grams per cubic centimetre, as people write them.

use nalgebra::Vector3;
use physics::recipe::{Hole, Piece, Recipe, Shape, Solid};
use physics::units::{KG_M3_PER_G_CC, M_PER_IN};

/// A ball of cover material alone.
pub fn ball(diameter_in: f64, cover_g_cc: f64) -> Recipe {
    Recipe {
        diameter_m: diameter_in * M_PER_IN,
        cover_density_kg_m3: cover_g_cc * KG_M3_PER_G_CC,
        pieces: vec![],
        holes: vec![],
    }
}

/// What can be added to a recipe, one after the other.
pub trait Build {
    /// Pours one more piece.
    fn pour(self, density_g_cc: f64, solid: Solid) -> Self;
    /// Pours one more piece with cuts in it.
    fn pour_cut(self, density_g_cc: f64, solid: Solid, cuts: Vec<Solid>) -> Self;
    /// Drills one more hole straight towards the centre.
    fn drill(self, entry: [f64; 3], diameter_in: f64, depth_in: f64) -> Self;
    /// Drills one more hole along an axis.
    fn drill_along(self, entry: [f64; 3], axis: [f64; 3], diameter_in: f64, depth_in: f64) -> Self;
}

impl Build for Recipe {
    fn pour(self, density_g_cc: f64, solid: Solid) -> Self {
        self.pour_cut(density_g_cc, solid, vec![])
    }

    fn pour_cut(mut self, density_g_cc: f64, solid: Solid, cuts: Vec<Solid>) -> Self {
        self.pieces.push(Piece { density_kg_m3: density_g_cc * KG_M3_PER_G_CC, solid, cuts });
        self
    }

    fn drill(self, entry: [f64; 3], diameter_in: f64, depth_in: f64) -> Self {
        self.drill_along(entry, entry.map(|e| -e), diameter_in, depth_in)
    }

    fn drill_along(mut self, entry: [f64; 3], axis: [f64; 3], diameter_in: f64, depth_in: f64) -> Self {
        self.holes.push(Hole {
            entry: entry.into(),
            axis: axis.into(),
            diameter_m: diameter_in * M_PER_IN,
            depth_m: depth_in * M_PER_IN,
        });
        self
    }
}

/// Where and how a solid stands.
pub trait Place {
    /// Moves the solid's origin there.
    fn at(self, at_in: [f64; 3]) -> Self;
    /// Turns it about the fixed x, then y, then z axes, in degrees.
    fn turn(self, turn_deg: [f64; 3]) -> Self;
    /// Squashes it in its own x and y.
    fn squash(self, squash: [f64; 2]) -> Self;
}

impl Place for Solid {
    fn at(mut self, at_in: [f64; 3]) -> Self {
        self.at_m = Vector3::from(at_in) * M_PER_IN;
        self
    }

    fn turn(mut self, turn_deg: [f64; 3]) -> Self {
        self.turn_rad = turn_deg.map(f64::to_radians);
        self
    }

    fn squash(mut self, squash: [f64; 2]) -> Self {
        self.squash = squash;
        self
    }
}

/// A solid at the origin, neither turned nor squashed.
pub fn solid(shape: Shape) -> Solid {
    Solid { shape, squash: [1.0, 1.0], turn_rad: [0.0; 3], at_m: Vector3::zeros() }
}

/// A sphere.
pub fn sphere(diameter_in: f64) -> Solid {
    solid(Shape::Sphere { diameter_m: diameter_in * M_PER_IN })
}

/// An ellipsoid, by its full axes.
pub fn ellipsoid(x_in: f64, y_in: f64, z_in: f64) -> Solid {
    solid(Shape::Ellipsoid { size_m: [x_in * M_PER_IN, y_in * M_PER_IN, z_in * M_PER_IN] })
}

/// A cylinder.
pub fn cylinder(diameter_in: f64, height_in: f64) -> Solid {
    solid(Shape::Cylinder { diameter_m: diameter_in * M_PER_IN, height_m: height_in * M_PER_IN })
}

/// A truncated cone.
pub fn frustum(bottom_in: f64, top_in: f64, height_in: f64) -> Solid {
    solid(Shape::Frustum {
        bottom_diameter_m: bottom_in * M_PER_IN,
        top_diameter_m: top_in * M_PER_IN,
        height_m: height_in * M_PER_IN,
    })
}

/// A torus.
pub fn ring(ring_diameter_in: f64, tube_diameter_in: f64) -> Solid {
    solid(Shape::Ring { ring_diameter_m: ring_diameter_in * M_PER_IN, tube_diameter_m: tube_diameter_in * M_PER_IN })
}

/// A box, by its full edges.
pub fn cuboid(x_in: f64, y_in: f64, z_in: f64) -> Solid {
    solid(Shape::Box { size_m: [x_in * M_PER_IN, y_in * M_PER_IN, z_in * M_PER_IN] })
}

/// A polygon of (r, z) points, revolved about z.
pub fn lathe(profile_in: &[[f64; 2]]) -> Solid {
    solid(Shape::Lathe { profile_m: profile_in.iter().map(|[r, z]| [r * M_PER_IN, z * M_PER_IN]).collect() })
}
