use super::*;

#[test]
fn a_herb_is_found_by_any_of_its_names() {
    for (name, key) in [
        ("MELISSA officinalis", "lemon-balm"),
        ("Mentha \u{d7} piperita", "peppermint"),
        ("St John\u{2019}s wort", "st-johns-wort"),
        ("hypericum perforatum", "st-johns-wort"),
        ("lemonbalm_leaf", "lemon-balm"),
        ("holybasil_herb", "tulsi"),
        ("Ocimum gratissimum", "clove-basil"),
        ("elder_berry", "elder-berry"),
        ("Rosa damascena", "rose"),
        ("linden", "lime-flower"),
    ] {
        assert_eq!(
            find(name).map(|herb| herb.key.as_str()),
            Some(key),
            "{name}"
        );
    }
    assert!(find("no such herb").is_none() && find("").is_none());
}

#[test]
fn keys_are_unique_slugs() {
    let mut keys: Vec<_> = all().iter().map(|herb| herb.key.as_str()).collect();
    keys.sort_unstable();
    keys.dedup();
    assert_eq!(keys.len(), all().len());
    assert!(
        all()
            .iter()
            .all(|herb| slug(&herb.key) == herb.key && !herb.parts().is_empty())
    );
}

#[test]
fn the_poisonous_are_never_offered() {
    for name in ["henbane", "adonis", "pinellia", "coltsfoot", "borage"] {
        assert!(!find(name).unwrap().is_offered(), "{name}");
    }
    assert!(find("comfrey").unwrap().is_offered());
}

#[test]
fn a_limit_has_its_sentence_wherever_it_stands() {
    for (key, part, limit) in [
        ("borage", "flower", Limit::No),
        ("coltsfoot", "leaf", Limit::No),
        ("comfrey", "root", Limit::Outside),
        ("arnica", "flower", Limit::Outside),
    ] {
        let herb = find(key).unwrap();
        assert_eq!(herb.limit(), Some(limit), "{key}");
        let (of_part, note) = herb.limit_of(part).unwrap();
        assert_eq!(of_part, limit);
        assert!(
            note.source.is_some() && !note.text.to_string().is_empty(),
            "{key}"
        );
    }
}

#[test]
fn only_the_parts_that_poison_are_forbidden() {
    let elder = find("elder-berry").unwrap();
    for part in ["leaf", "stem", "bark", "root", "unripe berry"] {
        assert!(elder.limit_of(part).is_some(), "{part}");
    }
    let epazote = find("epazote").unwrap();
    assert_eq!(
        epazote.limit_of("seed").map(|(limit, _)| limit),
        Some(Limit::No)
    );
    assert!(epazote.limit().is_none() && epazote.limit_of("herb").is_none());
}

#[test]
fn no_grade_praises_an_oil_of_fresh_buds_or_for_the_ear() {
    // Fresh plant in oil is kept 2 to 4 days (PNW 664); what may be praised is an oil of the dried herb.
    for herb in all() {
        for word in ["bud", "ear", "wilt"] {
            assert!(
                !herb.oil.split('-').any(|it| it == word),
                "{}: {}",
                herb.key,
                herb.oil
            );
        }
        let praises_fresh = herb.oil.starts_with("good") && herb.oil.contains("fresh");
        assert!(!praises_fresh, "{}", herb.key);
    }
}
