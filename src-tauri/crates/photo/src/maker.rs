//! The one thread that makes previews.
//!
//! A picture takes much memory while it is unpacked, and an allocator keeps for each thread what that thread let go
//! of. A page asks for the previews of a list all at once, on as many threads: made on those, they would add up.

use std::fs::File;
use std::panic::{AssertUnwindSafe, catch_unwind, resume_unwind};
use std::sync::LazyLock;
use std::sync::mpsc::{Receiver, Sender, SyncSender, channel, sync_channel};
use std::thread;

use image::metadata::Orientation;

use crate::Kind;
use crate::preview::{self, NoPreview};

/// A preview, and whether part of the picture is missing.
type Made = Result<(Vec<u8>, bool), NoPreview>;

/// A picture to unpack, and who waits for it.
struct Task {
    kind: Kind,
    size: Option<(u32, u32)>,
    orientation: Orientation,
    file: File,
    answer: SyncSender<thread::Result<Made>>,
}

static TASKS: LazyLock<Sender<Task>> = LazyLock::new(|| {
    let (tasks, waiting) = channel();
    // Where no thread can be started the tasks go nowhere, and whoever asks makes the preview itself.
    let _ = thread::Builder::new()
        .name("previews".to_owned())
        .spawn(move || work(&waiting));
    tasks
});

fn work(waiting: &Receiver<Task>) {
    for task in waiting {
        let Task {
            kind,
            size,
            orientation,
            file,
            answer,
        } = task;
        let make = || preview::make(kind, size, orientation, &file);
        let made = catch_unwind(AssertUnwindSafe(make));
        // Whoever asked may be gone.
        let _ = answer.send(made);
    }
}

/// As [`preview::make`], after whatever was asked for before.
pub(crate) fn make(
    kind: Kind,
    size: Option<(u32, u32)>,
    orientation: Orientation,
    file: &File,
) -> Made {
    let (answer, made) = sync_channel(1);
    let asked = file.try_clone().ok().map(|file| {
        TASKS.send(Task {
            kind,
            size,
            orientation,
            file,
            answer,
        })
    });
    match asked.map(|_| made.recv()) {
        Some(Ok(Ok(made))) => made,
        Some(Ok(Err(panic))) => resume_unwind(panic),
        _ => preview::make(kind, size, orientation, file),
    }
}
