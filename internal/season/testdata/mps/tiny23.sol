# objective -8.943115978
# nothing -3.482757306
# bound -8.943981208
start.s0.c2.0.0 1
plants.s0.c2.0.0 1
start.s0.c2.1.4 1
plants.s0.c2.1.4 3
start.s0.c2.5.3 1
plants.s0.c2.5.3 2
pull.stay0.w03 1
