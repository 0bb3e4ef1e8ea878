//! Codes of recipes as anybody may write them: packed as ours are, around whatever they like.

use std::cell::Cell;

use api::{App, StandingClock};
use checks::sage;
use chrono::DateTime;
use proptest::prelude::*;
use proptest::test_runner::TestRunner;
use serde_json::{Value, json};

use crate::times;

fn any_json() -> impl Strategy<Value = Value> {
    let leaf = prop_oneof![
        Just(Value::Null),
        any::<bool>().prop_map(Value::from),
        any::<f64>().prop_map(Value::from),
        (-10.0..1000.0).prop_map(Value::from),
        any::<String>().prop_map(Value::from),
        "[a-z -]{0,30}".prop_map(Value::from),
        prop::sample::select(vec![
            "sage", "leaf", "dried", "spirit", "oil", "olive", "vinegar"
        ])
        .prop_map(Value::from),
    ];
    leaf.prop_recursive(3, 24, 5, |inner| {
        prop::collection::vec(inner, 0..5).prop_map(Value::from)
    })
}

/// A recipe of ours with some of its places filled by a stranger.
fn recipe() -> impl Strategy<Value = Value> {
    prop::collection::vec((0..14_usize, any_json()), 0..4).prop_map(|changes| {
        let mut recipe = sage();
        for (place, value) in changes {
            let pointer = match place {
                at @ 0..9 => format!("/{at}"),
                at @ 9..13 => format!("/2/0/{}", at - 9),
                _ => "/3/0".to_owned(),
            };
            // An earlier change may have taken the place away.
            if let Some(held) = recipe.pointer_mut(&pointer) {
                *held = value;
            }
        }
        recipe
    })
}

#[test]
fn a_code_is_read_or_refused_in_a_sentence_and_what_is_kept_can_be_shown() {
    let folder = tempfile::tempdir().unwrap();
    let now = DateTime::parse_from_rfc3339("2026-07-14T09:00:00+02:00").unwrap();
    let app = App::open(folder.path(), Box::new(StandingClock::at(now))).unwrap();
    let mut runner = TestRunner::new(ProptestConfig {
        failure_persistence: None,
        ..ProptestConfig::with_cases(400 * times())
    });
    let (kept_count, refused) = (Cell::new(0), Cell::new(0));
    let outcome = runner.run(&recipe(), |recipe| {
        let Some(link) = paper::packed::link_of(&recipe.to_string()) else {
            return Ok(());
        };
        let request = json!({ "text": link }).to_string();
        let known = api::call(&app, "recipe.read_code", &request);
        let kept = api::call(&app, "recipe.take_in", &request);
        match (known, kept) {
            (Ok(_), Ok(kept)) => {
                let kept: Value = serde_json::from_str(&kept).unwrap();
                kept_count.set(kept_count.get() + 1);
                let id = &kept["recipe"]["id"];
                let card = json!({ "recipe": id, "size": "a6", "note": true }).to_string();
                prop_assert!(api::call(&app, "recipe.card", &card).is_ok(), "{recipe}");
            }
            (Err(why), Err(_)) => {
                refused.set(refused.get() + 1);
                prop_assert!(why.message.to_string().ends_with('.'), "{why:?}");
            }
            // Already in the book, or shown as what must not be made.
            (Ok(_), Err(_)) => {}
            (Err(why), Ok(_)) => prop_assert!(false, "kept unread: {why:?} {recipe}"),
        }
        Ok(())
    });
    outcome.unwrap();
    // Both ends were tried, so that neither is empty by mistake.
    assert!(
        kept_count.get() > 0 && refused.get() > 50,
        "{kept_count:?} {refused:?}"
    );
}
