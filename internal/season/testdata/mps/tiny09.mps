NAME season
ROWS
 N cost
 L most.s0.c0.0.2
 G least.s0.c0.0.2
 L most.s0.c0.1.0
 G least.s0.c0.1.0
 L most.s0.c2.2.3
 G least.s0.c2.2.3
 L most.s0.c1.3.4
 G least.s0.c1.3.4
 L most.s0.c0.4.4
 G least.s0.c0.4.4
 E pulled.stay0
 E pulled.stay1
 L minutes.w00
 L minutes.w01
 L minutes.w02
 L minutes.w03
 L minutes.w04
 L minutes.w05
 L total.g
 L ground.s0.w02
 L roots.s0.w02
 L tall.s0.w02
 L support.s0.w02
 L ground.s0.w03
 L roots.s0.w03
 L tall.s0.w03
 L support.s0.w03
 L ground.s0.w00
 L roots.s0.w00
 L ground.s0.w01
 L roots.s0.w01
 L shelf.w-1
 L ground.s0.w04
 L roots.s0.w04
 L tall.s0.w04
 L shelf.w01
 L shelf.w02
 L shelf.w03
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
 L keeps.f1.w00
 L keeps.f1.w01
 L keeps.f1.w02
 L keeps.f1.w03
 L keeps.f1.w04
 L keeps.f1.w05
 G leaves.b0.f0.w04.start.s0.c0.4.4
 L clear.w-1
 E standson.s0.w-1
 G clears.s0.w-1.pull.stay0.before
 L clear.w00
 E standson.s0.w00
 G clears.s0.w00.pull.stay0.w00
 G clears.s0.w00.pull.stay1.w00
 L clear.w01
 E standson.s0.w01
 G clears.s0.w01.pull.stay0.w01
 G clears.s0.w01.pull.stay1.w01
 L clear.w02
 L clear.w03
 E standson.s0.w03
 G clears.s0.w03.start.s0.c0.0.2
 G clears.s0.w03.start.s0.c0.1.0
 L clear.w04
 E standson.s0.w04
 G clears.s0.w04.start.s0.c2.2.3
 G clears.s0.w04.start.s0.c1.3.4
 G clears.s0.w04.start.s0.c0.4.4
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s0.c0.0.2 cost 0.2578522240441146
 start.s0.c0.0.2 most.s0.c0.0.2 -2
 start.s0.c0.0.2 least.s0.c0.0.2 -2
 start.s0.c0.0.2 minutes.w02 5
 start.s0.c0.0.2 clears.s0.w03.start.s0.c0.0.2 -1
 plants.s0.c0.0.2 cost -0.18
 plants.s0.c0.0.2 most.s0.c0.0.2 1
 plants.s0.c0.0.2 least.s0.c0.0.2 1
 plants.s0.c0.0.2 minutes.w02 1.2203809431654888
 plants.s0.c0.0.2 ground.s0.w02 0.24863658166836694
 plants.s0.c0.0.2 roots.s0.w02 18.48762556582046
 plants.s0.c0.0.2 tall.s0.w02 0.24863658166836694
 plants.s0.c0.0.2 support.s0.w02 0.2
 plants.s0.c0.0.2 ground.s0.w03 0.24863658166836694
 plants.s0.c0.0.2 roots.s0.w03 18.48762556582046
 plants.s0.c0.0.2 tall.s0.w03 0.24863658166836694
 plants.s0.c0.0.2 support.s0.w03 0.2
 start.s0.c0.1.0 cost 0.12873148208349797
 start.s0.c0.1.0 most.s0.c0.1.0 -1
 start.s0.c0.1.0 least.s0.c0.1.0 -1
 start.s0.c0.1.0 minutes.w00 5
 start.s0.c0.1.0 standson.s0.w00 1
 start.s0.c0.1.0 standson.s0.w01 1
 start.s0.c0.1.0 clears.s0.w03.start.s0.c0.1.0 -1
 plants.s0.c0.1.0 cost 0.12000000000000001
 plants.s0.c0.1.0 most.s0.c0.1.0 1
 plants.s0.c0.1.0 least.s0.c0.1.0 1
 plants.s0.c0.1.0 minutes.w00 0.0387131791871389
 plants.s0.c0.1.0 minutes.w01 1.8766016678068338
 plants.s0.c0.1.0 minutes.w02 1.888123049306425
 plants.s0.c0.1.0 minutes.w03 1.431630497266838
 plants.s0.c0.1.0 total.g 1
 plants.s0.c0.1.0 ground.s0.w02 0.15910296052086345
 plants.s0.c0.1.0 roots.s0.w02 7.143034335012296
 plants.s0.c0.1.0 ground.s0.w03 0.07437841983907123
 plants.s0.c0.1.0 roots.s0.w03 3.339269143422236
 plants.s0.c0.1.0 ground.s0.w00 0.2656018322247067
 plants.s0.c0.1.0 roots.s0.w00 11.92437275090473
 plants.s0.c0.1.0 ground.s0.w01 0.24881728219440916
 plants.s0.c0.1.0 roots.s0.w01 11.17081909752425
 plants.s0.c0.1.0 shelf.w-1 1
 plants.s0.c0.1.0 picked.f1.w01 -0.2961146142333746
 plants.s0.c0.1.0 picked.f1.w02 -0.8223399966955185
 start.s0.c2.2.3 cost 0.21172682580362617
 start.s0.c2.2.3 most.s0.c2.2.3 -1
 start.s0.c2.2.3 least.s0.c2.2.3 -1
 start.s0.c2.2.3 minutes.w03 5
 start.s0.c2.2.3 standson.s0.w03 1
 start.s0.c2.2.3 clears.s0.w04.start.s0.c2.2.3 -1
 plants.s0.c2.2.3 cost 0.12000000000000001
 plants.s0.c2.2.3 most.s0.c2.2.3 1
 plants.s0.c2.2.3 least.s0.c2.2.3 1
 plants.s0.c2.2.3 minutes.w03 1.037225815328898
 plants.s0.c2.2.3 minutes.w04 3.1025370787716287
 plants.s0.c2.2.3 ground.s0.w03 0.11883435373453974
 plants.s0.c2.2.3 roots.s0.w03 1.6387134474984646
 plants.s0.c2.2.3 tall.s0.w03 0.11883435373453974
 plants.s0.c2.2.3 ground.s0.w04 0.17365191788645837
 plants.s0.c2.2.3 roots.s0.w04 2.3946419876201857
 plants.s0.c2.2.3 tall.s0.w04 0.17365191788645837
 plants.s0.c2.2.3 picked.f1.w04 -0.7615703642368317
 start.s0.c1.3.4 cost 0.12212817946489593
 start.s0.c1.3.4 most.s0.c1.3.4 -3
 start.s0.c1.3.4 least.s0.c1.3.4 -2
 start.s0.c1.3.4 minutes.w04 5
 start.s0.c1.3.4 clears.s0.w04.start.s0.c1.3.4 -1
 plants.s0.c1.3.4 cost -0.18
 plants.s0.c1.3.4 most.s0.c1.3.4 1
 plants.s0.c1.3.4 least.s0.c1.3.4 1
 plants.s0.c1.3.4 minutes.w04 2.805834660381335
 plants.s0.c1.3.4 minutes.w05 5
 plants.s0.c1.3.4 ground.s0.w04 0.26004926612993323
 plants.s0.c1.3.4 roots.s0.w04 20.807479707725065
 plants.s0.c1.3.4 picked.f0.w05 -1.9785114526748657
 start.s0.c0.4.4 cost 0.2808644643503024
 start.s0.c0.4.4 most.s0.c0.4.4 -3
 start.s0.c0.4.4 least.s0.c0.4.4 -2
 start.s0.c0.4.4 minutes.w04 5
 start.s0.c0.4.4 leaves.b0.f0.w04.start.s0.c0.4.4 -1
 start.s0.c0.4.4 clears.s0.w04.start.s0.c0.4.4 -1
 plants.s0.c0.4.4 cost -0.18
 plants.s0.c0.4.4 most.s0.c0.4.4 1
 plants.s0.c0.4.4 least.s0.c0.4.4 1
 plants.s0.c0.4.4 minutes.w04 0.18254250905845382
 plants.s0.c0.4.4 total.g 1
 plants.s0.c0.4.4 ground.s0.w04 0.25099764085676524
 plants.s0.c0.4.4 roots.s0.w04 23.224349302241478
 plants.s0.c0.4.4 shelf.w01 1
 plants.s0.c0.4.4 shelf.w02 1
 plants.s0.c0.4.4 shelf.w03 1
 plants.s0.c0.4.4 picked.f1.w03 -1.1517440974712372
 plants.s0.c0.4.4 picked.f1.w04 -1.8107803463935852
 plants.s0.c0.4.4 picked.f1.w05 -0.8560289740562439
 pull.stay0.before cost 0.14958021668736973
 pull.stay0.before pulled.stay0 1
 pull.stay0.before clears.s0.w-1.pull.stay0.before -1
 pull.stay0.w00 cost 0.14958021668736973
 pull.stay0.w00 pulled.stay0 1
 pull.stay0.w00 minutes.w00 1.8233128197903397
 pull.stay0.w00 ground.s0.w00 0.30355998305725973
 pull.stay0.w00 roots.s0.w00 7.1711595170030895
 pull.stay0.w00 picked.f1.w00 -0.9926252663135529
 pull.stay0.w00 standson.s0.w-1 1
 pull.stay0.w00 clears.s0.w00.pull.stay0.w00 -1
 pull.stay0.w01 cost -0.09865359164859455
 pull.stay0.w01 pulled.stay0 1
 pull.stay0.w01 minutes.w00 1.8233128197903397
 pull.stay0.w01 minutes.w01 0.4565513317369181
 pull.stay0.w01 ground.s0.w00 0.30355998305725973
 pull.stay0.w01 roots.s0.w00 7.1711595170030895
 pull.stay0.w01 ground.s0.w01 0.1519416376792717
 pull.stay0.w01 roots.s0.w01 3.5893984118032334
 pull.stay0.w01 picked.f1.w00 -0.9926252663135529
 pull.stay0.w01 picked.f1.w01 -0.03287546709179878
 pull.stay0.w01 standson.s0.w-1 1
 pull.stay0.w01 standson.s0.w00 1
 pull.stay0.w01 clears.s0.w01.pull.stay0.w01 -1
 pull.stay1.w00 cost 0.00015145018745881257
 pull.stay1.w00 pulled.stay1 1
 pull.stay1.w00 minutes.w00 1.2573570691885076
 pull.stay1.w00 ground.s0.w00 0.053189171218252305
 pull.stay1.w00 roots.s0.w00 1.0697376143792299
 pull.stay1.w00 picked.f0.w00 -0.32377251982688904
 pull.stay1.w00 standson.s0.w-1 1
 pull.stay1.w00 clears.s0.w00.pull.stay1.w00 -1
 pull.stay1.w01 cost -0.016497430563407578
 pull.stay1.w01 pulled.stay1 1
 pull.stay1.w01 minutes.w00 1.2573570691885076
 pull.stay1.w01 minutes.w01 2.191830203133723
 pull.stay1.w01 ground.s0.w00 0.053189171218252305
 pull.stay1.w01 roots.s0.w00 1.0697376143792299
 pull.stay1.w01 ground.s0.w01 0.47438701491555685
 pull.stay1.w01 roots.s0.w01 9.540844912697372
 pull.stay1.w01 picked.f0.w00 -0.32377251982688904
 pull.stay1.w01 picked.f0.w01 -0.3659488558769226
 pull.stay1.w01 standson.s0.w-1 1
 pull.stay1.w01 standson.s0.w00 1
 pull.stay1.w01 clears.s0.w01.pull.stay1.w01 -1
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
 eat.f0.w00.1 cost -1.63935356597181
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -0.9684696424217324
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -0.2975857188716548
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
 eat.f0.w01.1 cost -1.6231223425463464
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -0.9588808340809232
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -0.2946393256154998
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
 eat.f0.w02.1 cost -1.6070518243033132
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -0.9493869644365576
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -0.29172210456980174
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
 eat.f0.w03.1 cost -1.5911404201022905
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -0.9399870935015422
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -0.2888337669007939
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
 eat.f0.w04.1 cost -1.5753865545567232
 eat.f0.w04.1 sum.f0.w04 -1
 eat.f0.w04.2 cost -0.9306802905955862
 eat.f0.w04.2 sum.f0.w04 -1
 eat.f0.w04.3 cost -0.2859740266344493
 eat.f0.w04.3 sum.f0.w04 -1
 used.f0.w05 cost 0
 used.f0.w05 picked.f0.w05 1
 used.f0.w05 rises.f0.w05 1
 used.f0.w05 first.f0.w05 -1
 eaten.f0.w05 cost 0
 eaten.f0.w05 sum.f0.w05 1
 eaten.f0.w05 first.f0.w05 1
 eaten.f0.w05 keeps.f0.w04 -1
 eat.f0.w05.1 cost -1.5597886678779438
 eat.f0.w05.1 sum.f0.w05 -1
 eat.f0.w05.2 cost -0.9214656342530558
 eat.f0.w05.2 sum.f0.w05 -1
 eat.f0.w05.3 cost -0.2831426006281677
 eat.f0.w05.3 sum.f0.w05 -1
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
 eat.f1.w00.1 cost -1.2326190098768195
 eat.f1.w00.1 sum.f1.w00 -1
 eat.f1.w00.2 cost -1.0813262849811744
 eat.f1.w00.2 sum.f1.w00 -1
 eat.f1.w00.3 cost -0.9300335600855293
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
 eat.f1.w01.1 cost -1.2204148612641776
 eat.f1.w01.1 sum.f1.w01 -1
 eat.f1.w01.2 cost -1.0706200841397766
 eat.f1.w01.2 sum.f1.w01 -1
 eat.f1.w01.3 cost -0.9208253070153756
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
 eat.f1.w02.1 cost -1.2083315458061166
 eat.f1.w02.1 sum.f1.w02 -1
 eat.f1.w02.2 cost -1.0600198852869076
 eat.f1.w02.2 sum.f1.w02 -1
 eat.f1.w02.3 cost -0.9117082247676985
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
 eat.f1.w03.1 cost -1.196367867134769
 eat.f1.w03.1 sum.f1.w03 -1
 eat.f1.w03.2 cost -1.0495246388979285
 eat.f1.w03.2 sum.f1.w03 -1
 eat.f1.w03.3 cost -0.9026814106610878
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
 eaten.f1.w04 keeps.f1.w04 -1
 eat.f1.w04.1 cost -1.1845226407274938
 eat.f1.w04.1 sum.f1.w04 -1
 eat.f1.w04.2 cost -1.039133305839533
 eat.f1.w04.2 sum.f1.w04 -1
 eat.f1.w04.3 cost -0.8937439709515719
 eat.f1.w04.3 sum.f1.w04 -1
 used.f1.w05 cost 0
 used.f1.w05 picked.f1.w05 1
 used.f1.w05 rises.f1.w05 1
 used.f1.w05 first.f1.w05 -1
 used.f1.w05 keeps.f1.w05 1
 eaten.f1.w05 cost 0
 eaten.f1.w05 sum.f1.w05 1
 eaten.f1.w05 first.f1.w05 1
 eaten.f1.w05 keeps.f1.w05 -1
 eat.f1.w05.1 cost -1.172794693789598
 eat.f1.w05.1 sum.f1.w05 -1
 eat.f1.w05.2 cost -1.0288448572668645
 eat.f1.w05.2 sum.f1.w05 -1
 eat.f1.w05.3 cost -0.8848950207441307
 eat.f1.w05.3 sum.f1.w05 -1
 left.b0.f0.w04 cost 0
 left.b0.f0.w04 leaves.b0.f0.w04.start.s0.c0.4.4 1
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
 cleared.s0.w00 clears.s0.w00.pull.stay1.w00 1
 stands.s0.w00 cost 0
 stands.s0.w00 standson.s0.w00 -1
 stands.s0.w00 clears.s0.w00.pull.stay0.w00 1
 stands.s0.w00 clears.s0.w00.pull.stay1.w00 1
 rest.w01 cost 0.3
 rest.w01 clear.w01 -1
 cleared.s0.w01 cost 0
 cleared.s0.w01 clear.w01 1
 cleared.s0.w01 clears.s0.w01.pull.stay0.w01 1
 cleared.s0.w01 clears.s0.w01.pull.stay1.w01 1
 stands.s0.w01 cost 0
 stands.s0.w01 standson.s0.w01 -1
 stands.s0.w01 clears.s0.w01.pull.stay0.w01 1
 stands.s0.w01 clears.s0.w01.pull.stay1.w01 1
 rest.w02 cost 0.3
 rest.w02 clear.w02 -1
 rest.w03 cost 0.3
 rest.w03 clear.w03 -1
 cleared.s0.w03 cost 0
 cleared.s0.w03 clear.w03 1
 cleared.s0.w03 clears.s0.w03.start.s0.c0.0.2 1
 cleared.s0.w03 clears.s0.w03.start.s0.c0.1.0 1
 stands.s0.w03 cost 0
 stands.s0.w03 standson.s0.w03 -1
 stands.s0.w03 clears.s0.w03.start.s0.c0.0.2 1
 stands.s0.w03 clears.s0.w03.start.s0.c0.1.0 1
 rest.w04 cost 0.3
 rest.w04 clear.w04 -1
 cleared.s0.w04 cost 0
 cleared.s0.w04 clear.w04 1
 cleared.s0.w04 clears.s0.w04.start.s0.c2.2.3 1
 cleared.s0.w04 clears.s0.w04.start.s0.c1.3.4 1
 cleared.s0.w04 clears.s0.w04.start.s0.c0.4.4 1
 stands.s0.w04 cost 0
 stands.s0.w04 standson.s0.w04 -1
 stands.s0.w04 clears.s0.w04.start.s0.c2.2.3 1
 stands.s0.w04 clears.s0.w04.start.s0.c1.3.4 1
 stands.s0.w04 clears.s0.w04.start.s0.c0.4.4 1
