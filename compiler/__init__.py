"""furbelow: a garment spec compiled to build instructions."""
