//! Reading files, each mistake with the file it is in.

use std::fs::File;
use std::io::{self, Read};
use std::path::{Path, PathBuf};

use format::{
    BallFile, BallRef, Lane, LayoutFile, MAX_FILE_BYTES, OilFile, OilRef, Problem, ProgressFile, ShotFile, TargetFile,
    TolerancesFile, WeighedShot,
};
use physics::weigh::weigh;

use crate::Complaint;

/// A ball file, read and built, and what to call it in a complaint.
pub(crate) struct ReadBall {
    pub(crate) file: BallFile,
    pub(crate) ball: physics::ball::Ball,
}

/// Reads and builds the ball at `path`.
pub(crate) fn ball(path: &Path) -> Result<ReadBall, Complaint> {
    let bytes = bytes(path).map_err(|error| unreadable(path, &error))?;
    let built = BallFile::read(&bytes).and_then(|file| Ok(ReadBall { ball: file.build()?, file }));
    built.map_err(|problem| Complaint { file: path.to_owned(), problem })
}

/// Reads the layout at `path`.
pub(crate) fn layout(path: &Path) -> Result<LayoutFile, Complaint> {
    let bytes = bytes(path).map_err(|error| unreadable(path, &error))?;
    LayoutFile::read(&bytes).map_err(|problem| Complaint { file: path.to_owned(), problem })
}

/// Reads the shot at `path` with its ball and its oil, which are beside it or in
/// it.
pub(crate) fn shot(path: &Path) -> Result<(ShotFile, ReadBall), Complaint> {
    let complaint = |problem| Complaint { file: path.to_owned(), problem };
    let bytes = bytes(path).map_err(|error| unreadable(path, &error))?;
    let mut shot = ShotFile::read(&bytes).map_err(complaint)?;
    let ball = match &shot.ball {
        BallRef::Object(file) => {
            let ball = file.build().map_err(|problem| complaint(problem.within("ball")))?;
            ReadBall { file: BallFile::clone(file), ball }
        }
        BallRef::Path(name) => self::ball(&beside(path, name, "ball")?)?,
    };
    if let Lane::Oiled(lane) = &mut shot.throw.lane
        && let OilRef::Path(name) = &lane.oil
    {
        lane.oil = OilRef::Object(Box::new(oil(&beside(path, name, "lane.oil")?)?));
    }
    Ok((shot, ball))
}

/// The same with the ball as it is thrown: drilled where the shot says so.
pub(crate) fn thrown(path: &Path) -> Result<(ShotFile, ReadBall), Complaint> {
    let (shot, ball) = shot(path)?;
    drilled(path, shot, ball)
}

/// Drills the ball of the shot read from `path`, where the shot says so.
pub(crate) fn drilled(path: &Path, shot: ShotFile, ball: ReadBall) -> Result<(ShotFile, ReadBall), Complaint> {
    let complaint = |problem| Complaint { file: path.to_owned(), problem };
    let Some(laid) = shot.throw.laid() else { return Ok((shot, ball)) };
    let file = laid.drill(&ball.file).map_err(complaint)?.file;
    let ball = file.build().map_err(|problem| complaint(problem.within("ball")))?;
    Ok((shot, ReadBall { file, ball }))
}

/// Reads the oil at `path`, whose numbers go together.
pub(crate) fn oil(path: &Path) -> Result<OilFile, Complaint> {
    let bytes = bytes(path).map_err(|error| unreadable(path, &error))?;
    let read = OilFile::read(&bytes).and_then(|file| file.film().map(|_| file));
    read.map_err(|problem| Complaint { file: path.to_owned(), problem })
}

/// Reads the tolerances at `path`.
pub(crate) fn tolerances(path: &Path) -> Result<TolerancesFile, Complaint> {
    let bytes = bytes(path).map_err(|error| unreadable(path, &error))?;
    TolerancesFile::read(&bytes).map_err(|problem| Complaint { file: path.to_owned(), problem })
}

/// Reads the target at `path`.
pub(crate) fn target(path: &Path) -> Result<TargetFile, Complaint> {
    let bytes = bytes(path).map_err(|error| unreadable(path, &error))?;
    TargetFile::read(&bytes).map_err(|problem| Complaint { file: path.to_owned(), problem })
}

/// Reads the progress file at `path`.
pub(crate) fn progress(path: &Path) -> Result<ProgressFile, Complaint> {
    let bytes = bytes(path).map_err(|error| unreadable(path, &error))?;
    ProgressFile::read(&bytes).map_err(|problem| Complaint { file: path.to_owned(), problem })
}

/// The text of the lesson at `path`.
pub(crate) fn lesson(path: &Path) -> Result<String, Complaint> {
    let text = bytes(path).and_then(|bytes| {
        String::from_utf8(bytes).map_err(|_| io::Error::new(io::ErrorKind::InvalidData, "it is no text in UTF-8"))
    });
    text.map_err(|error| unreadable(path, &error))
}

/// A path as the shot file gives it at `place`, from the shot file's folder,
/// where there is a file.
fn beside(shot: &Path, name: &str, place: &str) -> Result<PathBuf, Complaint> {
    let path = shot.parent().unwrap_or(Path::new("")).join(name);
    let what = place.rsplit('.').next().unwrap_or(place);
    match File::open(&path) {
        Ok(_) => Ok(path),
        Err(error) => Err(Complaint {
            file: shot.to_owned(),
            problem: Problem {
                place: place.to_owned(),
                found: format!("{name:?}").into(),
                accepted: format!(
                    "a path from the shot file's folder to the {what}'s file, or the {what} object itself"
                )
                .into(),
                message: format!("The {what} file cannot be read: {}.", reason(&error)).into(),
            },
        }),
    }
}

/// The shot at `path` with its ball weighed as it is thrown.
pub(crate) fn weighed_shot(path: &Path) -> Result<WeighedShot, Complaint> {
    let (shot, read) = thrown(path)?;
    Ok(WeighedShot { weighed: weigh(&read.ball), ball: read.file, throw: shot.throw })
}

/// No more than one byte past what is accepted, however long the file.
fn bytes(path: &Path) -> io::Result<Vec<u8>> {
    let mut bytes = Vec::new();
    let most = MAX_FILE_BYTES as u64 + 1;
    File::open(path)?.take(most).read_to_end(&mut bytes)?;
    Ok(bytes)
}

fn unreadable(path: &Path, error: &io::Error) -> Complaint {
    let problem = Problem {
        place: String::new(),
        found: reason(error).into(),
        accepted: "a file that can be read".into(),
        message: format!("The file cannot be read: {}.", reason(error)).into(),
    };
    Complaint { file: path.to_owned(), problem }
}

/// What the system says, in small letters and without its number.
pub(crate) fn reason(error: &io::Error) -> String {
    let text = error.to_string();
    let text = text.split(" (os error").next().unwrap_or_default();
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_lowercase().chain(letters).collect())
}
