//! Whether a journal is whole.

use journal::{Amount, Noun, Source};
use message::{Argument, Message, say};

use crate::name::{amount_of, name_of};
use crate::sql::quoted;
use crate::{Failure, Store, ledger, log, noun, project, search};

impl Store {
    /// Checks that the file is whole, that no lot has given more than came in (a
    /// bottle that is gone aside: its maker settled it), and that nothing needs a
    /// row that does not exist. One finished sentence
    /// for each fault; none when all is well.
    ///
    /// # Errors
    /// A failure to read.
    pub fn audit(&self) -> Result<Vec<Message>, Failure> {
        let mut faults = Vec::new();
        let mut check = self.conn.prepare("PRAGMA quick_check")?;
        let mut lines = check.query([])?;
        while let Some(line) = lines.next()? {
            let line: String = line.get(0)?;
            if line != "ok" {
                faults.push(say!("file-damaged", detail = Argument::own(line)));
            }
        }
        faults.extend(self.uneven()?);
        Ok(faults)
    }

    /// What does not add up: lots that have given more than came in, rows that need one that does
    /// not exist, rows that nobody may type now. One finished sentence for each.
    ///
    /// # Errors
    /// A failure to read.
    pub fn uneven(&self) -> Result<Vec<Message>, Failure> {
        // One reading for all of it: beginning one for each row takes longer than the row.
        let conn = &self.conn.unchecked_transaction()?;
        let mut faults = Vec::new();
        let mut keys = conn.prepare(
            "SELECT noun, id FROM lot UNION SELECT source_noun, source FROM draw ORDER BY 1, 2",
        )?;
        let mut lots = keys.query([])?;
        while let Some(row) = lots.next()? {
            let noun = log::noun(&row.get::<_, String>(0)?)?;
            let id: String = row.get(1)?;
            let Some(source) = Source::of(noun, &id) else {
                continue;
            };
            let counted = ledger::counted(conn, source)?;
            if ledger::noted(conn, source)? != counted {
                faults.push(say!("miscounted", name = name_of(conn, noun, &id)?));
            }
            if let Some(holding) = counted
                .filter(|holding| holding.left + source.allowance(holding.came_in) < Amount::ZERO)
                && !noun::is_ended_bottle(conn, noun, &id)?
            {
                faults.push(say!(
                    "gave-too-much",
                    name = name_of(conn, noun, &id)?,
                    amount = amount_of(source, Amount::ZERO - holding.left),
                ));
            }
        }
        for noun in Noun::ALL {
            noun::each_resting(conn, *noun, |id, needs, unlike_typed| {
                for (needed, row) in needs {
                    if !noun::is_present(conn, needed, &row)? {
                        faults.push(say!("needs-another", name = name_of(conn, *noun, id)?));
                    }
                }
                if let Some(why) = unlike_typed {
                    let name = name_of(conn, *noun, id)?;
                    faults.push(say!("name-and-why", name, why = why.message));
                }
                Ok(())
            })?;
        }
        Ok(faults)
    }

    /// Makes all tables anew from the log, which is never needed unless they
    /// are in doubt.
    ///
    /// # Errors
    /// A failure to read or write; the tables are then as before.
    pub fn rebuild(&mut self) -> Result<(), Failure> {
        let tx = self.conn.transaction()?;
        project::rebuild(&tx, None)?;
        search::follow(&tx)?;
        tx.commit()?;
        Ok(())
    }

    /// Every row of the tables made from the log as text, in order: two
    /// journals with the same log give the same lines.
    ///
    /// # Errors
    /// A failure to read.
    pub fn tables(&self) -> Result<Vec<String>, Failure> {
        search::follow(&self.conn)?;
        let mut lines = Vec::new();
        // By the number of its arrival, the list of revoked deeds differs from phone to phone.
        for table in noun::made().filter(|table| *table != "revoked") {
            // A page is numbered by its arrival too.
            let columns = if table == "page" {
                "noun, id, words, links, at_ms"
            } else {
                "*"
            };
            let mut statement = self
                .conn
                .prepare(&format!("SELECT {columns} FROM {}", quoted(table)))?;
            let columns = statement.column_count();
            let mut rows = statement.query([])?;
            while let Some(row) = rows.next()? {
                let mut line = table.to_owned();
                for column in 0..columns {
                    line.push_str(&format!(" | {:?}", row.get_ref(column)?));
                }
                lines.push(line);
            }
        }
        lines.sort_unstable();
        Ok(lines)
    }
}
