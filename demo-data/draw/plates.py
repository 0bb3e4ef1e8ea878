"""The season's pictures: one function a plate. `python3 plates.py [name ...]` writes them to ../pictures."""

import math
import pathlib
import sys

from brush import Sheet, rgb, shade

UP = -math.pi / 2
OUT = pathlib.Path(__file__).parent.parent / "pictures"
PLATES = {}


def plate(width=1200, height=1500):
    def keep(draw):
        PLATES[draw.__name__] = (draw, width, height)
        return draw

    return keep


def spray(s, x, y, angle, length, leaf, pairs, colour, thick=9, curve=0.0, first=0.18, alternate=False, tuft=True, shrink=0.72, spread=0.95):
    """A stem with leaves in pairs; `leaf(x, y, angle, size)` draws one."""
    points = s.path(x, y, angle, length, curve, 60, 0.01)
    s.stem(points, thick, thick * 0.35, colour)
    for k in range(pairs):
        t = first + (1 - first) * k / pairs
        px, py, pa, _ = points[int(t * 60)]
        size = 1 - shrink * ((t - first) / (1 - first)) ** 1.4
        sides = (1, -1) if not alternate else ((1,) if k % 2 else (-1,))
        # Pairs stand crosswise, so that every second one points at the eye and looks short.
        short = 0.82 if k % 2 and not alternate else 1
        for side in sides:
            a = pa + side * (spread + s.r.uniform(-0.16, 0.16)) * (1 - 0.35 * t) * (0.72 if short < 1 else 1)
            leaf(px, py, a, size * short * s.r.uniform(0.88, 1.08))
    if tuft:
        px, py, pa, _ = points[-1]
        for a, part in ((-1.0, 1.0), (1.05, 0.95), (-0.45, 0.75), (0.5, 0.8), (0.05, 0.6)):
            leaf(px, py, pa + a, (1 - shrink) * part)
    return points


def strips(s, stems, up=75):
    """Short paper strips across the feet of the stems, as on a herbarium sheet."""
    s.layer()
    for x, y, a in stems:
        s.tape(x + math.cos(a) * up, y + math.sin(a) * up, a - UP + s.r.uniform(-0.15, 0.15), 130)
    s.lay(2, 2, 0.25)


def mint(s, colour="#3f7038", stem="#6b4a4f"):
    def leaf(x, y, a, size):
        s.leaf(x, y, a, 200 * size, 88 * size, rgb(colour), tip=1.5, base=0.8, teeth=17, depth=0.10, veins=8)
    return lambda x, y, a, length, curve=0.0, pairs=10: spray(s, x, y, a, length, leaf, pairs, rgb(stem), curve=curve)


@plate()
def peppermint(s):
    s.planks("#b08a60", 4)
    sprig = mint(s)
    for x, a, length, curve, lift in ((500, UP - 0.34, 1010, 0.25, 8), (720, UP + 0.33, 1000, -0.3, 12), (590, UP - 0.08, 1130, 0.10, 16), (650, UP + 0.14, 1080, -0.12, 20)):
        s.layer()
        sprig(x, 1420, a, length, curve)
        s.lay(lift, 12, 0.5)
    s.layer()
    s.twine(610, 1300, UP + 0.05, 210)
    s.lay(6, 4, 0.4)


@plate(1500, 1200)
def peppermint_second(s):
    s.linen("#d8d2c4")
    sprig = mint(s, "#4c7d3c", "#74565a")
    for k in range(7):
        s.layer()
        sprig(60 + 40 * (k % 3), 250 + 120 * k, 0.05 * (3 - k) + s.r.uniform(-0.08, 0.08), 1150 + s.r.uniform(-120, 120), s.r.uniform(-0.3, 0.3), 10)
        s.lay(8 + k, 12, 0.45)


@plate()
def lemon_balm(s):
    s.paper()
    def leaf(x, y, a, size):
        s.leaf(x, y, a, 175 * size, 122 * size, rgb("#6f9a45"), tip=0.9, base=0.66, teeth=13, depth=0.16, round_teeth=True, veins=7)
    for x, a, length, curve in ((430, UP - 0.30, 900, 0.3), (770, UP + 0.30, 900, -0.25), (600, UP + 0.02, 1150, 0.06)):
        s.layer()
        spray(s, x, 1400, a, length, leaf, 9, rgb("#7d8f4d"), curve=curve, spread=1.05, first=0.14)
        s.lay(9, 9, 0.36)
    strips(s, ((430, 1400, UP - 0.30), (770, 1400, UP + 0.30), (600, 1400, UP + 0.02)))


