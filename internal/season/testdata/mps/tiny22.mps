NAME season
ROWS
 N cost
 L most.s1.c1.0.4
 G least.s1.c1.0.4
 L most.s0.c0.1.4
 G least.s0.c0.1.4
 L few.s0.c0.1.4
 L all.s0.c0.1.4
 L most.s1.c0.2.3
 G least.s1.c0.2.3
 L most.s0.c2.3.2
 G least.s0.c2.3.2
 L most.s0.c0.4.1
 G least.s0.c0.4.1
 L few.s0.c0.4.1
 L all.s0.c0.4.1
 L most.s0.c2.5.0
 G least.s0.c2.5.0
 L water.w00
 L water.w01
 L water.w02
 L water.w03
 L water.w04
 L water.w05
 L total.g
 L total.h
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
 L ground.s1.w03
 L roots.s1.w03
 L ground.s1.w05
 L roots.s1.w05
 L ground.s0.w02
 L roots.s0.w02
 L ground.s0.w03
 L roots.s0.w03
 L tall.s0.w03
 L tall.s0.w04
 L ground.s0.w01
 L roots.s0.w01
 L support.s0.w01
 L support.s0.w02
 L support.s0.w03
 L ground.s0.w00
 L roots.s0.w00
 L support.s0.w00
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
 G leaves.b0.f0.w05.start.s1.c0.2.3
 G leaves.b0.f0.w04.start.s0.c2.3.2
 G leaves.b0.f1.w04.start.s0.c0.4.1
 G leaves.b0.f0.w02.start.s0.c2.5.0
 G soon.b0.f0.i2.w04.w02
 L back.s1.c1.0.4
 G soon.b0.f0.i4.w04.w02
 L back.s0.c0.1.4
 G soon.b0.f0.i4.w03.w02
 L back.s1.c0.2.3
 L clear.w-1
 L clear.w00
 L clear.w01
 L clear.w02
 E standson.s0.w02
 G clears.s0.w02.start.s0.c2.5.0
 L clear.w03
 L clear.w04
 E standson.s0.w04
 G clears.s0.w04.start.s0.c2.3.2
 G clears.s0.w04.start.s0.c0.4.1
 E standson.s1.w04
 G clears.s1.w04.start.s1.c1.0.4
 L clear.w05
 E standson.s1.w05
 G clears.s1.w05.start.s1.c0.2.3
 L clear.w06
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
 plants.s1.c1.0.4 water.w04 0.18040572401951827
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
 plants.s0.c0.1.4 cost 0.1
 plants.s0.c0.1.4 most.s0.c0.1.4 1
 plants.s0.c0.1.4 least.s0.c0.1.4 1
 plants.s0.c0.1.4 few.s0.c0.1.4 1
 plants.s0.c0.1.4 water.w04 0.0902364113788301
 plants.s0.c0.1.4 water.w05 0.21936576239907002
 plants.s0.c0.1.4 total.g 1
 plants.s0.c0.1.4 total.h 1
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
 M MARKER 'MARKER' 'INTEND'
 lost.s0.c0.1.4 cost 0.02
 lost.s0.c0.1.4 few.s0.c0.1.4 -1
 lost.s0.c0.1.4 all.s0.c0.1.4 -1
 lost.s0.c0.1.4 back.s0.c0.1.4 1
 M MARKER 'MARKER' 'INTORG'
 many.s0.c0.1.4 cost 0
 many.s0.c0.1.4 few.s0.c0.1.4 -1
 many.s0.c0.1.4 all.s0.c0.1.4 1
 start.s1.c0.2.3 cost 0.08829474067463751
 start.s1.c0.2.3 most.s1.c0.2.3 -2
 start.s1.c0.2.3 least.s1.c0.2.3 -2
 start.s1.c0.2.3 leaves.b0.f0.w05.start.s1.c0.2.3 -1
 start.s1.c0.2.3 standson.s1.w04 1
 start.s1.c0.2.3 clears.s1.w05.start.s1.c0.2.3 -1
 plants.s1.c0.2.3 cost -0.18
 plants.s1.c0.2.3 most.s1.c0.2.3 1
 plants.s1.c0.2.3 least.s1.c0.2.3 1
 plants.s1.c0.2.3 water.w03 0.6069941240139856
 plants.s1.c0.2.3 water.w04 0.4094813186926466
 plants.s1.c0.2.3 water.w05 0.43924314141158394
 plants.s1.c0.2.3 ground.s1.w04 0.09439748336746578
 plants.s1.c0.2.3 roots.s1.w04 19.36521459601407
 plants.s1.c0.2.3 ground.s1.w03 0.09439748336746578
 plants.s1.c0.2.3 roots.s1.w03 19.36521459601407
 plants.s1.c0.2.3 ground.s1.w05 0.09439748336746578
 plants.s1.c0.2.3 roots.s1.w05 19.36521459601407
 plants.s1.c0.2.3 picked.f1.w03 -1.7922378778457642
 plants.s1.c0.2.3 picked.f1.w04 -1.4119566679000854
 plants.s1.c0.2.3 picked.f1.w05 -1.263841986656189
 plants.s1.c0.2.3 back.s1.c0.2.3 1
 start.s0.c2.3.2 cost 0.20828015626235644
 start.s0.c2.3.2 most.s0.c2.3.2 -1
 start.s0.c2.3.2 least.s0.c2.3.2 -1
 start.s0.c2.3.2 leaves.b0.f0.w04.start.s0.c2.3.2 -1
 start.s0.c2.3.2 standson.s0.w02 1
 start.s0.c2.3.2 clears.s0.w04.start.s0.c2.3.2 -1
 plants.s0.c2.3.2 cost 0.12000000000000001
 plants.s0.c2.3.2 most.s0.c2.3.2 1
 plants.s0.c2.3.2 least.s0.c2.3.2 1
 plants.s0.c2.3.2 water.w02 0.11885127488200053
 plants.s0.c2.3.2 water.w03 0.7846798321255485
 plants.s0.c2.3.2 water.w04 0.5579403514153982
 plants.s0.c2.3.2 ground.s0.w04 0.16934168254993057
 plants.s0.c2.3.2 roots.s0.w04 4.529524542151103
 plants.s0.c2.3.2 ground.s0.w02 0.16934168254993057
 plants.s0.c2.3.2 roots.s0.w02 4.529524542151103
 plants.s0.c2.3.2 ground.s0.w03 0.16934168254993057
 plants.s0.c2.3.2 roots.s0.w03 4.529524542151103
 plants.s0.c2.3.2 tall.s0.w03 0.16934168254993057
 plants.s0.c2.3.2 tall.s0.w04 0.16934168254993057
 start.s0.c0.4.1 cost 0.19476460097446224
 start.s0.c0.4.1 most.s0.c0.4.1 -2
 start.s0.c0.4.1 least.s0.c0.4.1 -2
 start.s0.c0.4.1 leaves.b0.f1.w04.start.s0.c0.4.1 -1
 start.s0.c0.4.1 standson.s0.w02 1
 start.s0.c0.4.1 clears.s0.w04.start.s0.c0.4.1 -1
 plants.s0.c0.4.1 cost -0.19999999999999998
 plants.s0.c0.4.1 most.s0.c0.4.1 1
 plants.s0.c0.4.1 least.s0.c0.4.1 1
 plants.s0.c0.4.1 few.s0.c0.4.1 1
 plants.s0.c0.4.1 water.w01 0.5345680069608758
 plants.s0.c0.4.1 water.w02 0.48410884105313534
 plants.s0.c0.4.1 water.w03 0.781048189351232
 plants.s0.c0.4.1 water.w04 0.9391999076245793
 plants.s0.c0.4.1 ground.s0.w04 0.11631973221088443
 plants.s0.c0.4.1 roots.s0.w04 7.937343947422197
 plants.s0.c0.4.1 support.s0.w04 0.2
 plants.s0.c0.4.1 ground.s0.w02 0.11631973221088443
 plants.s0.c0.4.1 roots.s0.w02 7.937343947422197
 plants.s0.c0.4.1 ground.s0.w03 0.11631973221088443
 plants.s0.c0.4.1 roots.s0.w03 7.937343947422197
 plants.s0.c0.4.1 ground.s0.w01 0.1852397113293182
 plants.s0.c0.4.1 roots.s0.w01 12.640256933160451
 plants.s0.c0.4.1 support.s0.w01 0.2
 plants.s0.c0.4.1 support.s0.w02 0.2
 plants.s0.c0.4.1 support.s0.w03 0.2
 plants.s0.c0.4.1 picked.f1.w01 -1.8081107139587402
 plants.s0.c0.4.1 picked.f1.w02 -0.8389935493469238
 plants.s0.c0.4.1 picked.f1.w03 -1.2859776020050049
 M MARKER 'MARKER' 'INTEND'
 lost.s0.c0.4.1 cost 0.02
 lost.s0.c0.4.1 few.s0.c0.4.1 -1
 lost.s0.c0.4.1 all.s0.c0.4.1 -1
 M MARKER 'MARKER' 'INTORG'
 many.s0.c0.4.1 cost 0
 many.s0.c0.4.1 few.s0.c0.4.1 -1
 many.s0.c0.4.1 all.s0.c0.4.1 1
 start.s0.c2.5.0 cost 0.1187169680305169
 start.s0.c2.5.0 most.s0.c2.5.0 -1
 start.s0.c2.5.0 least.s0.c2.5.0 -1
 start.s0.c2.5.0 leaves.b0.f0.w02.start.s0.c2.5.0 -1
 start.s0.c2.5.0 clears.s0.w02.start.s0.c2.5.0 -1
 plants.s0.c2.5.0 cost -0.18
 plants.s0.c2.5.0 most.s0.c2.5.0 1
 plants.s0.c2.5.0 least.s0.c2.5.0 1
 plants.s0.c2.5.0 water.w00 0.9394977503210274
 plants.s0.c2.5.0 water.w01 0.7314876251890952
 plants.s0.c2.5.0 water.w02 0.6914447980093166
 plants.s0.c2.5.0 ground.s0.w02 0.12265971903641945
 plants.s0.c2.5.0 roots.s0.w02 3.1838340048507785
 plants.s0.c2.5.0 ground.s0.w01 0.12265971903641945
 plants.s0.c2.5.0 roots.s0.w01 3.1838340048507785
 plants.s0.c2.5.0 support.s0.w01 0.2
 plants.s0.c2.5.0 support.s0.w02 0.2
 plants.s0.c2.5.0 ground.s0.w00 0.13990941622587466
 plants.s0.c2.5.0 roots.s0.w00 3.631578161747631
 plants.s0.c2.5.0 support.s0.w00 0.2
 plants.s0.c2.5.0 shelf.w-1 1
 M MARKER 'MARKER' 'INTEND'
 overwater.w00 cost 0.05899545455704696
 overwater.w00 water.w00 -1
 overwater.w01 cost 0.05899545455704696
 overwater.w01 water.w01 -1
 overwater.w02 cost 0.05899545455704696
 overwater.w02 water.w02 -1
 overwater.w03 cost 0.05899545455704696
 overwater.w03 water.w03 -1
 overwater.w04 cost 0.05899545455704696
 overwater.w04 water.w04 -1
 overwater.w05 cost 0.05899545455704696
 overwater.w05 water.w05 -1
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
 left.b0.f0.w04 leaves.b0.f0.w04.start.s0.c2.3.2 1
 left.b0.f0.w07 cost 0
 left.b0.f0.w07 leaves.b0.f0.w07.start.s0.c0.1.4 1
 left.b0.f0.w05 cost 0
 left.b0.f0.w05 leaves.b0.f0.w05.start.s1.c0.2.3 1
 left.b0.f1.w04 cost 0
 left.b0.f1.w04 leaves.b0.f1.w04.start.s0.c0.4.1 1
 left.b0.f0.w02 cost 0
 left.b0.f0.w02 leaves.b0.f0.w02.start.s0.c2.5.0 1
 left.b0.f0.w02 soon.b0.f0.i2.w04.w02 -1
 left.b0.f0.w02 soon.b0.f0.i4.w04.w02 -1
 left.b0.f0.w02 soon.b0.f0.i4.w03.w02 -1
 early.b0.f0.i2.w04 cost 0
 early.b0.f0.i2.w04 soon.b0.f0.i2.w04.w02 1
 early.b0.f0.i2.w04 back.s1.c1.0.4 2
 pays.s1.c1.0.4 cost 0.5
 pays.s1.c1.0.4 back.s1.c1.0.4 -1
 early.b0.f0.i4.w04 cost 0
 early.b0.f0.i4.w04 soon.b0.f0.i4.w04.w02 1
 early.b0.f0.i4.w04 back.s0.c0.1.4 1
 pays.s0.c0.1.4 cost 0.5
 pays.s0.c0.1.4 back.s0.c0.1.4 -1
 early.b0.f0.i4.w03 cost 0
 early.b0.f0.i4.w03 soon.b0.f0.i4.w03.w02 1
 early.b0.f0.i4.w03 back.s1.c0.2.3 2
 pays.s1.c0.2.3 cost 0.5
 pays.s1.c0.2.3 back.s1.c0.2.3 -1
 rest.w-1 cost 0.3
 rest.w-1 clear.w-1 -1
 rest.w00 cost 0.3
 rest.w00 clear.w00 -1
 rest.w01 cost 0.3
 rest.w01 clear.w01 -1
 rest.w02 cost 0.3
 rest.w02 clear.w02 -1
 cleared.s0.w02 cost 0
 cleared.s0.w02 clear.w02 1
 cleared.s0.w02 clears.s0.w02.start.s0.c2.5.0 1
 stands.s0.w02 cost 0
 stands.s0.w02 standson.s0.w02 -1
 stands.s0.w02 clears.s0.w02.start.s0.c2.5.0 1
 rest.w03 cost 0.3
 rest.w03 clear.w03 -1
 rest.w04 cost 0.3
 rest.w04 clear.w04 -1
 cleared.s0.w04 cost 0
 cleared.s0.w04 clear.w04 1
 cleared.s0.w04 clears.s0.w04.start.s0.c2.3.2 1
 cleared.s0.w04 clears.s0.w04.start.s0.c0.4.1 1
 stands.s0.w04 cost 0
 stands.s0.w04 standson.s0.w04 -1
 stands.s0.w04 clears.s0.w04.start.s0.c2.3.2 1
 stands.s0.w04 clears.s0.w04.start.s0.c0.4.1 1
 cleared.s1.w04 cost 0
 cleared.s1.w04 clear.w04 1
 cleared.s1.w04 clears.s1.w04.start.s1.c1.0.4 1
 stands.s1.w04 cost 0
 stands.s1.w04 standson.s1.w04 -1
 stands.s1.w04 clears.s1.w04.start.s1.c1.0.4 1
 rest.w05 cost 0.3
 rest.w05 clear.w05 -1
 cleared.s1.w05 cost 0
 cleared.s1.w05 clear.w05 1
 cleared.s1.w05 clears.s1.w05.start.s1.c0.2.3 1
 stands.s1.w05 cost 0
 stands.s1.w05 standson.s1.w05 -1
 stands.s1.w05 clears.s1.w05.start.s1.c0.2.3 1
 rest.w06 cost 0.3
 rest.w06 clear.w06 -1
