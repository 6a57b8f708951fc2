NAME season
ROWS
 N cost
 L most.s0.c1.0.2
 G least.s0.c1.0.2
 L most.s0.c2.2.1
 G least.s0.c2.2.1
 L most.s0.c1.4.1
 G least.s0.c1.4.1
 E pulled.stay0
 L minutes.w00
 L minutes.w01
 L minutes.w02
 L minutes.w03
 L total.g
 L total.h
 L ground.s0.w02
 L roots.s0.w02
 L ground.s0.w03
 L roots.s0.w03
 L ground.s0.w01
 L roots.s0.w01
 L support.s0.w01
 L support.s0.w02
 L support.s0.w03
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
 L keeps.f0.w00
 L keeps.f0.w01
 G leaves.b0.f1.w03.start.s0.c1.4.1
 G leaves.b0.f0.w-1.pull.stay0.before
 G leaves.b0.f0.w00.pull.stay0.w00
 G leaves.b0.f0.w01.pull.stay0.w01
 L clear.w-1
 E standson.s0.w-1
 G clears.s0.w-1.pull.stay0.before
 L clear.w00
 E standson.s0.w00
 G clears.s0.w00.pull.stay0.w00
 L clear.w01
 E standson.s0.w01
 G clears.s0.w01.pull.stay0.w01
 L clear.w02
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s0.c1.0.2 cost 0.1372741331405398
 start.s0.c1.0.2 most.s0.c1.0.2 -2
 start.s0.c1.0.2 least.s0.c1.0.2 -2
 start.s0.c1.0.2 minutes.w02 5
 plants.s0.c1.0.2 cost -0.18
 plants.s0.c1.0.2 most.s0.c1.0.2 1
 plants.s0.c1.0.2 least.s0.c1.0.2 1
 plants.s0.c1.0.2 minutes.w02 1.2272097243407294
 plants.s0.c1.0.2 minutes.w03 3.4610160648254915
 plants.s0.c1.0.2 total.g 1
 plants.s0.c1.0.2 ground.s0.w02 0.09698356718448534
 plants.s0.c1.0.2 roots.s0.w02 19.847017186446376
 plants.s0.c1.0.2 ground.s0.w03 0.12057799434985
 plants.s0.c1.0.2 roots.s0.w03 24.675453745854156
 start.s0.c2.2.1 cost 0.06670335186869711
 start.s0.c2.2.1 most.s0.c2.2.1 -1
 start.s0.c2.2.1 least.s0.c2.2.1 -1
 start.s0.c2.2.1 minutes.w01 5
 start.s0.c2.2.1 standson.s0.w01 1
 plants.s0.c2.2.1 cost 0.12000000000000001
 plants.s0.c2.2.1 most.s0.c2.2.1 1
 plants.s0.c2.2.1 least.s0.c2.2.1 1
 plants.s0.c2.2.1 minutes.w01 1.2088436858311664
 plants.s0.c2.2.1 minutes.w02 3.6046085016843135
 plants.s0.c2.2.1 minutes.w03 2.0267131689861477
 plants.s0.c2.2.1 total.g 1
 plants.s0.c2.2.1 total.h 1
 plants.s0.c2.2.1 ground.s0.w02 0.08084395732816113
 plants.s0.c2.2.1 roots.s0.w02 7.201419011228207
 plants.s0.c2.2.1 ground.s0.w03 0.2097026676817501
 plants.s0.c2.2.1 roots.s0.w03 18.679896774704016
 plants.s0.c2.2.1 ground.s0.w01 0.06086417380223405
 plants.s0.c2.2.1 roots.s0.w01 5.421659612021813
 plants.s0.c2.2.1 support.s0.w01 0.2
 plants.s0.c2.2.1 support.s0.w02 0.2
 plants.s0.c2.2.1 support.s0.w03 0.2
 start.s0.c1.4.1 cost 0.123792451824476
 start.s0.c1.4.1 most.s0.c1.4.1 -1
 start.s0.c1.4.1 least.s0.c1.4.1 -1
 start.s0.c1.4.1 minutes.w01 5
 start.s0.c1.4.1 leaves.b0.f1.w03.start.s0.c1.4.1 -1
 start.s0.c1.4.1 standson.s0.w01 1
 plants.s0.c1.4.1 cost -0.18
 plants.s0.c1.4.1 most.s0.c1.4.1 1
 plants.s0.c1.4.1 least.s0.c1.4.1 1
 plants.s0.c1.4.1 minutes.w01 0.47658311323722735
 plants.s0.c1.4.1 minutes.w02 3.5879599538069344
 plants.s0.c1.4.1 minutes.w03 1.823005933654747
 plants.s0.c1.4.1 ground.s0.w02 0.1989204661573688
 plants.s0.c1.4.1 roots.s0.w02 15.882283667097747
 plants.s0.c1.4.1 ground.s0.w03 0.06532834888336844
 plants.s0.c1.4.1 roots.s0.w03 5.215970928038923
 plants.s0.c1.4.1 ground.s0.w01 0.11454620312087882
 plants.s0.c1.4.1 roots.s0.w01 9.145641602888443
 plants.s0.c1.4.1 tall.s0.w02 0.1989204661573688
 plants.s0.c1.4.1 tall.s0.w03 0.06532834888336844
 pull.stay0.before cost 0.12841942049973976
 pull.stay0.before pulled.stay0 1
 pull.stay0.before leaves.b0.f0.w-1.pull.stay0.before -1
 pull.stay0.before clears.s0.w-1.pull.stay0.before -1
 pull.stay0.w00 cost 0.12841942049973976
 pull.stay0.w00 pulled.stay0 1
 pull.stay0.w00 minutes.w00 2.9929427561301347
 pull.stay0.w00 picked.f0.w00 -1.0377741754055023
 pull.stay0.w00 leaves.b0.f0.w00.pull.stay0.w00 -1
 pull.stay0.w00 standson.s0.w-1 1
 pull.stay0.w00 clears.s0.w00.pull.stay0.w00 -1
 pull.stay0.w01 cost -0.47573056093941535
 pull.stay0.w01 pulled.stay0 1
 pull.stay0.w01 minutes.w00 2.9929427561301347
 pull.stay0.w01 minutes.w01 3.774761153943919
 pull.stay0.w01 ground.s0.w01 0.1597362262381308
 pull.stay0.w01 roots.s0.w01 7.304578091367443
 pull.stay0.w01 support.s0.w01 0.1
 pull.stay0.w01 picked.f0.w00 -1.0377741754055023
 pull.stay0.w01 picked.f0.w01 -0.7853340357542038
 pull.stay0.w01 leaves.b0.f0.w01.pull.stay0.w01 -1
 pull.stay0.w01 standson.s0.w-1 1
 pull.stay0.w01 standson.s0.w00 1
 pull.stay0.w01 clears.s0.w01.pull.stay0.w01 -1
 M MARKER 'MARKER' 'INTEND'
 over.w00 cost 0.05
 over.w00 minutes.w00 -1
 over.w01 cost 0.05
 over.w01 minutes.w01 -1
 over.w02 cost 0.05
 over.w02 minutes.w02 -1
 over.w03 cost 0.05
 over.w03 minutes.w03 -1
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
 eat.f0.w00.1 cost -1.786211535151929
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -1.034358508192191
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -0.2825054812324534
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
 eat.f0.w01.1 cost -1.7685262724276525
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -1.0241173348437536
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -0.27970839725985486
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
 eat.f0.w02.1 cost -1.7510161113145073
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -1.013977559251241
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -0.2769390071879751
 eat.f0.w02.3 sum.f0.w02 -1
 used.f0.w03 cost 0
 used.f0.w03 picked.f0.w03 1
 used.f0.w03 rises.f0.w03 1
 used.f0.w03 first.f0.w03 -1
 eaten.f0.w03 cost 0
 eaten.f0.w03 sum.f0.w03 1
 eaten.f0.w03 first.f0.w03 1
 eaten.f0.w03 keeps.f0.w01 -1
 eat.f0.w03.1 cost -1.7336793181331758
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -1.0039381774764764
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -0.27419703681977736
 eat.f0.w03.3 sum.f0.w03 -1
 left.b0.f1.w03 cost 0
 left.b0.f1.w03 leaves.b0.f1.w03.start.s0.c1.4.1 1
 left.b0.f0.w-1 cost 0
 left.b0.f0.w-1 leaves.b0.f0.w-1.pull.stay0.before 1
 left.b0.f0.w00 cost 0
 left.b0.f0.w00 leaves.b0.f0.w00.pull.stay0.w00 1
 left.b0.f0.w01 cost 0
 left.b0.f0.w01 leaves.b0.f0.w01.pull.stay0.w01 1
 rest.w-1 cost 0.5
 rest.w-1 clear.w-1 -1
 cleared.s0.w-1 cost 0
 cleared.s0.w-1 clear.w-1 1
 cleared.s0.w-1 clears.s0.w-1.pull.stay0.before 1
 stands.s0.w-1 cost 0
 stands.s0.w-1 standson.s0.w-1 -1
 stands.s0.w-1 clears.s0.w-1.pull.stay0.before 1
 rest.w00 cost 0.5
 rest.w00 clear.w00 -1
 cleared.s0.w00 cost 0
 cleared.s0.w00 clear.w00 1
 cleared.s0.w00 clears.s0.w00.pull.stay0.w00 1
 stands.s0.w00 cost 0
 stands.s0.w00 standson.s0.w00 -1
 stands.s0.w00 clears.s0.w00.pull.stay0.w00 1
 rest.w01 cost 0.5
 rest.w01 clear.w01 -1
 cleared.s0.w01 cost 0
 cleared.s0.w01 clear.w01 1
 cleared.s0.w01 clears.s0.w01.pull.stay0.w01 1
 stands.s0.w01 cost 0
 stands.s0.w01 standson.s0.w01 -1
 stands.s0.w01 clears.s0.w01.pull.stay0.w01 1
 rest.w02 cost 0.5
 rest.w02 clear.w02 -1
