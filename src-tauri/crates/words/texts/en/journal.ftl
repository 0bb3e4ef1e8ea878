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
refused-year = The year must lie between 0 and 9999; { $year } does not.
refused-entry-time = The time of this entry lies outside the years 1 to 9999.
refused-entry-line = An entry says what was done in one line of at most { $most } characters.
refused-entry-itself = This entry takes itself back.
refused-entry-later = It takes back an entry that came after it.
refused-entry-empty = An entry either changes something or takes another entry back.
refused-entry-struck = What was taken out has no fields.
refused-id-spelling = This id is not written as the app writes it.
refused-row-unreadable = It cannot be read: { $why }.
refused-photo-size = A picture has at most { $most } bytes; this one has { $bytes }.
