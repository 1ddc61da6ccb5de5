//! The shot file, `NAME.shot.json`.

use schemars::JsonSchema;
use serde::Serialize;

use crate::ball::BallFile;
use crate::drilling::Drilling;
use crate::lane::Lane;
use crate::limits;
use crate::node::Node;
use crate::problem::Problem;
use crate::tree::Tree;
use crate::{Phrase, phrase};

/// Which edition of the shot file this is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
pub enum ShotVersion {
    /// The first.
    #[serde(rename = "pithball.shot/1")]
    V1,
}

/// A ball, how it is thrown, and on what.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct ShotFile {
    /// `pithball.shot/1`.
    pub format: ShotVersion,
    /// What the shot is called.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub name: Option<String>,
    /// A line about it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub note: Option<String>,
    /// The ball thrown.
    pub ball: BallRef,
    /// How it is thrown, and on what.
    #[serde(flatten)]
    pub throw: Throw,
}

/// The ball of a shot: a path beside the shot file, or the ball itself.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[serde(untagged)]
pub enum BallRef {
    /// A path from the folder of the shot file to a ball file.
    Path(#[schemars(length(min = 1))] String),
    /// The ball itself.
    Object(Box<BallFile>),
}

/// A shot without its ball.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
pub struct Throw {
    /// The bowler's hand.
    pub hand: Hand,
    /// The ball's motion at the foul line.
    pub release: Release,
    /// How the ball sits in the hand.
    pub layout: Layout,
    /// The grip drilled into the ball before it is weighed for rolling; left out
    /// for a ball that is thrown as its file gives it.
    #[serde(skip_serializing_if = "Option::is_none")]
    pub drilling: Option<Drilling>,
    /// What it rolls on.
    pub lane: Lane,
}

/// The bowler's hand.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, JsonSchema)]
#[serde(rename_all = "lowercase")]
pub enum Hand {
    /// Right-handed.
    Right,
    /// Left-handed: the mirror image.
    Left,
}

/// The ball's motion at the foul line, the ball already on the lane.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct Release {
    /// Speed of the ball's centre, above 0 and up to 40.
    #[schemars(extend("exclusiveMinimum" = 0), range(max = limits::SPEED_MPH.max))]
    pub speed_mph: f64,
    /// Turns a minute, 0 to 1,000.
    #[schemars(range(min = limits::REVS_RPM.min, max = limits::REVS_RPM.max))]
    pub revs_rpm: f64,
    /// Angle of the spin axis in plan, −180 to 180.
    #[schemars(range(min = limits::AXIS_ROTATION_DEG.min, max = limits::AXIS_ROTATION_DEG.max))]
    pub axis_rotation_deg: f64,
    /// Angle of the spin axis above horizontal, −90 to 90.
    #[schemars(range(min = limits::AXIS_TILT_DEG.min, max = limits::AXIS_TILT_DEG.max))]
    pub axis_tilt_deg: f64,
    /// Angle of the velocity from straight ahead, positive to the right, −45 to 45.
    #[schemars(range(min = limits::LAUNCH_ANGLE_DEG.min, max = limits::LAUNCH_ANGLE_DEG.max))]
    pub launch_angle_deg: f64,
    /// Board under the ball's centre, counted from the bowler's own side, 0.5 to 39.5.
    #[schemars(range(min = limits::BOARD.min, max = limits::BOARD.max))]
    pub board: f64,
}

/// How the ball sits in the hand.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct Layout {
    /// Arc on the surface from the pin to the positive axis point, 0 to 20.
    #[schemars(range(min = limits::PIN_TO_PAP_IN.min, max = limits::PIN_TO_PAP_IN.max))]
    pub pin_to_pap_in: f64,
    /// Angle at the pin between the arc to the positive axis point and the arc
    /// to the mass bias side (+x of the ball), −360 to 360.
    #[schemars(range(min = limits::TURN_DEG.min, max = limits::TURN_DEG.max))]
    pub drilling_angle_deg: f64,
    /// Turn of the ball about its axis at release; at 0 the pin is as high as
    /// the axis allows; −360 to 360.
    #[schemars(range(min = limits::TURN_DEG.min, max = limits::TURN_DEG.max))]
    pub start_turn_deg: f64,
}

