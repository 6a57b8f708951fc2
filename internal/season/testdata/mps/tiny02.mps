NAME season
ROWS
 N cost
 L most.s0.c1.0.2
 G least.s0.c1.0.2
 L most.s0.c2.1.3
 G least.s0.c2.1.3
 L few.s0.c2.1.3
 L all.s0.c2.1.3
 L most.s0.c0.2.1
 G least.s0.c0.2.1
 E pulled.stay0
 L water.w00
 L water.w01
 L water.w02
 L water.w03
 L ground.s0.w02
 L roots.s0.w02
 L ground.s0.w03
 L roots.s0.w03
 L ground.s0.w04
 L roots.s0.w04
 L ground.s0.w01
 L roots.s0.w01
 L shelf.w-1
 L shelf.w00
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
 L keeps.f0.w03
 L keeps.f0.w04
 G leaves.b0.f0.w03.start.s0.c1.0.2
 G leaves.b0.f1.w-1.pull.stay0.before
 G leaves.b0.f1.w00.pull.stay0.w00
 G leaves.b0.f1.w01.pull.stay0.w01
 G leaves.b0.f1.w02.pull.stay0.w02
 G leaves.b0.f1.w03.pull.stay0.w03
 G leaves.b0.f1.w04.pull.stay0.w04
 L clear.w-1
 E standson.s0.w-1
 G clears.s0.w-1.pull.stay0.before
 L clear.w00
 E standson.s0.w00
 G clears.s0.w00.pull.stay0.w00
 L clear.w01
 E standson.s0.w01
 G clears.s0.w01.start.s0.c0.2.1
 G clears.s0.w01.pull.stay0.w01
 L clear.w02
 E standson.s0.w02
 G clears.s0.w02.pull.stay0.w02
 L clear.w03
 E standson.s0.w03
 G clears.s0.w03.start.s0.c1.0.2
 G clears.s0.w03.pull.stay0.w03
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s0.c1.0.2 cost 0.03188775548584105
 start.s0.c1.0.2 most.s0.c1.0.2 -2
 start.s0.c1.0.2 least.s0.c1.0.2 -2
 start.s0.c1.0.2 leaves.b0.f0.w03.start.s0.c1.0.2 -1
 start.s0.c1.0.2 standson.s0.w02 1
 start.s0.c1.0.2 clears.s0.w03.start.s0.c1.0.2 -1
 plants.s0.c1.0.2 cost 0.12000000000000001
 plants.s0.c1.0.2 most.s0.c1.0.2 1
 plants.s0.c1.0.2 least.s0.c1.0.2 1
 plants.s0.c1.0.2 water.w02 0.6846009371603424
 plants.s0.c1.0.2 ground.s0.w02 0.22772083119979114
 plants.s0.c1.0.2 roots.s0.w02 18.70291060006192
 plants.s0.c1.0.2 ground.s0.w03 0.22772083119979114
 plants.s0.c1.0.2 roots.s0.w03 18.70291060006192
 plants.s0.c1.0.2 picked.f0.w03 -0.2588847354054451
 plants.s0.c1.0.2 picked.f0.w04 -1.3650093376636505
 start.s0.c2.1.3 cost 0.08585624592903278
 start.s0.c2.1.3 most.s0.c2.1.3 -3
 start.s0.c2.1.3 least.s0.c2.1.3 -2
 start.s0.c2.1.3 standson.s0.w03 1
 plants.s0.c2.1.3 cost -0.19999999999999998
 plants.s0.c2.1.3 most.s0.c2.1.3 1
 plants.s0.c2.1.3 least.s0.c2.1.3 1
 plants.s0.c2.1.3 few.s0.c2.1.3 1
 plants.s0.c2.1.3 water.w03 0.8769276217075123
 plants.s0.c2.1.3 ground.s0.w03 0.20210234938609942
 plants.s0.c2.1.3 roots.s0.w03 6.647966390912178
 plants.s0.c2.1.3 ground.s0.w04 0.20210234938609942
 plants.s0.c2.1.3 roots.s0.w04 6.647966390912178
 M MARKER 'MARKER' 'INTEND'
 lost.s0.c2.1.3 cost 0.02
 lost.s0.c2.1.3 few.s0.c2.1.3 -1
 lost.s0.c2.1.3 all.s0.c2.1.3 -1
 M MARKER 'MARKER' 'INTORG'
 many.s0.c2.1.3 cost 0
 many.s0.c2.1.3 few.s0.c2.1.3 -2
 many.s0.c2.1.3 all.s0.c2.1.3 1
 start.s0.c0.2.1 cost 0.22813781344858264
 start.s0.c0.2.1 most.s0.c0.2.1 -2
 start.s0.c0.2.1 least.s0.c0.2.1 -2
 start.s0.c0.2.1 clears.s0.w01.start.s0.c0.2.1 -1
 plants.s0.c0.2.1 cost -0.18
 plants.s0.c0.2.1 most.s0.c0.2.1 1
 plants.s0.c0.2.1 least.s0.c0.2.1 1
 plants.s0.c0.2.1 ground.s0.w01 0.17608701402547153
 plants.s0.c0.2.1 roots.s0.w01 1.7560025778273676
 plants.s0.c0.2.1 shelf.w-1 1
 plants.s0.c0.2.1 shelf.w00 1
 pull.stay0.before cost 0.06568730020199694
 pull.stay0.before pulled.stay0 1
 pull.stay0.before leaves.b0.f1.w-1.pull.stay0.before -1
 pull.stay0.before clears.s0.w-1.pull.stay0.before -1
 pull.stay0.w00 cost 0.06568730020199694
 pull.stay0.w00 pulled.stay0 1
 pull.stay0.w00 water.w00 0.6221768614399257
 pull.stay0.w00 leaves.b0.f1.w00.pull.stay0.w00 -1
 pull.stay0.w00 standson.s0.w-1 1
 pull.stay0.w00 clears.s0.w00.pull.stay0.w00 -1
 pull.stay0.w01 cost 0.06568730020199694
 pull.stay0.w01 pulled.stay0 1
 pull.stay0.w01 water.w00 0.6221768614399257
 pull.stay0.w01 water.w01 1.6125620285267634
 pull.stay0.w01 ground.s0.w01 0.026193629529720618
 pull.stay0.w01 roots.s0.w01 1.3511800769140045
 pull.stay0.w01 leaves.b0.f1.w01.pull.stay0.w01 -1
 pull.stay0.w01 standson.s0.w-1 1
 pull.stay0.w01 standson.s0.w00 1
 pull.stay0.w01 clears.s0.w01.pull.stay0.w01 -1
 pull.stay0.w02 cost 0.06568730020199694
 pull.stay0.w02 pulled.stay0 1
 pull.stay0.w02 water.w00 0.6221768614399257
 pull.stay0.w02 water.w01 1.6125620285267634
 pull.stay0.w02 water.w02 0.5453616052631953
 pull.stay0.w02 ground.s0.w02 0.052391243369714076
 pull.stay0.w02 roots.s0.w02 2.7025656816894608
 pull.stay0.w02 ground.s0.w01 0.026193629529720618
 pull.stay0.w02 roots.s0.w01 1.3511800769140045
 pull.stay0.w02 leaves.b0.f1.w02.pull.stay0.w02 -1
 pull.stay0.w02 standson.s0.w-1 1
 pull.stay0.w02 standson.s0.w00 1
 pull.stay0.w02 standson.s0.w01 1
 pull.stay0.w02 clears.s0.w02.pull.stay0.w02 -1
 pull.stay0.w03 cost 0.06568730020199694
 pull.stay0.w03 pulled.stay0 1
 pull.stay0.w03 water.w00 0.6221768614399257
 pull.stay0.w03 water.w01 1.6125620285267634
 pull.stay0.w03 water.w02 0.5453616052631953
 pull.stay0.w03 water.w03 0.6383844339159088
 pull.stay0.w03 ground.s0.w02 0.052391243369714076
 pull.stay0.w03 roots.s0.w02 2.7025656816894608
 pull.stay0.w03 ground.s0.w03 0.5401616825566871
 pull.stay0.w03 roots.s0.w03 27.863862965413453
 pull.stay0.w03 ground.s0.w01 0.026193629529720618
 pull.stay0.w03 roots.s0.w01 1.3511800769140045
 pull.stay0.w03 leaves.b0.f1.w03.pull.stay0.w03 -1
 pull.stay0.w03 standson.s0.w-1 1
 pull.stay0.w03 standson.s0.w00 1
 pull.stay0.w03 standson.s0.w01 1
 pull.stay0.w03 standson.s0.w02 1
 pull.stay0.w03 clears.s0.w03.pull.stay0.w03 -1
 pull.stay0.w04 cost -0.2629087723384003
 pull.stay0.w04 pulled.stay0 1
 pull.stay0.w04 water.w00 0.6221768614399257
 pull.stay0.w04 water.w01 1.6125620285267634
 pull.stay0.w04 water.w02 0.5453616052631953
 pull.stay0.w04 water.w03 0.6383844339159088
 pull.stay0.w04 ground.s0.w02 0.052391243369714076
 pull.stay0.w04 roots.s0.w02 2.7025656816894608
 pull.stay0.w04 ground.s0.w03 0.5401616825566871
 pull.stay0.w04 roots.s0.w03 27.863862965413453
 pull.stay0.w04 ground.s0.w04 0.3525718889929824
 pull.stay0.w04 roots.s0.w04 18.18717453977578
 pull.stay0.w04 ground.s0.w01 0.026193629529720618
 pull.stay0.w04 roots.s0.w01 1.3511800769140045
 pull.stay0.w04 leaves.b0.f1.w04.pull.stay0.w04 -1
 pull.stay0.w04 standson.s0.w-1 1
 pull.stay0.w04 standson.s0.w00 1
 pull.stay0.w04 standson.s0.w01 1
 pull.stay0.w04 standson.s0.w02 1
 pull.stay0.w04 standson.s0.w03 1
 M MARKER 'MARKER' 'INTEND'
 overwater.w00 cost 0.08251459203092455
 overwater.w00 water.w00 -1
 overwater.w01 cost 0.08251459203092455
 overwater.w01 water.w01 -1
 overwater.w02 cost 0.08251459203092455
 overwater.w02 water.w02 -1
 overwater.w03 cost 0.08251459203092455
 overwater.w03 water.w03 -1
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
 eat.f0.w00.1 cost -1.9741530459962886
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -1.9249196106276316
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -1.8756861752589746
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
 eat.f0.w01.1 cost -1.9741530459962886
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -1.9249196106276316
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -1.8756861752589746
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
 eat.f0.w02.1 cost -1.9741530459962886
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -1.9249196106276316
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -1.8756861752589746
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
 eat.f0.w03.1 cost -1.9741530459962886
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -1.9249196106276316
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -1.8756861752589746
 eat.f0.w03.3 sum.f0.w03 -1
 used.f0.w04 cost 0
 used.f0.w04 picked.f0.w04 1
 used.f0.w04 rises.f0.w04 1
 used.f0.w04 first.f0.w04 -1
 used.f0.w04 keeps.f0.w04 1
 eaten.f0.w04 cost 0
 eaten.f0.w04 sum.f0.w04 1
 eaten.f0.w04 first.f0.w04 1
 eaten.f0.w04 keeps.f0.w04 -1
 eat.f0.w04.1 cost -1.9741530459962886
 eat.f0.w04.1 sum.f0.w04 -1
 eat.f0.w04.2 cost -1.9249196106276316
 eat.f0.w04.2 sum.f0.w04 -1
 eat.f0.w04.3 cost -1.8756861752589746
 eat.f0.w04.3 sum.f0.w04 -1
 left.b0.f0.w03 cost 0
 left.b0.f0.w03 leaves.b0.f0.w03.start.s0.c1.0.2 1
 left.b0.f1.w-1 cost 0
 left.b0.f1.w-1 leaves.b0.f1.w-1.pull.stay0.before 1
 left.b0.f1.w00 cost 0
 left.b0.f1.w00 leaves.b0.f1.w00.pull.stay0.w00 1
 left.b0.f1.w01 cost 0
 left.b0.f1.w01 leaves.b0.f1.w01.pull.stay0.w01 1
 left.b0.f1.w02 cost 0
 left.b0.f1.w02 leaves.b0.f1.w02.pull.stay0.w02 1
 left.b0.f1.w03 cost 0
 left.b0.f1.w03 leaves.b0.f1.w03.pull.stay0.w03 1
 left.b0.f1.w04 cost 0
 left.b0.f1.w04 leaves.b0.f1.w04.pull.stay0.w04 1
 rest.w-1 cost 0.3
 rest.w-1 clear.w-1 -1
 cleared.s0.w-1 cost 0
 cleared.s0.w-1 clear.w-1 1
 cleared.s0.w-1 clears.s0.w-1.pull.stay0.before 1
 stands.s0.w-1 cost 0
 stands.s0.w-1 standson.s0.w-1 -1
 stands.s0.w-1 clears.s0.w-1.pull.stay0.before 1
 rest.w00 cost 0.3
 rest.w00 clear.w00 -1
 cleared.s0.w00 cost 0
 cleared.s0.w00 clear.w00 1
 cleared.s0.w00 clears.s0.w00.pull.stay0.w00 1
 stands.s0.w00 cost 0
 stands.s0.w00 standson.s0.w00 -1
 stands.s0.w00 clears.s0.w00.pull.stay0.w00 1
 rest.w01 cost 0.3
 rest.w01 clear.w01 -1
 cleared.s0.w01 cost 0
 cleared.s0.w01 clear.w01 1
 cleared.s0.w01 clears.s0.w01.start.s0.c0.2.1 1
 cleared.s0.w01 clears.s0.w01.pull.stay0.w01 1
 stands.s0.w01 cost 0
 stands.s0.w01 standson.s0.w01 -1
 stands.s0.w01 clears.s0.w01.start.s0.c0.2.1 1
 stands.s0.w01 clears.s0.w01.pull.stay0.w01 1
 rest.w02 cost 0.3
 rest.w02 clear.w02 -1
 cleared.s0.w02 cost 0
 cleared.s0.w02 clear.w02 1
 cleared.s0.w02 clears.s0.w02.pull.stay0.w02 1
 stands.s0.w02 cost 0
 stands.s0.w02 standson.s0.w02 -1
 stands.s0.w02 clears.s0.w02.pull.stay0.w02 1
 rest.w03 cost 0.3
 rest.w03 clear.w03 -1
 cleared.s0.w03 cost 0
 cleared.s0.w03 clear.w03 1
 cleared.s0.w03 clears.s0.w03.start.s0.c1.0.2 1
 cleared.s0.w03 clears.s0.w03.pull.stay0.w03 1
 stands.s0.w03 cost 0
 stands.s0.w03 standson.s0.w03 -1
 stands.s0.w03 clears.s0.w03.start.s0.c1.0.2 1
 stands.s0.w03 clears.s0.w03.pull.stay0.w03 1
