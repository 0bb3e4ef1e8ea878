//! A file that the maker takes away: the platform's own dialog asks where to.

use std::io::Write as _;

use base64::Engine as _;
use base64::prelude::BASE64_STANDARD as BASE64;
use tauri::{AppHandle, Runtime};
use tauri_plugin_dialog::DialogExt as _;
use tauri_plugin_fs::{FsExt as _, OpenOptions};

/// Asks where `file_name` shall go and writes it there; false when the maker thought better of it.
///
/// The bytes come as base64, for Android's IPC carries text only.
///
/// # Errors
/// A finished sentence when the place cannot be written to.
#[tauri::command]
pub async fn save<R: Runtime>(
    app: AppHandle<R>,
    file_name: String,
    base64: String,
) -> Result<bool, String> {
    let bytes = BASE64.decode(base64).map_err(|error| error.to_string())?;
    let asked = tauri::async_runtime::spawn_blocking(move || {
        let Some(place) = app
            .dialog()
            .file()
            .set_file_name(file_name)
            .blocking_save_file()
        else {
            return Ok(false);
        };
        let mut how = OpenOptions::new();
        how.write(true).create(true).truncate(true);
        let written = app.fs().open(place, how).and_then(|mut file| {
            file.write_all(&bytes)?;
            file.flush()
        });
        written
            .map(|()| true)
            .map_err(|error| format!("The file could not be written there: {error}."))
    });
    asked.await.map_err(|error| error.to_string())?
}
