NAME season
ROWS
 N cost
 L most.s1.c1.0.0
 G least.s1.c1.0.0
 L most.s1.c2.2.2
 G least.s1.c2.2.2
 E pulled.stay0
 L water.w00
 L water.w01
 L water.w02
 L water.w03
 L water.w04
 L water.w05
 L ground.s1.w00
 L roots.s1.w00
 L support.s1.w00
 L ground.s1.w01
 L roots.s1.w01
 L support.s1.w01
 L ground.s1.w02
 L roots.s1.w02
 L support.s1.w02
 L ground.s1.w03
 L roots.s1.w03
 L support.s1.w03
 L ground.s1.w04
 L roots.s1.w04
 L support.s1.w04
 L shelf.w-1
 L ground.s1.w05
 L roots.s1.w05
 L support.s1.w05
 L picked.f0.w00
 G rises.f0.w00
 E sum.f0.w00
 L first.f0.w00
 L picked.f0.w01
 G rises.f0.w01
 E sum.f0.w01
 L first.f0.w01
 L picked.f0.w02
 G rises.f0.w02
 E sum.f0.w02
 L first.f0.w02
 L picked.f0.w03
 G rises.f0.w03
 E sum.f0.w03
 L first.f0.w03
 L picked.f0.w04
 G rises.f0.w04
 E sum.f0.w04
 L first.f0.w04
 L picked.f0.w05
 G rises.f0.w05
 E sum.f0.w05
 L first.f0.w05
 L keeps.f0.w00
 L keeps.f0.w01
 L keeps.f0.w02
 L keeps.f0.w03
 L picked.f1.w00
 G rises.f1.w00
 E sum.f1.w00
 L first.f1.w00
 L picked.f1.w01
 G rises.f1.w01
 E sum.f1.w01
 L first.f1.w01
 L picked.f1.w02
 G rises.f1.w02
 E sum.f1.w02
 L first.f1.w02
 L picked.f1.w03
 G rises.f1.w03
 E sum.f1.w03
 L first.f1.w03
 L picked.f1.w04
 G rises.f1.w04
 E sum.f1.w04
 L first.f1.w04
 L picked.f1.w05
 G rises.f1.w05
 E sum.f1.w05
 L first.f1.w05
 L keeps.f1.w00
 L keeps.f1.w01
 L keeps.f1.w02
 L keeps.f1.w03
 L keeps.f1.w04
 G leaves.b1.f1.w04.start.s1.c1.0.0
 G leaves.b1.f0.w05.start.s1.c2.2.2
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s1.c1.0.0 cost 0.04193049535207137
 start.s1.c1.0.0 most.s1.c1.0.0 -2
 start.s1.c1.0.0 least.s1.c1.0.0 -2
 start.s1.c1.0.0 leaves.b1.f1.w04.start.s1.c1.0.0 -1
 plants.s1.c1.0.0 cost 0.12000000000000001
 plants.s1.c1.0.0 most.s1.c1.0.0 1
 plants.s1.c1.0.0 least.s1.c1.0.0 1
 plants.s1.c1.0.0 water.w00 0.9503434432576543
 plants.s1.c1.0.0 water.w01 0.38628371709859854
 plants.s1.c1.0.0 water.w02 0.30238580641922774
 plants.s1.c1.0.0 water.w03 0.28265489022937806
 plants.s1.c1.0.0 water.w04 0.03819773420462391
 plants.s1.c1.0.0 ground.s1.w00 0.2402249224386188
 plants.s1.c1.0.0 roots.s1.w00 6.363292931526668
 plants.s1.c1.0.0 support.s1.w00 0.2
 plants.s1.c1.0.0 ground.s1.w01 0.12061335306973969
 plants.s1.c1.0.0 roots.s1.w01 3.194914537780786
 plants.s1.c1.0.0 support.s1.w01 0.2
 plants.s1.c1.0.0 ground.s1.w02 0.13962145936616138
 plants.s1.c1.0.0 roots.s1.w02 3.6984182842275493
 plants.s1.c1.0.0 support.s1.w02 0.2
 plants.s1.c1.0.0 ground.s1.w03 0.13962145936616138
 plants.s1.c1.0.0 roots.s1.w03 3.6984182842275493
 plants.s1.c1.0.0 support.s1.w03 0.2
 plants.s1.c1.0.0 ground.s1.w04 0.13962145936616138
 plants.s1.c1.0.0 roots.s1.w04 3.6984182842275493
 plants.s1.c1.0.0 support.s1.w04 0.2
 plants.s1.c1.0.0 shelf.w-1 1
 plants.s1.c1.0.0 picked.f0.w00 -0.9528066317240397
 plants.s1.c1.0.0 picked.f0.w01 -0.3626745454967022
 start.s1.c2.2.2 cost 0.2816097216108254
 start.s1.c2.2.2 most.s1.c2.2.2 -2
 start.s1.c2.2.2 least.s1.c2.2.2 -1
 start.s1.c2.2.2 leaves.b1.f0.w05.start.s1.c2.2.2 -1
 plants.s1.c2.2.2 cost -0.18
 plants.s1.c2.2.2 most.s1.c2.2.2 1
 plants.s1.c2.2.2 least.s1.c2.2.2 1
 plants.s1.c2.2.2 water.w02 0.18515799820902135
 plants.s1.c2.2.2 water.w03 0.46285264665112824
 plants.s1.c2.2.2 water.w04 0.9341927454033794
 plants.s1.c2.2.2 water.w05 0.39823522156715074
 plants.s1.c2.2.2 ground.s1.w02 0.2714588082399278
 plants.s1.c2.2.2 roots.s1.w02 11.853846121649935
 plants.s1.c2.2.2 support.s1.w02 0.2
 plants.s1.c2.2.2 ground.s1.w03 0.2957378706551203
 plants.s1.c2.2.2 roots.s1.w03 12.914044800461106
 plants.s1.c2.2.2 support.s1.w03 0.2
 plants.s1.c2.2.2 ground.s1.w04 0.2957378706551203
 plants.s1.c2.2.2 roots.s1.w04 12.914044800461106
 plants.s1.c2.2.2 support.s1.w04 0.2
 plants.s1.c2.2.2 ground.s1.w05 0.2957378706551203
 plants.s1.c2.2.2 roots.s1.w05 12.914044800461106
 plants.s1.c2.2.2 support.s1.w05 0.2
 plants.s1.c2.2.2 picked.f0.w02 -0.8608492513497671
 plants.s1.c2.2.2 picked.f0.w03 -0.1976861171424389
 plants.s1.c2.2.2 picked.f0.w04 -0.30903977155685425
 pull.stay0.w03 cost 0.15336068028076177
 pull.stay0.w03 pulled.stay0 1
 pull.stay0.w03 water.w00 0.7396953401922519
 pull.stay0.w03 water.w01 0.19384869512834269
 pull.stay0.w03 water.w02 1.9769856056777242
 pull.stay0.w03 water.w03 1.757892379711851
 pull.stay0.w03 ground.s1.w00 0.4738347835463828
 pull.stay0.w03 roots.s1.w00 30.51298625107781
 pull.stay0.w03 support.s1.w00 0.1
 pull.stay0.w03 ground.s1.w01 0.5047563797345014
 pull.stay0.w03 roots.s1.w01 32.50420823838699
 pull.stay0.w03 support.s1.w01 0.1
 pull.stay0.w03 ground.s1.w02 0.5332091587858696
 pull.stay0.w03 roots.s1.w02 34.33644868621044
 pull.stay0.w03 support.s1.w02 0.1
 pull.stay0.w03 ground.s1.w03 0.5301000499193183
 pull.stay0.w03 roots.s1.w03 34.13623502652899
 pull.stay0.w03 support.s1.w03 0.1
 pull.stay0.w03 picked.f0.w00 -0.9063592056433359
 pull.stay0.w03 picked.f0.w01 -0.39876535534858704
 pull.stay0.w03 picked.f0.w02 -0.8959313730398814
 pull.stay0.w03 picked.f0.w03 -0.2352154552936554
 pull.stay0.w04 cost 0.15336068028076177
 pull.stay0.w04 pulled.stay0 1
 pull.stay0.w04 water.w00 0.7396953401922519
 pull.stay0.w04 water.w01 0.19384869512834269
 pull.stay0.w04 water.w02 1.9769856056777242
 pull.stay0.w04 water.w03 1.757892379711851
 pull.stay0.w04 water.w04 1.3023914872419728
 pull.stay0.w04 ground.s1.w00 0.4738347835463828
 pull.stay0.w04 roots.s1.w00 30.51298625107781
 pull.stay0.w04 support.s1.w00 0.1
 pull.stay0.w04 ground.s1.w01 0.5047563797345014
 pull.stay0.w04 roots.s1.w01 32.50420823838699
 pull.stay0.w04 support.s1.w01 0.1
 pull.stay0.w04 ground.s1.w02 0.5332091587858696
 pull.stay0.w04 roots.s1.w02 34.33644868621044
 pull.stay0.w04 support.s1.w02 0.1
 pull.stay0.w04 ground.s1.w03 0.5301000499193183
 pull.stay0.w04 roots.s1.w03 34.13623502652899
 pull.stay0.w04 support.s1.w03 0.1
 pull.stay0.w04 ground.s1.w04 0.5155498697516503
 pull.stay0.w04 roots.s1.w04 33.19926403405795
 pull.stay0.w04 support.s1.w04 0.1
 pull.stay0.w04 picked.f0.w00 -0.9063592056433359
 pull.stay0.w04 picked.f0.w01 -0.39876535534858704
 pull.stay0.w04 picked.f0.w02 -0.8959313730398814
 pull.stay0.w04 picked.f0.w03 -0.2352154552936554
 pull.stay0.w04 picked.f0.w04 -0.6203685204188029
 pull.stay0.w05 cost -0.17375669142751665
 pull.stay0.w05 pulled.stay0 1
 pull.stay0.w05 water.w00 0.7396953401922519
 pull.stay0.w05 water.w01 0.19384869512834269
 pull.stay0.w05 water.w02 1.9769856056777242
 pull.stay0.w05 water.w03 1.757892379711851
 pull.stay0.w05 water.w04 1.3023914872419728
 pull.stay0.w05 water.w05 1.8107477640595724
 pull.stay0.w05 ground.s1.w00 0.4738347835463828
 pull.stay0.w05 roots.s1.w00 30.51298625107781
 pull.stay0.w05 support.s1.w00 0.1
 pull.stay0.w05 ground.s1.w01 0.5047563797345014
 pull.stay0.w05 roots.s1.w01 32.50420823838699
 pull.stay0.w05 support.s1.w01 0.1
 pull.stay0.w05 ground.s1.w02 0.5332091587858696
 pull.stay0.w05 roots.s1.w02 34.33644868621044
 pull.stay0.w05 support.s1.w02 0.1
 pull.stay0.w05 ground.s1.w03 0.5301000499193183
 pull.stay0.w05 roots.s1.w03 34.13623502652899
 pull.stay0.w05 support.s1.w03 0.1
 pull.stay0.w05 ground.s1.w04 0.5155498697516503
 pull.stay0.w05 roots.s1.w04 33.19926403405795
 pull.stay0.w05 support.s1.w04 0.1
 pull.stay0.w05 ground.s1.w05 0.5155498697516503
 pull.stay0.w05 roots.s1.w05 33.19926403405795
 pull.stay0.w05 support.s1.w05 0.1
 pull.stay0.w05 picked.f0.w00 -0.9063592056433359
 pull.stay0.w05 picked.f0.w01 -0.39876535534858704
 pull.stay0.w05 picked.f0.w02 -0.8959313730398814
 pull.stay0.w05 picked.f0.w03 -0.2352154552936554
 pull.stay0.w05 picked.f0.w04 -0.6203685204188029
 pull.stay0.w05 picked.f0.w05 -0.35427173661688965
 M MARKER 'MARKER' 'INTEND'
 overwater.w00 cost 0.09335391892353878
 overwater.w00 water.w00 -1
 overwater.w01 cost 0.09335391892353878
 overwater.w01 water.w01 -1
 overwater.w02 cost 0.09335391892353878
 overwater.w02 water.w02 -1
 overwater.w03 cost 0.09335391892353878
 overwater.w03 water.w03 -1
 overwater.w04 cost 0.09335391892353878
 overwater.w04 water.w04 -1
 overwater.w05 cost 0.09335391892353878
 overwater.w05 water.w05 -1
 used.f0.w00 cost 0
 used.f0.w00 picked.f0.w00 1
 used.f0.w00 rises.f0.w00 1
 used.f0.w00 first.f0.w00 -1
 used.f0.w00 picked.f0.w01 -1
 used.f0.w00 rises.f0.w01 -1
 used.f0.w00 keeps.f0.w00 1
 eaten.f0.w00 cost 0
 eaten.f0.w00 sum.f0.w00 1
 eaten.f0.w00 first.f0.w00 1
 eaten.f0.w00 sum.f0.w01 -1
 eat.f0.w00.1 cost -1.858468982265039
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -1.7792231985999822
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -1.6999774149349256
 eat.f0.w00.3 sum.f0.w00 -1
 used.f0.w01 cost 0
 used.f0.w01 picked.f0.w01 1
 used.f0.w01 rises.f0.w01 1
 used.f0.w01 first.f0.w01 -1
 used.f0.w01 picked.f0.w02 -1
 used.f0.w01 rises.f0.w02 -1
 used.f0.w01 keeps.f0.w01 1
 eaten.f0.w01 cost 0
 eaten.f0.w01 sum.f0.w01 1
 eaten.f0.w01 first.f0.w01 1
 eaten.f0.w01 sum.f0.w02 -1
 eat.f0.w01.1 cost -1.8400682992723159
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -1.761607127326715
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -1.6831459553811143
 eat.f0.w01.3 sum.f0.w01 -1
 used.f0.w02 cost 0
 used.f0.w02 picked.f0.w02 1
 used.f0.w02 rises.f0.w02 1
 used.f0.w02 first.f0.w02 -1
 used.f0.w02 picked.f0.w03 -1
 used.f0.w02 rises.f0.w03 -1
 used.f0.w02 keeps.f0.w02 1
 eaten.f0.w02 cost 0
 eaten.f0.w02 sum.f0.w02 1
 eaten.f0.w02 first.f0.w02 1
 eaten.f0.w02 sum.f0.w03 -1
 eaten.f0.w02 keeps.f0.w00 -1
 eat.f0.w02.1 cost -1.8218498012597186
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -1.7441654726007079
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -1.6664811439416973
 eat.f0.w02.3 sum.f0.w02 -1
 used.f0.w03 cost 0
 used.f0.w03 picked.f0.w03 1
 used.f0.w03 rises.f0.w03 1
 used.f0.w03 first.f0.w03 -1
 used.f0.w03 picked.f0.w04 -1
 used.f0.w03 rises.f0.w04 -1
 used.f0.w03 keeps.f0.w03 1
 eaten.f0.w03 cost 0
 eaten.f0.w03 sum.f0.w03 1
 eaten.f0.w03 first.f0.w03 1
 eaten.f0.w03 sum.f0.w04 -1
 eaten.f0.w03 keeps.f0.w01 -1
 eat.f0.w03.1 cost -1.8038116844155632
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -1.7268965075254537
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -1.6499813306353441
 eat.f0.w03.3 sum.f0.w03 -1
 used.f0.w04 cost 0
 used.f0.w04 picked.f0.w04 1
 used.f0.w04 rises.f0.w04 1
 used.f0.w04 first.f0.w04 -1
 used.f0.w04 picked.f0.w05 -1
 used.f0.w04 rises.f0.w05 -1
 eaten.f0.w04 cost 0
 eaten.f0.w04 sum.f0.w04 1
 eaten.f0.w04 first.f0.w04 1
 eaten.f0.w04 sum.f0.w05 -1
 eaten.f0.w04 keeps.f0.w02 -1
 eat.f0.w04.1 cost -1.7859521627876862
 eat.f0.w04.1 sum.f0.w04 -1
 eat.f0.w04.2 cost -1.709798522302429
 eat.f0.w04.2 sum.f0.w04 -1
 eat.f0.w04.3 cost -1.6336448818171723
 eat.f0.w04.3 sum.f0.w04 -1
 used.f0.w05 cost 0
 used.f0.w05 picked.f0.w05 1
 used.f0.w05 rises.f0.w05 1
 used.f0.w05 first.f0.w05 -1
 eaten.f0.w05 cost 0
 eaten.f0.w05 sum.f0.w05 1
 eaten.f0.w05 first.f0.w05 1
 eaten.f0.w05 keeps.f0.w03 -1
 eat.f0.w05.1 cost -1.7682694681066202
 eat.f0.w05.1 sum.f0.w05 -1
 eat.f0.w05.2 cost -1.6928698240618112
 eat.f0.w05.2 sum.f0.w05 -1
 eat.f0.w05.3 cost -1.6174701800170024
 eat.f0.w05.3 sum.f0.w05 -1
 used.f1.w00 cost 0
 used.f1.w00 picked.f1.w00 1
 used.f1.w00 rises.f1.w00 1
 used.f1.w00 first.f1.w00 -1
 used.f1.w00 picked.f1.w01 -1
 used.f1.w00 rises.f1.w01 -1
 used.f1.w00 keeps.f1.w00 1
 eaten.f1.w00 cost 0
 eaten.f1.w00 sum.f1.w00 1
 eaten.f1.w00 first.f1.w00 1
 eaten.f1.w00 sum.f1.w01 -1
 eat.f1.w00.1 cost -1.0928897535789155
 eat.f1.w00.1 sum.f1.w00 -1
 eat.f1.w00.2 cost -0.8164021027730636
 eat.f1.w00.2 sum.f1.w00 -1
 eat.f1.w00.3 cost -0.5399144519672117
 eat.f1.w00.3 sum.f1.w00 -1
 used.f1.w01 cost 0
 used.f1.w01 picked.f1.w01 1
 used.f1.w01 rises.f1.w01 1
 used.f1.w01 first.f1.w01 -1
 used.f1.w01 picked.f1.w02 -1
 used.f1.w01 rises.f1.w02 -1
 used.f1.w01 keeps.f1.w01 1
 eaten.f1.w01 cost 0
 eaten.f1.w01 sum.f1.w01 1
 eaten.f1.w01 first.f1.w01 1
 eaten.f1.w01 sum.f1.w02 -1
 eaten.f1.w01 keeps.f1.w00 -1
 eat.f1.w01.1 cost -1.0820690629494212
 eat.f1.w01.1 sum.f1.w01 -1
 eat.f1.w01.2 cost -0.8083189136366966
 eat.f1.w01.2 sum.f1.w01 -1
 eat.f1.w01.3 cost -0.5345687643239719
 eat.f1.w01.3 sum.f1.w01 -1
 used.f1.w02 cost 0
 used.f1.w02 picked.f1.w02 1
 used.f1.w02 rises.f1.w02 1
 used.f1.w02 first.f1.w02 -1
 used.f1.w02 picked.f1.w03 -1
 used.f1.w02 rises.f1.w03 -1
 used.f1.w02 keeps.f1.w02 1
 eaten.f1.w02 cost 0
 eaten.f1.w02 sum.f1.w02 1
 eaten.f1.w02 first.f1.w02 1
 eaten.f1.w02 sum.f1.w03 -1
 eaten.f1.w02 keeps.f1.w01 -1
 eat.f1.w02.1 cost -1.071355507870714
 eat.f1.w02.1 sum.f1.w02 -1
 eat.f1.w02.2 cost -0.8003157560759372
 eat.f1.w02.2 sum.f1.w02 -1
 eat.f1.w02.3 cost -0.5292760042811603
 eat.f1.w02.3 sum.f1.w02 -1
 used.f1.w03 cost 0
 used.f1.w03 picked.f1.w03 1
 used.f1.w03 rises.f1.w03 1
 used.f1.w03 first.f1.w03 -1
 used.f1.w03 picked.f1.w04 -1
 used.f1.w03 rises.f1.w04 -1
 used.f1.w03 keeps.f1.w03 1
 eaten.f1.w03 cost 0
 eaten.f1.w03 sum.f1.w03 1
 eaten.f1.w03 first.f1.w03 1
 eaten.f1.w03 sum.f1.w04 -1
 eaten.f1.w03 keeps.f1.w02 -1
 eat.f1.w03.1 cost -1.0607480275947665
 eat.f1.w03.1 sum.f1.w03 -1
 eat.f1.w03.2 cost -0.7923918376989478
 eat.f1.w03.2 sum.f1.w03 -1
 eat.f1.w03.3 cost -0.5240356478031291
 eat.f1.w03.3 sum.f1.w03 -1
 used.f1.w04 cost 0
 used.f1.w04 picked.f1.w04 1
 used.f1.w04 rises.f1.w04 1
 used.f1.w04 first.f1.w04 -1
 used.f1.w04 picked.f1.w05 -1
 used.f1.w04 rises.f1.w05 -1
 used.f1.w04 keeps.f1.w04 1
 eaten.f1.w04 cost 0
 eaten.f1.w04 sum.f1.w04 1
 eaten.f1.w04 first.f1.w04 1
 eaten.f1.w04 sum.f1.w05 -1
 eaten.f1.w04 keeps.f1.w03 -1
 eat.f1.w04.1 cost -1.0502455718760064
 eat.f1.w04.1 sum.f1.w04 -1
 eat.f1.w04.2 cost -0.7845463739593541
 eat.f1.w04.2 sum.f1.w04 -1
 eat.f1.w04.3 cost -0.518847176042702
 eat.f1.w04.3 sum.f1.w04 -1
 used.f1.w05 cost 0
 used.f1.w05 picked.f1.w05 1
 used.f1.w05 rises.f1.w05 1
 used.f1.w05 first.f1.w05 -1
 eaten.f1.w05 cost 0
 eaten.f1.w05 sum.f1.w05 1
 eaten.f1.w05 first.f1.w05 1
 eaten.f1.w05 keeps.f1.w04 -1
 eat.f1.w05.1 cost -1.0398471008673331
 eat.f1.w05.1 sum.f1.w05 -1
 eat.f1.w05.2 cost -0.7767785880785686
 eat.f1.w05.2 sum.f1.w05 -1
 eat.f1.w05.3 cost -0.5137100752898041
 eat.f1.w05.3 sum.f1.w05 -1
 left.b1.f1.w04 cost 0
 left.b1.f1.w04 leaves.b1.f1.w04.start.s1.c1.0.0 1
 left.b1.f0.w05 cost 0
 left.b1.f0.w05 leaves.b1.f0.w05.start.s1.c2.2.2 1
