//! The arrows of the page: screens -> parts -> state -> api -> host, and what only one folder may touch.

use std::collections::BTreeSet;
use std::path::Path;

use super::{files, top};

/// What a folder of `ui/src` may import from; a folder may always import from itself.
const ARROWS: [(&str, &[&str]); 8] = [
    // The host keeps which language was chosen, and a bundler orders modules only by what they import.
    ("words", &["host"]),
    ("styles", &[]),
    ("host", &["words"]),
    ("api", &["host", "words"]),
    ("format", &["api", "words"]),
    ("state", &["api", "host", "format", "words"]),
    ("parts", &["state", "api", "format", "words"]),
    ("screens", &["parts", "state", "api", "format", "words"]),
];

/// The folder of `ui/src` that an import of `file` leads to, if it stays in `ui/src`.
fn imported(file: &Path, source: &Path, target: &str) -> Option<String> {
    let path = match target.strip_prefix("$") {
        Some(aliased) => source.join(aliased.trim_start_matches("lib/")),
        None if target.starts_with('.') => file.parent()?.join(target),
        None => return None,
    };
    let mut parts = Vec::new();
    for part in path.strip_prefix(source).ok()?.components() {
        match part {
            std::path::Component::ParentDir => drop(parts.pop()),
            std::path::Component::Normal(name) => parts.push(name.to_string_lossy().into_owned()),
            _ => {}
        }
    }
    // A file beside the folders, such as the page's first component, is in none of them.
    let first = parts.into_iter().next()?;
    source.join(&first).is_dir().then_some(first)
}

/// Every text in quotes after `from` or in `import(...)`.
fn imports(text: &str) -> Vec<&str> {
    let mut found = Vec::new();
    for opening in [
        "from '",
        "from \"",
        "import '",
        "import \"",
        "import('",
        "import(\"",
    ] {
        let quote = if opening.ends_with('\'') { '\'' } else { '"' };
        found.extend(
            text.split(opening)
                .skip(1)
                .filter_map(|rest| rest.split(quote).next()),
        );
    }
    found
}

#[test]
fn folders_of_the_page_import_only_to_their_right() {
    let source = top().join("ui/src");
    let mut seen = BTreeSet::new();
    for (folder, allowed) in ARROWS {
        for file in files(&source.join(folder), &[".ts", ".svelte", ".js"]) {
            let text = std::fs::read_to_string(&file).unwrap();
            for target in imports(&text) {
                if let Some(to) = imported(&file, &source, target) {
                    seen.insert((folder, to.clone()));
                    assert!(
                        to == folder || allowed.contains(&to.as_str()),
                        "{} in {folder} must not import {target}",
                        file.display()
                    );
                }
            }
        }
    }
    assert!(
        seen.contains(&("screens", "state".to_owned()))
            && seen.contains(&("api", "host".to_owned())),
        "the page's imports were not found, so nothing was checked: {seen:?}"
    );
}

#[test]
fn only_the_host_folder_knows_how_the_core_is_reached() {
    for file in files(&top().join("ui/src"), &[".ts", ".svelte"]) {
        if file.components().any(|part| part.as_os_str() == "host") {
            continue;
        }
        let text = std::fs::read_to_string(&file).unwrap();
        for door in [
            "@tauri-apps",
            "window.fetch",
            "globalThis.fetch",
            "XMLHttpRequest",
            "localStorage",
            "indexedDB",
        ] {
            assert!(!text.contains(door), "{} names {door}", file.display());
        }
        // A method of that name is called on something or declared; the browser's own stands alone.
        let asks = text.match_indices("fetch(").any(|(at, _)| {
            let before = text[..at].trim_end();
            let is_part_of_a_name =
                text[..at].ends_with(|it: char| it.is_alphanumeric() || it == '_');
            !is_part_of_a_name && !before.ends_with('.') && !before.ends_with("async")
        });
        assert!(!asks, "{} asks the network itself", file.display());
    }
}
