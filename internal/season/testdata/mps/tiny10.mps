NAME season
ROWS
 N cost
 L most.s0.c1.0.1
 G least.s0.c1.0.1
 L most.s0.c1.1.4
 G least.s0.c1.1.4
 L few.s0.c1.1.4
 L all.s0.c1.1.4
 L most.s0.c0.3.4
 G least.s0.c0.3.4
 L total.g
 L total.h
 L ground.s0.w01
 L roots.s0.w01
 L support.s0.w01
 L ground.s0.w02
 L roots.s0.w02
 L support.s0.w02
 L ground.s0.w03
 L roots.s0.w03
 L support.s0.w03
 L ground.s0.w04
 L roots.s0.w04
 L support.s0.w04
 L ground.s0.w05
 L roots.s0.w05
 L support.s0.w05
 L shelf.w00
 L ground.s0.w06
 L roots.s0.w06
 L tall.s0.w06
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
 L picked.f0.w06
 G rises.f0.w06
 E sum.f0.w06
 L first.f0.w06
 L keeps.f0.w00
 L keeps.f0.w01
 L keeps.f0.w02
 L keeps.f0.w03
 L keeps.f0.w04
 G leaves.b0.f1.w04.start.s0.c1.1.4
 G leaves.b0.f0.w06.start.s0.c0.3.4
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s0.c1.0.1 cost 0.08486852912596247
 start.s0.c1.0.1 most.s0.c1.0.1 -1
 start.s0.c1.0.1 least.s0.c1.0.1 -1
 plants.s0.c1.0.1 cost -0.18
 plants.s0.c1.0.1 most.s0.c1.0.1 1
 plants.s0.c1.0.1 least.s0.c1.0.1 1
 plants.s0.c1.0.1 ground.s0.w01 0.2860044079963612
 plants.s0.c1.0.1 roots.s0.w01 7.372188314176306
 plants.s0.c1.0.1 support.s0.w01 0.2
 plants.s0.c1.0.1 ground.s0.w02 0.06657571343990085
 plants.s0.c1.0.1 roots.s0.w02 1.7160878745471362
 plants.s0.c1.0.1 support.s0.w02 0.2
 plants.s0.c1.0.1 ground.s0.w03 0.2656521168664244
 plants.s0.c1.0.1 roots.s0.w03 6.8475777884646085
 plants.s0.c1.0.1 support.s0.w03 0.2
 plants.s0.c1.0.1 ground.s0.w04 0.13406083851795697
 plants.s0.c1.0.1 roots.s0.w04 3.4556171844852597
 plants.s0.c1.0.1 support.s0.w04 0.2
 plants.s0.c1.0.1 ground.s0.w05 0.13406083851795697
 plants.s0.c1.0.1 roots.s0.w05 3.4556171844852597
 plants.s0.c1.0.1 support.s0.w05 0.2
 plants.s0.c1.0.1 shelf.w00 1
 start.s0.c1.1.4 cost 0.02648885406592145
 start.s0.c1.1.4 most.s0.c1.1.4 -2
 start.s0.c1.1.4 least.s0.c1.1.4 -2
 start.s0.c1.1.4 leaves.b0.f1.w04.start.s0.c1.1.4 -1
 plants.s0.c1.1.4 cost 0.1
 plants.s0.c1.1.4 most.s0.c1.1.4 1
 plants.s0.c1.1.4 least.s0.c1.1.4 1
 plants.s0.c1.1.4 few.s0.c1.1.4 1
 plants.s0.c1.1.4 ground.s0.w04 0.15489885676167842
 plants.s0.c1.1.4 roots.s0.w04 5.530236919060261
 M MARKER 'MARKER' 'INTEND'
 lost.s0.c1.1.4 cost 0.02
 lost.s0.c1.1.4 few.s0.c1.1.4 -1
 lost.s0.c1.1.4 all.s0.c1.1.4 -1
 M MARKER 'MARKER' 'INTORG'
 many.s0.c1.1.4 cost 0
 many.s0.c1.1.4 few.s0.c1.1.4 -1
 many.s0.c1.1.4 all.s0.c1.1.4 1
 start.s0.c0.3.4 cost 0.18200281654547848
 start.s0.c0.3.4 most.s0.c0.3.4 -1
 start.s0.c0.3.4 least.s0.c0.3.4 -1
 start.s0.c0.3.4 leaves.b0.f0.w06.start.s0.c0.3.4 -1
 plants.s0.c0.3.4 cost -0.18
 plants.s0.c0.3.4 most.s0.c0.3.4 1
 plants.s0.c0.3.4 least.s0.c0.3.4 1
 plants.s0.c0.3.4 ground.s0.w04 0.06251874351699424
 plants.s0.c0.3.4 roots.s0.w04 21.08006600879487
 plants.s0.c0.3.4 ground.s0.w05 0.06251874351699424
 plants.s0.c0.3.4 roots.s0.w05 21.08006600879487
 plants.s0.c0.3.4 shelf.w00 1
 plants.s0.c0.3.4 ground.s0.w06 0.06251874351699424
 plants.s0.c0.3.4 roots.s0.w06 21.08006600879487
 plants.s0.c0.3.4 tall.s0.w06 0.06251874351699424
 plants.s0.c0.3.4 shelf.w01 1
 plants.s0.c0.3.4 shelf.w02 1
 plants.s0.c0.3.4 shelf.w03 1
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
 eat.f0.w00.1 cost -1.5985635494957378
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -1.3148718677001816
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -1.0311801859046252
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
 eat.f0.w01.1 cost -1.5827361876195423
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -1.3018533343566154
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -1.0209704810936884
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
 eat.f0.w02.1 cost -1.5670655322965765
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -1.2889636973827876
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -1.0108618624689982
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
 eat.f0.w03.1 cost -1.5515500319768085
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -1.2762016805770175
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -1.0008533291772261
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
 eat.f0.w04.1 cost -1.5361881504720876
 eat.f0.w04.1 sum.f0.w04 -1
 eat.f0.w04.2 cost -1.2635660203732846
 eat.f0.w04.2 sum.f0.w04 -1
 eat.f0.w04.3 cost -0.9909438902744813
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
 eat.f0.w05.1 cost -1.5209783668040473
 eat.f0.w05.1 sum.f0.w05 -1
 eat.f0.w05.2 cost -1.2510554657161235
 eat.f0.w05.2 sum.f0.w05 -1
 eat.f0.w05.3 cost -0.9811325646281994
 eat.f0.w05.3 sum.f0.w05 -1
 used.f0.w06 cost 0
 used.f0.w06 picked.f0.w06 1
 used.f0.w06 rises.f0.w06 1
 used.f0.w06 first.f0.w06 -1
 eaten.f0.w06 cost 0
 eaten.f0.w06 sum.f0.w06 1
 eaten.f0.w06 first.f0.w06 1
 eaten.f0.w06 keeps.f0.w04 -1
 eat.f0.w06.1 cost -1.5059191750535117
 eat.f0.w06.1 sum.f0.w06 -1
 eat.f0.w06.2 cost -1.2386687779367556
 eat.f0.w06.2 sum.f0.w06 -1
 eat.f0.w06.3 cost -0.9714183808199992
 eat.f0.w06.3 sum.f0.w06 -1
 left.b0.f1.w04 cost 0
 left.b0.f1.w04 leaves.b0.f1.w04.start.s0.c1.1.4 1
 left.b0.f0.w06 cost 0
 left.b0.f0.w06 leaves.b0.f0.w06.start.s0.c0.3.4 1
