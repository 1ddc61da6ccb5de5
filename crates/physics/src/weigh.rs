//! Mass, centre of gravity, tensor, RG, differentials and each piece's share.

use nalgebra::{Matrix3, Vector3};

use crate::units::KG_PER_OZ;

/// What a ball weighs and how its mass is spread.
#[derive(Clone, Debug, PartialEq)]
pub struct Weighed {
    /// Radius of the ball.
    pub radius_m: f64,
    /// Mass.
    pub mass_kg: f64,
    /// Centre of gravity from the ball's geometric centre.
    pub cg_m: Vector3<f64>,
    /// Inertia tensor about the centre of gravity, in ball axes.
    pub inertia_kg_m2: Matrix3<f64>,
    /// Principal radii of gyration about the centre of gravity: low, middle, high.
    pub rg_m: [f64; 3],
    /// Unit principal axes in the order of `rg_m`, right-handed; the low axis
    /// points to +z, the high axis to +x (each as far as it can).
    pub axes: [Vector3<f64>; 3],
    /// Bound on the relative error of the mass and, relative to the largest
    /// entry, of every tensor entry.
    pub relative_error: f64,
    /// The cover first, then every piece in recipe order, as they really are
    /// in the ball (displaced parts gone).
    pub shares: Vec<Share>,
}

/// What one part of the ball contributes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Share {
    /// Volume really filled.
    pub volume_m3: f64,
    /// Mass.
    pub mass_kg: f64,
    /// Part of the tensor's trace about the ball's centre of gravity; all sum to 1.
    pub rg_share: f64,
}

impl Weighed {
    /// High minus low RG.
    pub fn differential_m(&self) -> f64 {
        self.rg_m[2] - self.rg_m[0]
    }

    /// High minus middle RG.
    pub fn intermediate_differential_m(&self) -> f64 {
        self.rg_m[2] - self.rg_m[1]
    }

    /// Top weight, m·cg_z/R as a mass: what must be set on the far pole to
    /// balance a scale under the ball's centre. In ounces.
    pub fn top_weight_oz(&self) -> f64 {
        self.mass_kg * self.cg_m.z / self.radius_m / KG_PER_OZ
    }
}
