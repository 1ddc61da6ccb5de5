//! What holds for every command: files, mistakes, help.

use std::fs;
use std::path::Path;
use std::process::{Command, Stdio};

use crate::support::{Folder, opening, pithball, refused, replaced, said, scenario, text, three_piece};

#[test]
fn tables_for_people_name_what_they_show() {
    let text = said(&["weigh", &scenario("balls/no-4-nested-core.ball.json").to_string_lossy()]);
    for part in ["No. 4, nested core", "low RG", "differential", "top weight", "heart", "lb", "oz", " in "] {
        assert!(text.contains(part), "{part:?} is not in\n{text}");
    }
    let text = said(&["roll", &scenario("shots/league-medium.shot.json").to_string_lossy()]);
    for part in ["League night, medium revs", "No. 2, two-piece", "entry angle", "breakpoint", "track flare", "mph"] {
        assert!(text.contains(part), "{part:?} is not in\n{text}");
    }
}

#[test]
fn schema_prints_the_published_schemas() {
    for name in ["ball", "shot", "layout", "oil", "shelf"] {
        let path = Path::new(env!("CARGO_MANIFEST_DIR")).join(format!("../../schemas/{name}.schema.json"));
        assert_eq!(said(&["schema", name]), fs::read_to_string(path).expect("a file"));
    }
}

#[test]
fn mistakes_in_a_ball_are_named_with_file_and_place() {
    let folder = Folder::new();
    let refuse = |old: &str, new: &str, parts: &[&str]| {
        let path = folder.write("wrong.ball.json", replaced(&three_piece(), old, new));
        for args in [vec!["weigh", &path], vec!["weigh", &path, "--json"]] {
            refused(&args, &[&["wrong.ball.json"], parts].concat());
        }
    };
    refuse("\"density_g_cc\": 1.17", "\"density_g_cc\": -1", &["cover.density_g_cc", "-1", "above 0 and up to 25"]);
    refuse("\"kind\": \"cylinder\"", "\"kind\": \"disc\"", &["pieces[2].shape.kind", "\"disc\"", "\"cylinder\""]);
    refuse("\"diameter_in\": 7", "\"diameter_in\": 9", &["pieces[0]", "4.5 in", "4.275 in", "sticks out"]);
    refuse("\"diameter_in\": 8.55", "\"diameter_in\": NaN", &["not JSON", "line 5"]);
    refuse("\"diameter_in\": 8.55", "\"diameter_in\": 1e999", &["diameter_in", "1e999", "finite"]);
}

#[test]
fn mistakes_in_a_shot_are_named_with_the_file_they_are_in() {
    let folder = Folder::new();
    folder.write("good.ball.json", three_piece());
    folder.write("bad.ball.json", replaced(&three_piece(), "\"density_g_cc\": 1.17", "\"density_g_cc\": 99"));
    let shot = |ball: &str| replaced(&opening(), "\"../balls/no-3-three-piece.ball.json\"", ball);
    let path = folder.write("a.shot.json", replaced(&shot("\"good.ball.json\""), "17.5", "41"));
    refused(&["roll", &path], &["a.shot.json", "release.speed_mph", "41", "up to 40"]);
    let path = folder.write("b.shot.json", shot("\"bad.ball.json\""));
    refused(&["roll", &path], &["bad.ball.json", "cover.density_g_cc", "99"]);
    let path = folder.write("c.shot.json", shot("\"no-such.ball.json\""));
    refused(&["roll", &path], &["c.shot.json", "ball", "no-such.ball.json", "cannot be read"]);
    let within = replaced(&three_piece(), "\"diameter_in\": 7", "\"diameter_in\": 9");
    let path = folder.write("d.shot.json", shot(&within));
    refused(&["roll", &path], &["d.shot.json", "ball.pieces[0]", "sticks out"]);
    // Half way round this ball is 13.4 in.
    let path = folder.write("e.shot.json", replaced(&shot("\"good.ball.json\""), "4.5", "13.5"));
    refused(&["roll", &path], &["e.shot.json", "layout.pin_to_pap_in", "13.5"]);
}

#[test]
fn files_that_cannot_be_read() {
    let folder = Folder::new();
    refused(&["weigh", "no-such.ball.json"], &["no-such.ball.json", "cannot be read"]);
    refused(&["roll", "no-such.shot.json", "--json"], &["no-such.shot.json", "cannot be read"]);
    let here = folder.0.path().to_string_lossy().into_owned();
    refused(&["weigh", &here], &[&here, "cannot be read"]);
    let path = folder.write("bytes.ball.json", [b'{', 0xff, b'}']);
    refused(&["weigh", &path], &["bytes.ball.json", "UTF-8"]);
    let path = folder.write("empty.ball.json", "");
    refused(&["weigh", &path], &["empty.ball.json", "not JSON"]);
    let path = folder.write("long.ball.json", vec![b' '; (4 << 20) + 1]);
    refused(&["weigh", &path], &["long.ball.json", "4 MiB"]);
}

#[test]
fn a_message_stays_on_one_line() {
    let folder = Folder::new();
    let path = folder.write(
        "odd\nname.ball.json",
        replaced(&three_piece(), "\"pieces\"", "\"two\\nlines \\u001b[31m\": 1, \"pieces\""),
    );
    refused(&["weigh", &path], &["odd\\nname.ball.json", "two\\nlines"]);
}

#[test]
fn a_wrong_use_is_told_with_exit_code_2() {
    refused(&["weigh"], &["not provided", "<BALL>", "accepted: pithball weigh"]);
    refused(&["lift", "x"], &["'lift'", "accepted: weigh, check,"]);
    refused(&["schema", "lane"], &["'lane'", "<FILE>", "accepted: ball, shot,"]);
    refused(&["weigh", "x", "--xml"], &["'--xml'", "accepted: pithball weigh"]);
    refused(&["wear", "x", "--games", "0"], &["'0'", "--games", "1..=40"]);
    refused(&["roll", "x", "--oil"], &["--oil"]);
    refused(&[], &["no command", "accepted: weigh, check,"]);
}

/// Help that is asked for is no mistake.
#[test]
fn help_and_version_go_to_the_standard_output() {
    for args in [&["--help"][..], &["--version"], &["roll", "--help"]] {
        assert!(said(args).contains("pithball"), "{args:?}");
    }
}

#[test]
fn a_message_says_nothing_twice() {
    let folder = Folder::new();
    let missing = folder.write("there.json", "") + "no";
    let told = |args: &[&str]| text(&pithball(args).stderr).to_owned();
    let message = told(&["weigh", &missing]);
    assert_eq!(message.matches("there.jsonno").count(), 1, "{message}");
    assert_eq!(message.matches("no such file").count(), 1, "{message}");
    let shot = folder.write("a.shot.json", replaced(&opening(), "../balls/no-3-three-piece.ball.json", "gone.json"));
    let message = told(&["roll", &shot]);
    assert_eq!(message.matches("gone.json").count(), 1, "{message}");
    assert_eq!(message.matches("no such file").count(), 1, "{message}");
}

#[test]
fn a_reader_that_goes_away_is_no_mistake() {
    let mut child = Command::new(env!("CARGO_BIN_EXE_pithball"))
        .args(["roll", &scenario("shots/opening.shot.json").to_string_lossy(), "--json"])
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("it runs");
    // The samples are more than a pipe holds.
    drop(child.stdout.take());
    let output = child.wait_with_output().expect("it ends");
    assert!(output.status.success(), "{:?}: {}", output.status, text(&output.stderr));
    assert!(output.stderr.is_empty(), "{}", text(&output.stderr));
}
