//! Reads the embedded tables: tab separated, one header line, `;` between the items of a list.

use serde::de::DeserializeOwned;

/// All rows of a table that ships inside the program.
///
/// A table that cannot be read is a defect of the build, and the first test that
/// touches it stops there.
pub(crate) fn rows<T: DeserializeOwned>(name: &str, text: &str) -> Vec<T> {
    csv::ReaderBuilder::new()
        .delimiter(b'\t')
        .from_reader(text.as_bytes())
        .deserialize()
        .collect::<Result<_, _>>()
        .unwrap_or_else(|error| panic!("the table {name} cannot be read: {error}"))
}

/// The items of a `;` list.
pub(crate) fn items(cell: &str) -> impl Iterator<Item = &str> {
    cell.split(';')
        .map(str::trim)
        .filter(|item| !item.is_empty())
}

/// Whether a `;` list names the item, `*` naming all.
pub(crate) fn names(cell: &str, item: &str) -> bool {
    cell == "*" || items(cell).any(|one| one == item)
}
