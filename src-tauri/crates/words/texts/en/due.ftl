### What is due.

# What was picked and still lies there.
due-fresh-past = Your records show { $mass } still fresh. What happened to it?
due-fresh = { $mass } still fresh. Dry it, use it in a jar or throw it away before it spoils.

# Trays.
due-take-down = It is dry. Take it down at { $stop }.
due-dry-by = Likely dry by { $to } (9 times in 10).
due-dry-between = Likely dry between { $from } and { $to } (9 times in 10).

# Jars.
due-strain-late = It should have been strained by { $to }.
due-strain-on = Strain it on { $from }.
due-strain-between = Strain it between { $from } and { $to }.
# $strain is one of the three above.
due-strain-keeps-only = { $strain } Once strained it keeps only until { $last }.
due-shake = Day { $day }: shake it.

# Bottles.
due-use-by = Use it by { $last }.
due-throw-away-dated = It was dated { $last }. Throw it away: you can't see, smell or taste botulism.
due-not-acid = The pH measured on { $day } suggests it may not be acidic enough to keep. Keep it cold and use it within days, or throw it away.
due-found-bad = You marked it bad. Throw it away.
due-look-and-smell = Look at it and smell it.
due-look-smell-and-taste = Look at it, smell it and taste a drop.
