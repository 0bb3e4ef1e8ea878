### Pflanzen, die nicht verwendet werden, und Namen, die mehrere meinen.

poison-all = { CAPITAL($plant) } ist giftig, daraus wird nichts hergestellt. { $why }
poison-inside = { CAPITAL($plant) } darf nicht eingenommen werden. { $why }
poison-unless-licensed = { CAPITAL($plant) } darf ohne Erlaubnis nicht verarbeitet werden. { $why }
poison-ask = { CAPITAL($plant) } schadet in manchen Teilen. Mach nur weiter, wenn du Pflanze und Teil sicher kennst. { $why }
poison-ask-part = { CAPITAL($plant) } ist in anderen Teilen giftig. Zu diesem Teil gibt es hier keine Angaben. { $why }
poison-ask-which = „{ $name }“ heißen mehrere Pflanzen, eine davon giftig: { $plant }. Gib den genauen Namen an. { $why }
poison-renamed = Diese Pflanze steht als { $plant } im Buch und damit auf der Liste der Giftpflanzen. Ein anderer Name ändert das nicht: Leg die andere Pflanze neu an.

plant-foxglove = Roter Fingerhut
poison-foxglove = Herzgifte (Glykoside wie Digitoxin) lassen das Herz versagen.

plant-monkshood = Blauer Eisenhut
poison-monkshood = Aconitin macht den Mund taub, hält Atem und Herz an und tötet.

plant-poison-hemlock = Gefleckter Schierling
poison-poison-hemlock = Coniin und verwandte Alkaloide lähmen die Atemmuskeln.

plant-water-hemlock-europe = Wasserschierling
poison-water-hemlock-europe = Cicutoxin in Wurzel und Blatt löst Krämpfe aus und kann töten.

plant-hemlock-water-dropwort = Safranrebendolde
poison-hemlock-water-dropwort = Oenanthotoxin löst Krämpfe aus und kann den Atem anhalten.

plant-autumn-crocus = Herbstzeitlose
poison-autumn-crocus = Colchicin hält die Zellteilung auf; Übelkeit kommt erst nach Stunden, wenige Blätter können töten.

plant-lily-of-the-valley = Maiglöckchen
poison-lily-of-the-valley = Herzgifte (Convallatoxin und andere) stören den Herzschlag.

plant-yew = Eibe
poison-yew = Taxin stört den Herzschlag und tötet ohne Vorzeichen; Trocknen hilft nicht.

plant-false-hellebore = Grüner Germer
poison-false-hellebore = Alkaloide lösen Erbrechen aus und lassen Puls und Blutdruck zusammenbrechen.

plant-thorn-apple = Stechapfel
poison-thorn-apple = Atropin, Hyoscyamin und Scopolamin bringen Delirium, Fieber, Krämpfe und Tod.

plant-pokeweed = Kermesbeere
poison-pokeweed = Saponine und andere Gifte verätzen Mund und Darm, mit blutigem Durchfall und Krämpfen.

plant-pennyroyal = Poleiminze
poison-pennyroyal = Pulegon vergiftet die Leber; ein Löffel des Öls kann Krämpfe, Koma und Tod bringen.

plant-tansy = Rainfarn
poison-tansy = Thujon vergiftet Nerven, Leber und Nieren; es hat Krämpfe und Todesfälle ausgelöst.

plant-rue = Weinraute
poison-rue = Schadet Leber und Nieren und löst Fehlgeburten aus; der Saft verbrennt die Haut in der Sonne.

plant-bryony = Zaunrübe
poison-bryony = Cucurbitacine verursachen blutigen Durchfall, Nierenschäden, Fehlgeburten und Krämpfe.

plant-pasque-flower = Küchenschelle
poison-pasque-flower = Protoanemonin zieht Blasen auf Haut und Darm, reizt die Nieren und schadet dem Ungeborenen.

plant-hounds-tongue = Hundszunge
poison-hounds-tongue = Viele Pyrrolizidinalkaloide: Sie zerstören die Leber.

plant-greater-celandine = Schöllkraut
poison-greater-celandine = Hat bei vielen eine akute Leberentzündung mit Gelbsucht ausgelöst.

plant-christmas-rose = Christrose
poison-christmas-rose = Herzgifte (Hellebrin) bringen Erbrechen, Delirium, Krämpfe und Atemnot.

