//! The target file, `NAME.target.json`, and what `seek` prints.

use physics::figures::{FIGURES, Figures};
use physics::seek::{Answer, Block, Free, Seek, SeekError, Target};
use physics::units::{KG_PER_LB, M_PER_IN};
use schemars::JsonSchema;
use serde::Serialize;

use crate::ball::BallFile;
use crate::controls::{ControlDoc, FiguresDoc, place, si};
use crate::limits;
use crate::node::Node;
use crate::problem::Problem;
use crate::tree::Tree;
use crate::weighed::WeighedDoc;
use crate::{Phrase, phrase};

/// Starts where the file does not say.
const USUAL_STARTS: u32 = 24;

/// Which edition of the target file this is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub enum TargetVersion {
    /// The first.
    #[serde(rename = "pithball.target/1")]
    V1,
}

/// What a core should do, and what may change for it.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct TargetFile {
    /// `pithball.target/1`.
    pub format: TargetVersion,
    /// What it is called.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub name: Option<String>,
    /// A line about it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub note: Option<String>,
    /// The wanted numbers, at least one.
    pub want: Want,
    /// What may change.
    #[schemars(length(min = 1, max = physics::seek::MOST_FREE))]
    pub free: Vec<FreeDoc>,
    /// Whether the ball must keep to the published limits; true where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub within_limits: Option<bool>,
    /// From how many places to start, 1 to 1,000; 24 where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = limits::STARTS.min, max = limits::STARTS.max))]
    pub starts: Option<u32>,
}

/// Wanted numbers. What is left out may come out as it likes.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct Want {
    /// Weight.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(extend("exclusiveMinimum" = 0))]
    pub weight_lb: Option<f64>,
    /// Lowest RG.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(extend("exclusiveMinimum" = 0))]
    pub rg_in: Option<f64>,
    /// High minus low RG.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = 0))]
    pub differential_in: Option<f64>,
    /// High minus middle RG.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = 0))]
    pub intermediate_differential_in: Option<f64>,
    /// Top weight on a scale arm of the ball's radius.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub top_weight_oz: Option<f64>,
    /// Least cover over every piece, each taken without its cuts.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = 0))]
    pub cover_at_least_in: Option<f64>,
}

/// A control that may change.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct FreeDoc {
    /// Its place in the ball file, such as `pieces[1].at_in[2]`, or one of
    /// `pieces[n].scale`, `pieces[n].shape.wide` and `pieces[n].shape.tall`:
    /// factors on what the file says.
    pub control: String,
    /// From here, in the unit of the control.
    pub from: f64,
    /// To here, above `from`.
    pub to: f64,
}

impl TargetFile {
    /// Reads a target file from JSON text in UTF-8.
    ///
    /// # Errors
    /// The first mistake in the file, with its place.
    pub fn read(json: &[u8]) -> Result<Self, Problem> {
        let tree = Tree::parse(json)?;
        let node = Node::root(&tree);
        let format = node.key("format")?.choice(&[("pithball.target/1", TargetVersion::V1)])?;
        let file = node.object(&["format", "name", "note", "want", "free", "within_limits", "starts"])?;
        let free = file.get("free")?;
        let count = free.items()?.len();
        let most = physics::seek::MOST_FREE;
        if count == 0 || count > most {
            return Err(free.problem_found(so_many_free(count), some_free()));
        }
        Ok(Self {
            format,
            name: file.find_text("name")?,
            note: file.find_text("note")?,
            want: Want::read(&file.get("want")?)?,
            free: free.items()?.map(|item| FreeDoc::read(&item)).collect::<Result<_, _>>()?,
            within_limits: file.find("within_limits").map(|node| node.flag()).transpose()?,
            starts: file.find("starts").map(|node| node.whole(&limits::STARTS)).transpose()?,
        })
    }
}

impl Want {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let want = node.object(&[
            "weight_lb",
            "rg_in",
            "differential_in",
            "intermediate_differential_in",
            "top_weight_oz",
            "cover_at_least_in",
        ])?;
        let find = |key, range| want.find(key).map(|node| node.number(range)).transpose();
        let read = Self {
            weight_lb: find("weight_lb", &limits::SIZE_IN)?,
            rg_in: find("rg_in", &limits::SIZE_IN)?,
            differential_in: find("differential_in", &limits::ZERO_OR_MORE)?,
            intermediate_differential_in: find("intermediate_differential_in", &limits::ZERO_OR_MORE)?,
            top_weight_oz: find("top_weight_oz", &limits::ANY)?,
            cover_at_least_in: find("cover_at_least_in", &limits::ZERO_OR_MORE)?,
        };
        if read == Self::default() {
            return Err(nothing_wanted(node.place()));
        }
        Ok(read)
    }
}

