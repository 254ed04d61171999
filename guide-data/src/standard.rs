//! Standard ids that every program may use. Their words live in `locales`.

use crate::measure::Dimension;

/// Materials. Codes in the comments are of Decision 97/129/EC, Annexes I-VII (from memory).
pub const MATERIALS: &[&str] = &[
    "plastic",    // 1-7
    "bioplastic", // no code of its own
    "cardboard",  // PAP 20, corrugated
    "paperboard", // PAP 21
    "paper",      // PAP 22
    "carton",     // C/PAP 81, 84: board with film, or with film and foil
    "steel",      // FE 40
    "aluminium",  // ALU 41
    "metal",      // other or mixed metals
    "glass",      // GL 70-72
    "ceramic",
    "wood",    // FOR 50
    "cork",    // FOR 51
    "textile", // TEX 60, 61
    "leather",
    "rubber",
    "food",
    "plant",
    "wax",
    "stone",
    "electronics",
    "chemical",
    "mixed",
];

/// The material code of Decision 97/129/EC for a material, and for plastics the resin mark.
/// Glass takes its colour into account. `None` where the Decision has no number.
#[must_use]
pub fn material_code(material: &str, resin: &str, colour: &str) -> Option<&'static str> {
    Some(match (material, resin, colour) {
        ("plastic", "1", _) => "PET 1",
        ("plastic", "2", _) => "HDPE 2",
        ("plastic", "3", _) => "PVC 3",
        ("plastic", "4", _) => "LDPE 4",
        ("plastic", "5", _) => "PP 5",
        ("plastic", "6", _) => "PS 6",
        ("cardboard", _, _) => "PAP 20",
        ("paperboard", _, _) => "PAP 21",
        ("paper", _, _) => "PAP 22",
        ("steel", _, _) => "FE 40",
        ("aluminium", _, _) => "ALU 41",
        ("wood", _, _) => "FOR 50",
        ("cork", _, _) => "FOR 51",
        ("glass", _, "clear") => "GL 70",
        ("glass", _, "green") => "GL 71",
        ("glass", _, "brown") => "GL 72",
        _ => return None,
    })
}

/// Forms: the shape a thing has, which for sorting often matters more than its mark.
pub const FORMS: &[&str] = &[
    "bottle",
    "jug",
    "jar",
    "tub",
    "cup",
    "lid",
    "clamshell",
    "tray",
    "bag",
    "film",
    "pouch",
    "tube",
    "can",
    "spray-can",
    "cylinder",
    "box",
    "carton",
    "canister",
    "sheet",
    "newspaper",
    "book",
    "envelope",
    "roll",
    "foil",
    "pan",
    "foam",
    "pod",
    "cutlery",
    "straw",
    "pot",
    "bucket",
    "toy",
    "rope",
    "clothing",
    "shoe",
    "furniture",
    "mattress",
    "appliance",
    "device",
    "lamp",
    "battery",
    "needle",
    "pill",
    "tool",
    "window",
    "dishes",
    "tyre",
    "timber",
    "rubble",
    "food",
    "plant",
    "liquid",
    "ash",
    "sanitary",
    "other",
];

/// Categories by which residents browse, in the order shown.
pub const CATEGORIES: &[&str] = &[
    "plastic-packaging",
    "paper-cardboard",
    "glass",
    "metal",
    "food-drink-cartons",
    "food-garden",
    "film-bags",
    "batteries-electronics",
    "hazardous",
    "medical",
    "textiles",
    "household-goods",
    "building",
    "bathroom",
];

/// Kinds of channel: where a thing goes when not in a container at home.
pub const CHANNEL_KINDS: &[&str] = &[
    "drop-off",
    "store-take-back",
    "hazardous-waste",
    "event",
    "bulky-pickup",
    "deposit-return",
    "mail-back",
    "reuse",
    "medicine-take-back",
    "sharps-take-back",
    "police",
    "specialist",
    "dealer",
    "health-office",
    "authority",
];

/// Kinds of stream: what is collected together.
pub const STREAM_KINDS: &[&str] = &["recycling", "organics", "refuse", "glass", "paper", "film"];

/// Kinds of container.
pub const CONTAINER_KINDS: &[&str] = &["cart", "bin", "bag", "box", "shared-cart", "dumpster"];

/// Kinds of rule about a container, not about an item.
pub const CONTAINER_RULES: &[&str] = &[
    "lid-closed",
    "weight",
    "distance",
    "side-waste",
    "share-of-load",
    "liners",
    "sacks",
    "registration",
    "refusals",
];

/// What a quantity is counted per.
pub const PERIODS: &[&str] = &["visit", "day", "week", "month", "year"];

/// Everyday things a size is likened to, with the size meant: in the middle of what is on sale.
pub const COMPARISONS: &[(&str, Dimension, &str)] = &[
    // ISO/IEC 7810, ID-1: 85.60 x 53.98 mm; its long side (from memory).
    ("credit-card", Dimension::Length, "85.6 mm"),
    // The Rules of Golf: not less than 1.680 in across (from memory).
    ("golf-ball", Dimension::Length, "1.68 in"),
    // The Rules of Tennis: 6.54 to 6.86 cm across (from memory).
    ("tennis-ball", Dimension::Length, "6.7 cm"),
    // Size 7: 749 to 780 mm round, so about 24.3 cm across (from memory).
    ("basketball", Dimension::Length, "24.3 cm"),
    // ISO 216: 210 x 297 mm (from memory); its long side.
    ("sheet-of-paper", Dimension::Length, "297 mm"),
    // Common practice, no source.
    ("yogurt-cup", Dimension::Volume, "6 fl oz"),
    ("milk-jug", Dimension::Volume, "1 gal"),
    ("bucket", Dimension::Volume, "5 gal"),
    ("brick", Dimension::Mass, "5 lb"),
];

