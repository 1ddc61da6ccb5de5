//! Writes inputs without a mistake for a fuzzer to begin from.
//! Usage: seeds TARGET FOLDER

#![allow(clippy::expect_used, reason = "a program of the tests: what goes wrong must fail loudly")]

use pithball_tests::hostile::TARGETS;

fn main() {
    let given: Vec<String> = std::env::args().skip(1).collect();
    let [name, folder] = given.as_slice() else { unreachable!("a target and a folder") };
    let target = TARGETS.iter().find(|target| target.name == name).expect("a target");
    std::fs::create_dir_all(folder).expect("a folder");
    for (n, seed) in (target.seeds)().iter().enumerate() {
        std::fs::write(format!("{folder}/seed-{n}"), seed).expect("a file");
    }
}
