//! What every drawing must keep to, judged on the drawing as it is filled and not on its data.

use super::*;
use crate::path::bounds;

/// The finest stroke and the finest gap, in units of the square: a third of a millimetre at 8 mm, which is
/// 0.94 pt. The least that prints is .25 pt for a line (CHECK-VALUES "type and line") and more where it is left
/// out of ink.
const FINEST: f64 = 2.0;

/// Pixels to a unit where strokes are measured.
const FINE: usize = 4;

/// A filled drawing: rows of pixels, `true` where there is ink.
struct Filled {
    side: usize,
    ink: Vec<bool>,
}

impl Filled {
    /// Fills by the even-odd rule, each pixel by its centre, with `margin` empty units around the square.
    fn new(ops: &[PathOp], per_unit: f64, margin: f64) -> Self {
        let side = ((PICTOGRAM_SIDE + 2.0 * margin) * per_unit).round() as usize;
        let edges = edges(ops);
        let mut ink = vec![false; side * side];
        for (row, line) in ink.chunks_mut(side).enumerate() {
            let y = (row as f64 + 0.5) / per_unit - margin;
            let mut crossings: Vec<f64> = edges
                .iter()
                .filter(|(a, b)| (a.1 <= y) != (b.1 <= y))
                .map(|(a, b)| a.0 + (y - a.1) / (b.1 - a.1) * (b.0 - a.0))
                .collect();
            crossings.sort_by(f64::total_cmp);
            for (column, pixel) in line.iter_mut().enumerate() {
                let x = (column as f64 + 0.5) / per_unit - margin;
                *pixel = crossings.iter().filter(|at| **at < x).count() % 2 == 1;
            }
        }
        Self { side, ink }
    }

    fn inverted(&self) -> Self {
        Self { side: self.side, ink: self.ink.iter().map(|ink| !ink).collect() }
    }

    /// Where a disc of this radius in pixels, centred on a pixel, touches ink.
    fn grown(&self, radius: f64) -> Self {
        let reach = radius.floor() as isize;
        let mut ink = self.ink.clone();
        for at in (0..self.ink.len()).filter(|at| self.ink[*at]) {
            let (x, y) = ((at % self.side) as isize, (at / self.side) as isize);
            // Only what lies at an edge grows out of the ink.
            let (before, below) = (at.checked_sub(self.side), at + self.side);
            let beside = [at.checked_sub(1), Some(at + 1), before, Some(below)];
            if beside.iter().flatten().all(|near| self.ink.get(*near) == Some(&true)) {
                continue;
            }
            for dy in -reach..=reach {
                for dx in -reach..=reach {
                    let within = (dx * dx + dy * dy) as f64 <= radius * radius;
                    let (x, y) = (x + dx, y + dy);
                    let inside = (0..self.side as isize).contains(&x) && (0..self.side as isize).contains(&y);
                    if within && inside {
                        ink[y as usize * self.side + x as usize] = true;
                    }
                }
            }
        }
        Self { side: self.side, ink }
    }

    /// What is thinner than a disc of this radius: ink that no such disc inside the ink covers. Corners leave
    /// specks, so only pieces of at least `least` pixels count; the largest of them.
    fn thinner_than(&self, radius: f64, least: usize) -> usize {
        let room = self.inverted().grown(radius).inverted();
        let covered = room.grown(radius + 1.0);
        let mut left: Vec<bool> =
            self.ink.iter().zip(&covered.ink).map(|(ink, done)| *ink && !done).collect();
        let mut largest = 0;
        for start in 0..left.len() {
            let (mut piece, mut waiting) = (0, vec![start]);
            while let Some(at) = waiting.pop() {
                if std::mem::take(&mut left[at]) {
                    piece += 1;
                    let (x, y) = (at % self.side, at / self.side);
                    waiting.extend((x > 0).then(|| at - 1));
                    waiting.extend((x + 1 < self.side).then_some(at + 1));
                    waiting.extend((y > 0).then(|| at - self.side));
                    waiting.extend((y + 1 < self.side).then_some(at + self.side));
                }
            }
            largest = largest.max(piece);
        }
        if largest >= least { largest } else { 0 }
    }
}

type Corner = (f64, f64);

