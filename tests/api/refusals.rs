//! What every command refuses in the same way.

use serde_json::json;

use crate::world::World;

#[test]
fn no_command_accepts_an_unknown_field_or_a_request_that_is_no_object() {
    let world = World::new();
    for name in api::names() {
        let refused = world.refused(name, json!({"no_such_field": 1}));
        assert_eq!(refused.code, "invalid", "{name}");
        for nonsense in [
            "",
            "{",
            "7",
            "\"x\"",
            "null",
            "{} {}",
            "{\"a\":NaN}",
            "nul\u{0}l",
        ] {
            let refused = world.refused_text(name, nonsense);
            assert_eq!(refused.code, "invalid", "{name} {nonsense:?}");
        }
    }
}

#[test]
fn an_unknown_command_is_a_clear_failure() {
    World::new()
        .refused("harvest.juggle", json!({}))
        .of("unknown_command", "")
        .says("harvest.juggle");
}

#[test]
fn a_missing_field_is_named_in_words() {
    let world = World::new();
    world
        .refused(
            "harvest.record",
            json!({"herb": "sage", "part": "leaf", "surface": "dry"}),
        )
        .of("invalid", "gross_g")
        .says("The weight on the scale is missing");
    world
        .refused("tray.weigh", json!({"tray": "x"}))
        .of("invalid", "gross_g");
}

#[test]
fn a_number_beyond_all_numbers_is_refused_at_its_field() {
    let world = World::new();
    let request = r#"{"herb": "sage", "part": "leaf", "surface": "dry", "gross_g": 1e999}"#;
    world
        .refused_text("harvest.record", request)
        .of("invalid", "gross_g")
        .says("too large");
}

#[test]
fn names_of_commands_are_noun_dot_verb_and_unique() {
    let names = api::names();
    for name in names {
        let (noun, verb) = name.split_once('.').unwrap();
        assert!(
            noun.chars()
                .chain(verb.chars())
                .all(|it| it.is_ascii_lowercase() || it == '_')
        );
        assert_eq!(
            names.iter().filter(|other| *other == name).count(),
            1,
            "{name}"
        );
    }
}
