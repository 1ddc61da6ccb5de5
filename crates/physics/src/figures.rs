//! The five numbers that a maker designs to.

use crate::weigh::Weighed;

/// How many there are.
pub const FIGURES: usize = 5;

/// Weight, low RG, differentials and top weight of a ball.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Figures {
    /// Mass.
    pub mass_kg: f64,
    /// Lowest RG.
    pub low_rg_m: f64,
    /// High minus low RG.
    pub differential_m: f64,
    /// High minus middle RG.
    pub intermediate_differential_m: f64,
    /// Top weight on a scale arm of the ball's radius, ounces.
    pub top_weight_oz: f64,
}

impl Figures {
    /// In the order of the fields.
    pub fn array(&self) -> [f64; FIGURES] {
        let Self { mass_kg, low_rg_m, differential_m, intermediate_differential_m, top_weight_oz } = *self;
        [mass_kg, low_rg_m, differential_m, intermediate_differential_m, top_weight_oz]
    }

    /// From the order of the fields.
    pub fn from_array(array: [f64; FIGURES]) -> Self {
        let [mass_kg, low_rg_m, differential_m, intermediate_differential_m, top_weight_oz] = array;
        Self { mass_kg, low_rg_m, differential_m, intermediate_differential_m, top_weight_oz }
    }

    /// What each may be wrong by, from the bound that weighing gives.
    pub fn error(weighed: &Weighed) -> Self {
        let relative = weighed.relative_error;
        let [low, middle, high] = weighed.rg_m;
        Self {
            mass_kg: relative * weighed.mass_kg,
            low_rg_m: relative * low,
            differential_m: relative * (low + high),
            intermediate_differential_m: relative * (middle + high),
            // No point of the ball is farther than R out: R times the error of the mass.
            top_weight_oz: relative * weighed.mass_kg / crate::units::KG_PER_OZ,
        }
    }
}

impl From<&Weighed> for Figures {
    fn from(weighed: &Weighed) -> Self {
        Self {
            mass_kg: weighed.mass_kg,
            low_rg_m: weighed.rg_m[0],
            differential_m: weighed.differential_m(),
            intermediate_differential_m: weighed.intermediate_differential_m(),
            top_weight_oz: weighed.top_weight_oz(),
        }
    }
}
