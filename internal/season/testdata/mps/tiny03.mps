NAME season
ROWS
 N cost
 L most.s0.c1.0.2
 G least.s0.c1.0.2
 L most.s0.c0.1.0
 G least.s0.c0.1.0
 L few.s0.c0.1.0
 L all.s0.c0.1.0
 L most.s0.c0.2.3
 G least.s0.c0.2.3
 L few.s0.c0.2.3
 L all.s0.c0.2.3
 L most.s0.c2.3.1
 G least.s0.c2.3.1
 L minutes.w00
 L minutes.w01
 L minutes.w02
 L minutes.w03
 L minutes.w04
 L minutes.w05
 L total.g
 G must.0.c2
 L ground.s0.w02
 L roots.s0.w02
 L ground.s0.w03
 L roots.s0.w03
 L ground.s0.w04
 L roots.s0.w04
 L ground.s0.w00
 L roots.s0.w00
 L support.s0.w00
 L ground.s0.w01
 L roots.s0.w01
 L support.s0.w01
 L support.s0.w02
 L support.s0.w03
 L support.s0.w04
 L ground.s0.w05
 L roots.s0.w05
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
 G leaves.b0.f1.w04.start.s0.c1.0.2
 G leaves.b0.f1.w05.start.s0.c0.2.3
 L clear.w-1
 L clear.w00
 L clear.w01
 L clear.w02
 E standson.s0.w02
 G clears.s0.w02.start.s0.c2.3.1
 L clear.w03
 L clear.w04
 E standson.s0.w04
 G clears.s0.w04.start.s0.c1.0.2
 G clears.s0.w04.start.s0.c0.1.0
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s0.c1.0.2 cost 0.24779061501072897
 start.s0.c1.0.2 most.s0.c1.0.2 -1
 start.s0.c1.0.2 least.s0.c1.0.2 -1
 start.s0.c1.0.2 minutes.w02 5
 start.s0.c1.0.2 leaves.b0.f1.w04.start.s0.c1.0.2 -1
 start.s0.c1.0.2 standson.s0.w02 1
 start.s0.c1.0.2 clears.s0.w04.start.s0.c1.0.2 -1
 plants.s0.c1.0.2 cost 0.12000000000000001
 plants.s0.c1.0.2 most.s0.c1.0.2 1
 plants.s0.c1.0.2 least.s0.c1.0.2 1
 plants.s0.c1.0.2 minutes.w02 1.1454821940161604
 plants.s0.c1.0.2 minutes.w03 1.8044345877831698
 plants.s0.c1.0.2 minutes.w04 2.680763733301863
 plants.s0.c1.0.2 ground.s0.w02 0.09518014654147544
 plants.s0.c1.0.2 roots.s0.w02 0.9570763836909654
 plants.s0.c1.0.2 ground.s0.w03 0.1846425862617739
 plants.s0.c1.0.2 roots.s0.w03 1.856658821782334
 plants.s0.c1.0.2 ground.s0.w04 0.19557886064361318
 plants.s0.c1.0.2 roots.s0.w04 1.9666276578973518
 start.s0.c0.1.0 cost 0.10715381713148316
 start.s0.c0.1.0 most.s0.c0.1.0 -2
 start.s0.c0.1.0 least.s0.c0.1.0 -2
 start.s0.c0.1.0 minutes.w00 5
 start.s0.c0.1.0 standson.s0.w02 1
 start.s0.c0.1.0 clears.s0.w04.start.s0.c0.1.0 -1
 plants.s0.c0.1.0 cost 0.1
 plants.s0.c0.1.0 most.s0.c0.1.0 1
 plants.s0.c0.1.0 least.s0.c0.1.0 1
 plants.s0.c0.1.0 few.s0.c0.1.0 1
 plants.s0.c0.1.0 minutes.w00 2.8607845987378933
 plants.s0.c0.1.0 minutes.w01 5
 plants.s0.c0.1.0 minutes.w02 5
 plants.s0.c0.1.0 minutes.w03 5
 plants.s0.c0.1.0 minutes.w04 5
 plants.s0.c0.1.0 minutes.w05 5
 plants.s0.c0.1.0 total.g 1
 plants.s0.c0.1.0 ground.s0.w02 0.19171091785359956
 plants.s0.c0.1.0 roots.s0.w02 20.97790224596936
 plants.s0.c0.1.0 ground.s0.w03 0.19171091785359956
 plants.s0.c0.1.0 roots.s0.w03 20.97790224596936
 plants.s0.c0.1.0 ground.s0.w04 0.19171091785359956
 plants.s0.c0.1.0 roots.s0.w04 20.97790224596936
 plants.s0.c0.1.0 ground.s0.w00 0.19171091785359956
 plants.s0.c0.1.0 roots.s0.w00 20.97790224596936
 plants.s0.c0.1.0 support.s0.w00 0.2
 plants.s0.c0.1.0 ground.s0.w01 0.19171091785359956
 plants.s0.c0.1.0 roots.s0.w01 20.97790224596936
 plants.s0.c0.1.0 support.s0.w01 0.2
 plants.s0.c0.1.0 support.s0.w02 0.2
 plants.s0.c0.1.0 support.s0.w03 0.2
 plants.s0.c0.1.0 support.s0.w04 0.2
 plants.s0.c0.1.0 picked.f0.w00 -0.09814345091581345
 M MARKER 'MARKER' 'INTEND'
 lost.s0.c0.1.0 cost 0.02
 lost.s0.c0.1.0 few.s0.c0.1.0 -1
 lost.s0.c0.1.0 all.s0.c0.1.0 -1
 M MARKER 'MARKER' 'INTORG'
 many.s0.c0.1.0 cost 0
 many.s0.c0.1.0 few.s0.c0.1.0 -1
 many.s0.c0.1.0 all.s0.c0.1.0 1
 start.s0.c0.2.3 cost 0.05735031747517256
 start.s0.c0.2.3 most.s0.c0.2.3 -3
 start.s0.c0.2.3 least.s0.c0.2.3 -2
 start.s0.c0.2.3 minutes.w03 5
 start.s0.c0.2.3 leaves.b0.f1.w05.start.s0.c0.2.3 -1
 start.s0.c0.2.3 standson.s0.w04 1
 plants.s0.c0.2.3 cost 0.1
 plants.s0.c0.2.3 most.s0.c0.2.3 1
 plants.s0.c0.2.3 least.s0.c0.2.3 1
 plants.s0.c0.2.3 few.s0.c0.2.3 1
 plants.s0.c0.2.3 minutes.w03 3.2696446053004675
 plants.s0.c0.2.3 minutes.w04 1.763469751716607
 plants.s0.c0.2.3 ground.s0.w03 0.17003249725258807
 plants.s0.c0.2.3 roots.s0.w03 17.07881715867326
 plants.s0.c0.2.3 ground.s0.w04 0.22859759350345799
 plants.s0.c0.2.3 roots.s0.w04 22.9613548318267
 plants.s0.c0.2.3 ground.s0.w05 0.22859759350345799
 plants.s0.c0.2.3 roots.s0.w05 22.9613548318267
 plants.s0.c0.2.3 picked.f0.w04 -0.4390622153878212
 plants.s0.c0.2.3 picked.f0.w05 -0.04599520564079285
 M MARKER 'MARKER' 'INTEND'
 lost.s0.c0.2.3 cost 0.02
 lost.s0.c0.2.3 few.s0.c0.2.3 -1
 lost.s0.c0.2.3 all.s0.c0.2.3 -1
 M MARKER 'MARKER' 'INTORG'
 many.s0.c0.2.3 cost 0
 many.s0.c0.2.3 few.s0.c0.2.3 -1
 many.s0.c0.2.3 all.s0.c0.2.3 2
 start.s0.c2.3.1 cost 0.09094459558363051
 start.s0.c2.3.1 most.s0.c2.3.1 -2
 start.s0.c2.3.1 least.s0.c2.3.1 -1
 start.s0.c2.3.1 minutes.w01 5
 start.s0.c2.3.1 clears.s0.w02.start.s0.c2.3.1 -1
 plants.s0.c2.3.1 cost 0.12000000000000001
 plants.s0.c2.3.1 most.s0.c2.3.1 1
 plants.s0.c2.3.1 least.s0.c2.3.1 1
 plants.s0.c2.3.1 minutes.w01 0.9973965771007038
 plants.s0.c2.3.1 total.g 1
 plants.s0.c2.3.1 must.0.c2 1
 plants.s0.c2.3.1 ground.s0.w02 0.29410392120351936
 plants.s0.c2.3.1 roots.s0.w02 0.6042113924692949
 plants.s0.c2.3.1 ground.s0.w01 0.29410392120351936
 plants.s0.c2.3.1 roots.s0.w01 0.6042113924692949
 plants.s0.c2.3.1 picked.f0.w02 -1.742644190788269
 plants.s0.c2.3.1 picked.f0.w03 -0.8092889189720154
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
 eat.f0.w00.1 cost -1.1067063776839523
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -0.9019435743602604
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -0.6971807710365684
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
 eat.f0.w01.1 cost -1.0957488887959923
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -0.8930134399606539
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -0.6902779911253152
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
 eat.f0.w02.1 cost -1.0848998898970221
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -0.8841717227333206
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -0.683443555569619
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
 eat.f0.w03.1 cost -1.0741583068287348
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -0.8754175472607136
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -0.6766767876926922
 eat.f0.w03.3 sum.f0.w03 -1
 used.f0.w04 cost 0
 used.f0.w04 picked.f0.w04 1
 used.f0.w04 rises.f0.w04 1
 used.f0.w04 first.f0.w04 -1
 used.f0.w04 picked.f0.w05 -1
 used.f0.w04 rises.f0.w05 -1
 eaten.f0.w04 cost 0
 eaten.f0.w04 sum.f0.w04 1
 eaten.f0.w04 first.f0.w04 1
 eaten.f0.w04 sum.f0.w05 -1
 eaten.f0.w04 keeps.f0.w02 -1
 eat.f0.w04.1 cost -1.0635230760680543
 eat.f0.w04.1 sum.f0.w04 -1
 eat.f0.w04.2 cost -0.8667500467927856
 eat.f0.w04.2 sum.f0.w04 -1
 eat.f0.w04.3 cost -0.6699770175175169
 eat.f0.w04.3 sum.f0.w04 -1
 used.f0.w05 cost 0
 used.f0.w05 picked.f0.w05 1
 used.f0.w05 rises.f0.w05 1
 used.f0.w05 first.f0.w05 -1
 eaten.f0.w05 cost 0
 eaten.f0.w05 sum.f0.w05 1
 eaten.f0.w05 first.f0.w05 1
 eaten.f0.w05 keeps.f0.w03 -1
 eat.f0.w05.1 cost -1.052993144621836
 eat.f0.w05.1 sum.f0.w05 -1
 eat.f0.w05.2 cost -0.858168363161174
 eat.f0.w05.2 sum.f0.w05 -1
 eat.f0.w05.3 cost -0.6633435817005119
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
 eat.f1.w00.1 cost -1.3620662688995617
 eat.f1.w00.1 sum.f1.w00 -1
 eat.f1.w00.2 cost -0.9796299027321764
 eat.f1.w00.2 sum.f1.w00 -1
 eat.f1.w00.3 cost -0.597193536564791
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
 eat.f1.w01.1 cost -1.3485804642569919
 eat.f1.w01.1 sum.f1.w01 -1
 eat.f1.w01.2 cost -0.9699305967645311
 eat.f1.w01.2 sum.f1.w01 -1
 eat.f1.w01.3 cost -0.5912807292720703
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
 eat.f1.w02.1 cost -1.335228182432665
 eat.f1.w02.1 sum.f1.w02 -1
 eat.f1.w02.2 cost -0.9603273235292387
 eat.f1.w02.2 sum.f1.w02 -1
 eat.f1.w02.3 cost -0.5854264646258122
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
 eat.f1.w03.1 cost -1.3220081014184806
 eat.f1.w03.1 sum.f1.w03 -1
 eat.f1.w03.2 cost -0.9508191322071672
 eat.f1.w03.2 sum.f1.w03 -1
 eat.f1.w03.3 cost -0.5796301629958537
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
 eat.f1.w04.1 cost -1.308918912295525
 eat.f1.w04.1 sum.f1.w04 -1
 eat.f1.w04.2 cost -0.9414050813932346
 eat.f1.w04.2 sum.f1.w04 -1
 eat.f1.w04.3 cost -0.5738912504909441
 eat.f1.w04.3 sum.f1.w04 -1
 used.f1.w05 cost 0
 used.f1.w05 picked.f1.w05 1
 used.f1.w05 rises.f1.w05 1
 used.f1.w05 first.f1.w05 -1
 eaten.f1.w05 cost 0
 eaten.f1.w05 sum.f1.w05 1
 eaten.f1.w05 first.f1.w05 1
 eaten.f1.w05 keeps.f1.w03 -1
 eat.f1.w05.1 cost -1.2959593191044805
 eat.f1.w05.1 sum.f1.w05 -1
 eat.f1.w05.2 cost -0.9320842390032028
 eat.f1.w05.2 sum.f1.w05 -1
 eat.f1.w05.3 cost -0.568209158901925
 eat.f1.w05.3 sum.f1.w05 -1
 left.b0.f1.w04 cost 0
 left.b0.f1.w04 leaves.b0.f1.w04.start.s0.c1.0.2 1
 left.b0.f1.w05 cost 0
 left.b0.f1.w05 leaves.b0.f1.w05.start.s0.c0.2.3 1
 rest.w-1 cost 0.3
 rest.w-1 clear.w-1 -1
 rest.w00 cost 0.3
 rest.w00 clear.w00 -1
 rest.w01 cost 0.3
 rest.w01 clear.w01 -1
 rest.w02 cost 0.3
 rest.w02 clear.w02 -1
 cleared.s0.w02 cost 0
 cleared.s0.w02 clear.w02 1
 cleared.s0.w02 clears.s0.w02.start.s0.c2.3.1 1
 stands.s0.w02 cost 0
 stands.s0.w02 standson.s0.w02 -1
 stands.s0.w02 clears.s0.w02.start.s0.c2.3.1 1
 rest.w03 cost 0.3
 rest.w03 clear.w03 -1
 rest.w04 cost 0.3
 rest.w04 clear.w04 -1
 cleared.s0.w04 cost 0
 cleared.s0.w04 clear.w04 1
 cleared.s0.w04 clears.s0.w04.start.s0.c1.0.2 1
 cleared.s0.w04 clears.s0.w04.start.s0.c0.1.0 1
 stands.s0.w04 cost 0
 stands.s0.w04 standson.s0.w04 -1
 stands.s0.w04 clears.s0.w04.start.s0.c1.0.2 1
 stands.s0.w04 clears.s0.w04.start.s0.c0.1.0 1
