//! A flat cut as the page draws it.

use std::fmt::Write;

use nalgebra::Vector3;
use physics::ball::Part;
use physics::cover::{Poured, on_section};
use physics::section::{Region, Section};
use physics::units::M_PER_IN;
use serde::Serialize;

use crate::ball::BallFile;

/// A flat cut. Plane coordinates in inches, `u` to the right and `v` up.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct SectionDoc {
    /// Unit vector square to the plane.
    pub normal: [f64; 3],
    /// Distance of the plane from the ball's centre along `normal`.
    pub depth_in: f64,
    /// Unit vector to the right.
    pub u: [f64; 3],
    /// Unit vector up.
    pub v: [f64; 3],
    /// What shows, the cover first.
    pub regions: Vec<RegionDoc>,
    /// The narrowest stretch of cover, straight out from the middle of the cut,
    /// where no hole opens; null where no core shows.
    pub narrowest: Option<NarrowestDoc>,
}

/// A stretch of cover on a cut.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct NarrowestDoc {
    /// Its length: the cover's thickness where the cut runs through the ball's
    /// centre, more than that elsewhere.
    pub thickness_in: f64,
    /// Its inner end, `[u, v]`.
    pub core_in: [f64; 2],
    /// Its outer end, `[u, v]`.
    pub surface_in: [f64; 2],
}

/// Where one part shows.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct RegionDoc {
    /// 0 is the cover, n the n-th piece.
    pub part: usize,
    /// SVG path data, y down (that is −v), closed loops, fill rule evenodd.
    pub path: String,
    /// Area.
    pub area_in2: f64,
    /// A point well inside the region, `[u, v]`.
    pub label_at: [f64; 2],
}

/// The number the page gives a part: 0 is the cover, n the n-th piece.
pub fn part_number(part: Part) -> usize {
    match part {
        Part::Cover => 0,
        Part::Piece(piece) => piece + 1,
    }
}

impl SectionDoc {
    /// A cut of the ball of `file` as a drawing; `poured` is the ball before inserts.
    pub fn new(file: &BallFile, poured: &Poured, section: &Section) -> Self {
        let inches = |metres: f64| metres / M_PER_IN;
        let core = |piece: usize| file.pieces.get(piece).is_some_and(|piece| !piece.is_insert());
        let narrowest = on_section(poured, section, core).map(|found| NarrowestDoc {
            thickness_in: inches(found.thickness_m),
            core_in: found.core_m.map(inches),
            surface_in: found.surface_m.map(inches),
        });
        let array = |vector: Vector3<f64>| -> [f64; 3] { vector.into() };
        let plane = &section.plane;
        Self {
            normal: array(plane.normal),
            depth_in: plane.depth_m / M_PER_IN,
            u: array(plane.u),
            v: array(plane.v),
            regions: section.regions.iter().map(RegionDoc::from).collect(),
            narrowest,
        }
    }
}

impl From<&Region> for RegionDoc {
    fn from(region: &Region) -> Self {
        Self {
            part: part_number(region.part),
            path: path(&region.loops),
            area_in2: region.area_m2 / (M_PER_IN * M_PER_IN),
            label_at: region.label_at_m.map(|m| m / M_PER_IN),
        }
    }
}

/// To 0.0001 in, below what a printer can show.
fn path(loops: &[Vec<[f64; 2]>]) -> String {
    let mut path = String::new();
    for points in loops {
        for (index, [u_m, v_m]) in points.iter().enumerate() {
            let step = if index == 0 { 'M' } else { 'L' };
            let (x, y) = (u_m / M_PER_IN, -v_m / M_PER_IN);
            // Writing to a String cannot fail.
            let _ = write!(path, "{step}{x:.4} {y:.4}");
        }
        path.push('Z');
    }
    path
}