RHS
 RHS pulled.stay0 1
 RHS pulled.stay1 1
 RHS minutes.w00 34
 RHS minutes.w01 5
 RHS minutes.w02 4
 RHS minutes.w03 37
 RHS minutes.w04 31
 RHS minutes.w05 3
 RHS total.g 3
 RHS ground.s0.w02 0.8239622558184079
 RHS roots.s0.w02 193.01314660269009
 RHS tall.s0.w02 0.5051816890249813
 RHS support.s0.w02 0.7770927195771231
 RHS ground.s0.w03 0.8239622558184079
 RHS roots.s0.w03 193.01314660269009
 RHS tall.s0.w03 0.5051816890249813
 RHS support.s0.w03 0.7770927195771231
 RHS ground.s0.w00 0.8239622558184079
 RHS roots.s0.w00 193.01314660269009
 RHS ground.s0.w01 0.8239622558184079
 RHS roots.s0.w01 193.01314660269009
 RHS shelf.w-1 2.000001
 RHS ground.s0.w04 0.8239622558184079
 RHS roots.s0.w04 193.01314660269009
 RHS tall.s0.w04 0.5051816890249813
 RHS shelf.w01 3.000001
 RHS shelf.w02 5.000001
 RHS shelf.w03 5.000001
 RHS clear.w-1 1
 RHS clear.w00 1
 RHS clear.w01 1
 RHS clear.w02 1
 RHS clear.w03 1
 RHS clear.w04 1
