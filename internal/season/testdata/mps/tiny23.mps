NAME season
ROWS
 N cost
 L most.s1.c2.0.4
 G least.s1.c2.0.4
 L minutes.w00
 L minutes.w01
 L minutes.w02
 L minutes.w03
 L minutes.w04
 L minutes.w05
 L ground.s1.w04
 L roots.s1.w04
 L support.s1.w04
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
 L keeps.f0.w04
 L keeps.f0.w05
 G leaves.b0.f1.w04.start.s1.c2.0.4
 L clear.w-1
 L clear.w00
 L clear.w01
 L clear.w02
 L clear.w03
 L clear.w04
 E standson.s1.w04
 G clears.s1.w04.start.s1.c2.0.4
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s1.c2.0.4 cost 0.2779982618389215
 start.s1.c2.0.4 most.s1.c2.0.4 -1
 start.s1.c2.0.4 least.s1.c2.0.4 -1
 start.s1.c2.0.4 minutes.w04 5
 start.s1.c2.0.4 leaves.b0.f1.w04.start.s1.c2.0.4 -1
 start.s1.c2.0.4 clears.s1.w04.start.s1.c2.0.4 -1
 plants.s1.c2.0.4 cost -0.18
 plants.s1.c2.0.4 most.s1.c2.0.4 1
 plants.s1.c2.0.4 least.s1.c2.0.4 1
 plants.s1.c2.0.4 minutes.w04 0.360599408236423
 plants.s1.c2.0.4 ground.s1.w04 0.10814626169475464
 plants.s1.c2.0.4 roots.s1.w04 6.272609885402266
 plants.s1.c2.0.4 support.s1.w04 0.2
 M MARKER 'MARKER' 'INTEND'
 over.w00 cost 0.05
 over.w00 minutes.w00 -1
 over.w01 cost 0.05
 over.w01 minutes.w01 -1
 over.w02 cost 0.05
 over.w02 minutes.w02 -1
 over.w03 cost 0.05
 over.w03 minutes.w03 -1
 over.w04 cost 0.05
 over.w04 minutes.w04 -1
 over.w05 cost 0.05
 over.w05 minutes.w05 -1
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
 eaten.f0.w00 keeps.f0.w00 -1
 eat.f0.w00.1 cost -1.309050776691365
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -0.6602617064719443
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -0.011472636252523394
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
 eaten.f0.w01 keeps.f0.w01 -1
 eat.f0.w01.1 cost -1.2960898779122425
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -0.6537244618534102
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -0.011359045794577617
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
 eaten.f0.w02 keeps.f0.w02 -1
 eat.f0.w02.1 cost -1.2832573048636065
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -0.647251942429119
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -0.011246579994631304
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
 eaten.f0.w03 keeps.f0.w03 -1
 eat.f0.w03.1 cost -1.27055178699367
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -0.6408435073555634
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -0.011135227717456739
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
 eaten.f0.w04 keeps.f0.w04 -1
 eat.f0.w04.1 cost -1.2579720663303662
 eat.f0.w04.1 sum.f0.w04 -1
 eat.f0.w04.2 cost -0.6344985221342211
 eat.f0.w04.2 sum.f0.w04 -1
 eat.f0.w04.3 cost -0.011024977938075976
 eat.f0.w04.3 sum.f0.w04 -1
 used.f0.w05 cost 0
 used.f0.w05 picked.f0.w05 1
 used.f0.w05 rises.f0.w05 1
 used.f0.w05 first.f0.w05 -1
 used.f0.w05 keeps.f0.w05 1
 eaten.f0.w05 cost 0
 eaten.f0.w05 sum.f0.w05 1
 eaten.f0.w05 first.f0.w05 1
 eaten.f0.w05 keeps.f0.w05 -1
 eat.f0.w05.1 cost -1.2455168973567983
 eat.f0.w05.1 sum.f0.w05 -1
 eat.f0.w05.2 cost -0.6282163585487338
 eat.f0.w05.2 sum.f0.w05 -1
 eat.f0.w05.3 cost -0.010915819740669287
 eat.f0.w05.3 sum.f0.w05 -1
 left.b0.f1.w04 cost 0
 left.b0.f1.w04 leaves.b0.f1.w04.start.s1.c2.0.4 1
 rest.w-1 cost 0.3
 rest.w-1 clear.w-1 -1
 rest.w00 cost 0.3
 rest.w00 clear.w00 -1
 rest.w01 cost 0.3
 rest.w01 clear.w01 -1
 rest.w02 cost 0.3
 rest.w02 clear.w02 -1
 rest.w03 cost 0.3
 rest.w03 clear.w03 -1
 rest.w04 cost 0.3
 rest.w04 clear.w04 -1
 cleared.s1.w04 cost 0
 cleared.s1.w04 clear.w04 1
 cleared.s1.w04 clears.s1.w04.start.s1.c2.0.4 1
 stands.s1.w04 cost 0
 stands.s1.w04 standson.s1.w04 -1
 stands.s1.w04 clears.s1.w04.start.s1.c2.0.4 1
RHS
 RHS minutes.w00 10
 RHS minutes.w01 23
 RHS minutes.w02 11
 RHS minutes.w03 28
 RHS minutes.w04 3
 RHS minutes.w05 11
 RHS ground.s1.w04 0.7756439358181637
 RHS roots.s1.w04 122.92191352573914
 RHS support.s1.w04 0.22453218171189768
 RHS clear.w-1 1
 RHS clear.w00 1
 RHS clear.w01 1
 RHS clear.w02 1
 RHS clear.w03 1
 RHS clear.w04 1
BOUNDS
 UP BND start.s1.c2.0.4 1
 UP BND plants.s1.c2.0.4 1
 UP BND eat.f0.w00.1 0.039174415812419205
 UP BND eat.f0.w00.2 0.039174415812419205
 UP BND eat.f0.w00.3 0.07834883162483841
 UP BND eat.f0.w01.1 1.3195974037380787
 UP BND eat.f0.w01.2 1.3195974037380787
 UP BND eat.f0.w01.3 2.6391948074761573
 UP BND eat.f0.w02.1 0.9596338108533415
 UP BND eat.f0.w02.2 0.9596338108533415
 UP BND eat.f0.w02.3 1.919267621706683
 UP BND eat.f0.w03.1 0.15756063620400418
 UP BND eat.f0.w03.2 0.15756063620400418
 UP BND eat.f0.w03.3 0.31512127240800836
 UP BND eat.f0.w04.1 0.4393092021692542
 UP BND eat.f0.w04.2 0.4393092021692542
 UP BND eat.f0.w04.3 0.8786184043385084
 UP BND eat.f0.w05.1 0.9691893323250551
 UP BND eat.f0.w05.2 0.9691893323250551
 UP BND eat.f0.w05.3 1.9383786646501102
 UP BND left.b0.f1.w04 1
 UP BND cleared.s1.w04 1
ENDATA
