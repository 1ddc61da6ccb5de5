//! What a shot is thrown on: zones of friction, or oil.

use physics::lane::oil::{FrictionLaw, LawError, NEUTRAL_LAW, Oiled};
use physics::lane::{self, FrictionError};
use physics::units::M_PER_FT;
use schemars::JsonSchema;
use serde::Serialize;

use crate::ball::Cover;
use crate::build::accepted_words;
use crate::limits;
use crate::node::Node;
use crate::oil::{M_PER_UM, OilFile};
use crate::problem::Problem;
use crate::tree::{rounded, short};
use crate::{Phrase, phrase};

/// What the ball rolls on.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[serde(untagged)]
pub enum Lane {
    /// Friction by distance, whatever the ball's cover.
    Zoned(ZonedLane),
    /// Friction by oil and cover.
    Oiled(OiledLane),
}

/// A lane with friction by distance. The ball's family and finish do not
/// change it: the numbers are those of this ball on this lane.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct ZonedLane {
    /// Friction by distance; together they cover 0 to 63 ft without gap or overlap.
    #[schemars(length(min = 1))]
    pub zones: Vec<Zone>,
}

/// A lane with oil on it.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct OiledLane {
    /// The oil: a path beside the shot file, or the oil itself.
    pub oil: OilRef,
    /// How friction follows from the oil; what is left out is the usual.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub friction: Option<Friction>,
}

/// The oil of a lane: a path beside the shot file, or the oil itself.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[serde(untagged)]
pub enum OilRef {
    /// A path from the folder of the shot file to an oil file.
    Path(#[schemars(length(min = 1))] String),
    /// The oil itself.
    Object(Box<OilFile>),
}

/// Friction by film: μ = `mu_oil` + (`mu_dry` − `mu_oil`)/(1 + 0.414·film/`film_half_um`)²,
/// for a ball of which nothing is said. The family and finish of the ball's
/// cover change the three numbers by stated factors.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct Friction {
    /// Under a thick film, 0 to `mu_dry`; 0.04 where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = limits::MU_BALL.min, max = limits::MU_BALL.max))]
    pub mu_oil: Option<f64>,
    /// On dry boards, up to 0.32, the published limit of a ball; 0.20 where it
    /// is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = limits::MU_BALL.min, max = limits::MU_BALL.max))]
    pub mu_dry: Option<f64>,
    /// The film at which friction is half-way between, 0.01 to 20; 0.3 where
    /// it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = limits::FILM_HALF_UM.min, max = limits::FILM_HALF_UM.max))]
    pub film_half_um: Option<f64>,
}

/// A stretch of lane with one friction.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct Zone {
    /// Where it begins, from the foul line.
    #[schemars(range(min = 0))]
    pub from_ft: f64,
    /// Where it ends.
    #[schemars(extend("exclusiveMinimum" = 0))]
    pub to_ft: f64,
    /// Coulomb friction coefficient, 0 to 2.
    #[schemars(range(min = limits::MU.min, max = limits::MU.max))]
    pub mu: f64,
}

impl Lane {
    pub(crate) fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let lane = node.object(&["zones", "oil", "friction"])?;
        match (lane.find("zones"), lane.find("oil")) {
            (Some(_), Some(_)) => Err(node
                .problem_found(
                    phrase!("zones-and-oil", "zones and oil"),
                    phrase!("zones-or-oil", "either zones or oil"),
                )
                .saying(phrase!("friction-twice", "The lane's friction is given twice, in zones and by oil."))),
            (_, Some(oil)) => Ok(Self::Oiled(OiledLane {
                oil: OilRef::read(&oil)?,
                friction: lane.find("friction").map(|friction| Friction::read(&friction)).transpose()?,
            })),
            _ => {
                let lane = node.object(&["zones"])?;
                let list = lane.get("zones")?;
                let zones = list.items()?.map(|zone| Zone::read(&zone)).collect::<Result<Vec<_>, _>>()?;
                check_cover(&list, &zones)?;
                Ok(Self::Zoned(ZonedLane { zones }))
            }
        }
    }

    /// Friction on this lane of a ball with this cover, complaints from under `lane`.
    pub(crate) fn friction(&self, cover: &Cover) -> Result<lane::Friction, Problem> {
        match self {
            Self::Zoned(lane) => lane.friction(),
            Self::Oiled(lane) => lane.friction(cover),
        }
    }
}

impl ZonedLane {
    fn friction(&self) -> Result<lane::Friction, Problem> {
        let zones: Vec<lane::Zone> = self
            .zones
            .iter()
            .map(|zone| lane::Zone { from_m: zone.from_ft * M_PER_FT, to_m: zone.to_ft * M_PER_FT, mu: zone.mu })
            .collect();
        lane::Friction::from_zones(&zones).map_err(|error| {
            let feet = |metres: f64| Phrase::from(short(rounded(metres / M_PER_FT)));
            let (place, found) = match error {
                FrictionError::Mu { zone, found } => (format!("zones[{zone}].mu"), short(found).into()),
                FrictionError::Ends { zone, to_m, .. } => (format!("zones[{zone}].to_ft"), feet(to_m)),
                FrictionError::Join { zone, found_m, .. } => (format!("zones[{zone}].from_ft"), feet(found_m)),
                FrictionError::Short { found_m } => {
                    let found = phrase!("zones-to", "zones that end at {end} ft", end = feet(found_m));
                    ("zones".to_owned(), found)
                }
            };
            // Files are checked for this as they are read.
            let accepted = phrase!("good-zones", "zones that cover 0 to 63 ft without gap or overlap, mu 0 to 2");
            Problem::new(place, found, accepted)
        })
    }
}

