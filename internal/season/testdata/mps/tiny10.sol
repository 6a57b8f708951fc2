# objective -0.095131471
# nothing -0.000000000
# bound -0.095131580
start.s0.c1.0.1 1
plants.s0.c1.0.1 1
