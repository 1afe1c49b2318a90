"""Who wears a garment with a cord or ribbon: its ends have limits where a child does."""

from __future__ import annotations

CHILD, GROWN = "child", "grown-up"
