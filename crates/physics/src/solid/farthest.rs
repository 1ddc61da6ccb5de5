//! The points of a solid farthest from its frame's origin: they decide whether
//! a piece sticks out of the ball, and how near the surface it comes.

use core::f64::consts::TAU;

use nalgebra::Vector3;

use super::{Form, Placed, Ring, cube};

/// Points as far as this, relative to the farthest, count as farthest too.
const AS_FAR: f64 = 1e-12;
/// Points that stand for a whole circle of farthest points.
const ROUND: usize = 48;
/// Points that stand for a whole sphere of them.
const ALL_OVER: usize = 200;

/// Largest distance from the frame's origin to a point of the solid.
///
/// To 1e-12 of it. A box or polygon of revolution is farthest at a corner or
/// rim; an ellipsoid at a root of its secular equation, see [`ellipsoid`]; a
/// ring at the best place round it. `linear` must have orthogonal columns (as a
/// turned and scaled solid has) where the form is a sphere or ring.
pub(crate) fn farthest(solid: &Placed) -> f64 {
    let axes = solid.axes();
    match &solid.form {
        Form::Cube => corners(solid).map(|c| c.norm()).fold(0.0, f64::max),
        Form::Lathe(lathe) => lathe.rims.iter().map(|rim| rim_farthest(&solid.at, &axes, *rim).0).fold(0.0, f64::max),
        Form::Sphere => ellipsoid(&solid.at, &axes).0,
        Form::Ring(ring) => ring_farthest(solid, ring).0,
    }
}

/// That distance and where it is reached: all places where there are a few,
/// else a fair sample of them.
pub(crate) fn farthest_points(solid: &Placed) -> (f64, Vec<Vector3<f64>>) {
    let axes = solid.axes();
    match &solid.form {
        Form::Cube => {
            let far = farthest(solid);
            (far, corners(solid).filter(|c| c.norm() >= far * (1.0 - AS_FAR)).collect())
        }
        Form::Lathe(lathe) => {
            let far = farthest(solid);
            let mut points = Vec::new();
            for rim in &lathe.rims {
                let (own, phi) = rim_farthest(&solid.at, &axes, *rim);
                if own >= far * (1.0 - AS_FAR) {
                    let on_rim = |phi| solid.at + axes[2] * rim[1] + circle(&axes, rim[0], phi);
                    points.extend(best_and_like_it(far, phi, on_rim));
                }
            }
            (far, points)
        }
        Form::Sphere => ellipsoid(&solid.at, &axes),
        Form::Ring(ring) => {
            let (far, phi) = ring_farthest(solid, ring);
            let on_tube = |phi| *tube(solid, ring, phi).1.first().unwrap_or(&solid.at);
            (far, best_and_like_it(far, phi, on_tube).collect())
        }
    }
}

fn corners(solid: &Placed) -> impl Iterator<Item = Vector3<f64>> {
    cube::corners().map(|c| solid.at + solid.linear * c)
}

fn circle(axes: &[Vector3<f64>; 3], radius: f64, phi: f64) -> Vector3<f64> {
    let (s, k) = libm::sincos(phi);
    axes[0] * (radius * k) + axes[1] * (radius * s)
}

/// The best place round a circle, and those round it that are as far.
fn best_and_like_it(far: f64, best: f64, at: impl Fn(f64) -> Vector3<f64>) -> impl Iterator<Item = Vector3<f64>> {
    let round = (0..ROUND).map(|n| n as f64 * TAU / ROUND as f64);
    core::iter::once(at(best)).chain(round.map(at).filter(move |p| p.norm() >= far * (1.0 - AS_FAR)))
}

/// Largest |c + a cos φ + b sin φ| over a rim, and its φ: the better of two
/// climbs from a sampled start. The square is a trigonometric polynomial of
/// degree 2, so it has at most two hills and 16 samples see both.
fn rim_farthest(at: &Vector3<f64>, axes: &[Vector3<f64>; 3], [radius, height]: [f64; 2]) -> (f64, f64) {
    let (c, a, b) = (at + axes[2] * height, axes[0] * radius, axes[1] * radius);
    let square = |phi: f64| {
        let (s, k) = libm::sincos(phi);
        (c + a * k + b * s).norm_squared()
    };
    let step = TAU / 16.0;
    let at: [f64; 16] = core::array::from_fn(|n| square(n as f64 * step));
    let mut best = (0.0, 0.0);
    let mut keep = |square: f64, phi: f64| {
        if square > best.0 {
            best = (square, phi);
        }
    };
    for n in 0..16 {
        if at[n] < at[(n + 1) % 16] || at[n] < at[(n + 15) % 16] {
            continue;
        }
        let mut phi = n as f64 * step;
        keep(at[n], phi);
        for _ in 0..8 {
            let (s, k) = libm::sincos(phi);
            let (p, dp) = (c + a * k + b * s, b * k - a * s);
            let slope = p.dot(&dp);
            let bend = dp.norm_squared() - p.dot(&(a * k + b * s));
            if bend >= 0.0 {
                break;
            }
            phi -= (slope / bend).clamp(-step, step);
        }
        keep(square(phi), phi);
    }
    (best.0.sqrt(), best.1)
}

