//! What Android reads of the app besides its code, without Android's kit: the manifest and the resources are compiled by
//! Debian's `aapt` against the framework that Debian has, and every permission has its reason in DEVELOPERS.md.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

use roxmltree::{Document, Node};

use crate::install;
use crate::process::{quietly, root, target, words};

const FRAMEWORK: &str = "/usr/share/android-framework-res/framework-res.apk";
const ANDROID: &str = "http://schemas.android.com/apk/res/android";
const TOOLS: &str = "http://schemas.android.com/tools";

/// What Debian's framework (Android 10) does not know, and what is compiled in its place. A name that is not in this
/// list and not in the framework is a mistake.
const STAND_INS: [(&str, &str); 4] = [
    // A theme of a library that Gradle adds.
    (
        "Theme.Material3.DayNight.NoActionBar",
        "android:Theme.Material.NoActionBar",
    ),
    // Attributes of Android 12 and later.
    (
        "android:windowSplashScreenBackground",
        "android:colorPrimary",
    ),
    // What Gradle fills in.
    ("${applicationId}", "app.trugbook"),
    ("${usesCleartextTraffic}", "false"),
];

/// Compiles manifest and resources, and holds the permissions to their table.
///
/// # Errors
/// What `aapt` printed, or the permissions that have no reason, or reasons without a permission.
pub fn run() -> Result<(), String> {
    install::system(install::ANDROID)?;
    let main = root().join("src-tauri/gen/android/app/src/main");
    let made = target().join("phones/android");
    let copied = copy(&main.join("res"), &made.join("res")).and_then(|()| {
        copy_file(
            &main.join("AndroidManifest.xml"),
            &made.join("AndroidManifest.xml"),
        )
    });
    copied.map_err(|error| format!("{} could not be filled: {error}.", made.display()))?;
    quietly(
        words("aapt package -f --min-sdk-version 26 --target-sdk-version 29 -M")
            .arg(made.join("AndroidManifest.xml"))
            .arg("-S")
            .arg(made.join("res"))
            .args(["-I", FRAMEWORK, "-F"])
            .arg(made.join("resources.apk")),
    )?;
    permissions(&main.join("AndroidManifest.xml"))
}

/// Copies a folder, with the stand-ins in its XML.
fn copy(from: &Path, to: &Path) -> std::io::Result<()> {
    // What was removed from the sources must not be compiled from an earlier copy.
    if to.exists() {
        fs::remove_dir_all(to)?;
    }
    fs::create_dir_all(to)?;
    for entry in fs::read_dir(from)? {
        let path = entry?.path();
        let to = to.join(path.file_name().unwrap_or_default());
        match path.is_dir() {
            true => copy(&path, &to)?,
            false => copy_file(&path, &to)?,
        }
    }
    Ok(())
}

fn copy_file(from: &Path, to: &Path) -> std::io::Result<()> {
    if from.extension().is_none_or(|ending| ending != "xml") {
        return fs::copy(from, to).map(|_| ());
    }
    let mut text = fs::read_to_string(from)?;
    for (name, instead) in STAND_INS {
        text = text.replace(name, instead);
    }
    // Gradle takes the name of the package from its own file.
    let text = text.replacen("<manifest ", "<manifest package=\"app.trugbook\" ", 1);
    fs::write(to, text)
}

/// The permissions that one manifest asks for, and those that it takes away from others.
fn asked(manifest: &Path) -> Result<(BTreeSet<String>, BTreeSet<String>), String> {
    let text = fs::read_to_string(manifest)
        .map_err(|error| format!("{}: {error}.", manifest.display()))?;
    let document =
        Document::parse(&text).map_err(|error| format!("{}: {error}.", manifest.display()))?;
    let permissions = document
        .descendants()
        .filter(|node| node.has_tag_name("uses-permission"));
    let (gone, kept): (Vec<Node>, Vec<Node>) =
        permissions.partition(|node| node.attribute((TOOLS, "node")) == Some("remove"));
    let names = |nodes: Vec<Node>| {
        let names = nodes
            .into_iter()
            .filter_map(|node| node.attribute((ANDROID, "name")));
        names.map(str::to_owned).collect()
    };
    Ok((names(kept), names(gone)))
}

/// The manifests that the plugins of the app bring along, where Cargo keeps their sources.
fn of_plugins() -> Result<Vec<PathBuf>, String> {
    let told = words("cargo metadata --locked --format-version 1")
        .output()
        .map_err(|error| error.to_string())?;
    let told: serde_json::Value =
        serde_json::from_slice(&told.stdout).map_err(|error| error.to_string())?;
    let packages = told["packages"].as_array().into_iter().flatten();
    let manifests = packages
        .filter(|package| {
            package["name"]
                .as_str()
                .is_some_and(|name| name.starts_with("tauri-plugin-"))
        })
        .filter_map(|package| {
            Path::new(package["manifest_path"].as_str()?)
                .parent()
                .map(Path::to_owned)
        })
        .map(|folder| folder.join("android/src/main/AndroidManifest.xml"));
    Ok(manifests.filter(|manifest| manifest.exists()).collect())
}

/// Holds what the installed app will ask for to the table of DEVELOPERS.md.
fn permissions(ours: &Path) -> Result<(), String> {
    let (mut wanted, gone) = asked(ours)?;
    let plugins = of_plugins()?;
    if plugins.is_empty() {
        return Err("No manifest of a plugin was found.".to_owned());
    }
    for plugin in plugins {
        wanted.extend(asked(&plugin)?.0);
    }
    wanted.retain(|permission| !gone.contains(permission));
    let text =
        fs::read_to_string(root().join("DEVELOPERS.md")).map_err(|error| error.to_string())?;
    let reasoned: BTreeSet<String> = text
        .lines()
        .filter_map(|line| line.strip_prefix("| `")?.split_once("` |"))
        .filter(|(_, reason)| reason.trim_matches(['|', ' ']).len() > 10)
        .map(|(name, _)| format!("android.permission.{name}"))
        .filter(|name| wanted.contains(name))
        .collect();
    let without: Vec<&String> = wanted.difference(&reasoned).collect();
    match without.as_slice() {
        [] => Ok(()),
        without => Err(format!(
            "DEVELOPERS.md gives no reason why the app asks for {without:?}."
        )),
    }
}
