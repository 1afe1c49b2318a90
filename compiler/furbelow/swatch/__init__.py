"""Swatches: what test strips say of the pleating attachment, and the setting for the fullness that is wanted."""
