//! The tolerances file, `NAME.tolerances.json`: how far a ball may stray from
//! its recipe, and what the maker sells as good.

use physics::scatter::{NUMBERS, Number, Plan, Source, Spread, Tolerance, Window, Windows};
use physics::spec::{RULES, RuleId};
use physics::units::M_PER_IN;
use physics::weigh::Weighed;
use schemars::JsonSchema;
use serde::Serialize;

use crate::ball::BallFile;
use crate::limits;
use crate::node::{Node, Object, one_of};
use crate::phrase;
use crate::problem::Problem;
use crate::tree::Tree;

/// Balls sampled where the file does not say.
const USUAL_BALLS: u32 = 10_000;

/// Which edition of the tolerances file this is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub enum TolerancesVersion {
    /// The first.
    #[serde(rename = "pithball.tolerances/1")]
    V1,
}

/// How far a ball may stray from its recipe, and what is sold as good.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct TolerancesFile {
    /// `pithball.tolerances/1`.
    pub format: TolerancesVersion,
    /// What they are called.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub name: Option<String>,
    /// A line about them.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub note: Option<String>,
    /// The same seed gives the same balls; a whole number from 0 to 4,294,967,295.
    #[schemars(range(min = limits::SEED.min, max = limits::SEED.max))]
    pub seed: u32,
    /// How many balls, 100 to 1,000,000; 10,000 where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = limits::BALLS.min, max = limits::BALLS.max))]
    pub balls: Option<u32>,
    /// How often which deviation occurs; `even` where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub spread: Option<SpreadWord>,
    /// Of the ball and its cover.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub cover: Option<CoverTolerances>,
    /// Of every piece that has none of its own below.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub every_piece: Option<PieceTolerances>,
    /// Of single pieces.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub pieces: Option<Vec<NamedTolerances>>,
    /// What is sold as good; outside it a ball within the published limits is a second.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub accept: Option<Accept>,
}

/// How often which deviation occurs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "lowercase")]
pub enum SpreadWord {
    /// Any deviation within the tolerance equally often, none outside.
    Even,
    /// Normal, the tolerance being three standard deviations.
    Bell,
}

/// Tolerances of the ball and its cover, each to either side.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct CoverTolerances {
    /// Of the cover's density, in per cent of it, up to 99.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = 0, max = limits::PERCENT.max))]
    pub density_percent: Option<f64>,
    /// Of the ball's diameter, up to 1.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = 0, max = limits::DIAMETER_TOLERANCE_IN.max))]
    pub diameter_in: Option<f64>,
    /// Of the place of the whole core in the cover, along x, y and z, up to 12 each.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(inner(range(min = 0, max = limits::SHIFT_IN.max)))]
    pub core_shift_in: Option<[f64; 3]>,
}

/// Tolerances of a piece, each to either side; 0 is none.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct PieceTolerances {
    /// Of its density, in per cent of it, up to 99.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = 0, max = limits::PERCENT.max))]
    pub density_percent: Option<f64>,
    /// Of all its lengths together, about its own origin, in per cent, up to 99.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = 0, max = limits::PERCENT.max))]
    pub size_percent: Option<f64>,
    /// Of its place along x, y and z, up to 12 each.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(inner(range(min = 0, max = limits::SHIFT_IN.max)))]
    pub at_in: Option<[f64; 3]>,
    /// Of its tilt about x and about y, each by itself, up to 90.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = 0, max = limits::LEAN_DEG.max))]
    pub tilt_deg: Option<f64>,
}

/// Tolerances of one piece, by its name.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct NamedTolerances {
    /// The piece's name in the ball file.
    pub piece: String,
    /// Of its density, in per cent of it, up to 99.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = 0, max = limits::PERCENT.max))]
    pub density_percent: Option<f64>,
    /// Of all its lengths together, about its own origin, in per cent, up to 99.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = 0, max = limits::PERCENT.max))]
    pub size_percent: Option<f64>,
    /// Of its place along x, y and z, up to 12 each.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(inner(range(min = 0, max = limits::SHIFT_IN.max)))]
    pub at_in: Option<[f64; 3]>,
    /// Of its tilt about x and about y, each by itself, up to 90.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = 0, max = limits::LEAN_DEG.max))]
    pub tilt_deg: Option<f64>,
}

