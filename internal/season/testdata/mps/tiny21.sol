# objective -2.800874345
# nothing -0.000000000
# bound -2.800874725
start.s0.c2.0.0 1
plants.s0.c2.0.0 1
start.s0.c2.1.4 1
plants.s0.c2.1.4 3
