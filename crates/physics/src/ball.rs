//! The one primitive: which material a straight line meets, and where.

use nalgebra::{Matrix3, Vector3};

use crate::check::{RecipeError, check, unit};
use crate::recipe::{Hole, Recipe};
use crate::solid::{Form, Lathe, Placed};
use crate::walk::{Crossings, Layer, Stack, Stretches};

/// Which part of the ball a point belongs to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Part {
    /// The coverstock.
    Cover,
    /// A piece, by its place in the recipe.
    Piece(usize),
}

/// A straight line, `origin_m + t_m * direction`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Line {
    /// A point of the line.
    pub origin_m: Vector3<f64>,
    /// Unit vector along the line.
    pub direction: Vector3<f64>,
}

/// A stretch of a line that lies in one part of the ball.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Run {
    /// Where the stretch begins.
    pub from_m: f64,
    /// Where it ends; always above `from_m`.
    pub to_m: f64,
    /// What fills it.
    pub part: Part,
    /// Which surface the stretch begins at. Neighbouring lines whose runs have
    /// the same faces in the same order see the same smooth surfaces.
    pub from_face: Face,
    /// Which surface it ends at.
    pub to_face: Face,
}

/// A smooth surface that bounds a run.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Face {
    /// Which solid: 0 is the ball's own sphere, then pieces with their cuts,
    /// then holes, in recipe order.
    pub solid: u16,
    /// Which smooth surface of that solid (a profile side, a box side, …).
    pub surface: u16,
}

/// A recipe that can be made, ready to be asked what is where.
///
/// ```
/// use pithball_physics::{ball::{Ball, Line, Part}, recipe::{Piece, Recipe, Shape, Solid}};
/// let core = Solid { shape: Shape::Sphere { diameter_m: 0.1 }, squash: [1.0; 2], turn_rad: [0.0; 3], at_m: [0.0; 3].into() };
/// let ball = Ball::new(&Recipe {
///     diameter_m: 0.2,
///     cover_density_kg_m3: 1200.0,
///     pieces: vec![Piece { density_kg_m3: 1500.0, solid: core, cuts: vec![] }],
///     holes: vec![],
/// })?;
/// let runs = ball.runs(&Line { origin_m: [0.0; 3].into(), direction: [1.0, 0.0, 0.0].into() });
/// assert_eq!(runs.iter().map(|r| r.part).collect::<Vec<_>>(), [Part::Cover, Part::Piece(0), Part::Cover]);
/// # Ok::<(), pithball_physics::check::RecipeError>(())
/// ```
#[derive(Clone, Debug)]
pub struct Ball {
    pub(crate) radius_m: f64,
    /// Densities, the cover's first, then the pieces'.
    pub(crate) densities_kg_m3: Vec<f64>,
    /// Solid 0 is the ball's sphere.
    pub(crate) stack: Stack,
}

impl Ball {
    /// Checks a recipe and makes it ready.
    ///
    /// # Errors
    /// [`RecipeError`] says which part of the recipe cannot be, and why.
    pub fn new(recipe: &Recipe) -> Result<Self, RecipeError> {
        check(recipe)?;
        Ok(Self::assembled(recipe))
    }

    /// A recipe made ready without asking whether its pieces stay inside the
    /// ball: what sticks out counts as if the cover had been taken away there.
    /// Its sizes must be accepted ones.
    pub(crate) fn assembled(recipe: &Recipe) -> Self {
        let radius_m = 0.5 * recipe.diameter_m;
        let mut solids = vec![Placed::with(Form::Sphere, Matrix3::from_diagonal_element(radius_m), Vector3::zeros())];
        let mut layers = Vec::new();
        for (n, piece) in recipe.pieces.iter().enumerate() {
            let solid = solids.len();
            solids.push(Placed::new(&piece.solid));
            let turn = crate::solid::turn(piece.solid.turn_rad);
            solids.extend(piece.cuts.iter().map(|cut| Placed::new(cut).moved(&turn, &piece.solid.at_m)));
            layers.push(Layer { part: n + 1, solid, cuts: (solid + 1..solids.len()).collect() });
        }
        let first_hole = solids.len();
        solids.extend(recipe.holes.iter().filter_map(|hole| drilled(hole, radius_m)));
        let without = (first_hole..solids.len()).collect();
        let densities_kg_m3 = recipe.densities_kg_m3();
        Self { radius_m, densities_kg_m3, stack: Stack { solids, within: vec![0], without, layers, base: 0 } }
    }

    /// Radius of the ball.
    pub fn radius_m(&self) -> f64 {
        self.radius_m
    }

    /// Number of pieces.
    pub fn pieces(&self) -> usize {
        self.stack.layers.len()
    }

    /// The stretches of a line inside the ball, in order; holes are left out.
    pub fn runs(&self, line: &Line) -> Vec<Run> {
        let mut stretches = Stretches::new();
        self.stack.walk(&line.origin_m, &line.direction, &mut Crossings::new(), &mut stretches);
        stretches
            .iter()
            .map(|s| Run { from_m: s.from, to_m: s.to, part: part(s.part), from_face: s.from_face, to_face: s.to_face })
            .collect()
    }

    /// The part at a point; `None` outside the ball and in a hole. On a
    /// surface, either neighbour.
    pub fn part_at(&self, point_m: &Vector3<f64>) -> Option<Part> {
        self.stack.part_at(point_m).map(part)
    }
}

fn part(n: usize) -> Part {
    n.checked_sub(1).map_or(Part::Cover, Part::Piece)
}

/// What a drill takes away: a cylinder from the flat bottom outward past the
/// ball's surface, its z axis pointing out.
fn drilled(hole: &Hole, radius_m: f64) -> Option<Placed> {
    let (entry, axis) = (unit(&hole.entry)? * radius_m, unit(&hole.axis)?);
    let out = -axis;
    // Nothing of the ball is farther than 2R from the entry: what reaches
    // beyond that takes away no more. The far end lies beyond the ball.
    let (depth, radius) = (hole.depth_m.min(3.0 * radius_m), (0.5 * hole.diameter_m).min(3.0 * radius_m));
    let (bottom, length) = (entry + axis * depth, depth + 4.0 * radius_m);
    let x = if out.x.abs() < 0.6 { Vector3::x() } else { Vector3::y() };
    let x = (x - out * x.dot(&out)).normalize();
    let frame = Matrix3::from_columns(&[x, out.cross(&x), out]);
    let cylinder = Lathe::new(&[[0.0, 0.0], [radius, 0.0], [radius, length], [0.0, length]]);
    Some(Placed::with(Form::Lathe(cylinder), frame, bottom))
}
