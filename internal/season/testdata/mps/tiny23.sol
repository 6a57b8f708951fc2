# objective -0.000000000
# nothing -0.000000000
# bound -0.000000100
