"""How far two colours stand apart: relative luminance and contrast ratio of WCAG 2.2.

W3C, Web Content Accessibility Guidelines 2.2, definitions of relative luminance and contrast ratio;
success criteria 1.4.3 (text) and 1.4.11 (graphics).
"""

from __future__ import annotations

TEXT, GRAPHIC = 4.5, 3.0
_KNEE = 0.04045  # of the sRGB curve
PAPER, WASH = "#ffffff", "#f0f3f5"


def _linear(share: float) -> float:
    return share / 12.92 if share <= _KNEE else float(((share + 0.055) / 1.055) ** 2.4)


def luminance(colour: str) -> float:
    """Return the relative luminance (0 black to 1 white) of a colour like ``#17527a``."""
    red, green, blue = (_linear(int(colour[n : n + 2], 16) / 255) for n in (1, 3, 5))
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast(one: str, other: str) -> float:
    """Return the contrast ratio of two colours: 1 when they are the same, 21 black on white."""
    low, high = sorted((luminance(one), luminance(other)))
    return (high + 0.05) / (low + 0.05)
