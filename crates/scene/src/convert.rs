//! From nalgebra, in which the project computes, to the graphics library's own types.

use nalgebra::{Matrix4, Vector3};
use three_d::{Mat4, Vec2, Vec3, Vec4};

pub(crate) fn vec3(v: &Vector3<f64>) -> Vec3 {
    Vec3::new(v.x as f32, v.y as f32, v.z as f32)
}

pub(crate) fn array3([x, y, z]: [f32; 3]) -> Vec3 {
    Vec3::new(x, y, z)
}

pub(crate) fn array2([x, y]: [f64; 2]) -> Vec2 {
    Vec2::new(x as f32, y as f32)
}

pub(crate) fn vec4(v: &Vector3<f64>, w: f64) -> Vec4 {
    vec3(v).extend(w as f32)
}

pub(crate) fn mat4(m: &Matrix4<f64>) -> Mat4 {
    let column = |n: usize| Vec4::new(m[(0, n)] as f32, m[(1, n)] as f32, m[(2, n)] as f32, m[(3, n)] as f32);
    Mat4::from_cols(column(0), column(1), column(2), column(3))
}
