//! Mass, centre of gravity, tensor, RG, differentials and each piece's share.
//!
//! The ball is a sphere of cover; every piece poured, cut given back and hole
//! drilled moves the volume of one solid from one part to another. A solid
//! that lies wholly in one part does so in closed form. All others are summed
//! along lines parallel to the solid's own axis, exact along each line, by
//! Gauss rules across the plane between the places where the picture changes,
//! also where surfaces come so near between two lines that they may cross
//! unseen, refined until the bound is met.

mod dip;
mod job;
mod panel;
mod principal;
mod ray;
mod rule;
mod sum;

use nalgebra::{Matrix3, Vector3};

use crate::ball::Ball;
use crate::moments::Moments;
use crate::units::KG_PER_OZ;
pub(crate) use sum::Sum;
use sum::Summer;

/// Relative error of mass and of every principal moment that [`weigh`] refines to.
pub const TOLERANCE: f64 = 8e-7;
/// Loosest relative error that [`weigh_within`] may be asked for.
const LOOSEST: f64 = 1e-3;

/// Two principal moments this close, relative, are the same but for rounding.
const LEAST_GAP: f64 = 1e-12;

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
    /// Unit principal axes in the order of `rg_m`: the low axis points to +z,
    /// the high axis to +x (each as far as it can), low × high = middle. Where
    /// two RGs agree within the error, their axes are as near to those as may be.
    pub axes: [Vector3<f64>; 3],
    /// Bound on the relative error of the mass, of every principal moment and,
    /// relative to the largest entry, of every tensor entry.
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

    /// Bound on the error of a principal axis (0 low, 1 middle, 2 high), as an
    /// angle; none where an RG beside it is as large, so that the ball has no
    /// one such axis.
    ///
    /// The axis turns by at most arcsin(2‖E‖/gap) when the tensor is wrong by E
    /// (Davis and Kahan, SIAM J. Numer. Anal. 7, 1970, in the form of Yu, Wang and
    /// Samworth, Biometrika 102, 2015); ‖E‖ is at most 3 times its largest entry.
    pub fn axis_error_rad(&self, which: usize) -> Option<f64> {
        let [low, middle, high] = self.rg_m.map(|rg_m| self.mass_kg * rg_m * rg_m);
        let gap = match which {
            0 => middle - low,
            1 => (middle - low).min(high - middle),
            _ => high - middle,
        };
        let sine = 2.0 * 3.0 * self.relative_error * self.inertia_kg_m2.amax() / gap;
        ((0.0..1.0).contains(&sine) && gap > LEAST_GAP * middle).then(|| libm::asin(sine))
    }
}

/// Weighs a ball.
///
/// The relative error of mass and of every principal moment is at most
/// [`TOLERANCE`] (so of every RG at most that), and near rounding where every
/// part has a closed form; `relative_error` is the bound really reached. It is larger where
/// the most lines are reached before it is met: with 44 of a million random recipes, tangles
/// of crossing pieces and holes all of them, at worst 5·10⁻⁴. A ball of which the
/// holes leave nothing has zeros for all and a `relative_error` of 1.
pub fn weigh(ball: &Ball) -> Weighed {
    weigh_within(ball, TOLERANCE)
}

/// Weighs a ball to a relative error of `tolerance` (from [`TOLERANCE`] up to
/// 10⁻³; nearer to one of these where it is neither) instead of [`TOLERANCE`]:
/// faster where thousands of balls are weighed. `relative_error` is the bound
/// really reached, as with [`weigh`].
pub fn weigh_within(ball: &Ball, tolerance: f64) -> Weighed {
    filled(ball, tolerance).weighed(ball.radius_m, &ball.densities_kg_m3)
}

/// What every part of the ball really fills, to the tolerance of [`weigh_within`].
pub(crate) fn filled(ball: &Ball, tolerance: f64) -> Sum {
    let tolerance = tolerance.clamp(TOLERANCE, LOOSEST);
    let judge = |sum: &Sum| Whole::new(&ball.densities_kg_m3, sum).relative_error(sum);
    Summer::new(ball, tolerance).finish(tolerance, judge)
}

