# objective -3.261442393
# nothing -0.000000000
# bound -3.261442819
start.s0.c2.2.5 1
plants.s0.c2.2.5 2
