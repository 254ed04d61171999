//! Sorting what a phone sorts: short lists of many kinds.

use std::cmp::Ordering;

/// Sorts a list of at most some thousand entries. Entries that compare equal may change places, so the
/// order has to tell all entries apart that anyone can.
///
/// The standard library's sorting is compiled anew for every kind of entry and weighed phones 14 KB
/// (brotli); this is a page of code, and no slower on lists as short as these.
pub fn sort_by<T>(list: &mut [T], compare: impl Fn(&T, &T) -> Ordering) {
    // Shell's method with the gaps of Ciura (2001), from memory.
    for gap in [1750, 701, 301, 132, 57, 23, 10, 4, 1] {
        for start in gap..list.len() {
            let mut at = start;
            while at >= gap {
                let (Some(before), Some(here)) = (list.get(at - gap), list.get(at)) else { break };
                if compare(here, before) != Ordering::Less {
                    break;
                }
                list.swap(at, at - gap);
                at -= gap;
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use proptest::prelude::*;

    proptest! {
        #[test]
        fn lists_are_sorted(mut list in prop::collection::vec(any::<u16>(), 0..3000)) {
            let mut expected = list.clone();
            expected.sort_unstable();
            super::sort_by(&mut list, u16::cmp);
            prop_assert_eq!(list, expected);
        }
    }
}
