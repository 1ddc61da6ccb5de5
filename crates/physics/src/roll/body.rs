//! The equations of motion: a rigid ball whose sphere stays on the lane.
//!
//! C is the geometric centre, G the centre of gravity, d = G − C, P the
//! contact, s = G − P = Rẑ + d. The lane's force on the ball acts at P:
//! Nẑ + F. With α = dω/dt (the same vector in both frames),
//!
//! - m·[a_C + α×d + ω×(ω×d)] = F + (N − mg)ẑ, where a_C has no z part,
//! - I·α + ω×Iω = −s × (F + Nẑ).
//!
//! Slipping, F = −μN·û with û the direction of the slip u = v − Rω×ẑ. Then α
//! is linear in N and the z part of the first line is one equation for N:
//! the normal force and friction are coupled where d is not zero.
//! Rolling, v = Rω×ẑ, so that a_G = α×s + ω×(ω×d) and
//! [I + m(s²·1 − s sᵀ)]·α = −ω×Iω − s × m[gẑ + ω×(ω×d)].
//!
//! Both are Newton's and Euler's laws alone (any text on rigid bodies, such
//! as E. J. Routh, Advanced Dynamics of a System of Rigid Bodies, 1884).

use nalgebra::{Matrix3, Vector2, Vector3};

use super::shot::RigidBall;
use crate::lane::oil::Oiled;
use crate::units::GRAVITY_M_S2;

/// Components of the state.
pub(super) const SIZE: usize = 12;
/// Position x, y; velocity x, y; spin x, y, z (lane frame); the quaternion
/// w, x, y, z that turns ball axes into lane axes (its length has no
/// meaning); angle turned.
pub(super) type State = [f64; SIZE];

/// Place of y in the state.
pub(super) const Y: usize = 1;
/// Friction is taken to suffice for rolling up to this part of the weight
/// beyond μN: rounding must not make a rolling ball slip where μ is 0.
const FRICTION_SLACK: f64 = 1e-10;

/// Friction of the stretch of lane that the ball is on.
#[derive(Clone, Copy, Debug)]
pub(super) enum Ground<'a> {
    /// The same everywhere.
    Even(f64),
    /// By the oil under the contact.
    Oiled(&'a Oiled),
}

impl Ground<'_> {
    /// Friction under the ball.
    #[inline(always)]
    pub(super) fn mu(&self, y: &State) -> f64 {
        match self {
            Self::Even(mu) => *mu,
            Self::Oiled(lane) => lane.mu_at(y[0], y[1]),
        }
    }
}

/// What the contact does, and so which equations hold.
#[derive(Clone, Copy, Debug)]
pub(super) enum Contact<'a> {
    /// It slips.
    Slip { on: Ground<'a> },
    /// It is at rest on the lane.
    Roll { on: Ground<'a> },
}

impl<'a> Contact<'a> {
    pub(super) fn ground(&self) -> Ground<'a> {
        let (Self::Slip { on } | Self::Roll { on }) = self;
        *on
    }
}

/// Rates of change of the state, and the forces behind them.
#[derive(Clone, Copy)]
pub(super) struct Rates {
    /// Rates of the state's components.
    pub(super) d: State,
    /// N. Not a number above 0 where no force would do.
    pub(super) normal_n: f64,
    /// While rolling, μN − |F|; infinite while slipping.
    pub(super) margin_n: f64,
    /// F, in the lane frame.
    pub(super) friction_n: Vector2<f64>,
}

/// The ball's constants, ready for the equations.
pub(super) struct Body {
    pub(super) mass: f64,
    pub(super) radius: f64,
    pub(super) weight: f64,
    pub(super) cg: Vector3<f64>,
    pub(super) inertia: Matrix3<f64>,
    inverse: Matrix3<f64>,
    /// How strongly the path depends on how the ball is turned: relative
    /// spread of the tensor and the offset of the centre of gravity by radius.
    pub(super) unevenness: f64,
    /// Rate of slip per force along it, roughly: 1/m + R²/I.
    pub(super) slip_per_push: f64,
}

