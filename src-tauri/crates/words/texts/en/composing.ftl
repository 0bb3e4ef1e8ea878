### Composing a jar: what is poured, why, what is refused and what would help.

## Liquids.

spirit-of = spirit of { $strength }
glycerin-of = glycerin of { $purity }
vinegar-of = vinegar of { $acidity }
wine-of = wine of { $strength }
syrup-of = syrup of { $sugar } sugar
honey-of = honey of { $water } water
juice-of = juice of { $sugar } sugar
oil-olive = olive oil
oil-sunflower = sunflower oil
oil-high-oleic-sunflower = high-oleic sunflower oil
oil-sweet-almond = sweet almond oil
oil-sesame = sesame oil
oil-fractionated-coconut = fractionated coconut oil
oil-jojoba = jojoba oil
oil-grapeseed = grapeseed oil
oil-apricot-kernel = apricot kernel oil

## The water that a plant brings, and why that much.

water-of-plant = { CAPITAL($plant) }: { $water } of its weight is water ({ $basis }).
water-told = measured or estimated for this herb
water-dried-assumed = not measured, so we assume 10 % water
herb-with-part = { $herb } { $part }
water-published = published water content of { $plant }, { $tables ->
    [one] one table
   *[other] { $tables } tables
}
water-dry-down = published drying ratio of { $plant }, { $tables ->
    [one] one table
   *[other] { $tables } tables
}
water-and-dry-down = published water content and drying ratio of { $plant }, { $tables ->
    [one] one table
   *[other] { $tables } tables
}
water-from-memory = growers' drying ratio of { $plant }, not checked against a source
water-by-weigh-ins = its own weights
water-by-oven-sample = its oven sample
water-by-sample-of = an oven sample, { $dry } left of { $fresh }
water-by-own-batches = { $batches ->
    [one] one finished batch
   *[other] { $batches } finished batches
} of your own, together with: { $table }
water-basis = { CAPITAL($basis) }.
water-general = we found no figure for { $plant }, so the general one for { $kind } is used
general-leaf = leaves
general-flower = flowers
general-herb = herbs
general-root = roots
general-bark = bark
general-any = any plant

## Why the figures are what they are.

ratio-usual = The usual ratio is 1 g to { $ratio } mL.
glycerin-usual = The usual share is { $parts } parts of glycerin in 100 parts poured.
ratio-by-practice = This is the usual ratio: common practice, without a source.
glycerin-by-practice = This is the usual share of what is poured: common practice, without a source.
fortify-by-practice = The alcohol is there to hold back mould: common practice, without a source.
strongest-spirit = Use the strongest spirit you have, undiluted.
strength-between-herbs = { $strength } lies between what the herbs need, going by their dry weight.
strength-general = 45 % vol is the usual middle. We found no figure for this herb.
strength-held = { $why } It stays at { $strength }, within the range for this preparation.
strength-raised = Raised to { $strength } so it keeps even if the herb is very damp.
spirit-let-down = Your spirit is diluted with water to the { $strength } of the recipe.
liquid-assumed = Worked out with { $liquid }, because you have none in your supplies.
jar-room-assumed = This assumes that 1 g of dry herb takes up 0.8 to 1 mL. A tenth of the jar stays empty.
tested-with-only = This was tested with { $herbs } only, not with { $other }.

## What was missed.

target-strength = strength
target-glycerol = glycerin by weight
target-sugar = sugar by weight
target-acidity = acidity
target-volume = volume at the end
target-poured = volume poured
target-glycerin-poured = share of glycerin
target-fortified = alcohol for keeping
target-on-the-shelf = { $kind } in your supplies
short-of = Not enough { $target }: { $wanted } wanted, { $got } possible.

## What would help; what follows is one of the sentences below.

help-dry-first = Dry the herb first, until it is crisp. { $then }
help-sample = Dry a 10 to 20 g sample until its weight stops changing. If it contains the likeliest amount of water, this follows. { $then }
help-sample-driest = Dry a 10 to 20 g sample until its weight stops changing. If it contains as little water as such herb can, this follows. { $then }
help-crisp = Dry the herb until it is crisp, then weigh it. At 10 % water it keeps.
help-pour-more = Add more liquid, 1 g to { $ratio } mL. { $then }
help-stronger-spirit = Use stronger spirit of { $strength }. { $then }
help-usual-strength = Aim for the usual strength. { $then }
help-glycerin-alone = Pour glycerin only, without water. { $then }
then-ends = It then ends at { $strength } and { $keeps }.
then-ends-glycerin = It then ends at { $glycerin } glycerin by weight and { $keeps }.
then-keeps = It then { $keeps }.
ends-and-keeps = keeps
ends-and-keeps-cold = keeps cold
ends-and-is-for-now = is for use now
ends-and-is-not-made = must not be made

## What is refused.

what-strength-in-jar = the strength in the jar
what-glycerin-share = the share of glycerin in what is poured
what-alcohol-for-keeping = the alcohol for keeping
preparation-unknown = There is no preparation { $asked } here. Choose one of these: { $known }.
oil-unknown = There is no oil { $asked } here. Choose one of these: { $known }.
takes-no-strength = { CAPITAL($preparation) } is not made to a strength. Leave it out.
takes-no-glycerin = { CAPITAL($preparation) } is not made to a share of glycerin. Leave it out.
takes-no-fortify = { CAPITAL($preparation) } is not made with alcohol for keeping. Leave it out.
takes-no-herb = { CAPITAL($preparation) } is mixed from liquids only. Leave the herb out and enter the size of the jar.
takes-no-fresh-herb = { CAPITAL($preparation) } is not made from fresh herb.
takes-no-dried-herb = { CAPITAL($preparation) } is not made from dried herb.
takes-no-cooked-herb = { CAPITAL($preparation) } is not made from cooked herb.
herb-missing = Choose at least one herb and enter its weight.
herb-water-out-of-range = Enter between 0 and 99 % water, the low figure below the high one.
jar-size-missing = Enter the jar size, between 1 and 1 000 000 mL: with no herb, it sets how much to mix.
jar-too-small = A jar of { $jar } is too small. It holds { $herb } of herb at this ratio.
vinegar-too-weak = To keep plants safe, vinegar must have 5 to 30 g of acid per 100 mL. You entered { $acidity }.

## A ratio of herb to liquid.

ratio-one-to = 1:{ $liquid }
ratio-one-to-between = 1:{ $low } to 1:{ $high }
ratio-of-herb = { $herb }:1

strength-of-own-herb = You entered this strength for the herb.
