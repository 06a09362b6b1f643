"""Reads a DXF by another hand and prints what it holds as JSON: drawing_facts.py FILE.dxf

Outlines and lines with layer, id (extended data), ring, area and length reckoned here from corners and bulges; the unit;
layers; texts; what the reader's own audit finds wrong or has to mend.
"""
import json
import math
import sys

import ezdxf

drawing = ezdxf.readfile(sys.argv[1])
audit = drawing.audit()


def measures(entity):
    corners = [(x, y, bulge) for x, y, bulge in entity.get_points("xyb")]
    area = length = 0.0
    count = len(corners) if entity.closed else len(corners) - 1
    for i in range(count):
        x1, y1, bulge = corners[i]
        x2, y2, _ = corners[(i + 1) % len(corners)]
        chord = math.hypot(x2 - x1, y2 - y1)
        area += (x1 * y2 - x2 * y1) / 2
        if bulge == 0:
            length += chord
            continue
        sweep = 4 * math.atan(bulge)
        radius = chord / 2 / math.sin(abs(sweep) / 2)
        area += math.copysign(radius * radius * (abs(sweep) - math.sin(abs(sweep))) / 2, sweep)
        length += radius * abs(sweep)
    return abs(area), length


shapes = []
for entity in drawing.modelspace().query("LWPOLYLINE"):
    area, length = measures(entity)
    told = {tag.code: tag.value for tag in entity.get_xdata("GROUNDCOURSE")} if entity.has_xdata("GROUNDCOURSE") else {}
    shapes.append({"layer": entity.dxf.layer, "closed": bool(entity.closed), "area": area, "length": length,
                   "id": told.get(1000, ""), "ring": told.get(1070, 0)})
points = [{"layer": e.dxf.layer, "x": e.dxf.location.x, "y": e.dxf.location.y, "z": e.dxf.location.z}
          for e in drawing.modelspace().query("POINT")]
texts = [{"layer": e.dxf.layer, "text": e.dxf.text} for e in drawing.modelspace().query("TEXT")]
json.dump({"version": drawing.dxfversion, "units": drawing.header["$INSUNITS"], "errors": len(audit.errors),
           "mended": len(audit.fixes), "said": [e.message for e in audit.errors + audit.fixes],
           "layers": [layer.dxf.name for layer in drawing.layers], "shapes": shapes, "points": points,
           "texts": texts}, sys.stdout)
