//! Files that are there whole after a power cut, or not at all.
//!
//! Everything that is written outside the database goes through a [`Disk`]: a
//! temporary name, a sync, a rename, a sync of the folder. A disk can be made
//! to fail at its n-th call, so that a test can ask what every failure leaves.

mod faults;

pub use faults::{Fault, Faults};

use std::fs::{self, File};
use std::io::{self, Write};
use std::path::Path;
use std::sync::Arc;
use std::thread::JoinHandle;

/// The file system, or one that fails where it was told to.
#[derive(Clone, Debug, Default)]
pub struct Disk {
    faults: Option<Arc<Faults>>,
}

impl Disk {
    /// A disk that fails as `faults` say.
    pub fn failing(faults: Arc<Faults>) -> Self {
        Self {
            faults: Some(faults),
        }
    }

    /// Makes a file that is not there yet, for its owner alone.
    ///
    /// # Errors
    /// Those of the file system; `AlreadyExists` when there is one.
    pub fn create(&self, path: &Path) -> io::Result<Draft> {
        self.trip()?;
        let mut how = File::options();
        how.write(true).create_new(true);
        // What a maker writes down is for nobody else who uses the same machine.
        #[cfg(unix)]
        std::os::unix::fs::OpenOptionsExt::mode(&mut how, 0o600);
        Ok(Draft {
            file: how.open(path)?,
            disk: self.clone(),
            unsynced: 0,
            syncing: None,
        })
    }

    /// Makes a folder and those above it, for their owner alone.
    ///
    /// # Errors
    /// Those of the file system.
    pub fn create_folders(&self, path: &Path) -> io::Result<()> {
        self.trip()?;
        let mut how = fs::DirBuilder::new();
        how.recursive(true);
        #[cfg(unix)]
        std::os::unix::fs::DirBuilderExt::mode(&mut how, 0o700);
        how.create(path)
    }

    /// Gives a file another name, replacing what bore it, durably.
    ///
    /// # Errors
    /// Those of the file system; the file bears one of the two names then.
    pub fn rename(&self, from: &Path, to: &Path) -> io::Result<()> {
        self.trip()?;
        fs::rename(from, to)?;
        match to.parent() {
            Some(folder) => self.sync_folder(folder),
            None => Ok(()),
        }
    }

    /// Removes a file; one that is not there is no error.
    ///
    /// # Errors
    /// Those of the file system.
    pub fn remove(&self, path: &Path) -> io::Result<()> {
        self.trip()?;
        match fs::remove_file(path) {
            Err(error) if error.kind() == io::ErrorKind::NotFound => Ok(()),
            other => other,
        }
    }

    /// Makes what was renamed or made in a folder durable.
    ///
    /// # Errors
    /// Those of the file system.
    pub fn sync_folder(&self, folder: &Path) -> io::Result<()> {
        self.trip()?;
        // Only on Unix is a rename made durable by syncing its folder.
        #[cfg(unix)]
        File::open(folder)?.sync_all()?;
        #[cfg(not(unix))]
        let _ = folder;
        Ok(())
    }

    fn trip(&self) -> io::Result<()> {
        self.faults.as_ref().map_or(Ok(()), |faults| faults.trip())
    }
}

/// Lets nobody but its owner read a file or a folder. Where the system knows no such thing, or the
/// file is another's, it stays as it is.
pub fn keep_private(path: &Path) {
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt as _;
        if let Ok(meta) = fs::metadata(path) {
            let mode = if meta.is_dir() { 0o700 } else { 0o600 };
            if meta.permissions().mode() & 0o777 != mode {
                let _ = fs::set_permissions(path, fs::Permissions::from_mode(mode));
            }
        }
    }
    #[cfg(not(unix))]
    let _ = path;
}

/// So much is written before it is brought to the disk beside what follows: the sync at the end of a
/// long file would wait for all of it.
const PIECE: usize = 32 << 20;

/// A file while it is being written.
#[derive(Debug)]
pub struct Draft {
    file: File,
    disk: Disk,
    unsynced: usize,
    syncing: Option<JoinHandle<io::Result<()>>>,
}

impl Draft {
    /// Waits until the bytes are on the disk.
    ///
    /// # Errors
    /// Those of the file system.
    pub fn sync(&mut self) -> io::Result<()> {
        self.disk.trip()?;
        self.synced_so_far()?;
        self.file.sync_all()
    }

    fn sync_beside(&mut self) -> io::Result<()> {
        if self
            .syncing
            .as_ref()
            .is_some_and(|work| !work.is_finished())
        {
            return Ok(());
        }
        self.synced_so_far()?;
        self.unsynced = 0;
        let file = self.file.try_clone()?;
        let work = std::thread::Builder::new().spawn(move || file.sync_data())?;
        self.syncing = Some(work);
        Ok(())
    }

    /// A system names what it failed to write to the first who asks: no later sync would.
    fn synced_so_far(&mut self) -> io::Result<()> {
        match self.syncing.take().map(JoinHandle::join) {
            None => Ok(()),
            Some(Ok(synced)) => synced,
            Some(Err(_)) => Err(io::Error::other("the sync broke off")),
        }
    }
}

impl Drop for Draft {
    fn drop(&mut self) {
        // Not every system removes a file that is open.
        let _ = self.synced_so_far();
    }
}

impl Write for Draft {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        let mut altered = Vec::new();
        let bytes = match &self.disk.faults {
            Some(faults) => {
                let is_altered = faults.alters();
                let bytes = &bytes[..faults.room_for(bytes.len())?];
                if is_altered && !bytes.is_empty() {
                    altered.extend_from_slice(bytes);
                    altered[bytes.len() / 2] ^= 4;
                    &altered
                } else {
                    bytes
                }
            }
            None => bytes,
        };
        let count = self.file.write(bytes)?;
        self.unsynced += count;
        if self.unsynced >= PIECE {
            self.sync_beside()?;
        }
        Ok(count)
    }

    fn flush(&mut self) -> io::Result<()> {
        self.file.flush()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn write(disk: &Disk, folder: &Path) -> io::Result<()> {
        let mut draft = disk.create(&folder.join("draft"))?;
        draft.write_all(&[7; 100])?;
        draft.sync()?;
        disk.rename(&folder.join("draft"), &folder.join("whole"))
    }

    #[test]
    fn every_call_can_be_made_to_fail_and_none_leaves_a_torn_file_under_the_name() {
        let counting = Arc::new(Faults::default());
        let folder = tempfile::tempdir().unwrap();
        write(&Disk::failing(counting.clone()), folder.path()).unwrap();
        assert_eq!(
            counting.calls(),
            5,
            "create, write, sync, rename, sync folder"
        );
        for fault in [Fault::InputOutput, Fault::Full, Fault::ShortThenFull] {
            for nth in 1..=5 {
                let folder = tempfile::tempdir().unwrap();
                let faults = Arc::new(Faults::at(nth, fault));
                let failed = write(&Disk::failing(faults), folder.path());
                assert!(failed.is_err(), "{fault:?} at call {nth}");
                let whole = fs::read(folder.path().join("whole")).ok();
                assert!(
                    whole.is_none_or(|bytes| bytes == [7; 100]),
                    "{fault:?} at call {nth}"
                );
            }
        }
    }

    #[test]
    fn a_short_write_alone_does_no_harm() {
        let folder = tempfile::tempdir().unwrap();
        write(
            &Disk::failing(Arc::new(Faults::at(2, Fault::Short))),
            folder.path(),
        )
        .unwrap();
        assert_eq!(fs::read(folder.path().join("whole")).unwrap(), [7; 100]);
    }
}
