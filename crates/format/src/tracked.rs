//! The track of a shot, as `roll` prints it.

use nalgebra::Vector3;
use physics::roll::Trace;
use physics::track::{CLOSE_M, Ring, Track, Width, track};
use physics::units::M_PER_IN;
use serde::Serialize;

use crate::ball::BallFile;

/// The rings that the lane leaves on the ball, and the holes they pass.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct TrackDoc {
    /// The ring at release, then one after each whole turn.
    pub rings: Vec<RingDoc>,
    /// Where the band of rings is widest; `null` for fewer than two rings.
    pub widest: Option<WidthDoc>,
    /// Where the band is narrowest on either side of the ball, the bow-tie.
    pub bow_ties: Option<[WidthDoc; 2]>,
    /// The track beside every hole.
    pub holes: Vec<PassDoc>,
}

/// A ring: the points of the ball's surface as far along `axis` as `height_in`.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct RingDoc {
    /// When its turn begins.
    pub t_s: f64,
    /// Unit vector along the spin in ball axes.
    pub axis: [f64; 3],
    /// From the ball's centre along the axis.
    pub height_in: f64,
}

/// The width of the band of rings at one place.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct WidthDoc {
    /// The middle of the band, a unit vector in ball axes.
    pub at: [f64; 3],
    /// From the first ring to the rings furthest from it on either side, along the surface.
    pub width_in: f64,
}

/// How near the track comes to a hole.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct PassDoc {
    /// What the hole is called.
    pub hole: String,
    /// From the track to the hole's edge along the surface where that is least;
    /// below 0: over the hole.
    pub clearance_in: f64,
    /// The turn in which that is, counted from 1.
    pub turn: u32,
    /// Every turn in which the track goes over the hole.
    pub over_turns: Vec<u32>,
    /// Whether the track passes by less than 0.125 in.
    pub close: bool,
}

impl TrackDoc {
    /// Measures the track of a shot of the ball in this file.
    pub fn new(file: &BallFile, trace: &Trace) -> Self {
        let recipe = file.recipe();
        let radius_m = 0.5 * recipe.diameter_m;
        let Track { rings, widest, bow_ties, passes } = track(trace, radius_m, &recipe.holes);
        let ring = |ring: &Ring| RingDoc {
            t_s: ring.time_s,
            axis: array(ring.axis),
            height_in: ring.height * radius_m / M_PER_IN,
        };
        let width = |width: Width| WidthDoc { at: array(width.at), width_in: width.width_m / M_PER_IN };
        Self {
            rings: rings.iter().map(ring).collect(),
            widest: widest.map(width),
            bow_ties: bow_ties.map(|ties| ties.map(width)),
            holes: passes
                .into_iter()
                .map(|pass| PassDoc {
                    hole: file.hole_name(pass.hole),
                    clearance_in: pass.clearance_m / M_PER_IN,
                    turn: pass.turn,
                    close: pass.clearance_m < CLOSE_M,
                    over_turns: pass.over,
                })
                .collect(),
        }
    }
}

fn array(vector: Vector3<f64>) -> [f64; 3] {
    vector.into()
}
