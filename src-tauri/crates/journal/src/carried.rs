//! What holds of every entry that comes from another file, as it holds of one that was typed.

use message::{Argument, Message, say};
use serde_json::Value;

use crate::{Act, Change, Deed, Kept, Noun, Refusal, Row, of_noun};

/// A day far before any clock, 0001-01-01, and the last that has four digits for its year.
const MILLISECONDS: std::ops::RangeInclusive<i64> = -62_135_596_800_000..=253_402_300_799_999;
/// Many times the longest line that the app writes.
const LONGEST_LINE: usize = 20_000;

impl Deed {
    /// Refuses a deed that no version could have written, as far as it shows by itself.
    ///
    /// # Errors
    /// [`Refusal`] naming what of it is at fault.
    pub fn check(&self) -> Result<(), Refusal> {
        if !MILLISECONDS.contains(&self.at.milliseconds) {
            return Err(Refusal::new("milliseconds", say!("refused-entry-time")));
        }
        let is_a_line = !self.text.trim().is_empty() && !self.text.contains('\n');
        if !is_a_line || self.text.chars().count() > LONGEST_LINE {
            return Err(Refusal::new(
                "text",
                say!("refused-entry-line", most = LONGEST_LINE),
            ));
        }
        // What it says is not looked at: a later version may know more than this one.
        let is_a_message = |json: &str| {
            json.len() <= LONGEST_LINE && serde_json::from_str::<crate::Fields>(json).is_ok()
        };
        if !self.message.as_deref().is_none_or(is_a_message) {
            let message = say!("refused-entry-message", most = LONGEST_LINE);
            return Err(Refusal::new("message", message));
        }
        if self.revokes == Some(self.id) {
            return Err(Refusal::new("revokes", say!("refused-entry-itself")));
        }
        if self.changes.is_empty() == self.revokes.is_none() {
            return Err(Refusal::new("changes", say!("refused-entry-empty")));
        }
        self.changes.iter().try_for_each(Change::check)
    }
}

impl Change {
    /// Refuses a change that no version could have written, as far as it shows by itself.
    ///
    /// # Errors
    /// [`Refusal`] naming what of it is at fault.
    pub fn check(&self) -> Result<(), Refusal> {
        self.noun.check_id(&self.row)?;
        if self.act == Act::Strike && !self.fields.is_empty() {
            return Err(Refusal::new("fields", say!("refused-entry-struck")));
        }
        Ok(())
    }
}

impl Noun {
    /// Refuses an id that names no row of this noun, or that is written in another way than the
    /// app writes it: two ways to write one id would be two rows.
    ///
    /// # Errors
    /// [`Refusal`] of the field `id`.
    pub fn check_id(self, id: &str) -> Result<(), Refusal> {
        let written = of_noun!(self, N => id.parse::<<N as Kept>::Id>()?.to_string());
        if written == id {
            return Ok(());
        }
        Err(Refusal::new("id", say!("refused-id-spelling")))
    }
}

/// Why a row cannot be read: what a rule of ours said of a value, else what the reader of JSON says.
pub(crate) fn unreadable(why: &serde_json::Error) -> Message {
    let text = why.to_string();
    let mut ours = None;
    message::carried::each(&text, |said| {
        ours = Some(Message::from(said));
        String::new()
    });
    ours.unwrap_or_else(|| say!("refused-row-unreadable", why = Argument::own(text)))
}

impl Row {
    /// Refuses a row whose fields do not make a sensible noun, whether it was struck or not. Of a row
    /// that was never recorded nothing can be said.
    ///
    /// # Errors
    /// [`Refusal`] naming the field and the accepted range.
    pub fn check(&self, noun: Noun) -> Result<(), Refusal> {
        if !self.is_recorded() {
            return Ok(());
        }
        of_noun!(noun, N => {
            let row: N = serde_json::from_value(Value::Object(self.fields().clone()))
                .map_err(|why| Refusal::new("fields", unreadable(&why)))?;
            row.check()
        })
    }
}

#[cfg(test)]
mod tests {
    use serde_json::json;
    use uuid::Uuid;

    use super::*;
    use crate::{DeedId, DeviceId, HybridTime};

    fn deed() -> Deed {
        let fields = json!({"name": "Terrace", "wild": false});
        Deed {
            id: DeedId(Uuid::from_u128(1)),
            at: HybridTime {
                milliseconds: 1_750_000_000_000,
                counter: 0,
            },
            device: DeviceId(Uuid::from_u128(2)),
            text: "Added the bed Terrace".into(),
            message: None,
            revokes: None,
            changes: vec![Change {
                noun: Noun::Bed,
                row: Uuid::from_u128(3).to_string(),
                act: Act::Record,
                fields: fields.as_object().cloned().unwrap_or_default(),
            }],
        }
    }

    fn refused(change: impl FnOnce(&mut Deed)) -> String {
        let mut deed = deed();
        change(&mut deed);
        deed.check().unwrap_err().field.into_owned()
    }

    #[test]
    fn an_entry_that_the_app_could_not_have_written_is_refused_by_its_field() {
        assert_eq!(deed().check(), Ok(()));
        assert_eq!(
            refused(|deed| deed.at.milliseconds = i64::MAX),
            "milliseconds"
        );
        assert_eq!(refused(|deed| deed.text = " ".into()), "text");
        assert_eq!(refused(|deed| deed.text = "a\nb".into()), "text");
        assert_eq!(refused(|deed| deed.text = "a".repeat(20_001)), "text");
        for message in ["", "7", "{\"id\"", "{} {}"] {
            let message = Some(message.to_owned());
            assert_eq!(refused(|deed| deed.message = message), "message");
        }
        let long = format!("{{\"id\":\"{}\"}}", "a".repeat(20_001));
        assert_eq!(refused(|deed| deed.message = Some(long)), "message");
        assert_eq!(refused(|deed| deed.revokes = Some(deed.id)), "revokes");
        assert_eq!(refused(|deed| deed.changes.clear()), "changes");
        assert_eq!(
            refused(|deed| deed.changes[0].row = "../../etc".into()),
            "id"
        );
        assert_eq!(refused(|deed| deed.changes[0].act = Act::Strike), "fields");
    }

    #[test]
    fn one_id_is_written_in_one_way() {
        let id = Uuid::from_u128(0xabc).to_string();
        assert_eq!(Noun::Bed.check_id(&id), Ok(()));
        for other in [id.to_uppercase(), id.replace('-', ""), format!("{{{id}}}")] {
            assert!(Noun::Bed.check_id(&other).is_err(), "{other}");
        }
        assert!(Noun::Photo.check_id("../../../etc/passwd").is_err());
    }

    #[test]
    fn a_row_is_looked_at_even_if_it_was_struck() {
        let mut row = Row::default();
        let fields = json!({"name": "Terrace", "wild": false, "area_m2": 1e300});
        let fields = fields.as_object().cloned().unwrap_or_default();
        row.apply(Act::Correct, &fields);
        assert_eq!(row.check(Noun::Bed), Ok(()), "it was never recorded");
        row.apply(Act::Record, &fields);
        row.apply(Act::Strike, &crate::Fields::new());
        assert_eq!(row.check(Noun::Bed).unwrap_err().field, "area_m2");
    }
}
