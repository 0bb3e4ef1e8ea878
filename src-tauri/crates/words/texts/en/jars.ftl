### A jar and its life.

# What cannot be done with a jar.

jar-preparation-unknown = This version does not know the preparation { $name }. Update Trugbook.
jar-failed-already = { $name } failed, so you can't do anything more with it.
jar-strained-already = { $name } is already strained, so you can't shake it or top it up.
jar-not-strained = { $name } is not strained yet. Strain it first.
marc-in-another-jar = The marc of { $name } is in the jar { $code } already.
marc-not-again = { CAPITAL($preparation) } is not made from a marc.
marc-of-mixture = Only marc from plain spirit, glycerin, vinegar or oil can be steeped again. This one holds a mixture.
jar-without-oil = There is no oil in this jar.
came-out-nothing = Enter more than 0 for what you strained off. You entered { $given }.
came-out-too-much = What you strained off can't be more than the { $most } in the jar. You entered { $given }.
lot-of-another-herb = This is not { $herb }. Choose some that is.
water-or-sample = Enter the water of the plant or a sample of it, not both.
supply-of-another-kind = { $name } in your supplies is of another kind.

# What is missing on the label of a liquid, or too much.

figure-missing = { CAPITAL($liquid) }: { $figure } is missing.
figure-too-much = { CAPITAL($liquid) }: { $figure } does not belong to it.
oil-not-said = Choose which oil it is, such as olive.

# What is expected of a marc.

retention-published-figure = published
retention-of-dried-root = used for dried root, as this one has no figure
retention-made-up = topped up to its volume afterwards
retention-own-jars = { $count ->
    [one] your own last jar
   *[other] your own last { $count } jars
}
