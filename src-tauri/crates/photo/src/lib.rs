//! Photos: bytes in, intake out.
//!
//! An [`Album`] is a folder that keeps every original byte for byte under its hash, with an upright
//! preview beside it. What a picture says about itself (time, place, size) is read here; what the
//! journal makes of that is not decided here, and neither the clock nor a database is ever asked.
//!
//! What becomes of an upload:
//!
//! | content | outcome |
//! |---|---|
//! | JPEG, PNG, WebP | kept, described; the preview is made when it is asked for |
//! | HEIC, AVIF | kept, EXIF read; the preview is the small JPEG inside EXIF, or there is none and a note says so |
//! | TIFF, GIF | kept, EXIF read where the file carries it, no preview, a note says so |
//! | a damaged or cut-off picture | kept; a preview of the part that can be read; a note says so |
//! | more than [`MAX_PIXELS`] | kept, never unpacked, a note says so |
//! | the same bytes again | recognised, kept once |
//! | no picture by its content, whatever its name | refused; the file stays where it was picked from |
//! | more than [`MAX_BYTES`] | refused while it streams in |

mod album;
mod disk;
mod exif;
mod failure;
mod hash;
mod jpeg;
mod kind;
mod maker;
mod placeless;
mod preview;

pub use album::{Album, Intake, MAX_BYTES, Original, Photo, Upload};
pub use exif::{Place, Taken};
pub use failure::Failure;
pub use hash::Hash;
pub use kind::Kind;
pub use placeless::without_place;
pub use preview::{MAX_PIXELS, NoPreview, Preview, THUMB_SIDE, told};