const KEYS: [&str; 9] = ["format", "name", "note", "ball", "hand", "release", "layout", "drilling", "lane"];

impl ShotFile {
    /// Reads a shot file from JSON text in UTF-8.
    ///
    /// # Errors
    /// The first mistake in the file, with its place; a mistake in a ball that
    /// stands in the file itself has a place under `ball`.
    pub fn read(json: &[u8]) -> Result<Self, Problem> {
        Self::read_node(&Node::root(&Tree::parse(json)?))
    }

    pub(crate) fn read_node(node: &Node<'_>) -> Result<Self, Problem> {
        let format = read_version(node)?;
        let shot = node.object(&KEYS)?;
        Ok(Self {
            format,
            name: shot.find_text("name")?,
            note: shot.find_text("note")?,
            ball: BallRef::read(&shot.get("ball")?)?,
            throw: Throw::read_node(node)?,
        })
    }
}

fn path_or_ball() -> Phrase {
    phrase!("path-or-ball", "a path beside the shot file, or a ball object")
}

fn read_version(node: &Node<'_>) -> Result<ShotVersion, Problem> {
    node.key("format")?.choice(&[("pithball.shot/1", ShotVersion::V1)])
}

impl BallRef {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        if node.is_text() {
            let path = node.text()?;
            if path.is_empty() {
                return Err(node.problem(path_or_ball()));
            }
            return Ok(Self::Path(path));
        }
        if !node.is_object() {
            return Err(node.problem(path_or_ball()));
        }
        Ok(Self::Object(Box::new(BallFile::read_node(node)?)))
    }
}

impl Throw {
    /// Reads a shot file from JSON text and takes no notice of its ball, which
    /// may be missing.
    ///
    /// # Errors
    /// The first mistake in the rest of the file, with its place.
    pub fn read(json: &[u8]) -> Result<Self, Problem> {
        let tree = Tree::parse(json)?;
        let node = Node::root(&tree);
        read_version(&node)?;
        Self::read_node(&node)
    }

    fn read_node(node: &Node<'_>) -> Result<Self, Problem> {
        let shot = node.object(&KEYS)?;
        Ok(Self {
            hand: Hand::read(&shot.get("hand")?)?,
            release: Release::read(&shot.get("release")?)?,
            layout: Layout::read(&shot.get("layout")?)?,
            drilling: shot.find("drilling").map(|node| Drilling::read(&node)).transpose()?,
            lane: Lane::read(&shot.get("lane")?)?,
        })
    }
}

impl Hand {
    pub(crate) fn read(node: &Node<'_>) -> Result<Self, Problem> {
        node.choice(&[("right", Self::Right), ("left", Self::Left)])
    }
}

impl Release {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let release =
            node.object(&["speed_mph", "revs_rpm", "axis_rotation_deg", "axis_tilt_deg", "launch_angle_deg", "board"])?;
        Ok(Self {
            speed_mph: release.get_number("speed_mph", &limits::SPEED_MPH)?,
            revs_rpm: release.get_number("revs_rpm", &limits::REVS_RPM)?,
            axis_rotation_deg: release.get_number("axis_rotation_deg", &limits::AXIS_ROTATION_DEG)?,
            axis_tilt_deg: release.get_number("axis_tilt_deg", &limits::AXIS_TILT_DEG)?,
            launch_angle_deg: release.get_number("launch_angle_deg", &limits::LAUNCH_ANGLE_DEG)?,
            board: release.get_number("board", &limits::BOARD)?,
        })
    }
}

impl Layout {
    fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let layout = node.object(&["pin_to_pap_in", "drilling_angle_deg", "start_turn_deg"])?;
        Ok(Self {
            pin_to_pap_in: layout.get_number("pin_to_pap_in", &limits::PIN_TO_PAP_IN)?,
            drilling_angle_deg: layout.get_number("drilling_angle_deg", &limits::TURN_DEG)?,
            start_turn_deg: layout.get_number("start_turn_deg", &limits::TURN_DEG)?,
        })
    }
}
