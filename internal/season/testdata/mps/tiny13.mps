NAME season
ROWS
 N cost
 L most.s1.c0.0.2
 G least.s1.c0.0.2
 L most.s1.c0.1.2
 G least.s1.c0.1.2
 L few.s1.c0.1.2
 L all.s1.c0.1.2
 L most.s0.c2.2.2
 G least.s0.c2.2.2
 L most.s1.c1.3.1
 G least.s1.c1.3.1
 L most.s0.c2.5.0
 G least.s0.c2.5.0
 L few.s0.c2.5.0
 L all.s0.c2.5.0
 E pulled.stay0
 L ground.s1.w02
 L roots.s1.w02
 L support.s1.w02
 L ground.s1.w03
 L roots.s1.w03
 L shelf.w-1
 L shelf.w00
 L shelf.w01
 L ground.s0.w02
 L roots.s0.w02
 L ground.s0.w03
 L roots.s0.w03
 L ground.s1.w01
 L roots.s1.w01
 L ground.s0.w00
 L roots.s0.w00
 L ground.s0.w01
 L roots.s0.w01
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
 L keeps.f0.w00
 L keeps.f0.w01
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
 L keeps.f1.w00
 L keeps.f1.w01
 G leaves.b0.f1.w02.start.s1.c0.0.2
 G leaves.b0.f0.w03.start.s1.c0.1.2
 G leaves.b0.f0.w02.start.s0.c2.5.0
 G leaves.b0.f1.w01.pull.stay0.w01
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s1.c0.0.2 cost 0.2546673317784767
 start.s1.c0.0.2 most.s1.c0.0.2 -1
 start.s1.c0.0.2 least.s1.c0.0.2 -1
 start.s1.c0.0.2 leaves.b0.f1.w02.start.s1.c0.0.2 -1
 plants.s1.c0.0.2 cost 0.32
 plants.s1.c0.0.2 most.s1.c0.0.2 1
 plants.s1.c0.0.2 least.s1.c0.0.2 1
 plants.s1.c0.0.2 ground.s1.w02 0.23017703678714438
 plants.s1.c0.0.2 roots.s1.w02 0.10041566181702433
 plants.s1.c0.0.2 support.s1.w02 0.2
 start.s1.c0.1.2 cost 0.2082921714310749
 start.s1.c0.1.2 most.s1.c0.1.2 -3
 start.s1.c0.1.2 least.s1.c0.1.2 -2
 start.s1.c0.1.2 leaves.b0.f0.w03.start.s1.c0.1.2 -1
 plants.s1.c0.1.2 cost -0.19999999999999998
 plants.s1.c0.1.2 most.s1.c0.1.2 1
 plants.s1.c0.1.2 least.s1.c0.1.2 1
 plants.s1.c0.1.2 few.s1.c0.1.2 1
 plants.s1.c0.1.2 ground.s1.w02 0.2658747370713015
 plants.s1.c0.1.2 roots.s1.w02 17.25970947075039
 plants.s1.c0.1.2 ground.s1.w03 0.19216224731744092
 plants.s1.c0.1.2 roots.s1.w03 12.474538184709369
 plants.s1.c0.1.2 shelf.w-1 1
 plants.s1.c0.1.2 shelf.w00 1
 plants.s1.c0.1.2 shelf.w01 1
 plants.s1.c0.1.2 picked.f0.w02 -0.841141939163208
 plants.s1.c0.1.2 picked.f0.w03 -0.20549027621746063
 M MARKER 'MARKER' 'INTEND'
 lost.s1.c0.1.2 cost 0.52
 lost.s1.c0.1.2 few.s1.c0.1.2 -1
 lost.s1.c0.1.2 all.s1.c0.1.2 -1
 M MARKER 'MARKER' 'INTORG'
 many.s1.c0.1.2 cost 0
 many.s1.c0.1.2 few.s1.c0.1.2 -2
 many.s1.c0.1.2 all.s1.c0.1.2 1
 start.s0.c2.2.2 cost 0.2728029498227943
 start.s0.c2.2.2 most.s0.c2.2.2 -2
 start.s0.c2.2.2 least.s0.c2.2.2 -2
 plants.s0.c2.2.2 cost -0.18
 plants.s0.c2.2.2 most.s0.c2.2.2 1
 plants.s0.c2.2.2 least.s0.c2.2.2 1
 plants.s0.c2.2.2 ground.s0.w02 0.18574627333580374
 plants.s0.c2.2.2 roots.s0.w02 16.30422180137946
 plants.s0.c2.2.2 ground.s0.w03 0.18574627333580374
 plants.s0.c2.2.2 roots.s0.w03 16.30422180137946
 plants.s0.c2.2.2 picked.f0.w02 -1.4049012064933777
 plants.s0.c2.2.2 picked.f0.w03 -0.22749926149845123
 start.s1.c1.3.1 cost 0.28007467308063455
 start.s1.c1.3.1 most.s1.c1.3.1 -1
 start.s1.c1.3.1 least.s1.c1.3.1 -1
 plants.s1.c1.3.1 cost -0.18
 plants.s1.c1.3.1 most.s1.c1.3.1 1
 plants.s1.c1.3.1 least.s1.c1.3.1 1
 plants.s1.c1.3.1 ground.s1.w02 0.19306037076028365
 plants.s1.c1.3.1 roots.s1.w02 20.263805854066955
 plants.s1.c1.3.1 ground.s1.w03 0.2197716807669781
 plants.s1.c1.3.1 roots.s1.w03 23.067451148810182
 plants.s1.c1.3.1 shelf.w-1 1
 plants.s1.c1.3.1 shelf.w00 1
 plants.s1.c1.3.1 ground.s1.w01 0.07665904195074646
 plants.s1.c1.3.1 roots.s1.w01 8.046208224563642
 start.s0.c2.5.0 cost 0.2902539779314332
 start.s0.c2.5.0 most.s0.c2.5.0 -3
 start.s0.c2.5.0 least.s0.c2.5.0 -2
 start.s0.c2.5.0 leaves.b0.f0.w02.start.s0.c2.5.0 -1
 plants.s0.c2.5.0 cost -0.19999999999999998
 plants.s0.c2.5.0 most.s0.c2.5.0 1
 plants.s0.c2.5.0 least.s0.c2.5.0 1
 plants.s0.c2.5.0 few.s0.c2.5.0 1
 plants.s0.c2.5.0 ground.s0.w02 0.2712173665359744
 plants.s0.c2.5.0 roots.s0.w02 16.417149900223208
 plants.s0.c2.5.0 ground.s0.w00 0.15213075492461536
 plants.s0.c2.5.0 roots.s0.w00 9.20867804274714
 plants.s0.c2.5.0 ground.s0.w01 0.2712173665359744
 plants.s0.c2.5.0 roots.s0.w01 16.417149900223208
 plants.s0.c2.5.0 picked.f1.w00 -0.8365823030471802
 M MARKER 'MARKER' 'INTEND'
 lost.s0.c2.5.0 cost 0.52
 lost.s0.c2.5.0 few.s0.c2.5.0 -1
 lost.s0.c2.5.0 all.s0.c2.5.0 -1
 M MARKER 'MARKER' 'INTORG'
 many.s0.c2.5.0 cost 0
 many.s0.c2.5.0 few.s0.c2.5.0 -1
 many.s0.c2.5.0 all.s0.c2.5.0 2
 pull.stay0.w01 cost -0.16283468631152553
 pull.stay0.w01 pulled.stay0 1
 pull.stay0.w01 ground.s1.w01 0.487578412541366
 pull.stay0.w01 roots.s1.w01 17.893631526416286
 pull.stay0.w01 picked.f0.w00 -0.7884575873613358
 pull.stay0.w01 picked.f0.w01 -0.8416459262371063
 pull.stay0.w01 leaves.b0.f1.w01.pull.stay0.w01 -1
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
 eat.f0.w00.1 cost -1.4561837349768316
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -0.8511932179412426
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -0.24620270090565363
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
 eat.f0.w01.1 cost -1.4561837349768316
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -0.8511932179412426
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -0.24620270090565363
 eat.f0.w01.3 sum.f0.w01 -1
 used.f0.w02 cost 0
 used.f0.w02 picked.f0.w02 1
 used.f0.w02 rises.f0.w02 1
 used.f0.w02 first.f0.w02 -1
 used.f0.w02 picked.f0.w03 -1
 used.f0.w02 rises.f0.w03 -1
 eaten.f0.w02 cost 0
 eaten.f0.w02 sum.f0.w02 1
 eaten.f0.w02 first.f0.w02 1
 eaten.f0.w02 sum.f0.w03 -1
 eaten.f0.w02 keeps.f0.w00 -1
 eat.f0.w02.1 cost -1.4561837349768316
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -0.8511932179412426
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -0.24620270090565363
 eat.f0.w02.3 sum.f0.w02 -1
 used.f0.w03 cost 0
 used.f0.w03 picked.f0.w03 1
 used.f0.w03 rises.f0.w03 1
 used.f0.w03 first.f0.w03 -1
 eaten.f0.w03 cost 0
 eaten.f0.w03 sum.f0.w03 1
 eaten.f0.w03 first.f0.w03 1
 eaten.f0.w03 keeps.f0.w01 -1
 eat.f0.w03.1 cost -1.4561837349768316
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -0.8511932179412426
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -0.24620270090565363
 eat.f0.w03.3 sum.f0.w03 -1
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
 eat.f1.w00.1 cost -1.5415021617407116
 eat.f1.w00.1 sum.f1.w00 -1
 eat.f1.w00.2 cost -0.9930744672877599
 eat.f1.w00.2 sum.f1.w00 -1
 eat.f1.w00.3 cost -0.4446467728348082
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
 eat.f1.w01.1 cost -1.5415021617407116
 eat.f1.w01.1 sum.f1.w01 -1
 eat.f1.w01.2 cost -0.9930744672877599
 eat.f1.w01.2 sum.f1.w01 -1
 eat.f1.w01.3 cost -0.4446467728348082
 eat.f1.w01.3 sum.f1.w01 -1
 used.f1.w02 cost 0
 used.f1.w02 picked.f1.w02 1
 used.f1.w02 rises.f1.w02 1
 used.f1.w02 first.f1.w02 -1
 used.f1.w02 picked.f1.w03 -1
 used.f1.w02 rises.f1.w03 -1
 eaten.f1.w02 cost 0
 eaten.f1.w02 sum.f1.w02 1
 eaten.f1.w02 first.f1.w02 1
 eaten.f1.w02 sum.f1.w03 -1
 eaten.f1.w02 keeps.f1.w00 -1
 eat.f1.w02.1 cost -1.5415021617407116
 eat.f1.w02.1 sum.f1.w02 -1
 eat.f1.w02.2 cost -0.9930744672877599
 eat.f1.w02.2 sum.f1.w02 -1
 eat.f1.w02.3 cost -0.4446467728348082
 eat.f1.w02.3 sum.f1.w02 -1
 used.f1.w03 cost 0
 used.f1.w03 picked.f1.w03 1
 used.f1.w03 rises.f1.w03 1
 used.f1.w03 first.f1.w03 -1
 eaten.f1.w03 cost 0
 eaten.f1.w03 sum.f1.w03 1
 eaten.f1.w03 first.f1.w03 1
 eaten.f1.w03 keeps.f1.w01 -1
 eat.f1.w03.1 cost -1.5415021617407116
 eat.f1.w03.1 sum.f1.w03 -1
 eat.f1.w03.2 cost -0.9930744672877599
 eat.f1.w03.2 sum.f1.w03 -1
 eat.f1.w03.3 cost -0.4446467728348082
 eat.f1.w03.3 sum.f1.w03 -1
 left.b0.f1.w02 cost 0
 left.b0.f1.w02 leaves.b0.f1.w02.start.s1.c0.0.2 1
 left.b0.f0.w03 cost 0
 left.b0.f0.w03 leaves.b0.f0.w03.start.s1.c0.1.2 1
 left.b0.f0.w02 cost 0
 left.b0.f0.w02 leaves.b0.f0.w02.start.s0.c2.5.0 1
 left.b0.f1.w01 cost 0
 left.b0.f1.w01 leaves.b0.f1.w01.pull.stay0.w01 1
