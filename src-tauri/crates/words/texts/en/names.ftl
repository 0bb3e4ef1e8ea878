### What the core and the page both name: parts, states, verdicts, kinds of ingredient, months.

# The name of anything as a title.

title = { CAPITAL($name) }

# Parts of plants, as inside a sentence.

part-leaf = leaf
part-herb = herb
part-root = root
part-flower = flower
part-flowering-tops = flowering tops
part-berry = berry
part-fruit = fruit
part-rhizome = rhizome
part-seed = seed
part-bulb = bulb
part-bark = bark
part-petal = petal
part-cap = cap
part-unripe-fruit = unripe fruit
part-tuber = tuber
part-tops = tops
part-sterile-stem = sterile stem
part-stem = stem
part-stalk = stalk
part-scape = scape
part-shoots = shoots
part-leaf-and-flower = leaf and flower
part-hip = hip
part-flowering-spike = flowering spike
part-flowering-herb = flowering herb
part-cone = cone
part-calyx = calyx
part-bud = bud
part-blanched-leaf = blanched leaf
part-whole-plant = whole plant
part-aerial-parts = aerial parts
part-root-with-herb = root with herb
part-seed-bitter = seed (bitter)
part-seed-sweet = seed (sweet)
part-any = any part
part-unripe-berry = unripe berry
part-fresh-leaf = fresh leaf
part-fresh-root = fresh root
part-fresh-plant = fresh plant

# States of a plant.

state-fresh = fresh
state-dried = dried
state-cooked = cooked

# Whether something keeps.

verdict-keeps = keeps
verdict-keeps-cold = keeps cold
verdict-use-now = use now
verdict-do-not-make = do not make

# What a preparation is for.

purpose-inside = internal use
purpose-outside = external use
purpose-food = food

# Kinds of liquid.

ingredient-water = water
ingredient-spirit = spirit
ingredient-glycerin = glycerin
ingredient-vinegar = vinegar
ingredient-wine = wine
ingredient-sugar = sugar
ingredient-syrup = syrup
ingredient-honey = honey
ingredient-juice = juice
ingredient-oil = oil
