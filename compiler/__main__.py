"""`python -m compiler` is `furbelow`."""

from compiler.command import main

if __name__ == "__main__":
    main()
