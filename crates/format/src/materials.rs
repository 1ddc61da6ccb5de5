//! Typical densities of what balls are made of, as scenarios/materials.json
//! lists them, each there with where it comes from.

use std::sync::LazyLock;

use serde_json::Value;

static MATERIALS: LazyLock<Value> = LazyLock::new(|| {
    // A list that cannot be read knows no material; a test reads it.
    serde_json::from_str(include_str!("../../../scenarios/materials.json")).unwrap_or_default()
});

/// Lowest and highest usual density of a material, by its name.
pub(crate) fn usual_g_cc(material: &str) -> Option<[f64; 2]> {
    let listed = MATERIALS["materials"].as_array()?.iter().find(|listed| listed["name"] == material)?;
    let [low, high] = &listed["density_g_cc"].as_array()?[..] else { return None };
    Some([low.as_f64()?, high.as_f64()?])
}
