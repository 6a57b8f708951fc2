# objective -7.186508596
# nothing -0.446129358
# bound -8.490424196
start.s0.c2.0.1 1
plants.s0.c2.0.1 1
start.s0.c0.1.3 1
plants.s0.c0.1.3 1
start.s1.c1.2.2 1
plants.s1.c1.2.2 2
pull.stay0.w00 1
pull.stay1.w03 1
