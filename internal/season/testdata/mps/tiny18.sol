# objective -9.344635567
# nothing -5.893979290
# bound -9.695114111
start.s0.c2.1.3 1
plants.s0.c2.1.3 2
start.s0.c0.2.0 1
plants.s0.c0.2.0 2
pull.stay0.w03 1
