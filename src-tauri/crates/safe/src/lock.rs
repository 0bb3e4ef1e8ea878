//! One program at a time has a journal open. SQLite would serve two, but each of them clears the other's scratch, and a
//! restore puts another file in the place of the one that the other still writes to.

use std::fs::{File, TryLockError};
use std::io::Write as _;
use std::path::Path;
use std::thread;
use std::time::{Duration, Instant};

use message::{Code, Failure, say};

/// The system lets go of it when the program ends, however it ends.
pub const LOCK: &str = "journal.lock";
/// A program that was just closed may still be writing its last.
const PATIENCE: Duration = Duration::from_secs(1);

/// Whether a journal was begun in `folder` once.
pub fn says_begun(folder: &Path) -> bool {
    std::fs::metadata(folder.join(LOCK)).is_ok_and(|meta| meta.len() > 0)
}

/// Notes in the claimed file that there is a journal beside it: were that ever missing, it would not
/// be taken for one that was never begun.
pub fn say_begun(claim: Option<&File>) {
    let Some(mut file) = claim else { return };
    if file.metadata().is_ok_and(|meta| meta.len() == 0) {
        // Where it cannot be written, other traces tell.
        let _ = file.write_all(b"A journal lies beside this file.\n");
    }
}

/// The journal in `folder` is this program's for as long as the file is held; none where the place knows no locks.
///
/// # Errors
/// A [`Failure`] of code `storage` while another program has it open.
pub fn claim(folder: &Path) -> Result<Option<File>, Failure> {
    let mut how = File::options();
    let Ok(file) = how
        .create(true)
        .truncate(false)
        .write(true)
        .open(folder.join(LOCK))
    else {
        // What keeps this file from being made keeps the journal from being opened, and that says why.
        return Ok(None);
    };
    let until = Instant::now() + PATIENCE;
    loop {
        match file.try_lock() {
            Ok(()) => return Ok(Some(file)),
            Err(TryLockError::Error(_)) => return Ok(None),
            Err(TryLockError::WouldBlock) if Instant::now() < until => {
                thread::sleep(Duration::from_millis(20));
            }
            Err(TryLockError::WouldBlock) => {
                return Err(Failure::new(Code::Storage, say!("book-open-elsewhere")));
            }
        }
    }
}
