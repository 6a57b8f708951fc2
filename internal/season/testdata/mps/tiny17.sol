# objective -5.736383398
# nothing -0.357978420
# bound -6.046079735
start.s0.c0.2.0 1
plants.s0.c0.2.0 2
start.s0.c2.3.1 1
plants.s0.c2.3.1 1
pull.stay0.w00 1
