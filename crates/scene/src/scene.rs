//! Drawing.

use std::sync::Arc;

use nalgebra::Vector3;
use physics::ball::Ball;
use physics::drill;
use physics::recipe::Recipe;
use physics::section::{Plane, section};
use physics::units::M_PER_IN;
use physics::weigh::Weighed;
use three_d::{
    Blend, BlendEquationType, BlendMultiplierType, ClearState, Context, CoreError, Cull, DepthTest, Program,
    RenderStates, RenderTarget, Vec2, Vec3, Vec4, Viewport, WriteMask,
};

use crate::arrange::{Arrangement, Shown, arrange};
use crate::camera::Camera;
use crate::convert::{array3, mat4, vec3, vec4};
use crate::cover::{self, CoverLook, Globe, GpuGlobe};
use crate::gpu::{GpuCap, GpuLines, GpuMesh, GpuSection, GpuSigns, Programs};
use crate::look::{Hatching, Lines, Look};
use crate::marks::{Label, Mark, Marks, Sight};
use crate::model::Model;
use crate::pick::{Pick, camera, pick};

/// A plane that saws nothing off, as the shaders take it.
const NO_PLANE: Vec4 = Vec4::new(0.0, 0.0, 0.0, 1.0);
/// How far lines stand before the surfaces they lie on, in half line widths:
/// enough for a ribbon that faces the eye to clear a surface that slopes.
const LIFT: f64 = 1.0;
/// How close the closest hatching may look, in CSS pixels, and its spacing.
const LEAST_HATCH_PX: f64 = 5.5;
const CLOSEST_HATCH_IN: f64 = 0.12;
/// How much of the ground shows through parts beside a highlighted one.
const DIMMED: f32 = 0.62;

/// Draws balls into one canvas. Keeps only what is on the graphics card and
/// what is derived from the last ball.
pub struct Scene {
    context: Context,
    programs: Programs,
    model: Option<Model>,
    skin: Option<Vec<GpuMesh>>,
    surfaces: Option<Vec<GpuMesh>>,
    sections: Vec<GpuSection>,
    cover_program: Option<Program>,
    globe: Option<GpuGlobe>,
}

/// Colours that follow the theme.
struct Theme {
    ink: [f32; 3],
    ground: [f32; 3],
}

/// One frame's settings.
struct Frame<'a> {
    look: &'a Look,
    camera: Camera,
    theme: Theme,
    viewport: Viewport,
}

impl Scene {
    /// Takes a WebGL2 (or OpenGL) context.
    ///
    /// # Errors
    /// Where the context refuses the shaders.
    pub fn new(gl: Arc<three_d::context::Context>) -> Result<Self, CoreError> {
        let context = Context::from_gl_context(gl)?;
        let programs = Programs::new(&context)?;
        Ok(Self {
            context,
            programs,
            model: None,
            skin: None,
            surfaces: None,
            sections: Vec::new(),
            cover_program: None,
            globe: None,
        })
    }

