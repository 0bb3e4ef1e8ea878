//! The plants as the screens show them: one file of drawings, and the table that says which herb takes which. A drawing is a
//! box of 160 by 200 of its own units.

use std::collections::BTreeMap;
use std::sync::LazyLock;

use message::{Argument, say};
use words::Language;

use crate::page::{Ink, Mark, Stroke};
use crate::part::{Role, part};
use crate::say::plain as told;

/// The box of a drawing.
pub(crate) const BOX: (f64, f64) = (160.0, 200.0);

/// The file of drawings, as `build.rs` packed it.
static SHEET: LazyLock<String> = LazyLock::new(|| {
    let packed = include_bytes!(concat!(env!("OUT_DIR"), "/plants.deflate"));
    let text = miniz_oxide::inflate::decompress_to_vec(packed).ok();
    let text = text.and_then(|text| String::from_utf8(text).ok());
    text.unwrap_or_else(|| panic!("the drawings cannot be unpacked"))
});
const TABLE: &str = include_str!("../../../../ui/drawings/plants.tsv");

/// The herb that is drawn.
#[derive(Debug, Clone, PartialEq)]
pub struct Herb {
    /// What it is called, for whoever does not see the drawing.
    pub name: Argument,
    /// The key of the table of herbs, or that of an own one.
    pub key: String,
    /// The part, which says what is drawn of it.
    pub part: String,
}

/// One path of a drawing, by the class that names what it is.
type Path = (&'static str, &'static str);

static SYMBOLS: LazyLock<BTreeMap<&str, Vec<Path>>> = LazyLock::new(|| {
    let symbols = SHEET.split("<symbol id=\"").skip(1);
    symbols
        .filter_map(|symbol| {
            let (name, body) = symbol.split_once('"')?;
            let body = body.split("</symbol>").next()?;
            let paths = body.split("<path class=\"").skip(1).filter_map(|path| {
                let (kind, rest) = path.split_once("\" d=\"")?;
                Some((kind, rest.split('"').next()?))
            });
            Some((name, paths.collect()))
        })
        .collect()
});

/// The drawing by herb and part; a row for any part has a star.
static CHOSEN: LazyLock<BTreeMap<(&str, &str), &str>> = LazyLock::new(|| {
    let rows = TABLE.lines().skip(1);
    rows.filter_map(|row| {
        let mut cells = row.split('\t');
        Some(((cells.next()?, cells.next()?), cells.next()?))
    })
    .collect()
});

/// What a herb that the table does not know is drawn as, by what is picked of it, as on the page.
fn plain(part: &str) -> &'static [&'static str] {
    let names = |any: &[&str]| any.iter().any(|it| part.contains(it));
    if names(&["root", "rhizome", "bulb", "tuber"]) {
        &["comfrey", "dock", "gentian"]
    } else if names(&["berr", "fruit", "hip", "seed", "strobile", "cone"]) {
        &["haws", "currant", "bramble"]
    } else if names(&["flower", "petal", "blossom", "spike"]) {
        &["feverfew", "arnica", "chicory"]
    } else {
        &["broadleaf", "sage", "balm", "basil"]
    }
}

/// The first fall of the page's dice by a seed alone, from 0 to below 1 (`ui/src/drawings/dice.ts`).
fn fall(seed: &str) -> f64 {
    let mut state = 2_166_136_261_u32;
    for letter in seed.chars() {
        // The page goes by the first half of what UTF-16 splits.
        let half = letter.encode_utf16(&mut [0; 2])[0];
        state = (state ^ u32::from(half)).wrapping_mul(16_777_619);
    }
    state = (state ^ state >> 15).wrapping_mul(2_246_822_507);
    state = (state ^ state >> 13).wrapping_mul(3_266_489_909);
    f64::from(state ^ state >> 16) / 4_294_967_296.0
}

fn drawing_of(herb: &Herb) -> &'static str {
    let by = |part: &str| CHOSEN.get(&(herb.key.as_str(), part)).copied();
    by(&herb.part).or_else(|| by("*")).unwrap_or_else(|| {
        let among = plain(&herb.part);
        among[(fall(&herb.key) * among.len() as f64) as usize]
    })
}

