"""Reads a PDF for the tests and tells what it is, as JSON: its keys, boxes, fonts, inks, structure and text.

It judges nothing: the tests do. It is pikepdf's and PDFium's reading, which knows nothing of the program that wrote
the file.
"""

import json
import sys

import pikepdf
import pypdfium2


def plain(value):
    """A PDF object as JSON: names with their slash, strings, numbers, and short dictionaries."""
    if isinstance(value, (bool, int, str)) or value is None:
        return value
    if isinstance(value, pikepdf.Array):
        return [plain(one) for one in value]
    if isinstance(value, pikepdf.Name):
        return str(value)
    if isinstance(value, pikepdf.String):
        return str(value)
    try:
        return float(value)
    except (TypeError, ValueError, NotImplementedError):
        return str(type(value).__name__)


def content(page):
    """What a page's content marks and paints with: marked contents by number, and operators outside of any."""
    marked, open_, outside, operators = [], [], [], {}
    painting = {"f", "f*", "S", "s", "B", "b", "TJ", "Tj", "Do", "sh"}
    for operands, operator in pikepdf.parse_content_stream(page):
        name = str(operator)
        operators[name] = operators.get(name, 0) + 1
        if name in ("BDC", "BMC"):
            properties = operands[1] if name == "BDC" else {}
            entry = {"tag": str(operands[0])}
            if "/MCID" in properties:
                entry["mcid"] = int(properties["/MCID"])
            if "/ActualText" in properties:
                entry["actual"] = str(properties["/ActualText"])
            marked.append(entry)
            open_.append(entry)
        elif name == "EMC":
            open_.pop()
        elif name in painting and not open_:
            outside.append(name)
    return {"marked": marked, "outside": outside, "operators": operators, "unclosed": len(open_)}


def annotation(annot):
    action = annot.get("/A", {})
    return {
        "subtype": plain(annot.get("/Subtype")),
        "contents": plain(annot.get("/Contents")),
        "flags": plain(annot.get("/F")),
        "uri": plain(action.get("/URI")),
        "struct_parent": plain(annot.get("/StructParent")),
        "rect": plain(annot.get("/Rect")),
    }


def element(node, pages, annotations):
    """A structure element with its children: elements, content numbers, annotations."""
    page = node.get("/Pg")
    told = {"type": str(node["/S"]), "kids": []}
    for key, name in (("/Lang", "lang"), ("/Alt", "alt"), ("/ActualText", "actual")):
        if key in node:
            told[name] = str(node[key])
    attributes = node.get("/A", [])
    for one in attributes if isinstance(attributes, pikepdf.Array) else [attributes]:
        if "/BBox" in one:
            told["bbox"] = plain(one["/BBox"])
    kids = node.get("/K", [])
    for kid in kids if isinstance(kids, pikepdf.Array) else [kids]:
        if isinstance(kid, int):
            told["kids"].append({"page": pages[page.objgen], "mcid": kid})
        elif kid.get("/Type") == "/MCR":
            where = kid.get("/Pg", page)
            told["kids"].append({"page": pages[where.objgen], "mcid": int(kid["/MCID"])})
        elif kid.get("/Type") == "/OBJR":
            told["kids"].append({"annotation": annotations[kid["/Obj"].objgen]})
        else:
            child = element(kid, pages, annotations)
            child["parent_is_right"] = kid["/P"].objgen == node.objgen
            told["kids"].append(child)
    return told


def parent_tree(root, pages):
    """For each key, the types of the elements that own the contents of a page, or an annotation."""
    numbers = root["/ParentTree"]["/Nums"]
    told = {}
    for at in range(0, len(numbers), 2):
        owner = numbers[at + 1]
        many = isinstance(owner, pikepdf.Array)
        told[str(int(numbers[at]))] = [str(one["/S"]) for one in owner] if many else str(owner["/S"])
    return told


def outline(first):
    told = []
    while first is not None:
        told.append({"title": str(first["/Title"]), "below": outline(first.get("/First"))})
        first = first.get("/Next")
    return told


