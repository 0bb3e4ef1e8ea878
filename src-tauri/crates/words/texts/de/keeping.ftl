### Was eine Grenze ansieht, was sie fand und was sie verlangt; steht in „Haltbar: …“.

gate-alcohol = Alkohol am Ende
gate-alcohol-in-free-water = Alkohol im freien Wasser
gate-water-kept = geschütztes Wasser
gate-water-activity = Wasseraktivität
gate-vinegar-bought = gekaufter Essig
gate-acidity = Säure am Ende
gate-acid-ph = pH der reinen Säure (er kann nur höher sein)
gate-measured-ph = gemessener pH
gate-herb-water = Wasser im Kraut
gate-cold-days = Tage bei 4 °C
gate-days = Tage
gate-soak-hours = Stunden in 3-prozentiger Zitronensäure
gate-found = { $what } { $figure }; { $rule }
gate-all-water-kept = Zucker, Glycerin und Alkohol schützen das ganze Wasser
gate-water-left-free = Zucker, Glycerin und Alkohol schützen nur { $share } des Wassers
rule-alcohol = ab 25 % vol hält es sich bei Zimmertemperatur, von 20 bis 25 gekühlt, unter 20 ist es ein frisches Lebensmittel
rule-alcohol-of-wine = Wein hält sich ab 18 % vol bei Zimmertemperatur, ab 15 gekühlt, darunter verdirbt er
rule-water-activity = über 0,85 ist Essen ohne Säure heikel, über 0,91 wachsen die meisten Bakterien
rule-water-activity-sour = sauer und dick hält sich bei Zimmertemperatur, sauer und dünn gekühlt
rule-vinegar-bought = der Essig muss mindestens 5 % Säure haben
rule-vinegar-end = der fertige Essig soll 4 % Säure haben; ein niedrigerer Wert wurde nicht gefunden
rule-acid-ph = über pH 4,6 schützt Säure nicht mehr, Ziel ist 4,0; Pflanzen heben den pH, darum bestätigt ihn nur ein Streifen
rule-measured-ph = über pH 4,6 schützt Säure nicht mehr, Ziel ist 4,0
rule-herb-water = Kraut für Öl muss rascheltrocken sein: Ziel sind 10 % Wasser, höchstens 12
rule-fresh-oil = frisches Kraut in Öl hält sich bei höchstens 4 °C vier Tage; wirf es danach weg, oder frier es vorher ein
rule-acid-soak = halt es 24 Stunden ganz unter 3-prozentiger Zitronensäure, bevor das Öl daraufkommt
rule-same-day = nichts darin hält Keime auf, also verbrauch es am selben Tag
keep-loaded-acid = so viel frisches Kraut kann die Säure zu schwach machen; prüf sie mit einem pH-Streifen
keep-by-its-kind = so etwas gehört immer in den Kühlschrank
keep-by-nothing = von nichts darin ist bekannt, dass es haltbar macht

keeping-keeps = Haltbar: { $why }.
keeping-keeps-cold = Gekühlt haltbar: { $why }.
keeping-use-now = Sofort verbrauchen: { $why }.
keeping-do-not-make = Nicht herstellen: { $why }.

## Wie lange.

