//! The journal of before: what it was is written to a file of its own before it is replaced or
//! merged, and the new state names that file, so that either can be taken back.

use std::path::Path;

use store::Store;

use super::{Keep, remove_journal, unwritable};
use crate::Failure;

/// Whether this is a file that holds the journal of before.
pub(super) fn is_aside(path: &Path) -> bool {
    let name = path.file_name().unwrap_or_default().to_string_lossy();
    name.starts_with("before-") && name.ends_with(".trugbook")
}

/// Changes the whole journal, which the caller lets nobody else write. `change` is given the name
/// of the file that now holds what it was, and says whether anything has changed. One journal of
/// before is kept: the earlier one goes, or the new one when it was not needed.
pub(super) fn changed<T>(
    keep: &Keep,
    store: &mut Store,
    id: &str,
    change: impl FnOnce(&mut Store, &str) -> Result<(bool, T), store::Failure>,
) -> Result<T, Failure> {
    let earlier = store.aside()?.map(|name| keep.folder.join(name));
    let name = format!("before-{id}.trugbook");
    let path = keep.folder.join(&name);
    let done = store
        .snapshot(&path, |_, _| Ok::<_, store::Failure>(()))
        .map_err(Failure::from)
        .and_then(|_| keep.disk.sync_folder(&keep.folder).map_err(unwritable))
        .and_then(|()| change(store, &name).map_err(Failure::from));
    match &done {
        Ok((true, _)) => {
            if let Some(earlier) = earlier.filter(|path| is_aside(path)) {
                remove_journal(&earlier);
            }
        }
        Ok((false, _)) | Err(_) => remove_journal(&path),
    }
    done.map(|(_, value)| value)
}
