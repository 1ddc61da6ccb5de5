//! How a ball is poured: in which order, in how many moulds, and what stands
//! in the way.
//!
//! A later piece of the recipe displaces an earlier one, so it must be there
//! when the earlier one is poured round it: pieces are cast from the last to
//! the first, and the cover comes last. The rules below are model choices.

use nalgebra::Vector3;

use crate::ball::{Ball, Line, Part};
use crate::check::RecipeError;
use crate::recipe::{Recipe, Shape, Solid};
use crate::scatter::{Relation, relation_of};
use crate::solid::{Hits, Placed};
use crate::weigh::weigh;

/// Part of a pour that is lost in the gate and on the mould, where nothing
/// else is said (model choice).
pub const USUAL_WASTE: f64 = 0.05;
/// Lines across the ball on which the flow is looked at; what is narrower than
/// the ball's diameter over this may be missed.
pub const LINES_ACROSS: usize = 128;
/// Pockets smaller than this are not told from none.
pub const LEAST_POCKET_M3: f64 = 1e-7;
/// The cost index: what each thing counts (model choice). A pour is the unit.
pub const COST: Cost = Cost { pour: 1.0, mould: 0.5, setting: 0.25, cut: 0.1, kg: 0.1 };

/// What counts for how much in the cost index.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cost {
    /// Every pour: mixing, filling, curing.
    pub pour: f64,
    /// Every different mould.
    pub mould: f64,
    /// Every piece set into a mould before another is poured round it.
    pub setting: f64,
    /// Every cut: a core in the mould.
    pub cut: f64,
    /// Every kilogram poured, waste included.
    pub kg: f64,
}

/// One pour.
#[derive(Clone, Debug, PartialEq)]
pub struct Pour {
    /// What is poured.
    pub part: Part,
    /// Pieces set into the mould before, by their places in the recipe.
    pub around: Vec<usize>,
    /// Those of them that nothing holds: they lie inside, off the pin's axis,
    /// and touch no piece that is held.
    pub floating: Vec<usize>,
    /// Volume that the part fills in the ball.
    pub volume_m3: f64,
    /// What must be mixed, waste included.
    pub mixed_m3: f64,
    /// Mass of that.
    pub mixed_kg: f64,
    /// Parts of it that the pour cannot reach: volumes of closed pockets,
    /// about, largest first.
    pub pockets_m3: Vec<f64>,
    /// Width of every cut of the piece, the channels of what is poured round it.
    pub channels_m: Vec<f64>,
    /// Which mould, by number; pieces of one shape share one.
    pub mould: usize,
}

/// How a ball is poured.
#[derive(Clone, Debug, PartialEq)]
pub struct Pouring {
    /// Every pour that is needed, in order.
    pub pours: Vec<Pour>,
    /// Pieces that fill nothing of the ball.
    pub hidden: Vec<usize>,
    /// Different moulds.
    pub moulds: usize,
    /// Pieces set into a mould, all pours together.
    pub settings: usize,
    /// Cuts.
    pub cuts: usize,
    /// Mass mixed, waste included.
    pub mixed_kg: f64,
    /// [`COST`] of all of it.
    pub cost_index: f64,
}

