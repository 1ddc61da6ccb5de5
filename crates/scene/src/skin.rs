//! What can be seen of each part: every smooth surface, divided where the
//! material on either side of it changes.

use std::collections::HashMap;

use nalgebra::Vector3;
use physics::ball::{Ball, Part};
use physics::recipe::Recipe;
use physics::units::M_PER_IN;

use crate::surface::Patch;

/// Material is asked for this far to either side of a surface, in metres.
const ASIDE_M: f64 = 1e-6;
/// Rim corners are asked about this far inside their surface, in facets.
const INSIDE: f64 = 0.01;
/// Halvings that place a boundary on an edge (of 0.3 in at most).
const HALVINGS: usize = 14;

/// Triangles of one part, seen from outside it, and its sharp edges.
#[derive(Clone, Debug, Default)]
pub struct Mesh {
    /// Corners, in metres.
    pub positions: Vec<[f32; 3]>,
    /// Unit normals out of the part, one a corner.
    pub normals: Vec<[f32; 3]>,
    /// Corner numbers, three a triangle, anticlockwise from outside.
    pub triangles: Vec<u32>,
    /// Ends of the lines where the surface creases, in metres.
    pub edges: Vec<[[f32; 3]; 2]>,
}

/// The part on the inner and the outer side of a surface.
type Label = [Option<Part>; 2];

/// One mesh a part, the cover first, from the given surfaces.
pub(crate) fn meshes(ball: &Ball, recipe: &Recipe, patches: &[Patch]) -> Vec<Mesh> {
    let mut meshes = vec![Mesh::default(); recipe.pieces.len() + 1];
    for patch in patches {
        let mut net = Net::new(ball, patch);
        net.refine(recipe);
        net.divide();
        net.give(&mut meshes);
    }
    meshes
}

/// A part's number: 0 is the cover, n the n-th piece.
pub fn number(part: Part) -> usize {
    match part {
        Part::Cover => 0,
        Part::Piece(n) => n + 1,
    }
}

#[derive(Clone, Copy)]
struct Corner {
    s: f64,
    t: f64,
    place: Vector3<f64>,
    normal: Vector3<f64>,
    label: Label,
}

struct Net<'a> {
    ball: &'a Ball,
    patch: &'a Patch,
    corners: Vec<Corner>,
    triangles: Vec<[u32; 3]>,
    labels: Vec<Label>,
}

impl<'a> Net<'a> {
    fn new(ball: &'a Ball, patch: &'a Patch) -> Self {
        let mut net = Self { ball, patch, corners: Vec::new(), triangles: Vec::new(), labels: Vec::new() };
        let rows = if patch.closed { patch.rows } else { patch.rows + 1 };
        let columns = if patch.round { patch.columns } else { patch.columns + 1 };
        let mut ids = Vec::with_capacity(rows * columns);
        for row in 0..rows {
            let first = net.corners.len() as u32;
            let pole = patch.is_pole(row);
            for column in 0..columns {
                if column == 0 || !pole {
                    net.corner(row as f64, column as f64);
                }
                ids.push(if pole { first } else { first + column as u32 });
            }
        }
        let id = |row: usize, column: usize| ids[row % rows * columns + column % columns];
        for row in 0..patch.rows {
            for column in 0..patch.columns {
                let [a, b, c, d] = [id(row, column), id(row, column + 1), id(row + 1, column + 1), id(row + 1, column)];
                for [a, b, c] in [[a, b, d], [b, c, d]] {
                    if a != b && b != c && c != a {
                        net.triangles.push([a, b, c]);
                    }
                }
            }
        }
        net
    }

    fn corner(&mut self, s: f64, t: f64) -> u32 {
        let (place, normal) = self.patch.point(s, t);
        let label = self.label(s, t);
        self.corners.push(Corner { s, t, place, normal, label });
        (self.corners.len() - 1) as u32
    }

    fn label(&self, s: f64, t: f64) -> Label {
        let patch = self.patch;
        let s = if patch.closed { s } else { s.clamp(INSIDE, patch.rows as f64 - INSIDE) };
        let t = if patch.round { t } else { t.clamp(INSIDE, patch.columns as f64 - INSIDE) };
        let (place, normal) = patch.point(s, t);
        [-ASIDE_M, ASIDE_M].map(|aside| self.ball.part_at(&(place + normal * aside)))
    }

