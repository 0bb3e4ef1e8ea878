//! Numbers inside a sentence.

/// The decimal points of `text` as commas; dots that do not stand between two digits stay.
pub(crate) fn with_comma(text: &str) -> String {
    let bytes = text.as_bytes();
    let digit = |at: usize| bytes.get(at).is_some_and(u8::is_ascii_digit);
    let mut said = text.to_owned();
    for (at, _) in text.match_indices('.') {
        // "1.2.3" is a version, "21.06." a day: neither is a number.
        let whole = at.checked_sub(1).is_some_and(digit) && digit(at + 1);
        let start = (0..at).rev().find(|back| !digit(*back));
        let end = (at + 1..bytes.len()).find(|on| !digit(*on));
        let alone = start.is_none_or(|back| bytes[back] != b'.')
            && end.is_none_or(|on| bytes[on] != b'.' || !digit(on + 1));
        if whole && alone {
            said.replace_range(at..=at, ",");
        }
    }
    said
}

#[cfg(test)]
mod tests {
    use super::with_comma;

    #[test]
    fn only_the_point_of_a_number_becomes_a_comma() {
        assert_eq!(with_comma("0.85 and 12.5 mL."), "0,85 and 12,5 mL.");
        assert_eq!(with_comma("version 1.2.3"), "version 1.2.3");
        assert_eq!(with_comma("Ph. Eur. 0765"), "Ph. Eur. 0765");
    }
}
