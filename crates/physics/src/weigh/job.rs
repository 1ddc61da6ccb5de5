//! What to integrate: a piece poured, a cut given back, a hole drilled.
//!
//! Pouring piece i moves the volume of its solid from the parts below to i;
//! each of its cuts gives its share back; each hole takes its volume away. Every
//! such step is a region of one solid, seen in that solid's own coordinates.

use nalgebra::{Matrix3, Vector3};

use crate::ball::Ball;
use crate::moments::Moments;
use crate::solid::Placed;
use crate::walk::{Layer, Stack};

/// How many times larger than its piece a cut is vast.
const VAST: f64 = 8.0;

/// One step, in the coordinates of its own solid (solid 0 of the stack).
#[derive(Debug)]
pub(super) struct Job {
    pub(super) stack: Stack,
    /// Real parts by the stack's numbering: the base first, then its layers.
    pub(super) parts: Vec<usize>,
    /// The part that gains what the parts below lose; `None`: air.
    pub(super) to: Option<usize>,
    /// +1 where `to` gains, −1 where it gives back.
    pub(super) sign: f64,
    /// From the job's coordinates to the ball's.
    pub(super) frame: Placed,
}

impl Job {
    /// Every step that makes the ball out of a sphere of cover, in order.
    pub(super) fn all(ball: &Ball) -> Vec<Self> {
        let stack = &ball.stack;
        let mut jobs = Vec::new();
        for (n, layer) in stack.layers.iter().enumerate() {
            let below = &stack.layers[..n];
            let gain = (Some(layer.part), 1.0);
            jobs.push(Self::new(stack, layer.solid, &[], &[], below, gain));
            for (k, &cut) in layer.cuts.iter().enumerate() {
                if stack.solids[cut].surely_apart(&stack.solids[layer.solid]) {
                    continue;
                }
                // Of two solids that meet the lines run in the smaller one: far
                // from the axis of a vast cut, digits would be lost.
                let vast = stack.solids[cut].reach > VAST * stack.solids[layer.solid].reach;
                let (own, other) = if vast { (layer.solid, cut) } else { (cut, layer.solid) };
                let give_back = (Some(layer.part), -1.0);
                jobs.push(Self::new(stack, own, &[other], &layer.cuts[..k], below, give_back));
            }
        }
        for (n, &hole) in stack.without.iter().enumerate() {
            jobs.push(Self::new(stack, hole, &stack.within, &stack.without[..n], &stack.layers, (None, 1.0)));
        }
        jobs
    }

    fn new(
        whole: &Stack,
        own: usize,
        within: &[usize],
        without: &[usize],
        below: &[Layer],
        (to, sign): (Option<usize>, f64),
    ) -> Self {
        let frame = whole.solids[own].clone();
        // In its own frame a solid is as it was made, to the last bit.
        let mut solids = vec![Placed::with(frame.form.clone(), Matrix3::identity(), Vector3::zeros())];
        let mut add = |n: usize| {
            solids.push(whole.solids[n].seen_from(&frame));
            solids.len() - 1
        };
        let apart = |n: usize| whole.solids[n].surely_apart(&frame);
        let mut inside = vec![0];
        inside.extend(within.iter().filter(|&&n| !whole.solids[n].surely_holds(&frame)).map(|&n| add(n)));
        let outside = without.iter().filter(|&&n| !apart(n)).map(|&n| add(n)).collect();
        // Downwards to the first layer that holds the whole region: what lies
        // below it cannot show.
        let mut layers = Vec::new();
        let mut base = 0;
        for layer in below.iter().rev() {
            if apart(layer.solid) {
                continue;
            }
            let cuts: Vec<usize> = layer.cuts.iter().copied().filter(|&c| !apart(c)).collect();
            if cuts.is_empty() && whole.solids[layer.solid].surely_holds(&frame) {
                base = layer.part;
                break;
            }
            let solid = add(layer.solid);
            layers.push(Layer { part: layer.part, solid, cuts: cuts.into_iter().map(&mut add).collect() });
        }
        layers.reverse();
        let mut parts = vec![base];
        for layer in &mut layers {
            parts.push(layer.part);
            layer.part = parts.len() - 1;
        }
        let stack = Stack { solids, within: inside, without: outside, layers, base: 0 };
        Self { stack, parts, to, sign, frame }
    }

    /// The whole solid lies in one part: its closed form, in the ball's frame.
    pub(super) fn closed_form(&self) -> Option<Moments> {
        if self.stack.solids.len() > 1 {
            return None;
        }
        self.stack.solids[0].own_moments().map(|own| own.moved(&self.frame.linear, &self.frame.at))
    }

    /// Whether everything in the job turns about its z axis.
    pub(super) fn turns(&self) -> bool {
        self.stack.solids.iter().all(Placed::turns_about_z)
    }
}
