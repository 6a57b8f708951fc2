NAME season
ROWS
 N cost
 L most.s1.c1.0.4
 G least.s1.c1.0.4
 L most.s1.c0.1.4
 G least.s1.c0.1.4
 L few.s1.c0.1.4
 L all.s1.c0.1.4
 L most.s1.c1.2.2
 G least.s1.c1.2.2
 L most.s0.c1.3.3
 G least.s0.c1.3.3
 E pulled.stay0
 E pulled.stay1
 L minutes.w00
 L minutes.w01
 L minutes.w02
 L minutes.w03
 L minutes.w04
 L minutes.w05
 L total.g
 L total.h
 G must.0.c0
 L ground.s1.w04
 L roots.s1.w04
 L tall.s1.w04
 L shelf.w03
 L ground.s1.w05
 L roots.s1.w05
 L shelf.w02
 L ground.s1.w02
 L roots.s1.w02
 L support.s1.w02
 L ground.s1.w03
 L roots.s1.w03
 L support.s1.w03
 L ground.s0.w03
 L roots.s0.w03
 L tall.s0.w03
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
 G leaves.b0.f1.w04.start.s1.c1.0.4
 G leaves.b0.f0.w05.start.s1.c0.1.4
 G leaves.b0.f1.w03.start.s0.c1.3.3
 G leaves.b0.f1.w-1.pull.stay1.before
 G leaves.b0.f1.w00.pull.stay1.w00
 G leaves.b0.f1.w01.pull.stay1.w01
 G leaves.b0.f1.w02.pull.stay1.w02
 G leaves.b0.f1.w03.pull.stay1.w03
 G leaves.b0.f1.w04.pull.stay1.w04
 G leaves.b0.f1.w05.pull.stay1.w05
 G soon.b0.f1.i3.w04.w01
 G soon.b0.f1.i3.w04.w02
 G soon.b0.f1.i3.w04.w03
 L back.s1.c1.0.4
 G soon.b0.f1.i1.w03.w02
 L back.s0.c1.3.3
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s1.c1.0.4 cost 0.19650680675694543
 start.s1.c1.0.4 most.s1.c1.0.4 -2
 start.s1.c1.0.4 least.s1.c1.0.4 -2
 start.s1.c1.0.4 minutes.w04 5
 start.s1.c1.0.4 leaves.b0.f1.w04.start.s1.c1.0.4 -1
 plants.s1.c1.0.4 cost 0.12000000000000001
 plants.s1.c1.0.4 most.s1.c1.0.4 1
 plants.s1.c1.0.4 least.s1.c1.0.4 1
 plants.s1.c1.0.4 minutes.w04 1.2162816326913712
 plants.s1.c1.0.4 minutes.w05 5
 plants.s1.c1.0.4 ground.s1.w04 0.21246423996120145
 plants.s1.c1.0.4 roots.s1.w04 2.2494301287029366
 plants.s1.c1.0.4 tall.s1.w04 0.21246423996120145
 plants.s1.c1.0.4 shelf.w03 1
 plants.s1.c1.0.4 back.s1.c1.0.4 1
 start.s1.c0.1.4 cost 0.2939309496879786
 start.s1.c0.1.4 most.s1.c0.1.4 -2
 start.s1.c0.1.4 least.s1.c0.1.4 -1
 start.s1.c0.1.4 minutes.w04 5
 start.s1.c0.1.4 leaves.b0.f0.w05.start.s1.c0.1.4 -1
 plants.s1.c0.1.4 cost 0.1
 plants.s1.c0.1.4 most.s1.c0.1.4 1
 plants.s1.c0.1.4 least.s1.c0.1.4 1
 plants.s1.c0.1.4 few.s1.c0.1.4 1
 plants.s1.c0.1.4 minutes.w04 3.9361657053089303
 plants.s1.c0.1.4 must.0.c0 1
 plants.s1.c0.1.4 ground.s1.w04 0.09487080858729491
 plants.s1.c0.1.4 roots.s1.w04 7.669953472203031
 plants.s1.c0.1.4 shelf.w03 1
 plants.s1.c0.1.4 ground.s1.w05 0.09487080858729491
 plants.s1.c0.1.4 roots.s1.w05 7.669953472203031
 plants.s1.c0.1.4 shelf.w02 1
 plants.s1.c0.1.4 picked.f1.w04 -1.9791501760482788
 plants.s1.c0.1.4 picked.f1.w05 -1.0594099760055542
 M MARKER 'MARKER' 'INTEND'
 lost.s1.c0.1.4 cost 0.02
 lost.s1.c0.1.4 few.s1.c0.1.4 -1
 lost.s1.c0.1.4 all.s1.c0.1.4 -1
 M MARKER 'MARKER' 'INTORG'
 many.s1.c0.1.4 cost 0
 many.s1.c0.1.4 few.s1.c0.1.4 -1
 many.s1.c0.1.4 all.s1.c0.1.4 1
 start.s1.c1.2.2 cost 0.2863598352282021
 start.s1.c1.2.2 most.s1.c1.2.2 -1
 start.s1.c1.2.2 least.s1.c1.2.2 -1
 start.s1.c1.2.2 minutes.w02 5
 plants.s1.c1.2.2 cost -0.18
 plants.s1.c1.2.2 most.s1.c1.2.2 1
 plants.s1.c1.2.2 least.s1.c1.2.2 1
 plants.s1.c1.2.2 minutes.w02 2.7912546781225935
 plants.s1.c1.2.2 minutes.w03 0.18902253262777968
 plants.s1.c1.2.2 minutes.w04 5
 plants.s1.c1.2.2 minutes.w05 5
 plants.s1.c1.2.2 total.g 1
 plants.s1.c1.2.2 total.h 1
 plants.s1.c1.2.2 ground.s1.w02 0.2960224262943125
 plants.s1.c1.2.2 roots.s1.w02 3.715117782478772
 plants.s1.c1.2.2 support.s1.w02 0.2
 plants.s1.c1.2.2 ground.s1.w03 0.2368852560747965
 plants.s1.c1.2.2 roots.s1.w03 2.9729390379887666
 plants.s1.c1.2.2 support.s1.w03 0.2
 plants.s1.c1.2.2 picked.f1.w02 -0.33368828892707825
 start.s0.c1.3.3 cost 0.2649532175038424
 start.s0.c1.3.3 most.s0.c1.3.3 -2
 start.s0.c1.3.3 least.s0.c1.3.3 -2
 start.s0.c1.3.3 minutes.w03 5
 start.s0.c1.3.3 leaves.b0.f1.w03.start.s0.c1.3.3 -1
 plants.s0.c1.3.3 cost 0.12000000000000001
 plants.s0.c1.3.3 most.s0.c1.3.3 1
 plants.s0.c1.3.3 least.s0.c1.3.3 1
 plants.s0.c1.3.3 minutes.w03 0.9567455764686632
 plants.s0.c1.3.3 minutes.w04 5
 plants.s0.c1.3.3 minutes.w05 5
 plants.s0.c1.3.3 ground.s0.w03 0.2878113919754073
 plants.s0.c1.3.3 roots.s0.w03 21.94735905905596
 plants.s0.c1.3.3 tall.s0.w03 0.2878113919754073
 plants.s0.c1.3.3 back.s0.c1.3.3 1
 pull.stay0.w00 cost 0.016445158729300146
 pull.stay0.w00 pulled.stay0 1
 pull.stay0.w00 minutes.w00 3.1854381928188595
 pull.stay0.w01 cost 0.016445158729300146
 pull.stay0.w01 pulled.stay0 1
 pull.stay0.w01 minutes.w00 3.1854381928188595
 pull.stay0.w01 minutes.w01 0.5142928357689729
 pull.stay0.w02 cost 0.016445158729300146
 pull.stay0.w02 pulled.stay0 1
 pull.stay0.w02 minutes.w00 3.1854381928188595
 pull.stay0.w02 minutes.w01 0.5142928357689729
 pull.stay0.w02 minutes.w02 3.3243358261045
 pull.stay0.w03 cost 0.016445158729300146
 pull.stay0.w03 pulled.stay0 1
 pull.stay0.w03 minutes.w00 3.1854381928188595
 pull.stay0.w03 minutes.w01 0.5142928357689729
 pull.stay0.w03 minutes.w02 3.3243358261045
 pull.stay0.w03 minutes.w03 0.6726439073337485
 pull.stay0.w03 ground.s0.w03 0.5847621800262288
 pull.stay0.w03 roots.s0.w03 43.228661975136625
 pull.stay0.w03 tall.s0.w03 0.5847621800262288
 pull.stay0.w04 cost -0.32764670060995277
 pull.stay0.w04 pulled.stay0 1
 pull.stay0.w04 minutes.w00 3.1854381928188595
 pull.stay0.w04 minutes.w01 0.5142928357689729
 pull.stay0.w04 minutes.w02 3.3243358261045
 pull.stay0.w04 minutes.w03 0.6726439073337485
 pull.stay0.w04 ground.s0.w03 0.5847621800262288
 pull.stay0.w04 roots.s0.w03 43.228661975136625
 pull.stay0.w04 tall.s0.w03 0.5847621800262288
 pull.stay1.before cost 0.19208294614788168
 pull.stay1.before pulled.stay1 1
 pull.stay1.before leaves.b0.f1.w-1.pull.stay1.before -1
 pull.stay1.w00 cost 0.19208294614788168
 pull.stay1.w00 pulled.stay1 1
 pull.stay1.w00 minutes.w00 1.0476325525699934
 pull.stay1.w00 leaves.b0.f1.w00.pull.stay1.w00 -1
 pull.stay1.w01 cost 0.19208294614788168
 pull.stay1.w01 pulled.stay1 1
 pull.stay1.w01 minutes.w00 1.0476325525699934
 pull.stay1.w01 minutes.w01 0.08052452857717096
 pull.stay1.w01 leaves.b0.f1.w01.pull.stay1.w01 -1
 pull.stay1.w02 cost 0.19208294614788168
 pull.stay1.w02 pulled.stay1 1
 pull.stay1.w02 minutes.w00 1.0476325525699934
 pull.stay1.w02 minutes.w01 0.08052452857717096
 pull.stay1.w02 minutes.w02 0.7609266232020309
 pull.stay1.w02 ground.s1.w02 0.4866918191185472
 pull.stay1.w02 roots.s1.w02 28.041979814035496
 pull.stay1.w02 support.s1.w02 0.1
 pull.stay1.w02 leaves.b0.f1.w02.pull.stay1.w02 -1
 pull.stay1.w03 cost 0.19208294614788168
 pull.stay1.w03 pulled.stay1 1
 pull.stay1.w03 minutes.w00 1.0476325525699934
 pull.stay1.w03 minutes.w01 0.08052452857717096
 pull.stay1.w03 minutes.w02 0.7609266232020309
 pull.stay1.w03 ground.s1.w02 0.4866918191185472
 pull.stay1.w03 roots.s1.w02 28.041979814035496
 pull.stay1.w03 support.s1.w02 0.1
 pull.stay1.w03 ground.s1.w03 0.4866918191185472
 pull.stay1.w03 roots.s1.w03 28.041979814035496
 pull.stay1.w03 support.s1.w03 0.1
 pull.stay1.w03 leaves.b0.f1.w03.pull.stay1.w03 -1
 pull.stay1.w04 cost 0.19208294614788168
 pull.stay1.w04 pulled.stay1 1
 pull.stay1.w04 minutes.w00 1.0476325525699934
 pull.stay1.w04 minutes.w01 0.08052452857717096
 pull.stay1.w04 minutes.w02 0.7609266232020309
 pull.stay1.w04 ground.s1.w04 0.4866918191185472
 pull.stay1.w04 roots.s1.w04 28.041979814035496
 pull.stay1.w04 ground.s1.w02 0.4866918191185472
 pull.stay1.w04 roots.s1.w02 28.041979814035496
 pull.stay1.w04 support.s1.w02 0.1
 pull.stay1.w04 ground.s1.w03 0.4866918191185472
 pull.stay1.w04 roots.s1.w03 28.041979814035496
 pull.stay1.w04 support.s1.w03 0.1
 pull.stay1.w04 leaves.b0.f1.w04.pull.stay1.w04 -1
 pull.stay1.w05 cost -0.15814179217563018
 pull.stay1.w05 pulled.stay1 1
 pull.stay1.w05 minutes.w00 1.0476325525699934
 pull.stay1.w05 minutes.w01 0.08052452857717096
 pull.stay1.w05 minutes.w02 0.7609266232020309
 pull.stay1.w05 ground.s1.w04 0.4866918191185472
 pull.stay1.w05 roots.s1.w04 28.041979814035496
 pull.stay1.w05 ground.s1.w05 0.4866918191185472
 pull.stay1.w05 roots.s1.w05 28.041979814035496
 pull.stay1.w05 ground.s1.w02 0.4866918191185472
 pull.stay1.w05 roots.s1.w02 28.041979814035496
 pull.stay1.w05 support.s1.w02 0.1
 pull.stay1.w05 ground.s1.w03 0.4866918191185472
 pull.stay1.w05 roots.s1.w03 28.041979814035496
 pull.stay1.w05 support.s1.w03 0.1
 pull.stay1.w05 leaves.b0.f1.w05.pull.stay1.w05 -1
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
 eat.f0.w00.1 cost -1.6256346427829098
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -1.145490858643837
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -0.6653470745047643
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
 eat.f0.w01.1 cost -1.6256346427829098
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -1.145490858643837
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -0.6653470745047643
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
 eat.f0.w02.1 cost -1.6256346427829098
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -1.145490858643837
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -0.6653470745047643
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
 eat.f0.w03.1 cost -1.6256346427829098
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -1.145490858643837
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -0.6653470745047643
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
 eat.f0.w04.1 cost -1.6256346427829098
 eat.f0.w04.1 sum.f0.w04 -1
 eat.f0.w04.2 cost -1.145490858643837
 eat.f0.w04.2 sum.f0.w04 -1
 eat.f0.w04.3 cost -0.6653470745047643
 eat.f0.w04.3 sum.f0.w04 -1
 used.f0.w05 cost 0
 used.f0.w05 picked.f0.w05 1
 used.f0.w05 rises.f0.w05 1
 used.f0.w05 first.f0.w05 -1
 eaten.f0.w05 cost 0
 eaten.f0.w05 sum.f0.w05 1
 eaten.f0.w05 first.f0.w05 1
 eaten.f0.w05 keeps.f0.w04 -1
 eat.f0.w05.1 cost -1.6256346427829098
 eat.f0.w05.1 sum.f0.w05 -1
 eat.f0.w05.2 cost -1.145490858643837
 eat.f0.w05.2 sum.f0.w05 -1
 eat.f0.w05.3 cost -0.6653470745047643
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
 eat.f1.w00.1 cost -1.0420112035157718
 eat.f1.w00.1 sum.f1.w00 -1
 eat.f1.w00.2 cost -0.570548252199943
 eat.f1.w00.2 sum.f1.w00 -1
 eat.f1.w00.3 cost -0.09908530088411421
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
 eat.f1.w01.1 cost -1.0420112035157718
 eat.f1.w01.1 sum.f1.w01 -1
 eat.f1.w01.2 cost -0.570548252199943
 eat.f1.w01.2 sum.f1.w01 -1
 eat.f1.w01.3 cost -0.09908530088411421
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
 eaten.f1.w02 keeps.f1.w00 -1
 eat.f1.w02.1 cost -1.0420112035157718
 eat.f1.w02.1 sum.f1.w02 -1
 eat.f1.w02.2 cost -0.570548252199943
 eat.f1.w02.2 sum.f1.w02 -1
 eat.f1.w02.3 cost -0.09908530088411421
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
 eaten.f1.w03 keeps.f1.w01 -1
 eat.f1.w03.1 cost -1.0420112035157718
 eat.f1.w03.1 sum.f1.w03 -1
 eat.f1.w03.2 cost -0.570548252199943
 eat.f1.w03.2 sum.f1.w03 -1
 eat.f1.w03.3 cost -0.09908530088411421
 eat.f1.w03.3 sum.f1.w03 -1
 used.f1.w04 cost 0
 used.f1.w04 picked.f1.w04 1
 used.f1.w04 rises.f1.w04 1
 used.f1.w04 first.f1.w04 -1
 used.f1.w04 picked.f1.w05 -1
 used.f1.w04 rises.f1.w05 -1
 eaten.f1.w04 cost 0
 eaten.f1.w04 sum.f1.w04 1
 eaten.f1.w04 first.f1.w04 1
 eaten.f1.w04 sum.f1.w05 -1
 eaten.f1.w04 keeps.f1.w02 -1
 eat.f1.w04.1 cost -1.0420112035157718
 eat.f1.w04.1 sum.f1.w04 -1
 eat.f1.w04.2 cost -0.570548252199943
 eat.f1.w04.2 sum.f1.w04 -1
 eat.f1.w04.3 cost -0.09908530088411421
 eat.f1.w04.3 sum.f1.w04 -1
 used.f1.w05 cost 0
 used.f1.w05 picked.f1.w05 1
 used.f1.w05 rises.f1.w05 1
 used.f1.w05 first.f1.w05 -1
 eaten.f1.w05 cost 0
 eaten.f1.w05 sum.f1.w05 1
 eaten.f1.w05 first.f1.w05 1
 eaten.f1.w05 keeps.f1.w03 -1
 eat.f1.w05.1 cost -1.0420112035157718
 eat.f1.w05.1 sum.f1.w05 -1
 eat.f1.w05.2 cost -0.570548252199943
 eat.f1.w05.2 sum.f1.w05 -1
 eat.f1.w05.3 cost -0.09908530088411421
 eat.f1.w05.3 sum.f1.w05 -1
 left.b0.f1.w04 cost 0
 left.b0.f1.w04 leaves.b0.f1.w04.start.s1.c1.0.4 1
 left.b0.f1.w04 leaves.b0.f1.w04.pull.stay1.w04 1
 left.b0.f0.w05 cost 0
 left.b0.f0.w05 leaves.b0.f0.w05.start.s1.c0.1.4 1
 left.b0.f1.w03 cost 0
 left.b0.f1.w03 leaves.b0.f1.w03.start.s0.c1.3.3 1
 left.b0.f1.w03 leaves.b0.f1.w03.pull.stay1.w03 1
 left.b0.f1.w03 soon.b0.f1.i3.w04.w03 -1
 left.b0.f1.w-1 cost 0
 left.b0.f1.w-1 leaves.b0.f1.w-1.pull.stay1.before 1
 left.b0.f1.w00 cost 0
 left.b0.f1.w00 leaves.b0.f1.w00.pull.stay1.w00 1
 left.b0.f1.w01 cost 0
 left.b0.f1.w01 leaves.b0.f1.w01.pull.stay1.w01 1
 left.b0.f1.w01 soon.b0.f1.i3.w04.w01 -1
 left.b0.f1.w02 cost 0
 left.b0.f1.w02 leaves.b0.f1.w02.pull.stay1.w02 1
 left.b0.f1.w02 soon.b0.f1.i3.w04.w02 -1
 left.b0.f1.w02 soon.b0.f1.i1.w03.w02 -1
 left.b0.f1.w05 cost 0
 left.b0.f1.w05 leaves.b0.f1.w05.pull.stay1.w05 1
 early.b0.f1.i3.w04 cost 0
 early.b0.f1.i3.w04 soon.b0.f1.i3.w04.w01 1
 early.b0.f1.i3.w04 soon.b0.f1.i3.w04.w02 1
 early.b0.f1.i3.w04 soon.b0.f1.i3.w04.w03 1
 early.b0.f1.i3.w04 back.s1.c1.0.4 2
 pays.s1.c1.0.4 cost 0.5
 pays.s1.c1.0.4 back.s1.c1.0.4 -1
 early.b0.f1.i1.w03 cost 0
 early.b0.f1.i1.w03 soon.b0.f1.i1.w03.w02 1
 early.b0.f1.i1.w03 back.s0.c1.3.3 2
 pays.s0.c1.3.3 cost 0.5
 pays.s0.c1.3.3 back.s0.c1.3.3 -1
