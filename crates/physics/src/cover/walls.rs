//! What holes leave standing: towards the core and between one another.

use nalgebra::Vector3;

use super::search::{Best, Cell, Left};
use super::{Gap, HoleWall, Web};
use crate::ball::Ball;
use crate::solid::{Form, Placed};
use crate::walk::{Crossings, Layer, Stack, Stretches};

/// A search for the nearest point of the core ends when its answer is this
/// sure (0.001 in), or after so many cells.
const TOLERANCE_M: f64 = 2.54e-5;
const MOST_CELLS: usize = 40_000;
/// Steps between two holes; each is one projection onto either.
const MOST_STEPS: usize = 5000;

/// Every hole beside the core.
pub(super) fn hole_walls(ball: &Ball) -> Vec<HoleWall> {
    ball.stack.without.iter().map(|&hole| hole_wall(ball, hole)).collect()
}

fn hole_wall(ball: &Ball, hole: usize) -> HoleWall {
    // The ball as it is without this hole.
    let without: Vec<usize> = ball.stack.without.iter().copied().filter(|&n| n != hole).collect();
    let undrilled = Stack { without: without.clone(), ..ball.stack.clone() };
    let drill = Drill::new(&ball.stack.solids[hole], ball.radius_m);
    let first_piece = |origin: &Vector3<f64>, direction: &Vector3<f64>| {
        let mut found = Stretches::new();
        undrilled.walk(origin, direction, &mut Crossings::new(), &mut found);
        found.iter().find(|stretch| stretch.part > 0 && stretch.to > 0.0).map(|stretch| stretch.from.max(0.0))
    };
    let entry = drill.entry();
    let depth_m = (entry - drill.bottom).norm();
    let core_from_m = first_piece(&entry, &-drill.out).filter(|from_m| *from_m < depth_m);
    if undrilled.layers.is_empty() {
        return HoleWall { core_from_m, to_core: None };
    }
    let solid = &ball.stack.solids[hole];
    let from_hole = |point: &Vector3<f64>| solid.clearance(point);
    // From the nearest point of the hole on towards a point, the first piece.
    let candidate = |point: &Vector3<f64>| {
        let near = drill.onto_long(point);
        let way = point - near;
        let length = way.norm();
        if length <= 0.0 {
            return undrilled.part_at(point).filter(|part| *part > 0).map(|_| (0.0, *point));
        }
        let distance = first_piece(&near, &(way / length))?;
        Some((-distance, near + way * (distance / length)))
    };
    let layers: Vec<&Layer> = undrilled.layers.iter().collect();
    let gone = |cell: &Cell| without.iter().any(|&n| undrilled.solids[n].clearance(&cell.middle) < -cell.reach());
    let left = Left { solids: &undrilled.solids, layers, gone };
    let start = core_from_m.map_or(f64::NEG_INFINITY, |_| 0.0);
    let start = Best { value: start, at: entry, bound: start };
    // Below 0 it is open; how far it goes in is of no interest here.
    let upper = |_: &Layer, cell: &Cell| (cell.reach() - from_hole(&cell.middle)).min(0.0);
    let found = left.maximise(start, Cell::round(ball.radius_m, false), (TOLERANCE_M, MOST_CELLS), upper, candidate);
    let gap = Gap { least_m: found.value.abs(), error_m: found.bound - found.value };
    HoleWall { core_from_m, to_core: found.value.is_finite().then_some(gap) }
}

/// Every two holes.
pub(super) fn webs(ball: &Ball) -> Vec<Web> {
    let drills: Vec<Drill> =
        ball.stack.without.iter().map(|&n| Drill::new(&ball.stack.solids[n], ball.radius_m)).collect();
    let pairs = (0..drills.len()).flat_map(|a| (a + 1..drills.len()).map(move |b| [a, b]));
    pairs.map(|[a, b]| web([a, b], &drills[a], &drills[b])).collect()
}

/// The air of a hole: a cylinder from its bottom outward.
struct Drill {
    out: Vector3<f64>,
    bottom: Vector3<f64>,
    radius: f64,
    ball: f64,
}

impl Drill {
    fn new(solid: &Placed, ball: f64) -> Self {
        let radius = if let Form::Lathe(lathe) = &solid.form { lathe.radius } else { 0.0 };
        Self { out: solid.linear.column(2).into_owned(), bottom: solid.at, radius, ball }
    }

    /// Where the axis comes out of the ball.
    fn entry(&self) -> Vector3<f64> {
        let along = self.bottom.dot(&self.out);
        let across = self.bottom - self.out * along;
        across + self.out * (self.ball * self.ball - across.norm_squared()).max(0.0).sqrt()
    }

    /// The nearest point of the cylinder, however far it goes out.
    fn onto_long(&self, point: &Vector3<f64>) -> Vector3<f64> {
        let from = point - self.bottom;
        let z = from.dot(&self.out);
        let across = from - self.out * z;
        let distance = across.norm();
        let across = if distance > self.radius { across * (self.radius / distance) } else { across };
        self.bottom + self.out * z.max(0.0) + across
    }

    /// The nearest point of the cylinder inside the ball.
    ///
    /// Minimising |y − x|² + μ|y|² over the cylinder gives the projection of
    /// x/(1 + μ); the larger μ, the nearer the centre, until it lies in the ball.
    fn onto(&self, point: &Vector3<f64>) -> Vector3<f64> {
        let nearest = self.onto_long(point);
        if nearest.norm_squared() <= self.ball * self.ball {
            return nearest;
        }
        let (mut inside, mut outside) = (0.0, 1.0);
        for _ in 0..60 {
            let shrunk = f64::midpoint(inside, outside);
            let fits = self.onto_long(&(point * shrunk)).norm_squared() <= self.ball * self.ball;
            if fits { inside = shrunk } else { outside = shrunk }
        }
        self.onto_long(&(point * inside))
    }
}

/// The least distance between two holes: both are convex, so that projecting
/// from one onto the other and back comes to it (Cheney and Goldstein, Proc.
/// AMS 10, 1959), here sped up by momentum (Beck and Teboulle, SIAM J. Imaging
/// Sci. 2, 2009; restarted after O'Donoghue and Candès, Found. Comput. Math.
/// 15, 2015).
fn web(holes: [usize; 2], one: &Drill, other: &Drill) -> Web {
    let mut here = one.onto(&other.entry());
    let (mut ahead, mut t) = (here, 1.0_f64);
    for _ in 0..MOST_STEPS {
        let next = one.onto(&other.onto(&ahead));
        let stays = (next - ahead).norm() <= 1e-14 * one.ball;
        if (ahead - next).dot(&(next - here)) > 0.0 {
            t = 1.0;
        }
        let t_next = 0.5 * (1.0 + (1.0 + 4.0 * t * t).sqrt());
        ahead = next + (next - here) * ((t - 1.0) / t_next);
        (here, t) = (next, t_next);
        if stays {
            break;
        }
    }
    let there = other.onto(&here);
    let back = one.onto(&there);
    let least_m = (there - back).norm();
    // Both lie behind the planes square to the way between them, but for what
    // the last step still moved: no two points are nearer than this.
    let diameter = 2.0 * one.ball;
    let moved = (here - back).norm();
    let error_m = if least_m > 0.0 { (diameter * moved / least_m).min(least_m) } else { 0.0 };
    Web { holes, gap: Gap { least_m, error_m }, depth_m: one.ball - (0.5 * (there + back)).norm() }
}
