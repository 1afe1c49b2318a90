"""Formulas as makers write them: read, checked and worked out exactly."""
