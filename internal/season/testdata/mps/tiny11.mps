NAME season
ROWS
 N cost
 L most.s1.c2.1.1
 G least.s1.c2.1.1
 L most.s0.c0.2.1
 G least.s0.c0.2.1
 L total.g
 L total.h
 L ground.s1.w01
 L roots.s1.w01
 L ground.s1.w02
 L roots.s1.w02
 L ground.s1.w03
 L roots.s1.w03
 L ground.s0.w01
 L roots.s0.w01
 L tall.s0.w01
 L ground.s0.w02
 L roots.s0.w02
 L tall.s0.w02
 L ground.s0.w03
 L roots.s0.w03
 L tall.s0.w03
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
 L picked.f0.w07
 G rises.f0.w07
 E sum.f0.w07
 L first.f0.w07
 L keeps.f0.w00
 L keeps.f0.w01
 L keeps.f0.w02
 L keeps.f0.w03
 L keeps.f0.w04
 L keeps.f0.w05
 L keeps.f0.w06
 G leaves.b0.f0.w03.start.s1.c2.1.1
 G leaves.b0.f0.w03.start.s0.c0.2.1
 L clear.w-1
 L clear.w00
 L clear.w01
 L clear.w02
 L clear.w03
 E standson.s0.w03
 G clears.s0.w03.start.s0.c0.2.1
 E standson.s1.w03
 G clears.s1.w03.start.s1.c2.1.1
 L clear.w04
 L clear.w05
 L clear.w06
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s1.c2.1.1 cost 0.284677676202373
 start.s1.c2.1.1 most.s1.c2.1.1 -1
 start.s1.c2.1.1 least.s1.c2.1.1 -1
 start.s1.c2.1.1 leaves.b0.f0.w03.start.s1.c2.1.1 -1
 start.s1.c2.1.1 clears.s1.w03.start.s1.c2.1.1 -1
 plants.s1.c2.1.1 cost -0.18
 plants.s1.c2.1.1 most.s1.c2.1.1 1
 plants.s1.c2.1.1 least.s1.c2.1.1 1
 plants.s1.c2.1.1 total.g 1
 plants.s1.c2.1.1 ground.s1.w01 0.17676999534825477
 plants.s1.c2.1.1 roots.s1.w01 18.706462253918136
 plants.s1.c2.1.1 ground.s1.w02 0.17676999534825477
 plants.s1.c2.1.1 roots.s1.w02 18.706462253918136
 plants.s1.c2.1.1 ground.s1.w03 0.17676999534825477
 plants.s1.c2.1.1 roots.s1.w03 18.706462253918136
 start.s0.c0.2.1 cost 0.27570856515341413
 start.s0.c0.2.1 most.s0.c0.2.1 -2
 start.s0.c0.2.1 least.s0.c0.2.1 -2
 start.s0.c0.2.1 leaves.b0.f0.w03.start.s0.c0.2.1 -1
 start.s0.c0.2.1 clears.s0.w03.start.s0.c0.2.1 -1
 plants.s0.c0.2.1 cost -0.18
 plants.s0.c0.2.1 most.s0.c0.2.1 1
 plants.s0.c0.2.1 least.s0.c0.2.1 1
 plants.s0.c0.2.1 total.g 1
 plants.s0.c0.2.1 total.h 1
 plants.s0.c0.2.1 ground.s0.w01 0.292990330916509
 plants.s0.c0.2.1 roots.s0.w01 23.173937344145056
 plants.s0.c0.2.1 tall.s0.w01 0.292990330916509
 plants.s0.c0.2.1 ground.s0.w02 0.10039446463231089
 plants.s0.c0.2.1 roots.s0.w02 7.940654648262548
 plants.s0.c0.2.1 tall.s0.w02 0.10039446463231089
 plants.s0.c0.2.1 ground.s0.w03 0.13269685261874348
 plants.s0.c0.2.1 roots.s0.w03 10.495597375970403
 plants.s0.c0.2.1 tall.s0.w03 0.13269685261874348
 M MARKER 'MARKER' 'INTEND'
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
 eat.f0.w00.1 cost -1.4446527526503994
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -1.3751870117024612
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -1.305721270754523
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
 eaten.f0.w01 keeps.f0.w00 -1
 eat.f0.w01.1 cost -1.4303492600499004
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -1.3615712987153081
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -1.2927933373807157
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
 eaten.f0.w02 keeps.f0.w01 -1
 eat.f0.w02.1 cost -1.41618738618802
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -1.3480903947676317
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -1.2799934033472433
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
 eaten.f0.w03 keeps.f0.w02 -1
 eat.f0.w03.1 cost -1.40216572889903
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -1.3347429651164673
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -1.2673202013339044
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
 eaten.f0.w04 keeps.f0.w03 -1
 eat.f0.w04.1 cost -1.3882828999000294
 eat.f0.w04.1 sum.f0.w04 -1
 eat.f0.w04.2 cost -1.3215276882341258
 eat.f0.w04.2 sum.f0.w04 -1
 eat.f0.w04.3 cost -1.254772476568222
 eat.f0.w04.3 sum.f0.w04 -1
 used.f0.w05 cost 0
 used.f0.w05 picked.f0.w05 1
 used.f0.w05 rises.f0.w05 1
 used.f0.w05 first.f0.w05 -1
 used.f0.w05 picked.f0.w06 -1
 used.f0.w05 rises.f0.w06 -1
 used.f0.w05 keeps.f0.w05 1
 eaten.f0.w05 cost 0
 eaten.f0.w05 sum.f0.w05 1
 eaten.f0.w05 first.f0.w05 1
 eaten.f0.w05 sum.f0.w06 -1
 eaten.f0.w05 keeps.f0.w04 -1
 eat.f0.w05.1 cost -1.3745375246534948
 eat.f0.w05.1 sum.f0.w05 -1
 eat.f0.w05.2 cost -1.3084432556773524
 eat.f0.w05.2 sum.f0.w05 -1
 eat.f0.w05.3 cost -1.24234898670121
 eat.f0.w05.3 sum.f0.w05 -1
 used.f0.w06 cost 0
 used.f0.w06 picked.f0.w06 1
 used.f0.w06 rises.f0.w06 1
 used.f0.w06 first.f0.w06 -1
 used.f0.w06 picked.f0.w07 -1
 used.f0.w06 rises.f0.w07 -1
 used.f0.w06 keeps.f0.w06 1
 eaten.f0.w06 cost 0
 eaten.f0.w06 sum.f0.w06 1
 eaten.f0.w06 first.f0.w06 1
 eaten.f0.w06 sum.f0.w07 -1
 eaten.f0.w06 keeps.f0.w05 -1
 eat.f0.w06.1 cost -1.3609282422311826
 eat.f0.w06.1 sum.f0.w06 -1
 eat.f0.w06.2 cost -1.2954883719577743
 eat.f0.w06.2 sum.f0.w06 -1
 eat.f0.w06.3 cost -1.230048501684366
 eat.f0.w06.3 sum.f0.w06 -1
 used.f0.w07 cost 0
 used.f0.w07 picked.f0.w07 1
 used.f0.w07 rises.f0.w07 1
 used.f0.w07 first.f0.w07 -1
 eaten.f0.w07 cost 0
 eaten.f0.w07 sum.f0.w07 1
 eaten.f0.w07 first.f0.w07 1
 eaten.f0.w07 keeps.f0.w06 -1
 eat.f0.w07.1 cost -1.3474537051793891
 eat.f0.w07.1 sum.f0.w07 -1
 eat.f0.w07.2 cost -1.2826617544136385
 eat.f0.w07.2 sum.f0.w07 -1
 eat.f0.w07.3 cost -1.2178698036478877
 eat.f0.w07.3 sum.f0.w07 -1
 left.b0.f0.w03 cost 0
 left.b0.f0.w03 leaves.b0.f0.w03.start.s1.c2.1.1 1
 left.b0.f0.w03 leaves.b0.f0.w03.start.s0.c0.2.1 1
 rest.w-1 cost 0.5
 rest.w-1 clear.w-1 -1
 rest.w00 cost 0.5
 rest.w00 clear.w00 -1
 rest.w01 cost 0.5
 rest.w01 clear.w01 -1
 rest.w02 cost 0.5
 rest.w02 clear.w02 -1
 rest.w03 cost 0.5
 rest.w03 clear.w03 -1
 cleared.s0.w03 cost 0
 cleared.s0.w03 clear.w03 1
 cleared.s0.w03 clears.s0.w03.start.s0.c0.2.1 1
 stands.s0.w03 cost 0
 stands.s0.w03 standson.s0.w03 -1
 stands.s0.w03 clears.s0.w03.start.s0.c0.2.1 1
 cleared.s1.w03 cost 0
 cleared.s1.w03 clear.w03 1
 cleared.s1.w03 clears.s1.w03.start.s1.c2.1.1 1
 stands.s1.w03 cost 0
 stands.s1.w03 standson.s1.w03 -1
 stands.s1.w03 clears.s1.w03.start.s1.c2.1.1 1
 rest.w04 cost 0.5
 rest.w04 clear.w04 -1
 rest.w05 cost 0.5
 rest.w05 clear.w05 -1
 rest.w06 cost 0.5
 rest.w06 clear.w06 -1
