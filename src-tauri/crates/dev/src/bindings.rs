//! `cargo dev bindings`: the commands as TypeScript, committed beside the page.

use std::path::Path;
use std::process::ExitCode;

use crate::failed;
use crate::flags::Flags;

/// Writes `ui/src/api/bindings.ts`, or with `--check` says whether it is current.
pub fn main(args: &[String]) -> ExitCode {
    let flags = match Flags::read(args, &[], &["--check"]) {
        Ok(flags) => flags,
        Err(why) => return failed(why),
    };
    let file = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../ui/src/api/bindings.ts");
    let text = api::bindings();
    if flags.has("--check") {
        return match std::fs::read_to_string(&file) {
            Ok(committed) if committed == text => ExitCode::SUCCESS,
            _ => failed("ui/src/api/bindings.ts is not current; run `cargo dev bindings`."),
        };
    }
    let folder = file.parent().map_or(Ok(()), std::fs::create_dir_all);
    match folder.and_then(|()| std::fs::write(&file, text)) {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => failed(format!("{} could not be written: {error}.", file.display())),
    }
}
