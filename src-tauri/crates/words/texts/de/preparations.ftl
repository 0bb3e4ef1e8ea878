### Preparations: their names, summaries and steps.

preparation-tincture-dried = Tinktur aus getrocknetem Kraut
preparation-tincture-dried-summary = Getrocknetes Kraut in Alkohol und Wasser, so stark, wie es seine Inhaltsstoffe brauchen.

preparation-tincture-fresh = Tinktur aus frischem Kraut, Pflanzenwasser eingerechnet
preparation-tincture-fresh-summary = Frisches Kraut in Alkohol. Sein eigenes Wasser ist eingerechnet, damit der Ansatz die gewünschte Stärke erreicht.

preparation-tincture-fresh-strong = Tinktur aus frischem Kraut in starkem Alkohol
preparation-tincture-fresh-strong-summary = Frisches Kraut im stärksten Alkohol, den du hast. Das Wasser bringt das Kraut mit.

preparation-tincture-percolated = Tinktur durch Perkolation
preparation-tincture-percolated-summary = Alkohol läuft durch gepacktes trockenes Kraut und wird bis zu einem festen Volumen aufgefangen.

preparation-tincture-double = Tinktur durch zweifache Mazeration
preparation-tincture-double-summary = Getrocknetes Kraut in Alkohol, gepresst, und der Pressrückstand ein zweites Mal bedeckt.

preparation-glycerite-fresh = Glycerinauszug aus frischem Kraut
preparation-glycerite-fresh-summary = Frisches Kraut in Glycerin mit etwas Wasser: süß und ohne Alkohol.

preparation-glycerite-dried = Glycerinauszug aus getrocknetem Kraut
preparation-glycerite-dried-summary = Getrocknetes Kraut in Glycerin und Wasser: süß und ohne Alkohol.

preparation-glycerite-fortified = Glycerinauszug mit einem Zehntel Alkohol
preparation-glycerite-fortified-summary = Ein Glycerinauszug mit Alkohol für etwa 10 % vol, der Schimmel zurückhält.

preparation-cordial = Likör
preparation-cordial-summary = Kraut oder Frucht in Alkohol, mit Sirup gesüßt.

preparation-elixir = Elixier
preparation-elixir-summary = Eine abgeseihte Tinktur mit Sirup und Wasser, gemischt aus 2, 3 und 3 Teilen.

preparation-bitters = Bitter
preparation-bitters-summary = Bittere und aromatische Pflanzen in mittelstarkem Alkohol.

preparation-wine-table = Kräuterwein aus Tischwein
preparation-wine-table-summary = Kraut in Tischwein, jung getrunken und gekühlt.

preparation-wine-fortified = Kräuterwein aus Likörwein
preparation-wine-fortified-summary = Kraut in Sherry, Portwein oder einem anderen Wein ab 16 % vol.

preparation-vinegar = Kräuteressig
preparation-vinegar-summary = Kraut in Essig von mindestens 5 % Säure.

preparation-shrub = Trinkessig (Shrub)
preparation-shrub-summary = Frucht oder Kraut mit Zucker und Essig, gekühlt.

preparation-spiced-vinegar = Scharfer Gewürzessig
preparation-spiced-vinegar-summary = Meerrettich, Ingwer, Zwiebel, Knoblauch und Chili in Apfelessig, nach dem Abseihen mit Honig gesüßt.

preparation-oxymel = Oxymel
preparation-oxymel-summary = Kraut in Honig und Essig.

preparation-oil-dried = Ölmazerat aus getrocknetem Kraut
preparation-oil-dried-summary = Rascheltrockenes Kraut in einem fetten Öl.

preparation-oil-fresh = Öl mit frischem Kraut oder Knoblauch
preparation-oil-fresh-summary = Nur zum Essen. Bewahr es bei höchstens 4 °C auf und wirf es nach 4 Tagen weg.

preparation-oil-acidified = Angesäuertes Öl mit Knoblauch, Basilikum, Oregano oder Rosmarin
preparation-oil-acidified-summary = Der geprüfte Weg, diese vier in Öl zu halten, nach einem Tag in 3-prozentiger Zitronensäure.

preparation-oil-warm = Ölmazerat, warm
preparation-oil-warm-summary = Getrocknetes Kraut, in Öl warm gehalten, fern von jeder Flamme.

preparation-elixir-cooked = Elixier aus gekochten Früchten
preparation-elixir-cooked-summary = Gekochter Saft mit starkem Alkohol und Sirup, gemischt und gefiltert.

preparation-syrup = Sirup
preparation-syrup-summary = Gekochter Saft oder ein starker Sud mit doppelt so viel Zucker nach Gewicht.

preparation-syrup-honey = Honigsirup
preparation-syrup-honey-summary = Gekochter Saft oder ein starker Sud mit gleich viel Honig nach Gewicht.

preparation-decoction = Abkochung
preparation-decoction-summary = Harte Teile, in Wasser geköchelt, für denselben Tag.

## How to store it, how it shows that it spoiled, and what lets it spoil.

storage-dark-bottle = Bewahr es bei 15 bis 25 °C auf, in dunklem Glas mit kindersicherem Verschluss.
storage-cold-once-opened = Bewahr es im Kühlschrank auf, sobald es offen ist.
storage-cool-dark = Bewahr es kühl und dunkel auf.
storage-cool = Bewahr es kühl auf.
storage-fridge-or-freezer = Bewahr es im Kühlschrank auf, oder frier es ein.
storage-fridge = Bewahr es im Kühlschrank auf.
storage-fridge-two-weeks = Bewahr es im Kühlschrank auf und trink es innerhalb von ein bis zwei Wochen.
storage-cool-dark-full = Bewahr es kühl und dunkel auf, in vollen Flaschen.
storage-best-cold = Bewahr es am besten im Kühlschrank auf.
storage-oxymel = Bewahr es kühl auf. Ist es dünn oder aus frischem Kraut, gehört es in den Kühlschrank.
storage-cool-dark-small = Bewahr es kühl und dunkel auf, in kleinen, vollen Flaschen.
storage-fridge-only = Bewahr es nur im Kühlschrank auf. Frier es ein, wenn es Monate halten soll.
storage-room-by-test = Es darf bei Zimmertemperatur stehen, aber nur, wenn es so gemacht ist.