    /// Draws one picture and says where the marks appear; `layout` are those of
    /// a drilled ball.
    pub fn draw(
        &mut self,
        recipe: &Recipe,
        ball: &Ball,
        weighed: &Weighed,
        layout: Option<&drill::Marks>,
        look: &Look,
    ) -> Vec<Label> {
        if let Some(cover) = &look.cover {
            return self.draw_cover(recipe, ball, look, cover);
        }
        let model = self.meet(recipe, ball);
        let arrangement = arrange(model, look);
        let camera = camera(look, &arrangement);
        let marks = (look.markers && look.exploded <= 0.0).then(|| Marks::new(weighed, layout, look.plane.as_ref()));
        let sight = Sight { model, arrangement: &arrangement, camera: &camera };
        let labels = marks.as_ref().map_or_else(Vec::new, |marks| marks.labels(&sight));
        let (seen, unseen): (Vec<_>, Vec<_>) =
            marks.iter().flat_map(|marks| &marks.signs).partition(|(place, _)| sight.sees(place));
        let whole = look.exploded <= 0.0 && look.hidden.is_empty();
        self.prepare(&arrangement, whole);
        let (width, height) = (look.width_px.max(1.0) as u32, look.height_px.max(1.0) as u32);
        let frame = Frame { look, camera, theme: Theme::of(look), viewport: Viewport::new_at_origo(width, height) };
        let screen = RenderTarget::screen(&self.context, width, height);
        screen.clear(ClearState::color_and_depth(0.0, 0.0, 0.0, 0.0, 1.0));
        let meshes = if whole { &self.skin } else { &self.surfaces };
        let Ok(_) = screen.write(|| {
            for shown in &arrangement.shown {
                if let Some(mesh) = meshes.as_ref().and_then(|m| m.get(shown.part)) {
                    frame.solid(&self.programs.solid, shown, mesh);
                }
                if let Some(cap) = self.cap(shown) {
                    frame.cap(&self.programs.cap, shown, cap);
                }
            }
            for shown in &arrangement.shown {
                if let Some(mesh) = meshes.as_ref().and_then(|m| m.get(shown.part)) {
                    frame.outline(&self.programs.line, shown, &mesh.edges, 1.3);
                }
                if let Some(cap) = self.cap(shown) {
                    frame.outline(&self.programs.line, shown, &cap.outline, 1.8);
                }
            }
            if let Some(marks) = &marks {
                frame.rods(&self.context, &self.programs.line, marks);
                frame.signs(&self.context, &self.programs.mark, &unseen, 0.4);
                frame.signs(&self.context, &self.programs.mark, &seen, 1.0);
            }
            Ok::<(), core::convert::Infallible>(())
        });
        labels
    }

    /// Draws the cover's thickness on the whole ball and says where the spots appear.
    fn draw_cover(&mut self, recipe: &Recipe, ball: &Ball, look: &Look, cover: &CoverLook) -> Vec<Label> {
        let look = Look { plane: None, exploded: 0.0, hidden: Vec::new(), highlighted: None, ..look.clone() };
        let arrangement = arrange(self.meet(recipe, ball), &look);
        let camera = camera(&look, &arrangement);
        let radius_m = ball.radius_m();
        let labels: Vec<Label> = cover
            .spots
            .iter()
            .enumerate()
            .map(|(n, spot)| {
                let out = spot.normalize();
                let [x_px, y_px] = camera.project(&(out * radius_m));
                Label { mark: Mark::Spot(n), x_px, y_px, visible: out.dot(&(camera.eye_m - out * radius_m)) > 0.0 }
            })
            .collect();
        self.prepare(&arrangement, true);
        let context = &self.context;
        if self.cover_program.is_none() {
            self.cover_program = cover::program(context).ok();
        }
        let globe = self.globe.get_or_insert_with(|| GpuGlobe::new(context, &Globe::new(ball)));
        let Some(program) = &self.cover_program else { return labels };
        let (width, height) = (look.width_px.max(1.0) as u32, look.height_px.max(1.0) as u32);
        let viewport = Viewport::new_at_origo(width, height);
        let frame = Frame { look: &look, camera, theme: Theme::of(&look), viewport };
        let screen = RenderTarget::screen(context, width, height);
        screen.clear(ClearState::color_and_depth(0.0, 0.0, 0.0, 0.0, 1.0));
        let Ok(_) = screen.write(|| {
            frame.globe(program, globe, cover);
            // The rims of holes.
            if let (Some(shown), Some(mesh)) = (arrangement.shown.first(), self.skin.iter().flatten().next()) {
                frame.outline(&self.programs.line, shown, &mesh.edges, 1.3);
            }
            let first = cover.spots.iter().zip(&labels).take(1);
            let signs: Vec<(Vector3<f64>, f32)> =
                first.filter(|(_, label)| label.visible).map(|(spot, _)| (spot.normalize() * radius_m, 1.0)).collect();
            frame.signs(context, &self.programs.mark, &signs.iter().collect::<Vec<_>>(), 1.0);
            Ok::<(), core::convert::Infallible>(())
        });
        labels
    }

