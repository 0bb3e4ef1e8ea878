### Backup, restore, merge, import and export.

book-lost = Your book is missing. First choose what to open in its place.
book-there = Your book is here, so no new one was started.
book-anew-sure = Confirm that you want to start with an empty book.
point-gone = This restore point no longer exists.
point-damaged = This restore point is damaged, so nothing was changed. Choose another one.
no-damaged-file = There is no damaged file to read here.
made-file-gone = This file no longer exists.

backup-too-many = One backup holds at most { $most } files, and you have more. Make it without photos and copy the photos yourself.

name-one-line = Write this name on one line, without line breaks.
photo-original-missing = The original of the photo { $name } is missing.
merge-clock-ahead = The clock of the other device was ahead: it saved an entry dated { $day }. Set that clock right. Where both devices changed the same thing, the later date counts.

# Files.

folder-not-there = Choose a folder that exists for the file. You entered “{ $path }”.
copy-outside = Save the copy outside the folder of your book.
file-not-arrived = The file didn't come through, or Trugbook was restarted since. Choose it again.
file-not-there = There is no file “{ $path }”.
passphrase-too-short = Use at least 8 characters for the passphrase. Nobody can open the file without it, so write it on paper.
job-running = Another backup, restore, merge or export is still running. Wait for it or stop it.
book-open-elsewhere = Your book is open in another window. Go on there, or close that window and start Trugbook again.

# A file that comes.

file-no-backup = This file is not a backup. You can restore or combine backups only.
file-without-book = There is no book in this backup.
file-book-damaged = The book in this backup is damaged, so nothing was changed. Choose an older backup.
file-changed = This backup was changed after it was made, although its book and photos are whole. Nothing was read from it.
file-one-damaged = { $name } in this backup is damaged, so nothing was changed.
file-more-damaged = { $name } and { $more } more in this backup are damaged, so nothing was changed.
file-not-whole = This is not a whole Trugbook file: its end is missing, or it is something else.
file-newer = A newer version of Trugbook made this file. Update Trugbook to read it.
file-sealed = This file is sealed. Enter the passphrase it was sealed with.
file-wrong-passphrase = This passphrase does not open the file, or the beginning of the file is damaged.
file-too-costly = Another program sealed this file in a way that takes too long to open here.
file-foreign = The file holds an entry that does not belong in it (“{ $name }”), so nothing was read from it.
file-storage-full = This device is full, so the file was not saved. Free some space and try again.
file-disk = The file could not be read or written: { $detail }.

# What is damaged, after “The file is damaged:”.

detail-twice = its list names an entry twice
detail-claims-bytes = its entries claim more bytes than there are
detail-claims-entries = its list claims more entries than a book has
detail-length = { $name } is not as long as it was
detail-missing = { $name } is missing
detail-changed = { $name } is not what it was
detail-cut-off = it was cut off or changed after it was written
detail-manifest = its list cannot be read
detail-sealed-head = the beginning of the sealed file cannot be read
detail-not-read-back = it does not read as it was written, so the disk may be failing

# What a rescue saved.

rescue-deeds = The book was damaged. { $count ->
    [one] One of its entries could be read and is in the new book.
   *[other] { $count } of its entries could be read and are in the new book.
}
rescue-rows = { $count ->
    [one] One thing was saved as it stood, without its history: { $what }.
   *[other] { $count } things were saved as they stood, without their history: { $what }.
}
rescue-all = Nothing else is missing.
rescue-lost = { $count ->
    [one] One entry could not be read.
   *[other] { $count } entries could not be read.
}
rescue-end-unknown = The list itself is damaged, so it is not known how much could not be read.
rescue-photos = Your photos are not touched, and the damaged file stays here. If something is missing, restore your latest backup or combine with it.
counted-herb = { $count ->
    [one] 1 herb
   *[other] { $count } herbs
}
counted-bed = { $count ->
    [one] 1 bed
   *[other] { $count } beds
}
counted-harvest = { $count ->
    [one] 1 harvest
   *[other] { $count } harvests
}
counted-photo = { $count ->
    [one] 1 photo
   *[other] { $count } photos
}
counted-tray = { $count ->
    [one] 1 tray
   *[other] { $count } trays
}
counted-weighing = { $count ->
    [one] 1 weight
   *[other] { $count } weights
}
counted-supply = { $count ->
    [one] 1 supply
   *[other] { $count } supplies
}
counted-jar = { $count ->
    [one] 1 jar
   *[other] { $count } jars
}
counted-discard = { $count ->
    [one] 1 use of a herb
   *[other] { $count } uses of herbs
}
counted-setting = { $count ->
    [one] 1 setting
   *[other] { $count } settings
}
counted-shake = { $count ->
    [one] 1 shake
   *[other] { $count } shakes
}
counted-straining = { $count ->
    [one] 1 straining
   *[other] { $count } strainings
}
counted-bottle = { $count ->
    [one] 1 bottle
   *[other] { $count } bottles
}
counted-use = { $count ->
    [one] 1 use of a bottle
   *[other] { $count } uses of bottles
}
counted-check = { $count ->
    [one] 1 check
   *[other] { $count } checks
}
counted-recipe = { $count ->
    [one] 1 recipe
   *[other] { $count } recipes
}
counted-dropper = { $count ->
    [one] 1 dropper
   *[other] { $count } droppers
}
counted-plan = { $count ->
    [one] 1 plan
   *[other] { $count } plans
}
counted-portrait = { $count ->
    [one] 1 photo of a jar, bottle, bed or herb
   *[other] { $count } photos of jars, bottles, beds and herbs
}
