//! What several tests of random programs share.

#![allow(dead_code, reason = "not every test rolls in every way")]

/// A small generator of random numbers; a test needs no better, and stays repeatable.
pub(crate) struct Dice(pub(crate) u64);

impl Dice {
    pub(crate) fn roll(&mut self, sides: usize) -> usize {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        usize::try_from(self.0 >> 11).unwrap() % sides
    }
    pub(crate) fn pick<'a, T>(&mut self, from: &'a [T]) -> &'a T {
        &from[self.roll(from.len())]
    }
    pub(crate) fn chance(&mut self, percent: usize) -> bool {
        self.roll(100) < percent
    }
}
