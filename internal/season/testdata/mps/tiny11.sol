# objective -0.084291435
# nothing -0.000000000
# bound -0.084291543
start.s0.c0.2.1 1
plants.s0.c0.2.1 2
