//! A ball as its maker writes it down: plain data, nothing computed, SI units.
//!
//! Ball frame: origin at the ball's geometric centre, +z through the pin end
//! of the core, right-handed.

use nalgebra::Vector3;

/// A ball: a sphere of cover material with pieces poured into it and holes drilled.
#[derive(Clone, Debug, PartialEq)]
pub struct Recipe {
    /// Diameter of the finished ball, 4 in to 12 in (0.1016 m to 0.3048 m).
    pub diameter_m: f64,
    /// Density of the coverstock, above 0 and up to 25,000 kg/m³.
    pub cover_density_kg_m3: f64,
    /// Pieces in pouring order: a later one displaces an earlier one.
    pub pieces: Vec<Piece>,
    /// Drilled holes: air, whatever they pass through.
    pub holes: Vec<Hole>,
}

impl Recipe {
    /// Density of every part, the cover's first.
    pub(crate) fn densities_kg_m3(&self) -> Vec<f64> {
        core::iter::once(self.cover_density_kg_m3).chain(self.pieces.iter().map(|p| p.density_kg_m3)).collect()
    }
}

/// One poured piece of the core.
#[derive(Clone, Debug, PartialEq)]
pub struct Piece {
    /// Density, above 0 and up to 25,000 kg/m³.
    pub density_kg_m3: f64,
    /// Where the piece is.
    pub solid: Solid,
    /// What is taken out of the piece, each in the piece's own frame (after
    /// the piece's squash, before its turn and move). A cut is filled by
    /// whatever lies below: it is not a void.
    pub cuts: Vec<Solid>,
}

/// A shape, squashed, then turned, then moved.
#[derive(Clone, Debug, PartialEq)]
pub struct Solid {
    /// The shape about its own origin, its axis along z.
    pub shape: Shape,
    /// Scale of the finished shape in its own x and y, 0.05 to 20 each.
    pub squash: [f64; 2],
    /// Turns about the fixed x, then y, then z axes of the parent frame.
    pub turn_rad: [f64; 3],
    /// Where the shape's origin goes in the parent frame.
    pub at_m: Vector3<f64>,
}

/// A shape centred on its own origin with its axis along z. All sizes above 0.
#[derive(Clone, Debug, PartialEq)]
pub enum Shape {
    /// A ball.
    Sphere {
        /// Diameter.
        diameter_m: f64,
    },
    /// An ellipsoid with its axes along x, y, z.
    Ellipsoid {
        /// Full axes.
        size_m: [f64; 3],
    },
    /// A cylinder: a disc, pancake or puck when flat.
    Cylinder {
        /// Diameter.
        diameter_m: f64,
        /// Height along z.
        height_m: f64,
    },
    /// A truncated cone. Either diameter may be 0, not both.
    Frustum {
        /// Diameter at z = −height/2.
        bottom_diameter_m: f64,
        /// Diameter at z = +height/2.
        top_diameter_m: f64,
        /// Height along z.
        height_m: f64,
    },
    /// A torus about z.
    Ring {
        /// From tube centre to tube centre.
        ring_diameter_m: f64,
        /// Diameter of the tube. Where it is larger than `ring_diameter_m`
        /// the hole in the middle closes (a spindle torus, filled).
        tube_diameter_m: f64,
    },
    /// A box with its edges along x, y, z.
    Box {
        /// Full edges.
        size_m: [f64; 3],
    },
    /// A closed polygon in the half-plane r ≥ 0, revolved about z.
    Lathe {
        /// Points (r, z) in order, the last joined to the first; 3 to 10,000
        /// of them, not crossing itself.
        profile_m: Vec<[f64; 2]>,
    },
}

/// A flat-bottomed cylinder drilled from the ball's surface.
#[derive(Clone, Debug, PartialEq)]
pub struct Hole {
    /// Direction from the ball's centre to the entry point; any non-zero vector.
    pub entry: Vector3<f64>,
    /// Direction of drilling, into the ball (its dot product with `entry` is
    /// negative); any length above 0. Straight towards the centre is `-entry`.
    pub axis: Vector3<f64>,
    /// Diameter of the hole.
    pub diameter_m: f64,
    /// Depth of the flat bottom along `axis` from the entry point.
    pub depth_m: f64,
}
