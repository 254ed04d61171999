//! Fitting: what a job offers to do without is taken in its order, in every language, and no further than needed.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test fails by panicking"
)]

mod common;

use common::{fonts, job};
use print::{Fitted, Line, Offer, PRESS_PROFILE, PrintError, SheetJob, SheetSize, Step, make, make_fitting};

/// Every line of the first two sections after the third, the last first, and then the third section in brief.
fn offer(job: &SheetJob) -> Offer {
    let mut steps = Vec::new();
    for line in (3..job.languages[0].sections[0].lines.len()).rev() {
        for section in [0, 1] {
            if line < job.languages[0].sections[section].lines.len() {
                steps.push(Step::Leave { section, line });
            }
        }
    }
    let brief = |text: &str| Line { text: text.into(), hazard: true, ..Line::default() };
    let words = |lang: &str| match lang {
        "en" => "Batteries, needles, gas, lamps",
        "es" => "Pilas, agujas, gas, lámparas",
        _ => "البطاريات والإبر والغاز",
    };
    let lines = job.languages.iter().map(|block| vec![brief(words(&block.lang))]).collect();
    steps.push(Step::Brief { section: 2, lines });
    Offer { for_ease: steps.len() - 4, steps }
}

fn fitted(job: &SheetJob, offer: &Offer) -> Result<Fitted, PrintError> {
    make_fitting(job, offer, &fonts(), PRESS_PROFILE)
}

/// The size that preflight says the items have.
fn body(fitted: &Fitted) -> f64 {
    let sizes = fitted.artifact.preflight.iter().find(|item| item.code == "type-sizes").expect("sizes");
    sizes.args["body"].parse().expect("a size")
}

/// A job with its sections' lines said so many times.
fn repeated(name: &str, times: usize) -> SheetJob {
    let mut job = job(name);
    for block in &mut job.languages {
        for section in block.sections.iter_mut().take(2) {
            let lines = section.lines.clone();
            section.lines = std::iter::repeat_n(lines, times).flatten().collect();
        }
    }
    job
}

#[test]
fn what_has_room_stays() {
    let job = job("lid-en");
    let fitted = fitted(&job, &offer(&job)).expect("a sheet");
    assert_eq!((fitted.taken, &fitted.job), (0, &job));
    let same = fitted.artifact == make(&job, &fonts(), PRESS_PROFILE).expect("a sheet");
    assert!(same);
}

/// 600 mm: the floor is 6.9 pt, a quarter more is 8.7 pt.
#[test]
fn lines_go_in_their_order_until_the_sheet_is_read_with_ease() {
    for name in ["lid-en", "lid-en-es", "lid-en-es-ar"] {
        let job = repeated(name, 3);
        let offer = offer(&job);
        let fitted = fitted(&job, &offer).expect("a sheet");
        assert!(fitted.taken > 0 && fitted.taken <= offer.for_ease, "{name}: {}", fitted.taken);
        assert!(body(&fitted) >= 7.8, "{name}: {}", body(&fitted));
        // The same lines in every language, and every hazard whole.
        for (block, whole) in fitted.job.languages.iter().zip(&job.languages) {
            for (own, whole) in block.sections.iter().zip(&whole.sections) {
                assert_eq!(own.lines.as_slice(), &whole.lines[..own.lines.len()], "{name}");
            }
            assert_eq!(block.sections[2], whole.sections[2], "{name}");
        }
        // Made of what is left, the sheet is the same; with one step fewer its type is smaller or it does not fit.
        assert!(fitted.artifact == make(&fitted.job, &fonts(), PRESS_PROFILE).expect("a sheet"), "{name}");
        let fewer = Offer { steps: offer.steps[..fitted.taken - 1].to_vec(), for_ease: fitted.taken - 1 };
        if let Ok(crowded) = self::fitted(&job, &fewer) {
            assert!(body(&crowded) < body(&fitted), "{name}: {} and {}", body(&crowded), body(&fitted));
        }
    }
}

/// Read from farther away the floor rises, and in the end the hazards are said in brief, but are never gone.
#[test]
fn what_is_not_for_ease_goes_only_for_the_floor() {
    let mut job = repeated("lid-en-es-ar", 1);
    let offer = offer(&job);
    let mut seen = Vec::new();
    for distance in [600.0, 700.0, 800.0, 900.0, 1000.0, 1100.0, 1200.0, 1300.0] {
        job.viewing_distance = print::Mm(distance);
        let Ok(fitted) = fitted(&job, &offer) else { break };
        let floor = distance * 0.002_908_882 / 0.714 * 72.0 / 25.4;
        assert!(body(&fitted) >= floor - 0.01, "{distance}: {} under {floor}", body(&fitted));
        for block in &fitted.job.languages {
            assert!(block.sections.iter().flat_map(|section| &section.lines).any(|line| line.hazard));
        }
        seen.push(fitted.taken);
    }
    assert!(seen.is_sorted(), "{seen:?}");
    assert!(seen.contains(&offer.steps.len()), "the last step was needed once: {seen:?}");
}

/// All texts thirty times as long: not even every step helps, and the error says what to shorten.
#[test]
fn what_does_not_fit_after_every_step_is_an_error() {
    let mut job = job("lid-en-es-ar");
    for block in &mut job.languages {
        for line in block.sections.iter_mut().flat_map(|section| &mut section.lines) {
            line.text = [line.text.as_str(); 30].join(" ");
        }
    }
    let error = fitted(&job, &offer(&job)).map(|fitted| fitted.taken).expect_err("far too much text");
    assert!(error.errors().all(|item| item.code == "text-too-long"), "{error}");
    assert!(error.errors().all(|item| item.message.contains("shorten it by about")));
}

