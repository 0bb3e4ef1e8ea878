//! The season's book and the trace sheet as a reader finds them.

use label::{Paper, book, trace};

use crate::records;
use crate::tools::{folder, pictures_of, text_of};

fn photo(name: &str) -> Option<Vec<u8>> {
    std::fs::read(format!(
        "{}/../demo-data/pictures/{name}.jpg",
        env!("CARGO_MANIFEST_DIR")
    ))
    .ok()
}

#[test]
fn the_book_holds_months_yields_and_jars_with_page_numbers() {
    let folder = folder("book");
    let drawn = book::pdf(&records::book("lavender"), Paper::A4, &mut |key| photo(key));
    assert_eq!(drawn.remarks, Vec::<String>::new());
    let pages = pictures_of(&folder, "book", &drawn.bytes);
    assert_eq!(pages.len(), 5, "title, two months, yields, jars");
    let text = text_of(&folder, "book", &drawn.bytes);
    println!("{text}");
}

#[test]
fn a_trace_sheet_tells_the_chain_in_order() {
    let folder = folder("trace");
    let drawn = trace::pdf(&records::trace("lemon-balm"), Paper::Letter, &mut |key| {
        photo(key)
    });
    pictures_of(&folder, "trace", &drawn.bytes);
    let text = text_of(&folder, "trace", &drawn.bytes);
    println!("{text}");
}
