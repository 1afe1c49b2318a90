"""For editors: the faults of the solver and the rehearsal while a spec is typed, and the value of a name under the pointer.

`furbelow[editor]` installs what the command `furbelow-editor` needs, a language server over standard input and output.
"""
