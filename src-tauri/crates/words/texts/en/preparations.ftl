### Preparations: their names, summaries and steps.

preparation-tincture-dried = tincture of dried herb
preparation-tincture-dried-summary = Dried herb in spirit and water, as strong as its constituents need.

preparation-tincture-fresh = tincture of fresh herb, water counted
preparation-tincture-fresh-summary = Fresh herb in spirit. Its own water is counted, so the jar ends at the strength you want.

preparation-tincture-fresh-strong = tincture of fresh herb in strong spirit
preparation-tincture-fresh-strong-summary = Fresh herb in the strongest spirit you have. The plant brings the water.

preparation-tincture-percolated = tincture by percolation
preparation-tincture-percolated-summary = Spirit run through packed dry herb and collected to a fixed volume.

preparation-tincture-double = tincture by double maceration
preparation-tincture-double-summary = Dried herb in spirit, pressed, and the marc covered a second time.

preparation-glycerite-fresh = glycerite of fresh herb
preparation-glycerite-fresh-summary = Fresh herb in glycerin with a little water: sweet and free of alcohol.

preparation-glycerite-dried = glycerite of dried herb
preparation-glycerite-dried-summary = Dried herb in glycerin and water: sweet and free of alcohol.

preparation-glycerite-fortified = glycerite with a tenth of alcohol
preparation-glycerite-fortified-summary = A glycerite with enough spirit for about 10 % vol, to hold back mould.

preparation-cordial = cordial
preparation-cordial-summary = Herb or fruit in spirit, sweetened with syrup.

preparation-elixir = elixir
preparation-elixir-summary = A strained tincture with syrup and water: 2 parts, 3 parts and 3 parts.

preparation-bitters = bitters
preparation-bitters-summary = Bitter and aromatic herbs in spirit of middle strength.

preparation-wine-table = infused table wine
preparation-wine-table-summary = Herb in table wine, drunk young and kept cold.

preparation-wine-fortified = infused fortified wine
preparation-wine-fortified-summary = Herb in sherry, port or another wine of 16 % vol or more.

preparation-vinegar = herbal vinegar
preparation-vinegar-summary = Herb in vinegar of at least 5 % acidity.

preparation-shrub = shrub
preparation-shrub-summary = Fruit or herb with sugar and vinegar, kept cold.

preparation-spiced-vinegar = spiced hot vinegar
preparation-spiced-vinegar-summary = Horseradish, ginger, onion, garlic and chilli in cider vinegar, sweetened with honey after straining.

preparation-oxymel = oxymel
preparation-oxymel-summary = Herb in honey and vinegar.

preparation-oil-dried = infused oil of dried herb
preparation-oil-dried-summary = Crisp dry herb in a fixed oil.

preparation-oil-fresh = infused oil of fresh herb or garlic
preparation-oil-fresh-summary = For food only. Keep it at 4 °C or below and throw it away after 4 days.

preparation-oil-acidified = acidified oil of garlic, basil, oregano or rosemary
preparation-oil-acidified-summary = The tested way to keep these four in oil, after a day in 3 % citric acid.

preparation-oil-warm = infused oil, warm
preparation-oil-warm-summary = Dried herb kept warm in oil, away from any flame.

preparation-elixir-cooked = elixir of cooked fruit
preparation-elixir-cooked-summary = Cooked juice with strong spirit and syrup, mixed and filtered.

preparation-syrup = syrup
preparation-syrup-summary = Cooked juice or a strong brew, with twice its weight of sugar.

preparation-syrup-honey = honey syrup
preparation-syrup-honey-summary = Cooked juice or a strong brew, with as much honey by weight.

preparation-decoction = decoction
preparation-decoction-summary = Hard parts simmered in water, for the same day.

## How to store it, how it shows that it spoiled, and what lets it spoil.

storage-dark-bottle = Keep it at 15 to 25 °C, in dark glass with a child-resistant cap.
storage-cold-once-opened = Keep it in the fridge once it is open.
storage-cool-dark = Keep it cool and dark.
storage-cool = Keep it cool.
storage-fridge-or-freezer = Keep it in the fridge, or freeze it.
storage-fridge = Keep it in the fridge.
storage-fridge-two-weeks = Keep it in the fridge and drink it within one to two weeks.
storage-cool-dark-full = Keep it cool and dark, in full bottles.
storage-best-cold = Keep it in the fridge if you can.
storage-oxymel = Keep it cool. Keep a thin one, or one of fresh herb, in the fridge.
storage-cool-dark-small = Keep it cool and dark, in small, full bottles.
storage-fridge-only = Keep it in the fridge only. Freeze it to keep it for months.
storage-room-by-test = It may stand at room temperature, but only if it was made this way.