plant-laburnum = Goldregen
poison-laburnum = Cytisin wirkt wie Nikotin: Erbrechen, Verwirrung, Krämpfe und Tod.

plant-oleander = Oleander
poison-oleander = Oleandrin hält das Herz an; schon ein Blatt kann genügen.

plant-castor-bean = Wunderbaum
poison-castor-bean = Ricin aus dem zerkauten Samen tötet Zellen in Darm und Organen; wenige Samen können töten.

plant-daffodil = Osterglocke
poison-daffodil = Lycorin bringt Erbrechen und Durchfall; Zwiebeln hält man für Speisezwiebeln, Blätter für Schnittlauch.

plant-mezereon = Seidelbast
poison-mezereon = Mezerein und Daphnetoxin verätzen Mund und Darm und schaden den Nieren; wenige Beeren können töten.

plant-bloodroot = Kanadische Blutwurz
poison-bloodroot = Sanguinarin und verwandte Stoffe bringen Erbrechen, Ohnmacht, Schock und Koma.

plant-mayapple = Maiapfel
poison-mayapple = Podophyllin hält die Zellteilung auf; heftiger Durchfall, Koma, nach Missbrauch auch Todesfälle.

plant-white-snakeroot = Weißer Natternkopf-Wasserdost
poison-white-snakeroot = Tremetol bringt Zittern, Koma und Tod, selbst durch die Milch einer Kuh, die davon fraß.

plant-ragwort = Jakobs-Greiskraut
poison-ragwort = Pyrrolizidinalkaloide zerstören die Leber auf Dauer.

plant-groundsel = Gewöhnliches Greiskraut
poison-groundsel = Pyrrolizidinalkaloide zerstören die Leber auf Dauer.

plant-poison-ivy = Giftefeu
poison-poison-ivy = Urushiol im Saft zieht leichte bis schwere Blasen auf der Haut.

plant-poison-oak = Gifteiche
poison-poison-oak = Der Saft zieht Blasen auf der Haut wie beim Giftefeu.

plant-poison-sumac = Giftsumach
poison-poison-sumac = Der Saft zieht Blasen auf der Haut wie beim Giftefeu.

plant-giant-hogweed = Riesen-Bärenklau
poison-giant-hogweed = Saft und Sonnenlicht verbrennen die Haut zu Blasen; er kann blind machen.

plant-lords-and-ladies = Gefleckter Aronstab
poison-lords-and-ladies = Nadelkristalle lassen Mund und Rachen anschwellen, bis das Atmen schwerfällt.

plant-baneberry = Christophskraut
poison-baneberry = Reizgift in Beere und Wurzel: heftige Magen-Darm-Beschwerden, kann töten.

plant-ivy = Efeu
poison-ivy = Saponine in Blatt und Beere führen ab und können Koma bringen; der Saft zieht Blasen.

plant-privet = Liguster
poison-privet = Die Beeren bringen tagelang Erbrechen und Durchfall; alte Bücher nennen Todesfälle von Kindern.

plant-clematis = Waldrebe
poison-clematis = Protoanemonin aus der zerquetschten Pflanze zieht Blasen auf Haut und Darm.

plant-buttercup = Hahnenfuß
poison-buttercup = Protoanemonin aus der frischen, zerquetschten Pflanze zieht Blasen auf Haut, Mund und Darm.

plant-spurge = Wolfsmilch
poison-spurge = Der Milchsaft verätzt Haut, Augen und Darm; ein Sud davon hat getötet.

plant-henbane = Schwarzes Bilsenkraut
poison-henbane = Hyoscyamin und Scopolamin bringen Raserei, Krämpfe und Koma; die Wurzel wurde für Meerrettich gehalten.

plant-woody-nightshade = Bittersüßer Nachtschatten
poison-woody-nightshade = Gifte wie Solanin bringen Erbrechen, Zittern und Zusammenbruch.

plant-black-nightshade = Schwarzer Nachtschatten
poison-black-nightshade = Solanin bringt Erbrechen, Taumeln und selten eine Lähmung der Lunge.

plant-cherry-laurel = Kirschlorbeer
poison-cherry-laurel = Zerdrücktes Blatt und Kern geben Blausäure ab; das Blatt wurde für Lorbeer gehalten.

plant-belladonna = Tollkirsche
poison-belladonna = Atropin, Hyoscyamin und Scopolamin bringen Delirium, Herzrasen, Krämpfe und Tod.

