//! How often people find what they mean: misspellings and regional words made up for this test and
//! kept apart from the catalog's other names, judged by success at rank 1 and at rank 3.
//!
//! The goals are 85 % at rank 1 and 95 % at rank 3. What is asserted is the floor reached so far: it may
//! be raised, never lowered.

#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    clippy::indexing_slicing,
    reason = "a test fails by panicking"
)]

use guide_data::{SearchIndex, fold};
use lidleaf_tests::demo_guide;
use unicode_normalization::UnicodeNormalization as _;

/// What is typed, and the items any of which is meant.
type Query = (&'static str, &'static [&'static str]);

const ENGLISH: &[Query] = &[
    // Misspelled.
    ("piza box", &["pizza-box"]),
    ("pizza bax", &["pizza-box"]),
    ("cardbord box", &["cardboard-box"]),
    ("carboard", &["cardboard-box"]),
    ("card board boxes", &["cardboard-box"]),
    ("milk cartoon", &["milk-carton"]),
    ("milk jugg", &["milk-jug"]),
    ("plasic bottle", &["water-bottle"]),
    ("water bottel", &["water-bottle"]),
    ("soda botle", &["water-bottle"]),
    ("shampo botle", &["shampoo-bottle"]),
    ("yogert tub", &["yogurt-tub", "yogurt-cup"]),
    ("yoghrt", &["yogurt-tub", "yogurt-cup"]),
    ("peanutbutter jar", &["peanut-butter-jar"]),
    ("penut buter", &["peanut-butter-jar"]),
    ("ketchp", &["ketchup-bottle"]),
    ("detergent botlle", &["detergent-bottle"]),
    ("clamshel container", &["clamshell"]),
    ("styrofome cup", &["foam-cup"]),
    ("foam cupp", &["foam-cup"]),
    ("plastic strw", &["straw"]),
    ("news paper", &["newspaper"]),
    ("newspapper", &["newspaper"]),
    ("magazin", &["magazine"]),
    ("envelop", &["envelope"]),
    ("shreded paper", &["shredded-paper"]),
    ("reciept", &["receipt"]),
    ("receit", &["receipt"]),
    ("wraping paper", &["gift-wrap"]),
    ("egg cartn", &["egg-carton", "egg-carton-plastic", "foam-egg-carton"]),
    ("paper towl", &["paper-towel"]),
    ("parchmint paper", &["parchment-paper"]),
    ("glas bottle", &["glass-bottle"]),
    ("wine botle", &["glass-bottle"]),
    ("glass jarr", &["glass-jar"]),
    ("drinking glas", &["drinking-glass"]),
    ("mirrer", &["mirror"]),
    ("alumnium foil", &["foil"]),
    ("aluminum foyl", &["foil"]),
    ("tin cann", &["food-can"]),
    ("soup can", &["food-can"]),
    ("airosol can", &["spray-can", "empty-spray-can"]),
    ("spray paint cann", &["spray-can", "empty-spray-can"]),
    ("cofee cup", &["coffee-cup"]),
    ("coffe pod", &["coffee-pod"]),
    ("juice bocks", &["juice-box"]),
    ("food scrapes", &["food-scraps"]),
    ("coffee grinds", &["coffee-grounds"]),
    ("egg shels", &["egg-shells"]),
    ("cookin oil", &["cooking-oil", "cooking-oil-bottle"]),
    ("leafs", &["leaves"]),
    ("gras clippings", &["grass-clippings"]),
    ("christmas tre", &["holiday-tree"]),
    ("plastick bag", &["grocery-bag"]),
    ("grocry bag", &["grocery-bag"]),
    ("buble wrap", &["bubble-wrap"]),
    ("bubblewrap", &["bubble-wrap"]),
    ("potato chip bagg", &["chip-bag"]),
    ("batery", &["household-battery", "lithium-battery", "car-battery", "button-battery"]),
    ("batteries aa", &["household-battery"]),
    ("lithum battery", &["lithium-battery"]),
    ("car batery", &["car-battery"]),
    ("vaip", &["vape"]),
    ("cellfone", &["phone"]),
    ("cell phone", &["phone"]),
    ("labtop", &["laptop"]),
    ("extention cord", &["cables"]),
    ("christmas lites", &["string-lights"]),
    ("light bulp", &["light-bulb", "led-bulb", "cfl-bulb"]),
    ("florescent tube", &["fluorescent-tube"]),
    ("smoke detecter", &["smoke-alarm", "optical-smoke-alarm"]),
    ("propain tank", &["propane-cylinder"]),
    ("paint can", &["paint-can-empty", "latex-paint", "oil-paint"]),
    ("moter oil", &["motor-oil", "motor-oil-bottle"]),
    ("antifreze", &["antifreeze"]),
    ("pestiside", &["pesticide", "pesticide-bottle"]),
    ("thermomiter", &["mercury-thermometer", "digital-thermometer"]),
    ("needels", &["needles"]),
    ("syringe", &["needles"]),
    ("medicin", &["medicine", "medicine-liquid"]),
    ("perscription bottle", &["pill-bottle"]),
    ("old cloths", &["clothing"]),
    ("shoos", &["shoes"]),
    ("matress", &["mattress"]),
    ("sofa couch", &["sofa"]),
    ("fridge", &["refrigerator"]),
    ("refridgerator", &["refrigerator"]),
    ("washing mashine", &["washing-machine"]),
    ("tyres", &["tire"]),
    ("garden hoze", &["garden-hose"]),
    ("coat hanger", &["wire-hanger", "plastic-hanger"]),
    ("diapper", &["diaper"]),
    ("tooth paste", &["toothpaste-tube"]),
    ("tolet paper roll", &["toilet-roll-tube"]),
    ("wet wipe", &["wet-wipes"]),
    ("tooth brush", &["toothbrush"]),
    // Regional words, and what things are called at home.
    ("nappies", &["diaper"]),
    ("kitchen foil", &["foil"]),
    ("cling film", &["plastic-wrap"]),
    ("carrier bag", &["grocery-bag"]),
    ("crisp packet", &["chip-bag"]),
    ("fizzy drink can", &["drink-can"]),
    ("pop can", &["drink-can"]),
    ("beer can", &["drink-can"]),
    ("beer bottle", &["glass-bottle"]),
    ("jam jar", &["glass-jar"]),
    ("mayo jar", &["glass-jar", "peanut-butter-jar"]),
    ("tv", &["television"]),
    ("couch", &["sofa"]),
    ("settee", &["sofa"]),
    ("kleenex", &["facial-tissue"]),
    ("hair spray", &["spray-can", "empty-spray-can"]),
    ("bin bag", &["trash-bag"]),
    ("garbage bag", &["trash-bag"]),
    ("junk mail", &["mixed-paper", "envelope"]),
    ("amazon box", &["cardboard-box"]),
    ("packing foam", &["foam-block", "packing-peanuts"]),
    ("strawberry container", &["clamshell"]),
    ("k cup", &["coffee-pod"]),
    ("banana peel", &["food-scraps", "fruit-vegetables"]),
    ("chicken bones", &["meat-bones"]),
    ("tree branches", &["branches"]),
    ("car tire", &["tire"]),
    ("broken plate", &["ceramic-dishes"]),
    ("coffee mug", &["ceramic-dishes"]),
    ("weed killer", &["pesticide"]),
    ("bbq", &["grill"]),
    ("gas canister", &["propane-cylinder"]),
    ("cd", &["cd-dvd"]),
    ("phone charger", &["cables", "small-electronics"]),
    ("headphones", &["earbuds", "small-electronics"]),
    ("running shoes", &["shoes"]),
    ("jeans", &["clothing"]),
    ("pill container", &["pill-bottle"]),
];

const SPANISH: &[Query] = &[
    ("caja de piza", &["pizza-box"]),
    ("caja carton", &["cardboard-box"]),
    ("caja de cartón", &["cardboard-box"]),
    ("botella de agua", &["water-bottle"]),
    ("botela plastico", &["water-bottle"]),
    ("periodico", &["newspaper"]),
    ("revista vieja", &["magazine"]),
    ("bateria de carro", &["car-battery"]),
    ("pilas", &["household-battery"]),
    ("pila de litio", &["lithium-battery"]),
    ("vidrio botella", &["glass-bottle"]),
    ("frasco de vidrio", &["glass-jar"]),
    ("espejo", &["mirror"]),
    ("lata de atun", &["food-can"]),
    ("lata de refresco", &["drink-can"]),
    ("papel aluminio", &["foil"]),
    ("bolsa plastica", &["grocery-bag"]),
    ("bolsa de papas", &["chip-bag"]),
    ("pañales", &["diaper"]),
    ("panales", &["diaper"]),
    ("colchon", &["mattress"]),
    ("llantas", &["tire"]),
    ("neumatico", &["tire"]),
    ("refrigerador", &["refrigerator"]),
    ("heladera", &["refrigerator"]),
    ("lavadora", &["washing-machine"]),
    ("celular", &["phone"]),
    ("computadora", &["computer", "laptop"]),
    ("medicinas", &["medicine", "medicine-liquid"]),
    ("agujas", &["needles"]),
    ("aceite de cocina", &["cooking-oil", "cooking-oil-bottle"]),
    ("aceite de motor", &["motor-oil", "motor-oil-bottle"]),
    ("ropa vieja", &["clothing"]),
    ("zapatos", &["shoes"]),
    ("hojas", &["leaves"]),
    ("popote", &["straw"]),
    ("pajilla", &["straw"]),
    ("servilleta", &["paper-towel", "facial-tissue"]),
    ("cascaras de huevo", &["egg-shells"]),
    ("tubo fluorecente", &["fluorescent-tube"]),
];

const ARABIC: &[Query] = &[
    ("علبة بيتزا", &["pizza-box"]),
    ("صندوق بيتزا", &["pizza-box"]),
    ("بطاريه", &["household-battery", "lithium-battery", "car-battery", "button-battery"]),
    ("بطارية سيارة", &["car-battery"]),
    ("زجاجة ماء", &["water-bottle"]),
    ("جريدة", &["newspaper"]),
    ("مراه", &["mirror"]),
    ("حفاض", &["diaper"]),
    ("حفاضات", &["diaper"]),
    ("كرتون حليب", &["milk-carton"]),
    ("ورق المنيوم", &["foil"]),
    ("اطار سيارة", &["tire"]),
    ("ثلاجه", &["refrigerator"]),
    ("غسالة", &["washing-machine"]),
    ("هاتف", &["phone"]),
    ("ملابس قديمة", &["clothing"]),
    ("احذية", &["shoes"]),
    ("دواء", &["medicine", "medicine-liquid"]),
    ("ابر", &["needles"]),
    ("كيس بلاستيك", &["grocery-bag"]),
    ("فرشاة اسنان", &["toothbrush", "electric-toothbrush"]),
    ("مرتبة", &["mattress"]),
];

/// As the app and the command line fold: compatibility decomposition first.
fn folded(text: &str) -> String {
    fold(&text.nfkd().collect::<String>())
}

/// The names of a language as they are published: the main name, then the others.
fn index(language: &str) -> SearchIndex {
    let messages = locales::bundled(&language.parse().unwrap()).isolating(false);
    let find = |key: &str| messages.find(key, &locales::args!()).map(|found| found.text);
    let mut entries = Vec::new();
    for (at, item) in demo_guide().items.iter().enumerate() {
        let main = find(&format!("item-{}", item.id)).unwrap_or_else(|| item.id.clone());
        let also = find(&format!("item-{}.also", item.id)).unwrap_or_default();
        let names = std::iter::once(main.as_str()).chain(also.split('|')).map(str::trim);
        for (n, name) in names.filter(|name| !name.is_empty()).enumerate() {
            entries.push((at, folded(name), n == 0, item.common));
        }
    }
    SearchIndex::build(entries)
}

/// Prints what was missed, and asserts the rates: hundredths of queries at rank 1 and up to rank 3.
fn judge(language: &str, queries: &[Query], at_1: usize, at_3: usize) {
    let guide = demo_guide();
    let index = index(language);
    let (mut first, mut third) = (0, 0);
    for (query, meant) in queries {
        for id in *meant {
            assert!(guide.item_index(id).is_some(), "{query}: there is no item {id}");
        }
        let hits = index.find(&folded(query), 3);
        let found: Vec<&str> = hits.iter().map(|hit| guide.items[hit.item].id.as_str()).collect();
        let rank = found.iter().position(|id| meant.contains(id));
        first += usize::from(rank == Some(0));
        third += usize::from(rank.is_some());
        if rank != Some(0) {
            println!("{language}: \"{query}\" finds {found:?}, not first {meant:?}");
        }
    }
    let rate = |count: usize| 100.0 * count as f64 / queries.len() as f64;
    println!(
        "{language}: {} queries, {:.1} % at rank 1, {:.1} % at rank 3",
        queries.len(),
        rate(first),
        rate(third)
    );
    assert!(rate(first) >= at_1 as f64, "{language}: {:.1} % at rank 1, the floor is {at_1} %", rate(first));
    assert!(rate(third) >= at_3 as f64, "{language}: {:.1} % at rank 3, the floor is {at_3} %", rate(third));
}

#[test]
fn english() {
    assert!(ENGLISH.len() >= 100);
    judge("en", ENGLISH, 91, 95);
}

#[test]
fn spanish() {
    judge("es", SPANISH, 95, 100);
}

#[test]
fn arabic() {
    judge("ar", ARABIC, 100, 100);
}
