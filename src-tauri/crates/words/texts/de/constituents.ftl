### Klassen von Inhaltsstoffen und was sie löst; jeder Name steht in einem Satz.

class-tannins = Gerbstoffe
class-mucilage = Schleimstoffe
class-alkaloids = Alkaloide
class-glycosides = Glykoside
class-saponins = Saponine
class-flavonoids = Flavonoide
class-volatile-oils = ätherische Öle
class-resins = Harze
class-bitters = Bitterstoffe
class-pungents = Scharfstoffe
class-allicin = Allicin
class-glucosinolates = Glucosinolate
class-anthocyanins = Anthocyane
class-minerals = Mineralstoffe
class-fixed-oils = fette Öle
class-inulin = Inulin
class-strength = { $strength } passen am besten zu den Inhaltsstoffen ({ $classes }).
