//! Every check of the project, cheapest first.

use std::path::Path;

use anyhow::Result;

use crate::run::{cargo, command, root, run, www};
use crate::{licences, site, tools};

pub(crate) fn test() -> Result<()> {
    let browsers = tools::browsers()?;
    step("format");
    run(cargo(&["fmt", "--all", "--check"]))?;
    step("licences");
    licences::check()?;
    step("lints");
    run(cargo(&["clippy", "--quiet", "--workspace", "--all-targets", "--", "-D", "warnings"]))?;
    step("native tests");
    // Without xtask, which has no tests and would be built a second time: in
    // company its libraries have other features than alone.
    run(cargo(&["test", "--quiet", "--workspace", "--exclude=xtask"]))?;
    step("page: build");
    site::build(Path::new("dist"))?;
    site::pack(Path::new("dist"))?;
    step("page: types, lints and format");
    run(command(&www(), "npm", &["run", "--silent", "check"]))?;
    step("the same numbers native and in WebAssembly");
    // Against target/debug/pithball, which the command line's own tests have built.
    node_tests("tests/wasm", &browsers)?;
    step("browser tests");
    node_tests("tests/browser", &browsers)
}

fn step(name: &str) {
    println!("== {name}");
}

/// Node's own test runner over one folder, files one after another: the
/// browser draws in software and needs the processor for itself.
fn node_tests(folder: &str, browsers: &tools::Browsers) -> Result<()> {
    let mut files = Vec::new();
    for entry in std::fs::read_dir(root().join(folder))? {
        let path = entry?.path();
        if path.to_string_lossy().ends_with(".test.mjs") {
            files.push(path);
        }
    }
    files.sort();
    let mut node = command(&root(), "node", &["--test", "--test-concurrency=1", "--test-reporter=spec"]);
    node.args(&files).env("PITHBALL_CHROMIUM", &browsers.chromium).env("PITHBALL_FIREFOX", &browsers.firefox);
    run(node)
}
