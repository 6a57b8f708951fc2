# objective -5.005352051
# nothing -0.000000000
# bound -5.006425284
start.s0.c0.2.3 1
plants.s0.c0.2.3 3
start.s0.c2.3.1 1
plants.s0.c2.3.1 2
