//! `pithball weigh`.

use std::path::PathBuf;

use comfy_table::Cell;
use format::WeighedDoc;
use physics::units::KG_PER_LB;

use crate::tables::{head, lines, number, one_line, table};
use crate::{Complaint, files};

/// What to weigh.
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
    let weighed = WeighedDoc::new(&read.file, &physics::weigh::weigh(&read.ball));
    if args.json {
        return Ok(format!("{:#}\n", serde_json::json!(weighed)));
    }
    let title = format!("{}, {} in across", one_line(&read.file.name), read.file.diameter_in);
    Ok(format!("{title}\n\n{}\n{}\n{}", numbers(&weighed), pieces(&weighed), axes(&weighed)))
}

fn numbers(weighed: &WeighedDoc) -> String {
    let rg = &weighed.rg_in;
    let mut table = table();
    for (what, value, decimals, unit, meaning) in [
        ("weight", weighed.weight_lb, 3, "lb", "the whole ball"),
        ("low RG", rg.low, 4, "in", "how far out the mass sits about its easiest axis; low revs up sooner"),
        ("middle RG", rg.middle, 4, "in", "the same about the axis square to the other two"),
        ("high RG", rg.high, 4, "in", "the same about its hardest axis"),
        ("differential", weighed.differential_in, 4, "in", "high less low RG: how much the track can flare"),
        (
            "intermediate differential",
            weighed.intermediate_differential_in,
            4,
            "in",
            "high less middle RG: how asymmetric the core is",
        ),
        (
            "top weight",
            weighed.top_weight_oz,
            2,
            "oz",
            "how much heavier the pin side is, on a scale arm of one radius",
        ),
    ] {
        table.add_row(vec![what.into(), number(value, decimals), unit.into(), meaning.into()]);
    }
    let [x, y, z] = weighed.cg_in;
    let mut text = lines(&table);
    text += &format!("\nCentre of gravity x {x:.4}, y {y:.4}, z {z:.4} in from the centre (z towards the pin).\n");
    text += &format!("The mass and the inertia are right to {:.0e} of their size.\n", weighed.relative_error);
    text
}

fn pieces(weighed: &WeighedDoc) -> String {
    let mut table = table();
    table.set_header([Cell::new("piece"), head("lb"), head("cc"), head("share of the RG, %")]);
    for piece in &weighed.pieces {
        table.add_row(vec![
            one_line(&piece.name).into(),
            number(piece.mass_kg / KG_PER_LB, 3),
            number(piece.volume_cc, 1),
            number(piece.rg_share * 100.0, 1),
        ]);
    }
    lines(&table)
}

fn axes(weighed: &WeighedDoc) -> String {
    let mut table = table();
    table.set_header([Cell::new("axis of"), head("x"), head("y"), head("z")]);
    for (name, axis) in
        [("low RG", weighed.axes.low), ("middle RG", weighed.axes.middle), ("high RG", weighed.axes.high)]
    {
        let [x, y, z] = axis.map(|value| number(value, 4));
        table.add_row(vec![name.into(), x, y, z]);
    }
    lines(&table)
}
