### Photos.

photo-empty = Diese Datei ist leer. Wähl ein Foto.
photo-too-large = Diese Datei ist größer als 64 MB. Wähl ein Foto von höchstens 64 MB.
photo-no-picture = Diese Datei ist kein Foto. Wähl ein Bild als JPEG, PNG, WebP, HEIC, AVIF, TIFF oder GIF. Die Datei selbst blieb, wo sie ist.
photo-bad-name = Das ist nicht der Name eines Fotos: erwartet werden 64 Zeichen aus 0-9 und a-f.
photo-disk-full = Dieses Gerät ist voll, darum wurde das Foto nicht gespeichert. Schaff Platz und füg es noch einmal hinzu.
photo-disk = Das Foto konnte nicht gespeichert oder gelesen werden ({ $detail }). Sonst wurde nichts geändert.
photo-part-missing = Unverändert gespeichert. Die Datei ist beschädigt, darum kann ein Teil des Bildes fehlen.
photo-damaged = Unverändert gespeichert, ohne Vorschau: Die Datei ist beschädigt.
photo-too-many-pixels = Unverändert gespeichert, ohne Vorschau: Das Bild ist zu groß, um es auf einem Telefon zu zeigen.
photo-of-a-kind = Unverändert gespeichert, ohne Vorschau: Bilder der Art { $kind } lassen sich hier nicht zeigen.

# What the maker takes away.

save-no-room = An diesem Ort ist nicht genug Platz, darum wurde dort nichts gespeichert.
save-gone = Diese Datei ist nicht mehr da. Mach sie noch einmal.
save-failed = Die Datei konnte dort nicht geschrieben werden: { $detail }.
