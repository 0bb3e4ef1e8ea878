//! `cargo dev bindings`: the commands as TypeScript, committed beside the page.

use std::path::Path;
use std::process::ExitCode;

use api::Language;

use crate::failed;
use crate::flags::Flags;

/// Writes the commands and the names that core and page share, or with `--check` says whether they are current.
pub fn main(args: &[String]) -> ExitCode {
    let flags = match Flags::read(args, &[], &["--check"]) {
        Ok(flags) => flags,
        Err(why) => return failed(why),
    };
    let page = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../ui/src");
    let made = [
        ("api/bindings.ts", api::bindings()),
        ("words/en/core.ts", api::shared_names(Language::English)),
        ("words/de/core.ts", api::shared_names(Language::German)),
    ];
    for (name, text) in made {
        let file = page.join(name);
        if flags.has("--check") {
            if std::fs::read_to_string(&file).is_ok_and(|committed| committed == text) {
                continue;
            }
            return failed(format!(
                "ui/src/{name} is not current; run `cargo dev bindings`."
            ));
        }
        let folder = file.parent().map_or(Ok(()), std::fs::create_dir_all);
        if let Err(error) = folder.and_then(|()| std::fs::write(&file, text)) {
            return failed(format!("{} could not be written: {error}.", file.display()));
        }
    }
    ExitCode::SUCCESS
}
