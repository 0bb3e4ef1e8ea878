### Von den Flaschen zurück zu den Pflanzen planen.

plan-marc-keeps-all = Bei diesem Verhältnis hält der Pressrückstand die ganze Flüssigkeit zurück. Wähl eine Zubereitung mit mehr Auszugsmittel je Gramm.
plan-herb-out-of-range = Diese Flaschen brauchen { $herb } Kraut. Ein Ansatz fasst zwischen 0,1 g und 100 kg, also plan andere Flaschen.
plan-too-much-liquid = Diese Flaschen ergeben { $liquid }. Ein Ansatz fasst bis 1000 L oder 1000 kg jeder Flüssigkeit, also plan weniger oder kleinere Flaschen.
fresh-to-dry = Von frisch zu trocken: { $basis }.
trim-loss = Ein Zehntel ist dazugerechnet, weil beim Putzen etwas wegfällt.
retention-own = Was der Pressrückstand zurückhält, stammt aus deinen eigenen Ansätzen.
retention-published = Der Pressrückstand hält so viel zurück, wie nach Pressen oder Auswringen darin bleibt.
retention-assumed = Wie viel dieser Pressrückstand zurückhält, ist nicht veröffentlicht. Bis du eigene Werte hast, gilt der Wert von Tinkturen aus getrockneter Wurzel.
drying-time-flowers = Blüten trocknen in zwei bis drei Wochen.
drying-time-roots = Wurzeln trocknen im Raum in drei bis sechs Wochen.
drying-time-leaves = Blatt und Kraut trocknen im Schatten in sechs bis fünfzehn Tagen.
more-than-a-year = Das ist mehr als die { $yearly }, die du in einem Jahr brauchst. Mach weniger, oder gib an, dass etwas zum Verschenken ist.

plans-more-than-a-year = Von { $herb } sind { $planned } geplant, mehr als die { $yearly }, die du in einem Jahr verbrauchst. Mach weniger, oder gib an, dass etwas zum Verschenken ist.
