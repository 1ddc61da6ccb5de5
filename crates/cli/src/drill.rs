//! `pithball drill`.

use std::path::PathBuf;

use comfy_table::Cell;
use format::{AxisMoveDoc, DrilledDoc};
use physics::weigh::weigh;

use crate::tables::{head, lines, number, number_or_dash, one_line, signed, table};
use crate::{Complaint, files};

/// What to drill.
#[derive(clap::Args)]
pub(crate) struct Args {
    /// The ball file (NAME.ball.json).
    ball: PathBuf,
    /// The layout file (NAME.layout.json).
    layout: PathBuf,
    /// Print JSON, for programs.
    #[arg(long, conflicts_with = "drilled_ball")]
    json: bool,
    /// Print the drilled ball as a ball file.
    #[arg(long = "ball", id = "drilled_ball")]
    drilled_ball: bool,
}

pub(crate) fn run(args: &Args) -> Result<String, Complaint> {
    let read = files::ball(&args.ball)?;
    let layout = files::layout(&args.layout)?;
    let complaint = |problem| Complaint { file: args.layout.clone(), problem };
    let drilled = layout.laid.drill(&read.file).map_err(complaint)?;
    let ball = drilled.file.build().map_err(|problem| Complaint { file: args.ball.clone(), problem })?;
    if args.drilled_ball {
        return Ok(format!("{:#}\n", serde_json::json!(drilled.file)));
    }
    let doc = DrilledDoc::new(&read.file, &weigh(&read.ball), &drilled, &weigh(&ball));
    if args.json {
        return Ok(format!("{:#}\n", serde_json::json!(doc)));
    }
    let title =
        format!("{} drilled for {}", one_line(&read.file.name), one_line(layout.name.as_deref().unwrap_or("a hand")));
    Ok([title + "\n", holes(&doc), places(&doc), numbers(&doc), statics(&doc), trouble(&doc)].join("\n"))
}

fn holes(doc: &DrilledDoc) -> String {
    let mut table = table();
    table.set_header([
        Cell::new("hole"),
        head("in across"),
        head("in deep"),
        head("drilled, in"),
        Cell::new("enters at x, y, z"),
        Cell::new("runs along x, y, z"),
    ]);
    for hole in &doc.holes {
        let name = hole.name.as_deref().unwrap_or_default();
        let wide = doc.inserts.iter().find(|insert| insert.hole == name).map(|insert| insert.drilled_diameter_in);
        table.add_row([
            Cell::new(name),
            number(hole.diameter_in, 3),
            number(hole.depth_in, 3),
            number(wide.unwrap_or(hole.diameter_in), 3),
            Cell::new(three(hole.entry)),
            Cell::new(three(hole.runs_along())),
        ]);
    }
    lines(&table)
}

fn three(v: [f64; 3]) -> String {
    v.map(|part| format!("{part:.4}")).join(", ")
}

fn places(doc: &DrilledDoc) -> String {
    let marks = &doc.marks;
    format!(
        "The pin is {:.2} in from the grip centre and {:.2} in from the vertical axis line; the PAP is {:.2} in from the grip centre.\n",
        marks.pin_to_grip_centre_in, marks.pin_to_val_in, marks.pap_to_grip_centre_in
    )
}

fn numbers(doc: &DrilledDoc) -> String {
    let (before, after, change) = (&doc.before, &doc.after, &doc.change);
    let mut table = table();
    table.set_header([Cell::new(""), head("before"), head("after"), head("change"), Cell::new("")]);
    for (what, a, b, by, decimals, unit) in [
        ("weight", before.weight_lb, after.weight_lb, change.weight_oz, 3, "lb, change in oz"),
        ("low RG", before.rg_in.low, after.rg_in.low, change.rg_in.low, 4, "in"),
        ("middle RG", before.rg_in.middle, after.rg_in.middle, change.rg_in.middle, 4, "in"),
        ("high RG", before.rg_in.high, after.rg_in.high, change.rg_in.high, 4, "in"),
        ("differential", before.differential_in, after.differential_in, change.differential_in, 4, "in"),
        (
            "intermediate differential",
            before.intermediate_differential_in,
            after.intermediate_differential_in,
            change.intermediate_differential_in,
            4,
            "in",
        ),
    ] {
        let by = Cell::new(signed(by, decimals)).set_alignment(comfy_table::CellAlignment::Right);
        table.add_row([Cell::new(what), number(a, decimals), number(b, decimals), by, Cell::new(unit)]);
    }
    let mut text = lines(&table);
    text += "\n";
    for (what, axis) in [("high", &doc.high_axis), ("low", &doc.low_axis)] {
        text += &format!("{}\n", moved(what, axis));
    }
    text
}

fn moved(what: &str, axis: &AxisMoveDoc) -> String {
    match (axis.moved_deg, axis.moved_in, axis.to_pin_in, axis.to_pap_in) {
        (Some(degrees), Some(inches), ..) => {
            format!("The {what}-RG axis moved by {degrees:.1} degrees, {inches:.2} in on the surface.")
        }
        (.., Some(pin), Some(pap)) => format!(
            "The ball had no one {what}-RG axis; now it comes out {pin:.2} in from the pin and {pap:.2} in from the PAP."
        ),
        _ => format!("The drilled ball has no one {what}-RG axis."),
    }
}

fn statics(doc: &DrilledDoc) -> String {
    let found = &doc.statics;
    let mut table = table();
    table.set_header([Cell::new("static weight"), head("oz"), Cell::new("published limit")]);
    let rule = doc.rules.iter().find(|rule| rule.rule == "static_balance");
    let limit = rule.and_then(|rule| rule.at_most);
    for ((more, less, oz), verdict) in [
        ("top", "bottom", found.top_oz),
        ("finger", "thumb", found.finger_oz),
        ("positive side", "negative side", found.side_oz),
    ]
    .into_iter()
    .zip(found.verdicts)
    {
        let name = if oz < 0.0 { less } else { more };
        let says = match (verdict, limit) {
            ("pass", Some(limit)) => format!("within {limit} oz"),
            ("fail", Some(limit)) => format!("OUTSIDE {limit} oz"),
            ("too_close", Some(limit)) => format!("too close to {limit} oz to tell"),
            _ => "not for this ball".to_owned(),
        };
        table.add_row([Cell::new(name), number_or_dash(Some(oz.abs()), 2), Cell::new(says)]);
    }
    let mut text = lines(&table);
    if let Some(rule) = rule {
        text += &format!("Source: {}; {}. Scale arm: the ball's radius.\n", rule.source, rule.edition);
    }
    text
}

fn trouble(doc: &DrilledDoc) -> String {
    let mut text = String::new();
    for conflict in &doc.conflicts {
        text += &format!("CAUTION: {}\n", one_line(&conflict.message));
    }
    text.extend(doc.cautions.iter().map(|caution| format!("{caution}\n")));
    text
}
