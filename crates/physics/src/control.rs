//! The controls of a recipe: every number that a maker can turn up or down.

use crate::ladder::grown;
use crate::recipe::{Recipe, Shape};

/// One number of a recipe.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Control {
    /// Density of the cover.
    CoverDensity,
    /// Diameter of the ball.
    Diameter,
    /// Density of a piece.
    Density(usize),
    /// A length of a piece's shape.
    Size(usize, Size),
    /// All lengths of a piece, cuts and all, as a factor on what they are.
    Scale(usize),
    /// Position of a piece along x, y or z.
    At(usize, usize),
    /// Turn of a piece about x, y or z.
    Turn(usize, usize),
    /// Squash of a piece in its own x or y.
    Squash(usize, usize),
}

/// A length of a shape.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Size {
    /// Diameter of a sphere or cylinder.
    Diameter,
    /// Height of a cylinder or frustum.
    Height,
    /// Diameter of a frustum at the bottom.
    Bottom,
    /// Diameter of a frustum at the top.
    Top,
    /// Diameter of a ring from tube centre to tube centre.
    Ring,
    /// Diameter of a ring's tube.
    Tube,
    /// Axis or edge of an ellipsoid or box along x, y or z.
    Edge(usize),
    /// All radii of a profile, as a factor on what they are.
    Wide,
    /// All heights of a profile, as a factor on what they are.
    Tall,
}

/// What a control's value is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Quantity {
    /// kg/m³.
    Density,
    /// m.
    Length,
    /// rad.
    Angle,
    /// No unit.
    Ratio,
}

impl Control {
    /// Every control of a recipe, in its order. Turns about its own axis of a
    /// shape of revolution, which change nothing, are left out.
    pub fn all(recipe: &Recipe) -> Vec<Self> {
        let mut all = vec![Self::CoverDensity, Self::Diameter];
        for (n, piece) in recipe.pieces.iter().enumerate() {
            all.push(Self::Density(n));
            all.extend(sizes(&piece.solid.shape).iter().map(|size| Self::Size(n, *size)));
            all.push(Self::Scale(n));
            all.extend((0..3).map(|axis| Self::At(n, axis)));
            let revolved = !matches!(piece.solid.shape, Shape::Ellipsoid { .. } | Shape::Box { .. });
            let upright = piece.solid.turn_rad[..2] == [0.0; 2];
            let round = revolved && piece.solid.squash[0] == piece.solid.squash[1] && piece.cuts.is_empty();
            let sphere = matches!(piece.solid.shape, Shape::Sphere { .. }) && round && piece.solid.squash[0] == 1.0;
            let turns = if sphere {
                0
            } else if round && upright {
                2
            } else {
                3
            };
            all.extend((0..turns).map(|axis| Self::Turn(n, axis)));
            if revolved {
                all.extend((0..2).map(|axis| Self::Squash(n, axis)));
            }
        }
        all
    }

    /// What its value is.
    pub fn quantity(self) -> Quantity {
        match self {
            Self::CoverDensity | Self::Density(_) => Quantity::Density,
            Self::Size(_, Size::Wide | Size::Tall) | Self::Scale(_) | Self::Squash(..) => Quantity::Ratio,
            Self::Diameter | Self::Size(..) | Self::At(..) => Quantity::Length,
            Self::Turn(..) => Quantity::Angle,
        }
    }

    /// Its value in the recipe, SI; `None` where the recipe has no such control.
    pub fn value(self, recipe: &Recipe) -> Option<f64> {
        let mut recipe = recipe.clone();
        match self {
            Self::Scale(piece) => recipe.pieces.get(piece).map(|_| 1.0),
            Self::Size(piece, Size::Wide | Size::Tall) => {
                matches!(recipe.pieces.get(piece)?.solid.shape, Shape::Lathe { .. }).then_some(1.0)
            }
            _ => self.number(&mut recipe).map(|number| *number),
        }
    }

    /// The recipe with another value; `None` where it has no such control.
    /// Whether it can be made is another question.
    pub fn with(self, recipe: &Recipe, value: f64) -> Option<Recipe> {
        let mut changed = recipe.clone();
        match self {
            Self::Scale(piece) => grown(changed.pieces.get_mut(piece)?, value),
            Self::Size(piece, size @ (Size::Wide | Size::Tall)) => {
                let Shape::Lathe { profile_m } = &mut changed.pieces.get_mut(piece)?.solid.shape else { return None };
                let coordinate = usize::from(size == Size::Tall);
                profile_m.iter_mut().for_each(|point| point[coordinate] *= value);
            }
            _ => *self.number(&mut changed)? = value,
        }
        Some(changed)
    }

    fn number(self, recipe: &mut Recipe) -> Option<&mut f64> {
        match self {
            Self::CoverDensity => Some(&mut recipe.cover_density_kg_m3),
            Self::Diameter => Some(&mut recipe.diameter_m),
            Self::Density(piece) => Some(&mut recipe.pieces.get_mut(piece)?.density_kg_m3),
            Self::Size(piece, size) => length(&mut recipe.pieces.get_mut(piece)?.solid.shape, size),
            Self::Scale(_) => None,
            Self::At(piece, axis) => recipe.pieces.get_mut(piece)?.solid.at_m.get_mut(axis),
            Self::Turn(piece, axis) => recipe.pieces.get_mut(piece)?.solid.turn_rad.get_mut(axis),
            Self::Squash(piece, axis) => recipe.pieces.get_mut(piece)?.solid.squash.get_mut(axis),
        }
    }
}

fn sizes(shape: &Shape) -> &'static [Size] {
    match shape {
        Shape::Sphere { .. } => &[Size::Diameter],
        Shape::Ellipsoid { .. } | Shape::Box { .. } => &[Size::Edge(0), Size::Edge(1), Size::Edge(2)],
        Shape::Cylinder { .. } => &[Size::Diameter, Size::Height],
        Shape::Frustum { .. } => &[Size::Bottom, Size::Top, Size::Height],
        Shape::Ring { .. } => &[Size::Ring, Size::Tube],
        Shape::Lathe { .. } => &[Size::Wide, Size::Tall],
    }
}

fn length(shape: &mut Shape, size: Size) -> Option<&mut f64> {
    match (shape, size) {
        (Shape::Sphere { diameter_m } | Shape::Cylinder { diameter_m, .. }, Size::Diameter) => Some(diameter_m),
        (Shape::Cylinder { height_m, .. } | Shape::Frustum { height_m, .. }, Size::Height) => Some(height_m),
        (Shape::Frustum { bottom_diameter_m, .. }, Size::Bottom) => Some(bottom_diameter_m),
        (Shape::Frustum { top_diameter_m, .. }, Size::Top) => Some(top_diameter_m),
        (Shape::Ring { ring_diameter_m, .. }, Size::Ring) => Some(ring_diameter_m),
        (Shape::Ring { tube_diameter_m, .. }, Size::Tube) => Some(tube_diameter_m),
        (Shape::Ellipsoid { size_m } | Shape::Box { size_m }, Size::Edge(axis)) => size_m.get_mut(axis),
        _ => None,
    }
}
