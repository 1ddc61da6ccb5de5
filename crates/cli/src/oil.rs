//! `pithball oil`.

use std::path::PathBuf;

use format::OilMapDoc;

use crate::tables::{head, lines, number, number_or_dash, one_line, table};
use crate::{Complaint, files};

/// What to look at.
#[derive(clap::Args)]
pub(crate) struct Args {
    /// The oil file (NAME.oil.json).
    oil: PathBuf,
    /// Print JSON, for programs: the numbers, and the film of every board and foot.
    #[arg(long)]
    json: bool,
}

pub(crate) fn run(args: &Args) -> Result<String, Complaint> {
    let file = files::oil(&args.oil)?;
    let film = file.film().map_err(|problem| Complaint { file: args.oil.clone(), problem })?;
    let doc = OilMapDoc::new(&file, &film);
    if args.json {
        return Ok(format!("{:#}\n", serde_json::json!(doc)));
    }
    Ok(format!("{}\n\n{}\n{}", one_line(&file.name), numbers(&doc), boards(&doc)))
}

fn numbers(doc: &OilMapDoc) -> String {
    let mut table = table();
    for (what, value, decimals, unit, meaning) in [
        ("length", Some(doc.length_ft), 1, "ft", "where the oil ends"),
        ("volume", Some(doc.volume_ml), 2, "mL", "all the oil on the lane"),
        ("ratio", doc.ratio, 2, "to 1", "film on the five middle boards over boards 3 to 7 of both sides"),
        ("thickest film", Some(doc.thickest_um), 2, "µm", ""),
    ] {
        table.add_row(vec![what.into(), number_or_dash(value, decimals), unit.into(), meaning.into()]);
    }
    lines(&table)
}

/// Every fifth board from the lane's right edge, and the film along it.
fn boards(doc: &OilMapDoc) -> String {
    const FEET: [usize; 6] = [1, 10, 20, 30, 40, 50];
    let mut table = table();
    let feet = FEET.map(|foot| head(&format!("{foot} ft")));
    table.set_header(std::iter::once(head("µm on board")).chain(feet).chain([head("mean")]));
    for board in (5..=35).step_by(5) {
        let films = FEET.map(|foot| number(doc.film_um[foot - 1][board - 1], 2));
        let row = std::iter::once(number(board as f64, 0)).chain(films).chain([number(doc.by_board_um[board - 1], 2)]);
        table.add_row(row);
    }
    format!("{}\nBoards count from the lane's right edge, whichever hand bowls.\n", lines(&table))
}
