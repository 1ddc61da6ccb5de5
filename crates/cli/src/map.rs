//! `pithball map`.

use std::path::PathBuf;

use comfy_table::Cell;
use format::{AxisAsked, BallMapDoc};

use crate::tables::{head, lines, number, number_or_dash, one_line, table};
use crate::{Complaint, files};

/// What to map over what.
#[derive(clap::Args)]
pub(crate) struct Args {
    /// The ball file (NAME.ball.json).
    ball: PathBuf,
    /// Control across, by its place in the file, such as `pieces[1].density_g_cc`.
    #[arg(long, value_name = "CONTROL")]
    x: String,
    /// First value across.
    #[arg(long, allow_negative_numbers = true)]
    x_from: f64,
    /// Last value across.
    #[arg(long, allow_negative_numbers = true)]
    x_to: f64,
    /// Control up.
    #[arg(long, value_name = "CONTROL")]
    y: String,
    /// First value up.
    #[arg(long, allow_negative_numbers = true)]
    y_from: f64,
    /// Last value up.
    #[arg(long, allow_negative_numbers = true)]
    y_to: f64,
    /// Values along each side, 2 to 200.
    #[arg(long, default_value_t = 9)]
    count: usize,
    /// Print JSON, for programs.
    #[arg(long)]
    json: bool,
}

/// One number of a ball.
type Figure = fn(&format::FiguresDoc) -> f64;

pub(crate) fn run(args: &Args) -> Result<String, Complaint> {
    let read = files::ball(&args.ball)?;
    let asked = [
        AxisAsked { control: &args.x, from: args.x_from, to: args.x_to, count: args.count },
        AxisAsked { control: &args.y, from: args.y_from, to: args.y_to, count: args.count },
    ];
    let map = read.file.map_rows(asked, 0, args.count).and_then(|rows| read.file.map(asked, rows));
    let map = map.map_err(|problem| Complaint { file: args.ball.clone(), problem })?;
    if args.json {
        return Ok(format!("{:#}\n", serde_json::json!(map)));
    }
    let figures: [(&str, usize, Figure); 3] = [
        ("low RG, in", 4, |figures| figures.low_rg_in),
        ("differential, in", 4, |figures| figures.differential_in),
        ("weight, lb", 2, |figures| figures.weight_lb),
    ];
    let mut text =
        format!("{}: {} across, {} down\n", one_line(&map.ball), map.x.control.control, map.y.control.control);
    for (name, decimals, figure) in figures {
        text += &format!("\n{name}\n{}", grid(&map, decimals, figure));
    }
    Ok(text)
}

fn grid(map: &BallMapDoc, decimals: usize, figure: Figure) -> String {
    let mut table = table();
    let mut header = vec![Cell::new("")];
    header.extend(map.x.values.iter().map(|value| number(*value, 3)));
    table.set_header(header);
    for (value, row) in map.y.values.iter().zip(&map.rows) {
        let mut cells = vec![head(&format!("{value:.3}"))];
        cells.extend(row.iter().map(|figures| number_or_dash(figures.as_ref().map(figure), decimals)));
        table.add_row(cells);
    }
    lines(&table)
}
