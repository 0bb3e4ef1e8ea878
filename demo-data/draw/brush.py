"""Leaves, stems, flowers, roots and grounds, drawn with cairo. What a herb is made of, not which herb."""

import colorsys
import math
import random

import cairo
import numpy as np
from PIL import Image, ImageFilter


def rgb(text):
    return tuple(int(text[i : i + 2], 16) / 255 for i in (1, 3, 5))


def shade(colour, light=0.0, hue=0.0, sat=0.0):
    h, l, s = colorsys.rgb_to_hls(*colour)
    return colorsys.hls_to_rgb((h + hue) % 1, min(1, max(0, l + light)), min(1, max(0, s + sat)))


class Sheet:
    """One picture being drawn: a ground, and layers that throw soft shadows on it."""

    def __init__(self, width, height, seed):
        self.w, self.h = width, height
        self.r = random.Random(seed)
        self.noise = np.random.default_rng(seed)
        self.base = None
        self.c = None
        self.surface = None

    def vary(self, colour, light=0.035, hue=0.012, sat=0.06):
        r = self.r
        return shade(colour, r.uniform(-light, light), r.uniform(-hue, hue), r.uniform(-sat, sat))

    # Grounds -------------------------------------------------------------

    def _cloud(self, scale, stretch=(1, 1)):
        h, w = max(2, int(self.h / (scale * stretch[1]))), max(2, int(self.w / (scale * stretch[0])))
        small = Image.fromarray((self.noise.random((h, w)) * 255).astype(np.uint8))
        return np.asarray(small.resize((self.w, self.h), Image.BICUBIC), np.float32) / 255 - 0.5

    def _ground(self, colour, field):
        light = np.ones((self.h, self.w, 1), np.float32) * np.array(colour, np.float32) * 255
        light = light * (1 + field[..., None])
        y, x = np.mgrid[0 : self.h, 0 : self.w].astype(np.float32)
        # Daylight from the upper left, falling off to the far corner.
        fall = 1.05 - 0.20 * np.hypot(x / self.w - 0.32, y / self.h - 0.28)
        self.base = Image.fromarray((light * fall[..., None]).clip(0, 255).astype(np.uint8))

    def paper(self, colour="#efe6cf"):
        field = 0.05 * self._cloud(240) + 0.03 * self._cloud(40) + 0.03 * self._cloud(3)
        self._ground(rgb(colour), field)

    def linen(self, colour="#d9d3c3"):
        y, x = np.mgrid[0 : self.h, 0 : self.w].astype(np.float32)
        weave = 0.035 * np.sin(x * 2 * math.pi / 7) * np.sin(y * 2 * math.pi / 7)
        threads = 0.06 * self._cloud(4, (1, 40)) + 0.06 * self._cloud(4, (40, 1))
        folds = 0.12 * np.sin((x * 0.8 + y * 0.35) / 260 + 2 * self._cloud(500)) ** 3
        self._ground(rgb(colour), weave + threads + 0.05 * self._cloud(200) + folds * 0.5)

    def slate(self, colour="#454b4d"):
        field = 0.22 * self._cloud(300) + 0.16 * self._cloud(50, (3, 1)) + 0.10 * self._cloud(5)
        self._ground(rgb(colour), field)

    def planks(self, colour="#a77f55", boards=5, upright=True):
        across = self.w if upright else self.h
        y, x = np.mgrid[0 : self.h, 0 : self.w].astype(np.float32)
        u = x if upright else y
        v = y if upright else x
        field = np.zeros((self.h, self.w), np.float32)
        edges = np.linspace(0, across, boards + 1)
        for left, right in zip(edges[:-1], edges[1:]):
            inside = (u >= left) & (u < right)
            phase, bend, tone = self.r.uniform(0, 9), self.r.uniform(40, 90), self.r.uniform(-0.10, 0.08)
            warp = bend * np.sin(v / self.r.uniform(500, 900) + phase) + 26 * self._cloud(220, (1, 4) if upright else (4, 1))
            rings = np.sin((u - left + warp) / self.r.uniform(6, 11)) * 0.045
            field[inside] += (tone + rings)[inside]
            for edge in (left, right):
                field -= 0.5 * np.exp(-(((u - edge) / 2.6) ** 2)) * 0.9
            field += 0.05 * np.exp(-(((u - left - 7) / 4) ** 2))
        grain = 0.10 * self._cloud(5, (1, 45) if upright else (45, 1)) + 0.05 * self._cloud(3, (1, 12) if upright else (12, 1))
        self._ground(rgb(colour), field + grain)

    # Layers --------------------------------------------------------------

    def layer(self):
        self.surface = cairo.ImageSurface(cairo.FORMAT_ARGB32, self.w, self.h)
        self.c = cairo.Context(self.surface)
        self.c.set_line_cap(cairo.LINE_CAP_ROUND)
        self.c.set_line_join(cairo.LINE_JOIN_ROUND)
        return self.c

    def lay(self, lift=10, soft=9, dark=0.42):
        """Puts the layer on the picture, with the shadow of something that lies `lift` pixels above."""
        self.surface.flush()
        data = np.ndarray((self.h, self.w, 4), np.uint8, self.surface.get_data()).copy()
        alpha = Image.fromarray(data[..., 3])
        if dark > 0:
            fallen = Image.new("L", (self.w, self.h))
            fallen.paste(alpha, (int(lift * 0.8), lift))
            fallen = np.asarray(fallen.filter(ImageFilter.GaussianBlur(soft)), np.float32) / 255
            near = np.asarray(alpha.filter(ImageFilter.GaussianBlur(3)), np.float32) / 255
            under = np.asarray(self.base, np.float32)
            under = under * (1 - dark * np.maximum(fallen, near * 0.6))[..., None]
            self.base = Image.fromarray(under.astype(np.uint8))
        a = data[..., 3:4].astype(np.float32) / 255
        over = data[..., 2::-1].astype(np.float32)
        self.base = Image.fromarray((np.asarray(self.base, np.float32) * (1 - a) + over).clip(0, 255).astype(np.uint8))

    def save(self, path, most=150_000):
        """The best quality that stays under `most` bytes: the season must not weigh down a clone."""
        picture = np.asarray(self.base, np.float32)
        grain = self.noise.normal(0, 0.7, (self.h, self.w, 1))
        picture = Image.fromarray((picture + grain).clip(0, 255).astype(np.uint8))
        for quality in range(86, 40, -3):
            picture.save(path, quality=quality, subsampling=2, optimize=True)
            if path.stat().st_size < most - 3_000:
                return

    # Strokes -------------------------------------------------------------

    def path(self, x, y, angle, length, curve=0.0, steps=24, wobble=0.0):
        """Points along a bending stem: (x, y, heading, share of the length)."""
        points, a = [], angle
        for i in range(steps + 1):
            points.append((x, y, a, i / steps))
            a += curve / steps + self.r.uniform(-wobble, wobble)
            x += math.cos(a) * length / steps
            y += math.sin(a) * length / steps
        return points

    def stem(self, points, thick, thin, colour):
        c = self.c
        sides = []
        for x, y, a, t in points:
            half = (thick + (thin - thick) * t) / 2
            sides.append((x - math.sin(a) * half, y + math.cos(a) * half, x + math.sin(a) * half, y - math.cos(a) * half))
        def outline(inner):
            c.move_to(*sides[0][:2])
            for s in sides[1:]:
                c.line_to(*s[:2])
            for s in reversed(sides):
                c.line_to(s[2] * inner + s[0] * (1 - inner), s[3] * inner + s[1] * (1 - inner))
            c.close_path()
        outline(1)
        c.set_source_rgb(*colour)
        c.fill_preserve()
        c.set_source_rgba(*shade(colour, -0.15), 0.8)
        c.set_line_width(1)
        c.stroke()
        outline(0.42)
        c.set_source_rgba(*shade(colour, -0.10), 0.55)
        c.fill()

    def leaf(self, x, y, angle, length, width, colour, tip=1.0, base=0.75, teeth=0, depth=0.12, round_teeth=False,
             bend=0.0, veins=7, vein=None, backward=False):
        """A leaf from its foot: `tip` above 1 is long drawn, `base` under 1 is broad at the foot."""
        c, n = self.c, 60 if not teeth else max(60, teeth * 8)
        colour = self.vary(colour)
        bend += self.r.uniform(-0.12, 0.12)
        mid, a, px, py = [], angle, x, y
        for i in range(n + 1):
            mid.append((px, py, a))
            a += bend / n
            px += math.cos(a) * length / n
            py += math.sin(a) * length / n
        def half(t):
            return width / 2 * (math.sin(math.pi * t**base) ** 0.85) * (1 - t ** (2.2 / tip) * 0.25)
        def edge(side):
            out = []
            for i, (mx, my, ma) in enumerate(mid):
                t = i / n
                w = half(t)
                if teeth:
                    p = (t * teeth) % 1
                    p = 1 - p if backward else p
                    w *= 1 - depth * (abs(math.sin(math.pi * p)) if round_teeth else p if p > 0.2 else 1 - p * 4)
                out.append((mx - math.sin(ma) * w * side, my + math.cos(ma) * w * side))
            return out
        left, right = edge(1), edge(-1)
        lit = math.sin(angle - 0.6)
        for side, points in ((1, left), (-1, right)):
            tone = shade(colour, 0.030 * side * (1 if lit > 0 else -1))
            k = n // 2
            mx, my, _ = mid[k]
            ex, ey = points[k]
            g = cairo.LinearGradient(mx, my, ex, ey)
            g.add_color_stop_rgb(0, *shade(tone, -0.055))
            g.add_color_stop_rgb(0.55, *tone)
            g.add_color_stop_rgb(1, *shade(tone, 0.035))
            c.move_to(x, y)
            for p in points:
                c.line_to(*p)
            for p in reversed(mid):
                c.line_to(p[0], p[1])
            c.close_path()
            c.set_source(g)
            c.fill_preserve()
            c.set_source_rgba(*shade(tone, -0.16), 0.7)
            c.set_line_width(max(0.8, length / 160))
            c.stroke()
        paint = vein or shade(colour, 0.13, sat=-0.08)
        c.set_source_rgba(*paint, 0.85)
        c.set_line_width(max(0.9, width / 38))
        c.move_to(x, y)
        for p in mid[: int(n * 0.96)]:
            c.line_to(p[0], p[1])
        c.stroke()
        c.set_line_width(max(0.6, width / 80))
        c.set_source_rgba(*paint, 0.55)
        for j in range(1, veins):
            t = j / veins * 0.86 + 0.04
            mx, my, ma = mid[int(t * n)]
            reach = min(1.0, t + 0.16)
            for side, points in ((1, left), (-1, right)):
                ex, ey = points[int(reach * n)]
                ex, ey = mx + (ex - mx) * 0.9, my + (ey - my) * 0.9
                c.move_to(mx, my)
                c.curve_to(mx + (ex - mx) * 0.35 - math.cos(ma) * 1, my + (ey - my) * 0.3, mx + (ex - mx) * 0.7, my + (ey - my) * 0.62, ex, ey)
                c.stroke()

    def dot(self, x, y, radius, colour, edge=0.14, glint=0.0):
        c = self.c
        g = cairo.RadialGradient(x - radius * 0.35, y - radius * 0.4, radius * 0.1, x, y, radius)
        g.add_color_stop_rgb(0, *shade(colour, 0.12))
        g.add_color_stop_rgb(0.6, *colour)
        g.add_color_stop_rgb(1, *shade(colour, -edge))
        c.set_source(g)
        c.arc(x, y, radius, 0, 2 * math.pi)
        c.fill()
        if glint:
            c.set_source_rgba(1, 1, 1, glint)
            c.arc(x - radius * 0.36, y - radius * 0.4, radius * 0.18, 0, 2 * math.pi)
            c.fill()

    def petal(self, x, y, angle, length, width, colour, notch=0.0, streaks=2):
        c = self.c
        c.save()
        c.translate(x, y)
        c.rotate(angle)
        c.move_to(0, 0)
        c.curve_to(length * 0.3, -width * 0.62, length * 0.85, -width * 0.62, length, -width * 0.12)
        c.line_to(length * (1 - notch), 0)
        c.line_to(length, width * 0.12)
        c.curve_to(length * 0.85, width * 0.62, length * 0.3, width * 0.62, 0, 0)
        g = cairo.LinearGradient(0, 0, length, 0)
        g.add_color_stop_rgb(0, *shade(colour, -0.12))
        g.add_color_stop_rgb(0.5, *colour)
        g.add_color_stop_rgb(1, *shade(colour, 0.05))
        c.set_source(g)
        c.fill_preserve()
        c.set_source_rgba(*shade(colour, -0.22), 0.45)
        c.set_line_width(max(0.6, width / 26))
        c.stroke()
        for k in range(streaks):
            off = (k + 1) / (streaks + 1) - 0.5
            c.move_to(length * 0.15, off * width * 0.25)
            c.curve_to(length * 0.4, off * width * 0.7, length * 0.7, off * width * 0.7, length * 0.9, off * width * 0.35)
            c.stroke()
        c.restore()

    def head(self, x, y, radius, petals, colour, disc, disc_share=0.34, width=0.42, rows=1, tilt=1.0, turn=0.0, cone=0.0, notch=0.04):
        """A composite flower seen from above (`tilt` 1) or from the side (towards 0)."""
        c, r = self.c, self.r
        c.save()
        c.translate(x, y)
        c.rotate(turn)
        c.scale(1, tilt)
        for row in range(rows):
            reach = radius * (1 - row * 0.17)
            for k in range(petals):
                a = 2 * math.pi * (k + 0.5 * (row % 2)) / petals + r.uniform(-0.06, 0.06)
                self.petal(0, 0, a, reach * r.uniform(0.92, 1.04), radius * width * r.uniform(0.9, 1.1),
                           self.vary(shade(colour, -0.02 * row), 0.03, 0.008, 0.05), notch)
        d = radius * disc_share
        self.dot(0, -cone * d / max(tilt, 0.2), d, disc, 0.20)
        for k in range(int(26 + d * 2.2)):
            # Florets stand on the spiral of the golden angle.
            rr, a = d * 0.93 * math.sqrt(k / (26 + d * 2.2)), k * 2.39996
            self.dot(rr * math.cos(a), rr * math.sin(a) - cone * (d - rr * 0.4) / max(tilt, 0.2), max(1.2, d * 0.085),
                     self.vary(shade(disc, 0.05 - 0.10 * rr / d), 0.05), 0.22)
        c.restore()

    def floret(self, x, y, radius, colour, middle, petals=5):
        turn = self.r.uniform(0, 6.3)
        for k in range(petals):
            a = turn + 2 * math.pi * k / petals
            self.dot(x + math.cos(a) * radius * 0.55, y + math.sin(a) * radius * 0.55, radius * 0.5, self.vary(colour, 0.02), 0.10)
        self.dot(x, y, radius * 0.26, middle, 0.1)

    def berry(self, x, y, rx, ry, turn, colour, crown=None):
        c = self.c
        c.save()
        c.translate(x, y)
        c.rotate(turn)
        c.scale(1, ry / rx)
        self.dot(0, 0, rx, colour, 0.20, 0.55)
        c.restore()
        if crown:
            for k in range(5):
                a = turn + math.pi / 2 + (k - 2) * 0.42
                ex, ey = x + math.cos(turn + math.pi / 2) * ry * 0.93, y + math.sin(turn + math.pi / 2) * ry * 0.93
                self.petal(ex, ey, a, rx * 0.85, rx * 0.22, crown, 0, 0)

    def root(self, x, y, angle, length, thick, colour, fork=3, hair=True, curve=None, order=0):
        r = self.r
        points = self.path(x, y, angle, length, r.uniform(-0.7, 0.7) if curve is None else curve, 34, 0.05)
        tone = self.vary(colour, 0.03)
        if order < 2:
            for _ in range(fork):
                k = r.randrange(4, 30)
                px, py, pa, t = points[k]
                self.root(px, py, pa + r.choice((-1, 1)) * r.uniform(0.35, 0.95), length * r.uniform(0.28, 0.5) * (1 - t * 0.4),
                          thick * (1 - t) * r.uniform(0.25, 0.45) + 1.5, colour, max(0, fork - 1), hair, None, order + 1)
        self.stem(points, thick, max(1.0, thick * 0.12), tone)
        c = self.c
        c.set_line_width(1)
        for px, py, pa, t in points[1:-4]:
            half = (thick * (1 - t * 0.9)) / 2
            if r.random() < 0.7 and half > 3:
                c.set_source_rgba(*shade(tone, -0.2), 0.5)
                s = r.uniform(-1, 0.4)
                c.move_to(px - math.sin(pa) * half * s, py + math.cos(pa) * half * s)
                c.line_to(px - math.sin(pa) * half * (s + 0.5), py + math.cos(pa) * half * (s + 0.5))
                c.stroke()
            if hair and r.random() < 0.35:
                c.set_source_rgba(*shade(tone, 0.05), 0.8)
                a = pa + r.choice((-1, 1)) * r.uniform(0.5, 1.2)
                ll = r.uniform(8, 30)
                c.move_to(px, py)
                c.curve_to(px + math.cos(a) * ll * 0.5, py + math.sin(a) * ll * 0.5, px + math.cos(a + 0.4) * ll * 0.8,
                           py + math.sin(a + 0.4) * ll * 0.8, px + math.cos(a + 0.2) * ll, py + math.sin(a + 0.2) * ll)
                c.stroke()

    def crown(self, x, y, size, colour):
        """The knotty top of a rootstock."""
        for _ in range(110):
            a, reach = self.r.uniform(0, 6.3), self.r.uniform(0, 0.85) * size
            self.dot(x + math.cos(a) * reach, y + math.sin(a) * reach * 0.7, size * self.r.uniform(0.09, 0.2), self.vary(colour, 0.06), 0.14)
        self.c.set_line_width(1.6)
        for _ in range(22):
            self.c.set_source_rgba(*shade(colour, -0.18), 0.4)
            a, reach = self.r.uniform(0, 6.3), self.r.uniform(0, 0.7) * size
            self.c.arc(x + math.cos(a) * reach, y + math.sin(a) * reach * 0.7, size * self.r.uniform(0.15, 0.35), 0.3, self.r.uniform(1.2, 2.6))
            self.c.stroke()

    def twine(self, x, y, angle, width, colour=(0.72, 0.60, 0.42)):
        """A few turns of string round a bunch, and a bow."""
        c = self.c
        nx, ny = -math.sin(angle), math.cos(angle)
        for k in range(-2, 3):
            ox, oy = x + math.cos(angle) * k * 6, y + math.sin(angle) * k * 6
            c.set_line_width(6)
            c.set_source_rgb(*shade(colour, -0.16))
            for light, w in ((-0.16, 6.5), (0.02, 4.5)):
                c.set_source_rgb(*shade(colour, light))
                c.set_line_width(w)
                c.move_to(ox - nx * width / 2, oy - ny * width / 2)
                c.curve_to(ox - nx * width / 4 + 6, oy - ny * width / 4 + 4, ox + nx * width / 4 + 6, oy + ny * width / 4 + 4, ox + nx * width / 2, oy + ny * width / 2)
                c.stroke()
        def cord(*curve):
            for light, w in ((-0.18, 6.5), (0.02, 4.5)):
                c.set_source_rgb(*shade(colour, light))
                c.set_line_width(w)
                c.move_to(x, y)
                c.curve_to(*(value + (x, y)[i % 2] for i, value in enumerate(curve)))
                c.stroke()
        cord(90, -110, 190, -20, 0, 0)
        cord(-90, -120, -190, -30, 0, 0)
        cord(40, 40, 90, 60, 80, 150)
        cord(-20, 50, -80, 70, -50, 165)
        self.dot(x, y, 11, colour, 0.16)

    def tape(self, x, y, angle, length, colour="#e3d4ad"):
        """A strip of gummed paper that holds a specimen."""
        c = self.c
        c.save()
        c.translate(x, y)
        c.rotate(angle)
        c.rectangle(-length / 2, -11, length, 22)
        c.set_source_rgba(*rgb(colour), 0.96)
        c.fill_preserve()
        c.set_source_rgba(0.5, 0.42, 0.25, 0.5)
        c.set_line_width(1)
        c.stroke()
        c.restore()
