//! How a phone starts the app: its own code calls this instead of a `main`.

#[tauri::mobile_entry_point]
fn start() {
    crate::run(None);
}
