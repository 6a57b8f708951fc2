# objective -1.206925629
# nothing -0.000000000
# bound -1.206925850
start.s0.c1.1.1 1
plants.s0.c1.1.1 1
