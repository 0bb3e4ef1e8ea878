### The line of a deed, and what cannot be undone.

row-bed = bed “{ $name }”
row-harvest = harvest { $code }
row-tray = tray “{ $name }” ({ $code })
row-named = “{ $name }”
row-jar = jar “{ $name }” ({ $code })
row-bottle = bottle { $code }
row-recipe = recipe “{ $name }”
row-dropper = dropper “{ $name }”
row-weight = the weight of { $mass } of { $of }
row-used = what was used of { $of }
row-thrown-away = what was thrown away of { $of }
row-straining = the straining of { $volume } from { $of }
row-use = the use of { $volume } from { $of }
row-check = a check of { $of }
row-shake = a shake of { $of }
row-portrait = a photo of { $of }
row-plan = the plan for { $count ->
    [one] { $count } bottle
   *[other] { $count } bottles
} of { $herb }
row-other = an entry
row-later-correction = a later edit of it
rows-and-more = { $one }, { $two } and { $more } more
not-there-herb = This herb is not in your records.
not-there-bed = This bed is not in your records.
not-there-harvest = This harvest is not in your records.
not-there-photo = This photo is not in your records.
not-there-tray = This tray is not in your records.
not-there-weighing = This weight is not in your records.
not-there-supply = This supply is not in your records.
not-there-jar = This jar is not in your records.
not-there-discard = This entry is not in your records.
not-there-setting = This setting is not in your records.
not-there-shake = This shake is not in your records.
not-there-straining = This straining is not in your records.
not-there-bottle = This bottle is not in your records.
not-there-use = This use is not in your records.
not-there-check = This check is not in your records.
not-there-recipe = This recipe is not in your records.
not-there-dropper = This dropper is not in your records.
not-there-plan = This plan is not in your records.
not-there-portrait = This photo is not in your records.
needs-another = { CAPITAL($name) } belongs to something that is not in your records.
name-and-why = { CAPITAL($name) }: { $why }
miscounted = What is left of { $name } was miscounted.
gave-too-much = { CAPITAL($name) } gave { $amount } more than it had.
file-damaged = The file is damaged: { $detail }.
delete-rested = This cannot be deleted while { $names } { $count ->
    [one] rests
   *[other] rest
} on it.
undo-rested = “{ $deed }” cannot be undone while { $names } { $count ->
    [one] rests
   *[other] rest
} on it. Undo that first.
undo-overdrawn = “{ $deed }” cannot be undone: { $name } would hold { $has }, but { $names } took { $taken } from it. Undo that first.
given-already = { CAPITAL($name) } already gave { $taken }, so it can't have been { $has }.
not-strained-yet = { CAPITAL($name) } is not strained yet. Strain it before you bottle it.
thrown-away-while-drying = { CAPITAL($name) } was thrown away while it was drying. Nothing can be taken from it.
still-drying = { CAPITAL($name) } is still drying. Take it down before you use its herb.
not-enough-left = { CAPITAL($name) } has { $left } left, so you can't take { $wanted }.
nothing-to-undo = There is nothing here to undo.
undone-already = “{ $deed }” is already undone.
nothing-changed = Nothing was changed.
stopped = This was stopped. Nothing was changed.
newer-file = A newer version of Trugbook made this book. Update Trugbook to open it.
not-a-book = This file is not a Trugbook book.
book-damaged = Your book is damaged and was left as it is: { $detail }.
storage-full = This device is full, so nothing was saved. Free some space and try again.
storage-busy = Another program is using your book. Try again in a moment.
storage-failed = Your book could not be read or saved: { $detail }.
deed-undone = Undid: { $what }
deed-redone = Redid: { $what }
deed-rescued = { $count ->
    [one] Saved one entry of a damaged book as it stood
   *[other] Saved { $count } entries of a damaged book as they stood
}

## What was done, a line of the book.

deed-bed-added = Added the bed { $name }
deed-bed-edited = Edited the bed { $name }
deed-herb-added = Added the herb { $name }
deed-herb-edited = Edited the herb { $name }
deed-supply-added = Added { $name } to the supplies
deed-supply-edited = Edited { $name } in the supplies
deed-settings-changed = Changed the settings
deed-demo-begun = Started the demo season
deed-demo-book-begun = Started a book of examples
deed-photo-kept = Saved the photo { $name }
deed-photo-looked-at = Looked at the photo { $name }
deed-portrait-taken = { $count ->
    [one] Added a photo to { $of }
   *[other] Added { $count } photos to { $of }
}
deed-portrait-shown = Showed a photo in place of the drawing of { $of }
deed-drawing-shown = Showed the drawing of { $of } again
deed-portrait-removed = Removed a photo from { $of }
photo-without-a-name = without a name
deed-harvest-recorded = Recorded { $mass } of { $plant } ({ $code })
deed-harvest-edited = Edited { $mass } of { $plant } ({ $code })
deed-harvest-used = Used { $mass } of { $herb } ({ $code })
deed-harvest-thrown-away = Threw away { $mass } of { $herb } ({ $code })
deed-tray-used = Used { $mass } of dried { $herb } ({ $code })
deed-tray-thrown-away = Threw away { $mass } of dried { $herb } ({ $code })
deed-tray-lost = Threw away { $herb } ({ $code }) while it was drying, { $mass } (fresh weight)
deed-tray-started = Put { $mass } of { $herb } on the rack ({ $code })
deed-tray-weighed = Weighed { $name } ({ $code }): { $mass }
deed-tray-taken-down = Took down { $name } ({ $code }), { $mass } dried
deed-tray-sampled = Saved an oven sample of { $name } ({ $code })
deed-weight-edited = Edited a weight of { $name } ({ $code })
deed-weight-deleted = Deleted a weight of { $name } ({ $code })
deed-lot-edited = Edited { $name } ({ $code })
deed-jar-poured = Started { $name } ({ $code }), { $volume }
deed-jar-shaken = Shook { $name } ({ $code })
deed-jar-topped-up = Topped up { $name } ({ $code }) with { $volume }
deed-jar-strained = Strained { $volume } from { $name } ({ $code })
deed-jar-strained-ph = Strained { $volume } from { $name } ({ $code }), pH { $ph }
deed-jar-failed = Marked { $name } ({ $code }) as failed
deed-liquid-used = Used { $volume } of { $name } ({ $code })
deed-liquid-thrown-away = Threw away { $volume } of { $name } ({ $code })
deed-recipe-saved = Saved the recipe { $name }
deed-recipe-taken-in = Saved the recipe { $name } from a card
deed-recipe-edited = Edited the recipe { $name }
deed-plan-saved = Planned { $count ->
    [one] one bottle
   *[other] { $count } bottles
} of { $herb }
deed-plan-deleted = Deleted the plan for { $herb }
deed-bottles-filled = Filled { $count ->
    [one] one bottle
   *[other] { $count } bottles
} from { $name } ({ $code })
deed-bottle-checked = Checked { $name } ({ $code }): { $outcome }
deed-bottle-checked-ph = Checked { $name } ({ $code }): { $outcome }, pH { $ph }
outcome-good = good
outcome-doubtful = doubtful
outcome-bad = bad
deed-bottle-given = Gave away { $name } ({ $code })
deed-bottle-thrown-away = Threw away { $name } ({ $code })
deed-bottle-emptied = Marked { $name } ({ $code }) as empty
deed-dropper-counted = Calibrated the dropper { $name }
deed-harvests-imported = Imported { $count ->
    [one] one harvest
   *[other] { $count } harvests
} from a table
