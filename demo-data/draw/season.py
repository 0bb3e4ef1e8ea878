"""The demonstration season: writes ../season.json and the EXIF of the pictures (needs exiftool).

Everything here is invented. Weights follow the drying law of the core with dry matter drawn near
the published mean of each herb, so that the rack shows curves as a real one would.
"""

import datetime as dt
import json
import math
import pathlib
import random
import subprocess

from PIL import Image

HERE = pathlib.Path(__file__).parent.parent
R = random.Random(2026)
DEEDS = []


def when(day, clock):
    hour, minute = map(int, clock.split(":"))
    date = dt.date.fromisoformat("2026-" + day)
    # Summer time ends on the last Sunday of October.
    summer = dt.date(2026, 3, 29) <= date < dt.date(2026, 10, 25)
    return dt.datetime(date.year, date.month, date.day, hour, minute, tzinfo=dt.timezone(dt.timedelta(hours=2 if summer else 1)))


def do(at, command, request, save=None):
    deed = {"at": at.isoformat(), "command": command, "request": request}
    DEEDS.append(deed | ({"save": save} if save else {}))


def bed(name, save, **more):
    do(when("04-12", "09:00"), "bed.add", {"name": name, **more}, save)


bed("North wall", "north", area_m2=4, note="Half shade, stays moist.")
bed("South terrace", "south", area_m2=6)
bed("Long bed", "long", area_m2=9)
bed("Kitchen step", "step", area_m2=1.5, note="Pots.")
bed("Stream bank", "stream", wild=True)
bed("Upper hedge", "hedge", wild=True, note="Both sides of the path.")

PLACES = {"north": (46.5312, 8.0711), "south": (46.5310, 8.0714), "long": (46.5309, 8.0709), "step": (46.5311, 8.0712),
          "stream": (46.5334, 8.0752), "hedge": (46.5347, 8.0690)}
PICTURES = []


def picture(name, at, bed_key, zone, gps, sideways=False):
    taken = at - dt.timedelta(minutes=R.randint(12, 40), seconds=R.randint(0, 59))
    lat, lon = PLACES[bed_key]
    PICTURES.append((name, taken, zone, (lat + R.uniform(-2e-4, 2e-4), lon + R.uniform(-2e-4, 2e-4)) if gps else None, sideways))
    return f"pictures/{name}.jpg"


def harvest(key, day, clock, herb, part, fresh, tare, bed_key, stage, surface="dry", note=None, image=None, zone=True, gps=True, sideways=False, sure=False):
    at = when(day, clock)
    request = {"herb": herb, "part": part, "gross_g": fresh + tare, "tare_g": tare, "bed": f"${bed_key}.bed.id", "stage": stage, "surface": surface}
    if note:
        request["note"] = note
    if image:
        request["photos"] = [picture(image, at, bed_key, zone, gps, sideways)]
    if sure or bed_key in ("stream", "hedge"):
        request["look_alike_ruled_out"] = True
    do(at, "harvest.record", request, key)


def tray(key, harvest_key, name, day, clock, fresh, dry_share, per_hour, days, tare=385, end=True, power=0.85, last=0.105, air=None, stop=None):
    """A drying run, weighed after each of `days`; the last weighing takes it down if `end`."""
    start = when(day, clock)
    request = {"harvest": f"${harvest_key}.harvest.id", "mass_g": fresh, "name": name, "tare_g": tare}
    do(start, "tray.start", request, key)
    dry, wet = fresh * dry_share, 1 / dry_share - 1
    for i, share in enumerate(days):
        hours = share * 24 + R.uniform(-2, 2) if i else share * 24
        at = start + dt.timedelta(minutes=round(hours * 60))
        moisture = last + (wet - last) * math.exp(-((hours * per_hour) ** power))
        weigh = {"tray": f"${key}.tray.id", "gross_g": tare + round(dry * (1 + moisture) * (1 + R.uniform(-0.004, 0.004)))}
        if air and not (end and i == len(days) - 1):
            weigh["air"] = {"temperature_c": air[0] + R.randint(-1, 1), "relative_humidity_percent": air[1] + R.randint(-3, 3)}
        do(at, "tray.take_down" if end and i == len(days) - 1 else "tray.weigh", weigh)


LEAF, FLOWER, ROOT, BERRY = 1 / 17, 1 / 22, 1 / 46, 1 / 60
WEEK, LONG, SLOW = (1, 2, 4, 6, 8), (1, 3, 5, 8, 11), (1, 3, 6, 10, 15, 20, 23)

