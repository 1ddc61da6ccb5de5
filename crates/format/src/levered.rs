//! What `levers` and `map` print.

use physics::control::Control;
use physics::levers::{Levers, Moved};
use physics::map::row;
use physics::spec::{RULES, RuleId};
use physics::weigh::weigh;
use serde::Serialize;

use crate::ball::BallFile;
use crate::controls::{ControlDoc, FiguresDoc, si};
use crate::limits;
use crate::problem::Problem;
use crate::{Phrase, phrase};

/// Fewest and most values along one side of a map.
pub const MAP_VALUES: [usize; 2] = [2, 200];

/// What every control of a ball moves.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct LeversDoc {
    /// The ball's name.
    pub ball: String,
    /// Every control, in the recipe's order.
    pub levers: Vec<LeverDoc>,
    /// The controls by how much a step moves each number, most first: places in `levers`.
    pub ranked: RankedDoc,
    /// What the numbers are.
    pub note: Phrase,
}

/// Places in `levers`, the one that moves a number most first; those that do
/// not move it beyond the error are left out.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct RankedDoc {
    /// By the weight.
    pub weight_lb: Vec<usize>,
    /// By the low RG.
    pub low_rg_in: Vec<usize>,
    /// By the differential.
    pub differential_in: Vec<usize>,
    /// By the intermediate differential.
    pub intermediate_differential_in: Vec<usize>,
    /// By the top weight.
    pub top_weight_oz: Vec<usize>,
}

/// What one control moves.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct LeverDoc {
    /// Which.
    #[serde(flatten)]
    pub control: ControlDoc,
    /// Its value in the file, or 1 for a factor.
    pub value: f64,
    /// The step that the changes are for.
    pub step: f64,
    /// Changes to first order as it is raised by a step; null where it cannot be.
    pub raised: Option<MovedDoc>,
    /// Changes to first order as it is lowered by a step; null where it cannot be.
    pub lowered: Option<MovedDoc>,
}

/// Changes and what they may be wrong by.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct MovedDoc {
    /// The changes.
    pub by: FiguresDoc,
    /// What each may be wrong by.
    pub error: FiguresDoc,
}

/// The ball over two of its controls.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct BallMapDoc {
    /// The ball's name.
    pub ball: String,
    /// Across.
    pub x: AxisDoc,
    /// Up.
    pub y: AxisDoc,
    /// Row by row, the first value of `y` first; null where the ball cannot be made.
    pub rows: Vec<Vec<Option<FiguresDoc>>>,
    /// The published limits that contours are drawn for.
    pub limits: LimitsDoc,
}

/// One side of a map.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct AxisDoc {
    /// Which control.
    #[serde(flatten)]
    pub control: ControlDoc,
    /// Its value in the file: the present ball.
    pub value: f64,
    /// The values of the map.
    pub values: Vec<f64>,
}

/// Published limits.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct LimitsDoc {
    /// Heaviest ball.
    pub weight_at_most_lb: Option<f64>,
    /// Smallest RG, for balls of 13 lb and up.
    pub low_rg_at_least_in: Option<f64>,
    /// Largest RG, for balls of 13 lb and up.
    pub high_rg_at_most_in: Option<f64>,
    /// Largest differential.
    pub differential_at_most_in: Option<f64>,
}

fn note() -> Phrase {
    phrase!(
        "levers-note",
        "Changes to first order, per step: 0.01 g/cc, 0.05 in, 1 degree, a hundredth of a factor. Where raising and \
         lowering differ by more than their sign, the number bends at this very value."
    )
}

/// One side of a map as it is asked for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct AxisAsked<'a> {
    /// The control's place in the ball file.
    pub control: &'a str,
    /// First value, in the file's unit.
    pub from: f64,
    /// Last value.
    pub to: f64,
    /// How many values, within [`MAP_VALUES`].
    pub count: usize,
}

impl BallFile {
    /// What the `from`-th up to before the `to`-th control of this ball moves.
    ///
    /// # Errors
    /// Where the ball cannot be made.
    pub fn lever_docs(&self, from: usize, to: usize) -> Result<Vec<LeverDoc>, Problem> {
        let recipe = self.recipe();
        let levers = Levers::new(&recipe).map_err(|error| self.problem(&error))?;
        let all = Control::all(&recipe);
        let to = to.min(all.len());
        Ok(all.get(from.min(to)..to).unwrap_or_default().iter().filter_map(|c| self.lever_doc(&levers, *c)).collect())
    }

    /// How many controls this ball has.
    pub fn controls(&self) -> usize {
        Control::all(&self.recipe()).len()
    }

    /// Every control of this ball.
    pub fn control_docs(&self) -> Vec<ControlDoc> {
        Control::all(&self.recipe()).into_iter().map(|control| self.control_doc(control)).collect()
    }

    fn lever_doc(&self, levers: &Levers, control: Control) -> Option<LeverDoc> {
        let lever = levers.lever(control)?;
        let moved = |moved: &Moved| MovedDoc { by: (&moved.by).into(), error: (&moved.error).into() };
        Some(LeverDoc {
            control: self.control_doc(control),
            value: lever.value / si(control),
            step: lever.step / si(control),
            raised: lever.raised.as_ref().map(moved),
            lowered: lever.lowered.as_ref().map(moved),
        })
    }

