use super::*;

#[test]
fn what_is_bought_of_each_kind_is_an_ingredient_with_the_same_label() {
    for kind in IngredientKind::ALL {
        let bought = Item::bought(*kind, |_| None, None);
        assert_eq!(bought.check(), Ok(()), "{kind:?}");
        assert_eq!(IngredientKind::of(kind.key()), Some(*kind));
        let ingredient = bought.ingredient().expect("it can be poured");
        let again = Item::of(&ingredient);
        assert_eq!(again.kind(), *kind);
        assert_eq!(again.oil(), bought.oil());
        for ((name, figure), (_, before)) in again.figures().into_iter().zip(bought.figures()) {
            // A figure goes through a fraction, so its last digit may differ.
            assert!((figure - before).abs() < 1e-9, "{kind:?} {name} {figure}");
        }
    }
}

#[test]
fn a_label_is_asked_for_the_figures_of_its_kind_alone() {
    let mut asked = Vec::new();
    let wine = Item::read(
        IngredientKind::Wine,
        |name, unsaid| {
            asked.push(name);
            unsaid.or(Some(10.0)).ok_or(())
        },
        || Err(()),
    );
    let figures = wine.map(|wine| wine.figures());
    assert_eq!(
        asked,
        [
            "strength_percent_vol",
            "sugar_g_per_l",
            "acidity_g_per_100ml"
        ]
    );
    assert_eq!(
        figures.map(|figures| figures.iter().map(|(_, figure)| *figure).sum::<f64>()),
        Ok(20.0),
        "a wine's label may leave its acidity out"
    );
}
