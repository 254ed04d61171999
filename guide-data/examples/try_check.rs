//! Checks the demo.
fn main() {
    let program = guide_data::Program::from_json(guide_data::demo_json()).unwrap();
    let catalog = guide_data::Catalog::standard().unwrap();
    let t = std::time::Instant::now();
    let checked = guide_data::check(&program, &catalog);
    println!("{:?}", t.elapsed());
    for f in &checked.findings {
        println!(
            "{:?} {} {}/{} {:?} {:?}",
            f.severity,
            f.code,
            f.place.kind,
            f.place.id,
            f.args.values().collect::<Vec<_>>(),
            f.witness.as_ref().map(|w| (&w.item, &w.answers))
        );
    }
    let g = &checked.guide;
    println!(
        "{} items, {} outcomes, json {}",
        g.items.len(),
        g.outcomes.len(),
        serde_json::to_string(g).unwrap().len()
    );
    for (i, it) in g.items.iter().enumerate() {
        let q = g.questions(i, &guide_data::Known::default()).unwrap();
        let a = g.assumed_answer(i, &guide_data::Known::default()).unwrap();
        println!(
            "{:28} q {:.2}/{} {:?}",
            it.id,
            q.expected,
            q.worst,
            a.parts
                .iter()
                .map(|p| (
                    p.part.clone().unwrap_or_default(),
                    p.outcome.verdict.code(),
                    p.outcome.stream.clone().or(p.outcome.channel.clone()).unwrap_or_default(),
                    p.outcome.rules.first().cloned().unwrap_or_default()
                ))
                .collect::<Vec<_>>()
        );
    }
}
