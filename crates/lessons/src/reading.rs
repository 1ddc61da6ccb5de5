//! How easily a text reads.

use crate::lesson::Lesson;
use crate::said::{Block, Said};
use crate::work::{AsksDoc, Guess};

/// School grade of a text by the Flesch-Kincaid formula (Kincaid, Fishburne,
/// Rogers and Chissom, 1975): 0.39 words a sentence + 11.8 syllables a word −
/// 15.59. Grade 8 is an age of about 13. Syllables are counted as groups of
/// vowels, without a silent e at the end; a computed number counts as one word
/// of two syllables; the full stop of "No. 3" ends no sentence. Zero for a text
/// without words.
pub fn grade(text: &str) -> f64 {
    let text = &numbered(text);
    let sentences =
        text.split(['.', '!', '?', ';', ':']).filter(|part| part.chars().any(char::is_alphanumeric)).count();
    let words: Vec<&str> = text.split_whitespace().filter(|word| word.chars().any(char::is_alphanumeric)).collect();
    if words.is_empty() || sentences == 0 {
        return 0.0;
    }
    let syllables: usize = words.iter().map(|word| syllables_of(word)).sum();
    let (words, sentences) = (words.len() as f64, sentences as f64);
    0.39 * words / sentences + 11.8 * syllables as f64 / words - 15.59
}

/// A text in which "No. 3" has lost its full stop.
fn numbered(text: &str) -> String {
    let mut parts = text.split("No. ");
    let mut plain = parts.next().unwrap_or_default().to_owned();
    for part in parts {
        plain.push_str(if part.starts_with(|c: char| c.is_ascii_digit()) { "No " } else { "No. " });
        plain.push_str(part);
    }
    plain
}

fn syllables_of(word: &str) -> usize {
    if word.chars().any(|c| c.is_ascii_digit()) {
        return 2;
    }
    let letters: Vec<char> = word.to_lowercase().chars().filter(|c| c.is_alphabetic()).collect();
    let vowel = |c: &char| "aeiouyäöüé".contains(*c);
    let groups = letters
        .iter()
        .zip(std::iter::once(&' ').chain(&letters))
        .filter(|(c, before)| vowel(c) && !vowel(before))
        .count();
    let silent = match letters.as_slice() {
        [.., before, 'l', 'e'] if !vowel(before) => false,
        [.., before, 'e'] => !vowel(before),
        [.., before, 'e', 'd'] => !vowel(before) && *before != 't' && *before != 'd',
        _ => false,
    };
    groups.saturating_sub(usize::from(silent)).max(1)
}

impl Lesson {
    /// Everything that the learner reads: prose, options, answers and hints, as
    /// one text, its numbers as the step opens; not the teacher's note.
    pub fn words_read(&self) -> String {
        let mut text = String::new();
        let about = self.about();
        blocks(&about.aim, &mut text);
        let mut left = None;
        for (n, step) in about.steps.iter().enumerate() {
            let Ok(start) = self.opens(n, left.take()) else { break };
            if let Ok(shown) = self.shown(n, &start, &start) {
                blocks(&shown.text, &mut text);
                shown.options.iter().chain(&shown.hints).for_each(|said| line(said, &mut text));
            }
            if let Some(AsksDoc::Option { options }) = step.asks {
                for option in 0..options {
                    if let Ok(answered) = self.answer(n, &start, &Guess::Option(option)) {
                        line(&answered.say, &mut text);
                    }
                }
            }
            left = self.ends(n, &start).ok();
            if let Some(end) = &left
                && let Ok(checked) = self.check(n, &start, end)
            {
                checked.done.iter().for_each(|said| line(said, &mut text));
            }
        }
        text
    }
}

fn blocks(blocks: &[Block], text: &mut String) {
    for block in blocks {
        match block {
            Block::Paragraph { said } => line(said, text),
            Block::List { items, .. } => items.iter().for_each(|said| line(said, text)),
        }
    }
}

fn line(said: &[Said], text: &mut String) {
    spoken(said, text);
    text.push('\n');
}

fn spoken(said: &[Said], text: &mut String) {
    for part in said {
        match part {
            Said::Text { text: words } | Said::Term { text: words, .. } => text.push_str(words),
            // Any number will do; a full stop in it would end a sentence.
            Said::Value { .. } => text.push('5'),
            Said::Strong { said } | Said::Emphasis { said } => spoken(said, text),
        }
    }
}
