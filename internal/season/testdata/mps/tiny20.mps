NAME season
ROWS
 N cost
 L most.s1.c1.0.4
 G least.s1.c1.0.4
 L most.s0.c0.1.4
 G least.s0.c0.1.4
 L most.s0.c2.2.4
 G least.s0.c2.2.4
 L most.s1.c0.3.1
 G least.s1.c0.3.1
 L most.s1.c2.4.3
 G least.s1.c2.4.3
 L most.s1.c2.5.6
 G least.s1.c2.5.6
 E pulled.stay0
 L total.g
 L ground.s1.w04
 L roots.s1.w04
 L tall.s1.w04
 L support.s1.w04
 L ground.s0.w04
 L roots.s0.w04
 L support.s0.w04
 L ground.s0.w05
 L roots.s0.w05
 L support.s0.w05
 L ground.s0.w06
 L roots.s0.w06
 L support.s0.w06
 L ground.s0.w07
 L roots.s0.w07
 L support.s0.w07
 L tall.s0.w04
 L tall.s0.w05
 L tall.s0.w06
 L ground.s1.w01
 L roots.s1.w01
 L ground.s1.w02
 L roots.s1.w02
 L ground.s1.w03
 L roots.s1.w03
 L ground.s1.w05
 L roots.s1.w05
 L ground.s1.w06
 L roots.s1.w06
 L ground.s1.w07
 L roots.s1.w07
 L shelf.w-1
 L shelf.w00
 L shelf.w01
 L shelf.w02
 L shelf.w05
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
 L keeps.f0.w07
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
 L picked.f1.w06
 G rises.f1.w06
 E sum.f1.w06
 L first.f1.w06
 L picked.f1.w07
 G rises.f1.w07
 E sum.f1.w07
 L first.f1.w07
 L keeps.f1.w00
 L keeps.f1.w01
 L keeps.f1.w02
 L keeps.f1.w03
 L keeps.f1.w04
 L keeps.f1.w05
 L keeps.f1.w06
 G leaves.b0.f0.w04.start.s1.c1.0.4
 G leaves.b0.f0.w07.start.s0.c0.1.4
 G leaves.b0.f0.w06.start.s0.c2.2.4
 G leaves.b0.f0.w02.start.s1.c0.3.1
 G leaves.b0.f0.w07.start.s1.c2.4.3
 G soon.b0.f0.i2.w04.w02
 L back.s1.c1.0.4
 G soon.b0.f0.i4.w04.w02
 L back.s0.c0.1.4
 L back.s0.c2.2.4
 L clear.w-1
 L clear.w00
 E standson.s0.w00
 G clears.s0.w00.pull.stay0.w00
 L clear.w01
 E standson.s0.w01
 G clears.s0.w01.pull.stay0.w01
 L clear.w02
 E standson.s0.w02
 G clears.s0.w02.pull.stay0.w02
 E standson.s1.w02
 G clears.s1.w02.start.s1.c0.3.1
 L clear.w03
 E standson.s0.w03
 G clears.s0.w03.pull.stay0.w03
 L clear.w04
 E standson.s0.w04
 G clears.s0.w04.pull.stay0.w04
 E standson.s1.w04
 G clears.s1.w04.start.s1.c1.0.4
 L clear.w05
 L clear.w06
 E standson.s0.w06
 G clears.s0.w06.start.s0.c2.2.4
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s1.c1.0.4 cost 0.18751480765960535
 start.s1.c1.0.4 most.s1.c1.0.4 -2
 start.s1.c1.0.4 least.s1.c1.0.4 -1
 start.s1.c1.0.4 leaves.b0.f0.w04.start.s1.c1.0.4 -1
 start.s1.c1.0.4 clears.s1.w04.start.s1.c1.0.4 -1
 plants.s1.c1.0.4 cost 0.12000000000000001
 plants.s1.c1.0.4 most.s1.c1.0.4 1
 plants.s1.c1.0.4 least.s1.c1.0.4 1
 plants.s1.c1.0.4 ground.s1.w04 0.06701101080693947
 plants.s1.c1.0.4 roots.s1.w04 8.521212074390732
 plants.s1.c1.0.4 tall.s1.w04 0.06701101080693947
 plants.s1.c1.0.4 support.s1.w04 0.2
 plants.s1.c1.0.4 back.s1.c1.0.4 1
 start.s0.c0.1.4 cost 0.29069878523674725
 start.s0.c0.1.4 most.s0.c0.1.4 -2
 start.s0.c0.1.4 least.s0.c0.1.4 -1
 start.s0.c0.1.4 leaves.b0.f0.w07.start.s0.c0.1.4 -1
 start.s0.c0.1.4 standson.s0.w04 1
 start.s0.c0.1.4 standson.s0.w06 1
 plants.s0.c0.1.4 cost 0.12000000000000001
 plants.s0.c0.1.4 most.s0.c0.1.4 1
 plants.s0.c0.1.4 least.s0.c0.1.4 1
 plants.s0.c0.1.4 total.g 1
 plants.s0.c0.1.4 ground.s0.w04 0.1169200154681039
 plants.s0.c0.1.4 roots.s0.w04 20.474722764803754
 plants.s0.c0.1.4 support.s0.w04 0.2
 plants.s0.c0.1.4 ground.s0.w05 0.1169200154681039
 plants.s0.c0.1.4 roots.s0.w05 20.474722764803754
 plants.s0.c0.1.4 support.s0.w05 0.2
 plants.s0.c0.1.4 ground.s0.w06 0.1169200154681039
 plants.s0.c0.1.4 roots.s0.w06 20.474722764803754
 plants.s0.c0.1.4 support.s0.w06 0.2
 plants.s0.c0.1.4 ground.s0.w07 0.1169200154681039
 plants.s0.c0.1.4 roots.s0.w07 20.474722764803754
 plants.s0.c0.1.4 support.s0.w07 0.2
 plants.s0.c0.1.4 back.s0.c0.1.4 1
 start.s0.c2.2.4 cost 0.2323825751521688
 start.s0.c2.2.4 most.s0.c2.2.4 -1
 start.s0.c2.2.4 least.s0.c2.2.4 -1
 start.s0.c2.2.4 leaves.b0.f0.w06.start.s0.c2.2.4 -1
 start.s0.c2.2.4 standson.s0.w04 1
 start.s0.c2.2.4 clears.s0.w06.start.s0.c2.2.4 -1
 plants.s0.c2.2.4 cost 0.12000000000000001
 plants.s0.c2.2.4 most.s0.c2.2.4 1
 plants.s0.c2.2.4 least.s0.c2.2.4 1
 plants.s0.c2.2.4 ground.s0.w04 0.2612387533211865
 plants.s0.c2.2.4 roots.s0.w04 23.839057988284786
 plants.s0.c2.2.4 support.s0.w04 0.2
 plants.s0.c2.2.4 ground.s0.w05 0.2612387533211865
 plants.s0.c2.2.4 roots.s0.w05 23.839057988284786
 plants.s0.c2.2.4 support.s0.w05 0.2
 plants.s0.c2.2.4 ground.s0.w06 0.2612387533211865
 plants.s0.c2.2.4 roots.s0.w06 23.839057988284786
 plants.s0.c2.2.4 support.s0.w06 0.2
 plants.s0.c2.2.4 tall.s0.w04 0.2612387533211865
 plants.s0.c2.2.4 tall.s0.w05 0.2612387533211865
 plants.s0.c2.2.4 tall.s0.w06 0.2612387533211865
 plants.s0.c2.2.4 picked.f0.w05 -0.024377090856432915
 plants.s0.c2.2.4 picked.f0.w06 -1.7922378778457642
 plants.s0.c2.2.4 back.s0.c2.2.4 1
 start.s1.c0.3.1 cost 0.054354294505813236
 start.s1.c0.3.1 most.s1.c0.3.1 -1
 start.s1.c0.3.1 least.s1.c0.3.1 -1
 start.s1.c0.3.1 leaves.b0.f0.w02.start.s1.c0.3.1 -1
 start.s1.c0.3.1 clears.s1.w02.start.s1.c0.3.1 -1
 plants.s1.c0.3.1 cost 0.12000000000000001
 plants.s1.c0.3.1 most.s1.c0.3.1 1
 plants.s1.c0.3.1 least.s1.c0.3.1 1
 plants.s1.c0.3.1 ground.s1.w01 0.30003810291381394
 plants.s1.c0.3.1 roots.s1.w01 8.843822631348655
 plants.s1.c0.3.1 ground.s1.w02 0.30003810291381394
 plants.s1.c0.3.1 roots.s1.w02 8.843822631348655
 plants.s1.c0.3.1 picked.f0.w01 -1.1739667654037476
 plants.s1.c0.3.1 picked.f0.w02 -0.3461534082889557
 start.s1.c2.4.3 cost 0.18256486095297259
 start.s1.c2.4.3 most.s1.c2.4.3 -3
 start.s1.c2.4.3 least.s1.c2.4.3 -2
 start.s1.c2.4.3 leaves.b0.f0.w07.start.s1.c2.4.3 -1
 start.s1.c2.4.3 standson.s1.w04 1
 plants.s1.c2.4.3 cost 0.12000000000000001
 plants.s1.c2.4.3 most.s1.c2.4.3 1
 plants.s1.c2.4.3 least.s1.c2.4.3 1
 plants.s1.c2.4.3 total.g 1
 plants.s1.c2.4.3 ground.s1.w04 0.18570046929463688
 plants.s1.c2.4.3 roots.s1.w04 14.470383870919118
 plants.s1.c2.4.3 ground.s1.w03 0.1380562311844203
 plants.s1.c2.4.3 roots.s1.w03 10.757790050822516
 plants.s1.c2.4.3 ground.s1.w05 0.18570046929463688
 plants.s1.c2.4.3 roots.s1.w05 14.470383870919118
 plants.s1.c2.4.3 ground.s1.w06 0.18570046929463688
 plants.s1.c2.4.3 roots.s1.w06 14.470383870919118
 plants.s1.c2.4.3 ground.s1.w07 0.18570046929463688
 plants.s1.c2.4.3 roots.s1.w07 14.470383870919118
 plants.s1.c2.4.3 shelf.w-1 1
 plants.s1.c2.4.3 shelf.w00 1
 plants.s1.c2.4.3 shelf.w01 1
 plants.s1.c2.4.3 shelf.w02 1
 start.s1.c2.5.6 cost 0.04357893794097157
 start.s1.c2.5.6 most.s1.c2.5.6 -2
 start.s1.c2.5.6 least.s1.c2.5.6 -2
 plants.s1.c2.5.6 cost -0.18
 plants.s1.c2.5.6 most.s1.c2.5.6 1
 plants.s1.c2.5.6 least.s1.c2.5.6 1
 plants.s1.c2.5.6 total.g 1
 plants.s1.c2.5.6 ground.s1.w06 0.3061872751919238
 plants.s1.c2.5.6 roots.s1.w06 6.326906308099472
 plants.s1.c2.5.6 ground.s1.w07 0.3061872751919238
 plants.s1.c2.5.6 roots.s1.w07 6.326906308099472
 plants.s1.c2.5.6 shelf.w05 1
 plants.s1.c2.5.6 picked.f0.w05 -0.2778592109680176
 plants.s1.c2.5.6 picked.f0.w06 -1.8629029989242554
 plants.s1.c2.5.6 picked.f0.w07 -1.2853131294250488
 pull.stay0.w00 cost 0.16049152043892317
 pull.stay0.w00 pulled.stay0 1
 pull.stay0.w00 picked.f0.w00 -0.6772066950798035
 pull.stay0.w00 clears.s0.w00.pull.stay0.w00 -1
 pull.stay0.w01 cost 0.16049152043892317
 pull.stay0.w01 pulled.stay0 1
 pull.stay0.w01 picked.f0.w00 -0.6772066950798035
 pull.stay0.w01 standson.s0.w00 1
 pull.stay0.w01 clears.s0.w01.pull.stay0.w01 -1
 pull.stay0.w02 cost 0.16049152043892317
 pull.stay0.w02 pulled.stay0 1
 pull.stay0.w02 picked.f0.w00 -0.6772066950798035
 pull.stay0.w02 standson.s0.w00 1
 pull.stay0.w02 standson.s0.w01 1
 pull.stay0.w02 clears.s0.w02.pull.stay0.w02 -1
 pull.stay0.w03 cost 0.16049152043892317
 pull.stay0.w03 pulled.stay0 1
 pull.stay0.w03 picked.f0.w00 -0.6772066950798035
 pull.stay0.w03 standson.s0.w00 1
 pull.stay0.w03 standson.s0.w01 1
 pull.stay0.w03 standson.s0.w02 1
 pull.stay0.w03 clears.s0.w03.pull.stay0.w03 -1
 pull.stay0.w04 cost -0.34834371614415727
 pull.stay0.w04 pulled.stay0 1
 pull.stay0.w04 ground.s0.w04 0.41056049860227456
 pull.stay0.w04 roots.s0.w04 35.05686451548616
 pull.stay0.w04 support.s0.w04 0.1
 pull.stay0.w04 picked.f0.w00 -0.6772066950798035
 pull.stay0.w04 standson.s0.w00 1
 pull.stay0.w04 standson.s0.w01 1
 pull.stay0.w04 standson.s0.w02 1
 pull.stay0.w04 standson.s0.w03 1
 pull.stay0.w04 clears.s0.w04.pull.stay0.w04 -1
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
 eaten.f0.w00 keeps.f0.w00 -1
 eat.f0.w00.1 cost -1.5033946175806658
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -1.215397400338349
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -0.9274001830960323
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
 eat.f0.w01.1 cost -1.4885095223570948
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -1.2033637627112366
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -0.9182180030653786
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
 eat.f0.w02.1 cost -1.4737718043139552
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -1.1914492700111252
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -0.9091267357082955
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
 eat.f0.w03.1 cost -1.459180004271243
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -1.1796527425852728
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -0.9001254808993027
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
 eat.f0.w04.1 cost -1.44473267749628
 eat.f0.w04.1 sum.f0.w04 -1
 eat.f0.w04.2 cost -1.167973012460666
 eat.f0.w04.2 sum.f0.w04 -1
 eat.f0.w04.3 cost -0.891213347425052
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
 eaten.f0.w05 keeps.f0.w05 -1
 eat.f0.w05.1 cost -1.4304283935606734
 eat.f0.w05.1 sum.f0.w05 -1
 eat.f0.w05.2 cost -1.1564089232283823
 eat.f0.w05.2 sum.f0.w05 -1
 eat.f0.w05.3 cost -0.8823894528960912
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
 eaten.f0.w06 keeps.f0.w06 -1
 eat.f0.w06.1 cost -1.4162657361986863
 eat.f0.w06.1 sum.f0.w06 -1
 eat.f0.w06.2 cost -1.144959329929091
 eat.f0.w06.2 sum.f0.w06 -1
 eat.f0.w06.3 cost -0.8736529236594961
 eat.f0.w06.3 sum.f0.w06 -1
 used.f0.w07 cost 0
 used.f0.w07 picked.f0.w07 1
 used.f0.w07 rises.f0.w07 1
 used.f0.w07 first.f0.w07 -1
 used.f0.w07 keeps.f0.w07 1
 eaten.f0.w07 cost 0
 eaten.f0.w07 sum.f0.w07 1
 eaten.f0.w07 first.f0.w07 1
 eaten.f0.w07 keeps.f0.w07 -1
 eat.f0.w07.1 cost -1.4022433031670165
 eat.f0.w07.1 sum.f0.w07 -1
 eat.f0.w07.2 cost -1.1336230989396945
 eat.f0.w07.2 sum.f0.w07 -1
 eat.f0.w07.3 cost -0.8650028947123726
 eat.f0.w07.3 sum.f0.w07 -1
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
 eat.f1.w00.1 cost -1.6114186559832935
 eat.f1.w00.1 sum.f1.w00 -1
 eat.f1.w00.2 cost -1.4286455215371956
 eat.f1.w00.2 sum.f1.w00 -1
 eat.f1.w00.3 cost -1.2458723870910975
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
 eat.f1.w01.1 cost -1.595464015825043
 eat.f1.w01.1 sum.f1.w01 -1
 eat.f1.w01.2 cost -1.414500516373461
 eat.f1.w01.2 sum.f1.w01 -1
 eat.f1.w01.3 cost -1.2335370169218787
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
 eat.f1.w02.1 cost -1.5796673424010326
 eat.f1.w02.1 sum.f1.w02 -1
 eat.f1.w02.2 cost -1.400495560765803
 eat.f1.w02.2 sum.f1.w02 -1
 eat.f1.w02.3 cost -1.2213237791305729
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
 eat.f1.w03.1 cost -1.5640270716841909
 eat.f1.w03.1 sum.f1.w03 -1
 eat.f1.w03.2 cost -1.3866292680849535
 eat.f1.w03.2 sum.f1.w03 -1
 eat.f1.w03.3 cost -1.2092314644857158
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
 eat.f1.w04.1 cost -1.5485416551328621
 eat.f1.w04.1 sum.f1.w04 -1
 eat.f1.w04.2 cost -1.3729002654306468
 eat.f1.w04.2 sum.f1.w04 -1
 eat.f1.w04.3 cost -1.1972588757284315
 eat.f1.w04.3 sum.f1.w04 -1
 used.f1.w05 cost 0
 used.f1.w05 picked.f1.w05 1
 used.f1.w05 rises.f1.w05 1
 used.f1.w05 first.f1.w05 -1
 used.f1.w05 picked.f1.w06 -1
 used.f1.w05 rises.f1.w06 -1
 used.f1.w05 keeps.f1.w05 1
 eaten.f1.w05 cost 0
 eaten.f1.w05 sum.f1.w05 1
 eaten.f1.w05 first.f1.w05 1
 eaten.f1.w05 sum.f1.w06 -1
 eaten.f1.w05 keeps.f1.w04 -1
 eat.f1.w05.1 cost -1.5332095595374875
 eat.f1.w05.1 sum.f1.w05 -1
 eat.f1.w05.2 cost -1.3593071934956902
 eat.f1.w05.2 sum.f1.w05 -1
 eat.f1.w05.3 cost -1.1854048274538926
 eat.f1.w05.3 sum.f1.w05 -1
 used.f1.w06 cost 0
 used.f1.w06 picked.f1.w06 1
 used.f1.w06 rises.f1.w06 1
 used.f1.w06 first.f1.w06 -1
 used.f1.w06 picked.f1.w07 -1
 used.f1.w06 rises.f1.w07 -1
 used.f1.w06 keeps.f1.w06 1
 eaten.f1.w06 cost 0
 eaten.f1.w06 sum.f1.w06 1
 eaten.f1.w06 first.f1.w06 1
 eaten.f1.w06 sum.f1.w07 -1
 eaten.f1.w06 keeps.f1.w05 -1
 eat.f1.w06.1 cost -1.5180292668687991
 eat.f1.w06.1 sum.f1.w06 -1
 eat.f1.w06.2 cost -1.345848706431376
 eat.f1.w06.2 sum.f1.w06 -1
 eat.f1.w06.3 cost -1.1736681459939529
 eat.f1.w06.3 sum.f1.w06 -1
 used.f1.w07 cost 0
 used.f1.w07 picked.f1.w07 1
 used.f1.w07 rises.f1.w07 1
 used.f1.w07 first.f1.w07 -1
 eaten.f1.w07 cost 0
 eaten.f1.w07 sum.f1.w07 1
 eaten.f1.w07 first.f1.w07 1
 eaten.f1.w07 keeps.f1.w06 -1
 eat.f1.w07.1 cost -1.5029992741275244
 eat.f1.w07.1 sum.f1.w07 -1
 eat.f1.w07.2 cost -1.3325234717142342
 eat.f1.w07.2 sum.f1.w07 -1
 eat.f1.w07.3 cost -1.1620476693009438
 eat.f1.w07.3 sum.f1.w07 -1
 left.b0.f0.w04 cost 0
 left.b0.f0.w04 leaves.b0.f0.w04.start.s1.c1.0.4 1
 left.b0.f0.w07 cost 0
 left.b0.f0.w07 leaves.b0.f0.w07.start.s0.c0.1.4 1
 left.b0.f0.w07 leaves.b0.f0.w07.start.s1.c2.4.3 1
 left.b0.f0.w06 cost 0
 left.b0.f0.w06 leaves.b0.f0.w06.start.s0.c2.2.4 1
 left.b0.f0.w02 cost 0
 left.b0.f0.w02 leaves.b0.f0.w02.start.s1.c0.3.1 1
 left.b0.f0.w02 soon.b0.f0.i2.w04.w02 -1
 left.b0.f0.w02 soon.b0.f0.i4.w04.w02 -1
 early.b0.f0.i2.w04 cost 0
 early.b0.f0.i2.w04 soon.b0.f0.i2.w04.w02 1
 early.b0.f0.i2.w04 back.s1.c1.0.4 2
 early.b0.f0.i2.w04 back.s0.c2.2.4 1
 pays.s1.c1.0.4 cost 0.5
 pays.s1.c1.0.4 back.s1.c1.0.4 -1
 early.b0.f0.i4.w04 cost 0
 early.b0.f0.i4.w04 soon.b0.f0.i4.w04.w02 1
 early.b0.f0.i4.w04 back.s0.c0.1.4 2
 pays.s0.c0.1.4 cost 0.5
 pays.s0.c0.1.4 back.s0.c0.1.4 -1
 pays.s0.c2.2.4 cost 0.5
 pays.s0.c2.2.4 back.s0.c2.2.4 -1
 rest.w-1 cost 0.3
 rest.w-1 clear.w-1 -1
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
 cleared.s0.w01 clears.s0.w01.pull.stay0.w01 1
 stands.s0.w01 cost 0
 stands.s0.w01 standson.s0.w01 -1
 stands.s0.w01 clears.s0.w01.pull.stay0.w01 1
 rest.w02 cost 0.3
 rest.w02 clear.w02 -1
 cleared.s0.w02 cost 0
 cleared.s0.w02 clear.w02 1
 cleared.s0.w02 clears.s0.w02.pull.stay0.w02 1
 stands.s0.w02 cost 0
 stands.s0.w02 standson.s0.w02 -1
 stands.s0.w02 clears.s0.w02.pull.stay0.w02 1
 cleared.s1.w02 cost 0
 cleared.s1.w02 clear.w02 1
 cleared.s1.w02 clears.s1.w02.start.s1.c0.3.1 1
 stands.s1.w02 cost 0
 stands.s1.w02 standson.s1.w02 -1
 stands.s1.w02 clears.s1.w02.start.s1.c0.3.1 1
 rest.w03 cost 0.3
 rest.w03 clear.w03 -1
 cleared.s0.w03 cost 0
 cleared.s0.w03 clear.w03 1
 cleared.s0.w03 clears.s0.w03.pull.stay0.w03 1
 stands.s0.w03 cost 0
 stands.s0.w03 standson.s0.w03 -1
 stands.s0.w03 clears.s0.w03.pull.stay0.w03 1
 rest.w04 cost 0.3
 rest.w04 clear.w04 -1
 cleared.s0.w04 cost 0
 cleared.s0.w04 clear.w04 1
 cleared.s0.w04 clears.s0.w04.pull.stay0.w04 1
 stands.s0.w04 cost 0
 stands.s0.w04 standson.s0.w04 -1
 stands.s0.w04 clears.s0.w04.pull.stay0.w04 1
 cleared.s1.w04 cost 0
 cleared.s1.w04 clear.w04 1
 cleared.s1.w04 clears.s1.w04.start.s1.c1.0.4 1
 stands.s1.w04 cost 0
 stands.s1.w04 standson.s1.w04 -1
 stands.s1.w04 clears.s1.w04.start.s1.c1.0.4 1
 rest.w05 cost 0.3
 rest.w05 clear.w05 -1
 rest.w06 cost 0.3
 rest.w06 clear.w06 -1
 cleared.s0.w06 cost 0
 cleared.s0.w06 clear.w06 1
 cleared.s0.w06 clears.s0.w06.start.s0.c2.2.4 1
 stands.s0.w06 cost 0
 stands.s0.w06 standson.s0.w06 -1
 stands.s0.w06 clears.s0.w06.start.s0.c2.2.4 1
