//! Which break opportunities are taken: the fewest lines, and among those the most even.
//!
//! Labels are short and set ragged, so stretching words never pays; what a reader sees is a lone word on the
//! last line. The whole paragraph is considered at once, as optimal-fit setting does, over the sum of squared
//! slack of every line, the last one too: a label reads best in lines of one length.

use std::ops::Range;

/// What stands between two opportunities.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Piece {
    /// Bytes of the text, trailing spaces included.
    pub(super) range: Range<usize>,
    /// Where the printed part ends, before trailing spaces.
    pub(super) printed_end: usize,
    /// Width with trailing spaces, in ems.
    pub(super) full: f64,
    /// Width without, in ems.
    pub(super) printed: f64,
}

/// The pieces of each line, or the index of a piece that is wider than the measure by itself.
pub(super) fn lines(pieces: &[Piece], measure: f64) -> Result<Vec<Range<usize>>, usize> {
    if let Some(wide) = pieces.iter().position(|piece| piece.printed > measure) {
        return Err(wide);
    }
    // best[i]: how pieces before i are best set: (lines, slack squared, where the last line starts).
    let mut best: Vec<(usize, f64, usize)> = vec![(0, 0.0, 0)];
    for end in 1..=pieces.len() {
        let mut choice: Option<(usize, f64, usize)> = None;
        let mut width = 0.0;
        for start in (0..end).rev() {
            let Some(piece) = pieces.get(start) else { continue };
            let printed = if start + 1 == end { piece.printed } else { width + piece.full };
            width = if start + 1 == end { piece.printed } else { width + piece.full };
            if printed > measure {
                break;
            }
            let Some(&(lines, cost, _)) = best.get(start) else { continue };
            let slack = (measure - printed) / measure;
            let candidate = (lines + 1, cost + slack * slack, start);
            let better =
                choice.is_none_or(|(l, c, _)| candidate.0 < l || (candidate.0 == l && candidate.1 < c));
            if better {
                choice = Some(candidate);
            }
        }
        // A piece by itself always fits, so there is always a choice.
        best.push(choice.unwrap_or((usize::MAX, f64::MAX, end.saturating_sub(1))));
    }
    let mut found = Vec::new();
    let mut end = pieces.len();
    while end > 0 {
        let start = best.get(end).map_or(0, |&(_, _, start)| start);
        found.push(start..end);
        end = start;
    }
    found.reverse();
    Ok(found)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn words(widths: &[f64]) -> Vec<Piece> {
        widths
            .iter()
            .enumerate()
            .map(|(i, &w)| Piece { range: i..i + 1, printed_end: i + 1, full: w + 1.0, printed: w })
            .collect()
    }

    #[test]
    fn evens_out_rather_than_filling_greedily() {
        // Greedy setting gives 4+1+4 | 3: the lone 3. Even setting moves one down.
        assert_eq!(lines(&words(&[4.0, 4.0, 3.0]), 9.5), Ok(vec![0..1, 1..3]));
    }

    #[test]
    fn never_takes_more_lines_than_greedy() {
        let one = lines(&words(&[4.0, 4.0]), 9.0).expect("it fits");
        assert!(matches!(one.as_slice(), [line] if *line == (0..2)));
        assert_eq!(lines(&words(&[]), 9.0), Ok(vec![]));
    }

    #[test]
    fn a_word_wider_than_the_measure_is_named() {
        assert_eq!(lines(&words(&[4.0, 12.0, 3.0]), 9.0), Err(1));
    }
}