spoiled-spirit = Wirf es weg, wenn es trüb wird, schimmelt oder perlt. Es enthält dann zu viel Wasser.
spoiled-glycerite = Wirf es weg, wenn es sauer riecht, perlt, trüb wird oder eine Haut bildet.
spoiled-gas-cloud = Wirf es weg, wenn es perlt oder trüb wird.
spoiled-cloud = Wirf es weg, wenn es trüb wird.
spoiled-gas-mould = Wirf es weg, wenn es perlt oder schimmelt.
spoiled-wine = Wirf ihn weg, wenn er nach Essig riecht, eine Haut bildet oder perlt.
spoiled-vinegar = Wirf ihn weg, wenn er schimmelt, perlt, schleimig oder trüb wird.
spoiled-ferment = Wirf es weg, wenn es gärt oder perlt.
spoiled-oil = Wirf es weg, wenn es nach Farbe oder Kitt riecht, trüb wird, perlt oder schimmelt. Auch Wassertropfen am Boden verderben es.
spoiled-without-a-sign = Es gibt keine Zeichen. Das Gift des Botulismus riecht und schmeckt nicht.
spoiled-rancid-cloud = Wirf es weg, wenn es ranzig riecht oder trüb wird.

ended-spirit = Licht, Verdunstung und weniger als 20 % vol Alkohol lassen es verderben.
ended-glycerite = Wasser aus der Pflanze und ein offenes Glas lassen es verderben.
ended-cordial = Weniger als 20 % vol Alkohol bei weniger als 65 % Zucker lässt ihn verderben.
ended-elixir = Zu wenig Alkohol lässt es verderben.
ended-wine-table = Luft und zu wenig Alkohol lassen ihn verderben.
ended-wine-fortified = Luft und weniger als 15 % vol Alkohol lassen ihn verderben.
ended-vinegar = Er verdirbt, sobald er unter 4 % Säure verdünnt ist.
ended-shrub = Zu stark verdünnte Säure lässt ihn verderben.
ended-spiced-vinegar = Das Wasser der Zwiebeln und der Honig verdünnen die Säure und lassen ihn verderben.
ended-oxymel = Wasser aus der Pflanze lässt es verderben.
ended-oil = Mit der Zeit wird es ranzig. Wasser und Schimmel verderben es.
ended-oil-fresh = Es hält 4 Tage. Wirf es danach weg, oder frier es vorher ein.
ended-oil-acidified = Jede andere als die vier geprüften Pflanzen macht es unsicher.

## To be read before pouring.

note-percolation = Der Pressrückstand hält etwas Alkohol zurück. Halt für jedes Gramm trockenes Kraut etwa 0,8 mL mehr bereit.
note-double-maceration = Bedeck den Pressrückstand nach dem Pressen noch einmal, mit 2,5 mL vom selben Auszugsmittel je Gramm trockenes Kraut. Schreib beide Verhältnisse auf das Etikett.
note-elixir = Misch ein Elixier aus einer abgeseihten Tinktur. Gib die Tinktur als Alkohol ein, mit ihrem eigenen Gehalt.
note-spiced-vinegar = Rühr den Honig nach dem Abseihen ein, höchstens ein Viertel des Essigs. Die Zahlen zeigen die fertige Mischung.
note-acid-bath = Leg die Pflanze zuerst 24 Stunden in 3-prozentige Zitronensäure, ganz bedeckt. Nimm für Knoblauch das 3-fache seines Gewichts, für Kraut das 10-fache. Lass sie abtropfen und spül sie nicht ab. Nimm nur Zitronensäure, nie Essig oder Zitrone.
note-syrup = Schmilz den Zucker bei kleiner Hitze. Füll den Sirup heiß in ausgekochte Flaschen.
note-decoction = Setz es kalt an, lass es zugedeckt 10 bis 15 Minuten köcheln und seih es heiß ab.

## The steps of the work: what to do, its title, and why.

step-weigh-the-herb = Schneid oder zerstoß das getrocknete Kraut. Wieg { $grams } davon in ein sauberes, trockenes Glas.
step-weigh-the-herb-title = Kraut wiegen
step-weigh-the-herb-why = Kleine Stücke geben mehr ab.

step-no-flame-near = Nimm nur Alkohol, der zum Trinken verkauft wird. Lösch alle Flammen, schalt die Herdplatten aus und öffne ein Fenster.
step-no-flame-near-title = Keine Flamme
step-no-flame-near-why = Alkoholdampf kann sich schon in einem warmen Zimmer entzünden.

step-mix-the-liquid = Misch { $liquid } wie angegeben, zusammen { $volume }. Lass die Mischung abkühlen.
step-mix-the-liquid-title = Auszugsmittel mischen
step-mix-the-liquid-why = Alkohol und Wasser werden beim Mischen warm.

step-pour-it-on = Gieß alles über das Kraut. Drück es hinunter, bis nichts mehr herausragt.
step-pour-it-on-title = Aufgießen
step-pour-it-on-why = Was herausragt, kann schimmeln.

step-shake-each-day = Verschließ das Glas und stell es { $from } bis { $to } Tage dunkel. Schüttle es einmal am Tag.
step-shake-each-day-title = Täglich schütteln

step-settle-then-press = Lass das Glas einen Tag ruhig stehen. Gieß das Klare ab und press den Rest kräftig durch ein Tuch.
step-settle-then-press-title = Absetzen, dann pressen

step-bottle-and-label = Füll saubere, dunkle Flaschen bis zum Hals und nimm kindersichere Verschlüsse. Schreib Pflanze, Verhältnis, { $strength } und Datum auf das Etikett.
step-bottle-and-label-title = Abfüllen, beschriften
step-bottle-and-label-why = Eine volle Flasche kann genug Alkohol enthalten, um einem Kind zu schaden.

step-dark-then-check = Bewahr die Flaschen im dunklen Schrank auf. Wirf die Tinktur weg, wenn sie perlt, schimmelt oder später trüb wird.
step-dark-then-check-title = Dunkel, dann prüfen
step-dark-then-check-why = Bei zu wenig Alkohol wachsen Keime. Feiner Bodensatz ist normal.

step-take-a-sample = Schneid die frische Pflanze und misch sie gut. Wieg eine kleine Handvoll als Probe ab und stell den Rest im geschlossenen Beutel kühl.
step-take-a-sample-title = Probe nehmen
step-take-a-sample-why = Frisches Kraut verliert beim Liegen Wasser.

step-dry-the-sample = Trockne die Probe im Ofen bei 105 °C, bis ihr Gewicht gleich bleibt. Gib beide Gewichte als Ofenprobe ein.
step-dry-the-sample-title = Probe trocknen
step-dry-the-sample-why = So zeigt sich, wie viel Wasser die Pflanze mitbringt.

