//! The best point of what is left of some solids, by boxes.

use std::cmp::Ordering;
use std::collections::BinaryHeap;

use nalgebra::Vector3;

use crate::solid::Placed;
use crate::walk::Layer;

/// The points in any of `layers` (less its cuts), but for those that are gone.
pub(super) struct Left<'a, G: Fn(&Cell) -> bool> {
    pub(super) solids: &'a [Placed],
    pub(super) layers: Vec<&'a Layer>,
    /// Whether a cell surely holds only points that are gone.
    pub(super) gone: G,
}

/// A cube of space, or a square of the half-plane y = 0 that stands for what
/// it sweeps about z.
#[derive(Clone, Copy, Debug)]
pub(super) struct Cell {
    pub(super) middle: Vector3<f64>,
    /// Half its extent along x, y and z.
    pub(super) half: Vector3<f64>,
}

/// What a search came to.
#[derive(Clone, Copy, Debug)]
pub(super) struct Best {
    /// The value found.
    pub(super) value: f64,
    /// Where.
    pub(super) at: Vector3<f64>,
    /// No point has a larger value than this.
    pub(super) bound: f64,
}

impl Cell {
    /// The cube round a ball, or the square round it where everything in it
    /// turns about z.
    pub(super) fn round(radius: f64, turns_about_z: bool) -> Self {
        let half = if turns_about_z { Vector3::new(radius, 0.0, radius) } else { Vector3::repeat(radius) };
        Self { middle: Vector3::zeros(), half }
    }

    /// Radius of the sphere round it.
    pub(super) fn reach(&self) -> f64 {
        self.half.norm()
    }

    fn parts(&self) -> impl Iterator<Item = Self> + use<> {
        let (middle, half) = (self.middle, self.half * 0.5);
        let count = if half.y > 0.0 { 8 } else { 4 };
        (0..count).map(move |n| {
            let side = |bit: usize| if n & bit == 0 { -1.0 } else { 1.0 };
            let way = Vector3::new(side(1), side(4), side(2));
            Self { middle: middle + half.component_mul(&way), half }
        })
    }
}

impl<G: Fn(&Cell) -> bool> Left<'_, G> {
    /// The layers that may have a point in the cell.
    fn alive<'b>(&'b self, cell: &'b Cell) -> impl Iterator<Item = &'b Layer> {
        let reach = cell.reach();
        let from = move |n: usize| self.solids[n].clearance(&cell.middle);
        let gone = (self.gone)(cell);
        self.layers.iter().copied().filter(move |layer| {
            !gone && from(layer.solid) <= reach && layer.cuts.iter().all(|&cut| from(cut) >= -reach)
        })
    }

    /// Largest value over the points that are left in the cell `whole`. `upper` bounds a layer's values in a cell;
    /// `candidate` may know a good value near a point. Ends when the bound is
    /// within `tolerance` of the best, or after `most` cells.
    pub(super) fn maximise(
        &self,
        start: Best,
        whole: Cell,
        (tolerance, most): (f64, usize),
        upper: impl Fn(&Layer, &Cell) -> f64,
        candidate: impl Fn(&Vector3<f64>) -> Option<(f64, Vector3<f64>)>,
    ) -> Best {
        let mut best = start;
        let mut waiting = BinaryHeap::from([Waiting { upper: f64::INFINITY, number: 0, cell: whole }]);
        let mut number = 0;
        while let Some(next) = waiting.pop() {
            best.bound = best.value.max(next.upper);
            if best.bound <= best.value + tolerance || number >= most {
                return best;
            }
            if let Some((value, at)) = candidate(&next.cell.middle)
                && value > best.value
            {
                best = Best { value, at, ..best };
            }
            for cell in next.cell.parts() {
                let bounds = self.alive(&cell).map(|layer| upper(layer, &cell));
                // No part of a cell is better than the whole.
                let upper = bounds.fold(f64::NEG_INFINITY, f64::max).min(next.upper);
                if upper > best.value {
                    number += 1;
                    waiting.push(Waiting { upper, number, cell });
                }
            }
        }
        best.bound = best.value;
        best
    }
}

/// A cell that may hold something better; the most promising first, older first
/// among equals.
struct Waiting {
    upper: f64,
    number: usize,
    cell: Cell,
}

impl Ord for Waiting {
    fn cmp(&self, other: &Self) -> Ordering {
        self.upper.total_cmp(&other.upper).then(other.number.cmp(&self.number))
    }
}

impl PartialOrd for Waiting {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}

impl PartialEq for Waiting {
    fn eq(&self, other: &Self) -> bool {
        self.cmp(other) == Ordering::Equal
    }
}

impl Eq for Waiting {}
