//! The table of the preparations in tests/README.md, held to their data.

use std::path::PathBuf;

use formulary::{
    Status,
    preparations::{self, Aim, Measure, Preparation, Solvent},
};

fn computed(preparation: &Preparation) -> &'static str {
    match (preparation.grade, preparation.aim) {
        (Solvent::Oil, _) if preparation.soak.is_some() => "oil and acid bath",
        (Solvent::Oil, _) if preparation.ratio_dried.is_none() => "oil; the last day",
        (Solvent::Oil, _) => "oil; keeping by the herb's water; ageing from the oil's own label",
        (_, Aim::Strength) if preparation.measure == Measure::MadeUpTo => {
            "spirit and water for a strength at a volume; keeping"
        }
        (_, Aim::Strength) => "spirit and water for a strength in the jar; keeping",
        (_, Aim::Strongest) => "strength in the jar; keeping",
        (_, Aim::Glycerin) => "glycerin, water, optional spirit; glycerol, water activity; keeping",
        (Solvent::Vinegar, _) => {
            "amounts by parts; acidity, pH of the acid, sugar, water activity; keeping"
        }
        _ => "amounts by parts; strength, sugar, water activity; keeping",
    }
}

/// What is published and what is practice or a proposal, in the words of the table.
fn told(preparation: &Preparation) -> (String, String) {
    let range = |range: &Option<preparations::Range>| range.as_ref().map(|it| it.status);
    let span = |span: &Option<preparations::Span>| span.as_ref().map(|it| it.status);
    let parts = (preparation.aim == Aim::Parts).then_some(preparation.parts_status);
    let facts = [
        ("ratio fresh", range(&preparation.ratio_fresh)),
        ("ratio dried", range(&preparation.ratio_dried)),
        ("ratio cooked", range(&preparation.ratio_cooked)),
        ("glycerin share fresh", range(&preparation.glycerin_fresh)),
        ("glycerin share dried", range(&preparation.glycerin_dried)),
        ("alcohol for keeping", range(&preparation.fortify)),
        (
            "retention",
            preparation.retention.as_ref().map(|it| it.status),
        ),
        ("acid soak", preparation.soak.as_ref().map(|it| it.status)),
        ("shelf life", span(&preparation.shelf_months)),
        ("days of use", span(&preparation.use_within_days)),
        ("method", Some(preparation.method_status)),
        ("parts", parts),
    ];
    let (mut published, mut practice) = (Vec::new(), Vec::new());
    for (fact, status) in facts {
        match status {
            Some(Status::Confirmed) => published.push(fact.to_owned()),
            Some(Status::PartlyConfirmed) => published.push(format!("{fact} (in part)")),
            Some(_) => practice.push(fact.to_owned()),
            None => {}
        }
    }
    let listed = |facts: Vec<String>| match facts.as_slice() {
        [] => "-".to_owned(),
        facts => facts.join(", "),
    };
    (listed(published), listed(practice))
}

#[test]
fn the_readme_says_of_every_preparation_what_is_computed_published_and_practice() {
    let readme = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("README.md");
    let readme = std::fs::read_to_string(readme).expect("the README");
    let table: Vec<String> = preparations::all()
        .iter()
        .map(|preparation| {
            let (published, practice) = told(preparation);
            format!(
                "| {} | {} | {published} | {practice} |",
                api::Language::English.tell(&preparation.title()),
                computed(preparation)
            )
        })
        .collect();
    for line in &table {
        assert!(
            readme.lines().any(|written| written == line),
            "tests/README.md should have:\n{}",
            table.join("\n")
        );
    }
    let head = "| preparation | computed | published | practice or proposal |";
    let lines = readme.lines().skip_while(|line| *line != head).skip(2);
    let written = lines.take_while(|line| line.starts_with('|')).count();
    assert_eq!(written, table.len(), "no line beside those of the data");
}
