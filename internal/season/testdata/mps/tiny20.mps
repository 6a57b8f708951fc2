NAME season
ROWS
 N cost
 L most.s0.c0.0.1
 G least.s0.c0.0.1
 L most.s0.c2.2.0
 G least.s0.c2.2.0
 L most.s0.c2.3.4
 G least.s0.c2.3.4
 E pulled.stay0
 L water.w00
 L water.w01
 L water.w02
 L water.w03
 L water.w04
 L water.w05
 L water.w06
 L total.g
 L ground.s0.w01
 L roots.s0.w01
 L ground.s0.w02
 L roots.s0.w02
 L tall.s0.w02
 L ground.s0.w03
 L roots.s0.w03
 L tall.s0.w03
 L ground.s0.w04
 L roots.s0.w04
 L tall.s0.w04
 L ground.s0.w05
 L roots.s0.w05
 L tall.s0.w05
 L ground.s0.w06
 L roots.s0.w06
 L tall.s0.w06
 L ground.s0.w00
 L roots.s0.w00
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
 L picked.f0.w06
 G rises.f0.w06
 E sum.f0.w06
 L first.f0.w06
 L keeps.f0.w00
 L keeps.f0.w01
 L keeps.f0.w02
 L keeps.f0.w03
 L keeps.f0.w04
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s0.c0.0.1 cost 0.015434625556194202
 start.s0.c0.0.1 most.s0.c0.0.1 -2
 start.s0.c0.0.1 least.s0.c0.0.1 -2
 plants.s0.c0.0.1 cost 0.12000000000000001
 plants.s0.c0.0.1 most.s0.c0.0.1 1
 plants.s0.c0.0.1 least.s0.c0.0.1 1
 plants.s0.c0.0.1 water.w01 0.5516171811992974
 plants.s0.c0.0.1 water.w02 0.8009852062224307
 plants.s0.c0.0.1 water.w03 0.9608464956255702
 plants.s0.c0.0.1 water.w04 0.8905380027671935
 plants.s0.c0.0.1 water.w05 0.829063190946362
 plants.s0.c0.0.1 water.w06 0.21969401246971898
 plants.s0.c0.0.1 total.g 1
 plants.s0.c0.0.1 ground.s0.w01 0.30953667923687544
 plants.s0.c0.0.1 roots.s0.w01 8.177622239213639
 plants.s0.c0.0.1 ground.s0.w02 0.14185150643105454
 plants.s0.c0.0.1 roots.s0.w02 3.7475624424103957
 plants.s0.c0.0.1 tall.s0.w02 0.14185150643105454
 plants.s0.c0.0.1 ground.s0.w03 0.14185150643105454
 plants.s0.c0.0.1 roots.s0.w03 3.7475624424103957
 plants.s0.c0.0.1 tall.s0.w03 0.14185150643105454
 plants.s0.c0.0.1 ground.s0.w04 0.14185150643105454
 plants.s0.c0.0.1 roots.s0.w04 3.7475624424103957
 plants.s0.c0.0.1 tall.s0.w04 0.14185150643105454
 plants.s0.c0.0.1 ground.s0.w05 0.14185150643105454
 plants.s0.c0.0.1 roots.s0.w05 3.7475624424103957
 plants.s0.c0.0.1 tall.s0.w05 0.14185150643105454
 plants.s0.c0.0.1 ground.s0.w06 0.14185150643105454
 plants.s0.c0.0.1 roots.s0.w06 3.7475624424103957
 plants.s0.c0.0.1 tall.s0.w06 0.14185150643105454
 start.s0.c2.2.0 cost 0.2389063572294118
 start.s0.c2.2.0 most.s0.c2.2.0 -2
 start.s0.c2.2.0 least.s0.c2.2.0 -1
 plants.s0.c2.2.0 cost 0.12000000000000001
 plants.s0.c2.2.0 most.s0.c2.2.0 1
 plants.s0.c2.2.0 least.s0.c2.2.0 1
 plants.s0.c2.2.0 water.w00 0.33497887967676865
 plants.s0.c2.2.0 total.g 1
 plants.s0.c2.2.0 ground.s0.w01 0.20569129467921507
 plants.s0.c2.2.0 roots.s0.w01 11.569033192715336
 plants.s0.c2.2.0 ground.s0.w00 0.20569129467921507
 plants.s0.c2.2.0 roots.s0.w00 11.569033192715336
 plants.s0.c2.2.0 picked.f0.w01 -1.1657595038414001
 plants.s0.c2.2.0 picked.f0.w02 -1.3867021203041077
 plants.s0.c2.2.0 picked.f0.w03 -0.6936108469963074
 start.s0.c2.3.4 cost 0.29020249518262364
 start.s0.c2.3.4 most.s0.c2.3.4 -2
 start.s0.c2.3.4 least.s0.c2.3.4 -2
 plants.s0.c2.3.4 cost 0.12000000000000001
 plants.s0.c2.3.4 most.s0.c2.3.4 1
 plants.s0.c2.3.4 least.s0.c2.3.4 1
 plants.s0.c2.3.4 water.w04 0.6780282033450875
 plants.s0.c2.3.4 water.w05 0.40598942802891114
 plants.s0.c2.3.4 water.w06 0.022815840535427512
 plants.s0.c2.3.4 ground.s0.w04 0.22083897760909427
 plants.s0.c2.3.4 roots.s0.w04 18.07885196963089
 plants.s0.c2.3.4 ground.s0.w05 0.22083897760909427
 plants.s0.c2.3.4 roots.s0.w05 18.07885196963089
 plants.s0.c2.3.4 ground.s0.w06 0.22083897760909427
 plants.s0.c2.3.4 roots.s0.w06 18.07885196963089
 plants.s0.c2.3.4 tall.s0.w06 0.22083897760909427
 pull.stay0.before cost 0.08555413222101108
 pull.stay0.before pulled.stay0 1
 pull.stay0.w00 cost 0.08555413222101108
 pull.stay0.w00 pulled.stay0 1
 pull.stay0.w00 water.w00 1.8682066699208022
 pull.stay0.w01 cost 0.08555413222101108
 pull.stay0.w01 pulled.stay0 1
 pull.stay0.w01 water.w00 1.8682066699208022
 pull.stay0.w01 water.w01 1.5712398316970517
 pull.stay0.w02 cost 0.08555413222101108
 pull.stay0.w02 pulled.stay0 1
 pull.stay0.w02 water.w00 1.8682066699208022
 pull.stay0.w02 water.w01 1.5712398316970517
 pull.stay0.w02 water.w02 1.7285297206155457
 pull.stay0.w03 cost -0.21301922499089615
 pull.stay0.w03 pulled.stay0 1
 pull.stay0.w03 water.w00 1.8682066699208022
 pull.stay0.w03 water.w01 1.5712398316970517
 pull.stay0.w03 water.w02 1.7285297206155457
 pull.stay0.w03 water.w03 1.966765714984052
 M MARKER 'MARKER' 'INTEND'
 overwater.w00 cost 0.07859262829523846
 overwater.w00 water.w00 -1
 overwater.w01 cost 0.07859262829523846
 overwater.w01 water.w01 -1
 overwater.w02 cost 0.07859262829523846
 overwater.w02 water.w02 -1
 overwater.w03 cost 0.07859262829523846
 overwater.w03 water.w03 -1
 overwater.w04 cost 0.07859262829523846
 overwater.w04 water.w04 -1
 overwater.w05 cost 0.07859262829523846
 overwater.w05 water.w05 -1
 overwater.w06 cost 0.07859262829523846
 overwater.w06 water.w06 -1
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
 eat.f0.w00.1 cost -1.322324702468228
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -0.6825011474583607
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -0.04267759244849319
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
 eat.f0.w01.1 cost -1.309232378681414
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -0.6757437103548125
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -0.04225504202821108
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
 eat.f0.w02.1 cost -1.296269681862786
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -0.6690531785691213
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -0.04183667527545651
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
 eat.f0.w03.1 cost -1.2834353285770161
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -0.6624288896723974
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -0.04142245076777873
 eat.f0.w03.3 sum.f0.w03 -1
 used.f0.w04 cost 0
 used.f0.w04 picked.f0.w04 1
 used.f0.w04 rises.f0.w04 1
 used.f0.w04 first.f0.w04 -1
 used.f0.w04 picked.f0.w05 -1
 used.f0.w04 rises.f0.w05 -1
 used.f0.w04 keeps.f0.w04 1
 eaten.f0.w04 cost 0
 eaten.f0.w04 sum.f0.w04 1
 eaten.f0.w04 first.f0.w04 1
 eaten.f0.w04 sum.f0.w05 -1
 eaten.f0.w04 keeps.f0.w02 -1
 eat.f0.w04.1 cost -1.2707280480960552
 eat.f0.w04.1 sum.f0.w04 -1
 eat.f0.w04.2 cost -0.6558701877944527
 eat.f0.w04.2 sum.f0.w04 -1
 eat.f0.w04.3 cost -0.04101232749285022
 eat.f0.w04.3 sum.f0.w04 -1
 used.f0.w05 cost 0
 used.f0.w05 picked.f0.w05 1
 used.f0.w05 rises.f0.w05 1
 used.f0.w05 first.f0.w05 -1
 used.f0.w05 picked.f0.w06 -1
 used.f0.w05 rises.f0.w06 -1
 eaten.f0.w05 cost 0
 eaten.f0.w05 sum.f0.w05 1
 eaten.f0.w05 first.f0.w05 1
 eaten.f0.w05 sum.f0.w06 -1
 eaten.f0.w05 keeps.f0.w03 -1
 eat.f0.w05.1 cost -1.2581465822733222
 eat.f0.w05.1 sum.f0.w05 -1
 eat.f0.w05.2 cost -0.6493764235588643
 eat.f0.w05.2 sum.f0.w05 -1
 eat.f0.w05.3 cost -0.040606264844406166
 eat.f0.w05.3 sum.f0.w05 -1
 used.f0.w06 cost 0
 used.f0.w06 picked.f0.w06 1
 used.f0.w06 rises.f0.w06 1
 used.f0.w06 first.f0.w06 -1
 eaten.f0.w06 cost 0
 eaten.f0.w06 sum.f0.w06 1
 eaten.f0.w06 first.f0.w06 1
 eaten.f0.w06 keeps.f0.w04 -1
 eat.f0.w06.1 cost -1.2456896854191306
 eat.f0.w06.1 sum.f0.w06 -1
 eat.f0.w06.2 cost -0.6429469540186773
 eat.f0.w06.2 sum.f0.w06 -1
 eat.f0.w06.3 cost -0.040204222618223914
 eat.f0.w06.3 sum.f0.w06 -1
