### Etiketten, die Saison, der Weg einer Charge und der Kalender. { -strong }, { -latin } und { -soft } gelten bis { -end }.

-strong = {"\uFDD2"}
-latin = {"\uFDD3"}
-soft = {"\uFDD4"}
-end = {"\uFDD5"}

alone = { $what }
plant-part = { $herb } ({ $part })

# Ein Etikett.

labels-title = Etiketten
label-title = Etikett: { $name }, Charge { $lot }
label-lot = { -soft }Charge{ -end } { -strong }{ $lot }{ -end }
label-plant = { CAPITAL($herb) }, { $part } { $state }
label-plant-latin = { CAPITAL($herb) } { -latin }{ $latin }{ -end }, { $part } { $state }
label-liquid = In { $liquid }
label-liquid-poured-on = In { $liquid }, 1 g auf { $ml } Auszugsmittel
label-liquid-made-up = In { $liquid }, 1 g auf { $ml } Endvolumen
label-poured-on = 1 g auf { $ml } Auszugsmittel
label-made-up = 1 g auf { $ml } Endvolumen
label-poured-at = Angesetzt mit { -strong }{ $strengths }{ -end }
label-in-the-bottle = In der Flasche { -strong }{ $strengths }{ -end }
strength-glycerin = Massenanteil Glycerin { $figure }
strength-acid = Säure { $figure }
strength-sugar = Massenanteil Zucker { $figure }
# Ein Unterstrich steht zwischen dem, was an einem Tag geschah.
label-days = { $order ->
    [made] Hergestellt am { $made }
    [strained] Abgeseiht am { $strained }
    [bottled] Abgefüllt am { $bottled }
    [made-strained] Hergestellt am { $made }, abgeseiht am { $strained }
    [made-bottled] Hergestellt am { $made }, abgefüllt am { $bottled }
    [strained-bottled] Abgeseiht am { $strained }, abgefüllt am { $bottled }
    [made_strained] Hergestellt und abgeseiht am { $made }
    [made_bottled] Hergestellt und abgefüllt am { $made }
    [strained_bottled] Abgeseiht und abgefüllt am { $strained }
    [made_strained-bottled] Hergestellt und abgeseiht am { $made }, abgefüllt am { $bottled }
    [made-strained_bottled] Hergestellt am { $made }, abgeseiht und abgefüllt am { $strained }
    [made_strained_bottled] Hergestellt, abgeseiht und abgefüllt am { $made }
   *[made-strained-bottled] Hergestellt am { $made }, abgeseiht am { $strained }, abgefüllt am { $bottled }
}
label-due-on = Fällig am { -strong }{ $day }{ -end }
label-due-between = Fällig { -strong }{ $from } – { $to }{ -end }
label-best-before = Mindestens haltbar bis { -strong }{ $day }{ -end }
label-origins = { -soft }Herkunft: { $origins }{ -end }
origin-harvest = Ernte { $code }
origin-marc = Pressrückstand von { $code }
label-contents = Inhalt: { $ml }
label-ingredients = { -soft }Zutaten:{ -end } { $ingredients }
label-allergens = { -soft }Allergene:{ -end } { -strong }{ $allergens }{ -end }
label-ethanol = Alkohol in der ganzen Flasche: { $mass }
label-maker = { -soft }Hergestellt von: { $maker }{ -end }
label-use-inside = Zum Einnehmen.
label-use-food = Als Lebensmittel.
label-use-outside = NUR ÄUSSERLICH ANWENDEN. Nie schlucken.
label-alcohol = Enthält Alkohol, { $strength }: von Kindern und Flammen fernhalten.
label-ways = { -soft }Probier es:{ -end } { $ways }
label-poison-centre = Giftnotruf { -strong }{ $number }{ -end }
allergen-almond = Mandel
allergen-sesame = Sesam
allergen-wine = Sulfite des Weins
keep-until-its-date = Im Kühlschrank aufbewahren, nicht länger als bis zum Datum.
keep-for-days = Im Kühlschrank aufbewahren und in wenigen Tagen verbrauchen.

# Wofür auf einem Etikett kein Platz war, und was noch niemand aufschrieb.

