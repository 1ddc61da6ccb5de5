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

impl BallFile {
    /// This file with the numbers of a recipe that has the same parts. What is
    /// the same stays as it is written.
    pub(crate) fn with_recipe(&self, recipe: &recipe::Recipe) -> Self {
        let (own, mut file) = (self.recipe(), self.clone());
        let changed = |value: f64, own: f64, unit: f64, written: &mut f64| {
            if value != own {
                *written = value / unit;
            }
        };
        changed(recipe.diameter_m, own.diameter_m, M_PER_IN, &mut file.diameter_in);
        changed(recipe.cover_density_kg_m3, own.cover_density_kg_m3, KG_M3_PER_G_CC, &mut file.cover.density_g_cc);
        for (piece, (new, own)) in file.pieces.iter_mut().zip(recipe.pieces.iter().zip(&own.pieces)) {
            changed(new.density_kg_m3, own.density_kg_m3, KG_M3_PER_G_CC, &mut piece.density_g_cc);
            back(&new.solid, &own.solid, &mut piece.shape, &mut piece.at_in, &mut piece.turn_deg);
            for (cut, (new, own)) in piece.cuts.iter_mut().flatten().zip(new.cuts.iter().zip(&own.cuts)) {
                back(new, own, &mut cut.shape, &mut cut.at_in, &mut cut.turn_deg);
            }
        }
        file
    }
}

/// Writes what differs between two solids of one kind.
fn back(
    new: &recipe::Solid,
    own: &recipe::Solid,
    shape: &mut Shape,
    at_in: &mut Option<[f64; 3]>,
    turn_deg: &mut Option<[f64; 3]>,
) {
    if new.shape != own.shape {
        shape.form = form_back(&new.shape);
    }
    if new.squash != own.squash {
        shape.squash = Some(new.squash);
    }
    if new.at_m != own.at_m {
        *at_in = Some((new.at_m / M_PER_IN).into());
    }
    if new.turn_rad != own.turn_rad {
        *turn_deg = Some(new.turn_rad.map(f64::to_degrees));
    }
}

fn form_back(shape: &recipe::Shape) -> Form {
    let inches = |metres: f64| metres / M_PER_IN;
    match shape {
        recipe::Shape::Sphere { diameter_m } => Form::Sphere { diameter_in: inches(*diameter_m) },
        recipe::Shape::Ellipsoid { size_m } => Form::Ellipsoid { size_in: size_m.map(inches) },
        recipe::Shape::Cylinder { diameter_m, height_m } => {
            Form::Cylinder { diameter_in: inches(*diameter_m), height_in: inches(*height_m) }
        }
        recipe::Shape::Frustum { bottom_diameter_m, top_diameter_m, height_m } => Form::Frustum {
            bottom_diameter_in: inches(*bottom_diameter_m),
            top_diameter_in: inches(*top_diameter_m),
            height_in: inches(*height_m),
        },
        recipe::Shape::Ring { ring_diameter_m, tube_diameter_m } => {
            Form::Ring { ring_diameter_in: inches(*ring_diameter_m), tube_diameter_in: inches(*tube_diameter_m) }
        }
        recipe::Shape::Box { size_m } => Form::Box { size_in: size_m.map(inches) },
        recipe::Shape::Lathe { profile_m } => {
            Form::Lathe { profile_in: profile_m.iter().map(|point| point.map(inches)).collect() }
        }
    }
}
