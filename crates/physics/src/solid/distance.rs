//! How far a point is from a solid's surface, by a sure lower bound.

use nalgebra::Vector3;

use super::{Form, Lathe, Placed};

impl Placed {
    /// The images of the form's own x, y and z.
    pub(crate) fn axes(&self) -> [Vector3<f64>; 3] {
        [0, 1, 2].map(|i| self.linear.column(i).into_owned())
    }

    /// Signed distance to the surface, above 0 outside; never larger in size
    /// than the true one. Exact for boxes, and for every form that is not
    /// scaled unevenly; else the distance before scaling times the least scale.
    /// `linear` must have orthogonal columns.
    pub(crate) fn clearance(&self, point: &Vector3<f64>) -> f64 {
        let q = self.own(point);
        let scale = self.axes().map(|axis| axis.norm());
        let least = scale.into_iter().fold(f64::INFINITY, f64::min);
        match &self.form {
            Form::Sphere => (q.norm() - 1.0) * least,
            Form::Cube => {
                let beyond = Vector3::from_fn(|i, _| (q[i].abs() - 1.0) * scale[i]);
                beyond.sup(&Vector3::zeros()).norm() + beyond.max().min(0.0)
            }
            Form::Ring(ring) => {
                let out = (q.x * q.x + q.y * q.y).sqrt() - ring.ring;
                ((out * out + q.z * q.z).sqrt() - ring.tube) * least
            }
            Form::Lathe(lathe) => lathe.clearance(&q) * least,
        }
    }
}

impl Lathe {
    /// Distance to the nearest side in the half-plane through the point, in
    /// which the nearest point of a solid of revolution always lies.
    fn clearance(&self, q: &Vector3<f64>) -> f64 {
        let p = [(q.x * q.x + q.y * q.y).sqrt(), q.z];
        let square = self.edges().iter().map(|e| to_side(p, e.from, e.to)).fold(f64::INFINITY, f64::min);
        if self.contains(q) { -square.sqrt() } else { square.sqrt() }
    }
}

/// Square of the distance from a point to a stretch of a line.
fn to_side(p: [f64; 2], from: [f64; 2], to: [f64; 2]) -> f64 {
    let (d, w) = ([to[0] - from[0], to[1] - from[1]], [p[0] - from[0], p[1] - from[1]]);
    let along = ((w[0] * d[0] + w[1] * d[1]) / (d[0] * d[0] + d[1] * d[1])).clamp(0.0, 1.0);
    let off = [w[0] - along * d[0], w[1] - along * d[1]];
    off[0] * off[0] + off[1] * off[1]
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::recipe::{Shape, Solid};

    /// The bound against the nearest crossing of many lines through the point.
    #[test]
    fn never_more_than_the_distance_to_the_surface() {
        let shapes = [
            Shape::Ellipsoid { size_m: [0.05, 0.07, 0.1] },
            Shape::Box { size_m: [0.05, 0.07, 0.1] },
            Shape::Ring { ring_diameter_m: 0.08, tube_diameter_m: 0.03 },
            Shape::Ring { ring_diameter_m: 0.02, tube_diameter_m: 0.06 },
            Shape::Frustum { bottom_diameter_m: 0.04, top_diameter_m: 0.09, height_m: 0.05 },
            Shape::Lathe { profile_m: vec![[0.0, -0.04], [0.04, -0.02], [0.015, 0.0], [0.05, 0.03], [0.0, 0.02]] },
        ];
        for (n, shape) in shapes.into_iter().enumerate() {
            for squash in [[1.0, 1.0], [1.3, 0.8]] {
                let at_m = Vector3::new(0.01, -0.02, 0.03);
                let placed = Placed::new(&Solid { shape: shape.clone(), squash, turn_rad: [0.3, -0.7, 1.1], at_m });
                for point in super::super::farthest::evenly(40).map(|d| at_m + d * (0.09 * (d.x + d.y).abs())) {
                    let mut hits = super::super::Hits::new();
                    let mut nearest = f64::INFINITY;
                    for direction in super::super::farthest::evenly(4000) {
                        hits.clear();
                        placed.cross(&point, &direction, &mut hits);
                        nearest = hits.iter().map(|hit| hit.0.abs()).fold(nearest, f64::min);
                    }
                    let bound = placed.clearance(&point);
                    assert_eq!(bound <= 0.0, placed.contains(&point), "shape {n} at {point}");
                    assert!(bound.abs() <= nearest + 1e-12, "shape {n} at {point}: {bound} of {nearest}");
                    // Lines 3° apart may miss the very nearest corner.
                    let exact = squash == [1.0, 1.0] && n > 0 && n != 3;
                    let near = bound.abs() >= 0.9 * nearest;
                    assert!(!exact || near, "shape {n} at {point}: {bound} of {nearest}");
                }
            }
        }
    }
}
