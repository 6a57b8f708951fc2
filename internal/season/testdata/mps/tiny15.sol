# objective -6.277739232
# nothing -0.485788493
# bound -6.431000358
start.s1.c0.1.4 1
plants.s1.c0.1.4 1
start.s1.c1.2.2 1
plants.s1.c1.2.2 1
start.s1.c2.3.1 1
plants.s1.c2.3.1 2
pull.stay0.w04 1
pull.stay1.w05 1
