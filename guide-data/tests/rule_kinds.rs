//! Every kind of rule that real local lists contain can be said by a coordinator, compiles without
//! an error, and is answered as it was meant: a worked program fragment for each.
//!
//! The kinds were gathered from public local lists of several countries (common practice, no
//! source); the wording and the places are invented.

#![expect(
    clippy::unwrap_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test that cannot go on should stop"
)]

use guide_data::{
    Answer, Catalog, Checked, Envelope, FactKind, Given, Known, Outcome, PROGRAM_FORMAT, PROGRAM_VERSION,
    Program, Severity, Step, check, compare, fact, nearest, program_texts,
};
use serde_json::{Value, json};

/// A small place that every fragment is put into; what a fragment names replaces what is here.
fn place() -> Value {
    let named = |id: &str, kind: &str| json!({ "id": id, "kind": kind, "name": { "en": id } });
    json!({
        "id": "kinds", "name": { "en": "Kinds" }, "source-language": "en", "languages": ["en"],
        "edition": { "label": "1", "from": "2026-07-01" },
        "guide-url": "https://guide.example.org/",
        "contact": { "name": { "en": "Office" }, "phone": "555-0100" },
        "streams": [
            { "id": "recycling", "kind": "recycling", "name": { "en": "Recycling" }, "containers": [
                { "id": "blue-cart", "kind": "cart", "name": { "en": "blue cart" } } ] },
            named("refuse", "refuse"), named("organics", "organics"), named("glass", "glass"),
            named("paper", "paper"), named("cans", "recycling")
        ],
        "zones": [ { "id": "town", "name": { "en": "Town" }, "households": 900 },
                   { "id": "farms", "name": { "en": "Farms" }, "households": 100 } ],
        "channels": [
            named("drop-off", "drop-off"), named("store", "store-take-back"), named("deposit", "deposit-return"),
            named("bulky", "bulky-pickup"), named("reuse", "reuse"), named("post", "mail-back"),
            named("dealer", "dealer"), named("police", "police"), named("firm", "specialist"),
            named("event", "event"),
            { "id": "authority", "kind": "authority", "name": { "en": "authority" },
              "safe-for": ["explosive", "radioactive"] },
            { "id": "health", "kind": "health-office", "name": { "en": "health" }, "safe-for": ["sharps", "medicine"] },
            { "id": "hazard-yard", "kind": "hazardous-waste", "name": { "en": "hazard yard" },
              "safe-for": ["battery-lithium", "battery-household", "battery-lead-acid", "pressurised",
                           "flammable", "toxic", "corrosive", "mercury", "oil"] }
        ],
        "hazards": {
            "battery-lithium": { "channel": "hazard-yard" }, "battery-household": { "channel": "hazard-yard" },
            "battery-lead-acid": { "channel": "hazard-yard" }, "pressurised": { "channel": "hazard-yard" },
            "flammable": { "channel": "hazard-yard" }, "toxic": { "channel": "hazard-yard" },
            "corrosive": { "channel": "hazard-yard" }, "mercury": { "channel": "hazard-yard" },
            "oil": { "channel": "hazard-yard" }, "sharps": { "channel": "health" },
            "medicine": { "channel": "health" }, "explosive": { "channel": "authority" },
            "radioactive": { "channel": "authority" }
        },
        "silence": "ask"
    })
}

/// A fragment put into the place, read as a file is read.
fn program(fragment: &Value) -> Program {
    let mut payload = place();
    for (key, value) in fragment.as_object().unwrap() {
        payload[key] = value.clone();
    }
    let rules = payload["rules"].as_array_mut().map(std::mem::take).unwrap_or_default();
    payload["rules"] = rules
        .into_iter()
        .map(|mut rule| {
            rule["provenance"] =
                json!({ "decided-by": "Coordinator", "source": "test", "confirmed": "2026-05-01" });
            rule
        })
        .collect();
    for item in payload["items"].as_array().cloned().unwrap_or_default() {
        let id = item["id"].as_str().unwrap();
        payload["item-names"][id] = json!({ "en": id });
    }
    let file = Envelope { format: PROGRAM_FORMAT.to_owned(), version: PROGRAM_VERSION, payload };
    let text = serde_json::to_string(&file).unwrap();
    Program::from_json(&text).unwrap_or_else(|problem| panic!("{problem:?}\n{text}"))
}

fn checked(fragment: &Value) -> Checked {
    let checked = check(&program(fragment), &Catalog::default());
    let errors: Vec<_> = checked.findings.iter().filter(|f| f.severity == Severity::Error).collect();
    assert!(errors.is_empty(), "{errors:#?}");
    checked
}

fn given(name: &str, words: &str) -> Given {
    match fact(name).unwrap_or_else(|| panic!("no fact {name}")).kind {
        _ if words == "?" => Given::CannotTell,
        FactKind::Measure(_) => Given::Stated(words.to_owned()),
        FactKind::Day | FactKind::YearDay => Given::Day(words.parse().unwrap()),
        FactKind::Choice(_) | FactKind::Id(_) => Given::value(words),
    }
}

/// What a resident is told, in one line: verdict, destination, steps, what else, and who decided.
fn told(outcome: &Outcome) -> String {
    let mut words = outcome.verdict.code().to_owned();
    for place in outcome.stream.iter().chain(&outcome.channel) {
        words += &format!(" {place}");
    }
    for also in &outcome.also {
        words += &format!(" or {also}");
    }
    if !outcome.steps.is_empty() {
        words += &format!(": {}", outcome.steps.join(", "));
    }
    for stream in &outcome.banned {
        words += &format!(" !{stream}");
    }
    if outcome.temporary {
        words += " (temporary)";
    }
    if outcome.closed_list {
        words += " (closed list)";
    }
    if !outcome.rules.is_empty() {
        words += &format!(" [{}]", outcome.rules.join(" "));
    }
    words
}

fn answered(answer: &Answer) -> String {
    let one = |p: &guide_data::PartAnswer| match &p.part {
        None => told(&p.outcome),
        Some(part) => format!("{part} {}", told(&p.outcome)),
    };
    answer.parts.iter().map(one).collect::<Vec<_>>().join("; ")
}

/// The next step of a conversation: the question's fact, or the answer.
fn ask(checked: &Checked, item: &str, facts: &[(&str, &str)]) -> String {
    let at = checked.guide.item_index(item).unwrap_or_else(|| panic!("no item {item}"));
    let known = facts.iter().fold(Known::default(), |k, (name, words)| k.with(name, given(name, words)));
    match checked.guide.next(at, &known).unwrap() {
        Step::Ask(question) => format!("asks {}", question.fact),
        Step::Answer(answer) => answered(&answer),
    }
}

