//! What stands in the way of a target that no start has met.

use super::{Answer, NEAR, Seek, problem};
use crate::ball::Ball;
use crate::check::reach_m;
use crate::figures::{FIGURES, Figures};
use crate::units::M_PER_IN;
use crate::weigh::weigh;

/// How near to an end of its range, in parts of it, a control is at the end.
const AT_END: f64 = 2e-3;
/// How near to the room it has a piece fills it.
const FILLS_M: f64 = 0.005 * M_PER_IN;

/// What stands in the way.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Block {
    /// A free control, by its place in the target, at its lower bound.
    LowerBound(usize),
    /// A free control at its upper bound.
    UpperBound(usize),
    /// A piece that would come too near the surface, or out of the ball.
    Room(usize),
    /// A published limit on the weight.
    Weight,
    /// A published limit on the RG.
    Rg,
    /// The published limit on the differential.
    Differential,
    /// The published limit on densities.
    Density,
    /// None of these: the wanted numbers contradict one another for these
    /// controls, as far as the starts tell.
    Contradiction,
}

/// Bounds that the misses push against, pieces without room, limits at work.
pub(super) fn blocks(seek: &Seek, nearest: &Answer) -> Vec<Block> {
    let target = &seek.target;
    let mut blocks = Vec::new();
    for (n, free) in target.free.iter().enumerate() {
        let range = free.to - free.from;
        let part = (nearest.values[n] - free.from) / range;
        let (block, outward) = if part <= AT_END {
            (Block::LowerBound(n), -1.0)
        } else if part >= 1.0 - AT_END {
            (Block::UpperBound(n), 1.0)
        } else {
            continue;
        };
        // Does it come nearer just beyond the bound?
        let mut beyond = nearest.values.clone();
        let end = if outward > 0.0 { free.to } else { free.from };
        beyond[n] = end + 0.01 * outward * range;
        let mut at_end = nearest.values.clone();
        at_end[n] = end;
        let nearer = misses(seek, &beyond).zip(misses(seek, &at_end)).is_none_or(|(beyond, here)| beyond < here);
        if nearer {
            blocks.push(block);
        }
    }
    let room_m = 0.5 * nearest.recipe.diameter_m - target.cover_at_least_m.unwrap_or(0.0).max(0.0);
    let full = |n: &usize| reach_m(&nearest.recipe.pieces[*n].solid) >= room_m - FILLS_M;
    blocks.extend((0..nearest.recipe.pieces.len()).filter(full).map(Block::Room));
    if target.within_limits {
        let past = problem::limits(&nearest.weighed, &nearest.recipe);
        let kinds = [Block::Weight, Block::Rg, Block::Rg, Block::Differential, Block::Density];
        // A limit at work is passed by a hair.
        blocks.extend(kinds.into_iter().zip(past).filter(|(_, past)| *past > 0.0).map(|(block, _)| block));
    }
    blocks.dedup();
    if blocks.is_empty() {
        blocks.push(Block::Contradiction);
    }
    blocks
}

/// Sum of squares of the misses; `None` where there is no such ball.
fn misses(seek: &Seek, values: &[f64]) -> Option<f64> {
    let figures = Figures::from(&weigh(&Ball::new(&seek.with(values)).ok()?)).array();
    let miss = |n: usize| Some((figures[n] - seek.target.want[n]?) / NEAR[n]);
    Some((0..FIGURES).filter_map(miss).map(|miss| miss * miss).sum())
}
