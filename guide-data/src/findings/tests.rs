//! One small program for each finding, and the finding it must give. The programs are a base that
//! is clean, changed in one place.

use std::collections::BTreeMap;

use serde_json::{Value, json};

use super::{Checked, FINDING_CODES, Finding, Severity, check};
use crate::ask::Step;
use crate::catalog::Catalog;
use crate::fix::{FIX_CODES, Fix};
use crate::program::Program;

fn catalog() -> Catalog {
    serde_json::from_value(json!({"items": [
        {"id": "can", "category": "metal", "facts": {"material": "steel", "form": "can"},
         "open": {"contents": {"among": {"empty": 9, "part-full": 1}}}},
        {"id": "cell", "category": "batteries-electronics", "facts": {"hazard": "battery-lithium"}}
    ]}))
    .unwrap()
}

fn base() -> Value {
    let provenance =
        json!({"decided-by": "Coordinator", "source": "Contract 4.2", "confirmed": "2026-05-01"});
    let texts = json!({"contract": "As in 4.2", "sorters": {"en": "Line 2"}});
    json!({
        "id": "clean", "name": {"en": "Clean"}, "source-language": "en", "languages": ["en"],
        "guide-url": "https://example.org/",
        "streams": [{"id": "recycling", "kind": "recycling", "name": {"en": "Recycling"}, "containers": [
            {"id": "cart", "kind": "cart", "name": {"en": "Blue cart"}, "colour": "#205080"}]},
            {"id": "refuse", "kind": "refuse", "name": {"en": "Refuse"}}],
        "zones": [{"id": "town", "name": {"en": "Town"}, "households": 10, "centre": {"lat": 41.6, "lon": -52.1}},
                  {"id": "hills", "name": {"en": "Hills"}, "households": 3, "centre": {"lat": 41.8, "lon": -52.6}}],
        "channels": [{"id": "hhw", "kind": "hazardous-waste", "name": {"en": "Hazardous waste"},
                      "safe-for": ["battery-lithium"]}],
        "sites": [{"id": "depot", "name": {"en": "Depot"}, "channels": ["hhw"], "hours": "Mo-Fr 08:00-16:00",
                   "position": {"lat": 41.6, "lon": -52.1}}],
        "hazards": {"battery-lithium": {"channel": "hhw"}},
        "silence": "ask",
        "rules": [
            {"id": "full", "tier": "plant", "when": {"is": {"fact": "contents", "of": ["part-full"]}},
             "verdict": "no", "stream": "refuse", "reason": "soiled", "texts": texts, "provenance": provenance},
            {"id": "metal", "tier": "material", "when": {"is": {"fact": "material", "of": ["steel"]}},
             "verdict": "yes", "stream": "recycling", "reason": "sells", "texts": texts, "provenance": provenance}
        ]
    })
}

/// Sets a value at a JSON pointer.
fn with(changes: &[(&str, Value)]) -> Program {
    let mut program = base();
    for (pointer, value) in changes {
        let (parent, key) = pointer.rsplit_once('/').unwrap();
        match program.pointer_mut(parent).unwrap() {
            Value::Array(list) if key == "-" => list.push(value.clone()),
            Value::Array(list) => list[key.parse::<usize>().unwrap()] = value.clone(),
            other => other[key] = value.clone(),
        }
    }
    serde_json::from_value(program).unwrap()
}

fn rule(id: &str, tier: &str, when: Value, place: Value) -> Value {
    let mut rule = json!({"id": id, "tier": tier, "when": when, "reason": "sells",
        "texts": {"contract": "As in 4.2", "sorters": {"en": "Line 2"}}, "provenance":
        {"decided-by": "Coordinator", "source": "Contract 4.2", "confirmed": "2026-05-01"}});
    for (key, value) in place.as_object().unwrap() {
        rule[key] = value.clone();
    }
    rule
}

fn told(checked: &Checked) -> Vec<String> {
    checked
        .findings
        .iter()
        .map(|f| {
            let severity = match f.severity {
                Severity::Error => "error",
                Severity::Warning => "warning",
                Severity::Notice => "notice",
            };
            let problem = f.args.get("problem").map(|p| format!(" {p}")).unwrap_or_default();
            let field = if f.place.field.is_empty() { String::new() } else { format!(".{}", f.place.field) };
            format!("{severity} {}{problem} at {} {}{field}", f.code, f.place.kind, f.place.id)
        })
        .collect()
}

fn finds(changes: &[(&str, Value)], expected: &[&str]) {
    let program = with(changes);
    let checked = check(&program, &catalog());
    every_fix_mends(&program, &checked);
    assert_eq!(told(&checked), expected, "{changes:?}");
    assert_eq!(checked.publishable(), !expected.iter().any(|e| e.starts_with("error")));
    for finding in &checked.findings {
        assert!(
            FINDING_CODES.contains(&finding.code.as_str()),
            "{} is not in the list of codes",
            finding.code
        );
        if let Some(witness) = &finding.witness {
            assert!(checked.guide.replay(witness).is_some(), "{witness:?} cannot be met again");
            let at = checked.guide.item_index(&witness.item).unwrap();
            let step = checked.guide.next(at, &witness.known());
            assert!(matches!(step, Some(Step::Answer(_))), "{witness:?} leaves a question open");
        }
    }
}

fn errors(checked: &Checked) -> BTreeMap<String, usize> {
    let mut counts = BTreeMap::new();
    for finding in checked.findings.iter().filter(|f| f.severity == Severity::Error) {
        *counts.entry(finding.code.clone()).or_default() += 1;
    }
    counts
}

