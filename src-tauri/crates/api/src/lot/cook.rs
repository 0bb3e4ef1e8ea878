//! `lot.cook`: part of a harvest or of a dried lot was simmered and strained, and is a lot of its own.

use journal::{Cooked, Source, TakenDown, Tray, TrayId};
use message::{Argument, At, Failure, say};
use physics::MassFraction;
use physics::mixture::{Acidity, Ingredient};
use physics::quantity::kg_per_m3_of;
use reckon::herb::Known;
use reckon::tray::run::refuse_if_lost;
use reckon::wire::Lot;
use reckon::{asked, told};
use serde::Deserialize;

use crate::open::Open;
use crate::request::Command;
use crate::tray::page::{TrayWritten, written};
use crate::tray::write::plant_name;

/// Plant was simmered in water or as its own juice, and strained.
#[derive(Debug, Clone, Deserialize)]
#[serde(deny_unknown_fields)]
#[cfg_attr(feature = "ts", derive(ts_rs::TS), ts(optional_fields))]
pub struct CookLot {
    /// What it came from, fresh or dried.
    pub lot: Lot,
    /// How much of it went into the pot.
    pub mass_g: f64,
    /// Water that was poured on; none of a juice.
    pub water_ml: Option<f64>,
    /// The empty pot or jug.
    pub tare_g: Option<f64>,
    /// The pot with what was strained; else its volume is given.
    pub gross_g: Option<f64>,
    /// The volume that was strained, where it was not weighed.
    pub out_ml: Option<f64>,
    /// What a refractometer shows, % by mass.
    pub sugar_percent_mass: Option<f64>,
    pub cooked_at: Option<String>,
    pub name: Option<String>,
    pub note: Option<String>,
}

impl Command for CookLot {
    const NAME: &'static str = "lot.cook";
    type Reply = TrayWritten;

    fn run(self, app: &Open) -> Result<Self::Reply, Failure> {
        let id = TrayId(app.new_id());
        let lot = asked::lot("lot.id", &self.lot)?;
        let at = asked::past("cooked_at", self.cooked_at.as_deref(), app.now())?;
        let (tare_g, gross_g) = self.weighed()?;
        let (done, ()) = app.perform(|writing| {
            let row = writing
                .lot(lot)
                .map_err(|why| Failure::from(why).renamed("lot.id"))?;
            if row.state() == journal::PlantState::Cooked {
                return Err(Failure::invalid("lot", say!("cooked-already")));
            }
            if let Some(tray) = &row.tray {
                refuse_if_lost(tray).map_err(|why| why.renamed("lot"))?;
            }
            if at < row.harvest.picked_at {
                return Err(Failure::invalid(
                    "cooked_at",
                    say!("cooked-before-it-was-picked"),
                ));
            }
            // A lot cannot give more than there is of it; the ledger would only tell afterwards.
            let left = writing.left(Source::from(lot))?.get();
            if self.mass_g > left {
                let message = say!("cooked-more-than-there-is", left = Argument::grams(left));
                return Err(Failure::invalid("mass_g", message));
            }
            let known = Known::written(writing, &row.harvest.herb)?;
            let name = asked::text(self.name);
            let tray = Tray {
                code: writing.free_code(id.0)?,
                name: name.unwrap_or_else(|| plant_name(&known, &row.harvest.part)),
                harvest: row.harvest_id,
                fresh_mass_g: self.mass_g,
                tare_g,
                started_at: at,
                air: None,
                taken_down: Some(TakenDown {
                    at,
                    gross_g,
                    snap_test: false,
                }),
                lost: None,
                cooked: Some(Cooked {
                    from: match lot {
                        journal::Lot::Tray(id) => Some(id),
                        journal::Lot::Harvest(_) => None,
                    },
                    water_ml: self.water_ml.unwrap_or_default(),
                    sugar_percent_mass: self.sugar_percent_mass,
                }),
                sample: None,
                note: asked::text(self.note),
            };
            writing.record(&id, &tray)?;
            let line = say!(
                "cooked-line",
                grams = Argument::grams(tray.fresh_mass_g),
                herb = told::herb(&known),
                code = &tray.code
            );
            Ok((line, ()))
        })?;
        written(app, done, &id)
    }
}

impl CookLot {
    /// The empty pot and the pot with what was strained, g; a volume becomes a weight by its sugar.
    fn weighed(&self) -> Result<(f64, f64), Failure> {
        let tare_g = self.tare_g.unwrap_or_default();
        match (self.gross_g, self.out_ml) {
            (Some(gross_g), None) => Ok((tare_g, gross_g)),
            (None, Some(ml)) => {
                let percent = self.sugar_percent_mass.unwrap_or_default();
                let sugar = MassFraction::from_percent(percent).at("sugar_percent_mass")?;
                let none = Acidity::new(0.0).at("sugar_percent_mass")?;
                let juice = Ingredient::juice(sugar, none).at("sugar_percent_mass")?;
                let g_per_ml = kg_per_m3_of(juice.density()) / 1000.0;
                if !ml.is_finite() || ml <= 0.0 {
                    return Err(Failure::invalid("out_ml", say!("cooked-nothing-came-out")));
                }
                Ok((0.0, (ml * g_per_ml * 10.0).round() / 10.0))
            }
            _ => Err(Failure::invalid("gross_g", say!("cooked-weigh-or-measure"))),
        }
    }
}