/// Rotation matrix of a quaternion of any length.
#[inline(always)]
fn turn_of(y: &State) -> Matrix3<f64> {
    let (w, i, j, k) = (y[7], y[8], y[9], y[10]);
    let s = 2.0 / (w * w + i * i + j * j + k * k);
    Matrix3::new(
        1.0 - s * (j * j + k * k),
        s * (i * j - k * w),
        s * (i * k + j * w),
        s * (i * j + k * w),
        1.0 - s * (i * i + k * k),
        s * (j * k - i * w),
        s * (i * k - j * w),
        s * (j * k + i * w),
        1.0 - s * (i * i + j * j),
    )
}

/// Solves the symmetric positive system A·x = b.
#[inline(always)]
fn solve(a: &Matrix3<f64>, b: &Vector3<f64>) -> Vector3<f64> {
    let (p, q, r) = (a.m11, a.m12, a.m13);
    let (t, u, v) = (a.m22, a.m23, a.m33);
    let c11 = t * v - u * u;
    let c12 = r * u - q * v;
    let c13 = q * u - r * t;
    let c22 = p * v - r * r;
    let c23 = q * r - p * u;
    let c33 = p * t - q * q;
    let inverse = 1.0 / (p * c11 + q * c12 + r * c13);
    Vector3::new(
        (c11 * b.x + c12 * b.y + c13 * b.z) * inverse,
        (c12 * b.x + c22 * b.y + c23 * b.z) * inverse,
        (c13 * b.x + c23 * b.y + c33 * b.z) * inverse,
    )
}

/// Spin of a state, lane frame.
#[inline(always)]
pub(super) fn omega(y: &State) -> Vector3<f64> {
    Vector3::new(y[4], y[5], y[6])
}

impl Body {
    pub(super) fn new(ball: &RigidBall) -> Self {
        let inertia = (ball.inertia_kg_m2 + ball.inertia_kg_m2.transpose()) / 2.0;
        let mean = inertia.trace() / 3.0;
        let spread = (inertia - Matrix3::identity() * mean).norm() / mean;
        Self {
            mass: ball.mass_kg,
            radius: ball.radius_m,
            weight: ball.mass_kg * GRAVITY_M_S2,
            cg: ball.cg_m,
            inertia,
            inverse: Matrix3::from_columns(&[
                solve(&inertia, &Vector3::x()),
                solve(&inertia, &Vector3::y()),
                solve(&inertia, &Vector3::z()),
            ]),
            slip_per_push: 1.0 / ball.mass_kg + ball.radius_m * ball.radius_m / mean,
            unevenness: spread + 3.0 * ball.cg_m.norm() / ball.radius_m,
        }
    }

    /// Velocity of the contact point.
    #[inline(always)]
    pub(super) fn slip(&self, y: &State) -> Vector2<f64> {
        Vector2::new(y[2] - self.radius * y[5], y[3] + self.radius * y[4])
    }

    /// Rate of change of the slip.
    pub(super) fn slip_rate(&self, d: &State) -> Vector2<f64> {
        self.slip(d)
    }

    /// A vector of the lane frame in the ball's.
    pub(super) fn in_ball(y: &State, v: &Vector3<f64>) -> Vector3<f64> {
        turn_of(y).tr_mul(v)
    }

    /// Rate of change of a spin of 1 rad/s along `axis` without any torque,
    /// both in ball axes.
    pub(super) fn free_spin_rate(&self, axis: &Vector3<f64>) -> Vector3<f64> {
        self.inverse * (self.inertia * axis).cross(axis)
    }

    /// Rates of change under the contact's law.
    #[inline(always)]
    pub(super) fn rates(&self, contact: &Contact<'_>, y: &State) -> Rates {
        match contact {
            Contact::Slip { on } => self.slipping(on.mu(y), y),
            Contact::Roll { on } => self.rolling(on.mu(y), y),
        }
    }

    #[inline(always)]
    fn slipping(&self, mu: f64, y: &State) -> Rates {
        let turn = turn_of(y);
        let spin = omega(y);
        let slip = self.slip(y);
        let size = slip.norm();
        let way = if size > 0.0 { slip / size } else { Vector2::zeros() };
        // From here on in ball axes.
        let w = turn.tr_mul(&spin);
        let up = turn.row(2).transpose();
        let way_b = turn.row(0).transpose() * way.x + turn.row(1).transpose() * way.y;
        let d = &self.cg;
        let s = up * self.radius + d;
        let n = d.cross(&up);
        // α = N·per_normal + free.
        let per_normal = self.inverse * (s.cross(&way_b) * mu - n);
        let free = self.inverse * (self.inertia * w).cross(&w);
        let centripetal = w * w.dot(d) - d * w.norm_squared();
        let held = 1.0 - self.mass * n.dot(&per_normal);
        let normal_n = (self.weight + self.mass * (n.dot(&free) + centripetal.dot(&up))) / held;
        let alpha = per_normal * normal_n + free;
        let swing = alpha.cross(d) + centripetal;
        let friction_n = way * (-mu * normal_n);
        Rates {
            d: self.collect(y, &spin, &(turn * alpha), friction_n / self.mass - (turn * swing).xy()),
            // A negative `held` is Painlevé's paradox: reported as not a number.
            normal_n: if held > 0.0 { normal_n } else { f64::NAN },
            margin_n: f64::INFINITY,
            friction_n,
        }
    }

