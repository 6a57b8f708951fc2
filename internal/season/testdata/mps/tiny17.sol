# objective -1.572370699
# nothing -1.572370699
# bound -1.572370956
pull.stay0.w01 1
