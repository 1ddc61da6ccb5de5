//! From the heading, the `step` block and the prose of a step to its type.

use super::change::Change;
use super::mistakes::Mistakes;
use super::read::{self, text, texts};
use super::step::{
    Answer, Check, Choice, Deed, Kind, NamedValue, NumberAnswer, PathAnswer, Predict, Room, Step, Watch, Wrong,
};
use crate::node::{Node, Object};
use crate::phrase;
use crate::problem::Problem;
use crate::tree::quote;

const LOOK: [&str; 8] = ["id", "title", "text", "kind", "rooms", "free", "watch", "start"];
const PREDICT: [&str; 12] =
    ["id", "title", "text", "kind", "rooms", "free", "watch", "start", "option", "number", "path", "then"];
const DO: [&str; 14] = [
    "id", "title", "text", "kind", "rooms", "free", "watch", "start", "check", "wrong", "hints", "hinted", "solution",
    "done",
];

impl Step {
    pub(super) fn read(node: &Node<'_>, all: &mut Mistakes) -> Option<Self> {
        #[derive(Clone, Copy)]
        enum Of {
            Explore,
            Predict,
            Do,
            Observe,
            Explain,
        }
        let kinds = [
            ("explore", Of::Explore),
            ("predict", Of::Predict),
            ("do", Of::Do),
            ("observe", Of::Observe),
            ("explain", Of::Explain),
        ];
        // What else may stand in the block follows from its kind.
        let of = all.keep(node.key("kind").and_then(|kind| kind.choice(&kinds)))?;
        let own: &'static [&'static str] = match of {
            Of::Explore | Of::Observe | Of::Explain => &LOOK,
            Of::Predict => &PREDICT,
            Of::Do => &DO,
        };
        let step = all.object(node, own)?;
        let title = all.need(&step, "title", text)?;
        let id = all.keep(match step.find("id") {
            Some(id) => read::id(&id),
            None => read::id_of(&title).ok_or_else(|| {
                node.problem_found(
                    quote(&title).into(),
                    phrase!("heading-or-id", "a heading with letters or digits, or a key {key}", key = "\"id\""),
                )
            }),
        });
        let prose = all.need(&step, "text", text);
        let rooms = all.may_list(&step, "rooms", Room::read);
        let free = all.may(&step, "free", texts);
        let watch = all.may_list(&step, "watch", Watch::read);
        let start = all.may(&step, "start", Change::read);
        let kind = match of {
            Of::Explore => Some(Kind::Explore),
            Of::Observe => Some(Kind::Observe),
            Of::Explain => Some(Kind::Explain),
            Of::Predict => Predict::read(node, &step, all).map(|predict| Kind::Predict(Box::new(predict))),
            Of::Do => Deed::read(&step, all).map(|deed| Kind::Do(Box::new(deed))),
        };
        Some(Self {
            id: id?,
            title,
            text: prose?,
            rooms: rooms?,
            free: free?,
            watch: watch?.unwrap_or_default(),
            start: start?,
            kind: kind?,
        })
    }
}

impl Watch {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        if node.is_text() {
            return Ok(Self::Plain(node.text()?));
        }
        let named = node.object(&["name", "value"])?;
        Ok(Self::Named(NamedValue { name: named.get("name")?.text()?, value: named.get("value")?.text()? }))
    }
}

impl Room {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        node.choice(&[("bench", Self::Bench), ("saw", Self::Saw), ("scale", Self::Scale), ("lane", Self::Lane)])
    }
}

impl Predict {
    fn read(node: &Node<'_>, step: &Object<'_>, all: &mut Mistakes) -> Option<Self> {
        let then = all.may(step, "then", Change::read);
        let answer = match (step.find("option"), step.find("number"), step.find("path")) {
            (Some(options), None, None) => {
                let read = all.items(&options, Choice::read)?;
                if (2..=8).contains(&read.len()) {
                    Some(Answer::Option(read))
                } else {
                    all.keep(Err(options.problem(phrase!("some-options", "2 to 8 options"))))
                }
            }
            (None, Some(number), None) => all.keep(NumberAnswer::read(&number)).map(Answer::Number),
            (None, None, Some(path)) => all.keep(PathAnswer::read(&path)).map(Answer::Path),
            _ => all.keep(Err(node
                .problem_found(
                    phrase!("none-or-several", "none or several of them"),
                    phrase!("one-of", "one of {names}", names = "\"option\", \"number\", \"path\""),
                )
                .saying(phrase!("prediction-kinds", "A prediction is either a choice, a number or a path.")))),
        };
        Some(Self { answer: answer?, then: then? })
    }
}

impl Choice {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let choice = node.object(&["text", "right", "say"])?;
        let text = |key| choice.get(key)?.text();
        Ok(Self { text: text("text")?, right: text("right")?, say: text("say")? })
    }
}

impl NumberAnswer {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let number = node.object(&["value", "within", "right", "low", "high"])?;
        let text = |key| number.get(key)?.text();
        Ok(Self {
            value: text("value")?,
            within: text("within")?,
            right: text("right")?,
            low: text("low")?,
            high: text("high")?,
        })
    }
}

impl PathAnswer {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let path = node.object(&["within", "right", "wrong", "no_turn"])?;
        let text = |key| path.get(key)?.text();
        Ok(Self {
            within: text("within")?,
            right: text("right")?,
            wrong: text("wrong")?,
            no_turn: path.find_text("no_turn")?,
        })
    }
}

impl Deed {
    fn read(step: &Object<'_>, all: &mut Mistakes) -> Option<Self> {
        let check = all.list(step, "check", Check::read);
        if check.as_ref().is_some_and(|check| !(1..=16).contains(&check.len())) {
            all.need(step, "check", |list| -> Result<(), _> {
                Err(list.problem(phrase!("some-checks", "1 to 16 checks")))
            });
        }
        let wrong = all.may_list(step, "wrong", Wrong::read);
        let hints = all.need(step, "hints", |hints| {
            texts(hints)?.try_into().map_err(|_| hints.problem(phrase!("three-texts", "a list of 3 texts")))
        });
        let hinted = all.may(step, "hinted", |table| table.map_of(|value| value.text()));
        let solution = all.need(step, "solution", Change::read);
        let done = all.need(step, "done", text);
        Some(Self {
            check: check?,
            wrong: wrong?.unwrap_or_default(),
            hints: hints?,
            hinted: hinted?.unwrap_or_default(),
            solution: solution?,
            done: done?,
        })
    }
}

impl Check {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let check = node.object(&["want", "say"])?;
        Ok(Self { want: check.get("want")?.text()?, say: check.find_text("say")? })
    }
}

impl Wrong {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let wrong = node.object(&["when", "say"])?;
        Ok(Self { when: wrong.get("when")?.text()?, say: wrong.get("say")?.text()? })
    }
}
