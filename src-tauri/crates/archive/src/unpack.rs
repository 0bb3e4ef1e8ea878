//! Reading the file.

use message::{Argument, say};
use std::collections::{BTreeMap, BTreeSet};
use std::fs::File;
use std::io::{BufReader, Read, Seek, SeekFrom};
use std::path::Path;

use zip::{CompressionMethod, ZipArchive};

use crate::limits::{LONGEST_ABOUT, LONGEST_MANIFEST, MOST_ENTRIES};
use crate::manifest::{self, is_plain, shortened};
use crate::pack::{DIGITS, WITNESS};
use crate::sealed::Input;
use crate::{Entry, Failure, Manifest, Progress, salvage};

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

/// What proves that an entry is whole.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(crate) enum Proof {
    /// The BLAKE3 that the manifest or the name of a photo says.
    Hash(String),
    /// The CRC-32 after it, where the manifest is lost.
    Crc(u32),
    /// Nothing does.
    None,
}

/// Where the bytes of an entry lie.
#[derive(Debug, Clone)]
pub(crate) struct Place {
    pub begin: u64,
    pub bytes: u64,
    pub proof: Proof,
}

/// An open file whose list of entries makes sense, or was found by walking the file.
pub struct Unpacker {
    input: BufReader<Input>,
    manifest: Manifest,
    places: BTreeMap<String, Place>,
    length: u64,
    /// Whether the list of entries was lost.
    salvaged: bool,
}

impl Unpacker {
    /// Opens a file and checks its list: every entry plain, stored, listed once with its size,
    /// and no two in the same place.
    ///
    /// # Errors
    /// What [`Failure`] names.
    pub fn open(path: &Path, passphrase: Option<&str>) -> Result<Self, Failure> {
        let mut input =
            BufReader::with_capacity(128 * 1024, Input::open(File::open(path)?, passphrase)?);
        let length = input.seek(SeekFrom::End(0)).map_err(torn)?;
        check_end(&mut input, length)?;
        let mut zip = ZipArchive::new(input)?;
        if zip.len() as u64 > MOST_ENTRIES || zip.has_duplicate_names() {
            return Err(Failure::Damaged(say!("detail-twice")));
        }
        let manifest = read_manifest(&mut zip)?;
        manifest.check()?;
        let mut numbers = BTreeMap::new();
        let mut sizes = BTreeMap::new();
        let mut sum = 0_u64;
        // Entries whose own header cannot be read: they are damaged, and the others may be whole.
        let mut headless = BTreeSet::new();
        for number in 0..zip.len() {
            let listed = zip.name_for_index(number);
            let listed = listed
                .and_then(Result::ok)
                .map(std::borrow::Cow::into_owned);
            let file = match (zip.by_index_raw(number), listed) {
                (Ok(file), _) => file,
                (Err(_), Some(name)) if is_plain(&name) => {
                    headless.insert(name);
                    continue;
                }
                (Err(why), _) => return Err(why.into()),
            };
            let name = file.name()?.into_owned();
            if !is_plain(&name) || file.is_symlink() || file.encrypted() {
                return Err(Failure::Foreign(shortened(&name)));
            }
            if file.compression() != CompressionMethod::Stored
                || file.size() != file.compressed_size()
            {
                return Err(Failure::Foreign(shortened(&name)));
            }
            sum = sum.saturating_add(file.size());
            let begin = file.data_start().unwrap_or(length);
            if begin.saturating_add(file.size()) > length {
                return Err(torn(std::io::Error::other("beyond the end")));
            }
            sizes.insert(name.clone(), file.size());
            numbers.insert(name, begin);
        }
        // Stored entries that do not overlap cannot be longer than the file.
        if sum > length {
            return Err(Failure::Damaged(say!("detail-claims-bytes")));
        }
        let mut places = BTreeMap::new();
        for entry in &manifest.entries {
            match sizes.remove(&entry.name) {
                Some(size) if size == entry.bytes => {
                    let place = Place {
                        begin: numbers.get(&entry.name).copied().unwrap_or_default(),
                        bytes: size,
                        proof: Proof::Hash(entry.blake3.clone()),
                    };
                    places.insert(entry.name.clone(), place);
                }
                Some(_) => {
                    let name = Argument::own(&entry.name);
                    return Err(Failure::Damaged(say!("detail-length", name)));
                }
                None if headless.remove(&entry.name) => {}
                None => {
                    let name = Argument::own(&entry.name);
                    return Err(Failure::Damaged(say!("detail-missing", name)));
                }
            }
        }
        sizes.remove(manifest::NAME);
        if let Some(name) = sizes.into_keys().chain(headless).next() {
            return Err(Failure::Foreign(shortened(&name)));
        }
        Ok(Self {
            input: zip.into_inner(),
            manifest,
            places,
            length,
            salvaged: false,
        })
    }

