//! `cargo dev serve`: the preview, the same page over the same core in an ordinary browser.
//!
//! It listens on 127.0.0.1 alone and answers only pages it served itself.

mod pages;
#[cfg(test)]
mod tests;

use std::io::Read;
use std::net::TcpListener;
use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::sync::Arc;

use api::{App, Code, Failure, Language};
use axum::Router;
use axum::body::{Body, Bytes, HttpBody as _, to_bytes};
use axum::extract::{Request, State};
use axum::http::request::Parts;
use axum::http::{HeaderName, HeaderValue, Method, StatusCode, header};
use axum::response::Response;
use message::say;

use crate::flags::Flags;
use crate::opened::{self, Journal};
use crate::{demo, failed};

/// A JSON request is at most this long; a chunk of a photo in base64 fits.
const LONGEST_JSON: usize = 2 * 1024 * 1024;
/// More than the longest photo, whose length is judged by the core.
const LONGEST_PHOTO: usize = 80 * 1024 * 1024;

/// Serves until it is ended.
pub fn main(args: &[String]) -> ExitCode {
    match Flags::read(args, &["--journal", "--port", "--now"], &["--demo"]).and_then(serve) {
        Ok(()) => ExitCode::SUCCESS,
        Err(why) => failed(why),
    }
}

fn serve(flags: Flags) -> Result<(), String> {
    let port: u16 = match flags.value("--port") {
        Some(port) => port.parse().map_err(|_| format!("{port:?} is no port."))?,
        None => 0,
    };
    let clock = opened::clock(flags.value("--now"))?;
    if flags.has("--demo") {
        let folder = flags
            .value("--journal")
            .ok_or("--demo needs --journal DIR, which it fills.")?;
        fill_if_new(Path::new(folder))?;
    }
    let journal = Journal::open(flags.value("--journal").map(Path::new), clock)?;
    let listener = TcpListener::bind(("127.0.0.1", port))
        .map_err(|error| format!("Port {port} of 127.0.0.1 cannot be used: {error}."))?;
    let port = listener
        .local_addr()
        .map_err(|error| error.to_string())?
        .port();
    println!("http://127.0.0.1:{port}/");
    let preview = Arc::new(Preview {
        port,
        app: journal.app.clone(),
        dist: dist(),
    });
    preview
        .listen(listener)
        .map_err(|error| format!("The preview broke off: {error}."))
}

/// A journal that is there already is opened as it is.
fn fill_if_new(folder: &Path) -> Result<(), String> {
    let is_new = std::fs::read_dir(folder).map_or(true, |mut entries| entries.next().is_none());
    if is_new {
        demo::tell_into(folder).map(|_| ())
    } else {
        Ok(())
    }
}

fn dist() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../ui/dist")
}

struct Preview {
    port: u16,
    app: Arc<App>,
    dist: PathBuf,
}

impl Preview {
    fn listen(self: Arc<Self>, listener: TcpListener) -> std::io::Result<()> {
        let router = Router::new().fallback(receive).with_state(self);
        listener.set_nonblocking(true)?;
        tokio::runtime::Builder::new_multi_thread()
            .enable_all()
            .build()?
            .block_on(async {
                let listener = tokio::net::TcpListener::from_std(listener)?;
                axum::serve(listener, router).await
            })
    }

    /// What a request may bring, judged by its head alone: the longest body that is read.
    fn admit(&self, head: &Parts) -> Result<usize, Box<Response>> {
        if !self.is_ours(head) {
            return Err(Box::new(plain(
                StatusCode::FORBIDDEN,
                "This address answers only its own page.",
            )));
        }
        let path = head.uri.path();
        match head.method {
            Method::GET => Ok(0),
            Method::POST if path == "/photo" => Ok(LONGEST_PHOTO),
            Method::POST if path.starts_with("/call/") => {
                // A form of a foreign page can post anything but this type without asking first.
                let kind = text(head, header::CONTENT_TYPE);
                if kind.is_some_and(|kind| kind.starts_with("application/json")) {
                    Ok(LONGEST_JSON)
                } else {
                    Err(Box::new(plain(
                        StatusCode::UNSUPPORTED_MEDIA_TYPE,
                        "A command is sent as application/json.",
                    )))
                }
            }
            _ => Err(Box::new(plain(
                StatusCode::METHOD_NOT_ALLOWED,
                "Only GET and POST are answered.",
            ))),
        }
    }

    /// Answers a request that was admitted.
    fn answer(&self, head: &Parts, body: &Bytes) -> Response {
        let path = head.uri.path();
        match head.method {
            Method::POST if path == "/photo" => {
                let query = head.uri.query().unwrap_or_default();
                let name = form_urlencoded::parse(query.as_bytes()).find(|(key, _)| key == "name");
                let name = name.as_ref().map(|(_, name)| name.as_ref());
                let taken = self.app.take_photo(body.as_ref(), name);
                json(api::spoken(language(head), taken))
            }
            Method::POST => {
                let name = path.strip_prefix("/call/").unwrap_or_default();
                self.call(name, head, body)
            }
            _ if path.starts_with("/photo/") => self.picture(&path["/photo/".len()..]),
            _ if path.starts_with("/made/") => self.made(&path["/made/".len()..]),
            _ => pages::file(&self.dist, path),
        }
    }

