//! A shot with its ball in the fragment of a web address, and back.
//!
//! A fragment is `p1.` and then, in URL-safe base64 (RFC 4648 section 5) without
//! padding, four bytes of Adler-32 (RFC 1950), big end first, of the shot's
//! JSON, and that JSON in raw deflate (RFC 1951) whose window already holds the
//! words of `words.txt`. The number after `p` says which words and which layout;
//! another layout or another choice of words is another number, and links that
//! people keep stay readable.
//!
//! Whoever makes a link may be hostile, so nothing is trusted: every size is
//! capped before it is allocated, the checksum must fit, and what comes out is
//! read and built like any file.

mod pack;
mod write;

use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;

use crate::problem::Problem;
use crate::shot::{BallRef, ShotFile};
use crate::tree::{Tree, quote};
use crate::{Phrase, phrase};

/// Longest fragment that is made or read, in characters (64 Ki).
pub const MAX_LINK_CHARS: usize = 64 << 10;
/// Most bytes of JSON that a link may hold (512 KiB).
pub const MAX_LINK_JSON_BYTES: usize = 512 << 10;
/// Most characters of one name or note in a link.
pub const MAX_LINK_TEXT_CHARS: usize = 1_000;

/// What every fragment of this edition begins with.
const PREFIX: &str = "p1.";

impl ShotFile {
    /// The fragment, without its `#`, that [`ShotFile::from_link`] reads as this
    /// very shot. The same shot gives the same fragment, natively and in
    /// WebAssembly.
    ///
    /// # Errors
    /// Where the ball is only named by a path or cannot be made, where a name or
    /// note has more than [`MAX_LINK_TEXT_CHARS`] characters, and where the whole
    /// is more than [`MAX_LINK_JSON_BYTES`] or [`MAX_LINK_CHARS`].
    pub fn to_link(&self) -> Result<String, Problem> {
        let json = write::minimal(self)?;
        open(&json)?;
        let mut bytes = adler2::adler32_slice(&json).to_be_bytes().to_vec();
        bytes.extend(pack::pack(&json));
        let fragment = format!("{PREFIX}{}", URL_SAFE_NO_PAD.encode(bytes));
        if fragment.len() > MAX_LINK_CHARS {
            return Err(too_much(fragment.len()));
        }
        Ok(fragment)
    }

    /// Reads a fragment, with or without its `#`, or a whole address that ends
    /// in one.
    ///
    /// # Errors
    /// Where it is no link of this edition, is damaged, cut off or too long, and
    /// the first mistake in the shot it holds, with its place there. The ball
    /// is there and can be built, and the lane can be rolled on.
    pub fn from_link(link: &str) -> Result<Self, Problem> {
        let link = link.trim();
        let fragment = link.rsplit_once('#').map_or(link, |(_, fragment)| fragment);
        let coded = after_prefix(fragment)?;
        if fragment.len() > MAX_LINK_CHARS {
            return Err(too_much(fragment.len()));
        }
        let bytes = URL_SAFE_NO_PAD.decode(coded).map_err(|_| not_base64(coded))?;
        let Some((sum, packed)) = bytes.split_first_chunk::<4>() else {
            return Err(cut_off(fragment));
        };
        let json = pack::unpack(packed).map_err(|fault| match fault {
            pack::Fault::CutOff => cut_off(fragment),
            pack::Fault::Damaged => damaged(),
            pack::Fault::TooLong => too_much_inside(),
        })?;
        if adler2::adler32_slice(&json).to_be_bytes() != *sum {
            return Err(damaged());
        }
        open(&json)
    }
}

/// Reads and checks the JSON of a link, whichever way it goes.
fn open(json: &[u8]) -> Result<ShotFile, Problem> {
    check_texts(&Tree::parse(json)?, "")?;
    let shot = ShotFile::read(json)?;
    let ball = match &shot.ball {
        BallRef::Object(ball) => ball,
        BallRef::Path(path) => {
            return Err(Problem::new("ball", quote(path).into(), phrase!("ball-itself", "the ball itself")).saying(
                phrase!("link-holds-ball", "A link holds the ball itself, and here is only the name of its file."),
            ));
        }
    };
    ball.build().map_err(|problem| problem.within("ball"))?;
    shot.throw.shot(&ball.cover)?;
    Ok(shot)
}

