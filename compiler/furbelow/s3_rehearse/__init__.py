"""Stage 3: carry the steps out on the bench and prove the garment."""
