//! Pictures of what was picked: `photo.*`. Bytes come through the host, not through a command,
//! except where a platform carries only text (`photo.chunk`).

use serde::{Deserialize, Serialize};

use crate::wire::Place;

/// What is known of one photo.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PhotoCard {
    pub hash: String,
    pub name: Option<String>,
    pub width: Option<u32>,
    pub height: Option<u32>,
    pub has_preview: bool,
    pub taken_at: Option<String>,
    pub zone_known: bool,
    pub place: Option<Place>,
    pub bytes: u64,
    pub note: Option<String>,
}

/// A photo was kept.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PhotoTaken {
    pub photo: PhotoCard,
    pub duplicate: bool,
    pub used_in: Vec<String>,
}

/// A piece of a photo, at most 1 MiB, where the platform carries only text.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct TakePhotoChunk {
    pub upload: String,
    pub base64: String,
    pub last: bool,
    pub name: Option<String>,
}

/// The answer to [`TakePhotoChunk`]: the photo once the last piece came.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PhotoChunkTaken {
    pub taken: Option<PhotoTaken>,
}
