//! Writing the file.

use std::io::{self, BufWriter, Read, Write};
use std::path::{Path, PathBuf};

use disk::{Disk, Draft};
use message::say;
use zip::write::{SimpleFileOptions, StreamWriter};
use zip::{CompressionMethod, DateTime, ZipWriter};

use crate::limits::{LONGEST_ABOUT, LONGEST_MANIFEST, MOST_ENTRIES};
use crate::manifest::{self, is_plain};
use crate::sealed::Sink;
use crate::writer::ThreadWriter;
use crate::{Entry, FORMAT, Failure, Manifest, Progress, Unpacker};

/// What the comment of the ZIP begins with; the digits of the hash follow and end the file.
pub(crate) const WITNESS: &str = "blake3 ";
pub(crate) const DIGITS: usize = 64;

/// Sizes are known only after an entry is written; from this size on room for a long one is kept.
const LARGE: u64 = 0xF000_0000;

/// The ZIP, whose bytes are, on another thread, witnessed, then sealed, then gathered, then written.
type Zip = ZipWriter<StreamWriter<ThreadWriter<Witness<Sink<BufWriter<Draft>>>>>>;

/// A file while it is written; dropped before [`Packer::finish`], nothing is left of it.
pub struct Packer<'a> {
    zip: Option<Zip>,
    entries: Vec<Entry>,
    disk: &'a Disk,
    progress: &'a Progress,
    /// Wanted again to read back what was written.
    passphrase: Option<String>,
    temporary: PathBuf,
    target: PathBuf,
}

impl<'a> Packer<'a> {
    /// Begins a file that shall lie at `target`, sealed if there is a passphrase.
    ///
    /// # Errors
    /// [`Failure::StorageFull`] or [`Failure::Disk`].
    pub fn begin(
        disk: &'a Disk,
        target: &Path,
        passphrase: Option<&str>,
        progress: &'a Progress,
    ) -> Result<Self, Failure> {
        let (temporary, draft) = begun_beside(disk, target)?;
        let mut packer = Self {
            zip: None,
            entries: Vec::new(),
            disk,
            progress,
            passphrase: passphrase.map(str::to_owned),
            temporary,
            target: target.to_owned(),
        };
        let sink = Sink::new(BufWriter::with_capacity(256 * 1024, draft), passphrase)?;
        packer.zip = Some(ZipWriter::new_stream(ThreadWriter::new(Witness::new(
            sink,
        ))?));
        Ok(packer)
    }

    /// Adds an entry of about `bytes` bytes from a stream; returns its true size.
    ///
    /// # Errors
    /// [`Failure::Foreign`] for a name that is not plain, [`Failure::TooMuch`],
    /// [`Failure::Cancelled`], [`Failure::StorageFull`] or [`Failure::Disk`].
    pub fn add(&mut self, name: &str, bytes: u64, mut from: impl Read) -> Result<&Entry, Failure> {
        if !is_plain(name) || name == manifest::NAME {
            return Err(Failure::Foreign(manifest::shortened(name)));
        }
        // What a reader would refuse is not written; the manifest is an entry, too.
        if self.entries.len() as u64 + 2 > MOST_ENTRIES {
            return Err(too_many());
        }
        let progress = self.progress;
        let zip = self.begun(name, bytes)?;
        let mut hasher = blake3::Hasher::new();
        let mut buffer = vec![0; 256 * 1024];
        let mut length = 0;
        loop {
            let count = match from.read(&mut buffer) {
                Ok(0) => break,
                Ok(count) => count,
                Err(error) if error.kind() == io::ErrorKind::Interrupted => continue,
                Err(error) => return Err(error.into()),
            };
            hasher.update(&buffer[..count]);
            zip.write_all(&buffer[..count])?;
            length += count as u64;
            progress.advance(count as u64)?;
        }
        self.entries.push(Entry {
            name: name.to_owned(),
            bytes: length,
            blake3: hasher.finalize().to_hex().to_string(),
        });
        Ok(&self.entries[self.entries.len() - 1])
    }

