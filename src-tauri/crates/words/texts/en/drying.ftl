### The drying rack.
# Why a drying forecast says no more than it does.

lot-not-weighed-yet = It was not weighed since it was picked, so its moisture now is not known.
lot-cannot-say-yet = Too early to say. Until about 85 % of the water is gone, weigh-ins tell little of the end.
lot-still-too-heavy = It is still heavier than it could be dry. So the estimate rests on what was known before.
lot-time-too-uncertain = The time left cannot be told closely yet. Another weigh-in in a day will help.
lot-may-not-get-there = In this air it may stop before it is dry enough. Note the temperature and humidity, or finish it warm.
lot-room-too-damp = The air is too damp to dry it to its target. Finish it warm, or move it.
lot-air-out-of-range = In such air it is not known how dry the herb can become.
lot-air-not-noted = The air was not noted. In a damp room the weight can keep still before the herb is dry.
lot-scale-too-coarse = The scale is too coarse for so little herb. Judge by snap and feel, or use a finer scale.
lot-odd-weighing = A weigh-in does not fit the others and was left out. Look at it again.
lot-unlike-its-kind = It does not dry like its kind. Was it wet or washed when it was weighed fresh?
lot-probably-dry = It keeps still at its stop weight, so it is probably dry. Try the snap test.

# A tray in a list, and what is due of it.

tray-probably-dry = probably dry: try the snap test
tray-try-the-snap-test = Probably dry at { $stop }: try the snap test, and take it down if it breaks.

# Figures that are asked about before they are taken.

weighing-heavier-than-fresh = { $mass }? That is heavier than the fresh herb with its tray, { $fresh }. Look at the scale again.
weighing-off-its-course = { $mass }? The tray weighed { $before } { $days ->
    [0] earlier today
    [1] yesterday
   *[other] { $days } days ago
}. Look at the scale again.
weighing-too-light = { $mass }? The tray weighed { $fresh } fresh, and dry it should weigh more. Look at the scale again.
home-seldom-picks-so-much = { $mass }? A home seldom picks so much of one plant. Look at the scale and the unit again.