spoiled-spirit = Throw it away if it goes cloudy, moulds or fizzes. It then holds too much water.
spoiled-glycerite = Throw it away if it smells sour, fizzes, goes cloudy or grows a film.
spoiled-gas-cloud = Throw it away if it fizzes or goes cloudy.
spoiled-cloud = Throw it away if it goes cloudy.
spoiled-gas-mould = Throw it away if it fizzes or moulds.
spoiled-wine = Throw it away if it smells of vinegar, grows a film or fizzes.
spoiled-vinegar = Throw it away if it moulds, fizzes, or turns slimy or cloudy.
spoiled-ferment = Throw it away if it ferments or fizzes.
spoiled-oil = Throw it away if it smells of paint or putty, clouds, fizzes or moulds. Drops of water at the bottom spoil it too.
spoiled-without-a-sign = There are no signs. The poison of botulism has no smell and no taste.
spoiled-rancid-cloud = Throw it away if it smells rancid or goes cloudy.

ended-spirit = Light, drying out and less than 20 % vol of alcohol let it spoil.
ended-glycerite = Water from the plant and an open jar let it spoil.
ended-cordial = Less than 20 % vol of alcohol with less than 65 % sugar lets it spoil.
ended-elixir = Too little alcohol lets it spoil.
ended-wine-table = Air and too little alcohol let it spoil.
ended-wine-fortified = Air and less than 15 % vol of alcohol let it spoil.
ended-vinegar = It spoils once it is thinned below 4 % acidity.
ended-shrub = Acid that is thinned too far lets it spoil.
ended-spiced-vinegar = Water of the onions and honey thin the acid and let it spoil.
ended-oxymel = Water from the herb lets it spoil.
ended-oil = Age makes it rancid. Water and mould spoil it.
ended-oil-fresh = It lasts 4 days. Throw it away after that, or freeze it first.
ended-oil-acidified = Any plant but the four that were tested makes it unsafe.

## To be read before pouring.

note-percolation = The marc holds back some of the spirit. Have about 0.8 mL more ready for each gram of dry herb.
note-double-maceration = After pressing, cover the marc once more with 2.5 mL of the same liquid for each gram of dry herb. Write both ratios on the label.
note-elixir = Mix an elixir from a strained tincture. Enter the tincture as spirit, with its own strength.
note-spiced-vinegar = Stir in the honey after straining, a quarter of the vinegar at most. The figures show the finished mixture.
note-acid-bath = First soak the plant in 3 % citric acid for 24 hours, fully covered. Take 3 times its weight for garlic, 10 times for herb. Drain it and do not rinse it. Use citric acid only, never vinegar or lemon.
note-syrup = Melt the sugar over low heat. Fill it hot into boiled bottles.
note-decoction = Start it cold, simmer it for 10 to 15 minutes with the lid on, and strain it hot.

## The steps of the work: what to do, its title, and why.

step-weigh-the-herb = Cut or crush the dried herb. Weigh { $grams } of it into a clean, dry jar.
step-weigh-the-herb-title = Weigh the herb
step-weigh-the-herb-why = Small pieces give up more.

step-no-flame-near = Use only spirit sold for drinking. Put out all flames, turn off hot plates and open a window.
step-no-flame-near-title = No flame near
step-no-flame-near-why = Spirit vapour can catch fire in a warm room.

step-mix-the-liquid = Mix { $liquid } as listed, { $volume } in all. Let the mix cool.
step-mix-the-liquid-title = Mix the liquid
step-mix-the-liquid-why = Spirit and water warm up when they meet.

step-pour-it-on = Pour all of it over the herb. Push the herb down until nothing sticks out.
step-pour-it-on-title = Pour it on
step-pour-it-on-why = Herb in the air can grow mould.

step-shake-each-day = Close the jar and stand it in the dark for { $from } to { $to } days. Shake it once a day.
step-shake-each-day-title = Shake each day

step-settle-then-press = Let the jar stand still for a day. Pour off the clear part, then press the herb hard through cloth.
step-settle-then-press-title = Settle, then press

step-bottle-and-label = Fill clean, dark bottles to the neck and use child-safe caps. Write herb, ratio, { $strength } and date on the label.
step-bottle-and-label-title = Bottle and label
step-bottle-and-label-why = A full bottle can hold enough spirit to harm a child.

step-dark-then-check = Keep the bottles in a dark cupboard. Throw the tincture away if it fizzes, moulds or goes cloudy later.
step-dark-then-check-title = Dark, then check
step-dark-then-check-why = Too little spirit lets germs grow. Fine dregs are normal.

step-take-a-sample = Chop the fresh herb and mix it well. Weigh a small handful as a sample and chill the rest in a closed bag.
step-take-a-sample-title = Take a sample
step-take-a-sample-why = Fresh herb dries out while it waits.

step-dry-the-sample = Dry the sample in the oven at 105 °C until its weight stays the same. Enter both weights as oven sample.
step-dry-the-sample-title = Dry the sample
step-dry-the-sample-why = This tells how much water the herb brings.

step-weigh-the-herb-2 = Take the chilled herb from its bag. Weigh { $grams } of it into a clean jar at once.
step-weigh-the-herb-2-title = Weigh the herb

