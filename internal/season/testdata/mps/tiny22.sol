# objective -22.717089385
# nothing -0.000000000
# bound -23.040711864
start.s1.c0.2.3 1
plants.s1.c0.2.3 2
start.s0.c0.4.1 1
plants.s0.c0.4.1 2
