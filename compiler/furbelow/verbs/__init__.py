"""The verbs of the command, one file each. A verb has `add`, which tells the parser of it, and what it does.

Nothing heavy is imported before the verb runs, so that help comes at once.
"""