    /// Opens a file of ours whose list of entries is damaged or whose end is missing, as far as
    /// entries are found by walking it; it is then said to be of `kind`.
    ///
    /// # Errors
    /// [`Failure::NotOurs`] when nothing of ours is found; what [`Failure`] names.
    pub fn salvage(
        path: &Path,
        passphrase: Option<&str>,
        kind: &str,
        progress: &Progress,
    ) -> Result<Self, Failure> {
        let mut input =
            BufReader::with_capacity(128 * 1024, Input::open(File::open(path)?, passphrase)?);
        let length = input.seek(SeekFrom::End(0))?;
        let found = salvage::walk(&mut input, length, MOST_ENTRIES, progress)?;
        if found.is_empty() {
            return Err(Failure::NotOurs);
        }
        let (entries, places): (Vec<_>, Vec<_>) = found.into_iter().unzip();
        let names = entries.iter().map(|entry: &Entry| entry.name.clone());
        Ok(Self {
            input,
            places: names.zip(places).collect(),
            manifest: Manifest {
                format: crate::FORMAT,
                kind: kind.to_owned(),
                about: serde_json::Value::Null,
                entries,
            },
            length,
            salvaged: true,
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
    /// [`Failure::Cancelled`], or [`Failure::Disk`] when the file cannot be read.
    pub fn verify(&mut self, progress: &Progress) -> Result<Damage, Failure> {
        if !self.salvaged {
            match self.witness(progress) {
                Ok(true) if !self.input.get_ref().is_torn() => return Ok(Damage::default()),
                Err(Failure::Cancelled) => return Err(Failure::Cancelled),
                // The entries tell where.
                Ok(_) | Err(_) => {}
            }
        }
        progress.expect(self.manifest.entries.iter().map(|entry| entry.bytes).sum());
        let mut damage = Damage {
            entries: Vec::new(),
            around: true,
        };
        if self.salvaged {
            damage.entries.push(manifest::NAME.to_owned());
            damage.around = false;
        }
        for entry in self.manifest.entries.clone() {
            match self.copy(&entry.name, progress, |_| Ok(())) {
                Ok(()) => {}
                Err(Failure::Cancelled) => return Err(Failure::Cancelled),
                Err(_) => {
                    damage.entries.push(entry.name);
                    damage.around = false;
                }
            }
        }
        Ok(damage)
    }

    /// The hash of all that stands before the digits, and the digits.
    fn witness(&mut self, progress: &Progress) -> Result<bool, Failure> {
        progress.expect(self.length);
        let input = &mut self.input;
        input.seek(SeekFrom::Start(0))?;
        let mut hasher = blake3::Hasher::new();
        let mut buffer = vec![0; 256 * 1024];
        let mut left = self.length - DIGITS as u64;
        while left > 0 {
            let most = usize::try_from(left)
                .unwrap_or(usize::MAX)
                .min(buffer.len());
            let count = input.read(&mut buffer[..most])?;
            if count == 0 {
                return Err(Failure::NotOurs);
            }
            hasher.update(&buffer[..count]);
            left -= count as u64;
            progress.advance(count as u64)?;
        }
        let mut digits = Vec::with_capacity(DIGITS);
        input.take(DIGITS as u64).read_to_end(&mut digits)?;
        Ok(digits == hasher.finalize().to_hex().as_bytes())
    }

    /// Hands the bytes of an entry to `each`, and compares them with the manifest at the end.
    ///
    /// # Errors
    /// [`Failure::Damaged`] naming the entry, [`Failure::Cancelled`], what `each` fails with.
    pub fn copy(
        &mut self,
        name: &str,
        progress: &Progress,
        mut each: impl FnMut(&[u8]) -> Result<(), Failure>,
    ) -> Result<(), Failure> {
        let damaged = || {
            let name = Argument::own(shortened(name));
            Failure::Damaged(say!("detail-changed", name))
        };
        let place = self.places.get(name).ok_or_else(damaged)?.clone();
        self.input.seek(SeekFrom::Start(place.begin))?;
        let (mut hasher, mut crc) = (blake3::Hasher::new(), crc32fast::Hasher::new());
        let mut buffer = vec![0; 64 * 1024];
        let mut left = place.bytes;
        while left > 0 {
            let most = usize::try_from(left)
                .unwrap_or(usize::MAX)
                .min(buffer.len());
            let count = self
                .input
                .read(&mut buffer[..most])
                .map_err(|_| damaged())?;
            if count == 0 {
                break;
            }
            match place.proof {
                Proof::Crc(_) => crc.update(&buffer[..count]),
                _ => drop(hasher.update(&buffer[..count])),
            }
            each(&buffer[..count])?;
            left -= count as u64;
            progress.advance(count as u64)?;
        }
        let is_whole = left == 0
            && match &place.proof {
                Proof::Hash(expected) => hasher.finalize().to_hex().as_str() == expected,
                Proof::Crc(expected) => crc.finalize() == *expected,
                Proof::None => false,
            };
        if is_whole { Ok(()) } else { Err(damaged()) }
    }
}

/// The end of the file must be the end of a ZIP with our comment, and must not claim more entries
/// than the memory is meant for. What the end says is believed by the reader of the ZIP, so this
/// comes first.
fn check_end(from: &mut (impl Read + Seek), length: u64) -> Result<(), Failure> {
    let comment = (WITNESS.len() + DIGITS) as u64;
    let at = length.checked_sub(END + comment).ok_or(Failure::NotOurs)?;
    let end = bytes_at(from, at, END + comment)?;
    let plain = end.starts_with(b"PK\x05\x06")
        && u64::from(u16::from_le_bytes([end[20], end[21]])) == comment
        && end[22..].starts_with(WITNESS.as_bytes());
    if !plain {
        return Err(Failure::NotOurs);
    }
    let mut count = u64::from(u16::from_le_bytes([end[10], end[11]]));
    // APPNOTE 4.3.14 and 4.3.15: the locator stands before the end and says where the long end is.
    if let Some(locator) = at.checked_sub(20) {
        let locator = bytes_at(from, locator, 20)?;
        if locator.starts_with(b"PK\x06\x07") {
            let long = bytes_at(from, number(&locator[8..16]), 56)?;
            if !long.starts_with(b"PK\x06\x06") {
                return Err(Failure::NotOurs);
            }
            count = count.max(number(&long[24..32])).max(number(&long[32..40]));
        }
    }
    if count > MOST_ENTRIES {
        return Err(Failure::Damaged(say!("detail-claims-entries")));
    }
    Ok(())
}

fn number(bytes: &[u8]) -> u64 {
    bytes
        .iter()
        .rev()
        .fold(0, |number, byte| number << 8 | u64::from(*byte))
}

fn bytes_at(from: &mut (impl Read + Seek), at: u64, count: u64) -> Result<Vec<u8>, Failure> {
    let mut bytes = Vec::new();
    from.seek(SeekFrom::Start(at)).map_err(torn)?;
    from.take(count).read_to_end(&mut bytes).map_err(torn)?;
    if (bytes.len() as u64) < count {
        return Err(Failure::NotOurs);
    }
    Ok(bytes)
}

/// A sealed file that was cut off or changed fails where it is read.
fn torn(_: std::io::Error) -> Failure {
    Failure::Damaged(say!("detail-cut-off"))
}

fn read_manifest(zip: &mut ZipArchive<BufReader<Input>>) -> Result<Manifest, Failure> {
    let unreadable = || Failure::Damaged(say!("detail-manifest"));
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
        return Err(Failure::Newer);
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
