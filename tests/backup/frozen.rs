//! Backups of every released format, as they were written then, plain and sealed, are restored.

use std::path::Path;

use serde_json::{Value, json};

use super::commands::{World, number};
use super::season::{done, everything};

/// The formats with the deeds, the harvests and the photos of jars that were in the journal of each.
const FORMATS: [(&str, usize, u64, usize); 6] = [
    ("v1", 17, 2, 0),
    ("v2", 30, 2, 0),
    ("v3", 2, 2, 0),
    ("v4", 2, 2, 0),
    ("v5", 2, 2, 0),
    ("v6", 9, 2, 1),
];

/// How many photos stand in the place of a jar's drawing, with their bytes.
fn faces(world: &World) -> usize {
    let jars = world.call("jar.list", json!({"limit": 50}))["jars"].clone();
    let faces = jars.as_array().unwrap().iter().map(|jar| {
        let page = world.call("jar.show", json!({"id": jar["id"]}));
        let portraits = page["jar"]["portraits"].as_array().unwrap().clone();
        let is_whole = |it: &&Value| {
            let original = world.app().original(it["hash"].as_str().unwrap());
            it["shown"] == true && original.unwrap().is_some()
        };
        portraits.iter().filter(is_whole).count()
    });
    faces.sum()
}

#[test]
fn a_backup_of_every_released_format_is_restored_plain_and_sealed() {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("backup/frozen");
    for (format, deeds, harvests, photos) in FORMATS {
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
            assert_eq!(faces(&world), photos, "{format}.{ending}");
            let tables = plain.get_or_insert_with(|| found.tables.clone());
            assert_eq!(&found.tables, tables, "{format}: sealed it holds the same");
        }
    }
}
