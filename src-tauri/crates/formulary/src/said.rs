//! The entries of the catalogue (`words/texts/<language>/*.ftl`) that the tables name or imply by their keys.

use std::collections::BTreeSet;

use message::{Message, say};
use physics::mixture::IngredientKind;

use crate::{
    cautions, herbs,
    herbs::part,
    preparations::{self, PlantState, Purpose, Verdict},
    serving,
};

/// Every such entry; a test holds them to every language.
pub fn entries() -> BTreeSet<String> {
    let mut entries: BTreeSet<String> =
        herbs::all().iter().flat_map(herbs::Herb::entries).collect();
    entries.extend(part::PARTS.map(part::entry));
    entries.extend(preparations::ingredient_entries());
    for preparation in preparations::all() {
        entries.extend(preparation.entries());
    }
    entries.extend(preparations::step_entries());
    entries.extend(cautions::general_entries());
    entries.extend(serving::entries());
    entries
}

/// The places that an entry of a table may have; the steps of the work name the amounts of a jar.
pub fn may_have(entry: &str, place: &str) -> bool {
    entry.starts_with("step-") && preparations::STEP_PLACES.contains(&place)
}

/// Names that the core and the page both say: a group, and each key of it with its name.
pub type Group = (&'static str, Vec<(&'static str, Message)>);

/// Those names; a part as it stands inside a sentence, all others as titles.
pub fn shared() -> Vec<Group> {
    let title = |name: Message| say!("title", name = name);
    let states = [PlantState::Fresh, PlantState::Dried, PlantState::Cooked];
    let purposes = [Purpose::Inside, Purpose::Outside, Purpose::Food];
    let verdicts = [
        Verdict::Keeps,
        Verdict::KeepsCold,
        Verdict::UseNow,
        Verdict::DoNotMake,
    ];
    let kinds = IngredientKind::ALL.iter();
    vec![
        (
            "part",
            part::PARTS.map(|it| (it, part::part_name(it))).into(),
        ),
        (
            "state",
            states.map(|it| (it.word(), title(it.name()))).into(),
        ),
        (
            "purpose",
            purposes.map(|it| (it.word(), title(it.name()))).into(),
        ),
        (
            "verdict",
            verdicts.map(|it| (it.words(), title(it.name()))).into(),
        ),
        (
            "ingredient",
            kinds.map(|kind| (kind.key(), title(kind.name()))).collect(),
        ),
    ]
}
