//! The smooth surfaces of a recipe's solids, each with its own coordinates.

use core::f64::consts::{PI, TAU};

use nalgebra::{Matrix3, Rotation3, Vector3};
use physics::recipe::{Hole, Piece, Recipe, Shape, Solid};
use physics::units::M_PER_IN;

/// Neighbouring facets that turn by less than this are drawn as one smooth surface.
const CREASE_RAD: f64 = 25.0 * PI / 180.0;
/// Facets are about this long.
const FACET_M: f64 = 0.3 * M_PER_IN;

/// One smooth surface: s runs along it from 0 to `rows`, t around or across
/// it from 0 to `columns`.
#[derive(Clone, Debug)]
pub(crate) struct Patch {
    shape: PatchShape,
    /// The solid's own coordinates to ball axes.
    axes: Matrix3<f64>,
    at_m: Vector3<f64>,
    /// Turns the solid's own normals to ball axes (length lost).
    normals: Matrix3<f64>,
    pub(crate) rows: usize,
    pub(crate) columns: usize,
    /// t wraps: column `columns` is column 0.
    pub(crate) round: bool,
    /// s wraps: row `rows` is row 0.
    pub(crate) closed: bool,
}

#[derive(Clone, Debug)]
enum PatchShape {
    /// Part of a circle in the half-plane (r, z), revolved about z.
    Arc { middle_r: f64, radius: f64, from: f64, to: f64 },
    /// A polyline in the half-plane with a normal at each point, revolved about z.
    Line { points: Vec<[f64; 2]>, normals: Vec<[f64; 2]> },
    /// A parallelogram.
    Flat { corner: Vector3<f64>, along: Vector3<f64>, across: Vector3<f64> },
}

impl Patch {
    /// Place and outward unit normal at (s, t).
    pub(crate) fn point(&self, s: f64, t: f64) -> (Vector3<f64>, Vector3<f64>) {
        let (place, normal) = match &self.shape {
            PatchShape::Arc { middle_r, radius, from, to } => {
                let turn = from + (to - from) * s / self.rows as f64;
                let (sin, cos) = turn.sin_cos();
                self.revolved([middle_r + radius * cos, radius * sin], [cos, sin], t)
            }
            PatchShape::Line { points, normals } => {
                let first = (s as usize).min(self.rows - 1);
                let f = s - first as f64;
                let mix = |list: &[[f64; 2]]| {
                    let (a, b) = (list[first], list[(first + 1) % list.len()]);
                    [a[0] + (b[0] - a[0]) * f, a[1] + (b[1] - a[1]) * f]
                };
                self.revolved(mix(points), mix(normals), t)
            }
            PatchShape::Flat { corner, along, across } => {
                let place = corner + along * (s / self.rows as f64) + across * (t / self.columns as f64);
                (place, across.cross(along))
            }
        };
        (self.axes * place + self.at_m, (self.normals * normal).normalize())
    }

    /// Whether the whole row is a single point on the axis.
    pub(crate) fn is_pole(&self, row: usize) -> bool {
        let r = match &self.shape {
            PatchShape::Arc { middle_r, radius, from, to } => {
                let turn = from + (to - from) * row as f64 / self.rows as f64;
                middle_r + radius * turn.cos()
            }
            PatchShape::Line { points, .. } => points[row % points.len()][0],
            PatchShape::Flat { .. } => return false,
        };
        r.abs() < 1e-9
    }

    fn revolved(&self, [r, z]: [f64; 2], [nr, nz]: [f64; 2], t: f64) -> (Vector3<f64>, Vector3<f64>) {
        let (sin, cos) = (TAU * t / self.columns as f64).sin_cos();
        (Vector3::new(r * cos, r * sin, z), Vector3::new(nr * cos, nr * sin, nz))
    }
}

/// Every surface that may show: the ball's own, then pieces, cuts and holes.
pub(crate) fn all(recipe: &Recipe) -> Vec<Patch> {
    let mut patches = skin(recipe);
    for piece in &recipe.pieces {
        patches.append(&mut self::piece(piece));
        let frame = Frame::still().then(&piece.solid);
        for cut in &piece.cuts {
            frame.then(cut).patches(cut, &mut patches);
        }
    }
    patches
}

/// A piece without its cuts.
pub(crate) fn piece(piece: &Piece) -> Vec<Patch> {
    let mut patches = Vec::new();
    Frame::still().then(&piece.solid).patches(&piece.solid, &mut patches);
    patches
}

