### Backup, restore, merge, import and export.

book-lost = Dein Buch fehlt. Wähl zuerst, was du stattdessen öffnest.
book-there = Dein Buch ist da, darum wurde kein neues begonnen.
book-anew-sure = Bestätige, dass du mit einem leeren Buch beginnen willst.
point-gone = Diesen Wiederherstellungspunkt gibt es nicht mehr.
point-damaged = Dieser Wiederherstellungspunkt ist beschädigt, darum wurde nichts geändert. Wähl einen anderen.
no-damaged-file = Hier gibt es keine beschädigte Datei zum Lesen.
made-file-gone = Diese Datei gibt es nicht mehr.

backup-too-many = Eine Sicherung fasst höchstens { $most } Dateien, und du hast mehr. Mach sie ohne Fotos und kopiere die Fotos selbst.

name-one-line = Schreib diesen Namen in eine Zeile, ohne Umbruch.
photo-original-missing = Das Original des Fotos { $name } fehlt.
merge-clock-ahead = Die Uhr des anderen Geräts ging vor: Es speicherte einen Eintrag vom { $day }. Stell diese Uhr richtig. Wo beide Geräte dasselbe geändert haben, zählt das spätere Datum.

# Files.

folder-not-there = Wähl für die Datei einen Ordner, den es gibt. Eingegeben: „{ $path }“.
copy-outside = Speichere die Kopie außerhalb des Ordners deines Buchs.
file-not-arrived = Die Datei kam nicht an, oder Korbbuch wurde seither neu gestartet. Wähl sie noch einmal.
file-not-there = Es gibt keine Datei „{ $path }“.
passphrase-too-short = Nimm mindestens 8 Zeichen als Passphrase. Ohne sie kann niemand die Datei öffnen, also notier sie auf Papier.
job-running = Eine andere Sicherung, Wiederherstellung, Zusammenführung oder ein Export läuft noch. Warte darauf oder halte es an.
book-open-elsewhere = Dein Buch ist in einem anderen Fenster offen. Mach dort weiter, oder schließ jenes Fenster und starte Korbbuch neu.

# A file that comes.

file-no-backup = Diese Datei ist keine Sicherung. Nur Sicherungen lassen sich wiederherstellen oder zusammenführen.
file-without-book = In dieser Sicherung ist kein Buch.
file-book-damaged = Das Buch in dieser Sicherung ist beschädigt, darum wurde nichts geändert. Wähl eine ältere Sicherung.
file-changed = Diese Sicherung wurde nach dem Schreiben verändert, obwohl Buch und Fotos heil sind. Es wurde nichts daraus gelesen.
file-one-damaged = { $name } in dieser Sicherung ist beschädigt, darum wurde nichts geändert.
file-more-damaged = { $name } und { $more } weitere in dieser Sicherung sind beschädigt, darum wurde nichts geändert.
file-not-whole = Das ist keine ganze Datei von Korbbuch: Ihr Ende fehlt, oder sie ist etwas anderes.
file-newer = Eine neuere Version von Korbbuch hat diese Datei gemacht. Aktualisiere Korbbuch, um sie zu lesen.
file-sealed = Diese Datei ist verschlüsselt. Gib die Passphrase ein, mit der sie verschlüsselt wurde.
file-wrong-passphrase = Diese Passphrase öffnet die Datei nicht, oder der Anfang der Datei ist beschädigt.
file-too-costly = Ein anderes Programm hat diese Datei so verschlüsselt, dass das Öffnen hier zu lange dauert.
file-foreign = Die Datei enthält einen Eintrag, der nicht hineingehört („{ $name }“), darum wurde nichts daraus gelesen.
file-storage-full = Dieses Gerät ist voll, darum wurde die Datei nicht gespeichert. Schaff Platz und versuch es noch einmal.
file-disk = Die Datei konnte nicht gelesen oder geschrieben werden: { $detail }.

# What is damaged, after “The file is damaged:”.

