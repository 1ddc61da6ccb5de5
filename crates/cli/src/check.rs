//! `pithball check`.

use std::path::PathBuf;

use comfy_table::Cell;
use format::{CheckedDoc, RuleDoc};
use physics::weigh::weigh;

use crate::tables::{lines, one_line, table};
use crate::{Complaint, files};

/// What to hold to the published limits.
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
    let findings = physics::spec::check(&read.file.recipe(), &weigh(&read.ball), None);
    let checked = CheckedDoc::new(&read.file, &findings);
    if args.json {
        return Ok(format!("{:#}\n", serde_json::json!(checked)));
    }
    let mut table = table();
    table.set_header(["rule", "verdict", "found", "limit", "since"].map(Cell::new));
    for rule in &checked.rules {
        table.add_row([
            rule.name.to_string(),
            in_words(rule).to_owned(),
            found(rule),
            limit(rule),
            rule.edition.to_string(),
        ]);
    }
    let mut text = format!("{} against the published limits\n\n{}", one_line(&read.file.name), lines(&table));
    let notes = checked.rules.iter().filter(|rule| rule.verdict == "not_computed");
    text += "\nWhat would tell where this program cannot:\n";
    text.extend(notes.map(|rule| format!("  {}: {}\n", rule.name, rule.note)));
    if checked.rules.iter().any(|rule| rule.found_is.as_deref() == Some("whole imbalance")) {
        text += "\nThe grip is not in a ball file, so its top, finger and side weights cannot be told apart here:\n";
        text += "none of them is more than the whole imbalance. `pithball drill BALL LAYOUT` weighs each.\n";
    }
    text += &format!("\nSource: {}.\n{}\n", checked.rules.first().map_or("", |rule| &rule.source), checked.decides);
    Ok(text)
}

fn in_words(rule: &RuleDoc) -> &str {
    match rule.verdict {
        "pass" => "within",
        "fail" => "OUTSIDE",
        "too_close" => "too close to tell",
        "not_applicable" => "not for this ball",
        _ => "cannot be computed here",
    }
}

fn found(rule: &RuleDoc) -> String {
    let Some(found) = rule.found else { return "–".to_owned() };
    let number = match rule.unit {
        "holes" => format!("{found:.0}"),
        "oz" => format!("{found:.2} oz"),
        unit => format!("{found:.4} {unit}"),
    };
    match rule.part.as_deref().map(one_line).or_else(|| rule.found_is.as_deref().map(str::to_owned)) {
        Some(of) => format!("{number} ({of})"),
        None => number,
    }
}

fn limit(rule: &RuleDoc) -> String {
    let unit = rule.unit;
    let limit = match (rule.at_least, rule.at_most) {
        (Some(low), Some(high)) => format!("{low:.3} to {high:.3} {unit}"),
        (Some(low), None) => format!("{low} {unit} or more"),
        (None, Some(high)) => format!("{high} {unit} or less"),
        (None, None) => return "–".to_owned(),
    };
    limit.replace("  ", " ")
}
