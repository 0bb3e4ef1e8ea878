### The drying rack.
# Warum eine Trocknungsvorhersage nicht mehr sagt.

lot-not-weighed-yet = Seit der Ernte wurde nicht gewogen, darum ist die Feuchte jetzt nicht bekannt.
lot-cannot-say-yet = Noch zu früh. Bis etwa 85 % des Wassers weg sind, sagen Wägungen wenig über das Ende.
lot-still-too-heavy = Noch ist es schwerer, als es trocken sein kann. Die Schätzung beruht auf dem, was vorher bekannt war.
lot-time-too-uncertain = Die restliche Zeit lässt sich noch nicht eng fassen. Eine weitere Wägung in einem Tag hilft.
lot-may-not-get-there = In dieser Luft bleibt es vielleicht zu früh stehen. Notier Temperatur und Luftfeuchte, oder trockne es warm fertig.
lot-room-too-damp = Die Luft ist zu feucht, um es bis zum Ziel zu trocknen. Trockne es warm fertig, oder stell es um.
lot-air-out-of-range = Wie trocken die Pflanze in solcher Luft werden kann, ist nicht bekannt.
lot-air-not-noted = Die Luft wurde nicht notiert. In einem feuchten Raum kann das Gewicht stillstehen, ehe die Pflanze trocken ist.
lot-scale-too-coarse = Die Waage ist für so wenig Pflanze zu grob. Urteile nach Bruch und Gefühl, oder nimm eine feinere.
lot-odd-weighing = Eine Wägung passt nicht zu den anderen und blieb weg. Sieh sie dir noch einmal an.
lot-unlike-its-kind = Es trocknet nicht wie seinesgleichen. War es nass oder gewaschen, als es frisch gewogen wurde?
lot-probably-dry = Das Gewicht steht am Zielgewicht still, also ist es wohl trocken. Mach die Bruchprobe.

# Eine Horde in einer Liste, und was bei ihr ansteht.

tray-probably-dry = wohl trocken: mach die Bruchprobe
tray-try-the-snap-test = Wohl trocken bei { $stop }: mach die Bruchprobe, und nimm es ab, wenn es bricht.

# Angaben, nach denen gefragt wird, bevor sie gelten.

weighing-heavier-than-fresh = { $mass }? Das ist schwerer als die frische Pflanze samt Horde, { $fresh }. Sieh noch einmal auf die Waage.
weighing-off-its-course = { $mass }? Die Horde wog { $days ->
    [0] heute früher
    [1] gestern
   *[other] vor { $days } Tagen
} { $before }. Sieh noch einmal auf die Waage.
weighing-too-light = { $mass }? Frisch wog die Horde { $fresh }, und trocken sollte sie mehr wiegen. Sieh noch einmal auf die Waage.
home-seldom-picks-so-much = { $mass }? So viel von einer Pflanze erntet kaum ein Haushalt. Sieh noch einmal auf Waage und Einheit.
