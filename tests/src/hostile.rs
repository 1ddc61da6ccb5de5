//! Whatever a file or a link holds: what is done with it ends, without a panic,
//! in numbers or in a problem. One function a kind of input, for the bounded run
//! of `tests/tests/hostile.rs` and for the fuzz targets of `fuzz/` alike.

use format::lesson::MAX_MISTAKES;
use format::{
    BallFile, BallRef, LayoutFile, MAX_LINK_CHARS, OilFile, Problem, ProgressFile, ReadShelf, Scatter, Seeker,
    ShotFile, TargetFile, TolerancesFile,
};
use lessons::{Files, Lesson};
use physics::ball::Ball;
use physics::roll::{RigidBall, roll};
use physics::weigh::{Weighed, weigh};

/// Balls of more solids than this are read and built, but not weighed: a
/// hundred of them may take minutes, which is slow but no mistake.
const WEIGHED_SOLIDS: usize = 4;

/// A kind of input: its name, what is done with it, and files to begin from.
pub struct Target {
    /// As `cargo xtask fuzz` calls it.
    pub name: &'static str,
    /// All that is done with it.
    pub run: fn(&[u8]),
    /// Inputs without a mistake.
    pub seeds: fn() -> Vec<Vec<u8>>,
}

/// Every kind of input that comes from outside.
pub const TARGETS: [Target; 10] = [
    Target { name: "ball", run: ball, seeds: || scenarios("balls") },
    Target { name: "shot", run: shot, seeds: whole_shots },
    Target { name: "oil", run: oil, seeds: || scenarios("oil") },
    Target { name: "layout", run: layout, seeds: || scenarios("layouts") },
    Target { name: "shelf", run: shelf, seeds: || vec![a_shelf()] },
    Target { name: "tolerances", run: tolerances, seeds: || vec![some_tolerances()] },
    Target { name: "target", run: target, seeds: || scenarios("targets") },
    Target { name: "lesson", run: lesson, seeds: || scenarios("lessons") },
    Target { name: "progress", run: progress, seeds: || vec![some_progress()] },
    Target { name: "link", run: link, seeds: links },
];

/// Reads, builds and weighs a ball.
pub fn ball(bytes: &[u8]) {
    let Some(file) = told(BallFile::read(bytes)) else { return };
    if let Some(ball) = told(file.build()) {
        weighed(&file, &ball);
    }
}

/// Reads a shot, drills and weighs its ball, and rolls it.
pub fn shot(bytes: &[u8]) {
    if let Some(file) = told(ShotFile::read(bytes)) {
        throw(&file);
    }
}

/// Reads an oil pattern and asks for its film and friction all over.
pub fn oil(bytes: &[u8]) {
    let Some(film) = told(OilFile::read(bytes)).and_then(|file| told(file.film())) else { return };
    for board in 0..40 {
        for feet in 0..64 {
            let thick = film.at_m((f64::from(board) - 20.0) * 0.0271, f64::from(feet) * 0.3048);
            assert!(thick.is_finite() && thick >= 0.0, "{thick} at {board}, {feet}");
        }
    }
}

/// Reads a layout and drills a ball after it.
pub fn layout(bytes: &[u8]) {
    let Some(file) = told(LayoutFile::read(bytes)) else { return };
    let Some(drilled) = told(file.laid.drill(&a_ball())) else { return };
    told(drilled.file.build());
}

/// Reads a shelf and throws what stands on it.
pub fn shelf(bytes: &[u8]) {
    let Some(shelf) = told(ReadShelf::read(bytes)) else { return };
    for broken in &shelf.broken {
        told::<()>(Err(broken.problem.clone()));
    }
    for entry in shelf.entries.iter().take(2) {
        throw(&entry.shot);
    }
}

/// Reads tolerances and plans to pour a ball within them.
pub fn tolerances(bytes: &[u8]) {
    let Some(file) = told(TolerancesFile::read(bytes)) else { return };
    if let Ok(scatter) = Scatter::new(&a_ball(), &file) {
        assert!(scatter.units() > 0);
    }
}

/// Reads a target and plans to seek it.
pub fn target(bytes: &[u8]) {
    let Some(file) = told(TargetFile::read(bytes)) else { return };
    if let Ok(seeker) = Seeker::new(&a_ball(), &file) {
        assert!(seeker.units() > 0);
    }
}

/// Reads a lesson and goes through it.
pub fn lesson(bytes: &[u8]) {
    struct Scenarios;
    impl Files for Scenarios {
        fn read(&self, path: &str) -> Option<Vec<u8>> {
            // Nothing outside the folder, whatever a lesson asks for.
            let inside = !path.split('/').any(|part| part == "..") && !path.starts_with('/');
            std::fs::read(folder(path)).ok().filter(|_| inside)
        }
    }
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    let problems = match Lesson::read(text, Box::new(Scenarios)) {
        Ok(lesson) => lesson.unsound(),
        Err(problems) => {
            assert!(!problems.is_empty());
            problems
        }
    };
    assert!(problems.len() <= MAX_MISTAKES);
    problems.iter().for_each(|mistake| tells(&mistake.problem));
    // As the page is told of them.
    assert!(format::in_parts(|| serde_json::to_string(&problems)).is_ok());
}

/// Reads how far somebody has come with the lessons.
pub fn progress(bytes: &[u8]) {
    if let Some(file) = told(ProgressFile::read(bytes)) {
        lessons::ClassDoc::new(&[("somebody".to_owned(), file)]);
    }
}

