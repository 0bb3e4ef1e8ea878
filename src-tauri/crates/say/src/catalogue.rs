//! The ids of the English catalogue with the names of their arguments.

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;
use std::sync::LazyLock;

use fluent_syntax::ast;
use fluent_syntax::parser;

use crate::places::places_of;

/// Ids with the names of their arguments.
pub(crate) type Entries = BTreeMap<String, BTreeSet<String>>;

/// Every entry of every file, read once for each crate that compiles.
///
/// # Errors
/// A sentence for the compiler where a file cannot be read.
pub(crate) fn english() -> Result<&'static Entries, &'static str> {
    static READ: LazyLock<Result<Entries, String>> = LazyLock::new(|| {
        let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../words/texts/en");
        let mut entries = Entries::new();
        let files = std::fs::read_dir(&folder).map_err(|why| format!("no catalogue: {why}"))?;
        for file in files {
            let path = file.map_err(|why| why.to_string())?.path();
            let text = std::fs::read_to_string(&path).map_err(|why| why.to_string())?;
            read(&text, &mut entries).map_err(|why| format!("{}: {why}", path.display()))?;
        }
        Ok(entries)
    });
    READ.as_ref().map_err(String::as_str)
}

fn read(text: &str, entries: &mut Entries) -> Result<(), String> {
    let resource = parser::parse(text).map_err(|(_, faults)| format!("no Fluent: {faults:?}"))?;
    for entry in resource.body {
        if let ast::Entry::Message(entry) = entry {
            let names = entry.value.as_ref().map(places_of).unwrap_or_default();
            entries.insert(entry.id.name.to_owned(), names);
        }
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn places_are_found_in_variants_and_functions_too() {
        let mut entries = Entries::new();
        let text = "days = { $count ->\n    [one] { $n } day\n   *[other] { CAPITAL($n) } days of { $herb }\n}\n";
        read(text, &mut entries).unwrap();
        assert_eq!(
            entries["days"],
            ["count", "herb", "n"].map(str::to_owned).into()
        );
        assert!(read("a = { $", &mut entries).is_err());
    }
}
