//! `pithball why`.

use std::path::PathBuf;

use clap::Args as ClapArgs;
use comfy_table::Cell;
use format::{OutcomeDoc, PartDoc, WhyDoc, WhyProblem};
use physics::roll::SameHand;

use crate::tables::{head, lines, number, one_line, table};
use crate::{Complaint, files};

/// What to compare.
#[derive(ClapArgs)]
pub(crate) struct Args {
    /// The first shot file (NAME.shot.json).
    a: PathBuf,
    /// The second.
    b: PathBuf,
    /// Let the hand give both balls the same effort (the same angular impulse about the release
    /// axis, a model choice) and not the same revs: revs are what it gives the first ball.
    #[arg(long)]
    same_effort: bool,
    /// Print JSON, for programs.
    #[arg(long)]
    json: bool,
}

pub(crate) fn run(args: &Args) -> Result<String, Complaint> {
    let (a, b) = (files::weighed_shot(&args.a)?, files::weighed_shot(&args.b)?);
    let hand = if args.same_effort { SameHand::Effort } else { SameHand::Revs };
    let doc = WhyDoc::new(&a, &b, hand, ["A", "B"]).map_err(|problem| match problem {
        WhyProblem::A(problem) => Complaint { file: args.a.clone(), problem },
        WhyProblem::B(problem) => Complaint { file: args.b.clone(), problem },
    })?;
    if args.json {
        return Ok(format!("{:#}\n", serde_json::json!(doc)));
    }
    let title = format!(
        "A: {} at {:.0} rpm\nB: {} at {:.0} rpm\n",
        one_line(&doc.a.ball),
        doc.a.revs_rpm,
        one_line(&doc.b.ball),
        doc.b.revs_rpm
    );
    Ok(format!("{title}\n{}\n{}", one_line(&doc.sentence), numbers(&doc)))
}

fn numbers(doc: &WhyDoc) -> String {
    let mut table = table();
    let columns = ["hook, boards", "board at the pins", "entry angle, deg", "breakpoint, board", "breakpoint, ft"];
    let mut header = vec![Cell::new(""), head("A"), head("B")];
    header.extend(columns.map(head));
    table.set_header(header);
    let mut row = |what: &str, from: Option<String>, to: Option<String>, outcome: &OutcomeDoc| {
        let mut row = vec![Cell::new(what), head(&from.unwrap_or_default()), head(&to.unwrap_or_default())];
        row.extend([
            number(outcome.hook_boards, 2),
            number(outcome.board_at_pins, 2),
            number(outcome.entry_angle_deg, 2),
            number(outcome.breakpoint_board, 2),
            number(outcome.breakpoint_ft, 1),
        ]);
        table.add_row(row);
    };
    for (label, shot) in [("A", &doc.a), ("B", &doc.b)] {
        if let Some(outcome) = &shot.outcome {
            row(label, None, None, outcome);
        }
    }
    if let Some(whole) = &doc.whole {
        row("B less A", None, None, whole);
    }
    for part in doc.parts.iter().flatten() {
        let value = |value: Option<f64>| value.map(|value| format!("{value:.3} {}", part.unit.unwrap_or_default()));
        row(&format!("from {}", words(part)), value(part.from), value(part.to), &part.part);
    }
    if doc.a.outcome.is_none() && doc.b.outcome.is_none() { String::new() } else { format!("\n{}", lines(&table)) }
}

fn words(part: &PartDoc) -> String {
    serde_json::json!(part.property).as_str().unwrap_or_default().replace('_', " ").replace("rg", "RG")
}
