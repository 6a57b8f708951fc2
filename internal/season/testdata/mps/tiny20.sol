# objective -6.855226332
# nothing -0.160980801
# bound -6.855227117
start.s0.c2.2.0 1
plants.s0.c2.2.0 2
pull.stay0.w03 1
