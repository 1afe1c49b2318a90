### The key to the figures: every pattern and sign once, with its name.

## Edges of cloth

figure-legend-edges = Edges of cloth
figure-legend-raw = raw: loose threads
figure-legend-selvedge = selvedge
figure-legend-neatened = neatened: zigzag
figure-legend-hemmed = hemmed
figure-legend-trimmed = with trim: grey band
figure-legend-gathered = gathered: wavy, folds
figure-legend-sewn = in a seam
figure-legend-enclosed = enclosed: thick dots
figure-legend-fold = fold: dash and dot

## Faces of cloth

figure-legend-faces = Faces of cloth
figure-legend-right-side = right side: plain
figure-legend-wrong-side = wrong side: hatched
figure-legend-left-over = stays over: crossed
figure-legend-behind = behind the cloth: dots

## Cut through

figure-legend-cut = Cut through, seen from the side
figure-legend-stitch = two cloths, one stitch
figure-legend-half = hatched: wrong side
figure-legend-gathers = gathered cloth
figure-legend-overcast = neatened cut edges

## Stitches and things

figure-legend-things = Stitches and things
figure-legend-seam = seam, topstitching
figure-legend-longest = longest stitch
figure-legend-elastic = elastic
figure-legend-pin = pin

## Signs

figure-legend-signs = Signs
figure-legend-changed = red, thick: this step
figure-legend-callout = see that sentence
figure-legend-mark = matching mark
figure-legend-length = a length
figure-legend-left-out = middle left out

figure-legend-alt = The { $count } patterns and signs of the figures, each with its name: { $names }.
figure-legend-scale = In cuts through the work widths are to scale; cloth is drawn thicker than it is.
figure-legend-caption = How to read the figures. Every colour has a pattern or a word beside it.