    /// What a device pixel shows, counted from the top left.
    pub fn pick(&mut self, recipe: &Recipe, ball: &Ball, look: &Look, x_px: f64, y_px: f64) -> Option<Pick> {
        pick(self.meet(recipe, ball), look, x_px, y_px)
    }

    /// The model of a ball; what belonged to another ball is let go.
    fn meet(&mut self, recipe: &Recipe, ball: &Ball) -> &Model {
        let model = self.model.take().filter(|model| model.is_of(recipe));
        if model.is_none() {
            self.skin = None;
            self.surfaces = None;
            self.globe = None;
            self.sections.clear();
        }
        self.model.insert(model.unwrap_or_else(|| Model::new(recipe, ball)))
    }

    /// Makes what the arrangement needs and is not on the card yet.
    fn prepare(&mut self, arrangement: &Arrangement, whole: bool) {
        let Some(model) = &self.model else { return };
        let context = &self.context;
        let upload = |meshes: Vec<crate::skin::Mesh>| meshes.iter().map(|mesh| GpuMesh::new(context, mesh)).collect();
        if whole {
            self.skin.get_or_insert_with(|| upload(model.skin()));
        } else {
            self.surfaces.get_or_insert_with(|| upload(model.surfaces()));
        }
        let planes: Vec<Plane> = arrangement.shown.iter().filter_map(|shown| shown.plane).collect();
        self.sections.retain(|kept| planes.contains(&kept.plane));
        for plane in planes {
            if self.sections.iter().all(|kept| kept.plane != plane) {
                self.sections.push(GpuSection::new(context, &section(model.ball(), plane)));
            }
        }
    }

    fn cap(&self, shown: &Shown) -> Option<&GpuCap> {
        let section = self.sections.iter().find(|kept| Some(kept.plane) == shown.plane)?;
        section.caps.iter().find(|cap| cap.part == shown.part)
    }
}

impl Theme {
    fn of(look: &Look) -> Self {
        if look.dark {
            Self { ink: [0.055, 0.06, 0.065], ground: [0.16, 0.165, 0.175] }
        } else {
            Self { ink: [0.09, 0.09, 0.1], ground: [0.95, 0.94, 0.91] }
        }
    }
}

