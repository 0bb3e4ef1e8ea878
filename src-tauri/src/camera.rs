//! The pictures that Android's camera app leaves in a folder of ours for the web view to read.

use std::fs;
use std::path::PathBuf;
use std::time::Duration;

use tauri::{AppHandle, Manager, Runtime};

/// A picture whose intake was cut off may still be wanted the same day.
const KEPT: Duration = Duration::from_secs(24 * 60 * 60);

/// Removes the picture of this name, once the album holds it.
pub fn taken_in<R: Runtime>(app: &AppHandle<R>, name: &str) {
    if let Some(folder) = folder(app).filter(|_| is_of_the_camera(name)) {
        // It may have been picked from elsewhere under such a name; then there is none here.
        let _ = fs::remove_file(folder.join(name));
    }
}

/// Removes the pictures that nobody took in for a day.
pub fn sweep<R: Runtime>(app: &AppHandle<R>) {
    let Some(entries) = folder(app).and_then(|folder| fs::read_dir(folder).ok()) else {
        return;
    };
    for entry in entries.flatten() {
        let is_old = entry
            .metadata()
            .and_then(|about| about.modified())
            .is_ok_and(|at| at.elapsed().is_ok_and(|age| age > KEPT));
        if is_old && entry.file_name().to_str().is_some_and(is_of_the_camera) {
            let _ = fs::remove_file(entry.path());
        }
    }
}

/// The web view's own naming of what it lets the camera app write.
fn is_of_the_camera(name: &str) -> bool {
    name.starts_with("JPEG_") && name.ends_with(".jpg") && !name.contains(['/', '\\'])
}

fn folder<R: Runtime>(app: &AppHandle<R>) -> Option<PathBuf> {
    app.path().picture_dir().ok()
}
