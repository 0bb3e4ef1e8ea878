### Refusals of a request: what a field is called and what it may hold.

## What is typed or measured, inside a sentence.

what-acid = the acid
what-acidity = the acidity
what-acidity-of-the-juice = the acidity of the juice
what-acidity-of-the-wine = the acidity of the wine
what-amount-used = the amount used
what-area = the area
what-available = the amount in stock
what-binomial = the Latin name
what-drops-in-a-millilitre = the drops in a millilitre
what-dry-mass-of-the-sample = the weight of the sample after the oven
what-dry-matter = the dry matter
what-dry-matter-fraction-of-an-own-batch = the dry-matter share of your own batch
what-dry-weight = the dry weight
what-fixed-amount = the fixed amount
what-fresh-mass = the fresh weight
what-fresh-mass-of-the-sample = the weight of the sample before the oven
what-fresh-weight = the fresh weight
what-glycerol = the glycerin
what-herb = the herb
what-latitude = the latitude
what-liquid = the liquid
what-longitude = the longitude
what-maker = the maker
what-mass = the weight
what-mass-of-a-liquid = the weight of a liquid
what-mass-of-the-plant = the weight of the plant
what-mass-poured = the weight poured
what-mean-of-log-dry-matter = the mean of the logarithm of the dry-matter share
what-moisture = the moisture
what-moisture-on-dry-basis = the water for each gram of dry matter
what-name = the name
what-name-of-a-liquid = the name of a liquid
what-note = the note
what-number-of-bottles = the number of bottles
what-number-of-counts = the number of counts
what-oil = the oil
what-orientation = the orientation
what-part = the part
what-ph = the pH
what-place = the place
what-poison-line = the poison centre number
what-preparation = the preparation
what-price = the price
what-purity = the purity
what-ratio = the ratio
what-reason = the reason
what-relative-humidity = the relative humidity
what-scale-step = the scale step
what-shape = the shape
what-share-by-mass = the share by weight
what-share-lost-in-trimming = the share lost in trimming
what-shelf-life-at-20-c = the shelf life at 20 °C
what-size = the size
what-size-bought = the size bought
what-size-of-a-bottle = the size of a bottle
what-size-of-the-jar = the size of the jar
what-spread-between-batches = the spread between batches
what-spread-of-log-dry-matter = the spread of the logarithm of the dry-matter share
what-spread-of-own-means = the spread of own means
what-stage = the stage
what-stars = the stars
what-step-of-the-scale = the step of the scale
what-storage-temperature = the storage temperature
what-strength = the strength
what-strength-of-the-wine = the strength of the wine
what-strength-wanted = the strength wanted
what-sugar = the sugar
what-sugar-in-the-juice = the sugar in the juice
what-sugar-in-the-syrup = the sugar in the syrup
what-sugar-in-the-wine = the sugar in the wine
what-tare = the tare
what-target-moisture = the target moisture
what-temperature = the temperature
what-time-since-the-fresh-weighing = the time since the fresh weighing
what-volume = the volume
what-volume-of-a-liquid = the volume of a liquid
what-volume-poured = the volume poured
what-volume-to-pour = the volume to pour
what-volume-wanted-at-the-end = the volume wanted at the end
what-wanted-strength = the wanted strength
what-water = the water
what-water-in-the-honey = the water in the honey
what-weight = the weight
what-weight-of-a-plant = the weight of a plant
what-what-came-out = what came out
what-what-the-dropper-holds = the amount the dropper holds

## A number or a text that cannot be taken. $what is one of the names above.

refused-range = { CAPITAL($what) } must be { $range }. You entered { $given }.
range-between = between { $low } and { $high }
range-at-least = at least { $low }
range-above = more than 0 and at most { $high }
no-number = no number
refused-empty = Fill in { $what }.
refused-too-long = { CAPITAL($what) } can have at most { $longest } characters. You entered { $count }.

what-limit = the limit
what-year = the year

## Times and names that are typed.

time-spelling = Enter the date and time with its offset, such as “2026-07-14T09:30:00+02:00”. You entered “{ $text }”.
time-in-future = The time can't lie in the future. It is { $day }, { $time } now. You entered { $text }.
day-spelling = Enter the day as year, month and day, such as 2026-07-14. You entered “{ $text }”.
herb-unknown = There is no herb called “{ $name }”. Add it as your own first.

