# objective -3.924036475
# nothing -3.701310608
# bound -3.936693292
start.s0.c1.0.2 1
plants.s0.c1.0.2 2
pull.stay0.w01 1
