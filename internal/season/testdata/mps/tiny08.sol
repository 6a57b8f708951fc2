# objective -3.349463365
# nothing -3.349463365
# bound -3.349463800
pull.stay0.w01 1
pull.stay1.w02 1
