//! The `age` format around the ZIP (<https://age-encryption.org/v1>): one scrypt recipient, then
//! chunks of 64 KiB, each with its own tag.
//!
//! Writing is the library's. Reading goes on after a chunk that is not what it was, which the library
//! does not: such a chunk reads as zeros and is remembered, so that the entries in it are named as
//! damaged and all others are whole.

use message::say;
use std::collections::BTreeSet;
use std::fs::File;
use std::io::{self, Read, Seek, SeekFrom, Write};
use std::sync::Mutex;

use age::secrecy::{ExposeSecret, SecretString};
use age::{DecryptError, Decryptor, Encryptor, Identity};
use age_core::format::{FileKey, Stanza};
use age_core::primitives::hkdf;
use chacha20poly1305::aead::Aead as _;
use chacha20poly1305::{ChaCha20Poly1305, KeyInit as _};
use unicode_normalization::UnicodeNormalization as _;

use crate::Failure;
use crate::limits::LONGEST_SEALED_HEADER;

/// scrypt with N = 2^17 and r = 8 takes 128 MB and about a second of a phone.
const WORK_FACTOR: u8 = 17;
/// The line that every file of the format begins with.
const MAGIC: &[u8] = b"age-encryption.org/v1\n";
/// Bytes of a chunk, and of its tag.
const CHUNK: u64 = 64 * 1024;
const TAG: u64 = 16;
/// Bytes of the nonce that stands before the chunks.
const NONCE: u64 = 16;

/// Where the bytes of a new file go.
pub(crate) enum Sink<W: Write> {
    Plain(W),
    Sealed(Box<age::stream::StreamWriter<W>>),
}

impl<W: Write> Sink<W> {
    pub(crate) fn new(out: W, passphrase: Option<&str>) -> Result<Self, Failure> {
        let Some(passphrase) = passphrase else {
            return Ok(Self::Plain(out));
        };
        // Keyboards write the same letter in different ways; composed is the one that is sealed with.
        let passphrase: String = passphrase.nfc().collect();
        let mut recipient = age::scrypt::Recipient::new(SecretString::from(passphrase));
        recipient.set_work_factor(WORK_FACTOR);
        let recipients = std::iter::once(&recipient as &dyn age::Recipient);
        let encryptor = Encryptor::with_recipients(recipients)
            .map_err(|why| Failure::Disk(io::Error::other(why.to_string())))?;
        Ok(Self::Sealed(Box::new(encryptor.wrap_output(out)?)))
    }

    pub(crate) fn finish(self) -> io::Result<W> {
        match self {
            Self::Plain(out) => Ok(out),
            Self::Sealed(sealed) => sealed.finish(),
        }
    }
}

impl<W: Write> Write for Sink<W> {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        match self {
            Self::Plain(out) => out.write(bytes),
            Self::Sealed(sealed) => sealed.write(bytes),
        }
    }

    fn flush(&mut self) -> io::Result<()> {
        match self {
            Self::Plain(out) => out.flush(),
            Self::Sealed(sealed) => sealed.flush(),
        }
    }
}

/// Where the bytes of a file come from.
pub(crate) enum Input {
    Plain(File),
    Sealed(Box<Chunks>),
}

impl Input {
    pub(crate) fn open(mut file: File, passphrase: Option<&str>) -> Result<Self, Failure> {
        let mut head = Vec::new();
        (&mut file)
            .take(MAGIC.len() as u64)
            .read_to_end(&mut head)?;
        file.rewind()?;
        if head != MAGIC {
            return Ok(Self::Plain(file));
        }
        let passphrase = passphrase.ok_or(Failure::Sealed)?;
        let mut refusal = None;
        for form in forms(passphrase) {
            match Chunks::open(&mut file, form) {
                Ok(opened) => return Ok(Self::Sealed(Box::new(opened(file)))),
                Err(Failure::WrongPassphrase) => refusal = Some(Failure::WrongPassphrase),
                Err(other) => return Err(other),
            }
        }
        Err(refusal.unwrap_or(Failure::WrongPassphrase))
    }

    /// Whether a chunk that was read was not what it was.
    pub(crate) fn is_torn(&self) -> bool {
        match self {
            Self::Plain(_) => false,
            Self::Sealed(chunks) => !chunks.torn.is_empty(),
        }
    }
}

/// The ways in which a passphrase may have been typed when a file was sealed: composed, as now, and
/// decomposed or just as it is, as by a version that took it as it came.
fn forms(passphrase: &str) -> Vec<String> {
    let mut forms = vec![passphrase.nfc().collect::<String>()];
    for other in [passphrase.nfd().collect(), passphrase.to_owned()] {
        if !forms.contains(&other) {
            forms.push(other);
        }
    }
    forms
}

/// The library's own opening of a file, which also tells the key that it found.
struct Told {
    by: age::scrypt::Identity,
    key: Mutex<Option<[u8; 16]>>,
}

impl Identity for Told {
    fn unwrap_stanza(&self, stanza: &Stanza) -> Option<Result<FileKey, DecryptError>> {
        let found = self.by.unwrap_stanza(stanza);
        if let (Some(Ok(key)), Ok(mut told)) = (&found, self.key.lock()) {
            *told = Some(*key.expose_secret());
        }
        found
    }
}

