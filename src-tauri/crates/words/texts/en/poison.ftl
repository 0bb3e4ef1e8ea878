### Plants that may not be used, and names that mean several.

poison-all = { CAPITAL($plant) } is poisonous, and nothing is made of it. { $why }
poison-inside = { CAPITAL($plant) } must not be swallowed. { $why }
poison-unless-licensed = { CAPITAL($plant) } may not be made into anything without a licence. { $why }
poison-ask = { CAPITAL($plant) } is harmful in some of its parts. Go on only if you know plant and part. { $why }
poison-ask-part = { CAPITAL($plant) } is poisonous in other parts, and we have nothing on this one. { $why }
poison-ask-which = “{ $name }” is the name of several plants, one of them poisonous: { $plant }. Give the full name. { $why }
poison-renamed = This herb was saved as { $plant }, which is on the list of poisonous plants. Another name does not change it. Add the other plant as a herb of its own.

plant-foxglove = foxglove
poison-foxglove = Heart poisons (cardiac glycosides such as digitoxin) make the heart fail.

plant-monkshood = monkshood
poison-monkshood = Aconitine numbs the mouth, stops the breathing and the heart and kills.

plant-poison-hemlock = poison hemlock
poison-poison-hemlock = Coniine and related alkaloids paralyse the muscles of breathing.

plant-water-hemlock-europe = northern water hemlock
poison-water-hemlock-europe = Cicutoxin in root and leaf brings on fits and can kill.

plant-hemlock-water-dropwort = hemlock water-dropwort
poison-hemlock-water-dropwort = Oenanthotoxin brings on fits and can stop the breathing.

plant-autumn-crocus = autumn crocus
poison-autumn-crocus = Colchicine stops cells dividing; sickness comes hours later and a few leaves can kill.

plant-lily-of-the-valley = lily of the valley
poison-lily-of-the-valley = Heart poisons (convallatoxin and others) upset the beat of the heart.

plant-yew = yew
poison-yew = Taxine upsets the beat of the heart and kills without warning; drying does not help.

plant-false-hellebore = false hellebore
poison-false-hellebore = Alkaloids bring on vomiting and let pulse and blood pressure collapse.

plant-thorn-apple = thorn apple
poison-thorn-apple = Atropine, hyoscyamine and scopolamine make you rave, bring on fever and fits and kill.

plant-pokeweed = pokeweed
poison-pokeweed = Saponins and other poisons burn mouth and gut and cause bloody purging and fits.

plant-pennyroyal = pennyroyal
poison-pennyroyal = Pulegone poisons the liver; a spoonful of the oil can bring fits, coma and death.

plant-tansy = tansy
poison-tansy = Thujone poisons nerves, liver and kidneys; it has caused fits and death.

plant-rue = rue
poison-rue = It harms liver and kidneys and brings on abortion; the sap burns skin in the sun.

plant-bryony = bryony
poison-bryony = Cucurbitacins purge with blood, harm the kidneys and bring on fits and abortion.

plant-pasque-flower = pasque flower
poison-pasque-flower = Protoanemonin blisters skin and gut. It harms the kidneys and a child in the womb.

plant-hounds-tongue = hound's-tongue
poison-hounds-tongue = Much pyrrolizidine alkaloid: it destroys the liver.

plant-greater-celandine = greater celandine
poison-greater-celandine = It has brought on inflamed livers and jaundice in many users.

plant-christmas-rose = Christmas rose
poison-christmas-rose = Heart poisons (hellebrin) cause vomiting, delirium, fits and failing breath.

plant-laburnum = laburnum
poison-laburnum = Cytisine acts like nicotine: vomiting, confusion, fits and death.

plant-oleander = oleander
poison-oleander = Oleandrin stops the heart; a single leaf may be enough.

plant-castor-bean = castor bean
poison-castor-bean = Ricin in the chewed seed kills cells of gut and organs; a few seeds can kill.

plant-daffodil = daffodil
poison-daffodil = Lycorine causes vomiting and purging; bulbs are taken for onions and leaves for chives.

plant-mezereon = mezereon
poison-mezereon = Mezerein and daphnetoxin burn mouth and gut and harm the kidneys; a few berries can kill.

plant-bloodroot = bloodroot
poison-bloodroot = Sanguinarine and its kin make you vomit and faint and bring on shock and coma.

