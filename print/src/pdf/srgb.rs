//! The sRGB profile of the web file, written from the standard's numbers: a matrix and one parametric curve.

/// s15Fixed16Number: thousandths would do, but the profiles everyone has are exact to this.
fn fixed(value: f64) -> [u8; 4] {
    #[expect(clippy::cast_possible_truncation, reason = "all values are below 3")]
    let number = (value * 65536.0).round() as i32;
    number.to_be_bytes()
}

fn xyz(values: [f64; 3]) -> Vec<u8> {
    let mut tag = b"XYZ \0\0\0\0".to_vec();
    tag.extend(values.into_iter().flat_map(fixed));
    tag
}

fn text(words: &str) -> Vec<u8> {
    let utf16: Vec<u8> = words.encode_utf16().flat_map(u16::to_be_bytes).collect();
    let mut tag = b"mluc\0\0\0\0\0\0\0\x01\0\0\0\x0cenUS".to_vec();
    tag.extend(u32::try_from(utf16.len()).unwrap_or(0).to_be_bytes());
    tag.extend(28_u32.to_be_bytes());
    tag.extend(utf16);
    tag
}

/// The curve of IEC 61966-2-1: linear below .04045, a power of 2.4 above (ICC.1, parametric curve type 3).
fn curve() -> Vec<u8> {
    let mut tag = b"para\0\0\0\0\0\x03\0\0".to_vec();
    tag.extend([2.4, 1.0 / 1.055, 0.055 / 1.055, 1.0 / 12.92, 0.04045].into_iter().flat_map(fixed));
    tag
}

/// The profile: version 4 for displays, its primaries adapted to D50 by Bradford's matrix, as ICC.1 asks.
pub(super) fn profile() -> Vec<u8> {
    let mut adaptation = b"sf32\0\0\0\0".to_vec();
    adaptation.extend(
        [
            1.047_886, 0.022_919, -0.050_216, 0.029_582, 0.990_484, -0.017_079, -0.009_252, 0.015_073,
            0.751_678,
        ]
        .into_iter()
        .flat_map(fixed),
    );
    let tags: [(&[u8; 4], Vec<u8>); 10] = [
        (b"desc", text("sRGB")),
        (b"cprt", text("No copyright, use freely")),
        (b"wtpt", xyz([0.964_2, 1.0, 0.824_9])),
        (b"chad", adaptation),
        (b"rXYZ", xyz([0.436_066, 0.222_488, 0.013_916])),
        (b"gXYZ", xyz([0.385_147, 0.716_873, 0.097_076])),
        (b"bXYZ", xyz([0.143_066, 0.060_608, 0.714_096])),
        (b"rTRC", curve()),
        (b"gTRC", curve()),
        (b"bTRC", curve()),
    ];
    let mut table = u32::try_from(tags.len()).unwrap_or(0).to_be_bytes().to_vec();
    let mut data: Vec<u8> = Vec::new();
    let mut placed: Vec<(Vec<u8>, usize, usize)> = Vec::new();
    let start = 128 + 4 + tags.len() * 12;
    for (name, tag) in tags {
        let known = placed.iter().find(|(same, _, _)| *same == tag).map(|(_, at, length)| (*at, *length));
        let (at, length) = known.unwrap_or_else(|| {
            let place = (start + data.len(), tag.len());
            data.extend(&tag);
            while !data.len().is_multiple_of(4) {
                data.push(0);
            }
            placed.push((tag, place.0, place.1));
            place
        });
        table.extend(name);
        table.extend(u32::try_from(at).unwrap_or(0).to_be_bytes());
        table.extend(u32::try_from(length).unwrap_or(0).to_be_bytes());
    }
    let mut profile = Vec::new();
    profile.extend(u32::try_from(start + data.len()).unwrap_or(0).to_be_bytes());
    profile.extend([0; 4]);
    profile.extend([4, 0x30, 0, 0]);
    profile.extend(b"mntrRGB XYZ ");
    // A fixed day: the profile is part of the program, not of the job.
    profile.extend([2026_u16, 1, 1, 0, 0, 0].into_iter().flat_map(u16::to_be_bytes));
    profile.extend(b"acsp");
    profile.extend([0; 28]);
    profile.extend([0.964_2, 1.0, 0.824_9].into_iter().flat_map(fixed));
    profile.resize(128, 0);
    profile.extend(table);
    profile.extend(data);
    profile
}

#[cfg(test)]
mod tests {
    use super::*;

    /// ICC.1:2010, 7.2 and 9: sizes and offsets, and white as the sum of the primaries.
    #[test]
    fn the_profile_is_whole() {
        let bytes = profile();
        let number = |at: usize| u32::from_be_bytes(bytes[at..at + 4].try_into().expect("four bytes"));
        assert_eq!(number(0) as usize, bytes.len());
        assert_eq!(&bytes[36..40], b"acsp");
        let mut white = [0.0; 3];
        for tag in 0..number(128) as usize {
            let entry = 132 + tag * 12;
            let (at, length) = (number(entry + 4) as usize, number(entry + 8) as usize);
            assert!(at % 4 == 0 && at + length <= bytes.len());
            if bytes[entry + 1..entry + 4] == *b"XYZ" {
                for (part, sum) in white.iter_mut().enumerate() {
                    *sum += f64::from(number(at + 8 + part * 4)) / 65536.0;
                }
            }
        }
        for (sum, d50) in white.into_iter().zip([0.9642, 1.0, 0.8249]) {
            assert!((sum - d50).abs() < 0.0005, "{white:?}");
        }
        assert!(bytes.len() < 700, "{}", bytes.len());
    }
}
