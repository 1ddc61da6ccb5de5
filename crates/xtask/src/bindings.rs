//! From the compiled module to what the page imports: bindings by wasm-bindgen,
//! then the optimiser from npm's binaryen, in www/pkg.

use std::fs;
use std::path::Path;

use anyhow::{Context, Result};
use wasm_bindgen_cli_support::Bindgen;

use crate::run::{cargo, command, root, run, www};
use crate::tools::WASM_TARGET;

/// What the compiler's wasm output uses beyond the first version of WebAssembly.
const FEATURES: [&str; 6] = [
    "--enable-bulk-memory",
    "--enable-multivalue",
    "--enable-mutable-globals",
    "--enable-nontrapping-float-to-int",
    "--enable-reference-types",
    "--enable-sign-ext",
];

/// Compiles crates/web and writes pithball.js, pithball.d.ts and
/// pithball_bg.wasm to www/pkg. Does nothing after an unchanged compile.
pub(crate) fn build() -> Result<()> {
    run(cargo(&["build", "--quiet", "--package=pithball-web", "--release", "--target", WASM_TARGET]))?;
    let target = std::env::var_os("CARGO_TARGET_DIR").map_or_else(|| root().join("target"), |dir| root().join(dir));
    let compiled_path = target.join(WASM_TARGET).join("release/pithball_web.wasm");
    let compiled = fs::read(&compiled_path).with_context(|| format!("reading {}", compiled_path.display()))?;

    let pkg = www().join("pkg");
    let stamp = pkg.join("compiled.wasm");
    if fs::read(&stamp).is_ok_and(|bound| bound == compiled) {
        return Ok(());
    }
    if pkg.is_dir() {
        fs::remove_dir_all(&pkg).with_context(|| format!("emptying {}", pkg.display()))?;
    }
    Bindgen::new()
        .input_bytes("pithball", compiled.clone())
        .web(true)?
        .typescript(true)
        .omit_default_module_path(true)
        .generate(&pkg)
        .context("generating the page's bindings")?;
    // Types of the raw module would hide what the bundler makes of it: an address.
    fs::remove_file(pkg.join("pithball_bg.wasm.d.ts")).context("removing the raw module's types")?;
    optimise(&pkg.join("pithball_bg.wasm"))?;
    fs::write(&stamp, compiled).with_context(|| format!("writing {}", stamp.display()))
}

fn optimise(module: &Path) -> Result<()> {
    let module = module.to_string_lossy();
    let mut args = vec!["node_modules/binaryen/bin/wasm-opt", "-O3"];
    args.extend(FEATURES);
    args.extend([module.as_ref(), "-o", module.as_ref()]);
    run(command(&www(), "node", &args))
}
