"""Looks for numbers in every part of workbooks: search.py 4817.25,731.5 copy.xlsx … prints one line of JSON a file.
Standard library only (zipfile, ElementTree), so that the search shares no code and no parser with the project."""
import json, re, struct, sys, zipfile
from xml.etree import ElementTree

# Sizes and places of drawings are counted in units of which 12,700 make a point.
PLACES = {"ext", "off", "from", "to", "row", "col", "rowOff", "colOff", "Row", "Column", "Anchor", "chExt", "chOff"}
TOKEN = re.compile(r"[-+]?\d[\d.,'\u00a0\u202f ]*(?:[eE][-+]?\d+)?%?")


def spellings(token):
    share = token.endswith("%")
    bare = token.rstrip("%").strip(" .,'")
    tight = re.sub(r"[ '\u00a0\u202f]", "", bare)
    for text in {tight, tight.replace(",", ""), tight.replace(".", "").replace(",", "."), *re.split(r"[ ,;]", bare)}:
        try:
            number = float(text)
        except ValueError:
            continue
        yield number
        if share:
            yield number / 100


def numbers_in(text):
    for token in TOKEN.findall(text):
        yield from spellings(token)


def texts(data):
    """What an XML part says: its texts, the texts of whole paragraphs run together, its attributes, its comments."""
    root = ElementTree.fromstring(data, parser=ElementTree.XMLParser(target=ElementTree.TreeBuilder(insert_comments=True)))
    for one in root.iter():
        name = one.tag.rsplit("}", 1)[-1] if isinstance(one.tag, str) else "!"
        if name in PLACES:
            continue
        yield from one.attrib.values()
        yield one.text or ""
        yield one.tail or ""
        if name in ("p", "si", "is", "text", "comment"):
            yield "".join(one.itertext())


def search(path, wanted):
    found = {}
    with zipfile.ZipFile(path) as file:
        for name in file.namelist():
            data = file.read(name)
            try:
                said = list(texts(data))
            except ElementTree.ParseError:
                said = [data.decode("utf-8", "ignore"), data.decode("utf-16-le", "ignore"), data[1:].decode("utf-16-le", "ignore")]
                for number in wanted:
                    for form in ("<d", ">d", "<f"):
                        if struct.pack(form, number) in data:
                            said.append(str(number))
            hits = {w for text in said for n in numbers_in(text) for w in wanted if abs(abs(n) - w) < 1e-9}
            if hits:
                found[name.rsplit("/", 1)[-1]] = sorted(hits)
    return found


if __name__ == "__main__":
    wanted = [float(one) for one in sys.argv[1].split(",")]
    for path in sys.argv[2:]:
        print(json.dumps(search(path, wanted)))
