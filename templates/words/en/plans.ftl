### How good a cutting plan is, told by `furbelow cutting`. $gap: the share of its cost that another plan could save, in hundredths.

plan-by-area = By area alone, whether or not it can be laid.
plan-first-fit = Laid longest first, each piece in the first place with room.
plan-proven = Proven: no plan of up to { $sections } sections along the bolt costs less at these prices.
plan-proven-straight = Proven: no plan of up to { $sections } sections along the bolt, in lanes or with the panels laid freely and parted by straight cuts, costs less at these prices.
plan-proven-panels = Proven: no plan of up to { $sections } sections along the bolt, in lanes or with the panels laid freely, costs less at these prices.
# The workroom sets limits on joins and sections.
plan-proven-within = Proven: within the limits no plan of up to { $sections } sections along the bolt costs less at these prices.
plan-proven-within-straight = Proven: within the limits no plan of up to { $sections } sections along the bolt, in lanes or with the panels laid freely and parted by straight cuts, costs less at these prices.
plan-proven-within-panels = Proven: within the limits no plan of up to { $sections } sections along the bolt, in lanes or with the panels laid freely, costs less at these prices.
plan-best-found = The best plan found in the work allowed; another could save { $gap }% at most.
plan-best-of-class = The best of several plans for the whole class; another could save { $gap }% at most.
plan-after-each-other = Plans after each other on one bolt: no shared plan that was found costs less.
plan-shortest-proven = Proven: with as few joins and sections no plan is shorter.
plan-shortest-found = The shortest plan found in the work allowed; another could save { $gap }% at most.
