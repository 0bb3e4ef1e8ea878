//! A command `noun.verb` stands in the file or the folder of its noun.

use super::{files, top};

/// Every `const NAME` of a source.
fn names(source: &str) -> impl Iterator<Item = &str> {
    let opening = "const NAME: &'static str = \"";
    let rests = source.split(opening).skip(1);
    rests.filter_map(|rest| rest.split('"').next())
}

/// Whether `noun.verb` may stand in `file`, a path within the source of `api`.
fn is_at_home(name: &str, file: &str) -> bool {
    let noun = name.split('.').next().unwrap();
    // Which of two journals is open is chosen at the door.
    let home = if noun == "demo" { "door" } else { noun };
    file == format!("{home}.rs") || file.starts_with(&format!("{home}/"))
}

#[test]
fn a_command_stands_with_its_noun() {
    let source = top().join("src-tauri/crates/api/src");
    let mut seen = 0;
    for file in files(&source, &[".rs"]) {
        let text = std::fs::read_to_string(&file).unwrap();
        let place = file.strip_prefix(&source).unwrap().to_string_lossy();
        for name in names(&text) {
            assert!(is_at_home(name, &place), "{name} must not stand in {place}");
            seen += 1;
        }
    }
    assert_eq!(seen, api::names().len(), "a command was not found");
}

#[test]
fn a_command_in_the_folder_of_another_noun_is_seen() {
    let source = "const NAME: &'static str = \"jar.pour\";";
    assert_eq!(names(source).collect::<Vec<_>>(), ["jar.pour"]);
    assert!(is_at_home("jar.pour", "jar.rs") && is_at_home("jar.pour", "jar/pour.rs"));
    assert!(!is_at_home("jar.pour", "bottle/pour.rs") && !is_at_home("jar.pour", "jars.rs"));
    assert!(is_at_home("demo.begin", "door.rs") && !is_at_home("demo.begin", "demo.rs"));
}
