"""Joints for the tests of joint geometry: sizes in millimetres and degrees, and random ones that can be."""

import math

from hypothesis import strategies as st

from calculators.joint_section import CURVED, FILLETS, HOLES, Section

INCH = 0.0254  # m, exactly
POUND = 0.45359237  # kg, exactly
MILLIMETRE = 0.001
IN_DEGREES = ("joint_angle", "included_angle")

_BUTT = {"thickness": 20.0, "root_gap": 2.0, "root_face": 2.0, "included_angle": 40.0, "reinforcement": 1.5}
# One ordinary joint of each kind.
SQUARE = {
    "fillet": {"leg": 6.0},
    "lap": {"leg": 6.0, "thickness": 8.0},
    "corner": {"thickness": 6.0},
    "square-butt": {"thickness": 3.0, "root_gap": 1.5, "reinforcement": 1.0, "bead_width": 6.0},
    "single-v": _BUTT,
    "double-v": _BUTT,
    "single-bevel": _BUTT,
    "double-bevel": _BUTT,
    "single-u": {**_BUTT, "root_radius": 6.0},
    "single-j": {**_BUTT, "root_radius": 6.0},
    "edge": {"thickness": 3.0, "reinforcement": 1.0},
    "plug": {"thickness": 10.0, "hole_diameter": 20.0},
    "slot": {"thickness": 10.0, "slot_width": 20.0, "slot_length": 50.0},
}


def degrees(angle):
    """Return an angle in radians."""
    return angle * math.pi / 180.0


def section(joint, **sizes):
    """Return a Section from sizes in millimetres and degrees."""
    coherent = {}
    for name in sizes:
        coherent[name] = degrees(sizes[name]) if name in IN_DEGREES else sizes[name] * MILLIMETRE
    return Section(joint, coherent, "mm")


@st.composite
def a_joint(draw, joints):
    """Draw a joint and sizes that a welder could meet, [mm] and [degrees]."""
    joint = draw(st.sampled_from(joints))
    if joint in FILLETS:
        return joint, _fillet(draw, joint)
    thickness = draw(st.floats(2.0, 40.0))
    sizes = {"thickness": thickness}
    if joint in HOLES:
        sizes.update(_hole(draw, joint, thickness))
    elif joint == "edge":
        sizes["reinforcement"] = thickness * draw(st.floats(0.05, 0.45))
    else:
        sizes.update(_groove(draw, joint, thickness))
    return joint, sizes


def _fillet(draw, joint):
    leg = draw(st.floats(2.0, 20.0))
    sizes = {"thickness": leg} if joint == "corner" else {"leg": leg}
    if joint == "lap":
        sizes["thickness"] = leg * draw(st.floats(1.0, 1.5))
    if joint != "corner" and draw(st.booleans()):
        sizes["second_leg"] = leg * draw(st.floats(0.7, 1.5))
    if joint == "fillet" and draw(st.booleans()):
        sizes["joint_angle"] = draw(st.floats(62.0, 118.0))
    if draw(st.booleans()):
        sizes["root_gap"] = min(leg * 0.3, 4.0) * draw(st.floats(0.05, 1.0))
    face = draw(st.sampled_from(("flat", "convexity", "concavity")))
    if face != "flat":
        sizes[face] = leg * draw(st.floats(0.01, 0.04))
    return sizes


def _groove(draw, joint, thickness):
    sizes = {"root_gap": draw(st.floats(0.5, 5.0))}
    if joint == "square-butt":
        sizes["bead_width"] = sizes["root_gap"] + draw(st.floats(2.0, 8.0))
        sizes["reinforcement"] = sizes["bead_width"] * draw(st.floats(0.05, 0.24))
        return sizes
    sizes["included_angle"] = draw(st.floats(20.0, 44.0))
    if draw(st.booleans()):
        sizes["root_face"] = thickness * draw(st.floats(0.02, 0.3))
    if joint in CURVED:
        sizes["root_radius"] = max(1.0, (thickness - sizes.get("root_face", 0.0)) * draw(st.floats(0.2, 0.9)))
    if draw(st.booleans()):
        sizes["reinforcement"] = sizes["root_gap"] * draw(st.floats(0.02, 0.24))
    return sizes


def _hole(draw, joint, thickness):
    width = draw(st.floats(5.0, 40.0))
    sizes = {"hole_diameter": width} if joint == "plug" else {"slot_width": width}
    if joint == "slot":
        sizes["slot_length"] = width * draw(st.floats(1.0, 8.0))
    if draw(st.booleans()):
        sizes["fill_depth"] = thickness * draw(st.floats(0.3, 1.0))
    return sizes
