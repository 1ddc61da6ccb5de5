//! What stands on the bench: a ball and how it is thrown, and every number
//! that is computed from them.

use std::cell::OnceCell;
use std::collections::BTreeMap;

use format::lesson::{Change, Given};
use format::{
    BallFile, BallRef, CheckedDoc, CoverDoc, Lane, LayoutFile, OilFile, OilRef, Phrase, PouredDoc, Problem, RolledDoc,
    SAMPLE_INTERVAL_S, ShotFile, Throw, WeighedDoc, WeighedShot, not_json, phrase,
};
use physics::drill::statics;
use physics::roll::{RigidBall, trace};
use serde_json::{Value, json};

use crate::expr::{here_must_be, quoted};
use crate::path::{Leg, Path, differences};

/// Where a lesson's balls, shots and oil come from: the text of a file by its
/// path from the folder above the lesson's, such as `balls/no-1-simple.ball.json`.
pub trait Files {
    /// The text; none where there is no such file.
    fn read(&self, path: &str) -> Option<Vec<u8>>;
}

/// Files by their paths from one folder. A lesson in a folder of its own within
/// the lessons', as its Spanish edition is, leads above that folder: it finds them too.
impl Files for BTreeMap<String, Vec<u8>> {
    fn read(&self, path: &str) -> Option<Vec<u8>> {
        self.get(path.trim_start_matches("../")).cloned()
    }
}

/// A lesson's paths begin in this folder.
const LESSONS: &str = "lessons";

/// A ball and a shot, weighed, drilled as the shot says; the rest on demand.
#[derive(Debug)]
pub struct Bench {
    doc: Value,
    ball: BallFile,
    shot: WeighedShot,
    weighed: WeighedDoc,
    rolled: OnceCell<Result<RolledDoc, Problem>>,
    cover: OnceCell<Result<CoverDoc, Problem>>,
    checked: OnceCell<CheckedDoc>,
    poured: OnceCell<Result<PouredDoc, Problem>>,
}

impl Bench {
    /// Takes `{ "ball": …, "shot": … }`: a ball file and a shot file without
    /// its ball, the oil inside.
    ///
    /// # Errors
    /// What is wrong with either, its place under `ball` or `shot`.
    pub fn new(doc: Value) -> Result<Self, Problem> {
        let ball = BallFile::read(doc["ball"].to_string().as_bytes()).map_err(|problem| problem.within("ball"))?;
        let throw = Throw::read(doc["shot"].to_string().as_bytes()).map_err(|problem| problem.within("shot"))?;
        if let Lane::Oiled(lane) = &throw.lane
            && let OilRef::Path(path) = &lane.oil
        {
            return Err(refused("shot.lane.oil", quoted(path), phrase!("the-oil", "the oil itself")));
        }
        let format = format::ShotVersion::V1;
        let whole = ShotFile { format, name: None, note: None, ball: BallRef::Object(Box::new(ball.clone())), throw };
        let shot = whole.weighed()?;
        let weighed = WeighedDoc::new(&shot.ball, &shot.weighed);
        let (rolled, cover, checked, poured) = (OnceCell::new(), OnceCell::new(), OnceCell::new(), OnceCell::new());
        Ok(Self { doc, ball, shot, weighed, rolled, cover, checked, poured })
    }

    /// The ball and shot as they were given.
    pub fn doc(&self) -> &Value {
        &self.doc
    }

    /// This with a change, files of it read from `files`.
    ///
    /// # Errors
    /// A place that is not there, a file that cannot be read, or what is wrong
    /// with the ball or shot that comes of it; places are those of the change
    /// or under `ball` and `shot`.
    pub fn changed(&self, change: &Change, files: &dyn Files) -> Result<Self, Problem> {
        Self::of(self.doc.clone(), change, files)
    }

    /// The bench that a lesson starts with.
    ///
    /// # Errors
    /// As for [`Self::changed`].
    pub fn begun(change: &Change, files: &dyn Files) -> Result<Self, Problem> {
        Self::of(json!({}), change, files)
    }

    fn of(mut doc: Value, change: &Change, files: &dyn Files) -> Result<Self, Problem> {
        if let Some(ball) = &change.ball {
            let (ball, _) = given(ball, files, "ball")?;
            doc["ball"] = ball;
        }
        if let Some(shot) = &change.shot {
            let (mut shot, folder) = given(shot, files, "shot")?;
            if let Some(object) = shot.as_object_mut()
                && let Some(ball) = object.remove("ball")
                && doc.get("ball").is_none()
            {
                doc["ball"] = within(ball, &folder, files, "shot.ball")?;
            }
            if let Some(oil) = shot.get_mut("lane").and_then(|lane| lane.get_mut("oil")) {
                *oil = within(oil.take(), &folder, files, "shot.lane.oil")?;
            }
            doc["shot"] = shot;
        }
        if let Some(layout) = &change.layout {
            let (layout, _) = given(layout, files, "layout")?;
            let read = LayoutFile::read(layout.to_string().as_bytes()).map_err(|problem| problem.within("layout"))?;
            doc["shot"]["hand"] = layout["hand"].clone();
            doc["shot"]["drilling"] = layout["drilling"].clone();
            doc["shot"]["layout"]["pin_to_pap_in"] = json!(read.laid.layout.pin_to_pap_in);
            doc["shot"]["layout"]["drilling_angle_deg"] = json!(read.laid.layout.drilling_angle_deg);
        }
        for (place, value) in &change.set {
            let there = Path::parse(place).and_then(|path| path.set(&mut doc, value.clone()));
            there.ok_or_else(|| nowhere("set", place))?;
            if let Some(oil) = doc.pointer_mut("/shot/lane/oil") {
                *oil = within(oil.take(), LESSONS, files, "shot.lane.oil")?;
            }
        }
        for place in &change.remove {
            let there = Path::parse(place).and_then(|path| path.remove(&mut doc));
            there.ok_or_else(|| nowhere("remove", place))?;
        }
        Self::new(doc)
    }

