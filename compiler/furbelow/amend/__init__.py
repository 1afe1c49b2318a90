"""Corrections on the way: from what was really measured to what is to be done about it, and to the numbers after it."""
