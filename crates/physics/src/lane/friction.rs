//! Coulomb friction between ball and lane: by distance from the foul line in
//! zones, or by the thickness of the oil at each point.

use std::sync::Arc;

use super::COVERED_M;
use super::oil::Oiled;

/// How closely zones must join, in metres: rounding of a conversion from feet.
const JOIN_M: f64 = 1e-9;
/// Largest accepted coefficient of friction.
const MU_MAX: f64 = 2.0;

/// A stretch of lane with one coefficient of friction.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Zone {
    /// Where it begins, from the foul line.
    pub from_m: f64,
    /// Where it ends; above `from_m`.
    pub to_m: f64,
    /// Kinetic and static coefficient of friction, 0 to 2.
    pub mu: f64,
}

/// Friction of a whole lane. Copies of an oiled lane share its map.
#[derive(Clone, Debug, PartialEq)]
pub struct Friction(Surface);

#[derive(Clone, Debug, PartialEq)]
enum Surface {
    /// Zones that cover the lane without gap or overlap, in order.
    Zones(Vec<Zone>),
    Oiled(Arc<Oiled>),
}

/// An oiled lane is one stretch; its friction is not the zone's.
const WHOLE: [Zone; 1] = [Zone { from_m: 0.0, to_m: COVERED_M, mu: 0.0 }];

/// Why zones do not make a lane. `zone` counts from 0 in the order given.
#[derive(Clone, Copy, Debug, PartialEq, thiserror::Error)]
pub enum FrictionError {
    /// A zone's coefficient is out of range.
    #[error("zone {zone}: friction {found} is not between 0 and 2")]
    Mu {
        /// Which zone.
        zone: usize,
        /// Its coefficient.
        found: f64,
    },
    /// A zone has no length or its ends are not numbers.
    #[error("zone {zone}: it runs from {from_m} m to {to_m} m; its end must lie beyond its start")]
    Ends {
        /// Which zone.
        zone: usize,
        /// Its start.
        from_m: f64,
        /// Its end.
        to_m: f64,
    },
    /// A zone does not begin where the one before it (or the lane) does.
    #[error("zone {zone}: it begins at {found_m} m where {expected_m} m is needed to leave no gap or overlap")]
    Join {
        /// Which zone.
        zone: usize,
        /// Where it begins.
        found_m: f64,
        /// Where it should.
        expected_m: f64,
    },
    /// The zones stop short of 63 ft.
    #[error("the zones end at {found_m} m; they must reach 19.2024 m (63 ft)")]
    Short {
        /// Where the last zone ends, 0 if there is none.
        found_m: f64,
    },
}

impl Friction {
    /// Friction by distance. The zones may come in any order.
    ///
    /// # Errors
    /// Where a number is out of range, or the zones do not cover 0 to 63 ft
    /// without gap or overlap (to a nanometre).
    pub fn from_zones(zones: &[Zone]) -> Result<Self, FrictionError> {
        for (zone, z) in zones.iter().enumerate() {
            if !(0.0..=MU_MAX).contains(&z.mu) {
                return Err(FrictionError::Mu { zone, found: z.mu });
            }
            if !(z.from_m.is_finite() && z.to_m.is_finite() && z.to_m > z.from_m) {
                return Err(FrictionError::Ends { zone, from_m: z.from_m, to_m: z.to_m });
            }
        }
        let mut order: Vec<usize> = (0..zones.len()).collect();
        order.sort_by(|&a, &b| zones[a].from_m.total_cmp(&zones[b].from_m));
        let mut sorted = Vec::with_capacity(zones.len());
        let mut reached_m = 0.0;
        for zone in order {
            let z = zones[zone];
            if (z.from_m - reached_m).abs() > JOIN_M {
                return Err(FrictionError::Join { zone, found_m: z.from_m, expected_m: reached_m });
            }
            sorted.push(Zone { from_m: reached_m, ..z });
            reached_m = z.to_m;
        }
        if reached_m < COVERED_M - JOIN_M {
            return Err(FrictionError::Short { found_m: reached_m });
        }
        Ok(Self(Surface::Zones(sorted)))
    }

    /// The same friction everywhere.
    ///
    /// # Errors
    /// Where `mu` is not between 0 and 2.
    pub fn uniform(mu: f64) -> Result<Self, FrictionError> {
        Self::from_zones(&[Zone { from_m: 0.0, to_m: COVERED_M, mu }])
    }

    /// Friction by the oil at each point.
    #[must_use]
    pub fn oiled(lane: Oiled) -> Self {
        Self(Surface::Oiled(Arc::new(lane)))
    }

    /// The oil and its law; none where friction is given in zones.
    #[must_use]
    pub fn oil(&self) -> Option<&Oiled> {
        match &self.0 {
            Surface::Zones(_) => None,
            Surface::Oiled(lane) => Some(lane),
        }
    }

    /// Stretches from the foul line to the pit within which friction has no
    /// jump: the zones, or one under oil, whose `mu` then says nothing.
    pub(crate) fn stretches(&self) -> &[Zone] {
        match &self.0 {
            Surface::Zones(zones) => zones,
            Surface::Oiled(_) => &WHOLE,
        }
    }
}
