//! Exact conversions between the trade's units and SI.

/// Metres in one inch (exact, international yard and pound agreement of 1959).
pub const M_PER_IN: f64 = 0.0254;
/// Metres in one foot (exact).
pub const M_PER_FT: f64 = 0.3048;
/// Kilograms in one avoirdupois pound (exact).
pub const KG_PER_LB: f64 = 0.453_592_37;
/// Kilograms in one avoirdupois ounce (exact).
pub const KG_PER_OZ: f64 = KG_PER_LB / 16.0;
/// Kilograms per cubic metre in one gram per cubic centimetre (exact).
pub const KG_M3_PER_G_CC: f64 = 1000.0;
/// Metres per second in one mile per hour (exact).
pub const M_S_PER_MPH: f64 = 0.447_04;
/// Radians per second in one revolution per minute.
pub const RAD_S_PER_RPM: f64 = core::f64::consts::TAU / 60.0;
/// Standard gravity in metres per second squared (exact).
pub const GRAVITY_M_S2: f64 = 9.806_65;
