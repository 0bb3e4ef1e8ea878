//! The code on the label is read by zbar from the printed page, its text by pdftotext.

use paper::{Kind, Label, Paper, Sheet, Size, link, sheet_pdf, single_pdf, single_svg};

use crate::records::{bitters, comfrey, full, lemon_balm, told};
use crate::tools::{codes_in, folder, pictures_of, text_of};

fn pantry() -> Vec<(Label, Size)> {
    let size = |width, height| Size::new(width, height).unwrap();
    vec![
        (lemon_balm(), size(70.0, 42.0)),
        (comfrey(), size(63.5, 46.6)),
        (full(Kind::Jar), size(70.0, 37.0)),
        (full(Kind::Bottle), size(80.0, 50.0)),
        (full(Kind::Gift), size(90.0, 60.0)),
        (bitters(), size(100.0, 70.0)),
        (lemon_balm(), size(50.0, 52.0)),
        (comfrey(), size(105.0, 74.0)),
    ]
}

fn named(label: &Label, size: Size) -> String {
    format!("{}-{:?}-{}", label.lot, label.kind, size.width_mm).to_lowercase()
}

#[test]
fn zbar_reads_lot_and_name_from_the_page_of_every_label() {
    let folder = folder("single");
    for (label, size) in pantry() {
        let drawn = single_pdf(&label, size).unwrap();
        let pages = pictures_of(&folder, &named(&label, size), &drawn.bytes);
        assert_eq!(pages.len(), 1, "a label is one page");
        assert_eq!(
            codes_in(&pages[0]),
            [link::of(&label.lot, &label.name)],
            "{}",
            label.name
        );
    }
}

#[test]
fn zbar_reads_every_label_of_a_sheet() {
    let folder = folder("sheet");
    let labels = vec![lemon_balm(); 5]
        .into_iter()
        .chain(vec![comfrey(); 4])
        .collect::<Vec<_>>();
    for (paper, name) in [(Paper::A4, "a4"), (Paper::Letter, "letter")] {
        let sheet = Sheet {
            skip: 2,
            ..Sheet::new(paper, Size::new(63.5, 46.6).unwrap())
        };
        let drawn = sheet_pdf(&labels, &sheet).unwrap();
        let pages = pictures_of(&folder, name, &drawn.bytes);
        assert_eq!(
            pages.len(),
            1,
            "nine labels and two used places stand on one sheet"
        );
        let mut expected: Vec<String> = labels
            .iter()
            .map(|label| link::of(&label.lot, &label.name))
            .collect();
        expected.sort();
        assert_eq!(codes_in(&pages[0]), expected);
    }
}

#[test]
fn pdftotext_reads_every_item_of_a_label() {
    let folder = folder("text");
    for (label, size) in pantry() {
        let drawn = single_pdf(&label, size).unwrap();
        assert_eq!(
            told(&drawn.remarks)
                .iter()
                .filter(|remark| remark.contains("no room"))
                .count(),
            0,
            "{:?}",
            drawn.remarks
        );
        let text = text_of(&folder, &named(&label, size), &drawn.bytes);
        let mut expected: Vec<String> = paper::items::of(&label)
            .iter()
            .flat_map(|item| item.text())
            .collect();
        expected.extend([label.name.clone(), label.lot.clone()]);
        for line in expected {
            let line = line.split_whitespace().collect::<Vec<_>>().join(" ");
            assert!(
                text.contains(&line),
                "`{line}` is not in the page of {}:\n{text}",
                label.name
            );
        }
    }
}

#[test]
fn the_svg_says_what_the_pdf_says() {
    let (label, size) = (lemon_balm(), Size::new(70.0, 42.0).unwrap());
    let svg = single_svg(&label, size).unwrap().bytes;
    std::fs::write(folder("svg").join("lemon-balm.svg"), &svg).unwrap();
    for words in [
        "Lemon balm glycerite",
        "Melissa officinalis",
        "tavo-472",
        "width=\"70mm\" height=\"42mm\"",
    ] {
        assert!(svg.contains(words), "`{words}` is not in the SVG");
    }
}

#[test]
fn the_same_label_gives_the_same_bytes() {
    let size = Size::new(70.0, 42.0).unwrap();
    assert_eq!(
        single_pdf(&lemon_balm(), size).unwrap(),
        single_pdf(&lemon_balm(), size).unwrap()
    );
    assert_eq!(
        single_svg(&lemon_balm(), size).unwrap(),
        single_svg(&lemon_balm(), size).unwrap()
    );
}
