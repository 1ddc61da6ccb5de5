//! How near the surface the core comes.

use nalgebra::Vector3;

use super::search::{Best, Cell, Left};
use super::{Poured, Thinnest};
use crate::solid::{evenly, farthest_points};
use crate::walk::Layer;

/// A search ends when its answer is this sure, or after so many cells.
const TOLERANCE_M: f64 = 1e-7;
const MOST_CELLS: usize = 150_000;
/// Directions looked along before a search.
const LOOKS: usize = 2000;

/// The point of the pieces farthest from the centre.
pub(super) struct Reach {
    far: Best,
    layer: usize,
}

impl Reach {
    pub(super) fn thinnest(&self, poured: &Poured) -> Thinnest {
        let direction = self.far.at.normalize();
        // Where pieces coincide there, the one that is not displaced.
        let part = poured.stack.part_at(&(self.far.at * (1.0 - 1e-9)));
        let piece = part.and_then(|part| part.checked_sub(1)).unwrap_or(self.layer);
        let thickness_m = (poured.radius_m - self.far.value).max(0.0);
        let error_m = (self.far.bound - self.far.value).max(1e-15).min(thickness_m);
        Thinnest { thickness_m, error_m, direction, piece }
    }
}

/// The farthest point there is, `None` where nothing is left of any piece.
pub(super) fn reach(poured: &Poured) -> Option<Reach> {
    let stack = &poured.stack;
    let mut best: Option<Reach> = None;
    let mut unsettled: Vec<(f64, usize)> = Vec::new();
    for (n, layer) in stack.layers.iter().enumerate() {
        let (far, points) = farthest_points(&stack.solids[layer.solid]);
        let cut = |point: &Vector3<f64>| layer.cuts.iter().any(|&cut| stack.solids[cut].contains(point));
        let free = points.into_iter().find(|point| !cut(point) && poured.to_hole_m(&point.normalize()) > 0.0);
        match free {
            Some(at) if best.as_ref().is_none_or(|best| far > best.far.value) => {
                best = Some(Reach { far: Best { value: far, at, bound: far }, layer: n });
            }
            Some(_) => {}
            None => unsettled.push((far, n)),
        }
    }
    let least = best.as_ref().map_or(0.0, |best| best.far.value);
    unsettled.retain(|(far, _)| *far > least);
    if unsettled.is_empty() {
        return best;
    }
    let most = unsettled.iter().map(|(far, _)| *far).fold(0.0, f64::max);
    let layers: Vec<&Layer> = unsettled.iter().map(|(_, n)| &stack.layers[*n]).collect();
    search(poured, layers, most, best)
}

/// What the pieces whose farthest points are cut away still reach; none had a
/// point farther than `most` to begin with.
fn search(poured: &Poured, layers: Vec<&Layer>, most: f64, known: Option<Reach>) -> Option<Reach> {
    let stack = &poured.stack;
    let outward = |direction: &Vector3<f64>| {
        let direction = direction.normalize();
        (poured.to_hole_m(&direction) > 0.0).then(|| poured.core(&Vector3::zeros(), &direction))?
    };
    let mut start = known.map_or(Best { value: 0.0, at: Vector3::zeros(), bound: 0.0 }, |known| known.far);
    for direction in evenly(LOOKS) {
        if let Some((value, _)) = outward(&direction).filter(|(value, _)| *value > start.value) {
            start = Best { value, at: direction * value, ..start };
        }
    }
    let start = climbed(start, &outward);
    let solids = layers.iter().flat_map(|layer| core::iter::once(&layer.solid).chain(&layer.cuts));
    let round = poured.whole() && solids.into_iter().all(|n| stack.solids[*n].turns_about_z());
    let whole = Cell::round(poured.radius_m, round);
    // All of a cell lies under an opening where the points of the surface above
    // it do: they are no farther from the one above its middle than this chord.
    let gone = |cell: &Cell| {
        let (reach, distance) = (cell.reach(), cell.middle.norm());
        if poured.whole() || reach >= distance {
            return false;
        }
        let (sine, cosine) = (reach / distance, (1.0 - (reach / distance).powi(2)).sqrt());
        let chord = poured.radius_m * (sine * sine + (1.0 - cosine).powi(2)).sqrt();
        poured.to_hole_m(&(cell.middle / distance)) < -chord
    };
    let left = Left { solids: &stack.solids, layers, gone };
    let upper = |layer: &Layer, cell: &Cell| {
        let corner = (cell.middle.abs() + cell.half).norm().min(most);
        let distance = cell.middle.norm();
        if distance <= cell.reach() {
            return corner;
        }
        // |p| cos(angle to the middle) = p · n is no more than the support along n.
        let (n, sine) = (cell.middle / distance, cell.reach() / distance);
        corner.min(stack.solids[layer.solid].support(&n) / (1.0 - sine * sine).sqrt())
    };
    let found = left.maximise(start, whole, (TOLERANCE_M, MOST_CELLS), upper, |point| {
        let distance = point.norm();
        let direction = (distance > 0.0).then(|| point / distance)?;
        outward(&direction).map(|(value, _)| (value, direction * value))
    });
    let bound = found.bound;
    let found = climbed(found, &outward);
    let piece = (found.value > 0.0).then(|| outward(&found.at))?.map_or(0, |(_, piece)| piece);
    Some(Reach { far: Best { bound: bound.max(found.value), ..found }, layer: piece })
}

/// A direct search over directions from the best so far: to the best of eight
/// neighbours, or half as far where none is better.
fn climbed(mut best: Best, outward: &impl Fn(&Vector3<f64>) -> Option<(f64, usize)>) -> Best {
    if best.value <= 0.0 {
        return best;
    }
    let mut step = 0.05;
    for _ in 0..200 {
        let n = best.at.normalize();
        let x = if n.x.abs() < 0.6 { Vector3::x() } else { Vector3::y() };
        let u = (x - n * x.dot(&n)).normalize();
        let v = n.cross(&u);
        let sides =
            [[1.0, 0.0], [-1.0, 0.0], [0.0, 1.0], [0.0, -1.0], [0.7, 0.7], [0.7, -0.7], [-0.7, 0.7], [-0.7, -0.7]];
        let mut better = false;
        for [a, b] in sides {
            let direction = (n + (u * a + v * b) * step).normalize();
            if let Some((value, _)) = outward(&direction).filter(|(value, _)| *value > best.value) {
                best = Best { value, at: direction * value, ..best };
                better = true;
            }
        }
        if !better {
            step *= 0.5;
        }
        if step < 1e-12 {
            break;
        }
    }
    best
}
