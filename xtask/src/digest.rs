//! SHA-256 in hexadecimal.

use sha2::{Digest, Sha256};

/// The SHA-256 of these bytes, in lowercase hexadecimal.
pub(crate) fn sha256(bytes: &[u8]) -> String {
    let mut out = String::with_capacity(64);
    for byte in Sha256::digest(bytes) {
        out.push_str(&format!("{byte:02x}"));
    }
    out
}

#[cfg(test)]
mod tests {
    #[test]
    fn known_value() {
        // FIPS 180-4, the example of a one-block message ("abc").
        assert_eq!(super::sha256(b"abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }
}
