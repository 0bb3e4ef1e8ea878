### Labels, the season, the chain and the calendar. { -strong }, { -latin } and { -soft } change the type until { -end }.

-strong = {"\uFDD2"}
-latin = {"\uFDD3"}
-soft = {"\uFDD4"}
-end = {"\uFDD5"}

alone = { $what }
plant-part = { $herb } { $part }

# A label.

labels-title = Labels
label-title = Label: { $name }, lot { $lot }
label-lot = { -soft }Lot{ -end } { -strong }{ $lot }{ -end }
label-plant = { CAPITAL($herb) }, { $state } { $part }
label-plant-latin = { CAPITAL($herb) } { -latin }{ $latin }{ -end }, { $state } { $part }
label-liquid = In { $liquid }
label-liquid-poured-on = In { $liquid }, 1 g to { $ml } poured on
label-liquid-made-up = In { $liquid }, 1 g to { $ml } made up to
label-poured-on = 1 g to { $ml } poured on
label-made-up = 1 g to { $ml } made up to
label-poured-at = Poured at { -strong }{ $strengths }{ -end }
label-in-the-bottle = In the bottle { -strong }{ $strengths }{ -end }
strength-glycerin = glycerin { $figure } by weight
strength-acid = acidity { $figure }
strength-sugar = sugar { $figure } by weight
# An underscore stands between what was done on one day.
label-days = { $order ->
    [made] Made { $made }
    [strained] Strained { $strained }
    [bottled] Bottled { $bottled }
    [made-strained] Made { $made }, strained { $strained }
    [made-bottled] Made { $made }, bottled { $bottled }
    [strained-bottled] Strained { $strained }, bottled { $bottled }
    [made_strained] Made and strained { $made }
    [made_bottled] Made and bottled { $made }
    [strained_bottled] Strained and bottled { $strained }
    [made_strained-bottled] Made and strained { $made }, bottled { $bottled }
    [made-strained_bottled] Made { $made }, strained and bottled { $strained }
    [made_strained_bottled] Made, strained and bottled { $made }
   *[made-strained-bottled] Made { $made }, strained { $strained }, bottled { $bottled }
}
label-due-on = Due { -strong }{ $day }{ -end }
label-due-between = Due { -strong }{ $from } – { $to }{ -end }
label-best-before = Best before { -strong }{ $day }{ -end }
label-origins = { -soft }From { $origins }{ -end }
origin-harvest = harvest { $code }
origin-marc = the marc of { $code }
label-contents = Contents: { $ml }
label-ingredients = { -soft }Ingredients:{ -end } { $ingredients }
label-allergens = { -soft }Allergens:{ -end } { -strong }{ $allergens }{ -end }
label-ethanol = Alcohol in the whole bottle: { $mass }
label-maker = { -soft }Maker: { $maker }{ -end }
label-use-inside = For internal use.
label-use-food = For food use.
label-use-outside = EXTERNAL USE ONLY. Never swallow it.
label-alcohol = Contains alcohol, { $strength }: keep away from children and flame.
label-ways = { -soft }Try it:{ -end } { $ways }
label-poison-centre = Poison centre { -strong }{ $number }{ -end }
allergen-almond = almond
allergen-sesame = sesame
allergen-wine = sulphites of wine
keep-until-its-date = Keep it in the fridge, no longer than its date.
keep-for-days = Keep it in the fridge and use it within days.

# What a label had no room for, or does not know.

item-code = the code for the phone
item-plants = the plants
item-liquid = the liquid
item-begun = the days it was started and is due
item-dates = the best-before date
item-origins = the harvest and the bed
item-contents = the contents and ingredients
item-ethanol = the alcohol in the whole bottle
item-ways = the ways to use it
item-note = the note
item-maker = who made it
item-use = the use
item-keeping = how to keep it
item-alcohol = the alcohol
item-cautions = the cautions
item-poison-centre = the poison centre
label-size = { $width } × { $height } mm
label-has-no-room = A label of { $size } has no room for { $what } of { $lot }. Choose a larger one.
label-should-also-say = The label of { $lot } should also say { $what }. Add that first.
label-lacks-letters = The label of { $lot } leaves out letters that its font does not have: { $letters }.
paper-lacks-letters = These letters are left out because the font does not have them: { $letters }.
photos-left-out = { $count ->
    [one] 1 photo was left out, for with it the file would be too large to send.
   *[other] { $count } photos were left out, for with them the file would be too large to send.
}

# What a picture on paper shows, for whoever hears the page read out.

