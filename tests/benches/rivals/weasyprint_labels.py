"""Sets labels with WeasyPrint: one font configuration, style and picture cache for each process."""

from html import escape
from pathlib import Path

from weasyprint import CSS, HTML
from weasyprint.text.fonts import FontConfiguration

import share

FILES = ["NotoSans", "NotoSansArabic", "NotoSansDevanagari", "NotoSansSC", "NotoSansKR"]
STYLE = """
%(faces)s
@page { size: 7in 9in; margin: .25in }
html { font: 7pt/1.2 %(families)s }
table { width: 100%%; border-collapse: collapse; table-layout: fixed }
td { vertical-align: middle; padding: 1pt 3pt }
td.picture { width: 14pt } td.picture img { width: 12pt; height: 12pt; display: block }
.title { font-size: 13pt; font-weight: bold } b, .hazard { font-weight: bold }
.yes { background: #0b6437; color: #fff } .no { background: #9b1c31; color: #fff }
.elsewhere { background: #2c3c9c; color: #fff } .caution { background: #ffdb4d }
.code { width: 50pt; height: 50pt }
"""


def start(work, fonts):
    config = FontConfiguration()
    faces = []
    for file in FILES:
        for weight in ("Regular", "Bold"):
            found = next(Path(fonts).glob(f"{file}-{weight}.*tf"))
            faces.append(
                f'@font-face {{ font-family: "{file}"; font-weight: {weight.replace("Regular", "normal")};'
                f" src: url(file://{found}) }}"
            )
    families = ", ".join(f'"{file}"' for file in FILES)
    style = CSS(string=STYLE % {"faces": "\n".join(faces), "families": families}, font_config=config)
    return work, config, style, {}


def cells(languages, words, of):
    return "".join(f'<td lang="{l["lang"]}" dir="{l["direction"]}">{escape(of(l))}</td>' for l in languages)


def picture(line):
    name = line.get("pictogram")
    return f'<td class="picture">{f"""<img src="pictures/{name}.svg">""" if name else ""}</td>'


def page(number, job):
    languages = job["languages"]
    parts = [f'<title>{escape(job["job_name"])}</title>']
    parts.append(f'<table class="title"><tr>{cells(languages, None, lambda l: l["title"])}</tr></table>')
    parts.append(f'<p><b>{escape(job["jurisdiction"])}</b></p>')
    for at, section in enumerate(languages[0]["sections"]):
        tone = section["tone"]
        heading = cells(languages, None, lambda l: l["sections"][at]["heading"])
        parts.append(
            f'<table class="{tone}"><tr><td class="picture"><img src="pictures/verdict-{tone}.svg"></td>{heading}</tr></table>'
        )
        rows = [
            picture(line) + cells(languages, None, lambda l: l["sections"][at]["lines"][row]["text"])
            for row, line in enumerate(section["lines"])
        ]
        half = (len(rows) + 1) // 2
        parts.append("<table>")
        for row in range(half):
            second = rows[half + row] if half + row < len(rows) else ""
            parts.append(f"<tr>{rows[row]}{second}</tr>")
        parts.append("</table>")
    foot = "".join(
        f'<div lang="{l["lang"]}" dir="{l["direction"]}">{escape(" ".join([l["scan"], *l["footer"]]))}</div>'
        for l in languages
    )
    small = escape(" ".join([job["short_url"], job["edition"], job["print_notice"]]))
    parts.append(f'<table><tr><td><img class="code" src="jobs/{number}.svg"></td><td>{foot}{small}</td></tr></table>')
    return "".join(parts)


def label(tools, number, job):
    work, config, style, cache = tools
    html = HTML(string=page(number, job), base_url=f"file://{work}/")
    out = str(work / "weasyprint" / f"{number}.pdf")
    html.write_pdf(out, stylesheets=[style], font_config=config, cache=cache)


share.run(start, label)
