"""`python -m furbelow` is `furbelow`."""

from furbelow.verbs.command import main

if __name__ == "__main__":
    main()
