//! weigh on every ball of scenarios/balls, roll on every shot of scenarios/shots.

use std::error::Error;
use std::fs;
use std::path::{Path, PathBuf};
use std::time::Duration;

use criterion::Criterion;
use format::{BallRef, Lane, OilRef, ShotFile};
use pithball_bench::{Rolling, Weighing};

fn main() -> Result<(), Box<dyn Error>> {
    let scenarios = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../scenarios");
    let mut criterion = Criterion::default()
        .without_plots()
        .sample_size(20)
        .warm_up_time(Duration::from_millis(500))
        .measurement_time(Duration::from_secs(2))
        .configure_from_args();
    let mut group = criterion.benchmark_group("weigh");
    for (name, path) in files(&scenarios.join("balls"), ".ball.json")? {
        let weighing = Weighing::new(&fs::read_to_string(path)?)?;
        group.bench_function(name, |bencher| bencher.iter(|| weighing.run(1)));
    }
    group.finish();
    let mut group = criterion.benchmark_group("roll");
    for (name, path) in files(&scenarios.join("shots"), ".shot.json")? {
        let text = fs::read_to_string(&path)?;
        let file = ShotFile::read(text.as_bytes())?;
        let BallRef::Path(ball) = file.ball else {
            return Err(format!("{}: the ball should be a path", path.display()).into());
        };
        let oil = match file.throw.lane {
            Lane::Oiled(lane) => match lane.oil {
                OilRef::Path(oil) => Some(fs::read_to_string(path.with_file_name(oil))?),
                OilRef::Object(_) => None,
            },
            Lane::Zoned(_) => None,
        };
        let rolling = Rolling::new(&fs::read_to_string(path.with_file_name(ball))?, &text, oil)?;
        rolling.run(1)?;
        group.bench_function(name, |bencher| bencher.iter(|| rolling.run(1)));
    }
    group.finish();
    Ok(())
}

/// Name without its ending, and path, of each file in a folder, in order.
fn files(folder: &Path, ending: &str) -> Result<Vec<(String, PathBuf)>, Box<dyn Error>> {
    let mut found = Vec::new();
    for entry in fs::read_dir(folder)? {
        let path = entry?.path();
        let name = path.file_name().unwrap_or_default().to_string_lossy().into_owned();
        if let Some(stem) = name.strip_suffix(ending) {
            found.push((stem.to_owned(), path));
        }
    }
    found.sort();
    Ok(found)
}
