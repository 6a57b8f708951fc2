# objective -0.245424428
# nothing -0.245424428
# bound -0.271178417
pull.stay0.w06 1
