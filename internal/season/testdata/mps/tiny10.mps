NAME season
ROWS
 N cost
 L most.s0.c1.0.1
 G least.s0.c1.0.1
 L most.s0.c1.1.4
 G least.s0.c1.1.4
 L most.s1.c2.2.1
 G least.s1.c2.2.1
 L most.s0.c1.3.5
 G least.s0.c1.3.5
 E pulled.stay0
 L total.g
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
 L ground.s1.w01
 L roots.s1.w01
 L tall.s1.w01
 L support.s1.w01
 L ground.s1.w02
 L roots.s1.w02
 L tall.s1.w02
 L support.s1.w02
 L ground.s1.w03
 L roots.s1.w03
 L tall.s1.w03
 L support.s1.w03
 L ground.s1.w04
 L roots.s1.w04
 L tall.s1.w04
 L support.s1.w04
 L ground.s1.w05
 L roots.s1.w05
 L tall.s1.w05
 L support.s1.w05
 L tall.s0.w05
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
 G leaves.b0.f1.w05.start.s1.c2.2.1
 G leaves.b0.f0.w05.start.s0.c1.3.5
 G leaves.b0.f0.w-1.pull.stay0.before
 G leaves.b0.f0.w00.pull.stay0.w00
 G leaves.b0.f0.w01.pull.stay0.w01
 G leaves.b0.f0.w02.pull.stay0.w02
 G leaves.b0.f0.w03.pull.stay0.w03
 G leaves.b0.f0.w04.pull.stay0.w04
 G leaves.b0.f0.w05.pull.stay0.w05
 G leaves.b0.f0.w06.pull.stay0.w06
 G soon.b0.f0.i3.w05.w02
 G soon.b0.f0.i3.w05.w03
 G soon.b0.f0.i3.w05.w04
 L back.s0.c1.3.5
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
 plants.s0.c1.1.4 cost 0.12000000000000001
 plants.s0.c1.1.4 most.s0.c1.1.4 1
 plants.s0.c1.1.4 least.s0.c1.1.4 1
 plants.s0.c1.1.4 ground.s0.w04 0.15489885676167842
 plants.s0.c1.1.4 roots.s0.w04 5.530236919060261
 start.s1.c2.2.1 cost 0.23508160554870153
 start.s1.c2.2.1 most.s1.c2.2.1 -2
 start.s1.c2.2.1 least.s1.c2.2.1 -2
 start.s1.c2.2.1 leaves.b0.f1.w05.start.s1.c2.2.1 -1
 plants.s1.c2.2.1 cost 0.12000000000000001
 plants.s1.c2.2.1 most.s1.c2.2.1 1
 plants.s1.c2.2.1 least.s1.c2.2.1 1
 plants.s1.c2.2.1 total.g 1
 plants.s1.c2.2.1 ground.s1.w01 0.16066100120679466
 plants.s1.c2.2.1 roots.s1.w01 2.0614083451566763
 plants.s1.c2.2.1 tall.s1.w01 0.16066100120679466
 plants.s1.c2.2.1 support.s1.w01 0.2
 plants.s1.c2.2.1 ground.s1.w02 0.1314731758771096
 plants.s1.c2.2.1 roots.s1.w02 1.6869053465469328
 plants.s1.c2.2.1 tall.s1.w02 0.1314731758771096
 plants.s1.c2.2.1 support.s1.w02 0.2
 plants.s1.c2.2.1 ground.s1.w03 0.11742561429486512
 plants.s1.c2.2.1 roots.s1.w03 1.5066639658930916
 plants.s1.c2.2.1 tall.s1.w03 0.11742561429486512
 plants.s1.c2.2.1 support.s1.w03 0.2
 plants.s1.c2.2.1 ground.s1.w04 0.11608994977455364
 plants.s1.c2.2.1 roots.s1.w04 1.4895263284588782
 plants.s1.c2.2.1 tall.s1.w04 0.11608994977455364
 plants.s1.c2.2.1 support.s1.w04 0.2
 plants.s1.c2.2.1 ground.s1.w05 0.11608994977455364
 plants.s1.c2.2.1 roots.s1.w05 1.4895263284588782
 plants.s1.c2.2.1 tall.s1.w05 0.11608994977455364
 plants.s1.c2.2.1 support.s1.w05 0.2
 plants.s1.c2.2.1 picked.f0.w02 -0.0045099142007529736
 start.s0.c1.3.5 cost 0.23854865864157299
 start.s0.c1.3.5 most.s0.c1.3.5 -1
 start.s0.c1.3.5 least.s0.c1.3.5 -1
 start.s0.c1.3.5 leaves.b0.f0.w05.start.s0.c1.3.5 -1
 plants.s0.c1.3.5 cost 0.12000000000000001
 plants.s0.c1.3.5 most.s0.c1.3.5 1
 plants.s0.c1.3.5 least.s0.c1.3.5 1
 plants.s0.c1.3.5 total.g 1
 plants.s0.c1.3.5 ground.s0.w05 0.1278537025677037
 plants.s0.c1.3.5 roots.s0.w05 14.398551672261704
 plants.s0.c1.3.5 tall.s0.w05 0.1278537025677037
 plants.s0.c1.3.5 back.s0.c1.3.5 1
 pull.stay0.before cost 0.10852688026878006
 pull.stay0.before pulled.stay0 1
 pull.stay0.before leaves.b0.f0.w-1.pull.stay0.before -1
 pull.stay0.w00 cost 0.10852688026878006
 pull.stay0.w00 pulled.stay0 1
 pull.stay0.w00 leaves.b0.f0.w00.pull.stay0.w00 -1
 pull.stay0.w01 cost 0.10852688026878006
 pull.stay0.w01 pulled.stay0 1
 pull.stay0.w01 ground.s0.w01 0.5185195970008222
 pull.stay0.w01 roots.s0.w01 24.58732723464806
 pull.stay0.w01 support.s0.w01 0.1
 pull.stay0.w01 leaves.b0.f0.w01.pull.stay0.w01 -1
 pull.stay0.w02 cost 0.10852688026878006
 pull.stay0.w02 pulled.stay0 1
 pull.stay0.w02 ground.s0.w01 0.5185195970008222
 pull.stay0.w02 roots.s0.w01 24.58732723464806
 pull.stay0.w02 support.s0.w01 0.1
 pull.stay0.w02 ground.s0.w02 0.5185195970008222
 pull.stay0.w02 roots.s0.w02 24.58732723464806
 pull.stay0.w02 support.s0.w02 0.1
 pull.stay0.w02 leaves.b0.f0.w02.pull.stay0.w02 -1
 pull.stay0.w03 cost 0.10852688026878006
 pull.stay0.w03 pulled.stay0 1
 pull.stay0.w03 ground.s0.w01 0.5185195970008222
 pull.stay0.w03 roots.s0.w01 24.58732723464806
 pull.stay0.w03 support.s0.w01 0.1
 pull.stay0.w03 ground.s0.w02 0.5185195970008222
 pull.stay0.w03 roots.s0.w02 24.58732723464806
 pull.stay0.w03 support.s0.w02 0.1
 pull.stay0.w03 ground.s0.w03 0.5185195970008222
 pull.stay0.w03 roots.s0.w03 24.58732723464806
 pull.stay0.w03 support.s0.w03 0.1
 pull.stay0.w03 leaves.b0.f0.w03.pull.stay0.w03 -1
 pull.stay0.w04 cost 0.10852688026878006
 pull.stay0.w04 pulled.stay0 1
 pull.stay0.w04 ground.s0.w01 0.5185195970008222
 pull.stay0.w04 roots.s0.w01 24.58732723464806
 pull.stay0.w04 support.s0.w01 0.1
 pull.stay0.w04 ground.s0.w02 0.5185195970008222
 pull.stay0.w04 roots.s0.w02 24.58732723464806
 pull.stay0.w04 support.s0.w02 0.1
 pull.stay0.w04 ground.s0.w03 0.5185195970008222
 pull.stay0.w04 roots.s0.w03 24.58732723464806
 pull.stay0.w04 support.s0.w03 0.1
 pull.stay0.w04 ground.s0.w04 0.5185195970008222
 pull.stay0.w04 roots.s0.w04 24.58732723464806
 pull.stay0.w04 support.s0.w04 0.1
 pull.stay0.w04 leaves.b0.f0.w04.pull.stay0.w04 -1
 pull.stay0.w05 cost 0.10852688026878006
 pull.stay0.w05 pulled.stay0 1
 pull.stay0.w05 ground.s0.w01 0.5185195970008222
 pull.stay0.w05 roots.s0.w01 24.58732723464806
 pull.stay0.w05 support.s0.w01 0.1
 pull.stay0.w05 ground.s0.w02 0.5185195970008222
 pull.stay0.w05 roots.s0.w02 24.58732723464806
 pull.stay0.w05 support.s0.w02 0.1
 pull.stay0.w05 ground.s0.w03 0.5185195970008222
 pull.stay0.w05 roots.s0.w03 24.58732723464806
 pull.stay0.w05 support.s0.w03 0.1
 pull.stay0.w05 ground.s0.w04 0.5185195970008222
 pull.stay0.w05 roots.s0.w04 24.58732723464806
 pull.stay0.w05 support.s0.w04 0.1
 pull.stay0.w05 ground.s0.w05 0.5185195970008222
 pull.stay0.w05 roots.s0.w05 24.58732723464806
 pull.stay0.w05 support.s0.w05 0.1
 pull.stay0.w05 tall.s0.w05 0.5185195970008222
 pull.stay0.w05 leaves.b0.f0.w05.pull.stay0.w05 -1
 pull.stay0.w06 cost -0.24542442830601124
 pull.stay0.w06 pulled.stay0 1
 pull.stay0.w06 ground.s0.w01 0.5185195970008222
 pull.stay0.w06 roots.s0.w01 24.58732723464806
 pull.stay0.w06 support.s0.w01 0.1
 pull.stay0.w06 ground.s0.w02 0.5185195970008222
 pull.stay0.w06 roots.s0.w02 24.58732723464806
 pull.stay0.w06 support.s0.w02 0.1
 pull.stay0.w06 ground.s0.w03 0.5185195970008222
 pull.stay0.w06 roots.s0.w03 24.58732723464806
 pull.stay0.w06 support.s0.w03 0.1
 pull.stay0.w06 ground.s0.w04 0.5185195970008222
 pull.stay0.w06 roots.s0.w04 24.58732723464806
 pull.stay0.w06 support.s0.w04 0.1
 pull.stay0.w06 ground.s0.w05 0.5185195970008222
 pull.stay0.w06 roots.s0.w05 24.58732723464806
 pull.stay0.w06 support.s0.w05 0.1
 pull.stay0.w06 tall.s0.w05 0.5185195970008222
 pull.stay0.w06 leaves.b0.f0.w06.pull.stay0.w06 -1
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
 left.b0.f1.w05 cost 0
 left.b0.f1.w05 leaves.b0.f1.w05.start.s1.c2.2.1 1
 left.b0.f0.w05 cost 0
 left.b0.f0.w05 leaves.b0.f0.w05.start.s0.c1.3.5 1
 left.b0.f0.w05 leaves.b0.f0.w05.pull.stay0.w05 1
 left.b0.f0.w-1 cost 0
 left.b0.f0.w-1 leaves.b0.f0.w-1.pull.stay0.before 1
 left.b0.f0.w00 cost 0
 left.b0.f0.w00 leaves.b0.f0.w00.pull.stay0.w00 1
 left.b0.f0.w01 cost 0
 left.b0.f0.w01 leaves.b0.f0.w01.pull.stay0.w01 1
 left.b0.f0.w02 cost 0
 left.b0.f0.w02 leaves.b0.f0.w02.pull.stay0.w02 1
 left.b0.f0.w02 soon.b0.f0.i3.w05.w02 -1
 left.b0.f0.w03 cost 0
 left.b0.f0.w03 leaves.b0.f0.w03.pull.stay0.w03 1
 left.b0.f0.w03 soon.b0.f0.i3.w05.w03 -1
 left.b0.f0.w04 cost 0
 left.b0.f0.w04 leaves.b0.f0.w04.pull.stay0.w04 1
 left.b0.f0.w04 soon.b0.f0.i3.w05.w04 -1
 left.b0.f0.w06 cost 0
 left.b0.f0.w06 leaves.b0.f0.w06.pull.stay0.w06 1
 early.b0.f0.i3.w05 cost 0
 early.b0.f0.i3.w05 soon.b0.f0.i3.w05.w02 1
 early.b0.f0.i3.w05 soon.b0.f0.i3.w05.w03 1
 early.b0.f0.i3.w05 soon.b0.f0.i3.w05.w04 1
 early.b0.f0.i3.w05 back.s0.c1.3.5 1
 pays.s0.c1.3.5 cost 0.5
 pays.s0.c1.3.5 back.s0.c1.3.5 -1
