//! The language of a call: what the core says in a reply is said in it, what the maker wrote stays as it is.

use std::cell::Cell;

use message::{Message, Voice};

pub use ::words::Language;

thread_local! {
    /// The call that a thread works on; a long job works on another thread and is translated where it is shown.
    static SPOKEN: Cell<Option<Language>> = const { Cell::new(None) };
}

/// A call in a language; it sets the language back even where the call panics.
pub(crate) struct Turn(Option<Language>);

impl Turn {
    /// What this thread says from here on it says in `language`.
    pub(crate) fn to(language: Language) -> Self {
        Self(SPOKEN.replace(Some(language)))
    }
}

impl Drop for Turn {
    fn drop(&mut self) {
        SPOKEN.set(self.0);
    }
}

/// The language of the call that this thread works on; English where it works on none.
pub(crate) fn language() -> Language {
    SPOKEN.get().unwrap_or_default()
}

/// Who says a reply of this call; nobody where there is no call, and the reply carries its messages.
pub(crate) fn voice() -> Option<Voice> {
    SPOKEN.get().map(|_| line as Voice)
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
