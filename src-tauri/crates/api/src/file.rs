//! Files on their way in and out, where a page cannot name a path: `file.chunk`.

use std::fs::{File, OpenOptions};
use std::io::Write as _;

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD as BASE64;
use message::{Failure, say};
use safe::folder::{BROUGHT, MADE, is_made, is_name, unwritable};
use serde::{Deserialize, Serialize};

use crate::open::Open;
use crate::photo::LONGEST_CHUNK;
use crate::request::Command;

/// A piece of a file that the maker picked, at most 1 MiB; the pieces come in order.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct TakeFileChunk {
    /// 1 to 64 letters, digits or hyphens, the same for all pieces of a file.
    pub upload: String,
    pub base64: String,
    /// Whether this piece begins the file; what lay there under the same name is gone then.
    pub first: bool,
}

/// The answer to [`TakeFileChunk`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct FileChunkTaken {
    /// What the other commands call this file.
    pub file: String,
    pub bytes: u64,
}

/// A file that was made, as a host sends it on.
#[derive(Debug)]
pub struct MadeFile {
    /// Its bytes.
    pub file: File,
    /// Its media type.
    pub media_type: &'static str,
}

impl Command for TakeFileChunk {
    const NAME: &'static str = "file.chunk";
    type Reply = FileChunkTaken;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        if !is_name(&self.upload) {
            return Err(Failure::invalid("upload", say!("upload-name")));
        }
        if self.base64.len() > LONGEST_CHUNK {
            return Err(Failure::invalid("base64", say!("upload-piece-of-file")));
        }
        let bytes = BASE64
            .decode(&self.base64)
            .map_err(|_| Failure::invalid("base64", say!("upload-no-base64")))?;
        let path = app.keep.beside(BROUGHT)?.join(&self.upload);
        let opened = if self.first {
            File::create(&path)
        } else {
            OpenOptions::new().append(true).open(&path)
        };
        let mut file = opened.map_err(|error| match error.kind() {
            std::io::ErrorKind::NotFound => {
                Failure::not_found("upload", say!("upload-without-beginning"))
            }
            _ => unwritable(error),
        })?;
        file.write_all(&bytes).map_err(unwritable)?;
        let bytes = file.metadata().map_err(unwritable)?.len();
        Ok(FileChunkTaken {
            file: format!("brought:{}", self.upload),
            bytes,
        })
    }
}

impl Open {
    /// A file that `backup.make` or `export.make` made without being told where; `None` when
    /// there is none of this name.
    pub(crate) fn made(&self, name: &str) -> Option<MadeFile> {
        if !is_made(name) {
            return None;
        }
        let file = File::open(self.keep.folder.join(MADE).join(name)).ok()?;
        let media_type = if name.ends_with(".zip") {
            "application/zip"
        } else {
            "application/octet-stream"
        };
        Some(MadeFile { file, media_type })
    }
}
