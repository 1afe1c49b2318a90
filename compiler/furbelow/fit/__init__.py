"""Backwards: from what is at hand - cloth, money, hours - to the choices that make the best garment of it."""
