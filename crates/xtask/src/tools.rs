//! Tools that the build and the tests need, fetched when they are missing.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use anyhow::{Context, Result, bail};

use crate::run::{command, output, root, run, www};

/// The target of the page's module.
pub(crate) const WASM_TARGET: &str = "wasm32-unknown-unknown";

/// Adds the wasm target to the toolchain in use. rust-toolchain.toml alone is
/// not enough where rustup is told not to install by itself.
pub(crate) fn wasm_target() -> Result<()> {
    let sysroot = output(command(&root(), "rustc", &["--print", "sysroot"]))?;
    let library = Path::new(sysroot.trim()).join("lib/rustlib").join(WASM_TARGET);
    if library.is_dir() {
        return Ok(());
    }
    run(command(&root(), "rustup", &["target", "add", WASM_TARGET]))
        .context("the page needs Rust's wasm target; with rustup: rustup target add wasm32-unknown-unknown")
}

/// Installs the locked npm packages, unless this very lock file was installed already.
pub(crate) fn npm_packages() -> Result<()> {
    let lock_path = www().join("package-lock.json");
    let lock = fs::read(&lock_path).with_context(|| format!("reading {}", lock_path.display()))?;
    let stamp = www().join("node_modules/.pithball-lock");
    if fs::read(&stamp).is_ok_and(|installed| installed == lock) {
        return Ok(());
    }
    node()?;
    run(command(&www(), "npm", &["ci", "--loglevel=error"]))?;
    fs::write(&stamp, lock).with_context(|| format!("writing {}", stamp.display()))
}

fn node() -> Result<()> {
    let version = output(command(&root(), "node", &["--version"]))
        .context("Node 20 or newer is needed; install it from your system or nodejs.org")?;
    let major: u32 =
        version.trim_start_matches('v').split('.').next().and_then(|major| major.parse().ok()).unwrap_or(0);
    if major < 20 {
        bail!("Node 20 or newer is needed, found {}", version.trim());
    }
    Ok(())
}

/// The browsers of the tests, with what they need to draw.
pub(crate) struct Browsers {
    /// The one that PITHBALL_CHROMIUM names, or the system's.
    pub(crate) chromium: PathBuf,
    /// The one that PITHBALL_FIREFOX names, or the system's.
    pub(crate) firefox: PathBuf,
}

/// Finds the browsers, installing them with apt where that may be done.
pub(crate) fn browsers() -> Result<Browsers> {
    let mut missing = Vec::new();
    let mut want = |name: &str, path: &str, packages: &[&'static str]| {
        if std::env::var_os(name).is_none() && !Path::new(path).is_file() {
            missing.extend(packages);
        }
    };
    want("PITHBALL_CHROMIUM", CHROMIUM, &["chromium"]);
    want("PITHBALL_FIREFOX", FIREFOX, &["firefox-esr"]);
    // Firefox has WebGL2 only where there is a display to draw on.
    want("DISPLAY", "/usr/bin/Xvfb", &["xvfb", "libgl1-mesa-dri", "libegl1", "libgl1"]);
    if !missing.is_empty() && apt_install(&missing).is_err() {
        bail!(
            "the browser tests need packages that could not be installed from here; install them with:\n  \
             sudo apt-get install --no-install-recommends {}\n\
             or name browsers of your own in PITHBALL_CHROMIUM and PITHBALL_FIREFOX",
            missing.join(" ")
        );
    }
    Ok(Browsers { chromium: browser("PITHBALL_CHROMIUM", CHROMIUM)?, firefox: browser("PITHBALL_FIREFOX", FIREFOX)? })
}

const CHROMIUM: &str = "/usr/bin/chromium";
const FIREFOX: &str = "/usr/bin/firefox-esr";

/// The browser that a variable names, or the system's.
fn browser(variable: &str, system: &str) -> Result<PathBuf> {
    if let Some(named) = std::env::var_os(variable) {
        let path = PathBuf::from(named);
        if !path.is_file() {
            bail!("{variable} names {}, which is not a file", path.display());
        }
        return Ok(path);
    }
    let path = PathBuf::from(system);
    if !path.is_file() {
        bail!("no {system}; install it with your system's packages, or name yours in {variable}");
    }
    Ok(path)
}

fn apt_install(packages: &[&str]) -> Result<()> {
    let user = output(command(&root(), "id", &["-u"]))?;
    let apt = |args: &[&str]| -> Command {
        let mut apt = if user.trim() == "0" {
            Command::new("apt-get")
        } else {
            let mut sudo = Command::new("sudo");
            sudo.args(["-n", "apt-get"]);
            sudo
        };
        apt.args(args).env("DEBIAN_FRONTEND", "noninteractive").stdin(Stdio::null());
        apt
    };
    run(apt(&["-qq", "update"]))?;
    run(apt(&[&["-qq", "-y", "install", "--no-install-recommends"], packages].concat()))
}