glycerite-below-70 = Unter 70 % Glycerin stell es kalt. Dass es sonst hält, hat niemand gezeigt.
best-before-habit = Diese Zeit ist allgemeine Praxis und nirgends geprüft. Sieh ab und zu nach.
best-before-shorter = Es gilt die kürzere dieser Zeiten. Sieh ab und zu nach.
best-before-acidified-oil = Das geprüfte Verfahren erlaubt Zimmertemperatur, nennt aber keine Haltbarkeit. Richte dich nach dem Datum auf dem Etikett des Öls. Wirf es weg, wenn es trüb wird oder ranzig riecht.
best-before-not-made = Kein Datum, denn das stellt man nicht her.
best-before-fresh-food = Behandle es wie frisches Essen: Stell es kalt und verbrauch es in wenigen Tagen (kein veröffentlichter Wert).
best-before-colder = Stell es kalt und verbrauch es früher (kein veröffentlichter Wert).
best-before-unknown = Eine Haltbarkeit wurde nicht gefunden. Schreib das Datum darauf und sieh jeden Monat nach.
oil-label-missing = Trag das Datum vom Etikett des Öls ein. Ohne dieses Datum steht hier nur ein Erfahrungswert.
oil-ageing = Das Datum auf dem Etikett des Öls, { $label }, gilt bei 20 °C, dunkel und verschlossen. Je 10 °C altert Öl doppelt so schnell. Verbrauch es bei 25 °C bis { $warm }, bei 30 °C bis { $hot }. Licht lässt es noch schneller altern (kein veröffentlichter Wert).
rosemary-extract = Mit Rosmarinextrakt wird es langsamer ranzig (kein veröffentlichter Wert). Gegen Botulismus hilft er nicht.
fortified-keeps-longer = Mit etwa 10 % Alkohol hält ein Glycerit länger (kein veröffentlichter Wert).

## Ein gemessener pH.

ph-acid = Der gemessene pH, { $range }, liegt unter { $limit }, also schützt die Säure. Länger als hier angegeben hält es deshalb nicht.
ph-not-acid = Nicht sauer genug zum Aufheben: Am { $day } wurde pH { $ph } gemessen. Über { $limit } schützt die Säure nicht mehr. Stell es kalt und verbrauch es in wenigen Tagen, oder wirf es weg.
ph-perhaps-not-acid = Vielleicht nicht sauer genug zum Aufheben: Am { $day } wurde pH { $ph } gemessen, auf { $off } genau. Über { $limit } schützt die Säure nicht mehr. Stell es kalt und verbrauch es in wenigen Tagen, oder wirf es weg.
ph-perhaps-not-acid-by-strip = Vielleicht nicht sauer genug zum Aufheben: Am { $day } wurde pH { $ph } gemessen, auf { $off } genau. Über { $limit } schützt die Säure nicht mehr. Stell es kalt und verbrauch es in wenigen Tagen, oder wirf es weg. Ein Messgerät ist genauer als ein Streifen.

## Cooked: simmered and strained.

cooked-water-assumed = ein Saft oder Sud, der nicht gemessen wurde, hat meist 80 bis 99 % Wasser
plan-not-cooked = Von einem Saft aus lässt sich noch nicht planen. Koch zuerst, wieg ihn und beginn damit einen Ansatz.
spiced-together = Diese Wurzeln, Knollen und Schoten gehören in einen Gewürzessig.

## The acid bath before an oil.

soak-cut = Schäl Knoblauch und hack alles auf 6 mm oder feiner. Halt alles unter der Säure.
soak-garlic = Schäl den Knoblauch und hack ihn auf 6 mm oder feiner. Leg { $grams } davon 24 Stunden in { $acid } 3-prozentige Zitronensäure. Halt alles bedeckt.
soak-herb = Hack { $herb } auf 6 mm oder feiner. Leg { $grams } davon 24 Stunden in { $acid } 3-prozentige Zitronensäure. Halt alles bedeckt.

## The pot.

lot-is-in-another-state = Dieses Kraut ist in einem anderen Zustand. Eine Ernte ist frisch, eine Horde getrocknet, ein Topf gekocht.
cooked-left = gekocht, noch { $left }
cooked-already = Das wurde schon gekocht.
cooked-before-it-was-picked = Vor der Ernte kann es nicht gekocht werden.
cooked-more-than-there-is = Davon sind nur noch { $left } da.
cooked-line = { $grams } { $herb } gekocht ({ $code })
cooked-nothing-came-out = Gib für das Abgeseihte mehr als 0 mL ein.
cooked-weigh-or-measure = Wieg den Topf mit dem Abgeseihten, oder miss sein Volumen, aber nicht beides.
cooked-water-by-refractometer = sein Zucker wurde gemessen
cooked-water-from-the-pot = der Topf wurde gewogen, und die Hälfte der Trockenmasse gilt als gelöst
