//! Mixtures of two shots, property by property.

use nalgebra::{Matrix3, Vector3};

use super::Thrown;
use crate::roll::{Friction, RigidBall, SameHand, Shot, release_inertia_kg_m2};
use crate::weigh::principal_moments;

/// What two shots can differ in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Property {
    /// Low RG.
    Rg,
    /// High minus low RG.
    Differential,
    /// High minus middle RG.
    IntermediateDifferential,
    /// Mass, RGs kept.
    Weight,
    /// Radius, mass and RGs kept.
    Size,
    /// Where the centre of gravity lies.
    CentreOfGravity,
    /// How the core's axes lie in the ball.
    CoreAxes,
    /// Coverstock and finish, through friction.
    Cover,
    /// How the ball sits in the hand.
    Layout,
    /// Hand, speed, spin, axis, launch angle and board.
    Release,
    /// Oil, or friction by zone.
    Lane,
}

const ALL: [Property; 11] = [
    Property::Rg,
    Property::Differential,
    Property::IntermediateDifferential,
    Property::Weight,
    Property::Size,
    Property::CentreOfGravity,
    Property::CoreAxes,
    Property::Cover,
    Property::Layout,
    Property::Release,
    Property::Lane,
];

/// Those that a ball's tensor is made of.
const OF_TENSOR: [Property; 5] =
    [Property::Rg, Property::Differential, Property::IntermediateDifferential, Property::Weight, Property::CoreAxes];

/// Friction of each lane under the other ball's cover. Where friction is given
/// outright, both are the lane's own.
#[derive(Clone, Copy, Debug)]
pub struct Lanes<'a> {
    /// A's lane under B's cover.
    pub a_under_b: &'a Friction,
    /// B's lane under A's cover.
    pub b_under_a: &'a Friction,
}

#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Side {
    A,
    B,
}

/// What a tensor says apart from the mass.
#[derive(Clone, Copy, PartialEq)]
struct Shape {
    low_rg_m: f64,
    differential_m: f64,
    intermediate_m: f64,
    axes: [Vector3<f64>; 3],
}

impl Shape {
    fn of(ball: &RigidBall) -> Self {
        let (moments, axes) = principal_moments(&ball.inertia_kg_m2);
        let [low, middle, high] = moments.map(|moment| (moment / ball.mass_kg).sqrt());
        Self { low_rg_m: low, differential_m: high - low, intermediate_m: high - middle, axes }
    }

    fn tensor(&self, mass_kg: f64) -> Matrix3<f64> {
        let high = self.low_rg_m + self.differential_m;
        let axes = Matrix3::from_columns(&self.axes);
        let moments = Vector3::new(self.low_rg_m, high - self.intermediate_m, high).map(|rg| mass_kg * rg * rg);
        axes * Matrix3::from_diagonal(&moments) * axes.transpose()
    }
}

pub(super) struct Mixtures<'a> {
    sides: [&'a Thrown; 2],
    shapes: [Shape; 2],
    lanes: Lanes<'a>,
    hand: SameHand,
    /// A's moment about its release axis: what rates of spin are meant for.
    reference_kg_m2: f64,
    pub(super) differing: Vec<Property>,
}

impl<'a> Mixtures<'a> {
    pub(super) fn new(a: &'a Thrown, b: &'a Thrown, lanes: Lanes<'a>, hand: SameHand) -> Self {
        let shapes = [Shape::of(&a.ball), Shape::of(&b.ball)];
        let reference_kg_m2 = release_inertia_kg_m2(&a.ball, &a.shot);
        let mut mixtures = Self { sides: [a, b], shapes, lanes, hand, reference_kg_m2, differing: Vec::new() };
        mixtures.differing = ALL.into_iter().filter(|property| mixtures.differ(*property)).collect();
        mixtures
    }

    /// The mixture that has every property from B.
    pub(super) fn every(&self) -> usize {
        (1 << self.differing.len()) - 1
    }

