"""Stage 5: what to buy, what it costs and how long it takes."""
