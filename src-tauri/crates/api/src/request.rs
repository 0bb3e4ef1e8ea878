//! What a command is: a value with a name, a request, a reply and a body; the list of all of them stands in `command`.

use message::Failure;
use serde::Serialize;
use serde::de::DeserializeOwned;

use crate::open::Open;

/// Something a page may ask for; the type itself is the request. It is asked of one open journal, or of what chooses
/// between two.
pub trait Command<Of = Open>: DeserializeOwned {
    /// The name on the wire, `noun.verb`.
    const NAME: &'static str;
    /// What comes back when it was carried out.
    type Reply: Serialize;
    /// Carries it out.
    ///
    /// # Errors
    /// A [`Failure`] with a sentence for the maker; nothing was changed then.
    fn run(self, app: &Of) -> Result<Self::Reply, Failure>;
}

/// A request without fields.
macro_rules! bare_request {
    ($(#[$doc:meta])* $name:ident) => {
        $(#[$doc])*
        #[derive(Debug, Clone, Copy, serde::Deserialize)]
        #[serde(deny_unknown_fields)]
        #[cfg_attr(feature = "ts", derive(ts_rs::TS))]
        pub struct $name {}
    };
}
pub(crate) use bare_request;