harvest("nettle", "04-18", "09:40", "nettle", "leaf", 640, 310, "stream", "young tops", "dew", "Gloves. First warm morning.", "nettle")
tray("t_nettle", "nettle", "Tray 1", "04-18", "10:30", 640, 0.168, LEAF, WEEK)
harvest("plantain", "05-09", "11:15", "plantain", "leaf", 230, 310, "hedge", "before flower stalk", image="plantain", zone=False)
tray("t_plantain", "plantain", "Tray 2", "05-09", "12:00", 230, 0.150, LEAF, WEEK)
harvest("elder_flower", "06-06", "12:20", "elder-flower", "flower", 480, 420, "hedge", "just opened", note="Left the lower heads for the berries.", image="elder-flower")
tray("t_elder_flower", "elder_flower", "Tray 1", "06-06", "13:00", 480, 0.158, FLOWER, WEEK)
harvest("lemon_balm", "06-10", "10:05", "lemon-balm", "leaf", 520, 310, "north", "before flower, first cut", image="lemon-balm", gps=False)
tray("t_lemon_balm", "lemon_balm", "Tray 2", "06-10", "11:00", 400, 0.226, LEAF, WEEK)
harvest("chamomile", "06-13", "13:30", "chamomile", "flower", 340, 180, "south", "open 3 to 5 days", image="chamomile", zone=False, gps=False)
tray("t_chamomile", "chamomile", "Tray 3", "06-13", "14:10", 340, 0.172, FLOWER, LONG)
harvest("peppermint", "06-17", "10:45", "peppermint", "leaf", 780, 420, "long", "just before flower", image="peppermint")
tray("t_peppermint", "peppermint", "Tray 4", "06-17", "11:40", 780, 0.211, LEAF, WEEK)
harvest("wort", "06-24", "12:00", "st-johns-wort", "flowering tops", 310, 310, "hedge", "just opening, buds included", note="Red fingers; held against the light the leaves show their dots.", image="st-johns-wort")
tray("t_wort", "wort", "Tray 1", "06-24", "12:40", 310, 0.262, FLOWER, LONG)
harvest("thyme", "06-27", "11:35", "thyme", "flowering tops", 290, 180, "south", "flowering", image="thyme", zone=False)
tray("t_thyme", "thyme", "Tray 2", "06-27", "12:15", 290, 0.352, LEAF, WEEK)
harvest("lime", "06-29", "17:10", "lime-flower", "flower", 420, 420, "hedge", "just opened", note="The whole tree hums.", image="lime-flower")
tray("t_lime", "lime", "Tray 3", "06-29", "18:00", 420, 0.221, FLOWER, LONG)
harvest("petals", "07-03", "08:50", "rose", "petal", 190, 180, "north", "at opening", "dew", image="rose-petal", gps=False)
tray("t_petals", "petals", "Tray 4", "07-03", "09:30", 190, 0.178, LEAF, WEEK)
harvest("lavender", "07-07", "12:25", "lavender", "flower", 360, 310, "south", "first florets open", image="lavender")
tray("t_lavender", "lavender", "Tray 1", "07-07", "13:00", 360, 0.242, FLOWER, LONG)
harvest("calendula", "07-11", "13:10", "calendula", "flower", 450, 310, "long", "fully open, sticky", image="calendula", zone=False, gps=False)
tray("t_calendula", "calendula", "Tray 2", "07-11", "13:50", 450, 0.121, FLOWER, LONG)
harvest("yarrow", "07-16", "12:55", "yarrow", "flowering tops", 430, 420, "stream", "full flower", note="Feathery leaves, woolly stem without spots.", image="yarrow")
tray("t_yarrow", "yarrow", "Tray 3", "07-16", "13:40", 430, 0.214, FLOWER, LONG)
harvest("chamomile_2", "07-25", "14:00", "chamomile", "flower", 280, 180, "south", "open 3 to 5 days")
tray("t_chamomile_2", "chamomile_2", "Tray 4", "07-25", "14:40", 280, 0.166, FLOWER, LONG)
harvest("lemon_balm_2", "08-08", "09:30", "lemon-balm", "leaf", 610, 420, "north", "second cut", "rain", "Shaken out and spread for an hour before weighing.")
tray("t_lemon_balm_2", "lemon_balm_2", "Tray 1", "08-08", "11:00", 610, 0.219, LEAF, WEEK)
harvest("peppermint_2", "08-22", "10:20", "peppermint", "leaf", 690, 420, "long", "second cut", image="peppermint-second", zone=False)
tray("t_peppermint_2", "peppermint_2", "Tray 2", "08-22", "11:10", 690, 0.205, LEAF, WEEK)
harvest("calendula_2", "08-29", "13:25", "calendula", "flower", 520, 310, "long", "fully open, sticky", image="calendula-bed", gps=False)
tray("t_calendula_2", "calendula_2", "Tray 3", "08-29", "14:00", 520, 0.126, FLOWER, LONG)
harvest("elder_berry", "09-05", "16:40", "elder-berry", "berry", 980, 420, "hedge", "fully black", note="For cooking only.", image="elder-berry")
do(when("09-05", "18:15"), "harvest.bin", {"id": "$elder_berry.harvest.id", "mass_g": 120, "reason": "stalks and green berries"})
tray("t_elder_berry", "elder_berry", "Tray 4", "09-05", "18:30", 860, 0.206, BERRY, SLOW, power=0.8)
harvest("hawthorn", "09-26", "15:20", "hawthorn", "berry", 540, 310, "hedge", "red ripe", image="hawthorn", zone=False)
tray("t_hawthorn", "hawthorn", "Tray 1", "09-26", "16:30", 540, 0.268, BERRY, SLOW, power=0.8)
harvest("dandelion", "10-10", "11:00", "dandelion", "root", 410, 310, "long", "autumn", "washed", image="dandelion-root", gps=False, sure=True)
tray("t_dandelion", "dandelion", "Tray 2", "10-10", "12:30", 410, 0.219, ROOT, SLOW)
harvest("valerian", "10-17", "10:30", "valerian", "root", 690, 420, "long", "autumn, second year", "washed", "The cat came along.", "valerian-root")
tray("t_valerian", "valerian", "Tray 3", "10-17", "12:00", 690, 0.224, ROOT, SLOW)
harvest("echinacea", "11-13", "10:50", "echinacea", "root", 560, 310, "long", "autumn, third year", "washed", "Before the ground froze.", "echinacea-root", zone=False)
tray("t_echinacea", "echinacea", "Tray 1", "11-13", "13:00", 360, 0.262, 1 / 58, (1, 3, 6, 9, 11.8), end=False, air=(18, 52))
harvest("hips", "11-14", "14:35", "rose", "hip", 620, 420, "hedge", "red, after the first frost", image="rose-hip", sideways=True)
tray("t_hips", "hips", "Tray 2", "11-14", "16:00", 620, 0.521, 1 / 85, (1, 3, 6, 8, 10.6), end=False, power=0.78, air=(18, 52))
harvest("rosemary", "11-21", "11:45", "rosemary", "leaf", 240, 180, "step", "sprigs", image="rosemary", zone=False, gps=False, sure=True)
tray("t_rosemary", "rosemary", "Tray 4", "11-21", "12:30", 240, 0.318, 1 / 26, (1, 2.1, 3.8), end=False, air=(18, 52))
harvest("sage", "11-23", "10:15", "sage", "leaf", 260, 180, "step", "last good leaves", image="sage", sure=True)