paper-drawing = Drawing: { $herb }
paper-photo = Photo: { $what }
paper-lot-code = Code for the phone: lot { $lot }
paper-recipe-code = Code for the phone: this recipe

# What cannot be drawn.

bottle-or-jar = Choose either a bottle or a jar.
label-one-at-a-time = Paper of the label's own size takes one label at a time.
label-jar-is-no-gift = You can't give away a jar that still steeps. Bottle it and label the bottles.
label-not-for = { $name } may be labelled for { $allowed } only. You chose { $asked }.
use-inside = internal use
use-outside = external use
use-food = food use
label-needs-a-name = A label needs the name of what is in it.
label-needs-a-lot = A label needs the lot code, so that it leads back to the bed.
label-needs-height = The label of { $name } does not fit on { $size }. At this width it needs a height of { $height }.
label-needs-width = The label of { $name } does not fit on { $width }. Choose a wider one.
label-width = A label can be 25 to 200 mm wide. You entered { $width }.
label-height = A label can be 15 to 280 mm tall. You entered { $height }.
sheet-gutter = The space between labels can be 0 to 50 mm.
sheet-margin = The margin of a sheet can be 0 to 100 mm.
sheet-too-small = A label of { $size } does not fit on { $paper } within its margins.
sheet-places = This sheet has { $places } labels. Skip 0 to { $most } of them.
sheet-empty = Choose at least one jar or bottle to label.
paper-letter = US Letter

# The season.

season-empty = Nothing was picked or started in { $year }, so there is nothing to print.
season-title = The season of { $year }
season-counts = { $harvests ->
    [one] 1 harvest
   *[other] { $harvests } harvests
}, { $jars ->
    [one] 1 jar
   *[other] { $jars } jars
}
season-month = { $month ->
    [1] January
    [2] February
    [3] March
    [4] April
    [5] May
    [6] June
    [7] July
    [8] August
    [9] September
    [10] October
    [11] November
   *[12] December
}
season-latin-part = { -latin }{ $latin }{ -end }, { $part }
season-part-stage = { $part }, { $stage }
season-latin-part-stage = { -latin }{ $latin }{ -end }, { $part }, { $stage }
season-day-bed = { $day }, { $bed }
season-fresh = { -strong }{ $fresh }{ -end } fresh
season-fresh-dry = { -strong }{ $fresh }{ -end } fresh, { -strong }{ $dry }{ -end } dry
season-what-beds-gave = What the beds gave
season-what-was-made = What was made
season-herb = Herb
season-part = Part
season-bed = Bed
season-harvests = Harvests
season-fresh-mass = Fresh
season-dry-mass = Dry
season-poured = { -strong }{ $lot }{ -end }{ -soft }, started { $day }{ -end }
season-plant = { CAPITAL($herb) }, { $state } { $part }: { $mass }.
season-strained = Strained { $day }: { $ml }.
season-filled = Filled: { $count ->
    [one] 1 bottle
   *[other] { $count } bottles
}, { $ml }.
season-failed = Failed: { $why }.
season-jar-on-day = { -soft }Day { $number }, { $day }{ -end }
season-bottle-on-day = { -soft }Bottle { $code }, { $day }{ -end }

# The chain.

chain-back-from-bottle = Where this bottle came from
chain-back-from-jar = Where this jar came from
chain-forward-from-bed = Who has bottles from this bed
chain-forward-from-supply = Who has bottles made with this supply
chain-forward-from-jar = Who has bottles from this jar
chain-forward-from-harvest = Who has bottles from this harvest
chain-forward-from-days = Who has bottles from these picking dates
chain-title-lot = { $title }, { $lot }
chain-asked = { $asked }. Printed { $day }.
chain-asked-lot = { -strong }{ $lot }{ -end }. { $asked }. Printed { $day }.
chain-step-code = { $heading } { -strong }{ $code }{ -end }
chain-step-day = { $heading }{ -soft }, { $day }{ -end }
chain-step-code-day = { $heading } { -strong }{ $code }{ -end }{ -soft }, { $day }{ -end }
chain-days = { $from } – { $to }
chain-wild-place = A wild place
chain-bottle = Bottle
chain-strained = Strained
chain-jar = Jar: { $name }
chain-rack = Rack: { $name }
chain-given-to = Given to { $to }
chain-given-to-on = Given to { $to } on { $day }.
chain-none-given = No bottle of it was given away.
chain-holds = Contents: { $ml }.
chain-best-before = Best before { $day }.
chain-came-out = { $ml } came out.
chain-preparation = { CAPITAL($preparation) }.
chain-pour = { $name } { $ml }
chain-poured = Poured: { $pours }.
chain-went-in = { $mass } of it went into the jar.
chain-weighing = { $mass } on { $day }
chain-scale = On the scale: { $weighings }.
chain-taken-down = Taken down { $day }.
chain-no-harvest = It comes from none of your harvests.
chain-bed = Bed: { $bed }.
chain-plant = { CAPITAL($herb) }, { $state } { $part }
chain-harvest = { CAPITAL($herb) }, { $part }
chain-failed = It failed.
chain-fresh = { $mass } fresh.
chain-thrown-away = { $mass } thrown away.
chain-lost = { $mass } (fresh weight), thrown away while it was drying.
chain-bottle-finished = Bottle { $code }: empty.
chain-bottle-thrown-away = Bottle { $code }: thrown away.
chain-bottle-given = Bottle { $code }: given away.
chain-bottle-left = Bottle { $code }: { $ml } left.
chain-bottle-left-at = Bottle { $code }: { $ml } left, { $place }.

