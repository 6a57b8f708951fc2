NAME season
ROWS
 N cost
 L most.s0.c0.3.1
 G least.s0.c0.3.1
 E pulled.stay0
 L total.g
 L ground.s0.w01
 L roots.s0.w01
 L ground.s0.w02
 L roots.s0.w02
 L ground.s0.w03
 L roots.s0.w03
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
 L keeps.f0.w00
 L keeps.f0.w01
 L keeps.f0.w02
 L keeps.f0.w03
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
 L keeps.f1.w00
 L keeps.f1.w01
 L keeps.f1.w02
 L keeps.f1.w03
 L keeps.f1.w04
 G leaves.b0.f0.w03.start.s0.c0.3.1
 L clear.w-1
 L clear.w00
 L clear.w01
 L clear.w02
 L clear.w03
 E standson.s0.w03
 G clears.s0.w03.start.s0.c0.3.1
 G clears.s0.w03.pull.stay0.w03
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s0.c0.3.1 cost 0.08430814773097714
 start.s0.c0.3.1 most.s0.c0.3.1 -1
 start.s0.c0.3.1 least.s0.c0.3.1 -1
 start.s0.c0.3.1 leaves.b0.f0.w03.start.s0.c0.3.1 -1
 start.s0.c0.3.1 clears.s0.w03.start.s0.c0.3.1 -1
 plants.s0.c0.3.1 cost 0.12000000000000001
 plants.s0.c0.3.1 most.s0.c0.3.1 1
 plants.s0.c0.3.1 least.s0.c0.3.1 1
 plants.s0.c0.3.1 total.g 1
 plants.s0.c0.3.1 ground.s0.w01 0.08744380005113744
 plants.s0.c0.3.1 roots.s0.w01 10.972146668617096
 plants.s0.c0.3.1 ground.s0.w02 0.08744380005113744
 plants.s0.c0.3.1 roots.s0.w02 10.972146668617096
 plants.s0.c0.3.1 ground.s0.w03 0.08744380005113744
 plants.s0.c0.3.1 roots.s0.w03 10.972146668617096
 pull.stay0.w03 cost 0.15221989328100266
 pull.stay0.w03 pulled.stay0 1
 pull.stay0.w03 ground.s0.w01 0.4856173206620773
 pull.stay0.w03 roots.s0.w01 7.253375098769343
 pull.stay0.w03 ground.s0.w02 0.42957410360417125
 pull.stay0.w03 roots.s0.w02 6.416291127982373
 pull.stay0.w03 ground.s0.w03 0.42957410360417125
 pull.stay0.w03 roots.s0.w03 6.416291127982373
 pull.stay0.w03 picked.f0.w00 -0.6976196765899658
 pull.stay0.w03 picked.f0.w01 -0.2199649214744568
 pull.stay0.w03 clears.s0.w03.pull.stay0.w03 -1
 pull.stay0.w04 cost -0.35598181329993106
 pull.stay0.w04 pulled.stay0 1
 pull.stay0.w04 ground.s0.w01 0.4856173206620773
 pull.stay0.w04 roots.s0.w01 7.253375098769343
 pull.stay0.w04 ground.s0.w02 0.42957410360417125
 pull.stay0.w04 roots.s0.w02 6.416291127982373
 pull.stay0.w04 ground.s0.w03 0.42957410360417125
 pull.stay0.w04 roots.s0.w03 6.416291127982373
 pull.stay0.w04 picked.f0.w00 -0.6976196765899658
 pull.stay0.w04 picked.f0.w01 -0.2199649214744568
 pull.stay0.w04 standson.s0.w03 1
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
 eat.f0.w00.1 cost -1.075155166720643
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -1.0671051457118899
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -1.0590551247031368
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
 eat.f0.w01.1 cost -1.075155166720643
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -1.0671051457118899
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -1.0590551247031368
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
 eat.f0.w02.1 cost -1.075155166720643
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -1.0671051457118899
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -1.0590551247031368
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
 eat.f0.w03.1 cost -1.075155166720643
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -1.0671051457118899
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -1.0590551247031368
 eat.f0.w03.3 sum.f0.w03 -1
 used.f0.w04 cost 0
 used.f0.w04 picked.f0.w04 1
 used.f0.w04 rises.f0.w04 1
 used.f0.w04 first.f0.w04 -1
 eaten.f0.w04 cost 0
 eaten.f0.w04 sum.f0.w04 1
 eaten.f0.w04 first.f0.w04 1
 eaten.f0.w04 keeps.f0.w03 -1
 eat.f0.w04.1 cost -1.075155166720643
 eat.f0.w04.1 sum.f0.w04 -1
 eat.f0.w04.2 cost -1.0671051457118899
 eat.f0.w04.2 sum.f0.w04 -1
 eat.f0.w04.3 cost -1.0590551247031368
 eat.f0.w04.3 sum.f0.w04 -1
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
 eat.f1.w00.1 cost -1.0636928218638737
 eat.f1.w00.1 sum.f1.w00 -1
 eat.f1.w00.2 cost -0.8344988463883942
 eat.f1.w00.2 sum.f1.w00 -1
 eat.f1.w00.3 cost -0.6053048709129147
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
 eat.f1.w01.1 cost -1.0636928218638737
 eat.f1.w01.1 sum.f1.w01 -1
 eat.f1.w01.2 cost -0.8344988463883942
 eat.f1.w01.2 sum.f1.w01 -1
 eat.f1.w01.3 cost -0.6053048709129147
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
 eat.f1.w02.1 cost -1.0636928218638737
 eat.f1.w02.1 sum.f1.w02 -1
 eat.f1.w02.2 cost -0.8344988463883942
 eat.f1.w02.2 sum.f1.w02 -1
 eat.f1.w02.3 cost -0.6053048709129147
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
 eat.f1.w03.1 cost -1.0636928218638737
 eat.f1.w03.1 sum.f1.w03 -1
 eat.f1.w03.2 cost -0.8344988463883942
 eat.f1.w03.2 sum.f1.w03 -1
 eat.f1.w03.3 cost -0.6053048709129147
 eat.f1.w03.3 sum.f1.w03 -1
 used.f1.w04 cost 0
 used.f1.w04 picked.f1.w04 1
 used.f1.w04 rises.f1.w04 1
 used.f1.w04 first.f1.w04 -1
 used.f1.w04 keeps.f1.w04 1
 eaten.f1.w04 cost 0
 eaten.f1.w04 sum.f1.w04 1
 eaten.f1.w04 first.f1.w04 1
 eaten.f1.w04 keeps.f1.w04 -1
 eat.f1.w04.1 cost -1.0636928218638737
 eat.f1.w04.1 sum.f1.w04 -1
 eat.f1.w04.2 cost -0.8344988463883942
 eat.f1.w04.2 sum.f1.w04 -1
 eat.f1.w04.3 cost -0.6053048709129147
 eat.f1.w04.3 sum.f1.w04 -1
 left.b0.f0.w03 cost 0
 left.b0.f0.w03 leaves.b0.f0.w03.start.s0.c0.3.1 1
 rest.w-1 cost 0.5
 rest.w-1 clear.w-1 -1
 rest.w00 cost 0.5
 rest.w00 clear.w00 -1
 rest.w01 cost 0.5
 rest.w01 clear.w01 -1
 rest.w02 cost 0.5
 rest.w02 clear.w02 -1
 rest.w03 cost 0.5
 rest.w03 clear.w03 -1
 cleared.s0.w03 cost 0
 cleared.s0.w03 clear.w03 1
 cleared.s0.w03 clears.s0.w03.start.s0.c0.3.1 1
 cleared.s0.w03 clears.s0.w03.pull.stay0.w03 1
 stands.s0.w03 cost 0
 stands.s0.w03 standson.s0.w03 -1
 stands.s0.w03 clears.s0.w03.start.s0.c0.3.1 1
 stands.s0.w03 clears.s0.w03.pull.stay0.w03 1
