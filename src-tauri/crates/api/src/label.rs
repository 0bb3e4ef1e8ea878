//! `label.single` and `label.sheet`: what sticks on a bottle or a jar.

pub(crate) mod record;

use ::paper::Paper;
use formulary::preparations::Purpose;
use journal::{BottleId, JarId, Setting};
use message::{Failure, say};
use reckon::asked;
use serde::{Deserialize, Serialize};
use store::Reading;

use crate::label::record::Wanted;
use crate::open::Open;
use crate::printed::PrintedFile;
use crate::request::Command;

/// The paper that labels are printed on: a sheet of many, or one the size of the label itself.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "snake_case")]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub enum LabelPaper {
    A4,
    Letter,
    Label,
}

impl LabelPaper {
    pub(crate) fn sheet(self) -> Option<Paper> {
        match self {
            Self::A4 => Some(Paper::A4),
            Self::Letter => Some(Paper::Letter),
            Self::Label => None,
        }
    }
}

/// Width and height of a label, 25 to 200 by 15 to 280 mm.
#[derive(Debug, Clone, Copy, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct LabelSize {
    pub width_mm: f64,
    pub height_mm: f64,
}

/// One label as a picture. A gift's label leaves private notes out and says what is in it.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct DrawLabel {
    pub bottle: Option<String>,
    pub jar: Option<String>,
    pub label: LabelSize,
    pub gift: bool,
    /// Whether the alcohol in the whole bottle is printed.
    pub ethanol: bool,
    pub use_for: Option<Purpose>,
}

/// Labels on paper, one for each bottle and jar.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct PrintLabels {
    pub bottles: Option<Vec<String>>,
    pub jars: Option<Vec<String>>,
    pub paper: LabelPaper,
    pub label: LabelSize,
    pub gift: bool,
    pub ethanol: bool,
    pub use_for: Option<Purpose>,
    /// Places of the first sheet that are used already.
    pub skip: Option<u32>,
}

/// How many labels of a size a sheet takes.
#[derive(Debug, Clone, Copy, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct PerSheet {
    pub a4: u32,
    pub letter: u32,
}

/// The answer to [`DrawLabel`].
#[derive(Debug, Clone, Serialize)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS))]
pub struct LabelDrawn {
    pub svg: String,
    /// What was left out, and what is not written down.
    pub remarks: Vec<String>,
    /// What it may be labelled for.
    pub uses: Vec<Purpose>,
    /// What it is labelled for.
    pub use_for: Purpose,
    pub per_sheet: PerSheet,
}

impl TryFrom<LabelSize> for ::paper::Size {
    type Error = Failure;

    fn try_from(size: LabelSize) -> Result<Self, Failure> {
        Ok(Self::new(size.width_mm, size.height_mm)?)
    }
}

/// What a label is for.
enum Subject {
    Bottle(BottleId),
    Jar(JarId),
}

impl Subject {
    fn drawn(
        &self,
        reading: &Reading<'_>,
        wanted: &Wanted,
        setting: &Setting,
    ) -> Result<record::Record, Failure> {
        let mut record = match self {
            Self::Bottle(id) => record::of_bottle(reading, id, wanted, setting)?,
            Self::Jar(id) => record::of_jar(reading, id, wanted, setting)?,
        };
        record.label.language = crate::speech::language();
        Ok(record)
    }
}

impl Command for DrawLabel {
    const NAME: &'static str = "label.single";
    type Reply = LabelDrawn;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let size: ::paper::Size = self.label.try_into()?;
        let subject = match (&self.bottle, &self.jar) {
            (Some(id), None) => Subject::Bottle(asked::id("bottle", id)?),
            (None, Some(id)) => Subject::Jar(asked::id("jar", id)?),
            _ => return Err(Failure::invalid("bottle", say!("bottle-or-jar"))),
        };
        let wanted = Wanted {
            gift: self.gift,
            ethanol: self.ethanol,
            use_for: self.use_for,
        };
        let record = app.read(|reading| subject.drawn(reading, &wanted, &reading.setting()?))?;
        let drawn = ::paper::single_svg(&record.label, size)?;
        let places = |paper: Paper| {
            let grid = ::paper::Sheet::new(paper, size).grid();
            grid.map_or(0, |grid| {
                u32::try_from(grid.per_sheet()).unwrap_or_default()
            })
        };
        Ok(LabelDrawn {
            svg: drawn.bytes,
            remarks: drawn.remarks.into_iter().map(String::from).collect(),
            uses: record.uses,
            use_for: record.use_for,
            per_sheet: PerSheet {
                a4: places(Paper::A4),
                letter: places(Paper::Letter),
            },
        })
    }
}

impl Command for PrintLabels {
    const NAME: &'static str = "label.sheet";
    type Reply = PrintedFile;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let size: ::paper::Size = self.label.try_into()?;
        let bottles = self.bottles.unwrap_or_default();
        let jars = self.jars.unwrap_or_default();
        let mut subjects = Vec::with_capacity(bottles.len() + jars.len());
        for (at, id) in bottles.iter().enumerate() {
            subjects.push(Subject::Bottle(asked::id(&format!("bottles[{at}]"), id)?));
        }
        for (at, id) in jars.iter().enumerate() {
            subjects.push(Subject::Jar(asked::id(&format!("jars[{at}]"), id)?));
        }
        let wanted = Wanted {
            gift: self.gift,
            ethanol: self.ethanol,
            use_for: self.use_for,
        };
        let labels = app.read(|reading| {
            let setting = reading.setting()?;
            let labels = subjects
                .iter()
                .map(|subject| Ok(subject.drawn(reading, &wanted, &setting)?.label));
            labels.collect::<Result<Vec<_>, Failure>>()
        })?;
        let skip = self.skip.unwrap_or_default() as usize;
        let drawn = match (self.paper.sheet(), labels.as_slice()) {
            (Some(paper), _) => {
                let sheet = ::paper::Sheet {
                    skip,
                    ..::paper::Sheet::new(paper, size)
                };
                ::paper::sheet_pdf(&labels, &sheet)?
            }
            (None, [only]) => ::paper::single_pdf(only, size)?,
            (None, _) => {
                let message = say!("label-one-at-a-time");
                return Err(Failure::invalid("paper", message));
            }
        };
        let name = match labels.as_slice() {
            [only] => format!("label-{}.pdf", only.lot),
            _ => format!("labels-{}.pdf", app.now().date_naive()),
        };
        Ok(PrintedFile::pdf(name, drawn))
    }
}
