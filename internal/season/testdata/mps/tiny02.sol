# objective -6.680366515
# nothing -0.262908772
# bound -6.857272318
start.s0.c1.0.2 1
plants.s0.c1.0.2 2
start.s0.c2.1.3 1
plants.s0.c2.1.3 2
start.s0.c0.2.1 1
plants.s0.c0.2.1 2
pull.stay0.w04 1
