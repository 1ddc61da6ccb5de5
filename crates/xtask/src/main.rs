//! The project's own commands: `cargo xtask build | pack | serve | test | bench | dist` and more.
//!
//! Everything a person needs beside rustup, Node and apt is fetched from here,
//! so that each line of the README works on a fresh machine.

mod bench;
mod bindings;
mod dist;
mod hostile;
mod licences;
mod notices;
mod run;
mod site;
mod test;
mod tools;
mod version;

use std::path::PathBuf;
use std::process::ExitCode;

use clap::{Parser, Subcommand};

#[derive(Parser)]
#[command(name = "cargo xtask", about = "Build, serve, test and measure Pithball")]
struct Cli {
    #[command(subcommand)]
    command: Command,
}

#[derive(Subcommand)]
enum Command {
    /// Build the static site.
    Build {
        /// Folder for the site, emptied first.
        #[arg(long, default_value = "dist")]
        out: PathBuf,
    },
    /// Pack the page into one file, pithball.html, that opens from a disk without a server.
    Pack {
        /// Folder for the file.
        #[arg(long, default_value = "dist")]
        out: PathBuf,
    },
    /// Make the release: an archive of site, one-file page and command line, with checksums.
    Dist {
        /// Folder for the archive.
        #[arg(long, default_value = "dist-archive")]
        out: PathBuf,
    },
    /// Build the site, then serve it on this machine until Ctrl-C.
    Serve {
        /// Port to listen on; 0 picks a free one.
        #[arg(long, default_value_t = 8080)]
        port: u16,
    },
    /// Install what the tests need, then check format, lints and every test.
    Test,
    /// Look for inputs that break a reader, guided by coverage (libFuzzer).
    Fuzz {
        /// What is read; all of them in turn where none is named.
        #[arg(value_parser = hostile::TARGETS)]
        target: Option<String>,
        /// Seconds for each.
        #[arg(long, default_value_t = 60)]
        seconds: u64,
    },
    /// Weigh very many random recipes and hold a sample against a slower evaluation.
    Recipes {
        /// How many.
        #[arg(long, default_value_t = 1_000_000)]
        count: u64,
        /// Number of the first.
        #[arg(long, default_value_t = 0)]
        first: u64,
    },
    /// List what Rust says to a reader in www/locales/en/said.ftl, for those who translate.
    Words,
    /// Measure weigh and roll, natively and in headless Chromium.
    Bench,
}

fn main() -> ExitCode {
    let done = match Cli::parse().command {
        Command::Build { out } => site::build(&out),
        Command::Pack { out } => site::pack(&out),
        Command::Dist { out } => dist::dist(&out),
        Command::Serve { port } => site::serve(port),
        Command::Test => test::test(),
        Command::Fuzz { target, seconds } => hostile::fuzz(target.as_deref(), seconds),
        Command::Recipes { count, first } => hostile::recipes(count, first),
        Command::Words => run::run(run::cargo(&["run", "--quiet", "--package=pithball-tests", "--bin=words"])),
        Command::Bench => bench::bench(),
    };
    match done {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("error: {error:#}");
            ExitCode::FAILURE
        }
    }
}
