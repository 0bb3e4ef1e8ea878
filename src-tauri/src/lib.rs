//! The shell: a window, one command, one address for pictures, one dialog for files. Everything it says comes from `api`.
//!
//! Only this package names Tauri. It keeps nothing, decides nothing and formats nothing.

mod book;
mod call;
mod page;
#[cfg(mobile)]
mod phone;
mod pictures;
mod save;

use std::path::PathBuf;
use std::process::ExitCode;
use std::sync::Arc;

use tauri::Manager;

use book::Book;

/// Opens the window on the journal in `folder`, or on the platform's own folder for this app.
pub fn run(folder: Option<PathBuf>) -> ExitCode {
    let ran = tauri::Builder::default()
        .plugin(tauri_plugin_dialog::init())
        .plugin(tauri_plugin_fs::init())
        .register_asynchronous_uri_scheme_protocol("photo", pictures::answer)
        .invoke_handler(tauri::generate_handler![call::call, save::save])
        .setup(|app| {
            let folder = match folder {
                Some(folder) => folder,
                None => app.path().app_data_dir()?,
            };
            app.manage(Arc::new(Book::open(&folder)));
            page::open(app)?;
            Ok(())
        })
        .run(tauri::generate_context!());
    match ran {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("The window could not be opened: {error}.");
            ExitCode::FAILURE
        }
    }
}
