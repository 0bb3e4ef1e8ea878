//! Outlines and their inks.

use pdf_writer::Content;
use pdf_writer::types::{LineCapStyle, LineJoinStyle};

use super::{points, rounded};
use crate::page::{Ink, Stroke};

fn parts(ink: Ink) -> [f32; 3] {
    ink.rgb().map(|part| rounded(f64::from(part) / 255.0))
}

pub(super) fn colour(content: &mut Content, ink: Ink) {
    let [red, green, blue] = parts(ink);
    content.set_fill_rgb(red, green, blue);
}

/// Draws an outline whose origin stands at `at`, up being positive.
pub(super) fn shape(
    content: &mut Content,
    at: (f64, f64),
    strokes: &[Stroke],
    fill: Option<Ink>,
    edge: Option<(Ink, f64)>,
) {
    if let Some(ink) = fill {
        colour(content, ink);
    }
    if let Some((ink, width)) = edge {
        let [red, green, blue] = parts(ink);
        content.set_stroke_rgb(red, green, blue);
        content.set_line_width(points(width));
        content.set_line_cap(LineCapStyle::RoundCap);
        content.set_line_join(LineJoinStyle::RoundJoin);
    }
    let (across, up) = (|x: f64| points(at.0 + x), |y: f64| points(at.1 - y));
    for stroke in strokes {
        match *stroke {
            Stroke::Move(x, y) => content.move_to(across(x), up(y)),
            Stroke::Line(x, y) => content.line_to(across(x), up(y)),
            Stroke::Curve([a, b, c, d, x, y]) => {
                content.cubic_to(across(a), up(b), across(c), up(d), across(x), up(y))
            }
            Stroke::Close => content.close_path(),
        };
    }
    match (fill, edge) {
        (Some(_), Some(_)) => content.fill_nonzero_and_stroke(),
        (Some(_), None) => content.fill_nonzero(),
        (None, Some(_)) => content.stroke(),
        (None, None) => content.end_path(),
    };
}