/// The ball's own surface and its holes.
pub(crate) fn skin(recipe: &Recipe) -> Vec<Patch> {
    let mut patches = Vec::new();
    let still = Frame::still();
    still.arc(0.0, recipe.diameter_m / 2.0, [-PI / 2.0, PI / 2.0], [1.0; 3], &mut patches);
    for hole in &recipe.holes {
        drilled(hole, recipe.diameter_m / 2.0, &mut patches);
    }
    patches
}

fn drilled(hole: &Hole, radius_m: f64, patches: &mut Vec<Patch>) {
    let along = hole.axis.normalize();
    let aside = along.cross(&along.map(|c| if c.abs() < 0.6 { 1.0 } else { 0.0 })).normalize();
    let frame = Frame {
        turn: Matrix3::from_columns(&[aside, along.cross(&aside), along]),
        at_m: hole.entry.normalize() * radius_m,
    };
    let (r, d) = (hole.diameter_m / 2.0, hole.depth_m);
    frame.lathe(&[[0.0, -radius_m], [r, -radius_m], [r, d], [0.0, d]], [1.0; 2], patches);
}

struct Frame {
    turn: Matrix3<f64>,
    at_m: Vector3<f64>,
}

impl Frame {
    fn still() -> Self {
        Self { turn: Matrix3::identity(), at_m: Vector3::zeros() }
    }

    fn then(&self, solid: &Solid) -> Self {
        let [a, b, c] = solid.turn_rad;
        // nalgebra's roll, pitch, yaw are turns about the fixed x, y, z axes.
        let turn = Rotation3::from_euler_angles(a, b, c).into_inner();
        Self { turn: self.turn * turn, at_m: self.turn * solid.at_m + self.at_m }
    }

    fn patches(&self, solid: &Solid, patches: &mut Vec<Patch>) {
        let squash = solid.squash;
        let [sx, sy] = squash;
        match &solid.shape {
            Shape::Sphere { diameter_m } => {
                self.arc(0.0, diameter_m / 2.0, [-PI / 2.0, PI / 2.0], [sx, sy, 1.0], patches);
            }
            Shape::Ellipsoid { size_m: [x, y, z] } => {
                let scale = [sx * x / z, sy * y / z, 1.0];
                self.arc(0.0, z / 2.0, [-PI / 2.0, PI / 2.0], scale, patches);
            }
            Shape::Cylinder { diameter_m, height_m } => {
                let (r, h) = (diameter_m / 2.0, height_m / 2.0);
                self.lathe(&[[0.0, -h], [r, -h], [r, h], [0.0, h]], squash, patches);
            }
            Shape::Frustum { bottom_diameter_m, top_diameter_m, height_m } => {
                let (b, t, h) = (bottom_diameter_m / 2.0, top_diameter_m / 2.0, height_m / 2.0);
                self.lathe(&[[0.0, -h], [b, -h], [t, h], [0.0, h]], squash, patches);
            }
            Shape::Ring { ring_diameter_m, tube_diameter_m } => {
                let (ring, tube) = (ring_diameter_m / 2.0, tube_diameter_m / 2.0);
                let open = (-ring / tube).max(-1.0).acos();
                self.arc(ring, tube, [-open, open], [sx, sy, 1.0], patches);
            }
            Shape::Box { size_m } => self.brick(*size_m, squash, patches),
            Shape::Lathe { profile_m } => self.lathe(profile_m, squash, patches),
        }
    }

    fn push(&self, shape: PatchShape, scale: [f64; 3], grid: [usize; 2], wraps: [bool; 2], patches: &mut Vec<Patch>) {
        let scale = Vector3::from(scale);
        patches.push(Patch {
            shape,
            axes: self.turn * Matrix3::from_diagonal(&scale),
            at_m: self.at_m,
            normals: self.turn * Matrix3::from_diagonal(&scale.map(|s| 1.0 / s)),
            rows: grid[0],
            columns: grid[1],
            round: wraps[0],
            closed: wraps[1],
        });
    }

    fn arc(&self, middle_r: f64, radius: f64, [from, to]: [f64; 2], scale: [f64; 3], patches: &mut Vec<Patch>) {
        let stretch = scale[0].max(scale[1]).max(1.0);
        let rows = facets((to - from) * radius * stretch, 24);
        let columns = facets(TAU * (middle_r + radius) * scale[0].max(scale[1]), 32);
        let closed = to - from > TAU - 1e-12;
        let shape = PatchShape::Arc { middle_r, radius, from, to };
        self.push(shape, scale, [rows, columns], [true, closed], patches);
    }

