### What is due.

# What was picked and still lies there.
due-fresh-past = Laut deinen Einträgen sind noch { $mass } frisch. Was ist damit geschehen?
due-fresh = Noch { $mass } frisch. Trockne es, setz es an oder wirf es weg, bevor es verdirbt.

# Trays.
due-take-down = Es ist trocken. Nimm es bei { $stop } ab.
due-dry-by = Wohl trocken bis { $to } (in 9 von 10 Fällen).
due-dry-between = Wohl trocken zwischen dem { $from } und dem { $to } (in 9 von 10 Fällen).

# Jars.
due-strain-late = Hätte bis zum { $to } abgeseiht werden sollen.
due-strain-on = Am { $from } abseihen.
due-strain-between = Zwischen dem { $from } und dem { $to } abseihen.
# $strain is one of the three above.
due-strain-keeps-only = { $strain } Abgeseiht hält es nur bis zum { $last }.
due-shake = Tag { $day }: schütteln.

# Bottles.
due-use-by = Bis zum { $last } aufbrauchen.
due-throw-away-dated = Es war nur bis zum { $last } haltbar. Wirf es weg: Botulismus sieht, riecht und schmeckt man nicht.
due-not-acid = Der pH-Wert vom { $day } spricht dafür, dass es zum Aufbewahren vielleicht nicht sauer genug ist. Halt es kalt und verbrauch es in wenigen Tagen, oder wirf es weg.
due-found-bad = Du hast es als schlecht eingetragen. Wirf es weg.
due-look-and-smell = Sieh es an und riech daran.
due-look-smell-and-taste = Sieh es an, riech daran und koste einen Tropfen.
