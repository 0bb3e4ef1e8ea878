//! The journal as the window sees it. Where it cannot be opened, every call answers why.

use std::collections::BTreeMap;
use std::fs::File;
use std::io::Read;
use std::path::PathBuf;
use std::sync::{Arc, OnceLock};
use std::thread;

use api::{App, Failure, Language, Picture, SystemClock};
use serde_json::Value;

/// What the garden asks first, as JSON: each command with its request. The page reads the same file.
pub const FIRST_QUESTIONS: &str = include_str!("../../ui/src/host/first.json");

/// The journal of a folder: open, or the sentence that says why it cannot be.
pub struct Book {
    folder: PathBuf,
    opened: OnceLock<Result<App, Failure>>,
}

impl Book {
    /// Begins to open the journal in `folder`, which is made if it is not there. The window is made meanwhile; who asks
    /// sooner waits.
    pub fn open(folder: PathBuf) -> Arc<Self> {
        let book = Arc::new(Self {
            folder,
            opened: OnceLock::new(),
        });
        let opening = Arc::clone(&book);
        thread::spawn(move || opening.app().is_ok());
        book
    }

    /// Has the core read what the first screen will ask for, while the web view is still starting: in a journal of many
    /// years that alone fills the caches, and takes longer than all that the screen waits for otherwise.
    pub fn read_ahead(self: &Arc<Self>) {
        let book = Arc::clone(self);
        thread::spawn(move || {
            if let Ok(app) = book.app() {
                for (command, request) in questions() {
                    // What goes wrong here goes wrong again when the page asks, and is said there.
                    let _ = api::call(app, &command, &request.to_string());
                }
            }
        });
    }

    /// Carries out one command and returns its envelope as JSON, the core's own sentences in `language`.
    pub fn call(&self, command: &str, request: &str, language: Language) -> String {
        api::envelope(match self.app() {
            Ok(app) => api::call_in(app, language, command, request),
            Err(failure) => api::spoken(language, Err(failure)),
        })
    }

    /// Takes a photo in and returns the envelope as JSON.
    pub fn take_photo(&self, bytes: impl Read, name: Option<&str>, language: Language) -> String {
        let answer = self.app().and_then(|app| app.take_photo(bytes, name));
        api::envelope(api::spoken(language, answer))
    }

    /// The picture at `<hash>/thumb` or `<hash>/original`.
    pub fn picture(&self, path: &str) -> Option<Picture> {
        let app = self.app().ok()?;
        let found = match path.split_once('/')? {
            (hash, "thumb") => app.thumb(hash),
            (hash, "original") => app.original(hash),
            _ => return None,
        };
        found.ok().flatten()
    }

    /// The file `name` that the core made to be taken away.
    pub fn made(&self, name: &str) -> Option<File> {
        Some(self.app().ok()?.made(name)?.file)
    }

    fn app(&self) -> Result<&App, Failure> {
        let opened = self
            .opened
            .get_or_init(|| App::open(&self.folder, Box::new(SystemClock)));
        opened.as_ref().map_err(Failure::clone)
    }
}

fn questions() -> BTreeMap<String, Value> {
    serde_json::from_str(FIRST_QUESTIONS).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use api::Language;

    use super::{Book, questions};
    use crate::scratch::Scratch;

    #[test]
    fn the_core_answers_what_the_garden_asks_first() {
        let folder = Scratch::new();
        let book = Book::open(folder.0.clone());
        assert!(questions().contains_key("harvest.list"));
        for (command, request) in questions() {
            let answer = book.call(&command, &request.to_string(), Language::English);
            assert!(answer.starts_with("{\"reply\""), "{command}: {answer}");
        }
    }
}
