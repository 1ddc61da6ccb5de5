//! JSON in as few characters as say the same.

use std::io::{self, Write};

use serde::Serialize;
use serde_json::ser::{CompactFormatter, Formatter, Serializer};

use super::{MAX_LINK_JSON_BYTES, too_much_for_a_link, too_much_inside};
use crate::json::not_json;
use crate::phrase;
use crate::problem::Problem;

/// A value without spaces, whole numbers without a point; keys in the order of
/// the type. Reading it back gives the same value to the last bit.
pub(super) fn minimal(value: &impl Serialize) -> Result<Vec<u8>, Problem> {
    let mut json = Vec::new();
    let written = value.serialize(&mut Serializer::with_formatter(&mut json, Short(CompactFormatter)));
    // Plain data that was read from JSON can be written as JSON.
    written.map_err(|error| {
        Problem::new("", not_json(&error), phrase!("writable-shot", "a shot that can be written as JSON"))
    })?;
    if json.len() > MAX_LINK_JSON_BYTES {
        return Err(too_much_inside().saying(too_much_for_a_link()));
    }
    Ok(json)
}

struct Short(CompactFormatter);

/// Whole numbers below this are written without an exponent, and doubles hold
/// them exactly (2^53).
const WHOLE: f64 = 9_007_199_254_740_992.0;

impl Formatter for Short {
    fn write_f64<W: ?Sized + Write>(&mut self, writer: &mut W, value: f64) -> io::Result<()> {
        let minus_zero = value == 0.0 && value.is_sign_negative();
        if value.fract() == 0.0 && value.abs() < WHOLE && !minus_zero {
            return write!(writer, "{value:.0}");
        }
        self.0.write_f64(writer, value)
    }
}
