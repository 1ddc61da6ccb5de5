//! What the tests of the motion share: balls, shots, and mechanics written
//! down once more from samples, apart from the code under test.

#![allow(
    dead_code,
    unreachable_pub,
    clippy::unwrap_used,
    reason = "each test file uses its part; a test fails by panicking"
)]

use nalgebra::{Matrix3, Rotation3, Vector3};
use pithball_physics::lane::{Friction, Hand, Zone};
use pithball_physics::roll::{Layout, Release, RigidBall, Sample, Shot};
use pithball_physics::units::{GRAVITY_M_S2, M_PER_FT, M_PER_IN, M_S_PER_MPH, RAD_S_PER_RPM};

/// Radius of the balls, 8.595 in across.
pub const R_M: f64 = 4.2975 * M_PER_IN;
/// Mass of the balls, 15 lb.
pub const MASS_KG: f64 = 6.803_885_55;

/// A ball with these principal RGs about its own x, y, z.
pub fn ball(rg_in: [f64; 3], cg_in: [f64; 3]) -> RigidBall {
    let moments = Vector3::from(rg_in).map(|rg| MASS_KG * (rg * M_PER_IN) * (rg * M_PER_IN));
    RigidBall {
        mass_kg: MASS_KG,
        radius_m: R_M,
        cg_m: Vector3::from(cg_in) * M_PER_IN,
        inertia_kg_m2: Matrix3::from_diagonal(&moments),
    }
}

/// A ball whose tensor is k·m·R² about every axis, its centre of gravity in the middle.
pub fn even_ball(k: f64) -> RigidBall {
    let rg_in = k.sqrt() * R_M / M_PER_IN;
    ball([rg_in; 3], [0.0; 3])
}

/// Zones (from ft, to ft, mu).
pub fn lane(zones: &[(f64, f64, f64)]) -> Friction {
    let zones: Vec<Zone> =
        zones.iter().map(|&(from, to, mu)| Zone { from_m: from * M_PER_FT, to_m: to * M_PER_FT, mu }).collect();
    Friction::from_zones(&zones).unwrap()
}

/// 0.04 to 40 ft, then 0.20.
pub fn oiled() -> Friction {
    lane(&[(0.0, 40.0, 0.04), (40.0, 63.0, 0.20)])
}

/// A right-hander's shot down the middle.
pub fn shot(mph: f64, rpm: f64, rotation_deg: f64, tilt_deg: f64, launch_deg: f64, lane: Friction) -> Shot {
    Shot {
        hand: Hand::Right,
        release: Release {
            speed_m_s: mph * M_S_PER_MPH,
            spin_rad_s: rpm * RAD_S_PER_RPM,
            axis_rotation_rad: rotation_deg.to_radians(),
            axis_tilt_rad: tilt_deg.to_radians(),
            launch_angle_rad: launch_deg.to_radians(),
            board: 20.0,
        },
        layout: Layout { pin_to_pap_m: 4.0 * M_PER_IN, drilling_angle_rad: 60_f64.to_radians(), start_turn_rad: 0.0 },
        lane,
    }
}

/// A small generator (Marsaglia's xorshift64*), so that the shots stay the same.
pub struct Dice(pub u64);

impl Dice {
    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        self.0 ^= self.0 >> 12;
        self.0 ^= self.0 << 25;
        self.0 ^= self.0 >> 27;
        let bits = self.0.wrapping_mul(0x2545_f491_4f6c_dd1d) >> 11;
        low + (high - low) * bits as f64 / (1_u64 << 53) as f64
    }

    /// A ball with its core turned any way and its centre of gravity up to `cg_in` out each way.
    pub fn ball(&mut self, cg_in: f64) -> RigidBall {
        let low = self.between(2.46, 2.7);
        let high = low + self.between(0.005, 0.06);
        let mut any = ball(
            [high, self.between(low, high), low],
            [self.between(-cg_in, cg_in), self.between(-cg_in, cg_in), self.between(-cg_in, cg_in)],
        );
        let turn =
            Rotation3::from_euler_angles(self.between(-3.0, 3.0), self.between(-1.5, 1.5), self.between(-3.0, 3.0));
        any.inertia_kg_m2 = turn * any.inertia_kg_m2 * turn.transpose();
        any
    }

    /// An ordinary shot.
    pub fn shot(&mut self) -> Shot {
        let oil_ft = self.between(33.0, 48.0);
        let lane = lane(&[(0.0, oil_ft, self.between(0.02, 0.08)), (oil_ft, 63.0, self.between(0.12, 0.3))]);
        let mut any = shot(
            self.between(11.0, 20.0),
            self.between(50.0, 450.0),
            self.between(0.0, 50.0),
            self.between(-5.0, 30.0),
            self.between(-1.0, 1.0),
            lane,
        );
        any.layout = Layout {
            pin_to_pap_m: self.between(0.0, 6.75) * M_PER_IN,
            drilling_angle_rad: self.between(-3.0, 3.0),
            start_turn_rad: self.between(-3.0, 3.0),
        };
        any
    }
}

/// Centre of gravity from the ball's centre, lane frame.
pub fn cg(ball: &RigidBall, s: &Sample) -> Vector3<f64> {
    s.turn * ball.cg_m
}

/// Angular momentum about the centre of gravity, lane frame.
pub fn spin_momentum(ball: &RigidBall, s: &Sample) -> Vector3<f64> {
    s.turn * (ball.inertia_kg_m2 * (s.turn.inverse() * s.omega_rad_s))
}

/// Kinetic energy plus the height of the centre of gravity.
pub fn energy(ball: &RigidBall, s: &Sample) -> f64 {
    let d = cg(ball, s);
    let v = Vector3::new(s.velocity_m_s.x, s.velocity_m_s.y, 0.0) + s.omega_rad_s.cross(&d);
    0.5 * ball.mass_kg * v.norm_squared()
        + 0.5 * s.omega_rad_s.dot(&spin_momentum(ball, s))
        + ball.mass_kg * GRAVITY_M_S2 * d.z
}

/// Fails unless two numbers agree.
#[track_caller]
pub fn close(found: f64, expected: f64, within: f64, what: &str) {
    assert!((found - expected).abs() <= within, "{what}: {found} is not {expected} within {within}");
}
