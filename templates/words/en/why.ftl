### Why a number is what it is, told by `furbelow why`, with what stands in reasons.ftl. Numbers and names stand as in the maker's file.

# A rule of the maker.
why-holds = holds
why-fails = does not hold
why-above = see above
why-ask = ask for it by name
why-place = { $file }, line { $line }
