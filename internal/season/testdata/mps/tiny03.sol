# objective -5.493235727
# nothing -0.000000000
# bound -7.665029551
start.s0.c2.3.1 1
plants.s0.c2.3.1 2