## What else is asked for, inside a sentence.

what-request = the request
what-this = this value
what-weight-on-the-scale = the weight on the scale
what-time = the time
what-day = the day
what-harvest = the harvest
what-tray = the tray
what-jar = the jar
what-bottle = the bottle
what-bed = the bed
what-supply = the supply
what-recipe = the recipe
what-dropper = the dropper
what-lot = the batch
what-kind = the kind
what-state = the state
what-purpose = the use
what-surface = the surface
what-outcome = the result
what-units = the units
what-currency = the currency
what-passphrase = the passphrase
what-file = the file
what-text = the text

## A request that does not read as it should.

request-missing = { CAPITAL($what) } is missing.
request-does-not-take = This does not take “{ $given }”.
request-cannot-be = { CAPITAL($what) } cannot be “{ $given }”.
request-may-be = { CAPITAL($what) } cannot be “{ $given }”. It may be { $choices }.
request-must-be = { CAPITAL($what) } must be { $kind }. You entered { $given }.
request-must-be-so = { CAPITAL($what) } must be { $kind }.
request-too-large = { CAPITAL($what) } is a number too large to work with.
request-no-json = The request is not JSON: { $why }.
request-too-long = The request must be JSON text of at most 2 MiB.
request-one-object = The request must be one JSON object and nothing after it.
command-unknown = There is no command called { $name }.
reply-unwritten = The answer could not be given: { $why }.
kind-number = a number
kind-whole-number = a whole number, 0 or more
kind-text = text
kind-yes-or-no = yes or no
kind-list = a list
kind-object = an object with named fields
kind-number-or-range = a number or a range
kind-other = of another kind
given-nothing = nothing
given-list = a list
given-object = an object

## Two of one name, and what is not there.

bed-called-so = There is already a bed called { $name }.
herb-called-so = There is already a herb called { $name }.
herb-not-own = Only herbs of your own can be edited.
lot-code-shape = A lot code is a word and a number, such as tavo-472.
lot-code-nowhere = Nothing in your records has the code { $code }.
bottle-code-nowhere = No bottle in your records has the code { $code }.
bottle-by-id-or-code = Name the bottle either by its id or by its lot code.
photo-nowhere = There is no such photo in your records.
job-gone = This job is no longer known. The app was restarted since.
restore-none-to-undo = There is no restore or merge to undo.

## What does not go, and why.