RHS
 RHS pulled.stay0 1
 RHS minutes.w00 9
 RHS minutes.w01 5
 RHS minutes.w02 27
 RHS minutes.w03 33
 RHS total.g 2
 RHS total.h 1
 RHS ground.s0.w02 0.9704143717768619
 RHS roots.s0.w02 198.93170179151386
 RHS ground.s0.w03 0.9704143717768619
 RHS roots.s0.w03 198.93170179151386
 RHS ground.s0.w01 0.9704143717768619
 RHS roots.s0.w01 198.93170179151386
 RHS support.s0.w01 0.5206578036492204
 RHS support.s0.w02 0.5206578036492204
 RHS support.s0.w03 0.5206578036492204
 RHS tall.s0.w02 0.49861896305896586
 RHS tall.s0.w03 0.49861896305896586
 RHS clear.w-1 1
 RHS clear.w00 1
 RHS clear.w01 1
 RHS clear.w02 1
BOUNDS
 UP BND start.s0.c1.0.2 1
 UP BND plants.s0.c1.0.2 2
 UP BND start.s0.c2.2.1 1
 UP BND plants.s0.c2.2.1 1
 UP BND start.s0.c1.4.1 1
 UP BND plants.s0.c1.4.1 1
 UP BND pull.stay0.before 1
 UP BND pull.stay0.w00 1
 UP BND pull.stay0.w01 1
 UP BND eat.f0.w00.1 0.9188576631207421
 UP BND eat.f0.w00.2 0.9188576631207421
 UP BND eat.f0.w00.3 1.8377153262414843
 UP BND eat.f0.w01.1 0.33975163270210357
 UP BND eat.f0.w01.2 0.33975163270210357
 UP BND eat.f0.w01.3 0.6795032654042071
 UP BND eat.f0.w02.1 0.2760664380664083
 UP BND eat.f0.w02.2 0.2760664380664083
 UP BND eat.f0.w02.3 0.5521328761328166
 UP BND eat.f0.w03.1 1.018809978735583
 UP BND eat.f0.w03.2 1.018809978735583
 UP BND eat.f0.w03.3 2.037619957471166
 UP BND left.b0.f1.w03 1
 UP BND left.b0.f0.w-1 1
 UP BND left.b0.f0.w00 1
 UP BND left.b0.f0.w01 1
 UP BND cleared.s0.w-1 1
 UP BND cleared.s0.w00 1
 UP BND cleared.s0.w01 1
ENDATA
