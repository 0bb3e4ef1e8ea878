//! Reading the file.

use std::collections::BTreeMap;
use std::fs::File;
use std::io::{BufReader, Read, Seek, SeekFrom};
use std::path::Path;

use zip::{CompressionMethod, ZipArchive};

use crate::manifest::{self, is_plain, shortened};
use crate::pack::{DIGITS, WITNESS};
use crate::sealed::Spring;
use crate::{Entry, Manifest, Progress, Trouble};

/// A fifth more than the photos of twenty busy years; a file that claims more would only fill the
/// memory.
const MOST_ENTRIES: u64 = 120_000;
/// That many entries are listed in this many bytes.
const LONGEST_MANIFEST: u64 = 26_000_000;
/// What the writer says about the whole is short; a value takes many times the memory of its text.
const LONGEST_ABOUT: usize = 64 * 1024;
/// The end of a ZIP without its comment (APPNOTE 4.3.16).
const END: u64 = 22;

/// What is wrong with the file, by the names of its entries.
#[derive(Debug, Clone, Default, PartialEq, Eq)]
pub struct Damage {
    /// Entries whose bytes are not what the manifest says.
    pub entries: Vec<String>,
    /// Whether something outside the entries is not as it was written.
    pub around: bool,
}

impl Damage {
    /// Whether there is none.
    pub fn is_none(&self) -> bool {
        self.entries.is_empty() && !self.around
    }
}

/// An open file whose list of entries makes sense.
pub struct Unpacker {
    /// Taken out only while the file is read from end to end.
    zip: Option<ZipArchive<BufReader<Spring>>>,
    manifest: Manifest,
    /// The place of each entry in the directory, and its hash.
    places: BTreeMap<String, (usize, String)>,
    length: u64,
}

impl Unpacker {
    /// Opens a file and checks its list: every entry plain, stored, listed once with its size,
    /// and no two in the same place.
    ///
    /// # Errors
    /// What [`Trouble`] names.
    pub fn open(path: &Path, passphrase: Option<&str>) -> Result<Self, Trouble> {
        let mut spring =
            BufReader::with_capacity(128 * 1024, Spring::open(File::open(path)?, passphrase)?);
        let length = spring.seek(SeekFrom::End(0)).map_err(torn)?;
        check_end(&mut spring, length)?;
        let mut zip = ZipArchive::new(spring)?;
        if zip.len() as u64 > MOST_ENTRIES || zip.has_duplicate_names() {
            return Err(Trouble::Damaged(
                "its directory names an entry twice".into(),
            ));
        }
        let manifest = read_manifest(&mut zip)?;
        manifest.check()?;
        let mut numbers = BTreeMap::new();
        let mut sizes = BTreeMap::new();
        let mut sum = 0_u64;
        for number in 0..zip.len() {
            let file = zip.by_index_raw(number)?;
            let name = file.name()?.into_owned();
            if !is_plain(&name) || file.is_symlink() || file.encrypted() {
                return Err(Trouble::Foreign(shortened(&name)));
            }
            if file.compression() != CompressionMethod::Stored
                || file.size() != file.compressed_size()
            {
                return Err(Trouble::Foreign(shortened(&name)));
            }
            sum = sum.saturating_add(file.size());
            sizes.insert(name.clone(), file.size());
            numbers.insert(name, number);
        }
        // Stored entries that do not overlap cannot be longer than the file.
        if sum > length {
            return Err(Trouble::Damaged(
                "its entries claim more bytes than there are".into(),
            ));
        }
        let mut places = BTreeMap::new();
        for entry in &manifest.entries {
            match sizes.remove(&entry.name) {
                Some(size) if size == entry.bytes => {
                    let number = numbers.get(&entry.name).copied().unwrap_or_default();
                    places.insert(entry.name.clone(), (number, entry.blake3.clone()));
                }
                Some(_) => {
                    return Err(Trouble::Damaged(format!(
                        "{} is not as long as it was",
                        entry.name
                    )));
                }
                None => return Err(Trouble::Damaged(format!("{} is missing", entry.name))),
            }
        }
        sizes.remove(manifest::NAME);
        if let Some(name) = sizes.into_keys().next() {
            return Err(Trouble::Foreign(shortened(&name)));
        }
        Ok(Self {
            zip: Some(zip),
            manifest,
            places,
            length,
        })
    }

