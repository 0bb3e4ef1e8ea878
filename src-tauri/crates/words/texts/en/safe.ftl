### Backup, restore, merge, import and export.
