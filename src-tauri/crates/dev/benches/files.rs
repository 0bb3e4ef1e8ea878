//! Photos and backups, each beside a peer that does the same work on the same files in this run.

#![allow(clippy::unwrap_used, reason = "in a bench a panic is the report")]

mod common;
#[path = "../src/years/mod.rs"]
mod years;

use std::fs::File;
use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::{Duration, Instant};

use api::App;
use common::{
    Row, answers, asked, beside, by_turns, median, missing, open, peak_mb, print, shown, target,
    timed, twenty_years,
};
use photo::Album;
use serde_json::{Value, json};

const VIPS: &str = "apt-get install libvips-tools";

fn main() {
    // Cargo adds a word of its own, which names none of them.
    let arguments = std::env::args().skip(1);
    let arguments: Vec<String> = arguments.filter(|word| word != "--bench").collect();
    match arguments
        .iter()
        .map(String::as_str)
        .collect::<Vec<_>>()
        .as_slice()
    {
        ["thumbs", files @ ..] => return thumbs(files),
        ["backup", journal, into] => return backup(Path::new(journal), Path::new(into)),
        ["merge", backup] => return merge(Path::new(backup)),
        _ => {}
    }
    // `cargo bench -p dev --bench files -- photos` leaves out what takes long.
    let only = arguments.first().map(String::as_str);
    let mut rows = Vec::new();
    if only.is_none_or(|only| only == "photos") {
        rows.extend(photos());
    }
    if only.is_none_or(|only| only == "backups") {
        rows.extend(backed_up());
    }
    if only.is_none_or(|only| only == "merges") {
        rows.extend(merged());
    }
    print(&rows);
}

fn photos() -> Vec<Row> {
    let mut rows = Vec::new();
    if answers("vips", &["--version"]) {
        let (twelve, forty_eight) = (picture(4000, 3000), picture(8000, 6000));
        rows.push(durable(&twelve));
        rows.extend(thumbnail("12 MP", &twelve, 16.0));
        rows.extend(thumbnail("48 MP", &forty_eight, 24.0));
    } else {
        for what in [
            "12 MP photo durable",
            "480 px thumbnail, 12 MP",
            "480 px thumbnail, 48 MP",
        ] {
            rows.push(missing(what, "<= 2x, 0.7x", VIPS));
        }
    }
    rows.push(embedded());
    rows
}

/// A picture with the detail and the noise of a phone's, made once.
fn picture(width: u32, height: u32) -> PathBuf {
    let folder = target().join("bench/pictures");
    let path = folder.join(format!("{width}x{height}.jpg"));
    if path.is_file() {
        return path;
    }
    std::fs::create_dir_all(&folder).unwrap();
    let drawn =
        Path::new(env!("CARGO_MANIFEST_DIR")).join("../../../demo-data/pictures/nettle.jpg");
    let made = |name: &str| folder.join(name).display().to_string();
    let vips = |arguments: &[&str]| assert!(answers("vips", arguments), "vips {arguments:?}");
    let (large, noise, sum) = (made("large.v"), made("noise.v"), made("sum.v"));
    let size = width.to_string();
    vips(&[
        "thumbnail",
        drawn.to_str().unwrap(),
        &large,
        &size,
        "--height",
        &height.to_string(),
        "--crop",
        "centre",
    ]);
    vips(&[
        "gaussnoise",
        &noise,
        &size,
        &height.to_string(),
        "--sigma",
        "4",
        "--mean",
        "0",
    ]);
    vips(&["add", &large, &noise, &sum]);
    vips(&["cast", &sum, &made("cast.v"), "uchar"]);
    vips(&[
        "jpegsave",
        &made("cast.v"),
        path.to_str().unwrap(),
        "--Q",
        "88",
    ]);
    for name in ["large.v", "noise.v", "sum.v", "cast.v"] {
        std::fs::remove_file(folder.join(name)).unwrap();
    }
    path
}

/// A photo through the door the page uses, until its row is written, beside its bytes alone.
fn durable(picture: &Path) -> Row {
    let folder = tempfile::tempdir_in(target()).unwrap();
    // The journal of twenty years, with an album of its own: what is added here is thrown away.
    let journal = twenty_years().join("journal.trugbook");
    std::fs::copy(journal, folder.path().join("journal.trugbook")).unwrap();
    File::open(folder.path().join("journal.trugbook"))
        .and_then(|file| file.sync_all())
        .unwrap();
    let app = open(folder.path());
    let bytes = std::fs::read(picture).unwrap();
    let other = |run: usize, whose: u8| {
        // What follows the end of a JPEG is no part of the picture, but of its name.
        let mut bytes = bytes.clone();
        bytes.extend([whose, u8::try_from(run).unwrap()]);
        bytes
    };
    let turns = by_turns(
        15,
        |run| {
            let bytes = other(run, 1);
            timed(|| app.take_photo(bytes.as_slice(), Some("photo.jpg")).unwrap()).0
        },
        |run| {
            let bytes = other(run, 2);
            let path = folder.path().join(format!("plain-{run}"));
            timed(|| {
                let mut file = File::create(path).unwrap();
                file.write_all(&bytes).unwrap();
                file.sync_all().unwrap();
            })
            .0
        },
    );
    beside(
        "12 MP photo durable: hash, EXIF, sync, rename, row",
        &turns,
        "write and fsync of the same bytes",
        2.0,
    )
}

