# objective -11.605602789
# nothing -6.249382710
# bound -14.255967199
start.s1.c1.0.0 1
plants.s1.c1.0.0 2
start.s1.c2.2.2 1
plants.s1.c2.2.2 1
pull.stay0.w05 1