/// The plant as a picture that fills a box of `height` mm, its left upper corner the origin.
pub(crate) fn picture(herb: &Herb, height: f64, language: Language) -> Mark {
    let shows = say!("paper-drawing", herb = herb.name.clone());
    part(Role::Figure(told(language, &shows)), marks(herb, height))
}

/// The plant as marks that fill a box of `height` mm, its left upper corner the origin.
fn marks(herb: &Herb, height: f64) -> Vec<Mark> {
    let scale = height / BOX.1;
    let paths = SYMBOLS.get(drawing_of(herb)).into_iter().flatten();
    let mark = |(kind, d): &Path| {
        let (fill, ink, wide) = look(kind);
        Mark::Shape {
            x: 0.0,
            y: 0.0,
            strokes: strokes(d, scale),
            fill,
            edge: Some((ink, wide * scale)),
        }
    };
    paths.map(mark).collect()
}

/// What fills a path of a kind, and the ink and width of its edge in units of the drawing.
fn look(kind: &str) -> (Option<Ink>, Ink, f64) {
    let fill = match kind {
        "stem" => return (None, Ink::Plain, 2.0),
        "vein" => return (None, Ink::Plain, 0.7),
        "feather" => return (None, Ink::Stalk, 1.7),
        "rootlet" => return (None, Ink::Root, 1.6),
        "green" => Ink::Green,
        "grey" => Ink::Grey,
        "white" => Ink::Paper,
        "cream" | "bulb" => Ink::Petal,
        "yellow" => Ink::Yellow,
        "orange" => Ink::Berry,
        "violet" => Ink::Violet,
        "blue" => Ink::Blue,
        "pink" => Ink::Pink,
        "red" => Ink::Red,
        "dark" => Ink::Dark,
        "brown" | "root" => Ink::Root,
        _ => Ink::Leaf,
    };
    (Some(fill), Ink::Plain, 1.2)
}

/// The outline that a path says: M, then l, c and a from where it stands, and Z; a is always a half circle.
fn strokes(d: &str, scale: f64) -> Vec<Stroke> {
    let mut found = Vec::new();
    let (mut here, mut foot) = ((0.0, 0.0), (0.0, 0.0));
    let at = |(x, y): (f64, f64)| (x * scale, y * scale);
    let curve = |one, two, end| {
        let ((a, b), (c, d), (e, f)) = (at(one), at(two), at(end));
        Stroke::Curve([a, b, c, d, e, f])
    };
    let mut rest = d;
    while let Some(letter) = rest.chars().next() {
        let end = rest[1..].find(|it: char| it.is_ascii_alphabetic());
        let (one, after) = rest.split_at(end.map_or(rest.len(), |end| end + 1));
        rest = after;
        let figures = numbers(&one[1..]);
        let by = |here: (f64, f64), n: &[f64]| (here.0 + n[0], here.1 + n[1]);
        match letter {
            'M' if figures.len() == 2 => {
                (here, foot) = ((figures[0], figures[1]), (figures[0], figures[1]));
                let (x, y) = at(here);
                found.push(Stroke::Move(x, y));
            }
            'l' => {
                for n in figures.chunks_exact(2) {
                    here = by(here, n);
                    let (x, y) = at(here);
                    found.push(Stroke::Line(x, y));
                }
            }
            'c' => {
                for n in figures.chunks_exact(6) {
                    let (one, two, end) = (by(here, n), by(here, &n[2..]), by(here, &n[4..]));
                    found.push(curve(one, two, end));
                    here = end;
                }
            }
            'a' => {
                for n in figures.chunks_exact(7) {
                    let end = by(here, &n[5..]);
                    found
                        .extend(half_circle(here, end).map(|[one, two, end]| curve(one, two, end)));
                    here = end;
                }
            }
            'Z' => {
                found.push(Stroke::Close);
                here = foot;
            }
            _ => {}
        }
    }
    found
}

/// The numbers of a path: a sign parts them where no blank does.
fn numbers(text: &str) -> Vec<f64> {
    let parted = text.replace('-', " -");
    let words = parted.split_whitespace();
    words.filter_map(|word| word.parse().ok()).collect()
}

