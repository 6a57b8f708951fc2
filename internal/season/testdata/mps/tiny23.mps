NAME season
ROWS
 N cost
 L most.s0.c2.0.0
 G least.s0.c2.0.0
 L most.s0.c2.1.4
 G least.s0.c2.1.4
 L few.s0.c2.1.4
 L all.s0.c2.1.4
 L most.s0.c2.5.3
 G least.s0.c2.5.3
 E pulled.stay0
 L total.g
 L total.h
 G must.0.c2
 L ground.s0.w00
 L roots.s0.w00
 L ground.s0.w01
 L roots.s0.w01
 L ground.s0.w02
 L roots.s0.w02
 L ground.s0.w03
 L roots.s0.w03
 L ground.s0.w04
 L roots.s0.w04
 L ground.s0.w05
 L roots.s0.w05
 L ground.s0.w06
 L roots.s0.w06
 L ground.s0.w07
 L roots.s0.w07
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
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s0.c2.0.0 cost 0.03577248936852321
 start.s0.c2.0.0 most.s0.c2.0.0 -1
 start.s0.c2.0.0 least.s0.c2.0.0 -1
 plants.s0.c2.0.0 cost 0.12000000000000001
 plants.s0.c2.0.0 most.s0.c2.0.0 1
 plants.s0.c2.0.0 least.s0.c2.0.0 1
 plants.s0.c2.0.0 must.0.c2 1
 plants.s0.c2.0.0 ground.s0.w00 0.26259628788258627
 plants.s0.c2.0.0 roots.s0.w00 8.8063612945893
 plants.s0.c2.0.0 ground.s0.w01 0.15401768151285128
 plants.s0.c2.0.0 roots.s0.w01 5.165097191943584
 plants.s0.c2.0.0 ground.s0.w02 0.19997603754790097
 plants.s0.c2.0.0 roots.s0.w02 6.706344751128349
 plants.s0.c2.0.0 ground.s0.w03 0.22150765843402587
 plants.s0.c2.0.0 roots.s0.w03 7.428423628595661
 plants.s0.c2.0.0 ground.s0.w04 0.23307281625192597
 plants.s0.c2.0.0 roots.s0.w04 7.816269774459348
 plants.s0.c2.0.0 ground.s0.w05 0.09760719115467648
 plants.s0.c2.0.0 roots.s0.w05 3.2733295553761055
 plants.s0.c2.0.0 picked.f1.w00 -0.9936063289642334
 plants.s0.c2.0.0 picked.f1.w01 -0.5977839082479477
 start.s0.c2.1.4 cost 0.24798695603858933
 start.s0.c2.1.4 most.s0.c2.1.4 -3
 start.s0.c2.1.4 least.s0.c2.1.4 -2
 plants.s0.c2.1.4 cost -0.19999999999999998
 plants.s0.c2.1.4 most.s0.c2.1.4 1
 plants.s0.c2.1.4 least.s0.c2.1.4 1
 plants.s0.c2.1.4 few.s0.c2.1.4 1
 plants.s0.c2.1.4 must.0.c2 1
 plants.s0.c2.1.4 ground.s0.w04 0.21621351014738466
 plants.s0.c2.1.4 roots.s0.w04 8.633565112340001
 plants.s0.c2.1.4 ground.s0.w05 0.30115996796961897
 plants.s0.c2.1.4 roots.s0.w05 12.025539897685183
 plants.s0.c2.1.4 ground.s0.w06 0.10172648309712845
 plants.s0.c2.1.4 roots.s0.w06 4.062013584950055
 plants.s0.c2.1.4 ground.s0.w07 0.248721494157493
 plants.s0.c2.1.4 roots.s0.w07 9.93163291777391
 M MARKER 'MARKER' 'INTEND'
 lost.s0.c2.1.4 cost 0.02
 lost.s0.c2.1.4 few.s0.c2.1.4 -1
 lost.s0.c2.1.4 all.s0.c2.1.4 -1
 M MARKER 'MARKER' 'INTORG'
 many.s0.c2.1.4 cost 0
 many.s0.c2.1.4 few.s0.c2.1.4 -2
 many.s0.c2.1.4 all.s0.c2.1.4 1
 start.s0.c2.5.3 cost 0.23900506712057568
 start.s0.c2.5.3 most.s0.c2.5.3 -2
 start.s0.c2.5.3 least.s0.c2.5.3 -2
 plants.s0.c2.5.3 cost -0.18
 plants.s0.c2.5.3 most.s0.c2.5.3 1
 plants.s0.c2.5.3 least.s0.c2.5.3 1
 plants.s0.c2.5.3 must.0.c2 1
 plants.s0.c2.5.3 ground.s0.w03 0.2523026598987893
 plants.s0.c2.5.3 roots.s0.w03 13.609249562991252
 plants.s0.c2.5.3 picked.f1.w04 -1.1668770909309387
 plants.s0.c2.5.3 picked.f1.w05 -0.5518601536750793
 plants.s0.c2.5.3 picked.f1.w06 -0.6485583186149597
 pull.stay0.w01 cost 0.15215136675346982
 pull.stay0.w01 pulled.stay0 1
 pull.stay0.w01 ground.s0.w00 0.09542912335872097
 pull.stay0.w01 roots.s0.w00 5.2780396964753775
 pull.stay0.w01 ground.s0.w01 0.4446302437868624
 pull.stay0.w01 roots.s0.w01 24.591822646625197
 pull.stay0.w01 picked.f1.w00 -1.471231758594513
 pull.stay0.w01 picked.f1.w01 -0.5216110944747925
 pull.stay0.w02 cost 0.15215136675346982
 pull.stay0.w02 pulled.stay0 1
 pull.stay0.w02 ground.s0.w00 0.09542912335872097
 pull.stay0.w02 roots.s0.w00 5.2780396964753775
 pull.stay0.w02 ground.s0.w01 0.4446302437868624
 pull.stay0.w02 roots.s0.w01 24.591822646625197
 pull.stay0.w02 ground.s0.w02 0.502307314878601
 pull.stay0.w02 roots.s0.w02 27.78185374074201
 pull.stay0.w02 picked.f1.w00 -1.471231758594513
 pull.stay0.w02 picked.f1.w01 -0.5216110944747925
 pull.stay0.w03 cost -0.15362047658107275
 pull.stay0.w03 pulled.stay0 1
 pull.stay0.w03 ground.s0.w00 0.09542912335872097
 pull.stay0.w03 roots.s0.w00 5.2780396964753775
 pull.stay0.w03 ground.s0.w01 0.4446302437868624
 pull.stay0.w03 roots.s0.w01 24.591822646625197
 pull.stay0.w03 ground.s0.w02 0.502307314878601
 pull.stay0.w03 roots.s0.w02 27.78185374074201
 pull.stay0.w03 ground.s0.w03 0.28929677237647017
 pull.stay0.w03 roots.s0.w03 16.00056455433917
 pull.stay0.w03 picked.f1.w00 -1.471231758594513
 pull.stay0.w03 picked.f1.w01 -0.5216110944747925
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
 eat.f0.w00.1 cost -1.3693200881512304
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -0.9443645897877735
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -0.5194090914243167
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
 eat.f0.w01.1 cost -1.3557624635160697
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -0.9350144453344292
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -0.5142664271527888
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
 eat.f0.w02.1 cost -1.3423390727881876
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -0.9257568765687417
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -0.5091746803492958
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
 eat.f0.w03.1 cost -1.329048586918998
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -0.9165909668997444
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -0.5041333468804909
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
 eat.f0.w04.1 cost -1.3158896900188097
 eat.f0.w04.1 sum.f0.w04 -1
 eat.f0.w04.2 cost -0.907515808811628
 eat.f0.w04.2 sum.f0.w04 -1
 eat.f0.w04.3 cost -0.4991419276044464
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
 eaten.f0.w05 keeps.f0.w03 -1
 eat.f0.w05.1 cost -1.3028610792265445
 eat.f0.w05.1 sum.f0.w05 -1
 eat.f0.w05.2 cost -0.8985305037738892
 eat.f0.w05.2 sum.f0.w05 -1
 eat.f0.w05.3 cost -0.49419992832123416
 eat.f0.w05.3 sum.f0.w05 -1
 used.f0.w06 cost 0
 used.f0.w06 picked.f0.w06 1
 used.f0.w06 rises.f0.w06 1
 used.f0.w06 first.f0.w06 -1
 used.f0.w06 picked.f0.w07 -1
 used.f0.w06 rises.f0.w07 -1
 eaten.f0.w06 cost 0
 eaten.f0.w06 sum.f0.w06 1
 eaten.f0.w06 first.f0.w06 1
 eaten.f0.w06 sum.f0.w07 -1
 eaten.f0.w06 keeps.f0.w04 -1
 eat.f0.w06.1 cost -1.2899614645807367
 eat.f0.w06.1 sum.f0.w06 -1
 eat.f0.w06.2 cost -0.8896341621523653
 eat.f0.w06.2 sum.f0.w06 -1
 eat.f0.w06.3 cost -0.4893068597239941
 eat.f0.w06.3 sum.f0.w06 -1
 used.f0.w07 cost 0
 used.f0.w07 picked.f0.w07 1
 used.f0.w07 rises.f0.w07 1
 used.f0.w07 first.f0.w07 -1
 eaten.f0.w07 cost 0
 eaten.f0.w07 sum.f0.w07 1
 eaten.f0.w07 first.f0.w07 1
 eaten.f0.w07 keeps.f0.w05 -1
 eat.f0.w07.1 cost -1.277189568891819
 eat.f0.w07.1 sum.f0.w07 -1
 eat.f0.w07.2 cost -0.8808259031211542
 eat.f0.w07.2 sum.f0.w07 -1
 eat.f0.w07.3 cost -0.4844622373504894
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
 eat.f1.w00.1 cost -1.6843232255774816
 eat.f1.w00.1 sum.f1.w00 -1
 eat.f1.w00.2 cost -0.9176133927158611
 eat.f1.w00.2 sum.f1.w00 -1
 eat.f1.w00.3 cost -0.1509035598542406
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
 eat.f1.w01.1 cost -1.6676467579975065
 eat.f1.w01.1 sum.f1.w01 -1
 eat.f1.w01.2 cost -0.9085281115998625
 eat.f1.w01.2 sum.f1.w01 -1
 eat.f1.w01.3 cost -0.1494094652022184
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
 eat.f1.w02.1 cost -1.6511354039579271
 eat.f1.w02.1 sum.f1.w02 -1
 eat.f1.w02.2 cost -0.89953278376224
 eat.f1.w02.2 sum.f1.w02 -1
 eat.f1.w02.3 cost -0.14793016356655286
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
 eat.f1.w03.1 cost -1.6347875286712152
 eat.f1.w03.1 sum.f1.w03 -1
 eat.f1.w03.2 cost -0.8906265185764753
 eat.f1.w03.2 sum.f1.w03 -1
 eat.f1.w03.3 cost -0.14646550848173553
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
 eat.f1.w04.1 cost -1.6186015135358565
 eat.f1.w04.1 sum.f1.w04 -1
 eat.f1.w04.2 cost -0.8818084342341339
 eat.f1.w04.2 sum.f1.w04 -1
 eat.f1.w04.3 cost -0.14501535493241138
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
 eat.f1.w05.1 cost -1.6025757559760958
 eat.f1.w05.1 sum.f1.w05 -1
 eat.f1.w05.2 cost -0.8730776576575584
 eat.f1.w05.2 sum.f1.w05 -1
 eat.f1.w05.3 cost -0.1435795593390212
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
 eat.f1.w06.1 cost -1.5867086692832628
 eat.f1.w06.1 sum.f1.w06 -1
 eat.f1.w06.2 cost -0.864433324413424
 eat.f1.w06.2 sum.f1.w06 -1
 eat.f1.w06.3 cost -0.1421579795435853
 eat.f1.w06.3 sum.f1.w06 -1
 used.f1.w07 cost 0
 used.f1.w07 picked.f1.w07 1
 used.f1.w07 rises.f1.w07 1
 used.f1.w07 first.f1.w07 -1
 eaten.f1.w07 cost 0
 eaten.f1.w07 sum.f1.w07 1
 eaten.f1.w07 first.f1.w07 1
 eaten.f1.w07 keeps.f1.w06 -1
 eat.f1.w07.1 cost -1.5709986824586766
 eat.f1.w07.1 sum.f1.w07 -1
 eat.f1.w07.2 cost -0.8558745786271528
 eat.f1.w07.2 sum.f1.w07 -1
 eat.f1.w07.3 cost -0.14075047479562908
 eat.f1.w07.3 sum.f1.w07 -1
