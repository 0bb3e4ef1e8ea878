//! Backups of every released format, as they were written then, plain and sealed, are restored.

use std::path::Path;

use serde_json::{Value, json};

use super::commands::{World, number};
use super::season::{done, everything};

/// The formats with the deeds and harvests that were in the journal of each.
const FORMATS: [(&str, usize, u64); 4] = [("v1", 17, 2), ("v2", 30, 2), ("v3", 2, 2), ("v4", 2, 2)];

#[test]
fn a_backup_of_every_released_format_is_restored_plain_and_sealed() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("backup/frozen");
    for (format, deeds, harvests) in FORMATS {
        let mut plain = None;
        for (ending, passphrase) in [("zip", Value::Null), ("zip.age", json!("nettle and balm"))] {
            let file = folder.join(format!("{format}.{ending}"));
            let request = json!({ "file": file, "passphrase": passphrase });
            let world = World::new();
            let look = done(&world, "restore.look", request.clone());
            assert_eq!(look["damaged"], json!([]), "{format}.{ending}: {look}");
            assert_eq!(
                number(&look, "/only_there"),
                deeds as f64,
                "{format}.{ending}"
            );
            done(&world, "restore.apply", request);
            let found = everything(&world);
            assert_eq!(found.deeds.len(), deeds, "{format}.{ending}");
            let listed = world.call("journal.about", json!({}));
            assert_eq!(listed["harvests"], harvests, "{format}.{ending}");
            let tables = plain.get_or_insert_with(|| found.tables.clone());
            assert_eq!(&found.tables, tables, "{format}: sealed it holds the same");
        }
    }
}
