### Refusals of a request: what a field is called and what it may hold.

## Was getippt oder gemessen wird, im Satz.

what-acid = die Säure
what-acidity = die Säure
what-acidity-of-the-juice = die Säure des Safts
what-acidity-of-the-wine = die Säure des Weins
what-amount-used = die entnommene Menge
what-area = die Fläche
what-available = der Vorrat
what-binomial = der lateinische Name
what-drops-in-a-millilitre = die Tropfenzahl je Milliliter
what-dry-mass-of-the-sample = das Gewicht der Probe nach dem Ofen
what-dry-matter = die Trockenmasse
what-dry-matter-fraction-of-an-own-batch = der Trockenmasseanteil einer eigenen Charge
what-dry-weight = das Trockengewicht
what-fixed-amount = die feste Menge
what-fresh-mass = das Frischgewicht
what-fresh-mass-of-the-sample = das Gewicht der Probe vor dem Ofen
what-fresh-weight = das Frischgewicht
what-glycerol = der Gehalt an Glycerin
what-herb = die Pflanze
what-latitude = die geografische Breite
what-liquid = die Flüssigkeit
what-longitude = die geografische Länge
what-maker = dein Name
what-mass = das Gewicht
what-mass-of-a-liquid = das Gewicht einer Flüssigkeit
what-mass-of-the-plant = das Gewicht der Pflanze
what-mass-poured = das aufgegossene Gewicht
what-mean-of-log-dry-matter = das Mittel von ln(Trockenmasseanteil)
what-moisture = die Feuchte
what-moisture-on-dry-basis = die Feuchte bezogen auf die Trockenmasse
what-name = der Name
what-name-of-a-liquid = der Name einer Flüssigkeit
what-note = die Notiz
what-number-of-bottles = die Zahl der Flaschen
what-number-of-counts = die Zahl der Zählungen
what-oil = das Öl
what-orientation = die Ausrichtung
what-part = der Pflanzenteil
what-ph = der pH-Wert
what-place = der Ort
what-poison-line = der Giftnotruf
what-preparation = die Zubereitung
what-price = der Preis
what-purity = die Reinheit
what-ratio = das Verhältnis
what-reason = der Grund
what-relative-humidity = die relative Luftfeuchte
what-scale-step = der Teilstrich der Waage
what-shape = der Formparameter
what-share-by-mass = der Massenanteil
what-share-lost-in-trimming = der Verlust beim Putzen
what-shelf-life-at-20-c = die Haltbarkeit bei 20 °C
what-size = die Größe
what-size-bought = die gekaufte Größe
what-size-of-a-bottle = die Größe einer Flasche
what-size-of-the-jar = die Größe des Glases
what-spread-between-batches = die Streuung zwischen den Chargen
what-spread-of-log-dry-matter = die Streuung von ln(Trockenmasseanteil)
what-spread-of-own-means = die Streuung der eigenen Mittel
what-stage = das Stadium
what-stars = die Zahl der Sterne
what-step-of-the-scale = der Teilstrich der Waage
what-storage-temperature = die Lagertemperatur
what-strength = der Alkoholgehalt
what-strength-of-the-wine = der Alkoholgehalt des Weins
what-strength-wanted = der gewünschte Alkoholgehalt
what-sugar = der Zucker
what-sugar-in-the-juice = der Zucker im Saft
what-sugar-in-the-syrup = der Zucker im Sirup
what-sugar-in-the-wine = der Zucker im Wein
what-tare = die Tara
what-target-moisture = die Zielfeuchte
what-temperature = die Temperatur
what-time-since-the-fresh-weighing = die Zeit seit der Wägung im frischen Zustand
what-volume = das Volumen
what-volume-of-a-liquid = das Volumen einer Flüssigkeit
what-volume-poured = das aufgegossene Volumen
what-volume-to-pour = das Volumen zum Aufgießen
what-volume-wanted-at-the-end = das gewünschte Volumen am Ende
what-wanted-strength = der gewünschte Alkoholgehalt
what-water = das Wasser
what-water-in-the-honey = das Wasser im Honig
what-weight = das Gewicht
what-weight-of-a-plant = das Gewicht einer Pflanze
what-what-came-out = die Menge, die herauskam,
what-what-the-dropper-holds = der Inhalt der Pipette

