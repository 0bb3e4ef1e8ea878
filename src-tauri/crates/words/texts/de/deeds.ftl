### The line of a deed, and what cannot be undone.

row-bed = Beet „{ $name }“
row-harvest = Ernte { $code }
row-tray = Horde „{ $name }“ ({ $code })
row-named = „{ $name }“
row-jar = Ansatz „{ $name }“ ({ $code })
row-bottle = Flasche { $code }
row-recipe = Rezept „{ $name }“
row-dropper = Pipette „{ $name }“
row-weight = das Gewicht { $mass } ({ $of })
row-used = das Verbrauchte ({ $of })
row-thrown-away = das Weggeworfene ({ $of })
row-straining = das Abseihen von { $volume } ({ $of })
row-use = die Entnahme von { $volume } ({ $of })
row-check = eine Prüfung ({ $of })
row-shake = ein Schütteln ({ $of })
row-portrait = ein Foto ({ $of })
row-plan = der Plan für { $count ->
    [one] { $count } Flasche
   *[other] { $count } Flaschen
} { $herb }
row-other = ein Eintrag
row-later-correction = eine spätere Änderung daran
rows-and-more = { $one }, { $two } und { $more } weitere
not-there-herb = Diese Pflanze steht nicht in deinen Einträgen.
not-there-bed = Dieses Beet steht nicht in deinen Einträgen.
not-there-harvest = Diese Ernte steht nicht in deinen Einträgen.
not-there-photo = Dieses Foto steht nicht in deinen Einträgen.
not-there-tray = Diese Horde steht nicht in deinen Einträgen.
not-there-weighing = Dieses Gewicht steht nicht in deinen Einträgen.
not-there-supply = Diese Zutat steht nicht in deinen Einträgen.
not-there-jar = Dieser Ansatz steht nicht in deinen Einträgen.
not-there-discard = Dieser Eintrag steht nicht in deinen Einträgen.
not-there-setting = Diese Einstellung steht nicht in deinen Einträgen.
not-there-shake = Dieses Schütteln steht nicht in deinen Einträgen.
not-there-straining = Dieses Abseihen steht nicht in deinen Einträgen.
not-there-bottle = Diese Flasche steht nicht in deinen Einträgen.
not-there-use = Diese Entnahme steht nicht in deinen Einträgen.
not-there-check = Diese Prüfung steht nicht in deinen Einträgen.
not-there-recipe = Dieses Rezept steht nicht in deinen Einträgen.
not-there-dropper = Diese Pipette steht nicht in deinen Einträgen.
not-there-plan = Dieser Plan steht nicht in deinen Einträgen.
not-there-portrait = Dieses Foto steht nicht in deinen Einträgen.
needs-another = { CAPITAL($name) } gehört zu etwas, das nicht in deinen Einträgen steht.
name-and-why = { CAPITAL($name) }: { $why }
miscounted = Was übrig ist, wurde falsch gezählt: { $name }.
gave-too-much = { CAPITAL($name) }: Es wurden { $amount } mehr entnommen, als da waren.
file-damaged = Die Datei ist beschädigt: { $detail }.
delete-rested = Das kann nicht gelöscht werden, solange { $names } darauf { $count ->
    [one] beruht
   *[other] beruhen
}.
undo-rested = „{ $deed }“ lässt sich nicht rückgängig machen, solange { $names } darauf { $count ->
    [one] beruht
   *[other] beruhen
}. Mach das zuerst rückgängig.
undo-overdrawn = „{ $deed }“ lässt sich nicht rückgängig machen: { $name } hätte dann { $has }, aber { $names } nahm davon { $taken }. Mach das zuerst rückgängig.
given-already = { CAPITAL($name) }: Schon { $taken } wurden entnommen, also können es nicht { $has } gewesen sein.
not-strained-yet = { CAPITAL($name) } ist noch nicht abgeseiht. Seih ab, bevor du abfüllst.
thrown-away-while-drying = { CAPITAL($name) } wurde beim Trocknen weggeworfen. Davon kann nichts genommen werden.
still-drying = { CAPITAL($name) } trocknet noch. Nimm sie ab, bevor du die Pflanze verwendest.
not-enough-left = { CAPITAL($name) } hat noch { $left }, also kannst du nicht { $wanted } entnehmen.
nothing-to-undo = Hier gibt es nichts rückgängig zu machen.
undone-already = „{ $deed }“ ist schon rückgängig gemacht.
nothing-changed = Nichts wurde geändert.
stopped = Das wurde angehalten. Nichts wurde geändert.
newer-file = Eine neuere Version von Korbbuch hat dieses Buch gemacht. Aktualisiere Korbbuch, um es zu öffnen.
not-a-book = Diese Datei ist kein Buch von Korbbuch.
book-damaged = Dein Buch ist beschädigt und blieb, wie es ist: { $detail }.
storage-full = Dieses Gerät ist voll, darum wurde nichts gespeichert. Schaff Platz und versuch es noch einmal.
storage-busy = Ein anderes Programm benutzt gerade dein Buch. Versuch es gleich noch einmal.
storage-failed = Dein Buch ließ sich nicht lesen oder speichern: { $detail }.
deed-undone = Rückgängig gemacht: { $what }
deed-redone = Wiederhergestellt: { $what }
deed-rescued = { $count ->
    [one] Einen Eintrag eines beschädigten Buchs gerettet, wie er stand
   *[other] { $count } Einträge eines beschädigten Buchs gerettet, wie sie standen
}