impl Sum {
    /// These fillings, the cover's first, with these densities, as one ball.
    pub(crate) fn weighed(&self, radius_m: f64, densities_kg_m3: &[f64]) -> Weighed {
        Whole::new(densities_kg_m3, self).weighed(radius_m, densities_kg_m3, self)
    }
}

/// Principal moments of a tensor in ascending order, with axes as in
/// [`Weighed::axes`]: free ones as near to +z and +x as may be where two
/// moments agree within [`TOLERANCE`].
pub(crate) fn principal_moments(inertia_kg_m2: &Matrix3<f64>) -> ([f64; 3], [Vector3<f64>; 3]) {
    principal::principal(inertia_kg_m2, TOLERANCE)
}

/// The ball as one body.
struct Whole {
    mass_kg: f64,
    cg_m: Vector3<f64>,
    inertia_kg_m2: Matrix3<f64>,
    moments: [f64; 3],
    axes: [Vector3<f64>; 3],
}

impl Whole {
    fn new(densities_kg_m3: &[f64], sum: &Sum) -> Self {
        let mut total = Moments::ZERO;
        for (part, density) in sum.parts.iter().zip(densities_kg_m3) {
            total += part.scaled(*density);
        }
        let mass_kg = total.volume;
        let cg_m = if mass_kg > 0.0 { total.first / mass_kg } else { Vector3::zeros() };
        let inertia_kg_m2 = about(&total, &cg_m);
        let same = (sum.second_error_kg_m2 / inertia_kg_m2.amax().max(f64::MIN_POSITIVE)).max(1e-12);
        let (moments, axes) = principal::principal(&inertia_kg_m2, same);
        Self { mass_kg, cg_m, inertia_kg_m2, moments, axes }
    }

    fn relative_error(&self, sum: &Sum) -> f64 {
        if self.mass_kg <= sum.mass_error_kg || self.moments[0] <= 0.0 {
            return 1.0;
        }
        // Each diagonal entry of the tensor is the sum of two second moments.
        let error = (sum.mass_error_kg / self.mass_kg).max(2.0 * sum.second_error_kg_m2 / self.moments[0]);
        error.min(1.0)
    }

    fn weighed(self, radius_m: f64, densities_kg_m3: &[f64], sum: &Sum) -> Weighed {
        let relative_error = self.relative_error(sum);
        let left = self.mass_kg > sum.mass_error_kg;
        let trace = self.inertia_kg_m2.trace();
        let shares = sum.parts.iter().zip(densities_kg_m3).map(|(part, density)| {
            // A hidden piece keeps the rounding of what was added and taken away.
            let volume_m3 = part.volume.max(0.0);
            let rg_share = if left { density * about(part, &self.cg_m).trace() / trace } else { 0.0 };
            Share { volume_m3, mass_kg: density * volume_m3, rg_share }
        });
        let shares = shares.collect();
        if !left {
            let (cg_m, inertia_kg_m2) = (Vector3::zeros(), Matrix3::zeros());
            let axes = [Vector3::z(), Vector3::y(), Vector3::x()];
            return Weighed {
                radius_m,
                mass_kg: 0.0,
                cg_m,
                inertia_kg_m2,
                rg_m: [0.0; 3],
                axes,
                relative_error,
                shares,
            };
        }
        let rg_m = self.moments.map(|m| (m.max(0.0) / self.mass_kg).sqrt());
        let Self { mass_kg, cg_m, inertia_kg_m2, axes, .. } = self;
        Weighed { radius_m, mass_kg, cg_m, inertia_kg_m2, rg_m, axes, relative_error, shares }
    }
}

/// Inertia tensor about `point` of a body with these moments.
pub(crate) fn about(m: &Moments, point: &Vector3<f64>) -> Matrix3<f64> {
    let cross = m.first * point.transpose();
    let second = m.second - cross - cross.transpose() + point * point.transpose() * m.volume;
    Matrix3::from_diagonal_element(second.trace()) - second
}

#[cfg(test)]
mod tests;
