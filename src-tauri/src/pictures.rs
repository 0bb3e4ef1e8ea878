//! The scheme `photo`: `photo://localhost/<hash>/thumb` and `/original`.

use std::io::Read;
use std::sync::Arc;

use tauri::http::{Request, Response, StatusCode, header};
use tauri::{Manager, Runtime, UriSchemeContext, UriSchemeResponder};

use crate::book::Book;

/// Answers one picture from the album, off the main thread.
pub fn answer<R: Runtime>(
    context: UriSchemeContext<'_, R>,
    request: Request<Vec<u8>>,
    responder: UriSchemeResponder,
) {
    let book = Arc::clone(&context.app_handle().state::<Arc<Book>>());
    tauri::async_runtime::spawn_blocking(move || {
        responder.respond(picture(&book, request.uri().path()))
    });
}

fn picture(book: &Book, path: &str) -> Response<Vec<u8>> {
    let mut response = Response::new(Vec::new());
    let read = book
        .picture(path.trim_start_matches('/'))
        .and_then(|mut picture| {
            picture.file.read_to_end(response.body_mut()).ok()?;
            Some(picture.media_type)
        });
    let Some(media_type) = read else {
        *response.body_mut() = Vec::new();
        *response.status_mut() = StatusCode::NOT_FOUND;
        return response;
    };
    let headers = [
        (header::CONTENT_TYPE, media_type),
        // A picture's address holds its hash, so what it shows never changes.
        (
            header::CACHE_CONTROL,
            "private, max-age=31536000, immutable",
        ),
        (header::X_CONTENT_TYPE_OPTIONS, "nosniff"),
    ];
    for (name, value) in headers {
        response
            .headers_mut()
            .insert(name, header::HeaderValue::from_static(value));
    }
    response
}