plant-chaparral = Kreosotbusch
poison-chaparral = Eine medizinische Übersicht nennt ihn unter den Kräutern, die der Leber schaden.

plant-germander = Edel-Gamander
poison-germander = Eine medizinische Übersicht nennt ihn unter den Kräutern, die der Leber schaden.

plant-kava = Kava
poison-kava = Eine medizinische Übersicht nennt sie unter den Kräutern, die der Leber schaden.

plant-borage = Borretsch
poison-borage = Pyrrolizidinalkaloide schaden der Leber.

plant-adonis = Frühlings-Adonisröschen
poison-adonis = Herzgifte wie die des Fingerhuts.

plant-dwarf-elder = Zwerg-Holunder
poison-dwarf-elder = Roh und gekocht giftig: heftiges Erbrechen und Durchfall.

plant-white-hellebore = Weißer Germer
poison-white-hellebore = Alkaloide bremsen das Herz und senken den Blutdruck; verwechselt mit Enzian und Bärlauch.

plant-comfrey = Beinwell
poison-comfrey = Verschluckt, verstopfen seine Pyrrolizidinalkaloide die Venen der Leber.

plant-coltsfoot = Huflattich
poison-coltsfoot = Pyrrolizidinalkaloide schaden der Leber; darum steht er nicht mehr im deutschen Arzneibuch.

plant-butterbur = Pestwurz
poison-butterbur = Die wilde Pflanze enthält Pyrrolizidinalkaloide, die der Leber schaden.

plant-male-fern = Wurmfarn
poison-male-fern = Starkes Zellgift; viele Vergiftungen durch den Gebrauch gegen Würmer.

plant-larkspur = Rittersporn
poison-larkspur = Alkaloide wie die des Eisenhuts: Krämpfe, Zusammenbruch, Atemstillstand.

plant-rhododendron = Rhododendron
poison-rhododendron = Grayanotoxine bremsen das Herz und senken den Blutdruck.

plant-birthwort = Osterluzei
poison-birthwort = Aristolochiasäure zerstört die Nieren und verursacht Krebs der Harnwege.

plant-wild-ginger = Haselwurz
poison-wild-ginger = Die Arzneibehörde nennt sie bei Aristolochiasäure, die die Nieren zerstört.

plant-gelsemium = Carolina-Jasmin
poison-gelsemium = Er bringt Schwäche, Krämpfe und Atemstillstand.

plant-bleeding-heart = Tränendes Herz
poison-bleeding-heart = Reizt die Haut; die wilde Verwandte bringt Krämpfe, Speichelfluss und schweren Atem.

plant-rosary-pea = Paternostererbse
poison-rosary-pea = Abrin aus dem zerkauten Samen tötet Zellen wie Ricin; die Samen können töten.

plant-savin = Sadebaum
poison-savin = Sabinylöle bringen blutigen Durchfall, Fehlgeburt und Tod.

plant-thuja = Lebensbaum
poison-thuja = Thujon löst Krämpfe aus und schadet Leber und Nieren.

plant-holly = Stechpalme
poison-holly = Die Beeren bringen Erbrechen, Durchfall und Benommenheit.

plant-spindle = Pfaffenhütchen
poison-spindle = Herzgifte und andere: Durchfall, Krämpfe, Zusammenbruch.

plant-black-locust = Robinie
poison-black-locust = Robin in Rinde und Samen bringt heftiges Erbrechen und schadet dem Herzen; nur die Blüte wird gegessen.

plant-broom = Besenginster
poison-broom = Spartein verändert den Herzschlag.

plant-lupin = Lupine
poison-lupin = Bittere Alkaloide bringen Zittern, Krämpfe und Atemstillstand.

plant-lantana = Wandelröschen
poison-lantana = Schadet Leber und Nerven; grüne Beeren sind am schlimmsten.

plant-angels-trumpet = Engelstrompete
poison-angels-trumpet = Scopolamin und Atropin bringen Delirium, Fieber und Tod.

plant-fools-parsley = Hundspetersilie
poison-fools-parsley = Aethusin, dem Gift des Wasserschierlings ähnlich, bringt Erbrechen und Krämpfe.

plant-corncockle = Kornrade
poison-corncockle = Saponine verätzen den Darm und zerstören Blutzellen.

plant-box = Buchsbaum
poison-box = Alkaloide bringen Erbrechen, Krämpfe und Lähmung.

