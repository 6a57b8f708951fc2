NAME season
ROWS
 N cost
 L most.s0.c1.0.2
 G least.s0.c1.0.2
 L most.s0.c1.1.1
 G least.s0.c1.1.1
 L few.s0.c1.1.1
 L all.s0.c1.1.1
 L most.s0.c0.2.0
 G least.s0.c0.2.0
 L most.s0.c2.3.0
 G least.s0.c2.3.0
 L most.s0.c2.4.3
 G least.s0.c2.4.3
 L few.s0.c2.4.3
 L all.s0.c2.4.3
 L minutes.w00
 L minutes.w01
 L minutes.w02
 L minutes.w03
 L minutes.w04
 L total.g
 L total.h
 L ground.s0.w02
 L roots.s0.w02
 L support.s0.w02
 L ground.s0.w03
 L roots.s0.w03
 L support.s0.w03
 L ground.s0.w01
 L roots.s0.w01
 L support.s0.w01
 L ground.s0.w00
 L roots.s0.w00
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
 L keeps.f1.w00
 L keeps.f1.w01
 L keeps.f1.w02
 L keeps.f1.w03
 L keeps.f1.w04
 G leaves.b0.f0.w03.start.s0.c1.0.2
 G leaves.b0.f1.w03.start.s0.c0.2.0
 G leaves.b0.f0.w03.start.s0.c2.4.3
 L clear.w-1
 L clear.w00
 L clear.w01
 L clear.w02
 L clear.w03
 E standson.s0.w03
 G clears.s0.w03.start.s0.c1.0.2
 G clears.s0.w03.start.s0.c1.1.1
 G clears.s0.w03.start.s0.c0.2.0
 G clears.s0.w03.start.s0.c2.3.0
 G clears.s0.w03.start.s0.c2.4.3
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s0.c1.0.2 cost 0.24712515099989021
 start.s0.c1.0.2 most.s0.c1.0.2 -1
 start.s0.c1.0.2 least.s0.c1.0.2 -1
 start.s0.c1.0.2 minutes.w02 5
 start.s0.c1.0.2 leaves.b0.f0.w03.start.s0.c1.0.2 -1
 start.s0.c1.0.2 clears.s0.w03.start.s0.c1.0.2 -1
 plants.s0.c1.0.2 cost 0.12000000000000001
 plants.s0.c1.0.2 most.s0.c1.0.2 1
 plants.s0.c1.0.2 least.s0.c1.0.2 1
 plants.s0.c1.0.2 minutes.w02 0.8595536669793296
 plants.s0.c1.0.2 minutes.w03 5
 plants.s0.c1.0.2 minutes.w04 5
 plants.s0.c1.0.2 ground.s0.w02 0.20067683159379807
 plants.s0.c1.0.2 roots.s0.w02 8.750063475181157
 plants.s0.c1.0.2 support.s0.w02 0.2
 plants.s0.c1.0.2 ground.s0.w03 0.20067683159379807
 plants.s0.c1.0.2 roots.s0.w03 8.750063475181157
 plants.s0.c1.0.2 support.s0.w03 0.2
 start.s0.c1.1.1 cost 0.16773616620285806
 start.s0.c1.1.1 most.s0.c1.1.1 -2
 start.s0.c1.1.1 least.s0.c1.1.1 -2
 start.s0.c1.1.1 minutes.w01 5
 start.s0.c1.1.1 clears.s0.w03.start.s0.c1.1.1 -1
 plants.s0.c1.1.1 cost -0.19999999999999998
 plants.s0.c1.1.1 most.s0.c1.1.1 1
 plants.s0.c1.1.1 least.s0.c1.1.1 1
 plants.s0.c1.1.1 few.s0.c1.1.1 1
 plants.s0.c1.1.1 minutes.w01 0.38092423592785574
 plants.s0.c1.1.1 ground.s0.w02 0.18259899903310772
 plants.s0.c1.1.1 roots.s0.w02 6.158786685572198
 plants.s0.c1.1.1 support.s0.w02 0.2
 plants.s0.c1.1.1 ground.s0.w03 0.18259899903310772
 plants.s0.c1.1.1 roots.s0.w03 6.158786685572198
 plants.s0.c1.1.1 support.s0.w03 0.2
 plants.s0.c1.1.1 ground.s0.w01 0.18259899903310772
 plants.s0.c1.1.1 roots.s0.w01 6.158786685572198
 plants.s0.c1.1.1 support.s0.w01 0.2
 M MARKER 'MARKER' 'INTEND'
 lost.s0.c1.1.1 cost 0.02
 lost.s0.c1.1.1 few.s0.c1.1.1 -1
 lost.s0.c1.1.1 all.s0.c1.1.1 -1
 M MARKER 'MARKER' 'INTORG'
 many.s0.c1.1.1 cost 0
 many.s0.c1.1.1 few.s0.c1.1.1 -1
 many.s0.c1.1.1 all.s0.c1.1.1 1
 start.s0.c0.2.0 cost 0.27819114007833967
 start.s0.c0.2.0 most.s0.c0.2.0 -2
 start.s0.c0.2.0 least.s0.c0.2.0 -2
 start.s0.c0.2.0 minutes.w00 5
 start.s0.c0.2.0 leaves.b0.f1.w03.start.s0.c0.2.0 -1
 start.s0.c0.2.0 clears.s0.w03.start.s0.c0.2.0 -1
 plants.s0.c0.2.0 cost -0.18
 plants.s0.c0.2.0 most.s0.c0.2.0 1
 plants.s0.c0.2.0 least.s0.c0.2.0 1
 plants.s0.c0.2.0 minutes.w00 1.4709734856578454
 plants.s0.c0.2.0 minutes.w01 0.46108344291514536
 plants.s0.c0.2.0 minutes.w02 5
 plants.s0.c0.2.0 minutes.w03 5
 plants.s0.c0.2.0 minutes.w04 5
 plants.s0.c0.2.0 ground.s0.w02 0.27703340761778117
 plants.s0.c0.2.0 roots.s0.w02 3.6217401408249694
 plants.s0.c0.2.0 ground.s0.w03 0.27703340761778117
 plants.s0.c0.2.0 roots.s0.w03 3.6217401408249694
 plants.s0.c0.2.0 ground.s0.w01 0.27703340761778117
 plants.s0.c0.2.0 roots.s0.w01 3.6217401408249694
 plants.s0.c0.2.0 ground.s0.w00 0.23015073241372547
 plants.s0.c0.2.0 roots.s0.w00 3.008828982723582
 start.s0.c2.3.0 cost 0.021575967109533377
 start.s0.c2.3.0 most.s0.c2.3.0 -2
 start.s0.c2.3.0 least.s0.c2.3.0 -1
 start.s0.c2.3.0 minutes.w00 5
 start.s0.c2.3.0 clears.s0.w03.start.s0.c2.3.0 -1
 plants.s0.c2.3.0 cost 0.12000000000000001
 plants.s0.c2.3.0 most.s0.c2.3.0 1
 plants.s0.c2.3.0 least.s0.c2.3.0 1
 plants.s0.c2.3.0 minutes.w00 3.3892585070559
 plants.s0.c2.3.0 ground.s0.w02 0.14320775121522236
 plants.s0.c2.3.0 roots.s0.w02 6.279410084461904
 plants.s0.c2.3.0 ground.s0.w03 0.14320775121522236
 plants.s0.c2.3.0 roots.s0.w03 6.279410084461904
 plants.s0.c2.3.0 ground.s0.w01 0.14320775121522236
 plants.s0.c2.3.0 roots.s0.w01 6.279410084461904
 plants.s0.c2.3.0 ground.s0.w00 0.14320775121522236
 plants.s0.c2.3.0 roots.s0.w00 6.279410084461904
 start.s0.c2.4.3 cost 0.01186553350939279
 start.s0.c2.4.3 most.s0.c2.4.3 -2
 start.s0.c2.4.3 least.s0.c2.4.3 -1
 start.s0.c2.4.3 minutes.w03 5
 start.s0.c2.4.3 leaves.b0.f0.w03.start.s0.c2.4.3 -1
 start.s0.c2.4.3 clears.s0.w03.start.s0.c2.4.3 -1
 plants.s0.c2.4.3 cost 0.1
 plants.s0.c2.4.3 most.s0.c2.4.3 1
 plants.s0.c2.4.3 least.s0.c2.4.3 1
 plants.s0.c2.4.3 few.s0.c2.4.3 1
 plants.s0.c2.4.3 minutes.w03 1.1114370602768204
 plants.s0.c2.4.3 total.g 1
 plants.s0.c2.4.3 total.h 1
 plants.s0.c2.4.3 ground.s0.w03 0.2618361924480417
 plants.s0.c2.4.3 roots.s0.w03 1.48665608941497
 plants.s0.c2.4.3 support.s0.w03 0.2
 plants.s0.c2.4.3 picked.f1.w04 -0.7441861033439636
 M MARKER 'MARKER' 'INTEND'
 lost.s0.c2.4.3 cost 0.02
 lost.s0.c2.4.3 few.s0.c2.4.3 -1
 lost.s0.c2.4.3 all.s0.c2.4.3 -1
 M MARKER 'MARKER' 'INTORG'
 many.s0.c2.4.3 cost 0
 many.s0.c2.4.3 few.s0.c2.4.3 -1
 many.s0.c2.4.3 all.s0.c2.4.3 1
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
 eaten.f0.w00 keeps.f0.w00 -1
 eat.f0.w00.1 cost -1.4419097247130366
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -1.3387867241946956
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -1.2356637236763548
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
 eat.f0.w01.1 cost -1.4276333908049867
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -1.325531410093758
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -1.2234294293825294
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
 eat.f0.w02.1 cost -1.4134984067376106
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -1.312407336726493
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -1.2113162667153756
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
 eat.f0.w03.1 cost -1.3995033730075355
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -1.2994132046796962
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -1.1993230363518572
 eat.f0.w03.3 sum.f0.w03 -1
 used.f0.w04 cost 0
 used.f0.w04 picked.f0.w04 1
 used.f0.w04 rises.f0.w04 1
 used.f0.w04 first.f0.w04 -1
 used.f0.w04 keeps.f0.w04 1
 eaten.f0.w04 cost 0
 eaten.f0.w04 sum.f0.w04 1
 eaten.f0.w04 first.f0.w04 1
 eaten.f0.w04 keeps.f0.w04 -1
 eat.f0.w04.1 cost -1.3856469039678565
 eat.f0.w04.1 sum.f0.w04 -1
 eat.f0.w04.2 cost -1.2865477274056396
 eat.f0.w04.2 sum.f0.w04 -1
 eat.f0.w04.3 cost -1.187448550843423
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
 eat.f1.w00.1 cost -1.3384534267155554
 eat.f1.w00.1 sum.f1.w00 -1
 eat.f1.w00.2 cost -1.3153219681671093
 eat.f1.w00.2 sum.f1.w00 -1
 eat.f1.w00.3 cost -1.2921905096186632
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
 eat.f1.w01.1 cost -1.325201412589659
 eat.f1.w01.1 sum.f1.w01 -1
 eat.f1.w01.2 cost -1.3022989783832766
 eat.f1.w01.2 sum.f1.w01 -1
 eat.f1.w01.3 cost -1.2793965441768942
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
 eat.f1.w02.1 cost -1.3120806065244146
 eat.f1.w02.1 sum.f1.w02 -1
 eat.f1.w02.2 cost -1.289404929092353
 eat.f1.w02.2 sum.f1.w02 -1
 eat.f1.w02.3 cost -1.2667292516602913
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
 eat.f1.w03.1 cost -1.2990897094301137
 eat.f1.w03.1 sum.f1.w03 -1
 eat.f1.w03.2 cost -1.2766385436557952
 eat.f1.w03.2 sum.f1.w03 -1
 eat.f1.w03.3 cost -1.2541873778814767
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
 eat.f1.w04.1 cost -1.2862274350793204
 eat.f1.w04.1 sum.f1.w04 -1
 eat.f1.w04.2 cost -1.2639985580750446
 eat.f1.w04.2 sum.f1.w04 -1
 eat.f1.w04.3 cost -1.2417696810707688
 eat.f1.w04.3 sum.f1.w04 -1
 left.b0.f0.w03 cost 0
 left.b0.f0.w03 leaves.b0.f0.w03.start.s0.c1.0.2 1
 left.b0.f0.w03 leaves.b0.f0.w03.start.s0.c2.4.3 1
 left.b0.f1.w03 cost 0
 left.b0.f1.w03 leaves.b0.f1.w03.start.s0.c0.2.0 1
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
 cleared.s0.w03 clears.s0.w03.start.s0.c1.0.2 1
 cleared.s0.w03 clears.s0.w03.start.s0.c1.1.1 1
 cleared.s0.w03 clears.s0.w03.start.s0.c0.2.0 1
 cleared.s0.w03 clears.s0.w03.start.s0.c2.3.0 1
 cleared.s0.w03 clears.s0.w03.start.s0.c2.4.3 1
 stands.s0.w03 cost 0
 stands.s0.w03 standson.s0.w03 -1
 stands.s0.w03 clears.s0.w03.start.s0.c1.0.2 1
 stands.s0.w03 clears.s0.w03.start.s0.c1.1.1 1
 stands.s0.w03 clears.s0.w03.start.s0.c0.2.0 1
 stands.s0.w03 clears.s0.w03.start.s0.c2.3.0 1
 stands.s0.w03 clears.s0.w03.start.s0.c2.4.3 1
