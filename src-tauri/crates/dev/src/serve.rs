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

use api::{App, Code, Failure};
use tiny_http::{Header, Method, Request, Response, ResponseBox, Server};

use crate::flags::Flags;
use crate::opened::{self, Journal};
use crate::{demo, failed};

/// A JSON request is at most this long; a chunk of a photo in base64 fits.
const LONGEST_JSON: u64 = 2 * 1024 * 1024;
/// Pictures of a full screen are asked for together.
const WORKERS: usize = 6;

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
    let server = Server::from_listener(listener, None).map_err(|error| error.to_string())?;
    println!("http://127.0.0.1:{port}/");
    let preview = Arc::new(Preview {
        server,
        port,
        app: journal.app.clone(),
        dist: dist(),
    });
    let workers: Vec<_> = (0..WORKERS)
        .map(|_| {
            let preview = preview.clone();
            std::thread::spawn(move || preview.work())
        })
        .collect();
    for worker in workers {
        worker
            .join()
            .map_err(|_| "A worker of the preview broke off.".to_owned())?;
    }
    Ok(())
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
    server: Server,
    port: u16,
    app: Arc<App>,
    dist: PathBuf,
}

impl Preview {
    fn work(&self) {
        while let Ok(mut request) = self.server.recv() {
            let response = self.answer(&mut request);
            // The browser may have gone away meanwhile; the next request is not its fault.
            let _ = request.respond(response);
        }
    }

    fn answer(&self, request: &mut Request) -> ResponseBox {
        if !self.is_ours(request) {
            return plain(403, "This address answers only its own page.");
        }
        let url = request.url().to_owned();
        let (path, query) = url.split_once('?').unwrap_or((&url, ""));
        match (request.method().clone(), path) {
            (Method::Post, "/photo") => {
                let name = pages::query_value(query, "name");
                json(self.app.take_photo(request.as_reader(), name.as_deref()))
            }
            (Method::Post, _) if path.starts_with("/call/") => {
                self.call(&path["/call/".len()..], request)
            }
            (Method::Get, _) if path.starts_with("/photo/") => {
                self.picture(&path["/photo/".len()..])
            }
            (Method::Get, _) => pages::file(&self.dist, path),
            _ => plain(405, "Only GET and POST are answered."),
        }
    }

    /// A name that resolves to this machine, or a page from elsewhere, must not reach the journal.
    fn is_ours(&self, request: &Request) -> bool {
        let hosts = [
            format!("127.0.0.1:{}", self.port),
            format!("localhost:{}", self.port),
        ];
        let host = header(request, "Host");
        let host_is_ours = host.is_some_and(|host| hosts.iter().any(|ours| ours == host));
        let origin_is_ours = header(request, "Origin").is_none_or(|origin| {
            hosts
                .iter()
                .any(|ours| origin.strip_prefix("http://") == Some(ours.as_str()))
        });
        host_is_ours && origin_is_ours
    }

    fn call(&self, name: &str, request: &mut Request) -> ResponseBox {
        // A form of a foreign page can post anything but this type without asking first.
        if !header(request, "Content-Type").is_some_and(|kind| kind.starts_with("application/json"))
        {
            return plain(415, "A command is sent as application/json.");
        }
        let mut body = String::new();
        let read = request
            .as_reader()
            .take(LONGEST_JSON + 1)
            .read_to_string(&mut body);
        if read.is_err() || body.len() as u64 > LONGEST_JSON {
            return json(Err(Failure::new(
                Code::Invalid,
                "The request must be JSON text of at most 2 MiB.",
            )));
        }
        json(api::call(&self.app, name, &body))
    }

    fn picture(&self, path: &str) -> ResponseBox {
        let found = match path.split_once('/') {
            Some((hash, "thumb")) => self.app.thumb(hash),
            Some((hash, "original")) => self.app.original(hash),
            _ => return plain(404, "There is no such picture."),
        };
        match found {
            Ok(Some(picture)) => Response::from_file(picture.file)
                .with_header(field("Content-Type", picture.media_type))
                .with_header(field(
                    "Cache-Control",
                    "private, max-age=31536000, immutable",
                ))
                .with_header(field("X-Content-Type-Options", "nosniff"))
                .boxed(),
            Ok(None) => plain(404, "There is no such picture."),
            Err(failure) => plain(404, &failure.message),
        }
    }
}

fn header<'a>(request: &'a Request, name: &'static str) -> Option<&'a str> {
    request
        .headers()
        .iter()
        .find(|header| header.field.equiv(name))
        .map(|h| h.value.as_str())
}

fn field(name: &str, value: &str) -> Header {
    Header::from_bytes(name, value).unwrap_or_else(|()| unreachable!("header text is plain ASCII"))
}

fn json(answer: Result<String, Failure>) -> ResponseBox {
    Response::from_string(api::envelope(answer))
        .with_header(field("Content-Type", "application/json"))
        .with_header(field("Cache-Control", "no-store"))
        .boxed()
}

fn plain(status: u16, text: &str) -> ResponseBox {
    Response::from_string(text).with_status_code(status).boxed()
}