step-mix-and-pour = Mix { $liquid } as listed, { $volume } in all. Pour it on and push the herb under.
step-mix-and-pour-title = Mix and pour
step-mix-and-pour-why = Trugbook has already counted the plant's water.

step-press-hard = Strain the liquid through cloth and press the herb hard. Let it settle for a day and pour it clear.
step-press-hard-title = Press hard

step-bottle-then-check = Fill dark, child-safe bottles and write { $strength } on them. Throw it away if it fizzes, moulds or turns cloudy.
step-bottle-then-check-title = Bottle, then check

step-sample-for-water = Dry a weighed oven sample first if the end strength must be exact. Enter both weights.
step-sample-for-water-title = Sample for water
step-sample-for-water-why = The plant's own water thins the spirit.

step-chop-and-weigh = Chop the fresh herb just before use. Weigh { $grams } and pack it loosely into a clean jar.
step-chop-and-weigh-title = Chop and weigh

step-cover-it = Pour on { $volume } of { $liquid }. Push the herb down until all of it is under.
step-cover-it-title = Cover it

step-stand-it-dark = Close the jar and stand it in the dark for { $from } to { $to } days. Turn it over once a week.
step-stand-it-dark-title = Stand it dark

step-press-hard-2 = Strain the liquid through cloth and press the herb hard.
step-press-hard-2-title = Press hard
step-press-hard-2-why = The herb holds back much of the liquid.

step-label-true-strength = Write { $strength } on the label, not the strength you poured. Use dark bottles with child-safe caps.
step-label-true-strength-title = Label the true strength

step-grind-and-weigh = Grind the dry herb to a coarse powder. Weigh { $grams } of it.
step-grind-and-weigh-title = Grind and weigh
step-grind-and-weigh-why = Fine, slimy or gummy powder blocks the flow.

step-moisten-the-powder = Mix { $liquid } as listed. Stir in enough to make the powder evenly damp, cover it and wait 6 hours.
step-moisten-the-powder-title = Moisten the powder
step-moisten-the-powder-why = The herb must swell before it is packed.

step-pack-the-cone = Plug the neck of the glass cone with cotton. Pack the damp herb in firm, even layers and lay paper on top.
step-pack-the-cone-title = Pack the cone
step-pack-the-cone-why = Liquid runs past the herb through any gap.

step-fill-and-stand = Pour on liquid until it drips below and stands above the herb. Close the tap, cover it and wait 24 hours.
step-fill-and-stand-title = Fill and stand

step-drip-it-slowly = Open the tap to a slow drip, about a drop a second. Keep liquid above the herb all the time.
step-drip-it-slowly-title = Drip it slowly
step-drip-it-slowly-why = Dry herb cracks and lets the liquid slip by.

step-make-up-the-volume = Stop when you have { $volume }. Pour more of the mix through the herb if you fall short, then stir well.
step-make-up-the-volume-title = Make up the volume
step-make-up-the-volume-why = The first runnings are strong, the last weak.

step-weigh-the-herb-3 = Cut or crush the dried herb. Weigh { $grams } of it into a clean, dry jar.
step-weigh-the-herb-3-title = Weigh the herb

step-first-pouring = Mix { $liquid } as listed, { $volume } in all. Pour it on and push the herb under.
step-first-pouring-title = First pouring

step-first-steeping = Close the jar and stand it in the dark for { $from } to { $to } days. Shake it once a day.
step-first-steeping-title = First steeping

step-press-keep-it = Press the herb hard through cloth. Bottle this first liquid and put the pressed herb back in the jar.
step-press-keep-it-title = Press, keep it

step-second-pouring = Mix half as much of the same liquid. Pour it over the pressed herb, away from any flame.
step-second-pouring-title = Second pouring
step-second-pouring-why = The pressed herb still holds some of the first liquid.

step-steep-press-again = Steep and shake it as before, for { $from } to { $to } days. Press it once more through cloth.
step-steep-press-again-title = Steep, press again

step-both-ratios = Join both liquids or keep them apart, and write each ratio on the label. Use dark, child-safe bottles.
step-both-ratios-title = Both ratios

step-weigh-the-herb-4 = Take the chilled herb and chop it fine. Weigh { $grams } of it into a clean, dry jar.
step-weigh-the-herb-4-title = Weigh the herb

step-cover-it-2 = Mix { $liquid } as listed, { $volume } in all. Pour it on, stir out the air and push the herb under.
step-cover-it-2-title = Cover it

step-turn-and-look = Close the jar and turn it each day for { $from } to { $to } days. Push herb that sticks out back under.
step-turn-and-look-title = Turn and look
step-turn-and-look-why = Herb in the air grows mould.

step-warm-and-press = Stand the jar in warm water to thin it. Strain it through cloth and press hard.
step-warm-and-press-title = Warm and press

step-small-full-bottles = Fill small, clean bottles to the neck. Label them with herb, share of glycerin and date.
step-small-full-bottles-title = Small, full bottles