# The calendar.

calendar-empty = Nothing is due within { $days ->
    [one] a day
   *[other] { $days } days
}, so there is nothing to put into a calendar.
calendar-throw-away = Throw away: { $what }
calendar-use-up = Use up: { $what }
calendar-take-down = Take down: { $what }
calendar-see-to = Needs attention: { $what }
calendar-strain = Strain: { $what }
calendar-check = Check: { $what }
calendar-weigh = Weigh: { $what }
calendar-shake = Shake: { $what }

# What a line of what is due is about.

due-herb = { CAPITAL($herb) } ({ $code })
due-tray = { CAPITAL($herb) }, { $tray }
due-named = { $name } ({ $code })
due-rest = { $jar }, the { $ml } left in the jar

# A recipe's card.

card-none = Choose how many people the cards are for.
card-side = { $name }, side { $side } of { $of }
card-method = Steps
card-keeping = How to keep it
card-ways = Ways to use it
card-beware = Take care
card-good-to-know = Good to know
card-scan = Scan this with Trugbook to get the recipe.
card-takes = Steeps
card-days = { $from } to { $to } days
card-day-count = { $days ->
    [0] not at all
    [one] 1 day
   *[other] { $days } days
}
card-makes = Gives about
card-alcohol = In the liquid
card-keeps = Keeps
card-keeps-days = { $from } to { $to } days
card-keeps-months = { $from } to { $to } months
card-keeps-months-even = about { $months ->
    [one] 1 month
   *[other] { $months } months
}
card-step = { -strong }{ $title }.{ -end } { $text }
card-plant = { $herb }, { $state }
card-stop = { -strong }Stop.{ -end } { $text }
card-no-dose = This card gives no dose. Ask a pharmacist or doctor first if you are pregnant, nursing, ill or on medicines.
code-too-long = This code is too long for a recipe.
code-holds-no-recipe = This code holds no recipe.
code-damaged = Part of this code is missing or wrong. Scan it again, or ask for it once more.
code-of-a-later-version = A newer version of Trugbook made this code. Update Trugbook, then scan it again.
recipe-or-jar = Choose either a recipe or a jar.
card-second-pouring = A second pouring has no recipe of its own. Share the recipe of the first jar.
card-must-not-be-made = This should not be made, so there is no card of it.
card-own-herb = The card has no code, because a herb that you added yourself is in no other book.
card-too-much-for-a-code = This recipe is too long for a code, so the card has none.
card-note-left-out = Your note is not in the code. It has room for { $most } characters at most.
code-too-much = This code holds more than { $most } herbs or liquids. No jar takes so many.
code-hidden-letters = This code holds letters that do not show. It was not saved.
code-preparation-unknown = Trugbook does not know the preparation in this code. Update Trugbook, then scan it again.
code-herb-unknown = This code names { $name }, a herb that Trugbook does not know.
code-part-unknown = This code names a part of { $herb } that Trugbook does not know.
code-must-not-be-made = This should not be made, so the recipe was not saved.
code-is-kept-already = This recipe is already in your records.

# A class.

class-people = A class can have 1 to { $most } people.
class-jar = The jars can hold { $least } to { $most }.
class-jar-too-small = So little of a herb can't be weighed. Choose larger jars.
class-must-not-be-made = This should not be made, so there is no class of it.
class-name = Name: ______________________
class-poured = Poured on: ________________
class-strain = Strain it after { $from } to { $to } days.
class-number = { $number } of { $of }
item-by-hand = the lines for the name and the day
