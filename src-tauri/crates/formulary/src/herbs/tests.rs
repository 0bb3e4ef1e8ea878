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
fn every_fact_has_a_source_or_says_that_it_is_unsure() {
    for herb in all() {
        if herb.tincture_status == Some(Status::Confirmed) {
            assert!(!herb.tincture_source.is_empty(), "{}", herb.key);
            assert_ne!(herb.tincture_source, "common practice", "{}", herb.key);
        }
        if herb.caution_status == Some(Status::Confirmed) {
            assert!(!herb.caution_source.is_empty(), "{}", herb.key);
        }
        assert_eq!(
            herb.limit.is_some(),
            !herb.use_text.is_empty(),
            "{}",
            herb.key
        );
        assert_eq!(
            herb.cautions.is_empty(),
            herb.caution_status.is_none(),
            "{}",
            herb.key
        );
    }
}

#[test]
fn the_trade_lists_twenty_one_confirmed_tinctures_and_four_confirmed_cautions() {
    let traded = all().iter().filter(|herb| herb.is_described());
    assert_eq!(traded.clone().count(), 73);
    let confirmed = |herb: &&Herb| herb.caution_status == Some(Status::Confirmed);
    let keys: Vec<_> = traded
        .filter(confirmed)
        .map(|herb| herb.key.as_str())
        .collect();
    assert_eq!(keys, ["burdock", "calendula", "echinacea", "elder-berry"]);
}