/// A HEIC whose EXIF holds a small JPEG, as many cameras write it: that is its preview.
fn embedded() -> Row {
    const FILES: u8 = 30;
    const MOST: Duration = Duration::from_millis(5);
    let sample = Path::new(env!("CARGO_MANIFEST_DIR"))
        .join("../../../tests/photo/samples/small_jpeg_inside.heic");
    let bytes = std::fs::read(sample).unwrap();
    let folder = tempfile::tempdir_in(target()).unwrap();
    let album = Album::open(folder.path()).unwrap();
    let mut times: Vec<Duration> = (0..FILES)
        .map(|number| {
            let mut upload = album.begin().unwrap();
            upload.write(&bytes).unwrap();
            // What follows the last box is no part of the picture, but of its name.
            upload.write(&[number]).unwrap();
            let hash = upload.keep().unwrap().hash;
            let (time, photo) = timed(|| album.look(&hash).unwrap().unwrap());
            assert!(photo.preview.exists());
            time
        })
        .collect();
    let ours = median(&mut times);
    Row {
        what: "preview of a HEIC from the JPEG inside its EXIF, written durably".to_owned(),
        ours: shown(ours),
        peer: String::new(),
        goal: "<= 5 ms".to_owned(),
        within: Some(ours <= MOST),
    }
}

/// In a process of its own, so that its memory can be told: microseconds for each file, and its peak.
fn thumbs(files: &[&str]) {
    let folder = tempfile::tempdir_in(target()).unwrap();
    let album = Album::open(folder.path()).unwrap();
    let mut kept = Vec::new();
    for file in files {
        let mut upload = album.begin().unwrap();
        let mut from = File::open(file).unwrap();
        let mut piece = vec![0; 64 * 1024];
        loop {
            let count = std::io::Read::read(&mut from, &mut piece).unwrap();
            if count == 0 {
                break;
            }
            upload.write(&piece[..count]).unwrap();
        }
        kept.push(upload.keep().unwrap().hash);
    }
    let start = Instant::now();
    for hash in &kept {
        assert!(album.look(hash).unwrap().unwrap().preview.exists());
    }
    let each = start.elapsed().as_secs_f64() * 1e6 / kept.len() as f64;
    println!("{each} {}", peak_mb());
}

/// A row of the most memory that was held, in MB.
fn memory(what: &str, peak: f64, most: f64) -> Row {
    Row {
        what: what.to_owned(),
        ours: format!("{peak:.1} MB"),
        peer: String::new(),
        goal: format!("<= {most} MB"),
        within: Some(peak <= most),
    }
}

fn told(command: &mut Command) -> Vec<f64> {
    let output = command.stderr(Stdio::inherit()).output().unwrap();
    assert!(output.status.success());
    let said = String::from_utf8(output.stdout).unwrap();
    said.split_whitespace()
        .map(|word| word.parse().unwrap())
        .collect()
}

fn ourselves() -> Command {
    Command::new(std::env::current_exe().unwrap())
}

fn thumbnail(size: &str, picture: &Path, most_mb: f64) -> [Row; 2] {
    const FILES: usize = 10;
    let folder = tempfile::tempdir_in(target()).unwrap();
    let bytes = std::fs::read(picture).unwrap();
    let files: Vec<PathBuf> = (0..FILES + 2)
        .map(|number| {
            let path = folder.path().join(format!("{number}.jpg"));
            let mut file = File::create(&path).unwrap();
            file.write_all(&bytes).unwrap();
            file.write_all(&[u8::try_from(number).unwrap()]).unwrap();
            path
        })
        .collect();
    let mut peak = 0.0_f64;
    let vips = |files: &[PathBuf]| {
        let mut command = Command::new("vipsthumbnail");
        command
            .args(["--size", "480", "-o", "tn_%s.jpg[Q=80]"])
            .args(files);
        timed(|| assert!(command.status().unwrap().success())).0
    };
    let turns = by_turns(
        9,
        |_| {
            let said = told(ourselves().arg("thumbs").args(&files[..FILES]));
            peak = peak.max(said[1]);
            Duration::from_secs_f64(said[0] / 1e6)
        },
        // Its start is taken off: what ten files more take than two.
        |_| {
            let (all, two) = (vips(&files), vips(&files[..2]));
            all.saturating_sub(two) / u32::try_from(FILES).unwrap()
        },
    );
    let what = format!("480 px thumbnail, {size} JPEG, written durably");
    let memory = memory(&format!("peak memory of that, {size}"), peak, most_mb);
    [beside(&what, &turns, "vipsthumbnail", 0.7), memory]
}