## Eine Zahl oder ein Text, der nicht geht. $what ist einer der Namen oben.

refused-range = { CAPITAL($what) }: Erlaubt ist { $range }. Eingegeben: { $given }.
range-between = zwischen { $low } und { $high }
range-at-least = mindestens { $low }
range-above = mehr als 0 und höchstens { $high }
no-number = keine Zahl
refused-empty = Bitte ausfüllen: { $what }.
refused-too-long = { CAPITAL($what) }: Erlaubt sind höchstens { $longest } Zeichen. Eingegeben: { $count }.

what-limit = die Grenze
what-year = das Jahr

## Times and names that are typed.

time-spelling = Gib Datum und Uhrzeit mit Zeitversatz ein, etwa „2026-07-14T09:30:00+02:00“. Eingegeben: „{ $text }“.
time-in-future = Die Zeit darf nicht in der Zukunft liegen. Jetzt ist { $day }, { $time }. Eingegeben: { $text }.
day-spelling = Gib den Tag als Jahr, Monat und Tag ein, etwa 2026-07-14. Eingegeben: „{ $text }“.
herb-unknown = Eine Pflanze „{ $name }“ gibt es nicht. Leg sie zuerst als deine eigene an.

## What else is asked for, inside a sentence.

what-request = die Anfrage
what-this = dieser Wert
what-weight-on-the-scale = das Gewicht auf der Waage
what-time = die Zeit
what-day = der Tag
what-harvest = die Ernte
what-tray = die Horde
what-jar = der Ansatz
what-bottle = die Flasche
what-bed = das Beet
what-supply = die Zutat
what-recipe = das Rezept
what-dropper = die Pipette
what-lot = die Charge
what-kind = die Art
what-state = der Zustand
what-purpose = die Verwendung
what-surface = die Oberfläche
what-outcome = das Ergebnis
what-units = die Einheiten
what-currency = die Währung
what-passphrase = die Passphrase
what-file = die Datei
what-text = der Text

## A request that does not read as it should.

request-missing = { CAPITAL($what) } fehlt.
request-does-not-take = „{ $given }“ gehört hier nicht hinein.
request-cannot-be = { CAPITAL($what) } kann nicht „{ $given }“ sein.
request-may-be = { CAPITAL($what) } kann nicht „{ $given }“ sein. Möglich ist { $choices }.
request-must-be = { CAPITAL($what) }: Erlaubt ist { $kind }. Eingegeben: { $given }.
request-must-be-so = { CAPITAL($what) } muss { $kind } sein.
request-too-large = { CAPITAL($what) } ist als Zahl zu groß zum Rechnen.
request-no-json = Die Anfrage ist kein JSON: { $why }.
request-too-long = Die Anfrage muss JSON-Text von höchstens 2 MiB sein.
request-one-object = Die Anfrage muss ein JSON-Objekt sein und nichts danach.
command-unknown = Es gibt keinen Befehl namens { $name }.
reply-unwritten = Die Antwort ließ sich nicht geben: { $why }.
kind-number = eine Zahl
kind-whole-number = eine ganze Zahl, 0 oder mehr
kind-text = ein Text
kind-yes-or-no = ja oder nein
kind-list = eine Liste
kind-object = ein Objekt mit benannten Feldern
kind-number-or-range = eine Zahl oder ein Bereich
kind-other = von anderer Art
given-nothing = nichts
given-list = eine Liste
given-object = ein Objekt

## Two of one name, and what is not there.

bed-called-so = Ein Beet namens { $name } gibt es schon.
herb-called-so = Eine Pflanze namens { $name } gibt es schon.
herb-not-own = Nur eigene Pflanzen kannst du ändern.
lot-code-shape = Ein Chargencode ist ein Wort mit einer Zahl, etwa tavo-472.
lot-code-nowhere = Nichts in deinen Einträgen hat den Code { $code }.
bottle-code-nowhere = Keine Flasche in deinen Einträgen hat den Code { $code }.
bottle-by-id-or-code = Nenn die Flasche entweder mit ihrer Kennung oder mit ihrem Chargencode.
photo-nowhere = Dieses Foto gibt es nicht in deinen Einträgen.
job-gone = Dieser Auftrag ist nicht mehr bekannt. Die App wurde seither neu gestartet.
restore-none-to-undo = Nichts wurde wiederhergestellt oder zusammengeführt, also gibt es nichts rückgängig zu machen.

