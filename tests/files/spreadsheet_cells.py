"""Reads a spreadsheet by another hand and prints it as JSON: spreadsheet_cells.py FILE.xlsx

{sheet: {"frozen": "A2", "rows": [[[kind, value, formula], ...], ...]}}: kind is "s" text, "n" number, "f" formula, "" empty;
the value of a formula is the one that the file keeps for readers that do not compute.
"""
import json
import sys

import openpyxl

formulas = openpyxl.load_workbook(sys.argv[1])
values = openpyxl.load_workbook(sys.argv[1], data_only=True)


def told(cell, kept):
    if cell.value is None:
        return ["", "", ""]
    if cell.data_type == "f":
        return ["f", kept.value, cell.value]
    return [cell.data_type, cell.value, ""]


made = {}
for sheet in formulas.worksheets:
    kept = values[sheet.title]
    rows = [[told(cell, kept.cell(cell.row, cell.column)) for cell in row] for row in sheet.iter_rows()]
    made[sheet.title] = {"frozen": sheet.freeze_panes or "", "rows": rows}
json.dump({"created": formulas.properties.created.isoformat(), "sheets": made}, sys.stdout)