def fonts(page):
    told = []
    for name, font in page.get("/Resources", {}).get("/Font", {}).items():
        descendant = font["/DescendantFonts"][0]
        descriptor = descendant["/FontDescriptor"]
        told.append(
            {
                "name": str(font["/BaseFont"]),
                "embedded": any(key in descriptor for key in ("/FontFile2", "/FontFile3")),
                "to_unicode": "/ToUnicode" in font,
            }
        )
    return told


def read(path):
    pdf = pikepdf.open(path)
    root = pdf.Root
    info = pdf.docinfo
    pages = {page.obj.objgen: at for at, page in enumerate(pdf.pages)}
    links = [annot for page in pdf.pages for annot in page.get("/Annots", [])]
    annotations = {annot.objgen: at for at, annot in enumerate(links)}
    told = {
        "version": pdf.pdf_version,
        "lang": plain(root.get("/Lang")),
        "marked": plain(root.get("/MarkInfo", {}).get("/Marked")),
        "suspects": plain(root.get("/MarkInfo", {}).get("/Suspects", False)),
        "display_title": plain(root.get("/ViewerPreferences", {}).get("/DisplayDocTitle")),
        "direction": plain(root.get("/ViewerPreferences", {}).get("/Direction")),
        "info": {str(key): plain(value) for key, value in info.items()},
        "id": [bytes(one).hex() for one in pdf.trailer.get("/ID", [])],
        "encrypted": pdf.is_encrypted,
        "forms": "/AcroForm" in root,
        "scripts": any("/JS" in obj for obj in pdf.objects if isinstance(obj, pikepdf.Dictionary)),
        "transparency": sorted(
            {
                key
                for obj in pdf.objects
                if isinstance(obj, (pikepdf.Dictionary, pikepdf.Stream))
                for key in ("/SMask", "/CA", "/ca", "/Group")
                if key in obj and not (key in ("/CA", "/ca") and float(obj[key]) == 1.0)
            }
        ),
        "annotations": [annotation(one) for one in links],
        "intents": [],
        "pages": [],
    }
    with pdf.open_metadata() as metadata:
        told["xmp"] = {str(key): str(value) for key, value in metadata.items()}
    for intent in root.get("/OutputIntents", []):
        profile = intent.get("/DestOutputProfile")
        told["intents"].append(
            {
                "subtype": str(intent["/S"]),
                "identifier": plain(intent.get("/OutputConditionIdentifier")),
                "registry": plain(intent.get("/RegistryName")),
                "info": plain(intent.get("/Info")),
                "profile_class": bytes(profile.read_bytes()[12:20]).decode("ascii") if profile else None,
                "profile_inks": plain(profile.get("/N")) if profile else None,
            }
        )
    for page in pdf.pages:
        entry = {key[1:].lower(): plain(page.obj.get(key)) for key in ("/MediaBox", "/BleedBox", "/TrimBox", "/CropBox")}
        entry["tabs"] = plain(page.obj.get("/Tabs"))
        entry["struct_parents"] = plain(page.obj.get("/StructParents"))
        entry["annotations"] = len(page.get("/Annots", []))
        entry["fonts"] = fonts(page)
        spaces = page.obj.get("/Resources", {}).get("/ColorSpace", {})
        entry["spaces"] = {str(name): str(space[0]) for name, space in spaces.items()}
        entry["separations"] = [str(space[1]) for space in spaces.values() if str(space[0]) == "/Separation"]
        entry["content"] = content(page)
        told["pages"].append(entry)
    if "/StructTreeRoot" in root:
        tree = root["/StructTreeRoot"]
        told["tree"] = element(tree["/K"], pages, annotations)
        told["parents"] = parent_tree(tree, pages)
    told["outline"] = outline(root.get("/Outlines", {}).get("/First"))
    document = pypdfium2.PdfDocument(path)
    told["text"] = [page.get_textpage().get_text_bounded() for page in document]
    return told


if __name__ == "__main__":
    json.dump(read(sys.argv[1]), sys.stdout, ensure_ascii=True)
