//! Shapes as they are written in a ball file.

use schemars::{JsonSchema, Schema};
use serde::Serialize;
use serde_json::{Value, json};

use crate::build::{profile_points, so_many_points};
use crate::limits;
use crate::node::{Node, Object};
use crate::phrase;
use crate::problem::Problem;
use crate::{MAX_PROFILE_POINTS, MIN_PROFILE_POINTS};

/// A shape centred on its own origin, its axis along z.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[schemars(deny_unknown_fields)]
pub struct Shape {
    /// The shape before its squash.
    #[serde(flatten)]
    pub form: Form,
    /// Scale of the finished shape in its own x and y, 0.05 to 20 each;
    /// `[1, 1]` where it is left out.
    #[serde(skip_serializing_if = "Option::is_none")]
    #[schemars(inner(range(min = limits::SQUASH.min, max = limits::SQUASH.max)))]
    pub squash: Option<[f64; 2]>,
}

/// The kinds of shape.
#[derive(Clone, Debug, PartialEq, Serialize, JsonSchema)]
#[serde(tag = "kind", rename_all = "lowercase")]
pub enum Form {
    /// A ball.
    Sphere {
        /// Diameter, above 0.
        #[schemars(extend("exclusiveMinimum" = 0))]
        diameter_in: f64,
    },
    /// An ellipsoid with its axes along x, y, z.
    Ellipsoid {
        /// Full axes, above 0.
        #[schemars(transform = items_above_zero)]
        size_in: [f64; 3],
    },
    /// A cylinder; a disc, pancake or puck when flat.
    Cylinder {
        /// Diameter, above 0.
        #[schemars(extend("exclusiveMinimum" = 0))]
        diameter_in: f64,
        /// Height along z, above 0.
        #[schemars(extend("exclusiveMinimum" = 0))]
        height_in: f64,
    },
    /// A truncated cone. Either diameter may be 0, not both.
    Frustum {
        /// Diameter at the lower end, 0 or more.
        #[schemars(range(min = 0))]
        bottom_diameter_in: f64,
        /// Diameter at the upper end, 0 or more.
        #[schemars(range(min = 0))]
        top_diameter_in: f64,
        /// Height along z, above 0.
        #[schemars(extend("exclusiveMinimum" = 0))]
        height_in: f64,
    },
    /// A torus about z.
    Ring {
        /// From tube centre to tube centre, above 0.
        #[schemars(extend("exclusiveMinimum" = 0))]
        ring_diameter_in: f64,
        /// Diameter of the tube, above 0.
        #[schemars(extend("exclusiveMinimum" = 0))]
        tube_diameter_in: f64,
    },
    /// A box with its edges along x, y, z.
    Box {
        /// Full edges, above 0.
        #[schemars(transform = items_above_zero)]
        size_in: [f64; 3],
    },
    /// A closed polygon in the half-plane r ≥ 0, revolved about z.
    Lathe {
        /// Points `[r, z]` in order, the last joined to the first; r is 0 or
        /// more; the outline may not cross itself.
        #[schemars(length(min = MIN_PROFILE_POINTS, max = MAX_PROFILE_POINTS))]
        #[schemars(transform = points_off_axis)]
        profile_in: Vec<[f64; 2]>,
    },
}

/// Every number of the list is above 0.
fn items_above_zero(schema: &mut Schema) {
    if let Some(Value::Object(items)) = schema.get_mut("items") {
        items.insert("exclusiveMinimum".to_owned(), json!(0));
    }
}

/// Of every point `[r, z]` in the list, r is 0 or more.
fn points_off_axis(schema: &mut Schema) {
    if let Some(Value::Object(point)) = schema.get_mut("items") {
        let number = json!({ "type": "number", "format": "double" });
        point.insert("prefixItems".to_owned(), json!([{ "type": "number", "format": "double", "minimum": 0 }, number]));
        point.remove("items");
    }
}

#[derive(Clone, Copy)]
enum Kind {
    Sphere,
    Ellipsoid,
    Cylinder,
    Frustum,
    Ring,
    Box,
    Lathe,
}

