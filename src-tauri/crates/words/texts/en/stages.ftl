### When a herb is picked, in the words of its page.

stage-after-it-has-flowered = after it has flowered
stage-as-it-turns-from-green-to = as it turns from green to grey, umbel by umbel
stage-as-they-open = as they open
stage-at-any-time = at any time
stage-at-the-end-of-growth = at the end of growth
stage-at-the-end-of-growth-and = at the end of growth and after
stage-at-the-start-of-flowering = at the start of flowering
stage-autumn = autumn
stage-autumn-or-spring-before-it-grows = autumn, or spring before it grows
stage-autumn-third-year-and-later = autumn, third year and later (often protected)
stage-before-and-as-it-flowers = before and as it flowers
stage-before-it-flowers = before it flowers
stage-before-it-flowers-and-again-in = before it flowers, and again in autumn
stage-before-it-flowers-second-cut-in = before it flowers; second cut in September
stage-before-or-as-it-flowers = before or as it flowers
stage-before-the-head-is-fully-open = before the head is fully open
stage-before-the-tops-die-back-grown = before the tops die back; grown plants only
stage-before-they-open = before they open
stage-best-in-autumn = best in autumn
stage-clean-full-leaf = clean full leaf
stage-dug-only-in-the-second-or = dug only in the second or third year
stage-early-flower = early flower
stage-early-spring-or-autumn = early spring or autumn (for the skin only)
stage-flowering-shoots = flowering shoots
stage-fresh-and-pink = fresh and pink
stage-fruits-as-they-ripen = fruits as they ripen
stage-fully-open = fully open
stage-fully-open-day-by-day = fully open, day by day
stage-fully-open-dry = fully open, dry
stage-fully-ripe-black-purple-whole-clusters = fully ripe, black-purple; whole clusters
stage-in-flower = in flower
stage-in-flower-or-first-fruit = in flower or first fruit
stage-in-flower-second-or-third-year = in flower, second or third year
stage-in-summer = in summer
stage-in-summer-green-and-clean = in summer, green and clean
stage-just-open = just open
stage-late-autumn = late autumn
stage-late-summer = late summer
stage-leaf-and-tips-before-it-flowers = leaf and tips before it flowers
stage-leaves-half-yellow-then-cured = leaves half yellow, then cured
stage-milk-stage-a-squeezed-grain-gives = milk stage: a squeezed grain gives a white drop
stage-mostly-from-plants-in-flower = mostly from plants in flower
stage-of-plants-two-or-three-years = of plants two or three years old
stage-open-hollow-inside = open, hollow inside
stage-ripe = ripe
stage-ripe-after-20-august-in-the = ripe, after 20 August in the north
stage-ripe-blue-black-third-year = ripe, blue-black, third year
stage-ripe-not-overripe = ripe, not overripe
stage-ripe-they-fall-when-shaken = ripe; they fall when shaken
stage-second-or-third-year = second or third year
stage-shortly-before-or-while-it-flowers = shortly before or while it flowers
stage-spring-before-it-grows = spring, before it grows
stage-spring-before-seed = spring, before seed
stage-spring-or-late-summer = spring or late summer
stage-spring-sap-rising = spring, sap rising
stage-spring-soft-tips = spring, soft tips
stage-start-of-flowering = start of flowering
stage-start-of-flowering-flower-clusters-with = start of flowering, flower clusters with 3 or 4 leaves
stage-start-of-ripening-before-the-cones = start of ripening, before the cones turn yellow
stage-well-formed = well formed
stage-when-it-peels-easily-from-the = when it peels easily from the wood
stage-when-the-heads-fluff = when the heads fluff
stage-when-the-leaves-have-gone-down = when the leaves have gone down
stage-when-the-plant-begins-to-flower = when the plant begins to flower
stage-when-the-plant-rests-autumn-or = when the plant rests: autumn or spring
stage-while-it-flowers = while it flowers
stage-while-the-top-is-down = while the top is down
stage-while-the-top-is-down-autumn = while the top is down, autumn to spring
stage-young = young
stage-young-but-open-strongly-scented-ones = young but open; strongly scented ones as the buds burst
stage-young-from-clean-running-water-only = young, from clean running water only
stage-young-leaf-and-tips = young leaf and tips
stage-young-not-yet-full-grown = young, not yet full grown
stage-young-well-formed = young, well formed
month = { $number ->
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
months = { $from } to { $to }
harvest-when = { $stage }, { $months } (northern half of the world)
harvest-of-part = { $part }: { $when }
