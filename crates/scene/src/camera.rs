//! The eye: orbit about the ball's centre, mild perspective.

use nalgebra::{Matrix4, Vector3, Vector4};
use physics::ball::Line;

/// Full vertical angle of view, in radians: mild, so that a cut keeps its shape.
const VIEW_RAD: f64 = 0.32;
/// Room left around the picture.
const MARGIN: f64 = 1.12;

/// Where the eye is and what it sees.
#[derive(Clone, Debug)]
pub struct Camera {
    /// Place of the eye, in metres, in ball axes.
    pub eye_m: Vector3<f64>,
    /// Unit vector to the right of the picture.
    pub right: Vector3<f64>,
    /// Unit vector up in the picture.
    pub up: Vector3<f64>,
    /// Unit vector into the picture.
    pub forward: Vector3<f64>,
    /// From ball axes to clip space.
    pub view_projection: Matrix4<f64>,
    width_px: f64,
    height_px: f64,
    /// Half the picture's height at distance 1.
    slope: f64,
    /// Length that looks one pixel long at the middle of the picture, in metres.
    pub m_per_px: f64,
    /// Depth in clip space that looks as long as one pixel is wide.
    pub depth_per_px: f64,
}

/// How the eye stands and how much it must take in.
#[derive(Clone, Copy, Debug)]
pub struct Stance {
    /// Size of the picture.
    pub width_px: f64,
    /// Size of the picture.
    pub height_px: f64,
    /// 0 looks along +y with +x to the right; grows as the eye walks towards +x.
    pub yaw_rad: f64,
    /// Height of the eye above the equator.
    pub pitch_rad: f64,
    /// 1 fits the whole; larger is nearer.
    pub zoom: f64,
    /// Half the width to take in.
    pub half_width_m: f64,
    /// Half the height (along z) to take in.
    pub half_height_m: f64,
}

impl Camera {
    /// The camera of a stance.
    pub fn new(stance: &Stance) -> Self {
        let (sy, cy) = stance.yaw_rad.sin_cos();
        let (sp, cp) = stance.pitch_rad.sin_cos();
        let forward = Vector3::new(-sy * cp, cy * cp, -sp);
        let right = Vector3::new(cy, sy, 0.0);
        let up = right.cross(&forward);
        let aspect = stance.width_px / stance.height_px;
        let slope = (VIEW_RAD / 2.0).tan();
        let wide_m = stance.half_width_m;
        let tall_m = stance.half_height_m * cp.abs() + wide_m * sp.abs();
        let tall_m = tall_m.min(stance.half_height_m.max(wide_m));
        let distance_m = MARGIN / stance.zoom * tall_m.max(wide_m / aspect) / slope;
        // Even zoomed in, the eye stays outside what it looks at.
        let reach_m = stance.half_width_m.hypot(stance.half_height_m);
        let slope = slope * (distance_m / distance_m.max(1.5 * reach_m));
        let distance_m = distance_m.max(1.5 * reach_m);
        let eye_m = -forward * distance_m;
        let (near, far) = (distance_m - 1.4 * reach_m, distance_m + 1.4 * reach_m);
        let view = Matrix4::new(
            right.x,
            right.y,
            right.z,
            -right.dot(&eye_m),
            up.x,
            up.y,
            up.z,
            -up.dot(&eye_m),
            -forward.x,
            -forward.y,
            -forward.z,
            forward.dot(&eye_m),
            0.0,
            0.0,
            0.0,
            1.0,
        );
        let depth = far - near;
        let m_per_px = 2.0 * slope * distance_m / stance.height_px;
        let projection = Matrix4::new(
            1.0 / (slope * aspect),
            0.0,
            0.0,
            0.0,
            0.0,
            1.0 / slope,
            0.0,
            0.0,
            0.0,
            0.0,
            -(far + near) / depth,
            -2.0 * far * near / depth,
            0.0,
            0.0,
            -1.0,
            0.0,
        );
        Self {
            eye_m,
            right,
            up,
            forward,
            view_projection: projection * view,
            width_px: stance.width_px,
            height_px: stance.height_px,
            slope,
            m_per_px,
            depth_per_px: m_per_px * 2.0 * far * near / depth / distance_m.powi(2),
        }
    }

    /// Where a point appears, in pixels from the top left.
    pub fn project(&self, point_m: &Vector3<f64>) -> [f64; 2] {
        let clip = self.view_projection * Vector4::new(point_m.x, point_m.y, point_m.z, 1.0);
        [(clip.x / clip.w * 0.5 + 0.5) * self.width_px, (0.5 - clip.y / clip.w * 0.5) * self.height_px]
    }

    /// The ray from the eye through a pixel, counted from the top left.
    pub fn ray(&self, x_px: f64, y_px: f64) -> Line {
        let x = (2.0 * x_px / self.width_px - 1.0) * self.slope * self.width_px / self.height_px;
        let y = (1.0 - 2.0 * y_px / self.height_px) * self.slope;
        let direction = (self.forward + self.right * x + self.up * y).normalize();
        Line { origin_m: self.eye_m, direction }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn stance() -> Stance {
        Stance {
            width_px: 800.0,
            height_px: 600.0,
            yaw_rad: 0.7,
            pitch_rad: 0.3,
            zoom: 1.0,
            half_width_m: 0.108,
            half_height_m: 0.108,
        }
    }

    #[test]
    fn a_pixels_ray_projects_back_onto_the_pixel() {
        let camera = Camera::new(&stance());
        for (x, y) in [(400.0, 300.0), (10.0, 590.0), (700.0, 80.0)] {
            let ray = camera.ray(x, y);
            let [px, py] = camera.project(&(ray.origin_m + ray.direction * 2.0));
            assert!((px - x).abs() < 1e-9 && (py - y).abs() < 1e-9, "{x} {y}: {px} {py}");
        }
    }

    #[test]
    fn from_yaw_zero_x_is_right_and_z_is_up() {
        let camera = Camera::new(&Stance { yaw_rad: 0.0, pitch_rad: 0.0, ..stance() });
        let [x, y] = camera.project(&Vector3::new(0.05, 0.0, 0.0));
        assert!(x > 450.0 && (y - 300.0).abs() < 1e-9);
        let [x, y] = camera.project(&Vector3::new(0.0, 0.0, 0.05));
        assert!(y < 250.0 && (x - 400.0).abs() < 1e-9);
        assert!(camera.eye_m.y < 0.0);
    }

    #[test]
    fn the_whole_ball_is_in_the_picture() {
        for (width_px, height_px) in [(800.0, 600.0), (300.0, 900.0)] {
            let camera = Camera::new(&Stance { width_px, height_px, ..stance() });
            for i in 0..64 {
                let (s, c) = (f64::from(i) * 0.1).sin_cos();
                let point = (camera.right * c + camera.up * s) * 0.108;
                let [x, y] = camera.project(&point);
                assert!(x > 0.0 && x < width_px && y > 0.0 && y < height_px);
            }
        }
    }
}