    /// Every place where this differs from another.
    pub(crate) fn differences(&self, other: &Self) -> Vec<Path> {
        differences(&other.doc, &self.doc)
    }

    /// What the ball weighs as it is thrown.
    pub(crate) fn weighed(&self) -> &WeighedDoc {
        &self.weighed
    }

    /// The ball as it is thrown, holes and inserts in it.
    pub(crate) fn thrown_ball(&self) -> &BallFile {
        &self.shot.ball
    }

    /// The ball as its file gives it.
    pub(crate) fn ball(&self) -> &BallFile {
        &self.ball
    }

    pub(crate) fn throw(&self) -> &Throw {
        &self.shot.throw
    }

    pub(crate) fn rolled(&self) -> Result<&RolledDoc, Problem> {
        let roll = || {
            let shot = self.shot.throw.shot(&self.shot.ball.cover)?;
            let traced = trace(&RigidBall::from(&self.shot.weighed), &shot, SAMPLE_INTERVAL_S);
            Ok(RolledDoc::new(&self.shot.ball, &traced.map_err(|error| Problem::from(&error))?))
        };
        self.rolled.get_or_init(roll).as_ref().map_err(Clone::clone)
    }

    pub(crate) fn cover(&self) -> Result<&CoverDoc, Problem> {
        self.cover.get_or_init(|| self.ball.cover()).as_ref().map_err(Clone::clone)
    }

    pub(crate) fn poured(&self) -> Result<&PouredDoc, Problem> {
        self.poured.get_or_init(|| self.ball.pour(None)).as_ref().map_err(Clone::clone)
    }

    pub(crate) fn checked(&self) -> &CheckedDoc {
        self.checked.get_or_init(|| {
            let ball = &self.shot.ball;
            let laid = self.shot.throw.laid().and_then(|laid| laid.drill(&self.ball).ok());
            let statics = laid.map(|made| statics(&self.shot.weighed, &made.drilling.marks));
            CheckedDoc::new(ball, &physics::spec::check(&ball.recipe(), &self.shot.weighed, statics.as_ref()))
        })
    }

    /// The oil on the lane, where there is any.
    pub(crate) fn oil(&self) -> Option<&OilFile> {
        match &self.shot.throw.lane {
            Lane::Oiled(lane) => match &lane.oil {
                OilRef::Object(oil) => Some(oil),
                OilRef::Path(_) => None,
            },
            Lane::Zoned(_) => None,
        }
    }
}

fn refused(place: &str, found: Phrase, accepted: Phrase) -> Problem {
    let message = here_must_be(accepted.clone(), found.clone());
    Problem { place: place.to_owned(), found, accepted, message }
}

fn nowhere(key: &str, place: &str) -> Problem {
    let accepted = phrase!(
        "there-such-as",
        "a place that is there, such as {one} or {other}",
        one = "ball.pieces[0].density_g_cc",
        other = "shot.release.revs_rpm"
    );
    refused(&format!("{key}[{place:?}]"), quoted(place), accepted)
}

/// What a change gives, and the folder that its own paths begin in.
fn given(given: &Given, files: &dyn Files, place: &str) -> Result<(Value, String), Problem> {
    match given {
        Given::Path(path) => {
            let (value, at) = load(path, LESSONS, files, place)?;
            let folder = at.rsplit_once('/').map_or("", |(folder, _)| folder).to_owned();
            Ok((value, folder))
        }
        Given::Object(object) => {
            Ok((object.iter().map(|(key, value)| (key.clone(), value.clone())).collect(), LESSONS.to_owned()))
        }
    }
}

/// A path turned into what stands in the file; anything else as it is.
fn within(value: Value, folder: &str, files: &dyn Files, place: &str) -> Result<Value, Problem> {
    match value.as_str() {
        Some(path) => load(path, folder, files, place).map(|(value, _)| value),
        None => Ok(value),
    }
}

fn load(path: &str, folder: &str, files: &dyn Files, place: &str) -> Result<(Value, String), Problem> {
    let at = joined(folder, path);
    let no_file = || refused(place, quoted(path), phrase!("path-there", "the path of a file that is there"));
    let bytes = files.read(&at).ok_or_else(no_file)?;
    let value = serde_json::from_slice(&bytes).map_err(|error| {
        let found = phrase!("path-not-json", "{path}: {why}", path = quoted(path), why = not_json(&error));
        refused(place, found, phrase!("path-of-json", "the path of a JSON file"))
    })?;
    Ok((value, at))
}

/// A path from a folder, dots worked out.
fn joined(folder: &str, path: &str) -> String {
    let mut legs: Vec<&str> = folder.split('/').filter(|leg| !leg.is_empty()).collect();
    for leg in path.split('/') {
        match leg {
            "" | "." => {}
            ".." if legs.last().is_some_and(|last| *last != "..") => drop(legs.pop()),
            leg => legs.push(leg),
        }
    }
    legs.join("/")
}

/// Whether a place lies at or below one of these, as `doc` counts its items.
pub(crate) fn is_free(place: &Path, free: &[Path], doc: &Value) -> bool {
    // Names and remarks change no number.
    let said = matches!(place.0.last(), Some(Leg::Key(key)) if key == "name" || key == "note" || key == "material");
    said || free.iter().any(|free| free.numbered(doc).is_some_and(|free| free.begins(place)))
}
