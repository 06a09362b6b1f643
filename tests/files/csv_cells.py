"""Reads a CSV by another hand and prints its rows as JSON: csv_cells.py FILE SEPARATOR ENCODING"""
import csv
import json
import sys

separator = "\t" if sys.argv[2] == "tab" else sys.argv[2]
with open(sys.argv[1], newline="", encoding=sys.argv[3]) as file:
    json.dump(list(csv.reader(file, delimiter=separator, strict=True)), sys.stdout)
