//! A place for a region's name.

use super::Strip;

/// The region's height in steps that are tried.
const STEPS: f64 = 64.0;

/// The middle of the rung that lies farthest from any outline.
pub(super) fn place(strips: &[Strip], loops: &[Vec<[f64; 2]>]) -> [f64; 2] {
    let (low_m, high_m) = strips
        .iter()
        .flat_map(|strip| &strip.rungs)
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), r| (low.min(r.v_m), high.max(r.v_m)));
    let mut rungs: Vec<(f64, [f64; 2])> = Vec::new();
    for strip in strips {
        let mut last_m = f64::NEG_INFINITY;
        for r in &strip.rungs {
            if r.v_m - last_m > (high_m - low_m) / STEPS {
                rungs.push(((r.right_m - r.left_m) / 2.0, [f64::midpoint(r.left_m, r.right_m), r.v_m]));
                last_m = r.v_m;
            }
        }
    }
    rungs.sort_by(|a, b| b.0.total_cmp(&a.0));
    let mut best = (0.0, rungs.first().map_or([0.0, 0.0], |r| r.1));
    for (half_m, middle) in rungs {
        if half_m <= best.0 {
            break;
        }
        let room_m = room_m(middle, loops, best.0);
        if room_m > best.0 {
            best = (room_m, middle);
        }
    }
    best.1
}

/// Distance to the nearest outline point or edge; stops early below `enough_m`.
fn room_m(at: [f64; 2], loops: &[Vec<[f64; 2]>], enough_m: f64) -> f64 {
    let mut nearest = f64::INFINITY;
    for path in loops {
        let Some(mut last) = path.last().copied() else { continue };
        for &next in path {
            let (du, dv) = (next[0] - last[0], next[1] - last[1]);
            let (pu, pv) = (at[0] - last[0], at[1] - last[1]);
            let along = (pu * du + pv * dv) / (du * du + dv * dv);
            let along = if along.is_finite() { along.clamp(0.0, 1.0) } else { 0.0 };
            nearest = nearest.min((pu - along * du).hypot(pv - along * dv));
            if nearest <= enough_m {
                return nearest;
            }
            last = next;
        }
    }
    nearest
}