step-weigh-the-herb-2 = Nimm die gekühlte Pflanze aus dem Beutel. Wieg gleich { $grams } davon in ein sauberes Glas.
step-weigh-the-herb-2-title = Pflanze wiegen

step-mix-and-pour = Misch { $liquid } wie angegeben, zusammen { $volume }. Gieß die Mischung auf und tauch die Pflanze ganz unter.
step-mix-and-pour-title = Mischen, aufgießen
step-mix-and-pour-why = Das Wasser der Pflanze ist schon eingerechnet.

step-press-hard = Seih durch ein Tuch ab und press die Pflanze kräftig aus. Lass einen Tag absetzen und gieß klar ab.
step-press-hard-title = Kräftig pressen

step-bottle-then-check = Füll dunkle, kindersichere Flaschen und schreib { $strength } darauf. Wirf die Tinktur weg, wenn sie perlt, schimmelt oder trüb wird.
step-bottle-then-check-title = Abfüllen, dann prüfen

step-sample-for-water = Trockne zuerst eine gewogene Ofenprobe, wenn der Gehalt am Ende genau sein soll. Gib beide Gewichte ein.
step-sample-for-water-title = Probe auf Wasser
step-sample-for-water-why = Das Wasser der Pflanze verdünnt den Alkohol.

step-chop-and-weigh = Schneid die frische Pflanze erst kurz vorher. Wieg { $grams } ab und füll sie locker in ein sauberes Glas.
step-chop-and-weigh-title = Schneiden, wiegen

step-cover-it = Gieß { $volume } { $liquid } darauf. Drück die Pflanze hinunter, bis alles bedeckt ist.
step-cover-it-title = Bedecken

step-stand-it-dark = Verschließ das Glas und stell es { $from } bis { $to } Tage dunkel. Dreh es einmal in der Woche um.
step-stand-it-dark-title = Dunkel stellen

step-press-hard-2 = Seih durch ein Tuch ab und press die Pflanze kräftig aus.
step-press-hard-2-title = Kräftig pressen
step-press-hard-2-why = Die Pflanze hält viel Flüssigkeit zurück.

step-label-true-strength = Schreib { $strength } auf das Etikett, nicht den Gehalt, den du aufgegossen hast. Nimm dunkle Flaschen mit kindersicherem Verschluss.
step-label-true-strength-title = Wahren Gehalt notieren

step-grind-and-weigh = Mahl das trockene Kraut zu grobem Pulver. Wieg { $grams } davon ab.
step-grind-and-weigh-title = Pulvern, wiegen
step-grind-and-weigh-why = Feines, schleimiges oder harziges Pulver verstopft den Durchfluss.

step-moisten-the-powder = Misch { $liquid } wie angegeben. Rühr so viel unter, dass das Pulver gleichmäßig feucht ist, deck es zu und warte 6 Stunden.
step-moisten-the-powder-title = Anfeuchten
step-moisten-the-powder-why = Das Kraut muss vor dem Packen quellen.

step-pack-the-cone = Verschließ den Hals des Perkolators locker mit Watte. Pack das feuchte Kraut in festen, gleichmäßigen Lagen und leg Papier darauf.
step-pack-the-cone-title = Perkolator packen
step-pack-the-cone-why = Durch jede Lücke läuft die Flüssigkeit am Kraut vorbei.

step-fill-and-stand = Gieß auf, bis es unten tropft und über dem Kraut steht. Schließ den Hahn, deck zu und warte 24 Stunden.
step-fill-and-stand-title = Füllen, stehen lassen

step-drip-it-slowly = Öffne den Hahn, bis es langsam tropft, etwa ein Tropfen je Sekunde. Halt das Kraut immer mit Flüssigkeit bedeckt.
step-drip-it-slowly-title = Langsam tropfen lassen
step-drip-it-slowly-why = Trockenes Kraut reißt auf, die Flüssigkeit läuft vorbei.

step-make-up-the-volume = Hör auf, wenn du { $volume } hast. Gieß mehr von der Mischung durch das Kraut, wenn etwas fehlt, und rühr dann gut um.
step-make-up-the-volume-title = Auf Volumen bringen
step-make-up-the-volume-why = Der Vorlauf ist stark, der Nachlauf schwach.

step-weigh-the-herb-3 = Schneid oder zerstoß das getrocknete Kraut. Wieg { $grams } davon in ein sauberes, trockenes Glas.
step-weigh-the-herb-3-title = Kraut wiegen

step-first-pouring = Misch { $liquid } wie angegeben, zusammen { $volume }. Gieß die Mischung auf und tauch das Kraut ganz unter.
step-first-pouring-title = Erstes Aufgießen

step-first-steeping = Verschließ das Glas und stell es { $from } bis { $to } Tage dunkel. Schüttle es einmal am Tag.
step-first-steeping-title = Erste Mazeration

step-press-keep-it = Press das Kraut kräftig durch ein Tuch. Füll diese erste Flüssigkeit ab und gib den Pressrückstand zurück ins Glas.
step-press-keep-it-title = Pressen, aufheben

step-second-pouring = Misch halb so viel vom selben Auszugsmittel. Gieß es auf den Pressrückstand, fern von jeder Flamme.
step-second-pouring-title = Zweites Aufgießen
step-second-pouring-why = Der Pressrückstand hält noch etwas vom ersten Auszug zurück.

step-steep-press-again = Lass es wie zuvor { $from } bis { $to } Tage ziehen und schüttle täglich. Press es noch einmal durch ein Tuch.
step-steep-press-again-title = Ziehen, wieder pressen

step-both-ratios = Gieß beide Auszüge zusammen oder füll sie getrennt ab, und schreib jedes Verhältnis auf das Etikett. Nimm dunkle, kindersichere Flaschen.
step-both-ratios-title = Beide Verhältnisse

step-weigh-the-herb-4 = Nimm die gekühlte Pflanze und schneid sie fein. Wieg { $grams } davon in ein sauberes, trockenes Glas.
step-weigh-the-herb-4-title = Pflanze wiegen

step-cover-it-2 = Misch { $liquid } wie angegeben, zusammen { $volume }. Gieß die Mischung auf, rühr die Luft heraus und tauch die Pflanze unter.
step-cover-it-2-title = Bedecken

