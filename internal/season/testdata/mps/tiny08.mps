NAME season
ROWS
 N cost
 L most.s0.c1.2.0
 G least.s0.c1.2.0
 E pulled.stay0
 E pulled.stay1
 L minutes.w00
 L minutes.w01
 L minutes.w02
 L minutes.w03
 L total.g
 L ground.s0.w00
 L roots.s0.w00
 L support.s0.w00
 L ground.s0.w01
 L roots.s0.w01
 L support.s0.w01
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
 L keeps.f0.w00
 L keeps.f0.w01
 G leaves.b0.f1.w01.start.s0.c1.2.0
 G leaves.b0.f0.w-1.pull.stay1.before
 G leaves.b0.f0.w00.pull.stay1.w00
 G leaves.b0.f0.w01.pull.stay1.w01
 G leaves.b0.f0.w02.pull.stay1.w02
 L clear.w-1
 E standson.s0.w-1
 G clears.s0.w-1.pull.stay1.before
 E standson.s1.w-1
 G clears.s1.w-1.pull.stay0.before
 L clear.w00
 E standson.s0.w00
 G clears.s0.w00.pull.stay1.w00
 E standson.s1.w00
 G clears.s1.w00.pull.stay0.w00
 L clear.w01
 E standson.s0.w01
 G clears.s0.w01.start.s0.c1.2.0
 G clears.s0.w01.pull.stay1.w01
 E standson.s1.w01
 G clears.s1.w01.pull.stay0.w01
 L clear.w02
 E standson.s0.w02
 G clears.s0.w02.pull.stay1.w02
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s0.c1.2.0 cost 0.17444115335185176
 start.s0.c1.2.0 most.s0.c1.2.0 -1
 start.s0.c1.2.0 least.s0.c1.2.0 -1
 start.s0.c1.2.0 minutes.w00 5
 start.s0.c1.2.0 leaves.b0.f1.w01.start.s0.c1.2.0 -1
 start.s0.c1.2.0 standson.s0.w00 1
 start.s0.c1.2.0 clears.s0.w01.start.s0.c1.2.0 -1
 plants.s0.c1.2.0 cost 0.12000000000000001
 plants.s0.c1.2.0 most.s0.c1.2.0 1
 plants.s0.c1.2.0 least.s0.c1.2.0 1
 plants.s0.c1.2.0 minutes.w00 2.765067259333843
 plants.s0.c1.2.0 minutes.w01 5
 plants.s0.c1.2.0 minutes.w02 5
 plants.s0.c1.2.0 minutes.w03 5
 plants.s0.c1.2.0 ground.s0.w00 0.09342821068025697
 plants.s0.c1.2.0 roots.s0.w00 11.808537442730222
 plants.s0.c1.2.0 support.s0.w00 0.2
 plants.s0.c1.2.0 ground.s0.w01 0.09342821068025697
 plants.s0.c1.2.0 roots.s0.w01 11.808537442730222
 plants.s0.c1.2.0 support.s0.w01 0.2
 pull.stay0.before cost 0.14165244958380546
 pull.stay0.before pulled.stay0 1
 pull.stay0.before clears.s1.w-1.pull.stay0.before -1
 pull.stay0.w00 cost 0.14165244958380546
 pull.stay0.w00 pulled.stay0 1
 pull.stay0.w00 minutes.w00 2.6435942443883493
 pull.stay0.w00 picked.f0.w00 -1.0290260314941406
 pull.stay0.w00 standson.s1.w-1 1
 pull.stay0.w00 clears.s1.w00.pull.stay0.w00 -1
 pull.stay0.w01 cost -0.38535058531855243
 pull.stay0.w01 pulled.stay0 1
 pull.stay0.w01 minutes.w00 2.6435942443883493
 pull.stay0.w01 minutes.w01 0.3047249100877618
 pull.stay0.w01 picked.f0.w00 -1.0290260314941406
 pull.stay0.w01 picked.f0.w01 -1.0217271447181702
 pull.stay0.w01 standson.s1.w-1 1
 pull.stay0.w01 standson.s1.w00 1
 pull.stay0.w01 clears.s1.w01.pull.stay0.w01 -1
 pull.stay1.before cost 0.04069778612219799
 pull.stay1.before pulled.stay1 1
 pull.stay1.before leaves.b0.f0.w-1.pull.stay1.before -1
 pull.stay1.before clears.s0.w-1.pull.stay1.before -1
 pull.stay1.w00 cost 0.04069778612219799
 pull.stay1.w00 pulled.stay1 1
 pull.stay1.w00 minutes.w00 0.9208247725555423
 pull.stay1.w00 ground.s0.w00 0.5364705955500316
 pull.stay1.w00 roots.s0.w00 24.07307242517756
 pull.stay1.w00 support.s0.w00 0.1
 pull.stay1.w00 leaves.b0.f0.w00.pull.stay1.w00 -1
 pull.stay1.w00 standson.s0.w-1 1
 pull.stay1.w00 clears.s0.w00.pull.stay1.w00 -1
 pull.stay1.w01 cost 0.04069778612219799
 pull.stay1.w01 pulled.stay1 1
 pull.stay1.w01 minutes.w00 0.9208247725555423
 pull.stay1.w01 minutes.w01 3.46051428335172
 pull.stay1.w01 ground.s0.w00 0.5364705955500316
 pull.stay1.w01 roots.s0.w00 24.07307242517756
 pull.stay1.w01 support.s0.w00 0.1
 pull.stay1.w01 ground.s0.w01 0.4118947036375951
 pull.stay1.w01 roots.s0.w01 18.482972066807605
 pull.stay1.w01 support.s0.w01 0.1
 pull.stay1.w01 leaves.b0.f0.w01.pull.stay1.w01 -1
 pull.stay1.w01 standson.s0.w-1 1
 pull.stay1.w01 standson.s0.w00 1
 pull.stay1.w01 clears.s0.w01.pull.stay1.w01 -1
 pull.stay1.w02 cost -0.3824936024120182
 pull.stay1.w02 pulled.stay1 1
 pull.stay1.w02 minutes.w00 0.9208247725555423
 pull.stay1.w02 minutes.w01 3.46051428335172
 pull.stay1.w02 minutes.w02 0.33808898294497425
 pull.stay1.w02 ground.s0.w00 0.5364705955500316
 pull.stay1.w02 roots.s0.w00 24.07307242517756
 pull.stay1.w02 support.s0.w00 0.1
 pull.stay1.w02 ground.s0.w01 0.4118947036375951
 pull.stay1.w02 roots.s0.w01 18.482972066807605
 pull.stay1.w02 support.s0.w01 0.1
 pull.stay1.w02 leaves.b0.f0.w02.pull.stay1.w02 -1
 pull.stay1.w02 standson.s0.w-1 1
 pull.stay1.w02 standson.s0.w00 1
 pull.stay1.w02 standson.s0.w01 1
 pull.stay1.w02 clears.s0.w02.pull.stay1.w02 -1
 M MARKER 'MARKER' 'INTEND'
 over.w00 cost 0.05
 over.w00 minutes.w00 -1
 over.w01 cost 0.05
 over.w01 minutes.w01 -1
 over.w02 cost 0.05
 over.w02 minutes.w02 -1
 over.w03 cost 0.05
 over.w03 minutes.w03 -1
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
 eat.f0.w00.1 cost -1.267296192849224
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -0.9047119460735276
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -0.5421276992978312
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
 eat.f0.w01.1 cost -1.2547487057913107
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -0.8957544020529976
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -0.5367600983146844
 eat.f0.w01.3 sum.f0.w01 -1
 used.f0.w02 cost 0
 used.f0.w02 picked.f0.w02 1
 used.f0.w02 rises.f0.w02 1
 used.f0.w02 first.f0.w02 -1
 used.f0.w02 picked.f0.w03 -1
 used.f0.w02 rises.f0.w03 -1
 eaten.f0.w02 cost 0
 eaten.f0.w02 sum.f0.w02 1
 eaten.f0.w02 first.f0.w02 1
 eaten.f0.w02 sum.f0.w03 -1
 eaten.f0.w02 keeps.f0.w00 -1
 eat.f0.w02.1 cost -1.2423254512785256
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -0.8868855465871263
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -0.5314456418957271
 eat.f0.w02.3 sum.f0.w02 -1
 used.f0.w03 cost 0
 used.f0.w03 picked.f0.w03 1
 used.f0.w03 rises.f0.w03 1
 used.f0.w03 first.f0.w03 -1
 eaten.f0.w03 cost 0
 eaten.f0.w03 sum.f0.w03 1
 eaten.f0.w03 first.f0.w03 1
 eaten.f0.w03 keeps.f0.w01 -1
 eat.f0.w03.1 cost -1.230025199285669
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -0.8781045015714123
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -0.5261838038571556
 eat.f0.w03.3 sum.f0.w03 -1
 left.b0.f1.w01 cost 0
 left.b0.f1.w01 leaves.b0.f1.w01.start.s0.c1.2.0 1
 left.b0.f0.w-1 cost 0
 left.b0.f0.w-1 leaves.b0.f0.w-1.pull.stay1.before 1
 left.b0.f0.w00 cost 0
 left.b0.f0.w00 leaves.b0.f0.w00.pull.stay1.w00 1
 left.b0.f0.w01 cost 0
 left.b0.f0.w01 leaves.b0.f0.w01.pull.stay1.w01 1
 left.b0.f0.w02 cost 0
 left.b0.f0.w02 leaves.b0.f0.w02.pull.stay1.w02 1
 rest.w-1 cost 0.3
 rest.w-1 clear.w-1 -1
 cleared.s0.w-1 cost 0
 cleared.s0.w-1 clear.w-1 1
 cleared.s0.w-1 clears.s0.w-1.pull.stay1.before 1
 stands.s0.w-1 cost 0
 stands.s0.w-1 standson.s0.w-1 -1
 stands.s0.w-1 clears.s0.w-1.pull.stay1.before 1
 cleared.s1.w-1 cost 0
 cleared.s1.w-1 clear.w-1 1
 cleared.s1.w-1 clears.s1.w-1.pull.stay0.before 1
 stands.s1.w-1 cost 0
 stands.s1.w-1 standson.s1.w-1 -1
 stands.s1.w-1 clears.s1.w-1.pull.stay0.before 1
 rest.w00 cost 0.3
 rest.w00 clear.w00 -1
 cleared.s0.w00 cost 0
 cleared.s0.w00 clear.w00 1
 cleared.s0.w00 clears.s0.w00.pull.stay1.w00 1
 stands.s0.w00 cost 0
 stands.s0.w00 standson.s0.w00 -1
 stands.s0.w00 clears.s0.w00.pull.stay1.w00 1
 cleared.s1.w00 cost 0
 cleared.s1.w00 clear.w00 1
 cleared.s1.w00 clears.s1.w00.pull.stay0.w00 1
 stands.s1.w00 cost 0
 stands.s1.w00 standson.s1.w00 -1
 stands.s1.w00 clears.s1.w00.pull.stay0.w00 1
 rest.w01 cost 0.3
 rest.w01 clear.w01 -1
 cleared.s0.w01 cost 0
 cleared.s0.w01 clear.w01 1
 cleared.s0.w01 clears.s0.w01.start.s0.c1.2.0 1
 cleared.s0.w01 clears.s0.w01.pull.stay1.w01 1
 stands.s0.w01 cost 0
 stands.s0.w01 standson.s0.w01 -1
 stands.s0.w01 clears.s0.w01.start.s0.c1.2.0 1
 stands.s0.w01 clears.s0.w01.pull.stay1.w01 1
 cleared.s1.w01 cost 0
 cleared.s1.w01 clear.w01 1
 cleared.s1.w01 clears.s1.w01.pull.stay0.w01 1
 stands.s1.w01 cost 0
 stands.s1.w01 standson.s1.w01 -1
 stands.s1.w01 clears.s1.w01.pull.stay0.w01 1
 rest.w02 cost 0.3
 rest.w02 clear.w02 -1
 cleared.s0.w02 cost 0
 cleared.s0.w02 clear.w02 1
 cleared.s0.w02 clears.s0.w02.pull.stay1.w02 1
 stands.s0.w02 cost 0
 stands.s0.w02 standson.s0.w02 -1
 stands.s0.w02 clears.s0.w02.pull.stay1.w02 1
