### Bottles, supplies and droppers.

# How a bottle is kept and reckoned.

only-the-date = Fresh herb in oil can cause botulism without any sign. Don't smell or taste it to check. Keep it cold, use it by { $day } and throw it away after that.
only-its-date = Fresh herb in oil can cause botulism without any sign. Don't smell or taste it to check. Keep it cold and use it by its date.
drops-differ = Drops vary with the liquid and the dropper. Count the drops that make one millilitre of this, three times.
cost-without = Without { $names }: no price is known.
yearly-use = You recorded using { $used } in the last { $days } days.
used-in-times = { $times ->
    [one] { $used } were used once in { $days } days.
   *[other] { $used } were used { $times } times in { $days } days.
}
