//! What the files say to someone who opens them without the app.

pub const BACKUP: &str = "\
This is a backup of a Trugbook journal. It can be read with common tools alone.

  unzip            unpacks it. A file whose name ends in .age is sealed: `age -d FILE.age > FILE.zip`
                   asks for the passphrase first.
  journal.trugbook is an SQLite database. The tables `deed` and `change` are the log of everything
                   that was ever written; it is the only truth. Every other table is made from it:
                   the column `body` of the tables harvest, tray, jar, bottle ... holds one entry as
                   JSON. `sqlite3 journal.trugbook \"SELECT body FROM harvest\"` lists the harvests.
  photos/          holds the original photos, byte for byte. The name of each is the BLAKE3 hash of
                   its bytes; the table `photo` says what it was called and when it was taken.
  manifest.json    lists every entry with its size and its BLAKE3 hash, and how much of what there is.
  The comment of the ZIP ends with the BLAKE3 hash of all bytes of the file before those 64 digits.

Names of fields end in their unit: _g gram, _ml millilitre, _c degree Celsius, _m2 square metre,
_percent_vol per cent by volume at 20 C, _percent_mass per cent by mass.
";

pub const EXPORT: &str = "\
This is an export of a Trugbook journal, for spreadsheets and other programs. To move a journal or
to keep it safe make a backup: an export cannot be restored, except for harvests.csv, which can be
imported again.

  harvests.csv     one line for each harvest, as the import reads it.
  <noun>.csv       one line for each entry of every other kind; the names of the columns are the
                   fields, one within another joined by a dot. Lists of plain words are joined by
                   \"; \". A list of several fields has a file of its own, <noun>.<field>.csv, whose
                   first columns say to which entry and which place in its list a line belongs.
  journal.json     the same entries as JSON, and the log of what was done.
  photos/          copies of the photos, if they were asked for.
  manifest.json    lists every entry with its size and its BLAKE3 hash.

CSV is as in RFC 4180: UTF-8, commas, quotation marks doubled, the first line names the columns.
Names of fields end in their unit: _g gram, _ml millilitre, _c degree Celsius, _m2 square metre,
_percent_vol per cent by volume at 20 C, _percent_mass per cent by mass. Times have their offset
from UTC.

Unless it was asked for, the export does not say where on the globe anything grew: columns and
fields of latitude and longitude are left out, and copies of photos carry neither place nor time.
Names and notes are as you wrote them. Photos of kinds from which the place cannot be removed for
certain are left out then.
";
