//! The cover's thickness as a map on the ball.

use nalgebra::Vector3;
use physics::ball::Ball;
use physics::cover::Poured;
use three_d::{Context, CoreError, ElementBuffer, Program, Vec3, VertexBuffer};

use crate::convert::vec3;

/// Steps from pole to pole; twice as many go round.
const ROWS: usize = 90;
/// Steps between classes, and classes of thickness: fixed in the shader.
pub const LIMITS: usize = 8;

/// How the cover's thickness is painted.
#[derive(Clone, Debug)]
pub struct CoverLook {
    /// Where one class ends and the next begins, ascending.
    pub limits_m: [f64; LIMITS],
    /// Colour of each class, sRGB, the thinnest first.
    pub colours: [[f32; 3]; LIMITS + 1],
    /// Directions whose places are asked for; the first bears a sign.
    pub spots: Vec<Vector3<f64>>,
}

/// The ball's surface with the thickness at every corner.
#[derive(Clone, Debug)]
pub struct Globe {
    /// Corners, in metres.
    pub positions: Vec<Vector3<f64>>,
    /// Thickness there; under a hole's opening, as it was poured.
    pub thickness_m: Vec<f32>,
    /// To the nearest hole's wall, below 0 where it opens: between corners the
    /// way is all but straight, so that its zero draws the rim.
    pub to_hole_m: Vec<f32>,
    /// Corner numbers, three a triangle.
    pub triangles: Vec<u32>,
}

impl Globe {
    /// Asks physics what lies under every corner.
    pub fn new(ball: &Ball) -> Self {
        let (radius_m, columns, poured) = (ball.radius_m(), 2 * ROWS, Poured::new(ball));
        let mut globe =
            Self { positions: Vec::new(), thickness_m: Vec::new(), to_hole_m: Vec::new(), triangles: Vec::new() };
        for row in 0..=ROWS {
            let (sine, cosine) = (core::f64::consts::PI * row as f64 / ROWS as f64).sin_cos();
            for column in 0..=columns {
                let (s, c) = (core::f64::consts::TAU * column as f64 / columns as f64).sin_cos();
                let direction = Vector3::new(sine * c, sine * s, cosine);
                let under = poured.under(&direction);
                globe.positions.push(direction * radius_m);
                globe.thickness_m.push(under.thickness_m as f32);
                globe.to_hole_m.push(under.to_hole_m.min(radius_m) as f32);
            }
        }
        let at = |row: usize, column: usize| (row * (columns + 1) + column) as u32;
        for row in 0..ROWS {
            for column in 0..columns {
                let [a, b] = [at(row, column), at(row, column + 1)];
                let [c, d] = [at(row + 1, column), at(row + 1, column + 1)];
                globe.triangles.extend([a, c, b, b, c, d]);
            }
        }
        globe
    }
}

/// A globe on the graphics card, and its shader.
pub(crate) struct GpuGlobe {
    pub(crate) position: VertexBuffer<Vec3>,
    pub(crate) thickness: VertexBuffer<f32>,
    pub(crate) to_hole: VertexBuffer<f32>,
    pub(crate) triangles: ElementBuffer<u32>,
}

impl GpuGlobe {
    pub(crate) fn new(context: &Context, globe: &Globe) -> Self {
        let positions: Vec<Vec3> = globe.positions.iter().map(vec3).collect();
        Self {
            position: VertexBuffer::new_with_data(context, &positions),
            thickness: VertexBuffer::new_with_data(context, &globe.thickness_m),
            to_hole: VertexBuffer::new_with_data(context, &globe.to_hole_m),
            triangles: ElementBuffer::new_with_data(context, &globe.triangles),
        }
    }
}

pub(crate) fn program(context: &Context) -> Result<Program, CoreError> {
    Program::from_source(context, include_str!("shaders/cover.vert"), include_str!("shaders/cover.frag"))
}