plant-mayapple = mayapple
poison-mayapple = Podophyllin stops cells dividing. It purges hard, brings on coma and has killed when misused.

plant-white-snakeroot = white snakeroot
poison-white-snakeroot = Tremetol brings trembling, coma and death, even through the milk of a cow that ate it.

plant-ragwort = ragwort
poison-ragwort = Pyrrolizidine alkaloids destroy the liver for good.

plant-groundsel = groundsel
poison-groundsel = Pyrrolizidine alkaloids destroy the liver for good.

plant-poison-ivy = poison ivy
poison-poison-ivy = Urushiol in the sap blisters the skin, mildly or badly.

plant-poison-oak = poison oak
poison-poison-oak = The sap blisters the skin as poison ivy does.

plant-poison-sumac = poison sumac
poison-poison-sumac = The sap blisters the skin as poison ivy does.

plant-giant-hogweed = giant hogweed
poison-giant-hogweed = The sap and sunlight burn the skin into blisters; it can blind.

plant-lords-and-ladies = lords-and-ladies
poison-lords-and-ladies = Needle crystals swell mouth and throat until breathing is hard.

plant-baneberry = baneberry
poison-baneberry = An irritant poison in berry and root: it upsets the gut and can kill.

plant-ivy = ivy
poison-ivy = Saponins in leaf and berry purge and can bring coma; the sap blisters skin.

plant-privet = privet
poison-privet = Berries cause vomiting and purging for days; deaths of children stand in old books.

plant-clematis = clematis
poison-clematis = Protoanemonin from the crushed plant blisters skin and gut.

plant-buttercup = buttercup
poison-buttercup = Protoanemonin from the crushed fresh plant blisters skin, mouth and gut.

plant-spurge = spurge
poison-spurge = The milky sap burns skin, eyes and gut; drinking a brew of it has killed.

plant-henbane = henbane
poison-henbane = Hyoscyamine and scopolamine bring raving, fits and coma; the root was taken for horseradish.

plant-woody-nightshade = woody nightshade
poison-woody-nightshade = Poisons like solanine make you vomit, shake and fall down.

plant-black-nightshade = black nightshade
poison-black-nightshade = Solanine makes you vomit and stagger and can, at worst, stop the lungs.

plant-cherry-laurel = cherry laurel
poison-cherry-laurel = Crushed leaf and kernel give off cyanide; the leaf has been taken for bay.

plant-belladonna = belladonna
poison-belladonna = Atropine, hyoscyamine and scopolamine make you rave and the heart race, bring on fits and kill.

plant-chaparral = chaparral
poison-chaparral = A medical review names it among the herbs that harm the liver.

plant-germander = germander
poison-germander = A medical review names it among the herbs that harm the liver.

plant-kava = kava
poison-kava = A medical review names it among the herbs that harm the liver.

plant-borage = borage
poison-borage = Pyrrolizidine alkaloids harm the liver.

plant-adonis = pheasant's eye
poison-adonis = Heart poisons like those of foxglove.

plant-dwarf-elder = dwarf elder
poison-dwarf-elder = Raw or cooked, it makes you vomit and purges hard.

plant-white-hellebore = white hellebore
poison-white-hellebore = Alkaloids slow the heart and drop the blood pressure; taken for gentian and ramsons.

plant-comfrey = comfrey
poison-comfrey = Swallowed, its pyrrolizidine alkaloids block the veins of the liver.

plant-coltsfoot = coltsfoot
poison-coltsfoot = Pyrrolizidine alkaloids harm the liver; the German pharmacopoeia dropped it for that.

plant-butterbur = butterbur
poison-butterbur = The wild plant holds pyrrolizidine alkaloids that harm the liver.

plant-male-fern = male fern
poison-male-fern = A strong cell poison; many people were poisoned when they took it against worms.

plant-larkspur = larkspur
poison-larkspur = Alkaloids like those of monkshood: cramps, collapse, stopped breathing.

plant-rhododendron = rhododendron
poison-rhododendron = Grayanotoxins slow the heart and drop the blood pressure.

plant-birthwort = birthwort
poison-birthwort = Aristolochic acid ruins the kidneys and brings on cancer of the urinary tract.

plant-wild-ginger = wild ginger
poison-wild-ginger = The drug agency names it with aristolochic acid, which ruins the kidneys.

plant-gelsemium = yellow jessamine
poison-gelsemium = It makes you weak, brings on fits and stops the breathing.

