### Cautions of a jar and what is said about strength; look-alikes, clauses and months have files of their own.

caution-botulism-fresh-oil = Fresh herb in oil can cause botulism without any sign. Keep it at 4 °C or below and throw it away after 2 to 4 days, or freeze it.
caution-acid-soak = Use garlic, basil, oregano or rosemary and no other plant. Soak 1 part garlic in 3 parts of 3 % citric acid by weight, 1 part herb in 10. Leave it for 24 hours and use no other acid.
caution-no-smell-test = It looks and smells fine even when it is dangerous. Go by the date only.
caution-ph-strip = Test the liquid with a pH strip. Above 4.6 keep it cold and use it within days, or throw it away.
caution-vinegar-strength = Read the label: the vinegar must have 5 % acidity or more.
caution-acid-vessel = Vinegar attacks iron, copper and zinc and draws lead out of glaze. Use glass or food-grade plastic, no bare metal lids and no copper pans.
caution-infant-honey = Contains honey. Not for babies under 12 months.
caution-no-data-nursing = No herb has good data for nursing. Pharmacists advise you to leave out herbal medicines.
caution-bitters-ulcer = Bitter herbs are not for people with stomach ulcers. With gallstones, ask a doctor first.
caution-damp-herb-oil = Water spoils oil. Use crisp, dry herb and a dry jar, and pour the oil off any water at the bottom.
caution-no-open-flame-oil = Never leave warm oil alone, and never heat it over a flame. Use a water bath.
caution-alcohol-bottle = A whole bottle can contain enough alcohol to harm a child. Use a child-resistant cap.
caution-not-alcohol-free = This glycerite is no longer free of alcohol. Say so on the label.
caution-fermenting = Gas can burst a corked bottle. Open it slightly, keep it cold and throw it away if it ferments.
caution-wine-perishable = Wine below 15 % vol spoils. Keep it cold and drink it within one to two weeks.
caution-oil-infants = Not for infants.
caution-sugar = High in sugar: tell anyone with diabetes.
caution-glycerin-laxative = Glycerin counts like sugar for people with diabetes. Large amounts loosen the bowels.
caution-teeth = Vinegar is hard on teeth. Mix it with water first.
caution-hot-glass = Hot liquid cracks cold glass. Warm the glass first.
caution-pregnancy = Are you pregnant or nursing, long ill, on medicines, or soon to have surgery? Ask a pharmacist or doctor first.
caution-wrong-alcohol = Use only alcohol sold for drinking. Isopropyl, methylated or denatured alcohol and methanol can poison and blind you.
caution-flame = Vapour of strong spirit can catch fire near room temperature. Use no flame and no hot plate, and open a window.
caution-children-alcohol = Contains alcohol. Keep away from children; never give it to a child without asking a doctor.
caution-not-looked-up = We have no information on { $herb }, cautions included. Ask a pharmacist before you use it.
do-not-make = Do not make it. { $why }
caution-of-herb = { CAPITAL($herb) }: { $text }
look-alike-to-rule-out = { CAPITAL($names) } can be mistaken for { $herb } and can poison you. Confirm that it is none of these.
wild-to-be-certain = This { $herb } grew wild: confirm that you are certain what it is.
caution-not-for-pregnant-or-nursing = Not for anyone who is pregnant or nursing.
look-alike-in-words = Mistaken for it: { $name } ({ $why }). How to tell them apart: { $tell }
strength-published = { $strength } is published for { $herb }, { $form }.
strength-meets = It ends at { $ends }, close to the { $published } published for { $herb }, { $form }.
strength-misses = It ends at { $ends }, not the { $published } published for { $herb }, { $form }.
strength-of = { $strength }
strength-between = { $low } to { $high }
strength-of-part = { $part }: { $strength }
strength-not-printed = strength not stated
form-with-ratio = { $form } { $ratio }
published-tincture = Tincture
published-liquid-extract = Liquid extract
published-wine = Wine
form-tincture = tincture
form-liquid-extract = liquid extract
form-wine = wine

# The general wording.

general-not-medical-advice = Trugbook keeps records and does sums. It does not diagnose, treat or choose a dose. Ask a pharmacist or doctor first if you are pregnant, nursing, ill, on medicines or soon to have surgery.
general-no-dose = Trugbook does not work out doses, for adults or children. Rules that shrink an adult dose by size ignore how a child's body works and the alcohol in it.
general-interactions = Herbs can change how medicines work. No list here is complete. Show the label to your pharmacist.
general-poison = Is someone unwell or drowsy, or did they swallow the wrong plant? Call your poison centre now. If they collapse, have a fit or can't breathe, call the emergency number. Keep the bottle and a piece of the plant.
general-oil = Fresh herb in oil looks and smells fine even when it is dangerous. Throw it away on its date.
general-alcohol = Contains alcohol. Keep away from children and flame.
general-selling = Rules for selling what you make differ from place to place. Ask about food, drug and alcohol law where you live. Do not distil spirit at home: in the USA it is against the law (26 USC 5042, 5053, 5601).
