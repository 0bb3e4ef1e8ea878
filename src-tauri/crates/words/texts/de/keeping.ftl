### Cooked herbs, and what keeps and for how long.

## What a limit looks at, and what it found; each stands inside "Keeps: ...".

gate-water-kept = geschütztes Wasser
gate-alcohol-in-free-water = Alkohol im freien Wasser
gate-all-water-kept = Zucker, Glycerin und Alkohol schützen das ganze Wasser
gate-water-left-free = Zucker, Glycerin und Alkohol schützen nur { $share } des Wassers
keep-loaded-acid = so viel frisches Kraut kann die Säure zu schwach machen; prüf sie mit einem pH-Streifen

## How long.

glycerite-below-70 = Stell es unter 70 % Glycerin kühl. Dass es sonst hält, hat niemand gezeigt.
best-before-habit = Diese Zeit ist Gewohnheit. Eine Prüfung wurde nicht gefunden, also sieh ab und zu danach.

## Cooked: simmered and strained.

cooked-water-assumed = ein Saft oder Sud, den niemand gemessen hat, enthält gewöhnlich 80 bis 99 % Wasser
plan-not-cooked = Von einem Saft aus kann noch nicht geplant werden. Koch zuerst, wieg ihn und füll damit ein Glas.
spiced-together = Aus diesen Wurzeln, Knollen und Schoten macht man Würzessig.
gate-days = Tage
gate-decoction = nichts darin hält Keime auf, also verbrauch es am selben Tag
preparation-elixir-cooked = Elixier aus gekochten Früchten
preparation-elixir-cooked-summary = Gekochter Saft mit starkem Alkohol und Sirup, gemischt und gefiltert.
preparation-elixir-cooked-recipe = Zwei Teile Alkohol oder Tinktur, drei Teile Sirup und drei Teile gekochter Saft.
preparation-syrup = Sirup
preparation-syrup-summary = Gekochter Saft oder ein starker Sud mit doppelt so viel Zucker nach Gewicht.
preparation-syrup-recipe = Zwei Teile Zucker auf einen Teil Flüssigkeit, nach Gewicht.
preparation-syrup-melt = Schmilz den Zucker bei kleiner Hitze. Füll den Sirup heiß in ausgekochte Flaschen.
preparation-syrup-vessel = Kleine ausgekochte Glasflaschen.
preparation-syrup-storage = Stell ihn in den Kühlschrank oder frier ihn ein.
preparation-syrup-honey = Honigsirup
preparation-syrup-honey-summary = Gekochter Saft oder ein starker Sud mit gleich viel Honig nach Gewicht.
preparation-syrup-honey-recipe = Ein Teil Honig auf einen Teil Flüssigkeit, nach Gewicht, handwarm eingerührt.
preparation-decoction = Abkochung
preparation-decoction-summary = Harte Teile, in Wasser geköchelt, für denselben Tag.
preparation-decoction-recipe = Kaltes Wasser, ein Fünftel mehr, als am Ende da sein soll.
preparation-decoction-note = Setz es kalt an, lass es zugedeckt 10 bis 15 Minuten köcheln und seih es heiß ab.
preparation-decoction-vessel = Ein Topf aus Edelstahl oder Emaille, mit Deckel.

## The acid bath before an oil.

soak-cut = Schäl Knoblauch und hack alles auf 6 mm oder feiner. Halt alles unter der Säure.
soak-garlic = Schäl den Knoblauch und hack ihn auf 6 mm oder feiner. Halt { $grams } davon 24 Stunden ganz unter { $acid } 3-prozentiger Citronensäure.
soak-herb = Hack { $herb } auf 6 mm oder feiner. Halt { $grams } davon 24 Stunden ganz unter { $acid } 3-prozentiger Citronensäure.

## The pot.

lot-is-in-another-state = Diese Charge ist in einem anderen Zustand: frisch von der Ernte, getrocknet vom Tablett, gekocht aus dem Topf.
cooked-left = gekocht, noch { $left }
cooked-already = Das wurde schon gekocht.
cooked-before-it-was-picked = Vor der Ernte kann es nicht gekocht werden.
cooked-more-than-there-is = Von dieser Charge sind nur noch { $left } da.
cooked-line = { $grams } { $herb } gekocht ({ $code })
cooked-nothing-came-out = Das abgeseihte Volumen muss mehr als 0 mL sein.
cooked-weigh-or-measure = Wieg den Topf mit dem Abgeseihten oder miss sein Volumen: eines von beiden.
cooked-water-by-refractometer = sein Zucker wurde gemessen
cooked-water-from-the-pot = der Topf wurde gewogen, und die Hälfte der Trockenmasse gilt als gelöst