/// What is sold as good. What is left out is not held to.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct Accept {
    /// Weight.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub weight_lb: Option<AcceptWindow>,
    /// Low RG no farther than this from the recipe's own.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = 0))]
    pub rg_within_in: Option<f64>,
    /// Differential no farther than this from the recipe's own.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = 0))]
    pub differential_within_in: Option<f64>,
    /// Intermediate differential no farther than this from the recipe's own.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = 0))]
    pub intermediate_differential_within_in: Option<f64>,
    /// Top weight, on a scale arm of the ball's radius.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub top_weight_oz: Option<AcceptWindow>,
    /// From the pin to where the centre of gravity is marked, along the cover.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub pin_to_cg_in: Option<AcceptWindow>,
    /// Low-RG axis no farther than this from the pin, along the cover.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = 0))]
    pub low_rg_mark_within_in: Option<f64>,
    /// High-RG axis no farther than this from where the recipe has it, along the cover.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(range(min = 0))]
    pub high_rg_mark_within_in: Option<f64>,
}

/// From the one to the other; either may be left out.
#[derive(Clone, Copy, Debug, Default, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct AcceptWindow {
    /// Smallest.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub at_least: Option<f64>,
    /// Largest.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub at_most: Option<f64>,
}

const PIECE_KEYS: [&str; 4] = ["density_percent", "size_percent", "at_in", "tilt_deg"];

impl TolerancesFile {
    /// Reads a tolerances file from JSON text in UTF-8.
    ///
    /// # Errors
    /// The first mistake in the file, with its place.
    pub fn read(json: &[u8]) -> Result<Self, Problem> {
        let tree = Tree::parse(json)?;
        let node = Node::root(&tree);
        let format = node.key("format")?.choice(&[("pithball.tolerances/1", TolerancesVersion::V1)])?;
        let file = node.object(&[
            "format",
            "name",
            "note",
            "seed",
            "balls",
            "spread",
            "cover",
            "every_piece",
            "pieces",
            "accept",
        ])?;
        let spread =
            file.find("spread").map(|node| node.choice(&[("even", SpreadWord::Even), ("bell", SpreadWord::Bell)]));
        let pieces = file
            .find("pieces")
            .map(|node| node.items()?.map(|item| NamedTolerances::read(&item)).collect::<Result<Vec<_>, _>>());
        Ok(Self {
            format,
            name: file.find_text("name")?,
            note: file.find_text("note")?,
            seed: file.get("seed")?.whole(&limits::SEED)?,
            balls: file.find("balls").map(|node| node.whole(&limits::BALLS)).transpose()?,
            spread: spread.transpose()?,
            cover: file.find("cover").map(|node| CoverTolerances::read(&node)).transpose()?,
            every_piece: file.find("every_piece").map(|node| PieceTolerances::read(&node)).transpose()?,
            pieces: pieces.transpose()?,
            accept: file.find("accept").map(|node| Accept::read(&node)).transpose()?,
        })
    }

    /// What makers of such a ball may be expected to keep to: a model choice,
    /// no source. Published marking limits stand as they are.
    pub fn usual(weighed: &Weighed) -> Self {
        let weight_lb = weighed.mass_kg / physics::units::KG_PER_LB;
        let mark = |id| RULES.iter().find(|rule| rule.id == id).and_then(|rule| rule.at_most);
        let around = |middle: f64, half: f64, unit: f64| AcceptWindow {
            at_least: Some(((middle - half) / unit).floor() * unit),
            at_most: Some(((middle + half) / unit).ceil() * unit),
        };
        Self {
            format: TolerancesVersion::V1,
            name: Some("usual".to_owned()),
            note: Some("Model choice, no source: each maker has tolerances of their own.".to_owned()),
            seed: 1,
            balls: None,
            spread: None,
            cover: Some(CoverTolerances {
                density_percent: Some(0.5),
                diameter_in: Some(0.005),
                core_shift_in: Some([0.02; 3]),
            }),
            every_piece: Some(PieceTolerances {
                density_percent: Some(1.0),
                size_percent: Some(0.3),
                at_in: Some([0.02; 3]),
                tilt_deg: Some(0.5),
            }),
            pieces: None,
            accept: Some(Accept {
                weight_lb: Some(around(weight_lb, 0.1, 0.01)),
                rg_within_in: Some(0.01),
                differential_within_in: Some(0.003),
                intermediate_differential_within_in: Some(0.003),
                top_weight_oz: Some(around(weighed.top_weight_oz(), 0.75, 0.05)),
                pin_to_cg_in: None,
                low_rg_mark_within_in: mark(RuleId::LowRgMark),
                high_rg_mark_within_in: mark(RuleId::HighRgMark),
            }),
        }
    }

