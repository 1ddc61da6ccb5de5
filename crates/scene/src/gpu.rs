//! What is kept on the graphics card.

use physics::section::{Plane, Region, Rung, Section};
use three_d::{Context, CoreError, ElementBuffer, Program, Vec2, Vec3, VertexBuffer};

use crate::convert::{array2, array3, vec3};
use crate::skin::{Mesh, number};

/// Strips of a cap reach this far past their ends, so that no crack shows
/// between neighbours, in metres.
const OVERLAP_M: f64 = 6e-5;

/// The shaders.
pub(crate) struct Programs {
    pub(crate) solid: Program,
    pub(crate) cap: Program,
    pub(crate) line: Program,
    pub(crate) mark: Program,
}

impl Programs {
    pub(crate) fn new(context: &Context) -> Result<Self, CoreError> {
        let program = |vertex: &str, fragment: &str| Program::from_source(context, vertex, fragment);
        Ok(Self {
            solid: program(include_str!("shaders/solid.vert"), include_str!("shaders/solid.frag"))?,
            cap: program(include_str!("shaders/cap.vert"), include_str!("shaders/cap.frag"))?,
            line: program(include_str!("shaders/line.vert"), include_str!("shaders/line.frag"))?,
            mark: program(include_str!("shaders/mark.vert"), include_str!("shaders/mark.frag"))?,
        })
    }
}

/// Straight lines: two triangles each, laid out on the screen by the shader.
pub(crate) struct GpuLines {
    pub(crate) from: VertexBuffer<Vec3>,
    pub(crate) to: VertexBuffer<Vec3>,
    pub(crate) corner: VertexBuffer<Vec2>,
    pub(crate) triangles: ElementBuffer<u32>,
}

impl GpuLines {
    pub(crate) fn new(context: &Context, lines: impl Iterator<Item = [Vec3; 2]>) -> Self {
        let (from, to): (Vec<Vec3>, Vec<Vec3>) = lines.flat_map(|[a, b]| [(a, b); 4]).unzip();
        let (corner, triangles) = quads(from.len() / 4, 0.0);
        Self {
            from: VertexBuffer::new_with_data(context, &from),
            to: VertexBuffer::new_with_data(context, &to),
            corner: VertexBuffer::new_with_data(context, &corner),
            triangles: ElementBuffer::new_with_data(context, &triangles),
        }
    }
}

/// Signs that face the eye.
pub(crate) struct GpuSigns {
    pub(crate) place: VertexBuffer<Vec3>,
    pub(crate) shape: VertexBuffer<f32>,
    pub(crate) corner: VertexBuffer<Vec2>,
    pub(crate) triangles: ElementBuffer<u32>,
}

impl GpuSigns {
    pub(crate) fn new(context: &Context, signs: impl Iterator<Item = (Vec3, f32)>) -> Self {
        let (place, shape): (Vec<Vec3>, Vec<f32>) = signs.flat_map(|sign| [sign; 4]).unzip();
        let (corner, triangles) = quads(place.len() / 4, -1.0);
        Self {
            place: VertexBuffer::new_with_data(context, &place),
            shape: VertexBuffer::new_with_data(context, &shape),
            corner: VertexBuffer::new_with_data(context, &corner),
            triangles: ElementBuffer::new_with_data(context, &triangles),
        }
    }
}

/// Corners from (`left`, −1) to (1, 1), and the two triangles of each quad.
fn quads(count: usize, left: f32) -> (Vec<Vec2>, Vec<u32>) {
    let corners = [Vec2::new(left, -1.0), Vec2::new(1.0, -1.0), Vec2::new(1.0, 1.0), Vec2::new(left, 1.0)];
    let triangles = (0..count as u32).flat_map(|quad| [0, 1, 2, 0, 2, 3].map(|corner| 4 * quad + corner));
    (corners.repeat(count), triangles.collect())
}

/// A part's surface.
pub(crate) struct GpuMesh {
    pub(crate) position: VertexBuffer<Vec3>,
    pub(crate) normal: VertexBuffer<Vec3>,
    pub(crate) triangles: ElementBuffer<u32>,
    pub(crate) edges: GpuLines,
}

impl GpuMesh {
    pub(crate) fn new(context: &Context, mesh: &Mesh) -> Self {
        let vectors = |list: &[[f32; 3]]| list.iter().copied().map(array3).collect::<Vec<_>>();
        Self {
            position: VertexBuffer::new_with_data(context, &vectors(&mesh.positions)),
            normal: VertexBuffer::new_with_data(context, &vectors(&mesh.normals)),
            triangles: ElementBuffer::new_with_data(context, &mesh.triangles),
            edges: GpuLines::new(context, mesh.edges.iter().map(|line| line.map(array3))),
        }
    }
}

/// A part's cut face.
pub(crate) struct GpuCap {
    pub(crate) part: usize,
    pub(crate) position: VertexBuffer<Vec2>,
    pub(crate) triangles: ElementBuffer<u32>,
    pub(crate) outline: GpuLines,
}

/// The cut faces of one plane.
pub(crate) struct GpuSection {
    pub(crate) plane: Plane,
    pub(crate) caps: Vec<GpuCap>,
}

impl GpuSection {
    pub(crate) fn new(context: &Context, section: &Section) -> Self {
        let caps = section.regions.iter().map(|region| cap(context, &section.plane, region)).collect();
        Self { plane: section.plane, caps }
    }
}

fn cap(context: &Context, plane: &Plane, region: &Region) -> GpuCap {
    let mut position: Vec<Vec2> = Vec::new();
    let mut triangles: Vec<u32> = Vec::new();
    for strip in &region.strips {
        let rungs = spaced(&strip.rungs);
        let last = rungs.len() - 1;
        for (place, rung) in rungs.iter().enumerate() {
            let v_m = match place {
                0 => rung.v_m - OVERLAP_M,
                p if p == last => rung.v_m + OVERLAP_M,
                _ => rung.v_m,
            };
            let base = position.len() as u32;
            position.extend([rung.left_m, rung.right_m].map(|u_m| array2([u_m, v_m])));
            if place > 0 {
                triangles.extend([base - 2, base - 1, base, base - 1, base + 1, base]);
            }
        }
    }
    let point = |at: &[f64; 2]| vec3(&plane.point(at[0], at[1]));
    let outline = region
        .loops
        .iter()
        .flat_map(|path| path.iter().zip(path.iter().cycle().skip(1)))
        .map(|(a, b)| [point(a), point(b)]);
    GpuCap {
        part: number(region.part),
        position: VertexBuffer::new_with_data(context, &position),
        triangles: ElementBuffer::new_with_data(context, &triangles),
        outline: GpuLines::new(context, outline),
    }
}

/// The first and last rung and those between that leave triangles tall enough
/// to be filled in single precision.
fn spaced(rungs: &[Rung]) -> Vec<Rung> {
    let mut kept: Vec<Rung> = Vec::with_capacity(rungs.len());
    for &rung in rungs {
        if kept.last().is_none_or(|last| rung.v_m - last.v_m > OVERLAP_M / 2.0) {
            kept.push(rung);
        }
    }
    match rungs.last() {
        Some(&last) if kept.len() > 1 => {
            kept.pop();
            kept.push(last);
        }
        Some(&last) => kept.push(last),
        None => {}
    }
    kept
}
