# objective -7.596390989
# nothing -2.148752324
# bound -7.596391849
start.s0.c2.0.3 1
plants.s0.c2.0.3 1
start.s0.c2.1.3 1
plants.s0.c2.1.3 2
start.s0.c0.2.0 1
plants.s0.c0.2.0 2
start.s0.c1.5.0 1
plants.s0.c1.5.0 2
pull.stay0.w00 1
