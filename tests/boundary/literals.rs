//! No screen and no part of the page holds a word of its own: all of them stand in `ui/src/words`.

use super::{files, top};

/// Attributes and properties that a person reads or hears.
const READ: [&str; 12] = [
    "alt",
    "aria-description",
    "aria-label",
    "aria-valuetext",
    "heading",
    "hint",
    "label",
    "legend",
    "placeholder",
    "said",
    "text",
    "title",
];

/// The markup of a component: without script, style and comments.
fn markup(source: &str) -> String {
    let mut rest = source.to_owned();
    for (open, close) in [
        ("<script", "</script>"),
        ("<style", "</style>"),
        ("<!--", "-->"),
    ] {
        while let Some(start) = rest.find(open) {
            let end = rest[start..]
                .find(close)
                .map_or(rest.len(), |end| start + end + close.len());
            rest.replace_range(start..end, "");
        }
    }
    rest
}

/// Where the braces that open at `start` close again; strings inside may hold braces of their own.
fn closing(letters: &[char], start: usize) -> usize {
    let mut depth = 0_usize;
    let mut quote: Option<char> = None;
    for (at, letter) in letters.iter().enumerate().skip(start) {
        match (quote, letter) {
            (Some(open), letter) if *letter == open => quote = None,
            (Some('"' | '\''), _) => {}
            (None, '"' | '\'') => quote = Some(*letter),
            (_, '{') => depth += 1,
            (_, '}') => {
                depth -= 1;
                if depth == 0 {
                    return at;
                }
            }
            _ => {}
        }
    }
    letters.len() - 1
}

fn has_word(text: &str) -> bool {
    // `&nbsp;` and the like are no words.
    let mut plain = text.to_owned();
    while let (Some(start), Some(end)) = (plain.find('&'), plain.find(';')) {
        if start > end {
            break;
        }
        plain.replace_range(start..=end, "");
    }
    plain.chars().any(char::is_alphabetic)
}

/// Quoted texts of an expression that read as words and not as keys: with a space or a capital.
fn spoken(expression: &str) -> impl Iterator<Item = &str> {
    expression
        .split('"')
        .skip(1)
        .step_by(2)
        .filter(|text| has_word(text))
        .filter(|text| text.contains(' ') || text.starts_with(char::is_uppercase))
}

/// Words that stand in the markup itself.
fn literals(source: &str) -> Vec<String> {
    let letters: Vec<char> = markup(source).chars().collect();
    let mut found = Vec::new();
    let mut at = 0;
    while at < letters.len() {
        match letters[at] {
            '{' => {
                let end = closing(&letters, at);
                let expression: String = letters[at..end].iter().collect();
                let is_block = expression.starts_with("{#") || expression.starts_with("{@const");
                if !is_block {
                    found.extend(spoken(&expression).map(str::to_owned));
                }
                at = end + 1;
            }
            '<' => at = tag(&letters, at, &mut found),
            _ => {
                let end = (at..letters.len())
                    .find(|it| matches!(letters[*it], '{' | '<'))
                    .unwrap_or(letters.len());
                let text: String = letters[at..end].iter().collect();
                if has_word(&text) {
                    found.push(text.trim().to_owned());
                }
                at = end;
            }
        }
    }
    found
}

/// Reads a tag and returns where it ends.
fn tag(letters: &[char], start: usize, found: &mut Vec<String>) -> usize {
    let mut at = start + 1;
    let mut name = String::new();
    while at < letters.len() && letters[at] != '>' {
        match letters[at] {
            '{' => at = closing(letters, at),
            '"' => {
                let end = (at + 1..letters.len())
                    .find(|it| letters[*it] == '"')
                    .unwrap_or(letters.len() - 1);
                let value: String = letters[at + 1..end].iter().collect();
                let outside: String = value
                    .split('{')
                    .map(|part| part.split_once('}').map_or(part, |(_, after)| after))
                    .collect();
                if READ.contains(&name.as_str()) && has_word(&outside) {
                    found.push(format!("{name}={value}"));
                }
                at = end;
            }
            letter if letter.is_alphanumeric() || letter == '-' || letter == ':' => {
                name.push(letter);
                at += 1;
                continue;
            }
            '=' => {
                at += 1;
                continue;
            }
            _ => {}
        }
        name.clear();
        at += 1;
    }
    at + 1
}

#[test]
fn no_component_holds_a_word() {
    let mut seen = 0;
    for file in files(&top().join("ui/src"), &[".svelte"]) {
        let source = std::fs::read_to_string(&file).unwrap();
        let found = literals(&source);
        assert!(found.is_empty(), "{} says {found:?}", file.display());
        seen += 1;
    }
    assert!(seen > 50, "the components were not found");
}

#[test]
fn a_planted_word_is_found() {
    let clean = "<script>const a = \"Hello you\";</script>\n<!-- a note -->\n\
        <p class=\"soft\" id=\"x\">{w.text} · {plain(1)}&nbsp;{#if a > 1}<b>{w.b}</b>{/if}</p>\n\
        <Page title={w.title} back=\"/more\" label={`${w.a} (${w.b})`} on={() => go(\"open\")} />\n\
        <style>p { color: red; }</style>";
    assert_eq!(literals(clean), Vec::<String>::new());
    for (planted, word) in [
        ("<p>Save it</p>", "Save it"),
        ("<p>{w.text} or so</p>", "or so"),
        ("<img src={x} alt=\"A leaf\" />", "alt=A leaf"),
        ("<input placeholder=\"Name\" />", "placeholder=Name"),
        (
            "<button aria-label=\"Close {name}\"></button>",
            "aria-label=Close {name}",
        ),
        ("<Page title=\"Garden\" />", "title=Garden"),
        ("<p>{ready ? \"Ready now\" : w.wait}</p>", "Ready now"),
    ] {
        assert_eq!(literals(planted), [word], "{planted}");
    }
}
