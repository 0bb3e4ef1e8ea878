//! Names in SQL.

/// The name of a table or another object, quoted so that SQL reads it as a name whatever it holds.
pub(crate) fn quoted(name: &str) -> String {
    format!("\"{}\"", name.replace('"', "\"\""))
}

#[cfg(test)]
mod tests {
    use rusqlite::Connection;

    use super::quoted;

    #[test]
    fn a_name_stays_a_name_whatever_it_holds() {
        let conn = Connection::open_in_memory().unwrap();
        for name in ["use", "a\"; DROP TABLE kept; --", "\"", "it's"] {
            conn.execute_batch(&format!(
                "CREATE TABLE kept (x); CREATE TABLE {0} (x); DROP TABLE {0};",
                quoted(name)
            ))
            .unwrap();
            let left: i64 = conn
                .query_row("SELECT count(*) FROM sqlite_schema", [], |row| row.get(0))
                .unwrap();
            assert_eq!(left, 1, "{name}");
            conn.execute_batch("DROP TABLE kept").unwrap();
        }
    }
}
