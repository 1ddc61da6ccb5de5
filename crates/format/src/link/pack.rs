//! Raw deflate whose window already holds the words that shots are made of.

use miniz_oxide::deflate::core::{CompressorOxide, TDEFLFlush, compress_to_output, create_comp_flags_from_zip_params};
use miniz_oxide::inflate::TINFLStatus;
use miniz_oxide::inflate::core::inflate_flags::TINFL_FLAG_USING_NON_WRAPPING_OUTPUT_BUF;
use miniz_oxide::inflate::core::{DecompressorOxide, decompress};

use super::MAX_LINK_JSON_BYTES;

/// What the window holds before the first byte. Never changed: edition 1 of the
/// link means these bytes. The likeliest stand last, where deflate reaches them
/// with the fewest bits.
const WORDS: &[u8] = include_bytes!("words.txt");

/// Why bytes cannot be unpacked.
pub(super) enum Fault {
    /// The end is missing.
    CutOff,
    /// No deflate stream, or more after its end.
    Damaged,
    /// More than [`MAX_LINK_JSON_BYTES`] come out.
    TooLong,
}

/// Packs as tightly as it can: with codes of its own, or with the fixed ones
/// that need no table, whichever is shorter.
pub(super) fn pack(plain: &[u8]) -> Vec<u8> {
    const TIGHTEST: i32 = 10;
    const OWN_CODES: i32 = 0;
    const FIXED_CODES: i32 = 4;
    let own = pack_with(plain, create_comp_flags_from_zip_params(TIGHTEST, 0, OWN_CODES));
    let fixed = pack_with(plain, create_comp_flags_from_zip_params(TIGHTEST, 0, FIXED_CODES));
    if own.len() <= fixed.len() { own } else { fixed }
}

/// Packs the words, then what matters, and keeps what came out for the latter:
/// a flush between them ends on a whole byte and leaves the window as it is.
fn pack_with(plain: &[u8], flags: u32) -> Vec<u8> {
    let mut packer = CompressorOxide::new(flags);
    compress_to_output(&mut packer, WORDS, TDEFLFlush::Sync, |_| true);
    let mut packed = Vec::new();
    compress_to_output(&mut packer, plain, TDEFLFlush::Finish, |bytes| {
        packed.extend_from_slice(bytes);
        true
    });
    packed
}

/// Undoes [`pack`] into a buffer that is never larger than the cap and the words.
pub(super) fn unpack(packed: &[u8]) -> Result<Vec<u8>, Fault> {
    let mut out = WORDS.to_vec();
    out.resize(WORDS.len() + MAX_LINK_JSON_BYTES, 0);
    let mut unpacker = DecompressorOxide::new();
    let (status, read, written) =
        decompress(&mut unpacker, packed, &mut out, WORDS.len(), TINFL_FLAG_USING_NON_WRAPPING_OUTPUT_BUF);
    match status {
        TINFLStatus::Done if read == packed.len() => {
            out.truncate(WORDS.len() + written);
            Ok(out.split_off(WORDS.len()))
        }
        TINFLStatus::HasMoreOutput => Err(Fault::TooLong),
        TINFLStatus::FailedCannotMakeProgress | TINFLStatus::NeedsMoreInput => Err(Fault::CutOff),
        _ => Err(Fault::Damaged),
    }
}