BOUNDS
 UP BND start.s0.c0.0.2 1
 UP BND plants.s0.c0.0.2 2
 UP BND start.s0.c0.1.0 1
 UP BND plants.s0.c0.1.0 1
 UP BND start.s0.c2.2.3 1
 UP BND plants.s0.c2.2.3 1
 UP BND start.s0.c1.3.4 1
 UP BND plants.s0.c1.3.4 3
 UP BND start.s0.c0.4.4 1
 UP BND plants.s0.c0.4.4 3
 UP BND pull.stay0.before 1
 UP BND pull.stay0.w00 1
 UP BND pull.stay0.w01 1
 UP BND pull.stay1.w00 1
 UP BND pull.stay1.w01 1
 UP BND eat.f0.w00.1 0.48507856975541713
 UP BND eat.f0.w00.2 0.48507856975541713
 UP BND eat.f0.w00.3 0.9701571395108343
 UP BND eat.f0.w01.1 0.3789035237981117
 UP BND eat.f0.w01.2 0.3789035237981117
 UP BND eat.f0.w01.3 0.7578070475962234
 UP BND eat.f0.w02.1 1.2070070542475186
 UP BND eat.f0.w02.2 1.2070070542475186
 UP BND eat.f0.w02.3 2.4140141084950373
 UP BND eat.f0.w03.1 0.2921168357070769
 UP BND eat.f0.w03.2 0.2921168357070769
 UP BND eat.f0.w03.3 0.5842336714141538
 UP BND eat.f0.w04.1 0.575425534248778
 UP BND eat.f0.w04.2 0.575425534248778
 UP BND eat.f0.w04.3 1.150851068497556
 UP BND eat.f0.w05.1 1.4073842470421178
 UP BND eat.f0.w05.2 1.4073842470421178
 UP BND eat.f0.w05.3 2.8147684940842357
 UP BND eat.f1.w00.1 1.068571855766971
 UP BND eat.f1.w00.2 1.068571855766971
 UP BND eat.f1.w00.3 2.137143711533942
 UP BND eat.f1.w01.1 0.9895870881322749
 UP BND eat.f1.w01.2 0.9895870881322749
 UP BND eat.f1.w01.3 1.9791741762645498
 UP BND eat.f1.w02.1 0.9205388632965532
 UP BND eat.f1.w02.2 0.9205388632965532
 UP BND eat.f1.w02.3 1.8410777265931064
 UP BND eat.f1.w03.1 0.05925824495323545
 UP BND eat.f1.w03.2 0.05925824495323545
 UP BND eat.f1.w03.3 0.1185164899064709
 UP BND eat.f1.w04.1 0.8464467721816742
 UP BND eat.f1.w04.2 0.8464467721816742
 UP BND eat.f1.w04.3 1.6928935443633484
 UP BND eat.f1.w05.1 0.819404382718891
 UP BND eat.f1.w05.2 0.819404382718891
 UP BND eat.f1.w05.3 1.638808765437782
 UP BND left.b0.f0.w04 1
 UP BND cleared.s0.w-1 1
 UP BND cleared.s0.w00 1
 UP BND cleared.s0.w01 1
 UP BND cleared.s0.w03 1
 UP BND cleared.s0.w04 1
ENDATA
