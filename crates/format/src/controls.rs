//! The controls of a ball file by their places in it.

use physics::control::{Control, Quantity, Size};
use physics::figures::Figures;
use physics::units::{KG_M3_PER_G_CC, KG_PER_LB, M_PER_IN};
use serde::Serialize;

use crate::ball::BallFile;
use crate::node::one_of;
use crate::problem::Problem;
use crate::{Phrase, phrase};

/// A ball's numbers, or what they change by.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct FiguresDoc {
    /// Weight.
    pub weight_lb: f64,
    /// Lowest RG.
    pub low_rg_in: f64,
    /// High minus low RG.
    pub differential_in: f64,
    /// High minus middle RG.
    pub intermediate_differential_in: f64,
    /// Top weight on a scale arm of the ball's radius.
    pub top_weight_oz: f64,
}

impl From<&Figures> for FiguresDoc {
    fn from(figures: &Figures) -> Self {
        Self {
            weight_lb: figures.mass_kg / KG_PER_LB,
            low_rg_in: figures.low_rg_m / M_PER_IN,
            differential_in: figures.differential_m / M_PER_IN,
            intermediate_differential_in: figures.intermediate_differential_m / M_PER_IN,
            top_weight_oz: figures.top_weight_oz,
        }
    }
}

/// A control, named.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ControlDoc {
    /// Its place in the ball file, such as `pieces[1].at_in[2]`. A factor on
    /// what the file says ends in `scale`, `shape.wide` or `shape.tall`.
    pub control: String,
    /// The part it is of; null: the ball as a whole.
    pub part: Option<String>,
    /// What of it, in words.
    pub what: Phrase,
    /// `g/cc`, `in`, `deg`, or `×` for a factor.
    pub unit: &'static str,
}

/// What the unit of a control is in SI.
pub(crate) fn si(control: Control) -> f64 {
    match control.quantity() {
        Quantity::Density => KG_M3_PER_G_CC,
        Quantity::Length => M_PER_IN,
        Quantity::Angle => 1.0_f64.to_radians(),
        Quantity::Ratio => 1.0,
    }
}

/// The control's place in a ball file.
pub(crate) fn place(control: Control) -> String {
    let piece = |n: usize, rest: &str| format!("pieces[{n}].{rest}");
    match control {
        Control::CoverDensity => "cover.density_g_cc".to_owned(),
        Control::Diameter => "diameter_in".to_owned(),
        Control::Density(n) => piece(n, "density_g_cc"),
        Control::Scale(n) => piece(n, "scale"),
        Control::At(n, axis) => piece(n, &format!("at_in[{axis}]")),
        Control::Turn(n, axis) => piece(n, &format!("turn_deg[{axis}]")),
        Control::Squash(n, axis) => piece(n, &format!("shape.squash[{axis}]")),
        Control::Size(n, size) => piece(
            n,
            &match size {
                Size::Diameter => "shape.diameter_in".to_owned(),
                Size::Height => "shape.height_in".to_owned(),
                Size::Bottom => "shape.bottom_diameter_in".to_owned(),
                Size::Top => "shape.top_diameter_in".to_owned(),
                Size::Ring => "shape.ring_diameter_in".to_owned(),
                Size::Tube => "shape.tube_diameter_in".to_owned(),
                Size::Edge(axis) => format!("shape.size_in[{axis}]"),
                Size::Wide => "shape.wide".to_owned(),
                Size::Tall => "shape.tall".to_owned(),
            },
        ),
    }
}

impl BallFile {
    /// The control at a place of this file.
    ///
    /// # Errors
    /// Where there is none: which ones there are; `at` names who asks.
    pub(crate) fn control(&self, control: &str, at: &str) -> Result<Control, Problem> {
        let all = Control::all(&self.recipe());
        all.iter().copied().find(|one| place(*one) == control).ok_or_else(|| {
            let names: Vec<String> = all.iter().map(|one| place(*one)).collect();
            let control = format!("{control:?}");
            Problem::new(at, control.clone().into(), one_of(&names)).saying(phrase!(
                "no-control",
                "The ball has no control {control}.",
                control = control
            ))
        })
    }

    pub(crate) fn control_doc(&self, control: Control) -> ControlDoc {
        let axis = |axis: usize| ["x", "y", "z"].get(axis).copied().unwrap_or_default();
        let (piece, what) = match control {
            Control::CoverDensity => (None, phrase!("what-density", "density")),
            Control::Diameter => (None, phrase!("what-diameter", "diameter")),
            Control::Density(n) => (Some(n), phrase!("what-density", "density")),
            Control::Scale(n) => (Some(n), phrase!("what-scale", "size of all of it")),
            Control::At(n, along) => (Some(n), phrase!("what-place", "place along {axis}", axis = axis(along))),
            Control::Turn(n, about) => (Some(n), phrase!("what-turn", "turn about {axis}", axis = axis(about))),
            Control::Squash(n, along) => {
                (Some(n), phrase!("what-squash", "squash along its {axis}", axis = axis(along)))
            }
            Control::Size(n, size) => {
                let what = match size {
                    Size::Diameter => phrase!("what-diameter", "diameter"),
                    Size::Height => phrase!("what-height", "height"),
                    Size::Bottom => phrase!("what-bottom", "diameter at the bottom"),
                    Size::Top => phrase!("what-top", "diameter at the top"),
                    Size::Ring => phrase!("what-ring", "diameter of the ring"),
                    Size::Tube => phrase!("what-tube", "thickness of the ring"),
                    Size::Edge(along) => phrase!("what-edge", "size along its {axis}", axis = axis(along)),
                    Size::Wide => phrase!("what-wide", "width of the profile"),
                    Size::Tall => phrase!("what-tall", "height of the profile"),
                };
                (Some(n), what)
            }
        };
        let part = match control {
            Control::CoverDensity => Some(self.cover_name().to_owned()),
            _ => piece.and_then(|n| self.pieces.get(n)).map(|piece| piece.name.clone()),
        };
        let unit = match control.quantity() {
            Quantity::Density => "g/cc",
            Quantity::Length => "in",
            Quantity::Angle => "deg",
            Quantity::Ratio => "×",
        };
        ControlDoc { control: place(control), part, what, unit }
    }
}
