NAME season
ROWS
 N cost
 L most.s0.c1.2.2
 G least.s0.c1.2.2
 L most.s0.c2.3.5
 G least.s0.c2.3.5
 L most.s0.c0.4.0
 G least.s0.c0.4.0
 L most.s0.c1.5.2
 G least.s0.c1.5.2
 E pulled.stay0
 E pulled.stay1
 L minutes.w00
 L minutes.w01
 L minutes.w02
 L minutes.w03
 L minutes.w04
 L minutes.w05
 L minutes.w06
 L minutes.w07
 L water.w00
 L water.w01
 L water.w02
 L water.w03
 L water.w04
 L water.w05
 L water.w06
 L water.w07
 L total.g
 L ground.s0.w02
 L roots.s0.w02
 L ground.s0.w03
 L roots.s0.w03
 L shelf.w-1
 L shelf.w00
 L shelf.w01
 L ground.s0.w05
 L roots.s0.w05
 L support.s0.w05
 L ground.s0.w06
 L roots.s0.w06
 L support.s0.w06
 L ground.s0.w00
 L roots.s0.w00
 L ground.s0.w01
 L roots.s0.w01
 L ground.s0.w04
 L roots.s0.w04
 L support.s0.w02
 L support.s0.w03
 L support.s0.w04
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
 G leaves.b0.f1.w06.start.s0.c0.4.0
 G leaves.b0.f1.w05.start.s0.c1.5.2
 G leaves.b0.f1.w00.pull.stay0.w00
 L clear.w-1
 E standson.s0.w-1
 G clears.s0.w-1.pull.stay1.before
 L clear.w00
 E standson.s0.w00
 G clears.s0.w00.pull.stay0.w00
 G clears.s0.w00.pull.stay1.w00
 L clear.w01
 E standson.s0.w01
 G clears.s0.w01.pull.stay1.w01
 L clear.w02
 E standson.s0.w02
 G clears.s0.w02.pull.stay1.w02
 L clear.w03
 E standson.s0.w03
 G clears.s0.w03.start.s0.c1.2.2
 G clears.s0.w03.pull.stay1.w03
 L clear.w04
 E standson.s0.w04
 G clears.s0.w04.pull.stay1.w04
 L clear.w05
 E standson.s0.w05
 G clears.s0.w05.start.s0.c1.5.2
 L clear.w06
 E standson.s0.w06
 G clears.s0.w06.start.s0.c2.3.5
 G clears.s0.w06.start.s0.c0.4.0
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s0.c1.2.2 cost 0.15020226944382487
 start.s0.c1.2.2 most.s0.c1.2.2 -1
 start.s0.c1.2.2 least.s0.c1.2.2 -1
 start.s0.c1.2.2 minutes.w02 5
 start.s0.c1.2.2 standson.s0.w02 1
 start.s0.c1.2.2 clears.s0.w03.start.s0.c1.2.2 -1
 plants.s0.c1.2.2 cost 0.12000000000000001
 plants.s0.c1.2.2 most.s0.c1.2.2 1
 plants.s0.c1.2.2 least.s0.c1.2.2 1
 plants.s0.c1.2.2 minutes.w02 0.865069609059145
 plants.s0.c1.2.2 minutes.w03 3.6314468239550024
 plants.s0.c1.2.2 water.w02 0.7029015014370289
 plants.s0.c1.2.2 total.g 1
 plants.s0.c1.2.2 ground.s0.w02 0.13412899926567903
 plants.s0.c1.2.2 roots.s0.w02 13.90134545414459
 plants.s0.c1.2.2 ground.s0.w03 0.15925553218783334
 plants.s0.c1.2.2 roots.s0.w03 16.505499784141005
 plants.s0.c1.2.2 shelf.w-1 1
 plants.s0.c1.2.2 shelf.w00 1
 plants.s0.c1.2.2 shelf.w01 1
 plants.s0.c1.2.2 picked.f0.w03 -1.4501781463623047
 plants.s0.c1.2.2 picked.f0.w04 -0.9127201437950134
 plants.s0.c1.2.2 picked.f0.w05 -0.34366312623023987
 start.s0.c2.3.5 cost 0.2359758360110459
 start.s0.c2.3.5 most.s0.c2.3.5 -2
 start.s0.c2.3.5 least.s0.c2.3.5 -1
 start.s0.c2.3.5 minutes.w05 5
 start.s0.c2.3.5 standson.s0.w05 1
 start.s0.c2.3.5 clears.s0.w06.start.s0.c2.3.5 -1
 plants.s0.c2.3.5 cost -0.18
 plants.s0.c2.3.5 most.s0.c2.3.5 1
 plants.s0.c2.3.5 least.s0.c2.3.5 1
 plants.s0.c2.3.5 minutes.w05 1.1217853788031884
 plants.s0.c2.3.5 water.w05 0.40098285124917266
 plants.s0.c2.3.5 water.w06 0.3820617898839407
 plants.s0.c2.3.5 ground.s0.w05 0.18242643578600257
 plants.s0.c2.3.5 roots.s0.w05 15.308589244150966
 plants.s0.c2.3.5 support.s0.w05 0.2
 plants.s0.c2.3.5 ground.s0.w06 0.18242643578600257
 plants.s0.c2.3.5 roots.s0.w06 15.308589244150966
 plants.s0.c2.3.5 support.s0.w06 0.2
 plants.s0.c2.3.5 picked.f1.w06 -1.8099237084388733
 plants.s0.c2.3.5 picked.f1.w07 -0.9166581034660339
 start.s0.c0.4.0 cost 0.22463147024738497
 start.s0.c0.4.0 most.s0.c0.4.0 -1
 start.s0.c0.4.0 least.s0.c0.4.0 -1
 start.s0.c0.4.0 minutes.w00 5
 start.s0.c0.4.0 leaves.b0.f1.w06.start.s0.c0.4.0 -1
 start.s0.c0.4.0 standson.s0.w00 1
 start.s0.c0.4.0 standson.s0.w01 1
 start.s0.c0.4.0 standson.s0.w02 1
 start.s0.c0.4.0 standson.s0.w03 1
 start.s0.c0.4.0 standson.s0.w04 1
 start.s0.c0.4.0 standson.s0.w05 1
 start.s0.c0.4.0 clears.s0.w06.start.s0.c0.4.0 -1
 plants.s0.c0.4.0 cost 0.12000000000000001
 plants.s0.c0.4.0 most.s0.c0.4.0 1
 plants.s0.c0.4.0 least.s0.c0.4.0 1
 plants.s0.c0.4.0 minutes.w00 0.2985625710565367
 plants.s0.c0.4.0 minutes.w01 1.1178105216869074
 plants.s0.c0.4.0 minutes.w02 1.5831859150089707
 plants.s0.c0.4.0 minutes.w03 1.0118977485750493
 plants.s0.c0.4.0 minutes.w04 1.8305320775347602
 plants.s0.c0.4.0 water.w00 0.48283575209091634
 plants.s0.c0.4.0 water.w01 0.3960582557078314
 plants.s0.c0.4.0 water.w02 0.4636635102595663
 plants.s0.c0.4.0 water.w03 0.41540807673895674
 plants.s0.c0.4.0 water.w04 0.6174259075528409
 plants.s0.c0.4.0 water.w05 0.8794841853370381
 plants.s0.c0.4.0 ground.s0.w02 0.11338602130155859
 plants.s0.c0.4.0 roots.s0.w02 4.252291850664772
 plants.s0.c0.4.0 ground.s0.w03 0.19089107660062343
 plants.s0.c0.4.0 roots.s0.w03 7.158947461738813
 plants.s0.c0.4.0 shelf.w-1 1
 plants.s0.c0.4.0 ground.s0.w05 0.24073509965411846
 plants.s0.c0.4.0 roots.s0.w05 9.028237261325515
 plants.s0.c0.4.0 ground.s0.w06 0.24073509965411846
 plants.s0.c0.4.0 roots.s0.w06 9.028237261325515
 plants.s0.c0.4.0 ground.s0.w00 0.188402351530551
 plants.s0.c0.4.0 roots.s0.w00 7.065613334546287
 plants.s0.c0.4.0 ground.s0.w01 0.3030837460544793
 plants.s0.c0.4.0 roots.s0.w01 11.366485291769365
 plants.s0.c0.4.0 ground.s0.w04 0.24073509965411846
 plants.s0.c0.4.0 roots.s0.w04 9.028237261325515
 start.s0.c1.5.2 cost 0.11577327647088834
 start.s0.c1.5.2 most.s0.c1.5.2 -2
 start.s0.c1.5.2 least.s0.c1.5.2 -2
 start.s0.c1.5.2 minutes.w02 5
 start.s0.c1.5.2 leaves.b0.f1.w05.start.s0.c1.5.2 -1
 start.s0.c1.5.2 standson.s0.w02 1
 start.s0.c1.5.2 standson.s0.w03 1
 start.s0.c1.5.2 standson.s0.w04 1
 start.s0.c1.5.2 clears.s0.w05.start.s0.c1.5.2 -1
 plants.s0.c1.5.2 cost 0.12000000000000001
 plants.s0.c1.5.2 most.s0.c1.5.2 1
 plants.s0.c1.5.2 least.s0.c1.5.2 1
 plants.s0.c1.5.2 minutes.w02 0.4937897123152033
 plants.s0.c1.5.2 water.w02 0.5873374686484292
 plants.s0.c1.5.2 water.w03 0.37292483722042935
 plants.s0.c1.5.2 water.w04 0.27585503633866826
 plants.s0.c1.5.2 ground.s0.w02 0.22199605201586042
 plants.s0.c1.5.2 roots.s0.w02 15.523874108623643
 plants.s0.c1.5.2 ground.s0.w03 0.22199605201586042
 plants.s0.c1.5.2 roots.s0.w03 15.523874108623643
 plants.s0.c1.5.2 ground.s0.w05 0.22199605201586042
 plants.s0.c1.5.2 roots.s0.w05 15.523874108623643
 plants.s0.c1.5.2 support.s0.w05 0.2
 plants.s0.c1.5.2 ground.s0.w04 0.22199605201586042
 plants.s0.c1.5.2 roots.s0.w04 15.523874108623643
 plants.s0.c1.5.2 support.s0.w02 0.2
 plants.s0.c1.5.2 support.s0.w03 0.2
 plants.s0.c1.5.2 support.s0.w04 0.2
 pull.stay0.w00 cost -0.04653916539178388
 pull.stay0.w00 pulled.stay0 1
 pull.stay0.w00 minutes.w00 2.139571937203507
 pull.stay0.w00 water.w00 1.1491960726475294
 pull.stay0.w00 ground.s0.w00 0.2426584310850095
 pull.stay0.w00 roots.s0.w00 5.631158346719606
 pull.stay0.w00 picked.f0.w00 -1.298151969909668
 pull.stay0.w00 leaves.b0.f1.w00.pull.stay0.w00 -1
 pull.stay0.w00 standson.s0.w-1 1
 pull.stay0.w00 clears.s0.w00.pull.stay0.w00 -1
 pull.stay1.before cost 0.18505111097839555
 pull.stay1.before pulled.stay1 1
 pull.stay1.before clears.s0.w-1.pull.stay1.before -1
 pull.stay1.w00 cost 0.18505111097839555
 pull.stay1.w00 pulled.stay1 1
 pull.stay1.w00 minutes.w00 1.5054197706139396
 pull.stay1.w00 water.w00 1.8447787950251298
 pull.stay1.w00 ground.s0.w00 0.13562504697689906
 pull.stay1.w00 roots.s0.w00 10.151039660677903
 pull.stay1.w00 picked.f1.w00 -0.275474451482296
 pull.stay1.w00 standson.s0.w-1 1
 pull.stay1.w00 clears.s0.w00.pull.stay1.w00 -1
 pull.stay1.w01 cost 0.18505111097839555
 pull.stay1.w01 pulled.stay1 1
 pull.stay1.w01 minutes.w00 1.5054197706139396
 pull.stay1.w01 minutes.w01 1.7717162464334022
 pull.stay1.w01 water.w00 1.8447787950251298
 pull.stay1.w01 water.w01 0.7115066959753973
 pull.stay1.w01 ground.s0.w00 0.13562504697689906
 pull.stay1.w01 roots.s0.w00 10.151039660677903
 pull.stay1.w01 ground.s0.w01 0.004626723476020822
 pull.stay1.w01 roots.s0.w01 0.3462933621108835
 pull.stay1.w01 picked.f1.w00 -0.275474451482296
 pull.stay1.w01 picked.f1.w01 -0.8133386671543121
 pull.stay1.w01 standson.s0.w-1 1
 pull.stay1.w01 standson.s0.w00 1
 pull.stay1.w01 clears.s0.w01.pull.stay1.w01 -1
 pull.stay1.w02 cost 0.18505111097839555
 pull.stay1.w02 pulled.stay1 1
 pull.stay1.w02 minutes.w00 1.5054197706139396
 pull.stay1.w02 minutes.w01 1.7717162464334022
 pull.stay1.w02 minutes.w02 0.5523603166623805
 pull.stay1.w02 water.w00 1.8447787950251298
 pull.stay1.w02 water.w01 0.7115066959753973
 pull.stay1.w02 water.w02 0.19105825877242144
 pull.stay1.w02 ground.s0.w02 0.10965298693433857
 pull.stay1.w02 roots.s0.w02 8.207125778705603
 pull.stay1.w02 ground.s0.w00 0.13562504697689906
 pull.stay1.w02 roots.s0.w00 10.151039660677903
 pull.stay1.w02 ground.s0.w01 0.004626723476020822
 pull.stay1.w02 roots.s0.w01 0.3462933621108835
 pull.stay1.w02 support.s0.w02 0.1
 pull.stay1.w02 picked.f1.w00 -0.275474451482296
 pull.stay1.w02 picked.f1.w01 -0.8133386671543121
 pull.stay1.w02 picked.f1.w02 -0.40701133012771606
 pull.stay1.w02 standson.s0.w-1 1
 pull.stay1.w02 standson.s0.w00 1
 pull.stay1.w02 standson.s0.w01 1
 pull.stay1.w02 clears.s0.w02.pull.stay1.w02 -1
 pull.stay1.w03 cost 0.18505111097839555
 pull.stay1.w03 pulled.stay1 1
 pull.stay1.w03 minutes.w00 1.5054197706139396
 pull.stay1.w03 minutes.w01 1.7717162464334022
 pull.stay1.w03 minutes.w02 0.5523603166623805
 pull.stay1.w03 minutes.w03 1.3673945815783881
 pull.stay1.w03 water.w00 1.8447787950251298
 pull.stay1.w03 water.w01 0.7115066959753973
 pull.stay1.w03 water.w02 0.19105825877242144
 pull.stay1.w03 water.w03 0.4911531162430678
 pull.stay1.w03 ground.s0.w02 0.10965298693433857
 pull.stay1.w03 roots.s0.w02 8.207125778705603
 pull.stay1.w03 ground.s0.w03 0.3500816256926446
 pull.stay1.w03 roots.s0.w03 26.202331693834772
 pull.stay1.w03 ground.s0.w00 0.13562504697689906
 pull.stay1.w03 roots.s0.w00 10.151039660677903
 pull.stay1.w03 ground.s0.w01 0.004626723476020822
 pull.stay1.w03 roots.s0.w01 0.3462933621108835
 pull.stay1.w03 support.s0.w02 0.1
 pull.stay1.w03 support.s0.w03 0.1
 pull.stay1.w03 picked.f1.w00 -0.275474451482296
 pull.stay1.w03 picked.f1.w01 -0.8133386671543121
 pull.stay1.w03 picked.f1.w02 -0.40701133012771606
 pull.stay1.w03 picked.f1.w03 -0.7155789136886597
 pull.stay1.w03 standson.s0.w-1 1
 pull.stay1.w03 standson.s0.w00 1
 pull.stay1.w03 standson.s0.w01 1
 pull.stay1.w03 standson.s0.w02 1
 pull.stay1.w03 clears.s0.w03.pull.stay1.w03 -1
 pull.stay1.w04 cost -0.3362936791237007
 pull.stay1.w04 pulled.stay1 1
 pull.stay1.w04 minutes.w00 1.5054197706139396
 pull.stay1.w04 minutes.w01 1.7717162464334022
 pull.stay1.w04 minutes.w02 0.5523603166623805
 pull.stay1.w04 minutes.w03 1.3673945815783881
 pull.stay1.w04 minutes.w04 1.5077851275614633
 pull.stay1.w04 water.w00 1.8447787950251298
 pull.stay1.w04 water.w01 0.7115066959753973
 pull.stay1.w04 water.w02 0.19105825877242144
 pull.stay1.w04 water.w03 0.4911531162430678
 pull.stay1.w04 water.w04 1.5579179209395706
 pull.stay1.w04 ground.s0.w02 0.10965298693433857
 pull.stay1.w04 roots.s0.w02 8.207125778705603
 pull.stay1.w04 ground.s0.w03 0.3500816256926446
 pull.stay1.w04 roots.s0.w03 26.202331693834772
 pull.stay1.w04 ground.s0.w00 0.13562504697689906
 pull.stay1.w04 roots.s0.w00 10.151039660677903
 pull.stay1.w04 ground.s0.w01 0.004626723476020822
 pull.stay1.w04 roots.s0.w01 0.3462933621108835
 pull.stay1.w04 ground.s0.w04 0.48531426848886505
 pull.stay1.w04 roots.s0.w04 36.324001334078595
 pull.stay1.w04 support.s0.w02 0.1
 pull.stay1.w04 support.s0.w03 0.1
 pull.stay1.w04 support.s0.w04 0.1
 pull.stay1.w04 picked.f1.w00 -0.275474451482296
 pull.stay1.w04 picked.f1.w01 -0.8133386671543121
 pull.stay1.w04 picked.f1.w02 -0.40701133012771606
 pull.stay1.w04 picked.f1.w03 -0.7155789136886597
 pull.stay1.w04 standson.s0.w-1 1
 pull.stay1.w04 standson.s0.w00 1
 pull.stay1.w04 standson.s0.w01 1
 pull.stay1.w04 standson.s0.w02 1
 pull.stay1.w04 standson.s0.w03 1
 pull.stay1.w04 clears.s0.w04.pull.stay1.w04 -1
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
 over.w06 cost 0.05
 over.w06 minutes.w06 -1
 over.w07 cost 0.05
 over.w07 minutes.w07 -1
 overwater.w00 cost 0.08696541828058854
 overwater.w00 water.w00 -1
 overwater.w01 cost 0.08696541828058854
 overwater.w01 water.w01 -1
 overwater.w02 cost 0.08696541828058854
 overwater.w02 water.w02 -1
 overwater.w03 cost 0.08696541828058854
 overwater.w03 water.w03 -1
 overwater.w04 cost 0.08696541828058854
 overwater.w04 water.w04 -1
 overwater.w05 cost 0.08696541828058854
 overwater.w05 water.w05 -1
 overwater.w06 cost 0.08696541828058854
 overwater.w06 water.w06 -1
 overwater.w07 cost 0.08696541828058854
 overwater.w07 water.w07 -1
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
 eat.f0.w00.1 cost -1.9479662883165747
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -1.596154625772359
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -1.244342963228143
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
 eat.f0.w01.1 cost -1.9479662883165747
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -1.596154625772359
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -1.244342963228143
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
 eat.f0.w02.1 cost -1.9479662883165747
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -1.596154625772359
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -1.244342963228143
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
 eat.f0.w03.1 cost -1.9479662883165747
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -1.596154625772359
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -1.244342963228143
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
 eat.f0.w04.1 cost -1.9479662883165747
 eat.f0.w04.1 sum.f0.w04 -1
 eat.f0.w04.2 cost -1.596154625772359
 eat.f0.w04.2 sum.f0.w04 -1
 eat.f0.w04.3 cost -1.244342963228143
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
 eat.f0.w05.1 cost -1.9479662883165747
 eat.f0.w05.1 sum.f0.w05 -1
 eat.f0.w05.2 cost -1.596154625772359
 eat.f0.w05.2 sum.f0.w05 -1
 eat.f0.w05.3 cost -1.244342963228143
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
 eat.f0.w06.1 cost -1.9479662883165747
 eat.f0.w06.1 sum.f0.w06 -1
 eat.f0.w06.2 cost -1.596154625772359
 eat.f0.w06.2 sum.f0.w06 -1
 eat.f0.w06.3 cost -1.244342963228143
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
 eat.f0.w07.1 cost -1.9479662883165747
 eat.f0.w07.1 sum.f0.w07 -1
 eat.f0.w07.2 cost -1.596154625772359
 eat.f0.w07.2 sum.f0.w07 -1
 eat.f0.w07.3 cost -1.244342963228143
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
 eat.f1.w00.1 cost -1.16680434809227
 eat.f1.w00.1 sum.f1.w00 -1
 eat.f1.w00.2 cost -0.8325063988246668
 eat.f1.w00.2 sum.f1.w00 -1
 eat.f1.w00.3 cost -0.49820844955706356
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
 eat.f1.w01.1 cost -1.16680434809227
 eat.f1.w01.1 sum.f1.w01 -1
 eat.f1.w01.2 cost -0.8325063988246668
 eat.f1.w01.2 sum.f1.w01 -1
 eat.f1.w01.3 cost -0.49820844955706356
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
 eat.f1.w02.1 cost -1.16680434809227
 eat.f1.w02.1 sum.f1.w02 -1
 eat.f1.w02.2 cost -0.8325063988246668
 eat.f1.w02.2 sum.f1.w02 -1
 eat.f1.w02.3 cost -0.49820844955706356
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
 eat.f1.w03.1 cost -1.16680434809227
 eat.f1.w03.1 sum.f1.w03 -1
 eat.f1.w03.2 cost -0.8325063988246668
 eat.f1.w03.2 sum.f1.w03 -1
 eat.f1.w03.3 cost -0.49820844955706356
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
 eat.f1.w04.1 cost -1.16680434809227
 eat.f1.w04.1 sum.f1.w04 -1
 eat.f1.w04.2 cost -0.8325063988246668
 eat.f1.w04.2 sum.f1.w04 -1
 eat.f1.w04.3 cost -0.49820844955706356
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
 eat.f1.w05.1 cost -1.16680434809227
 eat.f1.w05.1 sum.f1.w05 -1
 eat.f1.w05.2 cost -0.8325063988246668
 eat.f1.w05.2 sum.f1.w05 -1
 eat.f1.w05.3 cost -0.49820844955706356
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
 eat.f1.w06.1 cost -1.16680434809227
 eat.f1.w06.1 sum.f1.w06 -1
 eat.f1.w06.2 cost -0.8325063988246668
 eat.f1.w06.2 sum.f1.w06 -1
 eat.f1.w06.3 cost -0.49820844955706356
 eat.f1.w06.3 sum.f1.w06 -1
 used.f1.w07 cost 0
 used.f1.w07 picked.f1.w07 1
 used.f1.w07 rises.f1.w07 1
 used.f1.w07 first.f1.w07 -1
 eaten.f1.w07 cost 0
 eaten.f1.w07 sum.f1.w07 1
 eaten.f1.w07 first.f1.w07 1
 eaten.f1.w07 keeps.f1.w06 -1
 eat.f1.w07.1 cost -1.16680434809227
 eat.f1.w07.1 sum.f1.w07 -1
 eat.f1.w07.2 cost -0.8325063988246668
 eat.f1.w07.2 sum.f1.w07 -1
 eat.f1.w07.3 cost -0.49820844955706356
 eat.f1.w07.3 sum.f1.w07 -1
 left.b0.f1.w06 cost 0
 left.b0.f1.w06 leaves.b0.f1.w06.start.s0.c0.4.0 1
 left.b0.f1.w05 cost 0
 left.b0.f1.w05 leaves.b0.f1.w05.start.s0.c1.5.2 1
 left.b0.f1.w00 cost 0
 left.b0.f1.w00 leaves.b0.f1.w00.pull.stay0.w00 1
 rest.w-1 cost 0.3
 rest.w-1 clear.w-1 -1
 cleared.s0.w-1 cost 0
 cleared.s0.w-1 clear.w-1 1
 cleared.s0.w-1 clears.s0.w-1.pull.stay1.before 1
 stands.s0.w-1 cost 0
 stands.s0.w-1 standson.s0.w-1 -1
 stands.s0.w-1 clears.s0.w-1.pull.stay1.before 1
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
 cleared.s0.w01 clears.s0.w01.pull.stay1.w01 1
 stands.s0.w01 cost 0
 stands.s0.w01 standson.s0.w01 -1
 stands.s0.w01 clears.s0.w01.pull.stay1.w01 1
 rest.w02 cost 0.3
 rest.w02 clear.w02 -1
 cleared.s0.w02 cost 0
 cleared.s0.w02 clear.w02 1
 cleared.s0.w02 clears.s0.w02.pull.stay1.w02 1
 stands.s0.w02 cost 0
 stands.s0.w02 standson.s0.w02 -1
 stands.s0.w02 clears.s0.w02.pull.stay1.w02 1
 rest.w03 cost 0.3
 rest.w03 clear.w03 -1
 cleared.s0.w03 cost 0
 cleared.s0.w03 clear.w03 1
 cleared.s0.w03 clears.s0.w03.start.s0.c1.2.2 1
 cleared.s0.w03 clears.s0.w03.pull.stay1.w03 1
 stands.s0.w03 cost 0
 stands.s0.w03 standson.s0.w03 -1
 stands.s0.w03 clears.s0.w03.start.s0.c1.2.2 1
 stands.s0.w03 clears.s0.w03.pull.stay1.w03 1
 rest.w04 cost 0.3
 rest.w04 clear.w04 -1
 cleared.s0.w04 cost 0
 cleared.s0.w04 clear.w04 1
 cleared.s0.w04 clears.s0.w04.pull.stay1.w04 1
 stands.s0.w04 cost 0
 stands.s0.w04 standson.s0.w04 -1
 stands.s0.w04 clears.s0.w04.pull.stay1.w04 1
 rest.w05 cost 0.3
 rest.w05 clear.w05 -1
 cleared.s0.w05 cost 0
 cleared.s0.w05 clear.w05 1
 cleared.s0.w05 clears.s0.w05.start.s0.c1.5.2 1
 stands.s0.w05 cost 0
 stands.s0.w05 standson.s0.w05 -1
 stands.s0.w05 clears.s0.w05.start.s0.c1.5.2 1
 rest.w06 cost 0.3
 rest.w06 clear.w06 -1
 cleared.s0.w06 cost 0
 cleared.s0.w06 clear.w06 1
 cleared.s0.w06 clears.s0.w06.start.s0.c2.3.5 1
 cleared.s0.w06 clears.s0.w06.start.s0.c0.4.0 1
 stands.s0.w06 cost 0
 stands.s0.w06 standson.s0.w06 -1
 stands.s0.w06 clears.s0.w06.start.s0.c2.3.5 1
 stands.s0.w06 clears.s0.w06.start.s0.c0.4.0 1