RHS
 RHS pulled.stay0 1
 RHS total.g 3
 RHS total.h 1
 RHS must.0.c2 1
 RHS ground.s0.w00 1.144473144002452
 RHS roots.s0.w00 138.77936813902812
 RHS ground.s0.w01 1.144473144002452
 RHS roots.s0.w01 138.77936813902812
 RHS ground.s0.w02 1.144473144002452
 RHS roots.s0.w02 138.77936813902812
 RHS ground.s0.w03 1.144473144002452
 RHS roots.s0.w03 138.77936813902812
 RHS ground.s0.w04 1.144473144002452
 RHS roots.s0.w04 138.77936813902812
 RHS ground.s0.w05 1.144473144002452
 RHS roots.s0.w05 138.77936813902812
 RHS ground.s0.w06 1.144473144002452
 RHS roots.s0.w06 138.77936813902812
 RHS ground.s0.w07 1.144473144002452
 RHS roots.s0.w07 138.77936813902812
BOUNDS
 UP BND start.s0.c2.0.0 1
 UP BND plants.s0.c2.0.0 1
 UP BND start.s0.c2.1.4 1
 UP BND plants.s0.c2.1.4 3
 UP BND many.s0.c2.1.4 1
 UP BND start.s0.c2.5.3 1
 UP BND plants.s0.c2.5.3 2
 UP BND pull.stay0.w01 1
 UP BND pull.stay0.w02 1
 UP BND pull.stay0.w03 1
 UP BND eat.f0.w00.1 0.6248307883534203
 UP BND eat.f0.w00.2 0.6248307883534203
 UP BND eat.f0.w00.3 1.2496615767068406
 UP BND eat.f0.w01.1 0.5229632032888087
 UP BND eat.f0.w01.2 0.5229632032888087
 UP BND eat.f0.w01.3 1.0459264065776175
 UP BND eat.f0.w02.1 0.06909720435537675
 UP BND eat.f0.w02.2 0.06909720435537675
 UP BND eat.f0.w02.3 0.1381944087107535
 UP BND eat.f0.w03.1 0.22481598004619702
 UP BND eat.f0.w03.2 0.22481598004619702
 UP BND eat.f0.w03.3 0.44963196009239403
 UP BND eat.f0.w04.1 0.9010714000645708
 UP BND eat.f0.w04.2 0.9010714000645708
 UP BND eat.f0.w04.3 1.8021428001291415
 UP BND eat.f0.w05.1 1.0113772544265993
 UP BND eat.f0.w05.2 1.0113772544265993
 UP BND eat.f0.w05.3 2.0227545088531986
 UP BND eat.f0.w06.1 0.03213960558193202
 UP BND eat.f0.w06.2 0.03213960558193202
 UP BND eat.f0.w06.3 0.06427921116386404
 UP BND eat.f0.w07.1 0.1583960195706201
 UP BND eat.f0.w07.2 0.1583960195706201
 UP BND eat.f0.w07.3 0.3167920391412402
 UP BND eat.f1.w00.1 0.6450419355893762
 UP BND eat.f1.w00.2 0.6450419355893762
 UP BND eat.f1.w00.3 1.2900838711787523
 UP BND eat.f1.w01.1 1.0463044795576948
 UP BND eat.f1.w01.2 1.0463044795576948
 UP BND eat.f1.w01.3 2.0926089591153896
 UP BND eat.f1.w02.1 1.126180203596707
 UP BND eat.f1.w02.2 1.126180203596707
 UP BND eat.f1.w02.3 2.252360407193414
 UP BND eat.f1.w03.1 0.45080737720045483
 UP BND eat.f1.w03.2 0.45080737720045483
 UP BND eat.f1.w03.3 0.9016147544009097
 UP BND eat.f1.w04.1 0.9459466037187254
 UP BND eat.f1.w04.2 0.9459466037187254
 UP BND eat.f1.w04.3 1.8918932074374508
 UP BND eat.f1.w05.1 0.12936236393987
 UP BND eat.f1.w05.2 0.12936236393987
 UP BND eat.f1.w05.3 0.25872472787974
 UP BND eat.f1.w06.1 0.0366850359903374
 UP BND eat.f1.w06.2 0.0366850359903374
 UP BND eat.f1.w06.3 0.0733700719806748
 UP BND eat.f1.w07.1 0.08011349862243033
 UP BND eat.f1.w07.2 0.08011349862243033
 UP BND eat.f1.w07.3 0.16022699724486067
ENDATA
