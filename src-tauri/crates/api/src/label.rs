//! What leaves the book as a file: `label.*`, `trace.sheet`, `trace.sheet_forward`, `season.book`, `due.calendar`; and `lot.find`.

mod calendar;
mod forward;
mod found;
mod papers;
mod record;
mod wire;

use base64::Engine as _;
use base64::prelude::BASE64_STANDARD as BASE64;
use journal::{BottleId, JarId, Setting};
use store::Reading;

use crate::{App, Command, Failure, asked};
pub use calendar::*;
pub use forward::*;
pub use found::*;
use record::Wanted;
pub use wire::*;

impl From<::label::Refusal> for Failure {
    fn from(refusal: ::label::Refusal) -> Self {
        // A request names what is to be labelled, not the labels that come of it.
        let field = match refusal.field {
            "labels" => "bottles",
            field => field,
        };
        Self::invalid(field, refusal.message)
    }
}

impl PrintedFile {
    fn new(file_name: String, media_type: &str, bytes: &[u8], remarks: Vec<String>) -> Self {
        Self {
            file_name,
            media_type: media_type.to_owned(),
            base64: BASE64.encode(bytes),
            remarks,
        }
    }

    fn pdf(file_name: String, drawn: ::label::Drawn<Vec<u8>>) -> Self {
        Self::new(file_name, "application/pdf", &drawn.bytes, drawn.remarks)
    }
}

impl From<Paper> for ::label::Paper {
    fn from(paper: Paper) -> Self {
        match paper {
            Paper::A4 => Self::A4,
            Paper::Letter => Self::Letter,
        }
    }
}

impl TryFrom<LabelSize> for ::label::Size {
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

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let size: ::label::Size = self.label.try_into()?;
        let subject = match (&self.bottle, &self.jar) {
            (Some(id), None) => Subject::Bottle(asked::id("bottle", id)?),
            (None, Some(id)) => Subject::Jar(asked::id("jar", id)?),
            _ => return Err(Failure::invalid("bottle", "Name either a bottle or a jar.")),
        };
        let wanted = Wanted {
            gift: self.gift,
            ethanol: self.ethanol,
            use_for: self.use_for,
        };
        let record = app.read(|reading| subject.drawn(reading, &wanted, &reading.setting()?))?;
        let drawn = ::label::single_svg(&record.label, size)?;
        let places = |paper: Paper| {
            let grid = ::label::Sheet::new(paper.into(), size).grid();
            grid.map_or(0, |grid| {
                u32::try_from(grid.per_sheet()).unwrap_or_default()
            })
        };
        Ok(LabelDrawn {
            svg: drawn.bytes,
            remarks: drawn.remarks,
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

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let size: ::label::Size = self.label.try_into()?;
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
                let sheet = ::label::Sheet {
                    skip,
                    ..::label::Sheet::new(paper, size)
                };
                ::label::sheet_pdf(&labels, &sheet)?
            }
            (None, [only]) => ::label::single_pdf(only, size)?,
            (None, _) => {
                let message = "Paper of the label's own size takes one label at a time.";
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