step-cold-then-check = Keep it in the fridge. Throw it away if it smells sour, fizzes, clouds or grows a film.
step-cold-then-check-title = Cold, then check
step-cold-then-check-why = Glycerin alone is no sure guard against mould.

step-weigh-the-herb-5 = Crush the dried herb. Weigh { $grams } of it into a clean, dry jar, half full at most.
step-weigh-the-herb-5-title = Weigh the herb

step-mix-the-liquid-2 = Mix { $liquid } as listed, { $volume } in all. Stir until you see no more streaks.
step-mix-the-liquid-2-title = Mix the liquid

step-cover-it-3 = Pour it over the herb and stir out the air. Look again next day, as dry herb swells.
step-cover-it-3-title = Cover it

step-turn-each-day = Close the jar and turn it each day for { $from } to { $to } days.
step-turn-each-day-title = Turn each day

step-keep-it-under = Look each day that no herb sticks out. Push it under with a clean, dry spoon.
step-keep-it-under-title = Keep it under
step-keep-it-under-why = Herb in the air grows mould.

step-sample-then-weigh = Dry a weighed sample first if the herb is fresh. Weigh { $grams } of cut herb into a clean, dry jar.
step-sample-then-weigh-title = Sample, then weigh
step-sample-then-weigh-why = Plant water thins the glycerin.

step-mix-spirit-last = Mix { $liquid } as listed, { $volume } in all. Pour the spirit in last and stir well.
step-mix-spirit-last-title = Mix, spirit last

step-cover-it-4 = Pour it over the herb and stir out the air. Push the herb down until nothing sticks out.
step-cover-it-4-title = Cover it
step-cover-it-4-why = Herb in the air grows mould.

step-label-the-alcohol = Write “contains alcohol, { $strength }” on the label. Fill small bottles and use child-safe caps.
step-label-the-alcohol-title = Label the alcohol
step-label-the-alcohol-why = People expect a glycerite to have no alcohol.

step-cook-elderberries-first = Wash, drain and cut up fruit or herb. Cook elderberries first, by their own steps, dried or frozen ones too.
step-cook-elderberries-first-title = Cook elderberries first
step-cook-elderberries-first-why = Raw elderberries are poisonous.

step-weigh-the-fruit = Weigh { $grams } of fruit or herb into a clean glass jar. Leave the top third free.
step-weigh-the-fruit-title = Weigh the fruit

step-pour-the-spirit = Pour on the spirit as listed and keep the syrup back. Push all the fruit under.
step-pour-the-spirit-title = Pour the spirit
step-pour-the-spirit-why = Fruit in the air grows mould.

step-shake-each-week = Close the jar and stand it in the dark for { $from } to { $to } days. Shake it once a week.
step-shake-each-week-title = Shake each week

step-strain-and-sweeten = Strain it through cloth. Stir in the cold syrup as listed.
step-strain-and-sweeten-title = Strain and sweeten
step-strain-and-sweeten-why = Hot syrup drives spirit vapour into the air.

step-bottle-and-label-2 = Fill clean glass bottles and use child-safe caps. Write { $strength }, sugar and date on the label.
step-bottle-and-label-2-title = Bottle and label

step-cool-then-check = Keep it cool and dark, and in the fridge if it is below 20 % vol. Throw it away if it fizzes or turns cloudy.
step-cool-then-check-title = Cool, then check
step-cool-then-check-why = Weak, thin cordial can ferment.

step-strain-the-tincture = Strain your tincture clear. Read its strength on the label and enter it.
step-strain-the-tincture-title = Strain the tincture

step-measure-the-parts = Measure 2 parts tincture, 3 parts syrup and 3 parts water, { $volume } in all.
step-measure-the-parts-title = Measure the parts

step-mix-it-slowly = Pour the cold syrup into the tincture bit by bit and stir. Add the water last.
step-mix-it-slowly-title = Mix it slowly
step-mix-it-slowly-why = Mixed too fast, it turns cloudy.

step-stand-it-overnight = Close the jar and let it stand overnight.
step-stand-it-overnight-title = Stand it overnight
step-stand-it-overnight-why = Fine dregs sink and filter out better.

step-filter-it-clear = Pour it through filter paper. Pour the first part back until it runs clear.
step-filter-it-clear-title = Filter it clear

step-cool-then-check-2 = Keep it cool, and in the fridge if it is below 20 % vol. Throw it away if it fizzes, moulds or turns cloudy.
step-cool-then-check-2-title = Cool, then check

step-weigh-each-plant = Weigh each plant on its own, { $grams } in all. Crush them and put them in a clean, dry jar.
step-weigh-each-plant-title = Weigh each plant
step-weigh-each-plant-why = You can then make the same mix again.

step-mix-and-pour-2 = Mix { $liquid } as listed, { $volume } in all. Pour it on and push the plants under.
step-mix-and-pour-2-title = Mix and pour

