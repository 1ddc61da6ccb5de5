//! `pithball levers`.

use std::path::PathBuf;

use comfy_table::Cell;
use format::{FiguresDoc, LeverDoc, LeversDoc};

use crate::tables::{head, lines, one_line, signed, table};
use crate::{Complaint, files};

/// Whose levers.
#[derive(clap::Args)]
pub(crate) struct Args {
    /// The ball file (NAME.ball.json).
    ball: PathBuf,
    /// Print JSON, for programs.
    #[arg(long)]
    json: bool,
}

pub(crate) fn run(args: &Args) -> Result<String, Complaint> {
    let read = files::ball(&args.ball)?;
    let complaint = |problem| Complaint { file: args.ball.clone(), problem };
    let levers = read.file.lever_docs(0, read.file.controls()).map_err(complaint)?;
    let levers = read.file.levers(levers);
    if args.json {
        return Ok(format!("{:#}\n", serde_json::json!(levers)));
    }
    let title = format!("{}: what every control moves, the differential most first", one_line(&levers.ball));
    Ok(format!("{title}\n\n{}\n{}\n", rows(&levers), levers.note))
}

fn rows(levers: &LeversDoc) -> String {
    let mut table = table();
    let mut header = vec![Cell::new(""), head("per")];
    header.extend(["weight, lb", "low RG, in", "differential, in", "intermediate, in", "top weight, oz"].map(head));
    table.set_header(header);
    let first = levers.ranked.differential_in.iter();
    let rest = (0..levers.levers.len()).filter(|n| !levers.ranked.differential_in.contains(n));
    for lever in first.copied().chain(rest).filter_map(|n| levers.levers.get(n)) {
        table.add_row(row(lever));
    }
    lines(&table)
}

fn row(lever: &LeverDoc) -> Vec<Cell> {
    let part = lever.control.part.as_deref().unwrap_or("ball");
    let mut row = vec![Cell::new(format!("{}: {}", one_line(part), lever.control.what))];
    row.push(head(&format!("{:.2} {}", lever.step, lever.control.unit)));
    let cell = |figure: fn(&FiguresDoc) -> f64, decimals: usize| {
        let by = |moved: Option<format::MovedDoc>| moved.map(|moved| (figure(&moved.by), figure(&moved.error)));
        let say = |value: f64| signed(value, decimals);
        head(&match (by(lever.raised), by(lever.lowered)) {
            (Some((up, a)), Some((down, b))) if (up + down).abs() <= a + b + 1e-12 => say(up),
            (Some((up, _)), Some((down, _))) => format!("{} up, {} down", say(up), say(down)),
            (Some((up, _)), None) => format!("{} up", say(up)),
            (None, Some((down, _))) => format!("{} down", say(down)),
            (None, None) => "–".to_owned(),
        })
    };
    row.extend([
        cell(|f| f.weight_lb, 4),
        cell(|f| f.low_rg_in, 5),
        cell(|f| f.differential_in, 5),
        cell(|f| f.intermediate_differential_in, 5),
        cell(|f| f.top_weight_oz, 4),
    ]);
    row
}