/// How a ball is poured, with `waste` (0 to below 1) as the part of each pour
/// that is lost.
///
/// # Errors
/// [`RecipeError`] where the recipe cannot be made.
pub fn pouring(recipe: &Recipe, waste: f64) -> Result<Pouring, RecipeError> {
    // A poured ball is not drilled yet.
    let recipe = Recipe { holes: vec![], ..recipe.clone() };
    let ball = Ball::new(&recipe)?;
    let shares = weigh(&ball).shares;
    let nothing = |n: usize| shares[n].volume_m3 <= 1e-9 * shares.iter().map(|share| share.volume_m3).sum::<f64>();
    let pieces: Vec<usize> = (0..recipe.pieces.len()).rev().collect();
    let hidden: Vec<usize> = pieces.iter().copied().filter(|n| nothing(n + 1)).collect();
    let poured: Vec<usize> = pieces.into_iter().filter(|n| !hidden.contains(n)).collect();
    let mut pockets = pockets(&ball);
    let mut moulds: Vec<&Solid> = Vec::new();
    let mut pours = Vec::new();
    for part in poured.iter().map(|n| Part::Piece(*n)).chain([Part::Cover]) {
        let (number, density_kg_m3) = match part {
            Part::Cover => (0, recipe.cover_density_kg_m3),
            Part::Piece(n) => (n + 1, recipe.pieces[n].density_kg_m3),
        };
        let (around, floating) = around(&recipe, part, &poured);
        let mould = match part {
            Part::Cover => moulds.len(),
            Part::Piece(n) => {
                let solid = &recipe.pieces[n].solid;
                let alone = recipe.pieces[n].cuts.is_empty() && around.is_empty();
                let same = |other: &&Solid| alone && other.shape == solid.shape && other.squash == solid.squash;
                moulds.iter().position(same).unwrap_or_else(|| {
                    moulds.push(solid);
                    moulds.len() - 1
                })
            }
        };
        let channels_m = match part {
            Part::Cover => vec![],
            Part::Piece(n) => recipe.pieces[n].cuts.iter().map(narrowest_m).collect(),
        };
        let volume_m3 = shares[number].volume_m3;
        let mixed_m3 = volume_m3 / (1.0 - waste);
        let pockets_m3 = core::mem::take(&mut pockets[number]);
        let mixed_kg = mixed_m3 * density_kg_m3;
        pours.push(Pour { part, around, floating, volume_m3, mixed_m3, mixed_kg, pockets_m3, channels_m, mould });
    }
    let (moulds, settings) = (moulds.len() + 1, pours.iter().map(|pour| pour.around.len()).sum());
    let cuts = poured.iter().map(|n| recipe.pieces[*n].cuts.len()).sum();
    let mixed_kg = pours.iter().map(|pour| pour.mixed_kg).sum();
    let cost_index = COST.pour * pours.len() as f64
        + COST.mould * moulds as f64
        + COST.setting * settings as f64
        + COST.cut * cuts as f64
        + COST.kg * mixed_kg;
    Ok(Pouring { pours, hidden, moulds, settings, cuts, mixed_kg, cost_index })
}

/// Pieces cast before that the pour touches, and those of them that nothing holds.
fn around(recipe: &Recipe, part: Part, poured: &[usize]) -> (Vec<usize>, Vec<usize>) {
    let first = match part {
        Part::Cover => 0,
        Part::Piece(n) => n + 1,
    };
    // Only what is not already inside another cast piece is set by itself.
    let cast: Vec<usize> = poured.iter().copied().filter(|n| *n >= first).collect();
    let relation = |late: usize| match part {
        Part::Cover => Relation::Inside,
        Part::Piece(n) => relation_of(recipe, n, late),
    };
    let touched: Vec<(usize, Relation)> =
        cast.iter().map(|n| (*n, relation(*n))).filter(|(_, relation)| *relation != Relation::Apart).collect();
    let inside_another =
        |n: usize| touched.iter().any(|(other, _)| *other < n && relation_of(recipe, *other, n) == Relation::Inside);
    let set: Vec<(usize, Relation)> = touched.iter().copied().filter(|(n, _)| !inside_another(*n)).collect();
    // The mould's wall holds what reaches through it, the pin what stands on its axis.
    let mut held: Vec<bool> = set
        .iter()
        .map(|(n, relation)| *relation == Relation::Through || on_pin_axis(&recipe.pieces[*n].solid))
        .collect();
    // What overlaps something held is held.
    for _ in 0..set.len() {
        for k in 0..set.len() {
            let overlaps = |m: usize| {
                let (early, late) = (set[k].0.min(set[m].0), set[k].0.max(set[m].0));
                early != late && relation_of(recipe, early, late) != Relation::Apart
            };
            held[k] = held[k] || (0..set.len()).any(|m| held[m] && overlaps(m));
        }
    }
    let floating = set.iter().zip(&held).filter(|(_, held)| !**held).map(|((n, _), _)| *n).collect();
    (set.iter().map(|(n, _)| *n).collect(), floating)
}

fn on_pin_axis(solid: &Solid) -> bool {
    let mut hits = Hits::new();
    // A line beside the very axis, on which a profile's corners may lie.
    Placed::new(solid).cross(&Vector3::new(1e-6, 7e-7, 0.0), &Vector3::z(), &mut hits);
    !hits.is_empty()
}

