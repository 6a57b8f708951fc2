NAME season
ROWS
 N cost
 L most.s0.c2.0.1
 G least.s0.c2.0.1
 L most.s0.c0.1.3
 G least.s0.c0.1.3
 L most.s1.c1.2.2
 G least.s1.c1.2.2
 L most.s0.c2.3.2
 G least.s0.c2.3.2
 E pulled.stay0
 E pulled.stay1
 L minutes.w00
 L minutes.w01
 L minutes.w02
 L minutes.w03
 L minutes.w04
 L ground.s0.w01
 L roots.s0.w01
 L tall.s0.w01
 L ground.s0.w02
 L roots.s0.w02
 L tall.s0.w02
 L ground.s0.w03
 L roots.s0.w03
 L tall.s0.w03
 L ground.s1.w03
 L roots.s1.w03
 L ground.s1.w02
 L roots.s1.w02
 L tall.s1.w02
 L support.s1.w02
 L tall.s1.w03
 L support.s1.w03
 L shelf.w-1
 L shelf.w00
 L shelf.w01
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
 L keeps.f1.w03
 G leaves.b0.f1.w03.start.s0.c2.0.1
 G leaves.b0.f0.w00.pull.stay0.w00
 G leaves.b0.f0.w01.pull.stay0.w01
 G leaves.b0.f0.w02.pull.stay0.w02
 G leaves.b0.f0.w03.pull.stay0.w03
 L clear.w-1
 E standson.s1.w-1
 G clears.s1.w-1.pull.stay1.before
 L clear.w00
 E standson.s0.w00
 G clears.s0.w00.pull.stay0.w00
 E standson.s1.w00
 G clears.s1.w00.pull.stay1.w00
 L clear.w01
 E standson.s0.w01
 G clears.s0.w01.pull.stay0.w01
 E standson.s1.w01
 G clears.s1.w01.pull.stay1.w01
 L clear.w02
 E standson.s0.w02
 G clears.s0.w02.pull.stay0.w02
 E standson.s1.w02
 G clears.s1.w02.pull.stay1.w02
 L clear.w03
 E standson.s0.w03
 G clears.s0.w03.start.s0.c2.0.1
 G clears.s0.w03.start.s1.c1.2.2
 G clears.s0.w03.pull.stay0.w03
 E standson.s1.w03
 G clears.s1.w03.start.s0.c0.1.3
 G clears.s1.w03.start.s0.c2.3.2
 G clears.s1.w03.pull.stay1.w03
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s0.c2.0.1 cost 0.11700391976049425
 start.s0.c2.0.1 most.s0.c2.0.1 -1
 start.s0.c2.0.1 least.s0.c2.0.1 -1
 start.s0.c2.0.1 minutes.w01 5
 start.s0.c2.0.1 leaves.b0.f1.w03.start.s0.c2.0.1 -1
 start.s0.c2.0.1 standson.s0.w01 1
 start.s0.c2.0.1 standson.s0.w02 1
 start.s0.c2.0.1 clears.s0.w03.start.s0.c2.0.1 -1
 plants.s0.c2.0.1 cost 0.62
 plants.s0.c2.0.1 most.s0.c2.0.1 1
 plants.s0.c2.0.1 least.s0.c2.0.1 1
 plants.s0.c2.0.1 minutes.w01 2.2680796903826477
 plants.s0.c2.0.1 minutes.w02 1.0036109052983666
 plants.s0.c2.0.1 minutes.w03 2.1327204298940052
 plants.s0.c2.0.1 minutes.w04 0.0393611704176795
 plants.s0.c2.0.1 ground.s0.w01 0.08143560828918758
 plants.s0.c2.0.1 roots.s0.w01 6.299206208356686
 plants.s0.c2.0.1 tall.s0.w01 0.08143560828918758
 plants.s0.c2.0.1 ground.s0.w02 0.17183464817451494
 plants.s0.c2.0.1 roots.s0.w02 13.291751671429553
 plants.s0.c2.0.1 tall.s0.w02 0.17183464817451494
 plants.s0.c2.0.1 ground.s0.w03 0.27433207536629745
 plants.s0.c2.0.1 roots.s0.w03 21.22013144621155
 plants.s0.c2.0.1 tall.s0.w03 0.27433207536629745
 plants.s0.c2.0.1 picked.f0.w02 -1.4288519620895386
 plants.s0.c2.0.1 picked.f0.w03 -0.5268892049789429
 plants.s0.c2.0.1 picked.f0.w04 -0.15320493280887604
 start.s0.c0.1.3 cost 0.03577581966560601
 start.s0.c0.1.3 most.s0.c0.1.3 -1
 start.s0.c0.1.3 least.s0.c0.1.3 -1
 start.s0.c0.1.3 minutes.w03 5
 start.s0.c0.1.3 clears.s1.w03.start.s0.c0.1.3 -1
 plants.s0.c0.1.3 cost -0.18
 plants.s0.c0.1.3 most.s0.c0.1.3 1
 plants.s0.c0.1.3 least.s0.c0.1.3 1
 plants.s0.c0.1.3 minutes.w03 0.5827713472959428
 plants.s0.c0.1.3 ground.s1.w03 0.12689566142684094
 plants.s0.c0.1.3 roots.s1.w03 20.18598035994221
 plants.s0.c0.1.3 picked.f1.w02 -1.7902055978775024
 plants.s0.c0.1.3 picked.f1.w03 -1.9810808897018433
 plants.s0.c0.1.3 picked.f1.w04 -0.8589694499969482
 start.s1.c1.2.2 cost 0.18935781463114004
 start.s1.c1.2.2 most.s1.c1.2.2 -2
 start.s1.c1.2.2 least.s1.c1.2.2 -2
 start.s1.c1.2.2 minutes.w02 5
 start.s1.c1.2.2 standson.s0.w02 1
 start.s1.c1.2.2 clears.s0.w03.start.s1.c1.2.2 -1
 plants.s1.c1.2.2 cost -0.18
 plants.s1.c1.2.2 most.s1.c1.2.2 1
 plants.s1.c1.2.2 least.s1.c1.2.2 1
 plants.s1.c1.2.2 minutes.w02 0.5358952520729314
 plants.s1.c1.2.2 ground.s0.w02 0.14115917395361213
 plants.s1.c1.2.2 roots.s0.w02 22.915539762139385
 plants.s1.c1.2.2 ground.s0.w03 0.14115917395361213
 plants.s1.c1.2.2 roots.s0.w03 22.915539762139385
 plants.s1.c1.2.2 picked.f1.w02 -1.3251972198486328
 plants.s1.c1.2.2 picked.f1.w03 -0.45739150047302246
 plants.s1.c1.2.2 picked.f1.w04 -0.27090373635292053
 start.s0.c2.3.2 cost 0.27763413920519703
 start.s0.c2.3.2 most.s0.c2.3.2 -1
 start.s0.c2.3.2 least.s0.c2.3.2 -1
 start.s0.c2.3.2 minutes.w02 5
 start.s0.c2.3.2 standson.s1.w02 1
 start.s0.c2.3.2 clears.s1.w03.start.s0.c2.3.2 -1
 plants.s0.c2.3.2 cost -0.18
 plants.s0.c2.3.2 most.s0.c2.3.2 1
 plants.s0.c2.3.2 least.s0.c2.3.2 1
 plants.s0.c2.3.2 minutes.w02 3.1573197692618575
 plants.s0.c2.3.2 minutes.w03 2.3177652592847298
 plants.s0.c2.3.2 minutes.w04 5
 plants.s0.c2.3.2 ground.s1.w03 0.1188548463028023
 plants.s0.c2.3.2 roots.s1.w03 9.482705867722554
 plants.s0.c2.3.2 ground.s1.w02 0.19529404233149655
 plants.s0.c2.3.2 roots.s1.w02 15.581324773497906
 plants.s0.c2.3.2 tall.s1.w02 0.19529404233149655
 plants.s0.c2.3.2 support.s1.w02 0.2
 plants.s0.c2.3.2 tall.s1.w03 0.1188548463028023
 plants.s0.c2.3.2 support.s1.w03 0.2
 plants.s0.c2.3.2 shelf.w-1 1
 plants.s0.c2.3.2 shelf.w00 1
 plants.s0.c2.3.2 shelf.w01 1
 plants.s0.c2.3.2 picked.f1.w02 -0.5595925450325012
 pull.stay0.w00 cost 0.17270531445263831
 pull.stay0.w00 pulled.stay0 1
 pull.stay0.w00 minutes.w00 0.7079129245615348
 pull.stay0.w00 leaves.b0.f0.w00.pull.stay0.w00 -1
 pull.stay0.w00 clears.s0.w00.pull.stay0.w00 -1
 pull.stay0.w01 cost 0.17270531445263831
 pull.stay0.w01 pulled.stay0 1
 pull.stay0.w01 minutes.w00 0.7079129245615348
 pull.stay0.w01 minutes.w01 0.36595338491452223
 pull.stay0.w01 ground.s0.w01 0.44439384793944003
 pull.stay0.w01 roots.s0.w01 4.746204375150443
 pull.stay0.w01 tall.s0.w01 0.44439384793944003
 pull.stay0.w01 leaves.b0.f0.w01.pull.stay0.w01 -1
 pull.stay0.w01 standson.s0.w00 1
 pull.stay0.w01 clears.s0.w01.pull.stay0.w01 -1
 pull.stay0.w02 cost 0.17270531445263831
 pull.stay0.w02 pulled.stay0 1
 pull.stay0.w02 minutes.w00 0.7079129245615348
 pull.stay0.w02 minutes.w01 0.36595338491452223
 pull.stay0.w02 minutes.w02 3.0593901493595625
 pull.stay0.w02 ground.s0.w01 0.44439384793944003
 pull.stay0.w02 roots.s0.w01 4.746204375150443
 pull.stay0.w02 tall.s0.w01 0.44439384793944003
 pull.stay0.w02 ground.s0.w02 0.3047635220474573
 pull.stay0.w02 roots.s0.w02 3.2549279618403237
 pull.stay0.w02 tall.s0.w02 0.3047635220474573
 pull.stay0.w02 leaves.b0.f0.w02.pull.stay0.w02 -1
 pull.stay0.w02 standson.s0.w00 1
 pull.stay0.w02 standson.s0.w01 1
 pull.stay0.w02 clears.s0.w02.pull.stay0.w02 -1
 pull.stay0.w03 cost -0.47217337291606726
 pull.stay0.w03 pulled.stay0 1
 pull.stay0.w03 minutes.w00 0.7079129245615348
 pull.stay0.w03 minutes.w01 0.36595338491452223
 pull.stay0.w03 minutes.w02 3.0593901493595625
 pull.stay0.w03 minutes.w03 2.359559848880601
 pull.stay0.w03 ground.s0.w01 0.44439384793944003
 pull.stay0.w03 roots.s0.w01 4.746204375150443
 pull.stay0.w03 tall.s0.w01 0.44439384793944003
 pull.stay0.w03 ground.s0.w02 0.3047635220474573
 pull.stay0.w03 roots.s0.w02 3.2549279618403237
 pull.stay0.w03 tall.s0.w02 0.3047635220474573
 pull.stay0.w03 ground.s0.w03 0.03844237133881554
 pull.stay0.w03 roots.s0.w03 0.410571280150369
 pull.stay0.w03 tall.s0.w03 0.03844237133881554
 pull.stay0.w03 leaves.b0.f0.w03.pull.stay0.w03 -1
 pull.stay0.w03 standson.s0.w00 1
 pull.stay0.w03 standson.s0.w01 1
 pull.stay0.w03 standson.s0.w02 1
 pull.stay0.w03 clears.s0.w03.pull.stay0.w03 -1
 pull.stay1.before cost 0.1607686188881694
 pull.stay1.before pulled.stay1 1
 pull.stay1.before clears.s1.w-1.pull.stay1.before -1
 pull.stay1.w00 cost 0.1607686188881694
 pull.stay1.w00 pulled.stay1 1
 pull.stay1.w00 minutes.w00 1.914264889766026
 pull.stay1.w00 standson.s1.w-1 1
 pull.stay1.w00 clears.s1.w00.pull.stay1.w00 -1
 pull.stay1.w01 cost 0.1607686188881694
 pull.stay1.w01 pulled.stay1 1
 pull.stay1.w01 minutes.w00 1.914264889766026
 pull.stay1.w01 minutes.w01 1.9017341481457515
 pull.stay1.w01 standson.s1.w-1 1
 pull.stay1.w01 standson.s1.w00 1
 pull.stay1.w01 clears.s1.w01.pull.stay1.w01 -1
 pull.stay1.w02 cost 0.1607686188881694
 pull.stay1.w02 pulled.stay1 1
 pull.stay1.w02 minutes.w00 1.914264889766026
 pull.stay1.w02 minutes.w01 1.9017341481457515
 pull.stay1.w02 minutes.w02 2.7099500115487554
 pull.stay1.w02 ground.s1.w02 0.16478660310652
 pull.stay1.w02 roots.s1.w02 15.503878324573192
 pull.stay1.w02 support.s1.w02 0.1
 pull.stay1.w02 standson.s1.w-1 1
 pull.stay1.w02 standson.s1.w00 1
 pull.stay1.w02 standson.s1.w01 1
 pull.stay1.w02 clears.s1.w02.pull.stay1.w02 -1
 pull.stay1.w03 cost -0.4739559848816917
 pull.stay1.w03 pulled.stay1 1
 pull.stay1.w03 minutes.w00 1.914264889766026
 pull.stay1.w03 minutes.w01 1.9017341481457515
 pull.stay1.w03 minutes.w02 2.7099500115487554
 pull.stay1.w03 minutes.w03 3.7327586902850536
 pull.stay1.w03 ground.s1.w03 0.5075067035325421
 pull.stay1.w03 roots.s1.w03 47.74855499259001
 pull.stay1.w03 ground.s1.w02 0.16478660310652
 pull.stay1.w03 roots.s1.w02 15.503878324573192
 pull.stay1.w03 support.s1.w02 0.1
 pull.stay1.w03 support.s1.w03 0.1
 pull.stay1.w03 standson.s1.w-1 1
 pull.stay1.w03 standson.s1.w00 1
 pull.stay1.w03 standson.s1.w01 1
 pull.stay1.w03 standson.s1.w02 1
 pull.stay1.w03 clears.s1.w03.pull.stay1.w03 -1
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
 eat.f0.w00.1 cost -1.1749833979665447
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -1.1689469306714355
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -1.1629104633763263
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
 eat.f0.w01.1 cost -1.163349898976777
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -1.1573731986845897
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -1.1513964983924023
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
 eat.f0.w02.1 cost -1.1518315831453236
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -1.145914058103554
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -1.1399965330617843
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
 eat.f0.w03.1 cost -1.140427310044875
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -1.1345683743599546
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -1.1287094386750343
 eat.f0.w03.3 sum.f0.w03 -1
 used.f0.w04 cost 0
 used.f0.w04 picked.f0.w04 1
 used.f0.w04 rises.f0.w04 1
 used.f0.w04 first.f0.w04 -1
 eaten.f0.w04 cost 0
 eaten.f0.w04 sum.f0.w04 1
 eaten.f0.w04 first.f0.w04 1
 eaten.f0.w04 keeps.f0.w02 -1
 eat.f0.w04.1 cost -1.12913595053948
 eat.f0.w04.1 sum.f0.w04 -1
 eat.f0.w04.2 cost -1.1233350241187667
 eat.f0.w04.2 sum.f0.w04 -1
 eat.f0.w04.3 cost -1.1175340976980535
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
 eat.f1.w00.1 cost -1.4338127371116984
 eat.f1.w00.1 sum.f1.w00 -1
 eat.f1.w00.2 cost -1.0709637877503495
 eat.f1.w00.2 sum.f1.w00 -1
 eat.f1.w00.3 cost -0.7081148383890007
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
 eat.f1.w01.1 cost -1.4196165713977211
 eat.f1.w01.1 sum.f1.w01 -1
 eat.f1.w01.2 cost -1.060360185891435
 eat.f1.w01.2 sum.f1.w01 -1
 eat.f1.w01.3 cost -0.7011038003851492
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
 eat.f1.w02.1 cost -1.4055609617799218
 eat.f1.w02.1 sum.f1.w02 -1
 eat.f1.w02.2 cost -1.0498615701895397
 eat.f1.w02.2 sum.f1.w02 -1
 eat.f1.w02.3 cost -0.6941621785991576
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
 eat.f1.w03.1 cost -1.3916445166137843
 eat.f1.w03.1 sum.f1.w03 -1
 eat.f1.w03.2 cost -1.0394669011777622
 eat.f1.w03.2 sum.f1.w03 -1
 eat.f1.w03.3 cost -0.6872892857417403
 eat.f1.w03.3 sum.f1.w03 -1
 used.f1.w04 cost 0
 used.f1.w04 picked.f1.w04 1
 used.f1.w04 rises.f1.w04 1
 used.f1.w04 first.f1.w04 -1
 eaten.f1.w04 cost 0
 eaten.f1.w04 sum.f1.w04 1
 eaten.f1.w04 first.f1.w04 1
 eaten.f1.w04 keeps.f1.w03 -1
 eat.f1.w04.1 cost -1.3778658580334495
 eat.f1.w04.1 sum.f1.w04 -1
 eat.f1.w04.2 cost -1.0291751496809525
 eat.f1.w04.2 sum.f1.w04 -1
 eat.f1.w04.3 cost -0.6804844413284556
 eat.f1.w04.3 sum.f1.w04 -1
 left.b0.f1.w03 cost 0
 left.b0.f1.w03 leaves.b0.f1.w03.start.s0.c2.0.1 1
 left.b0.f0.w00 cost 0
 left.b0.f0.w00 leaves.b0.f0.w00.pull.stay0.w00 1
 left.b0.f0.w01 cost 0
 left.b0.f0.w01 leaves.b0.f0.w01.pull.stay0.w01 1
 left.b0.f0.w02 cost 0
 left.b0.f0.w02 leaves.b0.f0.w02.pull.stay0.w02 1
 left.b0.f0.w03 cost 0
 left.b0.f0.w03 leaves.b0.f0.w03.pull.stay0.w03 1
 rest.w-1 cost 0.5
 rest.w-1 clear.w-1 -1
 cleared.s1.w-1 cost 0
 cleared.s1.w-1 clear.w-1 1
 cleared.s1.w-1 clears.s1.w-1.pull.stay1.before 1
 stands.s1.w-1 cost 0
 stands.s1.w-1 standson.s1.w-1 -1
 stands.s1.w-1 clears.s1.w-1.pull.stay1.before 1
 rest.w00 cost 0.5
 rest.w00 clear.w00 -1
 cleared.s0.w00 cost 0
 cleared.s0.w00 clear.w00 1
 cleared.s0.w00 clears.s0.w00.pull.stay0.w00 1
 stands.s0.w00 cost 0
 stands.s0.w00 standson.s0.w00 -1
 stands.s0.w00 clears.s0.w00.pull.stay0.w00 1
 cleared.s1.w00 cost 0
 cleared.s1.w00 clear.w00 1
 cleared.s1.w00 clears.s1.w00.pull.stay1.w00 1
 stands.s1.w00 cost 0
 stands.s1.w00 standson.s1.w00 -1
 stands.s1.w00 clears.s1.w00.pull.stay1.w00 1
 rest.w01 cost 0.5
 rest.w01 clear.w01 -1
 cleared.s0.w01 cost 0
 cleared.s0.w01 clear.w01 1
 cleared.s0.w01 clears.s0.w01.pull.stay0.w01 1
 stands.s0.w01 cost 0
 stands.s0.w01 standson.s0.w01 -1
 stands.s0.w01 clears.s0.w01.pull.stay0.w01 1
 cleared.s1.w01 cost 0
 cleared.s1.w01 clear.w01 1
 cleared.s1.w01 clears.s1.w01.pull.stay1.w01 1
 stands.s1.w01 cost 0
 stands.s1.w01 standson.s1.w01 -1
 stands.s1.w01 clears.s1.w01.pull.stay1.w01 1
 rest.w02 cost 0.5
 rest.w02 clear.w02 -1
 cleared.s0.w02 cost 0
 cleared.s0.w02 clear.w02 1
 cleared.s0.w02 clears.s0.w02.pull.stay0.w02 1
 stands.s0.w02 cost 0
 stands.s0.w02 standson.s0.w02 -1
 stands.s0.w02 clears.s0.w02.pull.stay0.w02 1
 cleared.s1.w02 cost 0
 cleared.s1.w02 clear.w02 1
 cleared.s1.w02 clears.s1.w02.pull.stay1.w02 1
 stands.s1.w02 cost 0
 stands.s1.w02 standson.s1.w02 -1
 stands.s1.w02 clears.s1.w02.pull.stay1.w02 1
 rest.w03 cost 0.5
 rest.w03 clear.w03 -1
 cleared.s0.w03 cost 0
 cleared.s0.w03 clear.w03 1
 cleared.s0.w03 clears.s0.w03.start.s0.c2.0.1 1
 cleared.s0.w03 clears.s0.w03.start.s1.c1.2.2 1
 cleared.s0.w03 clears.s0.w03.pull.stay0.w03 1
 stands.s0.w03 cost 0
 stands.s0.w03 standson.s0.w03 -1
 stands.s0.w03 clears.s0.w03.start.s0.c2.0.1 1
 stands.s0.w03 clears.s0.w03.start.s1.c1.2.2 1
 stands.s0.w03 clears.s0.w03.pull.stay0.w03 1
 cleared.s1.w03 cost 0
 cleared.s1.w03 clear.w03 1
 cleared.s1.w03 clears.s1.w03.start.s0.c0.1.3 1
 cleared.s1.w03 clears.s1.w03.start.s0.c2.3.2 1
 cleared.s1.w03 clears.s1.w03.pull.stay1.w03 1
 stands.s1.w03 cost 0
 stands.s1.w03 standson.s1.w03 -1
 stands.s1.w03 clears.s1.w03.start.s0.c0.1.3 1
 stands.s1.w03 clears.s1.w03.start.s0.c2.3.2 1
 stands.s1.w03 clears.s1.w03.pull.stay1.w03 1
