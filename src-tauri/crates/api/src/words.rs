//! Turns machine wording into sentences a maker can act on.

use crate::{Code, Failure};

/// The sentence that begins with a capital letter and ends with a full stop.
pub(crate) fn sentence(text: &str) -> String {
    let mut letters = text.trim().chars();
    let Some(first) = letters.next() else {
        return String::new();
    };
    let mut sentence: String = first.to_uppercase().chain(letters).collect();
    if !sentence.ends_with(['.', '?', '!']) && !message::carried::ends(&sentence) {
        sentence.push('.');
    }
    sentence
}

/// A field of the wire in words: `pours[0].strength_percent_vol` is "the strength (% vol)".
pub(crate) fn field(path: &str) -> String {
    let name = path.rsplit('.').next().unwrap_or(path);
    let name = name.split('[').next().unwrap_or(name);
    match name {
        "" => return "the request".to_owned(),
        "g" | "mass_g" => return "the weight (g)".to_owned(),
        "gross_g" => return "the weight on the scale (g)".to_owned(),
        "ml" => return "the volume (mL)".to_owned(),
        "at" => return "the time".to_owned(),
        _ => {}
    }
    const UNITS: [(&str, &str); 13] = [
        ("_percent_vol", " (% vol)"),
        ("_percent_mass", " (% by mass)"),
        ("_wet_percent", " (% of the weight)"),
        ("_humidity_percent", " humidity (%)"),
        ("_g_per_100ml", " (g per 100 mL)"),
        ("_g_per_l", " (g per L)"),
        ("_ml_per_g", " (mL per g)"),
        ("_step_g", " step (g)"),
        ("_m2", " (m²)"),
        ("_ml", " (mL)"),
        ("_g", " (g)"),
        ("_c", " (°C)"),
        ("_at", " time"),
    ];
    for (ending, unit) in UNITS {
        if let Some(stem) = name.strip_suffix(ending) {
            return format!("the {}{unit}", stem.replace('_', " "));
        }
    }
    format!("the {}", name.replace('_', " "))
}

/// What to say about a request that does not read as the command's own.
pub(crate) fn refused_json(path: &str, error: &serde_json::Error) -> Failure {
    let text = error.to_string();
    let text = text.split(" at line ").next().unwrap_or(&text);
    let (path, what) = match path {
        "." | "?" => ("", "the request".to_owned()),
        _ => (path, field(path)),
    };
    let below = |name: &str| match path {
        "" => name.to_owned(),
        _ => format!("{path}.{name}"),
    };
    if let Some((name, _)) = quoted(text, "missing field `") {
        let message = format!("{} is missing", field(name));
        return Failure::invalid(&below(name), sentence(&message));
    }
    if let Some((name, rest)) = quoted(text, "unknown field `") {
        let place = if path.ends_with(name) {
            path.to_owned()
        } else {
            below(name)
        };
        let message = format!("{name:?} is no field of this request{}", choice(rest));
        return Failure::invalid(&place, sentence(&message));
    }
    if let Some((name, rest)) = quoted(text, "unknown variant `") {
        let message = format!("{what} cannot be {name:?}{}", choice(rest));
        return Failure::invalid(path, sentence(&message));
    }
    if let Some(rest) = text
        .strip_prefix("invalid type: ")
        .or(text.strip_prefix("invalid value: "))
        && let Some((found, expected)) = rest.rsplit_once(", expected ")
    {
        let message = format!("{what} must be {}; {} is not", kind(expected), given(found));
        return Failure {
            field: some(path),
            ..Failure::new(Code::Invalid, sentence(&message))
        };
    }
    if text.contains("number out of range") {
        let message = format!("{what} is a number too large to work with");
        return Failure {
            field: some(path),
            ..Failure::new(Code::Invalid, sentence(&message))
        };
    }
    let message = match text {
        _ if error.is_syntax() || error.is_eof() => format!("the request is not JSON: {text}"),
        _ if text.starts_with("invalid length") => {
            format!("{what} must be an object with named fields")
        }
        // What is left are the expectations that types of the wire state in their own words.
        expected => format!("{what} must be {expected}"),
    };
    Failure {
        field: some(path),
        ..Failure::new(Code::Invalid, sentence(&message))
    }
}

fn some(path: &str) -> Option<String> {
    (!path.is_empty()).then(|| path.to_owned())
}

fn quoted<'a>(text: &'a str, opening: &str) -> Option<(&'a str, &'a str)> {
    text.strip_prefix(opening)?.split_once('`')
}

/// "; it may be a, b or c" out of serde's ", expected one of `a`, `b`, `c`".
fn choice(rest: &str) -> String {
    let names: Vec<&str> = rest.split('`').skip(1).step_by(2).collect();
    match names.as_slice() {
        [] => String::new(),
        [only] => format!("; it may be {only}"),
        [most @ .., last] => format!("; it may be {} or {last}", most.join(", ")),
    }
}

fn kind(expected: &str) -> &str {
    match expected {
        "f64" | "f32" => "a number",
        "u32" | "u64" | "usize" | "i64" | "u16" | "u8" => "a whole number, 0 or more",
        "a string" | "a borrowed string" => "text",
        "a boolean" => "true or false",
        "a sequence" => "a list",
        _ if expected.starts_with("struct ") => "an object with named fields",
        other => other,
    }
}

fn given(found: &str) -> String {
    for (machine, plain) in [
        ("string ", ""),
        ("floating point ", ""),
        ("integer ", ""),
        ("boolean ", ""),
    ] {
        if let Some(value) = found.strip_prefix(machine) {
            return format!("{plain}{}", value.trim_matches('`'));
        }
    }
    match found {
        "null" => "nothing".to_owned(),
        "sequence" => "a list".to_owned(),
        "map" => "an object".to_owned(),
        other => other.to_owned(),
    }
}

/// A figure as a maker would say it: at most one decimal.
pub(crate) fn figure(value: f64) -> String {
    let tenths = (value * 10.0).round() / 10.0;
    format!("{tenths}")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_field_is_named_in_words_with_its_unit() {
        assert_eq!(
            field("pours[0].strength_percent_vol"),
            "the strength (% vol)"
        );
        assert_eq!(field("gross_g"), "the weight on the scale (g)");
        assert_eq!(field("picked_at"), "the picked time");
        assert_eq!(
            field("relative_humidity_percent"),
            "the relative humidity (%)"
        );
    }

    #[test]
    fn a_sentence_has_a_capital_and_a_full_stop() {
        assert_eq!(sentence("the strength is wrong"), "The strength is wrong.");
        assert_eq!(sentence("Is it?"), "Is it?");
    }
}
