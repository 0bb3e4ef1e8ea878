//! Which parts of a plant a row of the list names.

use crate::herbs::part::{PartClass, class_of};

/// Whether a row names a part.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Listed {
    /// Yes, or all parts.
    Named,
    /// It says that this part is food.
    Food,
    /// Nothing is said of it.
    Other,
}

/// Whether the text of a row names the part: "all parts", "leaf, bark, seed", "seed above all", "root (not the flower)".
pub(super) fn listed(row: &str, part: &str) -> Listed {
    let part = part.trim();
    if part.is_empty() {
        return Listed::Named;
    }
    let asked = class_of(part);
    let (says, aside) = match row.split_once('(') {
        Some((says, aside)) => (says, aside.trim_end_matches(')')),
        None => (row, ""),
    };
    // "not the flower" and "the garden root is food" both name what may be used.
    if !aside.is_empty() && words(aside).any(|word| class_of(word) == asked) {
        return Listed::Food;
    }
    if says.contains("all parts") || says.contains("above all") || says.contains("plant") {
        return Listed::Named;
    }
    let named = says
        .split([',', ';'])
        .flat_map(|piece| piece.split(" and "))
        .any(|piece| covers(piece.trim(), part, asked));
    if named { Listed::Named } else { Listed::Other }
}

fn words(text: &str) -> impl Iterator<Item = &str> {
    text.split(|it: char| !it.is_alphabetic())
        .filter(|word| !word.is_empty() && class_of(word) != PartClass::Other)
}

fn covers(piece: &str, part: &str, asked: PartClass) -> bool {
    use PartClass::{Bark, Flower, Fruit, Herb, Leaf, Other, Root, Seed};
    if piece.eq_ignore_ascii_case(part) {
        return true;
    }
    let above_ground = matches!(asked, Herb | Leaf | Flower | Other);
    let woody = ["twig", "bark", "tip"].iter().any(|it| part.contains(it));
    match class_of(piece) {
        // The bark of a root is no bark of a branch.
        Root | Bark if piece.contains("root") => asked == Root,
        Root => asked == Root,
        Bark => asked == Bark || woody,
        Herb => above_ground || woody,
        Leaf => matches!(asked, Leaf | Herb) || woody,
        Flower => matches!(asked, Flower | Herb),
        Fruit | Seed => matches!(asked, Fruit | Seed),
        _ if piece.contains("sap") || piece.contains("milk") => above_ground,
        _ if ["twig", "cone", "frond"]
            .iter()
            .any(|it| piece.contains(it)) =>
        {
            above_ground || woody
        }
        _ if ["pod", "capsule"].iter().any(|it| piece.contains(it)) => matches!(asked, Fruit),
        _ => false,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_part_is_named_by_its_kind_and_what_is_food_is_told_apart() {
        for (row, part, expected) in [
            ("all parts, root above all", "leaf", Listed::Named),
            ("seed above all", "leaf", Listed::Named),
            ("root, berry", "rhizome", Listed::Named),
            ("root, berry", "leaf", Listed::Other),
            ("leaf, herb, oil", "flowering tops", Listed::Named),
            ("bark, leaf, seed (not the flower)", "flower", Listed::Food),
            (
                "sap of leaf and stem (the garden root is food)",
                "root",
                Listed::Food,
            ),
            (
                "sap of leaf and stem (the garden root is food)",
                "leaf",
                Listed::Named,
            ),
            ("berry, fresh bark", "bark", Listed::Named),
            ("root bark, oil", "leaf", Listed::Other),
            ("root bark, oil", "bark", Listed::Other),
            ("berry", "leaf", Listed::Other),
            ("twig tips, oil", "shoots", Listed::Named),
            ("capsule, milk", "seed", Listed::Other),
            ("seed", "", Listed::Named),
        ] {
            assert_eq!(listed(row, part), expected, "{row}: {part}");
        }
    }
}