RHS
 RHS minutes.w00 37
 RHS minutes.w01 3
 RHS minutes.w02 18
 RHS minutes.w03 28
 RHS minutes.w04 24
 RHS total.g 4
 RHS total.h 3
 RHS ground.s0.w02 0.7498180431694762
 RHS roots.s0.w02 136.43202817769492
 RHS support.s0.w02 0.7457624259086577
 RHS ground.s0.w03 0.7498180431694762
 RHS roots.s0.w03 136.43202817769492
 RHS support.s0.w03 0.7457624259086577
 RHS ground.s0.w01 0.7498180431694762
 RHS roots.s0.w01 136.43202817769492
 RHS support.s0.w01 0.7457624259086577
 RHS ground.s0.w00 0.7498180431694762
 RHS roots.s0.w00 136.43202817769492
 RHS clear.w-1 1
 RHS clear.w00 1
 RHS clear.w01 1
 RHS clear.w02 1
 RHS clear.w03 1
BOUNDS
 UP BND start.s0.c1.0.2 1
 UP BND plants.s0.c1.0.2 1
 UP BND start.s0.c1.1.1 1
 UP BND plants.s0.c1.1.1 2
 UP BND many.s0.c1.1.1 1
 UP BND start.s0.c0.2.0 1
 UP BND plants.s0.c0.2.0 2
 UP BND start.s0.c2.3.0 1
 UP BND plants.s0.c2.3.0 2
 UP BND start.s0.c2.4.3 1
 UP BND plants.s0.c2.4.3 2
 UP BND many.s0.c2.4.3 1
 UP BND eat.f0.w00.1 1.3922995777170657
 UP BND eat.f0.w00.2 1.3922995777170657
 UP BND eat.f0.w00.3 2.7845991554341314
 UP BND eat.f0.w01.1 0.1578876533495659
 UP BND eat.f0.w01.2 0.1578876533495659
 UP BND eat.f0.w01.3 0.3157753066991318
 UP BND eat.f0.w02.1 1.4206551271103596
 UP BND eat.f0.w02.2 1.4206551271103596
 UP BND eat.f0.w02.3 2.841310254220719
 UP BND eat.f0.w03.1 0.6818933761608088
 UP BND eat.f0.w03.2 0.6818933761608088
 UP BND eat.f0.w03.3 1.3637867523216176
 UP BND eat.f0.w04.1 0.5904757581817004
 UP BND eat.f0.w04.2 0.5904757581817004
 UP BND eat.f0.w04.3 1.1809515163634008
 UP BND eat.f1.w00.1 1.2787760979944018
 UP BND eat.f1.w00.2 1.2787760979944018
 UP BND eat.f1.w00.3 2.5575521959888037
 UP BND eat.f1.w01.1 0.025061718677531597
 UP BND eat.f1.w01.2 0.025061718677531597
 UP BND eat.f1.w01.3 0.050123437355063194
 UP BND eat.f1.w02.1 0.6468085719883349
 UP BND eat.f1.w02.2 0.6468085719883349
 UP BND eat.f1.w02.3 1.2936171439766697
 UP BND eat.f1.w03.1 0.16434940474436277
 UP BND eat.f1.w03.2 0.16434940474436277
 UP BND eat.f1.w03.3 0.32869880948872554
 UP BND eat.f1.w04.1 0.14462318886141645
 UP BND eat.f1.w04.2 0.14462318886141645
 UP BND eat.f1.w04.3 0.2892463777228329
 UP BND left.b0.f0.w03 1
 UP BND left.b0.f1.w03 1
 UP BND cleared.s0.w03 1
ENDATA