step-turn-and-look = Verschließ das Glas und wende es { $from } bis { $to } Tage lang täglich. Tauch wieder unter, was herausragt.
step-turn-and-look-title = Wenden, nachsehen
step-turn-and-look-why = Was herausragt, schimmelt.

step-warm-and-press = Stell das Glas in warmes Wasser, damit es dünner wird. Seih durch ein Tuch ab und press kräftig.
step-warm-and-press-title = Wärmen, pressen

step-small-full-bottles = Füll kleine, saubere Flaschen bis zum Hals. Schreib Pflanze, Glyceringehalt und Datum auf das Etikett.
step-small-full-bottles-title = Kleine, volle Flaschen

step-cold-then-check = Bewahr den Auszug im Kühlschrank auf. Wirf ihn weg, wenn er sauer riecht, perlt, trüb wird oder eine Haut bildet.
step-cold-then-check-title = Kalt halten, prüfen
step-cold-then-check-why = Glycerin allein schützt nicht sicher vor Schimmel.

step-weigh-the-herb-5 = Zerstoß das getrocknete Kraut. Wieg { $grams } davon in ein sauberes, trockenes Glas, höchstens halb voll.
step-weigh-the-herb-5-title = Kraut wiegen

step-mix-the-liquid-2 = Misch { $liquid } wie angegeben, zusammen { $volume }. Rühr, bis keine Schlieren mehr zu sehen sind.
step-mix-the-liquid-2-title = Auszugsmittel mischen

step-cover-it-3 = Gieß die Mischung über das Kraut und rühr die Luft heraus. Sieh am nächsten Tag nach, denn trockenes Kraut quillt.
step-cover-it-3-title = Bedecken

step-turn-each-day = Verschließ das Glas und wende es { $from } bis { $to } Tage lang täglich.
step-turn-each-day-title = Täglich wenden

step-keep-it-under = Sieh täglich nach, ob etwas herausragt. Tauch es mit einem sauberen, trockenen Löffel unter.
step-keep-it-under-title = Unter Glycerin halten
step-keep-it-under-why = Was herausragt, schimmelt.

step-sample-then-weigh = Trockne zuerst eine gewogene Probe, wenn die Pflanze frisch ist. Wieg { $grams } geschnittenes Kraut in ein sauberes, trockenes Glas.
step-sample-then-weigh-title = Probe, dann wiegen
step-sample-then-weigh-why = Pflanzenwasser verdünnt das Glycerin.

step-mix-spirit-last = Misch { $liquid } wie angegeben, zusammen { $volume }. Gieß den Alkohol zuletzt dazu und rühr gut um.
step-mix-spirit-last-title = Mischen, Alkohol zuletzt

step-cover-it-4 = Gieß die Mischung über die Pflanze und rühr die Luft heraus. Drück sie hinunter, bis nichts mehr herausragt.
step-cover-it-4-title = Bedecken
step-cover-it-4-why = Was herausragt, schimmelt.

step-label-the-alcohol = Schreib „enthält Alkohol, { $strength }“ auf das Etikett. Füll kleine Flaschen und nimm kindersichere Verschlüsse.
step-label-the-alcohol-title = Alkohol angeben
step-label-the-alcohol-why = Von einem Glycerinauszug erwartet man keinen Alkohol.

step-cook-elderberries-first = Wasch Früchte oder Kraut, lass sie abtropfen und schneid sie klein. Koch Holunderbeeren vorher nach ihrer eigenen Anleitung, auch getrocknete und gefrorene.
step-cook-elderberries-first-title = Holunder zuerst kochen
step-cook-elderberries-first-why = Rohe Holunderbeeren sind giftig.

step-weigh-the-fruit = Wieg { $grams } Früchte oder Kraut in ein sauberes Glas. Lass das obere Drittel frei.
step-weigh-the-fruit-title = Früchte wiegen

step-pour-the-spirit = Gieß den Alkohol wie angegeben auf und stell den Sirup noch beiseite. Tauch alle Früchte unter.
step-pour-the-spirit-title = Alkohol aufgießen
step-pour-the-spirit-why = Was herausragt, schimmelt.

step-shake-each-week = Verschließ das Glas und stell es { $from } bis { $to } Tage dunkel. Schüttle es einmal in der Woche.
step-shake-each-week-title = Wöchentlich schütteln

step-strain-and-sweeten = Seih durch ein Tuch ab. Rühr den kalten Sirup wie angegeben ein.
step-strain-and-sweeten-title = Abseihen, süßen
step-strain-and-sweeten-why = Heißer Sirup treibt Alkoholdampf in die Luft.

step-bottle-and-label-2 = Füll saubere Glasflaschen und nimm kindersichere Verschlüsse. Schreib { $strength }, Zucker und Datum auf das Etikett.
step-bottle-and-label-2-title = Abfüllen, beschriften

step-cool-then-check = Bewahr den Likör kühl und dunkel auf, unter 20 % vol im Kühlschrank. Wirf ihn weg, wenn er perlt oder trüb wird.
step-cool-then-check-title = Kühl halten, prüfen
step-cool-then-check-why = Schwacher, dünner Likör kann gären.

step-strain-the-tincture = Seih die Tinktur klar ab. Lies ihren Gehalt auf dem Etikett und gib ihn ein.
step-strain-the-tincture-title = Tinktur klären

step-measure-the-parts = Miss 2 Teile Tinktur, 3 Teile Sirup und 3 Teile Wasser ab, zusammen { $volume }.
step-measure-the-parts-title = Teile abmessen

step-mix-it-slowly = Gieß den kalten Sirup nach und nach in die Tinktur und rühr um. Gib das Wasser zuletzt dazu.
step-mix-it-slowly-title = Langsam mischen
step-mix-it-slowly-why = Zu schnell gemischt wird es trüb.

step-stand-it-overnight = Verschließ das Glas und lass es über Nacht stehen.
step-stand-it-overnight-title = Über Nacht stehen lassen
step-stand-it-overnight-why = Feines setzt sich ab und lässt sich besser filtrieren.

step-filter-it-clear = Gieß es durch Filterpapier. Gieß den ersten Teil zurück, bis es klar läuft.
step-filter-it-clear-title = Klar filtrieren

step-cool-then-check-2 = Bewahr es kühl auf, unter 20 % vol im Kühlschrank. Wirf es weg, wenn es perlt, schimmelt oder trüb wird.
step-cool-then-check-2-title = Kühl halten, prüfen