    /// Writes the manifest, makes the file durable, reads every byte of it back as a reader would,
    /// and only then gives it its name; returns its size.
    ///
    /// # Errors
    /// [`Failure::TooMuch`], [`Failure::StorageFull`], [`Failure::Damaged`] when it does not read as
    /// it was written, or [`Failure::Disk`]; what lay at the target is untouched then.
    pub fn finish(mut self, kind: &str, about: serde_json::Value) -> Result<u64, Failure> {
        let manifest = Manifest {
            format: FORMAT,
            kind: kind.to_owned(),
            about,
            entries: std::mem::take(&mut self.entries),
        };
        let text = serde_json::to_vec_pretty(&manifest).map_err(io::Error::from)?;
        let bytes = text.len() as u64;
        if bytes > LONGEST_MANIFEST || manifest.about.to_string().len() > LONGEST_ABOUT {
            return Err(too_many());
        }
        self.begun(manifest::NAME, bytes)?.write_all(&text)?;
        let mut zip = self.zip.take().ok_or(Failure::NotOurs)?;
        // The digits are put in when all that stands before them is known.
        zip.set_comment(format!("{WITNESS}{}", "0".repeat(DIGITS)))?;
        let sink = zip.finish()?.into_inner().finish()?.finish()?;
        let mut draft = sink
            .finish()?
            .into_inner()
            .map_err(|error| error.into_error())?;
        draft.sync()?;
        drop(draft);
        let size = std::fs::metadata(&self.temporary)?.len();
        let mut written = Unpacker::open(&self.temporary, self.passphrase.as_deref())?;
        if written.manifest() != &manifest || !written.verify(self.progress)?.is_none() {
            return Err(Failure::Damaged(say!("detail-not-read-back")));
        }
        drop(written);
        // After this moment the file is there, and stopping comes too late.
        self.progress.advance(0)?;
        self.disk.rename(&self.temporary, &self.target)?;
        Ok(size)
    }

    fn begun(&mut self, name: &str, bytes: u64) -> Result<&mut Zip, Failure> {
        let zip = self.zip.as_mut().ok_or(Failure::NotOurs)?;
        // The same content makes the same file, whenever it is written.
        let options = SimpleFileOptions::default()
            .compression_method(CompressionMethod::Stored)
            .last_modified_time(DateTime::DEFAULT)
            .unix_permissions(0o644)
            .large_file(bytes >= LARGE);
        zip.start_file(name, options)?;
        Ok(zip)
    }
}

fn too_many() -> Failure {
    Failure::TooMuch(MOST_ENTRIES)
}

/// A file beside the target to write to. One that an interrupted run left is of no use to anyone;
/// where its name is taken by something that cannot be removed, the next name will do.
fn begun_beside(disk: &Disk, target: &Path) -> Result<(PathBuf, Draft), Failure> {
    let mut number = 1;
    loop {
        let mut name = target.file_name().unwrap_or_default().to_owned();
        name.push(if number == 1 {
            ".part".to_owned()
        } else {
            format!(".{number}.part")
        });
        let temporary = target.with_file_name(name);
        let is_stuck = temporary.is_dir() && number < 10;
        let begun = disk
            .remove(&temporary)
            .and_then(|()| disk.create(&temporary));
        match begun {
            Ok(draft) => return Ok((temporary, draft)),
            Err(_) if is_stuck => number += 1,
            Err(error) => return Err(error.into()),
        }
    }
}

impl Drop for Packer<'_> {
    fn drop(&mut self) {
        // Closed first: not every system removes an open file. After a rename there is nothing here.
        self.zip = None;
        let _ = std::fs::remove_file(&self.temporary);
    }
}

/// Hashes everything but the last digits, and puts the hash in their place.
struct Witness<W: Write> {
    out: W,
    hasher: blake3::Hasher,
    held: Vec<u8>,
}

impl<W: Write> Witness<W> {
    fn new(out: W) -> Self {
        Self {
            out,
            hasher: blake3::Hasher::new(),
            held: Vec::with_capacity(DIGITS),
        }
    }

    fn finish(mut self) -> io::Result<W> {
        let digits = self.hasher.finalize().to_hex();
        self.out.write_all(digits.as_bytes())?;
        Ok(self.out)
    }
}

impl<W: Write> Write for Witness<W> {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        let over = (self.held.len() + bytes.len()).saturating_sub(DIGITS);
        let from_held = over.min(self.held.len());
        let from_new = over - from_held;
        for piece in [&self.held[..from_held], &bytes[..from_new]] {
            self.hasher.update(piece);
            self.out.write_all(piece)?;
        }
        self.held.drain(..from_held);
        self.held.extend_from_slice(&bytes[from_new..]);
        Ok(bytes.len())
    }

    fn flush(&mut self) -> io::Result<()> {
        self.out.flush()
    }
}
