//! Lengths with their units, and the rectangles made of them.
//!
//! Sheets are stated in millimetres or inches, as printers state them; everything that is drawn is in
//! points, as PDF counts. Both hold an `f64`, and only `+ - * /` are used on them: those are exact to the
//! bit on every platform, so the browser and the command line agree.

use std::ops::{Add, AddAssign, Div, Mul, Neg, Sub, SubAssign};

use serde::{Deserialize, Serialize};

/// Points in an inch, and millimetres in an inch (exact by definition, NIST SP 811).
const POINTS_PER_INCH: f64 = 72.0;
const MM_PER_INCH: f64 = 25.4;

macro_rules! length {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, PartialEq, PartialOrd, Default, Serialize, Deserialize)]
        #[serde(transparent)]
        pub struct $name(pub f64);

        impl $name {
            /// No length at all.
            pub const ZERO: Self = Self(0.0);
            /// The larger of two lengths.
            pub fn max(self, other: Self) -> Self { Self(self.0.max(other.0)) }
            /// The smaller of two lengths.
            pub fn min(self, other: Self) -> Self { Self(self.0.min(other.0)) }
        }
        impl Add for $name { type Output = Self; fn add(self, o: Self) -> Self { Self(self.0 + o.0) } }
        impl Sub for $name { type Output = Self; fn sub(self, o: Self) -> Self { Self(self.0 - o.0) } }
        impl Neg for $name { type Output = Self; fn neg(self) -> Self { Self(-self.0) } }
        impl AddAssign for $name { fn add_assign(&mut self, o: Self) { self.0 += o.0; } }
        impl SubAssign for $name { fn sub_assign(&mut self, o: Self) { self.0 -= o.0; } }
        impl Mul<f64> for $name { type Output = Self; fn mul(self, k: f64) -> Self { Self(self.0 * k) } }
        impl Div<f64> for $name { type Output = Self; fn div(self, k: f64) -> Self { Self(self.0 / k) } }
        impl Div for $name { type Output = f64; fn div(self, o: Self) -> f64 { self.0 / o.0 } }
        impl std::iter::Sum for $name {
            fn sum<I: Iterator<Item = Self>>(all: I) -> Self { Self(all.map(|one| one.0).sum()) }
        }
    };
}

length!(
    /// A length in millimetres.
    Mm
);
length!(
    /// A length in PostScript points, 72 to the inch.
    Pt
);

impl Mm {
    /// A length stated in inches.
    pub const fn inches(inches: f64) -> Self {
        Self(inches * MM_PER_INCH)
    }

    /// The same length in points.
    pub const fn pt(self) -> Pt {
        Pt(self.0 / MM_PER_INCH * POINTS_PER_INCH)
    }
}

impl Pt {
    /// A length stated in inches.
    pub const fn inches(inches: f64) -> Self {
        Self(inches * POINTS_PER_INCH)
    }

    /// The same length in millimetres.
    pub const fn mm(self) -> Mm {
        Mm(self.0 / POINTS_PER_INCH * MM_PER_INCH)
    }
}

/// The tolerance for comparing two positions on a sheet: a hundredth of a point, far below any device dot.
pub const TOLERANCE: Pt = Pt(0.01);

/// A place on a page: points right of and below the upper left corner of the trimmed sheet.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
pub struct Point {
    /// Rightwards.
    pub x: Pt,
    /// Downwards.
    pub y: Pt,
}

/// An upright rectangle in the same coordinates as [`Point`].
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize, Deserialize)]
pub struct Rect {
    /// Left edge.
    pub x: Pt,
    /// Upper edge.
    pub y: Pt,
    /// Width, never negative.
    pub width: Pt,
    /// Height, never negative.
    pub height: Pt,
}

impl Rect {
    /// A rectangle from its upper left corner and its size.
    pub const fn new(x: Pt, y: Pt, width: Pt, height: Pt) -> Self {
        Self { x, y, width, height }
    }

    /// The right edge.
    pub fn right(&self) -> Pt {
        self.x + self.width
    }

    /// The lower edge.
    pub fn bottom(&self) -> Pt {
        self.y + self.height
    }

    /// This rectangle with every edge moved outwards (inwards when negative).
    pub fn grown(&self, by: Pt) -> Self {
        Self::new(self.x - by, self.y - by, self.width + by * 2.0, self.height + by * 2.0)
    }

    /// The smallest rectangle around both.
    pub fn around(&self, other: &Self) -> Self {
        let (x, y) = (self.x.min(other.x), self.y.min(other.y));
        let (right, bottom) = (self.right().max(other.right()), self.bottom().max(other.bottom()));
        Self::new(x, y, right - x, bottom - y)
    }

    /// Whether `inner` lies wholly inside, within [`TOLERANCE`].
    pub fn contains(&self, inner: &Self) -> bool {
        let room = self.grown(TOLERANCE);
        inner.x >= room.x
            && inner.y >= room.y
            && inner.right() <= room.right()
            && inner.bottom() <= room.bottom()
    }

    /// Whether a point is inside or on the edge.
    pub(crate) fn holds(&self, point: Point) -> bool {
        self.x <= point.x && point.x <= self.right() && self.y <= point.y && point.y <= self.bottom()
    }

    /// Whether the two share more than an edge, within [`TOLERANCE`].
    pub fn overlaps(&self, other: &Self) -> bool {
        let inner = self.grown(-TOLERANCE);
        inner.x < other.right()
            && other.x < inner.right()
            && inner.y < other.bottom()
            && other.y < inner.bottom()
    }
}