RHS
 RHS pulled.stay0 1
 RHS ground.s1.w02 0.8016928320579318
 RHS roots.s1.w02 147.7093617275812
 RHS support.s1.w02 0.24622131722387072
 RHS ground.s1.w03 0.8016928320579318
 RHS roots.s1.w03 147.7093617275812
 RHS shelf.w-1 5.000001
 RHS shelf.w00 3.000001
 RHS shelf.w01 5.000001
 RHS ground.s0.w02 0.8579623434660097
 RHS roots.s0.w02 148.7009846399205
 RHS ground.s0.w03 0.8579623434660097
 RHS roots.s0.w03 148.7009846399205
 RHS ground.s1.w01 0.8016928320579318
 RHS roots.s1.w01 147.7093617275812
 RHS ground.s0.w00 0.8579623434660097
 RHS roots.s0.w00 148.7009846399205
 RHS ground.s0.w01 0.8579623434660097
 RHS roots.s0.w01 148.7009846399205
BOUNDS
 UP BND start.s1.c0.0.2 1
 UP BND plants.s1.c0.0.2 1
 UP BND start.s1.c0.1.2 1
 UP BND plants.s1.c0.1.2 3
 UP BND many.s1.c0.1.2 1
 UP BND start.s0.c2.2.2 1
 UP BND plants.s0.c2.2.2 2
 UP BND start.s1.c1.3.1 1
 UP BND plants.s1.c1.3.1 1
 UP BND start.s0.c2.5.0 1
 UP BND plants.s0.c2.5.0 3
 UP BND many.s0.c2.5.0 1
 UP BND pull.stay0.w01 1
 UP BND eat.f0.w00.1 1.4771949525733217
 UP BND eat.f0.w00.2 1.4771949525733217
 UP BND eat.f0.w00.3 2.9543899051466433
 UP BND eat.f0.w01.1 0.8687872536308577
 UP BND eat.f0.w01.2 0.8687872536308577
 UP BND eat.f0.w01.3 1.7375745072617155
 UP BND eat.f0.w02.1 1.434978281111186
 UP BND eat.f0.w02.2 1.434978281111186
 UP BND eat.f0.w02.3 2.869956562222372
 UP BND eat.f0.w03.1 0.3826297696344434
 UP BND eat.f0.w03.2 0.3826297696344434
 UP BND eat.f0.w03.3 0.7652595392688868
 UP BND eat.f1.w00.1 0.15702577800377293
 UP BND eat.f1.w00.2 0.15702577800377293
 UP BND eat.f1.w00.3 0.31405155600754586
 UP BND eat.f1.w01.1 0.39420007137241353
 UP BND eat.f1.w01.2 0.39420007137241353
 UP BND eat.f1.w01.3 0.7884001427448271
 UP BND eat.f1.w02.1 1.2561230799069951
 UP BND eat.f1.w02.2 1.2561230799069951
 UP BND eat.f1.w02.3 2.5122461598139902
 UP BND eat.f1.w03.1 1.4167201893325987
 UP BND eat.f1.w03.2 1.4167201893325987
 UP BND eat.f1.w03.3 2.8334403786651974
 UP BND left.b0.f1.w02 1
 UP BND left.b0.f0.w03 1
 UP BND left.b0.f0.w02 1
 UP BND left.b0.f1.w01 1
ENDATA
