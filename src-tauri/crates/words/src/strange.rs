//! English with strange letters and longer words (`en-XA`): what does not come from the catalogue is seen in it, and
//! what has no room. The page does the same with its own words (`ui/src/words/pseudo.ts`).

use std::borrow::Cow;

const PLAIN: &str = "aeiouycdghjklmnrstwzAEIOUYCDGHJKLMNRSTWZ";
const STRANGE: &str = "áéíóúýćďǵȟĵķĺṁńŕśťŵźÁÉÍÓÚÝĆĎǴȞĴĶĹṀŃŔŚŤŴŹ";

/// A text of the catalogue, each word two fifths longer; what stands in its places never comes here.
pub(crate) fn strange(text: &str) -> Cow<'_, str> {
    let mut out = String::with_capacity(2 * text.len());
    let mut long = 0_usize;
    for letter in text.chars() {
        if letter.is_alphabetic() {
            long += 1;
            let at = PLAIN.chars().position(|plain| plain == letter);
            out.push(at.and_then(|at| STRANGE.chars().nth(at)).unwrap_or(letter));
        } else {
            lengthen(&mut out, &mut long);
            out.push(letter);
        }
    }
    lengthen(&mut out, &mut long);
    Cow::Owned(out)
}

/// Ends a word of so many letters.
fn lengthen(out: &mut String, long: &mut usize) {
    out.extend(std::iter::repeat_n('~', (2 * *long).div_ceil(5)));
    *long = 0;
}

#[cfg(test)]
mod tests {
    use message::{Argument, say};

    use super::strange;
    use crate::Language;

    #[test]
    fn every_letter_has_a_strange_one_and_every_word_grows() {
        assert_eq!(strange("Dry it, x"), "Ďŕý~~ íť~, x~");
    }

    #[test]
    fn what_was_given_stays_as_it_is() {
        let said = say!("own-words", text = Argument::own("Bay leaf"));
        assert_eq!(Language::Strange.tell(&said), "Bay leaf");
        let said = say!("jar-not-strained", name = Argument::own("Bay leaf"));
        let told = Language::Strange.tell(&said);
        assert!(told.starts_with("Bay leaf íś~"), "{told}");
        assert!(!told.contains("not"), "{told}");
    }
}
