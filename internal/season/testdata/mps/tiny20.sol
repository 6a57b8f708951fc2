# objective -7.162356972
# nothing -1.211536170
# bound -7.162357788
start.s1.c0.3.1 1
plants.s1.c0.3.1 1
start.s1.c2.5.6 1
plants.s1.c2.5.6 2
pull.stay0.w04 1
