//! The ball file, `NAME.ball.json`.

use physics::lane::cover;
use schemars::JsonSchema;
use serde::Serialize;

use crate::MAX_SOLIDS;
use crate::build::{axis_points_out, direction_in, most_parts, so_many_parts};
use crate::limits;
use crate::node::{Node, Object};
use crate::phrase;
use crate::problem::Problem;
use crate::shape::Shape;
use crate::tree::Tree;

/// Which edition of the ball file this is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub enum BallVersion {
    /// The first.
    #[serde(rename = "pithball.ball/1")]
    V1,
}

/// A ball as its maker writes it down.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct BallFile {
    /// `pithball.ball/1`.
    pub format: BallVersion,
    /// What the ball is called.
    pub name: String,
    /// A line about it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub note: Option<String>,
    /// Diameter of the finished ball, 4 to 12.
    #[schemars(range(min = limits::DIAMETER_IN.min, max = limits::DIAMETER_IN.max))]
    pub diameter_in: f64,
    /// The coverstock: whatever no piece fills.
    pub cover: Cover,
    /// Pieces in pouring order: a later one displaces an earlier one.
    #[schemars(length(max = MAX_SOLIDS))]
    pub pieces: Vec<Piece>,
    /// Drilled holes.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(length(max = MAX_SOLIDS))]
    pub holes: Option<Vec<Hole>>,
}

/// The coverstock.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct Cover {
    /// What it is called; "cover" where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub name: Option<String>,
    /// What it is made of, in words.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub material: Option<String>,
    /// Density, above 0 and up to 25.
    #[schemars(extend("exclusiveMinimum" = 0), range(max = limits::DENSITY_G_CC.max))]
    pub density_g_cc: f64,
    /// Generic family of coverstock: changes friction on an oiled lane.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub family: Option<Family>,
    /// How the surface was finished: changes friction on an oiled lane.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub finish: Option<Finish>,
}

/// Generic families of coverstock.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "lowercase")]
pub enum Family {
    /// Hard and smooth.
    Polyester,
    /// Softer, grips early in oil.
    Urethane,
    /// Urethane made porous.
    Reactive,
}

/// How a ball's surface was finished.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct Finish {
    /// Grit of the last abrasive, 100 (coarse) to 10,000 (fine).
    #[schemars(range(min = limits::GRIT.min, max = limits::GRIT.max))]
    pub grit: f64,
    /// Whether polish went on top; not where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub polished: Option<bool>,
}

/// One poured piece.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct Piece {
    /// What it is called.
    pub name: String,
    /// What it is made of, in words.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub material: Option<String>,
    /// Density, above 0 and up to 25.
    #[schemars(extend("exclusiveMinimum" = 0), range(max = limits::DENSITY_G_CC.max))]
    pub density_g_cc: f64,
    /// Its shape about its own origin.
    pub shape: Shape,
    /// Where the shape's origin goes; the ball's centre where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub at_in: Option<[f64; 3]>,
    /// Turns about the ball's x, then y, then z axis, before the move.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub turn_deg: Option<[f64; 3]>,
    /// What is taken out of it and filled by whatever lies below.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(length(max = MAX_SOLIDS))]
    pub cuts: Option<Vec<Cut>>,
    /// Whether it lines a drilled hole, as a finger insert or a thumb sleeve:
    /// it is weighed like any piece, but is no core under the cover. Not where
    /// it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub insert: Option<bool>,
}

/// A flow channel, a scallop: taken out of its piece, filled by what lies below.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct Cut {
    /// What it is called.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub name: Option<String>,
    /// Its shape about its own origin.
    pub shape: Shape,
    /// Where the shape's origin goes in the piece's frame.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub at_in: Option<[f64; 3]>,
    /// Turns about the x, then y, then z axis of the piece's frame.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub turn_deg: Option<[f64; 3]>,
}

/// A flat-bottomed cylinder drilled from the surface.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct Hole {
    /// What it is called.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub name: Option<String>,
    /// Direction from the ball's centre to the entry point; any length but 0.
    pub entry: [f64; 3],
    /// Direction of drilling, into the ball; straight towards the centre where
    /// it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub axis: Option<[f64; 3]>,
    /// Diameter, above 0.
    #[schemars(extend("exclusiveMinimum" = 0))]
    pub diameter_in: f64,
    /// Depth of the flat bottom along the axis from the entry point, above 0.
    #[schemars(extend("exclusiveMinimum" = 0))]
    pub depth_in: f64,
    /// Diameter of the drill where an insert lines the hole, `diameter_in` or
    /// more; as wide as the hole where it is left out. Not weighed: the insert
    /// is a piece of its own.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(extend("exclusiveMinimum" = 0))]
    pub drilled_diameter_in: Option<f64>,
}

