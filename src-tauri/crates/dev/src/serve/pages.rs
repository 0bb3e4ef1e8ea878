//! The built page as files, with their types and what the page may reach.

use std::fs::File;
use std::io::Read as _;
use std::path::{Component, Path};
use std::pin::Pin;
use std::task::{Context, Poll};

use axum::body::Body;
use axum::http::{StatusCode, header};
use axum::response::Response;

use super::{plain, with};

/// The same refusals as the window of the app has, so that both hosts break alike.
const POLICY: &str = "default-src 'none'; script-src 'self'; style-src 'self'; font-src 'self'; \
    img-src 'self' blob:; connect-src 'self'; manifest-src 'self'; base-uri 'none'; \
    form-action 'none'; frame-ancestors 'none'";

/// A file below `dist`; a path without an ending is the page itself.
pub fn file(dist: &Path, path: &str) -> Response {
    let wanted = Path::new(path.trim_start_matches('/'));
    if !wanted
        .components()
        .all(|part| matches!(part, Component::Normal(_)))
    {
        return plain(StatusCode::NOT_FOUND, "There is no such file.");
    }
    let ending = wanted.extension().and_then(|ending| ending.to_str());
    let (found, ending) = match ending {
        Some(ending) => (dist.join(wanted), ending),
        None => (dist.join("index.html"), "html"),
    };
    match std::fs::read(&found) {
        Ok(bytes) => {
            let headers = [
                (header::CONTENT_TYPE, media_type(ending)),
                (header::CONTENT_SECURITY_POLICY, POLICY),
                (header::X_CONTENT_TYPE_OPTIONS, "nosniff"),
                (header::REFERRER_POLICY, "no-referrer"),
                (header::CACHE_CONTROL, "no-cache"),
            ];
            with(headers, bytes)
        }
        Err(_) if ending == "html" => plain(
            StatusCode::NOT_FOUND,
            "The page is not built; run `npm run build` in ui.",
        ),
        Err(_) => plain(StatusCode::NOT_FOUND, "There is no such file."),
    }
}

/// A file of any length as the body of an answer.
pub fn streamed(file: File) -> Body {
    Body::from_stream(Pieces(file))
}

struct Pieces(File);

impl futures_core::Stream for Pieces {
    type Item = std::io::Result<Vec<u8>>;

    fn poll_next(mut self: Pin<&mut Self>, _: &mut Context<'_>) -> Poll<Option<Self::Item>> {
        let mut piece = vec![0; 256 * 1024];
        Poll::Ready(match self.0.read(&mut piece) {
            Ok(0) => None,
            Ok(count) => {
                piece.truncate(count);
                Some(Ok(piece))
            }
            Err(error) => Some(Err(error)),
        })
    }
}

fn media_type(ending: &str) -> &'static str {
    match ending {
        "html" => "text/html; charset=utf-8",
        "js" => "text/javascript; charset=utf-8",
        "css" => "text/css; charset=utf-8",
        "svg" => "image/svg+xml",
        "png" => "image/png",
        "jpg" => "image/jpeg",
        "webp" => "image/webp",
        "ico" => "image/x-icon",
        "woff2" => "font/woff2",
        "json" | "map" => "application/json",
        "webmanifest" => "application/manifest+json",
        "txt" => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}
