//! A command is a value: name, request, reply and body in one place, all of them in one list.

use message::{Argument, Code, Failure, say};

use crate::open::Open;
use crate::refused;
use crate::reply::written_down;
use crate::request::Command;

/// The list. A type without a body ([`Command::run`]) does not compile here.
macro_rules! commands {
    ($($command:ty),* $(,)?) => {
        /// Carries out the command `name` of the list on one journal.
        pub(crate) fn carried(open: &Open, name: &str, request: &str) -> Result<String, Failure> {
            match name {
                $(<$command as Command>::NAME => answer::<$command, Open>(open, request),)*
                _ => Err(Failure::new(
                    Code::UnknownCommand,
                    say!("command-unknown", name = Argument::own(name)),
                )),
            }
        }

        /// The name of every command of the list, in its order.
        pub(crate) const NAMES: &[&str] = &[$(<$command as Command>::NAME),*];

        /// Describes every command of the list in TypeScript.
        #[cfg(feature = "ts")]
        pub(crate) fn describe(module: &mut crate::bindings::Module) {
            $(module.command::<$command, Open>();)*
        }
    };
}

commands![
    crate::mixture::describe::DescribeMixture,
    crate::mixture::reach::ReachMixture,
    crate::drying::request::EstimateDrying,
    crate::herb::list::ListHerbs,
    crate::herb::find::FindHerb,
    crate::herb::page::ShowHerb,
    crate::herb::calendar::ShowCalendar,
    crate::herb::own::AddHerb,
    crate::herb::own::CorrectHerb,
    crate::bed::ListBeds,
    crate::bed::ShowBed,
    crate::bed::AddBed,
    crate::bed::CorrectBed,
    crate::harvest::estimate::EstimateHarvest,
    crate::harvest::record::RecordHarvest,
    crate::harvest::record::CorrectHarvest,
    crate::harvest::list::ListHarvests,
    crate::harvest::page::ShowHarvest,
    crate::harvest::bin::BinHarvest,
    crate::photo::TakePhotoChunk,
    crate::photo::PreviewPhoto,
    crate::portrait::RecordPortrait,
    crate::portrait::CorrectPortrait,
    crate::portrait::StrikePortrait,
    crate::tray::write::StartTray,
    crate::lot::cook::CookLot,
    crate::tray::weigh::WeighTray,
    crate::tray::write::TakeDownTray,
    crate::tray::write::CorrectTray,
    crate::tray::write::SampleTray,
    crate::tray::bin::BinTray,
    crate::tray::list::ListTrays,
    crate::tray::page::ShowTray,
    crate::weighing::CorrectWeighing,
    crate::weighing::StrikeWeighing,
    crate::supply::ListSupplies,
    crate::supply::AddSupply,
    crate::supply::CorrectSupply,
    crate::lot::list::ListLots,
    crate::preparation::ListPreparations,
    reckon::jar::proposal::Composition,
    crate::jar::pour::PourJar,
    crate::jar::list::ListJars,
    crate::jar::page::ShowJar,
    crate::jar::correct::CorrectJar,
    crate::jar::correct::FailJar,
    crate::jar::advise::AdviseJar,
    reckon::plan::bottles::PlanBottles,
    crate::jar::life::ShakeJar,
    crate::jar::life::TopUpJar,
    crate::jar::life::StrainJar,
    crate::jar::empty::EmptyJar,
    crate::jar::marc::ComposeMarc,
    crate::jar::keep_recipe::KeepRecipe,
    crate::jar::repeat::RepeatJar,
    crate::recipe::ListRecipes,
    crate::recipe::CorrectRecipe,
    crate::recipe::ComposeRecipe,
    crate::recipe::card::DrawCard,
    crate::recipe::card::PrintCard,
    crate::recipe::class::PlanClass,
    crate::recipe::class::PrintClassCards,
    crate::recipe::class::PrintClassLabels,
    crate::recipe::code::ReadRecipeCode,
    crate::recipe::code::TakeInRecipe,
    crate::bottle::fill::FillBottles,
    crate::bottle::list::ListBottles,
    crate::bottle::page::ShowBottle,
    crate::bottle::ways::ListWays,
    crate::bottle::write::UseBottle,
    crate::bottle::write::GiveBottle,
    crate::bottle::write::CheckBottle,
    crate::bottle::write::BinBottle,
    crate::bottle::write::FinishBottle,
    crate::bottle::write::CorrectBottle,
    crate::dropper::CountDropper,
    crate::dropper::ListDroppers,
    crate::trace::TraceBack,
    crate::trace::TraceForward,
    crate::trace::sheet::PrintTrace,
    crate::trace::sheet_forward::PrintForward,
    crate::label::DrawLabel,
    crate::label::PrintLabels,
    crate::lot::find::FindLot,
    crate::due::ListDue,
    crate::due::calendar::ExportDue,
    crate::journal::search::Search,
    crate::season::ShowSeason,
    crate::season::printed::PrintSeason,
    crate::plan::SavePlan,
    crate::plan::ListPlans,
    crate::plan::StrikePlan,
    crate::plan::MergePlans,
    crate::deed::UndoDeed,
    crate::deed::ListDeeds,
    crate::setting::ShowSettings,
    crate::setting::ChangeSettings,
    crate::journal::about::AboutJournal,
    crate::job::ShowJob,
    crate::job::CancelJob,
    crate::job::RunningJob,
    crate::file::TakeFileChunk,
    crate::backup::AboutBackup,
    crate::backup::MakeBackup,
    crate::backup::TakeBackup,
    crate::restore::LookAtRestore,
    crate::restore::ApplyRestore,
    crate::restore::UndoRestore,
    crate::restore::ListRestorePoints,
    crate::restore::GoBack,
    crate::restore::BeginAnew,
    crate::merge::LookAtMerge,
    crate::merge::ApplyMerge,
    crate::export::MakeExport,
    crate::import::LookAtImport,
    crate::import::ApplyImport,
    crate::rescue::MakeRescue,
    crate::journal::check::CheckJournal,
    crate::journal::check::BeginCheck,
];

/// A request is at most so long; a piece of a file in base64 fits.
const LONGEST_REQUEST: usize = 2 * 1024 * 1024;

/// Reads a request and carries it out.
pub(crate) fn answer<C: Command<Of>, Of>(of: &Of, request: &str) -> Result<String, Failure> {
    carried_out::<C, Of>(of, request).map_err(Failure::kept_short)
}

fn carried_out<C: Command<Of>, Of>(of: &Of, request: &str) -> Result<String, Failure> {
    if request.len() > LONGEST_REQUEST {
        return Err(Failure::new(Code::Invalid, say!("request-too-long")));
    }
    let mut reader = serde_json::Deserializer::from_str(request);
    let command: C = serde_path_to_error::deserialize(&mut reader).map_err(refused::unread)?;
    reader
        .end()
        .map_err(|_| Failure::new(Code::Invalid, say!("request-one-object")))?;
    written_down(&command.run(of)?)
}
