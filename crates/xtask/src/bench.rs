//! Time and error of weigh and roll on every ball and shot of scenarios/, weight
//! and time of the page's first load.

use std::path::Path;

use anyhow::Result;

use crate::run::{cargo, command, root, run, target};
use crate::{bindings, site, tools};

/// Measures natively with criterion, then the same kernels in headless
/// Chromium, and prints one table; then the page's first load.
pub(crate) fn bench() -> Result<()> {
    let chromium = tools::browsers()?.chromium;
    site::build(Path::new("dist"))?;
    let kernels = bindings::kernels()?;
    run(cargo(&["bench", "--quiet", "--package=pithball-bench", "--", "--quiet"]))?;
    let criterion = target().join("criterion");
    let script = root().join("tests/bench/table.mjs");
    let mut node = command(&root(), "node", &[script, criterion, kernels]);
    node.env("PITHBALL_CHROMIUM", &chromium);
    run(node)?;
    let mut node = command(&root(), "node", &["tests/bench/first-load.mjs"]);
    node.env("PITHBALL_CHROMIUM", &chromium);
    run(node)
}
