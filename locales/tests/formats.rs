//! Measures, distances, dates, times and the behaviour of messages as readers meet them.

#![expect(clippy::unwrap_used, reason = "helpers of tests may stop a test")]

use std::sync::{Arc, LazyLock};

use chrono::{NaiveDate, NaiveTime, Weekday};
use locales::{
    Args, DateStyle, Lang, Messages, ProblemKind, Quantity, Rounding, Units, Width, args, bundled, sources,
    supported, t,
};

fn plain(tag: &str) -> Messages {
    bundled(&tag.parse().unwrap()).isolating(false)
}

/// Factors: NIST SP 811 (2008), Appendix B.8, exact. 2 gal = 7.5708 L, which the plastics
/// recyclers' design guide prints as 7.5 L; 2 in = 50.8 mm, which it prints as 5 cm.
#[test]
fn measures_are_in_the_readers_units() {
    let mm = Quantity::millimetres;
    let ml = Quantity::millilitres;
    let g = Quantity::grams;
    let cases: &[(&str, Quantity, &str)] = &[
        ("en-US", mm(50.8), "2 in (5 cm)"),
        ("en-US", Quantity::micrometres(50_800), "2 in (5 cm)"),
        ("en-US", mm(50.0), "2 in (5 cm)"),
        ("en-US", mm(25.4), "1 in (2.5 cm)"),
        ("en-US", mm(38.1), "1½ in (3.8 cm)"),
        ("en-US", mm(6.35), "¼ in (6.3 mm)"),
        ("en-US", mm(1016.0), "40 in (1 m)"),
        ("en-US", mm(914.4), "3 ft (90 cm)"),
        ("en-US", mm(1828.8), "6 ft (1.8 m)"),
        ("en-US", mm(10_000.0), "33 ft (10 m)"),
        ("en-US", Quantity::nanolitres(7_570_823_568), "2 gal (7.5 L)"),
        ("en-US", ml(3_785.411_784 * 96.0), "96 gal (360 L)"),
        ("en-US", ml(29.573_529_562_5 * 6.0), "6 fl oz (180 mL)"),
        ("en-US", ml(1_892.705_892), "½ gal (1.9 L)"),
        ("en-US", Quantity::micrograms(4_535_923_700), "10 lb (4.5 kg)"),
        ("en-US", g(453.592_37 / 2.0), "8 oz (230 g)"),
        ("en-US", Quantity::thousandths(3_000), "3 pieces"),
        ("en-US", Quantity::thousandths(1_000), "1 piece"),
        ("en", mm(50.8), "5 cm"),
        ("en-GB", mm(50.8), "5 cm"),
        ("en", mm(935.0), "93.5 cm"),
        ("en", ml(240_000.0), "240 L"),
        ("en", g(96_000.0), "96 kg"),
        ("es-US", mm(50.8), "2 pulgadas (5 cm)"),
        ("es-US", mm(25.4), "1 pulgada (2.5 cm)"),
        ("es-US", mm(12.7), "½ pulgada (1.25 cm)"),
        ("es", mm(25.4), "2,5 cm"),
        ("ar-US", mm(50.8), "2 بوصة (5 سم)"),
        ("ar-US", mm(38.1), "1.5 بوصة (3.8 سم)"),
        ("ar-US", mm(76.2), "3 بوصات (7.5 سم)"),
        ("ar", mm(50.8), "5 سم"),
        ("ar-US", ml(3_785.411_784 * 5.0), "5 غالونات (19 لترًا)"),
        ("zh-Hans-US", mm(50.8), "2英寸（5厘米）"),
        ("zh-Hans-US", mm(38.1), "1.5英寸（3.8厘米）"),
        ("zh-Hans", ml(240_000.0), "240升"),
        ("vi-US", mm(38.1), "1½ inch (3,8 cm)"),
        ("vi", mm(25.4), "2,5 cm"),
        ("ko-US", mm(50.8), "2인치(5 cm)"),
        ("ko", mm(25.4), "2.5 cm"),
    ];
    for (tag, quantity, expected) in cases {
        assert_eq!(plain(tag).measure(*quantity, Rounding::Everyday), *expected, "{tag} {quantity:?}");
    }
}

#[test]
fn exact_measures_keep_three_decimals() {
    assert_eq!(plain("en").measure(Quantity::millimetres(50.8), Rounding::Exact), "5.08 cm");
    assert_eq!(plain("en-US").measure(Quantity::millimetres(50.0), Rounding::Exact), "1.969 in (5 cm)");
}