/// Smallest size of a cut's shape.
fn narrowest_m(cut: &Solid) -> f64 {
    let [x, y] = cut.squash;
    let across = x.min(y);
    match &cut.shape {
        Shape::Sphere { diameter_m } => diameter_m * across.min(1.0),
        Shape::Ellipsoid { size_m } | Shape::Box { size_m } => (size_m[0] * x).min(size_m[1] * y).min(size_m[2]),
        Shape::Cylinder { diameter_m, height_m } => (diameter_m * across).min(*height_m),
        Shape::Frustum { bottom_diameter_m, top_diameter_m, height_m } => {
            (bottom_diameter_m.max(*top_diameter_m) * across).min(*height_m)
        }
        Shape::Ring { tube_diameter_m, .. } => tube_diameter_m * across.min(1.0),
        Shape::Lathe { profile_m } => {
            let wide = profile_m.iter().fold(0.0, |most: f64, [r, _]| most.max(2.0 * r));
            let (low, high) = profile_m
                .iter()
                .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), [_, z]| (low.min(*z), high.max(*z)));
            (wide * across).min(high - low)
        }
    }
}

/// Stretch of a line across the ball in one part.
struct Stretch {
    from: f64,
    to: f64,
    part: usize,
}

/// Volumes of every part's pieces that do not hang together with the largest
/// of them, by part, the cover first.
///
/// Lines along z through the ball, a run of each in the same part as one of a
/// neighbouring line's that it overlaps hanging together with it.
fn pockets(ball: &Ball) -> Vec<Vec<f64>> {
    let radius_m = ball.radius_m();
    let step_m = 2.0 * radius_m / LINES_ACROSS as f64;
    let mut stretches: Vec<Stretch> = Vec::new();
    let mut lines: Vec<core::ops::Range<usize>> = Vec::new();
    let mut parent: Vec<usize> = Vec::new();
    for row in 0..LINES_ACROSS {
        for column in 0..LINES_ACROSS {
            let at = |n: usize| (n as f64 + 0.5) * step_m - radius_m;
            let first = stretches.len();
            let origin_m = Vector3::new(at(column), at(row), 0.0);
            for run in ball.runs(&Line { origin_m, direction: Vector3::z() }) {
                let part = match run.part {
                    Part::Cover => 0,
                    Part::Piece(n) => n + 1,
                };
                parent.push(stretches.len());
                stretches.push(Stretch { from: run.from_m, to: run.to_m, part });
            }
            let here = first..stretches.len();
            let mut neighbours = Vec::new();
            if column > 0 {
                neighbours.push(lines.len() - 1);
            }
            if row > 0 {
                let below = lines.len() - LINES_ACROSS;
                neighbours.extend(
                    below.saturating_sub(usize::from(column > 0))..=below + usize::from(column + 1 < LINES_ACROSS),
                );
            }
            for line in neighbours {
                for a in here.clone() {
                    for b in lines[line].clone() {
                        let (one, other) = (&stretches[a], &stretches[b]);
                        if one.part == other.part && one.from < other.to && other.from < one.to {
                            let (a, b) = (root(&mut parent, a), root(&mut parent, b));
                            parent[a.max(b)] = a.min(b);
                        }
                    }
                }
            }
            lines.push(here);
        }
    }
    let mut volumes = vec![0.0; stretches.len()];
    for (n, stretch) in stretches.iter().enumerate() {
        volumes[root(&mut parent, n)] += (stretch.to - stretch.from) * step_m * step_m;
    }
    let mut by_part: Vec<Vec<f64>> = vec![Vec::new(); ball.pieces() + 1];
    for (stretch, volume_m3) in stretches.iter().zip(volumes) {
        if volume_m3 >= LEAST_POCKET_M3 {
            by_part[stretch.part].push(volume_m3);
        }
    }
    for volumes in &mut by_part {
        volumes.sort_by(|a, b| b.total_cmp(a));
        volumes.drain(..volumes.len().min(1));
    }
    by_part
}

