# objective -11.466052961
# nothing -6.220752726
# bound -14.061955308
start.s1.c1.0.0 1
plants.s1.c1.0.0 2
start.s1.c2.2.2 1
plants.s1.c2.2.2 1
pull.stay0.w05 1