/// Every fix offered makes its finding vanish and adds no error.
fn every_fix_mends(program: &Program, checked: &Checked) {
    let before = errors(checked);
    for finding in &checked.findings {
        for fix in &finding.fixes {
            let mut mended = program.clone();
            mended.apply(fix).unwrap_or_else(|e| panic!("{fix:?}: {}", e.code()));
            let after = check(&mended, &catalog());
            let same =
                |f: &&Finding| (&f.code, &f.place, &f.args) == (&finding.code, &finding.place, &finding.args);
            assert_eq!(after.findings.iter().find(same), None, "{fix:?} leaves it");
            for (code, count) in errors(&after) {
                assert!(count <= before.get(&code).copied().unwrap_or(0), "{fix:?} adds {code}: {after:?}");
            }
            // What is offered survives being written to a file, as machine output is.
            let json = serde_json::to_string(fix).unwrap();
            assert_eq!(&serde_json::from_str::<Fix>(&json).unwrap(), fix);
            let known = FIX_CODES.iter().find(|(code, _)| *code == fix.code());
            let names: Vec<&str> = fix.args().into_keys().collect();
            let mut expected = known.expect("a code of the table").1.to_vec();
            expected.sort_unstable();
            assert!(expected.iter().all(|name| names.contains(name)), "{fix:?}: {names:?} {expected:?}");
        }
    }
}

/// The fixes offered for the findings of a code, in short form, in order.
fn offers(changes: &[(&str, Value)], code: &str) -> Vec<String> {
    let program = with(changes);
    let checked = check(&program, &catalog());
    every_fix_mends(&program, &checked);
    let of_code = checked.findings.iter().filter(|f| f.code == code);
    of_code
        .flat_map(|f| &f.fixes)
        .map(|fix| {
            let args = fix.args();
            let with = args.get("with").or_else(|| args.get("channel")).or_else(|| args.get("stream"));
            match with.or_else(|| args.get("over")).or_else(|| args.get("value")) {
                Some(with) => format!("{} {with}", fix.code()),
                None => fix.code().to_owned(),
            }
        })
        .collect()
}

#[test]
fn fixes_are_offered_one_for_each_way_to_decide() {
    let never = json!({"is": {"fact": "material", "of": ["glass"]}});
    assert_eq!(
        offers(&[("/silence", json!("undecided")), ("/rules/1/when", never.clone())], "uncovered-case"),
        ["answer-yes recycling", "answer-no refuse", "silence-ask", "silence-closed"]
    );
    assert_eq!(offers(&[("/rules/1/when", never)], "rule-never-applies"), ["remove-rule"]);
    let glass = |stream: &str, verdict: &str| {
        rule(stream, "material", json!({"all": []}), json!({"verdict": verdict, "stream": stream}))
    };
    assert_eq!(
        offers(&[("/rules/-", glass("refuse", "no"))], "conflicting-rules"),
        ["go-before refuse", "go-before metal"]
    );
    assert_eq!(offers(&[("/hazards", json!({}))], "hazard-not-safe"), ["route hhw"]);
    // No channel is marked safe by a guess.
    assert_eq!(offers(&[("/channels/0/safe-for", json!([]))], "hazard-not-safe"), Vec::<String>::new());
    assert_eq!(offers(&[("/rules/1/stream", json!("recyling"))], "broken-reference"), ["replace recycling"]);
    assert_eq!(offers(&[("/rules/1/stream", Value::Null)], "broken-reference"), ["choose recycling"]);
    assert_eq!(
        offers(&[("/rules/1/prepare", json!(["flaten"]))], "broken-reference"),
        ["replace flatten", "remove flaten"]
    );
    assert_eq!(offers(&[("/rules/0/id", json!("metal"))], "duplicate-id"), ["own-ids metal-2"]);
    assert_eq!(
        offers(&[("/zones/1/streams", json!(["refuse"]))], "destination-not-offered"),
        ["collect recycling", "except-zone"]
    );
    assert_eq!(offers(&[("/name/en", json!("Clean <b>city</b>"))], "suspicious-text"), ["clean-text"]);
    assert_eq!(
        offers(&[("/streams/0/containers/0/colour", json!("205080"))], "unusable-setting"),
        ["replace #205080", "remove 205080"]
    );
    assert_eq!(
        offers(&[("/unknown", json!({"resin": "unredable"}))], "unusable-setting"),
        ["replace unreadable", "remove unredable"]
    );
    // "No battery" is not offered in place of a slip about batteries.
    assert_eq!(offers(&[("/unknown", json!({"battery": "yess"}))], "unusable-setting"), ["remove yess"]);
    assert_eq!(
        offers(&[("/sites/0/position", json!({"lat": 141.0, "lon": 0.0}))], "unusable-setting"),
        ["swap-position"]
    );
    assert_eq!(
        offers(&[("/sites/0/hours", json!("Mo–Fr 08:00–16:00"))], "unreadable-hours"),
        ["replace Mo-Fr 08:00-16:00"]
    );
    let near = |when: Value| {
        offers(
            &[("/rules/-", rule("x", "plant", when, json!({"verdict": "no", "stream": "refuse"})))],
            "broken-condition",
        )
    };
    assert_eq!(near(json!({"is": {"fact": "formm", "of": ["cup"]}})), ["replace-fact form"]);
    assert_eq!(
        near(json!({"is": {"fact": "form", "of": ["cupp", "tub"]}})),
        ["replace-value cup", "remove-value cupp"]
    );
    assert_eq!(
        near(json!({"measure": {"fact": "middle-side", "under": "2"}})),
        ["replace-value 2 in", "replace-value 2 cm"]
    );
    assert_eq!(near(json!({"measure": {"fact": "middle-side", "under": "-2 in"}})), ["replace-value 2 in"]);
}

