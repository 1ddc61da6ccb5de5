//! Everything that Rust says to a reader of the page, as a Fluent file: what
//! stands in `phrase!`, and the fixed texts that are known by what they are of.

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

use format::{BallFile, CheckedDoc, Phrase, subject};
use lessons::FIGURES;
use physics::spec::check;
use physics::weigh::weigh;
use proc_macro2::{Delimiter, TokenStream, TokenTree};
use serde_json::Value;

/// The crates that say something.
const SPEAKING: [&str; 3] = ["format", "lessons", "web"];

/// Where physics says what it accepts: every text of more than one word there
/// that is not an error's own.
const ACCEPTING: [&str; 6] =
    ["check.rs", "drill/mod.rs", "lane/oil/law.rs", "lane/oil/pattern.rs", "roll/mod.rs", "roll/shot.rs"];

/// Places of mistakes that are in no file.
const ASKED: [&str; 14] = [
    "answer", "by", "control", "files", "games", "piece", "plane", "results", "step", "target", "value", "waste", "x",
    "y",
];

/// Ids and English texts, in sections.
pub fn english() -> Vec<(&'static str, BTreeMap<String, String>)> {
    vec![
        ("Sentences and phrases", phrases()),
        ("What a mistake is about", subjects()),
        ("What physics accepts", accepted()),
        ("The published limits", rules()),
        ("Numbers of lessons", figures()),
        ("Places in words", places()),
    ]
}

/// The same as `www/locales/en/said.ftl`.
pub fn fluent() -> String {
    let mut file = "# Written by `cargo xtask words` from the code; what it says is changed there.\n".to_owned();
    for (title, messages) in english() {
        file += &format!("\n## {title}\n\n");
        for (id, text) in messages {
            let inner = text.trim_matches(' ').replace('{', "{ $").replace('}', " }");
            // Fluent keeps a space at an end only where it is written out.
            let [before, after] =
                [text.starts_with(' '), text.ends_with(' ')].map(|is| if is { "{ \" \" }" } else { "" });
            file += &format!("said-{id} = {before}{inner}{after}\n");
        }
    }
    file
}

/// Where they are listed.
pub fn path() -> PathBuf {
    root().join("www/locales/en/said.ftl")
}

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("..")
}

fn phrases() -> BTreeMap<String, String> {
    let mut found = BTreeMap::new();
    for name in SPEAKING {
        for file in sources(&root().join("crates").join(name).join("src")) {
            collect(tokens(&file), &mut |id, text| {
                if id.starts_with("test-") {
                    return;
                }
                let known = found.entry(id.clone()).or_insert_with(|| text.clone());
                assert_eq!(*known, text, "{id} is said in two ways");
            });
        }
    }
    found
}

/// Hands on the two texts that every `phrase!` begins with.
fn collect(tokens: TokenStream, each: &mut impl FnMut(String, String)) {
    let tokens: Vec<TokenTree> = tokens.into_iter().collect();
    for (n, token) in tokens.iter().enumerate() {
        let TokenTree::Group(group) = token else { continue };
        let is_phrase = n >= 2 && tokens[n - 2].to_string() == "phrase" && tokens[n - 1].to_string() == "!";
        if is_phrase {
            let inner: Vec<TokenTree> = group.stream().into_iter().collect();
            if let [id, _, text, ..] = inner.as_slice()
                && let (Some(id), Some(text)) = (text_of(id), text_of(text))
            {
                each(id, text);
            }
        }
        collect(group.stream(), each);
    }
}

fn accepted() -> BTreeMap<String, String> {
    let mut found = BTreeMap::new();
    for file in ACCEPTING {
        texts(tokens(&root().join("crates/physics/src").join(file)), &mut |text| {
            if text.contains(' ') && !text.starts_with("profile_m ") {
                add(&mut found, &Phrase::known("accepted", &text, text.as_str()));
            }
        });
    }
    found
}

