//! What a fresh machine lacks: system packages, and the page's packages.

use std::io::IsTerminal;
use std::path::Path;
use std::process::Command;

use crate::process::{is_installed, program, quietly, root, words};

/// What the window is built from.
pub const WINDOW: &[&str] = &["build-essential", "pkg-config", "libwebkit2gtk-4.1-dev"];
/// What reads labels and documents back in the tests.
pub const READERS: &[&str] = &["poppler-utils", "qpdf", "zbar-tools"];
/// What the browser tests drive.
pub const BROWSER: &[&str] = &["chromium-headless-shell"];
/// What drives the real window without a display, watches whom it speaks to, and presses keys.
pub const WINDOW_TESTS: &[&str] = &["webkit2gtk-driver", "xvfb", "strace", "xdotool"];
/// What compiles Android's manifest and resources.
pub const ANDROID: &[&str] = &["aapt", "android-framework-res"];
/// What lays a Debian that holds nothing yet.
pub const CLEAN_ROOT: &[&str] = &["debootstrap"];
/// A compiler that can build the standard library for targets that have none here.
pub const PHONES: &[&str] = &["rustc-web", "cargo-web", "rust-web-src"];

/// Installs the system packages that are missing, by apt where root or sudo is there.
///
/// # Errors
/// The one line that would install them, where this program may not.
pub fn system(packages: &[&str]) -> Result<(), String> {
    let missing: Vec<&str> = packages
        .iter()
        .copied()
        .filter(|package| !is_present(package))
        .collect();
    if missing.is_empty() {
        return Ok(());
    }
    let list = missing.join(" ");
    if !is_installed("apt-get") {
        return Err(format!(
            "These Debian packages, or what your system calls them, are missing: {list}."
        ));
    }
    println!("  installing {list}");
    let allowed = apt("update -qq")
        .and_then(|()| apt(&format!("install -y -qq --no-install-recommends {list}")));
    allowed.map_err(|said| {
        format!("{said}\nRun this once, then try again:\n  sudo apt-get update && sudo apt-get install -y --no-install-recommends {list}")
    })
}

/// Installs the packages of a folder with a package.json, unless its lock file did not change since the last time.
///
/// # Errors
/// What npm printed, or that there is no Node.
pub fn npm(folder: &str) -> Result<(), String> {
    if !is_installed("npm") {
        return Err(
            "Node and npm are missing; Node 20 or later is needed to build the page.".to_owned(),
        );
    }
    let folder = root().join(folder);
    if is_newer(
        &folder.join("node_modules/.package-lock.json"),
        &folder.join("package-lock.json"),
    ) {
        return Ok(());
    }
    quietly(words("npm ci --no-audit --no-fund").current_dir(folder))
}

fn is_present(package: &str) -> bool {
    let asked = Command::new("dpkg-query")
        .args(["-W", "-f=${Status}", package])
        .output();
    asked.is_ok_and(|answer| answer.stdout.ends_with(b"ok installed"))
}

fn apt(arguments: &str) -> Result<(), String> {
    let line = format!("apt-get -o DPkg::Lock::Timeout=120 {arguments}");
    let is_root = program("id")
        .arg("-u")
        .output()
        .is_ok_and(|id| id.stdout.trim_ascii() == b"0");
    let line = match (is_root, is_installed("sudo")) {
        (true, _) => line,
        // sudo asks at the terminal itself, which only the group that it belongs to may; without one it must not wait.
        (false, true) if std::io::stdin().is_terminal() => {
            let asked = words(&format!("sudo {line}")).status();
            let is_done = asked.is_ok_and(|status| status.success());
            return is_done
                .then_some(())
                .ok_or_else(|| format!("This failed: sudo {line}"));
        }
        (false, true) => format!("sudo -n {line}"),
        (false, false) => return Err("Neither root nor sudo is at hand.".to_owned()),
    };
    quietly(words(&line).env("DEBIAN_FRONTEND", "noninteractive"))
}

fn is_newer(made: &Path, source: &Path) -> bool {
    let changed = |path: &Path| path.metadata().and_then(|file| file.modified());
    matches!((changed(made), changed(source)), (Ok(made), Ok(source)) if made >= source)
}