#[test]
fn a_fix_never_weakens_safety() {
    // A named exception that is asleep because of a slip is not woken by a guess.
    let asleep = rule(
        "asleep",
        "safety",
        json!({"is": {"fact": "hazard", "of": ["battery-lithum"]}}),
        json!({"verdict": "yes", "stream": "recycling",
               "acknowledgement": {"by": "Fire marshal", "because": "Sealed box on every cart"}}),
    );
    assert_eq!(offers(&[("/rules/-", asleep)], "broken-condition"), Vec::<String>::new());
    // An unsafe rule is sent to a safe channel; the exception itself can be taken back.
    let wanted = json!({"is": {"fact": "hazard", "of": ["battery-lithium"]}});
    let early = rule("early", "safety", wanted, json!({"verdict": "yes", "stream": "recycling"}));
    assert_eq!(offers(&[("/rules/-", early.clone())], "hazard-not-safe"), ["send-to hhw"]);
    let mut accepted = early;
    accepted["acknowledgement"] =
        json!({"by": "Fire marshal", "on": "2026-03-01", "because": "Sealed box on every cart"});
    assert_eq!(offers(&[("/rules/-", accepted.clone())], "hazard-acknowledged"), ["remove-rule"]);
    // In a circle, what keeps the exception down is not taken away.
    let mut keeps = accepted.clone();
    keeps["id"] = json!("keeps");
    keeps["verdict"] = json!("elsewhere");
    keeps["channel"] = json!("hhw");
    keeps["overrides"] = json!(["early"]);
    for key in ["stream", "acknowledgement"] {
        keeps.as_object_mut().unwrap().remove(key);
    }
    accepted["overrides"] = json!(["keeps"]);
    assert_eq!(
        offers(&[("/rules/-", accepted), ("/rules/-", keeps)], "circular-override"),
        ["not-before keeps"]
    );
}

#[test]
fn a_clean_program_has_no_findings() {
    finds(&[], &[]);
}

