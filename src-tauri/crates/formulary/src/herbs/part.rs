//! Parts of a plant and the classes that share a drying behaviour.

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
    pub fn feel_when_dry(self) -> &'static str {
        match self {
            Self::Leaf => {
                "A dry leaf crumbles between finger and thumb, and its stalk snaps instead of bending."
            }
            Self::Flower => {
                "The petals rustle like paper, and the thickest flower, torn open, is dry at its base."
            }
            Self::Herb => "The leaves crumble, and the thickest stem snaps instead of bending.",
            Self::Root => {
                "The thickest piece snaps instead of bending, and broken open it is hard and dry to the core."
            }
            Self::Bark => "The thickest strip snaps instead of bending, with no damp layer inside.",
            Self::Fruit => {
                "The thickest fruit is hard all through: pressed it does not give, cut open nothing in it is moist or sticks."
            }
            Self::Seed => "A seed is hard: a fingernail leaves no dent in it.",
            Self::Mushroom => "The thickest slice snaps instead of bending.",
            Self::Other => {
                "The thickest piece snaps or crumbles instead of bending, and is dry to the core."
            }
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