@plate(1500, 1200)
def nettle(s):
    s.linen("#cfc9b8")
    def leaf(x, y, a, size):
        s.leaf(x, y, a, 215 * size, 118 * size, rgb("#41693a"), tip=1.9, base=0.62, teeth=15, depth=0.30, veins=7, bend=0.25 * (1 if math.cos(a) > 0 else -1))
    for k, (x, y, a) in enumerate(((170, 960, -0.75), (1340, 990, -2.35), (110, 300, 0.35), (1400, 260, 2.75), (480, 1090, -1.25), (1030, 1080, -1.95), (755, 1130, UP), (270, 690, -0.3), (1240, 720, -2.8))):
        s.layer()
        spray(s, x, y, a, s.r.uniform(680, 830), leaf, 5, rgb("#6d8450"), 12, s.r.uniform(-0.25, 0.25), spread=1.0, shrink=0.6)
        s.lay(9 + 2 * k, 12, 0.42)


@plate()
def sage(s):
    s.slate("#3d4344")
    def leaf(x, y, a, size):
        s.leaf(x, y, a, 240 * size, 82 * size, rgb("#93a78c"), tip=0.9, base=0.85, teeth=30, depth=0.05, round_teeth=True, veins=11, vein=rgb("#bcc9b4"))
    for k, (x, a, length, curve) in enumerate(((520, -0.95, 900, 0.5), (560, -1.25, 950, 0.25), (640, -1.95, 950, -0.35), (660, -2.2, 860, -0.5), (600, -1.62, 1010, 0.05), (600, -1.4, 860, 0.2), (640, -1.75, 820, -0.2))):
        s.layer()
        spray(s, x, 1330, a, length, leaf, 6, rgb("#8a8f7c"), 11, curve, 0.3, spread=0.8, shrink=0.6)
        s.lay(10 + 2 * k, 12, 0.5)
    s.layer()
    s.twine(603, 1250, UP, 150, (0.82, 0.76, 0.62))
    s.lay(5, 4, 0.4)


def needles(s, colour, length, width, pairs, reach, stem, curled=0.2):
    def one(x, y, a, size):
        s.leaf(x, y, a, length * size, width * size, rgb(colour), tip=0.8, base=0.95, veins=1, bend=s.r.uniform(-curled, curled))
    def sprig(x, y, a, long, curve=0.0, thick=8):
        return spray(s, x, y, a, long, one, pairs, rgb(stem), thick, curve, 0.12, shrink=reach, spread=0.75)
    return sprig


@plate()
def thyme(s):
    s.linen("#ddd5c2")
    sprig = needles(s, "#718a5b", 50, 21, 26, 0.5, "#7b5a45")
    for k in range(19):
        a = UP + 0.12 + (k - 9) * 0.075 + s.r.uniform(-0.04, 0.04)
        x = 560 + (k - 9) * 11
        s.layer()
        s.stem(s.path(x - math.cos(a) * 190, 1250 - math.sin(a) * 190, a, 200, 0, 6), 7, 6, rgb("#7b5a45"))
        pts = sprig(x, 1250, a, s.r.uniform(480, 860), s.r.uniform(-0.5, 0.5), 6)
        if k % 2:
            px, py, pa, _ = pts[-2]
            for _ in range(16):
                s.floret(px + s.r.uniform(-26, 26), py + s.r.uniform(-26, 22), s.r.uniform(8, 11), rgb("#dcbfdc"), rgb("#a06fa6"), 4)
        s.lay(5 + k % 4, 9, 0.42)
    s.layer()
    s.twine(560, 1250, UP, 235)
    s.lay(5, 4, 0.4)


@plate(1500, 1200)
def rosemary(s):
    s.planks("#8d6a48", 4, False)
    sprig = needles(s, "#4f6b52", 92, 13, 40, 0.4, "#7c6248", 0.35)
    for k, (x, y, a, length, curve) in enumerate(((90, 960, -0.50, 1250, 0.35), (140, 330, 0.22, 1250, -0.25), (70, 640, -0.12, 1350, 0.25), (420, 1130, -0.72, 1050, 0.3), (120, 800, 0.1, 1150, -0.5))):
        s.layer()
        pts = sprig(x, y, a, length, curve, 11)
        for px, py, pa, t in pts[22:54:2]:
            if s.r.random() < 0.55:
                side = s.r.choice((-1, 1))
                s.floret(px - math.sin(pa) * 20 * side, py + math.cos(pa) * 20 * side, 11, rgb("#9fb1da"), rgb("#5d6fa8"), 4)
        s.lay(8 + 2 * k, 11, 0.55)