plant-bleeding-heart = bleeding heart
poison-bleeding-heart = Irritates the skin; its wild cousin causes cramps, drooling and laboured breath.

plant-rosary-pea = rosary pea
poison-rosary-pea = Abrin in the chewed seed kills cells as ricin does; seeds can kill.

plant-savin = savin
poison-savin = Sabinyl oils cause bloody purging, abortion and death.

plant-thuja = thuja
poison-thuja = Thujone brings on fits and harms liver and kidneys.

plant-holly = holly
poison-holly = The berries make you vomit, purge you and make you sleepy.

plant-spindle = spindle
poison-spindle = Heart poisons and others: purging, fits, collapse.

plant-black-locust = black locust
poison-black-locust = Robin in bark and seed makes violent vomiting and harms the heart; only the flower is eaten.

plant-broom = broom
poison-broom = Sparteine changes the beat of the heart.

plant-lupin = lupin
poison-lupin = Bitter alkaloids cause trembling, fits and stopped breathing.

plant-lantana = lantana
poison-lantana = Harms liver and nerves; green berries are worst.

plant-angels-trumpet = angel's trumpet
poison-angels-trumpet = Scopolamine and atropine make you rave, bring on fever and kill.

plant-fools-parsley = fool's parsley
poison-fools-parsley = Aethusin, like the poison of water hemlock, causes vomiting and fits.

plant-corncockle = corncockle
poison-corncockle = Saponins burn the gut and break blood cells.

plant-box = box
poison-box = Alkaloids cause vomiting, fits and paralysis.

plant-wisteria = wisteria
poison-wisteria = Lectins cause violent vomiting.

plant-opium-poppy = opium poppy
poison-opium-poppy = Morphine stops the breathing; its making is against the law without a licence.

plant-cannabis = cannabis
poison-cannabis = A controlled drug in many countries; nobody can judge how strong a home extract is.

plant-tobacco = tobacco
poison-tobacco = Nicotine stops the breathing; an extract kills through the skin.

plant-mandrake = mandrake
poison-mandrake = Atropine and scopolamine make you rave, bring on fits and kill.

plant-scopolia = scopolia
poison-scopolia = Atropine and scopolamine make you rave and can kill.

plant-mistletoe = mistletoe
poison-mistletoe = Viscotoxins and lectins slow the heart and inflame the gut.

plant-heliotrope = heliotrope
poison-heliotrope = Pyrrolizidine alkaloids destroy the liver.

plant-vipers-bugloss = viper's bugloss
poison-vipers-bugloss = Pyrrolizidine alkaloids harm the liver.

plant-alkanet = alkanet
poison-alkanet = Pyrrolizidine alkaloids harm the liver; the root is a dye for the skin only.

plant-hemp-agrimony = hemp agrimony
poison-hemp-agrimony = Pyrrolizidine alkaloids harm the liver.

plant-boneset = boneset
poison-boneset = Pyrrolizidine alkaloids harm the liver.

plant-gravel-root = gravel root
poison-gravel-root = Pyrrolizidine alkaloids harm the liver.

plant-life-root = life root
poison-life-root = Pyrrolizidine alkaloids destroy the liver.

plant-wormseed = wormseed
poison-wormseed = Ascaridole in the oil has killed children; leaf only as a pinch of spice.

plant-ephedra = ephedra
poison-ephedra = Ephedrine drives heart and blood pressure up; stroke and death; controlled in many countries.

plant-lobelia = lobelia
poison-lobelia = Lobeline acts like nicotine: vomiting, fits, stopped breathing.

plant-milkweed = milkweed
poison-milkweed = Heart poisons (cardenolides) in sap and root.

plant-dogbane = dogbane
poison-dogbane = Heart poisons like those of foxglove.

plant-squill = squill
poison-squill = Heart poisons and needle crystals.

plant-star-of-bethlehem = star of Bethlehem
poison-star-of-bethlehem = Heart poisons; bulbs and leaves look like wild garlic and onion.

plant-death-camas = death camas
poison-death-camas = Zygacine drops the blood pressure and kills; taken for wild onion.

plant-snowdrop = snowdrop
poison-snowdrop = Lycorine and galantamine make you vomit and slow the heart.

plant-herb-paris = herb paris
poison-herb-paris = Saponins in the black berry cause vomiting and dizziness; taken for bilberry.

