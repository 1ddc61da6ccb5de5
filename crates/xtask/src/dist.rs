//! The release: site, one-file page and command line in one archive that comes
//! out the same, byte by byte, wherever the same commit is built with the same tools.

use std::fs;
use std::path::{Path, PathBuf};

use anyhow::{Context, Result};

use crate::run::{command, host, output, root, run};
use crate::version::VERSION;

/// Files of the repository that go along.
const ALONG: [&str; 4] = ["README.md", "CHANGELOG.md", "LICENSE-MIT", "LICENSE-APACHE"];

/// Leaves the archive and its checksum in `out`.
pub(crate) fn dist(out: &Path) -> Result<()> {
    let out = root().join(out);
    let work = root().join("target/dist");
    let host = host()?;
    let name = format!("pithball-{VERSION}-{host}");
    let stage = work.join(&name);
    if stage.is_dir() {
        fs::remove_dir_all(&stage).with_context(|| format!("emptying {}", stage.display()))?;
    }
    fs::create_dir_all(&stage).with_context(|| format!("making {}", stage.display()))?;

    // Where a machine keeps its sources must not show in what it makes.
    let flags = format!(
        "--remap-path-prefix={}=cargo --remap-path-prefix={}=pithball",
        cargo_home()?.display(),
        root().display()
    );
    let site = stage.join("site").display().to_string();
    let whole = stage.display().to_string();
    let xtask = std::env::current_exe().context("finding this program")?.display().to_string();
    for args in [vec!["build", "--out", &site], vec!["pack", "--out", &whole]] {
        let mut build = command(&root(), &xtask, &args);
        build.env("RUSTFLAGS", &flags).env("CARGO_TARGET_DIR", &work);
        run(build)?;
    }
    let mut build = crate::run::cargo(&["build", "--quiet", "--release", "--locked", "--package=pithball-cli"]);
    build.env("RUSTFLAGS", &flags).env("CARGO_TARGET_DIR", &work);
    run(build)?;
    let program = format!("pithball{}", std::env::consts::EXE_SUFFIX);
    copy(&work.join("release").join(&program), &stage.join(&program))?;
    for file in ALONG {
        copy(&root().join(file), &stage.join(file))?;
    }

    fs::create_dir_all(&out).with_context(|| format!("making {}", out.display()))?;
    archive(&work, &name, &out.join(format!("{name}.tar.gz")))
}

/// Packs the folder `name` of `work`, with a list of checksums in it and one beside the archive.
fn archive(work: &Path, name: &str, file: &Path) -> Result<()> {
    // GNU tar with everything fixed that could differ; the time is the commit's.
    let script = r#"
        cd "$1/$2"
        find . -type f ! -name SHA256SUMS | LC_ALL=C sort | xargs sha256sum > SHA256SUMS
        cd ..
        tar --sort=name --mtime="@$4" --owner=0 --group=0 --numeric-owner --mode=go=rX,u+rw -cf - "$2" | gzip -9n > "$3"
        cd "$(dirname "$3")"
        sha256sum "$(basename "$3")" > "$(basename "$3").sha256"
        cat "$(basename "$3").sha256"
    "#;
    let [work, to] = [work, file].map(|path| path.display().to_string());
    run(command(&root(), "bash", &["-euo", "pipefail", "-c", script, "dist", &work, name, &to, &time()?]))
}

/// Seconds of the commit; of nothing in particular outside a repository.
fn time() -> Result<String> {
    if !root().join(".git").exists() {
        return Ok("0".to_owned());
    }
    Ok(output(command(&root(), "git", &["log", "-1", "--format=%ct"]))?.trim().to_owned())
}

fn cargo_home() -> Result<PathBuf> {
    let home = std::env::var_os("CARGO_HOME").map(PathBuf::from);
    home.or_else(|| std::env::home_dir().map(|home| home.join(".cargo"))).context("no home folder")
}

fn copy(from: &Path, to: &Path) -> Result<()> {
    fs::copy(from, to).with_context(|| format!("copying {}", from.display()))?;
    Ok(())
}
