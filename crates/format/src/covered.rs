//! What `cover` prints: how much cover a ball has, and where.

use physics::ball::Ball;
use physics::cover::{Beside, Covered, DIRECTIONS, USUAL_M, cover};
use physics::drill::Digit;
use physics::units::M_PER_IN;
use physics::weigh::weigh;
use serde::Serialize;

use crate::ball::BallFile;
use crate::laid::{digit_name, digit_words};
use crate::problem::Problem;
use crate::{Phrase, phrase};

/// A ball's cover.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct CoverDoc {
    /// Where the cover is thinnest; null in a ball without pieces.
    pub thinnest: Option<ThinnestDoc>,
    /// Mean thickness along the radius, over the surface that no hole takes, to
    /// the first piece; where there is none below, down to the centre.
    pub mean_in: f64,
    /// Share of that surface with less than `usual_in[0]`.
    pub under_usual_share: f64,
    /// Share of that surface with less than `usual_in[1]`: what stands on a
    /// core close beneath.
    pub under_most_share: f64,
    /// Share within 0.01 in of the thinnest place.
    pub as_thin_share: f64,
    /// How many directions, spread evenly, the mean and the shares are taken over.
    pub directions: usize,
    /// What covers of common balls measure (common practice, no source).
    pub usual_in: [f64; 2],
    /// The thinnest place beside that: `thinner`, `usual`, `thicker` or `no_core`.
    pub beside_usual: &'static str,
    /// Share of the ball's volume that pieces fill, holes and inserts left out.
    pub core_share: f64,
    /// Density of the cover.
    pub cover_g_cc: f64,
    /// Every hole beside the core.
    pub holes: Vec<HoleWallDoc>,
    /// What stands between every two holes.
    pub webs: Vec<WebDoc>,
}

/// The thinnest place.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct ThinnestDoc {
    /// Thickness there, along the radius and at all.
    pub thickness_in: f64,
    /// The least thickness is no more than this below it.
    pub error_in: f64,
    /// Unit vector from the centre to the place; one of them where there are many.
    pub direction: [f64; 3],
    /// The piece under it, 1 the first.
    pub part: usize,
    /// Its name.
    pub piece: String,
    /// Its density.
    pub piece_g_cc: f64,
}

/// A hole beside the core.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct HoleWallDoc {
    /// What it is called.
    pub name: String,
    /// Depth down its axis at which the drill meets the first piece; null where
    /// it stays in the cover.
    pub core_from_in: Option<f64>,
    /// From its wall or bottom to the nearest piece, 0 where it opens into one;
    /// null in a ball without pieces.
    pub to_core_in: Option<f64>,
    /// The true distance is no more than this below it.
    pub error_in: Option<f64>,
}

/// What stands between two holes.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct WebDoc {
    /// What they are called.
    pub holes: [String; 2],
    /// Least distance between them; 0 where they meet.
    pub least_in: f64,
    /// The true distance is no more than this below it.
    pub error_in: f64,
    /// How far below the surface that is.
    pub depth_in: f64,
}

impl CoverDoc {
    /// Measures the cover of the ball of `file`; `bare` is it built
    /// [before inserts](BallFile::before_inserts): what lines a hole is no core.
    pub fn new(file: &BallFile, bare: &Ball) -> Self {
        let (covered, weighed) = (cover(bare), weigh(bare));
        let inches = |metres: f64| metres / M_PER_IN;
        let volumes_m3 = weighed.shares.iter().map(|share| share.volume_m3);
        let cover_m3 = weighed.shares.first().map_or(0.0, |share| share.volume_m3);
        let holes = covered.holes.iter().enumerate().map(|(n, hole)| HoleWallDoc {
            name: file.hole_name(n),
            core_from_in: hole.core_from_m.map(inches),
            to_core_in: hole.to_core.map(|gap| inches(gap.least_m)),
            error_in: hole.to_core.map(|gap| inches(gap.error_m)),
        });
        let webs = covered.webs.iter().map(|web| WebDoc {
            holes: web.holes.map(|n| file.hole_name(n)),
            least_in: inches(web.gap.least_m),
            error_in: inches(web.gap.error_m),
            depth_in: inches(web.depth_m),
        });
        Self {
            thinnest: thinnest(file, &covered),
            mean_in: inches(covered.mean_m),
            under_usual_share: covered.under_usual_share,
            under_most_share: covered.under_most_share,
            as_thin_share: covered.as_thin_share,
            directions: DIRECTIONS,
            usual_in: USUAL_M.map(inches),
            beside_usual: match covered.beside_usual() {
                Beside::Thinner => "thinner",
                Beside::Usual => "usual",
                Beside::Thicker => "thicker",
                Beside::NoCore => "no_core",
            },
            core_share: 1.0 - cover_m3 / volumes_m3.sum::<f64>(),
            cover_g_cc: file.cover.density_g_cc,
            holes: holes.collect(),
            webs: webs.collect(),
        }
    }
}

fn thinnest(file: &BallFile, covered: &Covered) -> Option<ThinnestDoc> {
    let thinnest = covered.thinnest.as_ref()?;
    let mut core = file.pieces.iter().enumerate().filter(|(_, piece)| !piece.is_insert());
    let (number, piece) = core.nth(thinnest.piece)?;
    Some(ThinnestDoc {
        thickness_in: thinnest.thickness_m / M_PER_IN,
        error_in: thinnest.error_m / M_PER_IN,
        direction: thinnest.direction.into(),
        part: number + 1,
        piece: piece.name.clone(),
        piece_g_cc: piece.density_g_cc,
    })
}

impl BallFile {
    /// What `cover` prints of this ball.
    ///
    /// # Errors
    /// Where the ball cannot be made.
    pub fn cover(&self) -> Result<CoverDoc, Problem> {
        Ok(CoverDoc::new(self, &self.before_inserts().build()?))
    }

    /// What a hole is called; its number where the file gives it no name.
    pub fn hole_name(&self, hole: usize) -> String {
        let name = self.holes.iter().flatten().nth(hole).and_then(|hole| hole.name.clone());
        name.unwrap_or_else(|| format!("hole {}", hole + 1))
    }

    /// The same where it is said: a finger's hole and a number in words, other names as they are.
    pub fn hole_said(&self, hole: usize) -> Phrase {
        let name = self.holes.iter().flatten().nth(hole).and_then(|hole| hole.name.as_deref());
        let digit =
            [Digit::Middle, Digit::Ring, Digit::Thumb].into_iter().find(|digit| name == Some(digit_name(*digit)));
        match (name, digit) {
            (_, Some(digit)) => digit_words(digit),
            (Some(name), None) => name.into(),
            (None, None) => phrase!("hole-number", "hole {number}", number = hole + 1),
        }
    }
}