    /// A name that resolves to this machine, or a page from elsewhere, must not reach the journal.
    fn is_ours(&self, head: &Parts) -> bool {
        let hosts = [
            format!("127.0.0.1:{}", self.port),
            format!("localhost:{}", self.port),
        ];
        let host = text(head, header::HOST);
        let host_is_ours = host.is_some_and(|host| hosts.iter().any(|ours| ours == host));
        let origin_is_ours = text(head, header::ORIGIN).is_none_or(|origin| {
            hosts
                .iter()
                .any(|ours| origin.strip_prefix("http://") == Some(ours.as_str()))
        });
        host_is_ours && origin_is_ours
    }

    fn call(&self, name: &str, head: &Parts, body: &Bytes) -> Response {
        match std::str::from_utf8(body) {
            Ok(body) => json(api::call_in(&self.app, language(head), name, body)),
            Err(_) => no_request(head),
        }
    }

    /// A backup or an export, sent on in pieces: it may be larger than the memory.
    fn made(&self, name: &str) -> Response {
        let Some(made) = self.app.made(name) else {
            return plain(StatusCode::NOT_FOUND, "There is no such file.");
        };
        let mut response = Response::new(pages::streamed(made.file));
        response.headers_mut().extend([
            (
                header::CONTENT_TYPE,
                HeaderValue::from_static(made.media_type),
            ),
            (
                header::CONTENT_DISPOSITION,
                HeaderValue::from_static("attachment"),
            ),
            (header::CACHE_CONTROL, HeaderValue::from_static("no-store")),
        ]);
        response
    }

    fn picture(&self, path: &str) -> Response {
        let missing = || plain(StatusCode::NOT_FOUND, "There is no such picture.");
        let found = match path.split_once('/') {
            Some((hash, "thumb")) => self.app.thumb(hash),
            Some((hash, "original")) => self.app.original(hash),
            _ => return missing(),
        };
        match found {
            Ok(Some(mut picture)) => {
                let mut bytes = Vec::new();
                if picture.file.read_to_end(&mut bytes).is_err() {
                    return missing();
                }
                let headers = [
                    (header::CONTENT_TYPE, picture.media_type),
                    (
                        header::CACHE_CONTROL,
                        "private, max-age=31536000, immutable",
                    ),
                    (header::X_CONTENT_TYPE_OPTIONS, "nosniff"),
                ];
                with(headers, bytes)
            }
            Ok(None) => missing(),
            Err(failure) => plain(StatusCode::NOT_FOUND, failure.message.to_string()),
        }
    }
}

async fn receive(State(preview): State<Arc<Preview>>, request: Request) -> Response {
    let (head, body) = request.into_parts();
    // Whoever may not ask shall not make this program hold what it sends.
    let longest = match preview.admit(&head) {
        Ok(longest) => longest,
        Err(refusal) => return *refusal,
    };
    let announced = usize::try_from(body.size_hint().lower()).unwrap_or(usize::MAX);
    let body = if announced > longest {
        None
    } else {
        to_bytes(body, longest).await.ok()
    };
    let Some(body) = body else {
        return too_long(&head);
    };
    // The core waits for the disk, and other requests must not wait with it.
    tokio::task::spawn_blocking(move || preview.answer(&head, &body))
        .await
        .unwrap_or_else(|_| plain(StatusCode::INTERNAL_SERVER_ERROR, "The core broke off."))
}

/// What cannot be read is refused as a command refuses, where a command was asked.
fn too_long(head: &Parts) -> Response {
    if head.uri.path().starts_with("/call/") {
        return no_request(head);
    }
    plain(
        StatusCode::PAYLOAD_TOO_LARGE,
        "This is longer than anything that is kept here.",
    )
}

fn no_request(head: &Parts) -> Response {
    let failure = Failure::new(Code::Invalid, say!("request-too-long"));
    json(api::spoken(language(head), Err(failure)))
}

/// The page says which language it speaks.
fn language(head: &Parts) -> Language {
    Language::of(text(head, header::ACCEPT_LANGUAGE).unwrap_or_default())
}

fn text(head: &Parts, name: HeaderName) -> Option<&str> {
    head.headers.get(name)?.to_str().ok()
}

fn with<const N: usize>(
    headers: [(HeaderName, &'static str); N],
    body: impl Into<Body>,
) -> Response {
    let mut response = Response::new(body.into());
    for (name, value) in headers {
        response
            .headers_mut()
            .insert(name, HeaderValue::from_static(value));
    }
    response
}

fn json(answer: Result<String, Failure>) -> Response {
    let headers = [
        (header::CONTENT_TYPE, "application/json"),
        (header::CACHE_CONTROL, "no-store"),
    ];
    with(headers, api::envelope(answer))
}

fn plain(status: StatusCode, text: impl Into<Body>) -> Response {
    let mut response = with([(header::CONTENT_TYPE, "text/plain; charset=utf-8")], text);
    *response.status_mut() = status;
    response
}
