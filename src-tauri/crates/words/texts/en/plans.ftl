### Planning from bottles back to plants.

plan-marc-keeps-all = At this ratio the marc would hold back all of the liquid. Choose a preparation with more liquid per gram.
plan-herb-out-of-range = These bottles need { $herb } of herb. One jar takes between 0.1 g and 100 kg, so plan other bottles.
plan-too-much-liquid = These bottles come to { $liquid }. One jar takes up to 1000 L or 1000 kg of each liquid, so plan fewer or smaller bottles.
fresh-to-dry = From fresh to dry: { $basis }.
trim-loss = A tenth is added for what you lose in trimming.
retention-own = What the marc holds back comes from your own jars.
retention-published = The marc holds back as much as pressing or wringing by hand leaves in it.
retention-assumed = We found no figure for what this marc holds back. The one for tinctures of dried root is used until you have your own.
drying-time-flowers = Flowers dry in two to three weeks.
drying-time-roots = Roots dry in three to six weeks in a room.
drying-time-leaves = Leaf and herb dry in six to fifteen days in the shade.
more-than-a-year = That is more than the { $yearly } you use in a year. Make less, or say that they are gifts.

plans-more-than-a-year = You planned { $planned } of { $herb }, more than the { $yearly } you use in a year. Make less, or say that some are gifts.