RHS
 RHS pulled.stay0 1
 RHS pulled.stay1 1
 RHS minutes.w00 6
 RHS minutes.w01 34
 RHS minutes.w02 22
 RHS minutes.w03 17
 RHS minutes.w04 14
 RHS minutes.w05 20
 RHS total.g 3
 RHS total.h 2
 RHS must.0.c0 1
 RHS ground.s1.w04 1.3806999228291612
 RHS roots.s1.w04 140.0474835215161
 RHS tall.s1.w04 0.696319281119564
 RHS shelf.w03 5.000001
 RHS ground.s1.w05 1.3806999228291612
 RHS roots.s1.w05 140.0474835215161
 RHS shelf.w02 5.000001
 RHS ground.s1.w02 1.3806999228291612
 RHS roots.s1.w02 140.0474835215161
 RHS support.s1.w02 0.5893432308190738
 RHS ground.s1.w03 1.3806999228291612
 RHS roots.s1.w03 140.0474835215161
 RHS support.s1.w03 0.5893432308190738
 RHS ground.s0.w03 0.7933312409131784
 RHS roots.s0.w03 106.31620820328114
 RHS tall.s0.w03 0.8901902419498324
 RHS back.s1.c1.0.4 2
 RHS back.s0.c1.3.3 2
BOUNDS
 UP BND start.s1.c1.0.4 1
 UP BND plants.s1.c1.0.4 2
 UP BND start.s1.c0.1.4 1
 UP BND plants.s1.c0.1.4 2
 UP BND many.s1.c0.1.4 1
 UP BND start.s1.c1.2.2 1
 UP BND plants.s1.c1.2.2 1
 UP BND start.s0.c1.3.3 1
 UP BND plants.s0.c1.3.3 2
 UP BND pull.stay0.w00 1
 UP BND pull.stay0.w01 1
 UP BND pull.stay0.w02 1
 UP BND pull.stay0.w03 1
 UP BND pull.stay0.w04 1
 UP BND pull.stay1.before 1
 UP BND pull.stay1.w00 1
 UP BND pull.stay1.w01 1
 UP BND pull.stay1.w02 1
 UP BND pull.stay1.w03 1
 UP BND pull.stay1.w04 1
 UP BND pull.stay1.w05 1
 UP BND eat.f0.w00.1 0.37172873801882317
 UP BND eat.f0.w00.2 0.37172873801882317
 UP BND eat.f0.w00.3 0.7434574760376463
 UP BND eat.f0.w01.1 1.3289202601424468
 UP BND eat.f0.w01.2 1.3289202601424468
 UP BND eat.f0.w01.3 2.6578405202848936
 UP BND eat.f0.w02.1 1.3300525790865696
 UP BND eat.f0.w02.2 1.3300525790865696
 UP BND eat.f0.w02.3 2.660105158173139
 UP BND eat.f0.w03.1 0.18417234907635127
 UP BND eat.f0.w03.2 0.18417234907635127
 UP BND eat.f0.w03.3 0.36834469815270254
 UP BND eat.f0.w04.1 0.5297191052040168
 UP BND eat.f0.w04.2 0.5297191052040168
 UP BND eat.f0.w04.3 1.0594382104080335
 UP BND eat.f0.w05.1 0.9088732269062682
 UP BND eat.f0.w05.2 0.9088732269062682
 UP BND eat.f0.w05.3 1.8177464538125363
 UP BND eat.f1.w00.1 1.2438545989559082
 UP BND eat.f1.w00.2 1.2438545989559082
 UP BND eat.f1.w00.3 2.4877091979118164
 UP BND eat.f1.w01.1 0.3107774507630466
 UP BND eat.f1.w01.2 0.3107774507630466
 UP BND eat.f1.w01.3 0.6215549015260932
 UP BND eat.f1.w02.1 1.4587986632867702
 UP BND eat.f1.w02.2 1.4587986632867702
 UP BND eat.f1.w02.3 2.9175973265735404
 UP BND eat.f1.w03.1 0.4359050790644716
 UP BND eat.f1.w03.2 0.4359050790644716
 UP BND eat.f1.w03.3 0.8718101581289432
 UP BND eat.f1.w04.1 1.4327448145412052
 UP BND eat.f1.w04.2 1.4327448145412052
 UP BND eat.f1.w04.3 2.8654896290824103
 UP BND eat.f1.w05.1 0.652008397319068
 UP BND eat.f1.w05.2 0.652008397319068
 UP BND eat.f1.w05.3 1.304016794638136
 UP BND left.b0.f1.w04 1
 UP BND left.b0.f0.w05 1
 UP BND left.b0.f1.w03 1
 UP BND left.b0.f1.w-1 1
 UP BND left.b0.f1.w00 1
 UP BND left.b0.f1.w01 1
 UP BND left.b0.f1.w02 1
 UP BND left.b0.f1.w05 1
 UP BND early.b0.f1.i3.w04 1
 UP BND early.b0.f1.i1.w03 1
ENDATA
