### Backup, restore, merge, import and export.

book-lost = The book is not where it was. Choose first what shall take its place.
book-there = The book is there, so no new one is begun in its place.
book-anew-sure = Confirm that a new, empty book shall be begun.
point-gone = This restore point is not there any more.
point-damaged = This restore point is damaged, so nothing was changed. Take another one.
no-damaged-file = There is no damaged file here that could be read.
made-file-gone = This file is not there any more.

backup-too-many = One backup holds at most { $most } files, and this book has more. Make it without photos, and copy the photos yourself.

name-one-line = Write this name on one line, without line breaks.