const KINDS: [(&str, Kind); 7] = [
    ("sphere", Kind::Sphere),
    ("ellipsoid", Kind::Ellipsoid),
    ("cylinder", Kind::Cylinder),
    ("frustum", Kind::Frustum),
    ("ring", Kind::Ring),
    ("box", Kind::Box),
    ("lathe", Kind::Lathe),
];

impl Shape {
    pub(crate) fn read(node: &Node<'_>) -> Result<Self, Problem> {
        let kind = node.key("kind")?.choice(&KINDS)?;
        let size = |object: &Object<'_>, key| object.get_number(key, &limits::SIZE_IN);
        let object;
        let form = match kind {
            Kind::Sphere => {
                object = node.object(&["kind", "diameter_in", "squash"])?;
                Form::Sphere { diameter_in: size(&object, "diameter_in")? }
            }
            Kind::Ellipsoid => {
                object = node.object(&["kind", "size_in", "squash"])?;
                Form::Ellipsoid { size_in: object.get("size_in")?.numbers(&limits::SIZE_IN)? }
            }
            Kind::Cylinder => {
                object = node.object(&["kind", "diameter_in", "height_in", "squash"])?;
                Form::Cylinder { diameter_in: size(&object, "diameter_in")?, height_in: size(&object, "height_in")? }
            }
            Kind::Frustum => {
                object = node.object(&["kind", "bottom_diameter_in", "top_diameter_in", "height_in", "squash"])?;
                read_frustum(node, &object)?
            }
            Kind::Ring => {
                object = node.object(&["kind", "ring_diameter_in", "tube_diameter_in", "squash"])?;
                Form::Ring {
                    ring_diameter_in: size(&object, "ring_diameter_in")?,
                    tube_diameter_in: size(&object, "tube_diameter_in")?,
                }
            }
            Kind::Box => {
                object = node.object(&["kind", "size_in", "squash"])?;
                Form::Box { size_in: object.get("size_in")?.numbers(&limits::SIZE_IN)? }
            }
            Kind::Lathe => {
                object = node.object(&["kind", "profile_in", "squash"])?;
                Form::Lathe { profile_in: read_profile(&object.get("profile_in")?)? }
            }
        };
        Ok(Self { form, squash: object.find_numbers("squash", &limits::SQUASH)? })
    }
}

fn read_frustum(node: &Node<'_>, object: &Object<'_>) -> Result<Form, Problem> {
    let bottom_diameter_in = object.get_number("bottom_diameter_in", &limits::ZERO_OR_MORE)?;
    let top_diameter_in = object.get_number("top_diameter_in", &limits::ZERO_OR_MORE)?;
    if bottom_diameter_in == 0.0 && top_diameter_in == 0.0 {
        return Err(node
            .problem_found(
                phrase!("and", "{one} and {next}", one = "bottom_diameter_in 0", next = "top_diameter_in 0"),
                phrase!("one-diameter-0", "at most one of the two diameters 0"),
            )
            .saying(phrase!("frustum-no-body", "A frustum with both diameters 0 has no body.")));
    }
    Ok(Form::Frustum {
        bottom_diameter_in,
        top_diameter_in,
        height_in: object.get_number("height_in", &limits::SIZE_IN)?,
    })
}

fn read_profile(node: &Node<'_>) -> Result<Vec<[f64; 2]>, Problem> {
    let points = node.items()?;
    let count = points.len();
    if !(MIN_PROFILE_POINTS..=MAX_PROFILE_POINTS).contains(&count) {
        return Err(node.problem_found(so_many_points(count), profile_points()));
    }
    points
        .map(|point| {
            let [r, z] = point.numbers(&limits::ANY)?;
            if r < 0.0 {
                let mut coordinates = point.items()?;
                let problem = coordinates.next().map_or_else(
                    || point.problem(limits::ZERO_OR_MORE.words()),
                    |r| r.problem(limits::ZERO_OR_MORE.words()),
                );
                return Err(problem.saying(phrase!(
                    "profile-outside",
                    "A profile lies at or outside its axis: r must be 0 or more."
                )));
            }
            Ok([r, z])
        })
        .collect()
}
