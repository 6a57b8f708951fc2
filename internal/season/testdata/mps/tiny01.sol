# objective -0.484065516
# nothing -0.000000000
# bound -0.484065665
start.s0.c0.1.1 1
plants.s0.c0.1.1 2
start.s0.c2.3.0 1
plants.s0.c2.3.0 2
