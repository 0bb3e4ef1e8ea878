//! The shell: a window, one command, one address for pictures, one dialog for files, and what a phone alone can do.
//! Everything it says comes from `api`.
//!
//! Only this package names Tauri. It keeps nothing, decides nothing and formats nothing.

mod book;
mod call;
#[cfg(target_os = "android")]
mod camera;
mod link;
#[cfg(feature = "measured")]
mod measured;
mod page;
#[cfg(mobile)]
mod phone;
mod pictures;
#[cfg(mobile)]
mod reminders;
mod save;
#[cfg(test)]
mod scratch;

use std::path::PathBuf;
use std::process::ExitCode;
use std::sync::Arc;

use tauri::Manager;

use book::Book;

/// Opens the window on the journal in `folder`, or on the platform's own folder for this app.
pub fn run(folder: Option<PathBuf>) -> ExitCode {
    #[cfg(target_os = "linux")]
    page::draw_plainly();
    let builder = tauri::Builder::default()
        .plugin(tauri_plugin_deep_link::init())
        .plugin(tauri_plugin_dialog::init())
        .plugin(tauri_plugin_fs::init());
    #[cfg(mobile)]
    let builder = builder
        .plugin(tauri_plugin_barcode_scanner::init())
        .plugin(tauri_plugin_notification::init());
    let ran = builder
        .register_asynchronous_uri_scheme_protocol("photo", pictures::answer)
        .invoke_handler(tauri::generate_handler![
            call::call,
            link::opened_link,
            #[cfg(feature = "measured")]
            measured::stands,
            save::save,
            save::hand_over,
            #[cfg(mobile)]
            reminders::may_remind,
            #[cfg(mobile)]
            reminders::remind,
        ])
        .setup(|app| {
            let folder = match folder {
                Some(folder) => folder,
                None => app.path().app_data_dir()?,
            };
            let book = Book::open(folder);
            app.manage(Arc::clone(&book));
            link::listen(app)?;
            #[cfg(target_os = "android")]
            camera::sweep(app.handle());
            page::open(app)?;
            book.read_ahead();
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