    /// Splits a closed profile where it creases; each smooth stretch is a patch.
    fn lathe(&self, profile: &[[f64; 2]], [sx, sy]: [f64; 2], patches: &mut Vec<Patch>) {
        let mut points = profile.to_vec();
        points.dedup();
        if doubled_area(&points) < 0.0 {
            points.reverse();
        }
        let n = points.len();
        let direction = |i: usize| {
            let (a, b) = (points[i % n], points[(i + 1) % n]);
            Vector3::new(b[0] - a[0], b[1] - a[1], 0.0)
        };
        let creased = |i: usize| direction(i + n - 1).angle(&direction(i)) > CREASE_RAD;
        let on_axis = |i: usize| points[i % n][0] < 1e-12 && points[(i + 1) % n][0] < 1e-12;
        let start = (0..n).find(|&i| creased(i) || on_axis(i)).unwrap_or(0);
        let mut edge = 0;
        while edge < n {
            let first = start + edge;
            edge += 1;
            if on_axis(first) {
                continue;
            }
            let mut last = first;
            while edge < n && !creased(last + 1) && !on_axis(last + 1) {
                last += 1;
                edge += 1;
            }
            let closed = last + 1 - first == n && !creased(first);
            self.smooth(&points, first, last, closed, [sx, sy], patches);
        }
    }

    /// The smooth stretch of edges `first..=last` of a profile.
    fn smooth(
        &self,
        points: &[[f64; 2]],
        first: usize,
        last: usize,
        closed: bool,
        squash: [f64; 2],
        patches: &mut Vec<Patch>,
    ) {
        let n = points.len();
        let outward = |edge: usize| {
            let (a, b) = (points[edge % n], points[(edge + 1) % n]);
            let (dr, dz) = (b[0] - a[0], b[1] - a[1]);
            let length = dr.hypot(dz);
            [dz / length, -dr / length]
        };
        let mean = |a: [f64; 2], b: [f64; 2]| [a[0] + b[0], a[1] + b[1]];
        let (mut line, mut normals) = (Vec::new(), Vec::new());
        for edge in first..=last {
            let (a, b) = (points[edge % n], points[(edge + 1) % n]);
            let own = outward(edge);
            let begin = if edge > first || closed { mean(outward(edge + n - 1), own) } else { own };
            let end = if edge < last || closed { mean(own, outward(edge + 1)) } else { own };
            let steps = facets((b[0] - a[0]).hypot(b[1] - a[1]), 1);
            for step in 0..steps {
                let f = step as f64 / steps as f64;
                line.push([a[0] + (b[0] - a[0]) * f, a[1] + (b[1] - a[1]) * f]);
                normals.push(if step == 0 { begin } else { own });
            }
            if edge == last && !closed {
                line.push(b);
                normals.push(end);
            }
        }
        let rows = if closed { line.len() } else { line.len() - 1 };
        let widest = line.iter().map(|p| p[0]).fold(0.0, f64::max);
        let columns = facets(TAU * widest * squash[0].max(squash[1]), 32);
        let shape = PatchShape::Line { points: line, normals };
        self.push(shape, [squash[0], squash[1], 1.0], [rows, columns], [true, closed], patches);
    }

    fn brick(&self, size: [f64; 3], [sx, sy]: [f64; 2], patches: &mut Vec<Patch>) {
        let half = Vector3::new(size[0] * sx, size[1] * sy, size[2]) / 2.0;
        for axis in 0..3 {
            for side in [-1.0, 1.0] {
                let unit = |i: usize| Vector3::ith(i % 3, 2.0 * half[i % 3]);
                let (mut across, mut along) = (unit(axis + 1), unit(axis + 2));
                if side < 0.0 {
                    core::mem::swap(&mut across, &mut along);
                }
                let corner = Vector3::ith(axis, side * half[axis]) - (across + along) / 2.0;
                let grid = [facets(along.norm(), 1), facets(across.norm(), 1)];
                let shape = PatchShape::Flat { corner, along, across };
                self.push(shape, [1.0; 3], grid, [false, false], patches);
            }
        }
    }
}

fn facets(length_m: f64, least: usize) -> usize {
    ((length_m / FACET_M).ceil() as usize).clamp(least, 96)
}

fn doubled_area(points: &[[f64; 2]]) -> f64 {
    let next = points.iter().cycle().skip(1);
    points.iter().zip(next).map(|(a, b)| a[0] * b[1] - b[0] * a[1]).sum()
}