RHS
 RHS pulled.stay0 1
 RHS total.g 3
 RHS ground.s1.w04 1.2886647114246337
 RHS roots.s1.w04 128.8294856017296
 RHS tall.s1.w04 0.14419491648906477
 RHS support.s1.w04 0.6286854717184781
 RHS ground.s0.w04 1.0321946085194307
 RHS roots.s0.w04 160.08408575528398
 RHS support.s0.w04 0.4072915687214255
 RHS ground.s0.w05 1.0321946085194307
 RHS roots.s0.w05 160.08408575528398
 RHS support.s0.w05 0.4072915687214255
 RHS ground.s0.w06 1.0321946085194307
 RHS roots.s0.w06 160.08408575528398
 RHS support.s0.w06 0.4072915687214255
 RHS ground.s0.w07 1.0321946085194307
 RHS roots.s0.w07 160.08408575528398
 RHS support.s0.w07 0.4072915687214255
 RHS tall.s0.w04 0.5577017389613886
 RHS tall.s0.w05 0.5577017389613886
 RHS tall.s0.w06 0.5577017389613886
 RHS ground.s1.w01 1.2886647114246337
 RHS roots.s1.w01 128.8294856017296
 RHS ground.s1.w02 1.2886647114246337
 RHS roots.s1.w02 128.8294856017296
 RHS ground.s1.w03 1.2886647114246337
 RHS roots.s1.w03 128.8294856017296
 RHS ground.s1.w05 1.2886647114246337
 RHS roots.s1.w05 128.8294856017296
 RHS ground.s1.w06 1.2886647114246337
 RHS roots.s1.w06 128.8294856017296
 RHS ground.s1.w07 1.2886647114246337
 RHS roots.s1.w07 128.8294856017296
 RHS shelf.w-1 4.000001
 RHS shelf.w00 3.000001
 RHS shelf.w01 4.000001
 RHS shelf.w02 4.000001
 RHS shelf.w05 5.000001
 RHS back.s1.c1.0.4 2
 RHS back.s0.c0.1.4 2
 RHS back.s0.c2.2.4 1
 RHS clear.w-1 1
 RHS clear.w00 1
 RHS clear.w01 1
 RHS clear.w02 1
 RHS clear.w03 1
 RHS clear.w04 1
 RHS clear.w05 1
 RHS clear.w06 1
