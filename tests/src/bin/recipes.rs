//! Weighs very many random recipes on all cores and says what came of it.
//! Usage: recipes COUNT [FIRST]

#![allow(clippy::expect_used, reason = "a program of the tests: what goes wrong must fail loudly")]

use std::cell::Cell;
use std::process::ExitCode;
use std::sync::Mutex;
use std::sync::atomic::{AtomicU64, Ordering};
use std::time::{Duration, Instant};

use physics::weigh::TOLERANCE;
use pithball_tests::many::{finite, hold_against_slow, recipe};

/// One recipe in so many is held against the slow evaluation; a number that has
/// every kind of recipe among its multiples.
const SAMPLED: u64 = 1_999;
/// Recipes between two lines of progress.
const SHOWN: u64 = 50_000;

thread_local! {
    static AT: Cell<u64> = const { Cell::new(0) };
}

#[derive(Default)]
struct Seen {
    longest: (Duration, u64),
    largest_bound: f64,
    /// Recipes that end above the usual bound, each held against the slow evaluation.
    above: Vec<(u64, f64)>,
    held: u64,
    bluntest: f64,
    faults: Vec<String>,
}

fn main() -> ExitCode {
    let mut given = std::env::args().skip(1).map(|word| word.parse::<u64>().expect("a whole number"));
    let count = given.next().unwrap_or(1_000_000);
    let first = given.next().unwrap_or(0);
    let usual = std::panic::take_hook();
    std::panic::set_hook(Box::new(move |panic| {
        eprintln!("recipe {} panics", AT.get());
        usual(panic);
    }));

    let next = AtomicU64::new(first);
    let seen = Mutex::new(Seen::default());
    let start = Instant::now();
    std::thread::scope(|scope| {
        for _ in 0..std::thread::available_parallelism().map_or(1, usize::from) {
            scope.spawn(|| {
                loop {
                    let n = next.fetch_add(1, Ordering::Relaxed);
                    if n >= first + count {
                        return;
                    }
                    AT.set(n);
                    one(n, &seen);
                    let done = n + 1 - first;
                    if done.is_multiple_of(SHOWN) {
                        println!("{done} weighed in {:.0} s", start.elapsed().as_secs_f64());
                    }
                }
            });
        }
    });
    let seen = seen.into_inner().expect("no thread has panicked");
    println!("{count} random recipes weighed in {:.0} s, none panicked", start.elapsed().as_secs_f64());
    println!(
        "largest error bound {:.2e}, but for {} that reached the most lines:",
        seen.largest_bound,
        seen.above.len()
    );
    for (n, bound) in &seen.above {
        println!("  recipe {n}: bound {bound:.2e}");
    }
    println!("longest {:.0} ms, recipe {}", 1e3 * seen.longest.0.as_secs_f64(), seen.longest.1);
    println!(
        "{} held against the slow evaluation, whose own standard error was at most {:.1e}",
        seen.held, seen.bluntest
    );
    for fault in &seen.faults {
        eprintln!("{fault}");
    }
    println!("{} faults", seen.faults.len());
    if seen.faults.is_empty() { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}

fn one(n: u64, seen: &Mutex<Seen>) {
    let recipe = recipe(n);
    let start = Instant::now();
    let checked = finite(&recipe);
    let taken = start.elapsed();
    let bound = checked.as_ref().map_or(0.0, |(_, got)| if got.mass_kg > 0.0 { got.relative_error } else { 0.0 });
    let above = bound > TOLERANCE;
    let held = match checked {
        Ok((ball, got)) if above || n.is_multiple_of(SAMPLED) => hold_against_slow(&recipe, &ball, &got, n).map(Some),
        Ok(_) => Ok(None),
        Err(fault) => Err(fault),
    };
    let mut seen = seen.lock().expect("no thread has panicked");
    seen.longest = seen.longest.max((taken, n));
    if above {
        seen.above.push((n, bound));
    } else {
        seen.largest_bound = seen.largest_bound.max(bound);
    }
    match held {
        Ok(Some(blunt)) => {
            seen.held += 1;
            seen.bluntest = seen.bluntest.max(blunt);
        }
        Ok(None) => {}
        Err(fault) => seen.faults.push(format!("recipe {n}: {fault}")),
    }
}
