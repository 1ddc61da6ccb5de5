//! Time and error of weigh and roll on every ball and shot of scenarios/.

use anyhow::Result;

use crate::run::{cargo, command, root, run, target};
use crate::{bindings, tools};

/// Measures natively with criterion, then the same kernels in headless
/// Chromium, and prints one table.
pub(crate) fn bench() -> Result<()> {
    let chromium = tools::browsers()?.chromium;
    tools::wasm_target()?;
    tools::npm_packages()?;
    bindings::page()?;
    let kernels = bindings::kernels()?;
    run(cargo(&["bench", "--quiet", "--package=pithball-bench", "--", "--quiet"]))?;
    let criterion = target().join("criterion");
    let script = root().join("tests/bench/table.mjs");
    let mut node = command(&root(), "node", &[script, criterion, kernels]);
    node.env("PITHBALL_CHROMIUM", chromium);
    run(node)
}
