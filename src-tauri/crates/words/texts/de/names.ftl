### What the core and the page both name: parts, states, verdicts, kinds of ingredient, months.

# The name of anything as a title.

title = { CAPITAL($name) }

# Parts of plants, as inside a sentence.

part-leaf = Blatt
part-herb = Kraut
part-root = Wurzel
part-flower = Blüte
part-flowering-tops = blühende Triebspitzen
part-berry = Beere
part-fruit = Frucht
part-rhizome = Wurzelstock
part-seed = Samen
part-bulb = Zwiebel
part-bark = Rinde
part-petal = Blütenblatt
part-cap = Hut
part-unripe-fruit = unreife Frucht
part-tuber = Knolle
part-tops = Spitzen
part-sterile-stem = unfruchtbarer Spross
part-stem = Stängel
part-stalk = Halm
part-scape = Blütenstängel
part-shoots = Triebe
part-leaf-and-flower = Blatt und Blüte
part-hip = Hagebutte
part-flowering-spike = blühende Ähre
part-flowering-herb = blühendes Kraut
part-cone = Zapfen
part-calyx = Kelch
part-bud = Knospe
part-blanched-leaf = blanchiertes Blatt
part-whole-plant = ganze Pflanze
part-aerial-parts = oberirdische Teile
part-root-with-herb = Wurzel mit Kraut
part-seed-bitter = Samen (bitter)
part-seed-sweet = Samen (süß)
part-any = jeder Teil
part-unripe-berry = unreife Beere
part-fresh-leaf = frisches Blatt
part-fresh-root = frische Wurzel
part-fresh-plant = frische Pflanze

# States of a plant.

state-fresh = frisch
state-dried = getrocknet
state-cooked = gekocht

# Whether something keeps.

verdict-keeps = haltbar
verdict-keeps-cold = gekühlt haltbar
verdict-use-now = sofort verbrauchen
verdict-do-not-make = nicht herstellen

# What a preparation is for.

purpose-inside = innerlich
purpose-outside = äußerlich
purpose-food = zum Essen

# Kinds of liquid.

ingredient-water = Wasser
ingredient-spirit = Alkohol
ingredient-glycerin = Glycerin
ingredient-vinegar = Essig
ingredient-wine = Wein
ingredient-sugar = Zucker
ingredient-syrup = Sirup
ingredient-honey = Honig
ingredient-juice = Saft
ingredient-oil = Öl
