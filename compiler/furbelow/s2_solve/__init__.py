"""Solve: one value for every measurement."""
