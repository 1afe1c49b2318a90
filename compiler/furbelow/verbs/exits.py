"""The exit codes of the command."""

DONE, SPEC_AT_FAULT, WRONG_USE, OUR_BUG = 0, 1, 2, 3
