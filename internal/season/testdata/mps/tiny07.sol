# objective -14.923143941
# nothing -4.905913842
# bound -14.923145533
start.s0.c1.2.2 1
plants.s0.c1.2.2 1
start.s0.c2.3.5 1
plants.s0.c2.3.5 2
pull.stay0.w00 1
pull.stay1.w04 1