plant-wisteria = Blauregen
poison-wisteria = Lektine bringen heftiges Erbrechen.

plant-opium-poppy = Schlafmohn
poison-opium-poppy = Morphin hält den Atem an; ohne Erlaubnis ist die Herstellung verboten.

plant-cannabis = Hanf
poison-cannabis = In vielen Ländern Betäubungsmittel; die Wirkung eines Hausauszugs lässt sich nicht abschätzen.

plant-tobacco = Tabak
poison-tobacco = Nikotin hält den Atem an; ein Auszug tötet auch durch die Haut.

plant-mandrake = Alraune
poison-mandrake = Atropin und Scopolamin bringen Delirium, Krämpfe und Tod.

plant-scopolia = Tollkraut
poison-scopolia = Atropin und Scopolamin bringen Delirium und Tod.

plant-mistletoe = Mistel
poison-mistletoe = Viscotoxine und Lektine bremsen das Herz und entzünden den Darm.

plant-heliotrope = Sonnenwende
poison-heliotrope = Pyrrolizidinalkaloide zerstören die Leber.

plant-vipers-bugloss = Natternkopf
poison-vipers-bugloss = Pyrrolizidinalkaloide schaden der Leber.

plant-alkanet = Alkanna
poison-alkanet = Pyrrolizidinalkaloide schaden der Leber; die Wurzel färbt nur für die Haut.

plant-hemp-agrimony = Wasserdost
poison-hemp-agrimony = Pyrrolizidinalkaloide schaden der Leber.

plant-boneset = Durchwachsener Wasserdost
poison-boneset = Pyrrolizidinalkaloide schaden der Leber.

plant-gravel-root = Purpur-Wasserdost
poison-gravel-root = Pyrrolizidinalkaloide schaden der Leber.

plant-life-root = Goldenes Greiskraut
poison-life-root = Pyrrolizidinalkaloide zerstören die Leber.

plant-wormseed = Wurmsamen
poison-wormseed = Ascaridol im Öl hat Kinder getötet; das Blatt nur als Prise Gewürz.

plant-ephedra = Meerträubel
poison-ephedra = Ephedrin treibt Herz und Blutdruck hoch; Schlaganfall und Tod; in vielen Ländern geregelt.

plant-lobelia = Lobelie
poison-lobelia = Lobelin wirkt wie Nikotin: Erbrechen, Krämpfe, Atemstillstand.

plant-milkweed = Seidenpflanze
poison-milkweed = Herzgifte (Cardenolide) in Saft und Wurzel.

plant-dogbane = Hundsgift
poison-dogbane = Herzgifte wie die des Fingerhuts.

plant-squill = Meerzwiebel
poison-squill = Herzgifte und Nadelkristalle.

plant-star-of-bethlehem = Milchstern
poison-star-of-bethlehem = Herzgifte; Zwiebeln und Blätter sehen wie Bärlauch und Zwiebel aus.

plant-death-camas = Jochlilie
poison-death-camas = Zygacin senkt den Blutdruck und tötet; für wilde Zwiebel gehalten.

plant-snowdrop = Schneeglöckchen
poison-snowdrop = Lycorin und Galantamin bringen Erbrechen und bremsen das Herz.

plant-herb-paris = Einbeere
poison-herb-paris = Saponine der schwarzen Beere bringen Erbrechen und Schwindel; für Heidelbeere gehalten.

plant-solomons-seal = Salomonssiegel
poison-solomons-seal = Die Beeren bringen Erbrechen und Durchfall; die Triebe sehen wie Bärlauch aus.

plant-marsh-horsetail = Sumpf-Schachtelhalm
poison-marsh-horsetail = Palustrin bringt Taumeln und Schwäche; für Ackerschachtelhalm gehalten.

plant-ragweed = Ambrosie
poison-ragweed = Der Pollen bringt schweren Heuschnupfen und Asthma; für Beifuß gehalten.

plant-wild-parsnip = Wilder Pastinak
poison-wild-parsnip = Saft und Sonnenlicht ziehen Blasen auf der Haut.

plant-rough-chervil = Taumel-Kälberkropf
poison-rough-chervil = Bringt Taumeln, Durchfall und Schwäche; sieht wie Wiesenkerbel aus.

