"""The exit codes of the command."""

DONE, SPEC_AT_FAULT, WRONG_USE, OUR_BUG = 0, 1, 2, 3
STOPPED = (
    130  # 128 and the number of the signal, as shells say it. Source: POSIX.1-2017, Shell Command Language, 2.8.2.
)
