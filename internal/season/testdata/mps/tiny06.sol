# objective -8.538902448
# nothing -4.544649442
# bound -8.853703969
start.s1.c0.2.3 1
plants.s1.c0.2.3 2
start.s0.c1.4.0 1
plants.s0.c1.4.0 1
pull.stay0.w02 1
pull.stay1.w01 1
