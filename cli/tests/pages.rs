//! The plain pages say what the guide answers: every item, in every zone, whatever else is the case, in
//! every language.

#![allow(clippy::unwrap_used, clippy::panic, clippy::indexing_slicing, reason = "tests")]

mod common;

use std::collections::BTreeMap;

use chrono::NaiveDate;
use common::{Bench, lidleaf, tree};
use guide_data::{Answer, Catalog, Given, Guide, Known, Outcome, Program, Step, check};
use lidleaf::Exit;
use locales::{Messages, args};
use scraper::{ElementRef, Html, Selector};

fn select(selector: &str) -> Selector {
    Selector::parse(selector).unwrap()
}

fn children<'a>(of: ElementRef<'a>, name: &str) -> Vec<ElementRef<'a>> {
    of.child_elements()
        .filter(|e| e.value().name() == name || e.value().classes().any(|c| c == name))
        .collect()
}

fn text(of: ElementRef<'_>) -> String {
    of.text().collect::<String>()
}

/// Whoever reads a page: the words, the guide it is judged by, and what has been compared.
struct Reader<'a> {
    program: &'a Program,
    guide: &'a Guide,
    messages: Messages,
    language: &'a str,
    compared: usize,
}

impl Reader<'_> {
    fn say(&self, key: &str) -> String {
        self.messages.find(key, &args!()).map(|found| found.text).unwrap_or_default()
    }

    fn own(&self, text: Option<&guide_data::Text>) -> Option<String> {
        text.and_then(|t| t.or_source(self.language, &self.program.source_language)).map(str::to_owned)
    }

    /// Every case of an item from what is known: what was said, and the answer.
    fn cases(&self, item: usize, known: &Known, found: &mut Vec<(Known, Answer)>) {
        match self.guide.next(item, known).unwrap() {
            Step::Answer(answer) => found.push((known.clone(), answer)),
            Step::Ask(question) => {
                for option in question.options {
                    self.cases(item, &known.clone().with(&question.fact, option.given), found);
                }
                self.cases(item, &known.clone().with(&question.fact, Given::CannotTell), found);
            }
        }
    }

    /// Follows a page's questions by what is known, to every answer it may mean.
    fn follow<'e>(&self, block: ElementRef<'e>, known: &Known, met: &mut Vec<ElementRef<'e>>) {
        if let [answer] = children(block, "answer").as_slice() {
            met.push(*answer);
            return;
        }
        let [depends] = children(block, "depends")[..] else { panic!("{}", block.html()) };
        let fact = depends.value().attr("data-fact").unwrap();
        let list = children(depends, "dl")[0];
        let (names, blocks) = (children(list, "dt"), children(list, "dd"));
        assert_eq!(names.len(), blocks.len());
        let zone = match known.get("zone") {
            Some(Given::Value(zone)) => self.program.zones.iter().find(|z| z.id == *zone),
            _ => None,
        };
        let wanted = match known.get(fact) {
            Some(Given::Value(value)) => Some(value.clone()),
            Some(Given::Interval(interval)) => Some(format!("#{interval}")),
            Some(Given::CannotTell) => Some("?".to_owned()),
            Some(other) => panic!("{other:?}"),
            None if fact == "dwelling" => zone.and_then(|z| z.dwelling.clone()),
            // What was never asked may be anything.
            None => None,
        };
        let before = met.len();
        for (name, block) in names.into_iter().zip(blocks) {
            let given = name.value().attr("data-given").unwrap();
            if wanted.as_ref().is_none_or(|wanted| given.split(' ').any(|one| one == wanted)) {
                self.follow(block, known, met);
            }
            assert!(!text(name).trim().is_empty());
        }
        assert!(met.len() > before, "{fact} {wanted:?} in {}", depends.html());
    }

    fn outcome(&self, block: ElementRef<'_>, outcome: &Outcome) {
        let [verdict] = children(block, "verdict")[..] else { panic!("{}", block.html()) };
        let attribute = |name: &str| verdict.value().attr(name).map(str::to_owned);
        let about = || format!("{}: {outcome:?}\n{}", self.language, block.html());
        assert_eq!(attribute("data-verdict").unwrap(), outcome.verdict.code(), "{}", about());
        assert_eq!(attribute("data-stream"), outcome.stream, "{}", about());
        assert_eq!(attribute("data-channel"), outcome.channel, "{}", about());
        let word = if outcome.closed_list {
            self.say("verdict-closed")
        } else {
            self.say(&format!("verdict-{}", outcome.verdict.code()))
        };
        assert!(text(verdict).contains(&word), "{}", about());
        let steps: Vec<String> =
            children(block, "prepare").into_iter().flat_map(|list| children(list, "li")).map(text).collect();
        let wanted: Vec<String> = outcome
            .steps
            .iter()
            .map(|step| {
                let own = self.own(self.program.steps.get(step));
                own.unwrap_or_else(|| self.say(&format!("prep-{step}")))
            })
            .collect();
        assert_eq!(steps, wanted, "{}", about());
        let cautions: Vec<String> = children(block, "caution").into_iter().map(text).collect();
        match &outcome.hazard {
            Some(class) => {
                assert!(cautions.len() == 1, "{}", about());
                assert!(cautions[0].contains(&self.say(&format!("caution-{class}"))), "{}", about());
            }
            None => assert!(cautions.is_empty(), "{}", about()),
        }
        let rule = outcome.rules.first().and_then(|id| self.program.rules.iter().find(|r| r.id == *id));
        let reason = self
            .own(rule.map(|r| &r.texts.residents))
            .or_else(|| outcome.reason.as_ref().map(|r| self.say(&format!("reason-{r}"))));
        if let Some(reason) = reason {
            assert!(children(block, "why").into_iter().any(|p| text(p).contains(&reason)), "{}", about());
        }
        assert_eq!(children(block, "temporary").len(), usize::from(outcome.temporary), "{}", about());
        assert_eq!(children(block, "banned").len(), outcome.banned.len(), "{}", about());
    }

    fn answer(&mut self, block: ElementRef<'_>, answer: &Answer) {
        let whole = &answer.parts[0].outcome;
        self.outcome(block, whole);
        let parts = children(block, "part");
        let mut told = parts.iter();
        for part in answer.parts.iter().skip(1) {
            let differs = !part.outcome.same_place(whole) || part.outcome.hazard != whole.hazard;
            if differs {
                let block = told.next().unwrap_or_else(|| panic!("{part:?} is missing in {}", block.html()));
                assert_eq!(block.value().attr("data-part"), part.part.as_deref());
                self.outcome(*block, &part.outcome);
            }
        }
        assert!(told.next().is_none(), "{}", block.html());
        self.compared += 1;
    }

    fn item(&mut self, item: usize, article: ElementRef<'_>) {
        let stretches: Vec<ElementRef<'_>> = children(article, "stretch");
        assert!(!stretches.is_empty(), "{}", article.html());
        for stretch in stretches {
            let day: NaiveDate = stretch.value().attr("data-from").unwrap().parse().unwrap();
            let zones = self.program.zones.iter().map(|z| Some(z.id.clone())).chain([None]);
            for zone in zones.collect::<Vec<_>>() {
                let mut known = Known::default().with("day", Given::Day(day));
                if let Some(zone) = &zone {
                    known.give("zone", Given::value(zone));
                }
                let mut cases = Vec::new();
                self.cases(item, &known, &mut cases);
                for (known, answer) in cases {
                    let mut met = Vec::new();
                    self.follow(stretch, &known, &mut met);
                    for block in met {
                        self.answer(block, &answer);
                    }
                }
            }
        }
    }
}

