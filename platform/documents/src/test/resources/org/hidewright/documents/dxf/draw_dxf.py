"""Writes a DXF with every kind of line that goes round something, each on the layer of its name, and prints its text."""
import math
import sys

import ezdxf
from ezdxf.math import rational_bspline_from_arc

unit, release = int(sys.argv[1]), sys.argv[2]
document = ezdxf.new(release)
document.header["$INSUNITS"] = unit  # which release 12 does not have
space = document.modelspace()
quarter = math.tan(math.pi / 8)


def on(layer, **more):
    return {"layer": layer, **more}


space.add_circle((50, 40), 20, dxfattribs=on("circle"))
space.add_line((0, 0), (30, 0), dxfattribs=on("slot"))
space.add_line((30, 10), (0, 10), dxfattribs=on("slot"))
space.add_arc((0, 5), 5, 90, 270, dxfattribs=on("slot"))
space.add_arc((30, 5), 5, 270, 90, dxfattribs=on("slot"))
space.add_polyline2d(
    [(0, 0, 0), (40, 0, 1), (40, 30, 0), (0, 30, 0)], format="xyb", close=True, dxfattribs=on("old-bulge"))
space.add_line((0, 0), (10, 0), dxfattribs=on("open"))
space.add_line((10, 0.02), (10, 10), dxfattribs=on("open"))
space.add_text("kit", dxfattribs=on("text"))
space.add_polyline3d([(0, 0, 0), (9, 0, 0), (9, 9, 5)], close=True, dxfattribs=on("space"))
document.layers.add("off").off()
space.add_circle((0, 0), 9, dxfattribs=on("off"))
if release != "R12":
    space.add_lwpolyline(
        [(10, 0, 0), (50, 0, quarter), (60, 10, 0), (60, 30, quarter), (50, 40, 0), (10, 40, quarter), (0, 30, 0),
         (0, 10, quarter)], format="xyb", close=True, dxfattribs=on("round"))
    space.add_lwpolyline([(0, 0, -0.5), (20, 0, 0)], format="xyb", close=True, dxfattribs=on("cap"))
    space.add_ellipse((10, 20), (30, 40), 0.3, dxfattribs=on("ellipse"))
    space.add_ellipse((0, 0), (20, 0), 0.5, 0, math.pi, dxfattribs=on("half"))
    space.add_line((20, 0), (-20, 0), dxfattribs=on("half"))
    whole = rational_bspline_from_arc((5, 6), 25, 0, 360)
    space.add_spline(dxfattribs=on("spline")).apply_construction_tool(whole)
    space.add_lwpolyline([(0, 0), (10, 0), (0, 20)], close=True, dxfattribs=on("below", extrusion=(0, 0, -1)))
    space.add_blockref("missing", (0, 0))
    space.add_spline(fit_points=[(0, 0), (5, 5), (0, 9)], dxfattribs=on("fit"))
document.write(sys.stdout)
