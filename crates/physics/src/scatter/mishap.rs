//! Balls that are spoiled however much they weigh: a piece out of the ball,
//! into a neighbour, or out of what should hold it.
//!
//! What counts as spoiled is a model choice: a piece that stands clear of
//! another in the recipe must stand clear of it, and one that lies inside an
//! earlier one must lie inside it. Pieces that overlap in the recipe may
//! overlap more or less.

use super::numbers::Reason;
use crate::ball::Ball;
use crate::check::check;
use crate::recipe::{Piece, Recipe};
use crate::solid::Placed;
use crate::weigh::{TOLERANCE, filled};

/// Part of a piece's volume that is none.
const NOTHING: f64 = 1e-9;

/// How two pieces of the recipe stand to one another.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Relation {
    /// They share nothing.
    Apart,
    /// The later one lies inside the earlier one.
    Inside,
    /// Neither.
    Through,
}

/// Two pieces, the earlier first.
#[derive(Clone, Copy, Debug)]
pub(super) struct Pair {
    early: usize,
    late: usize,
    relation: Relation,
}

/// Every pair whose relation can go wrong.
pub(super) fn pairs(recipe: &Recipe) -> Vec<Pair> {
    let placed = placed(recipe);
    let mut pairs = Vec::new();
    for late in 1..recipe.pieces.len() {
        for early in 0..late {
            let relation = relation(recipe, &placed, early, late);
            if relation != Relation::Through {
                pairs.push(Pair { early, late, relation });
            }
        }
    }
    pairs
}

/// The first thing that spoils a ball.
pub(super) fn mishap(recipe: &Recipe, pairs: &[Pair]) -> Option<Reason> {
    if check(recipe).is_err() {
        return Some(Reason::SticksOut);
    }
    let placed = placed(recipe);
    let spoiled = pairs.iter().find(|Pair { early, late, relation: own }| {
        let lets_out = || placed[*early][0].surely_lets_out(&placed[*late][0]);
        (*own == Relation::Inside && lets_out()) || relation(recipe, &placed, *early, *late) != *own
    })?;
    Some(if spoiled.relation == Relation::Apart { Reason::Touches } else { Reason::BreaksOut })
}

/// Every piece, then its cuts, where they stand in the ball.
fn placed(recipe: &Recipe) -> Vec<Vec<Placed>> {
    let piece = |piece: &Piece| {
        let turn = crate::solid::turn(piece.solid.turn_rad);
        let cuts = piece.cuts.iter().map(|cut| Placed::new(cut).moved(&turn, &piece.solid.at_m));
        core::iter::once(Placed::new(&piece.solid)).chain(cuts).collect()
    };
    recipe.pieces.iter().map(piece).collect()
}

/// How two pieces of a recipe stand to one another.
pub(crate) fn relation_of(recipe: &Recipe, early: usize, late: usize) -> Relation {
    relation(recipe, &placed(recipe), early, late)
}

fn relation(recipe: &Recipe, placed: &[Vec<Placed>], early: usize, late: usize) -> Relation {
    let (before, after) = (&placed[early], &placed[late]);
    if before[0].surely_apart(&after[0]) {
        return Relation::Apart;
    }
    if before[0].surely_holds(&after[0]) && before[1..].iter().all(|cut| cut.surely_apart(&after[0])) {
        return Relation::Inside;
    }
    // The later piece poured first and displaced by the earlier: what is left
    // of it lies outside. All else is so light that the error bound of the
    // whole is one of the piece.
    let small = (2.0 * after[0].reach / recipe.diameter_m).min(1.0);
    let thin = small * small * small;
    let left = |over: &[usize]| {
        let piece = |n: usize, density_kg_m3: f64| Piece { density_kg_m3, ..recipe.pieces[n].clone() };
        let pieces = core::iter::once(piece(late, 1.0)).chain(over.iter().map(|n| piece(*n, thin))).collect();
        let pair = Recipe { cover_density_kg_m3: thin, pieces, holes: vec![], ..recipe.clone() };
        let sum = filled(&Ball::assembled(&pair), TOLERANCE);
        (sum.parts[1].volume, sum.mass_error_kg)
    };
    let ((own, own_error), (outside, error)) = (left(&[]), left(&[early]));
    let unsure = own_error + error + NOTHING * own;
    if own - outside <= unsure {
        Relation::Apart
    } else if outside <= unsure {
        Relation::Inside
    } else {
        Relation::Through
    }
}