step-weigh-each-plant = Wieg jede Pflanze einzeln, zusammen { $grams }. Zerstoß sie und gib sie in ein sauberes, trockenes Glas.
step-weigh-each-plant-title = Jede Pflanze wiegen
step-weigh-each-plant-why = So lässt sich die Mischung wiederholen.

step-mix-and-pour-2 = Misch { $liquid } wie angegeben, zusammen { $volume }. Gieß die Mischung auf und tauch die Pflanzen ganz unter.
step-mix-and-pour-2-title = Mischen, aufgießen

step-lift-strong-spice = Häng Nelke, Schale und scharfe Gewürze in einem Beutel hinein. Nimm ihn heraus, sobald sein Geruch vorherrscht.
step-lift-strong-spice-title = Scharfes früh herausnehmen

step-press-and-settle = Press die Pflanzen kräftig durch ein Tuch. Lass die Flüssigkeit einen Tag stehen und gieß sie klar ab.
step-press-and-settle-title = Pressen, absetzen

step-dark-then-check-2 = Bewahr die Flaschen im dunklen Schrank auf. Wirf den Bitter weg, wenn er perlt, schimmelt oder trüb wird.
step-dark-then-check-2-title = Dunkel, dann prüfen

step-open-fresh-wine = Öffne dafür eine neue Flasche. Lies den Alkoholgehalt ab und gib ihn ein.
step-open-fresh-wine-title = Frischen Wein öffnen

step-glass-only = Nimm ein sauberes Glas mit Korken oder Kunststoffdeckel. Nimm weder glasierte Keramik noch Bleikristall.
step-glass-only-title = Nur Glas
step-glass-only-why = Wein ist sauer und kann Blei herauslösen.

step-weigh-the-herb-6 = Wasch frisches Kraut, tupf es trocken und schneid es. Wieg { $grams } in das Glas.
step-weigh-the-herb-6-title = Kraut wiegen

step-fill-to-the-brim = Gieß { $volume } { $liquid } auf und tauch das Kraut unter. Wähl ein Glas, das damit randvoll ist.
step-fill-to-the-brim-title = Randvoll füllen
step-fill-to-the-brim-why = Luft macht aus Wein Essig.

step-steep-it-cold = Stell das Glas { $from } bis { $to } Tage in den Kühlschrank. Wende es einmal am Tag.
step-steep-it-cold-title = Kalt ziehen lassen

step-strain-and-bottle = Seih durch ein sauberes Tuch ab. Füll kleine Glasflaschen bis zum Hals und schreib das Datum darauf.
step-strain-and-bottle-title = Abseihen, abfüllen

step-use-it-soon = Bewahr ihn im Kühlschrank auf und brauch ihn innerhalb von 2 Wochen auf.
step-use-it-soon-title = Bald verbrauchen
step-use-it-soon-why = Tischwein ist zu schwach, um offen zu halten.

step-know-the-signs = Wirf den Wein weg, wenn er nach Essig riecht, perlt oder eine Haut bildet.
step-know-the-signs-title = Verderb erkennen

step-check-the-wine = Lies das Etikett. Nimm Sherry, Portwein oder einen ähnlichen Likörwein ab 16 % vol.
step-check-the-wine-title = Wein prüfen

step-weigh-the-herb-7 = Schneid oder zerstoß das Kraut. Wieg { $grams } in das Glas.
step-weigh-the-herb-7-title = Kraut wiegen

step-turn-each-day-2 = Verschließ das Glas und stell es { $from } bis { $to } Tage kühl und dunkel. Wende es einmal am Tag.
step-turn-each-day-2-title = Täglich wenden

step-press-and-bottle = Press alles durch ein sauberes Tuch. Füll kleine Glasflaschen bis zum Hals.
step-press-and-bottle-title = Pressen, abfüllen

step-label-and-store = Schreib { $strength } und Datum auf das Etikett. Bewahr ihn kühl und dunkel auf, unter 18 % vol im Kühlschrank.
step-label-and-store-title = Beschriften, lagern

step-wash-and-trim = Wasch die Blütenstängel vom Knoblauch und tupf sie trocken. Schneid Knospe und zähes Ende ab und den Rest in kurze Stücke.
step-wash-and-trim-title = Waschen, putzen

step-check-the-sherry = Lies das Etikett. Nimm einen Sherry ab 18 % vol.
step-check-the-sherry-title = Sherry prüfen
step-check-the-sherry-why = Das Wasser der Pflanze verdünnt den Wein.

step-weigh-and-pour = Wieg { $grams } in das Glas. Gieß { $volume } { $liquid } auf.
step-weigh-and-pour-title = Wiegen, aufgießen

step-keep-all-under = Beschwer die Stücke, damit keines schwimmt. Sieh täglich nach und tauch sie wieder unter.
step-keep-all-under-title = Alles untertauchen
step-keep-all-under-why = Knoblauch darf hier weder an der Luft noch in Öl liegen.

step-steep-it-cold-2 = Stell das geschlossene Glas { $from } bis { $to } Tage in den Kühlschrank.
step-steep-it-cold-2-title = Kalt ziehen lassen
step-steep-it-cold-2-why = Unter 18 % vol hält Wein nur kalt.

step-strain-and-bottle-2 = Seih alle Stücke durch ein Tuch ab. Füll kleine Glasflaschen und schreib { $strength } und Datum darauf.
step-strain-and-bottle-2-title = Abseihen, abfüllen

step-cold-then-check-2 = Bewahr ihn im Kühlschrank auf. Wirf ihn weg, wenn er nach Essig riecht, perlt oder eine Haut bildet.
step-cold-then-check-2-title = Kalt halten, prüfen

step-check-the-vinegar = Lies das Etikett des Essigs. Nimm einen mit 5 % Säure oder mehr.
step-check-the-vinegar-title = Essig prüfen
step-check-the-vinegar-why = Schwacher Essig schützt Pflanzen nicht vor dem Verderben.

step-wash-and-dip = Tauch frisches, gewaschenes Kraut in 1 Teil reine 5-prozentige Chlorbleiche auf 300 Teile Wasser, spül gut und tupf trocken. Halt Bleiche fern vom Essig.
step-wash-and-dip-title = Waschen, eintauchen
step-wash-and-dip-why = Manche Keime überleben im Essig; aus Bleiche und Säure entsteht Giftgas.

step-glass-no-metal = Nimm ein sauberes Glas mit einem Deckel aus Kunststoff oder Glas. Halt Saures fern von blankem Metall und glasierter Keramik.
step-glass-no-metal-title = Glas, kein Metall
step-glass-no-metal-why = Säure greift Metall an und kann Blei aus der Glasur lösen.

