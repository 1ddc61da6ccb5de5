//! Volume and its first and second moments: what mass properties are made of.

use core::ops::{AddAssign, SubAssign};

use nalgebra::{Matrix3, Vector3};

/// ∫1, ∫x and ∫x xᵀ over a region (m³, m⁴, m⁵).
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Moments {
    pub(crate) volume: f64,
    pub(crate) first: Vector3<f64>,
    pub(crate) second: Matrix3<f64>,
}

impl Moments {
    pub(crate) const ZERO: Self = Self {
        volume: 0.0,
        first: Vector3::new(0.0, 0.0, 0.0),
        second: Matrix3::new(0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0),
    };

    /// A region symmetric about z: `first_z` = ∫z, `second` = ∫x², ∫y², ∫z².
    pub(crate) fn diagonal(volume: f64, first_z: f64, second: [f64; 3]) -> Self {
        Self { volume, first: Vector3::new(0.0, 0.0, first_z), second: Matrix3::from_diagonal(&Vector3::from(second)) }
    }

    /// The same region after x → `linear` x + `shift`.
    pub(crate) fn moved(&self, linear: &Matrix3<f64>, shift: &Vector3<f64>) -> Self {
        let scale = linear.determinant().abs();
        let first = linear * self.first;
        let cross = first * shift.transpose();
        let second = linear * self.second * linear.transpose()
            + cross
            + cross.transpose()
            + shift * shift.transpose() * self.volume;
        Self { volume: scale * self.volume, first: scale * (first + shift * self.volume), second: scale * second }
    }

    pub(crate) fn scaled(&self, by: f64) -> Self {
        Self { volume: by * self.volume, first: by * self.first, second: by * self.second }
    }
}

impl AddAssign for Moments {
    fn add_assign(&mut self, other: Self) {
        self.volume += other.volume;
        self.first += other.first;
        self.second += other.second;
    }
}

impl SubAssign for Moments {
    fn sub_assign(&mut self, other: Self) {
        self.volume -= other.volume;
        self.first -= other.first;
        self.second -= other.second;
    }
}
