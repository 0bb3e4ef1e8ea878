### Classes of constituents and what dissolves them; each name stands inside a sentence.

class-tannins = tannins
class-mucilage = mucilage
class-alkaloids = alkaloids
class-glycosides = glycosides
class-saponins = saponins
class-flavonoids = flavonoids
class-volatile-oils = volatile oils
class-resins = resins
class-bitters = bitter principles
class-pungents = pungent principles
class-allicin = allicin
class-glucosinolates = glucosinolates
class-anthocyanins = anthocyanins
class-minerals = minerals
class-fixed-oils = fixed oils
class-inulin = inulin
class-strength = { $strength } suits its constituents best ({ $classes }).
