//! A request that does not read as the command's own, in the maker's words.

use message::{Argument, Code, Failure, Message, say};

/// What to say about a request that could not be read, laid at the door of its field.
pub(crate) fn unread(error: serde_path_to_error::Error<serde_json::Error>) -> Failure {
    let path = error.path().to_string();
    refused_json(&path, error.inner())
}

/// What to say about a request that does not read as the command's own.
fn refused_json(path: &str, error: &serde_json::Error) -> Failure {
    let text = error.to_string();
    let text = text.split(" at line ").next().unwrap_or(&text);
    let path = match path {
        "." | "?" => "",
        _ => path,
    };
    let what = field(path);
    let below = |name: &str| match path {
        "" => name.to_owned(),
        _ => format!("{path}.{name}"),
    };
    if let Some((name, _)) = quoted(text, "missing field `") {
        return Failure::invalid(&below(name), say!("request-missing", what = field(name)));
    }
    if let Some((name, _)) = quoted(text, "unknown field `") {
        let place = if path.ends_with(name) {
            path.to_owned()
        } else {
            below(name)
        };
        let given = Argument::own(name);
        return Failure::invalid(&place, say!("request-does-not-take", given));
    }
    if let Some((name, rest)) = quoted(text, "unknown variant `") {
        let given = Argument::own(name);
        let choices: Vec<Argument> = choices(rest).map(Argument::own).collect();
        let message = match choices.is_empty() {
            true => say!("request-cannot-be", what, given),
            false => say!(
                "request-may-be",
                what,
                given,
                choices = Argument::one_of(choices)
            ),
        };
        return Failure::invalid(path, message);
    }
    if let Some(rest) = text
        .strip_prefix("invalid type: ")
        .or(text.strip_prefix("invalid value: "))
        && let Some((found, expected)) = rest.rsplit_once(", expected ")
    {
        let (kind, given) = (kind(expected), given(found));
        return at(path, say!("request-must-be", what, kind, given));
    }
    if text.contains("number out of range") {
        return at(path, say!("request-too-large", what));
    }
    if error.is_syntax() || error.is_eof() {
        return at(path, say!("request-no-json", why = Argument::own(text)));
    }
    let kind = match text.starts_with("invalid length") {
        true => say!("kind-object"),
        // What is left are the expectations that types of the wire state in their own words.
        false => kind(text),
    };
    at(path, say!("request-must-be-so", what, kind))
}

fn at(path: &str, message: Message) -> Failure {
    Failure {
        field: (!path.is_empty()).then(|| path.to_owned()),
        ..Failure::new(Code::Invalid, message)
    }
}

fn quoted<'a>(text: &'a str, opening: &str) -> Option<(&'a str, &'a str)> {
    text.strip_prefix(opening)?.split_once('`')
}

/// What serde lists: ", expected one of `a`, `b`, `c`".
fn choices(rest: &str) -> impl Iterator<Item = &str> {
    rest.split('`').skip(1).step_by(2)
}

fn kind(expected: &str) -> Message {
    match expected {
        "f64" | "f32" => say!("kind-number"),
        "u32" | "u64" | "usize" | "i64" | "u16" | "u8" => say!("kind-whole-number"),
        "a string" | "a borrowed string" => say!("kind-text"),
        "a boolean" => say!("kind-yes-or-no"),
        "a sequence" => say!("kind-list"),
        // What `Moisture` expects.
        "a number or an object with low, value and high" => say!("kind-number-or-range"),
        _ if expected.starts_with("struct ") => say!("kind-object"),
        _ => say!("kind-other"),
    }
}

fn given(found: &str) -> Argument {
    for machine in ["string ", "floating point ", "integer ", "boolean "] {
        if let Some(value) = found.strip_prefix(machine) {
            return Argument::own(value.trim_matches('`'));
        }
    }
    match found {
        "null" => say!("given-nothing").into(),
        "sequence" => say!("given-list").into(),
        "map" => say!("given-object").into(),
        other => Argument::own(other),
    }
}

/// A field of the wire in words: `pours[0].strength_percent_vol` is "the strength"; one that nobody types by hand is
/// "this value".
fn field(path: &str) -> Message {
    let name = path.rsplit('.').next().unwrap_or(path);
    let name = name.split('[').next().unwrap_or(name);
    match name {
        "" => say!("what-request"),
        "area_m2" => say!("what-area"),
        "available_ml" => say!("what-available"),
        "bed" | "bed_name" => say!("what-bed"),
        "bottle" => say!("what-bottle"),
        "bottles" => say!("what-number-of-bottles"),
        "came_out_g" | "came_out_ml" => say!("what-what-came-out"),
        "common" | "name" => say!("what-name"),
        "currency" => say!("what-currency"),
        "dropper" => say!("what-dropper"),
        "dry_g" => say!("what-dry-weight"),
        "file" => say!("what-file"),
        "fresh_g" => say!("what-fresh-weight"),
        "fresh_mass_g" => say!("what-fresh-mass"),
        "g" | "mass_g" => say!("what-weight"),
        "gross_g" => say!("what-weight-on-the-scale"),
        "harvest" => say!("what-harvest"),
        "herb" => say!("what-herb"),
        "holds_ml" => say!("what-what-the-dropper-holds"),
        "jar" => say!("what-jar"),
        "jar_ml" => say!("what-size-of-the-jar"),
        "kind" => say!("what-kind"),
        "latin" => say!("what-binomial"),
        "lot" => say!("what-lot"),
        "maker" => say!("what-maker"),
        "ml" => say!("what-volume"),
        "moisture_wet_percent" => say!("what-moisture"),
        "note" => say!("what-note"),
        "outcome" => say!("what-outcome"),
        "part" => say!("what-part"),
        "passphrase" => say!("what-passphrase"),
        "ph" => say!("what-ph"),
        "place" => say!("what-place"),
        "poison_line" => say!("what-poison-line"),
        "preparation" => say!("what-preparation"),
        "price" => say!("what-price"),
        "purpose" => say!("what-purpose"),
        "ratio_ml_per_g" => say!("what-ratio"),
        "reason" => say!("what-reason"),
        "recipe" => say!("what-recipe"),
        "relative_humidity_percent" => say!("what-relative-humidity"),
        "scale_step_g" => say!("what-step-of-the-scale"),
        "size_ml" | "bottle_ml" => say!("what-size"),
        "stage" => say!("what-stage"),
        "stars" => say!("what-stars"),
        "state" => say!("what-state"),
        "supply" => say!("what-supply"),
        "surface" => say!("what-surface"),
        "tare_g" => say!("what-tare"),
        "target_moisture_wet_percent" => say!("what-target-moisture"),
        "temperature_c" => say!("what-temperature"),
        "text" => say!("what-text"),
        "tray" => say!("what-tray"),
        "units" => say!("what-units"),
        "water_ml" => say!("what-water"),
        "year" => say!("what-year"),
        "day" | "on" | "from" | "to" => say!("what-day"),
        _ if name.ends_with("_on") => say!("what-day"),
        _ if name == "at" || name.ends_with("_at") => say!("what-time"),
        _ => physics::mixture::item::figure_name(name).unwrap_or_else(|| say!("what-this")),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_field_is_named_in_words() {
        let id = |path: &str| field(path).id().to_owned();
        for (path, said) in [
            ("pours[0].strength_percent_vol", "what-strength"),
            ("plants[2]", "what-this"),
            ("picked_at", "what-time"),
            ("ready_on", "what-day"),
            ("", "what-request"),
        ] {
            assert_eq!(id(path), said, "{path}");
        }
    }
}