    /// What the file says about itself.
    pub fn manifest(&self) -> &Manifest {
        &self.manifest
    }

    /// How many bytes there are to check.
    pub fn length(&self) -> u64 {
        self.length
    }

    /// Reads every byte of the file and compares it with its witness; only if one is amiss are
    /// the entries read one by one, to name those that are damaged.
    ///
    /// # Errors
    /// [`Trouble::Cancelled`], or [`Trouble::Disk`] when the file cannot be read.
    pub fn verify(&mut self, progress: &Progress) -> Result<Damage, Trouble> {
        match self.witness(progress) {
            Ok(true) => return Ok(Damage::default()),
            Err(Trouble::Cancelled) => return Err(Trouble::Cancelled),
            // A sealed file that was tampered with cannot be read on; its entries tell where.
            Ok(false) | Err(_) => {}
        }
        progress.expect(self.manifest.entries.iter().map(|entry| entry.bytes).sum());
        let mut damage = Damage {
            entries: Vec::new(),
            around: true,
        };
        for entry in self.manifest.entries.clone() {
            match self.copy(&entry.name, progress, |_| Ok(())) {
                Ok(()) => {}
                Err(Trouble::Cancelled) => return Err(Trouble::Cancelled),
                Err(_) => {
                    damage.entries.push(entry.name);
                    damage.around = false;
                }
            }
        }
        Ok(damage)
    }

    /// The hash of all that stands before the digits, and the digits.
    fn witness(&mut self, progress: &Progress) -> Result<bool, Trouble> {
        progress.expect(self.length);
        let zip = self.zip.take().ok_or(Trouble::NotOurs)?;
        let mut spring = zip.into_inner();
        let found = self.hashed(&mut spring, progress);
        self.zip = Some(ZipArchive::new(spring)?);
        found
    }

    fn hashed(&self, spring: &mut BufReader<Spring>, progress: &Progress) -> Result<bool, Trouble> {
        spring.seek(SeekFrom::Start(0))?;
        let mut hasher = blake3::Hasher::new();
        let mut buffer = vec![0; 256 * 1024];
        let mut left = self.length - DIGITS as u64;
        while left > 0 {
            let most = usize::try_from(left)
                .unwrap_or(usize::MAX)
                .min(buffer.len());
            let count = spring.read(&mut buffer[..most])?;
            if count == 0 {
                return Err(Trouble::NotOurs);
            }
            hasher.update(&buffer[..count]);
            left -= count as u64;
            progress.advance(count as u64)?;
        }
        let mut digits = Vec::with_capacity(DIGITS);
        spring.take(DIGITS as u64).read_to_end(&mut digits)?;
        Ok(digits == hasher.finalize().to_hex().as_bytes())
    }

    /// Hands the bytes of an entry to `each`, and compares them with the manifest at the end.
    ///
    /// # Errors
    /// [`Trouble::Damaged`] naming the entry, [`Trouble::Cancelled`], what `each` fails with.
    pub fn copy(
        &mut self,
        name: &str,
        progress: &Progress,
        mut each: impl FnMut(&[u8]) -> Result<(), Trouble>,
    ) -> Result<(), Trouble> {
        let damaged = || Trouble::Damaged(format!("{} is not what it was", shortened(name)));
        let (number, expected) = self.places.get(name).ok_or_else(damaged)?;
        let zip = self.zip.as_mut().ok_or_else(damaged)?;
        let mut file = zip.by_index(*number).map_err(|_| damaged())?;
        let mut hasher = blake3::Hasher::new();
        let mut buffer = vec![0; 64 * 1024];
        loop {
            let count = file.read(&mut buffer).map_err(|_| damaged())?;
            if count == 0 {
                break;
            }
            hasher.update(&buffer[..count]);
            each(&buffer[..count])?;
            progress.advance(count as u64)?;
        }
        if hasher.finalize().to_hex().as_str() == expected.as_str() {
            Ok(())
        } else {
            Err(damaged())
        }
    }
}