    /// Surface coordinates a fraction of the way from a to b.
    fn between(&self, a: [f64; 2], b: [f64; 2], f: f64) -> [f64; 2] {
        let pole = |s: f64| s.fract() == 0.0 && self.patch.is_pole(s as usize);
        let (rows, columns) = (self.patch.rows as f64, self.patch.columns as f64);
        let ([mut sa, mut ta], [mut sb, mut tb]) = (a, b);
        if self.patch.closed && (sa - sb).abs() > rows / 2.0 {
            if sa < sb { sa += rows } else { sb += rows }
        }
        if pole(sa) {
            ta = tb;
        } else if pole(sb) {
            tb = ta;
        }
        if self.patch.round && (ta - tb).abs() > columns / 2.0 {
            if ta < tb { ta += columns } else { tb += columns }
        }
        let (s, t) = (sa + (sb - sa) * f, ta + (tb - ta) * f);
        let s = if self.patch.closed && s >= rows { s - rows } else { s };
        [s, if self.patch.round && t >= columns { t - columns } else { t }]
    }

    fn at(&self, corner: u32) -> [f64; 2] {
        let corner = &self.corners[corner as usize];
        [corner.s, corner.t]
    }

    /// Halves edges near the rims of drilled holes until they are short
    /// enough for the rim to look round. Neighbours agree, as an edge decides.
    fn refine(&mut self, recipe: &Recipe) {
        for _ in 0..5 {
            let mut middles: HashMap<(u32, u32), u32> = HashMap::new();
            for [a, b, c] in self.triangles.clone() {
                for (a, b) in [(a, b), (b, c), (c, a)] {
                    let key = (a.min(b), a.max(b));
                    if !middles.contains_key(&key) && self.too_long(recipe, key) {
                        let [s, t] = self.between(self.at(key.0), self.at(key.1), 0.5);
                        let middle = self.corner(s, t);
                        middles.insert(key, middle);
                    }
                }
            }
            if middles.is_empty() {
                return;
            }
            let mut triangles = Vec::with_capacity(self.triangles.len() * 2);
            for &[a, b, c] in &self.triangles {
                let middle = |a: u32, b: u32| middles.get(&(a.min(b), a.max(b))).copied();
                quarter([a, b, c], [middle(a, b), middle(b, c), middle(c, a)], &mut triangles);
            }
            self.triangles = triangles;
        }
    }

    fn too_long(&self, recipe: &Recipe, (a, b): (u32, u32)) -> bool {
        let (a, b) = (self.corners[a as usize].place, self.corners[b as usize].place);
        let (middle, length) = ((a + b) / 2.0, (b - a).norm());
        recipe.holes.iter().any(|hole| {
            let from = middle - hole.entry.normalize() * (recipe.diameter_m / 2.0);
            let axis = hole.axis.normalize();
            let radius = hole.diameter_m / 2.0;
            let along = from.dot(&axis);
            let off_rim = ((from - axis * along).norm() - radius).abs();
            along < hole.depth_m + length
                && off_rim < length.max(0.05 * M_PER_IN)
                && length > (radius * 0.4).max(0.05 * M_PER_IN)
        })
    }

    /// Divides triangles along the boundaries of their labels.
    fn divide(&mut self) {
        let mut crossings: HashMap<(u32, u32), u32> = HashMap::new();
        let whole = core::mem::take(&mut self.triangles);
        for [a, b, c] in whole {
            let [la, lb, lc] = [a, b, c].map(|n| self.corners[n as usize].label);
            if la == lb && lb == lc {
                self.push([a, b, c], la);
            } else if la == lb {
                self.clip([c, a, b], &mut crossings);
            } else if lb == lc {
                self.clip([a, b, c], &mut crossings);
            } else if lc == la {
                self.clip([b, c, a], &mut crossings);
            } else {
                let [ab, bc, ca] = [(a, b), (b, c), (c, a)].map(|(a, b)| self.crossing(a, b, &mut crossings));
                let middle = {
                    let half = self.between(self.at(ab), self.at(bc), 0.5);
                    let [s, t] = self.between(half, self.at(ca), 1.0 / 3.0);
                    self.corner(s, t)
                };
                for (corner, before, after, label) in [(a, ca, ab, la), (b, ab, bc, lb), (c, bc, ca, lc)] {
                    self.push([corner, after, middle], label);
                    self.push([corner, middle, before], label);
                }
            }
        }
    }

    fn push(&mut self, triangle: [u32; 3], label: Label) {
        self.triangles.push(triangle);
        self.labels.push(label);
    }