/// The outline as straight edges, curves in sixteen.
fn edges(ops: &[PathOp]) -> Vec<(Corner, Corner)> {
    let of = |p: Point| (p.x.0, p.y.0);
    let (mut at, mut start) = ((0.0, 0.0), (0.0, 0.0));
    let mut edges = Vec::new();
    for op in ops {
        match *op {
            PathOp::Move(p) => (at, start) = (of(p), of(p)),
            PathOp::Line(p) => {
                edges.push((at, of(p)));
                at = of(p);
            }
            PathOp::Curve(a, b, c) => {
                let from = at;
                for step in 1..=16 {
                    let (t, u) = (f64::from(step) / 16.0, 1.0 - f64::from(step) / 16.0);
                    let weights = [u * u * u, 3.0 * u * u * t, 3.0 * u * t * t, t * t * t];
                    let points = [from, of(a), of(b), of(c)];
                    let sum = |f: fn(Corner) -> f64| weights.iter().zip(points).map(|(w, p)| w * f(p)).sum();
                    let to = (sum(|p| p.0), sum(|p| p.1));
                    edges.push((at, to));
                    at = to;
                }
            }
            PathOp::Close => {
                edges.push((at, start));
                at = start;
            }
        }
    }
    edges
}

fn thin(ops: &[PathOp]) -> (usize, usize) {
    let filled = Filled::new(ops, FINE as f64, FINEST);
    // A pixel less, because a stroke's two edges each fall anywhere in a pixel.
    let radius = (FINEST * FINE as f64) / 2.0 - 0.75;
    let least = 3 * FINE * FINE;
    (filled.thinner_than(radius, least), filled.inverted().thinner_than(radius, least))
}

#[test]
fn every_drawing_is_whole_and_on_its_square() {
    let square = Rect::new(Pt(0.0), Pt(0.0), Pt(PICTOGRAM_SIDE), Pt(PICTOGRAM_SIDE));
    for pictogram in PICTOGRAMS {
        let ops = pictogram.outline();
        let closed = |ops: &[PathOp]| ops.iter().filter(|op| **op == PathOp::Close).count();
        assert_eq!(closed(&ops), pictogram.svg_path.matches('z').count(), "{}: not read", pictogram.id);
        assert!(matches!(ops.first(), Some(PathOp::Move(_))), "{}", pictogram.id);
        assert_eq!(ops.last(), Some(&PathOp::Close), "{}", pictogram.id);
        let frame = bounds(&ops).expect("an outline");
        assert!(square.contains(&frame), "{} leaves its square: {frame:?}", pictogram.id);
        assert!(frame.height.0 > 24.0, "{} is too flat to read", pictogram.id);
        assert!(frame.width.0.max(frame.height.0) >= 36.0, "{} is too small", pictogram.id);
    }
}

/// Coordinates on half units: what keeps the sheet of symbols small on a phone.
#[test]
fn path_data_is_written_as_shortly_as_it_can_be() {
    for pictogram in PICTOGRAMS {
        for number in pictogram.svg_path.split(|c: char| !c.is_ascii_digit() && c != '.') {
            let places = number.split_once('.').map_or("", |(_, places)| places);
            assert!(places.is_empty() || places == "5", "{}: {number}", pictogram.id);
        }
        assert!(!pictogram.svg_path.contains("  "), "{}", pictogram.id);
    }
}

#[test]
fn every_drawing_has_ink_and_paper() {
    for pictogram in PICTOGRAMS {
        let filled = Filled::new(&pictogram.outline(), 1.0, 0.0);
        let share = filled.ink.iter().filter(|ink| **ink).count() * 100 / filled.ink.len();
        assert!((12..=85).contains(&share), "{}: {share} % ink", pictogram.id);
    }
}

#[test]
fn no_stroke_and_no_gap_is_too_fine_to_print_at_8_mm() {
    let found: Vec<_> = PICTOGRAMS
        .iter()
        .map(|pictogram| (pictogram.id, thin(&pictogram.outline())))
        .filter(|(_, found)| *found != (0, 0))
        .collect();
    assert_eq!(found, []);
}

#[test]
fn a_stroke_and_a_gap_that_are_too_fine_are_found() {
    // Two blocks, in each case with a stroke or a gap of 1.5 and of 2.5 units.
    let strokes = |width: &str| thin(&parse(&format!("M10 5h{width}v36h-{width}zm20 0h10v36h-10z")));
    assert!(strokes("1").0 > 0 && strokes("1.5").0 > 0, "{:?}", strokes("1.5"));
    assert_eq!(strokes("2"), (0, 0));
    let gaps = |width: &str| thin(&parse(&format!("M5 5h36v36h-36zm10 4h{width}v28h-{width}z")));
    assert!(gaps("1").1 > 0 && gaps("1.5").1 > 0, "{:?}", gaps("1.5"));
    assert_eq!(gaps("2"), (0, 0));
}

/// How unlike two drawings are at 24 pixels, where one may be a pixel off: the pixels of either that have
/// nothing of the same kind in the other at the place or beside it.
fn unlike(a: &Filled, b: &Filled) -> usize {
    let differ = |a: &Filled, b: &Filled| {
        let near = b.grown(1.0);
        a.ink.iter().zip(&near.ink).filter(|(ink, near)| **ink && !**near).count()
    };
    let (c, d) = (a.inverted(), b.inverted());
    differ(a, b) + differ(b, a) + differ(&c, &d) + differ(&d, &c)
}