    /// All of it, from the levers of every control in order.
    pub fn levers(&self, levers: Vec<LeverDoc>) -> LeversDoc {
        let ranked = |figure: fn(&FiguresDoc) -> f64| {
            let beyond = |moved: &Option<MovedDoc>| {
                moved.filter(|m| figure(&m.by).abs() > figure(&m.error)).map_or(0.0, |m| figure(&m.by).abs())
            };
            let moves = |n: &usize| beyond(&levers[*n].raised).max(beyond(&levers[*n].lowered));
            let mut places: Vec<usize> = (0..levers.len()).filter(|n| moves(n) > 0.0).collect();
            places.sort_by(|a, b| moves(b).total_cmp(&moves(a)));
            places
        };
        let ranked = RankedDoc {
            weight_lb: ranked(|f| f.weight_lb),
            low_rg_in: ranked(|f| f.low_rg_in),
            differential_in: ranked(|f| f.differential_in),
            intermediate_differential_in: ranked(|f| f.intermediate_differential_in),
            top_weight_oz: ranked(|f| f.top_weight_oz),
        };
        LeversDoc { ball: self.name.clone(), levers, ranked, note: note() }
    }

    /// Rows `from..to` of a map.
    ///
    /// # Errors
    /// Where the ball cannot be made, or has no such control, or the range is none.
    pub fn map_rows(
        &self,
        asked: [AxisAsked<'_>; 2],
        from: usize,
        to: usize,
    ) -> Result<Vec<Vec<Option<FiguresDoc>>>, Problem> {
        weigh(&self.build()?);
        let recipe = self.recipe();
        let [x, y] = self.axes(asked)?;
        let [x_values, y_values] = [values(&asked[0]), values(&asked[1])];
        let scaled: Vec<f64> = x_values.iter().map(|value| value * si(x)).collect();
        let to = to.min(y_values.len());
        let rows = y_values.get(from.min(to)..to).unwrap_or_default().iter();
        let figures = |row: Vec<Option<physics::figures::Figures>>| {
            row.iter().map(|figures| figures.as_ref().map(FiguresDoc::from)).collect()
        };
        Ok(rows.map(|value| figures(row(&recipe, [x, y], &scaled, value * si(y)))).collect())
    }

    /// All of a map, from all of its rows in order.
    ///
    /// # Errors
    /// As [`BallFile::map_rows`].
    pub fn map(&self, asked: [AxisAsked<'_>; 2], rows: Vec<Vec<Option<FiguresDoc>>>) -> Result<BallMapDoc, Problem> {
        let recipe = self.recipe();
        let [x, y] = self.axes(asked)?;
        let axis = |control: Control, asked: &AxisAsked<'_>| AxisDoc {
            control: self.control_doc(control),
            value: control.value(&recipe).unwrap_or_default() / si(control),
            values: values(asked),
        };
        let rule = |id: RuleId| RULES.iter().find(|rule| rule.id == id);
        let limits = LimitsDoc {
            weight_at_most_lb: rule(RuleId::Weight).and_then(|rule| rule.at_most),
            low_rg_at_least_in: rule(RuleId::LowRg).and_then(|rule| rule.at_least),
            high_rg_at_most_in: rule(RuleId::HighRg).and_then(|rule| rule.at_most),
            differential_at_most_in: rule(RuleId::Differential).and_then(|rule| rule.at_most),
        };
        Ok(BallMapDoc { ball: self.name.clone(), x: axis(x, &asked[0]), y: axis(y, &asked[1]), rows, limits })
    }

    /// This file with one control at another value, in the control's unit.
    ///
    /// # Errors
    /// At `control` where there is no such control, at `value` where it is no finite number.
    pub fn turned(&self, control: &str, value: f64) -> Result<Self, Problem> {
        let own = self.control(control, "control")?;
        if !value.is_finite() {
            return Err(Problem::new("value", value.into(), limits::ANY.words()));
        }
        let recipe = self.recipe();
        let turned = own.with(&recipe, value * si(own)).unwrap_or(recipe);
        Ok(self.with_recipe(&turned))
    }

    fn axes(&self, [x, y]: [AxisAsked<'_>; 2]) -> Result<[Control; 2], Problem> {
        let axis = |asked: &AxisAsked<'_>, at: &str| {
            let control = self.control(asked.control, at)?;
            if !(asked.from.is_finite() && asked.to.is_finite() && asked.from < asked.to) {
                let found = phrase!("a-to-b", "{a} to {b}", a = asked.from, b = asked.to);
                let accepted = phrase!("two-numbers", "two finite numbers, the smaller first");
                return Err(Problem::new(at, found, accepted));
            }
            let [fewest, most] = MAP_VALUES;
            if !(fewest..=most).contains(&asked.count) {
                let found = phrase!("so-many-values", "{count} values", count = asked.count);
                let accepted = phrase!("some-values", "{least} to {most} values", least = fewest, most = most);
                return Err(Problem::new(at, found, accepted));
            }
            Ok(control)
        };
        let (x_control, y_control) = (axis(&x, "x")?, axis(&y, "y")?);
        if x_control == y_control {
            return Err(Problem::new(
                "y",
                phrase!("again", "{what} again", what = format!("{:?}", y.control)),
                phrase!("another-control", "another control than that of x"),
            ));
        }
        Ok([x_control, y_control])
    }
}

fn values(asked: &AxisAsked<'_>) -> Vec<f64> {
    let last = asked.count.saturating_sub(1).max(1) as f64;
    (0..asked.count).map(|n| asked.from + (asked.to - asked.from) * (n as f64 / last)).collect()
}
