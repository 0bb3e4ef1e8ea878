//! The folder on disk: where a photo lies, and how a file gets there so that a power cut leaves
//! either nothing or the whole file.

use std::fs::{self, File};
use std::io::{self, Write};
use std::path::{Path, PathBuf};
use std::process;
use std::sync::atomic::{AtomicU64, Ordering};

use disk::Disk;

use crate::Hash;

const INCOMING: &str = "incoming";

/// One of the two trees of the album; both name a file by the first two digits of its hash and the hash.
#[derive(Clone, Copy)]
pub(crate) enum Tree {
    Originals,
    Thumbs,
}

impl Tree {
    fn folder(self, root: &Path) -> PathBuf {
        root.join(match self {
            Self::Originals => "originals",
            Self::Thumbs => "thumbs",
        })
    }

    pub(crate) fn path(self, root: &Path, hash: &Hash) -> PathBuf {
        let name = hash.to_string();
        let folder = self.folder(root).join(&name[..2]);
        match self {
            Self::Originals => folder.join(name),
            Self::Thumbs => folder.join(name + ".jpg"),
        }
    }
}

/// Makes the folders and clears what an interrupted run left half-written.
pub(crate) fn prepare(disk: &Disk, root: &Path) -> io::Result<()> {
    for folder in [
        Tree::Originals.folder(root),
        Tree::Thumbs.folder(root),
        root.join(INCOMING),
    ] {
        disk.create_folders(&folder)?;
    }
    disk.sync_folder(root)?;
    let ours = own_prefix();
    for entry in fs::read_dir(root.join(INCOMING))? {
        let entry = entry?;
        if !entry.file_name().to_string_lossy().starts_with(&ours) {
            disk.remove(&entry.path())?;
        }
    }
    Ok(())
}

/// Files under their hash, in order of the hash; whatever else lies there is not ours and is passed over.
pub(crate) fn hashes(root: &Path) -> io::Result<Vec<Hash>> {
    let mut found = Vec::new();
    for folder in fs::read_dir(Tree::Originals.folder(root))? {
        let folder = folder?;
        if !folder.file_type()?.is_dir() {
            continue;
        }
        for file in fs::read_dir(folder.path())? {
            let file = file?;
            // The folder tells the type of most files; asking for each of 100,000 takes seconds.
            if let Ok(hash) = file.file_name().to_string_lossy().parse::<Hash>()
                && Tree::Originals.path(root, &hash) == file.path()
                && file.file_type()?.is_file()
            {
                found.push(hash);
            }
        }
    }
    found.sort_unstable();
    found.dedup();
    Ok(found)
}

/// A file being written under a temporary name; dropped before [`Draft::publish`], it is gone.
pub(crate) struct Draft {
    pub(crate) file: disk::Draft,
    disk: Disk,
    path: PathBuf,
}

impl Draft {
    pub(crate) fn new(disk: &Disk, root: &Path) -> io::Result<Self> {
        static NEXT: AtomicU64 = AtomicU64::new(0);
        loop {
            let number = NEXT.fetch_add(1, Ordering::Relaxed);
            let path = root
                .join(INCOMING)
                .join(format!("{}{number}", own_prefix()));
            match disk.create(&path) {
                Ok(file) => {
                    return Ok(Self {
                        file,
                        disk: disk.clone(),
                        path,
                    });
                }
                // Left by an earlier process that had our number.
                Err(error) if error.kind() == io::ErrorKind::AlreadyExists => {}
                Err(error) => return Err(error),
            }
        }
    }

    /// Syncs the file, gives it its name and syncs the folders, so that it is there after a power cut.
    pub(crate) fn publish(mut self, root: &Path, tree: Tree, hash: &Hash) -> io::Result<()> {
        self.file.sync()?;
        let target = tree.path(root, hash);
        let folder = target.parent().unwrap_or(root);
        if !folder.is_dir() {
            self.disk.create_folders(folder)?;
            self.disk.sync_folder(&tree.folder(root))?;
        }
        self.disk.rename(&self.path, &target)
    }
}

impl Drop for Draft {
    fn drop(&mut self) {
        // After publishing there is nothing under this name; a failure here is mended at the next opening.
        let _ = fs::remove_file(&self.path);
    }
}

/// Writes a whole small file durably.
pub(crate) fn write_whole(
    disk: &Disk,
    root: &Path,
    tree: Tree,
    hash: &Hash,
    bytes: &[u8],
) -> io::Result<()> {
    let mut draft = Draft::new(disk, root)?;
    draft.file.write_all(bytes)?;
    draft.publish(root, tree, hash)
}

/// `None` where there is no such file.
pub(crate) fn open(path: &Path) -> io::Result<Option<File>> {
    match File::open(path) {
        Ok(file) => Ok(Some(file)),
        Err(error) if error.kind() == io::ErrorKind::NotFound => Ok(None),
        Err(error) => Err(error),
    }
}

fn own_prefix() -> String {
    format!("{}-", process::id())
}
