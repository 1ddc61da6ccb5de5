//! `pithball link` and `pithball unlink`.

use std::io::{self, Read};
use std::path::PathBuf;

use format::{BallRef, MAX_LINK_CHARS, Problem, ShotFile};

use crate::{Complaint, files};

/// What to put into a link.
#[derive(clap::Args)]
pub(crate) struct LinkArgs {
    /// The shot file (NAME.shot.json).
    shot: PathBuf,
}

/// What to take out of a link.
#[derive(clap::Args)]
pub(crate) struct UnlinkArgs {
    /// A whole address or what follows its #, in quotes; - reads the standard input.
    link: String,
}

pub(crate) fn link(args: &LinkArgs) -> Result<String, Complaint> {
    let (shot, read) = files::shot(&args.shot)?;
    let whole = ShotFile { ball: BallRef::Object(Box::new(read.file)), ..shot };
    let fragment = whole.to_link().map_err(|problem| Complaint { file: args.shot.clone(), problem })?;
    Ok(format!("#{fragment}\n"))
}

pub(crate) fn unlink(args: &UnlinkArgs) -> Result<String, Complaint> {
    let complaint = |problem| Complaint { file: PathBuf::from("the link"), problem };
    let link = if args.link == "-" { typed().map_err(complaint)? } else { args.link.clone() };
    let shot = ShotFile::from_link(&link).map_err(complaint)?;
    let text = serde_json::to_string_pretty(&shot).map_err(|error| complaint(unreadable(&error)))?;
    Ok(format!("{text}\n"))
}

/// The standard input, no more of it than any link and its address have.
fn typed() -> Result<String, Problem> {
    let mut text = String::new();
    let most = 2 * MAX_LINK_CHARS as u64;
    io::stdin().take(most).read_to_string(&mut text).map_err(|error| unreadable(&error))?;
    Ok(text)
}

fn unreadable(error: &dyn std::error::Error) -> Problem {
    Problem {
        place: String::new(),
        found: error.to_string().into(),
        accepted: "a link that can be read".into(),
        message: format!("The link cannot be read: {error}.").into(),
    }
}