#[test]
fn every_item_in_every_zone_and_language_is_answered_as_the_guide_answers() {
    let bench = Bench::new();
    let (app, out) = (bench.app(), bench.at("site"));
    lidleaf(["publish", &bench.at("demo.json"), "--app", &app, "--out", &out]).expect(Exit::Done);
    let files: BTreeMap<String, Vec<u8>> = tree(&bench.path("site"));
    let program = Program::from_json(guide_data::demo_json()).unwrap();
    let guide = check(&program, &Catalog::standard().unwrap()).guide;
    assert!(!program.languages.is_empty());
    for language in &program.languages {
        let lang: locales::Lang = language.parse().unwrap();
        let mut reader = Reader {
            program: &program,
            guide: &guide,
            messages: locales::bundled(&lang.with_region("US")).isolating(false),
            language,
            compared: 0,
        };
        let pages = files.iter().filter(|(path, _)| path.starts_with(&format!("pages/{language}/")));
        let mut seen = 0;
        for (path, bytes) in pages {
            let page = Html::parse_document(std::str::from_utf8(bytes).unwrap());
            let root = page.root_element();
            assert_eq!(root.value().attr("lang"), Some(language.as_str()), "{path}");
            assert_eq!(root.value().attr("dir"), Some(lang.direction().html()), "{path}");
            assert!(
                page.select(&select("script, [style], [onclick]")).next().is_none(),
                "{path} runs something"
            );
            let policy = page.select(&select("meta[http-equiv=Content-Security-Policy]")).next().unwrap();
            assert!(policy.value().attr("content").unwrap().starts_with("default-src 'none'"), "{path}");
            assert_eq!(page.select(&select("h1")).count(), 1, "{path}");
            assert!(!page.html().contains("pages-"), "{path}: a message is missing");
            for article in page.select(&select("article[data-item]")) {
                let id = article.value().attr("data-item").unwrap();
                reader.item(guide.item_index(id).unwrap(), article);
                seen += 1;
            }
        }
        assert_eq!(seen, guide.items.len(), "{language}");
        assert!(reader.compared > guide.items.len() * program.zones.len(), "{}", reader.compared);
    }
}