plant-cow-parsley = Wiesenkerbel
poison-cow-parsley = Manche essen ihn, doch vom Schierling ist er nicht sicher zu trennen: Wilder wird nicht verarbeitet.

plant-wood-anemone = Buschwindröschen
poison-wood-anemone = Protoanemonin zieht Blasen auf Haut und Darm.

plant-lesser-celandine = Scharbockskraut
poison-lesser-celandine = Protoanemonin reizt den Darm; hat der Leber geschadet.

plant-marsh-marigold = Sumpfdotterblume
poison-marsh-marigold = Protoanemonin zieht Blasen auf Haut und Darm.

plant-globeflower = Trollblume
poison-globeflower = Protoanemonin zieht Blasen auf Haut und Darm.

plant-columbine = Akelei
poison-columbine = Gibt Blausäure ab; stört Herz und Darm.

plant-cyclamen = Alpenveilchen
poison-cyclamen = Saponine bringen Durchfall, Krämpfe und Zusammenbruch.

plant-crown-imperial = Kaiserkrone
poison-crown-imperial = Imperialin bremst das Herz.

plant-hyacinth = Hyazinthe
poison-hyacinth = Nadelkristalle und Alkaloide reizen Mund und Darm.

plant-iris = Schwertlilie
poison-iris = Brennendes Harz im frischen Wurzelstock bringt blutigen Durchfall.

plant-skunk-cabbage = Stinkkohl
poison-skunk-cabbage = Nadelkristalle lassen Mund und Rachen anschwellen.

plant-jack-in-the-pulpit = Feuerkolben
poison-jack-in-the-pulpit = Nadelkristalle lassen Mund und Rachen anschwellen.

plant-water-hemlock-america = Gefleckter Wasserschierling
poison-water-hemlock-america = Cicutoxin löst binnen einer Stunde Krämpfe aus und tötet.

plant-moonseed = Mondsame
poison-moonseed = Alkaloide lösen Krämpfe aus; die Beeren hält man für wilde Trauben.

plant-virginia-creeper = Wilder Wein
poison-virginia-creeper = Nadelkristalle reizen Mund und Darm.

plant-snowberry = Schneebeere
poison-snowberry = Die Beeren bringen Erbrechen und Schwindel.

plant-fly-honeysuckle = Rote Heckenkirsche
poison-fly-honeysuckle = Die Beeren bringen Erbrechen, Schwitzen und Krämpfe.

plant-red-elder = Roter Holunder
poison-red-elder = Rohe Beeren, Blätter und Samen bringen Erbrechen und Durchfall.

plant-buckthorn = Kreuzdorn
poison-buckthorn = Führt heftig ab; frische Faulbaumrinde bringt auch Erbrechen.

plant-horse-chestnut = Rosskastanie
poison-horse-chestnut = Aesculin und Saponine: Erbrechen, Zuckungen, Zusammenbruch; sie ist keine Esskastanie.

plant-tonka-bean = Tonkabohne
poison-tonka-bean = Viel Cumarin: Es schadet der Leber.

plant-periwinkle = Immergrün
poison-periwinkle = Alkaloide senken den Blutdruck und verändern das Blut.

plant-goats-rue = Geißraute
poison-goats-rue = Galegin senkt den Blutzucker gefährlich.

plant-sassafras = Sassafras
poison-sassafras = Safrol macht bei Tieren Leberkrebs; als Aroma verboten.

plant-calamus = Kalmus
poison-calamus = Beta-Asaron macht bei Tieren Krebs.

plant-wild-lettuce = Giftlattich
poison-wild-lettuce = Zu viel bringt Herzrasen, Schwindel und schweren Atem.

plant-bracken = Adlerfarn
poison-bracken = Ptaquilosid verursacht Krebs. Thiaminase raubt dem Körper Vitamin B1.

plant-hydrangea = Hortensie
poison-hydrangea = Gibt Blausäure ab; Schwindel und Erbrechen.

plant-cotoneaster = Zwergmispel
poison-cotoneaster = Gibt etwas Blausäure ab; Bauchschmerzen.

plant-peony = Pfingstrose
poison-peony = Samen und Wurzel bringen Erbrechen und Koliken.

plant-morning-glory = Prunkwinde
poison-morning-glory = Die Samen bringen Wahnbilder und Erbrechen.

plant-nux-vomica = Brechnuss
poison-nux-vomica = Strychnin löst tödliche Krämpfe aus.