RHS
 RHS pulled.stay0 1
 RHS water.w00 1.2060781128105476
 RHS water.w01 3.4391682547351943
 RHS water.w02 4.50291381376068
 RHS water.w03 3.416483046140296
 RHS water.w04 2.424778151276052
 RHS water.w05 0.7931571441263687
 RHS water.w06 5.0585079336937175
 RHS total.g 2
 RHS ground.s0.w01 0.8650289430498244
 RHS roots.s0.w01 125.48150182422071
 RHS ground.s0.w02 0.8650289430498244
 RHS roots.s0.w02 125.48150182422071
 RHS tall.s0.w02 0.8356705244662334
 RHS ground.s0.w03 0.8650289430498244
 RHS roots.s0.w03 125.48150182422071
 RHS tall.s0.w03 0.8356705244662334
 RHS ground.s0.w04 0.8650289430498244
 RHS roots.s0.w04 125.48150182422071
 RHS tall.s0.w04 0.8356705244662334
 RHS ground.s0.w05 0.8650289430498244
 RHS roots.s0.w05 125.48150182422071
 RHS tall.s0.w05 0.8356705244662334
 RHS ground.s0.w06 0.8650289430498244
 RHS roots.s0.w06 125.48150182422071
 RHS tall.s0.w06 0.8356705244662334
 RHS ground.s0.w00 0.8650289430498244
 RHS roots.s0.w00 125.48150182422071