## What does not go, and why.

thrown-away-why = Sag, warum du es wegwirfst. Ein, zwei Stichworte genügen.
nothing-left-of-it = Davon ist nichts mehr da.
out-before-picked = Wähl eine Zeit nach der Ernte, { $day }, { $time }.
out-before-taken-down = Wähl eine Zeit nach dem Abnehmen, { $day }, { $time }.
tray-drying-not-used = Diese Horde trocknet noch. Nimm sie erst ab und sag dann, wofür du sie verbraucht hast.
tray-drying-whole = Eine Horde, die noch trocknet, wird ganz weggeworfen. Lass das Gewicht weg.
tray-lost-before-weighed = Wähl eine Zeit nach dem Belegen und der letzten Wägung, { $day }, { $time }.
tray-before-picked = Wähl eine Zeit nach der Ernte, { $day }, { $time }.
tray-never-weighed = Wieg die Horde. Seit dem Belegen wurde sie nicht gewogen.
tray-heavier-than-fresh = Das Gewicht mit der Horde darf höchstens { $most } sein, so viel wie frisch. Eingegeben: { $given }.
bottle-emptied-on = Flasche { $code } ist seit dem { $day } leer.
bottle-thrown-away-on = Flasche { $code } wurde am { $day } weggeworfen.
bottle-given-on = Flasche { $code } wurde am { $day } verschenkt.
bottle-past-its-date = Verwende Flasche { $code } nicht. Das Datum von frischem Kraut in Öl ist vorbei, und Botulismus siehst, riechst und schmeckst du nicht. Wirf sie weg.
bottle-found-bad = Verwende Flasche { $code } nicht: Du hast sie als schlecht eingetragen. Wirf sie weg.
bottle-not-enough = Flasche { $code } hat noch { $left }, also kannst du nicht { $wanted } entnehmen. Ist sie leer, trag sie als leer ein.
used-in-one-measure = Sag in einem einzigen Maß, wie viel du entnommen hast: mL, Löffel, Pipetten oder Tropfen.
used-more-than-nothing = Gib für die entnommene Menge mehr als 0 ein. Eingegeben: { $given }.
dropper-never-measured = Was { $name } fasst, wurde nie gemessen. Kalibriere die Pipette noch einmal und gib ein, wie viel sie fasst.
dropper-which = Wähl die Pipette. Jede tropft anders, also kalibriere deine zuerst.
oil-only-the-date-counts = Ob frisches Kraut in Öl sicher ist, siehst, riechst und schmeckst du nicht. Richte dich nur nach dem Datum.
oil-past-its-date = Das Datum von frischem Kraut in Öl ist vorbei. Botulismus siehst, riechst und schmeckst du nicht. Wirf es weg.
oil-not-bottled-after = Frisches Kraut in Öl hält höchstens bis { $day }. Botulismus siehst, riechst und schmeckst du nicht. Wirf es weg.
ph-which = Gib den gemessenen pH ein, zwischen 0 und 14.
ph-not-kept-by-acid = Einen pH kannst du nur bei Essig, Trinkessig und Oxymel eintragen. Nichts anderes hält hier durch Säure.
bottle-size-range = Eine Flasche darf zwischen 1 und 10000 mL fassen. Eingegeben: { $given }.
bottle-count-range = Wähl zwischen 1 und { $most } Flaschen. Eingegeben: { $given }.
bottles-at-a-time = Füll zwischen 1 und { $most } Flaschen auf einmal.
bottles-more-than-came-out = { $name } hat noch { $left }, also kannst du nicht { $wanted } abfüllen. Für das Ablesen am Krug sind 2 % erlaubt.
jar-strain-first = { $name } ist noch nicht abgeseiht. Seih zuerst ab.
jar-nothing-left = In { $name } ist nichts mehr.
jar-out-range = Gib mehr als 0 mL und höchstens die { $left } ein, die noch im Glas sind. Eingegeben: { $given }.
jar-pours-missing = Sag, was du dazugegeben hast.
jar-strained-before-poured = Wähl eine Zeit nach dem Ansetzen, { $day }, { $time }.
jar-came-out-either = Sag, was herauskam, entweder in mL oder in g.
plant-not-enough-left = { CAPITAL($herb) } { $code } hat noch { $left }, also kannst du nicht { $wanted } entnehmen.
plant-brought-water = { CAPITAL($plant) } brachte { $water } des Gewichts als Wasser mit. So wurde beim Ansetzen gerechnet.
supply-without-amounts = Eine Zutat hat eine Größe und keine Mengen zum Verwenden.
currency-missing = Gib auch die Währung ein, etwa EUR.
price-missing = Gib auch den Preis zur Währung ein.
mixture-weight-or-volume = Gib entweder das Gewicht in g oder das Volumen in mL an.
reach-dry-first = Trockne das Kraut zuerst. Mit { $water } Wasser, also rascheltrocken, gelingt es.
reach-higher-ratio = Gieß mehr auf. Mit { $times }-mal so viel auf dasselbe Kraut gelingt es.
reach-stronger-spirit = Nimm stärkeren Alkohol. Mit { $strength } gelingt es.
drying-herb-or-prior = Nenn die Pflanze oder gib an, was von ihr zu erwarten ist.
drying-too-many-weights = Höchstens { $most } Gewichte gehen; hier sind es { $count }.
due-days-ahead = Blick höchstens { $most } Tage voraus. Eingegeben: { $given }.
trace-last-before-first = Wähl einen letzten Tag nach dem ersten. Eingegeben: { $last }, vor { $first }.
trace-first-and-last = Wähl einen ersten und einen letzten Tag.
trace-one-start = Wähl, wovon du ausgehst: von einem Beet, einer Ernte, einer Zutat, einem Ansatz oder den Tagen einer Ernte.
import-line-wrong = Nichts wurde importiert. Zeile { $line }: { $why }
import-cell-wrong = Nichts wurde importiert. Zeile { $line }, Spalte { $column }: { $why }
import-all-known = Nichts wurde importiert. Du hast schon jede Zeile dieser Tabelle.
upload-name = Eine Übertragung heißt nach 1 bis 64 Buchstaben, Ziffern oder Bindestrichen.
upload-name-length = Eine Übertragung heißt nach 1 bis 64 Zeichen.
upload-piece-of-file = Ein Stück einer Datei darf höchstens 1 MiB lang sein.
upload-piece-of-photo = Ein Stück eines Fotos darf höchstens 1 MiB lang sein.
upload-no-base64 = Dieses Stück ist kein base64-Text.
upload-without-beginning = Der Anfang dieser Datei ist nicht angekommen.
folder-unusable = Der Ordner { $folder } lässt sich nicht verwenden: { $why }.
demo-folder-unusable = Der Ordner der Beispielsaison lässt sich nicht verwenden: { $why }.
demo-not-set-up = Die Beispielsaison konnte nicht angelegt werden. { $why }
demo-open-already = Die Beispielsaison ist schon offen.
demo-not-open = Die Beispielsaison ist nicht offen, also gibt es nichts zu entfernen.
demo-not-mixed = Das ist die Beispielsaison. Sie wird nie mit deinen Einträgen vermischt. Entferne sie zuerst; deine sind noch so, wie du sie gelassen hast.

## Names and lines.

jar-name-one = { CAPITAL($family) } aus { $herb }
jar-name-two = { CAPITAL($family) } aus { $one } und { $two }
jar-name-more = { CAPITAL($family) } aus { $one } und { $more } weiteren Pflanzen
family-tincture = Tinktur
family-glycerite = Glycerinauszug
family-cordial = Likör
family-elixir = Elixier
family-syrup = Sirup
family-decoction = Abkochung
family-bitters = Bitter
family-wine = Kräuterwein
family-vinegar = Kräuteressig
family-shrub = Trinkessig
family-spiced-vinegar = Gewürzessig
family-oxymel = Oxymel
family-oil = Ölauszug
lot-with-plant = { CAPITAL($plant) } ({ $code })
given-to = verschenkt an { $to }

what-usual-water = das übliche Wasser in der Pflanze
what-least-water = das wenigste Wasser in der Pflanze
what-most-water = das meiste Wasser in der Pflanze
what-own-caution = die Warnung
what-own-look-alikes = die Notiz zu Verwechslungen
