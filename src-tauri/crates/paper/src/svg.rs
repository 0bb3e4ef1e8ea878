//! Writes a page as SVG, text as text, with the faces inside so that it looks the same everywhere.

use std::collections::BTreeSet;
use std::fmt::Write as _;

use base64::Engine as _;
use base64::engine::general_purpose::STANDARD;

use crate::face::Face;
use crate::page::{Ink, Mark, Page, Stroke, inks};
use crate::units::MM_PER_PT;

/// The page as the text of an SVG file, with a title for screen readers.
pub(crate) fn write(page: &Page, title: &str) -> String {
    let (width, height) = (mm(page.width), mm(page.height));
    let mut svg = format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{width}mm\" height=\"{height}mm\" viewBox=\"0 0 {width} {height}\" role=\"img\">\n<title>{}</title>\n",
        escaped(title)
    );
    let inks = inks(&page.marks);
    let faces: BTreeSet<Face> = inks
        .iter()
        .filter_map(|mark| match mark {
            Mark::Text { face, .. } => Some(*face),
            _ => None,
        })
        .collect();
    svg.push_str("<style>\n");
    for face in faces {
        let (family, weight, style) = face.css();
        let font = STANDARD.encode(face.bytes());
        let _ = writeln!(
            svg,
            "@font-face{{font-family:\"{family}\";font-weight:{weight};font-style:{style};src:url(data:font/ttf;base64,{font}) format(\"truetype\")}}"
        );
    }
    svg.push_str("</style>\n");
    let _ = writeln!(
        svg,
        "<rect width=\"{width}\" height=\"{height}\" fill=\"#fff\"/>"
    );
    for mark in inks {
        write_mark(&mut svg, mark);
    }
    svg.push_str("</svg>\n");
    svg
}

fn write_mark(svg: &mut String, mark: &Mark) {
    let _ = match mark {
        // What is read as one is for the PDF; a picture has its title.
        Mark::Part(_) => Ok(()),
        Mark::Text {
            x,
            y,
            size_pt,
            face,
            ink,
            text,
        } => {
            let text = text.trim_end();
            let (family, weight, style) = face.css();
            let serif = if family.ends_with("Sans") {
                "sans-serif"
            } else {
                "serif"
            };
            // Where another face stands in, the length keeps it from running into its neighbours.
            writeln!(
                svg,
                "<text x=\"{}\" y=\"{}\" font-family=\"{family}, {serif}\" font-weight=\"{weight}\" font-style=\"{style}\" font-size=\"{}\" textLength=\"{}\" fill=\"{}\">{}</text>",
                mm(*x),
                mm(*y),
                mm(size_pt * MM_PER_PT),
                mm(face.width(text, *size_pt)),
                colour(*ink),
                escaped(text)
            )
        }
        Mark::Box {
            x,
            y,
            width,
            height,
            ink,
        } => writeln!(
            svg,
            "<rect x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" fill=\"{}\"/>",
            mm(*x),
            mm(*y),
            mm(*width),
            mm(*height),
            colour(*ink)
        ),
        Mark::Code {
            x,
            y,
            module,
            modules,
        } => {
            let mut path = String::new();
            for (row, column, run) in modules.runs() {
                let _ = write!(path, "M{column} {row}h{run}v1h-{run}z");
            }
            writeln!(
                svg,
                "<path transform=\"translate({} {}) scale({})\" d=\"{path}\" fill=\"#000\" shape-rendering=\"crispEdges\"/>",
                mm(*x),
                mm(*y),
                trimmed(*module, 5)
            )
        }
        Mark::Shape {
            x,
            y,
            strokes,
            fill,
            edge,
        } => {
            let fill = fill.map_or_else(|| "none".to_owned(), colour);
            let (ink, wide) = edge.map_or_else(
                || ("none".to_owned(), 0.0),
                |(ink, wide)| (colour(ink), wide),
            );
            writeln!(
                svg,
                "<path transform=\"translate({} {})\" d=\"{}\" fill=\"{fill}\" stroke=\"{ink}\" stroke-width=\"{}\" stroke-linecap=\"round\" stroke-linejoin=\"round\"/>",
                mm(*x),
                mm(*y),
                outline(strokes),
                mm(wide)
            )
        }
        Mark::Picture {
            x,
            y,
            width,
            height,
            jpeg,
        } => writeln!(
            svg,
            "<image x=\"{}\" y=\"{}\" width=\"{}\" height=\"{}\" preserveAspectRatio=\"none\" href=\"data:image/jpeg;base64,{}\"/>",
            mm(*x),
            mm(*y),
            mm(*width),
            mm(*height),
            STANDARD.encode(&jpeg.bytes)
        ),
    };
}

fn outline(strokes: &[Stroke]) -> String {
    let mut path = String::new();
    for stroke in strokes {
        let (letter, figures) = match stroke {
            Stroke::Move(x, y) => ('M', vec![*x, *y]),
            Stroke::Line(x, y) => ('L', vec![*x, *y]),
            Stroke::Curve(figures) => ('C', figures.to_vec()),
            Stroke::Close => ('Z', Vec::new()),
        };
        path.push(letter);
        let figures: Vec<String> = figures.into_iter().map(mm).collect();
        path.push_str(&figures.join(" "));
    }
    path
}

fn mm(value: f64) -> String {
    trimmed(value, 3)
}

/// A coordinate with at most so many decimals and no idle zeros.
fn trimmed(value: f64, decimals: usize) -> String {
    let written = format!("{value:.decimals$}");
    match written.contains('.') {
        true => written
            .trim_end_matches('0')
            .trim_end_matches('.')
            .to_owned(),
        false => written,
    }
}

fn colour(ink: Ink) -> String {
    let [red, green, blue] = ink.rgb();
    format!("#{red:02x}{green:02x}{blue:02x}")
}

fn escaped(text: &str) -> String {
    let mut safe = String::with_capacity(text.len());
    for letter in text.chars() {
        match letter {
            '&' => safe.push_str("&amp;"),
            '<' => safe.push_str("&lt;"),
            '>' => safe.push_str("&gt;"),
            '"' => safe.push_str("&quot;"),
            // XML 1.0 allows no other control character.
            c if c.is_control() && !matches!(c, '\n' | '\t' | '\r') => {}
            c => safe.push(c),
        }
    }
    safe
}
