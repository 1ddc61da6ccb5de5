//! Mass, centre and tensor of one body; bodies added, taken away, moved and
//! turned by the parallel-axis theorem.

use nalgebra::{Matrix3, Rotation3, Vector3};
use physics::ball::Ball;
use physics::recipe::{Piece, Recipe, Solid};
use physics::weigh::{Weighed, weigh};

/// What a rigid body weighs and how its mass is spread.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Body {
    /// Mass; negative for what is taken away.
    pub mass_kg: f64,
    /// Centre of gravity.
    pub cg_m: Vector3<f64>,
    /// Tensor about the centre of gravity.
    pub inertia_kg_m2: Matrix3<f64>,
}

impl From<&Weighed> for Body {
    fn from(w: &Weighed) -> Self {
        Self { mass_kg: w.mass_kg, cg_m: w.cg_m, inertia_kg_m2: w.inertia_kg_m2 }
    }
}

impl Body {
    /// A body at the origin with its principal axes along x, y and z.
    pub fn new(mass_kg: f64, moments_kg_m2: [f64; 3]) -> Self {
        let inertia_kg_m2 = Matrix3::from_diagonal(&moments_kg_m2.into());
        Self { mass_kg, cg_m: Vector3::zeros(), inertia_kg_m2 }
    }

    /// A uniform sphere: 2/5 m R².
    pub fn sphere(density_kg_m3: f64, radius_m: f64) -> Self {
        let mass = density_kg_m3 * 4.0 / 3.0 * core::f64::consts::PI * radius_m.powi(3);
        Self::new(mass, [0.4 * mass * radius_m * radius_m; 3])
    }

    /// The same body with its centre of gravity moved by a vector.
    pub fn moved(mut self, by_m: Vector3<f64>) -> Self {
        self.cg_m += by_m;
        self
    }

    /// The same body turned about the origin.
    pub fn turned(self, turn: &Rotation3<f64>) -> Self {
        let inertia_kg_m2 = turn.matrix() * self.inertia_kg_m2 * turn.matrix().transpose();
        Self { mass_kg: self.mass_kg, cg_m: turn * self.cg_m, inertia_kg_m2 }
    }

    /// The same shape of another density: all of it times a factor, which may
    /// be negative.
    pub fn times(self, factor: f64) -> Self {
        Self { mass_kg: self.mass_kg * factor, cg_m: self.cg_m, inertia_kg_m2: self.inertia_kg_m2 * factor }
    }

    /// Both bodies as one (parallel-axis theorem).
    pub fn with(self, other: Self) -> Self {
        let mass_kg = self.mass_kg + other.mass_kg;
        let cg_m = (self.cg_m * self.mass_kg + other.cg_m * other.mass_kg) / mass_kg;
        let about = |b: &Self| b.inertia_kg_m2 + parallel(b.mass_kg, &(b.cg_m - cg_m));
        Self { mass_kg, cg_m, inertia_kg_m2: about(&self) + about(&other) }
    }

    /// Radius of gyration about an axis through the centre of gravity.
    pub fn rg_m(&self, axis: &Vector3<f64>) -> f64 {
        (axis.dot(&(self.inertia_kg_m2 * axis)) / self.mass_kg).sqrt()
    }
}

/// What the parallel-axis theorem adds for a mass set off by a vector.
pub fn parallel(mass_kg: f64, off_m: &Vector3<f64>) -> Matrix3<f64> {
    (Matrix3::identity() * off_m.norm_squared() - off_m * off_m.transpose()) * mass_kg
}

/// Weighs a recipe that must be a valid ball, to whatever bound it says it reached.
#[track_caller]
pub fn bounded(recipe: &Recipe) -> Weighed {
    let weighed = weigh(&Ball::new(recipe).expect("a valid ball"));
    let numbers = [weighed.mass_kg, weighed.relative_error, weighed.cg_m.sum(), weighed.inertia_kg_m2.sum()];
    assert!(numbers.iter().all(|x| x.is_finite()), "not finite: {weighed:?}");
    weighed
}

/// Weighs a recipe that must be a valid ball, to a millionth at most.
#[track_caller]
pub fn weighed(recipe: &Recipe) -> Weighed {
    let weighed = bounded(recipe);
    assert!(weighed.relative_error <= 1e-6, "error bound {:e} of {recipe:?}", weighed.relative_error);
    weighed
}

/// One solid by itself at a density of 1,000 kg/m³, with cuts: the weight of a
/// ball that holds it less that of the ball's own sphere.
#[track_caller]
pub fn alone(solid: &Solid, cuts: &[Solid]) -> Body {
    const COVER_KG_M3: f64 = 1.0;
    let piece = Piece { density_kg_m3: 1000.0 + COVER_KG_M3, solid: solid.clone(), cuts: cuts.to_vec() };
    let recipe = Recipe { diameter_m: 0.3, cover_density_kg_m3: COVER_KG_M3, pieces: vec![piece], holes: vec![] };
    Body::from(&weighed(&recipe)).with(Body::sphere(COVER_KG_M3, 0.15).times(-1.0))
}
