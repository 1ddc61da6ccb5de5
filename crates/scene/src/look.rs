//! What the picture shows: the whole state, owned by the page.

use physics::section::Plane;

use crate::cover::CoverLook;

/// Everything a picture depends on beside the ball.
#[derive(Clone, Debug)]
pub struct Look {
    /// Width of the canvas in device pixels, at least 1.
    pub width_px: f64,
    /// Height of the canvas in device pixels, at least 1.
    pub height_px: f64,
    /// Device pixels in one CSS pixel: lines keep their weight.
    pub pixel_ratio: f64,
    /// 0 looks along +y with +x to the right; grows as the eye walks towards +x.
    pub yaw_rad: f64,
    /// Height of the eye above the ball's equator, −π/2 to π/2.
    pub pitch_rad: f64,
    /// 1 fits the whole ball; larger is nearer.
    pub zoom: f64,
    /// What lies on the side the normal points to is sawn off.
    pub plane: Option<Plane>,
    /// 0 together to 1 fully pulled apart along the pin axis.
    pub exploded: f64,
    /// Parts not drawn, by number: 0 is the cover, n the n-th piece.
    pub hidden: Vec<usize>,
    /// The part that stands out.
    pub highlighted: Option<usize>,
    /// Whether pin, centre of gravity and RG axes are marked (while the ball is together).
    pub markers: bool,
    /// Whether the page behind is dark.
    pub dark: bool,
    /// Colour and hatching of each part, the cover first.
    pub paint: Vec<Paint>,
    /// Paints the whole ball by the thickness of its cover instead.
    pub cover: Option<CoverLook>,
}

/// How a part is painted.
#[derive(Clone, Copy, Debug)]
pub struct Paint {
    /// sRGB, 0 to 1.
    pub colour: [f32; 3],
    /// Number of a hatching; see [`Hatching::of`].
    pub hatch: u32,
}

impl Look {
    /// Whether a part is drawn.
    pub fn shows(&self, part: usize) -> bool {
        !self.hidden.contains(&part)
    }

    /// The paint of a part; a part without one is a plain grey.
    pub(crate) fn paint_of(&self, part: usize) -> Paint {
        self.paint.get(part).copied().unwrap_or(Paint { colour: [0.7; 3], hatch: 0 })
    }
}

/// One set of parallel hatching lines.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lines {
    /// Direction of the lines, anticlockwise from u, in degrees.
    pub angle_deg: f64,
    /// Distance from line to line.
    pub spacing_in: f64,
}

/// Hatching after the practice of ISO 128: thin lines, by preference at 45°,
/// areas told apart by direction and spacing.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hatching {
    /// First set of lines.
    pub first: Option<Lines>,
    /// A second set, for crossed hatching.
    pub second: Option<Lines>,
    /// Dots where the two sets cross instead of the lines.
    pub dots: bool,
}

impl Hatching {
    /// Hatching by number: 0 plain, 1 rising lines, 2 falling lines, 3
    /// crossed, 4 level lines, 5 upright lines, 6 dots. Any other is plain.
    pub fn of(number: u32) -> Self {
        let lines = |angle_deg, spacing_in| Some(Lines { angle_deg, spacing_in });
        let (first, second) = match number {
            1 => (lines(45.0, 0.14), None),
            2 => (lines(135.0, 0.14), None),
            3 => (lines(45.0, 0.19), lines(135.0, 0.19)),
            4 => (lines(0.0, 0.12), None),
            5 => (lines(90.0, 0.12), None),
            6 => (lines(45.0, 0.14), lines(135.0, 0.14)),
            _ => (None, None),
        };
        Self { first, second, dots: number == 6 }
    }
}
