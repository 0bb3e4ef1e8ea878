//! Ways to use what is in a bottle, each with what to beware of; none of them says how much.

use std::sync::LazyLock;

use message::{Message, say};
use serde::{Deserialize, Serialize};

use crate::{
    note::{Status, source_of},
    preparations::{Preparation, Purpose},
    table,
};

#[derive(Debug, Deserialize)]
struct Row {
    preparations: String,
    holds: String,
    uses: String,
    says: String,
    /// The entry of what to beware of; empty where there is nothing beside the cautions of the bottle.
    care: String,
    source: String,
    status: Status,
}

static ROWS: LazyLock<Vec<Row>> = LazyLock::new(|| table::rows("serving.tsv"));

/// Less alcohol than this is a trace, % vol.
const SOME_ALCOHOL: f64 = 0.5;

/// One way to use it.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Way {
    /// What to do.
    pub text: Message,
    /// What to beware of.
    pub care: Option<Message>,
    /// Where it comes from.
    pub source: Option<String>,
    /// How sure it is.
    pub status: Status,
}

impl Way {
    /// What to do and what to beware of in one breath, for paper.
    pub fn said(self) -> Message {
        match self.care {
            Some(care) => say!("way-with-care", way = self.text, care),
            None => self.text,
        }
    }
}

/// What is served.
#[derive(Debug, Clone, Copy)]
pub struct Served<'a> {
    /// What it is.
    pub preparation: &'a Preparation,
    /// What it may be used for: what must not be swallowed has no way in the kitchen.
    pub uses: &'a [Purpose],
    /// Its strength, % vol.
    pub strength_percent_vol: f64,
}

/// The ways that fit, what must come first before all others.
pub fn ways(served: &Served<'_>) -> Vec<Way> {
    let fits = |row: &&Row| {
        let holds = row.holds == "*" || served.strength_percent_vol > SOME_ALCOHOL;
        let mut uses = served.uses.iter();
        holds
            && table::names(&row.preparations, &served.preparation.key)
            && uses.any(|purpose| table::names(&row.uses, purpose.word()))
    };
    let rows: Vec<&Row> = ROWS.iter().filter(fits).collect();
    // What holds of any bottle is no way of its own.
    if rows.iter().all(|row| row.preparations == "*") {
        return Vec::new();
    }
    let way = |row: &Row| Way {
        text: Message::of_table(row.says.clone()),
        care: Some(row.care.clone())
            .filter(|care| !care.is_empty())
            .map(Message::of_table),
        source: source_of(&row.source),
        status: row.status,
    };
    rows.into_iter().map(way).collect()
}

/// The entries of the catalogue that the rows name.
pub(crate) fn entries() -> impl Iterator<Item = String> {
    let named = ROWS.iter().flat_map(|row| [&row.says, &row.care]);
    named.filter(|entry| !entry.is_empty()).cloned()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::preparations;

    fn said(key: &str, uses: &[Purpose], strength_percent_vol: f64) -> Vec<String> {
        let mut all = preparations::all().iter();
        let ways = ways(&Served {
            preparation: all.find(|one| one.key == key).unwrap(),
            uses,
            strength_percent_vol,
        });
        ways.iter().map(|way| way.text.id().to_owned()).collect()
    }

    #[test]
    fn every_row_names_preparations_of_the_book_and_words_that_are_meant() {
        for row in ROWS.iter() {
            for key in table::items(&row.preparations).filter(|key| *key != "*") {
                assert!(
                    preparations::all().iter().any(|one| one.key == key),
                    "{key}"
                );
            }
            assert!(
                ["*", "ethanol"].contains(&row.holds.as_str()),
                "{}",
                row.holds
            );
            for word in table::items(&row.uses) {
                assert!(["inside", "food", "outside"].contains(&word), "{word}");
            }
            let has_source = !row.source.is_empty();
            let needs_source = matches!(row.status, Status::Confirmed | Status::PartlyConfirmed);
            assert_eq!(has_source, needs_source, "{}", row.says);
        }
    }

    #[test]
    fn a_hot_vinegar_begins_small_and_tells_of_skin_and_eyes() {
        let food = [Purpose::Food];
        assert_eq!(said("spiced-vinegar", &food, 0.0)[0], "way-hot-first");
        let mut all = preparations::all().iter();
        let preparation = all.find(|one| one.key == "spiced-vinegar").unwrap();
        let first = ways(&Served {
            preparation,
            uses: &food,
            strength_percent_vol: 0.0,
        })
        .remove(0);
        assert_eq!(first.care.unwrap().id(), "way-care-hot");
    }

    #[test]
    fn what_is_for_the_skin_has_no_way_into_the_kitchen() {
        for one in preparations::all() {
            assert!(
                said(&one.key, &[Purpose::Outside], 60.0).is_empty(),
                "{}",
                one.key
            );
        }
    }

    #[test]
    fn whatever_holds_alcohol_says_that_it_stays() {
        let inside = [Purpose::Inside];
        assert!(said("tincture-dried", &inside, 50.0).contains(&"way-alcohol-stays".to_owned()));
        assert!(!said("glycerite-dried", &inside, 0.2).contains(&"way-alcohol-stays".to_owned()));
        assert!(
            said("glycerite-fortified", &inside, 10.0).contains(&"way-alcohol-stays".to_owned())
        );
        // Where the table has no way, the alcohol alone makes none.
        assert!(said("decoction", &inside, 5.0).is_empty());
    }
}
