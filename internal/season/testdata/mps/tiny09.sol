# objective -9.024331227
# nothing -2.503558903
# bound -14.040568306
start.s0.c0.4.4 1
plants.s0.c0.4.4 3
pull.stay0.w01 1
pull.stay1.w01 1
