NAME season
ROWS
 N cost
 L most.s0.c1.0.3
 G least.s0.c1.0.3
 L most.s0.c0.1.3
 G least.s0.c0.1.3
 L most.s0.c2.2.3
 G least.s0.c2.2.3
 L few.s0.c2.2.3
 L all.s0.c2.2.3
 L most.s0.c2.3.1
 G least.s0.c2.3.1
 L most.s0.c2.4.1
 G least.s0.c2.4.1
 L few.s0.c2.4.1
 L all.s0.c2.4.1
 E pulled.stay0
 L minutes.w00
 L minutes.w01
 L minutes.w02
 L minutes.w03
 L minutes.w04
 L total.g
 L total.h
 L ground.s0.w03
 L roots.s0.w03
 L support.s0.w03
 L ground.s0.w01
 L roots.s0.w01
 L tall.s0.w01
 L ground.s0.w02
 L roots.s0.w02
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
 L keeps.f0.w00
 L keeps.f0.w01
 L keeps.f0.w02
 G leaves.b0.f1.w03.start.s0.c1.0.3
 G leaves.b0.f1.w03.start.s0.c2.2.3
 G leaves.b0.f1.w03.start.s0.c2.3.1
 G leaves.b0.f0.w03.start.s0.c2.4.1
 G leaves.b0.f0.w-1.pull.stay0.before
 G leaves.b0.f0.w00.pull.stay0.w00
 G leaves.b0.f0.w01.pull.stay0.w01
 G leaves.b0.f0.w02.pull.stay0.w02
 G soon.b0.f0.i1.w01.w00
 L back.s0.c2.4.1
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
 E standson.s0.w02
 G clears.s0.w02.pull.stay0.w02
 L clear.w03
 E standson.s0.w03
 G clears.s0.w03.start.s0.c1.0.3
 G clears.s0.w03.start.s0.c0.1.3
 G clears.s0.w03.start.s0.c2.2.3
 G clears.s0.w03.start.s0.c2.3.1
 G clears.s0.w03.start.s0.c2.4.1
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s0.c1.0.3 cost 0.28006192661009593
 start.s0.c1.0.3 most.s0.c1.0.3 -2
 start.s0.c1.0.3 least.s0.c1.0.3 -2
 start.s0.c1.0.3 minutes.w03 5
 start.s0.c1.0.3 leaves.b0.f1.w03.start.s0.c1.0.3 -1
 start.s0.c1.0.3 clears.s0.w03.start.s0.c1.0.3 -1
 plants.s0.c1.0.3 cost 0.12000000000000001
 plants.s0.c1.0.3 most.s0.c1.0.3 1
 plants.s0.c1.0.3 least.s0.c1.0.3 1
 plants.s0.c1.0.3 minutes.w03 0.18531059721327514
 plants.s0.c1.0.3 minutes.w04 0.8489322575253189
 plants.s0.c1.0.3 ground.s0.w03 0.15251679624959116
 plants.s0.c1.0.3 roots.s0.w03 22.100622952835046
 plants.s0.c1.0.3 picked.f0.w02 -0.7210189551115036
 plants.s0.c1.0.3 picked.f0.w03 -0.6558417479197184
 plants.s0.c1.0.3 picked.f0.w04 -0.4518193006515503
 start.s0.c0.1.3 cost 0.06661719084259403
 start.s0.c0.1.3 most.s0.c0.1.3 -1
 start.s0.c0.1.3 least.s0.c0.1.3 -1
 start.s0.c0.1.3 minutes.w03 5
 start.s0.c0.1.3 clears.s0.w03.start.s0.c0.1.3 -1
 plants.s0.c0.1.3 cost -0.18
 plants.s0.c0.1.3 most.s0.c0.1.3 1
 plants.s0.c0.1.3 least.s0.c0.1.3 1
 plants.s0.c0.1.3 minutes.w03 2.3545142830805847
 plants.s0.c0.1.3 minutes.w04 5
 plants.s0.c0.1.3 total.g 1
 plants.s0.c0.1.3 total.h 1
 plants.s0.c0.1.3 ground.s0.w03 0.17957835807146658
 plants.s0.c0.1.3 roots.s0.w03 4.571783337507346
 plants.s0.c0.1.3 support.s0.w03 0.2
 plants.s0.c0.1.3 picked.f0.w04 -1.4936643838882446
 start.s0.c2.2.3 cost 0.08743863552897223
 start.s0.c2.2.3 most.s0.c2.2.3 -3
 start.s0.c2.2.3 least.s0.c2.2.3 -2
 start.s0.c2.2.3 minutes.w03 5
 start.s0.c2.2.3 leaves.b0.f1.w03.start.s0.c2.2.3 -1
 start.s0.c2.2.3 clears.s0.w03.start.s0.c2.2.3 -1
 plants.s0.c2.2.3 cost 0.1
 plants.s0.c2.2.3 most.s0.c2.2.3 1
 plants.s0.c2.2.3 least.s0.c2.2.3 1
 plants.s0.c2.2.3 few.s0.c2.2.3 1
 plants.s0.c2.2.3 minutes.w03 3.104376838091743
 plants.s0.c2.2.3 ground.s0.w03 0.062375138596044905
 plants.s0.c2.2.3 roots.s0.w03 22.01385374500024
 M MARKER 'MARKER' 'INTEND'
 lost.s0.c2.2.3 cost 0.02
 lost.s0.c2.2.3 few.s0.c2.2.3 -1
 lost.s0.c2.2.3 all.s0.c2.2.3 -1
 M MARKER 'MARKER' 'INTORG'
 many.s0.c2.2.3 cost 0
 many.s0.c2.2.3 few.s0.c2.2.3 -1
 many.s0.c2.2.3 all.s0.c2.2.3 2
 start.s0.c2.3.1 cost 0.08978044688021763
 start.s0.c2.3.1 most.s0.c2.3.1 -3
 start.s0.c2.3.1 least.s0.c2.3.1 -2
 start.s0.c2.3.1 minutes.w01 5
 start.s0.c2.3.1 leaves.b0.f1.w03.start.s0.c2.3.1 -1
 start.s0.c2.3.1 standson.s0.w01 1
 start.s0.c2.3.1 standson.s0.w02 1
 start.s0.c2.3.1 clears.s0.w03.start.s0.c2.3.1 -1
 plants.s0.c2.3.1 cost 0.12000000000000001
 plants.s0.c2.3.1 most.s0.c2.3.1 1
 plants.s0.c2.3.1 least.s0.c2.3.1 1
 plants.s0.c2.3.1 minutes.w01 3.564041561915033
 plants.s0.c2.3.1 minutes.w02 5
 plants.s0.c2.3.1 minutes.w03 5
 plants.s0.c2.3.1 minutes.w04 5
 plants.s0.c2.3.1 ground.s0.w03 0.16544439294890462
 plants.s0.c2.3.1 roots.s0.w03 14.712482807537494
 plants.s0.c2.3.1 ground.s0.w01 0.16544439294890462
 plants.s0.c2.3.1 roots.s0.w01 14.712482807537494
 plants.s0.c2.3.1 tall.s0.w01 0.16544439294890462
 plants.s0.c2.3.1 ground.s0.w02 0.16544439294890462
 plants.s0.c2.3.1 roots.s0.w02 14.712482807537494
 plants.s0.c2.3.1 tall.s0.w02 0.16544439294890462
 plants.s0.c2.3.1 tall.s0.w03 0.16544439294890462
 plants.s0.c2.3.1 picked.f0.w01 -0.8907876163721085
 plants.s0.c2.3.1 picked.f0.w02 -0.5044964949289957
 start.s0.c2.4.1 cost 0.2046999850884966
 start.s0.c2.4.1 most.s0.c2.4.1 -2
 start.s0.c2.4.1 least.s0.c2.4.1 -2
 start.s0.c2.4.1 minutes.w01 5
 start.s0.c2.4.1 leaves.b0.f0.w03.start.s0.c2.4.1 -1
 start.s0.c2.4.1 standson.s0.w01 1
 start.s0.c2.4.1 standson.s0.w02 1
 start.s0.c2.4.1 clears.s0.w03.start.s0.c2.4.1 -1
 plants.s0.c2.4.1 cost 0.1
 plants.s0.c2.4.1 most.s0.c2.4.1 1
 plants.s0.c2.4.1 least.s0.c2.4.1 1
 plants.s0.c2.4.1 few.s0.c2.4.1 1
 plants.s0.c2.4.1 minutes.w01 0.7448777787045411
 plants.s0.c2.4.1 minutes.w02 0.7111352702626741
 plants.s0.c2.4.1 minutes.w03 5
 plants.s0.c2.4.1 minutes.w04 5
 plants.s0.c2.4.1 total.g 1
 plants.s0.c2.4.1 total.h 1
 plants.s0.c2.4.1 ground.s0.w03 0.09765361799924127
 plants.s0.c2.4.1 roots.s0.w03 4.424569346738041
 plants.s0.c2.4.1 ground.s0.w01 0.21901972930907312
 plants.s0.c2.4.1 roots.s0.w01 9.92352357737854
 plants.s0.c2.4.1 ground.s0.w02 0.09765361799924127
 plants.s0.c2.4.1 roots.s0.w02 4.424569346738041
 plants.s0.c2.4.1 picked.f0.w01 -1.0562855501969655
 plants.s0.c2.4.1 picked.f0.w02 -1.3232637445131938
 plants.s0.c2.4.1 picked.f0.w03 -0.6275073687235514
 M MARKER 'MARKER' 'INTEND'
 lost.s0.c2.4.1 cost 0.02
 lost.s0.c2.4.1 few.s0.c2.4.1 -1
 lost.s0.c2.4.1 all.s0.c2.4.1 -1
 lost.s0.c2.4.1 back.s0.c2.4.1 1
 M MARKER 'MARKER' 'INTORG'
 many.s0.c2.4.1 cost 0
 many.s0.c2.4.1 few.s0.c2.4.1 -1
 many.s0.c2.4.1 all.s0.c2.4.1 1
 pull.stay0.before cost 0.18339138163859614
 pull.stay0.before pulled.stay0 1
 pull.stay0.before leaves.b0.f0.w-1.pull.stay0.before -1
 pull.stay0.before clears.s0.w-1.pull.stay0.before -1
 pull.stay0.w00 cost 0.18339138163859614
 pull.stay0.w00 pulled.stay0 1
 pull.stay0.w00 minutes.w00 0.6746841671873098
 pull.stay0.w00 picked.f0.w00 -0.5793556372324625
 pull.stay0.w00 leaves.b0.f0.w00.pull.stay0.w00 -1
 pull.stay0.w00 standson.s0.w-1 1
 pull.stay0.w00 clears.s0.w00.pull.stay0.w00 -1
 pull.stay0.w01 cost 0.18339138163859614
 pull.stay0.w01 pulled.stay0 1
 pull.stay0.w01 minutes.w00 0.6746841671873098
 pull.stay0.w01 ground.s0.w01 0.039250862479859004
 pull.stay0.w01 roots.s0.w01 24.939242788298333
 pull.stay0.w01 tall.s0.w01 0.039250862479859004
 pull.stay0.w01 picked.f0.w00 -0.5793556372324625
 pull.stay0.w01 picked.f0.w01 -0.6357138454914093
 pull.stay0.w01 leaves.b0.f0.w01.pull.stay0.w01 -1
 pull.stay0.w01 standson.s0.w-1 1
 pull.stay0.w01 standson.s0.w00 1
 pull.stay0.w01 clears.s0.w01.pull.stay0.w01 -1
 pull.stay0.w02 cost -0.1766394515890956
 pull.stay0.w02 pulled.stay0 1
 pull.stay0.w02 minutes.w00 0.6746841671873098
 pull.stay0.w02 ground.s0.w01 0.039250862479859004
 pull.stay0.w02 roots.s0.w01 24.939242788298333
 pull.stay0.w02 tall.s0.w01 0.039250862479859004
 pull.stay0.w02 ground.s0.w02 0.039250862479859004
 pull.stay0.w02 roots.s0.w02 24.939242788298333
 pull.stay0.w02 tall.s0.w02 0.039250862479859004
 pull.stay0.w02 picked.f0.w00 -0.5793556372324625
 pull.stay0.w02 picked.f0.w01 -0.6357138454914093
 pull.stay0.w02 picked.f0.w02 -0.17815943559010824
 pull.stay0.w02 leaves.b0.f0.w02.pull.stay0.w02 -1
 pull.stay0.w02 standson.s0.w-1 1
 pull.stay0.w02 standson.s0.w00 1
 pull.stay0.w02 standson.s0.w01 1
 pull.stay0.w02 clears.s0.w02.pull.stay0.w02 -1
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
 eat.f0.w00.1 cost -1.8483252447262841
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -1.0851695421288774
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -0.3220138395314708
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
 eat.f0.w01.1 cost -1.8483252447262841
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -1.0851695421288774
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -0.3220138395314708
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
 eat.f0.w02.1 cost -1.8483252447262841
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -1.0851695421288774
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -0.3220138395314708
 eat.f0.w02.3 sum.f0.w02 -1
 used.f0.w03 cost 0
 used.f0.w03 picked.f0.w03 1
 used.f0.w03 rises.f0.w03 1
 used.f0.w03 first.f0.w03 -1
 used.f0.w03 picked.f0.w04 -1
 used.f0.w03 rises.f0.w04 -1
 eaten.f0.w03 cost 0
 eaten.f0.w03 sum.f0.w03 1
 eaten.f0.w03 first.f0.w03 1
 eaten.f0.w03 sum.f0.w04 -1
 eaten.f0.w03 keeps.f0.w01 -1
 eat.f0.w03.1 cost -1.8483252447262841
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -1.0851695421288774
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -0.3220138395314708
 eat.f0.w03.3 sum.f0.w03 -1
 used.f0.w04 cost 0
 used.f0.w04 picked.f0.w04 1
 used.f0.w04 rises.f0.w04 1
 used.f0.w04 first.f0.w04 -1
 eaten.f0.w04 cost 0
 eaten.f0.w04 sum.f0.w04 1
 eaten.f0.w04 first.f0.w04 1
 eaten.f0.w04 keeps.f0.w02 -1
 eat.f0.w04.1 cost -1.8483252447262841
 eat.f0.w04.1 sum.f0.w04 -1
 eat.f0.w04.2 cost -1.0851695421288774
 eat.f0.w04.2 sum.f0.w04 -1
 eat.f0.w04.3 cost -0.3220138395314708
 eat.f0.w04.3 sum.f0.w04 -1
 left.b0.f1.w03 cost 0
 left.b0.f1.w03 leaves.b0.f1.w03.start.s0.c1.0.3 1
 left.b0.f1.w03 leaves.b0.f1.w03.start.s0.c2.2.3 1
 left.b0.f1.w03 leaves.b0.f1.w03.start.s0.c2.3.1 1
 left.b0.f0.w03 cost 0
 left.b0.f0.w03 leaves.b0.f0.w03.start.s0.c2.4.1 1
 left.b0.f0.w-1 cost 0
 left.b0.f0.w-1 leaves.b0.f0.w-1.pull.stay0.before 1
 left.b0.f0.w00 cost 0
 left.b0.f0.w00 leaves.b0.f0.w00.pull.stay0.w00 1
 left.b0.f0.w00 soon.b0.f0.i1.w01.w00 -1
 left.b0.f0.w01 cost 0
 left.b0.f0.w01 leaves.b0.f0.w01.pull.stay0.w01 1
 left.b0.f0.w02 cost 0
 left.b0.f0.w02 leaves.b0.f0.w02.pull.stay0.w02 1
 early.b0.f0.i1.w01 cost 0
 early.b0.f0.i1.w01 soon.b0.f0.i1.w01.w00 1
 early.b0.f0.i1.w01 back.s0.c2.4.1 1
 pays.s0.c2.4.1 cost 0.5
 pays.s0.c2.4.1 back.s0.c2.4.1 -1
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
 cleared.s0.w02 cost 0
 cleared.s0.w02 clear.w02 1
 cleared.s0.w02 clears.s0.w02.pull.stay0.w02 1
 stands.s0.w02 cost 0
 stands.s0.w02 standson.s0.w02 -1
 stands.s0.w02 clears.s0.w02.pull.stay0.w02 1
 rest.w03 cost 0.5
 rest.w03 clear.w03 -1
 cleared.s0.w03 cost 0
 cleared.s0.w03 clear.w03 1
 cleared.s0.w03 clears.s0.w03.start.s0.c1.0.3 1
 cleared.s0.w03 clears.s0.w03.start.s0.c0.1.3 1
 cleared.s0.w03 clears.s0.w03.start.s0.c2.2.3 1
 cleared.s0.w03 clears.s0.w03.start.s0.c2.3.1 1
 cleared.s0.w03 clears.s0.w03.start.s0.c2.4.1 1
 stands.s0.w03 cost 0
 stands.s0.w03 standson.s0.w03 -1
 stands.s0.w03 clears.s0.w03.start.s0.c1.0.3 1
 stands.s0.w03 clears.s0.w03.start.s0.c0.1.3 1
 stands.s0.w03 clears.s0.w03.start.s0.c2.2.3 1
 stands.s0.w03 clears.s0.w03.start.s0.c2.3.1 1
 stands.s0.w03 clears.s0.w03.start.s0.c2.4.1 1
