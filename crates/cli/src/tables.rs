//! Plain tables for people.

use comfy_table::{Cell, CellAlignment, ContentArrangement, Table, presets};
use format::digits;

/// A table without rules.
pub(crate) fn table() -> Table {
    let mut table = Table::new();
    table.load_style(presets::NOTHING).set_content_arrangement(ContentArrangement::Disabled);
    table
}

/// A number set flush right.
pub(crate) fn number(value: f64, decimals: usize) -> Cell {
    Cell::new(digits(value, decimals)).set_alignment(CellAlignment::Right)
}

/// By how much a number changes, with its sign; what rounds to nothing has none.
pub(crate) fn signed(by: f64, decimals: usize) -> String {
    let text = digits(by, decimals);
    if text.bytes().any(|digit| matches!(digit, b'1'..=b'9')) && by > 0.0 { format!("+{text}") } else { text }
}

/// The head of a column of numbers.
pub(crate) fn head(text: &str) -> Cell {
    Cell::new(text).set_alignment(CellAlignment::Right)
}

/// A number set flush right, or a dash where there is none.
pub(crate) fn number_or_dash(value: Option<f64>, decimals: usize) -> Cell {
    value.map_or_else(|| Cell::new("–").set_alignment(CellAlignment::Right), |value| number(value, decimals))
}

/// A text that stays on its line: control characters are written out.
pub(crate) fn one_line(text: &str) -> String {
    let mut line = String::with_capacity(text.len());
    for c in text.chars() {
        if c.is_control() {
            line.extend(c.escape_debug());
        } else {
            line.push(c);
        }
    }
    line
}

/// A table's lines without the blanks at their ends.
pub(crate) fn lines(table: &Table) -> String {
    table.to_string().lines().map(|line| format!("{}\n", line.trim_end())).collect()
}
