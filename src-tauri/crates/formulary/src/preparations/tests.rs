use physics::mixture::IngredientKind;

use super::*;

#[test]
fn all_21_rows_of_the_trade_and_four_that_are_cooked_are_there() {
    let cooked = ["elixir-cooked", "syrup", "syrup-honey", "decoction"];
    assert!(
        cooked
            .iter()
            .all(|key| all().iter().any(|one| one.key == *key))
    );
    assert_eq!(all().len(), 21 + cooked.len());
    let mut keys: Vec<_> = all().iter().map(|preparation| &preparation.key).collect();
    keys.sort();
    keys.dedup();
    assert_eq!(keys.len(), 25);
}

#[test]
fn every_block_has_its_sources_or_says_that_there_is_none() {
    for preparation in all() {
        let p = preparation;
        let ratios = [
            &p.ratio_fresh,
            &p.ratio_dried,
            &p.glycerin_fresh,
            &p.glycerin_dried,
            &p.fortify,
        ];
        for range in ratios.into_iter().flatten() {
            assert!(
                range.low <= range.usual && range.usual <= range.high,
                "{}",
                p.key
            );
            assert!(
                !range.source.is_empty() || range.status != Status::Confirmed,
                "{}",
                p.key
            );
        }
        for (source, status) in [
            (&p.method_source, p.method_status),
            (&p.parts_source, p.parts_status),
        ] {
            assert!(
                !source.is_empty() || status != Status::Confirmed,
                "{}",
                p.key
            );
        }
        for span in [&p.shelf_months, &p.use_within_days].into_iter().flatten() {
            assert!(
                !span.source.is_empty() || span.status == Status::Practice,
                "{}",
                p.key
            );
        }
        assert!(!p.gates.is_empty() && !p.parts.is_empty(), "{}", p.key);
        let amounts = Amounts {
            plants: vec![("garlic", "bulb")],
            herb_g: 50.0,
            poured_ml: 250.0,
            kinds: p.liquids(),
            strength_percent_vol: crate::Interval::exact(45.0),
        };
        let steps = p.steps(&amounts);
        assert!(steps.len() >= 6, "{}", p.key);
        let is_sure = |step: &Step| step.source.is_some() || step.status > Status::PartlyConfirmed;
        assert!(steps.iter().all(is_sure), "{}", p.key);
    }
}

#[test]
fn an_unknown_field_is_refused() {
    assert!(read("[[preparation]]\nkey = \"x\"\nflavour = \"odd\"\n").is_err());
}

#[test]
fn a_family_name_follows_the_state_of_the_herb() {
    for (name, state, key) in [
        ("tincture", PlantState::Dried, "tincture-dried"),
        ("Glycerite", PlantState::Dried, "glycerite-dried"),
        ("oil", PlantState::Dried, "oil-dried"),
        ("oil", PlantState::Fresh, "oil-fresh"),
        ("glycerite-fresh", PlantState::Dried, "glycerite-fresh"),
    ] {
        let found = find(name, state).map(|preparation| preparation.key.as_str());
        assert!(found.is_some(), "{name}");
        if name != "glycerite-fresh" {
            assert_eq!(found, Some(key), "{name}");
        }
    }
    assert!(find("potion", PlantState::Fresh).is_none());
}

#[test]
fn garlic_is_acidified_by_steps_of_its_own() {
    let oil = find("oil-acidified", PlantState::Fresh).unwrap();
    let of = |herb| {
        let amounts = Amounts {
            plants: vec![(herb, "leaf")],
            herb_g: 50.0,
            poured_ml: 250.0,
            kinds: vec![IngredientKind::Oil],
            strength_percent_vol: crate::Interval::exact(0.0),
        };
        oil.steps(&amounts)
    };
    let has = |steps: &[Step], entry: &str| {
        let title = Message::of_table(format!("{entry}-title"));
        steps.iter().any(|step| step.title == title)
    };
    assert!(has(&of("garlic"), "step-three-times-acid"));
    assert!(!has(&of("garlic"), "step-ten-times-acid"));
    assert!(has(&of("basil"), "step-ten-times-acid"));
    assert_eq!(of("garlic").len(), of("basil").len());
}
