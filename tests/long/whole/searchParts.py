"""Looks through every part of a workbook for words and numbers, with nothing but Python's own zip and XML readers.

usage: searchParts.py FILE  (reads {"words": [...], "numbers": [...]} from its input, writes a list of places)
"""

import json
import re
import sys
import zipfile
import xml.etree.ElementTree as ET

asked = json.load(sys.stdin)
words = re.compile("|".join(re.escape(word.casefold()) for word in asked["words"]))
numbers = asked["numbers"]
number = re.compile(r"[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?")
found = []


def look(part, where, text):
    for word in words.findall(text.casefold()):
        found.append([part, where, word])
    for hit in number.findall(text):
        if any(abs(float(hit) - wanted) <= 1e-9 * abs(wanted) for wanted in numbers):
            found.append([part, where, float(hit)])


with zipfile.ZipFile(sys.argv[1]) as book:
    assert book.testzip() is None
    for info in book.infolist():
        part = info.filename
        data = book.read(part)
        look("name", part, part)
        for encoding in ("utf-8", "utf-16-le", "utf-16-be"):
            raw = data.decode(encoding, "ignore").casefold()
            for word in set(words.findall(raw)):
                found.append([part, "bytes as " + encoding, word])
        if not re.search(r"\.(xml|rels|vml)$", part):
            continue
        here = ""
        for element in ET.fromstring(data).iter():
            tag = element.tag.split("}")[-1]
            if tag == "c" and "r" in element.attrib:
                here = element.attrib["r"]
            elif tag == "t" and part.endswith("sharedStrings.xml"):
                here = "text"
            for value in (element.text, element.tail):
                if value and value.strip():
                    look(part, here + " " + tag, value)
            for key, value in element.attrib.items():
                # Widths, heights and places of the drawing are numbers of another kind.
                if tag not in ("col", "row", "sheetFormatPr", "pageMargins", "ext", "off", "color"):
                    look(part, here + " " + tag + "@" + key.split("}")[-1], value)

json.dump(found, sys.stdout)