impl BallFile {
    /// Reads a ball file from JSON text in UTF-8.
    ///
    /// # Errors
    /// The first mistake in the file, with its place. Whether the pieces lie
    /// inside the ball is checked by [`BallFile::build`].
    pub fn read(json: &[u8]) -> Result<Self, Problem> {
        Self::read_node(&Node::root(&Tree::parse(json)?))
    }

    pub(crate) fn read_node(node: &Node<'_>) -> Result<Self, Problem> {
        let format = node.key("format")?.choice(&[("pithball.ball/1", BallVersion::V1)])?;
        let ball = node.object(&["format", "name", "note", "diameter_in", "cover", "pieces", "holes"])?;
        let file = Self {
            format,
            name: ball.get("name")?.text()?,
            note: ball.find_text("note")?,
            diameter_in: ball.get_number("diameter_in", &limits::DIAMETER_IN)?,
            cover: Cover::read(&ball.get("cover")?)?,
            pieces: read_all(&ball.get("pieces")?, Piece::read)?,
            holes: find_all(&ball, "holes", Hole::read)?,
        };
        file.check_count(&ball)?;
        Ok(file)
    }

    fn check_count(&self, ball: &Object<'_>) -> Result<(), Problem> {
        let cuts = |piece: &Piece| piece.cuts.as_ref().map_or(0, Vec::len);
        let in_pieces: usize = self.pieces.iter().map(|piece| 1 + cuts(piece)).sum();
        let total = in_pieces + self.holes.as_ref().map_or(0, Vec::len);
        if total <= MAX_SOLIDS {
            return Ok(());
        }
        let key = if in_pieces > MAX_SOLIDS { "pieces" } else { "holes" };
        Err(ball
            .get(key)?
            .problem_found(so_many_parts(total), most_parts())
            .saying(phrase!("too-many-parts", "The ball has too many parts.")))
    }

    /// The ball as the drill leaves it, before inserts go in: what lines a hole is
    /// no core, and the hole as wide as the drill.
    pub fn before_inserts(&self) -> Self {
        let mut file = self.clone();
        file.pieces.retain(|piece| !piece.is_insert());
        for hole in file.holes.iter_mut().flatten() {
            hole.diameter_in = hole.drilled_diameter_in.take().unwrap_or(hole.diameter_in);
        }
        file
    }

    /// What the cover is called.
    pub fn cover_name(&self) -> &str {
        self.cover.name.as_deref().unwrap_or("cover")
    }
}

fn read_all<T>(node: &Node<'_>, read: impl Fn(&Node<'_>) -> Result<T, Problem>) -> Result<Vec<T>, Problem> {
    node.items()?.map(|item| read(&item)).collect()
}

fn find_all<T>(
    object: &Object<'_>,
    key: &'static str,
    read: impl Fn(&Node<'_>) -> Result<T, Problem>,
) -> Result<Option<Vec<T>>, Problem> {
    object.find(key).map(|node| read_all(&node, read)).transpose()
}

impl Cover {
    pub(crate) fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let cover = node.object(&["name", "material", "density_g_cc", "family", "finish"])?;
        Ok(Self {
            name: cover.find_text("name")?,
            material: cover.find_text("material")?,
            density_g_cc: cover.get_number("density_g_cc", &limits::DENSITY_G_CC)?,
            family: cover.find("family").map(|node| node.choice(&FAMILIES)).transpose()?,
            finish: cover.find("finish").map(|node| Finish::read(&node)).transpose()?,
        })
    }

    /// What friction depends on.
    pub(crate) fn surface(&self) -> cover::Cover {
        cover::Cover {
            family: self.family.map(|family| match family {
                Family::Polyester => cover::Family::Polyester,
                Family::Urethane => cover::Family::Urethane,
                Family::Reactive => cover::Family::Reactive,
            }),
            finish: self
                .finish
                .map(|finish| cover::Finish { grit: finish.grit, polished: finish.polished.unwrap_or(false) }),
        }
    }
}