    #[inline(always)]
    fn rolling(&self, mu: f64, y: &State) -> Rates {
        let turn = turn_of(y);
        let spin = omega(y);
        let w = turn.tr_mul(&spin);
        let up = turn.row(2).transpose();
        let d = &self.cg;
        let s = up * self.radius + d;
        let centripetal = w * w.dot(d) - d * w.norm_squared();
        let pull = (up * GRAVITY_M_S2 + centripetal) * self.mass;
        let alpha_b = solve(&self.about_contact(&s), &((self.inertia * w).cross(&w) - s.cross(&pull)));
        let force = turn * (pull + alpha_b.cross(&s) * self.mass);
        let alpha = turn * alpha_b;
        let friction_n = force.xy();
        Rates {
            d: self.collect(y, &spin, &alpha, Vector2::new(alpha.y, -alpha.x) * self.radius),
            normal_n: force.z,
            margin_n: mu * force.z + FRICTION_SLACK * self.weight - friction_n.norm(),
            friction_n,
        }
    }

    /// The tensor about the contact, in ball axes.
    #[inline(always)]
    fn about_contact(&self, s: &Vector3<f64>) -> Matrix3<f64> {
        self.inertia + (Matrix3::identity() * s.norm_squared() - s * s.transpose()) * self.mass
    }

    /// Puts the rates in order; the quaternion's is half the spin times it.
    #[inline(always)]
    fn collect(&self, y: &State, w: &Vector3<f64>, alpha: &Vector3<f64>, a: Vector2<f64>) -> State {
        let (q, i, j, k) = (0.5 * y[7], 0.5 * y[8], 0.5 * y[9], 0.5 * y[10]);
        [
            y[2],
            y[3],
            a.x,
            a.y,
            alpha.x,
            alpha.y,
            alpha.z,
            -w.x * i - w.y * j - w.z * k,
            w.x * q + w.y * k - w.z * j,
            w.y * q + w.z * i - w.x * k,
            w.z * q + w.x * j - w.y * i,
            w.norm(),
        ]
    }

    /// The state just after the last of the slip is taken away by a force at
    /// the contact: angular momentum about the contact stays.
    pub(super) fn grip(&self, y: &State) -> State {
        let turn = turn_of(y);
        let w = turn.tr_mul(&omega(y));
        let s = turn.row(2).transpose() * self.radius + self.cg;
        let velocity = turn.tr_mul(&Vector3::new(y[2], y[3], 0.0)) + w.cross(&self.cg);
        let about_contact = self.inertia * w + s.cross(&velocity) * self.mass;
        let spin = turn * solve(&self.about_contact(&s), &about_contact);
        let mut gripped = *y;
        gripped[2] = self.radius * spin.y;
        gripped[3] = -self.radius * spin.x;
        gripped[4] = spin.x;
        gripped[5] = spin.y;
        gripped[6] = spin.z;
        gripped
    }

    /// The state just after a small sideways impulse at the contact.
    pub(super) fn push(&self, y: &State, impulse_ns: &Vector2<f64>) -> State {
        let turn = turn_of(y);
        let s = turn.row(2).transpose() * self.radius + self.cg;
        let impulse = turn.tr_mul(&Vector3::new(impulse_ns.x, impulse_ns.y, 0.0));
        let spin = self.inverse * impulse.cross(&s);
        let velocity = turn * (impulse / self.mass - spin.cross(&self.cg));
        let spin = turn * spin;
        let mut pushed = *y;
        pushed[2] += velocity.x;
        pushed[3] += velocity.y;
        pushed[4] += spin.x;
        pushed[5] += spin.y;
        pushed[6] += spin.z;
        pushed
    }
}
