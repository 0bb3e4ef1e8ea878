### Photos.

photo-empty = This file is empty. Choose a photo.
photo-too-large = This file is larger than 64 MB. Choose a photo of at most 64 MB.
photo-no-picture = This file is not a photo. Choose a JPEG, PNG, WebP, HEIC, AVIF, TIFF or GIF picture. The file itself was left where it is.
photo-bad-name = This is not the name of a photo: 64 characters from 0-9 and a-f are expected.
photo-disk-full = This device is full, so the photo was not saved. Free some space and add it again.
photo-disk = The photo could not be saved or read ({ $detail }). Nothing else was changed.
photo-part-missing = Saved as it is. The file is damaged, so part of the picture may be missing.
photo-damaged = Saved as it is, without a preview: the file is damaged.
photo-too-many-pixels = Saved as it is, without a preview: the picture is too large to unpack on a phone.
photo-of-a-kind = Saved as it is, without a preview: this kind of { $kind } cannot be shown here.

# What the maker takes away.

save-no-room = There is not enough room in that place, so nothing was saved there.
save-gone = That file is no longer there. Make it again.
save-failed = The file could not be written there: { $detail }.
