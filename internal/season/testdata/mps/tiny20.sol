# objective -6.959918496
# nothing -0.213019225
# bound -6.959919292
start.s0.c2.2.0 1
plants.s0.c2.2.0 2
pull.stay0.w03 1
