//! Parts of a plant, their names and the classes that share a drying behaviour.

use message::{Message, say};

/// The parts that the tables name and those a maker is offered; each has its name in every language.
pub(crate) const PARTS: [&str; 39] = [
    "leaf",
    "herb",
    "root",
    "flower",
    "flowering tops",
    "berry",
    "fruit",
    "rhizome",
    "seed",
    "bulb",
    "bark",
    "petal",
    "cap",
    "unripe fruit",
    "tuber",
    "tops",
    "sterile stem",
    "stem",
    "stalk",
    "scape",
    "shoots",
    "leaf and flower",
    "hip",
    "flowering spike",
    "flowering herb",
    "cone",
    "calyx",
    "bud",
    "blanched leaf",
    "whole plant",
    "aerial parts",
    "root with herb",
    "seed (bitter)",
    "seed (sweet)",
    "any",
    "unripe berry",
    "fresh leaf",
    "fresh root",
    "fresh plant",
];

/// The name of a part inside a sentence; one that is not ours is the maker's own.
///
/// ```
/// use formulary::herbs::part_name;
/// assert_eq!(part_name("flowering tops"), message::say!("part-flowering-tops"));
/// assert_eq!(part_name("Blatt"), message::Message::own("Blatt"));
/// ```
pub fn part_name(part: &str) -> Message {
    if PARTS.contains(&part) {
        Message::of_table(entry(part))
    } else {
        Message::own(part)
    }
}

/// The entry of the catalogue that names a part.
pub(crate) fn entry(part: &str) -> String {
    format!("part-{}", super::slug(part))
}

/// The class of a part, as the tables of water content group them.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PartClass {
    /// Leaves.
    Leaf,
    /// Flowers.
    Flower,
    /// The aerial herb, flowering tops.
    Herb,
    /// Roots, rhizomes, tubers, bulbs.
    Root,
    /// Bark, buds.
    Bark,
    /// Fruits, berries, hips.
    Fruit,
    /// Seeds.
    Seed,
    /// Caps of mushrooms.
    Mushroom,
    /// Anything else.
    Other,
}

impl PartClass {
    /// The key of its row of general figures.
    pub(super) fn default_key(self) -> &'static str {
        match self {
            Self::Leaf => "leaf",
            Self::Flower => "flower",
            Self::Herb => "herb",
            Self::Root => "root",
            Self::Bark => "bark",
            Self::Fruit | Self::Seed | Self::Mushroom | Self::Other => "any",
        }
    }

    /// Whether it dries slowly, as roots, fruits and bark do.
    pub fn is_dense(self) -> bool {
        matches!(self, Self::Root | Self::Bark | Self::Fruit | Self::Seed)
    }

    /// How the hand tells that it is dry, in one sentence; common practice, no source.
    pub fn feel_when_dry(self) -> Message {
        match self {
            Self::Leaf => say!("feel-leaf"),
            Self::Flower => say!("feel-flower"),
            Self::Herb => say!("feel-herb"),
            Self::Root => say!("feel-root"),
            Self::Bark => say!("feel-bark"),
            Self::Fruit => say!("feel-fruit"),
            Self::Seed => say!("feel-seed"),
            Self::Mushroom => say!("feel-mushroom"),
            Self::Other => say!("feel-other"),
        }
    }
}

/// The class of a part by its name, singular or plural, in any case; of "leaf/herb" the first counts.
pub fn class_of(part: &str) -> PartClass {
    let part = part
        .split(['/', ','])
        .next()
        .unwrap_or_default()
        .trim()
        .to_lowercase();
    let has = |words: &[&str]| words.iter().any(|word| part.contains(word));
    if has(&["leaf and flower", "leaf with flower"]) {
        PartClass::Herb
    } else if has(&["tops", "herb", "aerial", "whole plant", "spike"]) {
        if part == "flower spike" {
            PartClass::Flower
        } else {
            PartClass::Herb
        }
    } else if has(&["leaf", "leaves", "stalk", "shoot", "scape"]) {
        PartClass::Leaf
    } else if has(&["flower", "blossom", "petal", "cone", "calyx", "strobile"]) {
        PartClass::Flower
    } else if has(&["root", "rhizome", "tuber", "bulb", "corm"]) {
        PartClass::Root
    } else if has(&["bark", "bud"]) {
        PartClass::Bark
    } else if has(&["fruit", "berry", "berries", "hip", "peel"]) {
        PartClass::Fruit
    } else if has(&["seed"]) {
        PartClass::Seed
    } else if part == "cap" || part == "caps" || has(&["mushroom"]) {
        PartClass::Mushroom
    } else if has(&["stem"]) {
        PartClass::Herb
    } else {
        PartClass::Other
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn part_names_fall_into_their_class() {
        for (part, class) in [
            ("Leaves", PartClass::Leaf),
            ("flowering tops", PartClass::Herb),
            ("flower", PartClass::Flower),
            ("leaf and flower", PartClass::Herb),
            ("rhizome", PartClass::Root),
            ("hip", PartClass::Fruit),
            ("cap", PartClass::Mushroom),
            ("leaf/herb", PartClass::Leaf),
            ("twig", PartClass::Other),
        ] {
            assert_eq!(class_of(part), class, "{part}");
        }
    }
}