step-lift-strong-spice = Hang clove, peel and hot spice in a bag. Lift the bag out once its smell takes over.
step-lift-strong-spice-title = Lift strong spice

step-press-and-settle = Press the plants hard through cloth. Let the liquid stand for a day and pour it off clear.
step-press-and-settle-title = Press and settle

step-dark-then-check-2 = Keep the bottles in a dark cupboard. Throw them away if the bitters fizz, mould or turn cloudy.
step-dark-then-check-2-title = Dark, then check

step-open-fresh-wine = Open a new bottle for this. Read its strength and enter it.
step-open-fresh-wine-title = Open fresh wine

step-glass-only = Use a clean glass jar with a cork or plastic lid. Use no glazed pot and no lead crystal.
step-glass-only-title = Glass only
step-glass-only-why = Wine is sour and can draw out lead.

step-weigh-the-herb-6 = Wash fresh herb, pat it dry and cut it. Weigh { $grams } into the jar.
step-weigh-the-herb-6-title = Weigh the herb

step-fill-to-the-brim = Pour on { $volume } of { $liquid } and push the herb under. Choose a jar that this fills to the top.
step-fill-to-the-brim-title = Fill to the brim
step-fill-to-the-brim-why = Air turns wine to vinegar.

step-steep-it-cold = Stand the jar in the fridge for { $from } to { $to } days. Turn it once a day.
step-steep-it-cold-title = Steep it cold

step-strain-and-bottle = Strain it through a clean cloth. Fill small glass bottles to the neck and label them with the date.
step-strain-and-bottle-title = Strain and bottle

step-use-it-soon = Keep it in the fridge and finish it within 2 weeks.
step-use-it-soon-title = Use it soon
step-use-it-soon-why = Table wine is too weak to keep once opened.

step-know-the-signs = Throw it away if it smells of vinegar, fizzes or grows a film.
step-know-the-signs-title = Know the signs

step-check-the-wine = Read the label. Take sherry, port or a similar wine with 16 % vol or more.
step-check-the-wine-title = Check the wine

step-weigh-the-herb-7 = Cut or crush the herb. Weigh { $grams } into the jar.
step-weigh-the-herb-7-title = Weigh the herb

step-turn-each-day-2 = Close the jar and stand it cool and dark for { $from } to { $to } days. Turn it once a day.
step-turn-each-day-2-title = Turn each day

step-press-and-bottle = Press it through a clean cloth. Fill small glass bottles to the neck.
step-press-and-bottle-title = Press and bottle

step-label-and-store = Write { $strength } and date on the label. Keep it cool and dark, and in the fridge if it is below 18 % vol.
step-label-and-store-title = Label and store

step-wash-and-trim = Wash the scapes and pat them dry. Cut off bud and tough end, then cut the rest short.
step-wash-and-trim-title = Wash and trim

step-check-the-sherry = Read the label. Take a sherry with 18 % vol or more.
step-check-the-sherry-title = Check the sherry
step-check-the-sherry-why = The scapes' own water thins the wine.

step-weigh-and-pour = Weigh { $grams } of scapes into the jar. Pour on { $volume } of { $liquid }.
step-weigh-and-pour-title = Weigh and pour

step-keep-all-under = Weigh the scapes down so that no piece floats. Look each day and push them under.
step-keep-all-under-title = Keep all under
step-keep-all-under-why = Garlic plants must never sit in air or oil here.

step-steep-it-cold-2 = Stand the closed jar in the fridge for { $from } to { $to } days.
step-steep-it-cold-2-title = Steep it cold
step-steep-it-cold-2-why = Below 18 % vol wine keeps only when cold.

step-strain-and-bottle-2 = Strain out every piece through cloth. Fill small glass bottles and write { $strength } and date on them.
step-strain-and-bottle-2-title = Strain and bottle

step-cold-then-check-2 = Keep it in the fridge. Throw it away if it smells of vinegar, fizzes or grows a film.
step-cold-then-check-2-title = Cold, then check

step-check-the-vinegar = Read the label on the vinegar. Take one with 5 % acid or more.
step-check-the-vinegar-title = Check the vinegar
step-check-the-vinegar-why = Weak vinegar does not keep plants safe.

step-wash-and-dip = Dip fresh, washed herb in 1 part plain 5 % bleach to 300 parts water, rinse well and pat dry. Keep bleach away from vinegar.
step-wash-and-dip-title = Wash and dip
step-wash-and-dip-why = Some germs live on in vinegar; bleach and acid give off gas.

step-glass-no-metal = Use a clean glass jar with a plastic or glass lid. Keep acid off bare metal and out of glazed pots.
step-glass-no-metal-title = Glass, no metal
step-glass-no-metal-why = Acid eats metal and can draw lead from glaze.

step-weigh-the-herb-8 = Weigh { $grams } of herb into the jar, and no more.
step-weigh-the-herb-8-title = Weigh the herb
step-weigh-the-herb-8-why = Too much wet plant makes the vinegar weak.

