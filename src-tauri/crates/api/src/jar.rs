//! What is poured on what: `lot.list`, `preparation.list`, `jar.*`, `plan.bottles`.

pub(crate) mod advise;
pub(crate) mod compose;
pub(crate) mod correct;
pub(crate) mod empty;
pub(crate) mod keep_recipe;
pub(crate) mod life;
pub(crate) mod lines;
pub(crate) mod list;
pub(crate) mod marc;
pub(crate) mod page;
pub(crate) mod pour;
pub(crate) mod repeat;
