//! The one window, and the little the page is told before its first script.

use tauri::{App, WebviewWindowBuilder};

use crate::book::FIRST_QUESTIONS;

/// Opens the window that tauri.conf.json describes.
///
/// # Errors
/// When the web view cannot be made.
pub fn open(app: &App) -> tauri::Result<()> {
    for window in &app.config().app.windows {
        let window =
            WebviewWindowBuilder::from_config(app, window)?.initialization_script(greeting());
        // The page names itself in its reader's language; a window's frame does not follow it by itself.
        #[cfg(desktop)]
        let window = window.on_document_title_changed(|window, title| {
            if let Err(why) = window.set_title(&title) {
                eprintln!("the window kept its title: {why}");
            }
        });
        #[cfg(feature = "measured")]
        let window = window.initialization_script(crate::measured::WATCH);
        let window = window.build()?;
        #[cfg(target_os = "linux")]
        window.with_webview(|view| revive(&view.inner()))?;
        #[cfg(not(target_os = "linux"))]
        let _ = window;
    }
    Ok(())
}

/// Has WebKitGTK draw with the processor, before it is begun: readying the graphics card takes it some 30 MB and leaves the
/// window white where the card's driver is broken, and our pages scroll as smoothly without. Whoever wants the card all
/// the same starts the app with this variable at 0.
#[cfg(target_os = "linux")]
pub fn draw_plainly() {
    if let Err(why) = webkit2gtk::glib::setenv("WEBKIT_DISABLE_COMPOSITING_MODE", "1", false) {
        eprintln!("the graphics card is used: {why}");
    }
}

/// A window whose page died would stay white; what was being written is kept, and stands there again. Tauri sees to it on
/// Apple's systems alone.
#[cfg(target_os = "linux")]
fn revive(view: &webkit2gtk::WebView) {
    use webkit2gtk::WebViewExt as _;
    view.connect_web_process_terminated(|view, why| {
        eprintln!("the page ended and is loaded anew: {why:?}");
        view.reload();
    });
}

/// The page learns its platform and the address of pictures from us, since an agent string may say anything.
///
/// What the garden asks first is asked here, in the language that the page will choose, while the web view waits for the
/// page's own scripts, which take it longest. Another language than the page's costs nothing but the lead. WebKit opens its
/// tables of days and numbers when they are first used, which takes it some 15 ms: they pass here too.
fn greeting() -> String {
    // Android's and Windows' web views know no schemes of an app's own and see them as hosts.
    let pictures = if cfg!(any(target_os = "android", windows)) {
        "http://photo.localhost"
    } else {
        "photo://localhost"
    };
    format!(
        "{{
            const ahead = {{ language: null, answers: {{}} }};
            const value = {{ platform: '{}', pictures: '{pictures}', ahead }};
            Object.defineProperty(window, 'trugbook', {{ value: Object.freeze(value) }});
            setTimeout(() => {{
                try {{
                    const tags = [localStorage.getItem('language'), ...navigator.languages].map((tag) => tag?.slice(0, 2));
                    const language = tags.find((tag) => tag === 'en' || tag === 'de') ?? 'en';
                    for (const [command, request] of Object.entries({FIRST_QUESTIONS})) {{
                        const answer = window.__TAURI_INTERNALS__.invoke('call', {{ command, request, language }});
                        ahead.answers[`${{command}} ${{JSON.stringify(request)}}`] = answer.catch(() => null);
                    }}
                    ahead.language = language;
                }} catch {{
                    // The page asks by itself.
                }}
                new Intl.NumberFormat();
            }});
        }}",
        std::env::consts::OS
    )
}
