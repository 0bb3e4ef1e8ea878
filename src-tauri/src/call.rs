//! The one command that carries all the others.

use std::sync::Arc;

use api::Language;
use percent_encoding::percent_decode;
use serde::Deserialize;
use serde_json::Value;
use tauri::ipc::{InvokeBody, Request, Response};
use tauri::{AppHandle, Runtime, State};

use crate::book::Book;

/// What the page sends as JSON: the wire name of a command, its request and the tag of the language it speaks.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Call {
    command: String,
    request: Value,
    #[serde(default)]
    language: String,
}

/// Answers `{reply}` or `{failure}`. A raw body is a photo; its file name comes percent-encoded in the
/// header `name`, and the language in the header `language`.
///
/// # Errors
/// Only when the page and the shell disagree about the envelope itself, or the core panicked: never for what a maker does.
#[tauri::command]
pub async fn call<R: Runtime>(
    app: AppHandle<R>,
    request: Request<'_>,
    book: State<'_, Arc<Book>>,
) -> Result<Response, String> {
    let book = Arc::clone(&book);
    let answer = match request.body() {
        InvokeBody::Json(body) => {
            let Call {
                command,
                request,
                language,
            } = Call::deserialize(body).map_err(|error| error.to_string())?;
            tauri::async_runtime::spawn_blocking(move || {
                let answer = book.call(&command, &request.to_string(), Language::of(&language));
                tidy(&app, &command, &request, &answer);
                answer
            })
        }
        InvokeBody::Raw(bytes) => {
            let name = request.headers().get("name").map(|name| {
                percent_decode(name.as_bytes())
                    .decode_utf8_lossy()
                    .into_owned()
            });
            let language = request.headers().get("language");
            let language = language.and_then(|tag| tag.to_str().ok());
            let language = Language::of(language.unwrap_or_default());
            let bytes = bytes.clone();
            tauri::async_runtime::spawn_blocking(move || {
                book.take_photo(bytes.as_slice(), name.as_deref(), language)
            })
        }
    };
    answer
        .await
        .map(Response::new)
        .map_err(|error| error.to_string())
}

/// Android's camera app leaves its picture in a folder of ours, and the album has its own copy now.
#[cfg(target_os = "android")]
fn tidy<R: Runtime>(app: &AppHandle<R>, command: &str, request: &Value, answer: &str) {
    let is_in = command == "photo.chunk" && request["last"] == true;
    if is_in
        && answer.starts_with("{\"reply\"")
        && let Some(name) = request["name"].as_str()
    {
        crate::camera::taken_in(app, name);
    }
}

#[cfg(not(target_os = "android"))]
fn tidy<R: Runtime>(_: &AppHandle<R>, _: &str, _: &Value, _: &str) {}
