//! A page as grey pixels, to see what is printed where.

use std::path::Path;

use crate::fail::{OrFail, fail};
use crate::outside::Tool;

/// A page's pixels, from the top left, 0 black to 255 white.
#[derive(Debug)]
pub struct Picture {
    width: usize,
    height: usize,
    grey: Vec<u8>,
}

impl Picture {
    /// Draws a page (from 1) of a PDF at so many pixels an inch, its media box whole.
    ///
    /// # Panics
    /// When poppler's pdftoppm is missing or refuses.
    #[must_use]
    pub fn of(pdf: &Path, page: u32, per_inch: u32) -> Self {
        let (page, per_inch) = (page.to_string(), per_inch.to_string());
        let output = Tool::PDFTOPPM.output(&[&"-gray", &"-f", &page, &"-l", &page, &"-r", &per_inch, &pdf]);
        Self::read(&output.stdout).or_fail("reading pdftoppm's picture")
    }

    /// Reads a binary grey map: "P5", width, height, 255, then the pixels.
    fn read(bytes: &[u8]) -> Option<Self> {
        let mut words = Vec::new();
        let mut at = 0;
        while words.len() < 4 {
            let rest = bytes.get(at..)?;
            let length = rest.iter().position(u8::is_ascii_whitespace)?;
            words.push(std::str::from_utf8(rest.get(..length)?).ok()?);
            at += length + 1;
        }
        let [kind, width, height, most] = words.as_slice() else { return None };
        let (width, height) = (width.parse().ok()?, height.parse().ok()?);
        let grey = bytes.get(at..)?.to_vec();
        (*kind == "P5" && *most == "255" && grey.len() == width * height).then_some(Self {
            width,
            height,
            grey,
        })
    }

    /// Writes it as a binary grey map, for programs that look at pictures.
    ///
    /// # Panics
    /// When it cannot be written.
    pub fn write(&self, file: &Path) {
        let mut bytes = format!("P5\n{} {}\n255\n", self.width, self.height).into_bytes();
        bytes.extend(&self.grey);
        std::fs::write(file, bytes).or_fail("writing a picture");
    }

    /// Width and height in pixels.
    #[must_use]
    pub fn size(&self) -> (usize, usize) {
        (self.width, self.height)
    }

    /// A pixel, 0 black to 255 white; beyond the edges it is white.
    #[must_use]
    pub fn grey(&self, x: usize, y: usize) -> u8 {
        let inside = x < self.width && y < self.height;
        inside.then(|| self.grey.get(y * self.width + x).copied()).flatten().unwrap_or(u8::MAX)
    }

    /// The darkest pixel of a rectangle: left and top in, right and bottom out.
    ///
    /// # Panics
    /// When the rectangle leaves the page.
    #[must_use]
    pub fn darkest(&self, left: usize, top: usize, right: usize, bottom: usize) -> u8 {
        if left >= right || top >= bottom || right > self.width || bottom > self.height {
            fail(&format!("{left},{top}-{right},{bottom} is not inside {:?}", self.size()));
        }
        let rows = self.grey.chunks(self.width).skip(top).take(bottom - top);
        rows.flat_map(|row| row.iter().skip(left).take(right - left)).copied().min().unwrap_or(255)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_grey_map_is_read_and_searched() {
        let picture = Picture::read(b"P5\n3 2\n255\n\xff\x80\xff\xff\xff\x00").unwrap();
        assert_eq!(picture.size(), (3, 2));
        assert_eq!(picture.darkest(0, 0, 1, 2), 255);
        assert_eq!(picture.darkest(0, 0, 3, 1), 128);
        assert_eq!(picture.darkest(2, 1, 3, 2), 0);
        assert!(Picture::read(b"P5\n3 2\n255\n\xff").is_none());
    }
}
