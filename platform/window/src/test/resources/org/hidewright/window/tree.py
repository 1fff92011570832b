"""Reads what a screen reader gets of the one program on the accessibility bus: a line for each thing, its parts after tabs.

The interfaces are those of AT-SPI 2: org.a11y.Bus, org.a11y.atspi.Registry, org.a11y.atspi.Accessible.
"""
import sys

from gi.repository import Gio, GLib

ACCESSIBLE = "org.a11y.atspi.Accessible"
ROOT = "/org/a11y/atspi/accessible/root"
PATIENCE_MS = 20000
STATES = {4: "checked", 5: "collapsed", 8: "enabled", 9: "expandable", 10: "expanded", 11: "focusable",
          12: "focused", 25: "showing", 30: "visible"}
RELATIONS = {1: "label-for", 2: "labelled-by"}


def call(bus, name, path, interface, method, args=None):
    return bus.call_sync(name, path, interface, method, args, None, Gio.DBusCallFlags.NONE, PATIENCE_MS, None).unpack()


def walk(bus, name, path, depth):
    told = call(bus, name, path, "org.freedesktop.DBus.Properties", "GetAll", GLib.Variant("(s)", (ACCESSIBLE,)))[0]
    role = call(bus, name, path, ACCESSIBLE, "GetRoleName")[0]
    low, high = call(bus, name, path, ACCESSIBLE, "GetState")[0]
    bits = low | high << 32
    states = [word for bit, word in STATES.items() if bits >> bit & 1]
    if "visible" not in states and depth > 1:
        return
    if "focusable" in states:
        states += [RELATIONS[kind] for kind, _ in call(bus, name, path, ACCESSIBLE, "GetRelationSet")[0] if kind in RELATIONS]
    print("\t".join(text.replace("\\", "\\\\").replace("\n", "\\n").replace("\t", " ") for text in
                    (str(depth), role, told.get("Name", ""), told.get("Description", ""), " ".join(states))))
    if role in ("table", "tree table", "list") and len(call(bus, name, path, ACCESSIBLE, "GetChildren")[0]) > 200:
        return
    for child_name, child in call(bus, name, path, ACCESSIBLE, "GetChildren")[0]:
        if child != "/org/a11y/atspi/null":
            walk(bus, child_name, child, depth + 1)


address = call(Gio.bus_get_sync(Gio.BusType.SESSION, None), "org.a11y.Bus", "/org/a11y/bus", "org.a11y.Bus", "GetAddress")[0]
flags = Gio.DBusConnectionFlags.AUTHENTICATION_CLIENT | Gio.DBusConnectionFlags.MESSAGE_BUS_CONNECTION
bus = Gio.DBusConnection.new_for_address_sync(address, flags, None, None)
programs = call(bus, "org.a11y.atspi.Registry", ROOT, ACCESSIBLE, "GetChildren")[0]
if len(programs) != 1:
    sys.exit(f"{len(programs)} programs are on the accessibility bus, not one")
walk(bus, programs[0][0], programs[0][1], 0)