/// What a refusal offers instead is true: in the size it names, and in the languages it names, the sheet is made.
#[test]
fn a_refusal_names_a_size_and_languages_that_fit() {
    let offer = Offer::default();
    let (mut job, error) = (1..10)
        .map(|times| repeated("lid-en-es-ar", times))
        .find_map(|job| fitted(&job, &offer).err().map(|error| (job, error)))
        .expect("too many lines");
    assert!(error.errors().next().is_some(), "{error}");
    let told = |code: &str, name: &str| {
        let item = error.items.iter().find(|item| item.code == code);
        item.unwrap_or_else(|| panic!("no {code}: {error}")).args[name].clone()
    };
    let (size, tags) = (told("fits-larger", "size"), told("fits-fewer", "tags"));
    let larger = SheetJob { size: SheetSize::parse(&size), ..job.clone() };
    assert!(larger.size.is_some(), "{size}");
    assert!(fitted(&larger, &offer).is_ok(), "{size}");
    let before = job.languages.len();
    job.languages.retain(|block| tags.split(", ").any(|tag| tag == block.lang));
    assert!((1..before).contains(&job.languages.len()), "{tags}");
    assert!(fitted(&job, &offer).is_ok(), "{tags}");
    // What is wrong with a text itself no size mends.
    job.languages[0].title = "\u{202E}Lid".into();
    let error = fitted(&job, &offer).map(|fitted| fitted.taken).expect_err("a bad character");
    assert!(error.items.iter().all(|item| !item.code.starts_with("fits-")), "{error}");
}

/// Of two ways to say a section in brief the later one holds, and is taken only where the first does not do.
#[test]
fn a_section_may_be_said_in_brief_twice() {
    let mut job = repeated("lid-en-es-ar", 1);
    let mut offer = offer(&job);
    let Some(Step::Brief { section, lines: shorter }) = offer.steps.pop() else { panic!("a brief step") };
    let lines: Vec<Vec<Line>> = shorter
        .iter()
        .map(|lines| vec![Line { text: [lines[0].text.as_str(); 4].join(", "), ..lines[0].clone() }; 2])
        .collect();
    offer.steps.push(Step::Brief { section, lines: lines.clone() });
    offer.steps.push(Step::Brief { section, lines: shorter.clone() });
    let all = offer.steps.len();
    let mut seen = Vec::new();
    for distance in (24..64).map(|steps| f64::from(steps) * 25.0) {
        job.viewing_distance = print::Mm(distance);
        let Ok(fitted) = fitted(&job, &offer) else { break };
        for (at, block) in fitted.job.languages.iter().enumerate() {
            let said = &block.sections[section].lines;
            let expected = match all - fitted.taken {
                0 => &shorter[at],
                1 => &lines[at],
                _ => &job.languages[at].sections[section].lines,
            };
            assert_eq!(said, expected, "{distance}");
        }
        assert!(fitted.artifact == make(&fitted.job, &fonts(), PRESS_PROFILE).expect("a sheet"));
        seen.push(all - fitted.taken);
    }
    assert!([0, 1].iter().all(|left| seen.contains(left)), "{seen:?}");
}

#[test]
fn steps_that_cannot_be_taken_are_refused() {
    let job = job("lid-en-es");
    let brief = |hazard: bool, languages: usize| {
        let lines = vec![Line { text: "Pilas".into(), hazard, ..Line::default() }];
        Step::Brief { section: 2, lines: vec![lines; languages] }
    };
    for (step, why) in [
        (Step::Leave { section: 0, line: 99 }, "there is no such line"),
        (Step::Leave { section: 9, line: 0 }, "there is no such line"),
        (Step::Leave { section: 2, line: 0 }, "a line that names a hazard can't be left out"),
        (brief(true, 1), "every language needs brief lines"),
        (brief(false, 2), "its brief lines name no hazard"),
    ] {
        let offer = Offer { steps: vec![step], for_ease: 1 };
        let error = fitted(&job, &offer).map(|fitted| fitted.taken).expect_err(why);
        assert_eq!(error.items[0].code, "step-invalid");
        assert_eq!((error.items[0].args["number"].as_str(), error.items[0].args["why"].as_str()), ("1", why));
    }
    // Brief lines are looked at like all others.
    let Step::Brief { lines, .. } = brief(true, 2) else { panic!("a brief step") };
    let mut lines = lines;
    lines[1][0].text = "\u{202E}Pilas".into();
    let offer = Offer { steps: vec![Step::Brief { section: 2, lines }], for_ease: 0 };
    assert_eq!(
        fitted(&job, &offer).map(|fitted| fitted.taken).expect_err("a bad character").items[0].code,
        "bad-character"
    );
}

#[test]
fn an_offer_goes_through_json_and_back() {
    let offer = offer(&job("lid-en-es-ar"));
    let text = serde_json::to_string(&offer).expect("JSON");
    assert_eq!(serde_json::from_str::<Offer>(&text).expect("an offer"), offer);
    assert!(text.contains(r#"{"leave":{"section":0,"line":9}}"#), "{text}");
}
