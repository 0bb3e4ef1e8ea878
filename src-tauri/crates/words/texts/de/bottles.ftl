### Bottles, supplies and droppers.

# How a bottle is kept and reckoned.

only-the-date = Frisches Kraut in Öl kann Botulismus auslösen, ohne dass man etwas merkt. Riech und koste nicht, um es zu prüfen. Halt es kalt, verbrauch es bis { $day } und wirf es danach weg.
only-its-date = Frisches Kraut in Öl kann Botulismus auslösen, ohne dass man etwas merkt. Riech und koste nicht, um es zu prüfen. Halt es kalt und verbrauch es bis zu seinem Datum.
drops-differ = Tropfen sind je nach Flüssigkeit und Pipette verschieden. Zähl dreimal die Tropfen, die einen Milliliter davon ergeben.
cost-without = Ohne { $names }: kein Preis bekannt.
yearly-use = Du hast in den letzten { $days } Tagen { $used } Verbrauch eingetragen.
used-in-times = { $times ->
    [one] Eine Entnahme in { $days } Tagen, { $used }.
   *[other] { $times } Entnahmen in { $days } Tagen, zusammen { $used }.
}