@plate()
def lavender(s):
    s.planks("#c2a680", 5)
    for k in range(26):
        a = UP + (k - 12.5) * 0.036 + s.r.uniform(-0.04, 0.04)
        x = 600 + (k - 12.5) * 9
        s.layer()
        pts = s.path(x - math.cos(a) * 170, 1290 - math.sin(a) * 170, a, s.r.uniform(900, 1180), s.r.uniform(-0.15, 0.15), 60, 0.006)
        s.stem(pts, 6, 4, s.vary(rgb("#7f9170")))
        for j in range(7):
            px, py, pa, t = pts[60 - j * 3 - (4 if j == 6 else 0)]
            size = 1.0 - 0.07 * j if j else 0.7
            for n in range(8):
                off = s.r.uniform(-1, 1)
                b = pa + off * 0.9
                s.petal(px + math.sin(pa) * off * 5, py - math.cos(pa) * off * 5, b, 42 * size, 17 * size, s.vary(rgb("#6a5aa8"), 0.07, 0.02), 0.06, 1)
            for n in range(2):
                s.floret(px + s.r.uniform(-18, 18), py + s.r.uniform(-16, 6), 10, rgb("#a393dc"), rgb("#5a478f"), 5)
        s.lay(5 + k % 5, 9, 0.36)
    s.layer()
    s.twine(600, 1270, UP, 270, (0.82, 0.76, 0.62))
    s.lay(5, 4, 0.4)


def feathery(s, x, y, a, length, colour, pairs=18, thread=3.0, curve=0.0):
    """A leaf cut into threads, as in yarrow and chamomile."""
    points = s.path(x, y, a, length, curve, pairs)
    s.stem(points, thread * 1.5, thread * 0.7, colour)
    for px, py, pa, t in points[2:]:
        reach = length * 0.21 * math.sin(math.pi * min(1, t * 0.85 + 0.12)) ** 0.6 + 4
        for side in (-1, 1):
            b = pa + side * s.r.uniform(0.75, 1.0)
            twig = s.path(px, py, b, reach, -side * 0.6, 4)
            s.stem(twig, thread * 0.7, thread * 0.4, s.vary(colour))
            for qx, qy, qa, _ in twig[2:]:
                for turn in (-0.8, 0.8):
                    s.stem(s.path(qx, qy, qa + turn, reach * 0.24, 0, 2), thread * 0.6, thread * 0.35, s.vary(colour))


def umbel(s, x, y, a, radius, floret, stem, rays=9, flat=0.5):
    """Flower clusters on rays from one point; drawn from behind to the front."""
    tips = []
    for k in range(rays):
        b = a + (k / (rays - 1) - 0.5) * 2.3
        tips.append((x + math.cos(b) * radius, y + math.sin(b) * radius * flat - abs(math.sin(b - a)) * radius * 0.05 + math.sin(a) * radius * 0.35))
    for tx, ty in tips:
        c = s.c
        c.set_source_rgb(*shade(stem, s.r.uniform(-0.03, 0.03)))
        c.set_line_width(4)
        c.move_to(x, y)
        c.curve_to(x, y + math.sin(a) * radius * 0.25, tx, ty - math.sin(a) * radius * 0.25, tx, ty)
        c.stroke()
    dots = []
    for _ in range(rays * 26):
        rr, b = math.sqrt(s.r.random()) * radius * 1.12, s.r.uniform(0, 2 * math.pi)
        dots.append((x + math.cos(b) * rr, y + math.sin(a) * radius * 0.72 + math.sin(b) * rr * flat * 0.62))
    for dx, dy in sorted(dots, key=lambda p: p[1]):
        floret(dx, dy)


