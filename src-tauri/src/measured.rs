//! For measuring alone: when the first list stands in the page and can be touched.

/// Runs in the page before its first script.
pub const WATCH: &str = "
addEventListener('DOMContentLoaded', function look() {
  const stands = document.querySelector('main a[href^=\"#/harvest/\"]');
  requestAnimationFrame(stands ? () => window.__TAURI_INTERNALS__.invoke('stands') : look);
});
";

/// Says so on standard output.
#[tauri::command]
pub fn stands() {
    println!("stands");
}
