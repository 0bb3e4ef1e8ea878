//! The committed TypeScript is what the core's types say today.

#[test]
fn the_committed_bindings_are_current() {
    let committed = std::fs::read_to_string(super::top().join("ui/src/api/bindings.ts")).unwrap();
    assert!(
        committed == api::bindings(),
        "ui/src/api/bindings.ts is not current; run `cargo dev bindings`"
    );
}

#[test]
fn every_command_is_in_the_bindings_once() {
    let text = api::bindings();
    for name in api::names() {
        let lines = text
            .lines()
            .filter(|line| line.trim_start().starts_with(&format!("{name:?}:")));
        assert_eq!(lines.count(), 1, "{name}");
    }
    assert!(
        api::names().len() > 30,
        "the list of commands has lost some"
    );
}
