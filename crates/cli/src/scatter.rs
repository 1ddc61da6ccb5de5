//! `pithball scatter`.

use std::path::PathBuf;

use comfy_table::Cell;
use format::{Scatter, ScatterProblem, ScatteredDoc, ShareDoc, TolerancesFile};
use physics::weigh::weigh;

use crate::tables::{head, lines, number, number_or_dash, one_line, table};
use crate::{Complaint, files};

/// Tolerances shown to people: the dearest.
const SHOWN: usize = 12;

/// What to pour, and how exactly.
#[derive(clap::Args)]
pub(crate) struct Args {
    /// The ball file (NAME.ball.json).
    ball: PathBuf,
    /// The tolerances file (NAME.tolerances.json); usual ones (model choice) where it is left out.
    tolerances: Option<PathBuf>,
    /// Print the usual tolerances for this ball as a file to begin with, and do nothing else.
    #[arg(long, conflicts_with = "tolerances")]
    print_usual: bool,
    /// Print JSON, for programs.
    #[arg(long)]
    json: bool,
}

pub(crate) fn run(args: &Args) -> Result<String, Complaint> {
    let read = files::ball(&args.ball)?;
    let (tolerances, path) = match &args.tolerances {
        Some(path) => (files::tolerances(path)?, path),
        None => (TolerancesFile::usual(&weigh(&read.ball)), &args.ball),
    };
    if args.print_usual {
        return Ok(format!("{:#}\n", serde_json::json!(tolerances)));
    }
    let scatter = Scatter::new(&read.file, &tolerances).map_err(|problem| match problem {
        ScatterProblem::Ball(problem) => Complaint { file: args.ball.clone(), problem },
        ScatterProblem::Tolerances(problem) => Complaint { file: path.clone(), problem },
    })?;
    let results = scatter.run(0, scatter.units());
    let Some(scattered) = scatter.merge(&results) else { return Ok(String::new()) };
    if args.json {
        return Ok(format!("{:#}\n", serde_json::json!(scattered)));
    }
    let title = format!("{}: {} balls, seed {}", one_line(&scattered.ball), scattered.balls, scattered.seed);
    Ok(format!(
        "{title}\n\n{}\n{}{}\n{}\n{}\n",
        shares(&scattered),
        reasons(&scattered),
        numbers(&scattered),
        costs(&scattered),
        scattered.notes.each_ref().map(|note| &**note).join("\n")
    ))
}

fn shares(scattered: &ScatteredDoc) -> String {
    let mut table = table();
    table.set_header(vec![Cell::new(""), head("balls"), head("%"), head("95 % of samples, %")]);
    let parts = [("passed", &scattered.passed), ("seconds", &scattered.seconds), ("scrap", &scattered.scrap)];
    for (name, share) in parts {
        let ShareDoc { count, share, wilson_95: [low, high] } = share;
        let interval = head(&format!("{:.2} to {:.2}", 100.0 * low, 100.0 * high));
        table.add_row(vec![Cell::new(name), head(&count.to_string()), number(100.0 * share, 2), interval]);
    }
    lines(&table)
}

fn reasons(scattered: &ScatteredDoc) -> String {
    if scattered.reasons.is_empty() {
        return String::new();
    }
    let mut table = table();
    table.set_header(vec![head("balls"), Cell::new("become"), Cell::new("because")]);
    for reason in &scattered.reasons {
        table.add_row(vec![head(&reason.count.to_string()), Cell::new(reason.makes), Cell::new(&reason.name)]);
    }
    format!("{}\n", lines(&table))
}

fn numbers(scattered: &ScatteredDoc) -> String {
    let mut table = table();
    let mut header = vec![Cell::new("")];
    header.extend(["recipe", "mean", "deviation", "1 %", "50 %", "99 %", "good from", "to", "error"].map(head));
    table.set_header(header);
    for one in &scattered.numbers {
        let decimals = if one.unit == "in" { 4 } else { 2 };
        let at = |percent: f64| one.quantiles.iter().find(|quantile| quantile.percent == percent).map(|q| q.at);
        let [low, high] = one.accept.unwrap_or_default();
        let mut row = vec![Cell::new(format!("{}, {}", one.name, one.unit))];
        row.push(number_or_dash(one.nominal, decimals));
        row.extend([one.mean, one.deviation].map(|value| number(value, decimals)));
        row.extend([at(1.0), at(50.0), at(99.0), low, high].map(|value| number_or_dash(value, decimals)));
        row.push(head(&format!("{:.0e}", one.error)));
        table.add_row(row);
    }
    lines(&table)
}

fn costs(scattered: &ScatteredDoc) -> String {
    let mut table = table();
    let mut header = vec![Cell::new("what costs most"), head("within")];
    let words = scattered.costs.first().map(|cost| cost.of.iter().map(|of| of.number).collect::<Vec<_>>());
    header.extend(words.iter().flatten().map(|word| head(word)));
    table.set_header(header);
    for cost in scattered.costs.iter().take(SHOWN) {
        let part = cost.part.as_ref().map_or_else(|| "ball".to_owned(), |part| one_line(part));
        let within = head(&format!("{:.3} {}", cost.within, cost.unit));
        let mut row = vec![Cell::new(format!("{part}: {}", cost.what)), within];
        row.extend(cost.of.iter().map(|of| number_or_dash(of.total, 3)));
        table.add_row(row);
    }
    lines(&table)
}
