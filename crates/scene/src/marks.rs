//! Pin, centre of gravity and RG axes; PAP and grip centre of a drilled ball.

use nalgebra::Vector3;
use physics::ball::Line;
use physics::drill;
use physics::section::Plane;
use physics::weigh::Weighed;

use crate::arrange::Arrangement;
use crate::camera::Camera;
use crate::model::Model;
use crate::pick::first;

/// How far axis rods reach, in radii of the ball.
const ROD: f64 = 1.07;
/// A mark this near the surface is not hidden by it, in metres.
const NEAR_M: f64 = 5e-4;

/// A name to be set beside its mark.
#[derive(Clone, Debug, PartialEq)]
pub struct Label {
    /// Which mark.
    pub mark: Mark,
    /// Device pixels from the left.
    pub x_px: f64,
    /// Device pixels from the top.
    pub y_px: f64,
    /// False where material stands before the mark.
    pub visible: bool,
}

/// What is marked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Mark {
    /// Top of the ball's +z axis.
    Pin,
    /// Centre of gravity.
    Cg,
    /// Axis of lowest RG, at its upper end.
    LowRg,
    /// Axis of highest RG, at its end towards +x.
    HighRg,
    /// Positive axis point.
    Pap,
    /// Middle of the grip.
    GripCentre,
    /// A spot of the cover's map, by its number.
    Spot(usize),
}

/// Rods and signs to be drawn.
#[derive(Clone, Debug, Default)]
pub(crate) struct Marks {
    /// Ends of the rods: low RG, then high RG.
    pub(crate) rods: [[Vector3<f64>; 2]; 2],
    /// Places of signs with their shape in the shader.
    pub(crate) signs: Vec<(Vector3<f64>, f32)>,
    named: Vec<(Mark, Vector3<f64>)>,
}

impl Marks {
    /// A place of the layout on what the saw took away is not marked.
    pub(crate) fn new(weighed: &Weighed, layout: Option<&drill::Marks>, plane: Option<&Plane>) -> Self {
        let reach_m = ROD * weighed.radius_m;
        let [low, _, high] = weighed.axes;
        let rods = [low, high].map(|axis| [-axis * reach_m, axis * reach_m].map(|end| end + weighed.cg_m));
        let pin = Vector3::z() * weighed.radius_m;
        let mut signs = vec![(pin, 2.0), (weighed.cg_m, 1.0)];
        signs.extend(rods[0].map(|end| (end, 0.0)));
        signs.extend(rods[1].map(|end| (end, 3.0)));
        let mut named =
            vec![(Mark::Pin, pin), (Mark::Cg, weighed.cg_m), (Mark::LowRg, rods[0][1]), (Mark::HighRg, rods[1][1])];
        if let Some(layout) = layout {
            for (mark, at, sign) in [(Mark::Pap, layout.pap, 4.0), (Mark::GripCentre, layout.grip_centre, 5.0)] {
                let place = at * weighed.radius_m;
                if plane.is_none_or(|plane| plane.normal.dot(&place) <= plane.depth_m) {
                    signs.push((place, sign));
                    named.push((mark, place));
                }
            }
        }
        Self { rods, signs, named }
    }

    pub(crate) fn labels(&self, sight: &Sight) -> Vec<Label> {
        let label = |&(mark, place): &(Mark, Vector3<f64>)| {
            let [x_px, y_px] = sight.camera.project(&place);
            Label { mark, x_px, y_px, visible: sight.sees(&place) }
        };
        self.named.iter().map(label).collect()
    }
}

/// What is seen from where.
pub(crate) struct Sight<'a> {
    pub(crate) model: &'a Model,
    pub(crate) arrangement: &'a Arrangement,
    pub(crate) camera: &'a Camera,
}

impl Sight<'_> {
    /// Whether no material stands between the eye and a place.
    pub(crate) fn sees(&self, place_m: &Vector3<f64>) -> bool {
        let away = place_m - self.camera.eye_m;
        let ray = Line { origin_m: self.camera.eye_m, direction: away.normalize() };
        first(self.model, self.arrangement, &ray).is_none_or(|(t_m, _)| t_m > away.norm() - NEAR_M)
    }
}
