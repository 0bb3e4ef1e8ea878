### A jar and its life.

# What cannot be done with a jar.

jar-preparation-unknown = Diese Version kennt die Zubereitung { $name } nicht. Aktualisiere Korbbuch.
jar-failed-already = { $name } ist misslungen, damit lässt sich nichts mehr machen.
jar-strained-already = { $name } ist schon abgeseiht, also kannst du nicht mehr schütteln oder auffüllen.
jar-not-strained = { $name } ist noch nicht abgeseiht. Seih zuerst ab.
marc-in-another-jar = Der Pressrückstand von { $name } ist schon im Ansatz { $code }.
marc-not-again = { CAPITAL($preparation) } wird nicht aus einem Pressrückstand gemacht.
marc-of-mixture = Nur ein Pressrückstand aus reinem Alkohol, Glycerin, Essig oder Öl lässt sich noch einmal ansetzen. Dieser enthält ein Gemisch.
jar-without-oil = In diesem Ansatz ist kein Öl.
came-out-nothing = Gib für das Abgeseihte mehr als 0 ein. Eingegeben: { $given }.
came-out-too-much = Abgeseiht kann nicht mehr sein als die { $most } im Glas. Eingegeben: { $given }.
lot-of-another-herb = Das ist nicht { $herb }. Wähl etwas, das es ist.
water-or-sample = Gib das Wasser im Kraut oder eine Probe davon ein, nicht beides.
supply-of-another-kind = Deine Zutat { $name } ist von anderer Art.

# What is missing on the label of a liquid, or too much.

figure-missing = { CAPITAL($liquid) }: { $figure } fehlt.
figure-too-much = { CAPITAL($liquid) }: { $figure } gehört nicht dazu.
oil-not-said = Wähl, welches Öl es ist, etwa Oliven.

# What is expected of a marc.

retention-published-figure = veröffentlicht
retention-of-dried-root = Wert für getrocknete Wurzel, denn ein eigener fehlt
retention-made-up = danach auf das Volumen aufgefüllt
retention-own-jars = { $count ->
    [one] laut deinem letzten Ansatz
   *[other] laut deinen letzten { $count } Ansätzen
}
