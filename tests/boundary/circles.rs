//! Files of a crate lean on each other in no circle of more than two.

use std::collections::{BTreeMap, BTreeSet};

use super::{files, top};

/// What a file leans on, by the names of the files within the source of a crate.
type Leans = BTreeMap<String, BTreeSet<String>>;

/// The paths that the imports of a source name, each whole: `use crate::a::{b, c::D};` gives two.
fn imports(source: &str) -> Vec<String> {
    let mut found = Vec::new();
    let code: String = source
        .lines()
        .filter(|line| !line.trim_start().starts_with("//"))
        .fold(String::new(), |code, line| code + line + " ");
    for (at, _) in code.match_indices("use ") {
        let rest = code[at + 4..].trim_start();
        if let Some(tree) = rest
            .split(';')
            .next()
            .filter(|it| it.starts_with("crate::") || it.starts_with("super::"))
        {
            branches(tree, "", &mut found);
        }
    }
    found
}

fn branches(tree: &str, stem: &str, found: &mut Vec<String>) {
    let tree = tree.trim();
    let Some(open) = tree.find('{') else {
        let path = tree.split(" as ").next().unwrap_or_default().trim();
        if !path.is_empty() {
            found.push(format!("{stem}{}", path.trim_end_matches("::self")));
        }
        return;
    };
    let stem = format!("{stem}{}", &tree[..open]);
    let (mut depth, mut start) = (0_usize, open + 1);
    for (at, letter) in tree.char_indices() {
        match letter {
            '{' => depth += 1,
            ',' if depth == 1 => {
                branches(&tree[start..at], &stem, found);
                start = at + 1;
            }
            '}' => {
                if depth == 1 {
                    branches(&tree[start..at], &stem, found);
                }
                depth -= 1;
            }
            _ => {}
        }
    }
}

/// What every file of a crate leans on: the file of the longest beginning of each path that is one.
fn leans(sources: &BTreeMap<String, String>) -> Leans {
    let lean = |name: &String, source: &String| {
        let on = imports(source).into_iter().filter_map(|path| {
            let mut parts: Vec<&str> = match path.strip_prefix("crate::") {
                Some(path) => path.split("::").collect(),
                None => {
                    let mut above: Vec<&str> = name.split("::").collect();
                    let mut rest: Vec<&str> = path.split("::").collect();
                    while rest.first() == Some(&"super") {
                        above.pop();
                        rest.remove(0);
                    }
                    above.into_iter().chain(rest).collect()
                }
            };
            while !parts.is_empty() && !sources.contains_key(&parts.join("::")) {
                parts.pop();
            }
            let file = parts.join("::");
            (!file.is_empty() && file != *name).then_some(file)
        });
        (name.clone(), on.collect())
    };
    sources
        .iter()
        .map(|(name, source)| lean(name, source))
        .collect()
}

/// Everything that can be come to from a file.
fn reached(leans: &Leans, from: &str) -> BTreeSet<String> {
    let mut reached = BTreeSet::new();
    let mut ahead: Vec<&str> = vec![from];
    while let Some(file) = ahead.pop() {
        for on in leans.get(file).into_iter().flatten() {
            if reached.insert(on.clone()) {
                ahead.push(on);
            }
        }
    }
    reached
}

/// Circles of more than two files.
fn circles(leans: &Leans) -> BTreeSet<BTreeSet<String>> {
    let reach: BTreeMap<&String, BTreeSet<String>> = leans
        .keys()
        .map(|file| (file, reached(leans, file)))
        .collect();
    let round = |file: &String| -> BTreeSet<String> {
        let there = reach[file].iter();
        there
            .filter(|it| reach.get(it).is_some_and(|back| back.contains(file)))
            .cloned()
            .collect()
    };
    leans
        .keys()
        .map(round)
        .filter(|circle| circle.len() > 2)
        .collect()
}

/// The sources of a crate by the path of their module; what is only a test leans on whatever it tries.
fn sources(name: &str) -> BTreeMap<String, String> {
    let source = top().join("src-tauri/crates").join(name).join("src");
    let mut found = BTreeMap::new();
    for file in files(&source, &[".rs"]) {
        let path = file.strip_prefix(&source).unwrap().with_extension("");
        let parts: Vec<String> = path
            .iter()
            .map(|it| it.to_string_lossy().into_owned())
            .collect();
        let module = parts.join("::");
        let module = module.trim_end_matches("::mod").to_owned();
        if module == "lib" || module.ends_with("tests") {
            continue;
        }
        let text = std::fs::read_to_string(&file).unwrap();
        let code = text
            .split("#[cfg(test)]\nmod tests {")
            .next()
            .unwrap()
            .to_owned();
        found.insert(module, code);
    }
    found
}

#[test]
fn no_files_lean_on_each_other_in_a_circle() {
    for name in ["message", "reckon", "safe", "api"] {
        let sources = sources(name);
        assert!(sources.len() > 3, "the sources of {name} were not found");
        let circles = circles(&leans(&sources));
        assert!(circles.is_empty(), "{name}: {circles:#?}");
    }
}

#[test]
fn a_circle_of_three_is_found_and_one_of_two_is_let_be() {
    let of = |pairs: &[(&str, &str)]| {
        let made = pairs
            .iter()
            .map(|(name, text)| ((*name).to_owned(), (*text).to_owned()));
        circles(&leans(&made.collect()))
    };
    let two = [
        ("a", "use crate::b::{self, X as Y};"),
        ("b", "use crate::a::Z;"),
    ];
    assert!(of(&two).is_empty());
    let three = [
        ("a", "use std::fs;\nuse crate::{b::X, e};"),
        ("b", "use crate::b::c::Y;"),
        ("b::c", "use super::super::a;"),
        ("e", "// use crate::a;"),
    ];
    let found = of(&three);
    assert_eq!(found.len(), 1);
    let circle: Vec<&str> = found.iter().flatten().map(String::as_str).collect();
    assert_eq!(circle, ["a", "b", "b::c"]);
}
