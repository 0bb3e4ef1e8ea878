//! A file that the maker takes away: the platform's own dialog asks where to.

use std::io::{self, Read};
use std::sync::Arc;

use api::Language;
use base64::Engine as _;
use base64::prelude::BASE64_STANDARD as BASE64;
use message::{Argument, Message, say};
use tauri::{AppHandle, Runtime, State};
use tauri_plugin_dialog::DialogExt as _;
use tauri_plugin_fs::FilePath;
#[cfg(mobile)]
use tauri_plugin_fs::{FsExt as _, OpenOptions};

use crate::book::Book;

/// Asks where `file_name` shall go and writes it there; false when the maker thought better of it.
///
/// The bytes come as base64, for Android's IPC carries text only.
///
/// # Errors
/// A finished sentence in `language` when the place cannot be written to.
#[tauri::command]
pub async fn save<R: Runtime>(
    app: AppHandle<R>,
    file_name: String,
    base64: String,
    language: String,
) -> Result<bool, String> {
    let bytes = BASE64.decode(base64).map_err(|error| error.to_string())?;
    let asked =
        tauri::async_runtime::spawn_blocking(move || keep(&app, &file_name, &mut bytes.as_slice()));
    let kept = asked.await.map_err(|error| error.to_string())?;
    spoken(&language, kept)
}

/// Asks where the file `name` that the core made shall go and copies it there, however long it is; false when the
/// maker thought better of it.
///
/// # Errors
/// A finished sentence in `language` when there is no such file or the place cannot be written to.
#[tauri::command]
pub async fn hand_over<R: Runtime>(
    app: AppHandle<R>,
    book: State<'_, Arc<Book>>,
    name: String,
    language: String,
) -> Result<bool, String> {
    let book = Arc::clone(&book);
    let asked = tauri::async_runtime::spawn_blocking(move || {
        let mut file = book.made(&name).ok_or_else(|| say!("save-gone"))?;
        keep(&app, &name, &mut file)
    });
    let kept = asked.await.map_err(|error| error.to_string())?;
    spoken(&language, kept)
}

/// A refusal in the language of this tag.
fn spoken<T>(tag: &str, kept: Result<T, Message>) -> Result<T, String> {
    kept.map_err(|said| Language::of(tag).tell(&said))
}

fn keep<R: Runtime>(
    app: &AppHandle<R>,
    file_name: &str,
    from: &mut impl Read,
) -> Result<bool, Message> {
    let asked = app.dialog().file().set_file_name(file_name);
    let Some(place) = asked.blocking_save_file() else {
        return Ok(false);
    };
    put(app, place, from)
        .map(|()| true)
        .map_err(|error| match error.kind() {
            io::ErrorKind::StorageFull => say!("save-no-room"),
            _ => say!("save-failed", detail = Argument::own(error.to_string())),
        })
}

/// A phone gives the place as a content address, which can only be opened and written to.
#[cfg(mobile)]
fn put<R: Runtime>(app: &AppHandle<R>, place: FilePath, from: &mut impl Read) -> io::Result<()> {
    let mut how = OpenOptions::new();
    how.write(true).create(true).truncate(true);
    let mut file = app.fs().open(place, how)?;
    io::copy(from, &mut file)?;
    match file.sync_all() {
        // Some places are a pipe to somebody's cloud, which nobody can wait for.
        Err(error) if error.kind() == io::ErrorKind::InvalidInput => Ok(()),
        synced => synced,
    }
}

/// What lay in that place stays until the new file is whole.
#[cfg(desktop)]
fn put<R: Runtime>(_: &AppHandle<R>, place: FilePath, from: &mut impl Read) -> io::Result<()> {
    let place = place.into_path().map_err(io::Error::other)?;
    whole(&place, from)
}

#[cfg(desktop)]
fn whole(place: &std::path::Path, from: &mut impl Read) -> io::Result<()> {
    let mut part = place.as_os_str().to_owned();
    part.push(".part");
    let part = std::path::PathBuf::from(part);
    let written = std::fs::File::create(&part)
        .and_then(|mut file| {
            io::copy(from, &mut file)?;
            file.sync_all()
        })
        .and_then(|()| std::fs::rename(&part, place));
    if written.is_err() {
        // It may never have been made, and nobody asked for it.
        let _ = std::fs::remove_file(&part);
    }
    written
}

#[cfg(all(test, desktop))]
mod tests {
    use std::fs;
    use std::io::{self, Read};

    use message::say;

    use super::{spoken, whole};
    use crate::scratch::Scratch;

    /// Gives a little and then fails, as a disk that was pulled out does.
    struct Torn(bool);

    impl Read for Torn {
        fn read(&mut self, piece: &mut [u8]) -> io::Result<usize> {
            if std::mem::replace(&mut self.0, true) {
                return Err(io::Error::other("gone"));
            }
            piece[0] = b'x';
            Ok(1)
        }
    }

    #[test]
    fn what_lay_there_stays_until_the_new_file_is_whole() {
        let folder = Scratch::new();
        let place = folder.0.join("backup.zip");
        fs::write(&place, "the old one").unwrap();

        assert!(whole(&place, &mut Torn(false)).is_err());
        assert_eq!(fs::read_to_string(&place).unwrap(), "the old one");
        assert_eq!(fs::read_dir(&folder.0).unwrap().count(), 1);

        whole(&place, &mut "the new one".as_bytes()).unwrap();
        assert_eq!(fs::read_to_string(&place).unwrap(), "the new one");
        assert_eq!(fs::read_dir(&folder.0).unwrap().count(), 1);
    }
    #[test]
    fn a_refusal_is_said_in_the_language_of_the_page() {
        let refused = |tag| spoken::<()>(tag, Err(say!("save-no-room"))).unwrap_err();
        assert!(refused("en").contains("not enough room"));
        assert!(refused("de-AT").contains("nicht genug Platz"));
    }
}
