//! The app's own link scheme, and what a label's QR code says.
//!
//! `trugbook:lot/tavo-472?name=Lemon+balm+glycerite` is a URI (RFC 3986), so a phone that has the app opens the lot;
//! any other reader shows it as it is, and the lot and the name can be read in it. The name is for people only: the app goes by the lot.

/// The scheme the app registers with the phone.
pub const SCHEME: &str = "trugbook";

/// The link of a lot.
#[must_use]
pub fn of(lot: &str, name: &str) -> String {
    let lot: String = form_urlencoded::byte_serialize(lot.as_bytes()).collect();
    let mut link = format!("{SCHEME}:lot/{lot}");
    if !name.is_empty() {
        link.push_str("?name=");
        link.extend(form_urlencoded::byte_serialize(name.as_bytes()));
    }
    link
}

/// The lot code in what was scanned or opened: in a link of ours, or standing alone.
///
/// Nothing where the text is neither, such as another site's address. Whether that lot exists is for the journal to say.
#[must_use]
pub fn lot_in(text: &str) -> Option<String> {
    let text = text.trim();
    let lot = match text.split_once(':') {
        Some((scheme, rest)) if scheme.eq_ignore_ascii_case(SCHEME) => {
            let path = rest.trim_start_matches('/').split(['?', '#']).next()?;
            path.strip_prefix("lot/")?.trim_end_matches('/')
        }
        Some(_) => return None,
        None => text,
    };
    let plain = |c: char| c.is_ascii_alphanumeric() || c == '-' || c == ' ';
    (!lot.is_empty() && lot.len() <= 40 && lot.chars().all(plain)).then(|| lot.to_ascii_lowercase())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_stranger_reads_lot_and_name_in_the_link() {
        assert_eq!(
            of("tavo-472", "Lemon balm glycerite"),
            "trugbook:lot/tavo-472?name=Lemon+balm+glycerite"
        );
    }

    #[test]
    fn every_link_leads_back_to_its_lot() {
        for name in ["", "Sage & thyme?", "Ringelblumenöl #2", "a/b"] {
            assert_eq!(
                lot_in(&of("tavo-472", name)).as_deref(),
                Some("tavo-472"),
                "{name}"
            );
        }
        assert_eq!(
            lot_in("TRUGBOOK://lot/TAVO-472").as_deref(),
            Some("tavo-472")
        );
        assert_eq!(lot_in(" tavo 472 ").as_deref(), Some("tavo 472"));
    }

    #[test]
    fn what_is_no_lot_is_refused() {
        for text in [
            "",
            "https://example.org/lot/tavo-472",
            "trugbook:bed/3",
            "trugbook:lot/",
            "two\nlines",
        ] {
            assert_eq!(lot_in(text), None, "{text}");
        }
    }
}
