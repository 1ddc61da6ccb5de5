//! What a number is a number of: its unit and how it is written.

use format::{Phrase, phrase};
use serde::Serialize;

/// A kind of number; the page knows each by the same name and shows it in the
/// reader's units.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Quantity {
    /// Inches, two decimals.
    Size,
    /// Inches, three decimals.
    Rg,
    /// Pounds.
    Weight,
    /// Ounces.
    Imbalance,
    /// Grams per cubic centimetre.
    Density,
    /// Cubic centimetres.
    Volume,
    /// Millilitres.
    Oil,
    /// Micrometres.
    Film,
    /// How many.
    Count,
    /// Degrees.
    Angle,
    /// Miles an hour.
    Speed,
    /// Feet.
    Distance,
    /// Turns a minute.
    Revs,
    /// Seconds.
    Time,
    /// Boards.
    Board,
    /// Coefficient of friction.
    Friction,
    /// One number over another of its kind.
    Ratio,
    /// A part of a whole, 1 the whole; written in per cent.
    Share,
}

impl Quantity {
    /// How expressions and plain texts write the unit; empty for a plain number.
    pub fn unit(self) -> &'static str {
        match self {
            Self::Size | Self::Rg => "in",
            Self::Weight => "lb",
            Self::Imbalance => "oz",
            Self::Density => "g/cc",
            Self::Volume => "cc",
            Self::Oil => "mL",
            Self::Film => "um",
            Self::Angle => "deg",
            Self::Speed => "mph",
            Self::Distance => "ft",
            Self::Revs => "rpm",
            Self::Time => "s",
            Self::Board => "boards",
            Self::Share => "%",
            Self::Count | Self::Friction | Self::Ratio => "",
        }
    }

    /// The unit as a sentence has it.
    pub(crate) fn unit_said(self) -> Phrase {
        match self.unit() {
            "" => phrase!("plain-number", "a plain number"),
            _ => self.unit_word(),
        }
    }

    /// A number of this unit.
    pub(crate) fn number_said(self) -> Phrase {
        match self.unit() {
            "" => phrase!("plain-number", "a plain number"),
            _ => phrase!("number-of", "a number of {unit}", unit = self.unit_word()),
        }
    }

    /// Boards have a word in each language, the rest a sign.
    fn unit_word(self) -> Phrase {
        match self {
            Self::Board => phrase!("unit-boards", "boards"),
            _ => self.unit().into(),
        }
    }

    /// Which kind a number written with this unit is.
    pub(crate) fn of_unit(unit: &str) -> Option<Self> {
        Some(match unit {
            "in" => Self::Size,
            "lb" => Self::Weight,
            "oz" => Self::Imbalance,
            "g/cc" => Self::Density,
            "cc" => Self::Volume,
            "mL" => Self::Oil,
            "um" => Self::Film,
            "deg" => Self::Angle,
            "mph" => Self::Speed,
            "ft" => Self::Distance,
            "rpm" => Self::Revs,
            "s" => Self::Time,
            "board" | "boards" => Self::Board,
            "%" => Self::Share,
            _ => return None,
        })
    }

    /// Which kind a number of a file is, by its key.
    pub(crate) fn of_key(key: &str) -> Self {
        let endings = [
            ("_g_cc", Self::Density),
            ("_percent", Self::Share),
            ("_in", Self::Size),
            ("_deg", Self::Angle),
            ("_mph", Self::Speed),
            ("_rpm", Self::Revs),
            ("_ft", Self::Distance),
            ("_lb", Self::Weight),
            ("_oz", Self::Imbalance),
            ("_um", Self::Film),
            ("_ml", Self::Oil),
            ("_share", Self::Share),
        ];
        match key {
            "board" => Self::Board,
            "mu" | "mu_oil" | "mu_dry" => Self::Friction,
            "ratio" => Self::Ratio,
            _ => {
                endings.iter().find(|(ending, _)| key.ends_with(ending)).map_or(Self::Count, |(_, quantity)| *quantity)
            }
        }
    }

    /// Whether two numbers may be added or compared.
    pub(crate) fn goes_with(self, other: Self) -> bool {
        self.unit() == other.unit()
    }

    /// Decimals that matter, as the page shows them.
    pub fn decimals(self) -> u8 {
        match self {
            Self::Rg | Self::Friction => 3,
            Self::Size | Self::Weight | Self::Imbalance | Self::Density | Self::Film | Self::Time | Self::Ratio => 2,
            Self::Oil | Self::Angle | Self::Speed | Self::Distance | Self::Board | Self::Share => 1,
            Self::Volume | Self::Count | Self::Revs => 0,
        }
    }

    /// The number as it is written in the trade's units, without its unit.
    pub fn digits(self, value: f64, decimals: u8) -> String {
        let shown = if self == Self::Share { value * 100.0 } else { value };
        format::digits(shown, usize::from(decimals))
    }

    /// The first number less the second, each rounded as it is written.
    pub fn difference(self, [first, second]: [f64; 2], decimals: u8) -> f64 {
        let hundred = if self == Self::Share { 100.0 } else { 1.0 };
        let shown = |value: f64| self.digits(value, decimals).parse().map_or(value, |digits: f64| digits / hundred);
        shown(first) - shown(second)
    }

    /// The number with its unit.
    pub fn text(self, value: f64, decimals: u8) -> String {
        let digits = self.digits(value, decimals);
        match self {
            Self::Angle => format!("{digits}°"),
            Self::Share => format!("{digits}%"),
            Self::Film => format!("{digits} µm"),
            Self::Board | Self::Count | Self::Friction | Self::Ratio => digits,
            _ => format!("{digits} {}", self.unit()),
        }
    }
}