RHS
 RHS water.w00 2.4381948317790396
 RHS water.w01 3.813759825724175
 RHS water.w02 2.8675047861696648
 RHS water.w03 3.4690674686760694
 RHS water.w04 3.1086713307050404
 RHS water.w05 1.8826036347099269
 RHS total.g 3
 RHS total.h 2
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
 RHS ground.s1.w03 1.2886647114246337
 RHS roots.s1.w03 128.8294856017296
 RHS ground.s1.w05 1.2886647114246337
 RHS roots.s1.w05 128.8294856017296
 RHS ground.s0.w02 1.0321946085194307
 RHS roots.s0.w02 160.08408575528398
 RHS ground.s0.w03 1.0321946085194307
 RHS roots.s0.w03 160.08408575528398
 RHS tall.s0.w03 0.5577017389613886
 RHS tall.s0.w04 0.5577017389613886
 RHS ground.s0.w01 1.0321946085194307
 RHS roots.s0.w01 160.08408575528398
 RHS support.s0.w01 0.4072915687214255
 RHS support.s0.w02 0.4072915687214255
 RHS support.s0.w03 0.4072915687214255
 RHS ground.s0.w00 1.0321946085194307
 RHS roots.s0.w00 160.08408575528398
 RHS support.s0.w00 0.4072915687214255
 RHS shelf.w-1 4.000001
 RHS back.s1.c1.0.4 2
 RHS back.s0.c0.1.4 1
 RHS back.s1.c0.2.3 2
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
 UP BND many.s0.c0.1.4 1
 UP BND start.s1.c0.2.3 1
 UP BND plants.s1.c0.2.3 2
 UP BND start.s0.c2.3.2 1
 UP BND plants.s0.c2.3.2 1
 UP BND start.s0.c0.4.1 1
 UP BND plants.s0.c0.4.1 2
 UP BND many.s0.c0.4.1 1
 UP BND start.s0.c2.5.0 1
 UP BND plants.s0.c2.5.0 1
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
 UP BND left.b0.f0.w05 1
 UP BND left.b0.f1.w04 1
 UP BND left.b0.f0.w02 1
 UP BND early.b0.f0.i2.w04 1
 UP BND early.b0.f0.i4.w04 1
 UP BND early.b0.f0.i4.w03 1
 UP BND cleared.s0.w02 1
 UP BND cleared.s0.w04 1
 UP BND cleared.s1.w04 1
 UP BND cleared.s1.w05 1
ENDATA
