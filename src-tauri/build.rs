//! Reads tauri.conf.json and embeds the built page.

fn main() {
    tauri_build::build();
}