RHS
 RHS pulled.stay0 1
 RHS pulled.stay1 1
 RHS minutes.w00 38
 RHS minutes.w01 1
 RHS minutes.w02 28
 RHS minutes.w03 17
 RHS minutes.w04 10
 RHS minutes.w05 9
 RHS minutes.w06 6
 RHS minutes.w07 12
 RHS water.w00 2.864199831109931
 RHS water.w01 1.411967131982033
 RHS water.w02 0.8819439401462617
 RHS water.w03 1.5921464263076421
 RHS water.w04 1.399775293255876
 RHS water.w05 2.5811088108649276
 RHS water.w06 1.9910820836942176
 RHS water.w07 2.606790018524018
 RHS total.g 4
 RHS ground.s0.w02 0.7047884880842868
 RHS roots.s0.w02 122.12512754986437
 RHS ground.s0.w03 0.7047884880842868
 RHS roots.s0.w03 122.12512754986437
 RHS shelf.w-1 1.000001
 RHS shelf.w00 4.000001
 RHS shelf.w01 5.000001
 RHS ground.s0.w05 0.7047884880842868
 RHS roots.s0.w05 122.12512754986437
 RHS support.s0.w05 0.5872647589533809
 RHS ground.s0.w06 0.7047884880842868
 RHS roots.s0.w06 122.12512754986437
 RHS support.s0.w06 0.5872647589533809
 RHS ground.s0.w00 0.7047884880842868
 RHS roots.s0.w00 122.12512754986437
 RHS ground.s0.w01 0.7047884880842868
 RHS roots.s0.w01 122.12512754986437
 RHS ground.s0.w04 0.7047884880842868
 RHS roots.s0.w04 122.12512754986437
 RHS support.s0.w02 0.5872647589533809
 RHS support.s0.w03 0.5872647589533809
 RHS support.s0.w04 0.5872647589533809
 RHS clear.w-1 1
 RHS clear.w00 1
 RHS clear.w01 1
 RHS clear.w02 1
 RHS clear.w03 1
 RHS clear.w04 1
 RHS clear.w05 1
 RHS clear.w06 1