#[test]
fn the_words_a_measure_was_stated_in_stay_beside_it() {
    let two_inches = Quantity::millimetres(50.8);
    let stated = |tag, words| plain(tag).measure_stated(two_inches, words, Rounding::Everyday);
    assert_eq!(stated("en-US", "2 in"), "2 in (5 cm)");
    assert_eq!(
        stated("en-US", "the width of a golf ball"),
        "2 in (5 cm) (stated as the width of a golf ball)"
    );
    assert_eq!(stated("en", "2 in"), "5 cm (stated as 2 in)");
    assert_eq!(stated("en", " "), "5 cm");
    assert_eq!(stated("es", "2 in"), "5 cm (indicado como 2 in)");
    // Words from outside are isolated, so that they cannot reorder an Arabic sentence.
    let ar = bundled(&"ar".parse().unwrap());
    assert_eq!(
        ar.measure_stated(two_inches, "2 in", Rounding::Everyday),
        "5 سم (كما ورد: \u{2068}2 in\u{2069})"
    );
}

/// 1 mi = 1609.344 m, 1 ft = .3048 m, 1 yd = .9144 m exactly (NIST SP 811).
#[test]
fn distances_are_rounded_to_what_a_reader_can_use() {
    let cases: &[(&str, f64, &str)] = &[
        ("en-US", 1609.344, "1 mi"),
        ("en-US", 1998.6, "1.2 mi"),
        ("en-US", 16_000.0, "9.9 mi"),
        ("en-US", 16_093.44, "10 mi"),
        ("en-US", 40_000.0, "25 mi"),
        ("en-US", 100.0, "350 ft"),
        ("en-US", 3.0, "50 ft"),
        ("en-US", 159.0, "500 ft"),
        ("en-US", 170.0, "0.1 mi"),
        ("en-GB", 100.0, "100 yd"),
        ("en-GB", 1998.6, "1.2 mi"),
        ("en", 840.0, "850 m"),
        ("en", 999.0, "1 km"),
        ("en", 9_960.0, "10 km"),
        ("es", 1998.6, "2 km"),
        ("es", 2_500.0, "2,5 km"),
        ("ar", 1100.0, "1.1 كم"),
        ("ar-US", 3.1 * 1609.344, "3.1 ميل"),
    ];
    for (tag, metres, expected) in cases {
        assert_eq!(plain(tag).distance(Quantity::metres(*metres)), *expected, "{tag} {metres}");
    }
    assert_eq!(plain("en-US").with_units(Units::Metric).distance(Quantity::metres(1998.6)), "2 km");
}

/// CLDR 41 date and time patterns of `en`, `es`, `ar` (Debian unicode-cldr-core); of `fr`, `fr-CA`
/// and `pt` from memory.
#[test]
fn dates_and_times_follow_the_language_and_region() {
    let day = NaiveDate::from_ymd_opt(2025, 3, 4).unwrap();
    let cases: &[(&str, DateStyle, &str)] = &[
        ("en", DateStyle::Full, "Tuesday, March 4, 2025"),
        ("en", DateStyle::Long, "March 4, 2025"),
        ("en", DateStyle::DayMonth, "March 4"),
        ("en", DateStyle::WeekdayDayMonth, "Tue, Mar 4"),
        ("es", DateStyle::Full, "martes, 4 de marzo de 2025"),
        ("es", DateStyle::DayMonth, "4 de marzo"),
        ("es", DateStyle::WeekdayDayMonth, "mar, 4 mar"),
        ("ar", DateStyle::Full, "الثلاثاء، 4 مارس 2025"),
        ("ar", DateStyle::WeekdayDayMonth, "الثلاثاء، 4 مارس"),
        // From memory: CLDR of zh, vi and ko; Vietnamese has its short weekdays ("T3") here.
        ("zh-Hans", DateStyle::Full, "2025年3月4日星期二"),
        ("zh-Hans", DateStyle::WeekdayDayMonth, "3月4日周二"),
        ("vi", DateStyle::Full, "Thứ Ba, 4 tháng 3, 2025"),
        ("vi", DateStyle::WeekdayDayMonth, "T3, 4 thg 3"),
        ("ko", DateStyle::Full, "2025년 3월 4일 화요일"),
        ("ko", DateStyle::WeekdayDayMonth, "3월 4일 (화)"),
        ("fr", DateStyle::Full, "mardi 4 mars 2025"),
        ("fr", DateStyle::WeekdayDayMonth, "mar. 4 mars"),
        ("pt-BR", DateStyle::Full, "terça-feira, 4 de março de 2025"),
        ("pt-BR", DateStyle::WeekdayDayMonth, "ter., 4 de mar."),
    ];
    for (tag, style, expected) in cases {
        assert_eq!(plain(tag).date(day, *style), *expected, "{tag} {style:?}");
    }
    let at = |hour, minute| NaiveTime::from_hms_opt(hour, minute, 0).unwrap();
    let times: &[(&str, NaiveTime, &str)] = &[
        ("en-US", at(8, 0), "8:00 AM"),
        ("en-US", at(0, 5), "12:05 AM"),
        ("en-US", at(12, 0), "12:00 PM"),
        ("en-US", at(17, 30), "5:30 PM"),
        ("en-GB", at(17, 30), "17:30"),
        ("es-ES", at(8, 0), "8:00"),
        ("es-US", at(17, 30), "5:30\u{a0}p.\u{a0}m."),
        ("ar-US", at(8, 0), "8:00 ص"),
        ("ar-EG", at(17, 30), "5:30 م"),
        ("zh-Hans-US", at(17, 30), "下午5:30"),
        ("vi-US", at(8, 0), "8:00 SA"),
        ("vi-VN", at(17, 30), "17:30"),
        ("ko-KR", at(17, 30), "오후 5:30"),
        ("fr-US", at(17, 30), "5:30\u{a0}PM"),
        ("fr-CA", at(17, 30), "17\u{a0}h\u{a0}30"),
        ("fr-FR", at(17, 30), "17\u{a0}h\u{a0}30"),
        ("pt-BR", at(17, 30), "17:30"),
    ];
    for (tag, time, expected) in times {
        assert_eq!(plain(tag).time(*time), *expected, "{tag} {time}");
    }
    assert_eq!(plain("en-US").time_range(at(8, 0), at(17, 0)), "8:00 AM – 5:00 PM");
    assert_eq!(plain("es-ES").time_range(at(8, 0), at(17, 0)), "8:00 a 17:00");
    assert_eq!(plain("es").weekday(Weekday::Wed, Width::Wide), "miércoles");
    assert_eq!(plain("en").weekday(Weekday::Sun, Width::Short), "Sun");
    assert_eq!(plain("ar").month(12, Width::Wide), "ديسمبر");
}