RHS
 RHS pulled.stay0 1
 RHS water.w00 5.883867484204744
 RHS water.w01 5.395765736946702
 RHS water.w02 1.8231488817787724
 RHS water.w03 5.659940573976705
 RHS water.w04 4.68820369917681
 RHS water.w05 1.6579022963313144
 RHS ground.s1.w00 1.3018080918825234
 RHS roots.s1.w00 106.60369706710111
 RHS support.s1.w00 0.9161484465062627
 RHS ground.s1.w01 1.3018080918825234
 RHS roots.s1.w01 106.60369706710111
 RHS support.s1.w01 0.9161484465062627
 RHS ground.s1.w02 1.3018080918825234
 RHS roots.s1.w02 106.60369706710111
 RHS support.s1.w02 0.9161484465062627
 RHS ground.s1.w03 1.3018080918825234
 RHS roots.s1.w03 106.60369706710111
 RHS support.s1.w03 0.9161484465062627
 RHS ground.s1.w04 1.3018080918825234
 RHS roots.s1.w04 106.60369706710111
 RHS support.s1.w04 0.9161484465062627
 RHS shelf.w-1 3.000001
 RHS ground.s1.w05 1.3018080918825234
 RHS roots.s1.w05 106.60369706710111
 RHS support.s1.w05 0.9161484465062627