@plate()
def yarrow(s):
    s.paper("#ece1c6")
    stem = rgb("#7c8757")
    for x, a, length, curve, heads in ((420, UP - 0.22, 960, 0.25, 4), (800, UP + 0.2, 900, -0.22, 3), (610, UP + 0.01, 1130, 0.04, 5)):
        s.layer()
        pts = s.path(x, 1430, a, length, curve, 60, 0.008)
        for k in range(8, 46, 6):
            px, py, pa, t = pts[k]
            side = 1 if (k // 6) % 2 else -1
            feathery(s, px, py, pa + side * 0.8, 290 * (1 - t * 0.6), s.vary(rgb("#66804c")), 15, 4.4, -side * 0.5)
        s.stem(pts, 11, 6, stem)
        px, py, pa, _ = pts[50]
        for k in range(heads):
            b = pa + (k - (heads - 1) / 2) * 0.52
            twig = s.path(px, py, b, 165 + 20 * (k % 2), (pa - b) * 0.5, 10)
            s.stem(twig, 6, 4, stem)
            tx, ty, _, _ = twig[-1]
            umbel(s, tx, ty, UP, 80, lambda x, y: s.floret(x, y, 10, rgb("#f6f1e6"), rgb("#d9c98a")), stem, 7)
        s.lay(8, 8, 0.34)
    strips(s, ((420, 1430, UP - 0.22), (800, 1430, UP + 0.20), (610, 1430, UP + 0.01)))


@plate(1500, 1200)
def elder_flower(s):
    s.planks("#6f5a45", 4, False)
    def leaf(x, y, a, size):
        s.leaf(x, y, a, 250 * size, 105 * size, rgb("#4b7440"), tip=1.5, base=0.8, teeth=22, depth=0.10, veins=8)
    for x, y, a in ((240, 1080, -0.55), (1230, 1090, math.pi + 0.55)):
        s.layer()
        spray(s, x, y, a, 620, leaf, 3, rgb("#6d7f4c"), 9, 0.2, 0.3, shrink=0.3)
        s.lay(8, 10, 0.5)
    for k, (x, y, radius) in enumerate(((420, 560, 250), (1080, 520, 260), (760, 830, 280))):
        s.layer()
        s.stem(s.path(x + (750 - x) * 0.1, y + 380, UP + (x - 750) * 0.0004, 390, 0, 10), 13, 9, rgb("#8a9a5e"))
        umbel(s, x, y, UP, radius, lambda x, y: s.floret(x, y, 17, rgb("#f7f0d8"), rgb("#cdb967")), rgb("#93a366"), 13, 0.78)
        s.lay(16 + 3 * k, 14, 0.5)


@plate(1500, 1200)
def elder_berry(s):
    s.linen("#dcd6c8")
    def leaf(x, y, a, size):
        s.leaf(x, y, a, 270 * size, 112 * size, rgb("#5c7b3e"), tip=1.5, base=0.8, teeth=22, depth=0.10, veins=8)
    for x, y, a in ((200, 1100, -0.6), (1300, 1100, math.pi + 0.6)):
        s.layer()
        spray(s, x, y, a, 640, leaf, 3, rgb("#7b4a50"), 9, 0.2, 0.3, shrink=0.3)
        s.lay(8, 10, 0.4)
    for k, (x, y, radius) in enumerate(((430, 560, 260), (1080, 500, 250), (760, 830, 290))):
        s.layer()
        s.stem(s.path(x, y + 330, UP, 340, 0, 10), 14, 9, rgb("#8c3f55"))
        umbel(s, x, y, UP, radius, lambda x, y: s.berry(x, y, 18, 18, 0, s.vary(rgb("#2a1730"), 0.03, 0.02)), rgb("#9a4560"), 12, 0.85)
        s.lay(18, 14, 0.45)


def chamomile_head(s, x, y, radius, tilt=1.0, turn=0.0):
    s.head(x, y, radius, 15, rgb("#f6f3ea"), rgb("#e2b03a"), 0.36, 0.30, 1, tilt, turn, 0.25, 0.10)


@plate()
def chamomile(s):
    s.paper("#f0e7d2")
    green = rgb("#7b9a5a")
    for k, (x, a, length) in enumerate(((360, UP - 0.30, 900), (850, UP + 0.28, 880), (520, UP - 0.10, 1080), (700, UP + 0.10, 1020), (610, UP, 760))):
        s.layer()
        pts = s.path(x, 1440, a, length, -(a - UP) * 0.7, 60, 0.01)
        for j in range(6, 50, 7):
            px, py, pa, t = pts[j]
            side = 1 if (j // 7) % 2 else -1
            feathery(s, px, py, pa + side * 0.7, 210 * (1 - t * 0.5), s.vary(green), 9, 4.0, -side * 0.4)
            if j > 20:
                twig = s.path(px, py, pa - side * 0.55, 150 + 60 * s.r.random(), side * 0.4, 10)
                s.stem(twig, 4, 3, green)
                chamomile_head(s, twig[-1][0], twig[-1][1], s.r.uniform(46, 62), s.r.uniform(0.55, 0.9), twig[-1][2] - UP)
        s.stem(pts, 8, 4, green)
        chamomile_head(s, pts[-1][0], pts[-1][1], 74, 0.85, pts[-1][2] - UP)
        s.lay(7 + k, 8, 0.34)


@plate(1500, 1200)
def calendula(s):
    s.planks("#5f4b3a", 5, False)
    spots = [(260, 270), (600, 200), (960, 280), (1270, 230), (180, 640), (520, 590), (870, 640), (1230, 620), (330, 980), (700, 960), (1060, 980), (1360, 950)]
    for k, (x, y) in enumerate(spots):
        s.layer()
        x, y = x + s.r.uniform(-40, 40), y + s.r.uniform(-30, 30)
        tone = rgb(s.r.choice(("#ee8a1c", "#f29d22", "#e8761a", "#f4b02e")))
        s.head(x, y, s.r.uniform(150, 182), 24, tone, rgb(s.r.choice(("#8a4a1a", "#b9651c", "#c98a28"))), 0.30, 0.25, 3, s.r.uniform(0.86, 1), s.r.uniform(0, 6), 0.1, 0.06)
        s.lay(13, 12, 0.55)


@plate()
def calendula_bed(s):
    s.paper("#ebe2cb")
    green = rgb("#6f8f45")
    def leaf(x, y, a, size):
        s.leaf(x, y, a, 260 * size, 82 * size, green, tip=0.7, base=1.15, veins=6)
    for x, a, length, curve in ((400, UP - 0.25, 830, 0.3), (840, UP + 0.25, 760, -0.3), (620, UP, 1010, 0.05)):
        s.layer()
        pts = spray(s, x, 1430, a, length, leaf, 6, rgb("#84a052"), 13, curve, 0.1, True, False, 0.5, 0.7)
        px, py, pa, _ = pts[-1]
        s.head(px, py - 20, 150, 26, rgb("#ef8d1d"), rgb("#8f4d1b"), 0.3, 0.24, 3, 0.82, pa - UP, 0.2)
        s.lay(10, 10, 0.38)


@plate()
def st_johns_wort(s):
    s.paper("#f0e8d4")
    def leaf(x, y, a, size):
        s.leaf(x, y, a, 100 * size, 38 * size, rgb("#5f8144"), tip=0.7, base=0.9, veins=4)
    def flower(x, y, radius):
        turn = s.r.uniform(0, 6)
        for k in range(5):
            s.petal(x, y, turn + k * 1.2566, radius, radius * 0.56, s.vary(rgb("#f0c02c"), 0.03), 0.02, 3)
        for k in range(26):
            a, reach = s.r.uniform(0, 6.28), radius * s.r.uniform(0.2, 0.62)
            s.c.set_source_rgba(*rgb("#c98f12"), 0.9)
            s.c.set_line_width(1.4)
            s.c.move_to(x, y)
            s.c.line_to(x + math.cos(a) * reach, y + math.sin(a) * reach)
            s.c.stroke()
            s.dot(x + math.cos(a) * reach, y + math.sin(a) * reach, 2.8, rgb("#a56a12"))
        s.dot(x, y, radius * 0.14, rgb("#8d9a34"))
    for x, a, length, curve in ((400, UP - 0.26, 900, 0.25), (830, UP + 0.24, 860, -0.25), (620, UP, 1080, 0.06)):
        s.layer()
        pts = spray(s, x, 1440, a, length, leaf, 20, rgb("#9a6a45"), 8, curve, 0.08, shrink=0.35)
        for k in (34, 40, 46, 50, 54, 58):
            px, py, pa, t = pts[k]
            for side in (-1, 1):
                twig = s.path(px, py, pa + side * 0.75, 150 * (1.25 - t * 0.5), -side * 0.5, 8)
                s.stem(twig, 4, 3, rgb("#83904c"))
                tx, ty, ta, _ = twig[-1]
                if s.r.random() < 0.7:
                    flower(tx, ty, s.r.uniform(40, 52))
                else:
                    s.petal(tx, ty, ta, 34, 17, rgb("#d9a92a"), 0, 1)
        flower(pts[-1][0], pts[-1][1], 56)
        s.lay(8, 8, 0.34)
    strips(s, ((400, 1440, UP - 0.26), (830, 1440, UP + 0.24), (620, 1440, UP)), 60)


@plate()
def lime_flower(s):
    s.linen("#d5d4c9")
    stem = rgb("#8a7b52")
    def leaf(x, y, a, size):
        s.leaf(x, y, a, 270 * size, 235 * size, rgb("#56803f"), tip=1.5, base=0.60, teeth=22, depth=0.08, veins=8)
    s.layer()
    pts = s.path(90, 470, 0.05, 930, 0.3, 60, 0.01)
    s.stem(pts, 16, 7, rgb("#6d5640"))
    for k, side in ((8, -1), (20, 1), (30, -1), (44, 1), (56, -1), (59, 1)):
        px, py, pa, t = pts[k]
        foot = s.path(px, py, pa + side * 0.9, 90, 0, 6)
        leaf(foot[-1][0], foot[-1][1], foot[-1][2], 1 - 0.25 * t)
        s.stem(foot, 6, 5, stem)
    s.lay(10, 10, 0.4)
    for k in (10, 22, 34, 46, 57):
        px, py, pa, t = pts[k]
        s.layer()
        a = math.pi / 2 + s.r.uniform(-0.35, 0.35)
        s.leaf(px, py, a, 330, 74, rgb("#b9c47c"), tip=0.6, base=0.95, veins=8)
        mx, my = px + math.cos(a) * 150, py + math.sin(a) * 150
        for j in range(6):
            b = a + (j - 2.5) * 0.26
            twig = s.path(mx, my, a + (j - 2.5) * 0.06, 250 + 30 * s.r.random(), (b - a) * 1.3, 10)
            s.stem(twig, 4, 2.5, rgb("#a7ad6a"))
            tx, ty, ta, _ = twig[-1]
            for p in range(5):
                s.petal(tx, ty, p * 1.2566 + j, 27, 13, rgb("#efe3ae"), 0, 1)
            for _ in range(16):
                u, reach = s.r.uniform(0, 6.28), s.r.uniform(8, 25)
                s.dot(tx + math.cos(u) * reach, ty + math.sin(u) * reach, 2.6, rgb("#d9a93a"))
        s.lay(12, 10, 0.4)


@plate()
def plantain(s):
    s.paper("#e9dfc6")
    def leaf(x, y, a, length):
        s.leaf(x, y, a, length, length * 0.15, rgb("#6a8b49"), tip=0.8, base=1.55, veins=1, bend=0)
        for off in (-0.045, -0.02, 0.02, 0.045):
            s.c.set_source_rgba(*rgb("#93ad70"), 0.6)
            s.c.set_line_width(1.6)
            nx, ny = -math.sin(a), math.cos(a)
            s.c.move_to(x + math.cos(a) * length * 0.06, y + math.sin(a) * length * 0.06)
            s.c.curve_to(x + math.cos(a) * length * 0.35 + nx * off * length * 1.3, y + math.sin(a) * length * 0.35 + ny * off * length * 1.3,
                         x + math.cos(a) * length * 0.7 + nx * off * length * 1.3, y + math.sin(a) * length * 0.7 + ny * off * length * 1.3,
                         x + math.cos(a) * length * 0.95, y + math.sin(a) * length * 0.95)
            s.c.stroke()
    for k, off in enumerate((-1.15, 1.1, -0.7, 0.75, -0.38, 0.40, -0.08)):
        s.layer()
        leaf(610 + off * 20, 1330, UP + off, 900 - abs(off) * 260)
        s.lay(7 + k, 8, 0.34)
    s.layer()
    for k, off in enumerate((-0.36, 0.1, 0.34)):
        pts = s.path(610, 1330, UP + off, 1180 - 70 * k, -off * 0.3, 40)
        s.stem(pts, 6, 4, rgb("#93a063"))
        for px, py, pa, t in pts[33:]:
            for _ in range(16):
                s.dot(px + s.r.uniform(-14, 14), py + s.r.uniform(-12, 12), s.r.uniform(4, 6), s.vary(rgb("#5a4632"), 0.06))
        px, py, pa, t = pts[35]
        for _ in range(26):
            u = s.r.uniform(0, 6.28)
            s.dot(px + math.cos(u) * 26, py + math.sin(u) * 12, 3.6, rgb("#efe6c0"))
    for k in range(7):
        s.root(610 + s.r.uniform(-16, 16), 1330, -UP + s.r.uniform(-0.7, 0.7), s.r.uniform(70, 130), 8, rgb("#b59a70"), 1)
    s.lay(8, 8, 0.34)


@plate(1500, 1200)
def rose_hip(s):
    s.slate("#525756")
    def leaf(x, y, a, size):
        s.leaf(x, y, a, 150 * size, 88 * size, rgb("#6d7f3d"), tip=1.0, base=0.75, teeth=15, depth=0.13, veins=7)
    for k, (x, y, a, length, curve) in enumerate(((90, 360, 0.10, 1300, 0.4), (120, 1020, -0.38, 1350, 0.35))):
        s.layer()
        pts = s.path(x, y, a, length, curve, 60, 0.02)
        s.stem(pts, 15, 6, rgb("#6b4a34"))
        for j in range(5, 58, 6):
            px, py, pa, t = pts[j]
            side = 1 if (j // 6) % 2 else -1
            s.petal(px, py, pa - side * 1.9, 24, 14, rgb("#8a5a3c"), 0, 0)
            if (j // 6) % 3 != 1:
                twig = s.path(px, py, pa + side * 0.85, 210, -side * 0.3, 12)
                s.stem(twig, 5, 3, rgb("#7d7343"))
                for q in (4, 8):
                    for sd in (-1, 1):
                        leaf(twig[q][0], twig[q][1], twig[q][2] + sd * 1.0, 0.8)
                leaf(*twig[-1][:3], 0.95)
        s.lay(10, 11, 0.5)
        s.layer()
        for j in range(8, 60, 6):
            px, py, pa, t = pts[j]
            for n in range(2):
                side = s.r.choice((-1, 1))
                twig = s.path(px, py, pa + side * s.r.uniform(0.5, 1.2), s.r.uniform(80, 130), 0.3 * side, 8)
                s.stem(twig, 5, 4, rgb("#7a6a3a"))
                tx, ty, ta, _ = twig[-1]
                s.berry(tx + math.cos(ta) * 44, ty + math.sin(ta) * 44, 33, 48, ta - math.pi / 2, s.vary(rgb("#b92a1e"), 0.04), rgb("#4b3a26"))
        s.lay(15, 12, 0.5)


@plate(1500, 1200)
def hawthorn(s):
    s.linen("#d9d0bb")
    def leaf(x, y, a, size):
        s.leaf(x, y, a, 165 * size, 130 * size, rgb("#7d7c36"), tip=0.9, base=0.85, teeth=5, depth=0.42, veins=5)
    for k, (x, y, a, length, curve) in enumerate(((80, 300, 0.2, 1300, 0.1), (1420, 1050, math.pi + 0.22, 1300, 0.25))):
        s.layer()
        pts = s.path(x, y, a, length, curve, 60, 0.025)
        s.stem(pts, 17, 6, rgb("#6a5646"))
        for j in range(5, 59, 5):
            px, py, pa, t = pts[j]
            side = 1 if (j // 5) % 2 else -1
            if j % 3 == 0:
                s.stem(s.path(px, py, pa - side * 1.2, 62, 0, 4), 6, 1.2, rgb("#5a4638"))
            leaf(px, py, pa + side * 0.9, s.r.uniform(0.8, 1.1))
            if s.r.random() < 0.4:
                leaf(px, py, pa + side * 0.2, 0.8)
        s.lay(10, 10, 0.42)
        s.layer()
        for j in range(7, 60, 6):
            px, py, pa, t = pts[j]
            for n in range(4):
                twig = s.path(px, py, pa + s.r.uniform(-1.6, 1.6), s.r.uniform(70, 130), 0.2, 8)
                s.stem(twig, 4, 3, rgb("#7a6a42"))
                tx, ty, ta, _ = twig[-1]
                s.berry(tx + math.cos(ta) * 22, ty + math.sin(ta) * 22, 25, 28, ta - math.pi / 2, s.vary(rgb("#9e2323"), 0.04), rgb("#40301f"))
        s.lay(14, 10, 0.45)


@plate()
def valerian_root(s):
    s.planks("#9a7a58", 4)
    for k, (x, y) in enumerate(((420, 430), (820, 520))):
        s.layer()
        for n in range(24):
            s.root(x + s.r.uniform(-60, 60), y + s.r.uniform(-10, 50), -UP + s.r.uniform(-0.75, 0.75), s.r.uniform(420, 800), s.r.uniform(11, 18), rgb("#b3946a"), 2)
        for n in range(5):
            a = UP + (n - 2) * 0.28
            s.stem(s.path(x + (n - 2) * 22, y, a, s.r.uniform(100, 170), 0, 8), 26, 20, s.vary(rgb("#8f9a5c")))
        s.crown(x, y + 10, 92, rgb("#94764d"))
        s.lay(14, 12, 0.52)


@plate()
def dandelion_root(s):
    s.slate("#41474a")
    def leaf(x, y, a, size):
        s.leaf(x, y, a, 470 * size, 118 * size, rgb("#5a853f"), tip=0.8, base=1.7, teeth=6, depth=0.66, veins=7, vein=rgb("#b9a58f"), backward=True, bend=s.r.uniform(-0.5, 0.5))
    for k, (x, a, length) in enumerate(((300, 0.05, 800), (620, -0.04, 880), (930, 0.02, 760))):
        s.layer()
        for n in range(5):
            leaf(x, 470 + 20 * k, UP + (n - 2) * 0.30 + s.r.uniform(-0.08, 0.08), s.r.uniform(0.75, 1.0))
        s.root(x, 450 + 20 * k, -UP + a, length, 62, rgb("#a9855a"), 2, True, s.r.uniform(-0.25, 0.25))
        s.crown(x, 462 + 20 * k, 36, rgb("#8d8752"))
        s.lay(14, 12, 0.55)


@plate(1500, 1200)
def echinacea_root(s):
    s.paper("#e6dabd")
    s.layer()
    for n in range(22):
        s.root(360 + s.r.uniform(-60, 60), 420 + s.r.uniform(-40, 40), -UP * 0.55 + s.r.uniform(-0.75, 0.75), s.r.uniform(500, 860), s.r.uniform(13, 22), rgb("#6e5038"), 2)
    for n in range(6):
        s.stem(s.path(345 + (n % 3) * 30, 400 + (n // 3) * 24, UP - 0.5 + n * 0.16, 140, 0, 6), 24, 19, s.vary(rgb("#78764a")))
    s.crown(365, 425, 100, rgb("#664a33"))
    s.lay(13, 11, 0.42)
    for x, y, turn in ((1130, 330, 0.25), (1290, 640, -0.3)):
        s.layer()
        s.stem(s.path(x, y, -UP + turn, 460, -turn, 20), 13, 11, rgb("#74814d"))
        for k in range(17):
            a = math.pi * (0.06 + 0.88 * k / 16)
            s.petal(x + math.cos(a) * 30, y + 8 + math.sin(a) * 12, a, 170, 42, s.vary(rgb("#b7679a"), 0.03), 0.08, 3)
        s.dot(x, y - 14, 74, rgb("#8b4a22"), 0.16)
        for k in range(150):
            rr, a = 72 * math.sqrt(k / 150), k * 2.39996
            px, py = x + rr * math.cos(a), y - 16 + rr * math.sin(a) * 0.92
            s.petal(px, py, math.atan2(py - y - 40, px - x) if rr > 10 else UP, 17, 6, s.vary(rgb("#d8752a"), 0.06), 0, 0)
        s.lay(14, 12, 0.42)


@plate(1500, 1200)
def rose_petal(s):
    s.planks("#dccfb8", 4, False)
    for k in range(90):
        s.layer()
        x, y, a = s.r.uniform(80, 1420), s.r.uniform(80, 1120), s.r.uniform(0, 6.3)
        tone = rgb(s.r.choice(("#d98aa0", "#e2a3b2", "#cf738f", "#ecc0c6")))
        s.petal(x, y, a, s.r.uniform(120, 165), s.r.uniform(120, 150), s.vary(tone, 0.03), 0.1, 5)
        s.lay(7, 8, 0.30) if k % 3 == 0 else s.lay(5, 7, 0.24)


def main(names):
    OUT.mkdir(exist_ok=True)
    for seed, (name, (draw, width, height)) in enumerate(PLATES.items(), 11):
        if names and name not in names:
            continue
        s = Sheet(width, height, seed)
        draw(s)
        path = OUT / (name.replace("_", "-") + ".jpg")
        s.save(path)
        print(path.name, path.stat().st_size // 1024, "KB")


main(sys.argv[1:])