RHS
 RHS minutes.w00 32
 RHS minutes.w01 15
 RHS minutes.w03 1
 RHS minutes.w04 18
 RHS minutes.w05 34
 RHS total.g 2
 RHS must.0.c2 2
 RHS ground.s0.w02 1.0602381914990457
 RHS roots.s0.w02 197.73888108262528
 RHS ground.s0.w03 1.0602381914990457
 RHS roots.s0.w03 197.73888108262528
 RHS ground.s0.w04 1.0602381914990457
 RHS roots.s0.w04 197.73888108262528
 RHS ground.s0.w00 1.0602381914990457
 RHS roots.s0.w00 197.73888108262528
 RHS support.s0.w00 0.6201712270424778
 RHS ground.s0.w01 1.0602381914990457
 RHS roots.s0.w01 197.73888108262528
 RHS support.s0.w01 0.6201712270424778
 RHS support.s0.w02 0.6201712270424778
 RHS support.s0.w03 0.6201712270424778
 RHS support.s0.w04 0.6201712270424778
 RHS ground.s0.w05 1.0602381914990457
 RHS roots.s0.w05 197.73888108262528
 RHS clear.w-1 1
 RHS clear.w00 1
 RHS clear.w01 1
 RHS clear.w02 1
 RHS clear.w03 1
 RHS clear.w04 1
