# objective -8.933878906
# nothing -2.536564909
# bound -9.976141967
start.s1.c0.1.2 1
plants.s1.c0.1.2 3
start.s0.c2.5.0 1
plants.s0.c2.5.0 3
pull.stay0.w01 1
