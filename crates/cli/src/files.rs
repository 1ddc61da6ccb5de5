//! Reading files, each mistake with the file it is in.

use std::fs::File;
use std::io::{self, Read};
use std::path::{Path, PathBuf};

use format::{BallFile, BallRef, LayoutFile, MAX_FILE_BYTES, Problem, ShotFile};

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

/// Reads the shot at `path` and its ball, which is beside it or in it, drilled
/// as the shot says.
pub(crate) fn shot(path: &Path) -> Result<(ShotFile, ReadBall), Complaint> {
    let complaint = |problem| Complaint { file: path.to_owned(), problem };
    let bytes = bytes(path).map_err(|error| unreadable(path, &error))?;
    let shot = ShotFile::read(&bytes).map_err(complaint)?;
    let ball = match &shot.ball {
        BallRef::Object(file) => {
            let ball = file.build().map_err(|problem| complaint(problem.within("ball")))?;
            ReadBall { file: BallFile::clone(file), ball }
        }
        BallRef::Path(name) => {
            let ball_path = beside(path, name);
            if let Err(error) = File::open(&ball_path) {
                return Err(complaint(Problem {
                    place: "ball".to_owned(),
                    found: format!("{name:?}"),
                    accepted: "a path from the shot file's folder to a ball file, or the ball object itself".to_owned(),
                    message: format!("The ball file {} cannot be read: {error}.", ball_path.display()),
                }));
            }
            self::ball(&ball_path)?
        }
    };
    let Some(laid) = shot.throw.laid() else { return Ok((shot, ball)) };
    let file = laid.drill(&ball.file).map_err(complaint)?.file;
    let ball = file.build().map_err(|problem| complaint(problem.within("ball")))?;
    Ok((shot, ReadBall { file, ball }))
}

/// A path as the shot file gives it, from the shot file's folder.
fn beside(shot: &Path, ball: &str) -> PathBuf {
    shot.parent().unwrap_or(Path::new("")).join(ball)
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
        found: error.kind().to_string(),
        accepted: "a file that can be read".to_owned(),
        message: format!("The file cannot be read: {error}."),
    };
    Complaint { file: path.to_owned(), problem }
}