RHS
 RHS pulled.stay0 1
 RHS pulled.stay1 1
 RHS minutes.w00 20
 RHS minutes.w01 38
 RHS minutes.w02 4
 RHS minutes.w03 33
 RHS total.g 3
 RHS ground.s0.w00 1.4825196803665002
 RHS roots.s0.w00 188.21829696040896
 RHS support.s0.w00 0.996346723809246
 RHS ground.s0.w01 1.4825196803665002
 RHS roots.s0.w01 188.21829696040896
 RHS support.s0.w01 0.996346723809246
 RHS clear.w-1 1
 RHS clear.w00 1
 RHS clear.w01 1
 RHS clear.w02 1
BOUNDS
 UP BND start.s0.c1.2.0 1
 UP BND plants.s0.c1.2.0 1
 UP BND pull.stay0.before 1
 UP BND pull.stay0.w00 1
 UP BND pull.stay0.w01 1
 UP BND pull.stay1.before 1
 UP BND pull.stay1.w00 1
 UP BND pull.stay1.w01 1
 UP BND pull.stay1.w02 1
 UP BND eat.f0.w00.1 0.9218744089081059
 UP BND eat.f0.w00.2 0.9218744089081059
 UP BND eat.f0.w00.3 1.8437488178162118
 UP BND eat.f0.w01.1 0.8770990536655412
 UP BND eat.f0.w01.2 0.8770990536655412
 UP BND eat.f0.w01.3 1.7541981073310824
 UP BND eat.f0.w02.1 0.9756101008596791
 UP BND eat.f0.w02.2 0.9756101008596791
 UP BND eat.f0.w02.3 1.9512202017193583
 UP BND eat.f0.w03.1 0.6809295946353491
 UP BND eat.f0.w03.2 0.6809295946353491
 UP BND eat.f0.w03.3 1.3618591892706982
 UP BND left.b0.f1.w01 1
 UP BND left.b0.f0.w-1 1
 UP BND left.b0.f0.w00 1
 UP BND left.b0.f0.w01 1
 UP BND left.b0.f0.w02 1
 UP BND cleared.s0.w-1 1
 UP BND cleared.s1.w-1 1
 UP BND cleared.s0.w00 1
 UP BND cleared.s1.w00 1
 UP BND cleared.s0.w01 1
 UP BND cleared.s1.w01 1
 UP BND cleared.s0.w02 1
ENDATA
