# objective -1.342527635
# nothing -1.342527635
# bound -1.342527869
pull.stay0.w04 1
