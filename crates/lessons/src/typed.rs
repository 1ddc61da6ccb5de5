//! Finds numbers with a unit in prose. A number that a reader is told must
//! have been computed from what is on the bench.

use std::ops::Range;

/// In English and in Spanish, as every list here.
const UNITS: &str = "inch inches lb lbs pound pounds oz ounce ounces ft foot feet mph rpm deg degree degrees percent mm cm kg \
    kilogram kilograms gram grams second seconds board boards rev revs turn turns mile miles ml cc micrometre micrometres \
    metre metres g/cc pulgada pulgadas libra libras onza onzas pie pies grado grados kilo kilos kilogramo kilogramos \
    gramo gramos segundo segundos tabla tablas vuelta vueltas milla millas micrómetro micrómetros metro metros";
/// A short word that is a unit only right after digits.
const AFTER_DIGITS: &str = "in m g s";
const NUMBERS: &str = "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen \
    seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred thousand half dos tres \
    cuatro cinco seis siete ocho nueve diez doce trece catorce quince dieciséis diecisiete dieciocho diecinueve veinte \
    treinta cuarenta cincuenta sesenta setenta ochenta noventa cien mil medio media";
/// What stands before the number of a board.
const BOARDS: &str = "board boards tabla tablas";

/// Where the first number with a unit stands, in bytes.
pub(crate) fn typed_number(text: &str) -> Option<Range<usize>> {
    let words = words(text);
    let at = |n: usize| words.get(n).map(|range| text.get(range.clone()).unwrap_or_default());
    for (n, range) in words.iter().enumerate() {
        let word = at(n)?;
        let digits = word.trim_end_matches(['°', '%']);
        let is_digits = digits.starts_with(|c: char| c.is_ascii_digit());
        // 6°, 5%.
        if is_digits && digits.len() < word.len() {
            return Some(range.clone());
        }
        // 15lb: digits with letters on them.
        let end = digits.find(|c: char| !c.is_ascii_digit() && c != '.' && c != ',').unwrap_or(digits.len());
        let (_, stuck) = digits.split_at(end);
        if is_digits && !stuck.is_empty() && unit(stuck, true) {
            return Some(range.clone());
        }
        let is_number = is_digits && stuck.is_empty() || among(NUMBERS, word);
        let next = at(n + 1).unwrap_or_default();
        if is_number && unit(next, is_digits) {
            return Some(range.start..words.get(n + 1)?.end);
        }
        // Board 17, boards 3 to 7.
        if is_digits && stuck.is_empty() && n > 0 && among(BOARDS, at(n - 1)?) {
            return Some(words.get(n - 1)?.start..range.end);
        }
    }
    None
}

fn unit(word: &str, after_digits: bool) -> bool {
    among(UNITS, word) || after_digits && (among(AFTER_DIGITS, word) || word == "°" || word == "%")
}

fn among(list: &str, word: &str) -> bool {
    let word = word.trim_end_matches(['.', ',']).to_lowercase();
    list.split_whitespace().any(|one| one == word)
}

/// Words and numbers, a hyphen between two words parting them.
fn words(text: &str) -> Vec<Range<usize>> {
    let inside = |c: char| c.is_alphanumeric() || matches!(c, '°' | '%' | '.' | ',' | '/');
    let mut found = Vec::new();
    let mut start = None;
    for (at, c) in text.char_indices().chain([(text.len(), ' ')]) {
        match (inside(c), start) {
            (true, None) => start = Some(at),
            (false, Some(from)) => {
                let word = text.get(from..at).unwrap_or_default().trim_end_matches(['.', ',', '/']);
                found.push(from..from + word.len());
                start = None;
            }
            _ => {}
        }
    }
    found.retain(|range| !range.is_empty());
    found
}
