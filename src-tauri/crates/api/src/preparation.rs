//! `preparation.list`.

use formulary::preparations::{self, PlantState as State};
use message::{Failure, Message};
use physics::mixture::IngredientKind;
use serde::Serialize;

use crate::open::Open;
use crate::request::{Command, bare_request};

bare_request!(
    /// What a herb can become.
    ListPreparations
);

/// A kind of preparation.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PreparationLine {
    pub key: String,
    pub name: Message,
    pub fresh: bool,
    pub dried: bool,
    pub cooked: bool,
    pub liquids: Vec<IngredientKind>,
    pub summary: Message,
}

/// The answer to [`ListPreparations`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Preparations {
    pub preparations: Vec<PreparationLine>,
}

impl Command for ListPreparations {
    const NAME: &'static str = "preparation.list";
    type Reply = Preparations;

    fn run(self, _: &Open) -> Result<Self::Reply, Failure> {
        let lines = preparations::all()
            .iter()
            .map(|preparation| PreparationLine {
                key: preparation.key.clone(),
                name: preparation.title(),
                fresh: preparation.takes(State::Fresh),
                dried: preparation.takes(State::Dried),
                cooked: preparation.takes(State::Cooked),
                liquids: preparation.liquids(),
                summary: preparation.summary(),
            });
        Ok(Preparations {
            preparations: lines.collect(),
        })
    }
}
