# objective -5.426262880
# nothing -0.000000000
# bound -5.729270755
start.s0.c0.1.1 1
plants.s0.c0.1.1 2
start.s1.c0.2.1 1
plants.s1.c0.2.1 1
start.s0.c2.3.0 1
plants.s0.c2.3.0 2
start.s0.c1.4.1 1
plants.s0.c1.4.1 2
start.s0.c2.5.0 1
plants.s0.c2.5.0 2
