//! A sentence with holes: `{name}` is translated in turn, `{=name}` taken as it is, `{,name}` is a list, `{#name}` a
//! figure without letters.

/// What becomes of the text in a hole.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(crate) enum Hole {
    /// Words of the core or a number.
    Said,
    /// The maker's own, or a code.
    Verbatim,
    /// Several of the first kind, joined.
    List,
    /// Digits and signs.
    Figure,
}

/// Ways of reading a sentence beyond these are not tried.
const MOST_WAYS: usize = 6;

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
                    let name = hole.trim_start_matches(['=', ',', '#']);
                    holes.push(match hole.chars().next() {
                        Some('=') => Hole::Verbatim,
                        Some(',') => Hole::List,
                        Some('#') => Hole::Figure,
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

    /// Every way in which `text` is this sentence, up to a few: what fills the holes.
    pub(crate) fn fits<'a>(&self, text: &'a str) -> Vec<Vec<(Hole, &'a str)>> {
        let mut ways = Vec::new();
        let (Some(first), Some(last)) = (self.literals.first(), self.literals.last()) else {
            return ways;
        };
        if let Some(rest) = text.strip_prefix(first.as_str())
            && rest.len() >= last.len()
            && rest.ends_with(last.as_str())
        {
            self.fill(rest, &mut Vec::new(), &mut ways);
        }
        ways
    }

    fn fill<'a>(
        &self,
        rest: &'a str,
        filled: &mut Vec<(Hole, &'a str)>,
        ways: &mut Vec<Vec<(Hole, &'a str)>>,
    ) {
        let at = filled.len();
        let Some(hole) = self.holes.get(at).copied() else {
            if rest.is_empty() {
                ways.push(filled.clone());
            }
            return;
        };
        let next = self.literals[at + 1].as_str();
        let is_last = at + 1 == self.holes.len();
        let ends: Vec<usize> = match rest.strip_suffix(next) {
            Some(inner) if is_last => vec![inner.len()],
            _ if is_last || next.is_empty() => Vec::new(),
            _ => rest.match_indices(next).map(|(end, _)| end).collect(),
        };
        for end in ends {
            let inner = &rest[..end];
            // An empty hole says nothing, so this is another sentence.
            let is_wrong =
                inner.is_empty() || (hole == Hole::Figure && inner.contains(char::is_alphabetic));
            if is_wrong || ways.len() >= MOST_WAYS {
                continue;
            }
            filled.push((hole, inner));
            self.fill(&rest[end + next.len()..], filled, ways);
            filled.pop();
        }
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
