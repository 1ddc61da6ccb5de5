//! What `weigh` prints.

use nalgebra::Vector3;
use physics::units::{KG_PER_LB, M_PER_IN};
use physics::weigh::Weighed;
use serde::Serialize;

use crate::ball::BallFile;

/// A weighed ball in the trade's units.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct WeighedDoc {
    /// Mass.
    pub mass_kg: f64,
    /// Weight.
    pub weight_lb: f64,
    /// Centre of gravity from the ball's geometric centre.
    pub cg_in: [f64; 3],
    /// Inertia tensor about the centre of gravity, in ball axes, row by row.
    pub inertia_kg_m2: [[f64; 3]; 3],
    /// Principal radii of gyration.
    pub rg_in: RgIn,
    /// Unit principal axes.
    pub axes: Axes,
    /// High minus low RG.
    pub differential_in: f64,
    /// High minus middle RG.
    pub intermediate_differential_in: f64,
    /// What must be set on the far pole to balance a scale under the centre.
    pub top_weight_oz: f64,
    /// Bound on the error of the mass (relative) and of every tensor entry
    /// (relative to the largest).
    pub relative_error: f64,
    /// The cover first, then the pieces in pouring order.
    pub pieces: Vec<PieceShare>,
}

/// Principal radii of gyration about the centre of gravity.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct RgIn {
    /// The lowest.
    pub low: f64,
    /// The middle one.
    pub middle: f64,
    /// The highest.
    pub high: f64,
}

/// Unit principal axes in the ball frame.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Axes {
    /// Of the lowest RG.
    pub low: [f64; 3],
    /// Of the middle RG.
    pub middle: [f64; 3],
    /// Of the highest RG.
    pub high: [f64; 3],
}

/// One part as it really is in the ball.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct PieceShare {
    /// What it is called.
    pub name: String,
    /// Mass.
    pub mass_kg: f64,
    /// Volume really filled.
    pub volume_cc: f64,
    /// Part of the tensor's trace about the ball's centre of gravity.
    pub rg_share: f64,
}

impl WeighedDoc {
    /// Puts a weighed ball into the trade's units, with the names of its file.
    pub fn new(file: &BallFile, weighed: &Weighed) -> Self {
        const CC_PER_M3: f64 = 1e6;
        let inches = |metres: f64| metres / M_PER_IN;
        let names = std::iter::once(file.cover_name()).chain(file.pieces.iter().map(|piece| piece.name.as_str()));
        let [low, middle, high] = weighed.rg_m.map(inches);
        let [low_axis, middle_axis, high_axis] = weighed.axes.map(array);
        let tensor = &weighed.inertia_kg_m2;
        Self {
            mass_kg: weighed.mass_kg,
            weight_lb: weighed.mass_kg / KG_PER_LB,
            cg_in: array(weighed.cg_m.map(inches)),
            inertia_kg_m2: [0, 1, 2].map(|row| [0, 1, 2].map(|column| tensor[(row, column)])),
            rg_in: RgIn { low, middle, high },
            axes: Axes { low: low_axis, middle: middle_axis, high: high_axis },
            differential_in: inches(weighed.differential_m()),
            intermediate_differential_in: inches(weighed.intermediate_differential_m()),
            top_weight_oz: weighed.top_weight_oz(),
            relative_error: weighed.relative_error,
            pieces: names
                .zip(&weighed.shares)
                .map(|(name, share)| PieceShare {
                    name: name.to_owned(),
                    mass_kg: share.mass_kg,
                    volume_cc: share.volume_m3 * CC_PER_M3,
                    rg_share: share.rg_share,
                })
                .collect(),
        }
    }
}

fn array(vector: Vector3<f64>) -> [f64; 3] {
    vector.into()
}