RHS
 RHS pulled.stay0 1
 RHS minutes.w00 21
 RHS minutes.w01 10
 RHS minutes.w02 38
 RHS minutes.w03 31
 RHS minutes.w04 22
 RHS total.g 2
 RHS total.h 3
 RHS ground.s0.w03 0.6797956134875565
 RHS roots.s0.w03 128.14950083770458
 RHS support.s0.w03 0.4338367715251226
 RHS ground.s0.w01 0.6797956134875565
 RHS roots.s0.w01 128.14950083770458
 RHS tall.s0.w01 0.9968809262861
 RHS ground.s0.w02 0.6797956134875565
 RHS roots.s0.w02 128.14950083770458
 RHS tall.s0.w02 0.9968809262861
 RHS tall.s0.w03 0.9968809262861
 RHS back.s0.c2.4.1 1
 RHS clear.w-1 1
 RHS clear.w00 1
 RHS clear.w01 1
 RHS clear.w02 1
 RHS clear.w03 1
BOUNDS
 UP BND start.s0.c1.0.3 1
 UP BND plants.s0.c1.0.3 2
 UP BND start.s0.c0.1.3 1
 UP BND plants.s0.c0.1.3 1
 UP BND start.s0.c2.2.3 1
 UP BND plants.s0.c2.2.3 3
 UP BND many.s0.c2.2.3 1
 UP BND start.s0.c2.3.1 1
 UP BND plants.s0.c2.3.1 3
 UP BND start.s0.c2.4.1 1
 UP BND plants.s0.c2.4.1 2
 UP BND many.s0.c2.4.1 1
 UP BND pull.stay0.before 1
 UP BND pull.stay0.w00 1
 UP BND pull.stay0.w01 1
 UP BND pull.stay0.w02 1
 UP BND eat.f0.w00.1 0.08888919524664884
 UP BND eat.f0.w00.2 0.08888919524664884
 UP BND eat.f0.w00.3 0.1777783904932977
 UP BND eat.f0.w01.1 0.0026200426662627008
 UP BND eat.f0.w01.2 0.0026200426662627008
 UP BND eat.f0.w01.3 0.0052400853325254015
 UP BND eat.f0.w02.1 0.8897107218129618
 UP BND eat.f0.w02.2 0.8897107218129618
 UP BND eat.f0.w02.3 1.7794214436259237
 UP BND eat.f0.w03.1 0.4468525849679849
 UP BND eat.f0.w03.2 0.4468525849679849
 UP BND eat.f0.w03.3 0.8937051699359698
 UP BND eat.f0.w04.1 0.525394980889272
 UP BND eat.f0.w04.2 0.525394980889272
 UP BND eat.f0.w04.3 1.050789961778544
 UP BND left.b0.f1.w03 1
 UP BND left.b0.f0.w03 1
 UP BND left.b0.f0.w-1 1
 UP BND left.b0.f0.w00 1
 UP BND left.b0.f0.w01 1
 UP BND left.b0.f0.w02 1
 UP BND early.b0.f0.i1.w01 1
 UP BND cleared.s0.w-1 1
 UP BND cleared.s0.w00 1
 UP BND cleared.s0.w01 1
 UP BND cleared.s0.w02 1
 UP BND cleared.s0.w03 1
ENDATA
