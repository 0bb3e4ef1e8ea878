//! The journal as the window sees it. Where it cannot be opened, every call answers why.

use std::fs::File;
use std::io::Read;
use std::path::Path;

use api::{App, Failure, Language, Picture, SystemClock};

/// An open journal, or the sentence that says why it is none.
pub struct Book(Result<App, Failure>);

impl Book {
    /// Opens the journal in `folder`, which is made if it is not there.
    pub fn open(folder: &Path) -> Self {
        Self(App::open(folder, Box::new(SystemClock)))
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
        self.0.as_ref().map_err(Failure::clone)
    }
}
