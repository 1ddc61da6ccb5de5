//! What the tests of all commands share.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

use serde_json::Value;
use tempfile::TempDir;

pub(crate) fn scenario(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../scenarios").join(name)
}

pub(crate) fn pithball(args: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_pithball")).args(args).output().expect("it runs")
}

pub(crate) fn text(bytes: &[u8]) -> &str {
    std::str::from_utf8(bytes).expect("UTF-8")
}

pub(crate) fn said(args: &[&str]) -> String {
    let output = pithball(args);
    assert!(output.status.success(), "{}", text(&output.stderr));
    assert!(output.stderr.is_empty(), "{}", text(&output.stderr));
    text(&output.stdout).to_owned()
}

pub(crate) fn json(args: &[&str]) -> Value {
    serde_json::from_str(&said(args)).expect("JSON")
}

/// Refused with exit code 2, nothing on the standard output, and one line on
/// the standard error that holds every one of `parts`.
#[track_caller]
pub(crate) fn refused(args: &[&str], parts: &[&str]) {
    let output = pithball(args);
    let message = text(&output.stderr);
    assert_eq!(output.status.code(), Some(2), "{message}");
    assert!(output.stdout.is_empty(), "{}", text(&output.stdout));
    assert_eq!(message.lines().count(), 1, "{message}");
    for part in parts {
        assert!(message.contains(part), "{part:?} is not in {message:?}");
    }
}

pub(crate) struct Folder(pub(crate) TempDir);

impl Folder {
    pub(crate) fn new() -> Self {
        Self(tempfile::tempdir().expect("a folder"))
    }

    pub(crate) fn write(&self, name: &str, content: impl AsRef<[u8]>) -> String {
        let path = self.0.path().join(name);
        fs::create_dir_all(path.parent().expect("a folder")).expect("a folder");
        fs::write(&path, content).expect("a file");
        path.to_string_lossy().into_owned()
    }
}

pub(crate) fn three_piece() -> String {
    fs::read_to_string(scenario("balls/no-3-three-piece.ball.json")).expect("a file")
}

pub(crate) fn opening() -> String {
    fs::read_to_string(scenario("shots/opening.shot.json")).expect("a file")
}

pub(crate) fn replaced(text: &str, old: &str, new: &str) -> String {
    assert!(text.contains(old), "{old:?} is not in the text");
    text.replacen(old, new, 1)
}
