### Vorsicht bei einem Ansatz; Verwechslungen, Angaben je Kraut und Erntezeiten stehen in eigenen Dateien.

caution-botulism-fresh-oil = Frisches Kraut in Öl kann ohne jedes Zeichen Botulismus auslösen. Bewahr es bei höchstens 4 °C auf und wirf es nach 2 bis 4 Tagen weg, oder frier es ein.
caution-acid-soak = Nimm Knoblauch, Basilikum, Oregano oder Rosmarin und keine andere Pflanze. Leg 1 Teil Knoblauch in 3 Teile 3-prozentige Zitronensäure nach Gewicht, 1 Teil Kraut in 10. Lass es 24 Stunden darin und nimm keine andere Säure.
caution-no-smell-test = Es sieht gut aus und riecht gut, auch wenn es gefährlich ist. Richte dich nur nach dem Datum.
caution-ph-strip = Prüf die fertige Flüssigkeit mit einem pH-Streifen. Über 4,6 stell sie kalt und verbrauch sie in wenigen Tagen, oder wirf sie weg.
caution-vinegar-strength = Lies das Etikett: Der Essig muss mindestens 5 % Säure haben.
caution-acid-vessel = Säure greift Eisen, Kupfer und Zink an und löst Blei aus Glasur. Nimm Glas oder lebensmittelechten Kunststoff, keinen blanken Metalldeckel und keinen Kupfertopf.
caution-infant-honey = Enthält Honig. Nicht für Säuglinge unter 12 Monaten.
caution-no-data-nursing = In der Stillzeit ist kein Kraut gut untersucht. Apotheken raten, auf pflanzliche Arzneien zu verzichten.
caution-bitters-ulcer = Nimm bei Magengeschwüren keine bitteren Kräuter. Bei Gallensteinen frag vorher deine Arztpraxis.
caution-damp-herb-oil = Wasser verdirbt Öl. Nimm rascheltrockenes Kraut und ein trockenes Glas. Gieß das Öl vom Wasser am Boden ab.
caution-no-open-flame-oil = Lass warmes Öl nie allein und erhitz es nie über einer Flamme. Nimm ein Wasserbad.
caution-alcohol-bottle = Eine ganze Flasche kann genug Alkohol enthalten, um einem Kind zu schaden. Nimm einen kindersicheren Verschluss.
caution-not-alcohol-free = Dieses Glycerit ist nicht mehr alkoholfrei. Schreib es auf das Etikett.
caution-fermenting = Gas kann eine verkorkte Flasche sprengen. Öffne sie ein wenig, stell sie kalt und wirf den Inhalt weg, wenn er gärt.
caution-wine-perishable = Wein unter 15 % vol verdirbt. Stell ihn kalt und trink ihn in ein bis zwei Wochen.
caution-oil-infants = Nicht für Säuglinge.
caution-sugar = Enthält viel Zucker: Sag es jedem, der Diabetes hat.
caution-glycerin-laxative = Glycerin zählt bei Diabetes wie Zucker. Große Mengen führen ab.
caution-teeth = Essig greift die Zähne an. Verdünn ihn mit Wasser.
caution-hot-glass = Heiße Flüssigkeit sprengt kaltes Glas. Wärm das Glas vor.
caution-pregnancy = Bist du schwanger, stillst du, nimmst du Arzneien, bist du länger krank oder wirst du operiert? Frag vorher in der Apotheke oder Arztpraxis.
caution-wrong-alcohol = Nimm nur Trinkalkohol. Isopropanol, Brennspiritus, vergällter Alkohol und Methanol sind giftig und können blind machen.
caution-flame = Dämpfe von starkem Alkohol können sich schon bei Zimmertemperatur entzünden. Keine Flamme, keine Herdplatte, Fenster auf.
caution-children-alcohol = Enthält Alkohol. Halt es von Kindern fern und gib es einem Kind nie ohne ärztlichen Rat.
caution-not-looked-up = Zu { $herb } gibt es hier keine Angaben, auch keine Warnungen. Frag vor der Anwendung in der Apotheke.
do-not-make = Stell das nicht her. { $why }
caution-of-herb = { CAPITAL($herb) }: { $text }
look-alike-to-rule-out = { CAPITAL($names) } lässt sich mit { $herb } verwechseln und ist giftig. Bestätige, dass es nichts davon ist.
wild-to-be-certain = Diese Pflanze wuchs wild: Bestätige, dass du sicher bist, dass es { $herb } ist.
caution-not-for-pregnant-or-nursing = Nicht in Schwangerschaft und Stillzeit anwenden.
look-alike-in-words = Damit verwechselt: { $name } ({ $why }). So unterscheidest du sie: { $tell }
strength-published = Für { $herb } sind { $strength } veröffentlicht, { $form }.
strength-meets = Am Ende sind es { $ends }, nahe an den { $published }, die für { $herb } veröffentlicht sind, { $form }.
strength-misses = Am Ende sind es { $ends }, nicht die { $published }, die für { $herb } veröffentlicht sind, { $form }.
strength-of = { $strength }
strength-between = { $low } bis { $high }
strength-of-part = { $part }: { $strength }
strength-not-printed = Stärke nicht angegeben
form-with-ratio = { $form } { $ratio }
published-tincture = Tinktur
published-liquid-extract = Fluidextrakt
published-wine = Wein
form-tincture = Tinktur
form-liquid-extract = Fluidextrakt
form-wine = Wein

# The general wording.

general-not-medical-advice = Korbbuch führt Buch und rechnet. Es stellt keine Diagnose, behandelt nicht und wählt keine Dosis. Frag vorher in der Apotheke oder Arztpraxis, wenn du schwanger bist, stillst, krank bist, Arzneien nimmst oder operiert wirst.
general-no-dose = Korbbuch berechnet keine Dosis, nicht für Erwachsene und nicht für Kinder. Wer eine Dosis nur nach der Größe verkleinert, vergisst den Alkohol und den Körper des Kindes.
general-interactions = Kräuter können die Wirkung von Arzneien ändern. Keine Liste hier ist vollständig. Zeig das Etikett in deiner Apotheke.
general-poison = Geht es jemandem schlecht, ist jemand benommen oder hat jemand die falsche Pflanze geschluckt? Ruf sofort den Giftnotruf an. Bricht jemand zusammen, krampft oder bekommt keine Luft, ruf den Notruf. Heb die Flasche und ein Stück der Pflanze auf.
general-oil = Frisches Kraut in Öl sieht gut aus und riecht gut, auch wenn es gefährlich ist. Wirf es an seinem Datum weg.
general-alcohol = Enthält Alkohol. Von Kindern und Flammen fernhalten.
general-selling = Wer verkauft, was er herstellt, unterliegt überall anderen Regeln. Frag nach, was bei dir für Lebensmittel, Arzneien und Alkohol gilt. Brenn keinen Alkohol selbst: In den USA ist es verboten (26 USC 5042, 5053, 5601).
