### The best choices under limits, told by `furbelow fit`. $limit, $limits, $aims, $choices, $options: as they are typed.

fit-asked = { $garment }: { $aims }, so that { $limits }
fit-asked-no-limit = { $garment }: { $aims }, so that no limit
fit-make = make it with { $options }
fit-no-better = no better: with { $choices } { $why }
fit-none = no garment of these choices keeps within that
fit-nearest = nearest: { $choices }
fit-would-do-all = would do: { $limits } in place of all that is missed
fit-would-do = { COUNT($kept) ->
    [0] would do: { $instead } in place of `{ $limit }`, with { $choices }
   *[other] would do: { $instead } in place of `{ $limit }`, keeping { $kept }, with { $choices }
 }

## What it takes

fit-amount = { $what }: { $amount }
fit-amount-of = { $side ->
    [under] { $what }: { $amount } of { $limit }, { $spare } under
   *[over] { $what }: { $amount } of { $limit }, { $spare } over
 }
fit-cost = cost
fit-hours = hours
# $fault: a message of the proofs, in English.
fit-refused-by = it can't be made: { $fault }
fit-missed = { $side ->
    [under] { $what } comes to { $came-to }, { $by } short
   *[over] { $what } comes to { $came-to }, { $by } over
 }
fit-missed-at-least = { $side ->
    [under] { $what } comes to at least { $came-to }, { $by } short
   *[over] { $what } comes to at least { $came-to }, { $by } over
 }

## How many garments there were; they stand in one row

fit-garments = { $garments ->
    [one] { $garments } garment to choose from
   *[other] { $garments } garments to choose from
 }
fit-refused = { $garments } refused by the proofs
fit-ruled-out = { $garments ->
    [one] { $garments } ruled out by the area of its pieces alone
   *[other] { $garments } ruled out by the area of their pieces alone
 }
fit-planned = { $garments } cut to the last strip
fit-unsure = { $garments ->
    [one] { $garments } not reached in the work allowed, so it may be better
   *[other] { $garments } not reached in the work allowed, so one of them may be better
 }
