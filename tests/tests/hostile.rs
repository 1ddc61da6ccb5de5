//! A bounded run of what `cargo xtask fuzz` does for as long as one likes: files
//! and links with something wrong in them, each of which must end.

use std::time::{Duration, Instant};

use pithball_tests::hostile::TARGETS;
use pithball_tests::mutate::{Dice, mutated};

#[test]
fn every_seed_ends() {
    for target in &TARGETS {
        let seeds = (target.seeds)();
        assert!(!seeds.is_empty(), "{}", target.name);
        for seed in &seeds {
            (target.run)(seed);
        }
    }
}

#[test]
fn inputs_with_mistakes_end() {
    const EACH: usize = 400;
    // In an unhurried machine none takes a second; a hang takes for ever.
    const LONGEST: Duration = Duration::from_secs(60);
    for target in &TARGETS {
        let seeds = (target.seeds)();
        let mut dice = Dice(7);
        for n in 0..EACH {
            let input = mutated(&seeds[n % seeds.len()], &mut dice);
            let start = Instant::now();
            (target.run)(&input);
            let taken = start.elapsed();
            assert!(taken < LONGEST, "{} {n} took {taken:?}: {}", target.name, String::from_utf8_lossy(&input));
        }
    }
}
