"""Gives each face in src/main/resources/taperbook/fonts its minus sign, U+2212.

The faces, as they come, have none. The sign is drawn as the bar of the face's own plus sign, at its
height and as wide, so that it fits the digits beside it. Needs fonttools; running it again changes
nothing.
"""

import pathlib
from fontTools.pens.ttGlyphPen import TTGlyphPen
from fontTools.ttLib import TTFont

FONTS = pathlib.Path(__file__).parents[2] / "main/resources/taperbook/fonts"

for path in sorted(FONTS.glob("*.ttf")):
    font = TTFont(path, recalcTimestamp=False)
    if 0x2212 in font.getBestCmap():
        continue
    points = list(font["glyf"]["plus"].coordinates)
    left, right = min(x for x, y in points), max(x for x, y in points)
    low, high = sorted({y for x, y in points if x == left})
    pen = TTGlyphPen(None)
    pen.moveTo((left, low))
    for corner in [(left, high), (right, high), (right, low)]:
        pen.lineTo(corner)
    pen.closePath()
    font.setGlyphOrder(font.getGlyphOrder() + ["minus"])
    font["glyf"]["minus"] = pen.glyph()
    font["hmtx"]["minus"] = (font["hmtx"]["plus"][0], left)
    for table in font["cmap"].tables:
        if table.isUnicode():
            table.cmap[0x2212] = "minus"
    font["maxp"].numGlyphs = len(font.getGlyphOrder())
    font.save(path)
