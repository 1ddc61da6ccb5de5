//! Numbers as they are written.

/// A number with so many decimals; what rounds to nothing has no sign.
pub fn digits(value: f64, decimals: usize) -> String {
    let text = format!("{value:.decimals$}");
    match text.strip_prefix('-') {
        Some(bare) if bare.bytes().all(|digit| matches!(digit, b'0' | b'.')) => bare.to_owned(),
        _ => text,
    }
}

#[cfg(test)]
mod tests {
    use super::digits;

    #[test]
    fn nothing_has_no_sign() {
        assert_eq!(digits(-0.0004, 3), "0.000");
        assert_eq!(digits(-0.0, 0), "0");
        assert_eq!(digits(-0.0006, 3), "-0.001");
        assert_eq!(digits(12.5, 1), "12.5");
    }
}
