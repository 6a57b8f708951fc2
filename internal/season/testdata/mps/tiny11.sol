# objective -3.662734764
# nothing -0.000000000
# bound -3.746588906
start.s1.c2.2.1 1
plants.s1.c2.2.1 1
