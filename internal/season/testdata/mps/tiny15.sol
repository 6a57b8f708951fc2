# objective -5.491852680
# nothing -5.491852680
# bound -5.491853329
pull.stay0.w07 1
