//! From a ball file to the physics' recipe, in SI units.

use nalgebra::Vector3;
use physics::recipe;
use physics::units::{KG_M3_PER_G_CC, M_PER_IN};

use crate::ball::{BallFile, Cut, Hole, Piece};
use crate::shape::{Form, Shape};

impl BallFile {
    /// The recipe this file writes down.
    pub fn recipe(&self) -> recipe::Recipe {
        recipe::Recipe {
            diameter_m: self.diameter_in * M_PER_IN,
            cover_density_kg_m3: self.cover.density_g_cc * KG_M3_PER_G_CC,
            pieces: self.pieces.iter().map(Piece::recipe).collect(),
            holes: self.holes.iter().flatten().map(Hole::recipe).collect(),
        }
    }
}

impl Piece {
    fn recipe(&self) -> recipe::Piece {
        recipe::Piece {
            density_kg_m3: self.density_g_cc * KG_M3_PER_G_CC,
            solid: solid(&self.shape, self.at_in, self.turn_deg),
            cuts: self.cuts.iter().flatten().map(Cut::recipe).collect(),
        }
    }
}

impl Cut {
    fn recipe(&self) -> recipe::Solid {
        solid(&self.shape, self.at_in, self.turn_deg)
    }
}

impl Hole {
    fn recipe(&self) -> recipe::Hole {
        let entry = Vector3::from(self.entry);
        recipe::Hole {
            entry,
            axis: self.axis.map_or(-entry, Vector3::from),
            diameter_m: self.diameter_in * M_PER_IN,
            depth_m: self.depth_in * M_PER_IN,
        }
    }
}

fn solid(shape: &Shape, at_in: Option<[f64; 3]>, turn_deg: Option<[f64; 3]>) -> recipe::Solid {
    recipe::Solid {
        shape: form(&shape.form),
        squash: shape.squash.unwrap_or([1.0; 2]),
        turn_rad: turn_deg.unwrap_or_default().map(f64::to_radians),
        at_m: Vector3::from(at_in.unwrap_or_default()) * M_PER_IN,
    }
}

fn form(form: &Form) -> recipe::Shape {
    let m = |inches: f64| inches * M_PER_IN;
    match form {
        Form::Sphere { diameter_in } => recipe::Shape::Sphere { diameter_m: m(*diameter_in) },
        Form::Ellipsoid { size_in } => recipe::Shape::Ellipsoid { size_m: size_in.map(m) },
        Form::Cylinder { diameter_in, height_in } => {
            recipe::Shape::Cylinder { diameter_m: m(*diameter_in), height_m: m(*height_in) }
        }
        Form::Frustum { bottom_diameter_in, top_diameter_in, height_in } => recipe::Shape::Frustum {
            bottom_diameter_m: m(*bottom_diameter_in),
            top_diameter_m: m(*top_diameter_in),
            height_m: m(*height_in),
        },
        Form::Ring { ring_diameter_in, tube_diameter_in } => {
            recipe::Shape::Ring { ring_diameter_m: m(*ring_diameter_in), tube_diameter_m: m(*tube_diameter_in) }
        }
        Form::Box { size_in } => recipe::Shape::Box { size_m: size_in.map(m) },
        Form::Lathe { profile_in } => {
            recipe::Shape::Lathe { profile_m: profile_in.iter().map(|point| point.map(m)).collect() }
        }
    }
}
