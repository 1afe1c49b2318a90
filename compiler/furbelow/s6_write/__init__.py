"""Write: the solved, proved and planned garment as a guide, and the guide as pages."""