impl FreeDoc {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let free = node.object(&["control", "from", "to"])?;
        let read = Self {
            control: free.get("control")?.text()?,
            from: free.get_number("from", &limits::ANY)?,
            to: free.get_number("to", &limits::ANY)?,
        };
        if read.from >= read.to {
            return Err(node.problem_found(
                phrase!("from-to", "from {from} to {to}", from = read.from, to = read.to),
                phrase!("from-below-to", "from below to"),
            ));
        }
        Ok(read)
    }
}

fn nothing_wanted(place: String) -> Problem {
    Problem::new(place, phrase!("no-wanted", "no wanted number"), phrase!("at-least-one", "at least one"))
        .saying(phrase!("nothing-wanted", "Nothing is wanted."))
}

fn so_many_free(count: usize) -> Phrase {
    phrase!("so-many-free", "{count} free controls", count = count)
}

fn some_free() -> Phrase {
    phrase!("some-free", "1 to {most} free controls", most = physics::seek::MOST_FREE)
}

/// A target made ready for a ball.
#[derive(Debug)]
pub struct Seeker {
    seek: Seek,
    ball: BallFile,
    target: Target,
}

/// What came of it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct SoughtDoc {
    /// Different cores that meet the target, nearest the ball's own first.
    pub answers: Vec<AnswerDoc>,
    /// How many starts met it.
    pub met: usize,
    /// How many were tried.
    pub tried: usize,
    /// The nearest core where none meets it.
    pub nearest: Option<AnswerDoc>,
    /// What stands in its way, one sentence each.
    pub blocks: Vec<Phrase>,
    /// What counts as met.
    pub note: Phrase,
}

/// A core.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct AnswerDoc {
    /// The free controls and their values.
    pub values: Vec<ValueDoc>,
    /// The ball with them, a whole file.
    pub file: BallFile,
    /// What it weighs.
    pub weighed: WeighedDoc,
    /// Least cover over every piece, each taken without its cuts.
    pub cover_in: f64,
    /// What the wanted numbers miss by; 0 for those that are not wanted.
    pub missed_by: FiguresDoc,
    /// The worst miss in parts of what counts as met.
    pub miss: f64,
}

/// A control and its value.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ValueDoc {
    /// Which.
    #[serde(flatten)]
    pub control: ControlDoc,
    /// Its value, in the unit of the control.
    pub value: f64,
}

/// Which of the two files a problem is in.
#[derive(Clone, Debug, PartialEq)]
pub enum SeekProblem {
    /// The ball file.
    Ball(Problem),
    /// The target file.
    Target(Problem),
}

impl From<SeekProblem> for Problem {
    fn from(problem: SeekProblem) -> Self {
        match problem {
            SeekProblem::Ball(problem) => problem.within("ball"),
            SeekProblem::Target(problem) => problem.within("target"),
        }
    }
}

fn note() -> Phrase {
    phrase!(
        "seek-note",
        "Met: within 0.02 lb, 0.001 in of RG and of both differentials, 0.05 oz of top weight and 0.001 in of cover. \
         That no start met a target does not prove that nothing can."
    )
}

impl Seeker {
    /// Finds the controls in the ball.
    ///
    /// # Errors
    /// Where the ball cannot be made or the target is not for it.
    pub fn new(ball: &BallFile, target: &TargetFile) -> Result<Self, SeekProblem> {
        ball.build().map_err(SeekProblem::Ball)?;
        let in_target = SeekProblem::Target;
        let mut free = Vec::new();
        for (n, one) in target.free.iter().enumerate() {
            let control = ball.control(&one.control, &format!("free[{n}].control")).map_err(in_target)?;
            free.push(Free { control, from: one.from * si(control), to: one.to * si(control) });
        }
        let want = &target.want;
        let inches = |value: Option<f64>| value.map(|value| value * M_PER_IN);
        let target = Target {
            want: [
                want.weight_lb.map(|lb| lb * KG_PER_LB),
                inches(want.rg_in),
                inches(want.differential_in),
                inches(want.intermediate_differential_in),
                want.top_weight_oz,
            ],
            cover_at_least_m: inches(want.cover_at_least_in),
            free,
            within_limits: target.within_limits.unwrap_or(true),
            starts: target.starts.unwrap_or(USUAL_STARTS) as usize,
        };
        let seek = Seek::new(&ball.recipe(), target.clone()).map_err(|error| match error {
            SeekError::Recipe(error) => SeekProblem::Ball(ball.problem(&error)),
            SeekError::NothingWanted => in_target(nothing_wanted("want".to_owned())),
            SeekError::Free { found } => in_target(Problem::new("free", so_many_free(found), some_free())),
            SeekError::Starts { found } => in_target(Problem::new("starts", found.into(), limits::STARTS.words())),
            SeekError::Control { place } => in_target(
                Problem::new(
                    format!("free[{place}]"),
                    phrase!("free-already", "a control that is free already"),
                    phrase!("each-control-once", "each control once"),
                )
                .saying(phrase!("free-twice", "A control is free twice.")),
            ),
        })?;
        Ok(Self { seek, ball: ball.clone(), target })
    }

