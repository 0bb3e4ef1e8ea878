//! A mixed liquid with its figures, and what the reader of them should know.

use formulary::{Note, Status};
use physics::mixture::{self, Remark};

/// What the reader of a liquid's figures should know, as notes.
pub fn noted(remarks: &[Remark]) -> Vec<Note> {
    let note = |remark: &Remark| Note {
        code: remark.code().to_owned(),
        text: remark.text(),
        source: remark.source().map(str::to_owned),
        status: Status::Computed,
    };
    remarks.iter().map(note).collect()
}

/// What to know about the figures of a liquid; a jar without acid shows no pH to explain.
pub fn remarked(liquid: &mixture::Liquid) -> Vec<Note> {
    let remarks: Vec<Remark> = liquid
        .remarks
        .iter()
        .copied()
        .filter(|remark| *remark != Remark::NoAcid)
        .collect();
    noted(&remarks)
}
