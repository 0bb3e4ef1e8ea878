### Numbers that are out of range, and what a mixture cannot be.

unmixable-no-liquid = Hier ist keine Flüssigkeit. Gieß mindestens eine auf, oder nimm Kraut, das Wasser mitbringt.
unmixable-temperature = Für diese Flüssigkeit ist eine Temperatur zwischen { $low } und { $high } erlaubt. Eingegeben: { $given }.
unmixable-no-stock = Es ist nichts zum Aufgießen da. Wähl mindestens eine Flüssigkeit aus deinen Zutaten.
unmixable-no-size = Sag, wie viel es werden soll: das Volumen am Ende, das aufgegossene Volumen oder die Menge einer Flüssigkeit.
unmixable-more-than-available = Du willst { $wanted }, hast aber nur { $there }.
unmixable-unsolved = Diese Mengen ließen sich nicht ausrechnen. Ändere eine davon ein wenig und versuch es noch einmal.

remark-volume-is-estimated = Hier ist mehreres gelöst. Volumen und Dichte stimmen auf etwa 1 %, die Wasseraktivität auf etwa 0,03.
remark-acid-ph = Das ist der pH-Wert der Säure allein. Kräuter und Salze heben ihn, also miss nach.
remark-no-acid = Es wurde keine Säure aufgegossen, also gibt es keinen pH-Wert.
remark-sugar-undissolved = Das ist mehr Zucker, als das Wasser löst. Zucker am Boden macht nichts haltbar.
remark-glycerol-outside-fit = Die Dichte von Glycerin ist von 15 bis 30 °C gut bekannt. Außerhalb kann sie um 2,5 kg je Kubikmeter abweichen.
remark-may-freeze = Unter 0 °C gelten diese Zahlen nur, bis die Flüssigkeit zu gefrieren beginnt.
remark-oil-left-out = Öl schwimmt obenauf und zählt in diesen Zahlen nicht mit.
remark-sugars-of-honey = Die Zucker von Honig, Wein und Saft zählen als Glucose und Fructose, mit der Dichte aus Honigtabellen.
