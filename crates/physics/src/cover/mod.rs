//! How much cover there is over the core, and what holes leave of it.
//!
//! At a point of the surface the cover is as thick as the way in along the
//! radius to the first piece ([`Poured`]). Holes do not make a cover thinner:
//! where one opens there is no surface to measure at, and beside it the cover is
//! as it was poured; what stands between a hole and the core, or between two
//! holes, is a wall of its own ([`HoleWall`], [`Web`]).
//!
//! The thinnest place of the whole ball needs no search over directions: no
//! point of a piece lies nearer the surface than R − |p|, and the radius through
//! p is that short, so
//!
//! > least thickness = R − max |p| over all points p of the pieces,
//!
//! and at that place the way along the radius is also the least distance from
//! the surface to any piece. "The pieces" is what is left of them: less their
//! cuts, less what lies on radii to a hole's opening. Which later piece
//! displaces which earlier one does not
//! matter, since neither is cover; a cut that the cover fills is cover.
//!
//! Where no cut and no opening takes the farthest point of the farthest piece away,
//! that is a closed form for each shape. Otherwise the points left are searched
//! by boxes, each left out only where it surely holds no better point, and the
//! answer carries what remains uncertain as its error.

mod poured;
mod reach;
mod search;
mod walls;

use nalgebra::Vector3;

pub use poured::{Poured, Under};

use crate::ball::{Ball, Part};
use crate::section::Section;
use crate::solid::evenly;
use crate::units::M_PER_IN;

/// What covers of common balls measure: ½ in to 1 in, more without an outer
/// core (common practice, no source).
pub const USUAL_M: [f64; 2] = [0.5 * M_PER_IN, 1.0 * M_PER_IN];
/// Directions over which the mean and the shares are taken.
pub const DIRECTIONS: usize = 4096;

/// The place of the ball with the least cover.
#[derive(Clone, Debug, PartialEq)]
pub struct Thinnest {
    /// Thickness there; 0 where a piece comes to the surface.
    pub thickness_m: f64,
    /// The least thickness anywhere is no more than this below `thickness_m`:
    /// rounding (under 1e-12 m) where it is a closed form.
    pub error_m: f64,
    /// Unit vector from the centre to the place; one of them where there are many.
    pub direction: Vector3<f64>,
    /// The piece under it.
    pub piece: usize,
}

/// A least distance and by how much the true one may be below it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Gap {
    /// The distance; 0 where the two meet.
    pub least_m: f64,
    /// Bound on what it is too large by.
    pub error_m: f64,
}

/// A hole beside the core.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct HoleWall {
    /// Depth down the hole's axis at which the drill meets the first piece;
    /// `None` where it stays in the cover.
    pub core_from_m: Option<f64>,
    /// From the hole's wall and bottom to the nearest piece, 0 where it opens
    /// into one; `None` in a ball without pieces. The hole is taken as long as
    /// the drill and other holes' air as no piece.
    pub to_core: Option<Gap>,
}

/// What stands between two holes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Web {
    /// The two holes, by their places in the recipe.
    pub holes: [usize; 2],
    /// Least distance between them inside the ball.
    pub gap: Gap,
    /// How far its middle is below the surface.
    pub depth_m: f64,
}

/// A ball's cover.
#[derive(Clone, Debug, PartialEq)]
pub struct Covered {
    /// Where the cover over the core is thinnest; `None` where no piece is left in the ball.
    pub thinnest: Option<Thinnest>,
    /// Mean over the surface that no hole takes, by [`DIRECTIONS`] directions;
    /// down to the centre it counts as the ball's radius.
    pub mean_m: f64,
    /// Share of that surface with less than the usual least, [`USUAL_M`]`[0]`.
    pub under_usual_share: f64,
    /// Share of that surface with less than the usual most, [`USUAL_M`]`[1]`:
    /// how much of the ball stands on a core close beneath.
    pub under_most_share: f64,
    /// Share within 0.01 in of the thinnest place: 1 where it is as thin all over.
    pub as_thin_share: f64,
    /// Every hole beside the core.
    pub holes: Vec<HoleWall>,
    /// Every two holes.
    pub webs: Vec<Web>,
}

/// A cover's thinnest place beside what is usual, from the worst to the best in
/// common practice: a thicker cover lasts longer, a thin one over a big outer
/// core tends to come away and crack with age (no source).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Beside {
    /// Under [`USUAL_M`]`[0]`.
    Thinner,
    /// Within [`USUAL_M`].
    Usual,
    /// Over [`USUAL_M`]`[1]`.
    Thicker,
    /// Cover all through: there is nothing to come away from.
    NoCore,
}

