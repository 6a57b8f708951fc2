# objective -6.609605830
# nothing -2.751779633
# bound -7.392595025
start.s0.c2.4.1 1
plants.s0.c2.4.1 2
pull.stay0.w02 1