fn root(parent: &mut [usize], mut n: usize) -> usize {
    while parent[n] != n {
        parent[n] = parent[parent[n]];
        n = parent[n];
    }
    n
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::recipe::Piece;

    const IN: f64 = crate::units::M_PER_IN;

    fn piece(density_kg_m3: f64, shape: Shape, at_in: [f64; 3]) -> Piece {
        let at_m = Vector3::from(at_in) * IN;
        Piece { density_kg_m3, solid: Solid { shape, squash: [1.0; 2], turn_rad: [0.0; 3], at_m }, cuts: vec![] }
    }

    fn sphere(diameter_in: f64) -> Shape {
        Shape::Sphere { diameter_m: diameter_in * IN }
    }

    fn poured(pieces: Vec<Piece>) -> Pouring {
        let recipe = Recipe { diameter_m: 8.55 * IN, cover_density_kg_m3: 1180.0, pieces, holes: vec![] };
        pouring(&recipe, USUAL_WASTE).expect("a ball that can be made")
    }

    #[test]
    fn from_the_inside_out() {
        let made = poured(vec![piece(900.0, sphere(7.0), [0.0; 3]), piece(2000.0, sphere(3.0), [0.0, 0.0, 0.5])]);
        let order: Vec<Part> = made.pours.iter().map(|pour| pour.part).collect();
        assert_eq!(order, [Part::Piece(1), Part::Piece(0), Part::Cover]);
        assert_eq!((&made.pours[1].around[..], &made.pours[2].around[..]), (&[1][..], &[0][..]));
        assert!(made.pours.iter().all(|pour| pour.floating.is_empty() && pour.pockets_m3.is_empty()));
        assert_eq!((made.moulds, made.settings, made.cuts), (3, 2, 0));
        // The outer core less the inner one, and a twentieth of the mix lost.
        let volume = core::f64::consts::PI / 6.0 * (343.0 - 27.0) * IN * IN * IN;
        assert!((made.pours[1].volume_m3 / volume - 1.0).abs() < 1e-12);
        assert!((made.pours[1].mixed_kg / (900.0 * volume / 0.95) - 1.0).abs() < 1e-12);
        let by_hand = 3.0 * 1.0 + 3.0 * 0.5 + 2.0 * 0.25 + 0.1 * made.mixed_kg;
        assert!((made.cost_index - by_hand).abs() < 1e-12);
    }

    #[test]
    fn a_piece_off_the_axis_floats_unless_it_touches_one_that_is_held() {
        let outer = || piece(900.0, sphere(7.0), [0.0; 3]);
        let made = poured(vec![outer(), piece(2000.0, sphere(1.0), [2.0, 0.0, 0.0])]);
        assert_eq!(made.pours[1].floating, [1]);
        let core = piece(2000.0, sphere(3.2), [0.0; 3]);
        let made = poured(vec![outer(), core, piece(2000.0, sphere(1.0), [2.0, 0.0, 0.0])]);
        assert!(made.pours.iter().all(|pour| pour.floating.is_empty()));
        assert_eq!(made.pours[2].around, [2, 1]);
    }

    #[test]
    fn a_shell_closes_a_pocket_and_a_channel_opens_it() {
        // A hollow drum inside the outer core, with outer core within.
        let lathe = |points: &[[f64; 2]]| Shape::Lathe {
            profile_m: points.iter().map(|point| point.map(|v| v * IN)).collect(),
        };
        let drum = lathe(&[
            [0.0, -1.3],
            [1.3, -1.3],
            [1.3, 1.3],
            [0.0, 1.3],
            [0.0, 1.0],
            [1.0, 1.0],
            [1.0, -1.0],
            [0.0, -1.0],
        ]);
        let mut drum = piece(2000.0, drum, [0.0; 3]);
        let outer = piece(900.0, sphere(7.0), [0.0; 3]);
        let made = poured(vec![outer.clone(), drum.clone()]);
        let pocket = &made.pours[1].pockets_m3;
        let volume = core::f64::consts::PI * 2.0 * IN * IN * IN;
        assert!(pocket.len() == 1 && (pocket[0] / volume - 1.0).abs() < 0.02, "{pocket:?} {volume}");
        let channel = Shape::Cylinder { diameter_m: 0.4 * IN, height_m: 0.6 * IN };
        drum.cuts.push(piece(1.0, channel, [0.0, 0.0, 1.15]).solid);
        let made = poured(vec![outer, drum]);
        assert!(made.pours[1].pockets_m3.is_empty());
        assert_eq!(made.pours[0].channels_m, [0.4 * IN]);
    }

    #[test]
    fn pieces_of_one_shape_share_a_mould_and_a_hidden_piece_is_not_poured() {
        let made = poured(vec![
            piece(2000.0, sphere(1.0), [0.0, 0.0, 0.0]),
            piece(2000.0, sphere(1.0), [0.0, 0.0, 2.0]),
            piece(2000.0, sphere(1.0), [0.0, 0.0, -2.0]),
            piece(2200.0, sphere(1.5), [0.0, 0.0, 0.0]),
        ]);
        assert_eq!(made.hidden, [0]);
        assert_eq!((made.pours.len(), made.moulds), (4, 3));
    }
}
