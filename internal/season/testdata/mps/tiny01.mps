NAME season
ROWS
 N cost
 L most.s0.c0.1.1
 G least.s0.c0.1.1
 L few.s0.c0.1.1
 L all.s0.c0.1.1
 L most.s0.c2.3.0
 G least.s0.c2.3.0
 L total.g
 L total.h
 L ground.s1.w01
 L roots.s1.w01
 L ground.s1.w02
 L roots.s1.w02
 L ground.s1.w03
 L roots.s1.w03
 L tall.s1.w03
 L ground.s1.w00
 L roots.s1.w00
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
 L keeps.f0.w02
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
 L keeps.f1.w02
 G leaves.b0.f1.w03.start.s0.c0.1.1
 L clear.w-1
 L clear.w00
 L clear.w01
 L clear.w02
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s0.c0.1.1 cost 0.2598932929712973
 start.s0.c0.1.1 most.s0.c0.1.1 -2
 start.s0.c0.1.1 least.s0.c0.1.1 -1
 start.s0.c0.1.1 leaves.b0.f1.w03.start.s0.c0.1.1 -1
 plants.s0.c0.1.1 cost 0.1
 plants.s0.c0.1.1 most.s0.c0.1.1 1
 plants.s0.c0.1.1 least.s0.c0.1.1 1
 plants.s0.c0.1.1 few.s0.c0.1.1 1
 plants.s0.c0.1.1 ground.s1.w01 0.11773283663926146
 plants.s0.c0.1.1 roots.s1.w01 13.890047195434907
 plants.s0.c0.1.1 ground.s1.w02 0.11773283663926146
 plants.s0.c0.1.1 roots.s1.w02 13.890047195434907
 plants.s0.c0.1.1 ground.s1.w03 0.11773283663926146
 plants.s0.c0.1.1 roots.s1.w03 13.890047195434907
 plants.s0.c0.1.1 tall.s1.w03 0.11773283663926146
 plants.s0.c0.1.1 picked.f1.w02 -0.1151721179485321
 plants.s0.c0.1.1 picked.f1.w03 -1.4865946769714355
 M MARKER 'MARKER' 'INTEND'
 lost.s0.c0.1.1 cost 0.02
 lost.s0.c0.1.1 few.s0.c0.1.1 -1
 lost.s0.c0.1.1 all.s0.c0.1.1 -1
 M MARKER 'MARKER' 'INTORG'
 many.s0.c0.1.1 cost 0
 many.s0.c0.1.1 few.s0.c0.1.1 -1
 many.s0.c0.1.1 all.s0.c0.1.1 1
 start.s0.c2.3.0 cost 0.10254276007895562
 start.s0.c2.3.0 most.s0.c2.3.0 -2
 start.s0.c2.3.0 least.s0.c2.3.0 -2
 plants.s0.c2.3.0 cost -0.18
 plants.s0.c2.3.0 most.s0.c2.3.0 1
 plants.s0.c2.3.0 least.s0.c2.3.0 1
 plants.s0.c2.3.0 total.g 1
 plants.s0.c2.3.0 total.h 1
 plants.s0.c2.3.0 ground.s1.w01 0.2581228929733266
 plants.s0.c2.3.0 roots.s1.w01 14.74281968545087
 plants.s0.c2.3.0 ground.s1.w02 0.12530218042491445
 plants.s0.c2.3.0 roots.s1.w02 7.156697458792387
 plants.s0.c2.3.0 ground.s1.w03 0.06464064793662505
 plants.s0.c2.3.0 roots.s1.w03 3.6919833258604178
 plants.s0.c2.3.0 ground.s1.w00 0.23659283394850272
 plants.s0.c2.3.0 roots.s1.w00 13.513119466443591
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
 eat.f0.w00.1 cost -1.6250129304415515
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -0.9839982135932631
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -0.3429834967449747
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
 eat.f0.w01.1 cost -1.6089236935064866
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -0.9742556570230327
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -0.3395876205395789
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
 eat.f0.w02.1 cost -1.5929937559470164
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -0.9646095614089433
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -0.3362253668708702
 eat.f0.w02.3 sum.f0.w02 -1
 used.f0.w03 cost 0
 used.f0.w03 picked.f0.w03 1
 used.f0.w03 rises.f0.w03 1
 used.f0.w03 first.f0.w03 -1
 eaten.f0.w03 cost 0
 eaten.f0.w03 sum.f0.w03 1
 eaten.f0.w03 first.f0.w03 1
 eaten.f0.w03 keeps.f0.w02 -1
 eat.f0.w03.1 cost -1.5772215405416006
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -0.9550589716920233
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -0.33289640284244576
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
 eat.f1.w00.1 cost -1.0646984092996106
 eat.f1.w00.1 sum.f1.w00 -1
 eat.f1.w00.2 cost -0.6331421781816045
 eat.f1.w00.2 sum.f1.w00 -1
 eat.f1.w00.3 cost -0.20158594706359828
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
 eat.f1.w01.1 cost -1.0541568408907036
 eat.f1.w01.1 sum.f1.w01 -1
 eat.f1.w01.2 cost -0.6268734437441629
 eat.f1.w01.2 sum.f1.w01 -1
 eat.f1.w01.3 cost -0.19959004659762206
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
 eat.f1.w02.1 cost -1.043719644446241
 eat.f1.w02.1 sum.f1.w02 -1
 eat.f1.w02.2 cost -0.6206667759843196
 eat.f1.w02.2 sum.f1.w02 -1
 eat.f1.w02.3 cost -0.19761390752239807
 eat.f1.w02.3 sum.f1.w02 -1
 used.f1.w03 cost 0
 used.f1.w03 picked.f1.w03 1
 used.f1.w03 rises.f1.w03 1
 used.f1.w03 first.f1.w03 -1
 eaten.f1.w03 cost 0
 eaten.f1.w03 sum.f1.w03 1
 eaten.f1.w03 first.f1.w03 1
 eaten.f1.w03 keeps.f1.w02 -1
 eat.f1.w03.1 cost -1.0333857865804368
 eat.f1.w03.1 sum.f1.w03 -1
 eat.f1.w03.2 cost -0.6145215603805145
 eat.f1.w03.2 sum.f1.w03 -1
 eat.f1.w03.3 cost -0.19565733418059217
 eat.f1.w03.3 sum.f1.w03 -1
 left.b0.f1.w03 cost 0
 left.b0.f1.w03 leaves.b0.f1.w03.start.s0.c0.1.1 1
 rest.w-1 cost 0.5
 rest.w-1 clear.w-1 -1
 rest.w00 cost 0.5
 rest.w00 clear.w00 -1
 rest.w01 cost 0.5
 rest.w01 clear.w01 -1
 rest.w02 cost 0.5
 rest.w02 clear.w02 -1
