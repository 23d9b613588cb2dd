"""Prints what a font's own tables say, as fontTools reads them: font_facts.py FONT...

font PATH
height CHARACTER TOP-BOTTOM of its outline
kern LEFT RIGHT ADVANCE for each pair of basic Latin letters that the pair tables speak of, by glyph numbers
"""
import itertools
import string
import sys

from fontTools.pens.boundsPen import BoundsPen
from fontTools.ttLib import TTFont


def subtables(lookup):
    for table in lookup.SubTable:
        kind, table = (table.ExtensionLookupType, table.ExtSubTable) if lookup.LookupType == 9 else (lookup.LookupType, table)
        if kind == 2:
            yield table


def kern_lookups(font):
    """Those of feature kern for Latin, or else for any script, in the order of the list."""
    table = font["GPOS"].table
    scripts = {record.ScriptTag: record.Script for record in table.ScriptList.ScriptRecord}
    script = scripts.get("latn") or scripts.get("DFLT")
    if script is None or script.DefaultLangSys is None:
        return []
    numbers = set()
    for index in script.DefaultLangSys.FeatureIndex:
        record = table.FeatureList.FeatureRecord[index]
        if record.FeatureTag == "kern":
            numbers.update(record.Feature.LookupListIndex)
    return [table.LookupList.Lookup[number] for number in sorted(numbers)]


def advance(value):
    return getattr(value, "XAdvance", 0) or 0 if value else 0


def in_subtable(table, left, right):
    """Both advances the subtable changes, or None if it does not speak of the pair."""
    if left not in table.Coverage.glyphs:
        return None
    if table.Format == 1:
        for record in table.PairSet[table.Coverage.glyphs.index(left)].PairValueRecord:
            if record.SecondGlyph == right:
                return advance(record.Value1) + advance(record.Value2)
        return None
    first = table.ClassDef1.classDefs.get(left, 0)
    second = table.ClassDef2.classDefs.get(right, 0)
    record = table.Class1Record[first].Class2Record[second]
    return advance(record.Value1) + advance(record.Value2)


def main():
    for path in sys.argv[1:]:
        font = TTFont(path, lazy=True)
        names = font.getBestCmap()
        print("font", path)
        glyphs = font.getGlyphSet()
        for letter in "Hx":
            pen = BoundsPen(glyphs)
            glyphs[names[ord(letter)]].draw(pen)
            print("height", letter, pen.bounds[3] - pen.bounds[1])
        if "GPOS" not in font:
            continue
        lookups = [list(subtables(lookup)) for lookup in kern_lookups(font)]
        for table in itertools.chain.from_iterable(lookups):
            table.Coverage.glyphs = list(table.Coverage.glyphs)
        letters = [names[ord(letter)] for letter in string.ascii_letters]
        for left, right in itertools.product(letters, letters):
            found = [next((v for v in (in_subtable(t, left, right) for t in tables) if v is not None), None) for tables in lookups]
            spoken = [value for value in found if value is not None]
            if spoken:
                print("kern", font.getGlyphID(left), font.getGlyphID(right), sum(spoken))


main()
