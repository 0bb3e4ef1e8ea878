### Zahlen mit ihrer Einheit. $figure sind die Ziffern, $count dieselbe Zahl für Einzahl und Mehrzahl.

amount-none = { $figure }
amount-gram = { $figure } g
amount-kilogram = { $figure } kg
amount-millilitre = { $figure } mL
amount-litre = { $figure } L
amount-ounce = { $figure } oz
amount-pound = { $figure } lb
amount-fluid-ounce = { $figure } fl oz
amount-millimetre = { $figure } mm
amount-percent = { $figure } %
amount-percent-vol = { $figure } % vol
amount-celsius = { $figure } °C
amount-gram-per-100ml = { $figure } g je 100 mL
amount-percent-mass = { $figure } Gewichtsprozent
amount-gram-per-litre = { $figure } g je Liter
amount-millilitre-per-gram = { $figure } mL je Gramm
amount-square-metre = { $figure } m²
amount-degrees = { $figure }°
amount-hours = { $count ->
    [one] { $figure } Stunde
   *[other] { $figure } Stunden
}
amount-days = { $count ->
    [one] { $figure } Tag
   *[other] { $figure } Tage
}
amount-weeks = { $count ->
    [one] { $figure } Woche
   *[other] { $figure } Wochen
}
amount-months = { $count ->
    [one] { $figure } Monat
   *[other] { $figure } Monate
}
amount-years = { $count ->
    [one] { $figure } Jahr
   *[other] { $figure } Jahre
}
amount-range = { $amount } ({ $low } bis { $high })

day-of-the-year = { $day }. { $month ->
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
} { $year }

list-and = { $before } und { $last }
list-or = { $before } oder { $last }

# What the maker wrote, alone.
own-words = { $text }

# Sources in words of our own; a citation is the same in every language.
source-practice = allgemeine Praxis, ohne Quelle
source-second-hand = eine Seite oder ein Handbuch ohne genannte Fachstelle
source-our-words = unsere eigenen Worte; von keinem Arzt, Apotheker oder Juristen geprüft
source-dried-root-in-spirit = Herbal Materia Medica 1995, für getrocknete Wurzel in Alkohol
source-drying-times = veröffentlichte Trocknungszeiten an der Zimmerluft
source-ginseng-drying-time = veröffentlichte Trocknungszeit von Ginsengwurzel im Zimmer
source-dried-herbs = neun von zehn getrockneten Kräutern der Lebensmitteltabellen enthalten 3 bis 12 %

# An error of the app itself.
broken-off = Das brach wegen eines Fehlers in der App ab. Es ging nichts verloren.