BOUNDS
 UP BND start.s0.c1.2.2 1
 UP BND plants.s0.c1.2.2 1
 UP BND start.s0.c2.3.5 1
 UP BND plants.s0.c2.3.5 2
 UP BND start.s0.c0.4.0 1
 UP BND plants.s0.c0.4.0 1
 UP BND start.s0.c1.5.2 1
 UP BND plants.s0.c1.5.2 2
 UP BND pull.stay0.w00 1
 UP BND pull.stay1.before 1
 UP BND pull.stay1.w00 1
 UP BND pull.stay1.w01 1
 UP BND pull.stay1.w02 1
 UP BND pull.stay1.w03 1
 UP BND pull.stay1.w04 1
 UP BND eat.f0.w00.1 0.37054329949265635
 UP BND eat.f0.w00.2 0.37054329949265635
 UP BND eat.f0.w00.3 0.7410865989853127
 UP BND eat.f0.w01.1 0.6798734177091632
 UP BND eat.f0.w01.2 0.6798734177091632
 UP BND eat.f0.w01.3 1.3597468354183264
 UP BND eat.f0.w02.1 1.1055167414465141
 UP BND eat.f0.w02.2 1.1055167414465141
 UP BND eat.f0.w02.3 2.2110334828930283
 UP BND eat.f0.w03.1 1.4340744011964661
 UP BND eat.f0.w03.2 1.4340744011964661
 UP BND eat.f0.w03.3 2.8681488023929322
 UP BND eat.f0.w04.1 1.431764258265997
 UP BND eat.f0.w04.2 1.431764258265997
 UP BND eat.f0.w04.3 2.863528516531994
 UP BND eat.f0.w05.1 0.13655546751722558
 UP BND eat.f0.w05.2 0.13655546751722558
 UP BND eat.f0.w05.3 0.27311093503445116
 UP BND eat.f0.w06.1 0.5925116899764966
 UP BND eat.f0.w06.2 0.5925116899764966
 UP BND eat.f0.w06.3 1.1850233799529932
 UP BND eat.f0.w07.1 0.6201864651197573
 UP BND eat.f0.w07.2 0.6201864651197573
 UP BND eat.f0.w07.3 1.2403729302395146
 UP BND eat.f1.w00.1 0.8609564881888301
 UP BND eat.f1.w00.2 0.8609564881888301
 UP BND eat.f1.w00.3 1.7219129763776602
 UP BND eat.f1.w01.1 0.012813551976352033
 UP BND eat.f1.w01.2 0.012813551976352033
 UP BND eat.f1.w01.3 0.025627103952704067
 UP BND eat.f1.w02.1 1.2717670126934595
 UP BND eat.f1.w02.2 1.2717670126934595
 UP BND eat.f1.w02.3 2.543534025386919
 UP BND eat.f1.w03.1 0.5950136801067427
 UP BND eat.f1.w03.2 0.5950136801067427
 UP BND eat.f1.w03.3 1.1900273602134854
 UP BND eat.f1.w04.1 1.419987496523935
 UP BND eat.f1.w04.2 1.419987496523935
 UP BND eat.f1.w04.3 2.83997499304787
 UP BND eat.f1.w05.1 0.19169844595284524
 UP BND eat.f1.w05.2 0.19169844595284524
 UP BND eat.f1.w05.3 0.3833968919056905
 UP BND eat.f1.w06.1 0.9633555351230247
 UP BND eat.f1.w06.2 0.9633555351230247
 UP BND eat.f1.w06.3 1.9267110702460495
 UP BND eat.f1.w07.1 1.308769314083745
 UP BND eat.f1.w07.2 1.308769314083745
 UP BND eat.f1.w07.3 2.61753862816749
 UP BND left.b0.f1.w06 1
 UP BND left.b0.f1.w05 1
 UP BND left.b0.f1.w00 1
 UP BND cleared.s0.w-1 1
 UP BND cleared.s0.w00 1
 UP BND cleared.s0.w01 1
 UP BND cleared.s0.w02 1
 UP BND cleared.s0.w03 1
 UP BND cleared.s0.w04 1
 UP BND cleared.s0.w05 1
 UP BND cleared.s0.w06 1
ENDATA