/// One case: the item, what is said, what is told.
type Case<'a> = (&'a str, &'a [(&'a str, &'a str)], &'a str);

fn kind(fragment: &Value, cases: &[Case<'_>]) -> Checked {
    let checked = checked(fragment);
    for (item, facts, expected) in cases {
        assert_eq!(ask(&checked, item, facts), *expected, "{item} {facts:?}");
    }
    checked
}

fn item(id: &str, facts: &Value) -> Value {
    json!({ "id": id, "category": "household-goods", "facts": facts })
}

fn is(fact: &str, of: &[&str]) -> Value {
    json!({ "is": { "fact": fact, "of": of } })
}

fn yes(id: &str, when: &Value, stream: &str) -> Value {
    json!({ "id": id, "when": when, "verdict": "yes", "stream": stream, "reason": "sells" })
}

fn no(id: &str, when: &Value) -> Value {
    json!({ "id": id, "when": when, "verdict": "no", "stream": "refuse", "reason": "no-buyer" })
}

fn elsewhere(id: &str, when: &Value, channel: &str) -> Value {
    json!({ "id": id, "when": when, "verdict": "elsewhere", "channel": channel, "reason": "handled-apart" })
}

/// A value with more fields.
fn with(mut value: Value, more: &Value) -> Value {
    for (key, field) in more.as_object().unwrap() {
        value[key] = field.clone();
    }
    value
}

#[test]
fn by_item_by_form_by_material_by_mark() {
    kind(
        &json!({
            "items": [
                item("milk-jug", &json!({ "form": "jug", "material": "plastic", "resin": "2" })),
                item("odd-jug", &json!({ "form": "jug", "material": "plastic", "resin": "7" })),
                item("foil-ball", &json!({ "form": "foil", "material": "aluminium" })),
                with(item("drink-can", &json!({ "form": "can", "material": "aluminium" })),
                     &json!({ "open": { "deposit-mark": { "among": { "yes": 3, "no": 1 } } } })),
                item("horseshoe", &json!({ "material": "steel" }))
            ],
            "rules": [
                yes("jugs", &is("form", &["jug"]), "recycling"),
                yes("metals", &is("material", &["aluminium", "steel"]), "recycling"),
                elsewhere("marked-cans", &json!({ "all": [is("item", &["drink-can"]), is("deposit-mark", &["yes"])] }), "deposit"),
                elsewhere("horseshoes", &is("item", &["horseshoe"]), "reuse")
            ]
        }),
        &[
            ("milk-jug", &[], "yes recycling [jugs]"),
            // The number is ignored: the shape decides.
            ("odd-jug", &[], "yes recycling [jugs]"),
            ("foil-ball", &[], "yes recycling [metals]"),
            ("drink-can", &[], "asks deposit-mark"),
            ("drink-can", &[("deposit-mark", "yes")], "elsewhere deposit [marked-cans]"),
            ("drink-can", &[("deposit-mark", "?")], "yes recycling [metals]"),
            // A named exception beats the general rule, and the answer says which decided.
            ("horseshoe", &[], "elsewhere reuse [horseshoes]"),
        ],
    );
}

#[test]
fn a_resin_set_with_exceptions_by_form() {
    let resin = json!({ "open": { "resin": { "among": { "1": 5, "2": 3, "5": 3, "6": 2, "none": 1 } } } });
    kind(
        &json!({
            "items": [
                with(item("tub", &json!({ "form": "tub", "material": "plastic" })), &resin),
                with(item("cup", &json!({ "form": "cup", "material": "plastic" })), &resin),
                item("foam-box", &json!({ "form": "foam", "material": "plastic", "resin": "2" }))
            ],
            "rules": [
                with(yes("numbers", &json!({ "all": [is("material", &["plastic"]), is("resin", &["1", "2", "5"])] }), "recycling"),
                     &json!({ "tier": "material" })),
                no("foam", &is("form", &["foam"])),
                no("cups-but-1", &json!({ "all": [is("form", &["cup"]), { "not": is("resin", &["1"]) }] }))
            ],
            "unknown": { "resin": "none" }, "silence": "closed"
        }),
        &[
            ("tub", &[("resin", "5")], "yes recycling [numbers]"),
            ("tub", &[("resin", "6")], "no refuse (closed list)"),
            ("cup", &[("resin", "5")], "no refuse [cups-but-1]"),
            ("cup", &[("resin", "1")], "yes recycling [numbers]"),
            // "I can't tell" is answered as the program says.
            ("cup", &[("resin", "?")], "no refuse [cups-but-1]"),
            ("foam-box", &[], "no refuse [foam]"),
        ],
    );
}

#[test]
fn sizes_as_people_state_them() {
    let open = |fact: &str, from: &str, to: &str| json!({ "open": { fact: { "from": from, "to": to } } });
    let checked = kind(
        &json!({
            "items": [
                with(item("bottle", &json!({ "form": "bottle" })), &open("capacity", "1 fl oz", "10 gal")),
                with(item("box", &json!({ "form": "box" })), &open("longest-side", "1 ft", "8 ft")),
                with(item("trinket", &json!({ "form": "other", "longest-side": "12 in", "shortest-side": "1 in" })),
                     &open("middle-side", "1 in", "12 in")),
                with(item("ball", &json!({ "form": "toy" })), &open("shortest-side", "5 cm", "60 cm")),
                with(item("pot", &json!({ "form": "pot" })), &open("capacity", "1 fl oz", "5 gal"))
            ],
            "rules": [
                yes("bottles", &json!({ "measure": { "fact": "capacity", "at-least": "6 fl oz", "at-most": "5 gal" } }), "recycling"),
                yes("boxes", &json!({ "all": [is("form", &["box"]), { "measure": { "fact": "longest-side", "at-most": "3 ft" } }] }), "paper"),
                with(no("two-sides-small", &json!({ "all": [is("form", &["other"]),
                        { "measure": { "fact": "middle-side", "under": "2 in", "like": "golf-ball" } }] })), &json!({ "tier": "plant" })),
                yes("small-balls", &json!({ "all": [is("form", &["toy"]), { "measure": { "fact": "shortest-side", "at-most": "24.3 cm", "like": "basketball" } }] }), "recycling"),
                // A window between two sizes: larger than a small cup, up to 4 litres.
                yes("pots", &json!({ "all": [is("item", &["pot"]),
                        { "measure": { "fact": "capacity", "over": "6 fl oz", "like": "yogurt-cup" } },
                        { "measure": { "fact": "capacity", "at-most": "4 l" } }] }), "organics")
            ]
        }),
        &[
            ("bottle", &[("capacity", "6 fl oz")], "yes recycling [bottles]"),
            ("bottle", &[("capacity", "5.9 fl oz")], "unlisted"),
            ("bottle", &[("capacity", "5 gal")], "yes recycling [bottles]"),
            ("bottle", &[("capacity", "5.01 gal")], "unlisted"),
            ("box", &[("longest-side", "1 yd")], "yes paper [boxes]"),
            ("box", &[("longest-side", "92 cm")], "unlisted"),
            // NIST SP 811: 2 in is 50.8 mm exactly; "under" leaves the threshold itself out.
            ("trinket", &[("middle-side", "50.8 mm")], "unlisted"),
            ("trinket", &[("middle-side", "50.7 mm")], "no refuse [two-sides-small]"),
            ("ball", &[("shortest-side", "24.3 cm")], "yes recycling [small-balls]"),
            ("ball", &[("shortest-side", "25 cm")], "unlisted"),
            ("pot", &[("capacity", "6 fl oz")], "yes recycling [bottles]"),
            ("pot", &[("capacity", "7 fl oz")], "yes organics [pots]"),
        ],
    );
    // The everyday comparison stands beside the measure in the question.
    let at = checked.guide.item_index("trinket").unwrap();
    let Some(Step::Ask(question)) = checked.guide.next(at, &Known::default()) else { panic!("no question") };
    let said = serde_json::to_value(&question.options[0].label).unwrap();
    assert_eq!(said, json!({ "range": { "under": "2 in", "high": { "like": "golf-ball" } } }));
}

#[test]
fn weight_of_a_thing_and_of_a_container() {
    let checked = kind(
        &json!({
            "items": [with(item("scrap", &json!({ "material": "steel" })), &json!({ "open": { "mass": { "from": "1 lb", "to": "50 lb" } } }))],
            "rules": [
                yes("light-metal", &json!({ "measure": { "fact": "mass", "at-most": "10 lb" } }), "recycling"),
                elsewhere("heavy-metal", &json!({ "measure": { "fact": "mass", "over": "10 lb" } }), "drop-off")
            ],
            "streams": [
                { "id": "recycling", "kind": "recycling", "name": { "en": "Recycling" }, "containers": [
                    { "id": "blue-cart", "kind": "cart", "name": { "en": "blue cart" }, "capacity": "96 gal",
                      "rules": [{ "kind": "weight", "limit": "100 lb" }, { "kind": "lid-closed" },
                                { "kind": "distance", "limit": "3 ft", "text": { "en": "Three feet from cars." } }] } ] },
                { "id": "refuse", "kind": "refuse", "name": { "en": "Refuse" } }
            ]
        }),
        &[
            // NIST SP 811: 1 lb = 453.59237 g exactly.
            ("scrap", &[("mass", "4535.9237 g")], "yes recycling [light-metal]"),
            ("scrap", &[("mass", "4536 g")], "elsewhere drop-off [heavy-metal]"),
        ],
    );
    let containers = checked.guide.containers("recycling", None, None);
    let weight = Some("100 lb".to_owned());
    assert_eq!(containers[0].rules[0], ("weight".to_owned(), weight));
    assert_eq!(containers[0].rules[1], ("lid-closed".to_owned(), None));
}

#[test]
fn what_fits_the_container_and_the_vehicle() {
    let fits = json!({ "open": { "fits-container": { "among": { "yes": 1, "no": 1 } } } });
    let fragment = json!({
        "items": [with(item("bulky-toy", &json!({ "form": "toy", "material": "plastic" })), &fits)],
        "rules": [
            with(yes("fits", &is("fits-container", &["yes"]), "recycling"), &json!({ "prepare": ["fits-lid-shut"] })),
            with(elsewhere("too-large", &is("fits-container", &["no"]), "drop-off"), &json!({ "reason": "too-large" }))
        ],
        "channels": [{ "id": "drop-off", "kind": "drop-off", "name": { "en": "yard" },
                       "vehicles": { "en": "Cars and trailers up to 6 feet." } }],
        "hazards": {}
    });
    kind(
        &fragment,
        &[
            ("bulky-toy", &[], "asks fits-container"),
            ("bulky-toy", &[("fits-container", "yes")], "yes recycling: fits-lid-shut [fits]"),
            // Who cannot tell should not force the lid.
            ("bulky-toy", &[("fits-container", "?")], "elsewhere drop-off [too-large]"),
        ],
    );
    let texts = program_texts(&program(&fragment), "en");
    assert_eq!(texts["channel.drop-off.vehicles"], "Cars and trailers up to 6 feet.");
}

#[test]
fn closures_on_off_inside_and_loose() {
    let closure = json!({ "open": { "closure": { "among": { "on": 3, "off": 1 } } } });
    kind(
        &json!({
            "items": [
                with(item("bottle", &json!({ "form": "bottle", "material": "plastic", "closure": "on" })),
                     &json!({ "parts": [{ "id": "cap", "facts": { "form": "lid", "closure": "none" } }] })),
                with(item("jar", &json!({ "form": "jar", "material": "glass" })), &closure),
                item("loose-plastic-cap", &json!({ "form": "lid", "material": "plastic" })),
                item("loose-metal-cap", &json!({ "form": "lid", "material": "steel" }))
            ],
            "rules": [
                with(yes("bottles", &json!({ "all": [is("form", &["bottle"]), is("part", &["whole"])] }), "recycling"), &json!({ "prepare": ["cap-on"] })),
                yes("caps-on-bottles", &json!({ "all": [is("part", &["cap"])] }), "recycling"),
                with(yes("jars", &is("form", &["jar"]), "glass"), &json!({ "prepare": ["lid-off"] })),
                no("loose-caps", &json!({ "all": [is("form", &["lid"]), is("part", &["whole"]), is("material", &["plastic"])] })),
                with(yes("metal-caps", &json!({ "all": [is("form", &["lid"]), is("material", &["steel"])] }), "recycling"),
                     &json!({ "prepare": ["lid-inside-can"] }))
            ]
        }),
        &[
            // The cap goes where the bottle goes: it needs no line of its own.
            ("bottle", &[], "yes recycling: cap-on [bottles]"),
            ("jar", &[], "yes glass: lid-off [jars]"),
            ("loose-plastic-cap", &[], "no refuse [loose-caps]"),
            ("loose-metal-cap", &[], "yes recycling: lid-inside-can [metal-caps]"),
        ],
    );
}

#[test]
fn labels_sleeves_windows_and_staples() {
    let label = json!({ "open": { "label": { "among": { "paper": 5, "film": 5, "sleeve": 2 } } } });
    kind(
        &json!({
            "items": [
                with(item("bottle", &json!({ "form": "bottle" })), &label),
                item("envelope", &json!({ "form": "envelope", "window": "yes", "fitting": "yes" }))
            ],
            "rules": [
                yes("bottles", &is("form", &["bottle"]), "recycling"),
                { "id": "sleeves", "when": is("label", &["sleeve"]), "prepare": ["sleeve-off"] },
                { "id": "labels", "when": is("label", &["paper", "film"]), "prepare": ["label-stays"] },
                with(yes("envelopes", &is("form", &["envelope"]), "paper"), &json!({ "prepare": ["window-stays", "staples-stay"] }))
            ]
        }),
        &[
            ("bottle", &[("label", "sleeve")], "yes recycling: sleeve-off [bottles]"),
            ("bottle", &[("label", "paper")], "yes recycling: label-stays [bottles]"),
            ("envelope", &[], "yes paper: window-stays, staples-stay [envelopes]"),
        ],
    );
}

#[test]
fn parts_that_go_to_different_places() {
    let parts = |list: Value| json!({ "parts": list });
    kind(
        &json!({
            "items": [
                with(item("preserve-jar", &json!({ "form": "jar", "material": "glass" })), &parts(json!([
                    { "id": "lid", "facts": { "form": "lid", "material": "steel" } },
                    { "id": "ring", "facts": { "form": "other", "material": "rubber" } } ]))),
                with(item("dresser", &json!({ "form": "furniture", "material": "wood" })), &parts(json!([
                    { "id": "shade", "facts": { "form": "window", "material": "glass" } } ])))
            ],
            "rules": [
                yes("glass", &json!({ "all": [is("material", &["glass"]), is("form", &["jar"])] }), "glass"),
                yes("metal-lids", &json!({ "all": [is("part", &["lid"]), is("material", &["steel"])] }), "cans"),
                no("rings", &is("part", &["ring"])),
                with(elsewhere("furniture", &is("form", &["furniture"]), "bulky"), &json!({ "prepare": ["take-apart"] })),
                elsewhere("mirrors", &is("form", &["window"]), "drop-off")
            ]
        }),
        &[
            ("preserve-jar", &[], "yes glass [glass]; lid yes cans [metal-lids]; ring no refuse [rings]"),
            // Take the mirror off first.
            ("dresser", &[], "elsewhere bulky: take-apart [furniture]; shade elsewhere drop-off [mirrors]"),
        ],
    );
}

#[test]
fn empty_rinsed_dry_clean_or_the_clean_half() {
    let soiled = json!({ "open": { "soiling": { "among": { "clean": 3, "grease": 2, "food": 1 } } } });
    kind(
        &json!({
            "items": [
                with(item("pizza-box", &json!({ "form": "box", "material": "cardboard" })), &soiled),
                with(item("jar", &json!({ "form": "jar", "former-contents": "food" })),
                     &json!({ "open": { "contents": { "among": { "empty": 3, "traces": 2, "part-full": 1 } } } }))
            ],
            "rules": [
                yes("clean-board", &json!({ "all": [is("material", &["cardboard"]), is("soiling", &["clean"])] }), "paper"),
                with(yes("greasy-board", &json!({ "all": [is("material", &["cardboard"]), is("soiling", &["grease"])] }), "paper"),
                     &json!({ "prepare": ["tear-off-clean-half"] })),
                yes("dirty-board", &json!({ "all": [is("material", &["cardboard"]), is("soiling", &["food"])] }), "organics"),
                with(yes("jars", &json!({ "all": [is("form", &["jar"]), is("contents", &["empty", "traces"])] }), "glass"),
                     &json!({ "prepare": ["empty", "rinse", "dry"] })),
                no("half-full", &json!({ "all": [is("form", &["jar"]), is("contents", &["part-full"])] }))
            ]
        }),
        &[
            ("pizza-box", &[("soiling", "clean")], "yes paper [clean-board]"),
            ("pizza-box", &[("soiling", "grease")], "yes paper: tear-off-clean-half [greasy-board]"),
            ("pizza-box", &[("soiling", "food")], "yes organics [dirty-board]"),
            // Empty is enough; half full is a no (common practice, no source).
            ("jar", &[("contents", "traces")], "yes glass: empty, rinse, dry [jars]"),
            ("jar", &[("contents", "part-full")], "no refuse [half-full]"),
        ],
    );
}

#[test]
fn former_contents_refuse_an_accepted_thing() {
    kind(
        &json!({
            "items": [
                item("milk-jug", &json!({ "form": "jug", "former-contents": "drink" })),
                item("oil-jug", &json!({ "form": "jug", "former-contents": "oil" })),
                item("weed-killer-jug", &json!({ "form": "jug", "former-contents": "pesticide" }))
            ],
            "rules": [
                yes("jugs", &is("form", &["jug"]), "recycling"),
                with(no("poison-jugs", &is("former-contents", &["oil", "pesticide", "solvent", "paint"])), &json!({ "tier": "plant", "reason": "contents-spoil" }))
            ]
        }),
        &[
            ("milk-jug", &[], "yes recycling [jugs]"),
            ("oil-jug", &[], "no refuse [poison-jugs]"),
            ("weed-killer-jug", &[], "no refuse [poison-jugs]"),
        ],
    );
}

#[test]
fn flatten_cut_bundle_nest_and_crush() {
    kind(
        &json!({
            "items": [
                with(item("branch", &json!({ "form": "plant" })), &json!({ "open": { "bundled": { "among": { "yes": 1, "no": 1 } } } })),
                item("box", &json!({ "form": "box" })), item("can", &json!({ "form": "can" })),
                item("cup", &json!({ "form": "cup" })), item("foil", &json!({ "form": "foil" })),
                item("small-metal", &json!({ "form": "other", "material": "steel" }))
            ],
            "rules": [
                with(yes("branches", &json!({ "all": [is("form", &["plant"]), is("bundled", &["yes"])] }), "organics"), &json!({ "prepare": ["cut-down", "bundle-small"] })),
                elsewhere("loose-branches", &json!({ "all": [is("form", &["plant"]), is("bundled", &["no"])] }), "drop-off"),
                with(yes("boxes", &is("form", &["box"]), "paper"), &json!({ "prepare": ["flatten", "cut-down"] })),
                with(yes("cans", &is("form", &["can"]), "cans"), &json!({ "prepare": ["do-not-crush"] })),
                with(yes("cups", &is("form", &["cup"]), "recycling"), &json!({ "prepare": ["do-not-nest", "do-not-flatten"] })),
                // Scrunched to a size; and small things inside a closed can.
                with(yes("foil", &is("form", &["foil"]), "cans"), &json!({ "prepare": ["scrunch-foil"] })),
                with(yes("small-metal", &is("item", &["small-metal"]), "cans"), &json!({ "prepare": ["lid-inside-can"] }))
            ],
            "steps": { "bundle-small": { "en": "Tie bundles at most 3 by 3 feet and 6 inches high." } }
        }),
        &[
            ("branch", &[("bundled", "yes")], "yes organics: cut-down, bundle-small [branches]"),
            ("branch", &[("bundled", "no")], "elsewhere drop-off [loose-branches]"),
            ("box", &[], "yes paper: flatten, cut-down [boxes]"),
            ("can", &[], "yes cans: do-not-crush [cans]"),
            ("cup", &[], "yes recycling: do-not-nest, do-not-flatten [cups]"),
            ("foil", &[], "yes cans: scrunch-foil [foil]"),
            ("small-metal", &[], "yes cans: lid-inside-can [small-metal]"),
        ],
    );
}

#[test]
fn loose_bagged_and_the_one_exception() {
    let bagged = json!({ "open": { "bagged": { "among": { "loose": 5, "plastic-bag": 3, "clear-bag": 1, "paper-bag": 1 } } } });
    kind(
        &json!({
            "items": [
                with(item("cans", &json!({ "form": "can" })), &bagged),
                with(item("shreds", &json!({ "form": "sheet", "material": "paper", "shredded": "yes", "strip-length": "5 in" })), &bagged),
                with(item("bags", &json!({ "form": "bag" })), &bagged)
            ],
            "rules": [
                yes("cans", &is("form", &["can"]), "cans"),
                with(no("no-bags", &is("bagged", &["plastic-bag", "clear-bag", "paper-bag"])), &json!({ "tier": "plant", "prepare": ["no-bags"] })),
                // The one exception to the no-bag rule, for strips that are long enough.
                with(yes("shreds-in-bag", &json!({ "all": [is("item", &["shreds"]), is("bagged", &["clear-bag", "paper-bag"]),
                        { "measure": { "fact": "strip-length", "at-least": "4 in" } }] }), "paper"), &json!({ "tier": "plant", "prepare": ["paper-bag"] })),
                no("loose-shreds", &json!({ "all": [is("item", &["shreds"]), is("bagged", &["loose", "plastic-bag"])] })),
                // A bag of bags: together in one bag, to the store.
                with(elsewhere("bag-of-bags", &is("item", &["bags"]), "store"), &json!({ "tier": "plant", "prepare": ["clear-bag"] }))
            ]
        }),
        &[
            ("cans", &[("bagged", "loose")], "yes cans [cans]"),
            ("cans", &[("bagged", "plastic-bag")], "no refuse: no-bags [no-bags]"),
            ("cans", &[("bagged", "?")], "yes cans [cans]"),
            ("shreds", &[("bagged", "paper-bag")], "yes paper: paper-bag [shreds-in-bag]"),
            ("shreds", &[("bagged", "loose")], "no refuse [loose-shreds]"),
            ("bags", &[("bagged", "plastic-bag")], "elsewhere store: clear-bag [bag-of-bags]"),
        ],
    );
}

#[test]
fn colours_and_what_counts_as_what() {
    let glass = json!({ "open": { "colour": { "among": {
        "clear": 5, "frosted": 1, "brown": 3, "green": 3, "blue": 1, "other": 1 } } } });
    let checked = kind(
        &json!({
            "items": [with(item("bottle", &json!({ "form": "bottle", "material": "glass" })), &glass),
                      item("black-tray", &json!({ "form": "tray", "colour": "black" }))],
            "counts-as": [
                { "fact": "colour", "these": ["blue", "other"], "count-as": "green" },
                { "fact": "colour", "these": ["frosted"], "count-as": "clear" }
            ],
            "rules": [
                yes("clear", &json!({ "all": [is("form", &["bottle"]), is("colour", &["clear"])] }), "glass"),
                elsewhere("brown", &json!({ "all": [is("form", &["bottle"]), is("colour", &["brown"])] }), "drop-off"),
                elsewhere("green", &json!({ "all": [is("form", &["bottle"]), is("colour", &["green"])] }), "store"),
                with(no("black", &is("colour", &["black"])), &json!({ "tier": "plant", "reason": "black-unseen" }))
            ]
        }),
        &[
            ("bottle", &[("colour", "clear")], "yes glass [clear]"),
            ("bottle", &[("colour", "frosted")], "yes glass [clear]"),
            ("bottle", &[("colour", "green")], "elsewhere store [green]"),
            ("bottle", &[("colour", "blue")], "elsewhere store [green]"),
            ("bottle", &[("colour", "other")], "elsewhere store [green]"),
            ("bottle", &[("colour", "brown")], "elsewhere drop-off [brown]"),
            ("black-tray", &[], "no refuse [black]"),
        ],
    );
    assert!(checked.findings.iter().all(|f| f.code != "uncovered-case"));
}

#[test]
fn coated_waxed_foil_laminated_wet_strength_glitter() {
    let coating = json!({ "open": { "coating": { "among": {
        "none": 5, "plastic": 2, "wax": 1, "foil": 1, "glitter": 1, "wet-strength": 1 } } } });
    kind(
        &json!({
            "items": [with(item("board", &json!({ "material": "paperboard" })), &coating),
                      item("laminate", &json!({ "material": "paper", "layers": "many" }))],
            "rules": [
                yes("board", &is("material", &["paperboard", "paper"]), "paper"),
                with(no("spoilt-fibre", &is("coating", &["wax", "foil", "glitter", "wet-strength"])), &json!({ "tier": "plant" })),
                with(no("laminated", &is("layers", &["many"])), &json!({ "tier": "plant" }))
            ]
        }),
        &[
            ("board", &[("coating", "plastic")], "yes paper [board]"),
            ("board", &[("coating", "wax")], "no refuse [spoilt-fibre]"),
            ("board", &[("coating", "glitter")], "no refuse [spoilt-fibre]"),
            ("board", &[("coating", "wet-strength")], "no refuse [spoilt-fibre]"),
            ("laminate", &[], "no refuse [laminated]"),
        ],
    );
}

#[test]
fn several_streams_and_containers_by_zone_dwelling_and_day() {
    let container =
        |id: &str, more: Value| with(json!({ "id": id, "kind": "box", "name": { "en": id } }), &more);
    let fragment = json!({
        "streams": [
            { "id": "paper", "kind": "paper", "name": { "en": "Paper" }, "containers": [
                container("black-box", json!({ "dwellings": ["house", "small-building"], "set-out": { "en": "Out on Tuesdays." } })),
                container("paper-cart", json!({ "dwellings": ["large-building"], "set-out": { "en": "Emptied on Fridays." } })) ] },
            { "id": "mixed", "kind": "recycling", "name": { "en": "Mixed" }, "containers": [
                container("green-box", json!({ "zones": ["town"] })),
                container("green-sack", json!({ "zones": ["farms"], "rules": [{ "kind": "sacks" }, { "kind": "registration" }] })) ] },
            { "id": "refuse", "kind": "refuse", "name": { "en": "Refuse" } }
        ],
        "zones": [ { "id": "town", "name": { "en": "Town" }, "streams": ["paper", "mixed", "refuse"] },
                   { "id": "farms", "name": { "en": "Farms" }, "dwelling": "house", "streams": ["mixed", "refuse"] } ],
        "items": [item("newspaper", &json!({ "material": "paper" }))],
        "rules": [
            yes("paper-in-town", &json!({ "all": [is("material", &["paper"]), is("zone", &["town"])] }), "paper"),
            yes("paper-on-farms", &json!({ "all": [is("material", &["paper"]), is("zone", &["farms"])] }), "mixed")
        ]
    });
    let checked = kind(
        &fragment,
        &[
            ("newspaper", &[], "asks zone"),
            ("newspaper", &[("zone", "town")], "yes paper [paper-in-town]"),
            ("newspaper", &[("zone", "farms")], "yes mixed [paper-on-farms]"),
        ],
    );
    let ids = |stream: &str, zone: Option<&str>, dwelling: Option<&str>| -> Vec<String> {
        checked.guide.containers(stream, zone, dwelling).iter().map(|c| c.id.clone()).collect()
    };
    assert_eq!(ids("paper", Some("town"), Some("house")), ["black-box"]);
    assert_eq!(ids("paper", Some("town"), Some("large-building")), ["paper-cart"]);
    assert_eq!(ids("paper", Some("town"), None), ["black-box", "paper-cart"]);
    assert_eq!(ids("mixed", Some("farms"), None), ["green-sack"]);
    // Its own set-out day, and rules about the container: stated once, in the program's words.
    let texts = program_texts(&program(&fragment), "en");
    assert_eq!(texts["container.black-box.set-out"], "Out on Tuesdays.");
    assert_eq!(checked.guide.containers("mixed", Some("farms"), None)[0].rules.len(), 2);
}

#[test]
fn every_channel_with_its_terms() {
    let fragment = json!({
        "channels": [
            { "id": "drop-off", "kind": "drop-off", "name": { "en": "Yard" }, "fee": { "en": "5 dollars a load" },
              "booking": true, "proof": true, "permit": true, "voucher": true,
              "allowance": { "en": "12 visits a year" }, "vehicles": { "en": "No trucks." } },
            { "id": "post", "kind": "mail-back", "name": { "en": "Mail" } },
            { "id": "dealer", "kind": "dealer", "name": { "en": "Dealer" } },
            { "id": "police", "kind": "police", "name": { "en": "Police" } },
            { "id": "firm", "kind": "specialist", "name": { "en": "Firm" } },
            { "id": "event", "kind": "event", "name": { "en": "Event" } }
        ],
        "hazards": {},
        "sites": [
            { "id": "north", "name": { "en": "North yard" }, "channels": ["drop-off"],
              "position": { "lat": 40.0, "lon": -75.0 }, "hours": "Mo-Fr 08:00-16:00", "refuses": ["sofa"],
              "vehicles": { "en": "No trailers." } },
            { "id": "south", "name": { "en": "South yard" }, "channels": ["drop-off"],
              "position": { "lat": 39.0, "lon": -75.0 }, "hours": "Sa 08:00-12:00" }
        ],
        "items": [item("sofa", &json!({ "form": "furniture" })), item("toner", &json!({ "form": "device" })),
                  item("tyre", &json!({ "form": "tyre" })), item("found-knife", &json!({ "form": "tool" })),
                  item("piano", &json!({ "material": "wood" })), item("paint-swap", &json!({ "form": "pot" }))],
        "rules": [
            elsewhere("sofas", &is("item", &["sofa"]), "drop-off"), elsewhere("toner", &is("item", &["toner"]), "post"),
            elsewhere("tyres", &is("item", &["tyre"]), "dealer"), elsewhere("knives", &is("item", &["found-knife"]), "police"),
            elsewhere("pianos", &is("item", &["piano"]), "firm"), elsewhere("swap", &is("item", &["paint-swap"]), "event")
        ]
    });
    let checked = kind(
        &fragment,
        &[
            ("sofa", &[], "elsewhere drop-off [sofas]"),
            ("toner", &[], "elsewhere post [toner]"),
            ("tyre", &[], "elsewhere dealer [tyres]"),
            ("found-knife", &[], "elsewhere police [knives]"),
            ("piano", &[], "elsewhere firm [pianos]"),
            ("paint-swap", &[], "elsewhere event [swap]"),
        ],
    );
    let yard = &checked.guide.channels[0];
    assert!(yard.booking && yard.proof && yard.permit && yard.voucher && yard.has_fee);
    let texts = program_texts(&program(&fragment), "en");
    assert_eq!(texts["channel.drop-off.allowance"], "12 visits a year");
    assert_eq!(texts["site.north.vehicles"], "No trailers.");
    // A site's own exception: the sofa goes to the farther yard, which takes it.
    let near = |item: Option<&str>| -> Vec<String> {
        let here = Some(guide_data::Position { lat: 40.0, lon: -75.0 });
        let found = nearest(&checked.guide, "drop-off", item, here);
        found.iter().map(|n| checked.guide.sites[n.site].id.clone()).collect()
    };
    assert_eq!(near(Some("sofa")), ["south"]);
    assert_eq!(near(None), ["north", "south"]);
}

#[test]
fn quantities_per_visit_per_week_and_unlimited() {
    let much = |from: &str, to: &str, fact: &str| json!({ "open": { fact: { "from": from, "to": to, "usual": from } } });
    kind(
        &json!({
            "items": [
                with(item("tyre", &json!({ "form": "tyre" })), &much("1", "20", "quantity")),
                with(item("cooking-oil", &json!({ "form": "liquid" })), &much("1 fl oz", "5 gal", "capacity")),
                with(item("newspaper", &json!({ "form": "newspaper" })), &much("1", "500", "quantity"))
            ],
            "rules": [
                elsewhere("few-tyres", &json!({ "all": [is("form", &["tyre"]), { "measure": { "fact": "quantity", "at-most": "4", "per": "visit" } }] }), "drop-off"),
                elsewhere("many-tyres", &json!({ "all": [is("form", &["tyre"]), { "measure": { "fact": "quantity", "over": "4", "per": "visit" } }] }), "firm"),
                yes("a-cup-of-oil", &json!({ "all": [is("form", &["liquid"]), { "measure": { "fact": "capacity", "at-most": "1 cup", "per": "week" } }] }), "organics"),
                elsewhere("more-oil", &json!({ "all": [is("form", &["liquid"]), { "measure": { "fact": "capacity", "over": "1 cup" } }] }), "drop-off"),
                yes("any-paper", &is("form", &["newspaper"]), "paper")
            ]
        }),
        &[
            ("tyre", &[], "asks quantity"),
            ("tyre", &[("quantity", "4")], "elsewhere drop-off [few-tyres]"),
            ("tyre", &[("quantity", "5")], "elsewhere firm [many-tyres]"),
            ("cooking-oil", &[("capacity", "8 fl oz")], "yes organics [a-cup-of-oil]"),
            ("cooking-oil", &[("capacity", "1 l")], "elsewhere drop-off [more-oil]"),
            // Unlimited: the number is not even asked for.
            ("newspaper", &[], "yes paper [any-paper]"),
        ],
    );
}

#[test]
fn an_open_list_a_closed_list_and_nobody_has_said() {
    let fragment = |silence: &str| {
        json!({
            "items": [item("garden-gnome", &json!({ "material": "ceramic" })), item("can", &json!({ "form": "can" }))],
            "rules": [yes("cans", &is("form", &["can"]), "cans")],
            "silence": silence
        })
    };
    kind(&fragment("ask"), &[("garden-gnome", &[], "unlisted"), ("can", &[], "yes cans [cans]")]);
    kind(&fragment("closed"), &[("garden-gnome", &[], "no refuse (closed list)")]);
    let open = check(&program(&fragment("undecided")), &Catalog::default());
    assert!(open.findings.iter().any(|f| f.code == "uncovered-case" && f.place.id == "garden-gnome"));
    assert!(!open.publishable());
}

#[test]
fn household_only_and_packaging_only() {
    kind(
        &json!({
            "items": [item("crate", &json!({ "material": "plastic", "object": "packaging" })),
                      item("garden-chair", &json!({ "material": "plastic", "object": "product" }))],
            "rules": [
                yes("packaging", &json!({ "all": [is("material", &["plastic"]), is("object", &["packaging"])] }), "recycling"),
                with(no("objects", &is("object", &["product"])), &json!({ "reason": "not-packaging" })),
                with(no("business", &is("origin", &["business"])), &json!({ "tier": "plant" }))
            ]
        }),
        &[
            ("crate", &[], "yes recycling [packaging]"),
            ("crate", &[("origin", "business")], "no refuse [business]"),
            ("garden-chair", &[], "no refuse [objects]"),
        ],
    );
}

#[test]
fn seasons_temporary_orders_and_two_editions_side_by_side() {
    let fragment = json!({
        "items": [item("holiday-tree", &json!({ "form": "plant", "material": "wood" })),
                  item("can", &json!({ "form": "can" })), item("carton", &json!({ "form": "carton" }))],
        "rules": [
            // Every year over the new year, whatever the year.
            with(yes("trees-in-season", &is("item", &["holiday-tree"]), "organics"), &json!({ "season": { "from": "12-26", "until": "01-15" }, "overrides": ["trees"] })),
            elsewhere("trees", &is("item", &["holiday-tree"]), "drop-off"),
            yes("cans", &is("form", &["can"]), "cans"),
            // An emergency order that beats a normal yes while it lasts.
            with(elsewhere("fire-order", &is("form", &["can"]), "drop-off"), &json!({ "temporary": true, "from": "2026-08-01", "until": "2026-08-31" })),
            // Two editions side by side: until a date, and from the next day on.
            with(no("cartons-before", &is("form", &["carton"])), &json!({ "until": "2026-12-31" })),
            with(yes("cartons-after", &is("form", &["carton"]), "recycling"), &json!({ "from": "2027-01-01" }))
        ]
    });
    kind(
        &fragment,
        &[
            ("holiday-tree", &[("day", "2026-12-25")], "elsewhere drop-off [trees]"),
            ("holiday-tree", &[("day", "2026-12-26")], "yes organics [trees-in-season]"),
            ("holiday-tree", &[("day", "2027-01-15")], "yes organics [trees-in-season]"),
            ("holiday-tree", &[("day", "2031-01-16")], "elsewhere drop-off [trees]"),
            ("can", &[("day", "2026-07-31")], "yes cans [cans]"),
            ("can", &[("day", "2026-08-31")], "elsewhere drop-off (temporary) [fire-order]"),
            ("can", &[("day", "2026-09-01")], "yes cans [cans]"),
            ("carton", &[("day", "2026-12-31")], "no refuse [cartons-before]"),
            ("carton", &[("day", "2027-01-01")], "yes recycling [cartons-after]"),
            // No day given: the first day of the edition, never a clock.
            ("carton", &[], "no refuse [cartons-before]"),
        ],
    );
}

#[test]
fn registration_sacks_and_liners() {
    let fragment = json!({
        "streams": [{ "id": "organics", "kind": "organics", "name": { "en": "Organics" }, "containers": [
            { "id": "caddy", "kind": "bin", "name": { "en": "kitchen caddy" }, "rules": [
                { "kind": "registration", "text": { "en": "Sign up by telephone first." } },
                { "kind": "sacks", "text": { "en": "Twenty free sacks a year." } },
                { "kind": "liners", "text": { "en": "Paper liners only." } },
                { "kind": "share-of-load", "limit": "5 %" }, { "kind": "side-waste" }, { "kind": "refusals" } ] } ] },
            { "id": "refuse", "kind": "refuse", "name": { "en": "Refuse" } }],
        "items": [item("peelings", &json!({ "material": "food" }))],
        "rules": [yes("food", &is("material", &["food"]), "organics")]
    });
    let checked = kind(&fragment, &[("peelings", &[], "yes organics [food]")]);
    let rules = &checked.guide.containers("organics", None, None)[0].rules;
    assert_eq!(rules.len(), 6);
    assert_eq!(program_texts(&program(&fragment), "en")["container.caddy.liners"], "Paper liners only.");
}

#[test]
fn hazards_with_a_named_channel_or_a_telephone_call() {
    let cart = |id: &str, when: &Value| with(yes(id, when, "recycling"), &json!({}));
    kind(
        &json!({
            "items": [
                item("drill-battery", &json!({ "hazard": "battery-lithium", "form": "battery" })),
                item("old-shell", &json!({ "hazard": "explosive", "material": "steel" })),
                item("lancet", &json!({ "hazard": "sharps", "material": "steel" })),
                item("dial", &json!({ "hazard": "radioactive" }))
            ],
            // A rule that would send metal to the cart does not reach what is dangerous.
            "rules": [cart("metal", &is("material", &["steel"]))]
        }),
        &[
            ("drill-battery", &[], "elsewhere hazard-yard [safety.battery-lithium]"),
            ("old-shell", &[], "elsewhere authority [safety.explosive]"),
            ("lancet", &[], "elsewhere health [safety.sharps]"),
            ("dial", &[], "elsewhere authority [safety.radioactive]"),
        ],
    );
}

#[test]
fn advice_that_towns_contradict_each_other_on_is_caught() {
    let town = |step: &str| {
        program(&json!({
            "items": [item("spray-can", &json!({ "form": "spray-can", "contents": "empty" }))],
            "rules": [with(yes("cans", &is("form", &["spray-can"]), "recycling"), &json!({ "prepare": [step] }))],
            "steps": { "pierce": { "en": "Pierce it outdoors." } }
        }))
    };
    let changes = compare(&town("pierce"), &town("do-not-puncture"), &Catalog::default());
    assert_eq!(changes.len(), 1);
    assert_eq!(changes[0].before.as_ref().map(told).unwrap(), "yes recycling: pierce [cans]");
    assert_eq!(changes[0].after.as_ref().map(told).unwrap(), "yes recycling: do-not-puncture [cans]");
}

#[test]
fn treat_unknown_as() {
    let open = json!({ "open": { "resin": { "among": { "1": 9, "5": 1, "unreadable": 1 } }, "compostable": { "among": { "claimed": 3, "certified": 1 } } } });
    let fragment = |resin: &str| {
        json!({
            "items": [with(item("clamshell", &json!({ "form": "clamshell", "material": "plastic" })), &open)],
            "rules": [
                yes("ones", &is("resin", &["1"]), "recycling"),
                no("others", &is("resin", &["5", "unreadable"]))
            ],
            "unknown": { "resin": resin }
        })
    };
    // Without a number, where a number is required: no (common practice, no source).
    kind(&fragment("unreadable"), &[("clamshell", &[("resin", "?")], "no refuse [others]")]);
    kind(&fragment("1"), &[("clamshell", &[("resin", "?")], "yes recycling [ones]")]);
}

#[test]
fn full_empty_and_dried_out_go_three_ways() {
    kind(
        &json!({
            "items": [with(item("paint-can", &json!({ "form": "can", "former-contents": "paint" })),
                &json!({ "open": { "contents": { "among": { "empty": 3, "dried": 2, "part-full": 3, "full": 1 } } } }))],
            "rules": [
                yes("empty-cans", &json!({ "all": [is("form", &["can"]), is("contents", &["empty"])] }), "cans"),
                no("dried-paint", &json!({ "all": [is("former-contents", &["paint"]), is("contents", &["dried"])] })),
                with(elsewhere("wet-paint", &json!({ "all": [is("former-contents", &["paint"]), is("contents", &["part-full", "full"])] }), "hazard-yard"),
                     &json!({ "tier": "safety" }))
            ]
        }),
        &[
            ("paint-can", &[("contents", "empty")], "yes cans [empty-cans]"),
            ("paint-can", &[("contents", "dried")], "no refuse [dried-paint]"),
            ("paint-can", &[("contents", "full")], "elsewhere hazard-yard [wet-paint]"),
            ("paint-can", &[("contents", "?")], "elsewhere hazard-yard [wet-paint]"),
        ],
    );
}

#[test]
fn a_deposit_item_leaves_the_choice_to_the_resident() {
    kind(
        &json!({
            "items": [item("bottle", &json!({ "form": "bottle", "deposit-mark": "yes" }))],
            "rules": [with(yes("deposit-bottles", &is("deposit-mark", &["yes"]), "recycling"), &json!({ "also": ["deposit"] }))]
        }),
        &[("bottle", &[], "yes recycling or deposit [deposit-bottles]")],
    );
}

#[test]
fn a_paid_add_on() {
    kind(
        &json!({
            "items": [item("grass", &json!({ "form": "plant" }))],
            "rules": [
                yes("paid-yard-cart", &json!({ "all": [is("form", &["plant"]), is("add-on", &["yes"])] }), "organics"),
                elsewhere("yard-waste", &json!({ "all": [is("form", &["plant"]), is("add-on", &["no"])] }), "drop-off")
            ]
        }),
        &[
            ("grass", &[], "asks add-on"),
            ("grass", &[("add-on", "yes")], "yes organics [paid-yard-cart]"),
            ("grass", &[("add-on", "?")], "elsewhere drop-off [yard-waste]"),
        ],
    );
}

#[test]
fn banned_from_refuse_as_well() {
    let ban = json!({ "id": "law", "when": is("material", &["electronics"]), "banned-from": ["refuse"] });
    let items = json!([item("screen", &json!({ "material": "electronics" }))]);
    kind(
        &json!({
            "items": items,
            "rules": [elsewhere("screens", &is("material", &["electronics"]), "drop-off"), ban]
        }),
        &[("screen", &[], "elsewhere drop-off !refuse [screens]")],
    );
}

#[test]
fn certified_compostable_only_take_apart_and_deposits() {
    kind(
        &json!({
            "items": [with(item("fork", &json!({ "form": "cutlery", "material": "bioplastic" })),
                &json!({ "open": { "compostable": { "among": { "claimed": 3, "certified": 1 } } } }))],
            "rules": [
                yes("certified", &is("compostable", &["certified"]), "organics"),
                no("only-claimed", &is("compostable", &["claimed", "no"]))
            ]
        }),
        &[
            ("fork", &[("compostable", "certified")], "yes organics [certified]"),
            ("fork", &[("compostable", "?")], "no refuse [only-claimed]"),
        ],
    );
}

#[test]
fn three_texts_and_provenance_travel_with_a_rule() {
    let rule = with(
        yes("cans", &is("form", &["can"]), "cans"),
        &json!({ "texts": { "contract": "Clause 3: cans.", "sorters": { "en": "Cans on." }, "residents": { "en": "Cans are melted." } } }),
    );
    let program = program(&json!({ "items": [item("can", &json!({ "form": "can" }))], "rules": [rule] }));
    let rule = program.rule("cans").unwrap();
    assert_eq!(rule.texts.contract, "Clause 3: cans.");
    assert_eq!(rule.texts.sorters.get("en"), Some("Cans on."));
    assert_eq!(program_texts(&program, "en")["rule.cans"], "Cans are melted.");
    assert_eq!(rule.provenance.confirmed.unwrap().to_string(), "2026-05-01");
    // A measure is kept as stated when the file is written again.
    assert_eq!(Program::from_json(&program.to_json()).unwrap(), program);
}