RHS
 RHS total.g 2
 RHS total.h 1
 RHS ground.s0.w01 0.5839060976124955
 RHS roots.s0.w01 158.6749597063868
 RHS support.s0.w01 0.9089137569165631
 RHS ground.s0.w02 0.5839060976124955
 RHS roots.s0.w02 158.6749597063868
 RHS support.s0.w02 0.9089137569165631
 RHS ground.s0.w03 0.5839060976124955
 RHS roots.s0.w03 158.6749597063868
 RHS support.s0.w03 0.9089137569165631
 RHS ground.s0.w04 0.5839060976124955
 RHS roots.s0.w04 158.6749597063868
 RHS support.s0.w04 0.9089137569165631
 RHS ground.s0.w05 0.5839060976124955
 RHS roots.s0.w05 158.6749597063868
 RHS support.s0.w05 0.9089137569165631
 RHS shelf.w00 1.000001
 RHS ground.s0.w06 0.5839060976124955
 RHS roots.s0.w06 158.6749597063868
 RHS tall.s0.w06 0.6333189413879504
 RHS shelf.w01 3.000001
 RHS shelf.w02 2.000001
 RHS shelf.w03 1.000001
BOUNDS
 UP BND start.s0.c1.0.1 1
 UP BND plants.s0.c1.0.1 1
 UP BND start.s0.c1.1.4 1
 UP BND plants.s0.c1.1.4 2
 UP BND many.s0.c1.1.4 1
 UP BND start.s0.c0.3.4 1
 UP BND plants.s0.c0.3.4 1
 UP BND eat.f0.w00.1 0.631653750339507
 UP BND eat.f0.w00.2 0.631653750339507
 UP BND eat.f0.w00.3 1.263307500679014
 UP BND eat.f0.w01.1 0.5265884879535382
 UP BND eat.f0.w01.2 0.5265884879535382
 UP BND eat.f0.w01.3 1.0531769759070764
 UP BND eat.f0.w02.1 1.2255739225726052
 UP BND eat.f0.w02.2 1.2255739225726052
 UP BND eat.f0.w02.3 2.4511478451452104
 UP BND eat.f0.w03.1 0.5870689349224802
 UP BND eat.f0.w03.2 0.5870689349224802
 UP BND eat.f0.w03.3 1.1741378698449605
 UP BND eat.f0.w04.1 0.3134576269922016
 UP BND eat.f0.w04.2 0.3134576269922016
 UP BND eat.f0.w04.3 0.6269152539844032
 UP BND eat.f0.w05.1 1.2052100919810327
 UP BND eat.f0.w05.2 1.2052100919810327
 UP BND eat.f0.w05.3 2.4104201839620654
 UP BND eat.f0.w06.1 0.42716011334401016
 UP BND eat.f0.w06.2 0.42716011334401016
 UP BND eat.f0.w06.3 0.8543202266880203
 UP BND left.b0.f1.w04 1
 UP BND left.b0.f0.w06 1
ENDATA