#[test]
fn an_uncovered_case_is_shown() {
    finds(
        &[
            ("/silence", json!("undecided")),
            ("/rules/1/when", json!({"is": {"fact": "material", "of": ["glass"]}})),
        ],
        &["error uncovered-case at item can", "warning rule-never-applies at rule metal"],
    );
    let program = with(&[
        ("/silence", json!("undecided")),
        ("/rules/1/when", json!({"is": {"fact": "material", "of": ["glass"]}})),
    ]);
    let checked = check(&program, &catalog());
    let witness = checked.findings[0].witness.clone().unwrap();
    // The likeliest uncovered case is the empty can.
    assert_eq!(format!("{:?}", witness.answers), r#"[("contents", Value("empty"))]"#);
}

#[test]
fn an_open_list_tells_what_it_does_not_name() {
    finds(
        &[("/rules/1/when", json!({"is": {"fact": "material", "of": ["glass"]}}))],
        &["warning rule-never-applies at rule metal", "notice not-listed at item can"],
    );
}

#[test]
fn a_closed_list_refuses_what_it_does_not_name() {
    let program = with(&[
        ("/silence", json!("closed")),
        ("/rules/1/when", json!({"is": {"fact": "material", "of": ["glass"]}})),
    ]);
    let checked = check(&program, &catalog());
    assert!(checked.publishable());
    let answer = checked
        .guide
        .assumed_answer(0, &crate::Known::default().with("contents", crate::Given::value("empty")))
        .unwrap();
    assert!(answer.parts[0].outcome.closed_list);
    assert_eq!(answer.parts[0].outcome.stream.as_deref(), Some("refuse"));
}

#[test]
fn rules_that_disagree_are_named_with_the_case() {
    let other = rule(
        "cans-out",
        "material",
        json!({"is": {"fact": "form", "of": ["can"]}}),
        json!({"verdict": "no", "stream": "refuse"}),
    );
    finds(&[("/rules/-", other.clone())], &["error conflicting-rules at rule metal"]);
    // An override settles it.
    let mut settled = other;
    settled["overrides"] = json!(["metal"]);
    finds(&[("/rules/-", settled)], &["warning rule-never-applies at rule metal"]);
}

#[test]
fn a_named_exception_and_a_temporary_order_beat_a_general_rule() {
    let named = rule(
        "can-out",
        "material",
        json!({"is": {"fact": "item", "of": ["can"]}}),
        json!({"verdict": "no", "stream": "refuse"}),
    );
    finds(&[("/rules/-", named)], &["warning rule-never-applies at rule metal"]);
    let order = rule(
        "order",
        "material",
        json!({"all": []}),
        json!({"verdict": "no", "stream": "refuse", "temporary": true, "from": "2026-02-01", "until": "2026-02-28"}),
    );
    finds(&[("/rules/-", order)], &[]);
}

#[test]
fn overrides_in_a_circle_are_told() {
    let a = rule(
        "a",
        "material",
        json!({"all": []}),
        json!({"verdict": "no", "stream": "refuse", "overrides": ["b"]}),
    );
    let b = rule(
        "b",
        "material",
        json!({"all": []}),
        json!({"verdict": "yes", "stream": "recycling", "overrides": ["a"]}),
    );
    let checked = check(&with(&[("/rules/-", a), ("/rules/-", b)]), &catalog());
    let told = told(&checked);
    assert!(told.contains(&"error circular-override at rule a.overrides".to_owned()), "{told:?}");
    assert!(told.iter().any(|t| t.starts_with("error conflicting-rules")), "{told:?}");
}

#[test]
fn a_hazard_needs_a_safe_channel() {
    finds(
        &[("/hazards", json!({}))],
        &[
            "error hazard-not-safe no-channel at hazard battery-lithium.channel",
            "warning site-never-used site at site depot.channels",
            "notice unused-thing at channel hhw",
        ],
    );
    finds(
        &[("/hazards/battery-lithium/channel", json!("nowhere"))],
        &[
            "error hazard-not-safe unknown-channel at hazard battery-lithium.channel",
            "warning site-never-used site at site depot.channels",
            "notice unused-thing at channel hhw",
        ],
    );
    finds(
        &[("/channels/0/safe-for", json!([]))],
        &["error hazard-not-safe channel-does-not-take-it at hazard battery-lithium.channel"],
    );
}

#[test]
fn no_rule_sends_a_hazard_to_a_cart_unless_somebody_answers_for_it() {
    // A rule of a later tier is simply never reached.
    let late = rule(
        "late",
        "program",
        json!({"is": {"fact": "item", "of": ["cell"]}}),
        json!({"verdict": "yes", "stream": "recycling"}),
    );
    finds(&[("/rules/-", late)], &["warning rule-never-applies at rule late"]);
    // A rule of the safety tier is refused.
    let wanted = json!({"is": {"fact": "hazard", "of": ["battery-lithium"]}});
    let early = rule("early", "safety", wanted, json!({"verdict": "yes", "stream": "recycling"}));
    finds(
        &[("/rules/-", early.clone())],
        &["error hazard-not-safe rule at rule early", "warning rule-never-applies at rule early"],
    );
    let stays = check(&with(&[("/rules/-", early.clone())]), &catalog());
    let outcome = &stays.guide.assumed_answer(1, &crate::Known::default()).unwrap().parts[0].outcome;
    assert_eq!(
        (outcome.channel.as_deref(), outcome.hazard.as_deref()),
        (Some("hhw"), Some("battery-lithium"))
    );
    // With a named acceptance it stands, visibly, and the caution stays.
    let mut accepted = early;
    accepted["acknowledgement"] =
        json!({"by": "Fire marshal", "on": "2026-03-01", "because": "Sealed box on every cart"});
    finds(&[("/rules/-", accepted.clone())], &["warning hazard-acknowledged at rule early"]);
    let checked = check(&with(&[("/rules/-", accepted)]), &catalog());
    let outcome = &checked.guide.assumed_answer(1, &crate::Known::default()).unwrap().parts[0].outcome;
    assert!(outcome.acknowledged && outcome.hazard.is_some());
}

#[test]
fn conditions_that_cannot_be_read_hold_never_and_are_told() {
    for (when, expected) in [
        (
            json!({"is": {"fact": "fluffiness", "of": ["very"]}}),
            "error broken-condition unknown-fact at rule x.when",
        ),
        (
            json!({"is": {"fact": "resin", "of": ["8"]}}),
            "error broken-condition unknown-value at rule x.when",
        ),
        (json!({"is": {"fact": "resin", "of": []}}), "error broken-condition no-values at rule x.when"),
        (
            json!({"measure": {"fact": "middle-side", "under": "2"}}),
            "error broken-condition no-unit at rule x.when",
        ),
        (
            json!({"measure": {"fact": "middle-side", "under": "2 lb"}}),
            "error broken-condition wrong-dimension at rule x.when",
        ),
        (
            json!({"measure": {"fact": "middle-side", "under": "-2 in"}}),
            "error broken-condition negative at rule x.when",
        ),
        (json!({"measure": {"fact": "middle-side"}}), "error broken-condition no-values at rule x.when"),
        (
            json!({"not": {"measure": {"fact": "middle-side", "under": "2"}}}),
            "error broken-condition no-unit at rule x.when",
        ),
    ] {
        let broken = rule("x", "plant", when, json!({"verdict": "no", "stream": "refuse"}));
        finds(&[("/rules/-", broken)], &[expected]);
    }
}

#[test]
fn references_must_lead_somewhere() {
    let unused = "notice unused-thing at stream recycling";
    finds(&[("/rules/1/stream", json!("blue"))], &["error broken-reference at rule metal.stream", unused]);
    finds(&[("/rules/1/stream", Value::Null)], &["error broken-reference at rule metal.stream", unused]);
    finds(
        &[("/rules/1/banned-from", json!(["blue"]))],
        &["error broken-reference at rule metal.banned-from"],
    );
    finds(&[("/sites/0/refuses", json!(["gone"]))], &["error broken-reference at site depot.refuses"]);
    finds(&[("/rules/1/prepare", json!(["polish"]))], &["error broken-reference at rule metal.prepare"]);
    finds(&[("/rules/1/reason", json!("because"))], &["error broken-reference at rule metal.reason"]);
    finds(&[("/rules/1/overrides", json!(["gone"]))], &["error broken-reference at rule metal.overrides"]);
    finds(&[("/rules/1/overrides", json!(["full"]))], &["error broken-reference at rule metal.overrides"]);
    finds(
        &[("/sites/0/channels", json!(["gone"]))],
        &["error broken-reference at site depot.channels", "warning no-site-takes none at channel hhw"],
    );
}

#[test]
fn ids_are_unique() {
    finds(&[("/rules/0/id", json!("metal"))], &["error duplicate-id at rule metal.id"]);
    finds(&[("/zones/1/id", json!("town"))], &["error duplicate-id at zone town.id"]);
}

#[test]
fn a_stream_must_be_collected_where_the_answer_is_given() {
    finds(
        &[("/zones/1/streams", json!(["refuse"]))],
        &["error destination-not-offered at rule metal.stream"],
    );
}

#[test]
fn texts_are_never_markup_and_never_turn_the_line_round() {
    finds(
        &[("/name/en", json!("Clean <b>city</b>"))],
        &["error suspicious-text markup at text program.name.en"],
    );
    finds(
        &[("/name/en", json!("Clean \u{202E}ytic"))],
        &["error suspicious-text direction at text program.name.en"],
    );
    finds(&[("/name/en", json!("Clean\u{7}"))], &["error suspicious-text control at text program.name.en"]);
    finds(&[("/name/en", json!("Under 2 in < 5 cm"))], &[]);
}

#[test]
fn languages_tell_what_they_lack() {
    finds(
        &[("/languages", json!(["en", "es"])), ("/name/es", json!("Limpio"))],
        &[
            "warning missing-translation at program es.languages",
            "notice missing-translation at program es.languages",
        ],
    );
}

#[test]
fn the_rest() {
    finds(
        &[("/sites/0/hours", json!("sometimes"))],
        &{
            let checked = check(&with(&[("/sites/0/hours", json!("sometimes"))]), &catalog());
            let told = told(&checked);
            assert!(
                told[0].starts_with("error unreadable-hours") && told[0].ends_with("at site depot.hours"),
                "{told:?}"
            );
            [told[0].clone()]
        }
        .iter()
        .map(String::as_str)
        .collect::<Vec<_>>(),
    );
    finds(&[("/rules/1/provenance", json!({}))], &["warning missing-provenance at rule metal.provenance"]);
    finds(
        &[("/streams/0/containers/0/colour", json!("blue"))],
        &["error unusable-setting at container cart.colour"],
    );
    finds(&[("/unknown", json!({"resin": "9"}))], &["error unusable-setting at program resin.unknown"]);
    finds(
        &[("/sites/0/position", json!({"lat": 141.0, "lon": 0.0}))],
        &["error unusable-setting at site depot.position"],
    );
    finds(
        &[
            ("/items", json!([{"id": "thing", "category": "metal", "facts": {"middle-side": "2"}}])),
            ("/item-names", json!({"thing": {"en": "Thing"}})),
        ],
        &["error broken-item no-unit at item thing.middle-side", "notice not-listed at item thing"],
    );
}

#[test]
fn an_item_with_every_fact_open_is_bounded() {
    let mut open = serde_json::Map::new();
    let mut parts = Vec::new();
    for fact in crate::facts::FACTS {
        if let crate::facts::FactKind::Choice(values) = fact.kind {
            if ["dwelling", "origin", "proof"].contains(&fact.id) {
                continue;
            }
            let among: serde_json::Map<_, _> = values.iter().map(|v| ((*v).to_owned(), json!(1))).collect();
            open.insert(fact.id.to_owned(), json!({"among": among}));
            parts.push(json!({"is": {"fact": fact.id, "of": [values[0]]}}));
        }
    }
    // Parity of many facts has no small diagram in two halves that interleave; rules by pairs
    // make the decision depend on all of them at once.
    let rules: Vec<Value> = (0..parts.len() / 2)
        .map(|i| {
            rule(
                &format!("p{i}"),
                "program",
                json!({"all": [parts[i], parts[parts.len() / 2 + i]]}),
                json!({"verdict": "no", "stream": "refuse", "prepare": [crate::standard::PREPARATIONS[i]]}),
            )
        })
        .collect();
    let mut changes: Vec<(&str, Value)> = rules.into_iter().map(|r| ("/rules/-", r)).collect();
    changes.push(("/items", json!([{"id": "riddle", "category": "metal", "open": open}])));
    let checked = check(&with(&changes), &catalog());
    assert!(
        told(&checked).contains(&"error too-complex at item riddle.open".to_owned()),
        "{:?}",
        told(&checked)
    );
}

#[test]
fn a_printed_line_that_is_no_longer_true_is_shown_until_the_sheet_is_withdrawn() {
    let sheet = |line: Value| json!([{"id": "lid", "sheet": "lid", "edition": "0", "stream": "recycling", "lines": [line]}]);
    let nothing_withdrawn = |line: Value| ("/printed", sheet(line));
    // Nobody noted where it held: it counts when it misleads in more than half of its cases.
    finds(&[nothing_withdrawn(json!({"item": "can", "verdict": "yes"}))], &[]);
    finds(
        &[nothing_withdrawn(json!({"item": "can", "verdict": "no"}))],
        &["warning printed-line-untrue at printed lid.lines.0"],
    );
    // Noted: then every case counts in which it held, and no other.
    let full = json!({"is": {"fact": "contents", "of": ["part-full"]}});
    finds(
        &[nothing_withdrawn(json!({"item": "can", "verdict": "yes", "held": {"all": []}}))],
        &["warning printed-line-untrue at printed lid.lines.0"],
    );
    finds(&[nothing_withdrawn(json!({"item": "can", "verdict": "yes", "held": {"not": full}}))], &[]);
    let mut withdrawn = sheet(json!({"item": "can", "verdict": "no"}));
    withdrawn[0]["withdrawn"] = json!("2027-01-01");
    finds(&[("/printed", withdrawn)], &[]);
}

#[test]
fn questions_that_never_matter_are_told() {
    let open = json!([{"id": "thing", "category": "metal", "facts": {"material": "steel"},
        "open": {"wet": {"among": {"no": 1, "yes": 1}}, "contents": {"among": {"empty": 1, "part-full": 1}}}}]);
    let named = json!({"thing": {"en": "Thing"}});
    finds(
        &[("/items", open), ("/item-names", named)],
        &["notice question-never-matters open at item thing.wet"],
    );
    let unknown = json!({"resin": "unreadable", "contents": "empty"});
    finds(
        &[("/unknown", unknown.clone())],
        &["notice question-never-matters unknown at program resin.unknown"],
    );
    assert_eq!(offers(&[("/unknown", unknown)], "question-never-matters"), ["remove unreadable"]);
}

#[test]
fn steps_that_exclude_each_other_are_told() {
    let flat = || json!(["flatten", "do-not-flatten"]);
    finds(&[("/rules/1/prepare", flat())], &["warning steps-contradict at rule metal.prepare"]);
    assert_eq!(
        offers(&[("/rules/1/prepare", flat())], "steps-contradict"),
        ["remove flatten", "remove do-not-flatten"]
    );
    // From two rules as well, one of which only adds steps.
    let adds = rule(
        "adds",
        "program",
        json!({"is": {"fact": "form", "of": ["can"]}}),
        json!({"prepare": ["crush"]}),
    );
    let program = with(&[("/rules/1/prepare", json!(["do-not-crush"])), ("/rules/-", adds)]);
    let checked = check(&program, &catalog());
    assert_eq!(told(&checked), ["warning steps-contradict at rule metal.prepare"]);
    assert_eq!(checked.findings[0].rules, ["metal", "adds"]);
    every_fix_mends(&program, &checked);
}

#[test]
fn a_step_after_which_another_answer_holds_is_told_with_the_case() {
    let flat = |place: Value| {
        rule(
            "flat",
            "plant",
            json!({"all": [{"is": {"fact": "flattened", "of": ["yes"]}}, {"is": {"fact": "form", "of": ["can"]}}]}),
            place,
        )
    };
    let no = json!({"verdict": "no", "stream": "refuse"});
    let changes = [("/rules/1/prepare", json!(["flatten"])), ("/rules/-", flat(no.clone()))];
    finds(
        &changes,
        &[
            "warning rule-never-applies at rule flat",
            "warning preparation-contradicts rule at rule metal.prepare",
        ],
    );
    let checked = check(&with(&changes), &catalog());
    let finding = checked.findings.iter().find(|f| f.code == "preparation-contradicts").unwrap();
    // The part-full can is refused either way: the case is the empty one.
    assert_eq!(
        format!("{:?}", finding.witness.as_ref().unwrap().answers),
        r#"[("contents", Value("empty"))]"#
    );
    assert_eq!(finding.args["other"], "flat");
    assert_eq!(offers(&changes, "preparation-contradicts"), ["remove flatten"]);
    // A step that leads to the same place is no contradiction, and neither is one that no rule
    // looks at.
    let same = json!({"verdict": "yes", "stream": "recycling"});
    finds(
        &[("/rules/1/prepare", json!(["flatten"])), ("/rules/-", flat(same))],
        &["warning rule-never-applies at rule flat"],
    );
    finds(&[("/rules/1/prepare", json!(["flatten"]))], &[]);
    // The condition asks for what the step undoes.
    let full = json!({"all": [{"is": {"fact": "material", "of": ["steel"]}},
                             {"is": {"fact": "flattened", "of": ["no"]}}]});
    finds(
        &[("/rules/1/when", full), ("/rules/1/prepare", json!(["flatten"]))],
        &["warning preparation-contradicts none at rule metal.prepare"],
    );
}

#[test]
fn sites_and_what_is_sent_to_them_fit() {
    finds(&[("/sites", json!([]))], &["warning no-site-takes none at channel hhw"]);
    finds(
        &[("/sites/0/accepts", json!(["can"]))],
        &[
            "warning no-site-takes refused at channel hhw",
            "warning site-never-used item at site depot.accepts",
        ],
    );
    finds(&[("/sites/0/accepts", json!(["cell"]))], &[]);
    let refuses = [("/sites/0/refuses", json!(["cell"]))];
    finds(&refuses, &["warning no-site-takes refused at channel hhw"]);
    assert_eq!(offers(&refuses, "no-site-takes"), ["remove cell"]);
    finds(
        &[
            ("/channels/-", json!({"id": "yard", "kind": "drop-off", "name": {"en": "Yard"}})),
            (
                "/sites/-",
                json!({"id": "yard", "name": {"en": "Yard"}, "channels": ["yard"],
                                "hours": "Sa 08:00-16:00", "position": {"lat": 41.6, "lon": -52.1}}),
            ),
        ],
        &["warning site-never-used site at site yard.channels", "notice unused-thing at channel yard"],
    );
}

#[test]
fn items_of_the_program_have_names_of_their_own() {
    let thing = |id: &str| json!({"id": id, "category": "metal", "facts": {"material": "steel"}});
    finds(&[("/items", json!([thing("thing")]))], &["error item-without-name at item thing.name"]);
    // An item that the catalog has as well is called what it calls it.
    finds(&[("/items", json!([thing("can")]))], &["warning rule-never-applies at rule full"]);
    let names = json!({"one": {"en": "Thing | gadget"}, "two": {"en": "thing"}});
    finds(
        &[("/items", json!([thing("one"), thing("two")])), ("/item-names", names)],
        &["warning name-twice at item two.en"],
    );
}

#[test]
fn nothing_is_sent_where_law_bans_it() {
    finds(
        &[("/rules/1/banned-from", json!(["recycling"]))],
        &["error banned-destination at rule metal.stream"],
    );
    // A rule without a verdict bans whatever decides.
    let ban = rule("ban", "program", json!({"all": []}), json!({"banned-from": ["recycling"]}));
    let checked = check(&with(&[("/rules/-", ban)]), &catalog());
    assert_eq!(told(&checked), ["error banned-destination at rule metal.stream"]);
    assert_eq!(checked.findings[0].rules, ["metal", "ban"]);
    finds(&[("/rules/1/banned-from", json!(["refuse"]))], &[]);
}

#[test]
fn conditions_that_exclude_themselves_are_told() {
    let never = "warning rule-never-applies at rule x";
    let x = |when: Value| rule("x", "plant", when, json!({"verdict": "no", "stream": "refuse"}));
    let reversed = json!({"measure": {"fact": "middle-side", "at-least": "5 in", "under": "2 in"}});
    finds(&[("/rules/-", x(reversed.clone()))], &["error impossible-condition fact at rule x.when", never]);
    assert_eq!(
        offers(&[("/rules/-", x(reversed))], "impossible-condition"),
        ["remove-value 5 in", "remove-value 2 in"]
    );
    let steel = json!({"is": {"fact": "material", "of": ["steel"]}});
    let glass = json!({"is": {"fact": "material", "of": ["glass"]}});
    finds(
        &[("/rules/-", x(json!({"all": [steel, glass]})))],
        &["error impossible-condition fact at rule x.when", never],
    );
    finds(
        &[("/rules/-", x(json!({"all": [{"any": [steel, glass]}, {"not": {"any": [steel, glass]}}]})))],
        &["error impossible-condition parts at rule x.when", never],
    );
    // Nothing's longest side is shorter than its shortest one.
    let side = |fact: &str, bound: &str| json!({"measure": {"fact": fact, bound: "3 in"}});
    let upside_down =
        |bound: &str| json!({"all": [side("longest-side", "under"), side("shortest-side", bound)]});
    finds(
        &[("/rules/-", x(upside_down("at-least")))],
        &["error impossible-condition parts at rule x.when", never],
    );
    let upright = check(&with(&[("/rules/-", x(upside_down("under")))]), &catalog());
    assert!(told(&upright).iter().all(|t| !t.contains("impossible")), "{:?}", told(&upright));
    // What merely no item of this catalog fits is only never met.
    let no_item = json!({"all": [glass, {"is": {"fact": "form", "of": ["jar"]}}]});
    finds(&[("/rules/-", x(no_item))], &[never]);
}

#[test]
fn empty_groups_are_told() {
    let x = |when: Value| rule("x", "plant", when, json!({"verdict": "no", "stream": "refuse"}));
    let glass = json!({"is": {"fact": "material", "of": ["glass"]}});
    let never = "warning rule-never-applies at rule x";
    let any = json!({"any": []});
    finds(&[("/rules/-", x(any.clone()))], &["warning empty-condition any at rule x.when", never]);
    // To hold always is not what "any of nothing" meant.
    assert_eq!(offers(&[("/rules/-", x(any.clone()))], "empty-condition"), Vec::<String>::new());
    let inside = x(json!({"all": [glass, {"all": []}]}));
    finds(&[("/rules/-", inside.clone())], &["warning empty-condition all at rule x.when", never]);
    assert_eq!(offers(&[("/rules/-", inside)], "empty-condition"), ["remove-empty"]);
}

/// Before the last tier a rule without a condition is hardly meant, unless it is for a while.
#[test]
fn a_rule_that_forgot_its_condition_is_told_before_what_follows() {
    let x = |tier: &str, place: Value| ("/rules/-", rule("x", tier, json!({"all": []}), place));
    let no = json!({"verdict": "no", "stream": "refuse"});
    let checked = check(&with(&[x("program", no.clone())]), &catalog());
    assert_eq!(told(&checked).iter().find(|f| f.starts_with("warning")).unwrap(), FORGOTTEN);
    for (tier, place) in [
        ("default", no.clone()),
        ("program", json!({"verdict": "no", "stream": "refuse", "temporary": true})),
        ("program", json!({"prepare": ["rinse"]})),
    ] {
        let checked = check(&with(&[x(tier, place)]), &catalog());
        assert!(!told(&checked).contains(&FORGOTTEN.to_owned()), "{tier}: {:?}", told(&checked));
    }
    // What does not exist is told before the conflicts that come of it.
    let both = [
        ("/rules/-", rule("a", "plant", json!({"all": []}), no)),
        x("plant", json!({"verdict": "yes", "stream": "recyling"})),
    ];
    let found = told(&check(&with(&both), &catalog()));
    let at = |code: &str| found.iter().position(|f| f.contains(code)).unwrap();
    assert!(at("broken-reference") < at("conflicting-rules"), "{found:?}");
}

const FORGOTTEN: &str = "warning rule-without-condition at rule x.when";

#[test]
fn rules_have_all_three_texts() {
    finds(
        &[("/rules/1/texts", json!({})), ("/rules/1/reason", Value::Null)],
        &[
            "notice text-missing-register at rule metal.contract",
            "notice text-missing-register at rule metal.residents",
            "notice text-missing-register at rule metal.sorters",
        ],
    );
}

#[test]
fn what_nothing_refers_to_is_told() {
    let steps = [("/steps", json!({"polish": {"en": "Polish it"}}))];
    finds(&steps, &["notice unused-thing at step polish"]);
    assert_eq!(offers(&steps, "unused-thing"), ["remove-unused"]);
    finds(
        &[("/plant", json!({"machines": [{"id": "screen", "name": {"en": "Screen"}}]}))],
        &["notice unused-thing at machine screen"],
    );
    finds(
        &[("/streams/-", json!({"id": "glass", "kind": "glass", "name": {"en": "Glass"}}))],
        &["notice unused-thing at stream glass"],
    );
    finds(&[("/zones/1/centre", Value::Null)], &["notice unused-thing at zone hills"]);
}

#[test]
fn what_counts_as_what_is_checked() {
    let entry = |fact: &str, these: &[&str], as_what: &str| json!({"fact": fact, "these": these, "count-as": as_what});
    let green = || entry("colour", &["blue"], "green");
    for (entries, problems, fixes) in [
        (vec![green()], vec![], vec![]),
        (vec![entry("colr", &["blue"], "green")], vec!["unknown-fact"], vec!["drop-counting green"]),
        (
            vec![entry("color", &["blue"], "green")],
            vec!["unknown-fact"],
            vec!["replace colour", "drop-counting green"],
        ),
        (vec![entry("mass", &["1 lb"], "2 lb")], vec!["unlisted-fact"], vec!["drop-counting 2 lb"]),
        (vec![entry("battery", &["yes"], "no")], vec!["danger"], vec!["drop-counting no"]),
        (vec![entry("colour", &["blu"], "green")], vec!["unknown-value"], vec!["replace blue", "remove blu"]),
        (
            vec![entry("colour", &["blue"], "gren")],
            vec!["unknown-value"],
            vec!["replace green", "drop-counting gren"],
        ),
        (vec![entry("colour", &[], "green")], vec!["nothing"], vec!["drop-counting green"]),
        (vec![entry("colour", &["green", "blue"], "green")], vec!["itself"], vec!["remove green"]),
        (
            vec![green(), entry("colour", &["green"], "brown")],
            vec!["chain"],
            vec!["drop-counting green", "remove green"],
        ),
        (
            vec![green(), entry("colour", &["green"], "blue")],
            vec!["circle", "circle"],
            vec!["drop-counting blue", "remove blue", "drop-counting green", "remove green"],
        ),
        (
            vec![green(), entry("colour", &["blue"], "brown")],
            vec!["twice"],
            vec!["remove blue", "drop-counting green"],
        ),
    ] {
        let program = with(&[("/counts-as", json!(entries))]);
        let checked = check(&program, &catalog());
        let found: Vec<&str> = checked
            .findings
            .iter()
            .filter(|f| f.code == "counts-as-broken")
            .map(|f| f.args["problem"].as_str())
            .collect();
        assert_eq!(found, problems, "{entries:?}");
        assert_eq!(offers(&[("/counts-as", json!(entries))], "counts-as-broken"), fixes, "{entries:?}");
    }
}

#[test]
fn days_that_cannot_be_followed_are_told() {
    let metal = |from: &str| [("/rules/1/season", json!({"from": from, "until": "02-28"}))];
    finds(&metal("11-01"), &["notice not-listed at item can"]);
    for (from, fix) in [("2026-11-01", "replace 11-01"), ("11/1", "replace 11-01")] {
        assert_eq!(offers(&metal(from), "season-broken"), [fix, "drop-season"], "{from}");
    }
    assert_eq!(offers(&metal("02-30"), "season-broken"), ["drop-season"]);
    let dates = [("/rules/1/from", json!("2026-05-01")), ("/rules/1/until", json!("2026-04-01"))];
    let program = with(&dates);
    let checked = check(&program, &catalog());
    assert_eq!(told(&checked)[0], "error season-broken reversed at rule metal.until");
    assert_eq!(offers(&dates, "season-broken"), ["swap-dates", "drop-until", "drop-from"]);
}

#[test]
fn container_rules_can_be_followed() {
    let rules = |rules: Value| [("/streams/0/containers/0/rules", rules)];
    let text = json!({"en": "Keep the lid shut"});
    finds(
        &rules(json!([{"kind": "weight", "limit": "100 lb", "text": text},
                        {"kind": "share-of-load", "limit": "10%", "text": text}])),
        &[],
    );
    for (list, problem, field) in [
        (json!([{"kind": "weigth", "text": text}]), "unknown-kind", "rules"),
        (json!([{"kind": "weight", "text": text}, {"kind": "weight", "text": text}]), "twice", "rules"),
        (json!([{"kind": "weight", "limit": "3 ft", "text": text}]), "limit", "limit"),
        (json!([{"kind": "distance", "limit": "far", "text": text}]), "limit", "limit"),
    ] {
        let expected = format!("error container-rule-broken {problem} at container cart.{field}");
        finds(&rules(list), &[expected.as_str()]);
    }
    assert_eq!(
        offers(&rules(json!([{"kind": "weigth", "text": text}])), "container-rule-broken"),
        ["replace weight"]
    );
    let homes = [("/streams/0/containers/0/dwellings", json!(["hous", "large-building"]))];
    finds(&homes, &["error container-rule-broken unknown-dwelling at container cart.dwellings"]);
    assert_eq!(offers(&homes, "container-rule-broken"), ["replace house", "remove hous"]);
}

#[test]
fn comparisons_fit_what_they_stand_beside() {
    let x = |measure: Value| {
        let when = json!({"measure": measure});
        [("/rules/-", rule("x", "plant", when, json!({"verdict": "no", "stream": "refuse"})))]
    };
    let code = |measure: Value| -> Vec<String> {
        let checked = check(&with(&x(measure)), &catalog());
        told(&checked).into_iter().filter(|t| t.contains("comparison-broken")).collect()
    };
    // A credit card is 85.6 mm long: ISO/IEC 7810, ID-1 (from memory).
    assert_eq!(
        code(json!({"fact": "middle-side", "under": "3 in", "like": "credit-card"})),
        Vec::<String>::new()
    );
    for (measure, expected) in [
        (
            json!({"fact": "middle-side", "under": "3 in", "like": "credit-crad"}),
            "error comparison-broken unknown-like",
        ),
        (
            json!({"fact": "middle-side", "under": "3 in", "like": "bucket"}),
            "error comparison-broken other-dimension",
        ),
        (
            json!({"fact": "middle-side", "under": "1 in", "like": "credit-card"}),
            "warning comparison-broken far",
        ),
        (json!({"fact": "quantity", "over": "3", "per": "weak"}), "error comparison-broken unknown-period"),
    ] {
        assert_eq!(code(measure), [format!("{expected} at rule x.when")]);
    }
    let near = x(json!({"fact": "quantity", "over": "3", "per": "weak"}));
    assert_eq!(offers(&near, "comparison-broken"), ["replace-value week", "remove-value weak"]);
}
