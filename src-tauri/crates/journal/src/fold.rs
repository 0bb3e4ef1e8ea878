//! From the log to the state of each row.

use std::collections::{BTreeMap, BTreeSet};

use serde_json::Value;

use crate::{Act, Deed, DeedId, Fields, Kept, Noun, Refusal};

/// The state of one row: every field as its last writer left it.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct Row {
    recorded: bool,
    struck: bool,
    fields: Fields,
}

impl Row {
    /// Lets the next change in order act on the row.
    pub fn apply(&mut self, act: Act, fields: &Fields) {
        match act {
            Act::Record => (self.recorded, self.struck) = (true, false),
            Act::Strike => self.struck = true,
            Act::Correct => {}
        }
        for (name, value) in fields {
            if value.is_null() {
                self.fields.remove(name);
            } else {
                self.fields.insert(name.clone(), value.clone());
            }
        }
    }

    /// Whether the row exists.
    pub fn is_present(&self) -> bool {
        self.recorded && !self.struck
    }

    /// Whether it was ever recorded by the changes that acted on it.
    pub(crate) fn is_recorded(&self) -> bool {
        self.recorded
    }

    /// Whether corrections are left of a row whose recording was taken back.
    pub fn is_orphan(&self) -> bool {
        !self.recorded && !self.fields.is_empty()
    }

    /// The fields as they stand.
    pub fn fields(&self) -> &Fields {
        &self.fields
    }

    /// The noun that the row holds; `None` if the row does not exist.
    ///
    /// # Errors
    /// [`Refusal`] when the fields do not make a sensible one.
    pub fn read<N: Kept>(&self) -> Result<Option<N>, Refusal> {
        if !self.is_present() {
            return Ok(None);
        }
        let noun: N = serde_json::from_value(Value::Object(self.fields.clone()))
            .map_err(|why| Refusal::new("id", crate::carried::unreadable(&why)))?;
        Ok(Some(noun))
    }
}

/// The deeds that do not count: a deed is revoked if a later deed that itself
/// counts revokes it. Undoing an undo thereby brings back what was undone.
///
/// A deed that claims to revoke a later one revokes nothing, so there is no
/// circle, whatever a log contains.
pub fn revoked<'a>(deeds: impl IntoIterator<Item = &'a Deed>) -> BTreeSet<DeedId> {
    let by_id: BTreeMap<DeedId, &Deed> = deeds.into_iter().map(|deed| (deed.id, deed)).collect();
    let mut latest_first: Vec<&Deed> = by_id.values().copied().collect();
    latest_first.sort_unstable_by_key(|deed| std::cmp::Reverse(deed.order()));
    let mut revoked = BTreeSet::new();
    for deed in latest_first {
        if let Some(target) = deed.revokes
            && !revoked.contains(&deed.id)
            && by_id
                .get(&target)
                .is_some_and(|target| target.order() < deed.order())
        {
            revoked.insert(target);
        }
    }
    revoked
}

/// The state of every row that a set of deeds speaks of. The order in which the
/// deeds come, and how often each comes, makes no difference: this is what lets
/// two phones be merged by uniting their logs.
pub fn fold<'a>(deeds: impl IntoIterator<Item = &'a Deed>) -> BTreeMap<(Noun, String), Row> {
    let by_id: BTreeMap<DeedId, &Deed> = deeds.into_iter().map(|deed| (deed.id, deed)).collect();
    let revoked = revoked(by_id.values().copied());
    let mut in_order: Vec<&Deed> = by_id
        .values()
        .copied()
        .filter(|deed| !revoked.contains(&deed.id))
        .collect();
    in_order.sort_unstable_by_key(|deed| deed.order());
    let mut rows: BTreeMap<(Noun, String), Row> = BTreeMap::new();
    for change in in_order.iter().flat_map(|deed| &deed.changes) {
        rows.entry((change.noun, change.row.clone()))
            .or_default()
            .apply(change.act, &change.fields);
    }
    rows
}

#[cfg(test)]
mod tests {
    use serde_json::json;

    use super::*;
    use crate::Bed;

    fn row(acts: &[(Act, Value)]) -> Row {
        let mut row = Row::default();
        for (act, fields) in acts {
            row.apply(*act, fields.as_object().unwrap());
        }
        row
    }

    #[test]
    fn the_last_writer_of_a_field_has_it_and_null_empties_it() {
        let row = row(&[
            (
                Act::Record,
                json!({ "name": "Terrace", "wild": false, "area_m2": 4.5 }),
            ),
            (Act::Correct, json!({ "name": "Upper terrace" })),
            (Act::Correct, json!({ "area_m2": null })),
        ]);
        let bed = Bed {
            name: "Upper terrace".into(),
            wild: false,
            area_m2: None,
            note: None,
        };
        assert_eq!(row.read::<Bed>().unwrap(), Some(bed));
    }

    #[test]
    fn a_struck_row_is_gone_until_it_is_recorded_again() {
        let bed = json!({ "name": "Terrace", "wild": false });
        let mut acts = vec![(Act::Record, bed.clone()), (Act::Strike, json!({}))];
        assert_eq!(row(&acts).read::<Bed>().unwrap(), None);
        acts.push((Act::Correct, json!({ "wild": true })));
        assert_eq!(
            row(&acts).read::<Bed>().unwrap(),
            None,
            "a correction does not bring it back"
        );
        acts.push((Act::Record, bed));
        assert!(row(&acts).is_present());
    }

    #[test]
    fn corrections_without_their_recording_are_no_row() {
        let row = row(&[(Act::Correct, json!({ "name": "Terrace", "wild": true }))]);
        assert!(row.is_orphan());
        assert_eq!(row.read::<Bed>().unwrap(), None);
    }
}
