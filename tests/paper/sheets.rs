//! Where labels stand on paper.

use api::Language;
use paper::{Paper, Sheet, Size, sheet_pdf};

use crate::records::lemon_balm;
use crate::tools::{folder, pictures_of};

fn size(width: f64, height: f64) -> Size {
    Size::new(width, height).unwrap()
}

#[test]
fn every_place_lies_on_the_paper_and_none_on_another() {
    for paper in [Paper::A4, Paper::Letter] {
        let (width, height) = paper.size_mm();
        for (across, down) in [
            (63.5, 38.1),
            (70.0, 37.0),
            (25.0, 15.0),
            (99.0, 57.0),
            (190.0, 260.0),
        ] {
            let sheet = Sheet::new(paper, size(across, down));
            let grid = sheet.grid().unwrap();
            let corners: Vec<(f64, f64)> = (0..grid.per_sheet())
                .map(|place| grid.corner_mm(place))
                .collect();
            for (at, (left, top)) in corners.iter().enumerate() {
                assert!(
                    *left >= 5.0 - 1e-9 && left + across <= width - 5.0 + 1e-9,
                    "{paper:?} {across} x {down}: {left}"
                );
                assert!(
                    *top >= 5.0 - 1e-9 && top + down <= height - 5.0 + 1e-9,
                    "{paper:?} {across} x {down}: {top}"
                );
                for (other_left, other_top) in &corners[at + 1..] {
                    let apart = (other_left - left).abs() >= across + 2.0 - 1e-9
                        || (other_top - top).abs() >= down + 2.0 - 1e-9;
                    assert!(apart, "{paper:?} {across} x {down}");
                }
            }
        }
    }
}

#[test]
fn a_pre_cut_sheet_keeps_its_own_margins() {
    let sheet = Sheet {
        margin_mm: Some((7.25, 15.15)),
        gutter_mm: (2.5, 0.0),
        ..Sheet::new(Paper::A4, size(63.5, 38.1))
    };
    let grid = sheet.grid().unwrap();
    assert_eq!(
        (grid.columns, grid.rows),
        (3, 7),
        "three across and seven down"
    );
    assert_eq!(grid.corner_mm(0), (7.25, 15.15));
    let (left, top) = grid.corner_mm(20);
    assert!(
        (left - (7.25 + 2.0 * 66.0)).abs() < 1e-9 && (top - (15.15 + 6.0 * 38.1)).abs() < 1e-9,
        "{left} {top}"
    );
}

#[test]
fn used_places_stay_empty_and_the_rest_goes_on_to_the_next_sheet() {
    let sheet = Sheet {
        skip: 4,
        ..Sheet::new(Paper::A4, size(90.0, 80.0))
    };
    assert_eq!(sheet.grid().unwrap().per_sheet(), 6);
    let drawn = sheet_pdf(&vec![lemon_balm(); 9], &sheet).unwrap();
    let folder = folder("skip");
    let pages = pictures_of(&folder, "skip", &drawn.bytes);
    let counts: Vec<usize> = pages
        .iter()
        .map(|page| crate::tools::codes_in(page).len())
        .collect();
    assert_eq!(counts, [2, 6, 1], "two places were left on the first sheet");
}

#[test]
fn what_does_not_go_on_the_paper_is_refused_by_its_field() {
    let refused = |sheet: Sheet| sheet.grid().unwrap_err();
    assert_eq!(
        refused(Sheet::new(Paper::Letter, size(100.0, 275.0))).field,
        "label.height_mm"
    );
    let wide = Sheet {
        margin_mm: Some((30.0, 10.0)),
        ..Sheet::new(Paper::A4, size(180.0, 40.0))
    };
    assert_eq!(refused(wide).field, "label.width_mm");
    let skipped = refused(Sheet {
        skip: 6,
        ..Sheet::new(Paper::A4, size(90.0, 80.0))
    });
    assert_eq!(
        (
            skipped.field.as_ref(),
            Language::English.tell(&skipped.message)
        ),
        (
            "skip",
            "This sheet has 6 labels. Skip 0 to 5 of them.".to_owned()
        )
    );
    for (width, height) in [
        (24.9, 20.0),
        (200.1, 20.0),
        (50.0, 14.9),
        (50.0, f64::NAN),
        (f64::INFINITY, 20.0),
    ] {
        assert!(Size::new(width, height).is_err(), "{width} x {height}");
    }
}