BOUNDS
 UP BND start.s1.c1.0.4 1
 UP BND plants.s1.c1.0.4 2
 UP BND start.s0.c0.1.4 1
 UP BND plants.s0.c0.1.4 2
 UP BND start.s0.c2.2.4 1
 UP BND plants.s0.c2.2.4 1
 UP BND start.s1.c0.3.1 1
 UP BND plants.s1.c0.3.1 1
 UP BND start.s1.c2.4.3 1
 UP BND plants.s1.c2.4.3 3
 UP BND start.s1.c2.5.6 1
 UP BND plants.s1.c2.5.6 2
 UP BND pull.stay0.w00 1
 UP BND pull.stay0.w01 1
 UP BND pull.stay0.w02 1
 UP BND pull.stay0.w03 1
 UP BND pull.stay0.w04 1
 UP BND eat.f0.w00.1 0.27216795503240304
 UP BND eat.f0.w00.2 0.27216795503240304
 UP BND eat.f0.w00.3 0.5443359100648061
 UP BND eat.f0.w01.1 0.5544701607248484
 UP BND eat.f0.w01.2 0.5544701607248484
 UP BND eat.f0.w01.3 1.108940321449697
 UP BND eat.f0.w02.1 1.380791847884503
 UP BND eat.f0.w02.2 1.380791847884503
 UP BND eat.f0.w02.3 2.761583695769006
 UP BND eat.f0.w03.1 1.2090409162056652
 UP BND eat.f0.w03.2 1.2090409162056652
 UP BND eat.f0.w03.3 2.4180818324113305
 UP BND eat.f0.w04.1 1.3296139488879397
 UP BND eat.f0.w04.2 1.3296139488879397
 UP BND eat.f0.w04.3 2.6592278977758794
 UP BND eat.f0.w05.1 0.2544613036900834
 UP BND eat.f0.w05.2 0.2544613036900834
 UP BND eat.f0.w05.3 0.5089226073801668
 UP BND eat.f0.w06.1 0.06807436816242007
 UP BND eat.f0.w06.2 0.06807436816242007
 UP BND eat.f0.w06.3 0.13614873632484015
 UP BND eat.f0.w07.1 0.6575445234624235
 UP BND eat.f0.w07.2 0.6575445234624235
 UP BND eat.f0.w07.3 1.315089046924847
 UP BND eat.f1.w00.1 0.8903610725105393
 UP BND eat.f1.w00.2 0.8903610725105393
 UP BND eat.f1.w00.3 1.7807221450210786
 UP BND eat.f1.w01.1 0.86673064031343
 UP BND eat.f1.w01.2 0.86673064031343
 UP BND eat.f1.w01.3 1.73346128062686
 UP BND eat.f1.w02.1 0.4946937708531453
 UP BND eat.f1.w02.2 0.4946937708531453
 UP BND eat.f1.w02.3 0.9893875417062906
 UP BND eat.f1.w03.1 0.7825567386675738
 UP BND eat.f1.w03.2 0.7825567386675738
 UP BND eat.f1.w03.3 1.5651134773351476
 UP BND eat.f1.w04.1 1.0012403206518272
 UP BND eat.f1.w04.2 1.0012403206518272
 UP BND eat.f1.w04.3 2.0024806413036544
 UP BND eat.f1.w05.1 0.3519056751358218
 UP BND eat.f1.w05.2 0.3519056751358218
 UP BND eat.f1.w05.3 0.7038113502716437
 UP BND eat.f1.w06.1 1.377333303793374
 UP BND eat.f1.w06.2 1.377333303793374
 UP BND eat.f1.w06.3 2.754666607586748
 UP BND eat.f1.w07.1 0.31225851965937573
 UP BND eat.f1.w07.2 0.31225851965937573
 UP BND eat.f1.w07.3 0.6245170393187515
 UP BND left.b0.f0.w04 1
 UP BND left.b0.f0.w07 1
 UP BND left.b0.f0.w06 1
 UP BND left.b0.f0.w02 1
 UP BND early.b0.f0.i2.w04 1
 UP BND early.b0.f0.i4.w04 1
 UP BND cleared.s0.w00 1
 UP BND cleared.s0.w01 1
 UP BND cleared.s0.w02 1
 UP BND cleared.s1.w02 1
 UP BND cleared.s0.w03 1
 UP BND cleared.s0.w04 1
 UP BND cleared.s1.w04 1
 UP BND cleared.s0.w06 1
ENDATA
