//! Which break opportunities are taken: the fewest lines, and among those the most even.
//!
//! Labels are short and set ragged, so stretching words never pays; what a reader sees is a lone word on the
//! last line, and a line that ends in the middle of a thought. The whole paragraph is considered at once, as
//! optimal-fit setting does, over the sum of squared slack of every line, the last one too (a label reads best
//! in lines of one length), with something on top for breaks that are worse than others.

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
    /// What it costs to end a line after it, beside the slack: [`POOR`] or nothing.
    pub(super) cost: f64,
}

/// A break in a poor place, between two characters of Chinese for one: as bad as a sixth of the line left empty. Ours,
/// by looking at labels.
pub(super) const POOR: f64 = 0.03;

/// A last line of one short piece: as bad as two fifths of a line left empty. Ours.
const LONE: f64 = 0.16;

/// Which last lines are short: up to this share of the measure.
const SHORT: f64 = 0.4;

/// How a text's beginning is best set.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Best {
    lines: usize,
    cost: f64,
    /// Where the last line starts.
    start: usize,
}

impl Best {
    fn beats(&self, other: &Self) -> bool {
        self.lines < other.lines || (self.lines == other.lines && self.cost < other.cost)
    }
}

/// What a line costs, from the pieces it holds: the share of the measure left empty, squared, and how it ends.
fn cost(pieces: &[Piece], line: &Range<usize>, printed: f64, measure: f64) -> f64 {
    let slack = (measure - printed) / measure;
    let last = line.end == pieces.len();
    let lone = last && line.start > 0 && line.len() == 1 && printed <= measure * SHORT;
    let ends = if last { 0.0 } else { pieces.get(line.end - 1).map_or(0.0, |piece| piece.cost) };
    slack * slack + ends + if lone { LONE } else { 0.0 }
}

/// The pieces of each line, or the index of a piece that is wider than the measure by itself.
///
/// Takes at most as many steps as there are pieces times the pieces that fit on one line.
pub(super) fn lines(pieces: &[Piece], measure: f64) -> Result<Vec<Range<usize>>, usize> {
    if let Some(wide) = pieces.iter().position(|piece| piece.printed > measure) {
        return Err(wide);
    }
    // best[i]: how the pieces before i are best set.
    let mut best = vec![Best { lines: 0, cost: 0.0, start: 0 }];
    for end in 1..=pieces.len() {
        let mut choice: Option<Best> = None;
        let mut printed = 0.0;
        for start in (0..end).rev() {
            let (Some(piece), Some(before)) = (pieces.get(start), best.get(start)) else { continue };
            printed += if start + 1 == end { piece.printed } else { piece.full };
            if printed > measure {
                break;
            }
            let line = start..end;
            let candidate = Best {
                lines: before.lines + 1,
                cost: before.cost + cost(pieces, &line, printed, measure),
                start,
            };
            if choice.is_none_or(|choice| candidate.beats(&choice)) {
                choice = Some(candidate);
            }
        }
        // A piece by itself always fits, so there is always a choice.
        best.push(choice.unwrap_or(Best { lines: usize::MAX, cost: f64::MAX, start: end - 1 }));
    }
    let mut found = Vec::new();
    let mut end = pieces.len();
    while end > 0 {
        let start = best.get(end).map_or(0, |best| best.start);
        found.push(start..end);
        end = start;
    }
    found.reverse();
    Ok(found)
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    use super::*;

    fn words(widths: &[f64]) -> Vec<Piece> {
        widths
            .iter()
            .enumerate()
            .map(|(i, &w)| Piece {
                range: i..i + 1,
                printed_end: i + 1,
                full: w + 1.0,
                printed: w,
                cost: 0.0,
            })
            .collect()
    }

    #[test]
    fn evens_out_rather_than_filling_greedily() {
        // Greedy setting gives 4+1+4 | 3: the lone 3. Even setting moves one down.
        assert_eq!(lines(&words(&[4.0, 4.0, 3.0]), 9.5), Ok(vec![0..1, 1..3]));
        // The same on both sides: the lone one comes first.
        assert_eq!(lines(&words(&[3.0, 3.0, 3.0]), 9.5), Ok(vec![0..1, 1..3]));
    }

    #[test]
    fn never_takes_more_lines_than_greedy() {
        let one = lines(&words(&[4.0, 4.0]), 9.0).expect("it fits");
        assert!(matches!(one.as_slice(), [line] if *line == (0..2)));
        assert_eq!(lines(&words(&[]), 9.0), Ok(vec![]));
    }

    #[test]
    fn a_line_ends_where_a_thought_does() {
        // Seven squares: 4 | 3 and 3 | 4 are as even, until a point follows the third.
        let mut squares = words(&[1.0; 7]);
        for piece in &mut squares {
            (piece.full, piece.cost) = (1.0, POOR);
        }
        assert_eq!(lines(&squares, 5.0), Ok(vec![0..4, 4..7]));
        squares[2].cost = 0.0;
        assert_eq!(lines(&squares, 5.0), Ok(vec![0..3, 3..7]));
    }

    #[test]
    fn a_word_wider_than_the_measure_is_named() {
        assert_eq!(lines(&words(&[4.0, 12.0, 3.0]), 9.0), Err(1));
    }

    /// Every way to set the pieces, weighed by the same costs.
    fn every_way(pieces: &[Piece], measure: f64) -> Option<(usize, f64)> {
        let count = pieces.len();
        let mut best: Option<(usize, f64)> = None;
        for breaks in 0..1_usize << (count - 1) {
            let (mut start, mut lines, mut sum) = (0, 0, 0.0);
            let mut fits = true;
            for end in 1..=count {
                if end < count && breaks & (1 << (end - 1)) == 0 {
                    continue;
                }
                let line = &pieces[start..end];
                let printed = line.iter().map(|piece| piece.full).sum::<f64>() - line[line.len() - 1].full
                    + line[line.len() - 1].printed;
                fits &= printed <= measure + 1e-9;
                lines += 1;
                sum += cost(pieces, &(start..end), printed, measure);
                start = end;
            }
            if fits && best.is_none_or(|(l, c)| lines < l || (lines == l && sum < c)) {
                best = Some((lines, sum));
            }
        }
        best
    }

    proptest! {
        #[test]
        fn no_other_way_to_set_is_better(
            widths in proptest::collection::vec((1_u32..8, 0_u32..2, any::<bool>()), 1..11),
            measure in 8_u32..24,
        ) {
            let pieces: Vec<Piece> = widths
                .iter()
                .map(|&(width, space, inside)| Piece {
                    range: 0..1,
                    printed_end: 1,
                    full: f64::from(width + space),
                    printed: f64::from(width),
                    cost: if inside { POOR } else { 0.0 },
                })
                .collect();
            let measure = f64::from(measure);
            let found = lines(&pieces, measure).expect("every piece is narrower");
            let sum: f64 = found
                .iter()
                .map(|line| {
                    let before: f64 = pieces[line.start..line.end - 1].iter().map(|piece| piece.full).sum();
                    cost(&pieces, line, before + pieces[line.end - 1].printed, measure)
                })
                .sum();
            let (fewest, least) = every_way(&pieces, measure).expect("one line for each piece always fits");
            prop_assert_eq!(found.len(), fewest);
            prop_assert!((sum - least).abs() < 1e-9, "{} instead of {}", sum, least);
        }
    }
}
