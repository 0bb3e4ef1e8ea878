//! A file for the maker to keep, and what several of them share.

use std::io::Read as _;

use base64::Engine as _;
use base64::prelude::BASE64_STANDARD as BASE64;
use chrono::{DateTime, NaiveDate};
use message::{Argument, Message, say};
use serde::Serialize;

use crate::open::Open;

/// A file for the maker to keep.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PrintedFile {
    pub file_name: String,
    pub media_type: String,
    pub base64: String,
    pub remarks: Vec<String>,
}

/// Photos beyond this are left out of a book, so that a phone can still carry it.
const MOST_PHOTO_BYTES: usize = 12 * 1024 * 1024;

/// Thumbs by their hash, until there are too many.
pub(crate) struct Photos<'a> {
    app: &'a Open,
    bytes: usize,
    left_out: u32,
}

impl<'a> Photos<'a> {
    pub(crate) fn of(app: &'a Open) -> Self {
        Self {
            app,
            bytes: 0,
            left_out: 0,
        }
    }

    pub(crate) fn thumb(&mut self, hash: &str) -> Option<Vec<u8>> {
        let mut picture = self.app.thumb(hash).ok().flatten()?;
        let mut bytes = Vec::new();
        picture.file.read_to_end(&mut bytes).ok()?;
        if self.bytes + bytes.len() > MOST_PHOTO_BYTES {
            self.left_out += 1;
            return None;
        }
        self.bytes += bytes.len();
        Some(bytes)
    }

    pub(crate) fn remark(&self) -> Option<Message> {
        (self.left_out > 0).then(|| {
            say!(
                "photos-left-out",
                count = Argument::count(self.left_out.into())
            )
        })
    }
}

pub(crate) fn day(moment: &str) -> Option<NaiveDate> {
    let moment = DateTime::parse_from_rfc3339(moment).ok()?;
    Some(moment.date_naive())
}

impl PrintedFile {
    pub(crate) fn new(
        file_name: String,
        media_type: &str,
        bytes: &[u8],
        remarks: Vec<Message>,
    ) -> Self {
        Self {
            file_name,
            media_type: media_type.to_owned(),
            base64: BASE64.encode(bytes),
            remarks: remarks.into_iter().map(String::from).collect(),
        }
    }

    pub(crate) fn pdf(file_name: String, drawn: ::paper::Drawn<Vec<u8>>) -> Self {
        Self::new(file_name, "application/pdf", &drawn.bytes, drawn.remarks)
    }
}