/// Hands on every text but those of attributes and of tests.
fn texts(tokens: TokenStream, each: &mut impl FnMut(String)) {
    let mut before = String::new();
    for token in tokens {
        match &token {
            TokenTree::Group(group) if before.starts_with('#') && group.delimiter() == Delimiter::Bracket => {}
            TokenTree::Group(_) if before == "tests" => {}
            TokenTree::Group(group) => texts(group.stream(), each),
            TokenTree::Literal(_) => text_of(&token).into_iter().for_each(&mut *each),
            _ => {}
        }
        let inner = before == "#" && token.to_string() == "!";
        before = if inner { "#!".to_owned() } else { token.to_string() };
    }
}

fn subjects() -> BTreeMap<String, String> {
    let mut found = BTreeMap::new();
    add(&mut found, &subject(""));
    for place in ASKED {
        add(&mut found, &subject(place));
    }
    let schemas = [
        format::ball_schema(),
        format::layout_schema(),
        format::lesson_schema(),
        format::oil_schema(),
        format::progress_schema(),
        format::shelf_schema(),
        format::shot_schema(),
        format::target_schema(),
        format::tolerances_schema(),
    ];
    for schema in schemas {
        keys(&schema, &mut |key, of| {
            add(&mut found, &subject(key));
            if of.to_string().contains("\"array\"") {
                add(&mut found, &subject(&format!("{key}[0]")));
            }
        });
    }
    found
}

/// Hands on every key of a file with what the schema says of it.
fn keys(schema: &Value, each: &mut impl FnMut(&str, &Value)) {
    if let Some(properties) = schema.get("properties").and_then(Value::as_object) {
        properties.iter().for_each(|(key, of)| each(key, of));
    }
    match schema {
        Value::Array(items) => items.iter().for_each(|item| keys(item, each)),
        Value::Object(map) => map.values().for_each(|value| keys(value, each)),
        _ => {}
    }
}

fn rules() -> BTreeMap<String, String> {
    let text = std::fs::read(root().join("scenarios/balls/no-1-simple.ball.json")).expect("a ball");
    let file = BallFile::read(&text).expect("a ball file");
    let findings = check(&file.recipe(), &weigh(&file.build().expect("a ball")), None);
    let mut found = BTreeMap::new();
    for rule in CheckedDoc::new(&file, &findings).rules {
        for said in [rule.name, rule.applies, rule.note, rule.source, rule.edition] {
            if said.ids().iter().any(|id| id.starts_with("rule-")) {
                add(&mut found, &said);
            }
        }
    }
    found
}

fn figures() -> BTreeMap<String, String> {
    let mut found = BTreeMap::new();
    FIGURES.iter().for_each(|figure| add(&mut found, &figure.said()));
    found
}

fn places() -> BTreeMap<String, String> {
    let mut found = BTreeMap::new();
    for schema in [format::ball_schema(), format::shot_schema(), format::oil_schema()] {
        keys(&schema, &mut |key, of| {
            let of = of.to_string();
            // Only numbers are spoken of.
            if of.contains("\"number\"") || of.contains("\"integer\"") {
                add(&mut found, &lessons::place(key));
            }
        });
    }
    found
}

fn add(found: &mut BTreeMap<String, String>, phrase: &Phrase) {
    found.insert(phrase.ids()[0].to_owned(), phrase.to_string());
}

fn tokens(file: &Path) -> TokenStream {
    std::fs::read_to_string(file).expect("a source file").parse().expect("Rust")
}

fn text_of(token: &TokenTree) -> Option<String> {
    syn::parse2::<syn::LitStr>(token.clone().into()).ok().map(|text| text.value())
}

fn sources(folder: &Path) -> Vec<PathBuf> {
    let entries = std::fs::read_dir(folder).expect("a folder").map(|entry| entry.expect("an entry").path());
    let mut files: Vec<PathBuf> = entries
        .flat_map(|path| {
            if path.is_dir() {
                return sources(&path);
            }
            if path.extension().is_some_and(|end| end == "rs") { vec![path] } else { Vec::new() }
        })
        .collect();
    files.sort();
    files
}
