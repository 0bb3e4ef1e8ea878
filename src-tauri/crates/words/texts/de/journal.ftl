# Was der Kern über das Buch als Ganzes sagt.
check-file-damaged = Die Datei des Buchs ist beschädigt: { $detail }
check-entry-changed = Dieser Eintrag steht nicht mehr so da, wie er geschrieben wurde.
check-entry-unreadable = Der Eintrag Nummer { $number } ist nicht lesbar.
check-entries-missing = { $count ->
    [one] Ein Eintrag fehlt.
   *[other] { $count } Einträge fehlen.
}
check-tables-differ = Die Listen passten nicht zu den Einträgen.
check-uneven = { $said }
check-photo-changed = Das Bild ist beschädigt. Füge dasselbe Bild noch einmal hinzu oder stelle eine Sicherung wieder her, in der es liegt.
check-photo-missing = Das Bild fehlt. Füge dasselbe Bild noch einmal hinzu oder stelle eine Sicherung wieder her, in der es liegt.
check-in-the-log = die Einträge
check-in-the-lists = die Listen
check-in-the-ledger = die Mengen
entry-unfit = „{ $deed }“ kann nicht übernommen werden. { $why }
more-taken-than-there-was = Nach den Einträgen wurden { $taken } entnommen, es waren aber nur { $there } da. Sag, was stimmt.
put-right = Richtigstellen: { $name }
refused-year = Das Jahr muss zwischen 0 und 9999 liegen; { $year } tut es nicht.
refused-entry-time = Die Zeit dieses Eintrags liegt außerhalb der Jahre 1 bis 9999.
refused-entry-line = Ein Eintrag sagt in einer Zeile von höchstens { $most } Zeichen, was getan wurde.
refused-entry-itself = Dieser Eintrag nimmt sich selbst zurück.
refused-entry-later = Er nimmt einen Eintrag zurück, der nach ihm kam.
refused-entry-empty = Ein Eintrag ändert entweder etwas oder nimmt einen anderen zurück.
refused-entry-struck = Was herausgenommen wurde, hat keine Felder.
refused-id-spelling = Diese Kennung ist nicht so geschrieben, wie die App sie schreibt.
refused-row-unreadable = Das ist nicht lesbar: { $why }.
refused-photo-size = Ein Bild hat höchstens { $most } Bytes; dieses hat { $bytes }.