/// Standard preparation steps. A program may add its own under other ids.
pub const PREPARATIONS: &[&str] = &[
    "empty",
    "rinse",
    "dry",
    "scrape",
    "flatten",
    "cut-down",
    "bundle",
    "loose",
    "cap-on",
    "cap-off",
    "lid-off",
    "lid-inside-can",
    "label-stays",
    "sleeve-off",
    "pump-off",
    "window-stays",
    "staples-stay",
    "remove-food-liner",
    "tear-off-clean-half",
    "crush",
    "do-not-crush",
    "do-not-flatten",
    "do-not-nest",
    "scrunch-foil",
    "paper-bag",
    "clear-bag",
    "tape-terminals",
    "keep-upright",
    "puncture-proof",
    "original-container",
    "do-not-mix",
    "do-not-puncture",
    "puncture",
    "wrap-broken",
    "remove-battery",
    "wipe-data",
    "take-apart",
    "no-bags",
    "no-plastic-bags",
    "cool-ash",
    "double-bag",
    "label-contents",
    "fits-lid-shut",
    "check-fluid",
    "pair-and-tie",
    "clean-and-usable",
];

/// Steps that nobody can follow both of, in one answer; and neighbouring places tell the one and
/// the other of the same thing, so that residents who move do the opposite of what is right. Common
/// practice, no source.
pub const OPPOSITE_STEPS: &[(&str, &str)] = &[
    ("flatten", "do-not-flatten"),
    ("flatten", "do-not-crush"),
    ("crush", "do-not-crush"),
    ("puncture", "do-not-puncture"),
    ("crush", "do-not-flatten"),
    ("cap-on", "cap-off"),
    ("label-stays", "sleeve-off"),
    ("loose", "paper-bag"),
    ("loose", "clear-bag"),
    ("loose", "double-bag"),
    ("no-bags", "paper-bag"),
    ("no-bags", "clear-bag"),
    ("no-bags", "double-bag"),
    ("no-plastic-bags", "clear-bag"),
    ("no-plastic-bags", "double-bag"),
    ("paper-bag", "clear-bag"),
    ("paper-bag", "double-bag"),
];

/// What following a step makes true of the thing: step, fact, value. Only steps that leave one
/// thing in a known state are here: what is taken off and goes elsewhere is an answer of its own.
/// Common practice, no source.
pub const STEP_EFFECTS: &[(&str, &str, &str)] = &[
    ("empty", "contents", "empty"),
    ("rinse", "contents", "empty"),
    ("rinse", "soiling", "clean"),
    ("dry", "wet", "no"),
    ("flatten", "flattened", "yes"),
    ("do-not-flatten", "flattened", "no"),
    ("bundle", "bundled", "yes"),
    ("loose", "bagged", "loose"),
    ("no-bags", "bagged", "loose"),
    ("paper-bag", "bagged", "paper-bag"),
    ("clear-bag", "bagged", "clear-bag"),
    ("double-bag", "bagged", "plastic-bag"),
    ("cap-on", "closure", "on"),
    ("cap-off", "closure", "off"),
    ("sleeve-off", "label", "none"),
    ("pump-off", "pump", "no"),
    ("remove-food-liner", "liner", "no"),
];

/// Standard reasons. A program may give a rule its own words instead.
pub const REASONS: &[&str] = &[
    "sells",
    "composts",
    "no-buyer",
    "too-small",
    "too-large",
    "tangles",
    "wraps-screens",
    "bagged-unseen",
    "soiled",
    "contents-spoil",
    "mixed-materials",
    "wrong-glass",
    "breaks-unsafe",
    "not-packaging",
    "hazard",
    "handled-apart",
    "reusable",
    "store-collects",
    "contaminates-compost",
    "not-named",
    "not-listed",
    "too-heavy",
    "number-is-not-shape",
    "black-unseen",
    "burns",
    "special-trip",
    "law",
    "not-collected",
];

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn opposites_and_effects_speak_of_steps_facts_and_values() {
        for (one, other) in OPPOSITE_STEPS {
            assert!(PREPARATIONS.contains(one) && PREPARATIONS.contains(other) && one != other);
        }
        for (step, name, value) in STEP_EFFECTS {
            assert!(PREPARATIONS.contains(step), "{step}");
            let kind = crate::facts::fact(name).map(|f| f.kind);
            assert!(
                matches!(kind, Some(crate::facts::FactKind::Choice(values)) if values.contains(value)),
                "{name} {value}"
            );
        }
    }

    /// Decision 97/129/EC, OJ L 50, 20.2.1997, Annexes I-VII (paper, metals, wood seen in a
    /// secondary copy; the rest from memory).
    #[test]
    fn material_codes_are_those_of_decision_97_129_ec() {
        for (material, resin, colour, code) in [
            ("plastic", "1", "clear", Some("PET 1")),
            ("plastic", "6", "white", Some("PS 6")),
            ("plastic", "7", "white", None), // 7-19 are unassigned in the Decision
            ("cardboard", "none", "brown", Some("PAP 20")),
            ("paperboard", "none", "other", Some("PAP 21")),
            ("paper", "none", "other", Some("PAP 22")),
            ("steel", "none", "other", Some("FE 40")),
            ("aluminium", "none", "other", Some("ALU 41")),
            ("wood", "none", "other", Some("FOR 50")),
            ("cork", "none", "other", Some("FOR 51")),
            ("glass", "none", "clear", Some("GL 70")),
            ("glass", "none", "green", Some("GL 71")),
            ("glass", "none", "brown", Some("GL 72")),
        ] {
            assert_eq!(material_code(material, resin, colour), code, "{material} {resin} {colour}");
        }
    }
}
