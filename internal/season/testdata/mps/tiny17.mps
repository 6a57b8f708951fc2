NAME season
ROWS
 N cost
 L most.s0.c1.1.1
 G least.s0.c1.1.1
 L few.s0.c1.1.1
 L all.s0.c1.1.1
 L most.s0.c0.2.0
 G least.s0.c0.2.0
 L most.s0.c2.3.1
 G least.s0.c2.3.1
 L most.s0.c0.4.0
 G least.s0.c0.4.0
 L few.s0.c0.4.0
 L all.s0.c0.4.0
 L most.s0.c1.5.2
 G least.s0.c1.5.2
 E pulled.stay0
 L total.g
 L ground.s0.w01
 L roots.s0.w01
 L ground.s0.w02
 L roots.s0.w02
 L ground.s0.w03
 L roots.s0.w03
 L ground.s0.w00
 L roots.s0.w00
 L tall.s0.w01
 L tall.s0.w02
 L tall.s0.w03
 L shelf.w-1
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
 L keeps.f1.w03
 L keeps.f1.w04
 G leaves.b0.f0.w03.start.s0.c0.2.0
 G leaves.b0.f0.w03.start.s0.c0.4.0
 G leaves.b0.f0.w03.start.s0.c1.5.2
 G leaves.b0.f0.w-1.pull.stay0.before
 G leaves.b0.f0.w00.pull.stay0.w00
 G leaves.b0.f0.w01.pull.stay0.w01
 G soon.b0.f0.i1.w00.w-1
 L back.s0.c0.2.0
 G soon.b0.f0.i3.w00.w-1
 L back.s0.c0.4.0
 L clear.w-1
 E standson.s0.w-1
 G clears.s0.w-1.pull.stay0.before
 L clear.w00
 E standson.s0.w00
 G clears.s0.w00.pull.stay0.w00
 L clear.w01
 E standson.s0.w01
 G clears.s0.w01.pull.stay0.w01
 L clear.w02
 L clear.w03
 E standson.s0.w03
 G clears.s0.w03.start.s0.c1.1.1
 G clears.s0.w03.start.s0.c0.2.0
 G clears.s0.w03.start.s0.c2.3.1
 G clears.s0.w03.start.s0.c0.4.0
 G clears.s0.w03.start.s0.c1.5.2
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s0.c1.1.1 cost 0.23305412376662107
 start.s0.c1.1.1 most.s0.c1.1.1 -2
 start.s0.c1.1.1 least.s0.c1.1.1 -1
 start.s0.c1.1.1 standson.s0.w01 1
 start.s0.c1.1.1 clears.s0.w03.start.s0.c1.1.1 -1
 plants.s0.c1.1.1 cost 0.1
 plants.s0.c1.1.1 most.s0.c1.1.1 1
 plants.s0.c1.1.1 least.s0.c1.1.1 1
 plants.s0.c1.1.1 few.s0.c1.1.1 1
 plants.s0.c1.1.1 ground.s0.w01 0.28556581784303026
 plants.s0.c1.1.1 roots.s0.w01 19.670679500696156
 plants.s0.c1.1.1 ground.s0.w02 0.28556581784303026
 plants.s0.c1.1.1 roots.s0.w02 19.670679500696156
 plants.s0.c1.1.1 ground.s0.w03 0.28556581784303026
 plants.s0.c1.1.1 roots.s0.w03 19.670679500696156
 plants.s0.c1.1.1 picked.f0.w01 -0.17453770339488983
 M MARKER 'MARKER' 'INTEND'
 lost.s0.c1.1.1 cost 0.02
 lost.s0.c1.1.1 few.s0.c1.1.1 -1
 lost.s0.c1.1.1 all.s0.c1.1.1 -1
 M MARKER 'MARKER' 'INTORG'
 many.s0.c1.1.1 cost 0
 many.s0.c1.1.1 few.s0.c1.1.1 -1
 many.s0.c1.1.1 all.s0.c1.1.1 1
 start.s0.c0.2.0 cost 0.26450918084755537
 start.s0.c0.2.0 most.s0.c0.2.0 -2
 start.s0.c0.2.0 least.s0.c0.2.0 -2
 start.s0.c0.2.0 leaves.b0.f0.w03.start.s0.c0.2.0 -1
 start.s0.c0.2.0 standson.s0.w00 1
 start.s0.c0.2.0 standson.s0.w01 1
 start.s0.c0.2.0 clears.s0.w03.start.s0.c0.2.0 -1
 plants.s0.c0.2.0 cost -0.18
 plants.s0.c0.2.0 most.s0.c0.2.0 1
 plants.s0.c0.2.0 least.s0.c0.2.0 1
 plants.s0.c0.2.0 total.g 1
 plants.s0.c0.2.0 ground.s0.w01 0.1756068321846109
 plants.s0.c0.2.0 roots.s0.w01 12.107730354690458
 plants.s0.c0.2.0 ground.s0.w02 0.146505543906094
 plants.s0.c0.2.0 roots.s0.w02 10.101256306573813
 plants.s0.c0.2.0 ground.s0.w03 0.146505543906094
 plants.s0.c0.2.0 roots.s0.w03 10.101256306573813
 plants.s0.c0.2.0 ground.s0.w00 0.06507801947802624
 plants.s0.c0.2.0 roots.s0.w00 4.48699576237949
 plants.s0.c0.2.0 tall.s0.w01 0.1756068321846109
 plants.s0.c0.2.0 tall.s0.w02 0.146505543906094
 plants.s0.c0.2.0 tall.s0.w03 0.146505543906094
 plants.s0.c0.2.0 picked.f0.w00 -1.175429344177246
 plants.s0.c0.2.0 back.s0.c0.2.0 1
 start.s0.c2.3.1 cost 0.08229406264865785
 start.s0.c2.3.1 most.s0.c2.3.1 -1
 start.s0.c2.3.1 least.s0.c2.3.1 -1
 start.s0.c2.3.1 standson.s0.w01 1
 start.s0.c2.3.1 clears.s0.w03.start.s0.c2.3.1 -1
 plants.s0.c2.3.1 cost 0.12000000000000001
 plants.s0.c2.3.1 most.s0.c2.3.1 1
 plants.s0.c2.3.1 least.s0.c2.3.1 1
 plants.s0.c2.3.1 ground.s0.w01 0.12730569635888836
 plants.s0.c2.3.1 roots.s0.w01 7.025678977581428
 plants.s0.c2.3.1 ground.s0.w02 0.12730569635888836
 plants.s0.c2.3.1 roots.s0.w02 7.025678977581428
 plants.s0.c2.3.1 ground.s0.w03 0.12730569635888836
 plants.s0.c2.3.1 roots.s0.w03 7.025678977581428
 plants.s0.c2.3.1 tall.s0.w02 0.12730569635888836
 plants.s0.c2.3.1 tall.s0.w03 0.12730569635888836
 plants.s0.c2.3.1 picked.f1.w00 -1.605389952659607
 plants.s0.c2.3.1 picked.f1.w01 -0.29736584424972534
 plants.s0.c2.3.1 picked.f1.w02 -1.7500635385513306
 start.s0.c0.4.0 cost 0.06380251863564627
 start.s0.c0.4.0 most.s0.c0.4.0 -2
 start.s0.c0.4.0 least.s0.c0.4.0 -2
 start.s0.c0.4.0 leaves.b0.f0.w03.start.s0.c0.4.0 -1
 start.s0.c0.4.0 standson.s0.w00 1
 start.s0.c0.4.0 standson.s0.w01 1
 start.s0.c0.4.0 clears.s0.w03.start.s0.c0.4.0 -1
 plants.s0.c0.4.0 cost 0.1
 plants.s0.c0.4.0 most.s0.c0.4.0 1
 plants.s0.c0.4.0 least.s0.c0.4.0 1
 plants.s0.c0.4.0 few.s0.c0.4.0 1
 plants.s0.c0.4.0 ground.s0.w01 0.214798274988532
 plants.s0.c0.4.0 roots.s0.w01 7.18911053683745
 plants.s0.c0.4.0 ground.s0.w02 0.23496674886808971
 plants.s0.c0.4.0 roots.s0.w02 7.864131730965758
 plants.s0.c0.4.0 ground.s0.w03 0.1919791277307428
 plants.s0.c0.4.0 roots.s0.w03 6.425373621346038
 plants.s0.c0.4.0 ground.s0.w00 0.2296771165979295
 plants.s0.c0.4.0 roots.s0.w00 7.687092361858
 plants.s0.c0.4.0 shelf.w-1 1
 M MARKER 'MARKER' 'INTEND'
 lost.s0.c0.4.0 cost 0.02
 lost.s0.c0.4.0 few.s0.c0.4.0 -1
 lost.s0.c0.4.0 all.s0.c0.4.0 -1
 lost.s0.c0.4.0 back.s0.c0.4.0 1
 M MARKER 'MARKER' 'INTORG'
 many.s0.c0.4.0 cost 0
 many.s0.c0.4.0 few.s0.c0.4.0 -1
 many.s0.c0.4.0 all.s0.c0.4.0 1
 start.s0.c1.5.2 cost 0.179617489458485
 start.s0.c1.5.2 most.s0.c1.5.2 -2
 start.s0.c1.5.2 least.s0.c1.5.2 -1
 start.s0.c1.5.2 leaves.b0.f0.w03.start.s0.c1.5.2 -1
 start.s0.c1.5.2 clears.s0.w03.start.s0.c1.5.2 -1
 plants.s0.c1.5.2 cost 0.12000000000000001
 plants.s0.c1.5.2 most.s0.c1.5.2 1
 plants.s0.c1.5.2 least.s0.c1.5.2 1
 plants.s0.c1.5.2 ground.s0.w02 0.2195411127519612
 plants.s0.c1.5.2 roots.s0.w02 3.046638345290367
 plants.s0.c1.5.2 ground.s0.w03 0.2195411127519612
 plants.s0.c1.5.2 roots.s0.w03 3.046638345290367
 pull.stay0.before cost 0.1655252460265476
 pull.stay0.before pulled.stay0 1
 pull.stay0.before leaves.b0.f0.w-1.pull.stay0.before -1
 pull.stay0.before clears.s0.w-1.pull.stay0.before -1
 pull.stay0.w00 cost 0.1655252460265476
 pull.stay0.w00 pulled.stay0 1
 pull.stay0.w00 ground.s0.w00 0.08798596616805389
 pull.stay0.w00 roots.s0.w00 4.184185161391305
 pull.stay0.w00 leaves.b0.f0.w00.pull.stay0.w00 -1
 pull.stay0.w00 standson.s0.w-1 1
 pull.stay0.w00 clears.s0.w00.pull.stay0.w00 -1
 pull.stay0.w01 cost -0.3579784196701427
 pull.stay0.w01 pulled.stay0 1
 pull.stay0.w01 ground.s0.w01 0.4558943897269644
 pull.stay0.w01 roots.s0.w01 21.6801226801747
 pull.stay0.w01 ground.s0.w00 0.08798596616805389
 pull.stay0.w01 roots.s0.w00 4.184185161391305
 pull.stay0.w01 leaves.b0.f0.w01.pull.stay0.w01 -1
 pull.stay0.w01 standson.s0.w-1 1
 pull.stay0.w01 standson.s0.w00 1
 pull.stay0.w01 clears.s0.w01.pull.stay0.w01 -1
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
 eat.f0.w00.1 cost -1.075155166720643
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -1.0671051457118899
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -1.0590551247031368
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
 eat.f0.w01.1 cost -1.075155166720643
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -1.0671051457118899
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -1.0590551247031368
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
 eat.f0.w02.1 cost -1.075155166720643
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -1.0671051457118899
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -1.0590551247031368
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
 eat.f0.w03.1 cost -1.075155166720643
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -1.0671051457118899
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -1.0590551247031368
 eat.f0.w03.3 sum.f0.w03 -1
 used.f0.w04 cost 0
 used.f0.w04 picked.f0.w04 1
 used.f0.w04 rises.f0.w04 1
 used.f0.w04 first.f0.w04 -1
 eaten.f0.w04 cost 0
 eaten.f0.w04 sum.f0.w04 1
 eaten.f0.w04 first.f0.w04 1
 eaten.f0.w04 keeps.f0.w03 -1
 eat.f0.w04.1 cost -1.075155166720643
 eat.f0.w04.1 sum.f0.w04 -1
 eat.f0.w04.2 cost -1.0671051457118899
 eat.f0.w04.2 sum.f0.w04 -1
 eat.f0.w04.3 cost -1.0590551247031368
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
 eaten.f1.w00 keeps.f1.w00 -1
 eat.f1.w00.1 cost -1.0636928218638737
 eat.f1.w00.1 sum.f1.w00 -1
 eat.f1.w00.2 cost -0.8344988463883942
 eat.f1.w00.2 sum.f1.w00 -1
 eat.f1.w00.3 cost -0.6053048709129147
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
 eaten.f1.w01 keeps.f1.w01 -1
 eat.f1.w01.1 cost -1.0636928218638737
 eat.f1.w01.1 sum.f1.w01 -1
 eat.f1.w01.2 cost -0.8344988463883942
 eat.f1.w01.2 sum.f1.w01 -1
 eat.f1.w01.3 cost -0.6053048709129147
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
 eaten.f1.w02 keeps.f1.w02 -1
 eat.f1.w02.1 cost -1.0636928218638737
 eat.f1.w02.1 sum.f1.w02 -1
 eat.f1.w02.2 cost -0.8344988463883942
 eat.f1.w02.2 sum.f1.w02 -1
 eat.f1.w02.3 cost -0.6053048709129147
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
 eaten.f1.w03 keeps.f1.w03 -1
 eat.f1.w03.1 cost -1.0636928218638737
 eat.f1.w03.1 sum.f1.w03 -1
 eat.f1.w03.2 cost -0.8344988463883942
 eat.f1.w03.2 sum.f1.w03 -1
 eat.f1.w03.3 cost -0.6053048709129147
 eat.f1.w03.3 sum.f1.w03 -1
 used.f1.w04 cost 0
 used.f1.w04 picked.f1.w04 1
 used.f1.w04 rises.f1.w04 1
 used.f1.w04 first.f1.w04 -1
 used.f1.w04 keeps.f1.w04 1
 eaten.f1.w04 cost 0
 eaten.f1.w04 sum.f1.w04 1
 eaten.f1.w04 first.f1.w04 1
 eaten.f1.w04 keeps.f1.w04 -1
 eat.f1.w04.1 cost -1.0636928218638737
 eat.f1.w04.1 sum.f1.w04 -1
 eat.f1.w04.2 cost -0.8344988463883942
 eat.f1.w04.2 sum.f1.w04 -1
 eat.f1.w04.3 cost -0.6053048709129147
 eat.f1.w04.3 sum.f1.w04 -1
 left.b0.f0.w03 cost 0
 left.b0.f0.w03 leaves.b0.f0.w03.start.s0.c0.2.0 1
 left.b0.f0.w03 leaves.b0.f0.w03.start.s0.c0.4.0 1
 left.b0.f0.w03 leaves.b0.f0.w03.start.s0.c1.5.2 1
 left.b0.f0.w-1 cost 0
 left.b0.f0.w-1 leaves.b0.f0.w-1.pull.stay0.before 1
 left.b0.f0.w-1 soon.b0.f0.i1.w00.w-1 -1
 left.b0.f0.w-1 soon.b0.f0.i3.w00.w-1 -1
 left.b0.f0.w00 cost 0
 left.b0.f0.w00 leaves.b0.f0.w00.pull.stay0.w00 1
 left.b0.f0.w01 cost 0
 left.b0.f0.w01 leaves.b0.f0.w01.pull.stay0.w01 1
 early.b0.f0.i1.w00 cost 0
 early.b0.f0.i1.w00 soon.b0.f0.i1.w00.w-1 1
 early.b0.f0.i1.w00 back.s0.c0.2.0 2
 pays.s0.c0.2.0 cost 0.5
 pays.s0.c0.2.0 back.s0.c0.2.0 -1
 early.b0.f0.i3.w00 cost 0
 early.b0.f0.i3.w00 soon.b0.f0.i3.w00.w-1 1
 early.b0.f0.i3.w00 back.s0.c0.4.0 1
 pays.s0.c0.4.0 cost 0.5
 pays.s0.c0.4.0 back.s0.c0.4.0 -1
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
 cleared.s0.w01 cost 0
 cleared.s0.w01 clear.w01 1
 cleared.s0.w01 clears.s0.w01.pull.stay0.w01 1
 stands.s0.w01 cost 0
 stands.s0.w01 standson.s0.w01 -1
 stands.s0.w01 clears.s0.w01.pull.stay0.w01 1
 rest.w02 cost 0.5
 rest.w02 clear.w02 -1
 rest.w03 cost 0.5
 rest.w03 clear.w03 -1
 cleared.s0.w03 cost 0
 cleared.s0.w03 clear.w03 1
 cleared.s0.w03 clears.s0.w03.start.s0.c1.1.1 1
 cleared.s0.w03 clears.s0.w03.start.s0.c0.2.0 1
 cleared.s0.w03 clears.s0.w03.start.s0.c2.3.1 1
 cleared.s0.w03 clears.s0.w03.start.s0.c0.4.0 1
 cleared.s0.w03 clears.s0.w03.start.s0.c1.5.2 1
 stands.s0.w03 cost 0
 stands.s0.w03 standson.s0.w03 -1
 stands.s0.w03 clears.s0.w03.start.s0.c1.1.1 1
 stands.s0.w03 clears.s0.w03.start.s0.c0.2.0 1
 stands.s0.w03 clears.s0.w03.start.s0.c2.3.1 1
 stands.s0.w03 clears.s0.w03.start.s0.c0.4.0 1
 stands.s0.w03 clears.s0.w03.start.s0.c1.5.2 1