/// A half circle between two points at one height as two curves, by the way that SVG calls no sweep: from left to right below.
fn half_circle(from: (f64, f64), to: (f64, f64)) -> [[(f64, f64); 3]; 2] {
    // The handle of a quarter of a circle.
    const HANDLE: f64 = 0.552_284_75;
    let (middle, r) = ((from.0 + to.0) / 2.0, (to.0 - from.0) / 2.0);
    let (y, k) = (from.1, r * HANDLE);
    let deep = y + r;
    [
        [(from.0, y + k), (middle - k, deep), (middle, deep)],
        [(middle + k, deep), (to.0, y + k), (to.0, y)],
    ]
}

#[cfg(test)]
mod tests {
    use super::*;

    fn herb(key: &str, part: &str) -> Herb {
        Herb {
            name: Argument::own(key),
            key: key.to_owned(),
            part: part.to_owned(),
        }
    }

    #[test]
    fn the_dice_fall_as_on_the_page() {
        // By `dice("Lemon balm")` of ui/src/drawings/dice.ts.
        assert_eq!(fall("Lemon balm"), 0.164_006_668_142_974_38);
    }

    #[test]
    fn every_row_of_the_table_has_its_drawing() {
        assert!(CHOSEN.len() > 120 && SYMBOLS.len() > 80);
        for drawing in CHOSEN.values() {
            let paths = SYMBOLS.get(drawing);
            assert!(paths.is_some_and(|paths| !paths.is_empty()), "{drawing}");
        }
        assert_eq!(drawing_of(&herb("rose", "hip")), "hips");
        assert_eq!(drawing_of(&herb("rose", "petal")), "rose");
    }

    #[test]
    fn a_herb_of_ones_own_is_drawn_by_what_is_picked_of_it() {
        for part in ["root", "berry", "flower", "leaf", "Blatt"] {
            let drawing = drawing_of(&herb("01a22b46-f0e4-72cc-9e82-79c6a3455b2e", part));
            assert!(plain(part).contains(&drawing) && SYMBOLS.contains_key(drawing));
        }
        for part in ["root", "berry", "flower", "leaf"] {
            assert!(plain(part).iter().all(|it| SYMBOLS.contains_key(it)));
        }
    }

    #[test]
    fn a_path_is_read_from_where_it_stands() {
        let read = strokes("M10 20l5-5-3 2c1 0 2 1 3 4Zl1 1", 2.0);
        assert_eq!(
            read,
            [
                Stroke::Move(20.0, 40.0),
                Stroke::Line(30.0, 30.0),
                Stroke::Line(24.0, 34.0),
                Stroke::Curve([26.0, 34.0, 28.0, 36.0, 30.0, 42.0]),
                Stroke::Close,
                Stroke::Line(22.0, 42.0),
            ]
        );
        let round = strokes("M6 10a4 4 0 1 0 8 0a4 4 0 1 0-8 0Z", 1.0);
        let ends: Vec<(f64, f64)> = round
            .iter()
            .filter_map(|stroke| match stroke {
                Stroke::Curve([.., x, y]) => Some((*x, *y)),
                _ => None,
            })
            .collect();
        assert_eq!(ends, [(10.0, 14.0), (14.0, 10.0), (10.0, 6.0), (6.0, 10.0)]);
    }

    #[test]
    fn a_plant_stays_in_its_box_and_is_the_same_each_time() {
        for (key, part) in CHOSEN.keys() {
            let drawn = marks(&herb(key, part), 100.0);
            assert_eq!(drawn.len(), marks(&herb(key, part), 100.0).len());
            for mark in &drawn {
                let Mark::Shape { strokes, .. } = mark else {
                    panic!("a plant is of outlines")
                };
                for stroke in strokes {
                    if let Stroke::Move(x, y) | Stroke::Line(x, y) | Stroke::Curve([.., x, y]) =
                        stroke
                    {
                        assert!((0.0..=80.0).contains(x), "{key}: {x}");
                        assert!((0.0..=100.0).contains(y), "{key}: {y}");
                    }
                }
            }
        }
    }
}