step-weigh-the-herb-8 = Wieg { $grams } Kraut in das Glas und nicht mehr.
step-weigh-the-herb-8-title = Kraut wiegen
step-weigh-the-herb-8-why = Zu viel nasses Kraut macht den Essig schwach.

step-pour-it-hot = Wärm das Glas vor. Erhitz { $volume } { $liquid }, bis er dampft, aber nicht kocht, und gieß ihn auf.
step-pour-it-hot-title = Heiß aufgießen
step-pour-it-hot-why = Hitze tötet Hefen und Schimmel ab.

step-keep-all-under-2 = Tauch das Kraut unter und verschließ das Glas. Stell es { $from } bis { $to } Tage kühl und dunkel.
step-keep-all-under-2-title = Alles untertauchen
step-keep-all-under-2-why = Was herausragt, schimmelt.

step-strain-and-test = Seih durch ein Tuch ab, bis er klar ist. Prüf ihn mit einem pH-Streifen, ziel auf 4,0 und wirf ihn über 4,6 weg.
step-strain-and-test-title = Abseihen, prüfen
step-strain-and-test-why = Über 4,6 hält die Säure Keime nicht mehr zurück.

step-cold-then-check-3 = Füll saubere Glasflaschen mit Kunststoffverschluss und stell sie in den Kühlschrank. Wirf den Essig ungekostet weg, wenn er schimmelt, perlt, trüb oder schleimig wird.
step-cold-then-check-3-title = Kalt halten, prüfen

step-weigh-and-sugar = Wieg { $grams } Früchte oder Kraut in das Glas. Rühr den Zucker wie angegeben ein und zerdrück alles ein wenig.
step-weigh-and-sugar-title = Wiegen, zuckern

step-pour-the-vinegar = Gieß den Essig wie angegeben auf. Rühr, bis der Zucker gelöst ist, und tauch alles unter.
step-pour-the-vinegar-title = Essig aufgießen

step-steep-it-cold-3 = Verschließ das Glas und stell es { $from } bis { $to } Tage in den Kühlschrank. Schüttle es einmal am Tag.
step-steep-it-cold-3-title = Kalt ziehen lassen

step-strain-and-test-2 = Seih durch ein Tuch ab. Prüf ihn mit einem pH-Streifen, ziel auf 4,0 und wirf ihn über 4,6 weg.
step-strain-and-test-2-title = Abseihen, prüfen
step-strain-and-test-2-why = Über 4,6 hält die Säure Keime nicht mehr zurück.

step-cold-then-check-4 = Füll saubere Glasflaschen mit Kunststoffverschluss und stell sie in den Kühlschrank. Wirf alles ungekostet weg, wenn es schimmelt, perlt oder schleimig wird.
step-cold-then-check-4-title = Kalt halten, prüfen

step-gloves-and-window = Zieh für Chili Handschuhe an und öffne für Meerrettich ein Fenster. Halt die Hände von den Augen fern.
step-gloves-and-window-title = Handschuhe, Fenster
step-gloves-and-window-why = Beide brennen auf Haut und Augen.

step-ready-five-plants = Wasch und schäl Meerrettich, Ingwer, Zwiebel und Knoblauch. Reib sie oder schneid sie dünn, und schneid auch den Chili.
step-ready-five-plants-title = Fünf Pflanzen richten

step-weigh-into-glass = Wieg alle fünf in ein Glas, zusammen { $grams }. Nimm einen Deckel aus Kunststoff oder Glas und keine glasierte Keramik.
step-weigh-into-glass-title = Ins Glas wiegen
step-weigh-into-glass-why = Säure greift Metall an und kann Blei aus der Glasur lösen.

step-pour-the-vinegar-2 = Nimm Apfelessig mit 5 % Säure oder mehr und gieß ihn wie angegeben auf. Beschwer alles, damit es untergetaucht bleibt.
step-pour-the-vinegar-2-title = Essig aufgießen
step-pour-the-vinegar-2-why = Schwacher Essig schützt Knoblauch und Zwiebel nicht.

step-shake-each-day-2 = Verschließ das Glas und schüttle es { $from } bis { $to } Tage lang täglich. Tauch unter, was schwimmt.
step-shake-each-day-2-title = Täglich schütteln
step-shake-each-day-2-why = Was herausragt, schimmelt.

step-honey-then-test = Seih ab, press aus und rühr Honig ein, höchstens ein Viertel des Essigs. Prüf mit einem pH-Streifen und wirf alles über 4,6 weg.
step-honey-then-test-title = Honig, dann prüfen
step-honey-then-test-why = Honig und nasse Wurzeln verdünnen die Säure.

step-not-for-babies = Schreib auf das Etikett: enthält Honig, nicht für Kinder unter 12 Monaten.
step-not-for-babies-title = Nicht für Säuglinge
step-not-for-babies-why = Honig kann Botulismus-Sporen enthalten.

step-weigh-into-glass-2 = Wieg { $grams } geschnittenes Kraut in ein Glas. Nimm einen Deckel aus Kunststoff oder Glas und keine glasierte Keramik.
step-weigh-into-glass-2-title = Ins Glas wiegen
step-weigh-into-glass-2-why = Säure greift Metall an und kann Blei aus der Glasur lösen.

step-honey-and-vinegar = Verrühr { $liquid } wie angegeben, zusammen { $volume }. Gieß die Mischung auf, rühr die Luft heraus und tauch das Kraut unter.
step-honey-and-vinegar-title = Honig und Essig

step-stir-every-day = Verschließ das Glas und stell es { $from } bis { $to } Tage dunkel. Rühr täglich mit einem sauberen Löffel um.
step-stir-every-day-title = Täglich rühren

step-warm-and-press-2 = Stell das Glas in warmes Wasser, damit es dünner wird. Seih durch ein Tuch ab und press aus.
step-warm-and-press-2-title = Wärmen, pressen

step-test-with-a-strip = Tauch einen pH-Streifen in die fertige Mischung und ziel auf 4,0. Wirf sie weg, wenn er mehr als 4,6 zeigt.
step-test-with-a-strip-title = Mit Teststreifen prüfen
step-test-with-a-strip-why = Über 4,6 hält die Säure Keime nicht mehr zurück.

step-cool-then-check-3 = Bewahr es kühl auf, dünnes oder mit frischem Kraut gemachtes im Kühlschrank. Wirf es weg, wenn es perlt oder nach Hefe riecht.
step-cool-then-check-3-title = Kühl halten, prüfen

