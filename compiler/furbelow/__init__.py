"""furbelow: from a garment spec to the guide that someone sews from."""

__version__ = "0.2.0"
