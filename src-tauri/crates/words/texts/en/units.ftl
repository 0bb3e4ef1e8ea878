### Figures with their unit. $figure is the number as digits, $count the same for the choice of singular and plural.

amount-none = { $figure }
amount-gram = { $figure } g
amount-kilogram = { $figure } kg
amount-millilitre = { $figure } mL
amount-litre = { $figure } L
amount-ounce = { $figure } oz
amount-pound = { $figure } lb
amount-fluid-ounce = { $figure } fl oz
amount-millimetre = { $figure } mm
amount-percent = { $figure } %
amount-percent-vol = { $figure } % vol
amount-celsius = { $figure } °C
amount-gram-per-100ml = { $figure } g per 100 mL
amount-percent-mass = { $figure } % by weight
amount-gram-per-litre = { $figure } g per litre
amount-millilitre-per-gram = { $figure } mL to a gram
amount-square-metre = { $figure } m²
amount-degrees = { $figure }°
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

# What the maker wrote, alone.
own-words = { $text }

# Sources in words of our own; a citation is the same in every language.
source-practice = common practice, no source
source-second-hand = a page or handbook that names no published authority
source-our-words = our own wording; no doctor, pharmacist or lawyer has read it
source-dried-root-in-spirit = Herbal Materia Medica 1995, for dried root in spirit
source-drying-times = published drying times in room air
source-ginseng-drying-time = published drying time of ginseng root in a room
source-dried-herbs = nine in ten dried herbs of the food tables hold 3 to 12 %

# An error of the app itself.
broken-off = This broke off because of an error in the app. Nothing was lost.
