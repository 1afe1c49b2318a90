"""An independent check of a packing: it knows nothing of how the packing was made."""

from collections.abc import Sequence


def faults_of(
    rects: Sequence[tuple[int, int]], width: int, length: int, places: Sequence[tuple[int, int, bool]]
) -> list[str]:
    """What is wrong with a packing, one sentence each; nothing when it is sound.

    rects: width and height of each. places: x, y and whether turned, of each, in the same order.
    """
    if len(places) != len(rects):
        return [f"{len(places)} places for {len(rects)} rectangles"]
    boxes = []
    for (w, h), (x, y, turned) in zip(rects, places, strict=True):
        boxes.append((x, y, x + (h if turned else w), y + (w if turned else h)))
    faults = [
        f"rectangle {k} at {box} is not inside {width} x {length}"
        for k, box in enumerate(boxes)
        if box[0] < 0 or box[1] < 0 or box[2] > width or box[3] > length
    ]
    for k, one in enumerate(boxes):
        for m in range(k):
            other = boxes[m]
            if min(one[2], other[2]) > max(one[0], other[0]) and min(one[3], other[3]) > max(one[1], other[1]):
                faults.append(f"rectangles {m} and {k} overlap")
    if boxes and max(box[3] for box in boxes) != length:
        faults.append(f"the last one ends at {max(box[3] for box in boxes)}, not at {length}")
    return faults
