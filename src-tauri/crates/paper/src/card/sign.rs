//! The signs that cautions bear, each with a shape of its own.

use super::Weight;
use crate::page::{Ink, Mark, Stroke};

/// The sign of a weight: a filled octagon with a bar, a triangle, a note; each `side` wide, its top at `y`.
pub(super) fn sign(weight: Weight, y: f64, side: f64) -> Vec<Mark> {
    let closed = |points: &[(f64, f64)]| {
        let place = |at: usize, (u, v): &(f64, f64)| match at {
            0 => Stroke::Move(u * side, v * side),
            _ => Stroke::Line(u * side, v * side),
        };
        let mut strokes: Vec<Stroke> = (points.iter().enumerate())
            .map(|(at, point)| place(at, point))
            .collect();
        strokes.push(Stroke::Close);
        strokes
    };
    let shape = |strokes, fill, edge| Mark::Shape {
        x: 0.0,
        y,
        strokes,
        fill,
        edge,
    };
    match weight {
        Weight::Stop => {
            let (a, b) = (0.3, 0.7);
            let corners = [
                (a, 0.0),
                (b, 0.0),
                (1.0, a),
                (1.0, b),
                (b, 1.0),
                (a, 1.0),
                (0.0, b),
                (0.0, a),
            ];
            let bar = closed(&[(0.22, 0.4), (0.78, 0.4), (0.78, 0.6), (0.22, 0.6)]);
            vec![
                shape(closed(&corners), Some(Ink::Warning), None),
                shape(bar, Some(Ink::Paper), None),
            ]
        }
        Weight::Care => {
            let corners = closed(&[(0.5, 0.04), (1.0, 0.96), (0.0, 0.96)]);
            let stroke = vec![
                Stroke::Move(0.5 * side, 0.36 * side),
                Stroke::Line(0.5 * side, 0.74 * side),
            ];
            let edge = Some((Ink::Plain, 0.07 * side));
            vec![shape(corners, None, edge), shape(stroke, None, edge)]
        }
        Weight::Note => {
            let corners = closed(&[(0.1, 0.1), (0.9, 0.1), (0.9, 0.9), (0.1, 0.9)]);
            vec![shape(corners, None, Some((Ink::Soft, 0.07 * side)))]
        }
    }
}