step-only-crisp-herb = Zerreib ein Blatt und knick einen Stängel. Trockne das Kraut länger, wenn sie nicht zerbröseln und brechen.
step-only-crisp-herb-title = Nur rascheltrocken
step-only-crisp-herb-why = Feuchtes Kraut lässt das Öl verderben.

step-dry-jar-dry-hands = Trockne Glas, Deckel, Löffel und Hände vollständig ab.
step-dry-jar-dry-hands-title = Alles trocken
step-dry-jar-dry-hands-why = Wenige Tropfen Wasser können das Öl verderben.

step-weigh-the-herb-9 = Zerkleinere das Kraut und wieg { $grams } davon in das trockene Glas.
step-weigh-the-herb-9-title = Kraut wiegen

step-pour-the-oil = Gieß { $volume } { $liquid } auf und rühr die Luft heraus. Achte darauf, dass das Öl fingerbreit über dem Kraut steht.
step-pour-the-oil-title = Öl aufgießen
step-pour-the-oil-why = Was herausragt, schimmelt.

step-turn-each-day-3 = Verschließ das Glas und stell es { $from } bis { $to } Tage dunkel. Wende es einmal am Tag.
step-turn-each-day-3-title = Täglich wenden

step-press-through-cloth = Seih das Öl durch ein trockenes Tuch ab. Press das Kraut gut aus.
step-press-through-cloth-title = Durch ein Tuch pressen

step-leave-the-water = Lass das Öl einen Tag stehen. Gieß das klare Öl ab, lass Wasser zurück und füll kleine, dunkle Flaschen.
step-leave-the-water-title = Wasser zurücklassen

step-smell-and-look = Bewahr es kühl und dunkel auf. Wirf es weg, wenn es nach Farbe oder Kitt riecht, trüb wird, perlt oder schimmelt.
step-smell-and-look-title = Riechen und schauen

step-weigh-and-cover = Trockne Glas und Hände. Wieg { $grams } Kraut in das Glas und gieß { $volume } { $liquid } auf.
step-weigh-and-cover-title = Wiegen, bedecken
step-weigh-and-cover-why = Wasser in heißem Öl spritzt und verdirbt es.

step-set-a-water-bath = Stell das offene Glas in einen Topf mit warmem Wasser auf kleinste Stufe. Nimm keine offene Flamme und spritz kein Wasser hinein.
step-set-a-water-bath-title = Wasserbad richten

step-hold-it-low = Halt das Öl bei 40 bis 60 °C, mit Pausen, über { $from } bis { $to } Tage. Rühr ab und zu um.
step-hold-it-low-title = Sanft warm halten
step-hold-it-low-why = In heißerem Öl verbrennt das Kraut, und das Öl altert schneller.

step-stay-with-it = Bleib im Raum, solange die Hitze an ist. Erstick brennendes Öl mit einem Deckel, nie mit Wasser.
step-stay-with-it-title = Dabeibleiben
step-stay-with-it-why = Heißes Öl kann sich entzünden.

step-cool-and-press = Lass es abkühlen, bis das Glas handwarm ist. Seih durch ein trockenes Tuch ab und press aus.
step-cool-and-press-title = Abkühlen, pressen

step-make-a-little = Mach nur so viel, wie ihr in 4 Tagen esst.
step-make-a-little-title = Wenig machen
step-make-a-little-why = In Öl mit frischem Kraut kann Botulismus-Gift entstehen.

step-wash-and-dry = Wasch das Kraut oder schäl den Knoblauch. Tupf alles vollständig trocken.
step-wash-and-dry-title = Waschen, trocknen

step-weigh-and-cover-2 = Wieg { $grams } in ein sauberes Glas. Gieß { $volume } { $liquid } auf, bis alles bedeckt ist.
step-weigh-and-cover-2-title = Wiegen, bedecken

step-chill-at-once = Stell es sofort in den Kühlschrank, bei 4 °C oder kälter. Lass es nur draußen, solange ihr esst.
step-chill-at-once-title = Sofort kühlen
step-chill-at-once-why = In der Wärme kann sich das Gift bilden.

step-date-the-glass = Schreib den letzten Tag auf das Glas: heute in 4 Tagen.
step-date-the-glass-title = Datum aufschreiben

step-freeze-the-rest = Frier am ersten Tag ein, was ihr nicht rechtzeitig esst. Tau es im Kühlschrank auf.
step-freeze-the-rest-title = Rest einfrieren

step-bin-it-untasted = Wirf nach 4 Tagen weg, was übrig ist, auch wenn es gut aussieht und riecht.
step-bin-it-untasted-title = Ungekostet wegwerfen
step-bin-it-untasted-why = Das Gift ist weder zu sehen noch zu riechen noch zu schmecken.

step-three-herbs-only = Nimm nur frisches Basilikum, frischen Oregano oder Rosmarin. Für Knoblauch gilt seine eigene Anleitung.
step-three-herbs-only-title = Nur drei Kräuter
step-three-herbs-only-why = Nur diese Pflanzen wurden geprüft.

step-wash-the-sprigs = Wasch die Zweige und schüttle sie trocken. Lass die Blätter an den Stängeln und wieg { $grams } ab.
step-wash-the-sprigs-title = Zweige waschen

step-make-the-acid-bath = Wieg 3 Teile Zitronensäure in 97 Teile warmes Wasser und rühr um. Nimm weder Essig noch Zitronensaft noch Vitamin C.
step-make-the-acid-bath-title = Säurebad ansetzen
step-make-the-acid-bath-why = Nur Zitronensäure wurde geprüft.

step-ten-times-acid = Gieß das Zehnfache des Krautgewichts vom Säurebad auf. Tauch die Zweige ganz unter.
step-ten-times-acid-title = Zehnfache Säure

step-under-for-24-hours = Beschwer alles so, dass es 24 Stunden ganz unter der Säure bleibt. Fang mit der Zeit neu an, wenn etwas hochkommt.
step-under-for-24-hours-title = 24 Stunden untergetaucht
step-under-for-24-hours-why = Was herausragt, wird nicht sauer.

step-drain-no-rinse = Lass alles in einem Sieb gut abtropfen. Spül es nicht ab.
step-drain-no-rinse-title = Abtropfen, nicht spülen
step-drain-no-rinse-why = Spülen wäscht die Säure wieder heraus.

