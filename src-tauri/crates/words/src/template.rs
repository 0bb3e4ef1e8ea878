//! A sentence with holes: `{}` and `{name}` are translated in turn, `{=name}` is taken as it is, `{,name}` is a list.

/// What becomes of the text in a hole.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Hole {
    /// Words of the core or a number.
    Said,
    /// The maker's own, or a code.
    Verbatim,
    /// Several of the first kind, joined.
    List,
}

#[derive(Debug)]
enum Piece {
    Text(String),
    Hole(usize),
}

/// A pattern over English and the pieces of its translation.
#[derive(Debug)]
pub(crate) struct Template {
    /// The text before, between and after the holes.
    literals: Vec<String>,
    holes: Vec<Hole>,
    said: Vec<Piece>,
}

fn pieces(text: &str) -> Option<Vec<Result<&str, &str>>> {
    let mut found = Vec::new();
    let mut rest = text;
    while let Some(open) = rest.find('{') {
        let close = open + rest[open..].find('}')?;
        found.push(Ok(&rest[..open]));
        found.push(Err(&rest[open + 1..close]));
        rest = &rest[close + 1..];
    }
    found.push(Ok(rest));
    Some(found)
}

impl Template {
    /// Reads both sides of an entry; none where their holes differ.
    pub(crate) fn read(english: &str, translation: &str) -> Option<Self> {
        let mut literals = Vec::new();
        let mut holes = Vec::new();
        let mut names = Vec::new();
        for piece in pieces(english)? {
            match piece {
                Ok(text) => literals.push(text.to_owned()),
                Err(hole) => {
                    let name = hole.trim_start_matches(['=', ',']);
                    holes.push(match hole.chars().next() {
                        Some('=') => Hole::Verbatim,
                        Some(',') => Hole::List,
                        _ => Hole::Said,
                    });
                    names.push(name);
                }
            }
        }
        let mut used = vec![false; names.len()];
        let mut said = Vec::new();
        for piece in pieces(translation)? {
            match piece {
                Ok(text) => said.push(Piece::Text(text.to_owned())),
                Err(name) => {
                    let at = names.iter().position(|known| *known == name)?;
                    used[at] = true;
                    said.push(Piece::Hole(at));
                }
            }
        }
        used.iter().all(|used| *used).then_some(Self {
            literals,
            holes,
            said,
        })
    }

    /// Letters that are not in holes: the more, the surer a match.
    pub(crate) fn weight(&self) -> usize {
        self.literals.iter().map(String::len).sum()
    }

    /// The first letter, where the pattern does not begin with a hole.
    pub(crate) fn first(&self) -> Option<char> {
        self.literals[0].chars().next()
    }

    /// What fills the holes when `text` is this sentence.
    pub(crate) fn fit<'a>(&self, text: &'a str) -> Option<Vec<(Hole, &'a str)>> {
        let rest = text.strip_prefix(self.literals[0].as_str())?;
        let last = self.literals.last()?;
        if rest.len() < last.len() || !rest.ends_with(last.as_str()) {
            return None;
        }
        let mut filled = Vec::with_capacity(self.holes.len());
        self.fill(rest, 0, &mut filled).then_some(filled)
    }

    fn fill<'a>(&self, rest: &'a str, at: usize, filled: &mut Vec<(Hole, &'a str)>) -> bool {
        let Some(hole) = self.holes.get(at).copied() else {
            return rest.is_empty();
        };
        let next = self.literals[at + 1].as_str();
        let is_last = at + 1 == self.holes.len();
        let ends: Box<dyn Iterator<Item = usize>> = if is_last {
            Box::new(rest.strip_suffix(next).map(str::len).into_iter())
        } else if next.is_empty() {
            return false;
        } else {
            Box::new(rest.match_indices(next).map(|(end, _)| end))
        };
        for end in ends {
            // An empty hole says nothing, so this is another sentence.
            if end == 0 {
                continue;
            }
            filled.push((hole, &rest[..end]));
            if self.fill(&rest[end + next.len()..], at + 1, filled) {
                return true;
            }
            filled.pop();
        }
        false
    }

    /// Whether the translation begins with something that is the maker's to spell.
    pub(crate) fn opens_verbatim(&self) -> bool {
        let opening = self.said.iter().find(|piece| match piece {
            Piece::Text(text) => !text.is_empty(),
            Piece::Hole(_) => true,
        });
        matches!(opening, Some(Piece::Hole(at)) if self.holes[*at] == Hole::Verbatim)
    }

    /// The translation with its holes filled.
    pub(crate) fn filled(&self, holes: &[String]) -> String {
        self.said
            .iter()
            .map(|piece| match piece {
                Piece::Text(text) => text.as_str(),
                Piece::Hole(at) => holes.get(*at).map_or("", String::as_str),
            })
            .collect()
    }
}
