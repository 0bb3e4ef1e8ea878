//! Reads the embedded tables: tab separated, one header line, `;` between the items of a list.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use serde::de::DeserializeOwned;

/// Every table by its name, as `build.rs` packed them.
static TABLES: LazyLock<BTreeMap<String, String>> = LazyLock::new(|| {
    let packed = include_bytes!(concat!(env!("OUT_DIR"), "/tables.deflate"));
    let json = miniz_oxide::inflate::decompress_to_vec(packed)
        .unwrap_or_else(|error| panic!("the tables cannot be unpacked: {error}"));
    serde_json::from_slice(&json)
        .unwrap_or_else(|error| panic!("the tables cannot be read: {error}"))
});

/// The text of a table that ships inside the program.
pub(crate) fn text(name: &str) -> &'static str {
    let text = TABLES.get(name);
    text.unwrap_or_else(|| panic!("there is no table {name}"))
}

/// All rows of a table that ships inside the program.
///
/// A table that cannot be read is a defect of the build, and the first test that
/// touches it stops there.
pub(crate) fn rows<T: DeserializeOwned>(name: &str) -> Vec<T> {
    csv::ReaderBuilder::new()
        .delimiter(b'\t')
        .from_reader(text(name).as_bytes())
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
