//! Which size of the chosen pieces gives a weight.

use super::{EXACT_KG, Trouble};
use crate::ball::{Ball, Part};
use crate::recipe::{Piece, Recipe, Shape, Solid};
use crate::weigh::{Weighed, weigh};

/// Smallest factor tried: a thousand-millionth of the volume.
const SMALLEST: f64 = 1.0 / 1024.0;
/// Largest power of 2 tried.
const MOST_DOUBLINGS: usize = 40;
/// Sizes looked at between the smallest and the largest.
const LOOKS: usize = 12;

/// The masses that go with sizes of the chosen pieces.
pub(super) struct Sizes<'a> {
    recipe: &'a Recipe,
    chosen: &'a [Part],
    /// Factor and mass (kg), ascending in the factor; 1 is among them.
    looks: Vec<[f64; 2]>,
}

impl<'a> Sizes<'a> {
    /// `recipe` itself must be one that can be made.
    pub(super) fn new(recipe: &'a Recipe, chosen: &'a [Part]) -> Self {
        let fits = |factor: f64| Ball::new(&larger(recipe, chosen, factor)).is_ok();
        let mut over = 1.0;
        for _ in 0..MOST_DOUBLINGS {
            if !fits(over) {
                break;
            }
            over *= 2.0;
        }
        // The reach of a solid is convex in the factor: what fits is one range.
        let largest = edge(1.0, over, fits);
        let smallest = if fits(SMALLEST) { SMALLEST } else { edge(1.0, SMALLEST, fits) };
        let mut factors: Vec<f64> =
            (0..=LOOKS).map(|n| smallest + (largest - smallest) * n as f64 / LOOKS as f64).collect();
        factors.push(1.0);
        factors.sort_unstable_by(f64::total_cmp);
        let mut sizes = Self { recipe, chosen, looks: Vec::new() };
        sizes.looks = factors.into_iter().filter_map(|factor| Some([factor, sizes.made(factor)?.1.mass_kg])).collect();
        sizes
    }

    fn made(&self, factor: f64) -> Option<(Recipe, Weighed)> {
        let recipe = larger(self.recipe, self.chosen, factor);
        let weighed = weigh(&Ball::new(&recipe).ok()?);
        Some((recipe, weighed))
    }

    /// The factor nearest the recipe's own size that gives the weight.
    pub(super) fn solve(&self, target_kg: f64) -> Result<(f64, (Recipe, Weighed)), Trouble> {
        let bracket = self
            .looks
            .windows(2)
            .filter(|pair| (pair[0][1] - target_kg) * (pair[1][1] - target_kg) <= 0.0)
            .min_by(|a, b| far(a).total_cmp(&far(b)));
        match bracket {
            Some(pair) => self.root(pair[0], pair[1], target_kg).ok_or(Trouble::NoSize),
            None => Err(self.trouble(target_kg)),
        }
    }

    /// Which end of the sizes comes nearest.
    fn trouble(&self, target_kg: f64) -> Trouble {
        let miss = |look: &[f64; 2]| (look[1] - target_kg).abs();
        let nearest = (0..self.looks.len()).min_by(|a, b| miss(&self.looks[*a]).total_cmp(&miss(&self.looks[*b])));
        match nearest {
            Some(0) => Trouble::VanishesFirst,
            Some(n) if n + 1 == self.looks.len() => Trouble::SticksOut,
            _ => Trouble::NoSize,
        }
    }

    /// False position with Illinois' weights (Dowell and Jarratt, BIT 11,
    /// 1971) on factor cubed, in which a lone piece's mass is linear; halves
    /// where that stalls.
    fn root(&self, low: [f64; 2], high: [f64; 2], target_kg: f64) -> Option<(f64, (Recipe, Weighed))> {
        let cube = |[factor, mass]: [f64; 2]| [factor * factor * factor, mass - target_kg];
        let (mut a, mut b) = (cube(low), cube(high));
        let mut best: Option<(f64, (Recipe, Weighed))> = None;
        let mut side = 0;
        for n in 0..80 {
            let along = if a[1] == b[1] || n % 8 == 7 { 0.5 } else { (a[1] / (a[1] - b[1])).clamp(0.0, 1.0) };
            let middle = a[0] + along * (b[0] - a[0]);
            let factor = libm::cbrt(middle).clamp(low[0], high[0]);
            let made = self.made(factor)?;
            let miss_kg = made.1.mass_kg - target_kg;
            if best.as_ref().is_none_or(|(_, (_, best))| miss_kg.abs() < (best.mass_kg - target_kg).abs()) {
                best = Some((factor, made));
            }
            if miss_kg.abs() <= 0.1 * EXACT_KG || (b[0] - a[0]).abs() <= 1e-16 * b[0].abs() {
                break;
            }
            let (end, other, here) = if miss_kg * a[1] > 0.0 { (&mut a, &mut b, 1) } else { (&mut b, &mut a, -1) };
            *end = [middle, miss_kg];
            if side == here {
                other[1] *= 0.5;
            }
            side = here;
        }
        best
    }
}

/// How far a stretch of sizes is from the recipe's own; 0 where it holds it.
fn far(pair: &[[f64; 2]]) -> f64 {
    (pair[0][0] - 1.0).max(1.0 - pair[1][0]).max(0.0)
}

/// The last factor that fits between one that does and one that may not.
fn edge(mut fits_at: f64, mut beyond: f64, fits: impl Fn(f64) -> bool) -> f64 {
    for _ in 0..52 {
        let middle = f64::midpoint(fits_at, beyond);
        if fits(middle) {
            fits_at = middle;
        } else {
            beyond = middle;
        }
    }
    fits_at
}

/// The recipe with the chosen pieces `factor` times as large, each about its
/// own origin, with its cuts.
fn larger(recipe: &Recipe, chosen: &[Part], factor: f64) -> Recipe {
    let mut recipe = recipe.clone();
    for (n, piece) in recipe.pieces.iter_mut().enumerate() {
        if chosen.contains(&Part::Piece(n)) {
            grown(piece, factor);
        }
    }
    recipe
}

/// Makes a piece `factor` times as large about its own origin, cuts and all.
pub(crate) fn grown(piece: &mut Piece, factor: f64) {
    grow(&mut piece.solid, factor);
    for cut in &mut piece.cuts {
        grow(cut, factor);
        cut.at_m *= factor;
    }
}

fn grow(solid: &mut Solid, factor: f64) {
    match &mut solid.shape {
        Shape::Sphere { diameter_m } => *diameter_m *= factor,
        Shape::Ellipsoid { size_m } | Shape::Box { size_m } => size_m.iter_mut().for_each(|size| *size *= factor),
        Shape::Cylinder { diameter_m, height_m } => {
            *diameter_m *= factor;
            *height_m *= factor;
        }
        Shape::Frustum { bottom_diameter_m, top_diameter_m, height_m } => {
            *bottom_diameter_m *= factor;
            *top_diameter_m *= factor;
            *height_m *= factor;
        }
        Shape::Ring { ring_diameter_m, tube_diameter_m } => {
            *ring_diameter_m *= factor;
            *tube_diameter_m *= factor;
        }
        Shape::Lathe { profile_m } => profile_m.iter_mut().flatten().for_each(|length| *length *= factor),
    }
}