    /// How many starts there are: the units of work.
    pub fn units(&self) -> usize {
        self.seek.units()
    }

    /// The results of starts `from..to`, one after the other.
    pub fn run(&self, from: usize, to: usize) -> Vec<f64> {
        (from..to.min(self.units())).flat_map(|start| self.seek.run(start)).collect()
    }

    /// Everything from the results of the starts done so far, in their order;
    /// `None` where that is no whole number of results.
    pub fn merge(&self, results: &[f64]) -> Option<SoughtDoc> {
        let sought = self.seek.merge(results)?;
        Some(SoughtDoc {
            answers: sought.answers.iter().map(|answer| self.answer(answer)).collect(),
            met: sought.met,
            tried: results.len() / self.target.free.len(),
            nearest: sought.nearest.as_ref().map(|answer| self.answer(answer)),
            blocks: sought.blocks.iter().map(|block| self.block(*block)).collect(),
            note: note(),
        })
    }

    fn answer(&self, answer: &Answer) -> AnswerDoc {
        let figures = Figures::from(&answer.weighed).array();
        let missed =
            std::array::from_fn::<f64, FIGURES, _>(|n| self.target.want[n].map_or(0.0, |wanted| figures[n] - wanted));
        let file = self.ball.with_recipe(&answer.recipe);
        AnswerDoc {
            values: self
                .target
                .free
                .iter()
                .zip(&answer.values)
                .map(|(free, value)| ValueDoc {
                    control: self.ball.control_doc(free.control),
                    value: value / si(free.control),
                })
                .collect(),
            weighed: WeighedDoc::new(&file, &answer.weighed),
            file,
            cover_in: answer.cover_m / M_PER_IN,
            missed_by: (&Figures::from_array(missed)).into(),
            miss: answer.miss,
        }
    }

    fn block(&self, block: Block) -> Phrase {
        let bound = |n: usize, upper: bool| {
            let free = self.target.free.get(n);
            let Some(free) = free else { return Phrase::default() };
            let doc = self.ball.control_doc(free.control);
            let end = format!("{:.4}", if upper { free.to } else { free.from } / si(free.control));
            let what = match doc.part {
                Some(part) => phrase!("what-of-part", "{what} of {part}", what = doc.what, part = part),
                None => doc.what,
            };
            let (unit, place) = (doc.unit, place(free.control));
            if upper {
                phrase!(
                    "block-upper",
                    "The {what} is at its upper bound, {end} {unit} ({place}).",
                    what = what,
                    end = end,
                    unit = unit,
                    place = place
                )
            } else {
                phrase!(
                    "block-lower",
                    "The {what} is at its lower bound, {end} {unit} ({place}).",
                    what = what,
                    end = end,
                    unit = unit,
                    place = place
                )
            }
        };
        match block {
            Block::LowerBound(n) => bound(n, false),
            Block::UpperBound(n) => bound(n, true),
            Block::Room(n) => {
                let name = format!("{:?}", self.ball.pieces.get(n).map_or("", |piece| &piece.name));
                if self.target.cover_at_least_m.is_some() {
                    phrase!(
                        "block-room-cover",
                        "The piece {name} fills all the room that the wanted cover leaves.",
                        name = name
                    )
                } else {
                    phrase!("block-room", "The piece {name} fills all the room that the ball leaves.", name = name)
                }
            }
            Block::Weight => phrase!("block-weight", "The published limit on the weight stands in the way."),
            Block::Rg => phrase!("block-rg", "The published limit on the RG stands in the way."),
            Block::Differential => {
                phrase!("block-differential", "The published limit on the differential stands in the way.")
            }
            Block::Density => phrase!("block-density", "The published limit on the density stands in the way."),
            Block::Contradiction => phrase!(
                "block-contradiction",
                "No bound stands in the way: for these controls the wanted numbers contradict one another."
            ),
        }
    }
}
