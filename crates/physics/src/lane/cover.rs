//! What the coverstock and its finish do to friction.
//!
//! No figure is published that gives friction by family or grit. The factors
//! here are model choices; their directions are not: a study of ball motion
//! ranks surface roughness and friction in oil first of all properties (United
//! States Bowling Congress, as reported), a rougher surface grips more in thin
//! oil and on dry boards, polish less (common practice, no source), and the
//! published limit of 0.32 holds for every ball.

use super::oil::{FrictionLaw, PUBLISHED_LIMIT};

/// Generic families of coverstock.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Family {
    /// Hard and smooth.
    Polyester,
    /// Softer, grips early in oil.
    Urethane,
    /// Urethane made porous, grips hardest on dry boards.
    Reactive,
}

/// How the surface was finished.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Finish {
    /// Grit of the last abrasive, 100 (coarse) to 10,000 (fine).
    pub grit: f64,
    /// Whether polish went on top.
    pub polished: bool,
}

/// Coverstock and finish, as far as they are known.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Cover {
    /// Its family.
    pub family: Option<Family>,
    /// Its finish.
    pub finish: Option<Finish>,
}

/// The grit at which finish changes nothing.
pub const NEUTRAL_GRIT: f64 = 2000.0;
/// What polish leaves of the roughness.
pub const POLISH: f64 = 0.4;
/// Roughness goes with 1/√grit.
const BY_GRIT: f64 = 0.5;
/// Friction in oil and on dry boards goes with roughness to these powers.
const OIL_BY_ROUGHNESS: f64 = 0.5;
const DRY_BY_ROUGHNESS: f64 = 0.15;

/// By how much a cover changes each number of a law.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Factors {
    /// Of friction under a thick film.
    pub oil: f64,
    /// Of friction on dry boards.
    pub dry: f64,
    /// Of the film at which friction is half-way.
    pub film: f64,
}

impl Family {
    /// By how much the family changes friction (model choice).
    #[must_use]
    pub fn factors(self) -> Factors {
        match self {
            Self::Polyester => Factors { oil: 0.85, dry: 0.65, film: 0.8 },
            Self::Urethane => Factors { oil: 1.25, dry: 0.9, film: 1.2 },
            Self::Reactive => Factors { oil: 1.1, dry: 1.15, film: 1.0 },
        }
    }
}

impl Finish {
    /// Roughness over that of a [`NEUTRAL_GRIT`] finish without polish: by the
    /// square root of the grits, less with polish (model choice).
    #[must_use]
    pub fn roughness(self) -> f64 {
        libm::pow(NEUTRAL_GRIT / self.grit, BY_GRIT) * if self.polished { POLISH } else { 1.0 }
    }

    /// By how much the finish changes friction: the half film goes with the
    /// roughness itself, as film over roughness is what counts; the rest are
    /// model choices.
    #[must_use]
    pub fn factors(self) -> Factors {
        let rough = self.roughness();
        Factors { oil: libm::pow(rough, OIL_BY_ROUGHNESS), dry: libm::pow(rough, DRY_BY_ROUGHNESS), film: rough }
    }
}

impl Cover {
    /// The law for a ball with this cover: that of a neutral ball times the
    /// factors of what is known, friction nowhere above the published limit
    /// and in oil nowhere above that on dry boards. A cover of which nothing
    /// is known changes nothing.
    #[must_use]
    pub fn on(&self, law: FrictionLaw) -> FrictionLaw {
        let known = [self.family.map(Family::factors), self.finish.map(Finish::factors)];
        known.into_iter().flatten().fold(law, |law, by| {
            let mu_dry = (law.mu_dry * by.dry).min(PUBLISHED_LIMIT);
            FrictionLaw { mu_oil: (law.mu_oil * by.oil).min(mu_dry), mu_dry, film_half_m: law.film_half_m * by.film }
        })
    }
}
