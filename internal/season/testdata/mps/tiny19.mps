NAME season
ROWS
 N cost
 L most.s0.c2.0.3
 G least.s0.c2.0.3
 L most.s0.c2.1.3
 G least.s0.c2.1.3
 L few.s0.c2.1.3
 L all.s0.c2.1.3
 L most.s0.c0.2.0
 G least.s0.c0.2.0
 L most.s0.c1.5.0
 G least.s0.c1.5.0
 E pulled.stay0
 L total.g
 L total.h
 G must.0.c0
 L ground.s0.w03
 L roots.s0.w03
 L support.s0.w03
 L ground.s0.w00
 L roots.s0.w00
 L tall.s0.w00
 L support.s0.w00
 L ground.s0.w01
 L roots.s0.w01
 L tall.s0.w01
 L support.s0.w01
 L ground.s0.w02
 L roots.s0.w02
 L tall.s0.w02
 L support.s0.w02
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
 L keeps.f0.w00
 L keeps.f0.w01
 L keeps.f0.w02
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
 L keeps.f1.w00
 L keeps.f1.w01
 L keeps.f1.w02
 G leaves.b0.f1.w03.start.s0.c2.0.3
 G leaves.b0.f1.w03.start.s0.c2.1.3
 G leaves.b0.f0.w03.start.s0.c0.2.0
 G leaves.b0.f0.w-1.pull.stay0.before
 G leaves.b0.f0.w00.pull.stay0.w00
 L clear.w-1
 E standson.s0.w-1
 G clears.s0.w-1.pull.stay0.before
 L clear.w00
 E standson.s0.w00
 G clears.s0.w00.pull.stay0.w00
 L clear.w01
 L clear.w02
 L clear.w03
 E standson.s0.w03
 G clears.s0.w03.start.s0.c2.0.3
 G clears.s0.w03.start.s0.c2.1.3
 G clears.s0.w03.start.s0.c0.2.0
 G clears.s0.w03.start.s0.c1.5.0
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s0.c2.0.3 cost 0.19647490813131205
 start.s0.c2.0.3 most.s0.c2.0.3 -1
 start.s0.c2.0.3 least.s0.c2.0.3 -1
 start.s0.c2.0.3 leaves.b0.f1.w03.start.s0.c2.0.3 -1
 start.s0.c2.0.3 clears.s0.w03.start.s0.c2.0.3 -1
 plants.s0.c2.0.3 cost -0.18
 plants.s0.c2.0.3 most.s0.c2.0.3 1
 plants.s0.c2.0.3 least.s0.c2.0.3 1
 plants.s0.c2.0.3 ground.s0.w03 0.11836497680691713
 plants.s0.c2.0.3 roots.s0.w03 0.5161070521918304
 plants.s0.c2.0.3 support.s0.w03 0.2
 plants.s0.c2.0.3 picked.f1.w04 -1.0114160776138306
 start.s0.c2.1.3 cost 0.2564150385913895
 start.s0.c2.1.3 most.s0.c2.1.3 -3
 start.s0.c2.1.3 least.s0.c2.1.3 -2
 start.s0.c2.1.3 leaves.b0.f1.w03.start.s0.c2.1.3 -1
 start.s0.c2.1.3 clears.s0.w03.start.s0.c2.1.3 -1
 plants.s0.c2.1.3 cost 0.1
 plants.s0.c2.1.3 most.s0.c2.1.3 1
 plants.s0.c2.1.3 least.s0.c2.1.3 1
 plants.s0.c2.1.3 few.s0.c2.1.3 1
 plants.s0.c2.1.3 ground.s0.w03 0.23067458913869043
 plants.s0.c2.1.3 roots.s0.w03 8.923058289256073
 plants.s0.c2.1.3 picked.f0.w04 -1.4814794063568115
 M MARKER 'MARKER' 'INTEND'
 lost.s0.c2.1.3 cost 0.02
 lost.s0.c2.1.3 few.s0.c2.1.3 -1
 lost.s0.c2.1.3 all.s0.c2.1.3 -1
 M MARKER 'MARKER' 'INTORG'
 many.s0.c2.1.3 cost 0
 many.s0.c2.1.3 few.s0.c2.1.3 -2
 many.s0.c2.1.3 all.s0.c2.1.3 1
 start.s0.c0.2.0 cost 0.24535470128511555
 start.s0.c0.2.0 most.s0.c0.2.0 -2
 start.s0.c0.2.0 least.s0.c0.2.0 -1
 start.s0.c0.2.0 leaves.b0.f0.w03.start.s0.c0.2.0 -1
 start.s0.c0.2.0 standson.s0.w00 1
 start.s0.c0.2.0 clears.s0.w03.start.s0.c0.2.0 -1
 plants.s0.c0.2.0 cost 0.32
 plants.s0.c0.2.0 most.s0.c0.2.0 1
 plants.s0.c0.2.0 least.s0.c0.2.0 1
 plants.s0.c0.2.0 total.g 1
 plants.s0.c0.2.0 must.0.c0 1
 plants.s0.c0.2.0 ground.s0.w03 0.15693725500706243
 plants.s0.c0.2.0 roots.s0.w03 2.757860045626803
 plants.s0.c0.2.0 support.s0.w03 0.2
 plants.s0.c0.2.0 ground.s0.w00 0.30989967641388194
 plants.s0.c0.2.0 roots.s0.w00 5.44587029826703
 plants.s0.c0.2.0 tall.s0.w00 0.30989967641388194
 plants.s0.c0.2.0 support.s0.w00 0.2
 plants.s0.c0.2.0 ground.s0.w01 0.2591212982907235
 plants.s0.c0.2.0 roots.s0.w01 4.553541321305588
 plants.s0.c0.2.0 tall.s0.w01 0.2591212982907235
 plants.s0.c0.2.0 support.s0.w01 0.2
 plants.s0.c0.2.0 ground.s0.w02 0.15693725500706243
 plants.s0.c0.2.0 roots.s0.w02 2.757860045626803
 plants.s0.c0.2.0 tall.s0.w02 0.15693725500706243
 plants.s0.c0.2.0 support.s0.w02 0.2
 plants.s0.c0.2.0 tall.s0.w03 0.15693725500706243
 plants.s0.c0.2.0 picked.f1.w01 -1.1945596933364868
 plants.s0.c0.2.0 picked.f1.w02 -0.35097450017929077
 start.s0.c1.5.0 cost 0.17999310258774937
 start.s0.c1.5.0 most.s0.c1.5.0 -2
 start.s0.c1.5.0 least.s0.c1.5.0 -1
 start.s0.c1.5.0 standson.s0.w00 1
 start.s0.c1.5.0 clears.s0.w03.start.s0.c1.5.0 -1
 plants.s0.c1.5.0 cost -0.18
 plants.s0.c1.5.0 most.s0.c1.5.0 1
 plants.s0.c1.5.0 least.s0.c1.5.0 1
 plants.s0.c1.5.0 ground.s0.w03 0.08214647589144808
 plants.s0.c1.5.0 roots.s0.w03 2.170620298197236
 plants.s0.c1.5.0 ground.s0.w00 0.18886245652996342
 plants.s0.c1.5.0 roots.s0.w00 4.990459752078174
 plants.s0.c1.5.0 ground.s0.w01 0.08214647589144808
 plants.s0.c1.5.0 roots.s0.w01 2.170620298197236
 plants.s0.c1.5.0 ground.s0.w02 0.08214647589144808
 plants.s0.c1.5.0 roots.s0.w02 2.170620298197236
 plants.s0.c1.5.0 picked.f1.w00 -0.7609089016914368
 pull.stay0.before cost 0.04130324161255072
 pull.stay0.before pulled.stay0 1
 pull.stay0.before leaves.b0.f0.w-1.pull.stay0.before -1
 pull.stay0.before clears.s0.w-1.pull.stay0.before -1
 pull.stay0.w00 cost -0.16475443151523317
 pull.stay0.w00 pulled.stay0 1
 pull.stay0.w00 ground.s0.w00 0.0756436645196803
 pull.stay0.w00 roots.s0.w00 12.577742598058222
 pull.stay0.w00 tall.s0.w00 0.0756436645196803
 pull.stay0.w00 support.s0.w00 0.1
 pull.stay0.w00 picked.f0.w00 -1.227326512336731
 pull.stay0.w00 leaves.b0.f0.w00.pull.stay0.w00 -1
 pull.stay0.w00 standson.s0.w-1 1
 pull.stay0.w00 clears.s0.w00.pull.stay0.w00 -1
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
 eat.f0.w00.1 cost -1.634448840858587
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -1.096557305917287
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -0.5586657709759871
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
 eat.f0.w01.1 cost -1.618266179067908
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -1.085700302888403
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -0.5531344267088981
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
 eat.f0.w02.1 cost -1.602243741651394
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -1.074950794939013
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -0.5476578482266318
 eat.f0.w02.3 sum.f0.w02 -1
 used.f0.w03 cost 0
 used.f0.w03 picked.f0.w03 1
 used.f0.w03 rises.f0.w03 1
 used.f0.w03 first.f0.w03 -1
 used.f0.w03 picked.f0.w04 -1
 used.f0.w03 rises.f0.w04 -1
 eaten.f0.w03 cost 0
 eaten.f0.w03 sum.f0.w03 1
 eaten.f0.w03 first.f0.w03 1
 eaten.f0.w03 sum.f0.w04 -1
 eaten.f0.w03 keeps.f0.w01 -1
 eat.f0.w03.1 cost -1.5863799422291032
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -1.064307717761399
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -0.5422354932936949
 eat.f0.w03.3 sum.f0.w03 -1
 used.f0.w04 cost 0
 used.f0.w04 picked.f0.w04 1
 used.f0.w04 rises.f0.w04 1
 used.f0.w04 first.f0.w04 -1
 eaten.f0.w04 cost 0
 eaten.f0.w04 sum.f0.w04 1
 eaten.f0.w04 first.f0.w04 1
 eaten.f0.w04 keeps.f0.w02 -1
 eat.f0.w04.1 cost -1.5706732101278247
 eat.f0.w04.1 sum.f0.w04 -1
 eat.f0.w04.2 cost -1.0537700175855433
 eat.f0.w04.2 sum.f0.w04 -1
 eat.f0.w04.3 cost -0.5368668250432622
 eat.f0.w04.3 sum.f0.w04 -1
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
 eat.f1.w00.1 cost -1.1413798083122684
 eat.f1.w00.1 sum.f1.w00 -1
 eat.f1.w00.2 cost -0.772375736552515
 eat.f1.w00.2 sum.f1.w00 -1
 eat.f1.w00.3 cost -0.40337166479276165
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
 eat.f1.w01.1 cost -1.1300790181309588
 eat.f1.w01.1 sum.f1.w01 -1
 eat.f1.w01.2 cost -0.7647284520321931
 eat.f1.w01.2 sum.f1.w01 -1
 eat.f1.w01.3 cost -0.3993778859334274
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
 eaten.f1.w02 keeps.f1.w00 -1
 eat.f1.w02.1 cost -1.1188901169613452
 eat.f1.w02.1 sum.f1.w02 -1
 eat.f1.w02.2 cost -0.7571568832001911
 eat.f1.w02.2 sum.f1.w02 -1
 eat.f1.w02.3 cost -0.39542364943903696
 eat.f1.w02.3 sum.f1.w02 -1
 used.f1.w03 cost 0
 used.f1.w03 picked.f1.w03 1
 used.f1.w03 rises.f1.w03 1
 used.f1.w03 first.f1.w03 -1
 used.f1.w03 picked.f1.w04 -1
 used.f1.w03 rises.f1.w04 -1
 eaten.f1.w03 cost 0
 eaten.f1.w03 sum.f1.w03 1
 eaten.f1.w03 first.f1.w03 1
 eaten.f1.w03 sum.f1.w04 -1
 eaten.f1.w03 keeps.f1.w01 -1
 eat.f1.w03.1 cost -1.107811996991431
 eat.f1.w03.1 sum.f1.w03 -1
 eat.f1.w03.2 cost -0.7496602803962289
 eat.f1.w03.2 sum.f1.w03 -1
 eat.f1.w03.3 cost -0.3915085638010268
 eat.f1.w03.3 sum.f1.w03 -1
 used.f1.w04 cost 0
 used.f1.w04 picked.f1.w04 1
 used.f1.w04 rises.f1.w04 1
 used.f1.w04 first.f1.w04 -1
 eaten.f1.w04 cost 0
 eaten.f1.w04 sum.f1.w04 1
 eaten.f1.w04 first.f1.w04 1
 eaten.f1.w04 keeps.f1.w02 -1
 eat.f1.w04.1 cost -1.0968435613776544
 eat.f1.w04.1 sum.f1.w04 -1
 eat.f1.w04.2 cost -0.7422379013824048
 eat.f1.w04.2 sum.f1.w04 -1
 eat.f1.w04.3 cost -0.3876322413871552
 eat.f1.w04.3 sum.f1.w04 -1
 left.b0.f1.w03 cost 0
 left.b0.f1.w03 leaves.b0.f1.w03.start.s0.c2.0.3 1
 left.b0.f1.w03 leaves.b0.f1.w03.start.s0.c2.1.3 1
 left.b0.f0.w03 cost 0
 left.b0.f0.w03 leaves.b0.f0.w03.start.s0.c0.2.0 1
 left.b0.f0.w-1 cost 0
 left.b0.f0.w-1 leaves.b0.f0.w-1.pull.stay0.before 1
 left.b0.f0.w00 cost 0
 left.b0.f0.w00 leaves.b0.f0.w00.pull.stay0.w00 1
 rest.w-1 cost 0.5
 rest.w-1 clear.w-1 -1
 cleared.s0.w-1 cost 0
 cleared.s0.w-1 clear.w-1 1
 cleared.s0.w-1 clears.s0.w-1.pull.stay0.before 1
 stands.s0.w-1 cost 0
 stands.s0.w-1 standson.s0.w-1 -1
 stands.s0.w-1 clears.s0.w-1.pull.stay0.before 1
 rest.w00 cost 0.5
 rest.w00 clear.w00 -1
 cleared.s0.w00 cost 0
 cleared.s0.w00 clear.w00 1
 cleared.s0.w00 clears.s0.w00.pull.stay0.w00 1
 stands.s0.w00 cost 0
 stands.s0.w00 standson.s0.w00 -1
 stands.s0.w00 clears.s0.w00.pull.stay0.w00 1
 rest.w01 cost 0.5
 rest.w01 clear.w01 -1
 rest.w02 cost 0.5
 rest.w02 clear.w02 -1
 rest.w03 cost 0.5
 rest.w03 clear.w03 -1
 cleared.s0.w03 cost 0
 cleared.s0.w03 clear.w03 1
 cleared.s0.w03 clears.s0.w03.start.s0.c2.0.3 1
 cleared.s0.w03 clears.s0.w03.start.s0.c2.1.3 1
 cleared.s0.w03 clears.s0.w03.start.s0.c0.2.0 1
 cleared.s0.w03 clears.s0.w03.start.s0.c1.5.0 1
 stands.s0.w03 cost 0
 stands.s0.w03 standson.s0.w03 -1
 stands.s0.w03 clears.s0.w03.start.s0.c2.0.3 1
 stands.s0.w03 clears.s0.w03.start.s0.c2.1.3 1
 stands.s0.w03 clears.s0.w03.start.s0.c0.2.0 1
 stands.s0.w03 clears.s0.w03.start.s0.c1.5.0 1