RHS
 RHS pulled.stay0 1
 RHS total.g 3
 RHS ground.s0.w01 0.6252328613431529
 RHS roots.s0.w01 168.04583654370114
 RHS ground.s0.w02 0.6252328613431529
 RHS roots.s0.w02 168.04583654370114
 RHS ground.s0.w03 0.6252328613431529
 RHS roots.s0.w03 168.04583654370114
 RHS clear.w-1 1
 RHS clear.w00 1
 RHS clear.w01 1
 RHS clear.w02 1
 RHS clear.w03 1
BOUNDS
 UP BND start.s0.c0.3.1 1
 UP BND plants.s0.c0.3.1 1
 UP BND pull.stay0.w03 1
 UP BND pull.stay0.w04 1
 UP BND eat.f0.w00.1 0.8250140273575796
 UP BND eat.f0.w00.2 0.8250140273575796
 UP BND eat.f0.w00.3 1.6500280547151591
 UP BND eat.f0.w01.1 0.5316603682249279
 UP BND eat.f0.w01.2 0.5316603682249279
 UP BND eat.f0.w01.3 1.0633207364498558
 UP BND eat.f0.w02.1 0.8635465298925931
 UP BND eat.f0.w02.2 0.8635465298925931
 UP BND eat.f0.w02.3 1.7270930597851861
 UP BND eat.f0.w03.1 1.2901335538048653
 UP BND eat.f0.w03.2 1.2901335538048653
 UP BND eat.f0.w03.3 2.5802671076097305
 UP BND eat.f0.w04.1 0.8809343816088724
 UP BND eat.f0.w04.2 0.8809343816088724
 UP BND eat.f0.w04.3 1.7618687632177448
 UP BND eat.f1.w00.1 0.7430743711261413
 UP BND eat.f1.w00.2 0.7430743711261413
 UP BND eat.f1.w00.3 1.4861487422522826
 UP BND eat.f1.w01.1 1.184080243884635
 UP BND eat.f1.w01.2 1.184080243884635
 UP BND eat.f1.w01.3 2.36816048776927
 UP BND eat.f1.w02.1 1.0025151945358783
 UP BND eat.f1.w02.2 1.0025151945358783
 UP BND eat.f1.w02.3 2.0050303890717567
 UP BND eat.f1.w03.1 0.010962672586534605
 UP BND eat.f1.w03.2 0.010962672586534605
 UP BND eat.f1.w03.3 0.02192534517306921
 UP BND eat.f1.w04.1 1.3969149488585775
 UP BND eat.f1.w04.2 1.3969149488585775
 UP BND eat.f1.w04.3 2.793829897717155
 UP BND left.b0.f0.w03 1
 UP BND cleared.s0.w03 1
ENDATA