const FAMILIES: [(&str, Family); 3] =
    [("polyester", Family::Polyester), ("urethane", Family::Urethane), ("reactive", Family::Reactive)];

impl Finish {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let finish = node.object(&["grit", "polished"])?;
        Ok(Self {
            grit: finish.get_number("grit", &limits::GRIT)?,
            polished: finish.find("polished").map(|node| node.flag()).transpose()?,
        })
    }
}

impl Piece {
    /// Whether it lines a hole.
    pub fn is_insert(&self) -> bool {
        self.insert == Some(true)
    }

    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let piece =
            node.object(&["name", "material", "density_g_cc", "shape", "at_in", "turn_deg", "cuts", "insert"])?;
        Ok(Self {
            name: piece.get("name")?.text()?,
            material: piece.find_text("material")?,
            density_g_cc: piece.get_number("density_g_cc", &limits::DENSITY_G_CC)?,
            shape: Shape::read(&piece.get("shape")?)?,
            at_in: piece.find_numbers("at_in", &limits::ANY)?,
            turn_deg: piece.find_numbers("turn_deg", &limits::ANY)?,
            cuts: find_all(&piece, "cuts", Cut::read)?,
            insert: piece.find("insert").map(|node| node.flag()).transpose()?,
        })
    }
}

impl Cut {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let cut = node.object(&["name", "shape", "at_in", "turn_deg"])?;
        Ok(Self {
            name: cut.find_text("name")?,
            shape: Shape::read(&cut.get("shape")?)?,
            at_in: cut.find_numbers("at_in", &limits::ANY)?,
            turn_deg: cut.find_numbers("turn_deg", &limits::ANY)?,
        })
    }
}

impl Hole {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let hole = node.object(&["name", "entry", "axis", "diameter_in", "depth_in", "drilled_diameter_in"])?;
        let entry = read_direction(&hole.get("entry")?)?;
        let axis = match hole.find("axis") {
            Some(node) => {
                let axis = read_direction(&node)?;
                if !points_inward(entry, axis) {
                    return Err(node
                        .problem_found(format!("{axis:?}").into(), direction_in())
                        .saying(axis_points_out()));
                }
                Some(axis)
            }
            None => None,
        };
        let diameter_in = hole.get_number("diameter_in", &limits::SIZE_IN)?;
        let depth_in = hole.get_number("depth_in", &limits::SIZE_IN)?;
        let drilled = |node: Node<'_>| {
            let drilled_in = node.number(&limits::SIZE_IN)?;
            if drilled_in >= diameter_in {
                return Ok(drilled_in);
            }
            let accepted = phrase!("hole-or-more", "{least}, the hole's diameter_in, or more", least = diameter_in);
            Err(node
                .problem_found(drilled_in.into(), accepted)
                .saying(phrase!("drill-narrower", "The drill is narrower than the hole.")))
        };
        let drilled_diameter_in = hole.find("drilled_diameter_in").map(drilled).transpose()?;
        Ok(Self { name: hole.find_text("name")?, entry, axis, diameter_in, depth_in, drilled_diameter_in })
    }
}

impl Hole {
    /// Direction of drilling: straight towards the centre where none is given.
    pub fn runs_along(&self) -> [f64; 3] {
        self.axis.unwrap_or_else(|| self.entry.map(|part| -part))
    }
}

fn read_direction(node: &Node<'_>) -> Result<[f64; 3], Problem> {
    let direction = node.numbers(&limits::ANY)?;
    if direction == [0.0; 3] {
        return Err(node
            .problem_found("[0, 0, 0]".into(), phrase!("any-direction", "a direction of any length but 0"))
            .saying(phrase!("direction-no-length", "A direction needs a length above 0.")));
    }
    Ok(direction)
}

/// Compared after each is scaled by its largest entry, so that no product
/// leaves the range of numbers.
fn points_inward(entry: [f64; 3], axis: [f64; 3]) -> bool {
    let scaled = |v: [f64; 3]| {
        let largest = v.iter().fold(0.0_f64, |m, x| m.max(x.abs()));
        v.map(|x| x / largest)
    };
    let (entry, axis) = (scaled(entry), scaled(axis));
    entry.iter().zip(axis).map(|(e, a)| e * a).sum::<f64>() < 0.0
}
