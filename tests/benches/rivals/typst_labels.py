"""Sets labels with Typst: one compiler for each process, which keeps fonts and pictures."""

import shutil
from pathlib import Path

import typst

import share


def start(work, fonts):
    shutil.copyfile(Path(__file__).with_name("label.typ"), work / "label.typ")
    compiler = typst.Compiler(root=str(work), font_paths=[fonts], ignore_system_fonts=True)
    return work, compiler


def label(tools, number, job):
    work, compiler = tools
    inputs = {"job": f"/jobs/{number}.json", "code": f"/jobs/{number}.svg"}
    out = str(work / "typst" / f"{number}.pdf")
    compiler.compile(input=str(work / "label.typ"), output=out, format="pdf", sys_inputs=inputs, pdf_tags=False)


share.run(start, label)
