### What changes for the maker between two garments, told by `furbelow compare`, and by `furbelow amend` of a fresh guide.

compare-alike = nothing changes for the maker

## Headings

compare-numbers = numbers
compare-materials = materials
compare-totals = in all
compare-steps = steps

## Rows; what it was and is stands behind them

# $material: its name in the spec.
compare-bought = { $material } to buy
compare-finished = finished length
compare-cost = cost
compare-hours = hours
compare-layouts = times the table is laid out
compare-joins = joins in strips
compare-actions = steps to do
compare-price = price to ask

# In the place of both numbers.
compare-came = new: { $after }
compare-went = gone, was { $before }

compare-step = { $kind ->
    [new] new: { $title }
    [gone] gone: { $title }
   *[changed] changed: { $title }
 }
