//! The preview over a real socket.

use std::io::{Read, Write};
use std::net::{TcpListener, TcpStream};
use std::path::Path;
use std::sync::Arc;

use super::Preview;
use crate::opened::{self, Journal};

struct Answer {
    status: u16,
    head: String,
    body: Vec<u8>,
}

/// A preview on a free port over a throw-away journal and a page of one line.
struct Served {
    port: u16,
    _journal: Journal,
    _dist: tempfile::TempDir,
}

impl Served {
    fn start() -> Self {
        let journal = Journal::open(
            None,
            opened::clock(Some("2026-07-14T09:00:00+02:00")).unwrap(),
        );
        let journal = journal.unwrap();
        let dist = tempfile::tempdir().unwrap();
        std::fs::write(dist.path().join("index.html"), "<!doctype html>").unwrap();
        let listener = TcpListener::bind(("127.0.0.1", 0)).unwrap();
        let port = listener.local_addr().unwrap().port();
        let preview = Arc::new(Preview {
            port,
            app: journal.app.clone(),
            dist: dist.path().to_owned(),
        });
        // It ends with the test's process.
        std::thread::spawn(move || preview.listen(listener));
        Self {
            port,
            _journal: journal,
            _dist: dist,
        }
    }

    fn ask(&self, head: &str, body: &[u8]) -> Answer {
        let mut stream = TcpStream::connect(("127.0.0.1", self.port)).unwrap();
        let head = head.replace("PORT", &self.port.to_string());
        write!(
            stream,
            "{head}\r\nContent-Length: {}\r\nConnection: close\r\n\r\n",
            body.len()
        )
        .unwrap();
        stream.write_all(body).unwrap();
        let mut answer = Vec::new();
        stream.read_to_end(&mut answer).unwrap();
        let end = answer
            .windows(4)
            .position(|four| four == b"\r\n\r\n")
            .unwrap();
        let head = String::from_utf8(answer[..end].to_vec()).unwrap();
        let status = head.split(' ').nth(1).unwrap().parse().unwrap();
        Answer {
            status,
            head,
            body: answer[end + 4..].to_vec(),
        }
    }

    fn call(&self, name: &str, headers: &str, body: &str) -> Answer {
        let head = format!("POST /call/{name} HTTP/1.1\r\nHost: 127.0.0.1:PORT\r\n{headers}");
        self.ask(&head, body.as_bytes())
    }
}

const JSON: &str = "Content-Type: application/json";

