# objective -2.201034067
# nothing -0.059572889
# bound -2.494711071
start.s0.c0.4.0 1
plants.s0.c0.4.0 1
pull.stay0.w02 1
