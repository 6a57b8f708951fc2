NAME season
ROWS
 N cost
 L most.s0.c1.1.1
 G least.s0.c1.1.1
 L water.w00
 L water.w01
 L water.w02
 L water.w03
 L water.w04
 L water.w05
 L total.g
 L ground.s0.w01
 L roots.s0.w01
 L ground.s0.w02
 L roots.s0.w02
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
 G leaves.b0.f0.w02.start.s0.c1.1.1
 L clear.w-1
 L clear.w00
 L clear.w01
 L clear.w02
 E standson.s0.w02
 G clears.s0.w02.start.s0.c1.1.1
 L clear.w03
 L clear.w04
 L clear.w05
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s0.c1.1.1 cost 0.22215411557776932
 start.s0.c1.1.1 most.s0.c1.1.1 -1
 start.s0.c1.1.1 least.s0.c1.1.1 -1
 start.s0.c1.1.1 leaves.b0.f0.w02.start.s0.c1.1.1 -1
 start.s0.c1.1.1 clears.s0.w02.start.s0.c1.1.1 -1
 plants.s0.c1.1.1 cost 0.12000000000000001
 plants.s0.c1.1.1 most.s0.c1.1.1 1
 plants.s0.c1.1.1 least.s0.c1.1.1 1
 plants.s0.c1.1.1 water.w01 0.9599856416201096
 plants.s0.c1.1.1 ground.s0.w01 0.10222375336949402
 plants.s0.c1.1.1 roots.s0.w01 24.676228151652328
 plants.s0.c1.1.1 ground.s0.w02 0.0899939402370668
 plants.s0.c1.1.1 roots.s0.w02 21.724021358608592
 plants.s0.c1.1.1 picked.f0.w01 -0.4095448087900877
 plants.s0.c1.1.1 picked.f0.w02 -0.5697406878074011
 plants.s0.c1.1.1 picked.f0.w03 -0.13273711005846658
 M MARKER 'MARKER' 'INTEND'
 overwater.w00 cost 0.11026087933977474
 overwater.w00 water.w00 -1
 overwater.w01 cost 0.11026087933977474
 overwater.w01 water.w01 -1
 overwater.w02 cost 0.11026087933977474
 overwater.w02 water.w02 -1
 overwater.w03 cost 0.11026087933977474
 overwater.w03 water.w03 -1
 overwater.w04 cost 0.11026087933977474
 overwater.w04 water.w04 -1
 overwater.w05 cost 0.11026087933977474
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
 eat.f0.w00.1 cost -1.393029004715424
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -0.841670203153063
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -0.2903114015907019
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
 eat.f0.w01.1 cost -1.393029004715424
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -0.841670203153063
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -0.2903114015907019
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
 eat.f0.w02.1 cost -1.393029004715424
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -0.841670203153063
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -0.2903114015907019
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
 eat.f0.w03.1 cost -1.393029004715424
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -0.841670203153063
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -0.2903114015907019
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
 eat.f0.w04.1 cost -1.393029004715424
 eat.f0.w04.1 sum.f0.w04 -1
 eat.f0.w04.2 cost -0.841670203153063
 eat.f0.w04.2 sum.f0.w04 -1
 eat.f0.w04.3 cost -0.2903114015907019
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
 eat.f0.w05.1 cost -1.393029004715424
 eat.f0.w05.1 sum.f0.w05 -1
 eat.f0.w05.2 cost -0.841670203153063
 eat.f0.w05.2 sum.f0.w05 -1
 eat.f0.w05.3 cost -0.2903114015907019
 eat.f0.w05.3 sum.f0.w05 -1
 used.f0.w06 cost 0
 used.f0.w06 picked.f0.w06 1
 used.f0.w06 rises.f0.w06 1
 used.f0.w06 first.f0.w06 -1
 eaten.f0.w06 cost 0
 eaten.f0.w06 sum.f0.w06 1
 eaten.f0.w06 first.f0.w06 1
 eaten.f0.w06 keeps.f0.w04 -1
 eat.f0.w06.1 cost -1.393029004715424
 eat.f0.w06.1 sum.f0.w06 -1
 eat.f0.w06.2 cost -0.841670203153063
 eat.f0.w06.2 sum.f0.w06 -1
 eat.f0.w06.3 cost -0.2903114015907019
 eat.f0.w06.3 sum.f0.w06 -1
 left.b0.f0.w02 cost 0
 left.b0.f0.w02 leaves.b0.f0.w02.start.s0.c1.1.1 1
 rest.w-1 cost 0.3
 rest.w-1 clear.w-1 -1
 rest.w00 cost 0.3
 rest.w00 clear.w00 -1
 rest.w01 cost 0.3
 rest.w01 clear.w01 -1
 rest.w02 cost 0.3
 rest.w02 clear.w02 -1
 cleared.s0.w02 cost 0
 cleared.s0.w02 clear.w02 1
 cleared.s0.w02 clears.s0.w02.start.s0.c1.1.1 1
 stands.s0.w02 cost 0
 stands.s0.w02 standson.s0.w02 -1
 stands.s0.w02 clears.s0.w02.start.s0.c1.1.1 1
 rest.w03 cost 0.3
 rest.w03 clear.w03 -1
 rest.w04 cost 0.3
 rest.w04 clear.w04 -1
 rest.w05 cost 0.3
 rest.w05 clear.w05 -1
RHS
 RHS water.w00 4.115149343651975
 RHS water.w01 5.104848412664202
 RHS water.w02 2.8412462671584784
 RHS water.w03 1.6605337111916332
 RHS water.w04 4.820222047059523
 RHS water.w05 5.975974345307942
 RHS total.g 2
 RHS ground.s0.w01 0.8466011040054289
 RHS roots.s0.w01 199.82262699150664
 RHS ground.s0.w02 0.8466011040054289
 RHS roots.s0.w02 199.82262699150664
 RHS clear.w-1 1
 RHS clear.w00 1
 RHS clear.w01 1
 RHS clear.w02 1
 RHS clear.w03 1
 RHS clear.w04 1
 RHS clear.w05 1
BOUNDS
 UP BND start.s0.c1.1.1 1
 UP BND plants.s0.c1.1.1 1
 UP BND eat.f0.w00.1 1.18346157392509
 UP BND eat.f0.w00.2 1.18346157392509
 UP BND eat.f0.w00.3 2.36692314785018
 UP BND eat.f0.w01.1 0.3374828841893252
 UP BND eat.f0.w01.2 0.3374828841893252
 UP BND eat.f0.w01.3 0.6749657683786504
 UP BND eat.f0.w02.1 1.325681713158311
 UP BND eat.f0.w02.2 1.325681713158311
 UP BND eat.f0.w02.3 2.651363426316622
 UP BND eat.f0.w03.1 0.24198721856454464
 UP BND eat.f0.w03.2 0.24198721856454464
 UP BND eat.f0.w03.3 0.4839744371290893
 UP BND eat.f0.w04.1 1.2678947804687524
 UP BND eat.f0.w04.2 1.2678947804687524
 UP BND eat.f0.w04.3 2.5357895609375047
 UP BND eat.f0.w05.1 1.4182880645569165
 UP BND eat.f0.w05.2 1.4182880645569165
 UP BND eat.f0.w05.3 2.836576129113833
 UP BND eat.f0.w06.1 0.9987468904992862
 UP BND eat.f0.w06.2 0.9987468904992862
 UP BND eat.f0.w06.3 1.9974937809985724
 UP BND left.b0.f0.w02 1
 UP BND cleared.s0.w02 1
ENDATA
