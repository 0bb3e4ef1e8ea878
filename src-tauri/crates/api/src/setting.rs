//! How the maker likes it shown: `setting.*`.

use journal::{Hemisphere, Scheme, Units};
use message::{Failure, say};
use reckon::asked;
use serde::{Deserialize, Serialize};

use crate::changed::Changed;
use crate::open::Open;
use crate::request::{Command, bare_request};

bare_request!(
    /// The settings as they stand.
    ShowSettings
);

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
    /// Which half of the globe the garden lies in.
    pub hemisphere: Hemisphere,
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
    pub hemisphere: Option<Hemisphere>,
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
    fn of(app: &Open, setting: journal::Setting) -> Self {
        Self {
            is_demo: app.is_demo,
            is_lost: app.keep.lost().is_some(),
            units: setting.units,
            scheme: setting.scheme,
            cautions_seen: setting.cautions_seen,
            maker: setting.maker,
            poison_line: setting.poison_line,
            hemisphere: setting.hemisphere,
        }
    }
}

impl Command for ShowSettings {
    const NAME: &'static str = "setting.show";
    type Reply = Settings;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        Ok(Settings::of(
            app,
            app.read(|reading| Ok(reading.setting()?))?,
        ))
    }
}

impl Command for ChangeSettings {
    const NAME: &'static str = "setting.change";
    type Reply = SettingsWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let (done, setting) = app.perform(|writing| {
            let mut setting = writing.setting()?;
            asked::set(&mut setting.units, self.units);
            asked::set(&mut setting.scheme, self.scheme);
            asked::set(&mut setting.cautions_seen, self.cautions_seen);
            asked::corrected(&mut setting.maker, self.maker);
            asked::corrected(&mut setting.poison_line, self.poison_line);
            asked::set(&mut setting.hemisphere, self.hemisphere);
            // Recorded, not corrected: a device without a setting has no row yet.
            writing.record(&writing.device(), &setting)?;
            Ok((say!("deed-settings-changed"), setting))
        })?;
        Ok(SettingsWritten {
            done,
            settings: Settings::of(app, setting),
        })
    }
}

impl Open {
    /// Marks the journal as one that was filled from the demonstration data.
    pub(crate) fn mark_as_demo(&self) -> Result<(), Failure> {
        let marked = self.perform(|writing| {
            let setting = journal::Setting {
                demo: true,
                ..writing.setting()?
            };
            writing.record(&writing.device(), &setting)?;
            Ok((say!("deed-demo-book-begun"), ()))
        });
        marked.map(|_| ())
    }
}
