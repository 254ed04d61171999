//! That what the catalog asks for is drawn, on paper as on screens, and that few things share one drawing.

use std::collections::BTreeMap;

use guide_data::Catalog;

#[test]
fn every_item_of_the_catalog_has_a_drawing() {
    for item in &Catalog::standard().unwrap().items {
        assert!(
            print::pictogram(&item.pictogram).is_some(),
            "{}: {:?} is not drawn",
            item.id,
            item.pictogram
        );
    }
}

/// Floors and ceilings of a judgement, no source: a drawing for more than every twentieth item, or a hundred
/// things shown as "things of every kind", tells a reader nothing.
#[test]
fn few_items_share_a_drawing() {
    let items = Catalog::standard().unwrap().items;
    let mut shared: BTreeMap<&str, usize> = BTreeMap::new();
    for item in &items {
        *shared.entry(item.pictogram.as_str()).or_default() += 1;
    }
    let crowded: Vec<_> = shared.iter().filter(|(_, count)| **count * 20 > items.len()).collect();
    assert!(crowded.is_empty(), "{crowded:?}");
    assert!(shared.len() >= 100, "{} drawings", shared.len());
    assert!(shared["item"] * 40 <= items.len(), "{} items are of every kind", shared["item"]);
}

/// A drawing of an item that none has would be sent to every phone for nothing.
#[test]
fn every_drawing_of_an_item_is_used() {
    let items = Catalog::standard().unwrap().items;
    for drawing in print::PICTOGRAMS {
        let other = drawing.id.starts_with("verdict-") || drawing.id.starts_with("place-");
        let used = items.iter().any(|item| item.pictogram == drawing.id);
        assert!(used || other, "{}: no item of the catalog has it", drawing.id);
    }
}
