//! Solids: each answers where a straight line enters and leaves it.

mod cube;
mod distance;
mod extent;
mod farthest;
mod lathe;
mod outline;
mod relation;
mod ring;
mod roots;
mod sphere;

use nalgebra::{Matrix3, Vector3};
use smallvec::SmallVec;

use crate::moments::Moments;
use crate::recipe::{Shape, Solid};
pub(crate) use farthest::{evenly, farthest, farthest_points};
pub(crate) use lathe::Lathe;
pub(crate) use ring::Ring;

/// Crossings of a line: where, and which smooth surface of the solid.
pub(crate) type Hits = SmallVec<[(f64, u16); 8]>;

/// A solid about its own origin, before it is scaled, squashed, turned and moved.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Form {
    /// The unit sphere.
    Sphere,
    /// The cube from −1 to 1.
    Cube,
    Lathe(Lathe),
    Ring(Ring),
}

/// A solid where it stands in a frame: x = `linear` · own + `at`.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Placed {
    pub(crate) form: Form,
    pub(crate) linear: Matrix3<f64>,
    pub(crate) at: Vector3<f64>,
    /// Inverse of `linear`.
    inverse: Matrix3<f64>,
    /// A sphere around the solid in the frame, about `at`.
    pub(crate) reach: f64,
}

/// Turns about the fixed x, then y, then z axes.
pub(crate) fn turn(angles_rad: [f64; 3]) -> Matrix3<f64> {
    let [(sx, cx), (sy, cy), (sz, cz)] = angles_rad.map(libm::sincos);
    let about_x = Matrix3::new(1.0, 0.0, 0.0, 0.0, cx, -sx, 0.0, sx, cx);
    let about_y = Matrix3::new(cy, 0.0, sy, 0.0, 1.0, 0.0, -sy, 0.0, cy);
    let about_z = Matrix3::new(cz, -sz, 0.0, sz, cz, 0.0, 0.0, 0.0, 1.0);
    about_z * about_y * about_x
}

impl Placed {
    /// A recipe's solid in its parent's frame.
    pub(crate) fn new(solid: &Solid) -> Self {
        let (form, size) = form_of(&solid.shape);
        let squash = [solid.squash[0] * size[0], solid.squash[1] * size[1], size[2]];
        let linear = turn(solid.turn_rad) * Matrix3::from_diagonal(&Vector3::from(squash));
        Self::with(form, linear, solid.at_m)
    }

    /// A solid with a placement of its own; `linear` must not be singular.
    pub(crate) fn with(form: Form, linear: Matrix3<f64>, at: Vector3<f64>) -> Self {
        let reach = extent::reach(&form, &linear);
        let inverse = inverse(&linear);
        Self { form, linear, at, inverse, reach }
    }

    /// The same solid seen from a frame in which x = `linear` · old + `shift`.
    pub(crate) fn moved(&self, linear: &Matrix3<f64>, shift: &Vector3<f64>) -> Self {
        Self::with(self.form.clone(), linear * self.linear, linear * self.at + shift)
    }

    /// The same solid seen from `frame`'s own coordinates.
    pub(crate) fn seen_from(&self, frame: &Self) -> Self {
        self.moved(&frame.inverse, &(-(frame.inverse * frame.at)))
    }

    pub(crate) fn own(&self, point: &Vector3<f64>) -> Vector3<f64> {
        self.inverse * (point - self.at)
    }

    /// Whether a line passes by the sphere round the solid.
    pub(crate) fn surely_missed(&self, origin: &Vector3<f64>, direction: &Vector3<f64>) -> bool {
        let across = (self.at - origin).cross(direction).norm_squared();
        across > self.reach * self.reach * direction.norm_squared() * (1.0 + 1e-9)
    }

    /// Adds where `origin + t direction` enters and leaves, in pairs, ascending.
    pub(crate) fn cross(&self, origin: &Vector3<f64>, direction: &Vector3<f64>, hits: &mut Hits) {
        let (p, d) = (self.own(origin), self.inverse * direction);
        match &self.form {
            Form::Sphere => sphere::cross(&p, &d, hits),
            Form::Cube => cube::cross(&p, &d, hits),
            Form::Lathe(lathe) => lathe.cross(&p, &d, hits),
            Form::Ring(ring) => ring.cross(&p, &d, hits),
        }
    }

    /// Whether a point is in the solid (its surface may count either way).
    pub(crate) fn contains(&self, point: &Vector3<f64>) -> bool {
        let p = self.own(point);
        match &self.form {
            Form::Sphere => p.norm_squared() <= 1.0,
            Form::Cube => p.amax() <= 1.0,
            Form::Lathe(lathe) => lathe.contains(&p),
            Form::Ring(ring) => ring.contains(&p),
        }
    }

