### Zahlen mit ihrer Einheit. $figure sind die Ziffern, $count dieselbe Zahl für Einzahl und Mehrzahl.

amount-none = { $figure }
amount-gram = { $figure } g
amount-kilogram = { $figure } kg
amount-millilitre = { $figure } mL
amount-litre = { $figure } L
amount-millimetre = { $figure } mm
amount-percent = { $figure } %
amount-percent-vol = { $figure } % vol
amount-celsius = { $figure } °C
amount-gram-per-100ml = { $figure } g je 100 mL
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
