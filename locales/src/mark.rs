// The mark of an English source file, kept with a review so that a later change shows.
// Shared with `build.rs`, which is why it is a file of its own without any import.

/// A short mark of what a message file says: comments and blank lines do not count.
///
/// It is FNV-1a, 64 bits, in hexadecimal: it only has to notice that a text changed since it was
/// reviewed, not to withstand an attacker.
#[must_use]
pub fn source_mark(ftl: &str) -> String {
    let mut hash: u64 = 0xcbf2_9ce4_8422_2325;
    for line in ftl.lines().map(str::trim_end).filter(|line| !line.is_empty() && !line.starts_with('#')) {
        for byte in line.bytes().chain([b'\n']) {
            hash = (hash ^ u64::from(byte)).wrapping_mul(0x0000_0100_0000_01b3);
        }
    }
    format!("{hash:016x}")
}