RHS
 RHS pulled.stay0 1
 RHS total.g 2
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
 RHS ground.s1.w01 0.9398821098111073
 RHS roots.s1.w01 120.99032324194829
 RHS tall.s1.w01 0.6648314154060987
 RHS support.s1.w01 0.7433819062189791
 RHS ground.s1.w02 0.9398821098111073
 RHS roots.s1.w02 120.99032324194829
 RHS tall.s1.w02 0.6648314154060987
 RHS support.s1.w02 0.7433819062189791
 RHS ground.s1.w03 0.9398821098111073
 RHS roots.s1.w03 120.99032324194829
 RHS tall.s1.w03 0.6648314154060987
 RHS support.s1.w03 0.7433819062189791
 RHS ground.s1.w04 0.9398821098111073
 RHS roots.s1.w04 120.99032324194829
 RHS tall.s1.w04 0.6648314154060987
 RHS support.s1.w04 0.7433819062189791
 RHS ground.s1.w05 0.9398821098111073
 RHS roots.s1.w05 120.99032324194829
 RHS tall.s1.w05 0.6648314154060987
 RHS support.s1.w05 0.7433819062189791
 RHS tall.s0.w05 0.6333189413879504
 RHS back.s0.c1.3.5 1
BOUNDS
 UP BND start.s0.c1.0.1 1
 UP BND plants.s0.c1.0.1 1
 UP BND start.s0.c1.1.4 1
 UP BND plants.s0.c1.1.4 2
 UP BND start.s1.c2.2.1 1
 UP BND plants.s1.c2.2.1 2
 UP BND start.s0.c1.3.5 1
 UP BND plants.s0.c1.3.5 1
 UP BND pull.stay0.before 1
 UP BND pull.stay0.w00 1
 UP BND pull.stay0.w01 1
 UP BND pull.stay0.w02 1
 UP BND pull.stay0.w03 1
 UP BND pull.stay0.w04 1
 UP BND pull.stay0.w05 1
 UP BND pull.stay0.w06 1
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
 UP BND left.b0.f1.w05 1
 UP BND left.b0.f0.w05 1
 UP BND left.b0.f0.w-1 1
 UP BND left.b0.f0.w00 1
 UP BND left.b0.f0.w01 1
 UP BND left.b0.f0.w02 1
 UP BND left.b0.f0.w03 1
 UP BND left.b0.f0.w04 1
 UP BND left.b0.f0.w06 1
 UP BND early.b0.f0.i3.w05 1
ENDATA
