//! Short codes for lots, to be written on a lid and read aloud.

use message::{Argument, say};
use std::fmt::Display;
use std::str::FromStr;

use serde::{Deserialize, Serialize};
use uuid::Uuid;

use crate::Refusal;

/// Consonants that sound and look different enough in a pantry.
const CONSONANTS: &[u8; 14] = b"bdfgklmnprstvz";
const VOWELS: &[u8; 5] = b"aeiou";
/// Syllables that are rude or hurtful in a language some maker speaks.
const EXCLUDED: &[&str] = &[
    "dago", "fagi", "fago", "kaka", "kike", "nazi", "pipi", "popo", "pupu", "puta", "puto", "titi",
];

/// A code such as `tavo-472`: two syllables and three digits, 4.4 million in all.
#[derive(Debug, Clone, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct LotCode(String);

/// A code is the same in every language.
impl From<&LotCode> for Argument {
    fn from(code: &LotCode) -> Self {
        Self::own(&code.0)
    }
}

impl LotCode {
    /// The `attempt`-th code that an id suggests. Whoever keeps the journal asks
    /// for the next one while a code is taken.
    pub fn suggested(id: Uuid, attempt: u32) -> Self {
        // A prime step visits all codes before it repeats one.
        let seed = mix(id.as_u128()).wrapping_add(u64::from(attempt).wrapping_mul(982_451_653));
        let mut rest = seed;
        loop {
            let code = Self::numbered(rest);
            if EXCLUDED.iter().all(|word| !code.0.starts_with(word)) {
                return code;
            }
            rest = rest.wrapping_add(1);
        }
    }

    fn numbered(number: u64) -> Self {
        let mut rest = number;
        let mut take = |count: u64| {
            let digit = rest % count;
            rest /= count;
            digit as usize
        };
        let mut code = String::with_capacity(8);
        for _ in 0..2 {
            code.push(CONSONANTS[take(14)] as char);
            code.push(VOWELS[take(5)] as char);
        }
        // No leading zero: it is left out when read aloud.
        code.push_str(&format!("-{}", 100 + take(900)));
        Self(code)
    }

    /// The code as text.
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

/// Spreads the few bits in which ids of the same second differ over the whole
/// number (the finaliser of SplitMix64).
fn mix(id: u128) -> u64 {
    let mut z = (id as u64) ^ ((id >> 64) as u64).rotate_left(32);
    z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
    z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
    z ^ (z >> 31)
}

impl FromStr for LotCode {
    type Err = Refusal;

    /// Reads a code as people type it: any case, with a space or nothing for the dash.
    fn from_str(text: &str) -> Result<Self, Refusal> {
        let plain: String = text
            .chars()
            .filter(|letter| !letter.is_whitespace() && *letter != '-')
            .flat_map(char::to_lowercase)
            .collect();
        let bytes = plain.as_bytes();
        let well_formed = bytes.len() == 7
            && CONSONANTS.contains(&bytes[0])
            && VOWELS.contains(&bytes[1])
            && CONSONANTS.contains(&bytes[2])
            && VOWELS.contains(&bytes[3])
            && bytes[4] != b'0'
            && bytes[4..].iter().all(u8::is_ascii_digit);
        if well_formed {
            Ok(Self(format!("{}-{}", &plain[..4], &plain[4..])))
        } else {
            Err(Refusal::new("code", say!("refused-lot-code")))
        }
    }
}

impl TryFrom<String> for LotCode {
    type Error = Refusal;

    fn try_from(text: String) -> Result<Self, Refusal> {
        text.parse()
    }
}

impl From<LotCode> for String {
    fn from(code: LotCode) -> Self {
        code.0
    }
}

impl Display for LotCode {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str(&self.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_code_is_read_as_it_is_typed() {
        for typed in ["tavo-472", "TAVO 472", "tavo472", " tavo - 472 "] {
            assert_eq!(typed.parse::<LotCode>().unwrap().as_str(), "tavo-472");
        }
        for typed in [
            "",
            "tavo",
            "tavo-47",
            "tavo-072",
            "tuvw-123",
            "åavo-472",
            "tavo-4722",
        ] {
            assert!(typed.parse::<LotCode>().is_err(), "{typed}");
        }
    }

    #[test]
    fn neighbouring_ids_and_attempts_get_different_codes() {
        let codes: std::collections::BTreeSet<_> = (0..100_u128)
            .flat_map(|id| {
                (0..5).map(move |attempt| LotCode::suggested(Uuid::from_u128(id), attempt))
            })
            .collect();
        // By chance 0.03 pairs in 500 codes would be alike; the ids are fixed, so this never wavers.
        assert_eq!(codes.len(), 500);
    }

    #[test]
    fn every_suggestion_reads_back_and_none_is_rude() {
        for id in 0..20_000_u128 {
            let code = LotCode::suggested(Uuid::from_u128(id << 40), 0);
            assert_eq!(code.as_str().parse::<LotCode>().unwrap(), code);
            assert!(EXCLUDED.iter().all(|word| !code.as_str().starts_with(word)));
        }
    }
}