#[test]
fn links_lead_to_what_is_there() {
    let bench = Bench::new();
    let (app, out) = (bench.app(), bench.at("site"));
    lidleaf(["publish", &bench.at("demo.json"), "--app", &app, "--out", &out]).expect(Exit::Done);
    let files = tree(&bench.path("site"));
    let parsed: BTreeMap<&str, Html> = files
        .iter()
        .filter(|(path, _)| path.starts_with("pages/"))
        .map(|(path, bytes)| (path.as_str(), Html::parse_document(std::str::from_utf8(bytes).unwrap())))
        .collect();
    assert!(parsed.len() > 30);
    let program: serde_json::Value =
        serde_json::from_slice(&std::fs::read(bench.path("demo.json")).unwrap()).unwrap();
    let root = program["payload"]["guide-url"].as_str().unwrap();
    let languages = program["payload"]["languages"].as_array().unwrap().len();
    let mut followed = 0;
    for (path, page) in &parsed {
        let folder = path.rsplit_once('/').unwrap().0;
        // Search engines are told of the same page in every language, by whole addresses.
        let mut told = 0;
        for link in page.select(&select("link[rel=alternate][hreflang]")) {
            let href = link.value().attr("href").unwrap();
            let at = href.strip_prefix(root).unwrap_or_else(|| panic!("{path}: {href} is not below {root}"));
            assert!(parsed.contains_key(at), "{path}: {href} leads nowhere");
            told += 1;
        }
        assert_eq!(told, languages, "{path}");
        for link in page.select(&select("a[href], link[rel=stylesheet]")) {
            let href = link.value().attr("href").unwrap();
            if href.starts_with("tel:") || href.starts_with("mailto:") || href.starts_with("../../#/") {
                continue;
            }
            let (file, place) = href.split_once('#').unwrap_or((href, ""));
            let mut at: Vec<&str> = folder.split('/').collect();
            for part in file.split('/') {
                match part {
                    ".." => {
                        at.pop();
                    }
                    "." | "" => {}
                    name => at.push(name),
                }
            }
            let mut target = at.join("/");
            if file.is_empty() {
                target = (*path).to_owned();
            } else if file.ends_with('/') {
                target.push_str("/index.html");
            }
            if target == "pages.css" {
                continue;
            }
            let found = parsed.get(target.as_str()).unwrap_or_else(|| panic!("{path}: {href} leads nowhere"));
            if !place.is_empty() {
                let there = found.select(&select("[id]")).any(|e| e.value().id() == Some(place));
                assert!(there, "{path}: {href} leads nowhere in its page");
            }
            followed += 1;
        }
    }
    assert!(followed > 2_000, "{followed}");
    // From the first page, where nothing runs, one link leads to each language.
    let first = String::from_utf8(files["index.html"].clone()).unwrap();
    for language in ["en", "es", "ar"] {
        assert!(first.contains(&format!("href=\"pages/{language}/\"")), "{first}");
    }
}