item-code = der Code fürs Handy
item-plants = die Pflanzen
item-liquid = die Flüssigkeit
item-begun = der Tag des Ansetzens und der Fälligkeit
item-dates = das Mindesthaltbarkeitsdatum
item-origins = die Ernte und das Beet
item-contents = der Inhalt und die Zutaten
item-ethanol = der Alkohol in der ganzen Flasche
item-ways = die Verwendung
item-note = die Notiz
item-maker = wer es hergestellt hat
item-use = die Verwendung
item-keeping = die Aufbewahrung
item-alcohol = der Alkohol
item-cautions = die Warnhinweise
item-poison-centre = der Giftnotruf
label-size = { $width } × { $height } mm
label-has-no-room = Ein Etikett von { $size } hat keinen Platz für Folgendes von { $lot }: { $what }. Nimm ein größeres.
label-should-also-say = Auf dem Etikett von { $lot } fehlt noch: { $what }. Trag das zuerst ein.
label-lacks-letters = Das Etikett von { $lot } lässt Zeichen weg, die seine Schrift nicht hat: { $letters }.
paper-lacks-letters = Diese Zeichen fehlen, weil die Schrift sie nicht hat: { $letters }.
photos-left-out = { $count ->
    [one] 1 Foto blieb weg, denn mit ihm wäre die Datei zu groß zum Verschicken.
   *[other] { $count } Fotos blieben weg, denn mit ihnen wäre die Datei zu groß zum Verschicken.
}

# Was ein Bild auf dem Papier zeigt, für alle, die sich die Seite vorlesen lassen.

paper-drawing = Zeichnung: { $herb }
paper-photo = Foto: { $what }
paper-lot-code = Code fürs Handy: Charge { $lot }
paper-recipe-code = Code fürs Handy: dieses Rezept

# Was sich nicht zeichnen lässt.

bottle-or-jar = Wähl entweder eine Flasche oder einen Ansatz.
label-one-at-a-time = Auf Papier in der Größe des Etiketts passt nur eines.
label-jar-is-no-gift = Einen Ansatz, der noch zieht, kannst du nicht verschenken. Füll ihn ab und drucke Etiketten für die Flaschen.
label-not-for = Ein Etikett von { $name } darf nur { $allowed } nennen. Gewählt: { $asked }.
use-inside = die innere Anwendung
use-outside = die äußere Anwendung
use-food = den Verzehr als Lebensmittel
label-needs-a-name = Ein Etikett braucht den Namen dessen, was darin ist.
label-needs-a-lot = Ein Etikett braucht den Chargencode, damit es zum Beet zurückführt.
label-needs-height = Das Etikett von { $name } passt nicht auf { $size }. Bei dieser Breite braucht es { $height } Höhe.
label-needs-width = Das Etikett von { $name } passt nicht auf { $width } Breite. Wähl ein breiteres.
label-width = Ein Etikett darf 25 bis 200 mm breit sein. Eingegeben: { $width }.
label-height = Ein Etikett darf 15 bis 280 mm hoch sein. Eingegeben: { $height }.
sheet-gutter = Der Abstand zwischen Etiketten darf 0 bis 50 mm betragen.
sheet-margin = Der Rand eines Bogens darf 0 bis 100 mm betragen.
sheet-too-small = Ein Etikett von { $size } passt mit den Rändern nicht auf { $paper }.
sheet-places = Dieser Bogen hat { $places } Etiketten. Lass 0 bis { $most } davon aus.
sheet-empty = Wähl mindestens einen Ansatz oder eine Flasche für ein Etikett.
paper-letter = US Letter

# Die Saison.