RHS
 RHS pulled.stay0 1
 RHS pulled.stay1 1
 RHS minutes.w00 10
 RHS minutes.w01 34
 RHS minutes.w02 15
 RHS minutes.w03 36
 RHS minutes.w04 5
 RHS ground.s0.w01 0.5658566547902608
 RHS roots.s0.w01 104.33809323360619
 RHS tall.s0.w01 0.4826244650120675
 RHS ground.s0.w02 0.5658566547902608
 RHS roots.s0.w02 104.33809323360619
 RHS tall.s0.w02 0.4826244650120675
 RHS ground.s0.w03 0.5658566547902608
 RHS roots.s0.w03 104.33809323360619
 RHS tall.s0.w03 0.4826244650120675
 RHS ground.s1.w03 0.8876418752424727
 RHS roots.s1.w03 158.99562200634514
 RHS ground.s1.w02 0.8876418752424727
 RHS roots.s1.w02 158.99562200634514
 RHS tall.s1.w02 0.9576908607975964
 RHS support.s1.w02 0.21574934256097408
 RHS tall.s1.w03 0.9576908607975964
 RHS support.s1.w03 0.21574934256097408
 RHS shelf.w-1 2.000001
 RHS shelf.w00 3.000001
 RHS shelf.w01 3.000001
 RHS clear.w-1 1
 RHS clear.w00 1
 RHS clear.w01 1
 RHS clear.w02 1
 RHS clear.w03 1