RHS
 RHS pulled.stay0 1
 RHS total.g 3
 RHS total.h 1
 RHS must.0.c0 1
 RHS ground.s0.w03 1.1995531206918402
 RHS roots.s0.w03 178.92574670656504
 RHS support.s0.w03 0.6091583785433802
 RHS ground.s0.w00 1.1995531206918402
 RHS roots.s0.w00 178.92574670656504
 RHS tall.s0.w00 0.9974219863230012
 RHS support.s0.w00 0.6091583785433802
 RHS ground.s0.w01 1.1995531206918402
 RHS roots.s0.w01 178.92574670656504
 RHS tall.s0.w01 0.9974219863230012
 RHS support.s0.w01 0.6091583785433802
 RHS ground.s0.w02 1.1995531206918402
 RHS roots.s0.w02 178.92574670656504
 RHS tall.s0.w02 0.9974219863230012
 RHS support.s0.w02 0.6091583785433802
 RHS tall.s0.w03 0.9974219863230012
 RHS clear.w-1 1
 RHS clear.w00 1
 RHS clear.w01 1
 RHS clear.w02 1
 RHS clear.w03 1
BOUNDS
 UP BND start.s0.c2.0.3 1
 UP BND plants.s0.c2.0.3 1
 UP BND start.s0.c2.1.3 1
 UP BND plants.s0.c2.1.3 3
 UP BND many.s0.c2.1.3 1
 UP BND start.s0.c0.2.0 1
 UP BND plants.s0.c0.2.0 2
 UP BND start.s0.c1.5.0 1
 UP BND plants.s0.c1.5.0 2
 UP BND pull.stay0.before 1
 UP BND pull.stay0.w00 1
 UP BND eat.f0.w00.1 0.30331157188196256
 UP BND eat.f0.w00.2 0.30331157188196256
 UP BND eat.f0.w00.3 0.6066231437639251
 UP BND eat.f0.w01.1 0.4839144773159329
 UP BND eat.f0.w01.2 0.4839144773159329
 UP BND eat.f0.w01.3 0.9678289546318658
 UP BND eat.f0.w02.1 1.0857973748071743
 UP BND eat.f0.w02.2 1.0857973748071743
 UP BND eat.f0.w02.3 2.1715947496143486
 UP BND eat.f0.w03.1 0.6727299960204447
 UP BND eat.f0.w03.2 0.6727299960204447
 UP BND eat.f0.w03.3 1.3454599920408894
 UP BND eat.f0.w04.1 0.2745313818387377
 UP BND eat.f0.w04.2 0.2745313818387377
 UP BND eat.f0.w04.3 0.5490627636774754
 UP BND eat.f1.w00.1 1.0804866891091223
 UP BND eat.f1.w00.2 1.0804866891091223
 UP BND eat.f1.w00.3 2.1609733782182445
 UP BND eat.f1.w01.1 1.0715286826685222
 UP BND eat.f1.w01.2 1.0715286826685222
 UP BND eat.f1.w01.3 2.1430573653370444
 UP BND eat.f1.w02.1 0.05579990957161757
 UP BND eat.f1.w02.2 0.05579990957161757
 UP BND eat.f1.w02.3 0.11159981914323513
 UP BND eat.f1.w03.1 0.8333237014442147
 UP BND eat.f1.w03.2 0.8333237014442147
 UP BND eat.f1.w03.3 1.6666474028884295
 UP BND eat.f1.w04.1 0.6916865060873709
 UP BND eat.f1.w04.2 0.6916865060873709
 UP BND eat.f1.w04.3 1.3833730121747418
 UP BND left.b0.f1.w03 1
 UP BND left.b0.f0.w03 1
 UP BND left.b0.f0.w-1 1
 UP BND left.b0.f0.w00 1
 UP BND cleared.s0.w-1 1
 UP BND cleared.s0.w00 1
 UP BND cleared.s0.w03 1
ENDATA
