"""Prints what ezdxf reads of a DXF file, one record a line, words parted by blanks."""
import sys

import ezdxf

sys.stdout.reconfigure(encoding="utf-8")
document = ezdxf.readfile(sys.argv[1])
audit = document.audit()
print("audit", len(audit.errors), len(audit.fixes))
for entry in audit.errors + audit.fixes:
    print("fault", entry.message)
print("version", document.dxfversion)
print("unit", document.header.get("$INSUNITS", 0))
for layer in document.layers:
    print("layer", layer.dxf.name, layer.dxf.color)
for entity in document.modelspace():
    kind, layer = entity.dxftype(), entity.dxf.layer
    if kind == "LINE":
        values = [*entity.dxf.start.vec2, *entity.dxf.end.vec2]
    elif kind == "ARC":
        values = [*entity.dxf.center.vec2, entity.dxf.radius, *entity.start_point.vec2, *entity.end_point.vec2]
    elif kind == "CIRCLE":
        values = [*entity.dxf.center.vec2, entity.dxf.radius]
    elif kind == "SPLINE":
        values = [entity.dxf.degree, *entity.knots]
        for point in entity.control_points:
            values += [point[0], point[1]]
    elif kind == "POLYLINE":
        values = [value for vertex in entity.vertices for value in vertex.dxf.location.vec2]
    elif kind == "TEXT":
        print(kind, layer, entity.dxf.text.replace(" ", "_"))
        continue
    print(kind, layer, *(repr(float(value)) for value in values))