BOUNDS
 UP BND start.s0.c2.0.1 1
 UP BND plants.s0.c2.0.1 1
 UP BND start.s0.c0.1.3 1
 UP BND plants.s0.c0.1.3 1
 UP BND start.s1.c1.2.2 1
 UP BND plants.s1.c1.2.2 2
 UP BND start.s0.c2.3.2 1
 UP BND plants.s0.c2.3.2 1
 UP BND pull.stay0.w00 1
 UP BND pull.stay0.w01 1
 UP BND pull.stay0.w02 1
 UP BND pull.stay0.w03 1
 UP BND pull.stay1.before 1
 UP BND pull.stay1.w00 1
 UP BND pull.stay1.w01 1
 UP BND pull.stay1.w02 1
 UP BND pull.stay1.w03 1
 UP BND eat.f0.w00.1 0.7201736238735965
 UP BND eat.f0.w00.2 0.7201736238735965
 UP BND eat.f0.w00.3 1.440347247747193
 UP BND eat.f0.w01.1 0.6468041728770819
 UP BND eat.f0.w01.2 0.6468041728770819
 UP BND eat.f0.w01.3 1.2936083457541638
 UP BND eat.f0.w02.1 0.020573825241871124
 UP BND eat.f0.w02.2 0.020573825241871124
 UP BND eat.f0.w02.3 0.04114765048374225
 UP BND eat.f0.w03.1 0.4295279072625092
 UP BND eat.f0.w03.2 0.4295279072625092
 UP BND eat.f0.w03.3 0.8590558145250184
 UP BND eat.f0.w04.1 1.4476357981243608
 UP BND eat.f0.w04.2 1.4476357981243608
 UP BND eat.f0.w04.3 2.8952715962487217
 UP BND eat.f1.w00.1 0.30269185670797943
 UP BND eat.f1.w00.2 0.30269185670797943
 UP BND eat.f1.w00.3 0.6053837134159589
 UP BND eat.f1.w01.1 0.38611127329418377
 UP BND eat.f1.w01.2 0.38611127329418377
 UP BND eat.f1.w01.3 0.7722225465883675
 UP BND eat.f1.w02.1 0.17035498731114446
 UP BND eat.f1.w02.2 0.17035498731114446
 UP BND eat.f1.w02.3 0.3407099746222889
 UP BND eat.f1.w03.1 0.800231808021702
 UP BND eat.f1.w03.2 0.800231808021702
 UP BND eat.f1.w03.3 1.600463616043404
 UP BND eat.f1.w04.1 0.4557924984515915
 UP BND eat.f1.w04.2 0.4557924984515915
 UP BND eat.f1.w04.3 0.911584996903183
 UP BND left.b0.f1.w03 1
 UP BND left.b0.f0.w00 1
 UP BND left.b0.f0.w01 1
 UP BND left.b0.f0.w02 1
 UP BND left.b0.f0.w03 1
 UP BND cleared.s1.w-1 1
 UP BND cleared.s0.w00 1
 UP BND cleared.s1.w00 1
 UP BND cleared.s0.w01 1
 UP BND cleared.s1.w01 1
 UP BND cleared.s0.w02 1
 UP BND cleared.s1.w02 1
 UP BND cleared.s0.w03 1
 UP BND cleared.s1.w03 1
ENDATA
