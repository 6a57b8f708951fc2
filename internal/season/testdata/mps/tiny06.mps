NAME season
ROWS
 N cost
 L most.s1.c0.0.2
 G least.s1.c0.0.2
 L most.s1.c0.2.3
 G least.s1.c0.2.3
 L most.s0.c1.4.0
 G least.s0.c1.4.0
 E pulled.stay0
 E pulled.stay1
 L total.g
 L total.h
 L ground.s0.w02
 L roots.s0.w02
 L support.s0.w02
 L ground.s0.w03
 L roots.s0.w03
 L support.s0.w03
 L shelf.w-1
 L shelf.w00
 L shelf.w01
 L ground.s0.w00
 L roots.s0.w00
 L support.s0.w00
 L ground.s0.w01
 L roots.s0.w01
 L tall.s0.w01
 L support.s0.w01
 L tall.s0.w02
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
 L keeps.f1.w04
 G leaves.b1.f0.w03.start.s1.c0.0.2
 G leaves.b1.f1.w03.start.s1.c0.2.3
 G leaves.b1.f0.w-1.pull.stay0.before
 G leaves.b1.f0.w00.pull.stay0.w00
 G leaves.b1.f0.w01.pull.stay0.w01
 G leaves.b1.f0.w02.pull.stay0.w02
 G soon.b1.f0.i1.w02.w01
 L back.s1.c0.0.2
 L clear.w-1
 E standson.s0.w-1
 G clears.s0.w-1.pull.stay1.before
 E standson.s1.w-1
 G clears.s1.w-1.pull.stay0.before
 L clear.w00
 E standson.s0.w00
 G clears.s0.w00.pull.stay1.w00
 E standson.s1.w00
 G clears.s1.w00.pull.stay0.w00
 L clear.w01
 E standson.s0.w01
 G clears.s0.w01.pull.stay1.w01
 E standson.s1.w01
 G clears.s1.w01.pull.stay0.w01
 L clear.w02
 E standson.s1.w02
 G clears.s1.w02.pull.stay0.w02
 L clear.w03
 E standson.s0.w03
 G clears.s0.w03.start.s1.c0.0.2
 G clears.s0.w03.start.s1.c0.2.3
 G clears.s0.w03.start.s0.c1.4.0
 L clear.w04
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s1.c0.0.2 cost 0.05935047891013114
 start.s1.c0.0.2 most.s1.c0.0.2 -2
 start.s1.c0.0.2 least.s1.c0.0.2 -2
 start.s1.c0.0.2 leaves.b1.f0.w03.start.s1.c0.0.2 -1
 start.s1.c0.0.2 clears.s0.w03.start.s1.c0.0.2 -1
 plants.s1.c0.0.2 cost -0.18
 plants.s1.c0.0.2 most.s1.c0.0.2 1
 plants.s1.c0.0.2 least.s1.c0.0.2 1
 plants.s1.c0.0.2 total.g 1
 plants.s1.c0.0.2 ground.s0.w02 0.08363806873463597
 plants.s1.c0.0.2 roots.s0.w02 16.15147797898112
 plants.s1.c0.0.2 support.s0.w02 0.2
 plants.s1.c0.0.2 ground.s0.w03 0.08363806873463597
 plants.s1.c0.0.2 roots.s0.w03 16.15147797898112
 plants.s1.c0.0.2 support.s0.w03 0.2
 plants.s1.c0.0.2 shelf.w-1 1
 plants.s1.c0.0.2 shelf.w00 1
 plants.s1.c0.0.2 shelf.w01 1
 plants.s1.c0.0.2 back.s1.c0.0.2 1
 start.s1.c0.2.3 cost 0.045587079419799725
 start.s1.c0.2.3 most.s1.c0.2.3 -2
 start.s1.c0.2.3 least.s1.c0.2.3 -2
 start.s1.c0.2.3 leaves.b1.f1.w03.start.s1.c0.2.3 -1
 start.s1.c0.2.3 clears.s0.w03.start.s1.c0.2.3 -1
 plants.s1.c0.2.3 cost -0.18
 plants.s1.c0.2.3 most.s1.c0.2.3 1
 plants.s1.c0.2.3 least.s1.c0.2.3 1
 plants.s1.c0.2.3 total.g 1
 plants.s1.c0.2.3 ground.s0.w03 0.1515301578521924
 plants.s1.c0.2.3 roots.s0.w03 18.4415101623545
 plants.s1.c0.2.3 picked.f1.w03 -0.2933664917945862
 plants.s1.c0.2.3 picked.f1.w04 -1.389112114906311
 start.s0.c1.4.0 cost 0.10264030085412613
 start.s0.c1.4.0 most.s0.c1.4.0 -1
 start.s0.c1.4.0 least.s0.c1.4.0 -1
 start.s0.c1.4.0 standson.s0.w00 1
 start.s0.c1.4.0 standson.s0.w01 1
 start.s0.c1.4.0 clears.s0.w03.start.s0.c1.4.0 -1
 plants.s0.c1.4.0 cost -0.18
 plants.s0.c1.4.0 most.s0.c1.4.0 1
 plants.s0.c1.4.0 least.s0.c1.4.0 1
 plants.s0.c1.4.0 ground.s0.w02 0.2124099962602745
 plants.s0.c1.4.0 roots.s0.w02 10.804993734015483
 plants.s0.c1.4.0 support.s0.w02 0.2
 plants.s0.c1.4.0 ground.s0.w03 0.22678321536479026
 plants.s0.c1.4.0 roots.s0.w03 11.536138901833414
 plants.s0.c1.4.0 support.s0.w03 0.2
 plants.s0.c1.4.0 shelf.w-1 1
 plants.s0.c1.4.0 ground.s0.w00 0.3015723302629547
 plants.s0.c1.4.0 roots.s0.w00 15.340554569997348
 plants.s0.c1.4.0 support.s0.w00 0.2
 plants.s0.c1.4.0 ground.s0.w01 0.09182584033377558
 plants.s0.c1.4.0 roots.s0.w01 4.671049606400803
 plants.s0.c1.4.0 tall.s0.w01 0.09182584033377558
 plants.s0.c1.4.0 support.s0.w01 0.2
 plants.s0.c1.4.0 tall.s0.w02 0.2124099962602745
 plants.s0.c1.4.0 tall.s0.w03 0.22678321536479026
 pull.stay0.before cost 0.1430017048370652
 pull.stay0.before pulled.stay0 1
 pull.stay0.before leaves.b1.f0.w-1.pull.stay0.before -1
 pull.stay0.before clears.s1.w-1.pull.stay0.before -1
 pull.stay0.w00 cost 0.1430017048370652
 pull.stay0.w00 pulled.stay0 1
 pull.stay0.w00 picked.f1.w00 -0.12814484536647797
 pull.stay0.w00 leaves.b1.f0.w00.pull.stay0.w00 -1
 pull.stay0.w00 standson.s1.w-1 1
 pull.stay0.w00 clears.s1.w00.pull.stay0.w00 -1
 pull.stay0.w01 cost 0.1430017048370652
 pull.stay0.w01 pulled.stay0 1
 pull.stay0.w01 picked.f1.w00 -0.12814484536647797
 pull.stay0.w01 picked.f1.w01 -0.866447925567627
 pull.stay0.w01 leaves.b1.f0.w01.pull.stay0.w01 -1
 pull.stay0.w01 standson.s1.w-1 1
 pull.stay0.w01 standson.s1.w00 1
 pull.stay0.w01 clears.s1.w01.pull.stay0.w01 -1
 pull.stay0.w02 cost -0.48154932787781085
 pull.stay0.w02 pulled.stay0 1
 pull.stay0.w02 picked.f1.w00 -0.12814484536647797
 pull.stay0.w02 picked.f1.w01 -0.866447925567627
 pull.stay0.w02 leaves.b1.f0.w02.pull.stay0.w02 -1
 pull.stay0.w02 standson.s1.w-1 1
 pull.stay0.w02 standson.s1.w00 1
 pull.stay0.w02 standson.s1.w01 1
 pull.stay0.w02 clears.s1.w02.pull.stay0.w02 -1
 pull.stay1.before cost 0.13754995457431815
 pull.stay1.before pulled.stay1 1
 pull.stay1.before clears.s0.w-1.pull.stay1.before -1
 pull.stay1.w00 cost 0.13754995457431815
 pull.stay1.w00 pulled.stay1 1
 pull.stay1.w00 ground.s0.w00 0.23353815600429492
 pull.stay1.w00 roots.s0.w00 12.67248410663867
 pull.stay1.w00 support.s0.w00 0.1
 pull.stay1.w00 picked.f1.w00 -0.8490180373191833
 pull.stay1.w00 standson.s0.w-1 1
 pull.stay1.w00 clears.s0.w00.pull.stay1.w00 -1
 pull.stay1.w01 cost -0.4007253029877353
 pull.stay1.w01 pulled.stay1 1
 pull.stay1.w01 ground.s0.w00 0.23353815600429492
 pull.stay1.w01 roots.s0.w00 12.67248410663867
 pull.stay1.w01 support.s0.w00 0.1
 pull.stay1.w01 ground.s0.w01 0.532525351047676
 pull.stay1.w01 roots.s0.w01 28.896430300707454
 pull.stay1.w01 support.s0.w01 0.1
 pull.stay1.w01 picked.f1.w00 -0.8490180373191833
 pull.stay1.w01 picked.f1.w01 -1.4036948680877686
 pull.stay1.w01 standson.s0.w-1 1
 pull.stay1.w01 standson.s0.w00 1
 pull.stay1.w01 clears.s0.w01.pull.stay1.w01 -1
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
 eat.f0.w00.1 cost -1.0775181533233036
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -0.725505659711317
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -0.3734931660993305
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
 eat.f0.w01.1 cost -1.0775181533233036
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -0.725505659711317
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -0.3734931660993305
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
 eat.f0.w02.1 cost -1.0775181533233036
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -0.725505659711317
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -0.3734931660993305
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
 eat.f0.w03.1 cost -1.0775181533233036
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -0.725505659711317
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -0.3734931660993305
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
 eat.f0.w04.1 cost -1.0775181533233036
 eat.f0.w04.1 sum.f0.w04 -1
 eat.f0.w04.2 cost -0.725505659711317
 eat.f0.w04.2 sum.f0.w04 -1
 eat.f0.w04.3 cost -0.3734931660993305
 eat.f0.w04.3 sum.f0.w04 -1
 used.f0.w05 cost 0
 used.f0.w05 picked.f0.w05 1
 used.f0.w05 rises.f0.w05 1
 used.f0.w05 first.f0.w05 -1
 eaten.f0.w05 cost 0
 eaten.f0.w05 sum.f0.w05 1
 eaten.f0.w05 first.f0.w05 1
 eaten.f0.w05 keeps.f0.w04 -1
 eat.f0.w05.1 cost -1.0775181533233036
 eat.f0.w05.1 sum.f0.w05 -1
 eat.f0.w05.2 cost -0.725505659711317
 eat.f0.w05.2 sum.f0.w05 -1
 eat.f0.w05.3 cost -0.3734931660993305
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
 eat.f1.w00.1 cost -1.188224875609143
 eat.f1.w00.1 sum.f1.w00 -1
 eat.f1.w00.2 cost -1.0432331336136518
 eat.f1.w00.2 sum.f1.w00 -1
 eat.f1.w00.3 cost -0.8982413916181605
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
 eat.f1.w01.1 cost -1.188224875609143
 eat.f1.w01.1 sum.f1.w01 -1
 eat.f1.w01.2 cost -1.0432331336136518
 eat.f1.w01.2 sum.f1.w01 -1
 eat.f1.w01.3 cost -0.8982413916181605
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
 eat.f1.w02.1 cost -1.188224875609143
 eat.f1.w02.1 sum.f1.w02 -1
 eat.f1.w02.2 cost -1.0432331336136518
 eat.f1.w02.2 sum.f1.w02 -1
 eat.f1.w02.3 cost -0.8982413916181605
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
 eat.f1.w03.1 cost -1.188224875609143
 eat.f1.w03.1 sum.f1.w03 -1
 eat.f1.w03.2 cost -1.0432331336136518
 eat.f1.w03.2 sum.f1.w03 -1
 eat.f1.w03.3 cost -0.8982413916181605
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
 eat.f1.w04.1 cost -1.188224875609143
 eat.f1.w04.1 sum.f1.w04 -1
 eat.f1.w04.2 cost -1.0432331336136518
 eat.f1.w04.2 sum.f1.w04 -1
 eat.f1.w04.3 cost -0.8982413916181605
 eat.f1.w04.3 sum.f1.w04 -1
 used.f1.w05 cost 0
 used.f1.w05 picked.f1.w05 1
 used.f1.w05 rises.f1.w05 1
 used.f1.w05 first.f1.w05 -1
 eaten.f1.w05 cost 0
 eaten.f1.w05 sum.f1.w05 1
 eaten.f1.w05 first.f1.w05 1
 eaten.f1.w05 keeps.f1.w04 -1
 eat.f1.w05.1 cost -1.188224875609143
 eat.f1.w05.1 sum.f1.w05 -1
 eat.f1.w05.2 cost -1.0432331336136518
 eat.f1.w05.2 sum.f1.w05 -1
 eat.f1.w05.3 cost -0.8982413916181605
 eat.f1.w05.3 sum.f1.w05 -1
 left.b1.f0.w03 cost 0
 left.b1.f0.w03 leaves.b1.f0.w03.start.s1.c0.0.2 1
 left.b1.f1.w03 cost 0
 left.b1.f1.w03 leaves.b1.f1.w03.start.s1.c0.2.3 1
 left.b1.f0.w-1 cost 0
 left.b1.f0.w-1 leaves.b1.f0.w-1.pull.stay0.before 1
 left.b1.f0.w00 cost 0
 left.b1.f0.w00 leaves.b1.f0.w00.pull.stay0.w00 1
 left.b1.f0.w01 cost 0
 left.b1.f0.w01 leaves.b1.f0.w01.pull.stay0.w01 1
 left.b1.f0.w01 soon.b1.f0.i1.w02.w01 -1
 left.b1.f0.w02 cost 0
 left.b1.f0.w02 leaves.b1.f0.w02.pull.stay0.w02 1
 early.b1.f0.i1.w02 cost 0
 early.b1.f0.i1.w02 soon.b1.f0.i1.w02.w01 1
 early.b1.f0.i1.w02 back.s1.c0.0.2 2
 pays.s1.c0.0.2 cost 0.5
 pays.s1.c0.0.2 back.s1.c0.0.2 -1
 rest.w-1 cost 0.5
 rest.w-1 clear.w-1 -1
 cleared.s0.w-1 cost 0
 cleared.s0.w-1 clear.w-1 1
 cleared.s0.w-1 clears.s0.w-1.pull.stay1.before 1
 stands.s0.w-1 cost 0
 stands.s0.w-1 standson.s0.w-1 -1
 stands.s0.w-1 clears.s0.w-1.pull.stay1.before 1
 cleared.s1.w-1 cost 0
 cleared.s1.w-1 clear.w-1 1
 cleared.s1.w-1 clears.s1.w-1.pull.stay0.before 1
 stands.s1.w-1 cost 0
 stands.s1.w-1 standson.s1.w-1 -1
 stands.s1.w-1 clears.s1.w-1.pull.stay0.before 1
 rest.w00 cost 0.5
 rest.w00 clear.w00 -1
 cleared.s0.w00 cost 0
 cleared.s0.w00 clear.w00 1
 cleared.s0.w00 clears.s0.w00.pull.stay1.w00 1
 stands.s0.w00 cost 0
 stands.s0.w00 standson.s0.w00 -1
 stands.s0.w00 clears.s0.w00.pull.stay1.w00 1
 cleared.s1.w00 cost 0
 cleared.s1.w00 clear.w00 1
 cleared.s1.w00 clears.s1.w00.pull.stay0.w00 1
 stands.s1.w00 cost 0
 stands.s1.w00 standson.s1.w00 -1
 stands.s1.w00 clears.s1.w00.pull.stay0.w00 1
 rest.w01 cost 0.5
 rest.w01 clear.w01 -1
 cleared.s0.w01 cost 0
 cleared.s0.w01 clear.w01 1
 cleared.s0.w01 clears.s0.w01.pull.stay1.w01 1
 stands.s0.w01 cost 0
 stands.s0.w01 standson.s0.w01 -1
 stands.s0.w01 clears.s0.w01.pull.stay1.w01 1
 cleared.s1.w01 cost 0
 cleared.s1.w01 clear.w01 1
 cleared.s1.w01 clears.s1.w01.pull.stay0.w01 1
 stands.s1.w01 cost 0
 stands.s1.w01 standson.s1.w01 -1
 stands.s1.w01 clears.s1.w01.pull.stay0.w01 1
 rest.w02 cost 0.5
 rest.w02 clear.w02 -1
 cleared.s1.w02 cost 0
 cleared.s1.w02 clear.w02 1
 cleared.s1.w02 clears.s1.w02.pull.stay0.w02 1
 stands.s1.w02 cost 0
 stands.s1.w02 standson.s1.w02 -1
 stands.s1.w02 clears.s1.w02.pull.stay0.w02 1
 rest.w03 cost 0.5
 rest.w03 clear.w03 -1
 cleared.s0.w03 cost 0
 cleared.s0.w03 clear.w03 1
 cleared.s0.w03 clears.s0.w03.start.s1.c0.0.2 1
 cleared.s0.w03 clears.s0.w03.start.s1.c0.2.3 1
 cleared.s0.w03 clears.s0.w03.start.s0.c1.4.0 1
 stands.s0.w03 cost 0
 stands.s0.w03 standson.s0.w03 -1
 stands.s0.w03 clears.s0.w03.start.s1.c0.0.2 1
 stands.s0.w03 clears.s0.w03.start.s1.c0.2.3 1
 stands.s0.w03 clears.s0.w03.start.s0.c1.4.0 1
 rest.w04 cost 0.5
 rest.w04 clear.w04 -1
