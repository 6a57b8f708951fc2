# objective -6.404987513
# nothing -0.242634447
# bound -6.515309454
start.s0.c1.0.2 1
plants.s0.c1.0.2 2
start.s0.c2.1.3 1
plants.s0.c2.1.3 2
start.s0.c0.2.1 1
plants.s0.c0.2.1 2
pull.stay0.w04 1
