//! The link of a label that opened the app, kept until the page asks for it.

use std::sync::{Mutex, PoisonError};

use tauri::{App, AppHandle, Manager, Runtime, State};
use tauri_plugin_deep_link::DeepLinkExt as _;

/// The latest link that no page has taken yet.
#[derive(Default)]
pub struct Opened(Mutex<Option<String>>);

/// Hears of every link of ours that the system hands to the app.
///
/// # Errors
/// When the system cannot be asked for the link that started the app.
pub fn listen<R: Runtime>(app: &App<R>) -> Result<(), tauri_plugin_deep_link::Error> {
    app.manage(Opened::default());
    for link in app.deep_link().get_current()?.unwrap_or_default() {
        keep(app.handle(), link.into());
    }
    let handle = app.handle().clone();
    app.deep_link().on_open_url(move |event| {
        for link in event.urls() {
            keep(&handle, link.into());
        }
    });
    Ok(())
}

fn keep<R: Runtime>(app: &AppHandle<R>, link: String) {
    let opened = app.state::<Opened>();
    *opened.0.lock().unwrap_or_else(PoisonError::into_inner) = Some(link);
    for window in app.webview_windows().values() {
        // A page that is not there yet asks by itself once it is.
        let _ = window.eval("window.dispatchEvent(new Event('trugbook-link'))");
    }
}

/// The link that opened the app, once.
#[tauri::command]
pub fn opened_link(opened: State<'_, Opened>) -> Option<String> {
    opened
        .0
        .lock()
        .unwrap_or_else(PoisonError::into_inner)
        .take()
}
