//! A command is a value: name, request, reply and body in one place, all of them in one list.

use serde::Serialize;
use serde::de::DeserializeOwned;

use crate::{App, Code, Failure};

/// Something a page may ask for; the type itself is the request.
pub trait Command: DeserializeOwned {
    /// The name on the wire, `noun.verb`.
    const NAME: &'static str;
    /// What comes back when it was carried out.
    type Reply: Serialize;
    /// Carries it out.
    ///
    /// # Errors
    /// A [`Failure`] with a sentence for the maker; nothing was changed then.
    fn run(self, app: &App) -> Result<Self::Reply, Failure>;
}

/// The list. A type without a body ([`Command::run`]) does not compile here.
macro_rules! commands {
    ($($command:ty),* $(,)?) => {
        /// As [`crate::call`], but the reply still carries its messages: they are said by [`crate::spoken`].
        ///
        /// # Errors
        /// As [`crate::call`].
        pub fn carried(app: &App, name: &str, request: &str) -> Result<String, Failure> {
            crate::safe::answers(app, name)?;
            let demo = crate::demo::concerned(app, name)?;
            let app = demo.as_deref().unwrap_or(app);
            match name {
                $(<$command as Command>::NAME => answer::<$command>(app, request),)*
                _ => Err(Failure::new(
                    Code::UnknownCommand,
                    format!("There is no command called {name:?}."),
                )),
            }
        }

        /// The name of every command, in the order of the list.
        pub fn names() -> &'static [&'static str] {
            &[$(<$command as Command>::NAME),*]
        }

        /// The TypeScript module that describes every command, its request and its reply.
        #[cfg(feature = "ts")]
        pub fn bindings() -> String {
            let mut module = crate::bindings::Module::default();
            $(module.command::<$command>();)*
            module.text()
        }
    };
}

commands![
    crate::mixture::DescribeMixture,
    crate::mixture::ReachMixture,
    crate::drying::EstimateDrying,
    crate::herb::ListHerbs,
    crate::herb::FindHerb,
    crate::herb::ShowHerb,
    crate::herb::AddHerb,
    crate::herb::CorrectHerb,
    crate::bed::ListBeds,
    crate::bed::AddBed,
    crate::bed::CorrectBed,
    crate::harvest::EstimateHarvest,
    crate::harvest::RecordHarvest,
    crate::harvest::CorrectHarvest,
    crate::harvest::ListHarvests,
    crate::harvest::ShowHarvest,
    crate::harvest::BinHarvest,
    crate::photo::TakePhotoChunk,
    crate::photo::PreviewPhoto,
    crate::tray::StartTray,
    crate::tray::CookLot,
    crate::tray::WeighTray,
    crate::tray::TakeDownTray,
    crate::tray::CorrectTray,
    crate::tray::SampleTray,
    crate::tray::BinTray,
    crate::tray::ListTrays,
    crate::tray::ShowTray,
    crate::tray::CorrectWeighing,
    crate::tray::StrikeWeighing,
    crate::supply::ListSupplies,
    crate::supply::AddSupply,
    crate::supply::CorrectSupply,
    crate::jar::ListLots,
    crate::jar::ListPreparations,
    crate::jar::Composition,
    crate::jar::PourJar,
    crate::jar::ListJars,
    crate::jar::ShowJar,
    crate::jar::CorrectJar,
    crate::jar::FailJar,
    crate::jar::AdviseJar,
    crate::jar::PlanBottles,
    crate::jar::ShakeJar,
    crate::jar::TopUpJar,
    crate::jar::StrainJar,
    crate::jar::EmptyJar,
    crate::jar::ComposeMarc,
    crate::jar::KeepRecipe,
    crate::jar::RepeatJar,
    crate::jar::ListRecipes,
    crate::jar::CorrectRecipe,
    crate::jar::ComposeRecipe,
    crate::bottle::FillBottles,
    crate::bottle::ListBottles,
    crate::bottle::ShowBottle,
    crate::bottle::UseBottle,
    crate::bottle::GiveBottle,
    crate::bottle::CheckBottle,
    crate::bottle::BinBottle,
    crate::bottle::FinishBottle,
    crate::bottle::CorrectBottle,
    crate::bottle::CountDropper,
    crate::bottle::ListDroppers,
    crate::trace::TraceBack,
    crate::trace::TraceForward,
    crate::label::PrintTrace,
    crate::label::PrintForward,
    crate::label::DrawLabel,
    crate::label::PrintLabels,
    crate::label::FindLot,
    crate::due::ListDue,
    crate::label::ExportDue,
    crate::search::Search,
    crate::season::ShowSeason,
    crate::label::PrintSeason,
    crate::jar::SavePlan,
    crate::jar::ListPlans,
    crate::jar::StrikePlan,
    crate::jar::MergePlans,
    crate::deed::UndoDeed,
    crate::deed::ListDeeds,
    crate::setting::ShowSettings,
    crate::setting::ChangeSettings,
    crate::about::AboutJournal,
    crate::demo::BeginDemo,
    crate::demo::EndDemo,
    crate::safe::ShowJob,
    crate::safe::CancelJob,
    crate::safe::RunningJob,
    crate::safe::TakeFileChunk,
    crate::safe::AboutBackup,
    crate::safe::MakeBackup,
    crate::safe::TakeBackup,
    crate::safe::LookAtRestore,
    crate::safe::ApplyRestore,
    crate::safe::UndoRestore,
    crate::safe::ListRestorePoints,
    crate::safe::GoBack,
    crate::safe::BeginAnew,
    crate::safe::LookAtMerge,
    crate::safe::ApplyMerge,
    crate::safe::MakeExport,
    crate::safe::LookAtImport,
    crate::safe::ApplyImport,
    crate::safe::MakeRescue,
    crate::safe::CheckJournal,
    crate::safe::BeginCheck,
];

/// A request is at most so long; a piece of a file in base64 fits.
const LONGEST_REQUEST: usize = 2 * 1024 * 1024;

fn answer<C: Command>(app: &App, request: &str) -> Result<String, Failure> {
    carried_out::<C>(app, request).map_err(Failure::kept_short)
}

fn carried_out<C: Command>(app: &App, request: &str) -> Result<String, Failure> {
    if request.len() > LONGEST_REQUEST {
        return Err(Failure::new(
            Code::Invalid,
            "The request must be JSON text of at most 2 MiB.",
        ));
    }
    let mut reader = serde_json::Deserializer::from_str(request);
    let command: C = serde_path_to_error::deserialize(&mut reader)?;
    reader.end().map_err(|_| {
        Failure::new(
            Code::Invalid,
            "The request must be one JSON object and nothing after it.",
        )
    })?;
    written_down(&command.run(app)?)
}

/// A reply as JSON.
pub(crate) fn written_down(reply: &impl Serialize) -> Result<String, Failure> {
    serde_json::to_string(reply).map_err(|error| {
        Failure::new(
            Code::Storage,
            format!("The reply could not be written down: {error}."),
        )
    })
}

/// An answer as both hosts carry it: `{"reply": ...}` or `{"failure": ...}`.
pub fn envelope(answer: Result<String, Failure>) -> String {
    match answer {
        Ok(reply) => format!("{{\"reply\":{reply}}}"),
        Err(failure) => format!("{{\"failure\":{}}}", serde_json::json!(failure)),
    }
}
