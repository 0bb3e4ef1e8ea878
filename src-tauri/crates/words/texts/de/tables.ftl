### Tables brought in and given out.

# A table of past harvests.

table-line-too-long = Eine Zeile der Tabelle darf höchstens { $most } kB lang sein.
table-column-twice = Die Spalte { $column } steht zweimal in der ersten Zeile.
table-columns = Die erste Zeile muss die Spalten { $needed } nennen; { $missing } fehlt. Sie darf auch { $others } nennen.
table-too-many = Eine Tabelle darf höchstens { $most } Ernten haben. Teil sie auf.
table-too-long = Eine Tabelle darf höchstens { $most } MB lang sein. Diese ist länger.
table-no-csv = Speichere die Tabelle als CSV in UTF-8. Diese Datei ist etwas anderes.
table-weight-missing = Trag das Gewicht in Gramm ein.
table-surface = Erlaubt ist als Oberfläche dry, dew, rain oder washed. In der Tabelle steht „{ $given }“.
table-number = Schreib Gramm als einfache Zahl, etwa 412.5. In der Tabelle steht „{ $given }“.
table-day = Schreib den Tag als 2019-07-14 oder 2019-07-14 09:30. In der Tabelle steht „{ $given }“.
table-cells = Die Zeile hat { $cells } Zellen, die erste Zeile hat { $columns }.
table-line-unreadable = Die Zeile lässt sich nicht als CSV lesen.
table-unwritten = Die Tabelle konnte nicht geschrieben werden: { $detail }.
what-name-of-a-bed = der Name eines Beets
