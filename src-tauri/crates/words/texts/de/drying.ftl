### The drying rack.
# Warum eine Trocknungsvorhersage nicht mehr sagt.

lot-not-weighed-yet = Seit der Ernte wurde es nicht gewogen, darum ist der Wassergehalt jetzt nicht bekannt.
lot-cannot-say-yet = Noch zu früh. Bis etwa 85 % des Wassers weg sind, sagen Wägungen wenig über das Ende.
lot-still-too-heavy = Noch zu schwer, um trocken zu sein. Die Schätzung beruht auf dem, was vorher bekannt war.
lot-time-too-uncertain = Die restliche Zeit ist noch unsicher. Wieg es in einem Tag noch einmal.
lot-may-not-get-there = In diesem Raum trocknet es vielleicht nicht fertig. Notier Temperatur und Luftfeuchte, oder trockne es im Warmen fertig.
lot-room-too-damp = Die Luft ist zu feucht, um es zu trocknen. Trockne es im Warmen fertig, oder stell es um.
lot-air-out-of-range = Für diese Luft fehlen Werte. Wie trocken das Kraut darin wird, ist nicht bekannt.
lot-air-not-noted = Die Luftfeuchte wurde nicht notiert. In einem feuchten Raum sinkt das Gewicht vielleicht nicht mehr, bevor das Kraut trocken ist.
lot-scale-too-coarse = Die Waage ist für so wenig Kraut zu grob. Prüf es mit der Hand, oder nimm eine feinere Waage.
lot-odd-weighing = Eine Wägung passt nicht zu den anderen und zählt nicht mit. Prüf sie.
lot-unlike-its-kind = Es trocknet anders als bei dieser Pflanze üblich. War es nass oder gewaschen, als du es frisch gewogen hast?
lot-probably-dry = Das Gewicht sinkt nicht mehr, also ist es wohl trocken. Mach die Bruchprobe.

# Eine Horde in einer Liste, und was bei ihr ansteht.

tray-probably-dry = wohl trocken: Mach die Bruchprobe
tray-try-the-snap-test = Wohl trocken bei { $stop }: Mach die Bruchprobe und nimm es ab, wenn es bricht.

# Angaben, nach denen gefragt wird, bevor sie gelten.

weighing-heavier-than-fresh = { $mass }? Das ist mehr als das frische Kraut mit der Horde, { $fresh }. Prüf die Waage.
weighing-off-its-course = { $mass }? Die Horde wog { $days ->
    [0] heute früher
    [1] gestern
   *[other] vor { $days } Tagen
} { $before }. Prüf die Waage.
weighing-too-light = { $mass }? Frisch wog die Horde { $fresh }, und trocken sollte sie mehr wiegen. Prüf die Waage.
home-seldom-picks-so-much = { $mass }? So viel von einer Pflanze erntet kaum ein Haushalt. Prüf Waage und Einheit.

# How far a tray is, in one line.

tray-dried-left = getrocknet, noch { $mass }
tray-lost = beim Trocknen weggeworfen
tray-dry = trocken: abnehmen
tray-not-weighed-for = seit mehr als { $days ->
    [one] einem Tag
   *[other] { $days } Tagen
} nicht gewogen
tray-air-too-damp = die Luft ist zu feucht zum Trocknen
tray-scale-too-coarse = die Waage ist zu grob dafür
tray-not-weighed = noch nicht gewogen
tray-too-early = noch zu früh, um etwas zu sagen
tray-weigh-now = jetzt wiegen
tray-hours-at-most = noch bis zu { $high ->
    [one] 1 Stunde
   *[other] { $high } Stunden
}
tray-hours-about = noch etwa { $high ->
    [one] 1 Stunde
   *[other] { $high } Stunden
}
tray-hours-between = noch { $low } bis { $high } Stunden
tray-days-at-most = noch bis zu { $high ->
    [one] 1 Tag
   *[other] { $high } Tage
}
tray-days-about = noch etwa { $high ->
    [one] 1 Tag
   *[other] { $high } Tage
}
tray-days-between = noch { $low } bis { $high } Tage
# $says is one of the lines above.
tray-says = { CAPITAL($says) }.

# What the figures mean.

dried-to = Trocken heißt: auf { $moisture } Wasser getrocknet.
wet-teaches-nothing = Es wurde nass gewogen. Darum zählt sein Trockengewicht nicht für die nächste Charge.
wet-weighs-less = Es wurde nass gewogen, und das Wasser zählt hier als Kraut. Trocken wiegt es weniger, als hier steht.
air-limit = Bei { $humidity } Luftfeuchte und { $temperature } bleiben in diesem Raum etwa { $moisture } Wasser darin.
air-limit-too-damp = Bei { $humidity } Luftfeuchte und { $temperature } bleiben in diesem Raum etwa { $moisture } Wasser darin. Trockne es warm fertig oder stell es um.
source-leaf-isotherm = eine eigene Kurve von Korbbuch für Blattkräuter, ausgerichtet an Melissenblatt (Argyropoulos et al. 2012)

# What cannot be done.

tray-thrown-away-on = Diese Horde wurde am { $day } weggeworfen, während sie trocknete.
tray-down-already = Diese Horde wurde schon am { $day } abgenommen.

# How the hand tells that a part is dry.

feel-leaf = Ein trockenes Blatt zerbröselt zwischen Daumen und Finger, und sein Stiel bricht, statt sich zu biegen.
feel-flower = Die Blütenblätter rascheln wie Papier, und die dickste Blüte ist, aufgerissen, am Grund trocken.
feel-herb = Die Blätter zerbröseln, und der dickste Stängel bricht, statt sich zu biegen.
feel-root = Das dickste Stück bricht, statt sich zu biegen. An der Bruchstelle ist es bis in den Kern hart und trocken.
feel-bark = Der dickste Streifen bricht, statt sich zu biegen, und ist innen nirgends feucht.
feel-fruit = Die dickste Frucht ist durch und durch hart. Sie gibt beim Drücken nicht nach, und aufgeschnitten ist nichts darin feucht oder klebrig.
feel-seed = Ein Same ist hart: Ein Fingernagel hinterlässt keine Delle.
feel-mushroom = Die dickste Scheibe bricht, statt sich zu biegen.
feel-other = Das dickste Stück bricht oder zerbröselt, statt sich zu biegen, und ist bis in den Kern trocken.
