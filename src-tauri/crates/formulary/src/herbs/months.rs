//! When a herb is picked: the stage, and the months in the northern half of the world.

use std::sync::LazyLock;

use message::{Argument, Message, say};
use serde::Deserialize;

use super::{Herb, part};
use crate::{
    note::{Status, source_of},
    table,
};

/// What one calendar prints of when a part is picked, in the northern half of the world.
#[derive(Debug, Clone, PartialEq)]
pub struct Picking {
    /// The part as the herb's own list names it.
    pub part: &'static str,
    /// How far the plant is then.
    pub stage: Message,
    /// Spans of months from 1 to 12, by their first and last; one that ends before it begins runs over the new year. Empty
    /// where none was read.
    pub months: Vec<(u32, u32)>,
    /// Where they were read.
    pub source: Option<String>,
    /// How sure they are.
    pub status: Status,
}

/// When one part is picked.
#[derive(Debug, Deserialize)]
pub(super) struct Harvest {
    key: String,
    pub(super) part: String,
    /// The entry of the catalogue.
    stage: String,
    /// "6-8", or "9-10;3-4"; empty where no month was read.
    months: String,
    pub(super) source: String,
    pub(super) status: Status,
}

static MONTHS: LazyLock<Vec<Harvest>> = LazyLock::new(|| table::rows("harvest_months.tsv"));

impl Harvest {
    /// "In flower, June to August (northern half of the world)".
    pub(super) fn in_words(&self) -> Message {
        let stage = Argument::message(Message::of_table(self.stage.clone()));
        let spans: Vec<Argument> = self.spans().into_iter().map(span).collect();
        if spans.is_empty() {
            return Message::of_table(self.stage.clone());
        }
        say!("harvest-when", stage, months = Argument::all_of(spans))
    }

    /// The months from 1 to 12, each span by its first and last; one that ends before it begins runs over the new year.
    fn spans(&self) -> Vec<(u32, u32)> {
        let ends = |span: &str| {
            let (from, to) = span.split_once('-').unwrap_or((span, span));
            Some((from.trim().parse().ok()?, to.trim().parse().ok()?))
        };
        table::items(&self.months).filter_map(ends).collect()
    }
}

fn span((from, to): (u32, u32)) -> Argument {
    let month =
        |number: u32| Argument::message(say!("month", number = Argument::count(number.into())));
    if from == to {
        return month(from);
    }
    let span = say!("months", from = month(from), to = month(to));
    Argument::message(span)
}

impl Herb {
    /// What calendars print for its parts, one entry for each calendar; what holds of a part in general where none names the
    /// herb.
    pub fn picking(&'static self) -> Vec<Picking> {
        let printed = |(part, row): (&'static str, &'static Harvest)| Picking {
            part,
            stage: Message::of_table(row.stage.clone()),
            months: row.spans(),
            source: source_of(&row.source),
            status: row.status,
        };
        self.harvests().into_iter().map(printed).collect()
    }

    /// When each part is picked; where nothing was found for the herb, what holds of the part in general.
    pub(super) fn harvests(&self) -> Vec<(&str, &'static Harvest)> {
        let mut found = Vec::new();
        for part_name in self.parts() {
            let of = |key: &str, fits: &dyn Fn(&str) -> bool| -> Vec<&'static Harvest> {
                let rows = MONTHS.iter().filter(|row| row.key == key);
                rows.filter(|row| fits(&row.part)).collect()
            };
            let near = |named: &str| {
                named == part_name || part::class_of(named) == part::class_of(part_name)
            };
            let mut rows = of(&self.key, &|named| named == part_name);
            if rows.is_empty() {
                rows = of(&self.key, &near);
            }
            if rows.is_empty() {
                rows = of("*", &near);
            }
            found.extend(rows.into_iter().map(|row| (part_name, row)));
        }
        found
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::herbs::{all, find};

    #[test]
    fn every_row_is_of_a_herb_and_in_the_calendar() {
        assert_eq!(MONTHS.len(), 119);
        for row in MONTHS.iter() {
            assert!(row.key == "*" || find(&row.key).is_some_and(|herb| herb.key == row.key));
            for (from, to) in row.spans() {
                assert!(
                    (1..=12).contains(&from) && (1..=12).contains(&to),
                    "{}",
                    row.key
                );
            }
            let is_read = !row.source.is_empty() || row.status != Status::Confirmed;
            assert!(is_read, "{}", row.key);
        }
    }

    #[test]
    fn yarrow_is_picked_in_flower_from_june_to_august() {
        let yarrow = find("yarrow").unwrap();
        let (part, row) = yarrow.harvests()[0];
        assert_eq!((part, row.spans()), ("flowering tops", vec![(6, 8)]));
        assert_eq!(row.stage, "stage-in-flower");
    }

    #[test]
    fn a_root_without_months_is_dug_while_the_plant_rests() {
        let harvests = all().iter().flat_map(|herb| herb.harvests());
        let general = harvests.filter(|(_, row)| row.key == "*");
        assert!(general.clone().count() > 10);
        assert!(
            general
                .into_iter()
                .all(|(_, row)| row.status == Status::Confirmed)
        );
    }
}
