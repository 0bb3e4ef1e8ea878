"""Cuts the four faces down to the letters of Latin, Greek and Cyrillic languages and sets lining figures in the sans."""
import sys
from fontTools import subset
from fontTools.ttLib import TTFont

LETTERS = [*range(0x20,0x7F), *range(0xA0,0x180), 0x192, *range(0x218,0x21C), 0x2C6, 0x2DC, *range(0x370,0x400), *range(0x400,0x460), 0x490, 0x491, *range(0x1E80,0x1E86), 0x1E9E, *range(0x2010,0x2016), *range(0x2018,0x201F), 0x2020,0x2021,0x2022,0x2026,0x2030,0x2032,0x2033,0x2039,0x203A,0x2044,0x20AC,0x2122,*range(0x2190,0x2194),0x2212,0x2248,0x2264,0x2265]
def lining(font):
    g = font["GSUB"].table
    m = {}
    for fr in g.FeatureList.FeatureRecord:
        if fr.FeatureTag == "lnum":
            for i in fr.Feature.LookupListIndex:
                for st in g.LookupList.Lookup[i].SubTable:
                    m.update(getattr(st, "ExtSubTable", st).mapping)
    for t in font["cmap"].tables:
        for u, n in list(t.cmap.items()):
            if 0x30 <= u <= 0x39: t.cmap[u] = m.get(n, n)
src, dst, lin = sys.argv[1], sys.argv[2], sys.argv[3] == "lining"
f = TTFont(src)
if lin: lining(f)
o = subset.Options(); o.hinting = False; o.layout_features = ["kern"]; o.name_IDs = [0,1,2,4,6,13,14]; o.drop_tables += ["STAT","gasp","DSIG"]; o.notdef_outline=True
s = subset.Subsetter(o); s.populate(unicodes=LETTERS); s.subset(f); f.save(dst)
c=f.getBestCmap(); print(dst, [f["hmtx"][c[u]][0] for u in range(0x30,0x3a)], f["maxp"].numGlyphs)
