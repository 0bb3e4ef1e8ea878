### Einen Ansatz zusammenstellen: was aufgegossen wird, warum, was abgelehnt wird und was hilft.

## Flüssigkeiten.

spirit-of = Alkohol mit { $strength }
glycerin-of = Glycerin mit { $purity }
vinegar-of = Essig mit { $acidity }
wine-of = Wein mit { $strength }
syrup-of = Sirup mit { $sugar } Zucker
honey-of = Honig mit { $water } Wasser
juice-of = Saft mit { $sugar } Zucker
oil-olive = Olivenöl
oil-sunflower = Sonnenblumenöl
oil-high-oleic-sunflower = High-Oleic-Sonnenblumenöl
oil-sweet-almond = Mandelöl
oil-sesame = Sesamöl
oil-fractionated-coconut = fraktioniertes Kokosöl
oil-jojoba = Jojobaöl
oil-grapeseed = Traubenkernöl
oil-apricot-kernel = Aprikosenkernöl

## Das Wasser, das eine Pflanze mitbringt, und warum so viel.

water-of-plant = { CAPITAL($plant) }: { $water } des Gewichts sind Wasser ({ $basis }).
water-told = für dieses Kraut gemessen oder geschätzt
water-dried-assumed = nicht gemessen, darum rechnen wir mit 10 % Wasser
herb-with-part = { $herb } ({ $part })
water-published = veröffentlichter Wassergehalt von { $plant }, { $tables ->
    [one] eine Tabelle
   *[other] { $tables } Tabellen
}
water-dry-down = veröffentlichtes Eintrocknungsverhältnis von { $plant }, { $tables ->
    [one] eine Tabelle
   *[other] { $tables } Tabellen
}
water-and-dry-down = veröffentlichter Wassergehalt und Eintrocknung von { $plant }, { $tables ->
    [one] eine Tabelle
   *[other] { $tables } Tabellen
}
water-from-memory = Eintrocknungsverhältnis der Anbauer für { $plant }, mit keiner Quelle verglichen
water-by-weigh-ins = die eigenen Wägungen
water-by-oven-sample = die Ofenprobe
water-by-sample-of = eine Ofenprobe, { $dry } blieben von { $fresh }
water-by-own-batches = { $batches ->
    [one] eine fertige Charge
   *[other] { $batches } fertige Chargen
} von dir, ergänzt durch: { $table }
water-basis = { CAPITAL($basis) }.
water-general = für { $plant } wurde kein Wert gefunden, darum gilt der allgemeine für { $kind }
general-leaf = Blätter
general-flower = Blüten
general-herb = Kräuter
general-root = Wurzeln
general-bark = Rinde
general-any = alle Pflanzen

## Warum die Zahlen sind, wie sie sind.

ratio-usual = Üblich ist 1 g auf { $ratio } mL.
glycerin-usual = Üblich sind { $parts } Teile Glycerin in 100 Teilen Auszugsmittel.
ratio-by-practice = Das ist das übliche Verhältnis: allgemeine Praxis, ohne Quelle.
glycerin-by-practice = Das ist der übliche Anteil am Auszugsmittel: allgemeine Praxis, ohne Quelle.
fortify-by-practice = Der Alkohol hält Schimmel zurück: allgemeine Praxis, ohne Quelle.
strongest-spirit = Nimm den stärksten Alkohol, den du hast, unverdünnt.
strength-between-herbs = { $strength } liegen zwischen dem, was die Kräuter brauchen, nach ihrem Trockengewicht gerechnet.
strength-general = 45 % vol ist die übliche Mitte. Für dieses Kraut wurde kein Wert gefunden.
strength-held = { $why } Es bleibt bei { $strength }, im Bereich dieser Zubereitung.
strength-raised = Auf { $strength } erhöht, damit es sich auch dann hält, wenn das Kraut sehr feucht ist.
spirit-let-down = Dein Alkohol wird mit Wasser auf die { $strength } des Rezepts verdünnt.
liquid-assumed = Gerechnet mit { $liquid }, denn davon hast du nichts eingetragen.
jar-room-assumed = Angenommen ist, dass 1 g trockenes Kraut 0,8 bis 1 mL einnimmt. Ein Zehntel des Glases bleibt leer.
tested-with-only = Geprüft wurde das nur mit { $herbs }, nicht mit { $other }.

## Was verfehlt wurde.