    /// The plan for this ball, with the place in the file of every tolerance.
    ///
    /// # Errors
    /// Where a piece is named that the ball does not have, or named twice.
    pub fn plan(&self, ball: &BallFile, weighed: &Weighed) -> Result<(Plan, Vec<String>), Problem> {
        let mut all: Vec<(Tolerance, String)> = Vec::new();
        let mut push = |source, within: Option<f64>, place: String| {
            if let Some(within) = within.filter(|within| *within > 0.0) {
                all.push((Tolerance { source, within }, place));
            }
        };
        let percent = |percent: Option<f64>| percent.map(|percent| percent / 100.0);
        let metres = |inches: Option<f64>| inches.map(|inches| inches * M_PER_IN);
        let along = |axes: Option<[f64; 3]>, axis: usize| metres(axes.map(|axes| axes[axis]));
        if let Some(cover) = &self.cover {
            push(Source::CoverDensity, percent(cover.density_percent), "cover.density_percent".to_owned());
            push(Source::Diameter, metres(cover.diameter_in), "cover.diameter_in".to_owned());
            for axis in 0..3 {
                push(Source::CoreShift(axis), along(cover.core_shift_in, axis), format!("cover.core_shift_in[{axis}]"));
            }
        }
        for (piece, (tolerances, place)) in self.by_piece(ball)?.into_iter().enumerate() {
            push(Source::Density(piece), percent(tolerances.density_percent), format!("{place}.density_percent"));
            push(Source::Size(piece), percent(tolerances.size_percent), format!("{place}.size_percent"));
            for axis in 0..3 {
                push(Source::At(piece, axis), along(tolerances.at_in, axis), format!("{place}.at_in[{axis}]"));
            }
            for axis in 0..2 {
                let within = tolerances.tilt_deg.map(f64::to_radians);
                push(Source::Tilt(piece, axis), within, format!("{place}.tilt_deg"));
            }
        }
        let (tolerances, places) = all.into_iter().unzip();
        let spread = match self.spread {
            Some(SpreadWord::Bell) => Spread::Bell,
            Some(SpreadWord::Even) | None => Spread::Even,
        };
        let balls = self.balls.unwrap_or(USUAL_BALLS) as usize;
        Ok((Plan { tolerances, spread, windows: self.windows(weighed), balls, seed: self.seed }, places))
    }

    /// The tolerances of every piece of the ball and where they stand.
    fn by_piece(&self, ball: &BallFile) -> Result<Vec<(PieceTolerances, String)>, Problem> {
        let every = (self.every_piece.unwrap_or_default(), "every_piece".to_owned());
        let mut by_piece = vec![every; ball.pieces.len()];
        let mut seen = vec![false; ball.pieces.len()];
        for (n, named) in self.pieces.iter().flatten().enumerate() {
            let place = || format!("pieces[{n}].piece");
            let found: Vec<usize> = (0..ball.pieces.len()).filter(|k| ball.pieces[*k].name == named.piece).collect();
            let [piece] = found[..] else {
                let names: Vec<String> = ball.pieces.iter().map(|piece| format!("{:?}", piece.name)).collect();
                let name = format!("{:?}", named.piece);
                let message = if found.is_empty() {
                    phrase!("no-piece-called", "No piece of the ball is called {name}.", name = &name)
                } else {
                    phrase!("pieces-called", "More than one piece of the ball is called {name}.", name = &name)
                };
                return Err(Problem::new(place(), name.into(), one_of(&names)).saying(message));
            };
            if std::mem::replace(&mut seen[piece], true) {
                let name = format!("{:?}", named.piece);
                let found = phrase!("again", "{what} again", what = &name);
                return Err(Problem::new(place(), found, phrase!("each-piece-once", "each piece once"))
                    .saying(phrase!("tolerances-twice", "The piece {name} has tolerances twice.", name = name)));
            }
            by_piece[piece] = (named.tolerances(), format!("pieces[{n}]"));
        }
        Ok(by_piece)
    }

