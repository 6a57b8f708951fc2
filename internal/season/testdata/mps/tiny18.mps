NAME season
ROWS
 N cost
 L most.s0.c2.2.5
 G least.s0.c2.2.5
 L most.s0.c1.3.4
 G least.s0.c1.3.4
 L total.g
 L ground.s0.w05
 L roots.s0.w05
 L support.s0.w05
 L ground.s0.w06
 L roots.s0.w06
 L support.s0.w06
 L ground.s0.w04
 L roots.s0.w04
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
 L keeps.f0.w00
 L keeps.f0.w01
 L keeps.f0.w02
 L keeps.f0.w03
 L keeps.f0.w04
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s0.c2.2.5 cost 0.1802128392153217
 start.s0.c2.2.5 most.s0.c2.2.5 -2
 start.s0.c2.2.5 least.s0.c2.2.5 -1
 plants.s0.c2.2.5 cost 0.12000000000000001
 plants.s0.c2.2.5 most.s0.c2.2.5 1
 plants.s0.c2.2.5 least.s0.c2.2.5 1
 plants.s0.c2.2.5 ground.s0.w05 0.15517847268742738
 plants.s0.c2.2.5 roots.s0.w05 4.829866720977771
 plants.s0.c2.2.5 support.s0.w05 0.2
 plants.s0.c2.2.5 ground.s0.w06 0.1269721944913885
 plants.s0.c2.2.5 roots.s0.w06 3.951957807309704
 plants.s0.c2.2.5 support.s0.w06 0.2
 plants.s0.c2.2.5 picked.f0.w04 -1.09220290184021
 plants.s0.c2.2.5 picked.f0.w05 -0.07899434119462967
 plants.s0.c2.2.5 picked.f0.w06 -0.6997912526130676
 start.s0.c1.3.4 cost 0.03375627197250973
 start.s0.c1.3.4 most.s0.c1.3.4 -2
 start.s0.c1.3.4 least.s0.c1.3.4 -2
 plants.s0.c1.3.4 cost 0.12000000000000001
 plants.s0.c1.3.4 most.s0.c1.3.4 1
 plants.s0.c1.3.4 least.s0.c1.3.4 1
 plants.s0.c1.3.4 total.g 1
 plants.s0.c1.3.4 ground.s0.w04 0.2938244302888261
 plants.s0.c1.3.4 roots.s0.w04 24.794334151531384
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
 eat.f0.w00.1 cost -1.2376028139846467
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -0.8769773099938349
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -0.5163518060030231
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
 eat.f0.w01.1 cost -1.225349320776878
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -0.8682943663305296
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -0.5112394118841813
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
 eat.f0.w02.1 cost -1.2132171492840373
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -0.8596973924064649
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -0.5061776355288924
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
 eat.f0.w03.1 cost -1.2012050983010274
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -0.851185537036104
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -0.5011659757711806
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
 eat.f0.w04.1 cost -1.1893119785158686
 eat.f0.w04.1 sum.f0.w04 -1
 eat.f0.w04.2 cost -0.842757957461489
 eat.f0.w04.2 sum.f0.w04 -1
 eat.f0.w04.3 cost -0.4962039364071094
 eat.f0.w04.3 sum.f0.w04 -1
 used.f0.w05 cost 0
 used.f0.w05 picked.f0.w05 1
 used.f0.w05 rises.f0.w05 1
 used.f0.w05 first.f0.w05 -1
 used.f0.w05 picked.f0.w06 -1
 used.f0.w05 rises.f0.w06 -1
 eaten.f0.w05 cost 0
 eaten.f0.w05 sum.f0.w05 1
 eaten.f0.w05 first.f0.w05 1
 eaten.f0.w05 sum.f0.w06 -1
 eaten.f0.w05 keeps.f0.w03 -1
 eat.f0.w05.1 cost -1.177536612391949
 eat.f0.w05.1 sum.f0.w05 -1
 eat.f0.w05.2 cost -0.8344138192688011
 eat.f0.w05.2 sum.f0.w05 -1
 eat.f0.w05.3 cost -0.491291026145653
 eat.f0.w05.3 sum.f0.w05 -1
 used.f0.w06 cost 0
 used.f0.w06 picked.f0.w06 1
 used.f0.w06 rises.f0.w06 1
 used.f0.w06 first.f0.w06 -1
 eaten.f0.w06 cost 0
 eaten.f0.w06 sum.f0.w06 1
 eaten.f0.w06 first.f0.w06 1
 eaten.f0.w06 keeps.f0.w04 -1
 eat.f0.w06.1 cost -1.1658778340514346
 eat.f0.w06.1 sum.f0.w06 -1
 eat.f0.w06.2 cost -0.8261522963057435
 eat.f0.w06.2 sum.f0.w06 -1
 eat.f0.w06.3 cost -0.48642675856005235
 eat.f0.w06.3 sum.f0.w06 -1
RHS
 RHS total.g 2
 RHS ground.s0.w05 1.0253434226762568
 RHS roots.s0.w05 131.51452855004317
 RHS support.s0.w05 0.7746867878168635
 RHS ground.s0.w06 1.0253434226762568
 RHS roots.s0.w06 131.51452855004317
 RHS support.s0.w06 0.7746867878168635
 RHS ground.s0.w04 1.0253434226762568
 RHS roots.s0.w04 131.51452855004317
BOUNDS
 UP BND start.s0.c2.2.5 1
 UP BND plants.s0.c2.2.5 2
 UP BND start.s0.c1.3.4 1
 UP BND plants.s0.c1.3.4 2
 UP BND eat.f0.w00.1 1.116685425536524
 UP BND eat.f0.w00.2 1.116685425536524
 UP BND eat.f0.w00.3 2.233370851073048
 UP BND eat.f0.w01.1 1.3338805894607655
 UP BND eat.f0.w01.2 1.3338805894607655
 UP BND eat.f0.w01.3 2.667761178921531
 UP BND eat.f0.w02.1 0.5515928405794488
 UP BND eat.f0.w02.2 0.5515928405794488
 UP BND eat.f0.w02.3 1.1031856811588976
 UP BND eat.f0.w03.1 0.3885707819162892
 UP BND eat.f0.w03.2 0.3885707819162892
 UP BND eat.f0.w03.3 0.7771415638325784
 UP BND eat.f0.w04.1 1.457005256272687
 UP BND eat.f0.w04.2 1.457005256272687
 UP BND eat.f0.w04.3 2.914010512545374
 UP BND eat.f0.w05.1 0.1829857648495236
 UP BND eat.f0.w05.2 0.1829857648495236
 UP BND eat.f0.w05.3 0.3659715296990472
 UP BND eat.f0.w06.1 0.45193197488760867
 UP BND eat.f0.w06.2 0.45193197488760867
 UP BND eat.f0.w06.3 0.9038639497752173
ENDATA
