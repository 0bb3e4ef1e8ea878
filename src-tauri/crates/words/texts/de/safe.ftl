### Backup, restore, merge, import and export.

book-lost = Das Buch ist nicht mehr, wo es war. Wähle zuerst, was an seine Stelle treten soll.
book-there = Das Buch ist da, deshalb wird an seiner Stelle kein neues begonnen.
book-anew-sure = Bestätige, dass ein neues, leeres Buch begonnen werden soll.
point-gone = Diesen Wiederherstellungspunkt gibt es nicht mehr.
point-damaged = Dieser Wiederherstellungspunkt ist beschädigt, deshalb wurde nichts geändert. Nimm einen anderen.
no-damaged-file = Hier liegt keine beschädigte Datei, aus der sich etwas lesen ließe.
made-file-gone = Diese Datei gibt es nicht mehr.

backup-too-many = Eine Sicherung fasst höchstens { $most } Dateien, und dieses Buch hat mehr. Mach sie ohne Fotos und kopiere die Fotos selbst.

name-one-line = Schreib diesen Namen in eine Zeile, ohne Umbruch.
