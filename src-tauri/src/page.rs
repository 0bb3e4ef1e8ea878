//! The one window, and the little the page is told before its first script.

use tauri::{App, WebviewWindowBuilder};

/// Opens the window that tauri.conf.json describes.
///
/// # Errors
/// When the web view cannot be made.
pub fn open(app: &App) -> tauri::Result<()> {
    for window in &app.config().app.windows {
        let window =
            WebviewWindowBuilder::from_config(app, window)?.initialization_script(greeting());
        #[cfg(feature = "measured")]
        let window = window.initialization_script(crate::measured::WATCH);
        window.build()?;
    }
    Ok(())
}

/// The page learns its platform and the address of pictures from us, since an agent string may say anything.
///
/// WebKit opens its tables of days and numbers when they are first used, which takes it some 15 ms: here they pass while
/// it waits for the page's scripts.
fn greeting() -> String {
    // Android's and Windows' web views know no schemes of an app's own and see them as hosts.
    let pictures = if cfg!(any(target_os = "android", windows)) {
        "http://photo.localhost"
    } else {
        "photo://localhost"
    };
    format!(
        "Object.defineProperty(window, 'trugbook', {{ value: Object.freeze({{ platform: '{}', pictures: '{pictures}' }}) }});
        setTimeout(() => new Intl.NumberFormat());",
        std::env::consts::OS
    )
}