#[test]
fn percentages_and_sizes() {
    assert_eq!(plain("en").percent(0.17, 0), "17%");
    assert_eq!(plain("es").percent(0.125, 1), "12,5\u{a0}%");
    assert_eq!(plain("fr").percent(0.125, 1), "12,5\u{a0}%");
    assert_eq!(plain("pt-BR").percent(0.125, 1), "12,5%");
    assert_eq!(plain("ht").percent(0.125, 1), "12.5%");
    assert_eq!(plain("ar").percent(0.17, 0), "17\u{200e}%\u{200e}");
    assert_eq!(plain("en").bytes(640_000), "640 kB");
    assert_eq!(plain("en").bytes(2_540_000), "2.5 MB");
    assert_eq!(plain("en").bytes(999_600), "1 MB");
    assert_eq!(plain("en").bytes(1), "1 kB");
}

#[test]
fn items_of_a_list_are_isolated_for_the_screen_and_bare_in_plain_text() {
    let screen = bundled(&"ar".parse().unwrap());
    assert_eq!(screen.list_and(&["PET 1", "علب"]), "\u{2068}PET 1\u{2069} و\u{2068}علب\u{2069}");
    assert_eq!(plain("en").list_and(&["a", "b", "c"]), "a, b, and c");
    assert_eq!(plain("en").list_and::<&str>(&[]), "");
}

#[test]
fn what_a_language_lacks_is_answered_in_english_and_what_english_lacks_with_the_key() {
    let english = Messages::from_ftl(Lang::default(), &["a = A { $x }\nb = B\n    .hint = H\n"]).0;
    let (spanish, problems) = Messages::from_ftl("es-US".parse().unwrap(), &["a = Una { $x }\n"]);
    assert_eq!(problems, []);
    let spanish = spanish.with_fallback(Arc::new(english)).isolating(false);
    assert_eq!(t!(spanish, "a", x = 1), "Una 1");
    assert_eq!(t!(spanish, "b"), "B");
    assert_eq!(t!(spanish, "b.hint"), "H");
    assert_eq!(t!(spanish, "nowhere"), "nowhere");
    assert_eq!(t!(spanish, ""), "?");
    let counted = Messages::from_ftl("ar".parse().unwrap(), &["c = { $n ->\n [few] F\n *[other] O\n }\n"]).0;
    assert_eq!(t!(counted, "c", n = "103"), "F", "a count that travelled as text");
    assert_eq!(t!(counted, "c", n = "many things"), "O");
    assert!(spanish.has("a") && !spanish.has("b"));
    let fallen = spanish.find("b", &Args::new()).unwrap();
    assert_eq!((fallen.text.as_str(), fallen.lang.tag().as_str()), ("B", "en"));
    assert_eq!(spanish.find("b.other", &Args::new()), None);
    // A value that is not given shows its name; nothing panics.
    assert_eq!(t!(spanish, "a"), "Una {$x}");
}

