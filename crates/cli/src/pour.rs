//! `pithball pour`.

use format::Phrase;
use std::path::PathBuf;

use comfy_table::Cell;

use crate::tables::{head, lines, number, one_line, table};
use crate::{Complaint, files};

/// What to pour.
#[derive(clap::Args)]
pub(crate) struct Args {
    /// The ball file (NAME.ball.json).
    ball: PathBuf,
    /// Part of each pour that is lost, 0 to 0.9; 0.05 (model choice) where it is left out.
    #[arg(long)]
    waste: Option<f64>,
    /// Print JSON, for programs.
    #[arg(long)]
    json: bool,
}

pub(crate) fn run(args: &Args) -> Result<String, Complaint> {
    let read = files::ball(&args.ball)?;
    let poured = read.file.pour(args.waste).map_err(|problem| Complaint { file: args.ball.clone(), problem })?;
    if args.json {
        return Ok(format!("{:#}\n", serde_json::json!(poured)));
    }
    let mut pours = table();
    let mut header = vec![head("pour"), Cell::new("what"), Cell::new("round"), head("mould")];
    header.extend(["cc", "mixed cc", "mixed lb"].map(head));
    pours.set_header(header);
    for (n, pour) in poured.pours.iter().enumerate() {
        let mut row = vec![head(&(n + 1).to_string()), Cell::new(one_line(&pour.name))];
        row.extend([Cell::new(one_line(&pour.around.join(", "))), head(&pour.mould.to_string())]);
        row.extend([number(pour.volume_cc, 1), number(pour.mixed_cc, 1), number(pour.mixed_lb, 3)]);
        pours.add_row(row);
    }
    let mut cost = table();
    cost.set_header(vec![Cell::new("cost index"), head("count"), head("each"), head("")]);
    for part in &poured.cost {
        let row = vec![Cell::new(&part.what), number(part.count, 2), number(part.each, 2), number(part.cost, 2)];
        cost.add_row(row);
    }
    cost.add_row(vec![Cell::new("all"), head(""), head(""), number(poured.cost_index, 2)]);
    let said = |what: &[Phrase]| what.iter().map(|one| format!("{}\n", one_line(one))).collect::<String>();
    let faults =
        if poured.pourable { "Nothing stands in the way of pouring it.\n".to_owned() } else { said(&poured.faults) };
    let title = format!("{}: {} pours, {} moulds", one_line(&poured.ball), poured.pours.len(), poured.moulds);
    let cautions = said(&poured.cautions);
    Ok(format!("{title}\n\n{}\n{}\n{faults}{cautions}\n{}", lines(&pours), lines(&cost), said(&poured.notes)))
}
