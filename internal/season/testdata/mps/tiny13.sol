# objective -0.747959575
# nothing -0.151825911
# bound -0.828067257
start.s0.c2.4.3 1
plants.s0.c2.4.3 1
pull.stay0.w01 1
