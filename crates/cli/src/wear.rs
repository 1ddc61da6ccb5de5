//! `pithball wear`.

use std::path::PathBuf;

use format::{MAX_GAMES, WornDoc, WornGameDoc, wear};
use physics::roll::RigidBall;
use physics::weigh::weigh;

use crate::tables::{head, lines, number, number_or_dash, one_line, table};
use crate::{Complaint, files};

/// What wears which oil for how long.
#[derive(clap::Args)]
pub(crate) struct Args {
    /// The shot files (NAME.shot.json), thrown in turn on the oil of the first.
    #[arg(required = true)]
    shots: Vec<PathBuf>,
    /// How many games, twelve first balls of each shot in a game.
    #[arg(long, value_parser = clap::value_parser!(u32).range(1..=i64::from(MAX_GAMES)))]
    games: u32,
    /// Print JSON, for programs.
    #[arg(long, conflicts_with = "oil")]
    json: bool,
    /// Print the worn oil file (NAME.oil.json).
    #[arg(long)]
    oil: bool,
}

pub(crate) fn run(args: &Args) -> Result<String, Complaint> {
    let read = args.shots.iter().map(|path| files::thrown(path)).collect::<Result<Vec<_>, _>>()?;
    let throws: Vec<_> =
        read.iter().map(|(shot, ball)| (RigidBall::from(&weigh(&ball.ball)), &ball.file.cover, &shot.throw)).collect();
    let worn = wear(&throws, args.games).map_err(|problem| Complaint { file: args.shots[0].clone(), problem })?;
    if args.json {
        return Ok(format!("{:#}\n", serde_json::json!(worn)));
    }
    if args.oil {
        return Ok(format!("{:#}\n", serde_json::json!(worn.oil)));
    }
    let name = read[0].0.name.as_deref().unwrap_or("A shot");
    Ok(format!("{}, the same line over {} games\n\n{}", one_line(name), args.games, told(&worn)))
}

fn told(worn: &WornDoc) -> String {
    let mut table = table();
    table.set_header(
        ["after game", "board", "entry, deg", "breakpoint, board", "oil, mL", "gone, mL", "carried, mL"].map(head),
    );
    for game in &worn.games {
        let WornGameDoc { summary, .. } = game;
        table.add_row(vec![
            number(f64::from(game.game), 0),
            number_or_dash(summary.board_at_pins, 2),
            number_or_dash(summary.entry_angle_deg, 2),
            number(summary.breakpoint.board, 2),
            number(game.volume_ml, 3),
            number(game.taken_away_ml, 3),
            number(game.carried_down_ml, 3),
        ]);
    }
    let mut text = lines(&table);
    text += &format!(
        "\n{} first balls a game, up to {} boards off their line. In one pass a ball takes up {:.0} % of the film\nunder it and lays it down again over some {:.0} ft; the rest is gone.\n{}\n",
        worn.shots_a_game,
        worn.spread_boards,
        worn.taken_up_share * 100.0,
        worn.carried_ft,
        worn.model
    );
    text
}
