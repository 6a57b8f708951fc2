# objective -0.670305074
# nothing -0.000000000
# bound -0.737330356
start.s0.c1.1.1 1
plants.s0.c1.1.1 2
start.s0.c2.4.3 1
plants.s0.c2.4.3 1
