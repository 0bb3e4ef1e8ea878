//! `import.*`: harvests out of a table.

use std::collections::BTreeMap;

use journal::{Bed, BedId, HarvestId};
use message::{Argument, Code, Failure, say};
use safe::import::line::ImportLook;
use safe::import::understood;
use serde::{Deserialize, Serialize};

use crate::changed::Changed;
use crate::open::Open;
use crate::request::Command;

/// What would this table bring?
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct LookAtImport {
    pub file: String,
}

/// Records every harvest of this table as one deed.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ApplyImport {
    pub file: String,
}

/// The harvests were recorded.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct ImportDone {
    #[serde(flatten)]
    pub done: Changed,
    pub recorded: u64,
    pub known: u64,
}

impl Command for LookAtImport {
    const NAME: &'static str = "import.look";
    type Reply = ImportLook;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        Ok(understood(&app.keep, &self.file, app.now())?.look)
    }
}

impl Command for ApplyImport {
    const NAME: &'static str = "import.apply";
    type Reply = ImportDone;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let table = understood(&app.keep, &self.file, app.now())?;
        if let Some(fault) = table.look.faults.first() {
            let why = fault.message.clone();
            let line = Argument::figure(fault.line.to_string());
            let message = match fault.column.as_str() {
                // The fault is that of the whole line.
                "" => say!("import-line-wrong", line, why),
                column => say!(
                    "import-cell-wrong",
                    line,
                    column = Argument::own(column),
                    why
                ),
            };
            return Err(Failure::invalid("file", message));
        }
        let recorded = table.lines.len() as u64;
        if recorded == 0 {
            return Err(Failure::new(Code::Invalid, say!("import-all-known")));
        }
        let (done, ()) = app.perform(|writing| {
            let mut beds: BTreeMap<String, BedId> = BTreeMap::new();
            for line in table.lines {
                let id = line.id.unwrap_or_else(|| HarvestId(app.new_id()));
                let mut harvest = line.harvest;
                if let Some(name) = line.bed {
                    let key = name.to_lowercase();
                    let bed = match (beds.get(&key), writing.bed_named(&name)?) {
                        (Some(bed), _) => *bed,
                        (None, Some((bed, _))) => bed,
                        (None, None) => {
                            let bed = BedId(app.new_id());
                            let row = Bed {
                                name,
                                wild: false,
                                area_m2: None,
                                note: None,
                            };
                            writing.record(&bed, &row)?;
                            bed
                        }
                    };
                    beds.insert(key, bed);
                    harvest.bed = Some(bed);
                }
                if writing.coded(&harvest.code)?.is_some() {
                    harvest.code = writing.free_code(id.0)?;
                }
                writing.record(&id, &harvest)?;
            }
            Ok((say!("deed-harvests-imported", count = recorded), ()))
        })?;
        Ok(ImportDone {
            done,
            recorded,
            known: table.look.known,
        })
    }
}