impl Frame<'_> {
    fn stands_out(&self, part: usize) -> bool {
        self.look.highlighted == Some(part)
    }

    fn dim(&self, part: usize) -> f32 {
        if self.look.highlighted.is_none_or(|own| own == part) { 0.0 } else { DIMMED }
    }

    fn size_px(&self) -> Vec2 {
        Vec2::new(self.viewport.width as f32, self.viewport.height as f32)
    }

    /// Lengths in CSS pixels to device pixels.
    fn px(&self, css_px: f64) -> f32 {
        (css_px * self.look.pixel_ratio) as f32
    }

    fn place(&self, program: &Program, offset_m: &Vector3<f64>) {
        program.use_uniform("view_projection", mat4(&self.camera.view_projection));
        program.use_uniform("offset_m", vec3(offset_m));
    }

    fn solid(&self, program: &Program, shown: &Shown, mesh: &GpuMesh) {
        if mesh.triangles.count() == 0 {
            return;
        }
        let Camera { eye_m, right, up, forward, .. } = &self.camera;
        self.place(program, &shown.offset_m);
        program.use_uniform("eye_m", vec3(&(eye_m - shown.offset_m)));
        program.use_uniform("right", vec3(right));
        program.use_uniform("up", vec3(up));
        program.use_uniform("forward", vec3(forward));
        program.use_uniform("plane", plane_of(shown));
        program.use_uniform("colour", array3(self.look.paint_of(shown.part).colour));
        program.use_uniform("ground", array3(self.theme.ground));
        program.use_uniform("ink", array3(self.theme.ink));
        program.use_uniform("dim", self.dim(shown.part));
        program.use_uniform("ink_px", self.px(0.7));
        program.use_vertex_attribute("position", &mesh.position);
        program.use_vertex_attribute("normal", &mesh.normal);
        program.draw_elements(opaque(), self.viewport, &mesh.triangles);
    }

    fn globe(&self, program: &Program, globe: &GpuGlobe, cover: &CoverLook) {
        let Camera { eye_m, right, up, forward, .. } = &self.camera;
        program.use_uniform("view_projection", mat4(&self.camera.view_projection));
        program.use_uniform("eye_m", vec3(eye_m));
        program.use_uniform("right", vec3(right));
        program.use_uniform("up", vec3(up));
        program.use_uniform("forward", vec3(forward));
        program.use_uniform("ink", array3(self.theme.ink));
        program.use_uniform("ink_px", self.px(0.6));
        program.use_uniform_array("limits_m", &cover.limits_m.map(|limit_m| limit_m as f32));
        program.use_uniform_array("colours", &cover.colours.map(array3));
        program.use_vertex_attribute("position", &globe.position);
        program.use_vertex_attribute("thickness", &globe.thickness);
        program.use_vertex_attribute("to_hole", &globe.to_hole);
        program.draw_elements(opaque(), self.viewport, &globe.triangles);
    }

    fn cap(&self, program: &Program, shown: &Shown, cap: &GpuCap) {
        let Some(plane) = shown.plane.filter(|_| cap.triangles.count() > 0) else { return };
        let paint = self.look.paint_of(shown.part);
        let hatching = Hatching::of(paint.hatch);
        self.place(program, &shown.offset_m);
        program.use_uniform("origin_m", vec3(&plane.point(0.0, 0.0)));
        program.use_uniform("u_axis", vec3(&plane.u));
        program.use_uniform("v_axis", vec3(&plane.v));
        program.use_uniform("colour", array3(paint.colour));
        program.use_uniform("ground", array3(self.theme.ground));
        program.use_uniform("hatch_ink", array3(self.theme.ink));
        program.use_uniform("dim", self.dim(shown.part));
        program.use_uniform("line_a", self.hatch_lines(hatching.first));
        program.use_uniform("line_b", self.hatch_lines(hatching.second));
        program.use_uniform("dots", f32::from(u8::from(hatching.dots)));
        program.use_uniform("hatch_px", self.px(1.0));
        program.use_vertex_attribute("position", &cap.position);
        program.draw_elements(opaque(), self.viewport, &cap.triangles);
    }

    /// Direction across the lines, and their spacing in metres (0: none). The
    /// spacing is doubled or halved until it looks as it does on a sheet.
    fn hatch_lines(&self, lines: Option<Lines>) -> Vec3 {
        let Some(Lines { angle_deg, spacing_in }) = lines else { return Vec3::new(0.0, 1.0, 0.0) };
        let (sin, cos) = angle_deg.to_radians().sin_cos();
        let looks_px = spacing_in * M_PER_IN / (self.camera.m_per_px * self.look.pixel_ratio);
        let doublings = (LEAST_HATCH_PX * spacing_in / CLOSEST_HATCH_IN / looks_px).log2().ceil();
        Vec3::new(-sin as f32, cos as f32, (spacing_in * M_PER_IN * doublings.exp2()) as f32)
    }

    fn outline(&self, program: &Program, shown: &Shown, lines: &GpuLines, width_px: f64) {
        let own = self.stands_out(shown.part);
        let width_px = if own { 1.9 * width_px } else { width_px };
        // A dimmed line is paler, not see-through, or its joints would show.
        let pale = 0.7 * self.dim(shown.part);
        let colour = [0, 1, 2].map(|n| self.theme.ink[n] + pale * (self.theme.ground[n] - self.theme.ink[n]));
        self.place(program, &shown.offset_m);
        let colour = array3(colour).extend(1.0);
        self.lines(program, lines, &Stroke { width_px, colour, plane: plane_of(shown), dash_m: 0.0, over: false });
    }

    fn lines(&self, program: &Program, lines: &GpuLines, stroke: &Stroke) {
        if lines.triangles.count() == 0 {
            return;
        }
        let width_px = self.px(stroke.width_px);
        program.use_uniform("size_px", self.size_px());
        program.use_uniform("width_px", width_px);
        program.use_uniform("half_width_px", width_px / 2.0);
        let half_px = f64::from(width_px) / 2.0 + 0.75;
        program.use_uniform("lift", (LIFT * half_px * self.camera.depth_per_px) as f32);
        program.use_uniform("plane", stroke.plane);
        program.use_uniform("line_colour", stroke.colour);
        program.use_uniform("dash_m", stroke.dash_m);
        program.use_vertex_attribute("from_m", &lines.from);
        program.use_vertex_attribute("to_m", &lines.to);
        program.use_vertex_attribute("corner", &lines.corner);
        program.draw_elements(laid_over(stroke.over), self.viewport, &lines.triangles);
    }

    /// Ink and paper of the marks: the strongest contrast on either ground.
    fn mark_colours(&self) -> [Vec3; 2] {
        let dark_on_light = [[0.09, 0.09, 0.1], [1.0, 0.995, 0.98]].map(array3);
        let [ink, paper] = dark_on_light;
        if self.look.dark { [paper, ink] } else { [ink, paper] }
    }

    /// Faint and dashed where material stands before them, plain elsewhere.
    fn rods(&self, context: &Context, program: &Program, marks: &Marks) {
        let [ink, paper] = self.mark_colours();
        let stroke = |width_px, colour, dash_m, over| Stroke { width_px, colour, plane: NO_PLANE, dash_m, over };
        self.place(program, &Vector3::zeros());
        for (rod, dash_m) in marks.rods.iter().zip([0.0, 0.012]) {
            let rod = GpuLines::new(context, core::iter::once(rod.map(|end| vec3(&end))));
            self.lines(program, &rod, &stroke(1.5, ink.extend(0.28), 0.004, true));
            self.lines(program, &rod, &stroke(4.5, paper.extend(0.9), 0.0, false));
            self.lines(program, &rod, &stroke(2.0, ink.extend(1.0), dash_m, false));
        }
    }

    fn signs(&self, context: &Context, program: &Program, signs: &[&(Vector3<f64>, f32)], strength: f32) {
        if signs.is_empty() {
            return;
        }
        let [ink, paper] = self.mark_colours();
        let gpu = GpuSigns::new(context, signs.iter().map(|(place, shape)| (vec3(place), *shape)));
        program.use_uniform("view_projection", mat4(&self.camera.view_projection));
        program.use_uniform("size_px", self.size_px());
        program.use_uniform("radius_px", self.px(6.5));
        program.use_uniform("ink", ink);
        program.use_uniform("paper", paper);
        program.use_uniform("strength", strength);
        program.use_vertex_attribute("place_m", &gpu.place);
        program.use_vertex_attribute("shape", &gpu.shape);
        program.use_vertex_attribute("corner", &gpu.corner);
        program.draw_elements(laid_over(true), self.viewport, &gpu.triangles);
    }
}

