# What the core says about the book as a whole.
check-file-damaged = The file of the book is damaged: { $detail }
check-entry-changed = This entry does not read as it was written.
check-entry-unreadable = Entry number { $number } cannot be read.
check-entries-missing = { $count ->
    [one] One entry is missing.
   *[other] { $count } entries are missing.
}
check-tables-differ = The lists did not match the entries.
check-uneven = { $said }
check-photo-changed = The picture is damaged. Add the same picture again, or restore a backup that holds it.
check-photo-missing = The picture is missing. Add the same picture again, or restore a backup that holds it.
check-in-the-log = the entries
check-in-the-lists = the lists
check-in-the-ledger = the amounts
entry-unfit = “{ $deed }” cannot be taken in. { $why }
more-taken-than-there-was = By the records { $taken } were taken of it, but it held only { $there }. Say what is true.
put-right = Put right: { $name }
