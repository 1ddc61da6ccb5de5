//! From compiled crates to what JavaScript imports: bindings by wasm-bindgen,
//! then the optimiser from npm's binaryen.

use std::fs;
use std::path::{Path, PathBuf};

use anyhow::{Context, Result};
use wasm_bindgen_cli_support::Bindgen;

use crate::run::{cargo, command, run, target, www};
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

/// The page's two modules in www/pkg: crates/web with one of its features each.
pub(crate) fn page() -> Result<()> {
    let folder = www().join("pkg");
    build("pithball-web", Some("first"), "pithball", &folder)?;
    build("pithball-web", Some("more"), "more", &folder)
}

/// The measured kernels, in a folder below target/; returns it.
pub(crate) fn kernels() -> Result<PathBuf> {
    let folder = target().join("bench-kernels");
    build("pithball-bench", None, "kernels", &folder)?;
    Ok(folder)
}

/// Compiles a package, of its features only the one named, and writes NAME.js,
/// NAME.d.ts and NAME_bg.wasm to `folder`. Does nothing after an unchanged compile.
fn build(package: &str, feature: Option<&str>, name: &str, folder: &Path) -> Result<()> {
    let mut compile = cargo(&["build", "--quiet", "--lib", "--release", "--target", WASM_TARGET, "--package", package]);
    if let Some(feature) = feature {
        compile.args(["--no-default-features", "--features", feature]);
    }
    run(compile)?;
    let file = format!("release/{}.wasm", package.replace('-', "_"));
    let compiled_path = target().join(WASM_TARGET).join(file);
    let compiled = fs::read(&compiled_path).with_context(|| format!("reading {}", compiled_path.display()))?;

    let stamp = folder.join(format!("{name}.compiled.wasm"));
    if fs::read(&stamp).is_ok_and(|bound| bound == compiled) {
        return Ok(());
    }
    Bindgen::new()
        .input_bytes(name, compiled.clone())
        .web(true)?
        .typescript(true)
        .omit_default_module_path(true)
        .generate(folder)
        .with_context(|| format!("generating the bindings of {package}"))?;
    // Types of the raw module would hide what the bundler makes of it: an address.
    fs::remove_file(folder.join(format!("{name}_bg.wasm.d.ts"))).context("removing the raw module's types")?;
    optimise(&folder.join(format!("{name}_bg.wasm")))?;
    fs::write(&stamp, compiled).with_context(|| format!("writing {}", stamp.display()))
}

fn optimise(module: &Path) -> Result<()> {
    let module = module.to_string_lossy();
    let mut args = vec!["node_modules/binaryen/bin/wasm-opt", "-O3"];
    args.extend(FEATURES);
    args.extend([module.as_ref(), "-o", module.as_ref()]);
    run(command(&www(), "node", &args))
}