/// Largest |c + Σ uᵢ axesᵢ| over |u| = 1, and where.
///
/// With orthogonal axes of lengths aᵢ and cᵢ the centre's part along each, the
/// farthest point has uᵢ = aᵢcᵢ/(λ − aᵢ²) for the λ ≥ max aᵢ² at which Σuᵢ² = 1
/// (the trust region subproblem; Moré and Sorensen, SIAM J. Sci. Stat. Comput.
/// 4, 1983), and any direction of the longest axes where that sum stays below
/// 1 (the "hard case": the centre lies square to them).
fn ellipsoid(c: &Vector3<f64>, axes: &[Vector3<f64>; 3]) -> (f64, Vec<Vector3<f64>>) {
    let length = axes.map(|axis| axis.norm());
    let unit = [0, 1, 2].map(|i| axes[i] / length[i]);
    let pull = [0, 1, 2].map(|i| length[i] * unit[i].dot(c));
    let top = length.into_iter().fold(0.0, f64::max);
    // How far each λ − aᵢ² is from λ − max a²; the longest axes exactly 0.
    let gap = length.map(|a| if a >= top * (1.0 - AS_FAR) { 0.0 } else { (top - a) * (top + a) });
    let along = |mu: f64| [0, 1, 2].map(|i| if pull[i] == 0.0 { 0.0 } else { pull[i] / (mu + gap[i]) });
    let square = |u: [f64; 3]| u.iter().map(|u| u * u).sum::<f64>();
    let least = along(0.0);
    let at = |u: Vector3<f64>| c + axes[0] * u.x + axes[1] * u.y + axes[2] * u.z;
    let points: Vec<Vector3<f64>> = if square(least) < 1.0 {
        let rest = (1.0 - square(least)).max(0.0).sqrt();
        let longest: Vec<usize> = (0..3).filter(|&i| gap[i] == 0.0).collect();
        let own = |directions: Vec<Vector3<f64>>| {
            directions.into_iter().map(|d| at(Vector3::from(least) + d * rest)).collect()
        };
        match longest[..] {
            [i] => own([1.0, -1.0].map(|sign| Vector3::ith(i, sign)).to_vec()),
            [i, j] => own((0..ROUND)
                .map(|n| libm::sincos(n as f64 * TAU / ROUND as f64))
                .map(|(s, k)| Vector3::ith(i, k) + Vector3::ith(j, s))
                .collect()),
            _ => own(evenly(ALL_OVER).collect()),
        }
    } else {
        vec![at(Vector3::from(along(root(&pull, &gap))).normalize())]
    };
    (points.iter().map(|p| p.norm()).fold(0.0, f64::max), points)
}

/// The μ > 0 at which Σ(pullᵢ/(μ + gapᵢ))² = 1, where that sum is at least 1
/// at 0: Newton's method on 1/|u| − 1, which is nearly straight (Moré and
/// Sorensen, as above), and the middle where it would leave the bracket.
fn root(pull: &[f64; 3], gap: &[f64; 3]) -> f64 {
    let (mut low, mut high) = (0.0, pull.iter().map(|p| p * p).sum::<f64>().sqrt());
    let mut mu = high;
    for _ in 0..120 {
        let (mut square, mut fall) = (0.0, 0.0);
        for (pull, gap) in pull.iter().zip(gap).filter(|(pull, _)| **pull != 0.0) {
            let u = pull / (mu + gap);
            square += u * u;
            fall += u * u / (mu + gap);
        }
        if square > 1.0 {
            low = mu
        } else {
            high = mu
        }
        let next = mu + (square.sqrt() - 1.0) * square / fall;
        let next = if next > low && next < high { next } else { f64::midpoint(low, high) };
        if (next - mu).abs() <= 1e-15 * mu {
            return next;
        }
        mu = next;
    }
    mu
}

/// The tube of a ring at one place round it: a ball, scaled as the ring is.
fn tube(solid: &Placed, ring: &Ring, phi: f64) -> (f64, Vec<Vector3<f64>>) {
    let axes = solid.axes();
    ellipsoid(&(solid.at + circle(&axes, ring.ring, phi)), &axes.map(|axis| axis * ring.tube))
}

/// A solid ring is the circle of its tube's middle with a ball round every
/// point of it, so its farthest point is that of the best such ball.
fn ring_farthest(solid: &Placed, ring: &Ring) -> (f64, f64) {
    let value = |phi: f64| tube(solid, ring, phi).0;
    let step = TAU / ROUND as f64;
    let at: [f64; ROUND] = core::array::from_fn(|n| value(n as f64 * step));
    let mut best = (0.0, 0.0);
    for n in 0..ROUND {
        if at[n] < at[(n + 1) % ROUND] || at[n] < at[(n + ROUND - 1) % ROUND] {
            continue;
        }
        let (mut from, mut to) = ((n as f64 - 1.0) * step, (n as f64 + 1.0) * step);
        // Golden section: the value is flat at its best, so 40 steps are plenty.
        let golden = 0.5 * (5.0_f64.sqrt() - 1.0);
        for _ in 0..40 {
            let (a, b) = (to - golden * (to - from), from + golden * (to - from));
            if value(a) < value(b) { from = a } else { to = b }
        }
        for phi in [n as f64 * step, f64::midpoint(from, to)] {
            let far = value(phi);
            if far > best.0 {
                best = (far, phi);
            }
        }
    }
    best
}

/// Directions spread evenly over the sphere: a Fibonacci lattice (González,
/// Math. Geosci. 42, 2010), every one standing for an equal area.
pub(crate) fn evenly(count: usize) -> impl Iterator<Item = Vector3<f64>> {
    let turn = core::f64::consts::PI * (3.0 - 5.0_f64.sqrt());
    (0..count).map(move |n| {
        let z = 1.0 - (2.0 * n as f64 + 1.0) / count as f64;
        let (s, k) = libm::sincos(n as f64 * turn);
        let r = (1.0 - z * z).max(0.0).sqrt();
        Vector3::new(r * k, r * s, z)
    })
}
