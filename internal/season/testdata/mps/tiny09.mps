NAME season
ROWS
 N cost
 L most.s0.c2.2.6
 G least.s0.c2.2.6
 L ground.s0.w06
 L roots.s0.w06
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
 G leaves.b0.f1.w06.start.s0.c2.2.6
 L clear.w-1
 L clear.w00
 L clear.w01
 L clear.w02
 L clear.w03
 L clear.w04
 L clear.w05
 L clear.w06
 E standson.s0.w06
 G clears.s0.w06.start.s0.c2.2.6
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s0.c2.2.6 cost 0.1483002883109815
 start.s0.c2.2.6 most.s0.c2.2.6 -2
 start.s0.c2.2.6 least.s0.c2.2.6 -2
 start.s0.c2.2.6 leaves.b0.f1.w06.start.s0.c2.2.6 -1
 start.s0.c2.2.6 clears.s0.w06.start.s0.c2.2.6 -1
 plants.s0.c2.2.6 cost -0.18
 plants.s0.c2.2.6 most.s0.c2.2.6 1
 plants.s0.c2.2.6 least.s0.c2.2.6 1
 plants.s0.c2.2.6 ground.s0.w06 0.22303846733023355
 plants.s0.c2.2.6 roots.s0.w06 17.118064265311048
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
 eat.f0.w00.1 cost -1.9731694533961974
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -1.1839043056270162
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -0.3946391578578349
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
 eat.f0.w01.1 cost -1.9731694533961974
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -1.1839043056270162
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -0.3946391578578349
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
 eat.f0.w02.1 cost -1.9731694533961974
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -1.1839043056270162
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -0.3946391578578349
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
 eat.f0.w03.1 cost -1.9731694533961974
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -1.1839043056270162
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -0.3946391578578349
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
 eat.f0.w04.1 cost -1.9731694533961974
 eat.f0.w04.1 sum.f0.w04 -1
 eat.f0.w04.2 cost -1.1839043056270162
 eat.f0.w04.2 sum.f0.w04 -1
 eat.f0.w04.3 cost -0.3946391578578349
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
 eat.f0.w05.1 cost -1.9731694533961974
 eat.f0.w05.1 sum.f0.w05 -1
 eat.f0.w05.2 cost -1.1839043056270162
 eat.f0.w05.2 sum.f0.w05 -1
 eat.f0.w05.3 cost -0.3946391578578349
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
 eat.f0.w06.1 cost -1.9731694533961974
 eat.f0.w06.1 sum.f0.w06 -1
 eat.f0.w06.2 cost -1.1839043056270162
 eat.f0.w06.2 sum.f0.w06 -1
 eat.f0.w06.3 cost -0.3946391578578349
 eat.f0.w06.3 sum.f0.w06 -1
 used.f0.w07 cost 0
 used.f0.w07 picked.f0.w07 1
 used.f0.w07 rises.f0.w07 1
 used.f0.w07 first.f0.w07 -1
 eaten.f0.w07 cost 0
 eaten.f0.w07 sum.f0.w07 1
 eaten.f0.w07 first.f0.w07 1
 eaten.f0.w07 keeps.f0.w05 -1
 eat.f0.w07.1 cost -1.9731694533961974
 eat.f0.w07.1 sum.f0.w07 -1
 eat.f0.w07.2 cost -1.1839043056270162
 eat.f0.w07.2 sum.f0.w07 -1
 eat.f0.w07.3 cost -0.3946391578578349
 eat.f0.w07.3 sum.f0.w07 -1
 left.b0.f1.w06 cost 0
 left.b0.f1.w06 leaves.b0.f1.w06.start.s0.c2.2.6 1
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
 rest.w04 cost 0.5
 rest.w04 clear.w04 -1
 rest.w05 cost 0.5
 rest.w05 clear.w05 -1
 rest.w06 cost 0.5
 rest.w06 clear.w06 -1
 cleared.s0.w06 cost 0
 cleared.s0.w06 clear.w06 1
 cleared.s0.w06 clears.s0.w06.start.s0.c2.2.6 1
 stands.s0.w06 cost 0
 stands.s0.w06 standson.s0.w06 -1
 stands.s0.w06 clears.s0.w06.start.s0.c2.2.6 1
RHS
 RHS ground.s0.w06 1.120571723249802
 RHS roots.s0.w06 168.10153727994907
 RHS clear.w-1 1
 RHS clear.w00 1
 RHS clear.w01 1
 RHS clear.w02 1
 RHS clear.w03 1
 RHS clear.w04 1
 RHS clear.w05 1
 RHS clear.w06 1
BOUNDS
 UP BND start.s0.c2.2.6 1
 UP BND plants.s0.c2.2.6 2
 UP BND eat.f0.w00.1 0.7730637424242504
 UP BND eat.f0.w00.2 0.7730637424242504
 UP BND eat.f0.w00.3 1.5461274848485007
 UP BND eat.f0.w01.1 0.05631917614832055
 UP BND eat.f0.w01.2 0.05631917614832055
 UP BND eat.f0.w01.3 0.1126383522966411
 UP BND eat.f0.w02.1 0.4565334792825338
 UP BND eat.f0.w02.2 0.4565334792825338
 UP BND eat.f0.w02.3 0.9130669585650676
 UP BND eat.f0.w03.1 1.246662334104145
 UP BND eat.f0.w03.2 1.246662334104145
 UP BND eat.f0.w03.3 2.49332466820829
 UP BND eat.f0.w04.1 0.36340866130684635
 UP BND eat.f0.w04.2 0.36340866130684635
 UP BND eat.f0.w04.3 0.7268173226136927
 UP BND eat.f0.w05.1 0.4751230121261939
 UP BND eat.f0.w05.2 0.4751230121261939
 UP BND eat.f0.w05.3 0.9502460242523878
 UP BND eat.f0.w06.1 1.2531738090359559
 UP BND eat.f0.w06.2 1.2531738090359559
 UP BND eat.f0.w06.3 2.5063476180719118
 UP BND eat.f0.w07.1 0.6607830383062518
 UP BND eat.f0.w07.2 0.6607830383062518
 UP BND eat.f0.w07.3 1.3215660766125037
 UP BND left.b0.f1.w06 1
 UP BND cleared.s0.w06 1
ENDATA
