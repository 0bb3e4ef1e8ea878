### Wann ein Kraut geerntet wird.

stage-after-it-has-flowered = nach der Blüte
stage-as-it-turns-from-green-to = wenn er von Grün nach Grau umschlägt, Dolde für Dolde
stage-as-they-open = wenn sie aufgehen
stage-at-any-time = jederzeit
stage-at-the-end-of-growth = am Ende des Wachstums
stage-at-the-end-of-growth-and = am Ende des Wachstums und danach
stage-at-the-start-of-flowering = zu Beginn der Blüte
stage-autumn = im Herbst
stage-autumn-or-spring-before-it-grows = im Herbst, oder im Frühling vor dem Austrieb
stage-autumn-third-year-and-later = im Herbst, ab dem dritten Jahr (oft geschützt)
stage-before-and-as-it-flowers = vor und zu Beginn der Blüte
stage-before-it-flowers = vor der Blüte
stage-before-it-flowers-and-again-in = vor der Blüte und noch einmal im Herbst
stage-before-it-flowers-second-cut-in = vor der Blüte; zweiter Schnitt im September
stage-before-or-as-it-flowers = vor oder zu Beginn der Blüte
stage-before-the-head-is-fully-open = bevor das Köpfchen ganz offen ist
stage-before-the-tops-die-back-grown = bevor das Kraut abstirbt; nur angebaute Pflanzen
stage-before-they-open = bevor sie aufgehen
stage-best-in-autumn = am besten im Herbst
stage-clean-full-leaf = saubere, voll entwickelte Blätter
stage-dug-only-in-the-second-or = erst im zweiten oder dritten Jahr graben
stage-early-flower = zu Beginn der Blüte
stage-early-spring-or-autumn = im zeitigen Frühling oder Herbst (nur für die Haut)
stage-flowering-shoots = blühende Triebe
stage-fresh-and-pink = frisch und rosa
stage-fruits-as-they-ripen = Früchte, wenn sie reifen
stage-fully-open = ganz offen
stage-fully-open-day-by-day = ganz offen, Tag für Tag
stage-fully-open-dry = ganz offen und trocken
stage-fully-ripe-black-purple-whole-clusters = vollreif, schwarzviolett; ganze Dolden
stage-in-flower = in voller Blüte
stage-in-flower-or-first-fruit = in Blüte oder mit den ersten Früchten
stage-in-flower-second-or-third-year = in Blüte, im zweiten oder dritten Jahr
stage-in-summer = im Sommer
stage-in-summer-green-and-clean = im Sommer, grün und sauber
stage-just-open = eben aufgeblüht
stage-late-autumn = im Spätherbst
stage-late-summer = im Spätsommer
stage-leaf-and-tips-before-it-flowers = Blätter und Spitzen vor der Blüte
stage-leaves-half-yellow-then-cured = wenn das Laub halb gelb ist, danach nachtrocknen
stage-milk-stage-a-squeezed-grain-gives = in der Milchreife: Ein gedrücktes Korn gibt einen weißen Tropfen
stage-mostly-from-plants-in-flower = meist von blühenden Pflanzen
stage-of-plants-two-or-three-years = von zwei- oder dreijährigen Pflanzen
stage-open-hollow-inside = offen, innen hohl
stage-ripe = reif
stage-ripe-after-20-august-in-the = reif, im Norden ab dem 20. August
stage-ripe-blue-black-third-year = reif, blauschwarz, im dritten Jahr
stage-ripe-not-overripe = reif, nicht überreif
stage-ripe-they-fall-when-shaken = reif; sie fallen beim Schütteln
stage-second-or-third-year = im zweiten oder dritten Jahr
stage-shortly-before-or-while-it-flowers = kurz vor oder während der Blüte
stage-spring-before-it-grows = im Frühling vor dem Austrieb
stage-spring-before-seed = im Frühling, vor der Samenreife
stage-spring-or-late-summer = im Frühling oder Spätsommer
stage-spring-sap-rising = im Frühling, wenn der Saft steigt
stage-spring-soft-tips = im Frühling, weiche Spitzen
stage-start-of-flowering = zu Beginn der Blüte
stage-start-of-flowering-flower-clusters-with = zu Beginn der Blüte, Blütenstände mit 3 oder 4 Blättern
stage-start-of-ripening-before-the-cones = zu Beginn der Reife, bevor die Zapfen gelb werden
stage-well-formed = gut ausgebildet
stage-when-it-peels-easily-from-the = wenn sie sich leicht vom Holz löst
stage-when-the-heads-fluff = wenn die Köpfe flaumig werden
stage-when-the-leaves-have-gone-down = wenn das Laub eingezogen ist
stage-when-the-plant-begins-to-flower = zu Beginn der Blüte
stage-when-the-plant-rests-autumn-or = in der Ruhezeit: im Herbst oder Frühling
stage-while-it-flowers = während der Blüte
stage-while-the-top-is-down = während das Kraut eingezogen ist
stage-while-the-top-is-down-autumn = während das Kraut eingezogen ist, Herbst bis Frühling
stage-young = jung
stage-young-but-open-strongly-scented-ones = jung, aber offen; stark duftende, wenn die Knospen aufspringen
stage-young-from-clean-running-water-only = jung, nur aus sauberem, fließendem Wasser
stage-young-leaf-and-tips = junge Blätter und Spitzen
stage-young-not-yet-full-grown = jung, noch nicht ausgewachsen
stage-young-well-formed = jung, gut ausgebildet
month = { $number ->
    [1] Januar
    [2] Februar
    [3] März
    [4] April
    [5] Mai
    [6] Juni
    [7] Juli
    [8] August
    [9] September
    [10] Oktober
    [11] November
   *[12] Dezember
}
months = { $from } bis { $to }
harvest-when = { $stage }, { $months } (Nordhalbkugel)
harvest-of-part = { $part }: { $when }