RHS
 RHS pulled.stay0 1
 RHS pulled.stay1 1
 RHS total.g 2
 RHS total.h 3
 RHS ground.s0.w02 0.7615651751103883
 RHS roots.s0.w02 174.50911691690908
 RHS support.s0.w02 0.934960794895775
 RHS ground.s0.w03 0.7615651751103883
 RHS roots.s0.w03 174.50911691690908
 RHS support.s0.w03 0.934960794895775
 RHS shelf.w-1 4.000001
 RHS shelf.w00 5.000001
 RHS shelf.w01 4.000001
 RHS ground.s0.w00 0.7615651751103883
 RHS roots.s0.w00 174.50911691690908
 RHS support.s0.w00 0.934960794895775
 RHS ground.s0.w01 0.7615651751103883
 RHS roots.s0.w01 174.50911691690908
 RHS tall.s0.w01 0.8109702300573668
 RHS support.s0.w01 0.934960794895775
 RHS tall.s0.w02 0.8109702300573668
 RHS tall.s0.w03 0.8109702300573668
 RHS back.s1.c0.0.2 2
 RHS clear.w-1 1
 RHS clear.w00 1
 RHS clear.w01 1
 RHS clear.w02 1
 RHS clear.w03 1
 RHS clear.w04 1
BOUNDS
 UP BND start.s1.c0.0.2 1
 UP BND plants.s1.c0.0.2 2
 UP BND start.s1.c0.2.3 1
 UP BND plants.s1.c0.2.3 2
 UP BND start.s0.c1.4.0 1
 UP BND plants.s0.c1.4.0 1
 UP BND pull.stay0.before 1
 UP BND pull.stay0.w00 1
 UP BND pull.stay0.w01 1
 UP BND pull.stay0.w02 1
 UP BND pull.stay1.before 1
 UP BND pull.stay1.w00 1
 UP BND pull.stay1.w01 1
 UP BND eat.f0.w00.1 0.10578110952620595
 UP BND eat.f0.w00.2 0.10578110952620595
 UP BND eat.f0.w00.3 0.2115622190524119
 UP BND eat.f0.w01.1 1.3082237898593427
 UP BND eat.f0.w01.2 1.3082237898593427
 UP BND eat.f0.w01.3 2.6164475797186855
 UP BND eat.f0.w02.1 0.49507305714302446
 UP BND eat.f0.w02.2 0.49507305714302446
 UP BND eat.f0.w02.3 0.9901461142860489
 UP BND eat.f0.w03.1 1.1320529122339225
 UP BND eat.f0.w03.2 1.1320529122339225
 UP BND eat.f0.w03.3 2.264105824467845
 UP BND eat.f0.w04.1 0.457841948521671
 UP BND eat.f0.w04.2 0.457841948521671
 UP BND eat.f0.w04.3 0.915683897043342
 UP BND eat.f0.w05.1 1.042404113429054
 UP BND eat.f0.w05.2 1.042404113429054
 UP BND eat.f0.w05.3 2.084808226858108
 UP BND eat.f1.w00.1 1.2710998907878994
 UP BND eat.f1.w00.2 1.2710998907878994
 UP BND eat.f1.w00.3 2.542199781575799
 UP BND eat.f1.w01.1 0.40854713748776655
 UP BND eat.f1.w01.2 0.40854713748776655
 UP BND eat.f1.w01.3 0.8170942749755331
 UP BND eat.f1.w02.1 0.6539256584122644
 UP BND eat.f1.w02.2 0.6539256584122644
 UP BND eat.f1.w02.3 1.3078513168245287
 UP BND eat.f1.w03.1 1.1441082703809418
 UP BND eat.f1.w03.2 1.1441082703809418
 UP BND eat.f1.w03.3 2.2882165407618835
 UP BND eat.f1.w04.1 0.659588101372159
 UP BND eat.f1.w04.2 0.659588101372159
 UP BND eat.f1.w04.3 1.319176202744318
 UP BND eat.f1.w05.1 0.28251994580967144
 UP BND eat.f1.w05.2 0.28251994580967144
 UP BND eat.f1.w05.3 0.5650398916193429
 UP BND left.b1.f0.w03 1
 UP BND left.b1.f1.w03 1
 UP BND left.b1.f0.w-1 1
 UP BND left.b1.f0.w00 1
 UP BND left.b1.f0.w01 1
 UP BND left.b1.f0.w02 1
 UP BND early.b1.f0.i1.w02 1
 UP BND cleared.s0.w-1 1
 UP BND cleared.s1.w-1 1
 UP BND cleared.s0.w00 1
 UP BND cleared.s1.w00 1
 UP BND cleared.s0.w01 1
 UP BND cleared.s1.w01 1
 UP BND cleared.s1.w02 1
 UP BND cleared.s0.w03 1
ENDATA
