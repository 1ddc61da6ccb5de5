//! Running other programs from the workspace's root.

use std::ffi::OsStr;
use std::path::{Path, PathBuf};
use std::process::Command;

use anyhow::{Context, Result, bail};

/// The workspace's root folder.
pub(crate) fn root() -> PathBuf {
    let xtask = Path::new(env!("CARGO_MANIFEST_DIR"));
    xtask.ancestors().nth(2).unwrap_or(xtask).to_path_buf()
}

/// The page's folder, where npm's tools live.
pub(crate) fn www() -> PathBuf {
    root().join("www")
}

/// The folder that cargo builds into.
pub(crate) fn target() -> PathBuf {
    std::env::var_os("CARGO_TARGET_DIR").map_or_else(|| root().join("target"), |folder| root().join(folder))
}

/// A command that starts in `dir`.
pub(crate) fn command<A: AsRef<OsStr>>(dir: &Path, program: &str, args: &[A]) -> Command {
    let mut command = Command::new(program);
    command.current_dir(dir).args(args);
    command
}

/// Cargo, the same one that runs this.
pub(crate) fn cargo(args: &[&str]) -> Command {
    let cargo = std::env::var("CARGO").unwrap_or_else(|_| "cargo".into());
    command(&root(), &cargo, args)
}

/// Runs a command to its end with its output shown; anything but success is an error.
pub(crate) fn run(mut command: Command) -> Result<()> {
    let shown = shown(&command);
    let status = command.status().with_context(|| format!("could not start `{shown}`"))?;
    if !status.success() {
        bail!("`{shown}` failed ({status})");
    }
    Ok(())
}

/// Runs a command and returns what it printed; its error output is shown.
pub(crate) fn output(mut command: Command) -> Result<String> {
    let shown = shown(&command);
    command.stderr(std::process::Stdio::inherit());
    let output = command.output().with_context(|| format!("could not start `{shown}`"))?;
    if !output.status.success() {
        bail!("`{shown}` failed ({})", output.status);
    }
    String::from_utf8(output.stdout).with_context(|| format!("`{shown}` printed no text"))
}

/// Replaces this program by another where the system can, so that stopping one
/// stops the other; elsewhere runs it to its end.
pub(crate) fn become_command(command: Command) -> Result<()> {
    #[cfg(unix)]
    {
        use std::os::unix::process::CommandExt;
        let shown = shown(&command);
        let mut command = command;
        Err(command.exec()).with_context(|| format!("could not start `{shown}`"))
    }
    #[cfg(not(unix))]
    run(command)
}

/// What the compiler builds for where nothing else is asked.
pub(crate) fn host() -> Result<String> {
    let told = output(command(&root(), "rustc", &["-vV"]))?;
    match told.lines().find_map(|line| line.strip_prefix("host: ")) {
        Some(host) => Ok(host.to_owned()),
        None => bail!("rustc does not say what it compiles for"),
    }
}

fn shown(command: &Command) -> String {
    let words = std::iter::once(command.get_program()).chain(command.get_args());
    words.map(OsStr::to_string_lossy).collect::<Vec<_>>().join(" ")
}