/// In a process of its own: seconds, and the peak of memory.
fn backup(journal: &Path, into: &Path) {
    job_of(&open(journal), "backup.make", &json!({"file": into}));
}

/// As [`backup`]: a look at what a backup brings to a book with nothing in it.
fn merge(backup: &Path) {
    let folder = tempfile::tempdir_in(target()).unwrap();
    job_of(&open(folder.path()), "merge.look", &json!({"file": backup}));
}

fn job_of(app: &App, command: &str, request: &Value) {
    let start = Instant::now();
    let job = asked(app, command, request)["job"].clone();
    loop {
        let card = asked(app, "job.show", &json!({"job": job}));
        match card["state"].as_str().unwrap() {
            "running" => std::thread::sleep(Duration::from_millis(20)),
            "done" => break,
            _ => panic!("{card}"),
        }
    }
    println!("{} {}", start.elapsed().as_secs_f64(), peak_mb());
}

/// The whole journal of twenty years brought to a book with nothing in it, which is the most that can come at once.
fn merged() -> [Row; 2] {
    const ROUNDS: usize = 3;
    const MOST: Duration = Duration::from_secs(20);
    let folder = tempfile::tempdir_in(target()).unwrap();
    let backup = folder.path().join("backup.zip");
    told(ourselves().arg("backup").arg(twenty_years()).arg(&backup));
    let mut peak = 0.0_f64;
    let mut times: Vec<Duration> = (0..ROUNDS)
        .map(|_| {
            let said = told(ourselves().arg("merge").arg(&backup));
            peak = peak.max(said[1]);
            Duration::from_secs_f64(said[0])
        })
        .collect();
    let ours = median(&mut times);
    [
        Row {
            what: "a look at a merge of 20 years".to_owned(),
            ours: shown(ours),
            peer: String::new(),
            goal: "<= 20 s".to_owned(),
            within: Some(ours <= MOST),
        },
        memory("peak memory of that, the app included", peak, 200.0),
    ]
}

fn backed_up() -> [Row; 2] {
    const PHOTOS: usize = 500;
    const BYTES: usize = 4_000_000;
    let source = target().join("bench/photos-2gb");
    // Photos without a journal are those of a book that is missing.
    if !source.join("journal.trugbook").is_file() {
        let _ = std::fs::remove_dir_all(&source);
        drop(open(&source));
    }
    let album = Album::open(source.join("photos")).unwrap();
    for number in album.hashes().unwrap().len()..PHOTOS {
        let mut upload = album.begin().unwrap();
        let mut seed = number as u64 + 1;
        let mut bytes = vec![0xFF, 0xD8, 0xFF, 0xE0];
        while bytes.len() < BYTES {
            // Xorshift: bytes that cannot be pressed together, as those of photos.
            seed ^= seed << 13;
            seed ^= seed >> 7;
            seed ^= seed << 17;
            bytes.extend(seed.to_le_bytes());
        }
        upload.write(&bytes).unwrap();
        upload.keep().unwrap();
    }
    let mut peak = 0.0_f64;
    let folder = tempfile::tempdir_in(target()).unwrap();
    let (into, copied) = (
        folder.path().join("backup.zip"),
        folder.path().join("copied"),
    );
    let turns = by_turns(
        5,
        |_| {
            let said = told(ourselves().arg("backup").arg(&source).arg(&into));
            peak = peak.max(said[1]);
            std::fs::remove_file(&into).unwrap();
            Duration::from_secs_f64(said[0])
        },
        |_| {
            let line = format!(
                "cp -r '{}' '{}' && sync -f '{}'",
                source.join("photos/originals").display(),
                copied.display(),
                folder.path().display()
            );
            let took = timed(|| assert!(answers("sh", &["-c", &line]))).0;
            std::fs::remove_dir_all(&copied).unwrap();
            took
        },
    );
    [
        beside("backup of 2 GB of photos", &turns, "cp and sync", 1.1),
        memory("peak memory of that, the app included", peak, 64.0),
    ]
}