step-pour-it-hot = Warm the jar. Heat { $volume } of { $liquid } until it steams but does not boil, and pour it on.
step-pour-it-hot-title = Pour it hot
step-pour-it-hot-why = Heat kills yeast and mould.

step-keep-all-under-2 = Push the herb under and close the jar. Stand it cool and dark for { $from } to { $to } days.
step-keep-all-under-2-title = Keep all under
step-keep-all-under-2-why = Herb in the air grows mould.

step-strain-and-test = Strain it through cloth until clear. Test it with a pH strip, aim for 4.0 and throw it away above 4.6.
step-strain-and-test-title = Strain and test
step-strain-and-test-why = Above 4.6 the acid no longer holds germs back.

step-cold-then-check-3 = Fill clean glass bottles with plastic caps; keep them in the fridge. Throw it away untasted if it moulds, fizzes, turns cloudy or slimy.
step-cold-then-check-3-title = Cold, then check

step-weigh-and-sugar = Weigh { $grams } of fruit or herb into the jar. Stir in the sugar as listed and crush it a little.
step-weigh-and-sugar-title = Weigh and sugar

step-pour-the-vinegar = Pour on the vinegar as listed. Stir until the sugar melts and push all of it under.
step-pour-the-vinegar-title = Pour the vinegar

step-steep-it-cold-3 = Close the jar and stand it in the fridge for { $from } to { $to } days. Shake it once a day.
step-steep-it-cold-3-title = Steep it cold

step-strain-and-test-2 = Strain it through cloth. Test it with a pH strip, aim for 4.0 and throw it away above 4.6.
step-strain-and-test-2-title = Strain and test
step-strain-and-test-2-why = Above 4.6 the acid no longer holds germs back.

step-cold-then-check-4 = Fill clean glass bottles with plastic caps; keep them in the fridge. Throw it away untasted if it moulds, fizzes or turns slimy.
step-cold-then-check-4-title = Cold, then check

step-gloves-and-window = Put on gloves for chilli and open a window for horseradish. Keep your hands off your eyes.
step-gloves-and-window-title = Gloves and window
step-gloves-and-window-why = Both burn skin and eyes.

step-ready-five-plants = Wash and peel horseradish, ginger, onion and garlic. Grate or slice them thin, and slice the chilli.
step-ready-five-plants-title = Prepare five plants

step-weigh-into-glass = Weigh all five into a glass jar, { $grams } in all. Use a plastic or glass lid and no glazed pot.
step-weigh-into-glass-title = Weigh into glass
step-weigh-into-glass-why = Acid eats metal and can draw lead from glaze.

step-pour-the-vinegar-2 = Take cider vinegar of 5 % acid or more and pour it on as listed. Weigh the plants down so that all stay under.
step-pour-the-vinegar-2-title = Pour the vinegar
step-pour-the-vinegar-2-why = Weak vinegar does not keep garlic and onion safe.

step-shake-each-day-2 = Close the jar and shake it each day for { $from } to { $to } days. Push floating bits under.
step-shake-each-day-2-title = Shake each day
step-shake-each-day-2-why = Plants in the air grow mould.

step-honey-then-test = Strain it and stir in honey, at most a quarter of the vinegar. Test it with a pH strip and throw it away above 4.6.
step-honey-then-test-title = Honey, then test
step-honey-then-test-why = Honey and wet roots thin the acid.

step-not-for-babies = Write on the label: contains honey, not for babies under 12 months.
step-not-for-babies-title = Not for babies
step-not-for-babies-why = Honey can carry botulism spores.

step-weigh-into-glass-2 = Weigh { $grams } of cut herb into a glass jar. Use a plastic or glass lid and no glazed pot.
step-weigh-into-glass-2-title = Weigh into glass
step-weigh-into-glass-2-why = Acid eats metal and can draw lead from glaze.

step-honey-and-vinegar = Stir { $liquid } as listed, { $volume } in all. Pour it on, stir out the air and push the herb under.
step-honey-and-vinegar-title = Honey and vinegar

step-stir-every-day = Close the jar and stand it in the dark for { $from } to { $to } days. Stir it each day with a clean spoon.
step-stir-every-day-title = Stir every day

step-warm-and-press-2 = Stand the jar in warm water to thin it. Strain it through cloth and press.
step-warm-and-press-2-title = Warm and press

step-test-with-a-strip = Dip a pH strip into the finished mix and aim for 4.0. Throw the mix away if it reads above 4.6.
step-test-with-a-strip-title = Test with a strip
step-test-with-a-strip-why = Above 4.6 the acid no longer holds germs back.

step-cool-then-check-3 = Keep it cool, and in the fridge if it is thin or from fresh herb. Throw it away if it fizzes or smells of yeast.
step-cool-then-check-3-title = Cool, then check

step-only-crisp-herb = Rub a leaf and bend a stem. Dry the herb longer if they do not crumble and snap.
step-only-crisp-herb-title = Only crisp herb
step-only-crisp-herb-why = Damp herb makes oil go bad.

