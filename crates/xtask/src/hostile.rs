//! Hostile input for as long as one likes: fuzzing, and very many recipes.

use std::fs;

use anyhow::{Context, Result};

use crate::run::{cargo, command, host, root, run, target};

/// The fuzz targets; `fuzz/Cargo.toml` has a program for each.
pub(crate) const TARGETS: [&str; 10] =
    ["ball", "shot", "oil", "layout", "shelf", "tolerances", "target", "lesson", "progress", "link"];

/// What libFuzzer needs to see which branches an input takes. These are the
/// flags of cargo-fuzz that a stable compiler has too.
const INSTRUMENTS: &str = "--cfg fuzzing -Cpasses=sancov-module -Cllvm-args=-sanitizer-coverage-level=4 \
    -Cllvm-args=-sanitizer-coverage-inline-8bit-counters -Cllvm-args=-sanitizer-coverage-pc-table \
    -Cllvm-args=-sanitizer-coverage-trace-compares -Ccodegen-units=1";

/// Runs one target, or each in turn, for so many seconds.
pub(crate) fn fuzz(name: Option<&str>, seconds: u64) -> Result<()> {
    for target in TARGETS.iter().filter(|target| name.is_none_or(|name| name == **target)) {
        fuzz_one(target, seconds)?;
    }
    Ok(())
}

fn fuzz_one(name: &str, seconds: u64) -> Result<()> {
    let work = target().join("fuzz");
    let corpus = work.join("corpus").join(name);
    fs::create_dir_all(&corpus).with_context(|| format!("making {}", corpus.display()))?;
    let seeds = corpus.to_string_lossy();
    run(cargo(&["run", "--quiet", "--release", "--package=pithball-tests", "--bin=seeds", "--", name, &seeds]))?;
    // With the target named, the flags hold for the program alone and not for what builds it.
    let host = host()?;
    let built = work.to_string_lossy().into_owned();
    let mut build = cargo(&[
        "build",
        "--quiet",
        "--release",
        "--manifest-path=fuzz/Cargo.toml",
        "--bin",
        name,
        "--target",
        &host,
        "--target-dir",
        &built,
    ]);
    build.env("RUSTFLAGS", INSTRUMENTS);
    run(build)?;
    let program = work.join(&host).join("release").join(name);
    let found = format!("-artifact_prefix={}/{name}-", work.display());
    let longest = format!("-max_total_time={seconds}");
    // A ball may take a while to weigh; what takes a minute hangs.
    let args = [longest.as_str(), &found, "-timeout=60", "-rss_limit_mb=2048", "-max_len=65536", &seeds];
    run(command(&root(), &program.to_string_lossy(), &args))
}

/// Weighs `count` random recipes from the `first`-th on.
pub(crate) fn recipes(count: u64, first: u64) -> Result<()> {
    let (count, first) = (count.to_string(), first.to_string());
    run(cargo(&["run", "--quiet", "--release", "--package=pithball-tests", "--bin=recipes", "--", &count, &first]))
}