step-pour-the-oil-2 = Gib alles in ein sauberes, trockenes Glas. Gieß { $volume } { $liquid } darauf, bis alles bedeckt ist.
step-pour-the-oil-2-title = Öl aufgießen

step-cool-and-dark = Seih das Öl ab, wenn es dir schmeckt. Bewahr es kühl und dunkel auf, am besten im Kühlschrank, und wirf es weg, wenn es ranzig ist.
step-cool-and-dark-title = Kühl und dunkel
step-cool-and-dark-why = Dieses Öl darf bei Zimmertemperatur stehen; im Kühlschrank bleibt sein Geschmack.

step-peel-and-chop = Schäl frischen Knoblauch und hack ihn in Stücke von höchstens 6 mm. Gib keine andere Pflanze dazu.
step-peel-and-chop-title = Schälen, hacken
step-peel-and-chop-why = In größere Stücke dringt die Säure nicht bis zur Mitte.

step-weigh-the-garlic = Wieg { $grams } gehackten Knoblauch in eine Glasschüssel.
step-weigh-the-garlic-title = Knoblauch wiegen

step-three-times-acid = Gieß das Dreifache des Knoblauchgewichts vom Säurebad auf. Rühr gut um.
step-three-times-acid-title = Dreifache Säure

step-choose-hard-parts = Nimm Wurzel, Rinde, Holz oder Samen. Lass stark duftende Kräuter weg.
step-choose-hard-parts-title = Harte Teile wählen
step-choose-hard-parts-why = Beim Kochen verfliegt der Duft.

step-weigh-and-crush = Zerstoß oder schneid das Kraut. Wieg { $grams } in einen Topf mit Deckel, aus Edelstahl oder Emaille.
step-weigh-and-crush-title = Zerkleinern, wiegen
step-weigh-and-crush-why = Ein Teil Kraut gibt 20 Teile Sud.

step-start-it-cold = Gieß kaltes Wasser auf, ein Fünftel mehr als { $volume }.
step-start-it-cold-title = Kalt ansetzen
step-start-it-cold-why = Ein Teil verkocht.

step-simmer-it-gently = Bring es zugedeckt zum Kochen. Lass es 10 bis 15 Minuten leise kochen.
step-simmer-it-gently-title = Leise kochen

step-strain-make-up = Seih heiß ab. Gieß frisches heißes Wasser durch den Rückstand, bis du { $volume } hast.
step-strain-make-up-title = Abseihen, auffüllen

step-one-day-only = Kühl den Sud rasch ab und stell ihn in den Kühlschrank. Wirf nach 24 Stunden weg, was übrig ist.
step-one-day-only-title = Nur einen Tag
step-one-day-only-why = Nichts darin hält Keime zurück.

step-brew-it-first = Koch einen kräftigen Sud oder Fruchtsaft. Lass ihn absetzen und gieß das Klare ab.
step-brew-it-first-title = Zuerst kochen

step-weigh-both = Schreib auf, was der leere Topf wiegt. Wieg { $grams } klare Flüssigkeit hinein, dann doppelt so viel Zucker ab.
step-weigh-both-title = Beides wiegen

step-melt-the-sugar = Rühr den Zucker bei kleiner Hitze ein, bis er gelöst ist. Lass es nicht stark kochen.
step-melt-the-sugar-title = Zucker lösen
step-melt-the-sugar-why = Starkes Kochen macht den Sirup braun.

step-make-up-the-weight = Schäum ab, wieg und zieh das Topfgewicht ab. Füll mit abgekochtem Wasser auf das dreifache Gewicht der Flüssigkeit auf.
step-make-up-the-weight-title = Auf Gewicht bringen
step-make-up-the-weight-why = Mit weniger als zwei Dritteln Zucker kann er verderben.

step-fill-it-hot = Koch die Flaschen aus und gieß den heißen Sirup in heißes Glas. Verschließ sie und schreib das Datum darauf.
step-fill-it-hot-title = Heiß abfüllen
step-fill-it-hot-why = Kaltes Glas springt.

step-cold-once-open = Bewahr ihn kühl auf und geöffnet im Kühlschrank. Holundersirup gehört immer in den Kühlschrank oder ins Gefrierfach.
step-cold-once-open-title = Offen in den Kühlschrank
step-cold-once-open-why = Manche Holunderbeeren sind für Zimmertemperatur nicht sauer genug.

step-know-the-signs-2 = Wirf ihn weg, wenn er perlt, schimmelt oder nach Hefe riecht. Wisch den Hals nach jedem Gebrauch ab.
step-know-the-signs-2-title = Verderb erkennen
step-know-the-signs-2-why = In Wassertropfen obenauf wächst Schimmel.

step-cool-and-weigh = Lass ihn handwarm werden. Wieg { $grams } davon und ebenso viel Honig ab.
step-cool-and-weigh-title = Abkühlen, wiegen
step-cool-and-weigh-why = Hitze vertreibt den Duft des Honigs.

step-stir-in-honey = Rühr den Honig langsam ein, bis er gelöst ist. Schäum ab.
step-stir-in-honey-title = Honig einrühren

step-bottle-it-clean = Koch kleine Flaschen aus, lass sie abkühlen und füll sie bis zum Hals.
step-bottle-it-clean-title = Sauber abfüllen

step-two-weeks-cold = Bewahr ihn im Kühlschrank auf und brauch ihn innerhalb von 2 Wochen auf. Frier ein, was du später brauchst.
step-two-weeks-cold-title = Zwei Wochen kalt
step-two-weeks-cold-why = Er enthält zu viel Wasser, um von selbst zu halten.

step-know-the-signs-3 = Wirf ihn weg, wenn er perlt, schimmelt oder nach Hefe riecht.
step-know-the-signs-3-title = Verderb erkennen

step-cook-the-fruit = Koch zuerst die Früchte und press den Saft aus. Lass den Saft kalt werden.
step-cook-the-fruit-title = Früchte kochen
step-cook-the-fruit-why = Rohe Holunderbeeren sind giftig.

step-measure-the-parts-2 = Miss 2 Teile Alkohol oder Tinktur, 3 Teile Sirup und 3 Teile gekochten Saft ab.
step-measure-the-parts-2-title = Teile abmessen

step-mix-it-slowly-2 = Gieß den kalten Sirup nach und nach in den Alkohol und rühr um. Gib den Saft zuletzt dazu.
step-mix-it-slowly-2-title = Langsam mischen
step-mix-it-slowly-2-why = Zu schnell gemischt wird es trüb.