BOUNDS
 UP BND start.s0.c1.0.2 1
 UP BND plants.s0.c1.0.2 1
 UP BND start.s0.c0.1.0 1
 UP BND plants.s0.c0.1.0 2
 UP BND many.s0.c0.1.0 1
 UP BND start.s0.c0.2.3 1
 UP BND plants.s0.c0.2.3 3
 UP BND many.s0.c0.2.3 1
 UP BND start.s0.c2.3.1 1
 UP BND plants.s0.c2.3.1 2
 UP BND eat.f0.w00.1 0.38853057308379846
 UP BND eat.f0.w00.2 0.38853057308379846
 UP BND eat.f0.w00.3 0.7770611461675969
 UP BND eat.f0.w01.1 0.013638011710501552
 UP BND eat.f0.w01.2 0.013638011710501552
 UP BND eat.f0.w01.3 0.027276023421003104
 UP BND eat.f0.w02.1 0.6497084386859847
 UP BND eat.f0.w02.2 0.6497084386859847
 UP BND eat.f0.w02.3 1.2994168773719694
 UP BND eat.f0.w03.1 1.4743586815404968
 UP BND eat.f0.w03.2 1.4743586815404968
 UP BND eat.f0.w03.3 2.9487173630809935
 UP BND eat.f0.w04.1 0.3605473534231128
 UP BND eat.f0.w04.2 0.3605473534231128
 UP BND eat.f0.w04.3 0.7210947068462256
 UP BND eat.f0.w05.1 1.07849736481969
 UP BND eat.f0.w05.2 1.07849736481969
 UP BND eat.f0.w05.3 2.15699472963938
 UP BND eat.f1.w00.1 0.03474528348565925
 UP BND eat.f1.w00.2 0.03474528348565925
 UP BND eat.f1.w00.3 0.0694905669713185
 UP BND eat.f1.w01.1 0.9367268289535918
 UP BND eat.f1.w01.2 0.9367268289535918
 UP BND eat.f1.w01.3 1.8734536579071837
 UP BND eat.f1.w02.1 1.3221729837940135
 UP BND eat.f1.w02.2 1.3221729837940135
 UP BND eat.f1.w02.3 2.644345967588027
 UP BND eat.f1.w03.1 0.7860189852991891
 UP BND eat.f1.w03.2 0.7860189852991891
 UP BND eat.f1.w03.3 1.5720379705983782
 UP BND eat.f1.w04.1 1.2386476195784555
 UP BND eat.f1.w04.2 1.2386476195784555
 UP BND eat.f1.w04.3 2.477295239156911
 UP BND eat.f1.w05.1 0.11013600806255253
 UP BND eat.f1.w05.2 0.11013600806255253
 UP BND eat.f1.w05.3 0.22027201612510505
 UP BND left.b0.f1.w04 1
 UP BND left.b0.f1.w05 1
 UP BND cleared.s0.w02 1
 UP BND cleared.s0.w04 1
ENDATA