/// Opens a link and throws what it holds; a link made of that holds the same.
pub fn link(bytes: &[u8]) {
    let Ok(text) = std::str::from_utf8(bytes) else { return };
    let Some(shot) = told(ShotFile::from_link(text)) else { return };
    throw(&shot);
    if let Some(again) = told(shot.to_link()) {
        assert!(again.len() <= MAX_LINK_CHARS);
        assert_eq!(ShotFile::from_link(&again), Ok(shot));
    }
}

/// A value, or a problem that says everything that a reader needs.
fn told<T>(read: Result<T, Problem>) -> Option<T> {
    read.inspect_err(tells).ok()
}

/// That a problem says everything that a reader needs, and no more.
fn tells(problem: &Problem) {
    let Problem { found, accepted, message, .. } = problem;
    assert!(!found.is_empty() && !accepted.is_empty() && !message.is_empty(), "{problem:?}");
    assert!(message.len() < 2_000, "a message of {} bytes", message.len());
}

fn solids(file: &BallFile) -> usize {
    let cuts: usize = file.pieces.iter().map(|piece| piece.cuts.as_ref().map_or(0, Vec::len)).sum();
    file.pieces.len() + cuts + file.holes.as_ref().map_or(0, Vec::len)
}

fn weighed(file: &BallFile, ball: &Ball) -> Option<Weighed> {
    if solids(file) > WEIGHED_SOLIDS {
        return None;
    }
    let weighed = weigh(ball);
    let tensor = weighed.inertia_kg_m2.iter().chain(&weighed.cg_m).chain(&weighed.rg_m);
    assert!(tensor.chain([&weighed.mass_kg, &weighed.relative_error]).all(|x| x.is_finite()), "{weighed:?}");
    Some(weighed)
}

fn throw(shot: &ShotFile) {
    let BallRef::Object(file) = &shot.ball else { return };
    let file = match shot.throw.laid() {
        Some(laid) => match told(laid.drill(file)) {
            Some(drilled) => drilled.file,
            None => return,
        },
        None => BallFile::clone(file),
    };
    let Some(ball) = told(file.build()) else { return };
    let Some(weighed) = weighed(&file, &ball) else { return };
    let Some(asked) = told(shot.throw.shot(&file.cover)) else { return };
    if let Ok(summary) = roll(&RigidBall::from(&weighed), &asked) {
        assert!(summary.end_time_s.is_finite());
    }
}

fn folder(name: &str) -> std::path::PathBuf {
    std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../scenarios").join(name)
}

/// The files of a folder of `scenarios/`, in the order of their names.
fn scenarios(folder: &str) -> Vec<Vec<u8>> {
    let folder = self::folder(folder);
    let paths = std::fs::read_dir(folder).expect("scenarios").map(|entry| entry.expect("an entry").path());
    let mut paths: Vec<_> = paths.filter(|path| path.is_file()).collect();
    paths.sort();
    paths.iter().map(|path| std::fs::read(path).expect("a file")).collect()
}

fn a_ball() -> BallFile {
    BallFile::read(&scenarios("balls")[3]).expect("a ball of the scenarios")
}

/// The shots of the scenarios with ball and oil inside, as links and shelves have them.
fn shots() -> Vec<serde_json::Value> {
    let folder = folder("shots");
    let parse = |bytes: &[u8]| serde_json::from_slice::<serde_json::Value>(bytes).expect("JSON");
    let beside = |name: &str| parse(&std::fs::read(folder.join(name)).expect("a file beside it"));
    let mut shots: Vec<_> = scenarios("shots").iter().map(|bytes| parse(bytes)).collect();
    for shot in &mut shots {
        if let Some(name) = shot["ball"].as_str() {
            shot["ball"] = beside(name);
        }
        if let Some(name) = shot["lane"]["oil"].as_str() {
            shot["lane"]["oil"] = beside(name);
        }
    }
    shots
}

fn whole_shots() -> Vec<Vec<u8>> {
    shots().iter().map(|shot| shot.to_string().into_bytes()).collect()
}

fn a_shelf() -> Vec<u8> {
    let entries: Vec<_> = shots()
        .into_iter()
        .take(3)
        .map(|shot| serde_json::json!({ "name": "kept", "note": "why", "saved_at": "2026-03-01T18:30:00Z", "shot": shot }))
        .collect();
    serde_json::json!({ "format": "pithball.shelf/1", "entries": entries }).to_string().into_bytes()
}

fn some_tolerances() -> Vec<u8> {
    let file = a_ball();
    let ball = file.build().expect("a ball of the scenarios");
    serde_json::to_vec(&TolerancesFile::usual(&weigh(&ball))).expect("it can be written")
}

fn some_progress() -> Vec<u8> {
    let step = serde_json::json!({ "id": "guess", "title": "A guess", "passed": true, "tries": 2, "hints": 1 });
    let lesson = serde_json::json!({
        "id": "a", "title": "A lesson", "of_steps": 3, "finished_at": "2026-03-01T18:30:00Z", "steps": [step]
    });
    serde_json::json!({ "format": "pithball.progress/1", "learner": "S.", "lessons": [lesson] })
        .to_string()
        .into_bytes()
}

fn links() -> Vec<Vec<u8>> {
    let link = |bytes: &Vec<u8>| ShotFile::read(bytes).and_then(|shot| shot.to_link()).expect("a link").into_bytes();
    whole_shots().iter().map(link).collect()
}
