//! `herb.add` and `herb.correct`: herbs that the book does not have.

use formulary::poison::Called;
use journal::{Herb, HerbId, HerbKey};
use message::Message;

use super::known::Known;
use super::list::line;
use super::wire::{AddHerb, CorrectHerb, HerbWritten};
use crate::{App, Command, Failure, asked};

impl Command for AddHerb {
    const NAME: &'static str = "herb.add";
    type Reply = HerbWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let herb = Herb {
            common: self.common.trim().to_owned(),
            latin: asked::text(self.latin),
            parts: trimmed(self.parts),
            note: asked::text(self.note),
        };
        let id = HerbId(app.new_id());
        let (done, herb) = app.perform(|writing| {
            refuse_a_second(&herb.common, None, &writing.herbs()?)?;
            writing.record(&id, &herb)?;
            Ok((format!("Added the herb {}", herb.common), herb))
        })?;
        Ok(HerbWritten {
            done,
            herb: line(&Known::of_maker(id.into(), herb), None),
        })
    }
}

impl Command for CorrectHerb {
    const NAME: &'static str = "herb.correct";
    type Reply = HerbWritten;

    fn run(self, app: &App) -> Result<Self::Reply, Failure> {
        let own = self
            .key
            .parse::<HerbKey>()
            .ok()
            .and_then(|key| key.as_own());
        let Some(id) = own else {
            return Err(Failure::not_found(
                "key",
                "Only herbs of your own can be changed.",
            ));
        };
        let (done, herb) = app.perform(|writing| {
            let mut herb = writing
                .get::<Herb>(&id)
                .map_err(|why| Failure::from(why).renamed("key"))?;
            let was = Known::of_maker(id.into(), herb.clone()).called();
            if let Some(common) = self.common {
                herb.common = common.trim().to_owned();
                refuse_a_second(&herb.common, Some(id), &writing.herbs()?)?;
            }
            asked::corrected(&mut herb.latin, self.latin);
            asked::corrected(&mut herb.note, self.note);
            if let Some(parts) = self.parts {
                herb.parts = trimmed(parts);
            }
            refuse_another_plant(was, &Known::of_maker(id.into(), herb.clone()))?;
            writing.correct(&id, &herb)?;
            Ok((format!("Corrected the herb {}", herb.common), herb))
        })?;
        Ok(HerbWritten {
            done,
            herb: line(&Known::of_maker(id.into(), herb), None),
        })
    }
}

fn trimmed(parts: Vec<String>) -> Vec<String> {
    let mut parts: Vec<String> = parts
        .iter()
        .map(|part| part.trim().to_lowercase())
        .collect();
    parts.retain(|part| !part.is_empty());
    parts.dedup();
    parts
}

/// A plant of the list of poisonous ones stays what it is, whatever it is called.
fn refuse_another_plant(was: Option<Called>, is: &Known) -> Result<(), Failure> {
    let Some(was) = was.filter(|was| was.which.is_none()) else {
        return Ok(());
    };
    if is.called().is_some_and(|called| called.plant == was.plant) {
        return Ok(());
    }
    let message = Message::new("poison-renamed").with("plant", was.name());
    Err(Failure::invalid("common", message))
}

/// Two herbs of one name could not be told apart in a list.
fn refuse_a_second(
    common: &str,
    this: Option<HerbId>,
    own: &[(HerbId, Herb)],
) -> Result<(), Failure> {
    let same = |name: &str| name.to_lowercase() == common.to_lowercase();
    let in_book = formulary::herbs::find(common).is_some_and(|entry| same(&entry.common));
    let is_own = own
        .iter()
        .any(|(id, herb)| Some(*id) != this && same(&herb.common));
    if in_book || is_own {
        return Err(Failure::invalid(
            "common",
            format!("There is a herb called {common} already."),
        ));
    }
    Ok(())
}
