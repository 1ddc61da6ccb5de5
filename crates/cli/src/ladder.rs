//! `pithball ladder`.

use std::path::PathBuf;

use clap::ValueEnum;
use comfy_table::Cell;
use format::LadderDoc;
use physics::ladder::By;

use crate::tables::{head, lines, number, number_or_dash, one_line, table};
use crate::{Complaint, files};

/// What to make at other weights.
#[derive(clap::Args)]
pub(crate) struct Args {
    /// The ball file (NAME.ball.json).
    ball: PathBuf,
    /// The piece to change, by its name, or `cover`; once more for another, changed in proportion.
    #[arg(long = "piece", value_name = "NAME", required = true)]
    pieces: Vec<String>,
    /// What to change about it.
    #[arg(long)]
    by: How,
    /// Print JSON, for programs.
    #[arg(long)]
    json: bool,
}

#[derive(Clone, Copy, ValueEnum)]
enum How {
    /// Its density.
    Density,
    /// Its size, about its own origin.
    Size,
}

pub(crate) fn run(args: &Args) -> Result<String, Complaint> {
    let read = files::ball(&args.ball)?;
    let complaint = |problem| Complaint { file: args.ball.clone(), problem };
    let by = match args.by {
        How::Density => By::Density,
        How::Size => By::Size,
    };
    let chosen: Result<Vec<_>, _> = args.pieces.iter().map(|name| read.file.part_named(name)).collect();
    let ladder = chosen.and_then(|chosen| read.file.ladder(&chosen, by)).map_err(complaint)?;
    if args.json {
        return Ok(format!("{:#}\n", serde_json::json!(ladder)));
    }
    let parts: Vec<String> = ladder.parts.iter().map(|name| one_line(name)).collect();
    let title = format!("{} by the {} of {}", one_line(&read.file.name), ladder.by, parts.join(" and "));
    Ok(format!("{title}\n\n{}\n{}{}", rungs(&ladder), to_mind(&ladder), floating(&ladder)))
}

fn rungs(ladder: &LadderDoc) -> String {
    let mut table = table();
    let mut header = vec![head("lb")];
    header.extend(ladder.parts.iter().map(|name| head(&format!("{}, g/cc", one_line(name)))));
    header.extend(["size, times", "low RG, in", "middle", "high", "differential, in", "top weight, oz"].map(head));
    header.push(Cell::new(""));
    table.set_header(header);
    for rung in &ladder.rungs {
        let mut row = vec![number(rung.weight_lb, 0)];
        row.extend(rung.changed.iter().map(|part| number_or_dash(part.density_g_cc, 4)));
        row.push(number_or_dash(rung.size_factor, 4));
        let rg = rung.rg_in;
        row.extend([rg.map(|rg| rg.low), rg.map(|rg| rg.middle), rg.map(|rg| rg.high)].map(|rg| number_or_dash(rg, 4)));
        row.extend([number_or_dash(rung.differential_in, 4), number_or_dash(rung.top_weight_oz, 2)]);
        row.push(Cell::new(rung.why.as_deref().map_or_else(String::new, one_line)));
        table.add_row(row);
    }
    lines(&table)
}

/// What speaks against a weight that can be had, weight by weight.
fn to_mind(ladder: &LadderDoc) -> String {
    let mut text = String::new();
    for rung in &ladder.rungs {
        let broken = rung.limits_broken.iter().map(|broken| format!("OUTSIDE the limits: {}", broken.message));
        let others = rung.unusual.iter().chain(&rung.caution).map(ToString::to_string);
        for said in broken.chain(others) {
            text += &format!("{:.0} lb: {}\n", rung.weight_lb, one_line(&said));
        }
    }
    if text.is_empty() { text } else { format!("{text}\n") }
}

fn floating(ladder: &LadderDoc) -> String {
    format!("In water of 1.000 g/cc this ball floats if it weighs less than {:.3} lb.\n", ladder.floating_weight_lb)
}
