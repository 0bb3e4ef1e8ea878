//! The sources that only a phone's kit compiles, parsed: Kotlin, and the property lists of iOS.

use std::fs;
use std::path::{Path, PathBuf};

use crate::process::root;

/// Fewer than that were not looked for where they are: an activity, two of the build's own, two build files.
const LEAST_KOTLIN: usize = 5;

/// Parses every Kotlin file of the Android project and every property list beside it.
///
/// # Errors
/// The files that do not parse, with the line, or that none were found.
pub fn run() -> Result<(), String> {
    let shell = root().join("src-tauri");
    let kotlin = found(&shell.join("gen/android"), &["kt", "kts"])?;
    if kotlin.len() < LEAST_KOTLIN {
        return Err(format!("Only {} Kotlin files were found.", kotlin.len()));
    }
    let mut parser = tree_sitter::Parser::new();
    parser
        .set_language(&tree_sitter_kotlin_ng::LANGUAGE.into())
        .map_err(|why| format!("Kotlin cannot be parsed: {why}."))?;
    for file in kotlin {
        let text = read(&file)?;
        let tree = parser
            .parse(&text, None)
            .ok_or("The parser of Kotlin stopped.")?;
        if let Some(line) = first_fault(tree.root_node()) {
            return Err(format!(
                "{}, line {line}: this is no Kotlin.",
                file.display()
            ));
        }
    }
    let lists = found(&shell, &["plist"])?;
    if lists.is_empty() {
        return Err("No property list was found.".to_owned());
    }
    for file in lists {
        plist::Value::from_file(&file).map_err(|why| format!("{}: {why}.", file.display()))?;
    }
    Ok(())
}

/// The line of the first place that the grammar does not take, from 1.
fn first_fault(node: tree_sitter::Node<'_>) -> Option<usize> {
    if node.is_error() || node.is_missing() {
        return Some(node.start_position().row + 1);
    }
    let mut cursor = node.walk();
    node.children(&mut cursor).find_map(first_fault)
}

fn read(file: &Path) -> Result<String, String> {
    fs::read_to_string(file).map_err(|why| format!("{}: {why}.", file.display()))
}

/// The files with these endings in a folder, but for what a build left there.
fn found(folder: &Path, endings: &[&str]) -> Result<Vec<PathBuf>, String> {
    let entries = fs::read_dir(folder).map_err(|why| format!("{}: {why}.", folder.display()))?;
    let mut files = Vec::new();
    for entry in entries {
        let path = entry.map_err(|why| why.to_string())?.path();
        let is_built =
            path.ends_with("build") || path.ends_with("target") || path.ends_with("crates");
        if path.is_dir() && !is_built {
            files.extend(found(&path, endings)?);
        } else if path
            .extension()
            .is_some_and(|ending| endings.iter().any(|one| ending == *one))
        {
            files.push(path);
        }
    }
    files.sort();
    Ok(files)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn fault_in(text: &str) -> Option<usize> {
        let mut parser = tree_sitter::Parser::new();
        parser
            .set_language(&tree_sitter_kotlin_ng::LANGUAGE.into())
            .unwrap();
        first_fault(parser.parse(text, None).unwrap().root_node())
    }

    #[test]
    fn a_bracket_too_few_is_found() {
        assert_eq!(fault_in("class A {\n  fun b() { c() }\n}\n"), None);
        assert!(fault_in("class A {\n  fun b() { c( }\n}\n").is_some());
    }

    #[test]
    fn what_the_project_holds_parses() {
        run().unwrap();
    }
}
