//! The static site: built into a folder, or served from it.

use std::path::Path;

use anyhow::{Context, Result};

use crate::run::{become_command, command, root, run, www};
use crate::{bindings, notices, tools};

/// Builds the site into `out`, taken from the workspace's root when relative.
pub(crate) fn build(out: &Path) -> Result<()> {
    tools::wasm_target()?;
    tools::npm_packages()?;
    bindings::page()?;
    let folder = root().join(out);
    let out = folder.to_str().context("the folder's name is not Unicode text")?;
    run(command(&www(), "node", &["bundle.mjs", out]))?;
    notices::write(&folder.join("licences.txt"))
}

/// Builds into dist/ and serves it until stopped.
pub(crate) fn serve(port: u16) -> Result<()> {
    build(Path::new("dist"))?;
    let dist = root().join("dist");
    let port = port.to_string();
    become_command(command(&www(), "node", &["serve.mjs", &dist.to_string_lossy(), &port]))
}
