//! Lays one label out: what has to go where not all of it fits, and what the maker should know.

use message::{Argument, Message, Refusal, say};

use crate::face::unknown_letters;
use crate::fit::{Copy, largest};
use crate::items::{self, Item, Row};
use crate::link;
use crate::page::{Mark, inks};
use crate::qr;
use crate::record::Label;
use crate::size::{Size, mm};

/// What is read without effort in the hand (common practice, no source).
const EASY_PT: f64 = 7.0;

fn smallest_pt(marks: &[Mark]) -> f64 {
    let sizes = inks(marks).into_iter().filter_map(|mark| match mark {
        Mark::Text { size_pt, .. } => Some(*size_pt),
        _ => None,
    });
    sizes.fold(f64::INFINITY, f64::min)
}

/// A label as marks from its own top left corner, with what the maker should know.
pub(crate) struct Laid {
    pub(crate) marks: Vec<Mark>,
    pub(crate) remarks: Vec<Message>,
}

/// Lays a label out.
pub(crate) fn lay(label: &Label, size: Size) -> Result<Laid, Refusal> {
    if label.name.trim().is_empty() {
        return Err(Refusal::new("name", say!("label-needs-a-name")));
    }
    if label.lot.trim().is_empty() {
        return Err(Refusal::new("lot", say!("label-needs-a-lot")));
    }
    let of_its_lot = || link::of(&label.lot, &label.name);
    let code = qr::encode(&label.code.clone().unwrap_or_else(of_its_lot));
    let mut code = code.as_ref();
    let all = items::of(label);
    // A plant is drawn where all that is said keeps a type that is read without effort.
    if let (Some(herb), Some(_)) = (&label.drawn, code) {
        let eased = |copy: Copy<'_>| {
            let marks = largest(&copy, size);
            marks.filter(|marks| smallest_pt(marks) >= EASY_PT)
        };
        let with = |items: &[Item]| {
            let side = |is_beside| eased(Copy::of(label, items, code).with(herb, is_beside));
            side(false).or_else(|| side(true))
        };
        // The ways to use it come before the plant, and what must be said before both.
        let without_ways = || {
            let items: Vec<Item> = all
                .iter()
                .filter(|it| it.row() != Row::Ways)
                .cloned()
                .collect();
            match eased(Copy::of(label, &all, code)) {
                Some(_) => None,
                None => with(&items),
            }
        };
        if let Some(marks) = with(&all).or_else(without_ways) {
            let remarks = remarks(label, &all, size, &[]);
            return Ok(Laid { marks, remarks });
        }
    }
    let mut items = all.clone();
    let mut left_out: Vec<Row> = Vec::new();
    let marks = loop {
        if let Some(marks) = largest(&Copy::of(label, &items, code), size) {
            // The ways to use it have room only where they make nothing small that must be read.
            match items.iter().position(|item| item.row() == Row::Ways) {
                Some(at) if smallest_pt(&marks) < EASY_PT => {
                    items.remove(at);
                    continue;
                }
                _ => break marks,
            }
        }
        let next = items
            .iter()
            .enumerate()
            .filter_map(|(at, item)| item.may_go.map(|rank| (rank, at)))
            .min();
        match next {
            Some((rank, at)) if rank < items::AFTER_THE_CODE || code.is_none() => {
                let row = items.remove(at).row();
                // Nobody asked for the ways to use it: they are there where there is room.
                if row != Row::Ways {
                    left_out.push(row);
                }
            }
            // What the code opens is in the journal too; a poison line may be needed when no phone is at hand.
            _ if code.is_some() => {
                code = None;
                left_out.push(Row::Code);
            }
            _ => return Err(too_small(label, &items, size)),
        }
    };
    let remarks = remarks(label, &all, size, &left_out);
    Ok(Laid { marks, remarks })
}

fn remarks(label: &Label, items: &[Item], size: Size, left_out: &[Row]) -> Vec<Message> {
    let all = |rows: &[Row]| Argument::all_of(rows.iter().map(|it| Argument::message(it.said())));
    let lot = Argument::own(label.lot.as_str());
    let mut remarks = Vec::new();
    if !left_out.is_empty() {
        remarks.push(say!(
            "label-has-no-room",
            size = size.said(),
            what = all(left_out),
            lot = lot.clone()
        ));
    }
    let missing = items::missing(label.kind, items);
    if !missing.is_empty() {
        remarks.push(say!(
            "label-should-also-say",
            lot = lot.clone(),
            what = all(&missing)
        ));
    }
    let words = items.iter().flat_map(Item::text);
    let letters = unknown_letters(&words.chain([label.name.clone()]).collect::<String>());
    if !letters.is_empty() {
        remarks.push(say!(
            "label-lacks-letters",
            lot,
            letters = Argument::own(letters)
        ));
    }
    remarks
}

fn too_small(label: &Label, items: &[Item], size: Size) -> Refusal {
    let copy = Copy::of(label, items, None);
    // The heights beyond the asked one, in whole millimetres.
    let enough = (1..=Size::TALLEST_MM as u32)
        .map(f64::from)
        .filter(|height_mm| *height_mm > size.height_mm)
        .find(|height_mm| {
            largest(
                &copy,
                Size {
                    height_mm: *height_mm,
                    ..size
                },
            )
            .is_some()
        });
    let name = Argument::own(label.name.as_str());
    match enough {
        Some(height_mm) => Refusal::new(
            "label.height_mm",
            say!(
                "label-needs-height",
                name,
                size = size.said(),
                height = mm(height_mm)
            ),
        ),
        None => Refusal::new(
            "label.width_mm",
            say!("label-needs-width", name, width = mm(size.width_mm)),
        ),
    }
}