## What was done, a line of the book.

deed-bed-added = Beet { $name } angelegt
deed-bed-edited = Beet { $name } geändert
deed-herb-added = Pflanze { $name } angelegt
deed-herb-edited = Pflanze { $name } geändert
deed-supply-added = Zutat { $name } angelegt
deed-supply-edited = Zutat { $name } geändert
deed-settings-changed = Einstellungen geändert
deed-demo-begun = Beispielsaison begonnen
deed-demo-book-begun = Ein Beispielbuch begonnen
deed-photo-kept = Foto { $name } gespeichert
deed-photo-looked-at = Foto { $name } angesehen
deed-portrait-taken = { $count ->
    [one] Foto hinzugefügt ({ $of })
   *[other] { $count } Fotos hinzugefügt ({ $of })
}
deed-portrait-shown = Foto statt der Zeichnung gezeigt ({ $of })
deed-drawing-shown = Wieder die Zeichnung gezeigt ({ $of })
deed-portrait-removed = Foto entfernt ({ $of })
photo-without-a-name = ohne Namen
deed-harvest-recorded = { $mass } { $plant } ({ $code }) eingetragen
deed-harvest-edited = { $mass } { $plant } ({ $code }) geändert
deed-harvest-used = { $mass } { $herb } ({ $code }) verbraucht
deed-harvest-thrown-away = { $mass } { $herb } ({ $code }) weggeworfen
deed-tray-used = { $mass } { $herb } ({ $code }), getrocknet, verbraucht
deed-tray-thrown-away = { $mass } { $herb } ({ $code }), getrocknet, weggeworfen
deed-tray-lost = { CAPITAL($herb) } ({ $code }) beim Trocknen weggeworfen, frisch waren es { $mass }
deed-tray-started = { $mass } { $herb } auf die Darre gelegt ({ $code })
deed-tray-weighed = { $name } ({ $code }) gewogen: { $mass }
deed-tray-taken-down = { $name } ({ $code }) abgenommen, { $mass } getrocknet
deed-tray-sampled = Ofenprobe von { $name } ({ $code }) eingetragen
deed-weight-edited = Ein Gewicht von { $name } ({ $code }) geändert
deed-weight-deleted = Ein Gewicht von { $name } ({ $code }) gelöscht
deed-lot-edited = { $name } ({ $code }) geändert
deed-jar-poured = { $name } ({ $code }) angesetzt, { $volume }
deed-jar-shaken = { $name } ({ $code }) geschüttelt
deed-jar-topped-up = { $name } ({ $code }) um { $volume } aufgefüllt
deed-jar-strained = { $volume } aus { $name } ({ $code }) abgeseiht
deed-jar-strained-ph = { $volume } aus { $name } ({ $code }) abgeseiht, pH { $ph }
deed-jar-failed = { $name } ({ $code }) als misslungen eingetragen
deed-liquid-used = { $volume } von { $name } ({ $code }) verwendet
deed-liquid-thrown-away = { $volume } von { $name } ({ $code }) weggeworfen
deed-recipe-saved = Rezept { $name } gespeichert
deed-recipe-taken-in = Rezept { $name } von einer Karte übernommen
deed-recipe-edited = Rezept { $name } geändert
deed-plan-saved = { $count ->
    [one] Eine Flasche
   *[other] { $count } Flaschen
} { $herb } geplant
deed-plan-deleted = Plan für { $herb } gelöscht
deed-bottles-filled = { $count ->
    [one] Eine Flasche
   *[other] { $count } Flaschen
} aus { $name } ({ $code }) gefüllt
deed-bottle-checked = { $name } ({ $code }) geprüft: { $outcome }
deed-bottle-checked-ph = { $name } ({ $code }) geprüft: { $outcome }, pH { $ph }
outcome-good = gut
outcome-doubtful = zweifelhaft
outcome-bad = schlecht
deed-bottle-given = { $name } ({ $code }) verschenkt
deed-bottle-thrown-away = { $name } ({ $code }) weggeworfen
deed-bottle-emptied = { $name } ({ $code }) als leer eingetragen
deed-dropper-counted = Pipette { $name } kalibriert
deed-harvests-imported = { $count ->
    [one] Eine Ernte
   *[other] { $count } Ernten
} aus einer Tabelle importiert
