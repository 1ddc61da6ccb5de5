//! The licences of everything that the built page carries, as those licences ask.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};

use anyhow::{Context, Result, bail};
use serde_json::Value;

use crate::run::{cargo, output, www};
use crate::tools::WASM_TARGET;

/// npm packages whose code or files end up in the page.
const FROM_NPM: [&str; 13] = [
    "preact",
    "@preact/signals",
    "@preact/signals-core",
    "d3-contour",
    "d3-array",
    "internmap",
    "idb",
    "uqr",
    "workbox-core",
    "workbox-precaching",
    "workbox-routing",
    "workbox-strategies",
    "@fontsource-variable/source-sans-3",
];

/// Writes every notice to `file`; packages with the same text share it.
pub(crate) fn write(file: &Path) -> Result<()> {
    let mut by_text: BTreeMap<String, Vec<String>> = BTreeMap::new();
    let npm = www().join("node_modules");
    let npm_folders = FROM_NPM.map(|name| (name.to_owned(), npm.join(name)));
    for (name, folder) in crate_folders()?.into_iter().chain(npm_folders) {
        by_text.entry(licence(&folder)?).or_default().push(name);
    }
    let notices: Vec<String> =
        by_text.iter().map(|(text, names)| format!("{}\n\n{}\n", names.join(", "), text.trim_end())).collect();
    let head = "Pithball carries work by others under these licences.\n\n";
    let rule = format!("\n{}\n\n", "-".repeat(78));
    fs::write(file, format!("{head}{}", notices.join(&rule))).with_context(|| format!("writing {}", file.display()))
}

/// Name with version, and source folder, of each crate in the page's module.
fn crate_folders() -> Result<Vec<(String, PathBuf)>> {
    let tree = output(cargo(&[
        "tree",
        "--package=pithball-web",
        "--target",
        WASM_TARGET,
        "--edges=normal,no-proc-macro",
        "--prefix=none",
        "--format={p}",
    ]))?;
    let metadata: Value =
        serde_json::from_str(&output(cargo(&["metadata", "--format-version=1", "--filter-platform", WASM_TARGET]))?)?;
    let packages = metadata["packages"].as_array().context("cargo metadata lists no packages")?;
    let mut folders = Vec::new();
    for package in packages {
        let text = |key: &str| package[key].as_str().unwrap_or_default();
        let name = format!("{} v{}", text("name"), text("version"));
        let ours = package["source"].is_null();
        let in_module = tree
            .lines()
            .any(|line| line.strip_prefix(&name).is_some_and(|rest| rest.is_empty() || rest.starts_with(' ')));
        if in_module && !ours {
            let manifest = Path::new(text("manifest_path"));
            let folder = manifest.parent().context("a manifest outside any folder")?;
            folders.push((name, folder.to_path_buf()));
        }
    }
    Ok(folders)
}

/// The licence text in a package's folder: MIT's where there is a choice.
fn licence(folder: &Path) -> Result<String> {
    let mut found: Vec<PathBuf> = fs::read_dir(folder)
        .with_context(|| format!("reading {}", folder.display()))?
        .filter_map(|entry| Some(entry.ok()?.path()))
        .filter(|path| {
            let name = path.file_name().unwrap_or_default().to_string_lossy();
            let name = name.to_uppercase();
            path.is_file() && (name.starts_with("LICENSE") || name.starts_with("LICENCE"))
        })
        .collect();
    found.sort_by_key(|path| (!path.to_string_lossy().to_uppercase().contains("MIT"), path.clone()));
    let read = |path: &PathBuf| fs::read_to_string(path).with_context(|| format!("reading {}", path.display()));
    match found.first() {
        Some(first) => read(first),
        None => Ok(licence_folder(folder)?.iter().map(read).collect::<Result<Vec<_>>>()?.join("\n\n")),
    }
}

/// The texts in a package's folder of licences: all of them hold for some part
/// of it, but for Apache's, beside which MIT's may be chosen.
fn licence_folder(folder: &Path) -> Result<Vec<PathBuf>> {
    let Ok(entries) = fs::read_dir(folder.join("licenses")) else {
        bail!("{} has no licence file", folder.display());
    };
    let mut texts: Vec<PathBuf> = entries.filter_map(|entry| Some(entry.ok()?.path())).collect();
    texts.sort();
    let named = |path: &PathBuf, name: &str| path.to_string_lossy().to_uppercase().ends_with(name);
    if texts.iter().any(|path| named(path, "MIT.TXT")) {
        texts.retain(|path| !named(path, "APACHE-2.0.TXT"));
    }
    if texts.is_empty() {
        bail!("{} has no licence file", folder.display());
    }
    Ok(texts)
}
