### Figures with their unit. $figure is the number as digits, $count the same for the choice of singular and plural.

amount-none = { $figure }
amount-gram = { $figure } g
amount-kilogram = { $figure } kg
amount-millilitre = { $figure } mL
amount-litre = { $figure } L
amount-millimetre = { $figure } mm
amount-percent = { $figure } %
amount-percent-vol = { $figure } % vol
amount-celsius = { $figure } °C
amount-gram-per-100ml = { $figure } g per 100 mL
amount-hours = { $count ->
    [one] { $figure } hour
   *[other] { $figure } hours
}
amount-days = { $count ->
    [one] { $figure } day
   *[other] { $figure } days
}
amount-weeks = { $count ->
    [one] { $figure } week
   *[other] { $figure } weeks
}
amount-months = { $count ->
    [one] { $figure } month
   *[other] { $figure } months
}
amount-years = { $count ->
    [one] { $figure } year
   *[other] { $figure } years
}
amount-range = { $amount } ({ $low } to { $high })

day-of-the-year = { $day } { $month ->
    [1] Jan
    [2] Feb
    [3] Mar
    [4] Apr
    [5] May
    [6] Jun
    [7] Jul
    [8] Aug
    [9] Sep
    [10] Oct
    [11] Nov
   *[12] Dec
} { $year }

list-and = { $before } and { $last }
list-or = { $before } or { $last }