    fn windows(&self, weighed: &Weighed) -> Windows {
        let mut windows = Windows::default();
        let accept = self.accept.unwrap_or_default();
        let values = physics::scatter::nominal(weighed);
        for (window, (number, value)) in windows.iter_mut().zip(NUMBERS.into_iter().zip(values)) {
            let around = |within: Option<f64>| Window {
                at_least: within.map(|within| value - within),
                at_most: within.map(|within| value + within),
            };
            let given = |given: Option<AcceptWindow>| {
                given.map_or_else(Window::default, |doc| Window { at_least: doc.at_least, at_most: doc.at_most })
            };
            *window = match number {
                Number::Weight => given(accept.weight_lb),
                Number::LowRg => around(accept.rg_within_in),
                Number::Differential => around(accept.differential_within_in),
                Number::IntermediateDifferential => around(accept.intermediate_differential_within_in),
                Number::TopWeight => given(accept.top_weight_oz),
                Number::PinToCg => given(accept.pin_to_cg_in),
                Number::LowRgMark => Window { at_least: None, at_most: accept.low_rg_mark_within_in },
                Number::HighRgMark => Window { at_least: None, at_most: accept.high_rg_mark_within_in },
                Number::MiddleRg | Number::HighRg => Window::default(),
            };
        }
        windows
    }
}

fn find_number(object: &Object<'_>, key: &'static str, range: &limits::Range) -> Result<Option<f64>, Problem> {
    object.find(key).map(|node| node.number(range)).transpose()
}

impl CoverTolerances {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let cover = node.object(&["density_percent", "diameter_in", "core_shift_in"])?;
        Ok(Self {
            density_percent: find_number(&cover, "density_percent", &limits::PERCENT)?,
            diameter_in: find_number(&cover, "diameter_in", &limits::DIAMETER_TOLERANCE_IN)?,
            core_shift_in: cover.find_numbers("core_shift_in", &limits::SHIFT_IN)?,
        })
    }
}

impl PieceTolerances {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        Self::read_object(&node.object(&PIECE_KEYS)?)
    }

    fn read_object(piece: &Object<'_>) -> Result<Self, Problem> {
        Ok(Self {
            density_percent: find_number(piece, "density_percent", &limits::PERCENT)?,
            size_percent: find_number(piece, "size_percent", &limits::PERCENT)?,
            at_in: piece.find_numbers("at_in", &limits::SHIFT_IN)?,
            tilt_deg: find_number(piece, "tilt_deg", &limits::LEAN_DEG)?,
        })
    }
}

impl NamedTolerances {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let named = node.object(&["piece", "density_percent", "size_percent", "at_in", "tilt_deg"])?;
        let PieceTolerances { density_percent, size_percent, at_in, tilt_deg } = PieceTolerances::read_object(&named)?;
        Ok(Self { piece: named.get("piece")?.text()?, density_percent, size_percent, at_in, tilt_deg })
    }

    fn tolerances(&self) -> PieceTolerances {
        let Self { density_percent, size_percent, at_in, tilt_deg, .. } = *self;
        PieceTolerances { density_percent, size_percent, at_in, tilt_deg }
    }
}

impl Accept {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let accept = node.object(&[
            "weight_lb",
            "rg_within_in",
            "differential_within_in",
            "intermediate_differential_within_in",
            "top_weight_oz",
            "pin_to_cg_in",
            "low_rg_mark_within_in",
            "high_rg_mark_within_in",
        ])?;
        let window = |key| accept.find(key).map(|node| AcceptWindow::read(&node)).transpose();
        let within = |key| find_number(&accept, key, &limits::ZERO_OR_MORE);
        Ok(Self {
            weight_lb: window("weight_lb")?,
            rg_within_in: within("rg_within_in")?,
            differential_within_in: within("differential_within_in")?,
            intermediate_differential_within_in: within("intermediate_differential_within_in")?,
            top_weight_oz: window("top_weight_oz")?,
            pin_to_cg_in: window("pin_to_cg_in")?,
            low_rg_mark_within_in: within("low_rg_mark_within_in")?,
            high_rg_mark_within_in: within("high_rg_mark_within_in")?,
        })
    }
}

impl AcceptWindow {
    pub(crate) fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let window = node.object(&["at_least", "at_most"])?;
        let read = Self {
            at_least: find_number(&window, "at_least", &limits::ANY)?,
            at_most: find_number(&window, "at_most", &limits::ANY)?,
        };
        match (read.at_least, read.at_most) {
            (Some(low), Some(high)) if low > high => Err(node
                .problem_found(
                    phrase!(
                        "and",
                        "{one} and {next}",
                        one = format!("at_least {low}"),
                        next = format!("at_most {high}")
                    ),
                    phrase!("least-below-most", "at_least no larger than at_most"),
                )
                .saying(phrase!("window-ends", "The window ends before it begins."))),
            _ => Ok(read),
        }
    }
}
