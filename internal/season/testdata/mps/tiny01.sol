# objective -2.617439468
# nothing -0.000000000
# bound -2.617439830
start.s0.c0.1.1 1
plants.s0.c0.1.1 2
start.s0.c2.3.0 1
plants.s0.c2.3.0 2
start.s0.c1.4.1 1
plants.s0.c1.4.1 2
start.s0.c2.5.0 1
plants.s0.c2.5.0 2