impl OiledLane {
    fn friction(&self, cover: &Cover) -> Result<lane::Friction, Problem> {
        let law = self.friction.unwrap_or_default().law(cover).map_err(|problem| problem.within("friction"))?;
        let film = match &self.oil {
            OilRef::Object(file) => file.film().map_err(|problem| problem.within("oil"))?,
            OilRef::Path(path) => {
                return Err(Problem::new("oil", format!("{path:?}").into(), oil_itself()));
            }
        };
        Ok(lane::Friction::oiled(Oiled { film, law }))
    }
}

pub(crate) fn oil_itself() -> Phrase {
    phrase!("oil-itself", "the oil itself: no file is looked for here")
}

impl OilRef {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let accepted = phrase!("path-or-oil", "a path beside the shot file, or an oil object");
        if node.is_text() {
            let path = node.text()?;
            return if path.is_empty() { Err(node.problem(accepted)) } else { Ok(Self::Path(path)) };
        }
        if !node.is_object() {
            return Err(node.problem(accepted));
        }
        Ok(Self::Object(Box::new(OilFile::read_node(node)?)))
    }
}

impl Friction {
    pub(crate) fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let friction = node.object(&["mu_oil", "mu_dry", "film_half_um"])?;
        Ok(Self {
            mu_oil: friction.find_number("mu_oil", &limits::MU_BALL)?,
            mu_dry: friction.find_number("mu_dry", &limits::MU_BALL)?,
            film_half_um: friction.find_number("film_half_um", &limits::FILM_HALF_UM)?,
        })
    }

    /// The law for a ball with this cover.
    ///
    /// # Errors
    /// Where `mu_oil` is above `mu_dry`.
    pub fn law(&self, cover: &Cover) -> Result<FrictionLaw, Problem> {
        let law = FrictionLaw {
            mu_oil: self.mu_oil.unwrap_or(NEUTRAL_LAW.mu_oil),
            mu_dry: self.mu_dry.unwrap_or(NEUTRAL_LAW.mu_dry),
            film_half_m: self.film_half_um.map_or(NEUTRAL_LAW.film_half_m, |um| um * M_PER_UM),
        };
        law.check().map_err(|LawError { quantity, found, accepted }| match quantity {
            "film_half_m" => {
                Problem::new("film_half_um", short(rounded(found / M_PER_UM)).into(), limits::FILM_HALF_UM.words())
            }
            "mu_oil" => {
                let accepted = phrase!("up-to-mu-dry", "0 to mu_dry, which is {most}", most = short(law.mu_dry));
                Problem::new(quantity, short(found).into(), accepted)
            }
            _ => Problem::new(quantity, short(found).into(), accepted_words(accepted)),
        })?;
        Ok(cover.surface().on(law))
    }
}

impl Zone {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let zone = node.object(&["from_ft", "to_ft", "mu"])?;
        let from_ft = zone.get_number("from_ft", &limits::ZERO_OR_MORE)?;
        let to_ft = zone.get_number("to_ft", &limits::ZERO_OR_MORE)?;
        if to_ft <= from_ft {
            return Err(zone.get("to_ft")?.problem(phrase!(
                "above-from-ft",
                "a number above from_ft, which is {from}",
                from = from_ft
            )));
        }
        Ok(Self { from_ft, to_ft, mu: zone.get_number("mu", &limits::MU)? })
    }
}

/// Zones may stand in any order; along the lane each begins where the one
/// before it ends.
fn check_cover(list: &Node<'_>, zones: &[Zone]) -> Result<(), Problem> {
    let mut order: Vec<usize> = (0..zones.len()).collect();
    order.sort_by(|a, b| zones[*a].from_ft.total_cmp(&zones[*b].from_ft));
    let fault = |index: usize, key, accepted: Phrase, message: Phrase| {
        let zone = list.items()?.nth(index);
        Err(match zone {
            Some(zone) => zone.key(key)?.problem(accepted).saying(message),
            None => list.problem(accepted).saying(message),
        })
    };
    let mut end_ft = 0.0;
    for &index in &order {
        let from_ft = zones[index].from_ft;
        if from_ft != end_ft {
            let message = if from_ft > end_ft {
                phrase!("zones-gap", "The zones leave a gap between {a} ft and {b} ft.", a = end_ft, b = from_ft)
            } else {
                phrase!("zones-overlap", "The zones overlap between {a} ft and {b} ft.", a = end_ft, b = from_ft)
            };
            let accepted = phrase!("zone-before-ends", "{at}, where the zone before it ends", at = end_ft);
            return fault(index, "from_ft", accepted, message);
        }
        end_ft = zones[index].to_ft;
    }
    let whole_ft = limits::COVERED_FT;
    match order.last() {
        Some(_) if end_ft >= whole_ft => Ok(()),
        Some(&last) => fault(
            last,
            "to_ft",
            phrase!("last-zone-ends", "{least} or more for the zone furthest down the lane", least = whole_ft),
            phrase!(
                "zones-end",
                "The zones end at {end} ft; they must cover 0 to {least} ft.",
                end = end_ft,
                least = whole_ft
            ),
        ),
        None => Err(list.problem(phrase!("one-zone", "at least one zone"))),
    }
}
