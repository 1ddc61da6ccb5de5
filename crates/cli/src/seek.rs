//! `pithball seek`.

use std::path::PathBuf;

use comfy_table::Cell;
use format::{AnswerDoc, SeekProblem, Seeker};

use crate::tables::{head, lines, number, one_line, table};
use crate::{Complaint, files};

/// What to seek, beginning at which ball.
#[derive(clap::Args)]
pub(crate) struct Args {
    /// The ball file (NAME.ball.json).
    ball: PathBuf,
    /// The target file (NAME.target.json).
    target: PathBuf,
    /// Print JSON, for programs.
    #[arg(long)]
    json: bool,
}

pub(crate) fn run(args: &Args) -> Result<String, Complaint> {
    let read = files::ball(&args.ball)?;
    let target = files::target(&args.target)?;
    let seeker = Seeker::new(&read.file, &target).map_err(|problem| match problem {
        SeekProblem::Ball(problem) => Complaint { file: args.ball.clone(), problem },
        SeekProblem::Target(problem) => Complaint { file: args.target.clone(), problem },
    })?;
    let Some(sought) = seeker.merge(&seeker.run(0, seeker.units())) else { return Ok(String::new()) };
    if args.json {
        return Ok(format!("{:#}\n", serde_json::json!(sought)));
    }
    let mut text =
        format!("{}: {} of {} starts meet the target\n", one_line(&read.file.name), sought.met, sought.tried);
    if !sought.answers.is_empty() {
        text += &format!("\n{}", told(&sought.answers));
    }
    if let Some(nearest) = &sought.nearest {
        text += &format!("\nThe nearest\n{}", told(std::slice::from_ref(nearest)));
    }
    for block in &sought.blocks {
        text += &format!("{}\n", one_line(block));
    }
    Ok(format!("{text}\n{}\n", sought.note))
}

fn told(answers: &[AnswerDoc]) -> String {
    let mut table = table();
    let mut header = vec![Cell::new("")];
    header.extend((1..=answers.len()).map(|n| head(&n.to_string())));
    table.set_header(header);
    let mut add = |name: String, value: &dyn Fn(&AnswerDoc) -> f64, decimals: usize| {
        let mut row = vec![Cell::new(name)];
        row.extend(answers.iter().map(|answer| number(value(answer), decimals)));
        table.add_row(row);
    };
    let values = answers.first().map(|answer| &answer.values[..]).unwrap_or_default();
    for (n, value) in values.iter().enumerate() {
        let part = value.control.part.as_deref().unwrap_or("ball");
        let name = format!("{}: {}, {}", one_line(part), value.control.what, value.control.unit);
        add(name, &|answer| answer.values.get(n).map_or(f64::NAN, |value| value.value), 4);
    }
    add("weight, lb".to_owned(), &|answer| answer.weighed.weight_lb, 3);
    add("low RG, in".to_owned(), &|answer| answer.weighed.rg_in.low, 4);
    add("differential, in".to_owned(), &|answer| answer.weighed.differential_in, 4);
    add("intermediate differential, in".to_owned(), &|answer| answer.weighed.intermediate_differential_in, 4);
    add("top weight, oz".to_owned(), &|answer| answer.weighed.top_weight_oz, 3);
    add("least cover, in".to_owned(), &|answer| answer.cover_in, 3);
    lines(&table)
}