thrown-away-why = Say why you throw it away. A few words will do.
nothing-left-of-it = Nothing is left of it.
out-before-picked = Choose a time after it was picked, { $day }, { $time }.
out-before-taken-down = Choose a time after it was taken down, { $day }, { $time }.
tray-drying-not-used = This tray is still drying. First take it down, then say what you used it for.
tray-drying-whole = A tray that is still drying is thrown away whole. Leave the weight out.
tray-lost-before-weighed = Choose a time after it was loaded or last weighed, { $day }, { $time }.
tray-before-picked = Choose a time after the herb was picked, { $day }, { $time }.
tray-never-weighed = Weigh the tray. It has not been weighed since it was loaded.
tray-heavier-than-fresh = The weight with the tray can be at most { $most }, what it weighed fresh. You entered { $given }.
bottle-emptied-on = Bottle { $code } was emptied on { $day }.
bottle-thrown-away-on = Bottle { $code } was thrown away on { $day }.
bottle-given-on = Bottle { $code } was given away on { $day }.
bottle-past-its-date = Don't use bottle { $code }. Fresh herb in oil is past its date, and you can't see, smell or taste botulism. Throw it away.
bottle-found-bad = Don't use bottle { $code }: you marked it bad. Throw it away.
bottle-not-enough = Bottle { $code } has { $left } left, so you can't take { $wanted }. If it's empty, mark it as empty.
used-in-one-measure = Say how much was used in one measure: mL, spoons, droppers or drops.
used-more-than-nothing = Enter more than 0 for the amount used. You entered { $given }.
dropper-never-measured = What { $name } holds was never measured. Calibrate it again and enter how much it holds.
dropper-which = Choose the dropper. No two give the same drops, so calibrate yours first.
oil-only-the-date-counts = You can't see, smell or taste whether fresh herb in oil is safe. Go by the date only.
oil-past-its-date = Fresh herb in oil is past its date. You can't see, smell or taste botulism. Throw it away.
oil-not-bottled-after = Fresh herb in oil lasts until { $day } at most. You can't see, smell or taste botulism. Throw it away.
ph-which = Enter the pH you measured, between 0 and 14.
ph-not-kept-by-acid = You can enter a pH for vinegars, shrubs and oxymels only. Nothing else here is kept by acid.
bottle-size-range = A bottle can hold between 1 and 10000 mL. You entered { $given }.
bottle-count-range = Choose between 1 and { $most } bottles. You entered { $given }.
bottles-at-a-time = Fill between 1 and { $most } bottles at a time.
bottles-more-than-came-out = { $name } has { $left } left, so you can't fill { $wanted }. We allow 2 % for reading the jug.
jar-strain-first = { $name } is not strained yet. Strain it first.
jar-nothing-left = Nothing is left in { $name }.
jar-out-range = Enter more than 0 mL and at most the { $left } still in the jar. You entered { $given }.
jar-pours-missing = Say what you added.
jar-strained-before-poured = Choose a time after the jar was started, { $day }, { $time }.
jar-came-out-either = Say what came out, either in mL or in g.
plant-not-enough-left = { CAPITAL($herb) } { $code } has { $left } left, so you can't take { $wanted }.
plant-brought-water = { CAPITAL($plant) } brought { $water } of its weight as water, as counted when the jar was started.
supply-without-amounts = A supply has a size, and no amounts to be used.
currency-missing = Enter the currency too, such as EUR.
price-missing = Enter the price that goes with the currency.
mixture-weight-or-volume = Give either the weight in g or the volume in mL.
reach-dry-first = Dry the herb first. Crisp, at { $water } water, it works.
reach-higher-ratio = Add liquid. With { $times } times as much on the same herb, it works.
reach-stronger-spirit = Use stronger spirit. With { $strength } it works.
drying-herb-or-prior = Name the herb, or say what is expected of it.
drying-too-many-weights = Enter at most { $most } weights. You entered { $count }.
due-days-ahead = Look ahead at most { $most } days. You entered { $given }.
trace-last-before-first = Choose a last day after the first. You entered { $last }, before { $first }.
trace-first-and-last = Choose a first and a last day.
trace-one-start = Choose where to start: a bed, a harvest, a supply, a jar or picking dates.
import-line-wrong = Nothing was imported. Line { $line }: { $why }
import-cell-wrong = Nothing was imported. Line { $line }, column { $column }: { $why }
import-all-known = Nothing was imported. You already have every line of this table.
upload-name = The upload is named by 1 to 64 letters, digits or hyphens.
upload-name-length = The upload is named by 1 to 64 characters.
upload-piece-of-file = A piece of a file may be at most 1 MiB long.
upload-piece-of-photo = A piece of a photo may be at most 1 MiB long.
upload-no-base64 = This piece is not base64 text.
upload-without-beginning = The beginning of this file has not arrived.
folder-unusable = The folder { $folder } cannot be used: { $why }.
demo-folder-unusable = The folder of the demo season cannot be used: { $why }.
demo-not-set-up = The demo could not be set up. { $why }
demo-open-already = The demo season is open already.
demo-not-open = The demo season is not open, so there is nothing to remove.
demo-not-mixed = This is the demo season. It is never mixed with your own records. Remove it first; yours are as you left them.

## Names and lines.

jar-name-one = { CAPITAL($herb) } { $family }
jar-name-two = { CAPITAL($one) } and { $two } { $family }
jar-name-more = { CAPITAL($one) } and { $more } more { $family }
family-tincture = tincture
family-glycerite = glycerite
family-cordial = cordial
family-elixir = elixir
family-syrup = syrup
family-decoction = decoction
family-bitters = bitters
family-wine = wine
family-vinegar = vinegar
family-shrub = shrub
family-spiced-vinegar = spiced vinegar
family-oxymel = oxymel
family-oil = oil
lot-with-plant = { CAPITAL($plant) } ({ $code })
given-to = given to { $to }

what-usual-water = the usual water in the plant
what-least-water = the least water in the plant
what-most-water = the most water in the plant
what-own-caution = the warning
what-own-look-alikes = the note on look-alikes