RHS
 RHS total.g 4
 RHS total.h 3
 RHS ground.s1.w01 1.2797286539997683
 RHS roots.s1.w01 183.84102075008138
 RHS ground.s1.w02 1.2797286539997683
 RHS roots.s1.w02 183.84102075008138
 RHS ground.s1.w03 1.2797286539997683
 RHS roots.s1.w03 183.84102075008138
 RHS tall.s1.w03 0.8453604966587575
 RHS ground.s1.w00 1.2797286539997683
 RHS roots.s1.w00 183.84102075008138
 RHS clear.w-1 1
 RHS clear.w00 1
 RHS clear.w01 1
 RHS clear.w02 1
BOUNDS
 UP BND start.s0.c0.1.1 1
 UP BND plants.s0.c0.1.1 2
 UP BND many.s0.c0.1.1 1
 UP BND start.s0.c2.3.0 1
 UP BND plants.s0.c2.3.0 2
 UP BND eat.f0.w00.1 0.43939474999058753
 UP BND eat.f0.w00.2 0.43939474999058753
 UP BND eat.f0.w00.3 0.8787894999811751
 UP BND eat.f0.w01.1 0.24852959413502418
 UP BND eat.f0.w01.2 0.24852959413502418
 UP BND eat.f0.w01.3 0.49705918827004836
 UP BND eat.f0.w02.1 0.7358779677342115
 UP BND eat.f0.w02.2 0.7358779677342115
 UP BND eat.f0.w02.3 1.471755935468423
 UP BND eat.f0.w03.1 0.2569892385730371
 UP BND eat.f0.w03.2 0.2569892385730371
 UP BND eat.f0.w03.3 0.5139784771460743
 UP BND eat.f1.w00.1 0.33854020145425556
 UP BND eat.f1.w00.2 0.33854020145425556
 UP BND eat.f1.w00.3 0.6770804029085111
 UP BND eat.f1.w01.1 1.4064871992170151
 UP BND eat.f1.w01.2 1.4064871992170151
 UP BND eat.f1.w01.3 2.8129743984340303
 UP BND eat.f1.w02.1 0.3636162270609459
 UP BND eat.f1.w02.2 0.3636162270609459
 UP BND eat.f1.w02.3 0.7272324541218917
 UP BND eat.f1.w03.1 0.22856106984903773
 UP BND eat.f1.w03.2 0.22856106984903773
 UP BND eat.f1.w03.3 0.45712213969807547
 UP BND left.b0.f1.w03 1
ENDATA
