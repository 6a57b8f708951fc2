# objective -0.211699712
# nothing -0.000000000
# bound -0.211699833
start.s0.c2.2.6 1
plants.s0.c2.2.6 2
