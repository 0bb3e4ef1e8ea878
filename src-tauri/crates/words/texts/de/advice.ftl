### Gründe für und gegen eine Zubereitung.

takes-up = { CAPITAL($liquid) } nimmt von dem, was { $herb } enthält, { $share } auf.
takes-up-none = { CAPITAL($liquid) } nimmt nicht auf, was { $herb } enthält.
spirit-takes-up = Bei { $strength } nimmt es aus { $herb } { $share } auf ({ $class }).
takes-nothing = nichts
takes-little = wenig
takes-some = einiges
takes-much = viel
takes-most = das meiste
resin-not-in-glycerin = Harz und ätherisches Öl lösen sich nicht in Glycerin.
not-usual-inside = Üblicherweise wird es nicht innerlich verwendet.
not-usual-outside = Üblicherweise wird es nicht äußerlich verwendet.
not-usual-as-food = Üblicherweise wird es nicht als Lebensmittel verwendet.
not-for-class = Es passt nicht zu einem Kraut, das reich ist an: { $class }.
wants-bitter-herbs = Dafür braucht es bittere oder aromatische Kräuter. Von diesem ist beides nicht bekannt.
strength-not-reached = Du wolltest { $wanted }. Mit dem, was du hast, sind höchstens { $got } möglich.
none-at-hand = Von deinen Zutaten fehlt: { $kind }. Gerechnet wird mit { $liquid }.
jar-too-small-for-all = Das Glas ist zu klein für alles. Es fasst { $herb } vom Kraut.
