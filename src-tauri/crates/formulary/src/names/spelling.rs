//! How names are compared: without case, accents, spaces and marks, in either number, and with one slip.

/// The words of a name, folded: lower case, `ß` as ss, umlauts as two letters, no accent, no mark; the `x` of a hybrid
/// is no word.
pub(crate) fn words_of(name: &str) -> Vec<String> {
    let mut words = Vec::new();
    let mut word = String::new();
    for letter in name.chars() {
        match letter {
            // An apostrophe is left out by half of those who type.
            '\'' | '\u{2019}' | '\u{2018}' | '`' | '\u{b4}' => {}
            _ if letter.is_alphanumeric() => {
                for small in letter.to_lowercase() {
                    fold(small, &mut word);
                }
            }
            // What no eye sees parts no word.
            '\u{ad}'
            | '\u{200b}'..='\u{200f}'
            | '\u{2060}'
            | '\u{feff}'
            | '\u{300}'..='\u{36f}' => {}
            _ => words.push(std::mem::take(&mut word)),
        }
    }
    words.push(word);
    words.retain(|word| !word.is_empty() && word != "x");
    words
}

/// As [`folded`] with one letter for an umlaut, as they are typed who have none on their keys; nothing where the name
/// has no umlaut.
pub(crate) fn without_umlauts(name: &str) -> Option<String> {
    let plain: String = name
        .to_lowercase()
        .chars()
        .map(|letter| match letter {
            'ä' => 'a',
            'ö' => 'o',
            'ü' => 'u',
            'ß' => 's',
            other => other,
        })
        .collect();
    let plain = folded(&plain);
    (plain != folded(name)).then_some(plain)
}

/// A name as it is compared: its folded words without the spaces, since "colts foot" is coltsfoot.
pub(crate) fn folded(name: &str) -> String {
    words_of(name).concat()
}

fn fold(letter: char, word: &mut String) {
    match letter {
        'ä' | 'æ' => word.push_str("ae"),
        'ö' | 'œ' | 'ø' => word.push_str("oe"),
        'ü' => word.push_str("ue"),
        'ß' => word.push_str("ss"),
        'à' | 'á' | 'â' | 'ã' | 'å' => word.push('a'),
        'è' | 'é' | 'ê' | 'ë' => word.push('e'),
        'ì' | 'í' | 'î' | 'ï' => word.push('i'),
        'ò' | 'ó' | 'ô' | 'õ' => word.push('o'),
        'ù' | 'ú' | 'û' => word.push('u'),
        'ç' => word.push('c'),
        'ñ' => word.push('n'),
        other => word.push(other),
    }
}

/// The least that is left when an ending of the plural is taken away.
const LEAST_STEM: usize = 3;

/// What a folded name may be the plural of, in English or German; the name itself is not among them.
pub(crate) fn singulars(name: &str) -> Vec<String> {
    let mut found = Vec::new();
    for (plural, singular) in [
        ("ies", "y"),
        ("ves", "f"),
        ("es", ""),
        ("s", ""),
        ("en", ""),
        ("n", ""),
        ("e", ""),
    ] {
        if let Some(stem) = name.strip_suffix(plural)
            && stem.len() >= LEAST_STEM
        {
            found.push(format!("{stem}{singular}"));
        }
    }
    found
}

/// Names so short that one slip makes another word of them.
const SHORT: usize = 5;

/// Whether two folded names differ by one letter too many, too few or wrong, or by two that changed places.
///
/// Of names under five letters no slip is believed: too many of them are one letter from another word.
pub(crate) fn is_a_slip(typed: &str, name: &str) -> bool {
    let (a, b) = (typed.as_bytes(), name.as_bytes());
    if a == b || a.len().min(b.len()) < SHORT - 1 || a.len().max(b.len()) < SHORT {
        return false;
    }
    let same = a.iter().zip(b).take_while(|(a, b)| a == b).count();
    let (a, b) = (&a[same..], &b[same..]);
    match a.len().abs_diff(b.len()) {
        0 => a[1..] == b[1..] || (a.len() > 1 && a[0] == b[1] && a[1] == b[0] && a[2..] == b[2..]),
        1 if a.len() > b.len() => &a[1..] == b,
        1 => a == &b[1..],
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_is_compared_without_case_marks_and_spaces() {
        assert_eq!(folded("Hound's-Tongue"), "houndstongue");
        assert_eq!(folded("Mönchs\u{ad}kappe"), "moenchskappe");
        assert_eq!(folded("Mentha × piperita"), folded("Mentha x piperita"));
        assert_eq!(folded("colts foot"), folded("Colt’s foot"));
    }

    #[test]
    fn one_slip_is_forgiven_and_two_are_not() {
        for typed in ["foxgove", "foxgglove", "foxglave", "foxgloev", "oxglove"] {
            assert!(is_a_slip(typed, "foxglove"), "{typed}");
        }
        for typed in ["foxglove", "foxgoe", "foxglvoes", "xofglove", "fox"] {
            assert!(!is_a_slip(typed, "foxglove"), "{typed}");
        }
        assert!(!is_a_slip("rye", "rue"));
    }
}
