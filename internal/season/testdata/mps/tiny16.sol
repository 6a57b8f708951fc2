# objective -3.570393073
# nothing -0.485788493
# bound -3.577850075
start.s1.c0.1.4 1
plants.s1.c0.1.4 2
start.s1.c1.2.2 1
plants.s1.c1.2.2 1
pull.stay0.w04 1
pull.stay1.w05 1