BOUNDS
 UP BND start.s1.c1.0.0 1
 UP BND plants.s1.c1.0.0 2
 UP BND start.s1.c2.2.2 1
 UP BND plants.s1.c2.2.2 2
 UP BND pull.stay0.w03 1
 UP BND pull.stay0.w04 1
 UP BND pull.stay0.w05 1
 UP BND eat.f0.w00.1 0.18046690940843124
 UP BND eat.f0.w00.2 0.18046690940843124
 UP BND eat.f0.w00.3 0.3609338188168625
 UP BND eat.f0.w01.1 0.047253652123132206
 UP BND eat.f0.w01.2 0.047253652123132206
 UP BND eat.f0.w01.3 0.09450730424626441
 UP BND eat.f0.w02.1 0.32927905443763483
 UP BND eat.f0.w02.2 0.32927905443763483
 UP BND eat.f0.w02.3 0.6585581088752697
 UP BND eat.f0.w03.1 0.8709830574814595
 UP BND eat.f0.w03.2 0.8709830574814595
 UP BND eat.f0.w03.3 1.741966114962919
 UP BND eat.f0.w04.1 0.13430777374587155
 UP BND eat.f0.w04.2 0.13430777374587155
 UP BND eat.f0.w04.3 0.2686155474917431
 UP BND eat.f0.w05.1 0.8149520057941091
 UP BND eat.f0.w05.2 0.8149520057941091
 UP BND eat.f0.w05.3 1.6299040115882182
 UP BND eat.f1.w00.1 0.403587229153542
 UP BND eat.f1.w00.2 0.403587229153542
 UP BND eat.f1.w00.3 0.807174458307084
 UP BND eat.f1.w01.1 0.6533842855880512
 UP BND eat.f1.w01.2 0.6533842855880512
 UP BND eat.f1.w01.3 1.3067685711761023
 UP BND eat.f1.w02.1 0.9801565559993395
 UP BND eat.f1.w02.2 0.9801565559993395
 UP BND eat.f1.w02.3 1.960313111998679
 UP BND eat.f1.w03.1 1.0038810439013195
 UP BND eat.f1.w03.2 1.0038810439013195
 UP BND eat.f1.w03.3 2.007762087802639
 UP BND eat.f1.w04.1 0.7471559121307632
 UP BND eat.f1.w04.2 0.7471559121307632
 UP BND eat.f1.w04.3 1.4943118242615263
 UP BND eat.f1.w05.1 0.8367069011969379
 UP BND eat.f1.w05.2 0.8367069011969379
 UP BND eat.f1.w05.3 1.6734138023938758
 UP BND left.b1.f1.w04 1
 UP BND left.b1.f0.w05 1
ENDATA