#[test]
fn values_are_isolated_unless_told_otherwise() {
    let source = "a = قل { $x } الآن\n";
    let screen = Messages::from_ftl("ar".parse().unwrap(), &[source]).0;
    assert_eq!(t!(screen, "a", x = "PET 1"), "قل \u{2068}PET 1\u{2069} الآن");
    // A sentence made of values alone runs as the language does: "two things: here" inside another.
    let nested = t!(screen, "a", x = "\u{2068}PET 1\u{2069}: \u{2068}PP\u{2069}");
    assert!(nested.contains("\u{2067}\u{2068}PET 1"), "{nested:?}");
    assert_eq!(t!(screen.isolating(false), "a", x = "PET 1"), "قل PET 1 الآن");
}

#[test]
fn a_broken_file_is_read_as_far_as_it_goes_and_says_where_it_breaks() {
    let (messages, problems) =
        Messages::from_ftl(Lang::default(), &["a = A\nb = { $\nc = C\n", "a = again\nd = { d }\n"]);
    assert_eq!(t!(messages, "a"), "A");
    assert_eq!(t!(messages, "c"), "C");
    assert_eq!(problems.len(), 2, "{problems:?}");
    assert!(matches!(problems[0].kind, ProblemKind::Syntax(_)));
    assert_eq!((problems[0].source, problems[0].line), (0, 2));
    assert!(
        problems[0].to_string().starts_with("message file 1, line 2: cannot be read ("),
        "{}",
        problems[0]
    );
    assert_eq!(
        problems[1].to_string(),
        "message file 2, line 1: \"a\" is defined twice; the first is used, remove the other"
    );
    let (_, problems) = Messages::from_ftl(Lang::default(), &["\na = { NUMBER($n) }\n"]);
    assert_eq!(
        problems.iter().map(ToString::to_string).collect::<Vec<_>>(),
        [
            "message file 1, line 2: \"a\" uses the function NUMBER(), which is left out; write it with values and plural forms"
        ]
    );
    // A message that refers to itself ends, and is not empty.
    assert!(!t!(messages, "d").is_empty());
}

#[test]
fn every_message_of_every_language_can_be_shown_and_is_not_empty() {
    for language in supported() {
        let messages = bundled(&language.lang());
        for (name, text) in sources(language.tag) {
            let mut faults = Vec::new();
            for entry in locales::check::entries(name, text, &mut faults) {
                let mut values = Args::new();
                for placeholder in &entry.placeholders {
                    values.set(placeholder.clone(), 3);
                }
                let shown = messages.t(&entry.key, &values);
                assert!(
                    !shown.trim().is_empty() && shown != entry.key && !shown.contains("{$"),
                    "{}: {shown}",
                    entry.key
                );
            }
            assert_eq!(faults, [], "{}/{name}", language.tag);
        }
    }
}

/// Read once: property tests ask them hundreds of times.
static READERS: LazyLock<[Messages; 4]> = LazyLock::new(|| ["en-US", "es-US", "ar-US", "en-GB"].map(plain));

proptest::proptest! {
    #[test]
    fn no_text_makes_the_reader_or_a_message_panic(text in "(?s).{0,200}", key in ".{0,20}", value in ".{0,20}") {
        let (messages, _) = Messages::from_ftl(Lang::default(), &[&text]);
        let _ = messages.t(&key, &args!(x = value.as_str()));
        let _ = text.parse::<Lang>();
        let _ = messages.list_and(&[text, value]);
    }

    #[test]
    fn any_quantity_can_be_shown(value in proptest::num::f64::ANY) {
        for messages in READERS.iter() {
            for quantity in [Quantity::millimetres(value), Quantity::millilitres(value), Quantity::grams(value)] {
                proptest::prop_assert!(!messages.measure(quantity, Rounding::Everyday).is_empty());
                proptest::prop_assert!(!messages.measure(quantity, Rounding::Exact).is_empty());
                proptest::prop_assert!(!messages.distance(quantity).is_empty());
            }
        }
    }

    /// What an everyday measure promises: within 2 percent of the truth.
    #[test]
    fn everyday_lengths_are_within_two_percent(tenths in 10_u32..9_999) {
        let shown = READERS[3].measure(Quantity::millimetres(f64::from(tenths) / 10.0), Rounding::Everyday);
        let (number, unit) = shown.split_once(' ').unwrap();
        let size = match unit { "mm" => 1.0, "cm" => 10.0, other => panic!("{other}") };
        let read = number.parse::<f64>().unwrap() * size;
        let truth = f64::from(tenths) / 10.0;
        proptest::prop_assert!((read - truth).abs() <= truth * 0.020_001, "{shown} for {truth} mm");
    }
}
