### What a limit looks at, what it found and what it asks; each stands inside "Keeps: ...".

gate-alcohol = alcohol at the end
gate-alcohol-in-free-water = alcohol in the water left free
gate-water-kept = protected water
gate-water-activity = water activity
gate-vinegar-bought = vinegar as bought
gate-acidity = acidity at the end
gate-acid-ph = pH of the plain acid (it can only be higher)
gate-measured-ph = measured pH
gate-herb-water = water in the herb
gate-cold-days = days at 4 °C
gate-days = days
gate-soak-hours = hours in 3 % citric acid
gate-found = { $what } { $figure }; { $rule }
gate-all-water-kept = sugar, glycerin and alcohol protect all of its water
gate-water-left-free = sugar, glycerin and alcohol protect only { $share } of its water
rule-alcohol = 25 % vol keeps at room temperature, 20 to 25 keeps cold, below 20 it is fresh food
rule-alcohol-of-wine = wine keeps from 18 % vol, cold from 15, and spoils below that
rule-water-activity = above 0.85 food that is not sour needs care, and above 0.91 most bacteria grow
rule-water-activity-sour = sour and thick keeps, sour and thin keeps cold
rule-vinegar-bought = the vinegar must have 5 % acidity or more
rule-vinegar-end = the finished vinegar should have 4 % acidity; no lower figure was found
rule-acid-ph = above pH 4.6 acid no longer protects, so aim for 4.0; plants raise the pH, so only a strip can confirm it
rule-measured-ph = above pH 4.6 acid no longer protects, so aim for 4.0
rule-herb-water = herb for oil must be crisp: aim for 10 % water, 12 at the most
rule-fresh-oil = fresh plant in oil keeps for 4 days at 4 °C or colder; then throw it away or freeze it
rule-acid-soak = keep it fully under 3 % citric acid for 24 hours before the oil goes on
rule-same-day = nothing in it holds germs back, so use it within a day
keep-loaded-acid = this much fresh herb may leave the acid too weak; test it with a pH strip
keep-by-its-kind = this kind is always kept in the fridge
keep-by-nothing = nothing in it is known to keep it

keeping-keeps = Keeps: { $why }.
keeping-keeps-cold = Keeps cold: { $why }.
keeping-use-now = Use now: { $why }.
keeping-do-not-make = Do not make it: { $why }.

## How long.

glycerite-below-70 = Below 70 % glycerin, keep it cold. Nobody has shown that it keeps otherwise.
best-before-habit = This time is common practice. No test was found, so check it now and then.
best-before-shorter = It keeps for the shorter of these times. Check it now and then.
best-before-acidified-oil = The tested method allows room temperature but gives no shelf life. Go by the date on the oil's label. Throw it away if it turns cloudy or smells rancid.
best-before-not-made = No date, because this should not be made.
best-before-fresh-food = Treat it as fresh food: keep it cold and use it within days (no figure published).
best-before-colder = Keep it cold and use it sooner (no figure published).
best-before-unknown = No shelf life was found. Write the date on it and check it every month.
oil-label-missing = Add the best-before date from the oil's label. Without it, this date is only common practice.
oil-ageing = The date on the oil's label, { $label }, is for 20 °C, dark and sealed. Oil ages twice as fast for every 10 °C. At 25 °C use it by { $warm }, at 30 °C by { $hot }. Light ages it faster still (no figure published).
rosemary-extract = Rosemary extract slows rancidity (no figure published). It does nothing against botulism.
fortified-keeps-longer = About 10 % alcohol makes a glycerite keep longer (no figure published).

## A measured pH.

ph-acid = The measured pH, { $range }, is below { $limit }, so acid protects it. This does not make it keep longer than stated here.
ph-not-acid = Not acidic enough to keep: pH { $ph } was measured on { $day }. Above { $limit }, acid no longer protects it. Keep it cold and use it within days, or throw it away.
ph-perhaps-not-acid = It may not be acidic enough to keep: pH { $ph } was measured on { $day }, give or take { $off }. Above { $limit }, acid no longer protects it. Keep it cold and use it within days, or throw it away.
ph-perhaps-not-acid-by-strip = It may not be acidic enough to keep: pH { $ph } was measured on { $day }, give or take { $off }. Above { $limit }, acid no longer protects it. Keep it cold and use it within days, or throw it away. A meter is more exact than a strip.

## Cooked: simmered and strained.

cooked-water-assumed = a juice or brew that was not measured usually has 80 to 99 % water
plan-not-cooked = A plan can't start from a juice yet. Cook first, weigh what you have, and start a jar from it.
spiced-together = These roots, bulbs and peppers belong in a spiced vinegar.

## The acid bath before an oil.

soak-cut = Peel garlic, and chop everything to 6 mm or finer. Keep it all under the acid.
soak-garlic = Peel the garlic and chop it to 6 mm or finer. Soak { $grams } of it in { $acid } of 3 % citric acid for 24 hours. Keep it fully covered.
soak-herb = Chop { $herb } to 6 mm or finer. Soak { $grams } of it in { $acid } of 3 % citric acid for 24 hours. Keep it fully covered.

## The pot.

lot-is-in-another-state = This herb is in another state. A harvest is fresh, a tray dried, a pot cooked.
cooked-left = cooked, { $left } left
cooked-already = This was cooked already.
cooked-before-it-was-picked = It cannot be cooked before it was picked.
cooked-more-than-there-is = Only { $left } of it left.
cooked-line = Cooked { $grams } of { $herb } ({ $code })
cooked-nothing-came-out = Enter more than 0 mL for what you strained.
cooked-weigh-or-measure = Weigh the pot with what you strained, or measure its volume, but not both.
cooked-water-by-refractometer = its sugar was measured
cooked-water-from-the-pot = the pot was weighed, and half of the dry plant is taken to have dissolved