season-empty = Im Jahr { $year } wurde nichts geerntet oder angesetzt. Es gibt nichts zu drucken.
season-title = Die Saison { $year }
season-counts = { $harvests ->
    [one] 1 Ernte
   *[other] { $harvests } Ernten
}, { $jars ->
    [one] 1 Ansatz
   *[other] { $jars } Ansätze
}
season-month = { $month ->
    [1] Januar
    [2] Februar
    [3] März
    [4] April
    [5] Mai
    [6] Juni
    [7] Juli
    [8] August
    [9] September
    [10] Oktober
    [11] November
   *[12] Dezember
}
season-latin-part = { -latin }{ $latin }{ -end }, { $part }
season-part-stage = { $part }, { $stage }
season-latin-part-stage = { -latin }{ $latin }{ -end }, { $part }, { $stage }
season-day-bed = { $day }, { $bed }
season-fresh = { -strong }{ $fresh }{ -end } frisch
season-fresh-dry = { -strong }{ $fresh }{ -end } frisch, { -strong }{ $dry }{ -end } trocken
season-what-beds-gave = Was die Beete gaben
season-what-was-made = Was daraus wurde
season-herb = Pflanze
season-part = Teil
season-bed = Beet
season-harvests = Ernten
season-fresh-mass = Frisch
season-dry-mass = Trocken
season-poured = { -strong }{ $lot }{ -end }{ -soft }, angesetzt am { $day }{ -end }
season-plant = { CAPITAL($herb) }, { $part } { $state }: { $mass }.
season-strained = Abgeseiht am { $day }: { $ml }.
season-filled = Abgefüllt: { $count ->
    [one] 1 Flasche
   *[other] { $count } Flaschen
}, { $ml }.
season-failed = Misslungen: { $why }.
season-jar-on-day = { -soft }Tag { $number }, { $day }{ -end }
season-bottle-on-day = { -soft }Flasche { $code }, { $day }{ -end }

# Der Weg einer Charge.

chain-back-from-bottle = Woher diese Flasche kam
chain-back-from-jar = Woher dieser Ansatz kam
chain-forward-from-bed = Wer Flaschen aus diesem Beet hat
chain-forward-from-supply = Wer Flaschen mit dieser Zutat hat
chain-forward-from-jar = Wer Flaschen aus diesem Ansatz hat
chain-forward-from-harvest = Wer Flaschen aus dieser Ernte hat
chain-forward-from-days = Wer Flaschen aus den Ernten dieser Tage hat
chain-title-lot = { $title }, { $lot }
chain-asked = { $asked }. Gedruckt am { $day }.
chain-asked-lot = { -strong }{ $lot }{ -end }. { $asked }. Gedruckt am { $day }.
chain-step-code = { $heading } { -strong }{ $code }{ -end }
chain-step-day = { $heading }{ -soft }, { $day }{ -end }
chain-step-code-day = { $heading } { -strong }{ $code }{ -end }{ -soft }, { $day }{ -end }
chain-days = { $from } – { $to }
chain-wild-place = Ein wilder Standort
chain-bottle = Flasche
chain-strained = Abgeseiht
chain-jar = Ansatz: { $name }
chain-rack = Darre: { $name }
chain-given-to = Verschenkt an { $to }
chain-given-to-on = Am { $day } verschenkt an { $to }.
chain-none-given = Keine Flasche davon wurde verschenkt.
chain-holds = Inhalt: { $ml }.
chain-best-before = Mindestens haltbar bis { $day }.
chain-came-out = { $ml } kamen heraus.
chain-preparation = { CAPITAL($preparation) }.
chain-pour = { $name } { $ml }
chain-poured = Angesetzt mit: { $pours }.
chain-went-in = { $mass } davon kamen in den Ansatz.
chain-weighing = { $mass } am { $day }
chain-scale = Auf der Waage: { $weighings }.
chain-taken-down = Abgenommen am { $day }.
chain-no-harvest = Sie stammt aus keiner deiner Ernten.
chain-bed = Beet: { $bed }.
chain-plant = { CAPITAL($herb) }, { $part } { $state }
chain-harvest = { CAPITAL($herb) }, { $part }
chain-failed = Er ist misslungen.
chain-fresh = { $mass } frisch.
chain-thrown-away = { $mass } weggeworfen.
chain-lost = { $mass } (Frischgewicht), beim Trocknen weggeworfen.
chain-bottle-finished = Flasche { $code }: leer.
chain-bottle-thrown-away = Flasche { $code }: weggeworfen.
chain-bottle-given = Flasche { $code }: verschenkt.
chain-bottle-left = Flasche { $code }: noch { $ml }.
chain-bottle-left-at = Flasche { $code }: noch { $ml }, { $place }.

# Der Kalender.

calendar-empty = In den nächsten { $days ->
    [one] 24 Stunden
   *[other] { $days } Tagen
} ist nichts fällig, also gibt es nichts für einen Kalender.
calendar-throw-away = Wegwerfen: { $what }
calendar-use-up = Aufbrauchen: { $what }
calendar-take-down = Abnehmen: { $what }
calendar-see-to = Nachsehen: { $what }
calendar-strain = Abseihen: { $what }
calendar-check = Prüfen: { $what }
calendar-weigh = Wiegen: { $what }
calendar-shake = Schütteln: { $what }