/// The bytes inside a sealed file, chunk by chunk.
pub(crate) struct Chunks {
    file: File,
    cipher: ChaCha20Poly1305,
    /// Where the chunks begin, and how many bytes they are in all.
    begin: u64,
    sealed: u64,
    at: u64,
    /// The chunk that was read last, and its bytes.
    number: Option<u64>,
    plain: Vec<u8>,
    torn: BTreeSet<u64>,
}

impl Chunks {
    /// Finds the key of the file; what is returned takes the file.
    fn open(
        file: &mut File,
        passphrase: String,
    ) -> Result<impl FnOnce(File) -> Self + use<>, Failure> {
        let unreadable = || Failure::Damaged(say!("detail-sealed-head"));
        file.rewind()?;
        let mut head = Vec::new();
        (&mut *file)
            .take(LONGEST_SEALED_HEADER)
            .read_to_end(&mut head)?;
        // The last line of the header begins with three hyphens.
        let last = head
            .windows(5)
            .position(|window| window == b"\n--- ")
            .ok_or_else(unreadable)?;
        let line = head[last + 1..]
            .iter()
            .position(|byte| *byte == b'\n')
            .ok_or_else(unreadable)?;
        let nonce = (last + 1 + line + 1) as u64;
        file.rewind()?;
        let decryptor = Decryptor::new(&mut *file).map_err(refused)?;
        let mut by = age::scrypt::Identity::new(SecretString::from(passphrase));
        by.set_max_work_factor(WORK_FACTOR);
        let told = Told {
            by,
            key: Mutex::default(),
        };
        decryptor
            .decrypt(std::iter::once(&told as &dyn Identity))
            .map(drop)
            .map_err(refused)?;
        let key = told
            .key
            .into_inner()
            .ok()
            .flatten()
            .ok_or_else(unreadable)?;
        let mut salt = [0; NONCE as usize];
        file.seek(SeekFrom::Start(nonce))?;
        file.read_exact(&mut salt)?;
        let key = hkdf(&salt, b"payload", &key);
        let begin = nonce + NONCE;
        let sealed = file.seek(SeekFrom::End(0))?.saturating_sub(begin);
        Ok(move |file| Self {
            file,
            cipher: ChaCha20Poly1305::new(&key.into()),
            begin,
            sealed,
            at: 0,
            number: None,
            plain: Vec::new(),
            torn: BTreeSet::new(),
        })
    }

    fn count(&self) -> u64 {
        self.sealed.div_ceil(CHUNK + TAG)
    }

    fn length(&self) -> u64 {
        let rest = self.sealed % (CHUNK + TAG);
        self.sealed / (CHUNK + TAG) * CHUNK + rest.saturating_sub(TAG)
    }

    /// Brings the chunk of this number in.
    fn load(&mut self, number: u64) -> io::Result<()> {
        if self.number == Some(number) {
            return Ok(());
        }
        let from = number * (CHUNK + TAG);
        let bytes = (self.sealed - from).min(CHUNK + TAG);
        let mut chunk = vec![0; usize::try_from(bytes).unwrap_or_default()];
        self.file.seek(SeekFrom::Start(self.begin + from))?;
        self.file.read_exact(&mut chunk)?;
        let mut nonce = [0; 12];
        nonce[3..11].copy_from_slice(&number.to_be_bytes());
        nonce[11] = u8::from(number + 1 == self.count());
        self.plain = match self.cipher.decrypt(&nonce.into(), chunk.as_slice()) {
            Ok(plain) => plain,
            Err(_) => {
                self.torn.insert(number);
                chunk.truncate(chunk.len().saturating_sub(TAG as usize));
                chunk.fill(0);
                chunk
            }
        };
        self.number = Some(number);
        Ok(())
    }
}

impl Read for Chunks {
    fn read(&mut self, into: &mut [u8]) -> io::Result<usize> {
        if self.at >= self.length() || into.is_empty() {
            return Ok(0);
        }
        self.load(self.at / CHUNK)?;
        let from = usize::try_from(self.at % CHUNK).unwrap_or_default();
        let piece = self.plain.get(from..).unwrap_or_default();
        let count = piece.len().min(into.len());
        into[..count].copy_from_slice(&piece[..count]);
        self.at += count as u64;
        Ok(count)
    }
}

impl Seek for Chunks {
    fn seek(&mut self, to: SeekFrom) -> io::Result<u64> {
        let at = match to {
            SeekFrom::Start(at) => Some(at),
            SeekFrom::End(by) => self.length().checked_add_signed(by),
            SeekFrom::Current(by) => self.at.checked_add_signed(by),
        };
        self.at = at.ok_or(io::ErrorKind::InvalidInput)?;
        Ok(self.at)
    }
}

fn refused(why: DecryptError) -> Failure {
    match why {
        DecryptError::ExcessiveWork { .. } => Failure::TooCostly,
        DecryptError::Io(error) => error.into(),
        DecryptError::DecryptionFailed
        | DecryptError::InvalidMac
        | DecryptError::KeyDecryptionFailed
        | DecryptError::NoMatchingKeys => Failure::WrongPassphrase,
        _ => Failure::Damaged(say!("detail-sealed-head")),
    }
}

impl Read for Input {
    fn read(&mut self, into: &mut [u8]) -> io::Result<usize> {
        match self {
            Self::Plain(file) => file.read(into),
            Self::Sealed(chunks) => chunks.read(into),
        }
    }
}

impl Seek for Input {
    fn seek(&mut self, to: SeekFrom) -> io::Result<u64> {
        match self {
            Self::Plain(file) => file.seek(to),
            Self::Sealed(chunks) => chunks.seek(to),
        }
    }
}
