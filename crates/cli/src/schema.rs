//! `pithball schema`.

use clap::ValueEnum;

/// Which schema.
#[derive(clap::Args)]
pub(crate) struct Args {
    /// The file it describes.
    file: Kind,
}

#[derive(Clone, Copy, ValueEnum)]
enum Kind {
    /// NAME.ball.json
    Ball,
    /// NAME.shot.json
    Shot,
    /// NAME.layout.json
    Layout,
    /// NAME.oil.json
    Oil,
    /// NAME.lesson.md: its head and its steps in one object
    Lesson,
    /// NAME.progress.json
    Progress,
    /// NAME.shelf.json
    Shelf,
    /// NAME.tolerances.json
    Tolerances,
    /// NAME.target.json
    Target,
}

pub(crate) fn run(args: &Args) -> String {
    let schema = match args.file {
        Kind::Ball => format::ball_schema(),
        Kind::Shot => format::shot_schema(),
        Kind::Layout => format::layout_schema(),
        Kind::Oil => format::oil_schema(),
        Kind::Lesson => format::lesson_schema(),
        Kind::Progress => format::progress_schema(),
        Kind::Shelf => format::shelf_schema(),
        Kind::Tolerances => format::tolerances_schema(),
        Kind::Target => format::target_schema(),
    };
    format!("{schema:#}\n")
}