impl Covered {
    /// The thinnest place beside what is usual.
    pub fn beside_usual(&self) -> Beside {
        let rounding = 1e-12;
        match &self.thinnest {
            None => Beside::NoCore,
            Some(thinnest) if thinnest.thickness_m < USUAL_M[0] - rounding => Beside::Thinner,
            Some(thinnest) if thinnest.thickness_m <= USUAL_M[1] + rounding => Beside::Usual,
            Some(_) => Beside::Thicker,
        }
    }
}

/// How far above the thinnest counts as just as thin.
const AS_THIN_M: f64 = 0.01 * M_PER_IN;

/// Measures a ball's cover.
pub fn cover(ball: &Ball) -> Covered {
    let poured = Poured::new(ball);
    let thinnest = reach::reach(&poured).map(|reach| reach.thinnest(&poured));
    let least_m = thinnest.as_ref().map_or(ball.radius_m, |t| t.thickness_m - t.error_m);
    let all: Vec<f64> = evenly(DIRECTIONS).filter_map(|direction| poured.under(&direction).cover_m()).collect();
    let count = all.len().max(1) as f64;
    let share = |limit_m: f64| all.iter().filter(|thickness_m| **thickness_m < limit_m).count() as f64 / count;
    Covered {
        mean_m: all.iter().sum::<f64>() / count,
        under_usual_share: share(USUAL_M[0]),
        under_most_share: share(USUAL_M[1]),
        as_thin_share: share(least_m + AS_THIN_M),
        thinnest,
        holes: walls::hole_walls(ball),
        webs: walls::webs(ball),
    }
}

/// The narrowest stretch of cover that shows on a cut, straight out from the
/// middle of the cut.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OnSection {
    /// Its length. On a cut through the centre that is the cover's thickness;
    /// beside the centre the cut runs through it askew and shows more.
    pub thickness_m: f64,
    /// Its inner end, in the plane's coordinates.
    pub core_m: [f64; 2],
    /// Its outer end, on the surface.
    pub surface_m: [f64; 2],
}

/// That stretch, where no hole opens in `poured` (the ball with the pieces that
/// are `core` alone), begun from the points that the
/// cut shows of pieces that are `core` and followed round to the best place, to
/// 1e-7 of the radius in its length; `None` where the cut shows none, or one at
/// its very middle alone.
pub fn on_section(poured: &Poured, section: &Section, core: impl Fn(usize) -> bool) -> Option<OnSection> {
    let plane = &section.plane;
    let half_m = (poured.radius_m * poured.radius_m - plane.depth_m * plane.depth_m).max(0.0).sqrt();
    let pieces = section.regions.iter().filter(|region| match region.part {
        Part::Cover => false,
        Part::Piece(piece) => core(piece),
    });
    let way = |turn_rad: f64| [libm::cos(turn_rad), libm::sin(turn_rad)];
    let closed = |turn_rad: f64| {
        let [u, v] = way(turn_rad).map(|c| c * half_m);
        poured.to_hole_m(&plane.point(u, v).normalize()) > 0.0
    };
    let middle = plane.point(0.0, 0.0);
    let reach_m = |turn_rad: f64| {
        let [u, v] = way(turn_rad);
        closed(turn_rad).then(|| poured.core(&middle, &(plane.u * u + plane.v * v)).map(|(reach_m, _)| reach_m))?
    };
    let points = pieces.flat_map(|region| region.loops.iter().flatten());
    let mut begin: Vec<(f64, f64)> = points.map(|[u, v]| (libm::hypot(*u, *v), libm::atan2(*v, *u))).collect();
    begin.sort_by(|a, b| b.0.total_cmp(&a.0));
    let (_, mut turn_rad) = begin.into_iter().find(|(length_m, turn)| *length_m > 0.0 && closed(*turn))?;
    let mut best_m = reach_m(turn_rad).unwrap_or(0.0);
    let mut step = 0.02;
    while step > 1e-7 {
        let sides = [turn_rad - step, turn_rad + step].map(|turn| (turn, reach_m(turn).unwrap_or(0.0)));
        match sides.into_iter().find(|(_, reach_m)| *reach_m > best_m) {
            Some(better) => (turn_rad, best_m) = better,
            None => step *= 0.5,
        }
    }
    let at = |length_m: f64| way(turn_rad).map(|c| c * length_m);
    (best_m > 0.0).then(|| OnSection {
        thickness_m: (half_m - best_m).max(0.0),
        core_m: at(best_m),
        surface_m: at(half_m),
    })
}

#[cfg(test)]
mod tests;
