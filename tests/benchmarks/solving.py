"""How much processor time solving takes, for each demo spec: once for the spec, then for each body.

Run: python -m tests.benchmarks.solving
"""

from pathlib import Path
from time import process_time

from furbelow.s1_read.read_spec import read_spec
from furbelow.s2_solve.body import size_body
from furbelow.s2_solve.solve import prepare
from furbelow.s2_solve.takes import allowances
from furbelow.techniques import technique_of

SPECS = sorted((Path(__file__).parents[2] / "specs").glob("*.yaml"))
BODIES = 2000


def main() -> None:
    for path in SPECS:
        spec = read_spec(path).value
        assert spec
        takes = allowances(spec, technique_of)
        start = process_time()
        system = prepare(spec, takes)
        prepared = process_time()
        body = size_body(spec, next(iter(spec.sizes))).value or {}
        for _ in range(BODIES):
            assert system.solve("bench", body, {}).ok
        solved = process_time()
        each = (solved - prepared) / BODIES
        print(
            f"{path.stem}: prepared in {(prepared - start) * 1000:.1f} ms, {each * 1000:.2f} ms a body, "
            f"{BODIES} bodies in {solved - prepared:.2f} s"
        )


if __name__ == "__main__":
    main()