plant-solomons-seal = Solomon's seal
poison-solomons-seal = Berries cause vomiting and purging; shoots look like ramsons.

plant-marsh-horsetail = marsh horsetail
poison-marsh-horsetail = Palustrine makes you stagger and weak. It is taken for field horsetail.

plant-ragweed = ragweed
poison-ragweed = Its pollen brings on severe hay fever and asthma. It is taken for mugwort.

plant-wild-parsnip = wild parsnip
poison-wild-parsnip = The sap and sunlight blister the skin.

plant-rough-chervil = rough chervil
poison-rough-chervil = It makes you stagger, purges and weakens. It looks like cow parsley.

plant-cow-parsley = cow parsley
poison-cow-parsley = Some eat it, yet nobody can tell it safely from hemlock: make nothing of a wild one.

plant-wood-anemone = wood anemone
poison-wood-anemone = Protoanemonin burns and blisters skin and gut.

plant-lesser-celandine = lesser celandine
poison-lesser-celandine = Protoanemonin burns the gut, and the plant has harmed the liver.

plant-marsh-marigold = marsh marigold
poison-marsh-marigold = Protoanemonin burns and blisters skin and gut.

plant-globeflower = globeflower
poison-globeflower = Protoanemonin burns and blisters skin and gut.

plant-columbine = columbine
poison-columbine = Gives off cyanide; upsets heart and gut.

plant-cyclamen = cyclamen
poison-cyclamen = Saponins cause purging, fits and collapse.

plant-crown-imperial = crown imperial
poison-crown-imperial = Imperialine makes the heart beat too slowly.

plant-hyacinth = hyacinth
poison-hyacinth = Needle crystals and alkaloids irritate mouth and gut.

plant-iris = iris
poison-iris = Burning resin in the fresh rhizome causes bloody purging.

plant-skunk-cabbage = skunk cabbage
poison-skunk-cabbage = Needle crystals swell mouth and throat.

plant-jack-in-the-pulpit = Jack-in-the-pulpit
poison-jack-in-the-pulpit = Needle crystals swell mouth and throat.

plant-water-hemlock-america = water hemlock
poison-water-hemlock-america = Cicutoxin brings on fits within the hour and kills.

plant-moonseed = moonseed
poison-moonseed = Alkaloids bring on fits; berries are taken for wild grapes.

plant-virginia-creeper = Virginia creeper
poison-virginia-creeper = Needle crystals irritate mouth and gut.

plant-snowberry = snowberry
poison-snowberry = The berries make you vomit and dizzy.

plant-fly-honeysuckle = fly honeysuckle
poison-fly-honeysuckle = Berries cause vomiting, sweating and cramps.

plant-red-elder = red elder
poison-red-elder = Raw berries, leaves and seeds cause vomiting and purging.

plant-buckthorn = buckthorn
poison-buckthorn = Violent purging; fresh bark of alder buckthorn also vomiting.

plant-horse-chestnut = horse chestnut
poison-horse-chestnut = Aesculin and saponins: vomiting, twitching, collapse; not the sweet chestnut.

plant-tonka-bean = tonka bean
poison-tonka-bean = Much coumarin: harms the liver.

plant-periwinkle = periwinkle
poison-periwinkle = Alkaloids drop the blood pressure and change the blood.

plant-goats-rue = goat's rue
poison-goats-rue = Galegine can make the blood sugar fall too low.

plant-sassafras = sassafras
poison-sassafras = Safrole causes liver cancer in animals; banned as a flavour.

plant-calamus = sweet flag
poison-calamus = It holds beta-asarone, which led to cancer in test animals.

plant-wild-lettuce = wild lettuce
poison-wild-lettuce = Too much makes the heart race, the head spin and breathing hard.

plant-bracken = bracken
poison-bracken = Ptaquiloside brings on cancer. Thiaminase robs the body of vitamin B1.

plant-hydrangea = hydrangea
poison-hydrangea = Gives off cyanide; dizziness and vomiting.

plant-cotoneaster = cotoneaster
poison-cotoneaster = Gives off a little cyanide; stomach ache.

plant-peony = peony
poison-peony = Seeds and root cause vomiting and colic.

plant-morning-glory = morning glory
poison-morning-glory = The seeds make you vomit and see what is not there.

plant-nux-vomica = nux vomica
poison-nux-vomica = Strychnine brings on deadly fits.
