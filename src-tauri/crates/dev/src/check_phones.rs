//! The whole app, type-checked for Android and iOS without a kit of either.
//!
//! Another compiler from Debian builds the standard library for both targets. C code of dependencies cannot be
//! compiled without a phone's headers and need not be for a check of types: stand-ins write empty objects and
//! archives. Nothing is linked. The manifest and the resources of Android are compiled by `check_android`, Kotlin and
//! property lists are parsed by `check_sources`.

use std::fs;
use std::os::unix::fs::PermissionsExt;
use std::path::Path;

use crate::check::build_page;
use crate::check_android;
use crate::check_sources;
use crate::install;
use crate::process::{quietly, target, words};

const TARGETS: [&str; 2] = ["aarch64-linux-android", "aarch64-apple-ios"];

/// Answers as a C compiler would when asked who it is, and writes an empty object otherwise.
const COMPILER: &str = r#"#!/bin/sh
for word in "$@"; do
  [ "$before" = -o ] && out="$word"
  [ "$word" = -E ] && { echo clang; exit 0; }
  before="$word"
done
[ -z "$out" ] || : > "$out"
"#;

/// Writes an empty archive.
const ARCHIVER: &str = r#"#!/bin/sh
for word in "$@"; do
  case "$word" in *.a) printf '!<arch>\n' > "$word" ;; esac
done
"#;

/// Checks the app's types for every phone target.
///
/// # Errors
/// What the compiler printed.
pub fn run() -> Result<(), String> {
    check_sources::run()?;
    check_android::run()?;
    install::system(install::PHONES)?;
    build_page()?;
    // Another compiler's files must not replace ours.
    let folder = target().join("phones");
    let compiler = stand_in(&folder, "cc", COMPILER)?;
    let archiver = stand_in(&folder, "ar", ARCHIVER)?;
    let sdk = folder.join("sdk");
    fs::create_dir_all(&sdk)
        .map_err(|error| format!("{} could not be made: {error}.", sdk.display()))?;

    // Without this, building the standard library finds crates missing that only other targets name.
    quietly(&mut words("/usr/bin/cargo fetch --locked"))?;
    let mut check =
        words("/usr/bin/cargo check --locked -p trugbook --lib -Zbuild-std=std,panic_abort");
    check.args(["-Zwarnings", "--config", "build.warnings=\"deny\""]);
    for target in TARGETS {
        check.args(["--target", target]);
        let name = target.replace('-', "_");
        check
            .env(format!("CC_{name}"), &compiler)
            .env(format!("CXX_{name}"), &compiler)
            .env(format!("AR_{name}"), &archiver);
    }
    check
        .env("RUSTC", "/usr/bin/rustc")
        .env("RUSTC_BOOTSTRAP", "1")
        .env("CARGO_TARGET_DIR", &folder)
        .env("CARGO_PROFILE_DEV_DEBUG", "0")
        .env("SDKROOT", &sdk);
    quietly(&mut check)
}

fn stand_in(folder: &Path, name: &str, script: &str) -> Result<std::path::PathBuf, String> {
    let path = folder.join(name);
    let written = fs::create_dir_all(folder)
        .and_then(|()| fs::write(&path, script))
        .and_then(|()| fs::set_permissions(&path, fs::Permissions::from_mode(0o755)));
    written
        .map(|()| path.clone())
        .map_err(|error| format!("{} could not be written: {error}.", path.display()))
}