target-strength = Alkoholgehalt
target-glycerol = Glycerin nach Gewicht
target-sugar = Zucker nach Gewicht
target-acidity = Säure
target-volume = Volumen am Ende
target-poured = aufgegossenes Volumen
target-glycerin-poured = Anteil an Glycerin
target-fortified = Alkohol zum Haltbarmachen
target-on-the-shelf = Vorrat an { $kind }
short-of = Zu wenig erreicht ({ $target }): { $wanted } gewünscht, { $got } möglich.

## Was helfen würde; dahinter folgt einer der Sätze darunter.

help-dry-first = Trockne das Kraut zuerst, bis es raschelt. { $then }
help-sample = Trockne 10 bis 20 g als Probe, bis sich das Gewicht nicht mehr ändert. Enthält sie so viel Wasser wie am wahrscheinlichsten, gilt dies. { $then }
help-sample-driest = Trockne 10 bis 20 g als Probe, bis sich das Gewicht nicht mehr ändert. Enthält sie so wenig Wasser wie möglich, gilt dies. { $then }
help-crisp = Trockne das Kraut, bis es raschelt, dann wieg es. Bei 10 % Wasser hält es sich.
help-pour-more = Gieß mehr auf, 1 g auf { $ratio } mL. { $then }
help-stronger-spirit = Nimm stärkeren Alkohol, mit { $strength }. { $then }
help-usual-strength = Nimm den üblichen Alkoholgehalt. { $then }
help-glycerin-alone = Nimm nur Glycerin, ohne Wasser. { $then }
then-ends = Dann hat es am Ende { $strength } und { $keeps }.
then-ends-glycerin = Dann hat es am Ende { $glycerin } Glycerin nach Gewicht und { $keeps }.
then-keeps = Dann gilt: Es { $keeps }.
ends-and-keeps = hält sich bei Zimmertemperatur
ends-and-keeps-cold = hält sich gekühlt
ends-and-is-for-now = ist sofort zu verbrauchen
ends-and-is-not-made = darf nicht hergestellt werden

## Was abgelehnt wird.

what-strength-in-jar = der Alkoholgehalt im Glas
what-glycerin-share = der Anteil an Glycerin im Auszugsmittel
what-alcohol-for-keeping = der Alkohol zum Haltbarmachen
preparation-unknown = Eine Zubereitung { $asked } gibt es hier nicht. Wähl eine von diesen: { $known }.
oil-unknown = Ein Öl { $asked } gibt es hier nicht. Wähl eines von diesen: { $known }.
takes-no-strength = { CAPITAL($preparation) }: wird nicht auf einen Alkoholgehalt eingestellt. Lass die Angabe weg.
takes-no-glycerin = { CAPITAL($preparation) }: wird nicht auf einen Anteil an Glycerin eingestellt. Lass die Angabe weg.
takes-no-fortify = { CAPITAL($preparation) }: bekommt keinen Alkohol zum Haltbarmachen. Lass die Angabe weg.
takes-no-herb = { CAPITAL($preparation) }: wird nur aus Flüssigkeiten gemischt. Lass das Kraut weg und gib die Größe des Glases ein.
takes-no-fresh-herb = { CAPITAL($preparation) }: wird nicht aus frischem Kraut hergestellt.
takes-no-dried-herb = { CAPITAL($preparation) }: wird nicht aus getrocknetem Kraut hergestellt.
takes-no-cooked-herb = { CAPITAL($preparation) }: wird nicht aus gekochtem Kraut hergestellt.
herb-missing = Wähl mindestens ein Kraut und gib sein Gewicht ein.
herb-water-out-of-range = Gib zwischen 0 und 99 % Wasser ein, den unteren Wert unter dem oberen.
jar-size-missing = Gib die Glasgröße ein, zwischen 1 und 1 000 000 mL. Ohne Kraut bestimmt sie die Menge.
jar-too-small = Ein Glas von { $jar } ist zu klein. Es fasst { $herb } Kraut bei diesem Verhältnis.
vinegar-too-weak = Damit Pflanzen darin sicher sind, braucht Essig 5 bis 30 g Säure je 100 mL. Eingegeben: { $acidity }.

## Ein Verhältnis von Droge zu Auszugsmittel.

ratio-one-to = 1:{ $liquid }
ratio-one-to-between = 1:{ $low } bis 1:{ $high }
ratio-of-herb = { $herb }:1

strength-of-own-herb = Diese Stärke hast du für die Pflanze eingetragen.