RHS
 RHS pulled.stay0 1
 RHS total.g 2
 RHS ground.s0.w01 0.6252328613431529
 RHS roots.s0.w01 168.04583654370114
 RHS ground.s0.w02 0.6252328613431529
 RHS roots.s0.w02 168.04583654370114
 RHS ground.s0.w03 0.6252328613431529
 RHS roots.s0.w03 168.04583654370114
 RHS ground.s0.w00 0.6252328613431529
 RHS roots.s0.w00 168.04583654370114
 RHS tall.s0.w01 0.9233336526032843
 RHS tall.s0.w02 0.9233336526032843
 RHS tall.s0.w03 0.9233336526032843
 RHS shelf.w-1 4.000001
 RHS back.s0.c0.2.0 2
 RHS back.s0.c0.4.0 1
 RHS clear.w-1 1
 RHS clear.w00 1
 RHS clear.w01 1
 RHS clear.w02 1
 RHS clear.w03 1
BOUNDS
 UP BND start.s0.c1.1.1 1
 UP BND plants.s0.c1.1.1 2
 UP BND many.s0.c1.1.1 1
 UP BND start.s0.c0.2.0 1
 UP BND plants.s0.c0.2.0 2
 UP BND start.s0.c2.3.1 1
 UP BND plants.s0.c2.3.1 1
 UP BND start.s0.c0.4.0 1
 UP BND plants.s0.c0.4.0 2
 UP BND many.s0.c0.4.0 1
 UP BND start.s0.c1.5.2 1
 UP BND plants.s0.c1.5.2 2
 UP BND pull.stay0.before 1
 UP BND pull.stay0.w00 1
 UP BND pull.stay0.w01 1
 UP BND eat.f0.w00.1 0.8250140273575796
 UP BND eat.f0.w00.2 0.8250140273575796
 UP BND eat.f0.w00.3 1.6500280547151591
 UP BND eat.f0.w01.1 0.5316603682249279
 UP BND eat.f0.w01.2 0.5316603682249279
 UP BND eat.f0.w01.3 1.0633207364498558
 UP BND eat.f0.w02.1 0.8635465298925931
 UP BND eat.f0.w02.2 0.8635465298925931
 UP BND eat.f0.w02.3 1.7270930597851861
 UP BND eat.f0.w03.1 1.2901335538048653
 UP BND eat.f0.w03.2 1.2901335538048653
 UP BND eat.f0.w03.3 2.5802671076097305
 UP BND eat.f0.w04.1 0.8809343816088724
 UP BND eat.f0.w04.2 0.8809343816088724
 UP BND eat.f0.w04.3 1.7618687632177448
 UP BND eat.f1.w00.1 0.7430743711261413
 UP BND eat.f1.w00.2 0.7430743711261413
 UP BND eat.f1.w00.3 1.4861487422522826
 UP BND eat.f1.w01.1 1.184080243884635
 UP BND eat.f1.w01.2 1.184080243884635
 UP BND eat.f1.w01.3 2.36816048776927
 UP BND eat.f1.w02.1 1.0025151945358783
 UP BND eat.f1.w02.2 1.0025151945358783
 UP BND eat.f1.w02.3 2.0050303890717567
 UP BND eat.f1.w03.1 0.010962672586534605
 UP BND eat.f1.w03.2 0.010962672586534605
 UP BND eat.f1.w03.3 0.02192534517306921
 UP BND eat.f1.w04.1 1.3969149488585775
 UP BND eat.f1.w04.2 1.3969149488585775
 UP BND eat.f1.w04.3 2.793829897717155
 UP BND left.b0.f0.w03 1
 UP BND left.b0.f0.w-1 1
 UP BND left.b0.f0.w00 1
 UP BND left.b0.f0.w01 1
 UP BND early.b0.f0.i1.w00 1
 UP BND early.b0.f0.i3.w00 1
 UP BND cleared.s0.w-1 1
 UP BND cleared.s0.w00 1
 UP BND cleared.s0.w01 1
 UP BND cleared.s0.w03 1
ENDATA