# Worum es in einer Zeile des Fälligen geht.

due-herb = { CAPITAL($herb) } ({ $code })
due-tray = { CAPITAL($herb) }, { $tray }
due-named = { $name } ({ $code })
due-rest = { $jar }, die { $ml } noch im Glas

# Die Karte eines Rezepts.

card-none = Wähl, für wie viele Leute die Karten sind.
card-side = { $name }, Seite { $side } von { $of }
card-method = Schritt für Schritt
card-keeping = So hält es sich
card-ways = So verwendest du es
card-beware = Vorsicht
card-good-to-know = Gut zu wissen
card-scan = Scann das mit Korbbuch, dann hast du das Rezept.
card-takes = Zieht
card-days = { $from } bis { $to } Tage
card-day-count = { $days ->
    [0] gar nicht
    [one] 1 Tag
   *[other] { $days } Tage
}
card-makes = Ergibt etwa
card-alcohol = In der Flüssigkeit
card-keeps = Hält
card-keeps-days = { $from } bis { $to } Tage
card-keeps-months = { $from } bis { $to } Monate
card-keeps-months-even = etwa { $months ->
    [one] 1 Monat
   *[other] { $months } Monate
}
card-step = { -strong }{ $title }.{ -end } { $text }
card-plant = { $herb }, { $state }
card-stop = { -strong }Stopp.{ -end } { $text }
card-no-dose = Diese Karte nennt keine Dosis. Frag vorher in der Apotheke oder Arztpraxis, wenn du schwanger bist, stillst, krank bist oder Arzneien nimmst.
code-too-long = Dieser Code ist zu lang für ein Rezept.
code-holds-no-recipe = In diesem Code steckt kein Rezept.
code-damaged = Ein Teil dieses Codes fehlt oder stimmt nicht. Scann ihn noch einmal, oder lass ihn dir neu geben.
code-of-a-later-version = Diesen Code hat eine neuere Version von Korbbuch gemacht. Aktualisiere Korbbuch und scann ihn dann noch einmal.
recipe-or-jar = Wähl entweder ein Rezept oder einen Ansatz.
card-second-pouring = Eine zweite Mazeration hat kein eigenes Rezept. Gib das Rezept des ersten Ansatzes weiter.
card-must-not-be-made = Das stellt man nicht her. Darum gibt es davon keine Karte.
card-own-herb = Die Karte hat keinen Code, denn eine Pflanze, die du selbst angelegt hast, steht in keinem anderen Buch.
card-too-much-for-a-code = Dieses Rezept ist zu lang für einen Code. Die Karte hat darum keinen.
card-note-left-out = Deine Notiz steht nicht im Code. Er hat Platz für höchstens { $most } Zeichen.
code-too-much = In diesem Code stehen mehr als { $most } Kräuter oder Flüssigkeiten. So viele passen in keinen Ansatz.
code-hidden-letters = In diesem Code stehen Zeichen, die man nicht sieht. Er wurde nicht übernommen.
code-preparation-unknown = Diese Zubereitung kennt Korbbuch nicht. Aktualisiere Korbbuch und scann den Code dann noch einmal.
code-herb-unknown = In diesem Code steht { $name }. Diese Pflanze kennt Korbbuch nicht.
code-part-unknown = In diesem Code steht ein Teil von { $herb }, den Korbbuch nicht kennt.
code-must-not-be-made = Das stellt man nicht her. Darum wurde das Rezept nicht gespeichert.
code-is-kept-already = Dieses Rezept steht schon in deinen Einträgen.

# Ein Kurs.

class-people = Ein Kurs kann 1 bis { $most } Leute haben.
class-jar = Die Gläser können { $least } bis { $most } fassen.
class-jar-too-small = So wenig Kraut lässt sich nicht wiegen. Wähl größere Gläser.
class-must-not-be-made = Das stellt man nicht her. Darum gibt es davon keinen Kurs.
class-name = Name: ______________________
class-poured = Angesetzt am: ______________
class-strain = Nach { $from } bis { $to } Tagen abseihen.
class-number = { $number } von { $of }
item-by-hand = die Zeilen für den Namen und den Tag
