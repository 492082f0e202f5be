"""Reads DXF files with ezdxf and prints what it found, as JSON: for the tests of the cutting files."""

import json
import math
import sys

import ezdxf


def drawn(layout):
    """The layout's entities, blocks opened up."""
    for entity in layout:
        if entity.dxftype() == "INSERT":
            yield from entity.virtual_entities()
        else:
            yield entity


def points_of(entity):
    if entity.dxftype() == "LWPOLYLINE":
        return [(p[0], p[1]) for p in entity.get_points()]
    return [(v.dxf.location.x, v.dxf.location.y) for v in entity.vertices]


def line_of(entity):
    points = points_of(entity)
    closed = entity.closed if entity.dxftype() == "LWPOLYLINE" else entity.is_closed
    ends = points[1:] + points[:1] if closed else points[1:]
    return {
        "layer": entity.dxf.layer,
        "closed": bool(closed),
        "length": sum(math.dist(a, b) for a, b in zip(points, ends)),
        "area": abs(sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(points, ends))) / 2,
        "points": points,
    }


def read(path):
    document = ezdxf.readfile(path)
    audit = document.audit()
    entities = list(drawn(document.modelspace()))
    return {
        "version": document.dxfversion,
        "units": document.units,
        "faults": len(audit.errors) + len(audit.fixes),
        "lines": [line_of(e) for e in entities if e.dxftype() in ("LWPOLYLINE", "POLYLINE")],
        "points": [
            {"layer": e.dxf.layer, "at": [e.dxf.location.x, e.dxf.location.y]}
            for e in entities
            if e.dxftype() == "POINT"
        ],
        "texts": [
            {"layer": e.dxf.layer, "text": e.dxf.text, "height": e.dxf.height, "turn": e.dxf.rotation}
            for e in entities
            if e.dxftype() == "TEXT"
        ],
    }


print(json.dumps([read(path) for path in sys.argv[1:]]))