SUPPLIES = {
    "water": {"kind": "water"},
    "strong": {"kind": "spirit", "strength_percent_vol": 96},
    "plain": {"kind": "spirit", "strength_percent_vol": 40},
    "glycerin": {"kind": "glycerin", "purity_percent_mass": 99.5},
    "vinegar": {"kind": "vinegar", "acidity_g_per_100ml": 5},
    "olive": {"kind": "oil", "oil": "olive"},
}
for key, name, size, price, bought in (("water", "Distilled water", 5000, 4.5, "2026-05-30"), ("strong", "Grain spirit 96 %", 3000, 54, "2026-05-30"),
                                       ("plain", "Plain spirit 40 %", 1000, 14, "2026-05-30"), ("glycerin", "Vegetable glycerin 99.5 %", 5000, 32, "2026-05-30"),
                                       ("vinegar", "Cider vinegar 5 %", 1000, 3.2, "2026-09-12"), ("olive", "Olive oil", 1000, 12.5, "2026-07-18")):
    do(when(bought[5:], "18:00"), "supply.add", {"name": name, "item": SUPPLIES[key], "size_ml": size, "price": price, "currency": "EUR", "bought_on": bought}, "s_" + key)


def jar(key, day, clock, name, preparation, lot, herb, part, state, mass, stock, place, note=None, **more):
    kind = "harvest" if state == "fresh" else "tray"
    composition = {
        "preparation": preparation,
        "plants": [{"lot": {"kind": kind, "id": f"${lot}.{kind}.id"}, "herb": herb, "part": part, "state": state, "mass_g": mass}],
        "stock": [SUPPLIES[s] | {"supply": f"$s_{s}.supply.id"} for s in stock],
    } | more
    request = {"composition": composition, "name": name, "place": place}
    do(when(day, clock), "jar.pour", request | ({"note": note} if note else {}), key)