/// Refuses long texts, wherever they stand.
fn check_texts(tree: &Tree, place: &str) -> Result<(), Problem> {
    match tree {
        Tree::Text(text) if text.chars().count() > MAX_LINK_TEXT_CHARS => {
            let most = MAX_LINK_TEXT_CHARS;
            let accepted = phrase!("most-chars-in-link", "at most {most} characters in a link", most = most);
            Err(Problem::new(place, so_many_chars(text.chars().count()), accepted).saying(phrase!(
                "link-text-long",
                "A name or a note is too long for a link: at most {most} characters.",
                most = most
            )))
        }
        Tree::List(items) => {
            items.iter().enumerate().try_for_each(|(index, item)| check_texts(item, &format!("{place}[{index}]")))
        }
        Tree::Object(map) => map.iter().try_for_each(|(key, value)| {
            let inner = if place.is_empty() { key.clone() } else { format!("{place}.{key}") };
            check_texts(value, &inner)
        }),
        _ => Ok(()),
    }
}

/// What follows the edition's mark.
fn after_prefix(fragment: &str) -> Result<&str, Problem> {
    if let Some(coded) = fragment.strip_prefix(PREFIX) {
        return Ok(coded);
    }
    let edition = fragment
        .strip_prefix('p')
        .and_then(|rest| rest.split_once('.'))
        .filter(|(number, _)| (1..=9).contains(&number.len()) && number.bytes().all(|b| b.is_ascii_digit()));
    let accepted = phrase!("link-begins", "an address whose part after # begins with {begin}", begin = PREFIX);
    Err(match edition {
        Some((number, _)) => {
            let edition = |number: &str| phrase!("edition", "edition {number}", number = number);
            Problem::new("", edition(number), edition("1")).saying(phrase!(
                "link-edition",
                "The link is of edition {number}, which this version of Pithball cannot read.",
                number = number
            ))
        }
        None if fragment.is_empty() => Problem::new("", phrase!("nothing", "nothing"), accepted)
            .saying(phrase!("address-empty", "The address holds no shot.")),
        None => Problem::new("", quote(fragment).into(), accepted)
            .saying(phrase!("no-link", "This is not a link that Pithball made.")),
    })
}

fn not_base64(coded: &str) -> Problem {
    let stray = coded.chars().find(|c| !(c.is_ascii_alphanumeric() || matches!(c, '-' | '_')));
    match stray {
        Some(c) => Problem::new(
            "",
            phrase!("stray-char", "the character {char}", char = format!("{c:?}")),
            phrase!("link-chars", "letters, digits, - and _"),
        )
        .saying(phrase!("link-stray-char", "The link is damaged: a character in it does not belong to a link.")),
        None => not_whole(coded).saying(phrase!(
            "link-damaged-or-cut",
            "The link is damaged or cut off: characters are missing or too many at its end."
        )),
    }
}

fn cut_off(fragment: &str) -> Problem {
    not_whole(fragment).saying(phrase!("link-cut", "The link is cut off: its end is missing."))
}

fn not_whole(part: &str) -> Problem {
    Problem::new("", so_many_chars(part.len()), phrase!("whole-link", "all the characters of the link"))
}

pub(crate) fn so_many_chars(count: usize) -> Phrase {
    phrase!("so-many-chars", "{count} characters", count = count)
}

pub(crate) fn most_chars(most: usize) -> Phrase {
    phrase!("most-chars", "at most {most} characters", most = most)
}

fn too_much_for_a_link() -> Phrase {
    phrase!("link-too-much", "This is too much for a link: save it as a file instead.")
}

fn damaged() -> Problem {
    let found = phrase!("chars-do-not-fit", "characters that do not fit each other");
    Problem::new("", found, phrase!("link-as-made", "the link exactly as it was made"))
        .saying(phrase!("link-damaged", "The link is damaged: its characters are not those it was made with."))
}

fn too_much(chars: usize) -> Problem {
    Problem::new("", so_many_chars(chars), most_chars(MAX_LINK_CHARS)).saying(too_much_for_a_link())
}

fn too_much_inside() -> Problem {
    Problem::new(
        "",
        phrase!("more-bytes", "more than {most} bytes of text", most = MAX_LINK_JSON_BYTES),
        phrase!("most-bytes", "at most {most} bytes of text", most = MAX_LINK_JSON_BYTES),
    )
    .saying(phrase!("link-not-opened", "The link holds more than any shot needs, so it was not opened."))
}
