//! `pithball`: the page's jobs on files.
//!
//! What a command says is put together in full before any of it is written, so
//! a mistake leaves nothing on the standard output: it is one message on the
//! standard error, and exit code 2.

mod area;
mod check;
mod cover;
mod drill;
mod files;
mod ladder;
mod lessons;
mod levers;
mod link;
mod map;
mod misuse;
mod oil;
mod pour;
mod roll;
mod scatter;
mod schema;
mod seek;
mod tables;
mod wear;
mod weigh;
mod why;

use std::fmt;
use std::io::{self, ErrorKind, Write};
use std::path::PathBuf;
use std::process::ExitCode;

use clap::{CommandFactory, Parser, Subcommand};
use format::Problem;

/// Weigh and roll ten-pin bowling balls from their files.
#[derive(Parser)]
#[command(name = "pithball", version)]
struct Args {
    #[command(subcommand)]
    command: Command,
}

#[derive(Subcommand)]
enum Command {
    /// Weigh a ball: weight, RG, differentials, and what each piece adds.
    Weigh(weigh::Args),
    /// Hold a ball to every published limit.
    Check(check::Args),
    /// Measure the cover: the thinnest place, the mean, and what holes leave.
    Cover(cover::Args),
    /// Drill a ball for a hand: holes, what they change, static weights.
    Drill(drill::Args),
    /// Make a ball at 16 to 10 lb by changing one piece, or more in proportion.
    Ladder(ladder::Args),
    /// Roll a shot: phases, breakpoint, and how the ball meets the pins.
    Roll(roll::Args),
    /// Tell why two shots differ: what RG, differential, cover, layout and the rest each add.
    Why(why::Args),
    /// Throw a shot again and again, a little otherwise each time: its room for error.
    Area(area::Args),
    /// Put a shot and its ball into the fragment of a web address.
    Link(link::LinkArgs),
    /// Print the shot file that a link holds.
    Unlink(link::UnlinkArgs),
    /// Look at an oil pattern: length, volume, ratio, and the film board by board.
    Oil(oil::Args),
    /// Wear a lane's oil: what the same line does game after game.
    Wear(wear::Args),
    /// Pour thousands of balls within tolerances: what passes, what is sold as seconds, what is scrap, and why.
    Scatter(scatter::Args),
    /// Find cores that meet wanted numbers.
    Seek(seek::Args),
    /// Tell what every control of a ball moves.
    Levers(levers::Args),
    /// Weigh a ball over two of its controls.
    Map(map::Args),
    /// Tell how a ball is poured: order, moulds, what stands in the way, what it costs.
    Pour(pour::Args),
    /// Prove lessons sound, or list what their expressions may say.
    Lessons(lessons::Args),
    /// Print the JSON Schema of a file.
    Schema(schema::Args),
}

/// A mistake in one of the files, or in reading it.
#[derive(Debug)]
struct Complaint {
    file: PathBuf,
    problem: Problem,
}

impl fmt::Display for Complaint {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let file = tables::one_line(&self.file.to_string_lossy());
        write!(f, "pithball: {file}: {}", tables::one_line(&self.problem.to_string()))
    }
}

fn main() -> ExitCode {
    let args = match Args::try_parse() {
        Ok(args) => args,
        Err(error) if error.use_stderr() => {
            let told = misuse::told(&error, &Args::command());
            return complain(&format_args!("pithball: {}", tables::one_line(&told)), ExitCode::from(2));
        }
        // Help and the version were asked for.
        Err(help) => return write_out(&help.render().to_string()),
    };
    let said = match args.command {
        Command::Weigh(args) => weigh::run(&args),
        Command::Check(args) => check::run(&args),
        Command::Cover(args) => cover::run(&args),
        Command::Drill(args) => drill::run(&args),
        Command::Ladder(args) => ladder::run(&args),
        Command::Roll(args) => roll::run(&args),
        Command::Why(args) => why::run(&args),
        Command::Area(args) => area::run(&args),
        Command::Link(args) => link::link(&args),
        Command::Unlink(args) => link::unlink(&args),
        Command::Oil(args) => oil::run(&args),
        Command::Wear(args) => wear::run(&args),
        Command::Scatter(args) => scatter::run(&args),
        Command::Seek(args) => seek::run(&args),
        Command::Levers(args) => levers::run(&args),
        Command::Map(args) => map::run(&args),
        Command::Pour(args) => pour::run(&args),
        Command::Lessons(args) => {
            return match lessons::run(&args) {
                Ok(text) => write_out(&text),
                Err(wrong) => complain(&wrong, ExitCode::from(2)),
            };
        }
        Command::Schema(args) => Ok(schema::run(&args)),
    };
    match said {
        Ok(text) => write_out(&text),
        Err(complaint) => complain(&complaint, ExitCode::from(2)),
    }
}

fn write_out(text: &str) -> ExitCode {
    let mut out = io::stdout().lock();
    match out.write_all(text.as_bytes()).and_then(|()| out.flush()) {
        Ok(()) => ExitCode::SUCCESS,
        // Whoever read has read enough.
        Err(error) if error.kind() == ErrorKind::BrokenPipe => ExitCode::SUCCESS,
        Err(error) => complain(&format_args!("pithball: cannot write: {error}"), ExitCode::FAILURE),
    }
}

fn complain(what: &dyn fmt::Display, code: ExitCode) -> ExitCode {
    // With no one to tell, the exit code still says it.
    let _ = writeln!(io::stderr(), "{what}");
    code
}