jar("j_failed", "06-10", "12:30", "Lemon balm, first try", "glycerite-fresh", "lemon_balm", "lemon-balm", "leaf", "fresh", 120, ("glycerin", "water"), "window shelf", ratio_ml_per_g=2, glycerin_percent_vol=80)
do(when("06-19", "20:10"), "jar.fail", {"id": "$j_failed.jar.id", "reason": "Leaves stood above the liquid and went brown; bubbles on day 9."})
jar("j_balm", "11-02", "17:30", "Lemon balm glycerite", "glycerite-dried", "t_lemon_balm_2", "lemon-balm", "leaf", "dried", 60, ("glycerin", "water"), "cupboard, top", ratio_ml_per_g=5, glycerin_percent_vol=65)
jar("j_calendula", "11-09", "18:00", "Calendula tincture", "tincture-dried", "t_calendula_2", "calendula", "flower", "dried", 40, ("strong", "water"), "cupboard, top", ratio_ml_per_g=5, strength_percent_vol=70)
jar("j_echinacea", "11-13", "14:20", "Echinacea root, fresh", "tincture-fresh", "echinacea", "echinacea", "root", "fresh", 200, ("strong", "water"), "cupboard, middle", "Chopped fine.", ratio_ml_per_g=2)
jar("j_mint", "11-14", "18:10", "Peppermint tincture", "tincture-dried", "t_peppermint", "peppermint", "leaf", "dried", 50, ("strong", "water"), "cupboard, middle", ratio_ml_per_g=5, strength_percent_vol=45)
jar("j_lime", "11-16", "19:00", "Lime flower glycerite", "glycerite-dried", "t_lime", "lime-flower", "flower", "dried", 45, ("glycerin", "water"), "cupboard, top", ratio_ml_per_g=6, glycerin_percent_vol=65)
jar("j_nettle", "11-18", "18:45", "Nettle tincture", "tincture-dried", "t_nettle", "nettle", "leaf", "dried", 50, ("strong", "water"), "cupboard, middle", ratio_ml_per_g=5, strength_percent_vol=45)
jar("j_thyme", "11-21", "17:20", "Thyme glycerite with a little spirit", "glycerite-fortified", "t_thyme", "thyme", "flowering tops", "dried", 40, ("glycerin", "water", "strong"), "cupboard, top", ratio_ml_per_g=5, glycerin_percent_vol=70, fortify_percent_vol=10)
jar("j_sage", "11-23", "11:30", "Sage glycerite", "glycerite-fresh", "sage", "sage", "leaf", "fresh", 100, ("glycerin", "water"), "window shelf", "Leaves weighed down.", ratio_ml_per_g=2, glycerin_percent_vol=80)


def shakes(key, *days):
    for day in days:
        do(when(day, "20:30"), "jar.shake", {"jar": f"${key}.jar.id"})


def strain(key, day, clock, how, ml, sizes, place, note=None):
    """What came out, and the bottles it filled an hour later, saved as `<key>_bottles`."""
    request = {"jar": f"${key}.jar.id", "came_out_ml": ml, "how": how}
    do(when(day, clock), "jar.strain", request | ({"note": note} if note else {}))
    hour, minute = clock.split(":")
    filled = {"jar": f"${key}.jar.id", "bottles": [{"ml": size, "count": count} for size, count in sizes], "place": place}
    do(when(day, f"{int(hour) + 1}:{minute}"), "bottle.fill", filled, key + "_bottles")


def bottle(key, number, day, clock, command, **more):
    do(when(day, clock), f"bottle.{command}", {"bottle": f"${key}_bottles.bottles.{number}.id"} | more)


