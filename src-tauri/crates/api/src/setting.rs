//! How the maker likes it shown: `setting.*`.

use serde::{Deserialize, Serialize};

use crate::wire::{Changed, bare_request};
use crate::{App, Command, Failure, asked};

bare_request!(
    /// The settings as they stand.
    ShowSettings
);

/// Units on the screens; the journal is metric throughout.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Units {
    Metric,
    Us,
}

/// Light or dark.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum Scheme {
    System,
    Light,
    Dark,
}

/// The settings.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct Settings {
    pub units: Units,
    pub scheme: Scheme,
    pub cautions_seen: bool,
    /// Who made it and how to reach them, for labels.
    pub maker: Option<String>,
    /// The number of the poison line, for labels.
    pub poison_line: Option<String>,
    /// Whether this is the demo season, which `demo.end` removes.
    pub is_demo: bool,
    /// Whether the journal is missing or empty, so that the maker must choose what takes its place.
    pub is_lost: bool,
}

/// A change to the settings; what is left out stays, an empty text clears.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct ChangeSettings {
    pub units: Option<Units>,
    pub scheme: Option<Scheme>,
    pub cautions_seen: Option<bool>,
    pub maker: Option<String>,
    pub poison_line: Option<String>,
}

/// The settings were changed.
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct SettingsWritten {
    #[serde(flatten)]
    pub done: Changed,
    #[serde(flatten)]
    pub settings: Settings,
}

impl Settings {
    fn of(app: &App, setting: journal::Setting) -> Self {
        Self {
            is_demo: app.is_demo,
            is_lost: app.keep.lost().is_some(),
            units: match setting.units {
                journal::Units::Metric => Units::Metric,
                journal::Units::Us => Units::Us,
            },
            scheme: match setting.scheme {
                journal::Scheme::System => Scheme::System,
                journal::Scheme::Light => Scheme::Light,
                journal::Scheme::Dark => Scheme::Dark,
            },
            cautions_seen: setting.cautions_seen,
            maker: setting.maker,
            poison_line: setting.poison_line,
        }
    }
}

impl Command for ShowSettings {
    const NAME: &'static str = "setting.show";
    type Reply = Settings;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        Ok(Settings::of(
            app,
            app.read(|reading| Ok(reading.setting()?))?,
        ))
    }
}

impl Command for ChangeSettings {
    const NAME: &'static str = "setting.change";
    type Reply = SettingsWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let (done, setting) = app.perform(|writing| {
            let mut setting = writing.setting()?;
            match self.units {
                Some(Units::Metric) => setting.units = journal::Units::Metric,
                Some(Units::Us) => setting.units = journal::Units::Us,
                None => {}
            }
            match self.scheme {
                Some(Scheme::System) => setting.scheme = journal::Scheme::System,
                Some(Scheme::Light) => setting.scheme = journal::Scheme::Light,
                Some(Scheme::Dark) => setting.scheme = journal::Scheme::Dark,
                None => {}
            }
            setting.cautions_seen = self.cautions_seen.unwrap_or(setting.cautions_seen);
            asked::corrected(&mut setting.maker, self.maker);
            asked::corrected(&mut setting.poison_line, self.poison_line);
            // Recorded, not corrected: a device without a setting has no row yet.
            writing.record(&writing.device(), &setting)?;
            Ok(("Changed the settings".to_owned(), setting))
        })?;
        Ok(SettingsWritten {
            done,
            settings: Settings::of(app, setting),
        })
    }
}

impl App {
    /// Marks the journal as one that was filled from the demonstration data.
    ///
    /// # Errors
    /// A [`Failure`] when it cannot be written.
    pub fn mark_as_demo(&self) -> Result<(), Failure> {
        let marked = self.perform(|writing| {
            let setting = journal::Setting {
                demo: true,
                ..writing.setting()?
            };
            writing.record(&writing.device(), &setting)?;
            Ok(("Began a demonstration journal".to_owned(), ()))
        });
        marked.map(|_| ())
    }
}