    fn differ(&self, property: Property) -> bool {
        let ([a, b], [p, q]) = (self.sides, &self.shapes);
        let rest = |shape: &Shape| (shape.low_rg_m, shape.differential_m, shape.intermediate_m);
        match property {
            Property::Rg => p.low_rg_m != q.low_rg_m,
            Property::Differential => p.differential_m != q.differential_m,
            Property::IntermediateDifferential => p.intermediate_m != q.intermediate_m,
            Property::Weight => a.ball.mass_kg != b.ball.mass_kg,
            Property::Size => a.ball.radius_m != b.ball.radius_m,
            Property::CentreOfGravity => a.ball.cg_m != b.ball.cg_m,
            // Two tensors with nothing else between them differ in their axes, be it by rounding.
            Property::CoreAxes => {
                p.axes != q.axes
                    || a.ball.inertia_kg_m2 != b.ball.inertia_kg_m2
                        && a.ball.mass_kg == b.ball.mass_kg
                        && rest(p) == rest(q)
            }
            Property::Cover => a.shot.lane != *self.lanes.a_under_b || b.shot.lane != *self.lanes.b_under_a,
            Property::Layout => a.shot.layout != b.shot.layout,
            Property::Release => a.shot.hand != b.shot.hand || a.shot.release != b.shot.release,
            Property::Lane => a.shot.lane != *self.lanes.b_under_a || b.shot.lane != *self.lanes.a_under_b,
        }
    }

    /// The mixture whose properties come from B where `mask` has their bit.
    pub(super) fn made(&self, mask: usize) -> Thrown {
        let side = |property: Property| property.side(&self.differing, mask);
        let thrown = |property| match side(property) {
            Side::A => self.sides[0],
            Side::B => self.sides[1],
        };
        let ball = RigidBall {
            mass_kg: thrown(Property::Weight).ball.mass_kg,
            radius_m: thrown(Property::Size).ball.radius_m,
            cg_m: thrown(Property::CentreOfGravity).ball.cg_m,
            inertia_kg_m2: self.tensor(&side),
        };
        let lane = match (side(Property::Lane), side(Property::Cover)) {
            (Side::A, Side::A) => &self.sides[0].shot.lane,
            (Side::A, Side::B) => self.lanes.a_under_b,
            (Side::B, Side::A) => self.lanes.b_under_a,
            (Side::B, Side::B) => &self.sides[1].shot.lane,
        };
        let release = &thrown(Property::Release).shot;
        let layout = thrown(Property::Layout).shot.layout;
        let mut shot = Shot { hand: release.hand, release: release.release, layout, lane: lane.clone() };
        if mask != 0 {
            shot.release.spin_rad_s = self.hand.spin_rad_s(&ball, &shot, self.reference_kg_m2);
        }
        Thrown { ball, shot }
    }

    /// A's or B's own tensor, to the last bit, where all that makes it is from
    /// one of them.
    fn tensor(&self, side: &dyn Fn(Property) -> Side) -> Matrix3<f64> {
        let differing = OF_TENSOR.into_iter().filter(|property| self.differing.contains(property));
        let mut sides = differing.map(side);
        let first = sides.next().unwrap_or(Side::A);
        if sides.all(|other| other == first) {
            return match first {
                Side::A => self.sides[0].ball.inertia_kg_m2,
                Side::B => self.sides[1].ball.inertia_kg_m2,
            };
        }
        let at = |property| match side(property) {
            Side::A => 0,
            Side::B => 1,
        };
        let shape = Shape {
            low_rg_m: self.shapes[at(Property::Rg)].low_rg_m,
            differential_m: self.shapes[at(Property::Differential)].differential_m,
            intermediate_m: self.shapes[at(Property::IntermediateDifferential)].intermediate_m,
            axes: self.shapes[at(Property::CoreAxes)].axes,
        };
        shape.tensor(self.sides[at(Property::Weight)].ball.mass_kg)
    }
}
