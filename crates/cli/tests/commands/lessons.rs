//! Lessons and the results of a class.

use std::fs;
use std::path::Path;

use serde_json::Value;

use crate::support::{Folder, json, refused, replaced, said, scenario};

#[test]
fn lessons_are_proved_sound_or_named_by_line() {
    let lessons = scenario("lessons");
    let puck = lessons.join("the-puck.lesson.md");
    let walked = json(&["lessons", "walk", &puck.to_string_lossy(), "--json"]);
    assert_eq!(walked["steps"].as_array().map(Vec::len), walked["about"]["steps"].as_array().map(Vec::len));
    assert_eq!(walked["steps"][2]["checked"]["passed"], Value::Bool(true));
    assert!(said(&["lessons", "walk", &puck.to_string_lossy()]).contains("Done: The differential is 0.04"));
    let disco = lessons.join("es/the-puck.lesson.md");
    assert!(said(&["lessons", "walk", &disco.to_string_lossy()]).contains("El diferencial es 0.04"));
    assert!(said(&["lessons", "names"]).contains("entry_angle_deg"));

    let folder = Folder::new();
    for part in ["balls/no-3-three-piece.ball.json", "shots/opening.shot.json"] {
        folder.write(part, fs::read(scenario(part)).expect("a file"));
    }
    let text = fs::read_to_string(&puck).expect("a lesson");
    let path = folder.write("lessons/the-puck.lesson.md", &text);
    let inside = Path::new(&path).parent().expect("a folder").to_string_lossy().into_owned();
    let sound = json(&["lessons", "check", &inside, "--json"]);
    assert_eq!(sound["lessons"][0]["id"], "the-puck");
    assert!(said(&["lessons", "check", &inside]).contains("The puck"));
    folder.write("lessons/the-puck.lesson.md", replaced(&text, ">= goal_in", ">= 9 in"));
    refused(
        &["lessons", "check", &inside],
        &["the-puck.lesson.md:", "steps[2].solution", "it must be at least 9.000 in"],
    );
    folder.write("lessons/the-puck.lesson.md", &text);
    folder.write("lessons/again.lesson.md", &text);
    refused(&["lessons", "check", &inside], &["The id \"the-puck\" is that of"]);
    refused(&["lessons", "check", "no-such-folder"], &["no-such-folder", "cannot be read"]);
    refused(&["lessons", "walk", "no-such.lesson.md"], &["no-such.lesson.md", "cannot be read"]);
}

#[test]
fn results_of_a_class_in_one_table() {
    let folder = Folder::new();
    let file = |name: &str, said: &str, outcome: &str, passed: bool| {
        let answer = format!(r#"{{ "outcome": "{outcome}", "said": "{said}", "number": 0.02 }}"#);
        let text = format!(
            r#"{{ "format": "pithball.progress/1", "learner": "{name}", "lessons": [ {{ "id": "the-puck", "title": "The puck",
               "of_steps": 2, "steps": [
               {{ "id": "a", "title": "Lift the puck", "passed": true, "answer": {answer} }},
               {{ "id": "b", "title": "Do it", "passed": {passed}, "tries": 2, "hints": 1 }} ] }} ] }}"#
        );
        folder.write(&format!("{name}.progress.json"), text)
    };
    let files = [file("Anna", "0.020 in", "low", true), file("Ben", "0.010 in", "low", false)];
    let told = json(&["lessons", "results", &files[0], &files[1], "--json"]);
    assert_eq!(told["lessons"][0]["finished"], 1);
    assert_eq!(told["learners"][1]["lessons"][0]["passed"], 1);
    assert_eq!(told["questions"][0]["wrong"][0]["count"], 2);
    assert_eq!(told["questions"][0]["wrong"][0]["said"], "too little, such as 0.020 in");
    assert_eq!(told["learners"][1]["lessons"][0]["tries"], 2);
    let task = &told["tasks"][0];
    assert_eq!(task["step"], "b");
    assert_eq!(["tries", "hints", "passed", "begun"].map(|key| task[key].as_u64()), [4, 2, 1, 2].map(Some));
    assert!(said(&["lessons", "results", &files[0]]).contains("2 of 2"));
    let wrong =
        folder.write("wrong.progress.json", r#"{ "format": "pithball.progress/1", "learner": 3, "lessons": [] }"#);
    refused(&["lessons", "results", &wrong], &["wrong.progress.json", "learner", "3"]);
}