/// How lines are drawn.
struct Stroke {
    width_px: f64,
    colour: Vec4,
    plane: Vec4,
    dash_m: f32,
    /// Drawn over everything.
    over: bool,
}

fn plane_of(shown: &Shown) -> Vec4 {
    shown.plane.map_or(NO_PLANE, |plane| vec4(&plane.normal, plane.depth_m))
}

fn opaque() -> RenderStates {
    RenderStates {
        write_mask: WriteMask::COLOR_AND_DEPTH,
        depth_test: DepthTest::LessOrEqual,
        blend: Blend::Disabled,
        cull: Cull::None,
    }
}

/// Blended; the canvas itself is see-through where nothing is drawn.
fn laid_over(everything: bool) -> RenderStates {
    RenderStates {
        write_mask: WriteMask::COLOR,
        depth_test: if everything { DepthTest::Always } else { DepthTest::LessOrEqual },
        blend: Blend::Enabled {
            source_rgb_multiplier: BlendMultiplierType::SrcAlpha,
            source_alpha_multiplier: BlendMultiplierType::One,
            destination_rgb_multiplier: BlendMultiplierType::OneMinusSrcAlpha,
            destination_alpha_multiplier: BlendMultiplierType::OneMinusSrcAlpha,
            rgb_equation: BlendEquationType::Add,
            alpha_equation: BlendEquationType::Add,
        },
        cull: Cull::None,
    }
}