    /// Moments in closed form, in the solid's own coordinates; `None` where there is none.
    pub(crate) fn own_moments(&self) -> Option<Moments> {
        match &self.form {
            Form::Sphere => Some(sphere::moments()),
            Form::Cube => Some(cube::moments()),
            Form::Lathe(lathe) => Some(lathe.moments()),
            Form::Ring(ring) => ring.moments(),
        }
    }

    /// Values of r at which lines along z through `r · across` may begin to
    /// meet different surfaces of this solid.
    pub(crate) fn breaks(&self, across: &Vector3<f64>, out: &mut Vec<f64>) {
        let (b, u, d) = (self.own(&Vector3::zeros()), self.inverse * across, self.inverse * Vector3::z());
        match &self.form {
            Form::Sphere => sphere::breaks(&b, &u, &d, out),
            Form::Cube => cube::breaks(&b, &u, &d, out),
            Form::Lathe(lathe) => lathe.breaks(&b, &u, &d, out),
            Form::Ring(ring) => ring.breaks(&b, &u, &d, out),
        }
    }

    /// Whether the solid is unchanged by every turn about the frame's z axis.
    pub(crate) fn turns_about_z(&self) -> bool {
        let l = &self.linear;
        let size = l.amax();
        let zero = |v: f64| v.abs() <= 1e-13 * size;
        if self.at.x.abs().max(self.at.y.abs()) > 1e-13 * self.reach {
            return false;
        }
        match &self.form {
            Form::Cube => false,
            // An ellipsoid: L Lᵀ must have equal, separate x and y.
            Form::Sphere => {
                let q = l * l.transpose();
                let small = |v: f64| v.abs() <= 1e-13 * size * size;
                small(q[(0, 0)] - q[(1, 1)]) && small(q[(0, 1)]) && small(q[(0, 2)]) && small(q[(1, 2)])
            }
            Form::Lathe(_) | Form::Ring(_) => {
                let separate = zero(l[(0, 2)]) && zero(l[(1, 2)]) && zero(l[(2, 0)]) && zero(l[(2, 1)]);
                let same = |sign: f64| zero(l[(0, 0)] - sign * l[(1, 1)]) && zero(l[(0, 1)] + sign * l[(1, 0)]);
                separate && (same(1.0) || same(-1.0))
            }
        }
    }
}

/// Adds a stretch; one that carries on where the last one ended makes it longer.
fn push_stretch(hits: &mut Hits, from: (f64, u16), to: (f64, u16)) {
    match hits.last_mut() {
        Some(last) if last.0 == from.0 => *last = to,
        _ => hits.extend([from, to]),
    }
}

/// Inverse by cofactors; `linear` is a turn times a positive scale.
fn inverse(linear: &Matrix3<f64>) -> Matrix3<f64> {
    let (x, y, z) = (linear.column(0).into_owned(), linear.column(1).into_owned(), linear.column(2).into_owned());
    let det = x.dot(&y.cross(&z));
    let rows = [y.cross(&z) / det, z.cross(&x) / det, x.cross(&y) / det];
    Matrix3::from_rows(&rows.map(|r| r.transpose()))
}

/// The form of a shape and the scale that makes the one from the other.
fn form_of(shape: &Shape) -> (Form, [f64; 3]) {
    let one = [1.0; 3];
    match shape {
        Shape::Sphere { diameter_m } => (Form::Sphere, [0.5 * diameter_m; 3]),
        Shape::Ellipsoid { size_m } => (Form::Sphere, size_m.map(|s| 0.5 * s)),
        Shape::Box { size_m } => (Form::Cube, size_m.map(|s| 0.5 * s)),
        Shape::Cylinder { diameter_m, height_m } => {
            (Form::Lathe(Lathe::new(&frustum(*diameter_m, *diameter_m, *height_m))), one)
        }
        Shape::Frustum { bottom_diameter_m, top_diameter_m, height_m } => {
            (Form::Lathe(Lathe::new(&frustum(*bottom_diameter_m, *top_diameter_m, *height_m))), one)
        }
        Shape::Ring { ring_diameter_m, tube_diameter_m } => {
            (Form::Ring(Ring { ring: 0.5 * ring_diameter_m, tube: 0.5 * tube_diameter_m }), one)
        }
        Shape::Lathe { profile_m } => (Form::Lathe(Lathe::new(profile_m)), one),
    }
}

fn frustum(bottom: f64, top: f64, height: f64) -> [[f64; 2]; 4] {
    let h = 0.5 * height;
    [[0.0, -h], [0.5 * bottom, -h], [0.5 * top, h], [0.0, h]]
}
