//! Writing a deed.

use std::ops::Deref;

use chrono::{DateTime, FixedOffset};
use journal::{Act, Change, Deed, DeedId, Fields, Line, Noun, RowRef};
use rusqlite::{Connection, TransactionBehavior};
use serde_json::Value;

use crate::noun::Table;
use crate::project::{Touched, project};
use crate::settle::{Occasion, settle};
use crate::{Failure, Reading, Store, log, seal, search};

/// What a deed did.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Done {
    /// The deed, by which it can be undone.
    pub deed: DeedId,
    /// The nouns of which some row reads differently now. What was discarded is
    /// told as a change of what it was discarded from.
    pub changed: Vec<Noun>,
}

impl Done {
    pub(crate) fn of(deed: DeedId, touched: &Touched) -> Self {
        let mut changed: Vec<Noun> = touched.nouns().collect();
        changed.sort_unstable();
        changed.dedup();
        Self { deed, changed }
    }
}

/// A deed in the making. Reads through it see what it has written so far.
pub struct Writing<'c> {
    reading: Reading<'c>,
    changes: Vec<Change>,
    touched: Touched,
}

impl<'c> Deref for Writing<'c> {
    type Target = Reading<'c>;

    fn deref(&self) -> &Reading<'c> {
        &self.reading
    }
}

impl Writing<'_> {
    /// Makes a row exist, with all its fields.
    ///
    /// # Errors
    /// [`Failure::Refused`] when the noun does not make sense.
    pub fn record<N: Table>(&mut self, id: &N::Id, noun: &N) -> Result<(), Failure> {
        noun.check()?;
        noun.check_typed()?;
        self.set(Act::Record, id, noun)
    }

    /// Supersedes the fields in which `noun` differs from the row; nothing is
    /// written when none does.
    ///
    /// # Errors
    /// [`Failure::Refused`] when the noun does not make sense,
    /// [`Failure::NotFound`] when the row does not exist.
    pub fn correct<N: Table>(&mut self, id: &N::Id, noun: &N) -> Result<(), Failure> {
        // What stood there before a rule came is no fault of this correction.
        let stood = self.reading.get::<N>(id)?.check_typed().err();
        noun.check()?;
        match noun.check_typed() {
            Err(refusal) if stood.as_ref() != Some(&refusal) => Err(refusal.into()),
            _ => self.set(Act::Correct, id, noun),
        }
    }

    /// Takes a row away.
    ///
    /// # Errors
    /// [`Failure::NotFound`] when the row does not exist.
    pub fn strike<N: Table>(&mut self, id: &N::Id) -> Result<(), Failure> {
        self.reading.get::<N>(id)?;
        self.push(Change {
            noun: N::NOUN,
            row: id.to_string(),
            act: Act::Strike,
            fields: Fields::new(),
        })
    }

    fn set<N: Table>(&mut self, act: Act, id: &N::Id, noun: &N) -> Result<(), Failure> {
        let row = id.to_string();
        let present = self.folded(&(N::NOUN, row.clone()))?;
        let Value::Object(mut fields) = serde_json::to_value(noun)? else {
            return Err(Failure::Storage("a noun is not a set of fields".into()));
        };
        fields.retain(|name, value| match (act, present.fields().get(name)) {
            (_, None) => !value.is_null(),
            (Act::Record, Some(_)) => true,
            (_, Some(before)) => before != value,
        });
        if act == Act::Correct && fields.is_empty() {
            return Ok(());
        }
        self.push(Change {
            noun: N::NOUN,
            row,
            act,
            fields,
        })
    }

    fn folded(&self, row: &RowRef) -> Result<journal::Row, Failure> {
        let mut folded = log::folded(self.reading.conn, row.0, &row.1)?;
        for change in self
            .changes
            .iter()
            .filter(|change| (change.noun, &change.row) == (row.0, &row.1))
        {
            folded.apply(change.act, &change.fields);
        }
        Ok(folded)
    }

    fn push(&mut self, change: Change) -> Result<(), Failure> {
        let row = (change.noun, change.row.clone());
        self.changes.push(change);
        let folded = self.folded(&row)?;
        project(self.reading.conn, row.0, &row.1, &folded, &mut self.touched)
    }
}

impl Store {
    /// Writes one deed, all or nothing: what `body` records, corrects and
    /// strikes, under the one line that `body` returns with its value.
    ///
    /// # Errors
    /// What `body` fails with; [`Failure::NotEnough`] when a lot does not hold
    /// what is drawn from it; [`Failure::RestedOn`] when something rests on a
    /// struck row; [`Failure::NotFound`] when something needs a row that does
    /// not exist; [`Failure::Unchanged`] when nothing was written.
    pub fn perform<T, E: From<Failure>>(
        &mut self,
        deed: DeedId,
        now: DateTime<FixedOffset>,
        body: impl FnOnce(&mut Writing<'_>) -> Result<(Line, T), E>,
    ) -> Result<(Done, T), E> {
        let device = self.device;
        let tx = self
            .conn
            .transaction_with_behavior(TransactionBehavior::Immediate)
            .map_err(Failure::from)?;
        let mut writing = Writing {
            reading: Reading { conn: &tx, device },
            changes: Vec::new(),
            touched: Touched::default(),
        };
        let (line, value) = body(&mut writing)?;
        let Writing {
            changes, touched, ..
        } = writing;
        if changes.is_empty() {
            return Err(Failure::Unchanged.into());
        }
        settle(&tx, &touched, &Occasion::Performed)?;
        let at = log::next_time(&tx, now, &changes, None)?;
        let number = append(
            &tx,
            &Deed {
                id: deed,
                at,
                device,
                text: line.text,
                message: line.message,
                revokes: None,
                changes,
            },
        )?;
        search::after(&tx, number)?;
        tx.commit().map_err(Failure::from)?;
        Ok((Done::of(deed, &touched), value))
    }
}

fn append(conn: &Connection, deed: &Deed) -> Result<i64, Failure> {
    if deed.text.trim().is_empty() || deed.text.contains('\n') {
        return Err(Failure::Storage(
            "a deed needs one line that tells what was done".into(),
        ));
    }
    seal::count(conn, &deed.device.to_string())?;
    log::append(conn, deed)
}
