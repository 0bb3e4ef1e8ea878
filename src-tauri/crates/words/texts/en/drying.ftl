### The drying rack.
# Why a drying forecast says no more than it does.

lot-not-weighed-yet = It hasn't been weighed since it was picked, so its water content now is not known.
lot-cannot-say-yet = Too early to say. Until about 85 % of the water is gone, weights say little about when it will be dry.
lot-still-too-heavy = Still too heavy to be dry, so the estimate uses what was known before.
lot-time-too-uncertain = The time left is still uncertain. Weigh it again in a day.
lot-may-not-get-there = It may stop drying too soon in this room. Note the temperature and humidity, or finish it somewhere warm.
lot-room-too-damp = The air is too damp to dry it. Finish it somewhere warm, or move it.
lot-air-out-of-range = There are no figures for air like this, so it is not known how dry the herb can get.
lot-air-not-noted = No humidity was noted. In a damp room the weight can stop falling before the herb is dry.
lot-scale-too-coarse = The scale is too coarse for so little herb. Test it by hand, or use a finer scale.
lot-odd-weighing = One weight does not fit the others, so it was ignored. Check it.
lot-unlike-its-kind = It isn't drying the way this herb usually does. Was it wet or washed when you weighed it fresh?
lot-probably-dry = Its weight has stopped falling, so it is probably dry. Try the snap test.

# A tray in a list, and what is due of it.

tray-probably-dry = probably dry: try the snap test
tray-try-the-snap-test = Probably dry at { $stop }: try the snap test, and take it down if it breaks.

# Figures that are asked about before they are taken.

weighing-heavier-than-fresh = { $mass }? That is heavier than the fresh herb with its tray, { $fresh }. Check the scale.
weighing-off-its-course = { $mass }? The tray weighed { $before } { $days ->
    [0] earlier today
    [1] yesterday
   *[other] { $days } days ago
}. Check the scale.
weighing-too-light = { $mass }? The tray weighed { $fresh } fresh and should weigh more than this when dry. Check the scale.
home-seldom-picks-so-much = { $mass }? A home seldom picks so much of one plant. Check the scale and the unit.

# How far a tray is, in one line.

tray-dried-left = dried, { $mass } left
tray-lost = thrown away while it was drying
tray-dry = dry: take it down
tray-not-weighed-for = not weighed for more than { $days ->
    [one] 1 day
   *[other] { $days } days
}
tray-air-too-damp = the air is too damp to dry it
tray-scale-too-coarse = the scale is too coarse to tell
tray-not-weighed = not weighed yet
tray-too-early = too early to say
tray-weigh-now = weigh it now
tray-hours-at-most = up to { $high ->
    [one] 1 hour
   *[other] { $high } hours
} to go
tray-hours-about = about { $high ->
    [one] 1 hour
   *[other] { $high } hours
} to go
tray-hours-between = { $low } to { $high } hours to go
tray-days-at-most = up to { $high ->
    [one] 1 day
   *[other] { $high } days
} to go
tray-days-about = about { $high ->
    [one] 1 day
   *[other] { $high } days
} to go
tray-days-between = { $low } to { $high } days to go
# $says is one of the lines above.
tray-says = { CAPITAL($says) }.

# What the figures mean.

dried-to = Dry means dried to { $moisture } water.
wet-teaches-nothing = It was weighed wet, so its dry weight can't be used for the next batch.
wet-weighs-less = It was weighed wet, and the water counts as herb here. It will weigh less when dry than this says.
air-limit = At { $humidity } humidity and { $temperature }, herb in this room keeps about { $moisture } water.
air-limit-too-damp = At { $humidity } humidity and { $temperature }, herb in this room keeps about { $moisture } water. Finish it somewhere warm, or move it.
source-leaf-isotherm = Trugbook's own curve for leaf herbs, tied to lemon balm leaf (Argyropoulos et al. 2012)

# What cannot be done.

tray-thrown-away-on = This tray was thrown away on { $day }, while it was drying.
tray-down-already = This tray was already taken down on { $day }.

# How the hand tells that a part is dry.

feel-leaf = A dry leaf crumbles between finger and thumb, and its stalk snaps instead of bending.
feel-flower = The petals rustle like paper, and the thickest flower, torn open, is dry at its base.
feel-herb = The leaves crumble, and the thickest stem snaps instead of bending.
feel-root = The thickest piece snaps instead of bending. Broken open, it is hard and dry to the core.
feel-bark = The thickest strip snaps instead of bending, with no damp layer inside.
feel-fruit = The thickest fruit is hard all through. Pressed, it does not give; cut open, nothing in it is moist or sticks.
feel-seed = A seed is hard: a fingernail leaves no dent in it.
feel-mushroom = The thickest slice snaps instead of bending.
feel-other = The thickest piece snaps or crumbles instead of bending, and is dry to the core.
