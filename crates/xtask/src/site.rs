//! The static site and the one-file page: built into a folder, or served from it.

use std::path::Path;

use anyhow::{Context, Result};

use crate::run::{become_command, command, root, run, www};
use crate::{bindings, notices, tools, version};

/// Name of the one-file page.
const ONE_FILE: &str = "pithball.html";

/// Builds the site into `out`, taken from the workspace's root when relative.
pub(crate) fn build(out: &Path) -> Result<()> {
    prepare()?;
    node("bundle.mjs", &root().join(out))
}

/// Packs the page into one file in `out`, taken from the workspace's root when relative.
pub(crate) fn pack(out: &Path) -> Result<()> {
    prepare()?;
    node("pack.mjs", &root().join(out).join(ONE_FILE))
}

/// Builds into dist/ and serves it until stopped.
pub(crate) fn serve(port: u16) -> Result<()> {
    build(Path::new("dist"))?;
    let dist = root().join("dist");
    let port = port.to_string();
    become_command(command(&www(), "node", &["serve.mjs", &dist.to_string_lossy(), &port]))
}

/// What both are made of, in www/pkg: the module, its bindings, the notices.
fn prepare() -> Result<()> {
    tools::wasm_target()?;
    tools::npm_packages()?;
    bindings::page()?;
    notices::write(&www().join("pkg/licences.txt"))
}

fn node(script: &str, out: &Path) -> Result<()> {
    let out = out.to_str().context("the folder's name is not Unicode text")?;
    let mut node = command(&www(), "node", &[script, out]);
    node.env("PITHBALL_VERSION", version::stamp()?);
    run(node)
}