#[test]
fn no_two_drawings_look_alike_at_24_pixels() {
    let small: Vec<_> = PICTOGRAMS
        .iter()
        .map(|pictogram| (pictogram.id, Filled::new(&pictogram.outline(), 0.5, 0.0)))
        .collect();
    let mut alike = Vec::new();
    for (index, (id, filled)) in small.iter().enumerate() {
        for (other, its) in &small[index + 1..] {
            let difference = unlike(filled, its);
            if difference < 20 {
                alike.push((*id, *other, difference));
            }
        }
    }
    // 20 of 576 pixels, about the size of a label on a bottle.
    assert_eq!(alike, []);
}

#[test]
fn drawings_that_differ_by_a_pixel_are_found_alike() {
    let [one, moved] = ["M6 6h30v30h-30z", "M8 6h30v30h-30z"].map(|data| Filled::new(&parse(data), 0.5, 0.0));
    assert!(unlike(&one, &moved) < 20);
    let other = Filled::new(&parse("M6 6h30v30h-30zm8 8h14v14h-14z"), 0.5, 0.0);
    assert!(unlike(&one, &other) >= 20);
}

/// An arc's ends lie where they are said to and its middle on the circle; every point within a hundredth of it.
#[test]
fn arcs_are_parts_of_circles() {
    let at = |x: f64, y: f64| Point { x: Pt(x), y: Pt(y) };
    let cases = [
        // A half circle, a quarter either way, a flat one, and one whose radius is too short for it.
        (at(4.0, 24.0), at(44.0, 24.0), 20.0, true, at(24.0, 24.0)),
        (at(10.0, 0.0), at(20.0, 10.0), 10.0, true, at(10.0, 10.0)),
        (at(10.0, 0.0), at(20.0, 10.0), 10.0, false, at(20.0, 0.0)),
        (at(0.0, 0.0), at(6.0, 0.0), 5.0, true, at(3.0, 4.0)),
        (at(0.0, 0.0), at(6.0, 0.0), 1.0, false, at(3.0, 0.0)),
    ];
    for (from, to, radius, clockwise, centre) in cases {
        let mut ops = vec![PathOp::Move(from)];
        ops.extend(arc(from, to, radius, clockwise));
        let drawn = edges(&ops);
        assert_eq!(drawn.last().map(|edge| edge.1), Some((to.x.0, to.y.0)));
        let radius = radius.max((to.x.0 - from.x.0).abs() / 2.0);
        for (_, (x, y)) in drawn {
            let away = ((x - centre.x.0).powi(2) + (y - centre.y.0).powi(2)).sqrt();
            assert!((away - radius).abs() < 0.01, "{away} from the centre, not {radius}");
        }
    }
    assert_eq!(arc(at(1.0, 1.0), at(1.0, 1.0), 5.0, true), []);
}

#[test]
fn what_cannot_be_read_ends_the_outline() {
    let ops = |data| parse(data).len();
    assert_eq!(ops("M1 2l3 4 5-6-.5.5z"), 4 - 1);
    assert_eq!(ops("M1 2l3 4 5-6z"), 4);
    assert_eq!(ops(""), 0);
    assert_eq!(ops("z"), 0);
    assert_eq!(ops("M1"), 0);
    assert_eq!(ops("M1 2q1 1 2 2z"), 1);
    assert_eq!(ops("M1 2h"), 1);
    assert_eq!(ops("é"), 0);
}

#[test]
fn ids_are_unique_and_found() {
    for (index, pictogram) in PICTOGRAMS.iter().enumerate() {
        assert_eq!(PICTOGRAMS.iter().position(|other| other.id == pictogram.id), Some(index));
        assert_eq!(svg_path(pictogram.id), Some(pictogram.svg_path));
    }
    assert_eq!(svg_path("no such thing"), None);
}

/// Each verdict's outer shape, without what is drawn in it, is its own: someone who sees no colour and reads
/// no sign still tells them apart.
#[test]
fn each_verdict_has_its_own_outline() {
    let shapes: Vec<_> = [Tone::Yes, Tone::No, Tone::Elsewhere, Tone::Caution]
        .into_iter()
        .map(|tone| {
            let outline = svg_path(tone.shape()).expect("a shape");
            let outer = outline.split_inclusive('z').next().expect("its outer outline");
            (tone, Filled::new(&parse(outer), 0.5, 0.0))
        })
        .collect();
    for (index, (tone, shape)) in shapes.iter().enumerate() {
        for (other, its) in &shapes[index + 1..] {
            let difference = unlike(shape, its);
            assert!(difference >= 12, "{tone:?} and {other:?} differ by {difference} pixels");
        }
    }
}