BOUNDS
 UP BND start.s0.c0.0.1 1
 UP BND plants.s0.c0.0.1 2
 UP BND start.s0.c2.2.0 1
 UP BND plants.s0.c2.2.0 2
 UP BND start.s0.c2.3.4 1
 UP BND plants.s0.c2.3.4 2
 UP BND pull.stay0.before 1
 UP BND pull.stay0.w00 1
 UP BND pull.stay0.w01 1
 UP BND pull.stay0.w02 1
 UP BND pull.stay0.w03 1
 UP BND eat.f0.w00.1 1.1498575249074057
 UP BND eat.f0.w00.2 1.1498575249074057
 UP BND eat.f0.w00.3 2.2997150498148113
 UP BND eat.f0.w01.1 0.5796793171977248
 UP BND eat.f0.w01.2 0.5796793171977248
 UP BND eat.f0.w01.3 1.1593586343954496
 UP BND eat.f0.w02.1 1.3137845301423112
 UP BND eat.f0.w02.2 1.3137845301423112
 UP BND eat.f0.w02.3 2.6275690602846224
 UP BND eat.f0.w03.1 0.45716863205151975
 UP BND eat.f0.w03.2 0.45716863205151975
 UP BND eat.f0.w03.3 0.9143372641030395
 UP BND eat.f0.w04.1 1.2318675947073934
 UP BND eat.f0.w04.2 1.2318675947073934
 UP BND eat.f0.w04.3 2.4637351894147868
 UP BND eat.f0.w05.1 1.122319568063133
 UP BND eat.f0.w05.2 1.122319568063133
 UP BND eat.f0.w05.3 2.244639136126266
 UP BND eat.f0.w06.1 0.43850600897813724
 UP BND eat.f0.w06.2 0.43850600897813724
 UP BND eat.f0.w06.3 0.8770120179562745
ENDATA