detail-twice = ihr Verzeichnis nennt einen Eintrag zweimal
detail-claims-bytes = ihre Einträge geben mehr Bytes an, als da sind
detail-claims-entries = ihr Verzeichnis gibt mehr Einträge an, als ein Buch hat
detail-length = { $name } ist nicht so lang, wie es war
detail-missing = { $name } fehlt
detail-changed = { $name } ist nicht mehr, was es war
detail-cut-off = sie wurde abgeschnitten oder nach dem Schreiben verändert
detail-manifest = ihr Verzeichnis lässt sich nicht lesen
detail-sealed-head = der Anfang der verschlüsselten Datei lässt sich nicht lesen
detail-not-read-back = sie liest sich nicht so, wie sie geschrieben wurde; vielleicht geht der Speicher kaputt

# What a rescue saved.

rescue-deeds = Das Buch war beschädigt. { $count ->
    [one] Einer seiner Einträge war lesbar und steht im neuen Buch.
   *[other] { $count } seiner Einträge waren lesbar und stehen im neuen Buch.
}
rescue-rows = { $count ->
    [one] Ein Eintrag ist gerettet, wie er dastand, aber ohne seine Geschichte: { $what }.
   *[other] { $count } Einträge sind gerettet, wie sie dastanden, aber ohne ihre Geschichte: { $what }.
}
rescue-all = Sonst fehlt nichts.
rescue-lost = { $count ->
    [one] Ein Eintrag war nicht lesbar.
   *[other] { $count } Einträge waren nicht lesbar.
}
rescue-end-unknown = Die Liste selbst ist beschädigt. Wie viel nicht zu lesen war, ist darum nicht bekannt.
rescue-photos = Deine Fotos bleiben unberührt, und die beschädigte Datei bleibt hier. Fehlt etwas, stell deine letzte Sicherung wieder her oder führ sie damit zusammen.
counted-herb = { $count ->
    [one] 1 Pflanze
   *[other] { $count } Pflanzen
}
counted-bed = { $count ->
    [one] 1 Beet
   *[other] { $count } Beete
}
counted-harvest = { $count ->
    [one] 1 Ernte
   *[other] { $count } Ernten
}
counted-photo = { $count ->
    [one] 1 Foto
   *[other] { $count } Fotos
}
counted-tray = { $count ->
    [one] 1 Horde
   *[other] { $count } Horden
}
counted-weighing = { $count ->
    [one] 1 Wägung
   *[other] { $count } Wägungen
}
counted-supply = { $count ->
    [one] 1 Zutat
   *[other] { $count } Zutaten
}
counted-jar = { $count ->
    [one] 1 Ansatz
   *[other] { $count } Ansätze
}
counted-discard = { $count ->
    [one] 1 Entnahme von Kraut
   *[other] { $count } Entnahmen von Kraut
}
counted-setting = { $count ->
    [one] 1 Einstellung
   *[other] { $count } Einstellungen
}
counted-shake = { $count ->
    [one] 1 Schütteln
   *[other] { $count } Mal Schütteln
}
counted-straining = { $count ->
    [one] 1 Abseihen
   *[other] { $count } Mal Abseihen
}
counted-bottle = { $count ->
    [one] 1 Flasche
   *[other] { $count } Flaschen
}
counted-use = { $count ->
    [one] 1 Entnahme aus Flaschen
   *[other] { $count } Entnahmen aus Flaschen
}
counted-check = { $count ->
    [one] 1 Prüfung
   *[other] { $count } Prüfungen
}
counted-recipe = { $count ->
    [one] 1 Rezept
   *[other] { $count } Rezepte
}
counted-dropper = { $count ->
    [one] 1 Pipette
   *[other] { $count } Pipetten
}
counted-plan = { $count ->
    [one] 1 Plan
   *[other] { $count } Pläne
}
counted-portrait = { $count ->
    [one] 1 Foto von Ansatz, Flasche, Beet oder Pflanze
   *[other] { $count } Fotos von Ansätzen, Flaschen, Beeten und Pflanzen
}