#[test]
fn a_command_is_answered_in_the_envelope_of_both_hosts() {
    let served = Served::start();
    let text = |answer: Answer| String::from_utf8(answer.body).unwrap();
    let good = served.call("bed.add", JSON, r#"{"name": "A"}"#);
    assert_eq!(good.status, 200);
    assert!(text(good).starts_with(r#"{"reply":{"#));
    let bad = served.call("bed.add", JSON, r#"{"name": ""}"#);
    assert_eq!(bad.status, 200, "a refusal is an answer");
    assert!(text(bad).starts_with(r#"{"failure":{"code":"invalid","field":"name""#));
}

#[test]
fn other_hosts_other_pages_and_other_types_are_refused() {
    let served = Served::start();
    let get = |headers: &str| {
        served
            .ask(&format!("GET / HTTP/1.1\r\n{headers}"), b"")
            .status
    };
    assert_eq!(get("Host: 127.0.0.1:PORT"), 200);
    assert_eq!(
        get("Host: localhost:PORT\r\nOrigin: http://localhost:PORT"),
        200
    );
    assert_eq!(
        get("Host: trugbook.example:PORT"),
        403,
        "a name that was made to lead here"
    );
    assert_eq!(get("Host: 127.0.0.1"), 403);
    assert_eq!(
        get("Host: 127.0.0.1:PORT\r\nOrigin: http://elsewhere.example"),
        403
    );
    assert_eq!(get("Host: 127.0.0.1:PORT\r\nOrigin: null"), 403);
    // What a form of a foreign page could send without being asked.
    let form = "Content-Type: text/plain";
    assert_eq!(served.call("bed.add", form, r#"{"name": "A"}"#).status, 415);
    assert_eq!(
        served
            .ask("PUT / HTTP/1.1\r\nHost: 127.0.0.1:PORT", b"")
            .status,
        405
    );
}

#[test]
fn whoever_may_not_ask_is_refused_before_the_body_is_read() {
    let served = Served::start();
    // The body that is announced never comes: whoever reads it first has nothing to judge, and says something else.
    let refused = |head: &str| {
        let mut stream = TcpStream::connect(("127.0.0.1", served.port)).unwrap();
        let head = head.replace("PORT", &served.port.to_string());
        write!(stream, "{head}\r\nContent-Length: 80000000\r\n\r\nx").unwrap();
        stream.shutdown(std::net::Shutdown::Write).unwrap();
        let mut answer = Vec::new();
        stream.read_to_end(&mut answer).unwrap();
        let answer = String::from_utf8_lossy(&answer).into_owned();
        answer.split(' ').nth(1).unwrap_or_default().to_owned()
    };
    for path in ["/photo?name=leaf.jpg", "/call/bed.add"] {
        let post = format!("POST {path} HTTP/1.1\r\nContent-Type: application/json");
        for foreign in [
            "Host: trugbook.example:PORT",
            "Host: 127.0.0.1",
            "Host: 127.0.0.1:PORT\r\nOrigin: http://elsewhere.example",
            "Host: 127.0.0.1:PORT\r\nOrigin: null",
        ] {
            assert_eq!(
                refused(&format!("{post}\r\n{foreign}")),
                "403",
                "{path} {foreign}"
            );
        }
    }
    let ours = "Host: 127.0.0.1:PORT\r\nContent-Type: text/plain";
    assert_eq!(
        refused(&format!("POST /call/bed.add HTTP/1.1\r\n{ours}")),
        "415"
    );
    assert_eq!(refused(&format!("PUT /photo HTTP/1.1\r\n{ours}")), "405");
}

#[test]
fn a_request_that_announces_more_than_it_may_bring_is_refused_unread() {
    let served = Served::start();
    let answered = |head: &str, length: usize| {
        let mut stream = TcpStream::connect(("127.0.0.1", served.port)).unwrap();
        let head = head.replace("PORT", &served.port.to_string());
        write!(
            stream,
            "{head}\r\nConnection: close\r\nContent-Length: {length}\r\n\r\n"
        )
        .unwrap();
        // The connection stays open and brings nothing: what is answered was judged by the head.
        let mut answer = String::new();
        stream.read_to_string(&mut answer).unwrap();
        answer
    };
    let ours = "Host: 127.0.0.1:PORT\r\nContent-Type: application/json";
    let call = answered(
        &format!("POST /call/bed.add HTTP/1.1\r\n{ours}"),
        2 * 1024 * 1024 + 1,
    );
    assert!(call.contains("at most 2 MiB"), "{call}");
    for (what, length) in [("GET /", 1), ("POST /photo", 80 * 1024 * 1024 + 1)] {
        let answer = answered(&format!("{what} HTTP/1.1\r\n{ours}"), length);
        assert!(answer.starts_with("HTTP/1.1 413"), "{answer}");
    }
}

#[test]
fn a_photo_is_streamed_in_and_its_preview_served() {
    let served = Served::start();
    let icon =
        Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../tests/photo/samples/no_exif.jpg");
    let bytes = std::fs::read(icon).unwrap();
    let answer = served.ask(
        "POST /photo?name=my%20leaf.jpg HTTP/1.1\r\nHost: 127.0.0.1:PORT",
        &bytes,
    );
    let reply: serde_json::Value = serde_json::from_slice(&answer.body).unwrap();
    assert_eq!(reply["reply"]["photo"]["name"], "my leaf.jpg");
    let hash = reply["reply"]["photo"]["hash"].as_str().unwrap();
    let get = |path: &str| served.ask(&format!("GET {path} HTTP/1.1\r\nHost: 127.0.0.1:PORT"), b"");
    let original = get(&format!("/photo/{hash}/original"));
    assert_eq!(original.body, bytes, "byte for byte");
    let thumb = get(&format!("/photo/{hash}/thumb"));
    assert!(thumb.head.contains("image/jpeg") && thumb.status == 200);
    assert_eq!(get(&format!("/photo/{}/thumb", "0".repeat(64))).status, 404);
    assert_eq!(get("/photo/x/thumb").status, 404);
    assert_eq!(get(&format!("/photo/{hash}/journal")).status, 404);
}

#[test]
fn only_files_of_the_page_are_served_and_under_its_policy() {
    let served = Served::start();
    let get = |path: &str| served.ask(&format!("GET {path} HTTP/1.1\r\nHost: 127.0.0.1:PORT"), b"");
    for path in ["/", "/rack", "/index.html"] {
        let page = get(path);
        assert_eq!(
            (page.status, page.body.as_slice()),
            (200, b"<!doctype html>".as_slice())
        );
        assert!(page.head.contains("default-src 'none'"), "{}", page.head);
    }
    for path in [
        "/../Cargo.toml",
        "/%2e%2e/Cargo.toml",
        "//etc/motd.txt",
        "/missing.js",
    ] {
        assert_eq!(get(path).status, 404, "{path}");
    }
}

#[test]
fn what_was_made_is_handed_out_to_the_page_alone_and_nothing_beside_it() {
    let served = Served::start();
    let begun = served.call("backup.make", JSON, "{}");
    let begun: serde_json::Value = serde_json::from_slice(&begun.body).unwrap();
    let job = begun["reply"].to_string();
    let name = "trugbook-2026-07-14.zip";
    let get = |path: &str, headers: &str| {
        let head = format!("GET /made/{path} HTTP/1.1\r\n{headers}");
        served.ask(&head, b"")
    };
    let ours = "Host: 127.0.0.1:PORT";
    let state = || {
        let card = served.call("job.show", JSON, &job);
        let card: serde_json::Value = serde_json::from_slice(&card.body).unwrap();
        card["reply"]["state"].clone()
    };
    while state() == "running" {
        std::thread::yield_now();
    }
    assert_eq!(state(), "done");
    let made = get(name, ours);
    assert_eq!(made.status, 200);
    // It comes in pieces, each with its length before it.
    let is_zip = |body: &[u8]| body.windows(4).any(|four| four == b"PK\x03\x04");
    assert!(is_zip(&made.body));
    for line in [
        "content-disposition: attachment",
        "cache-control: no-store",
        "content-type: application/zip",
    ] {
        assert!(made.head.contains(line), "{}", made.head);
    }
    for foreign in [
        "Host: trugbook.example:PORT",
        "Host: 127.0.0.1",
        "Host: 127.0.0.1:PORT\r\nOrigin: http://elsewhere.example",
        "Host: 127.0.0.1:PORT\r\nOrigin: null",
        "Host: 127.0.0.1:PORT\r\nOrigin: https://127.0.0.1:PORT",
    ] {
        let refused = get(name, foreign);
        assert_eq!(refused.status, 403, "{foreign}");
        assert!(!is_zip(&refused.body), "{foreign}");
    }
    for path in [
        "",
        ".",
        "..",
        "../journal.trugbook",
        "..%2fjournal.trugbook",
        "%2e%2e/journal.trugbook",
        "./trugbook-2026-07-14.zip",
        "/trugbook-2026-07-14.zip",
        "trugbook-2026-07-14.zip/",
        "trugbook-2026-07-14.zip.part",
        "..\\journal.trugbook",
        "trugbook-2026-07-14.zip%00",
    ] {
        assert_eq!(get(path, ours).status, 404, "{path:?}");
    }
}

#[test]
fn connections_that_come_in_a_burst_are_all_answered() {
    let served = Served::start();
    let ask = format!("GET / HTTP/1.1\r\nHost: 127.0.0.1:{}\r\n\r\n", served.port);
    // A browser opens six at once and keeps them open; none may wait until another closes.
    let mut open: Vec<TcpStream> = (0..24)
        .map(|_| TcpStream::connect(("127.0.0.1", served.port)).unwrap())
        .collect();
    for stream in &mut open {
        stream.write_all(ask.as_bytes()).unwrap();
    }
    for stream in &mut open {
        let mut start = [0; 12];
        stream.read_exact(&mut start).unwrap();
        assert_eq!(&start, b"HTTP/1.1 200");
    }
}
