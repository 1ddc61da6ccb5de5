//! May everything that the project is built of be passed on with it?

use anyhow::{Context, Result, bail};
use serde_json::Value;

use crate::run::{cargo, output};

/// Licences that ask for no more than their notice. The names are SPDX's.
const ACCEPTED: [&str; 12] = [
    "MIT",
    "MIT-0",
    "Apache-2.0",
    "Apache-2.0 WITH LLVM-exception",
    "BSD-2-Clause",
    "BSD-3-Clause",
    "0BSD",
    "ISC",
    "NCSA",
    "Zlib",
    "Unicode-3.0",
    "Unlicense",
];
/// Where crates may come from.
const SOURCE: &str = "registry+https://github.com/rust-lang/crates.io-index";

/// The workspace, and the fuzz targets with a lock file of their own.
const MANIFESTS: [&str; 2] = ["Cargo.toml", "fuzz/Cargo.toml"];

/// Checks the licence and the source of every crate of either lock file, and that both are up to date.
pub(crate) fn check() -> Result<()> {
    MANIFESTS.into_iter().try_for_each(check_one)
}

fn check_one(manifest: &str) -> Result<()> {
    let listed = output(cargo(&["metadata", "--format-version=1", "--locked", "--manifest-path", manifest]))?;
    let metadata: Value = serde_json::from_str(&listed)?;
    let packages = metadata["packages"].as_array().context("cargo metadata lists no packages")?;
    let mut faults = Vec::new();
    for package in packages {
        let text = |key: &str| package[key].as_str();
        let name = format!("{} {}", text("name").unwrap_or_default(), text("version").unwrap_or_default());
        match text("license") {
            Some(licence) if accepted(licence) => {}
            other => faults.push(format!("{name} is under {}", other.unwrap_or("no stated licence"))),
        }
        if text("source").is_some_and(|source| source != SOURCE) {
            faults.push(format!("{name} comes from {}", text("source").unwrap_or_default()));
        }
    }
    if !faults.is_empty() {
        bail!("these crates may not be used:\n  {}", faults.join("\n  "));
    }
    Ok(())
}

/// Whether an SPDX expression leaves a choice that is accepted. `/` is how older
/// manifests write OR; of brackets only those around an OR occur.
fn accepted(expression: &str) -> bool {
    let plain = expression.replace(['(', ')'], "").replace(" / ", " OR ").replace('/', " OR ");
    plain.split(" AND ").all(|part| part.split(" OR ").any(|licence| ACCEPTED.contains(&licence.trim())))
}
