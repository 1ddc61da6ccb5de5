//! What may stand where a name is not known: what is spelled nearest, and where to look.

use format::{Phrase, phrase};

use super::parse::Names;
use crate::figure::FIGURES;

/// Most names that are offered.
const MOST: usize = 3;
/// A name further than this from what was written is another.
const FAR: usize = 4;

pub(super) fn known(names: &Names, word: &str) -> Phrase {
    let all = FIGURES.iter().map(|figure| figure.name);
    let all = all.chain(names.given.keys().map(String::as_str)).chain(names.locals.keys().copied());
    let mut near: Vec<(usize, &str)> =
        all.map(|name| (distance(word, name), name)).filter(|(far, _)| *far <= FAR).collect();
    near.sort_unstable();
    let nearest = near.first().map_or(0, |(far, _)| *far);
    let near = near.iter().filter(|(far, _)| *far <= nearest + 1).take(MOST).map(|(_, name)| Phrase::from(*name));
    match near.reduce(|one, next| phrase!("or", "{one} or {next}", one = one, next = next)) {
        Some(near) => phrase!("listed-name-near", "a name from the list of names, perhaps {near}", near = near),
        None => phrase!("listed-name", "a name from the list of names"),
    }
}

/// Letters to change, add or leave out (Levenshtein).
fn distance(a: &str, b: &str) -> usize {
    let b: Vec<char> = b.chars().collect();
    let mut row: Vec<usize> = (0..=b.len()).collect();
    for (i, x) in a.chars().take(60).enumerate() {
        let mut next = vec![i + 1];
        for (j, y) in b.iter().enumerate() {
            let swap = row.get(j).copied().unwrap_or_default() + usize::from(x != *y);
            let leave = row.get(j + 1).copied().unwrap_or_default() + 1;
            let add = next.get(j).copied().unwrap_or_default() + 1;
            next.push(swap.min(leave).min(add));
        }
        row = next;
    }
    row.last().copied().unwrap_or_default()
}
