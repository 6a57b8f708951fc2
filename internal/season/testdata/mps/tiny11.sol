# objective -3.746588432
# nothing -0.000000000
# bound -3.746588906
start.s0.c2.1.0 1
plants.s0.c2.1.0 2
start.s1.c2.2.1 1
plants.s1.c2.2.1 1
