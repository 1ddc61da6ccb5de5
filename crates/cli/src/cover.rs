//! `pithball cover`.

use std::path::PathBuf;

use comfy_table::Cell;
use format::CoverDoc;

use crate::tables::{head, lines, number, number_or_dash, one_line, table};
use crate::{Complaint, files};

/// Whose cover to measure.
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
    let cover = read.file.cover().map_err(|problem| Complaint { file: args.ball.clone(), problem })?;
    if args.json {
        return Ok(format!("{:#}\n", serde_json::json!(cover)));
    }
    let mut text = format!("{}: the cover\n\n{}", one_line(&read.file.name), numbers(&cover));
    if !cover.holes.is_empty() {
        text += &format!("\n{}", holes(&cover));
    }
    if !cover.webs.is_empty() {
        text += &format!("\n{}", webs(&cover));
    }
    Ok(format!("{text}\n{}", in_practice(&cover)))
}

fn numbers(cover: &CoverDoc) -> String {
    let percent = |share: f64| format!("{:.1} %", 100.0 * share);
    let [least, most] = cover.usual_in;
    let mut table = table();
    if let Some(thinnest) = &cover.thinnest {
        let error =
            if thinnest.error_in < 5e-5 { String::new() } else { format!(", less {:.4} at most", thinnest.error_in) };
        let [x, y, z] = thinnest.direction;
        table.add_row(["thinnest, in".to_owned(), format!("{:.4}{error}", thinnest.thickness_in)]);
        table.add_row(["over".to_owned(), format!("{}, {} g/cc", one_line(&thinnest.piece), thinnest.piece_g_cc)]);
        table.add_row(["in the direction".to_owned(), format!("{x:.3} {y:.3} {z:.3}")]);
        table.add_row(["as thin, of the surface".to_owned(), percent(cover.as_thin_share)]);
    }
    table.add_row(["mean, in".to_owned(), format!("{:.3}", cover.mean_in)]);
    table.add_row([format!("under {least} in, of the surface"), percent(cover.under_usual_share)]);
    table.add_row([format!("under {most} in"), percent(cover.under_most_share)]);
    table.add_row(["core, of the volume".to_owned(), percent(cover.core_share)]);
    table.add_row(["cover, g/cc".to_owned(), cover.cover_g_cc.to_string()]);
    lines(&table)
}

fn holes(cover: &CoverDoc) -> String {
    let mut table = table();
    table.set_header(vec![Cell::new("hole"), head("core from, in deep"), head("to the core, in")]);
    for hole in &cover.holes {
        let numbers = [number_or_dash(hole.core_from_in, 3), number_or_dash(hole.to_core_in, 3)];
        table.add_row(std::iter::once(Cell::new(one_line(&hole.name))).chain(numbers));
    }
    lines(&table)
}

fn webs(cover: &CoverDoc) -> String {
    let mut table = table();
    table.set_header(vec![Cell::new("between"), head("least, in"), head("at a depth of, in")]);
    for web in &cover.webs {
        let [one, other] = &web.holes;
        let between = Cell::new(format!("{} and {}", one_line(one), one_line(other)));
        table.add_row([between, number(web.least_in, 3), number(web.depth_in, 3)]);
    }
    lines(&table)
}

fn in_practice(cover: &CoverDoc) -> String {
    let [least, most] = cover.usual_in;
    let usual = format!("the {least} to {most} in of common balls");
    let beside = match cover.beside_usual {
        "thinner" => format!("Thinner than {usual}: it tends to come away and crack sooner"),
        "usual" => format!("Within {usual}; a thin cover over a big outer core tends to come away and crack with age"),
        "thicker" => format!("Thicker than {usual}, as usual without an outer core: the kind that lasts longer"),
        _ => "Cover all through: there is no core for it to come away from".to_owned(),
    };
    format!("{beside} (common practice, no source; the numbers above are computed).\n")
}
