//! What the scripts in tests/reference wrote.

use std::path::PathBuf;

use serde_json::Value;

/// A file of tests/reference, by its path there.
pub fn reference_path(name: &str) -> PathBuf {
    [env!("CARGO_MANIFEST_DIR"), "reference", name].iter().collect()
}

/// A JSON file of tests/reference.
pub fn reference(name: &str) -> Value {
    let path = reference_path(name);
    let text = std::fs::read_to_string(&path).unwrap_or_else(|e| panic!("{}: {e}", path.display()));
    serde_json::from_str(&text).unwrap_or_else(|e| panic!("{}: {e}", path.display()))
}
