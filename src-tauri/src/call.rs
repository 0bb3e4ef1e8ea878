//! The one command that carries all the others.

use std::sync::Arc;

use percent_encoding::percent_decode;
use serde::Deserialize;
use serde_json::Value;
use tauri::State;
use tauri::ipc::{InvokeBody, Request, Response};

use crate::book::Book;

/// What the page sends as JSON: the wire name of a command and its request.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Call {
    command: String,
    request: Value,
}

/// Answers `{reply}` or `{failure}`. A raw body is a photo; its file name comes percent-encoded in the header `name`.
///
/// # Errors
/// Only when the page and the shell disagree about the envelope itself, or the core panicked: never for what a maker does.
#[tauri::command]
pub async fn call(request: Request<'_>, book: State<'_, Arc<Book>>) -> Result<Response, String> {
    let book = Arc::clone(&book);
    let answer = match request.body() {
        InvokeBody::Json(body) => {
            let Call { command, request } =
                Call::deserialize(body).map_err(|error| error.to_string())?;
            tauri::async_runtime::spawn_blocking(move || book.call(&command, &request.to_string()))
        }
        InvokeBody::Raw(bytes) => {
            let name = request.headers().get("name").map(|name| {
                percent_decode(name.as_bytes())
                    .decode_utf8_lossy()
                    .into_owned()
            });
            let bytes = bytes.clone();
            tauri::async_runtime::spawn_blocking(move || {
                book.take_photo(bytes.as_slice(), name.as_deref())
            })
        }
    };
    answer
        .await
        .map(Response::new)
        .map_err(|error| error.to_string())
}