RHS
 RHS total.g 4
 RHS total.h 3
 RHS ground.s1.w01 0.518460461547704
 RHS roots.s1.w01 100.61012498976109
 RHS ground.s1.w02 0.518460461547704
 RHS roots.s1.w02 100.61012498976109
 RHS ground.s1.w03 0.518460461547704
 RHS roots.s1.w03 100.61012498976109
 RHS ground.s0.w01 0.6497363827205522
 RHS roots.s0.w01 178.91618919178916
 RHS tall.s0.w01 0.9161998154907306
 RHS ground.s0.w02 0.6497363827205522
 RHS roots.s0.w02 178.91618919178916
 RHS tall.s0.w02 0.9161998154907306
 RHS ground.s0.w03 0.6497363827205522
 RHS roots.s0.w03 178.91618919178916
 RHS tall.s0.w03 0.9161998154907306
 RHS clear.w-1 1
 RHS clear.w00 1
 RHS clear.w01 1
 RHS clear.w02 1
 RHS clear.w03 1
 RHS clear.w04 1
 RHS clear.w05 1
 RHS clear.w06 1
BOUNDS
 UP BND start.s1.c2.1.1 1
 UP BND plants.s1.c2.1.1 1
 UP BND start.s0.c0.2.1 1
 UP BND plants.s0.c0.2.1 2
 UP BND eat.f0.w00.1 0.8523993505010038
 UP BND eat.f0.w00.2 0.8523993505010038
 UP BND eat.f0.w00.3 1.7047987010020076
 UP BND eat.f0.w01.1 1.3971222803731727
 UP BND eat.f0.w01.2 1.3971222803731727
 UP BND eat.f0.w01.3 2.7942445607463453
 UP BND eat.f0.w02.1 1.1284260017381205
 UP BND eat.f0.w02.2 1.1284260017381205
 UP BND eat.f0.w02.3 2.256852003476241
 UP BND eat.f0.w03.1 1.3449291838070558
 UP BND eat.f0.w03.2 1.3449291838070558
 UP BND eat.f0.w03.3 2.6898583676141117
 UP BND eat.f0.w04.1 1.137910045108471
 UP BND eat.f0.w04.2 1.137910045108471
 UP BND eat.f0.w04.3 2.275820090216942
 UP BND eat.f0.w05.1 0.6155186127966519
 UP BND eat.f0.w05.2 0.6155186127966519
 UP BND eat.f0.w05.3 1.2310372255933038
 UP BND eat.f0.w06.1 0.8838891310702515
 UP BND eat.f0.w06.2 0.8838891310702515
 UP BND eat.f0.w06.3 1.767778262140503
 UP BND eat.f0.w07.1 0.523259331995489
 UP BND eat.f0.w07.2 0.523259331995489
 UP BND eat.f0.w07.3 1.046518663990978
 UP BND left.b0.f0.w03 1
 UP BND cleared.s0.w03 1
 UP BND cleared.s1.w03 1
ENDATA