/// The end of the file must be the end of a ZIP with our comment, and must not claim more entries
/// than the memory is meant for. What the end says is believed by the reader of the ZIP, so this
/// comes first.
fn check_end(from: &mut (impl Read + Seek), length: u64) -> Result<(), Trouble> {
    let comment = (WITNESS.len() + DIGITS) as u64;
    let at = length.checked_sub(END + comment).ok_or(Trouble::NotOurs)?;
    let end = bytes_at(from, at, END + comment)?;
    let plain = end.starts_with(b"PK\x05\x06")
        && u64::from(u16::from_le_bytes([end[20], end[21]])) == comment
        && end[22..].starts_with(WITNESS.as_bytes());
    if !plain {
        return Err(Trouble::NotOurs);
    }
    let mut count = u64::from(u16::from_le_bytes([end[10], end[11]]));
    // APPNOTE 4.3.14 and 4.3.15: the locator stands before the end and says where the long end is.
    if let Some(locator) = at.checked_sub(20) {
        let locator = bytes_at(from, locator, 20)?;
        if locator.starts_with(b"PK\x06\x07") {
            let long = bytes_at(from, number(&locator[8..16]), 56)?;
            if !long.starts_with(b"PK\x06\x06") {
                return Err(Trouble::NotOurs);
            }
            count = count.max(number(&long[24..32])).max(number(&long[32..40]));
        }
    }
    if count > MOST_ENTRIES {
        return Err(Trouble::Damaged(
            "its directory claims more entries than a journal has".into(),
        ));
    }
    Ok(())
}

fn number(bytes: &[u8]) -> u64 {
    bytes
        .iter()
        .rev()
        .fold(0, |number, byte| number << 8 | u64::from(*byte))
}

fn bytes_at(from: &mut (impl Read + Seek), at: u64, count: u64) -> Result<Vec<u8>, Trouble> {
    let mut bytes = Vec::new();
    from.seek(SeekFrom::Start(at)).map_err(torn)?;
    from.take(count).read_to_end(&mut bytes).map_err(torn)?;
    if (bytes.len() as u64) < count {
        return Err(Trouble::NotOurs);
    }
    Ok(bytes)
}

/// A sealed file that was cut off or changed fails where it is read.
fn torn(_: std::io::Error) -> Trouble {
    Trouble::Damaged("it was cut off or changed after it was written".into())
}

fn read_manifest(zip: &mut ZipArchive<BufReader<Spring>>) -> Result<Manifest, Trouble> {
    let unreadable = || Trouble::Damaged("its manifest cannot be read".into());
    let file = zip.by_name(manifest::NAME).map_err(|_| unreadable())?;
    if file.size() > LONGEST_MANIFEST || file.compression() != CompressionMethod::Stored {
        return Err(unreadable());
    }
    let mut text = Vec::with_capacity(usize::try_from(file.size()).unwrap_or_default());
    file.take(LONGEST_MANIFEST)
        .read_to_end(&mut text)
        .map_err(|_| unreadable())?;
    // Newer first: its manifest may have fields that are not known here.
    #[derive(serde::Deserialize)]
    struct Format {
        format: u32,
    }
    let format: Format = serde_json::from_slice(&text).map_err(|_| unreadable())?;
    if format.format > crate::FORMAT {
        return Err(Trouble::Newer);
    }
    #[derive(serde::Deserialize)]
    #[serde(deny_unknown_fields)]
    struct Written<'t> {
        format: u32,
        kind: String,
        #[serde(borrow)]
        about: &'t serde_json::value::RawValue,
        entries: Vec<Entry>,
    }
    let written: Written<'_> = serde_json::from_slice(&text).map_err(|_| unreadable())?;
    if written.about.get().len() > LONGEST_ABOUT || written.entries.len() as u64 > MOST_ENTRIES {
        return Err(unreadable());
    }
    Ok(Manifest {
        format: written.format,
        kind: written.kind,
        about: serde_json::from_str(written.about.get()).map_err(|_| unreadable())?,
        entries: written.entries,
    })
}
