### Cooked herbs, and what keeps and for how long.

## What a limit looks at, and what it found; each stands inside "Keeps: ...".

gate-water-kept = water that is kept
gate-alcohol-in-free-water = alcohol in the water left free
gate-all-water-kept = sugar, glycerin and alcohol keep all of its water
gate-water-left-free = sugar, glycerin and alcohol keep only { $share } of its water
keep-loaded-acid = so much fresh plant may leave the acid too weak; test it with a pH strip

## How long.

glycerite-below-70 = Below 70 % glycerin keep it cold. Nobody has shown that it keeps.
best-before-habit = This time is habit. No test of it was found, so look at it now and then.

## Cooked: simmered and strained.

cooked-water-assumed = a juice or brew that nobody measured holds 80 to 99 % water, by habit
plan-not-cooked = A plan cannot yet start from a juice. Cook first, weigh what you have, and fill a jar from it.
spiced-together = These roots, bulbs and peppers are those of a spiced vinegar.
gate-days = days
gate-decoction = nothing in it holds germs back, so use it within a day
preparation-elixir-cooked = Elixir of cooked fruit
preparation-elixir-cooked-summary = Cooked juice with strong spirit and syrup, mixed and filtered.
preparation-elixir-cooked-recipe = Two parts of spirit or tincture, three of syrup and three of cooked juice.
preparation-syrup = Syrup
preparation-syrup-summary = Cooked juice or a strong brew, with twice its weight of sugar.
preparation-syrup-recipe = Two parts of sugar to one part of liquid, by weight.
preparation-syrup-melt = Melt the sugar over low heat. Fill it hot into boiled bottles.
preparation-syrup-vessel = Small boiled glass bottles.
preparation-syrup-storage = Keep it in the fridge, or freeze it.
preparation-syrup-honey = Honey syrup
preparation-syrup-honey-summary = Cooked juice or a strong brew, with as much honey by weight.
preparation-syrup-honey-recipe = One part of honey to one part of liquid, by weight, stirred in when hand-warm.
preparation-decoction = Decoction
preparation-decoction-summary = Hard parts simmered in water, for the same day.
preparation-decoction-recipe = Cold water, a fifth more than is wanted at the end.
preparation-decoction-note = Start it cold, simmer it for 10 to 15 minutes with the lid on, and strain it hot.
preparation-decoction-vessel = A pan of steel or enamel, with a lid.

## The acid bath before an oil.

soak-cut = Peel garlic, and chop everything to 6 mm or finer. Keep it all under the acid.
soak-garlic = Peel the garlic and chop it to 6 mm or finer. Keep { $grams } of it wholly under { $acid } of 3 % citric acid for 24 hours.
soak-herb = Chop { $herb } to 6 mm or finer. Keep { $grams } of it wholly under { $acid } of 3 % citric acid for 24 hours.

## The pot.

lot-is-in-another-state = This lot is in another state: fresh from a harvest, dried from a tray, cooked from a pot.
cooked-left = cooked, { $left } left
cooked-already = This was cooked already.
cooked-before-it-was-picked = It cannot be cooked before it was picked.
cooked-more-than-there-is = There are only { $left } left of this lot.
cooked-line = Cooked { $grams } of { $herb } ({ $code })
cooked-nothing-came-out = The volume strained must be more than 0 mL.
cooked-weigh-or-measure = Weigh the pot with what you strained, or measure its volume: one of the two.
cooked-water-by-refractometer = its sugar was measured
cooked-water-from-the-pot = its pot was weighed, and half of the dry plant is taken to be in it