RHS
 RHS pulled.stay0 1
 RHS water.w00 0.7277282572178244
 RHS water.w01 1.4070816417419945
 RHS water.w02 0.5051360535799598
 RHS water.w03 0.6698104723163033
 RHS ground.s0.w02 1.486553154657352
 RHS roots.s0.w02 171.07381343475225
 RHS ground.s0.w03 1.486553154657352
 RHS roots.s0.w03 171.07381343475225
 RHS ground.s0.w04 1.486553154657352
 RHS roots.s0.w04 171.07381343475225
 RHS ground.s0.w01 1.486553154657352
 RHS roots.s0.w01 171.07381343475225
 RHS shelf.w-1 4.000001
 RHS shelf.w00 2.000001
 RHS clear.w-1 1
 RHS clear.w00 1
 RHS clear.w01 1
 RHS clear.w02 1
 RHS clear.w03 1
BOUNDS
 UP BND start.s0.c1.0.2 1
 UP BND plants.s0.c1.0.2 2
 UP BND start.s0.c2.1.3 1
 UP BND plants.s0.c2.1.3 3
 UP BND many.s0.c2.1.3 1
 UP BND start.s0.c0.2.1 1
 UP BND plants.s0.c0.2.1 2
 UP BND pull.stay0.before 1
 UP BND pull.stay0.w00 1
 UP BND pull.stay0.w01 1
 UP BND pull.stay0.w02 1
 UP BND pull.stay0.w03 1
 UP BND pull.stay0.w04 1
 UP BND eat.f0.w00.1 0.28314586065391456
 UP BND eat.f0.w00.2 0.28314586065391456
 UP BND eat.f0.w00.3 0.5662917213078291
 UP BND eat.f0.w01.1 1.1716672175031806
 UP BND eat.f0.w01.2 1.1716672175031806
 UP BND eat.f0.w01.3 2.343334435006361
 UP BND eat.f0.w02.1 0.08985800547884126
 UP BND eat.f0.w02.2 0.08985800547884126
 UP BND eat.f0.w02.3 0.17971601095768253
 UP BND eat.f0.w03.1 1.1830471897709065
 UP BND eat.f0.w03.2 1.1830471897709065
 UP BND eat.f0.w03.3 2.366094379541813
 UP BND eat.f0.w04.1 0.8160111210944847
 UP BND eat.f0.w04.2 0.8160111210944847
 UP BND eat.f0.w04.3 1.6320222421889694
 UP BND left.b0.f0.w03 1
 UP BND left.b0.f1.w-1 1
 UP BND left.b0.f1.w00 1
 UP BND left.b0.f1.w01 1
 UP BND left.b0.f1.w02 1
 UP BND left.b0.f1.w03 1
 UP BND left.b0.f1.w04 1
 UP BND cleared.s0.w-1 1
 UP BND cleared.s0.w00 1
 UP BND cleared.s0.w01 1
 UP BND cleared.s0.w02 1
 UP BND cleared.s0.w03 1
ENDATA