step-dry-jar-dry-hands = Dry the jar, the lid, the spoon and your hands fully.
step-dry-jar-dry-hands-title = Dry jar, dry hands
step-dry-jar-dry-hands-why = A few drops of water can spoil the oil.

step-weigh-the-herb-9 = Crush the herb and weigh { $grams } of it into the dry jar.
step-weigh-the-herb-9-title = Weigh the herb

step-pour-the-oil = Pour on { $volume } of { $liquid } and stir out the air. See that oil stands a finger above the herb.
step-pour-the-oil-title = Pour the oil
step-pour-the-oil-why = Herb in the air brings mould.

step-turn-each-day-3 = Close the jar and stand it in the dark for { $from } to { $to } days. Turn it once a day.
step-turn-each-day-3-title = Turn each day

step-press-through-cloth = Strain the oil through a dry cloth. Press the herb well.
step-press-through-cloth-title = Press through cloth

step-leave-the-water = Let the oil stand for a day. Pour off the clear oil, leave any water behind and fill small, dark bottles.
step-leave-the-water-title = Leave the water

step-smell-and-look = Keep it cool and dark. Throw it away if it smells of paint or putty, or if it clouds, fizzes or moulds.
step-smell-and-look-title = Smell and look

step-weigh-and-cover = Dry your jar and hands. Weigh { $grams } of herb into the jar and pour on { $volume } of { $liquid }.
step-weigh-and-cover-title = Weigh and cover
step-weigh-and-cover-why = Water in hot oil spits and spoils it.

step-set-a-water-bath = Stand the open jar in a pan of warm water on the lowest heat. Use no open flame and splash no water in.
step-set-a-water-bath-title = Set a water bath

step-hold-it-low = Hold the oil at 40 to 60 °C, in spells, over { $from } to { $to } days. Stir it now and then.
step-hold-it-low-title = Keep it gently warm
step-hold-it-low-why = Hotter oil burns the herb and ages faster.

step-stay-with-it = Stay in the room while the heat is on. Smother burning oil with a lid, never with water.
step-stay-with-it-title = Stay with it
step-stay-with-it-why = Hot oil can catch fire.

step-cool-and-press = Let it cool until the jar feels hand-warm. Strain it through a dry cloth and press.
step-cool-and-press-title = Cool and press

step-make-a-little = Make only as much as you will eat in 4 days.
step-make-a-little-title = Make a little
step-make-a-little-why = Fresh plant in oil can form botulism poison.

step-wash-and-dry = Wash the herb or peel the garlic. Pat all of it fully dry.
step-wash-and-dry-title = Wash and dry

step-weigh-and-cover-2 = Weigh { $grams } into a clean glass. Pour on { $volume } of { $liquid } until all is under.
step-weigh-and-cover-2-title = Weigh and cover

step-chill-at-once = Put it in the fridge at once, at 4 °C or colder. Leave it out only while you eat.
step-chill-at-once-title = Chill at once
step-chill-at-once-why = Warmth lets the poison form.

step-date-the-glass = Write the last day on the glass: 4 days from now.
step-date-the-glass-title = Date the glass

step-freeze-the-rest = Freeze what you will not eat in time, on the first day. Thaw it in the fridge.
step-freeze-the-rest-title = Freeze the rest

step-bin-it-untasted = Throw away what is left after 4 days, even if it looks and smells good.
step-bin-it-untasted-title = Throw it away untasted
step-bin-it-untasted-why = The poison gives no sign you can see, smell or taste.

step-three-herbs-only = Take fresh basil, oregano or rosemary and no other plant. Use the garlic steps for garlic.
step-three-herbs-only-title = Three herbs only
step-three-herbs-only-why = Only these plants were tested.

step-wash-the-sprigs = Wash the sprigs and shake them dry. Leave the leaves on the stems and weigh { $grams }.
step-wash-the-sprigs-title = Wash the sprigs

step-make-the-acid-bath = Weigh 3 parts citric acid into 97 parts warm water and stir. Use no vinegar, lemon juice or vitamin C.
step-make-the-acid-bath-title = Make the acid bath
step-make-the-acid-bath-why = Only citric acid was tested.

step-ten-times-acid = Pour on ten times the herb's weight of acid bath. Push the sprigs under.
step-ten-times-acid-title = Ten times acid

step-under-for-24-hours = Weigh it down so that all of it stays under for 24 hours. Start the time again if any floats up.
step-under-for-24-hours-title = Under for 24 hours
step-under-for-24-hours-why = What is not under does not turn sour.

step-drain-no-rinse = Drain it well in a sieve. Do not rinse it.
step-drain-no-rinse-title = Drain, no rinse
step-drain-no-rinse-why = Rinsing washes the acid out again.

step-pour-the-oil-2 = Put it in a clean, dry jar. Pour on { $volume } of { $liquid } until all is covered.
step-pour-the-oil-2-title = Pour the oil

