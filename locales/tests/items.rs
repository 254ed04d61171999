//! The names of catalog items: what residents type has to lead to one thing, in every language.

#![expect(clippy::unwrap_used, reason = "helpers of tests may stop a test")]

use std::collections::{BTreeMap, BTreeSet};

use guide_data::{Catalog, fold};
use locales::supported;

/// An item's own name, and the other names people know it by.
struct Names {
    main: String,
    others: Vec<String>,
}

fn names(tag: &str) -> BTreeMap<String, Names> {
    let (_, text) = *locales::sources(tag).iter().find(|(name, _)| name.starts_with("items")).unwrap();
    let mut found: BTreeMap<String, Names> = BTreeMap::new();
    let mut last = String::new();
    for line in text.lines() {
        if let Some(others) = line.strip_prefix("    .also = ") {
            let item = found.get_mut(&last).unwrap();
            item.others = others.split('|').map(|name| name.trim().to_owned()).collect();
        } else if let Some((id, main)) = line.strip_prefix("item-").and_then(|rest| rest.split_once(" = ")) {
            id.clone_into(&mut last);
            found.insert(id.to_owned(), Names { main: main.to_owned(), others: Vec::new() });
        }
    }
    found
}

/// As search sees a name: two that differ only by accents or capitals are one.
fn seen(name: &str) -> String {
    fold(name)
}

#[test]
fn every_item_has_names_of_its_own_in_every_language() {
    let items = Catalog::standard().unwrap().items;
    for language in supported() {
        let names = names(language.tag);
        assert_eq!(names.len(), items.len(), "{}", language.tag);
        let mut mains: BTreeMap<String, &str> = BTreeMap::new();
        for (id, name) in &names {
            if let Some(other) = mains.insert(seen(&name.main), id) {
                panic!("{}: {id} and {other} are both {}", language.tag, name.main);
            }
            // Longer names do not fit a button, or a line of a lid label.
            for one in std::iter::once(&name.main).chain(&name.others) {
                assert!(one.chars().count() <= 40, "{}: {id}: {one} is long", language.tag);
                assert!(!seen(one).is_empty(), "{}: {id}: {one:?} cannot be typed", language.tag);
            }
        }
    }
}

#[test]
fn other_names_add_something_and_take_nobodys_own_name() {
    for language in supported() {
        let names = names(language.tag);
        let mains: BTreeMap<String, &String> = names.iter().map(|(id, n)| (seen(&n.main), id)).collect();
        let mut shared: BTreeMap<String, BTreeSet<&str>> = BTreeMap::new();
        for (id, name) in &names {
            assert!(name.others.len() >= 4, "{}: {id} has few other names", language.tag);
            let mut own = BTreeSet::from([seen(&name.main)]);
            for other in &name.others {
                assert!(own.insert(seen(other)), "{}: {id} has {other} twice", language.tag);
                if let Some(owner) = mains.get(&seen(other)) {
                    assert!(*owner == id, "{}: {other} is {owner}, not another word for {id}", language.tag);
                }
                shared.entry(seen(other)).or_default().insert(id);
            }
        }
        // A word may mean several things ("battery"), but one that means many says nothing.
        for (name, ids) in shared {
            assert!(ids.len() <= 4, "{}: {name} is {ids:?}", language.tag);
        }
    }
}
