//! The language of a call: what the core says in a reply is said in it, what the maker wrote stays as it is.

use std::cell::Cell;

use message::Message;

pub use ::words::Language;

thread_local! {
    /// The call that a thread works on; a long job works on another thread and is translated where it is shown.
    static SPOKEN: Cell<Language> = const { Cell::new(Language::English) };
}

/// A call in a language; it sets the language back even where the call panics.
pub(crate) struct Turn(Language);

impl Turn {
    /// What this thread says from here on it says in `language`.
    pub(crate) fn to(language: Language) -> Self {
        Self(SPOKEN.replace(language))
    }
}

impl Drop for Turn {
    fn drop(&mut self) {
        SPOKEN.set(self.0);
    }
}

/// The language of the call that this thread works on.
pub(crate) fn language() -> Language {
    SPOKEN.get()
}

/// Whether a text is what the app says in any of its languages.
pub(crate) fn is_said(message: &Message, text: &str) -> bool {
    Language::ALL
        .into_iter()
        .any(|language| language.tell(message) == text)
}

/// A message in the language of this call, where it becomes a line of the book or leaves as a file.
pub(crate) fn line(message: &Message) -> String {
    language().tell(message)
}