jar("j_chamomile", "07-02", "19:10", "Chamomile tincture", "tincture-dried", "t_chamomile", "chamomile", "flower", "dried", 40, ("strong", "water"), "cupboard, middle", ratio_ml_per_g=5, strength_percent_vol=50)
shakes("j_chamomile", "07-03", "07-04", "07-06", "07-07", "07-09", "07-11", "07-14")
strain("j_chamomile", "07-18", "18:20", "pressed", 158, ((50, 2), (30, 1)), "cupboard, door", "Clear at once.")
do(when("07-18", "19:45"), "dropper.count", {"name": "Blue dropper", "drops_in_1_ml": [36, 38, 37], "holds_ml": 0.8, "liquid": "Chamomile tincture"}, "d_blue")
for day, ml in (("08-02", 5), ("08-19", 10), ("09-11", 5), ("10-03", 10), ("10-29", 7.5)):
    bottle("j_chamomile", 0, day, "21:15", "use", ml=ml)
bottle("j_chamomile", 2, "09-20", "11:00", "give", to="the neighbours up the lane")
do(when("07-18", "19:50"), "jar.keep_recipe", {"jar": "$j_chamomile.jar.id", "name": "Chamomile, half strength", "stars": 4, "note": "Presses easily."})
jar("j_oil", "07-24", "18:00", "Calendula oil", "oil-dried", "t_calendula", "calendula", "flower", "dried", 40, ("olive",), "window shelf", ratio_ml_per_g=8)
shakes("j_oil", "07-26", "07-30", "08-05", "08-12")
strain("j_oil", "08-26", "17:30", "wrung", 262, ((100, 2), (50, 1)), "cool shelf")
bottle("j_oil", 0, "10-04", "10:20", "check", outcome="good", note="Smells of hay, not of wax.")
bottle("j_oil", 0, "10-04", "10:25", "use", ml=20)
bottle("j_oil", 2, "10-11", "16:00", "give", to="my sister")
jar("j_petals", "07-12", "17:30", "Rose petal glycerite", "glycerite-dried", "t_petals", "rose", "petal", "dried", 25, ("glycerin", "water"), "cupboard, top", ratio_ml_per_g=6, glycerin_percent_vol=65)
strain("j_petals", "08-10", "19:00", "pressed", 112, ((50, 2),), "cupboard, door")
for day, ml in (("08-21", 10), ("09-05", 15), ("09-30", 15), ("10-16", 10)):
    bottle("j_petals", 0, day, "20:40", "use", ml=ml)
bottle("j_petals", 0, "10-16", "20:45", "finish")
bottle("j_petals", 1, "11-01", "20:00", "use", ml=10)
harvest("thyme_2", "11-17", "11:20", "thyme", "flowering tops", 60, 180, "step", "last green", "washed", "Dried off on a cloth.")
jar("j_cold", "11-17", "12:10", "Thyme in oil, for the kitchen", "oil-fresh", "thyme_2", "thyme", "flowering tops", "fresh", 30, ("olive",), "fridge door", ratio_ml_per_g=5)
strain("j_cold", "11-19", "18:00", "dripped", 120, ((100, 1),), "fridge door")
bottle("j_cold", 0, "11-20", "12:30", "use", tablespoons=1)


def main():
    DEEDS.sort(key=lambda deed: dt.datetime.fromisoformat(deed["at"]))
    lines = ",\n".join(json.dumps(deed, ensure_ascii=False) for deed in DEEDS)
    (HERE / "season.json").write_text(f"[\n{lines}\n]\n")
    for name, taken, zone, place, sideways in PICTURES:
        path = HERE / "pictures" / f"{name}.jpg"
        if sideways and Image.open(path).width > Image.open(path).height:
            Image.open(path).transpose(Image.Transpose.ROTATE_90).save(path, quality=72, optimize=True)
        tags = ["-all=", f"-DateTimeOriginal={taken:%Y:%m:%d %H:%M:%S}", f"-CreateDate={taken:%Y:%m:%d %H:%M:%S}", f"-Orientation={6 if sideways else 1}"]
        if zone:
            offset = f"{taken:%z}"
            tags.append(f"-OffsetTimeOriginal={offset[:3]}:{offset[3:]}")
        if place:
            tags += [f"-GPSLatitude={place[0]:.6f}", "-GPSLatitudeRef=N", f"-GPSLongitude={place[1]:.6f}", "-GPSLongitudeRef=E"]
        subprocess.run(["exiftool", "-q", "-n", "-overwrite_original", *tags, str(path)], check=True)
    print(len(DEEDS), "deeds,", len(PICTURES), "pictures")


main()
