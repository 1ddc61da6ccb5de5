//! Friction by film thickness: from dry contact to a full film, smoothly.
//!
//! μ = μ_oil + (μ_dry − μ_oil)/(1 + λ)², λ = (√2 − 1)·film/half film.
//!
//! The form is that of mixed lubrication: of the load a share that falls with
//! the film's thickness over the surfaces' roughness, λ, is borne by dry
//! contact, the rest by the film (A. V. Olver, H. A. Spikes, Prediction of
//! traction in elastohydrodynamic lubrication, Proc. Inst. Mech. Eng. J 212,
//! 321, 1998; from memory). There λ = 1 is a film as thick as the surfaces are
//! rough; here the film at which friction lies half-way between its ends says
//! the same. The ends are the values usually quoted for a lane, 0.04 and 0.20
//! (C. Frohlich, Am. J. Phys. 72, 1170, 2004; from memory). The half film, and
//! that friction does not depend on the speed of slip (Coulomb friction fits
//! balls better than viscous, University of California, Davis), are model
//! choices.

/// Limit on the coefficient of friction of a ball, 0.32 (United States
/// Bowling Congress, Equipment Specifications and Certifications).
pub const PUBLISHED_LIMIT: f64 = 0.32;
/// Friction without oil and under thick oil, and the film half-way, of a ball
/// of which nothing is said.
pub const NEUTRAL_LAW: FrictionLaw = FrictionLaw { mu_oil: 0.04, mu_dry: 0.20, film_half_m: 0.3e-6 };
/// Accepted half films, in metres.
const FILM_HALF_M: core::ops::RangeInclusive<f64> = 0.01e-6..=20e-6;

/// Friction by film thickness.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FrictionLaw {
    /// Under a film without end, 0 to `mu_dry`.
    pub mu_oil: f64,
    /// Without oil, up to [`PUBLISHED_LIMIT`].
    pub mu_dry: f64,
    /// The film at which friction is half-way between, 0.01 to 20 µm.
    pub film_half_m: f64,
}

/// Why numbers do not make a law.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
#[error("{quantity} is {found}; accepted: {accepted}")]
pub struct LawError {
    /// Which number.
    pub quantity: &'static str,
    /// Its value.
    pub found: f64,
    /// What is accepted.
    pub accepted: &'static str,
}

impl FrictionLaw {
    /// Checks that this is a law.
    ///
    /// # Errors
    /// The first number that is out of its range.
    pub fn check(&self) -> Result<(), LawError> {
        let refuse = |quantity, found, accepted| Err(LawError { quantity, found, accepted });
        if !(0.0..=PUBLISHED_LIMIT).contains(&self.mu_dry) {
            return refuse("mu_dry", self.mu_dry, "0 to 0.32, the published limit of a ball");
        }
        if !(0.0..=self.mu_dry).contains(&self.mu_oil) {
            return refuse("mu_oil", self.mu_oil, "0 to mu_dry: oil does not make a lane rougher");
        }
        if !FILM_HALF_M.contains(&self.film_half_m) {
            return refuse("film_half_m", self.film_half_m, "1e-8 to 2e-5 (0.01 to 20 µm)");
        }
        Ok(())
    }

    /// Coefficient of friction on a film: `mu_dry` exactly where there is
    /// none, falling steadily towards `mu_oil`.
    #[inline]
    #[must_use]
    pub fn mu(&self, film_m: f64) -> f64 {
        const HALF_LAMBDA: f64 = core::f64::consts::SQRT_2 - 1.0;
        let root = 1.0 + HALF_LAMBDA * film_m / self.film_half_m;
        let dry = 1.0 / (root * root);
        self.mu_dry * dry + self.mu_oil * (1.0 - dry)
    }
}
