//! The one primitive: which material a straight line meets, and where.

use nalgebra::Vector3;

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
    /// Which smooth surface of that solid (a profile edge, a box side, …).
    pub surface: u16,
}
