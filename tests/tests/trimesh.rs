//! Twenty-five assorted balls, one of them drilled for a hand with pitched holes
//! and inserts, against trimesh and manifold3d's mesh booleans
//! (tests/reference/weigh_trimesh.py), to the uncertainty the script recorded
//! beside each number: about 1e-8 of the mass and 5e-8 of the tensor.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a check that cannot be set up must fail loudly")]

use nalgebra::{Matrix3, Vector3};
use physics::ball::Ball;
use physics::weigh::weigh;
use pithball_tests::{reference, reference_path};
use serde_json::Value;

fn number(of: &Value, key: &str) -> f64 {
    of[key].as_f64().unwrap_or_else(|| panic!("no number {key} in {of}"))
}

fn check(reference: &Value) -> Vec<String> {
    let name = reference["file"].as_str().unwrap();
    let json = std::fs::read(reference_path(name)).unwrap();
    let recipe = format::BallFile::read(&json).unwrap_or_else(|e| panic!("{name}: {e}")).recipe();
    let got = weigh(&Ball::new(&recipe).unwrap_or_else(|e| panic!("{name}: {e}")));
    let mut wrong = Vec::new();
    let mut hold = |what: &str, off: f64, uncertain: f64, own: f64| {
        // What weigh says of its own error comes on top; it may not say more than a millionth.
        if off.is_nan() || off > uncertain + own {
            wrong.push(format!("{name}: {what} off by {off:e}, allowed {uncertain:e} + {own:e}"));
        }
    };
    hold("bound", got.relative_error, 1e-6, 0.0);
    let vector = |key: &str| Vector3::from(serde_json::from_value::<[f64; 3]>(reference[key].clone()).unwrap());
    let rows: [[f64; 3]; 3] = serde_json::from_value(reference["inertia_kg_m2"].clone()).unwrap();
    let inertia = Matrix3::from(rows);
    let mass = number(reference, "mass_kg");
    let (own_mass, own_tensor) = (got.relative_error * mass, got.relative_error * inertia.amax());
    hold("mass", (got.mass_kg - mass).abs(), number(reference, "mass_uncertainty_kg"), own_mass);
    let cg = (got.cg_m - vector("cg_m")).amax();
    hold("centre of gravity", cg, number(reference, "cg_uncertainty_m"), got.relative_error * got.radius_m);
    let tensor = (got.inertia_kg_m2 - inertia).amax();
    hold("tensor", tensor, number(reference, "inertia_uncertainty_kg_m2"), own_tensor);
    let volumes: Vec<f64> = serde_json::from_value(reference["volumes_m3"].clone()).unwrap();
    assert_eq!(volumes.len(), got.shares.len(), "{name}");
    let whole: f64 = volumes.iter().sum();
    for (n, (share, volume)) in got.shares.iter().zip(&volumes).enumerate() {
        let off = (share.volume_m3 - volume).abs();
        hold(&format!("volume {n}"), off, number(reference, "volume_uncertainty_m3"), got.relative_error * whole);
    }
    wrong
}

#[test]
fn assorted_balls_agree_with_mesh_booleans() {
    let file = reference("weigh_trimesh.json");
    let balls = file["balls"].as_array().unwrap();
    assert!(balls.len() >= 20);
    let wrong: Vec<String> = balls.iter().flat_map(check).collect();
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}
