//! The .deb as a stranger meets it: in a Debian that holds nothing else, installed, opened, written to and removed.

use std::fs;
use std::path::{Path, PathBuf};
use std::process::Command;

use crate::install;
use crate::process::{openly, quietly, root, target, words};

/// Lays a clean Debian, installs `deb` there with what it says it needs, records a harvest in its window and removes it.
///
/// # Errors
/// What the failing program printed, or what the package left behind.
pub fn run(deb: &Path) -> Result<(), String> {
    install::system(install::WINDOW_TESTS)?;
    install::system(install::CLEAN_ROOT)?;
    install::npm("tests/e2e")?;
    let clean = target().join("package/debian");
    println!("Laying a clean Debian in {}.", clean.display());
    quietly(
        words("debootstrap --variant=minbase")
            .arg(release()?)
            .arg(&clean),
    )?;
    let within = Root(clean.clone());
    let name = deb.file_name().unwrap_or_default();
    fs::copy(deb, clean.join("root").join(name))
        .map_err(|error| format!("{} could not be copied: {error}.", deb.display()))?;

    println!("Installing the package with what it says that it needs.");
    quietly(&mut within.apt("update"))?;
    let mut install = within.apt("install --yes --no-install-recommends");
    quietly(install.arg(Path::new("/root").join(name)))?;
    let libraries = within.said("ldd /usr/bin/trugbook")?;
    if let Some(missing) = libraries.lines().find(|line| line.contains("not found")) {
        return Err(format!(
            "The package does not ask for all that it needs:{missing}."
        ));
    }
    // What drives the window comes after: it would bring libraries that the package forgot to ask for.
    quietly(&mut within.apt("install --yes --no-install-recommends webkit2gtk-driver"))?;

    println!("Recording a harvest in its window.");
    openly(
        words("npm run packaged")
            .current_dir(root().join("tests/e2e"))
            .env("TRUGBOOK_ROOT", &clean),
    )?;

    println!("Removing it.");
    let listed = within.said("dpkg --listfiles trugbook")?;
    quietly(&mut within.apt("purge --yes trugbook"))?;
    match listed.lines().find(|path| within.holds(path)) {
        Some(left) => Err(format!(
            "{left} is still there after the package was removed."
        )),
        None => Ok(()),
    }
}

/// The release that runs here, since the program was linked with its libraries.
fn release() -> Result<String, String> {
    let told = fs::read_to_string("/etc/os-release")
        .map_err(|error| format!("/etc/os-release could not be read: {error}."))?;
    let name = told
        .lines()
        .find_map(|line| line.strip_prefix("VERSION_CODENAME="));
    name.map(str::to_owned)
        .ok_or_else(|| "/etc/os-release names no release of Debian.".to_owned())
}

/// A clean root, in which programs run.
struct Root(PathBuf);

impl Root {
    fn command(&self, line: &str) -> Command {
        let mut command = words("sh tests/within.sh");
        command.arg(&self.0).args(line.split_whitespace());
        command
    }

    fn apt(&self, line: &str) -> Command {
        let mut command = self.command("apt-get -qq");
        command
            .args(line.split_whitespace())
            .env("DEBIAN_FRONTEND", "noninteractive");
        command
    }

    fn said(&self, line: &str) -> Result<String, String> {
        let answer = self.command(line).output();
        let answer = answer.map_err(|error| format!("{line} could not be run: {error}."))?;
        Ok(String::from_utf8_lossy(&answer.stdout).into_owned())
    }

    /// Whether a file, and no folder that others share, is there.
    fn holds(&self, path: &str) -> bool {
        let found = fs::symlink_metadata(self.0.join(path.trim_start_matches('/')));
        found.is_ok_and(|found| !found.is_dir())
    }
}
