//! Walking along a line through layers of solids.

use nalgebra::Vector3;
use smallvec::SmallVec;

use crate::ball::Face;
use crate::solid::{Hits, Placed};

/// A layer of material: inside `solid` and in none of `cuts`. All numbers are
/// places in [`Stack::solids`].
#[derive(Clone, Debug)]
pub(crate) struct Layer {
    pub(crate) part: usize,
    pub(crate) solid: usize,
    pub(crate) cuts: Vec<usize>,
}

/// What fills a region: the last layer that holds a point, else the base;
/// but only where a point is inside all of `within` and none of `without`.
#[derive(Clone, Debug)]
pub(crate) struct Stack {
    pub(crate) solids: Vec<Placed>,
    pub(crate) within: Vec<usize>,
    pub(crate) without: Vec<usize>,
    pub(crate) layers: Vec<Layer>,
    pub(crate) base: usize,
}

/// A stretch of one part between two faces.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Stretch {
    pub(crate) from: f64,
    pub(crate) to: f64,
    pub(crate) part: usize,
    pub(crate) from_face: Face,
    pub(crate) to_face: Face,
}

/// Which solids a point is in: room for 256 pieces, cuts and holes and the ball.
#[derive(Clone, Copy, Default)]
struct Inside([u64; 5]);

impl Inside {
    fn flip(&mut self, n: usize) {
        self.0[n >> 6] ^= 1 << (n & 63);
    }
    fn has(&self, n: usize) -> bool {
        self.0[n >> 6] >> (n & 63) & 1 == 1
    }
}

pub(crate) type Stretches = SmallVec<[Stretch; 12]>;
/// Crossings of all solids along a line, ascending: where, which solid, which surface.
pub(crate) type Crossings = SmallVec<[(f64, u16, u16); 24]>;

impl Stack {
    fn part_of(&self, inside: &Inside) -> Option<usize> {
        if !self.within.iter().all(|&n| inside.has(n)) || self.without.iter().any(|&n| inside.has(n)) {
            return None;
        }
        let top = self.layers.iter().rev().find(|l| inside.has(l.solid) && !l.cuts.iter().any(|&c| inside.has(c)));
        Some(top.map_or(self.base, |l| l.part))
    }

    /// The part at a point, if any.
    pub(crate) fn part_at(&self, point: &Vector3<f64>) -> Option<usize> {
        let mut inside = Inside::default();
        for (n, solid) in self.solids.iter().enumerate() {
            if solid.contains(point) {
                inside.flip(n);
            }
        }
        self.part_of(&inside)
    }

    /// Fills `out` with the stretches of `origin + t direction`, ascending, and
    /// `events` with all that the line crosses, seen or not (nothing where the
    /// line misses the region). Neighbouring stretches of one part are one.
    pub(crate) fn walk(
        &self,
        origin: &Vector3<f64>,
        direction: &Vector3<f64>,
        events: &mut Crossings,
        out: &mut Stretches,
    ) {
        out.clear();
        events.clear();
        let mut hits = Hits::new();
        for (n, solid) in self.solids.iter().enumerate() {
            hits.clear();
            if !solid.surely_missed(origin, direction) {
                solid.cross(origin, direction, &mut hits);
            }
            if hits.is_empty() && self.within.contains(&n) {
                events.clear();
                return;
            }
            events.extend(hits.iter().map(|&(t, surface)| (t, n as u16, surface)));
        }
        events.sort_unstable_by(|a, b| a.0.total_cmp(&b.0));
        join_coincident(events);
        let mut inside = Inside::default();
        let mut open: Option<Stretch> = None;
        let mut next = 0;
        while next < events.len() {
            let (t, solid, surface) = events[next];
            let face = Face { solid, surface };
            // Faces that coincide are one step: a stretch has a length.
            while next < events.len() && events[next].0 <= t {
                inside.flip(usize::from(events[next].1));
                next += 1;
            }
            let part = self.part_of(&inside);
            if let Some(mut stretch) = open {
                if part == Some(stretch.part) {
                    continue;
                }
                stretch.to = t;
                stretch.to_face = face;
                out.push(stretch);
            }
            open = part.map(|part| Stretch { from: t, to: t, part, from_face: face, to_face: face });
        }
    }
}

/// Distance between crossings, relative to the farthest, below which they are one:
/// what rounding makes of faces that coincide, whose order would be chance.
const COINCIDENT: f64 = 1e-13;

/// Gives crossings at one place the same distance, in the order of their solids.
fn join_coincident(events: &mut Crossings) {
    let (Some(first), Some(last)) = (events.first(), events.last()) else { return };
    let near = COINCIDENT * first.0.abs().max(last.0.abs());
    for group in events.chunk_by_mut(|a, b| b.0 - a.0 <= near).filter(|group| group.len() > 1) {
        let at = group[0].0;
        group.iter_mut().for_each(|event| event.0 = at);
        group.sort_unstable_by_key(|event| event.1);
    }
}
