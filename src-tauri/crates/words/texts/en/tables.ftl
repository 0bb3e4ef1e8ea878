### Tables brought in and given out.

# A table of past harvests.

table-line-too-long = A line of the table may be at most { $most } kB long.
table-column-twice = The column { $column } stands twice in the first line.
table-columns = The first line must name the columns { $needed }; { $missing } is missing. It may also name { $others }.
table-too-many = A table may have at most { $most } harvests. Split it.
table-too-long = A table can be at most { $most } MB long. This one is longer.
table-no-csv = Save the table as CSV in UTF-8. This file is something else.
table-weight-missing = Fill in the weight in grams.
table-surface = The surface must be dry, dew, rain or washed. The table has “{ $given }”.
table-number = Write grams as a plain number, such as 412.5. The table has “{ $given }”.
table-day = Write the day as 2019-07-14 or 2019-07-14 09:30. The table has “{ $given }”.
table-cells = The line has { $cells } cells where the first line has { $columns }.
table-line-unreadable = The line cannot be read as CSV.
table-unwritten = The table could not be written: { $detail }.
what-name-of-a-bed = the name of a bed
