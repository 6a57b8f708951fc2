# objective -4.978520483
# nothing -2.692120806
# bound -5.109880871
start.s0.c2.2.0 1
plants.s0.c2.2.0 2
pull.stay0.w01 1
pull.stay1.w01 1
