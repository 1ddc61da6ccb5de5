//! Comparisons that fail with both numbers and the place.

use nalgebra::{Matrix3, Vector3};

use crate::body::Body;

/// Asserts that two numbers agree to a relative tolerance.
#[track_caller]
pub fn close(what: &str, got: f64, want: f64, relative: f64) {
    within(what, got, want, relative * want.abs());
}

/// Asserts that two numbers agree to an absolute tolerance, in their own unit.
#[track_caller]
pub fn within(what: &str, got: f64, want: f64, absolute: f64) {
    let off = (got - want).abs();
    assert!(off <= absolute, "{what}: got {got}, want {want}, off by {off:e}, allowed {absolute:e}");
}

/// Asserts that two vectors agree, component by component.
#[track_caller]
pub fn vectors_within(what: &str, got: &Vector3<f64>, want: &Vector3<f64>, absolute: f64) {
    let off = (got - want).amax();
    assert!(off <= absolute, "{what}: got {got:?}, want {want:?}, off by {off:e}, allowed {absolute:e}");
}

/// Asserts that two tensors agree relative to the largest entry.
#[track_caller]
pub fn tensors_close(what: &str, got: &Matrix3<f64>, want: &Matrix3<f64>, relative: f64) {
    tensors_within(what, got, want, relative * want.amax());
}

/// Asserts that two tensors agree, entry by entry.
#[track_caller]
pub fn tensors_within(what: &str, got: &Matrix3<f64>, want: &Matrix3<f64>, absolute: f64) {
    let off = (got - want).amax();
    assert!(off <= absolute, "{what}: got {got}, want {want}, off by {off:e}, allowed {absolute:e}");
}

/// Asserts that two bodies agree: mass and tensor relatively, centre relative
/// to `size_m`.
#[track_caller]
pub fn bodies_close(what: &str, got: &Body, want: &Body, size_m: f64, relative: f64) {
    close(&format!("{what}: mass"), got.mass_kg, want.mass_kg, relative);
    vectors_within(&format!("{what}: centre"), &got.cg_m, &want.cg_m, relative * size_m);
    tensors_close(&format!("{what}: tensor"), &got.inertia_kg_m2, &want.inertia_kg_m2, relative);
}
