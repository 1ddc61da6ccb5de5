//! The 3D picture on the page's canvas.

use std::sync::Arc;

use physics::section::Plane;
use physics::units::M_PER_IN;
use scene::{CoverLook, GlContext, LIMITS, Mark, Paint, Scene};
use serde::{Deserialize, Serialize};
use wasm_bindgen::prelude::wasm_bindgen;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{HtmlCanvasElement, WebGl2RenderingContext, WebGlContextAttributes};

use crate::ball::Ball;
use crate::wire::to_page;

/// Largest side of the canvas's bitmap, in device pixels: what every WebGL2
/// device can draw into.
const MOST_PX: f64 = 4096.0;

/// Draws balls into one canvas.
#[wasm_bindgen]
pub struct View {
    canvas: HtmlCanvasElement,
    gl: WebGl2RenderingContext,
    scene: Scene,
}

/// `Look` of the page.
#[derive(Deserialize)]
struct LookDoc {
    width_px: f64,
    height_px: f64,
    yaw_deg: f64,
    pitch_deg: f64,
    zoom: f64,
    plane: Option<PlaneDoc>,
    exploded: f64,
    hidden: Vec<usize>,
    highlighted: Option<usize>,
    markers: bool,
    dark: bool,
    paint: Vec<PaintDoc>,
    #[serde(default)]
    cover: Option<CoverLookDoc>,
}

/// `CoverLook` of the page.
#[derive(Deserialize)]
struct CoverLookDoc {
    limits_in: [f64; LIMITS],
    colours: [[f32; 3]; LIMITS + 1],
    spots: Vec<[f64; 3]>,
}

#[derive(Deserialize)]
struct PlaneDoc {
    normal: [f64; 3],
    depth_in: f64,
}

#[derive(Deserialize)]
struct PaintDoc {
    colour: [f32; 3],
    hatch: u32,
}

/// `Pick` of the page.
#[derive(Serialize)]
struct PickDoc {
    part: usize,
    at_in: [f64; 3],
}

/// `MarkPlace` of the page.
#[derive(Serialize)]
struct MarkDoc {
    mark: String,
    x_px: f64,
    y_px: f64,
    visible: bool,
}

/// The ball as a look shows it: its cover as it is measured, before inserts.
fn shown<'a>(ball: &'a Ball, look: &scene::Look) -> (&'a format::BallFile, &'a physics::ball::Ball) {
    if look.cover.is_some() { ball.before_inserts() } else { (&ball.file, &ball.ball) }
}

#[wasm_bindgen]
impl View {
    /// Takes a canvas that has no context yet, or a WebGL2 one.
    ///
    /// # Errors
    /// One sentence where WebGL2 cannot be had.
    #[wasm_bindgen(constructor)]
    pub fn new(canvas: HtmlCanvasElement) -> Result<View, JsValue> {
        let wanted = WebGlContextAttributes::new();
        wanted.set_alpha(true);
        wanted.set_antialias(true);
        wanted.set_depth(true);
        let gl = canvas
            .get_context_with_context_options("webgl2", &wanted)
            .ok()
            .flatten()
            .and_then(|context| context.dyn_into::<WebGl2RenderingContext>().ok())
            .filter(|gl| !gl.is_context_lost())
            .ok_or("This browser has no WebGL2 to draw in 3D with.")?;
        #[allow(clippy::arc_with_non_send_sync, reason = "the graphics library takes an Arc; a page has one thread")]
        let context = Arc::new(GlContext::from_webgl2_context(gl.clone()));
        let scene = Scene::new(context).map_err(|error| format!("The 3D picture cannot be drawn: {error}"))?;
        Ok(Self { canvas, gl, scene })
    }

    /// Draws one picture and returns the places of its marks, a `MarkPlace[]`.
    /// Draws nothing while the context is lost.
    ///
    /// # Errors
    /// A sentence where `look` is no `Look`.
    pub fn draw(&mut self, ball: &Ball, look: JsValue) -> Result<JsValue, JsValue> {
        let look = self.look(look)?;
        if self.gl.is_context_lost() {
            return to_page(&[(); 0]);
        }
        let (width, height) = (look.width_px as u32, look.height_px as u32);
        // Setting a size clears the canvas, so only when it changes.
        if (self.canvas.width(), self.canvas.height()) != (width, height) {
            self.canvas.set_width(width);
            self.canvas.set_height(height);
        }
        let layout = ball.drilled.as_ref().map(|drilled| &drilled.drilling.marks);
        let (file, made) = shown(ball, &look);
        let labels = self.scene.draw(&file.recipe(), made, &ball.weighed, layout, &look);
        let marks: Vec<MarkDoc> = labels
            .into_iter()
            .map(|label| MarkDoc {
                mark: match label.mark {
                    Mark::Pin => "pin".to_owned(),
                    Mark::Cg => "cg".to_owned(),
                    Mark::LowRg => "low_rg".to_owned(),
                    Mark::HighRg => "high_rg".to_owned(),
                    Mark::Pap => "pap".to_owned(),
                    Mark::GripCentre => "grip_centre".to_owned(),
                    Mark::Spot(n) => format!("spot_{n}"),
                },
                x_px: label.x_px / look.pixel_ratio,
                y_px: label.y_px / look.pixel_ratio,
                visible: label.visible,
            })
            .collect();
        to_page(&marks)
    }

    /// What is under a point of the canvas in CSS pixels from its top left, a
    /// `Pick` or null.
    ///
    /// # Errors
    /// A sentence where `look` is no `Look`.
    pub fn pick(&mut self, ball: &Ball, look: JsValue, x_px: f64, y_px: f64) -> Result<JsValue, JsValue> {
        let look = self.look(look)?;
        let ratio = look.pixel_ratio;
        let (file, made) = shown(ball, &look);
        let pick = self.scene.pick(&file.recipe(), made, &look, x_px * ratio, y_px * ratio);
        to_page(&pick.map(|pick| PickDoc { part: pick.part, at_in: (pick.at_m / M_PER_IN).into() }))
    }

    fn look(&self, look: JsValue) -> Result<scene::Look, JsValue> {
        let doc: LookDoc = serde_wasm_bindgen::from_value(look)?;
        let ratio = web_sys::window().map_or(1.0, |window| window.device_pixel_ratio());
        let [width_px, height_px] = [doc.width_px, doc.height_px].map(|px| px.clamp(1.0, MOST_PX));
        let ratio = ratio.min(MOST_PX / width_px.max(height_px));
        Ok(scene::Look {
            width_px: (width_px * ratio).round().max(1.0),
            height_px: (height_px * ratio).round().max(1.0),
            pixel_ratio: ratio,
            yaw_rad: doc.yaw_deg.to_radians(),
            pitch_rad: doc.pitch_deg.to_radians(),
            zoom: doc.zoom,
            plane: doc.plane.and_then(|plane| Plane::new(plane.normal.into(), plane.depth_in * M_PER_IN)),
            exploded: doc.exploded,
            hidden: doc.hidden,
            highlighted: doc.highlighted,
            markers: doc.markers,
            dark: doc.dark,
            cover: doc.cover.map(|cover| CoverLook {
                limits_m: cover.limits_in.map(|inches| inches * M_PER_IN),
                colours: cover.colours,
                spots: cover.spots.into_iter().map(Into::into).collect(),
            }),
            paint: doc.paint.into_iter().map(|p| Paint { colour: p.colour, hatch: p.hatch }).collect(),
        })
    }
}
