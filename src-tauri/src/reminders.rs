//! Notices that the phone shows by itself at their time. No server knows of them.

use serde::Deserialize;
use serde_json::json;
use tauri::plugin::PermissionState;
use tauri::{AppHandle, Runtime};
use tauri_plugin_notification::{NotificationExt as _, Schedule};

/// One notice, in the words of the page.
#[derive(Debug, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Reminder {
    /// Tells the notices apart, from 1.
    id: i32,
    /// When, as ISO 8601 in UTC.
    at: String,
    title: String,
    body: String,
}

/// Whether the phone lets the app show notices; asks the owner if `ask` and they have not been asked.
///
/// # Errors
/// When the phone cannot be asked.
#[tauri::command]
pub async fn may_remind<R: Runtime>(app: AppHandle<R>, ask: bool) -> Result<bool, String> {
    apart(move || {
        let notices = app.notification();
        let mut state = notices.permission_state()?;
        if ask && state != PermissionState::Granted {
            state = notices.request_permission()?;
        }
        Ok(state == PermissionState::Granted)
    })
    .await
}

/// Puts these notices in the place of all that wait.
///
/// # Errors
/// When the phone refuses one; those before it wait.
#[tauri::command]
pub async fn remind<R: Runtime>(app: AppHandle<R>, reminders: Vec<Reminder>) -> Result<(), String> {
    apart(move || {
        let notices = app.notification();
        notices.cancel_all()?;
        for Reminder {
            id,
            at,
            title,
            body,
        } in reminders
        {
            // A phone that lies idle still tells in the morning; to the minute it need not be.
            let when = json!({ "at": { "date": at, "repeating": false, "allowWhileIdle": true } });
            let when: Schedule = serde_json::from_value(when)?;
            let notice = notices.builder().id(id).title(title).body(body);
            let notice = notice.icon("ic_reminder").schedule(when);
            notice.auto_cancel().show()?;
        }
        Ok(())
    })
    .await
}

/// The plugin waits for the phone, and nothing else may wait with it.
async fn apart<T: Send + 'static>(
    ask: impl FnOnce() -> Result<T, Box<dyn std::error::Error>> + Send + 'static,
) -> Result<T, String> {
    tauri::async_runtime::spawn_blocking(move || ask().map_err(|error| error.to_string()))
        .await
        .map_err(|error| error.to_string())?
}
