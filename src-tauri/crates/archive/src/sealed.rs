//! The `age` format around the ZIP.

use std::fs::File;
use std::io::{self, Read, Seek, SeekFrom, Write};

use age::secrecy::SecretString;
use age::{DecryptError, Decryptor, Encryptor};

use crate::Trouble;

/// scrypt with N = 2^17 and r = 8 takes 128 MB and about a second of a phone.
const WORK_FACTOR: u8 = 17;
/// The line that every file of the format begins with.
const MAGIC: &[u8] = b"age-encryption.org/v1\n";

/// Where the bytes of a new file go.
pub(crate) enum Sink<W: Write> {
    Plain(W),
    Sealed(Box<age::stream::StreamWriter<W>>),
}

impl<W: Write> Sink<W> {
    pub(crate) fn new(out: W, passphrase: Option<&str>) -> Result<Self, Trouble> {
        let Some(passphrase) = passphrase else {
            return Ok(Self::Plain(out));
        };
        let mut recipient = age::scrypt::Recipient::new(SecretString::from(passphrase.to_owned()));
        recipient.set_work_factor(WORK_FACTOR);
        let recipients = std::iter::once(&recipient as &dyn age::Recipient);
        let encryptor = Encryptor::with_recipients(recipients)
            .map_err(|why| Trouble::Disk(io::Error::other(why.to_string())))?;
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
pub(crate) enum Spring {
    Plain(File),
    Sealed(Box<age::stream::StreamReader<File>>),
}

impl Spring {
    pub(crate) fn open(mut file: File, passphrase: Option<&str>) -> Result<Self, Trouble> {
        let mut head = Vec::new();
        (&mut file)
            .take(MAGIC.len() as u64)
            .read_to_end(&mut head)?;
        file.rewind()?;
        if head != MAGIC {
            return Ok(Self::Plain(file));
        }
        let passphrase = passphrase.ok_or(Trouble::Sealed)?;
        let mut identity = age::scrypt::Identity::new(SecretString::from(passphrase.to_owned()));
        identity.set_max_work_factor(WORK_FACTOR);
        let decryptor = Decryptor::new(file).map_err(refused)?;
        let reader = decryptor
            .decrypt(std::iter::once(&identity as &dyn age::Identity))
            .map_err(refused)?;
        Ok(Self::Sealed(Box::new(reader)))
    }
}

fn refused(why: DecryptError) -> Trouble {
    match why {
        DecryptError::ExcessiveWork { .. } => Trouble::TooCostly,
        DecryptError::Io(error) => error.into(),
        DecryptError::DecryptionFailed
        | DecryptError::InvalidMac
        | DecryptError::KeyDecryptionFailed
        | DecryptError::NoMatchingKeys => Trouble::WrongPassphrase,
        _ => Trouble::Damaged("the beginning of the sealed file cannot be read".into()),
    }
}

impl Read for Spring {
    fn read(&mut self, into: &mut [u8]) -> io::Result<usize> {
        match self {
            Self::Plain(file) => file.read(into),
            Self::Sealed(reader) => reader.read(into),
        }
    }
}

impl Seek for Spring {
    fn seek(&mut self, to: SeekFrom) -> io::Result<u64> {
        match self {
            Self::Plain(file) => file.seek(to),
            Self::Sealed(reader) => reader.seek(to),
        }
    }
}
