//! `pithball area`.

use std::path::PathBuf;
use std::thread;

use format::{ApartDoc, AreaDoc, SharesDoc};
use physics::area::{THROWS, area, throws};

use crate::tables::{lines, number, one_line, table};
use crate::{Complaint, files};

/// Throws that one thread rolls at a time.
const PART: usize = THROWS.div_ceil(2);

/// What to throw again and again.
#[derive(clap::Args)]
pub(crate) struct Args {
    /// The shot file (NAME.shot.json).
    shot: PathBuf,
    /// Print JSON, for programs: with where each of the map's 2,501 throws arrives.
    #[arg(long)]
    json: bool,
}

pub(crate) fn run(args: &Args) -> Result<String, Complaint> {
    let complaint = |problem| Complaint { file: args.shot.clone(), problem };
    let weighed = files::weighed_shot(&args.shot)?;
    let thrown = weighed.thrown().map_err(complaint)?;
    // One throw by itself says what is wrong with the shot as it stands.
    physics::roll::roll(&thrown.ball, &thrown.shot).map_err(|error| complaint((&error).into()))?;
    let (ball, shot) = (&thrown.ball, &thrown.shot);
    let arrivals: Vec<_> = thread::scope(|scope| {
        let other = scope.spawn(|| throws(ball, shot, PART..THROWS));
        let mut own = throws(ball, shot, 0..PART);
        own.extend(other.join().unwrap_or_default());
        own
    });
    let Some(area) = area(ball, shot, &arrivals) else { return Ok(String::new()) };
    let doc = AreaDoc::from(&area);
    if args.json {
        return Ok(format!("{:#}\n", serde_json::json!(doc)));
    }
    Ok(format!("{}\n\n{}\n{}", one_line(&doc.sentence), shares(&doc), says(&doc)))
}

fn shares(doc: &AreaDoc) -> String {
    let mut table = table();
    table.set_header(["", "of the map, %", "of a hand's throws, %", ""]);
    let row = |of: fn(&SharesDoc) -> f64| [&doc.map.shares, &doc.scatter.shares].map(|shares| 100.0 * of(shares));
    let apart = |of: fn(&ApartDoc) -> f64| [&doc.map.apart, &doc.scatter.apart].map(|apart| 100.0 * of(apart));
    for (what, [map, hand], meaning) in [
        ("pocket", row(|s| s.pocket), "boards 17 to 18.5 at 4 to 6 degrees"),
        ("shallow", row(|s| s.shallow), "those boards, under 4 degrees"),
        ("steep", row(|s| s.steep), "those boards, over 6 degrees"),
        ("light", row(|s| s.light), "below board 17"),
        ("high", row(|s| s.high), "above board 18.5"),
        ("lost", row(|s| s.lost), "in the gutter, or cannot be thrown"),
        ("on the boards", apart(|a| a.on_boards), "17 to 18.5, at any angle"),
        ("at the angles", apart(|a| a.at_angles), "4 to 6 degrees, on any board"),
    ] {
        table.add_row(vec![what.into(), number(map, 1), number(hand, 1), meaning.into()]);
    }
    lines(&table)
}

fn says(doc: &AreaDoc) -> String {
    let ends = |values: &[f64]| (values.first().copied().unwrap_or(0.0), values.last().copied().unwrap_or(0.0));
    let (board, angle) = (ends(&doc.map.boards), ends(&doc.map.launch_angles_deg));
    let hand = &doc.scatter;
    format!(
        "The map: boards {:.1} to {:.1} by launch angles {:.2} to {:.2} degrees, {} throws.\nA hand: {} throws with standard deviations of {} board, {:.1} degrees, {:.1} mph and {:.0} rpm (model choice).\n",
        board.0,
        board.1,
        angle.0,
        angle.1,
        doc.map.boards.len() * doc.map.launch_angles_deg.len(),
        hand.throws,
        hand.spread_board,
        hand.spread_launch_angle_deg,
        hand.spread_speed_mph,
        hand.spread_revs_rpm
    )
}
