//! A common name of the tables where it stands inside a sentence.

/// First words of common names that keep their capital inside an English sentence.
const NAMES: [&str; 4] = ["American", "German", "Roman", "St"];

/// An English common name inside a sentence.
///
/// ```
/// use message::in_sentence;
/// assert_eq!(in_sentence("Lemon balm"), "lemon balm");
/// assert_eq!(in_sentence("St John's wort"), "St John's wort");
/// ```
pub fn in_sentence(common: &str) -> String {
    let first = common.split(' ').next().unwrap_or_default();
    let mut letters = common.chars();
    match letters.next() {
        Some(letter) if !NAMES.contains(&first) => letter.to_lowercase().chain(letters).collect(),
        _ => common.to_owned(),
    }
}