step-cool-and-dark = Strain the oil when you like the taste. Keep it cool and dark, best in the fridge, and throw it away when rancid.
step-cool-and-dark-title = Cool and dark
step-cool-and-dark-why = This oil may stand at room temperature; the fridge keeps its taste.

step-peel-and-chop = Peel fresh garlic and chop it to bits of 6 mm or less. Add no other plant.
step-peel-and-chop-title = Peel and chop
step-peel-and-chop-why = Acid does not reach the core of bigger bits.

step-weigh-the-garlic = Weigh { $grams } of the chopped garlic into a glass bowl.
step-weigh-the-garlic-title = Weigh the garlic

step-three-times-acid = Pour on three times the garlic's weight of acid bath. Stir it well.
step-three-times-acid-title = Three times acid

step-choose-hard-parts = Take root, bark, wood or seed. Leave out herbs that smell strong.
step-choose-hard-parts-title = Choose hard parts
step-choose-hard-parts-why = Boiling drives the scent off.

step-weigh-and-crush = Crush or slice the plant. Weigh { $grams } into a steel or enamel pan with a lid.
step-weigh-and-crush-title = Weigh and crush
step-weigh-and-crush-why = One part plant makes 20 parts of brew.

step-start-it-cold = Pour on cold water, a fifth more than { $volume }.
step-start-it-cold-title = Start it cold
step-start-it-cold-why = Some of it boils away.

step-simmer-it-gently = Bring it to the boil with the lid on. Simmer it for 10 to 15 minutes.
step-simmer-it-gently-title = Simmer it gently

step-strain-make-up = Strain it hot. Pour fresh hot water through the herb until you have { $volume }.
step-strain-make-up-title = Strain, make up

step-one-day-only = Cool it fast and keep it in the fridge. Throw away what is left after 24 hours.
step-one-day-only-title = One day only
step-one-day-only-why = Nothing in it holds germs back.

step-brew-it-first = Make a strong decoction or a cooked fruit juice. Let it settle and pour off the clear part.
step-brew-it-first-title = Brew it first

step-weigh-both = Note the weight of the empty pan. Weigh in { $grams } of clear liquid, then weigh out twice as much sugar.
step-weigh-both-title = Weigh both

step-melt-the-sugar = Stir in the sugar over low heat until it has melted. Do not let it boil hard.
step-melt-the-sugar-title = Melt the sugar
step-melt-the-sugar-why = Hard boiling turns it brown.

step-make-up-the-weight = Skim it, weigh it and take off the weight of the pan. Add boiled water up to three times the weight of the liquid.
step-make-up-the-weight-title = Make up the weight
step-make-up-the-weight-why = With less sugar than two thirds it may spoil.

step-fill-it-hot = Boil the bottles and pour the hot syrup into hot glass. Close them and write the date on them.
step-fill-it-hot-title = Fill it hot
step-fill-it-hot-why = Cold glass cracks.

step-cold-once-open = Keep it cool and put it in the fridge once open. Store elderberry syrup in the fridge or freezer only.
step-cold-once-open-title = Cold once open
step-cold-once-open-why = Some elderberries are not sour enough for room temperature.

step-know-the-signs-2 = Throw it away if it fizzes, moulds or smells of yeast. Wipe drops off the neck after each use.
step-know-the-signs-2-title = Know the signs
step-know-the-signs-2-why = Water drops on top let mould start.

step-cool-and-weigh = Let it cool until hand-warm. Weigh { $grams } of it, then weigh out as much honey.
step-cool-and-weigh-title = Cool and weigh
step-cool-and-weigh-why = Heat drives off the honey's scent.

step-stir-in-honey = Stir the honey in slowly until it has melted. Skim off the foam.
step-stir-in-honey-title = Stir in honey

step-bottle-it-clean = Boil small bottles, let them cool and fill them to the neck.
step-bottle-it-clean-title = Bottle it clean

step-two-weeks-cold = Keep it in the fridge and finish it within 2 weeks. Freeze what you need later.
step-two-weeks-cold-title = Two weeks cold
step-two-weeks-cold-why = It holds too much water to keep by itself.

step-know-the-signs-3 = Throw it away if it fizzes, moulds or smells of yeast.
step-know-the-signs-3-title = Know the signs

step-cook-the-fruit = Cook the fruit first and press out its juice. Let the juice grow cold.
step-cook-the-fruit-title = Cook the fruit
step-cook-the-fruit-why = Raw elderberries are poisonous.

step-measure-the-parts-2 = Measure 2 parts spirit or tincture, 3 parts syrup and 3 parts cooked juice.
step-measure-the-parts-2-title = Measure the parts

step-mix-it-slowly-2 = Pour the cold syrup into the spirit bit by bit and stir. Add the juice last.
step-mix-it-slowly-2-title = Mix it slowly
step-mix-it-slowly-2-why = Mixed too fast, it turns cloudy.
