//! Which edition of Pithball this is, as the page and the archive say it.

use anyhow::Result;

use crate::run::{command, output, root};

/// The version of the workspace.
pub(crate) const VERSION: &str = env!("CARGO_PKG_VERSION");

/// The version with the commit it is built from, and whether that was changed
/// since; outside a repository the version alone.
pub(crate) fn stamp() -> Result<String> {
    if !root().join(".git").exists() {
        return Ok(VERSION.to_owned());
    }
    let commit = output(command(&root(), "git", &["rev-parse", "--short=10", "HEAD"]))?;
    let changed = output(command(&root(), "git", &["status", "--porcelain"]))?;
    let commit = commit.trim();
    Ok(if changed.is_empty() {
        format!("{VERSION} ({commit})")
    } else {
        format!("{VERSION} ({commit}, changed since)")
    })
}
