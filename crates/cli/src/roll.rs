//! `pithball roll`.

use std::path::{Path, PathBuf};

use format::{EndDoc, Lane, OilRef, OiledLane, Problem, RolledDoc, SAMPLE_INTERVAL_S, SummaryDoc, Throw, TrackDoc};
use physics::roll::{RigidBall, trace};
use physics::weigh::weigh;

use crate::tables::{lines, number_or_dash, one_line, table};
use crate::{Complaint, files};

/// What to roll.
#[derive(clap::Args)]
pub(crate) struct Args {
    /// The shot file (NAME.shot.json).
    shot: PathBuf,
    /// Roll it on the oil of this file (NAME.oil.json) instead of the shot's own lane.
    #[arg(long, value_name = "OIL")]
    oil: Option<PathBuf>,
    /// Drill the ball as this file says (NAME.layout.json), for the shot's own hand.
    #[arg(long, value_name = "LAYOUT")]
    layout: Option<PathBuf>,
    /// Print JSON, for programs: the summary, and the ball at every hundredth of a second.
    #[arg(long)]
    json: bool,
}

pub(crate) fn run(args: &Args) -> Result<String, Complaint> {
    let (mut file, read) = files::shot(&args.shot)?;
    if let Some(path) = &args.oil {
        oil(&mut file.throw, path)?;
    }
    if let Some(path) = &args.layout {
        lay_out(&mut file.throw, path)?;
    }
    let (file, read) = files::drilled(&args.shot, file, read)?;
    let complaint = |problem| Complaint { file: args.shot.clone(), problem };
    let shot = file.throw.shot(&read.file.cover).map_err(complaint)?;
    let body = RigidBall::from(&weigh(&read.ball));
    let traced = trace(&body, &shot, SAMPLE_INTERVAL_S).map_err(|error| complaint(Problem::from(&error)))?;
    let rolled = RolledDoc::new(&read.file, &traced);
    if args.json {
        return Ok(format!("{:#}\n", serde_json::json!(rolled)));
    }
    let mut head =
        format!("{} with {}\n", one_line(file.name.as_deref().unwrap_or("A shot")), one_line(&read.file.name));
    head += &phases(&rolled.summary);
    Ok(format!("{head}\n{}{}", numbers(&rolled.summary), track(&rolled.track)))
}

/// Puts the oil at `path` on the lane; friction follows from it as the shot says, if it does.
fn oil(throw: &mut Throw, path: &Path) -> Result<(), Complaint> {
    let oil = OilRef::Object(Box::new(files::oil(path)?));
    throw.lane = match &throw.lane {
        Lane::Oiled(lane) => Lane::Oiled(OiledLane { oil, friction: lane.friction }),
        Lane::Zoned(_) => Lane::Oiled(OiledLane { oil, friction: None }),
    };
    Ok(())
}

/// Lays the ball out and drills it as the file at `path` says.
fn lay_out(throw: &mut Throw, path: &Path) -> Result<(), Complaint> {
    let laid = files::layout(path)?.laid;
    if laid.hand != throw.hand {
        let problem = Problem {
            place: "hand".to_owned(),
            found: format!("{:?}", laid.hand).to_lowercase().into(),
            accepted: format!("{:?}, the hand of the shot", throw.hand).to_lowercase().into(),
            message: "The layout is for the other hand than the shot.".into(),
        };
        return Err(Complaint { file: path.to_owned(), problem });
    }
    throw.layout.pin_to_pap_in = laid.layout.pin_to_pap_in;
    throw.layout.drilling_angle_deg = laid.layout.drilling_angle_deg;
    throw.drilling = Some(laid.drilling);
    Ok(())
}

/// How far the ball skids, hooks and rolls.
fn phases(summary: &SummaryDoc) -> String {
    let end_ft = summary.end_ft;
    let roll_ft = summary.roll_start_ft.unwrap_or(end_ft).min(end_ft);
    let hook_ft = summary.hook_start_ft.unwrap_or(roll_ft).min(roll_ft);
    let parts: Vec<String> = [("skids", hook_ft), ("hooks", roll_ft - hook_ft), ("rolls", end_ft - roll_ft)]
        .iter()
        .filter(|(_, feet)| *feet > 0.0)
        .map(|(does, feet)| format!("{does} {feet:.1} ft"))
        .collect();
    let end = match summary.end {
        EndDoc::Pins if summary.roll_start_ft.is_none() => ", and still slips at the pins",
        EndDoc::Pins => "",
        EndDoc::Gutter => ", and falls into the gutter",
        EndDoc::FoulLine => ", and comes back over the foul line",
        EndDoc::TimeLimit => ", and stays on the lane",
    };
    format!("The ball {}{end}.\n", parts.join(", "))
}

fn numbers(summary: &SummaryDoc) -> String {
    let mut table = table();
    for (what, value, decimals, unit, meaning) in [
        ("board at the pins", summary.board_at_pins, 2, "", "counted from the bowler's own side"),
        ("entry angle", summary.entry_angle_deg, 2, "deg", "from straight ahead, towards the pocket"),
        ("speed at the pins", summary.speed_at_pins_mph, 2, "mph", ""),
        ("revs at the pins", summary.revs_at_pins_rpm, 0, "rpm", ""),
        ("time", summary.time_s, 3, "s", "from release to the pins"),
        ("breakpoint, board", Some(summary.breakpoint.board), 2, "", "furthest to the bowler's own side"),
        ("breakpoint, distance", Some(summary.breakpoint.distance_ft), 1, "ft", "from the foul line"),
        ("hook starts", summary.hook_start_ft, 1, "ft", "where friction begins to turn the ball"),
        ("roll starts", summary.roll_start_ft, 1, "ft", "where slip ends"),
        ("axis migration", summary.axis_migration_deg, 1, "deg", "how far the axis moved in the ball"),
        ("track flare", Some(summary.flare_in), 2, "in", "how far the spin axis moves over the ball"),
        ("flare in one turn", Some(summary.flare_per_turn_in), 2, "in", "widest gap between two rings"),
        ("turns", Some(summary.turns), 1, "", "from the release"),
    ] {
        table.add_row(vec![what.into(), number_or_dash(value, decimals), unit.into(), meaning.into()]);
    }
    let mut text = lines(&table);
    if summary.board_at_pins.is_some() {
        let error = &summary.error;
        text +=
            &format!("\nThe board is right to {:.0e}, the angle to {:.0e} degrees.\n", error.board, error.angle_deg);
    }
    text
}

/// The band of track rings and the holes it passes.
fn track(track: &TrackDoc) -> String {
    let mut text = String::new();
    if let (Some(widest), Some([a, b])) = (&track.widest, &track.bow_ties) {
        text += &format!(
            "\nThe band of rings is {:.2} in wide at its widest, {:.2} and {:.2} in at the bow-ties.\n",
            widest.width_in, a.width_in, b.width_in
        );
    }
    for pass in &track.holes {
        let hole = one_line(&pass.hole);
        text += &match pass.over_turns.first() {
            Some(turn) => format!("CAUTION: the track goes over a hole, {hole}, first in turn {turn}.\n"),
            None => format!("The track clears {hole} by {:.2} in.\n", pass.clearance_in),
        };
    }
    text
}