    /// Cuts the corner `a` off, whose label differs from that of b and c.
    fn clip(&mut self, [a, b, c]: [u32; 3], crossings: &mut HashMap<(u32, u32), u32>) {
        let [la, lb] = [a, b].map(|n| self.corners[n as usize].label);
        let (p, q) = (self.crossing(a, b, crossings), self.crossing(a, c, crossings));
        // One more point of the boundary between p and q.
        let chord = self.between(self.at(p), self.at(q), 0.5);
        let inner = self.label(chord[0], chord[1]) == la;
        let towards = if inner { self.between(self.at(b), self.at(c), 0.5) } else { self.at(a) };
        let [s, t] = self.boundary(chord, towards);
        let m = self.corner(s, t);
        self.push([a, p, m], la);
        self.push([a, m, q], la);
        self.push([p, b, m], lb);
        self.push([b, c, m], lb);
        self.push([c, q, m], lb);
    }

    /// The corner where the label changes on an edge.
    fn crossing(&mut self, a: u32, b: u32, crossings: &mut HashMap<(u32, u32), u32>) -> u32 {
        let key = (a.min(b), a.max(b));
        if let Some(&known) = crossings.get(&key) {
            return known;
        }
        let [s, t] = self.boundary(self.at(key.0), self.at(key.1));
        let corner = self.corner(s, t);
        crossings.insert(key, corner);
        corner
    }

    /// Where the label first differs from that at `from` on the way to `to`.
    fn boundary(&self, from: [f64; 2], to: [f64; 2]) -> [f64; 2] {
        let own = self.label(from[0], from[1]);
        let (mut low, mut high) = (0.0, 1.0);
        for _ in 0..HALVINGS {
            let f = f64::midpoint(low, high);
            let [s, t] = self.between(from, to, f);
            if self.label(s, t) == own { low = f } else { high = f }
        }
        self.between(from, to, f64::midpoint(low, high))
    }

    /// Hands each triangle to the parts on its two sides, and each part the
    /// border lines of what it got.
    fn give(&self, meshes: &mut [Mesh]) {
        let mut placed: HashMap<(u32, usize, bool), u32> = HashMap::new();
        let mut uses: HashMap<(usize, u32, u32), u32> = HashMap::new();
        for (&triangle, &[inner, outer]) in self.triangles.iter().zip(&self.labels) {
            if inner == outer {
                continue;
            }
            let sides = [(inner, false), (outer, true)];
            for (part, flip) in sides.into_iter().filter_map(|(part, flip)| Some((number(part?), flip))) {
                let mesh = &mut meshes[part];
                let [a, b, c] = triangle;
                for n in if flip { [a, c, b] } else { [a, b, c] } {
                    let id = *placed.entry((n, part, flip)).or_insert_with(|| {
                        let corner = &self.corners[n as usize];
                        let normal = if flip { -corner.normal } else { corner.normal };
                        mesh.positions.push(corner.place.map(|x| x as f32).into());
                        mesh.normals.push(normal.map(|x| x as f32).into());
                        (mesh.positions.len() - 1) as u32
                    });
                    mesh.triangles.push(id);
                }
                for (a, b) in [(a, b), (b, c), (c, a)] {
                    *uses.entry((part, a.min(b), a.max(b))).or_insert(0) += 1;
                }
            }
        }
        let mut borders: Vec<_> = uses.into_iter().filter(|&(_, count)| count == 1).map(|(key, _)| key).collect();
        borders.sort_unstable();
        for (part, a, b) in borders {
            let place = |n: u32| self.corners[n as usize].place.map(|x| x as f32).into();
            meshes[part].edges.push([place(a), place(b)]);
        }
    }
}

/// Splits a triangle at the given middles of its edges ab, bc, ca.
fn quarter([a, b, c]: [u32; 3], middles: [Option<u32>; 3], out: &mut Vec<[u32; 3]>) {
    match middles {
        [None, None, None] => out.push([a, b, c]),
        [Some(ab), Some(bc), Some(ca)] => out.extend([[a, ab, ca], [ab, b, bc], [bc, c, ca], [ab, bc, ca]]),
        [Some(ab), None, None] => out.extend([[a, ab, c], [ab, b, c]]),
        [Some(ab), Some(bc), None] => out.extend([[b, bc, ab], [a, ab, bc], [a, bc, c]]),
        [ab, bc, ca] => quarter([b, c, a], [bc, ca, ab], out),
    }
}

#[cfg(test)]
mod tests;
