NAME season
ROWS
 N cost
 L most.s0.c0.1.5
 G least.s0.c0.1.5
 L few.s0.c0.1.5
 L all.s0.c0.1.5
 L most.s0.c2.2.0
 G least.s0.c2.2.0
 E pulled.stay0
 E pulled.stay1
 L ground.s0.w05
 L roots.s0.w05
 L support.s0.w05
 L ground.s0.w06
 L roots.s0.w06
 L support.s0.w06
 L ground.s0.w07
 L roots.s0.w07
 L support.s0.w07
 L ground.s0.w00
 L roots.s0.w00
 L support.s0.w00
 L ground.s0.w01
 L roots.s0.w01
 L support.s0.w01
 L ground.s0.w02
 L roots.s0.w02
 L support.s0.w02
 L ground.s0.w03
 L roots.s0.w03
 L support.s0.w03
 L ground.s0.w04
 L roots.s0.w04
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
 G leaves.b0.f1.w07.start.s0.c2.2.0
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 start.s0.c0.1.5 cost 0.2544299602851392
 start.s0.c0.1.5 most.s0.c0.1.5 -2
 start.s0.c0.1.5 least.s0.c0.1.5 -1
 plants.s0.c0.1.5 cost -0.19999999999999998
 plants.s0.c0.1.5 most.s0.c0.1.5 1
 plants.s0.c0.1.5 least.s0.c0.1.5 1
 plants.s0.c0.1.5 few.s0.c0.1.5 1
 plants.s0.c0.1.5 ground.s0.w05 0.10749606181912455
 plants.s0.c0.1.5 roots.s0.w05 5.763367532111889
 plants.s0.c0.1.5 support.s0.w05 0.2
 plants.s0.c0.1.5 ground.s0.w06 0.14536729351090158
 plants.s0.c0.1.5 roots.s0.w06 7.793821703546875
 plants.s0.c0.1.5 support.s0.w06 0.2
 plants.s0.c0.1.5 ground.s0.w07 0.19090677300397543
 plants.s0.c0.1.5 roots.s0.w07 10.235406568128052
 plants.s0.c0.1.5 support.s0.w07 0.2
 M MARKER 'MARKER' 'INTEND'
 lost.s0.c0.1.5 cost 0.02
 lost.s0.c0.1.5 few.s0.c0.1.5 -1
 lost.s0.c0.1.5 all.s0.c0.1.5 -1
 M MARKER 'MARKER' 'INTORG'
 many.s0.c0.1.5 cost 0
 many.s0.c0.1.5 few.s0.c0.1.5 -1
 many.s0.c0.1.5 all.s0.c0.1.5 1
 start.s0.c2.2.0 cost 0.16157791913109912
 start.s0.c2.2.0 most.s0.c2.2.0 -2
 start.s0.c2.2.0 least.s0.c2.2.0 -2
 start.s0.c2.2.0 leaves.b0.f1.w07.start.s0.c2.2.0 -1
 plants.s0.c2.2.0 cost 0.12000000000000001
 plants.s0.c2.2.0 most.s0.c2.2.0 1
 plants.s0.c2.2.0 least.s0.c2.2.0 1
 plants.s0.c2.2.0 ground.s0.w05 0.2712648214983093
 plants.s0.c2.2.0 roots.s0.w05 19.72658466969462
 plants.s0.c2.2.0 support.s0.w05 0.2
 plants.s0.c2.2.0 ground.s0.w06 0.2875815593902016
 plants.s0.c2.2.0 roots.s0.w06 20.913150291361983
 plants.s0.c2.2.0 support.s0.w06 0.2
 plants.s0.c2.2.0 ground.s0.w07 0.2875815593902016
 plants.s0.c2.2.0 roots.s0.w07 20.913150291361983
 plants.s0.c2.2.0 support.s0.w07 0.2
 plants.s0.c2.2.0 ground.s0.w00 0.21543488695794938
 plants.s0.c2.2.0 roots.s0.w00 15.666589257348894
 plants.s0.c2.2.0 support.s0.w00 0.2
 plants.s0.c2.2.0 ground.s0.w01 0.26716632461466333
 plants.s0.c2.2.0 roots.s0.w01 19.428538851047158
 plants.s0.c2.2.0 support.s0.w01 0.2
 plants.s0.c2.2.0 ground.s0.w02 0.18927393751150726
 plants.s0.c2.2.0 roots.s0.w02 13.764145064827389
 plants.s0.c2.2.0 support.s0.w02 0.2
 plants.s0.c2.2.0 ground.s0.w03 0.09146787907600315
 plants.s0.c2.2.0 roots.s0.w03 6.651613914343888
 plants.s0.c2.2.0 support.s0.w03 0.2
 plants.s0.c2.2.0 ground.s0.w04 0.11804706399440465
 plants.s0.c2.2.0 roots.s0.w04 8.584472509307648
 plants.s0.c2.2.0 support.s0.w04 0.2
 plants.s0.c2.2.0 picked.f0.w00 -1.7189675569534302
 plants.s0.c2.2.0 picked.f0.w01 -0.5248818546533585
 pull.stay0.before cost 0.10876858107407528
 pull.stay0.before pulled.stay0 1
 pull.stay0.w00 cost 0.10876858107407528
 pull.stay0.w00 pulled.stay0 1
 pull.stay0.w00 ground.s0.w00 0.22250129079278205
 pull.stay0.w00 roots.s0.w00 8.272325861101992
 pull.stay0.w00 support.s0.w00 0.1
 pull.stay0.w01 cost -0.22352862506373017
 pull.stay0.w01 pulled.stay0 1
 pull.stay0.w01 ground.s0.w00 0.22250129079278205
 pull.stay0.w01 roots.s0.w00 8.272325861101992
 pull.stay0.w01 support.s0.w00 0.1
 pull.stay0.w01 ground.s0.w01 0.013355576492151444
 pull.stay0.w01 roots.s0.w01 0.4965439994181564
 pull.stay0.w01 support.s0.w01 0.1
 pull.stay1.before cost 0.06418978507574112
 pull.stay1.before pulled.stay1 1
 pull.stay1.w00 cost 0.06418978507574112
 pull.stay1.w00 pulled.stay1 1
 pull.stay1.w00 picked.f0.w00 -0.887921541929245
 pull.stay1.w01 cost -0.4481936227775201
 pull.stay1.w01 pulled.stay1 1
 pull.stay1.w01 picked.f0.w00 -0.887921541929245
 pull.stay1.w01 picked.f0.w01 -0.7985685467720032
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
 eat.f0.w00.1 cost -1.2227962680695212
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -0.8994623261371644
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -0.5761283842048076
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
 eat.f0.w01.1 cost -1.2106893743262586
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -0.8905567585516478
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -0.5704241427770372
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
 eat.f0.w02.1 cost -1.1987023508180779
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -0.8817393649026216
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -0.5647763789871656
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
 eat.f0.w03.1 cost -1.1868340107109683
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -0.8730092721808136
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -0.559184533650659
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
 eat.f0.w04.1 cost -1.1750831789217506
 eat.f0.w04.1 sum.f0.w04 -1
 eat.f0.w04.2 cost -0.8643656160206074
 eat.f0.w04.2 sum.f0.w04 -1
 eat.f0.w04.3 cost -0.5536480531194643
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
 eaten.f0.w05 keeps.f0.w04 -1
 eat.f0.w05.1 cost -1.1634486920017335
 eat.f0.w05.1 sum.f0.w05 -1
 eat.f0.w05.2 cost -0.855807540614463
 eat.f0.w05.2 sum.f0.w05 -1
 eat.f0.w05.3 cost -0.5481663892271925
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
 eaten.f0.w06 keeps.f0.w05 -1
 eat.f0.w06.1 cost -1.151929398021518
 eat.f0.w06.1 sum.f0.w06 -1
 eat.f0.w06.2 cost -0.8473341986281809
 eat.f0.w06.2 sum.f0.w06 -1
 eat.f0.w06.3 cost -0.5427389992348439
 eat.f0.w06.3 sum.f0.w06 -1
 used.f0.w07 cost 0
 used.f0.w07 picked.f0.w07 1
 used.f0.w07 rises.f0.w07 1
 used.f0.w07 first.f0.w07 -1
 eaten.f0.w07 cost 0
 eaten.f0.w07 sum.f0.w07 1
 eaten.f0.w07 first.f0.w07 1
 eaten.f0.w07 keeps.f0.w06 -1
 eat.f0.w07.1 cost -1.1405241564569488
 eat.f0.w07.1 sum.f0.w07 -1
 eat.f0.w07.2 cost -0.8389447511170111
 eat.f0.w07.2 sum.f0.w07 -1
 eat.f0.w07.3 cost -0.5373653457770733
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
 eat.f1.w00.1 cost -1.4033954766977392
 eat.f1.w00.1 sum.f1.w00 -1
 eat.f1.w00.2 cost -0.9345363731655834
 eat.f1.w00.2 sum.f1.w00 -1
 eat.f1.w00.3 cost -0.4656772696334274
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
 eat.f1.w01.1 cost -1.3895004719779596
 eat.f1.w01.1 sum.f1.w01 -1
 eat.f1.w01.2 cost -0.9252835377877063
 eat.f1.w01.2 sum.f1.w01 -1
 eat.f1.w01.3 cost -0.4610666035974529
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
 eat.f1.w02.1 cost -1.3757430415623362
 eat.f1.w02.1 sum.f1.w02 -1
 eat.f1.w02.2 cost -0.9161223146412933
 eat.f1.w02.2 sum.f1.w02 -1
 eat.f1.w02.3 cost -0.45650158772025035
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
 eat.f1.w03.1 cost -1.362121823329046
 eat.f1.w03.1 sum.f1.w03 -1
 eat.f1.w03.2 cost -0.9070517966745479
 eat.f1.w03.2 sum.f1.w03 -1
 eat.f1.w03.3 cost -0.4519817700200499
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
 eat.f1.w04.1 cost -1.3486354686426196
 eat.f1.w04.1 sum.f1.w04 -1
 eat.f1.w04.2 cost -0.898071085816384
 eat.f1.w04.2 sum.f1.w04 -1
 eat.f1.w04.3 cost -0.4475067029901484
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
 eat.f1.w05.1 cost -1.3352826422204156
 eat.f1.w05.1 sum.f1.w05 -1
 eat.f1.w05.2 cost -0.8891792928875091
 eat.f1.w05.2 sum.f1.w05 -1
 eat.f1.w05.3 cost -0.44307594355460245
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
 eat.f1.w06.1 cost -1.3220620220004111
 eat.f1.w06.1 sum.f1.w06 -1
 eat.f1.w06.2 cost -0.880375537512385
 eat.f1.w06.2 sum.f1.w06 -1
 eat.f1.w06.3 cost -0.43868905302435873
 eat.f1.w06.3 sum.f1.w06 -1
 used.f1.w07 cost 0
 used.f1.w07 picked.f1.w07 1
 used.f1.w07 rises.f1.w07 1
 used.f1.w07 first.f1.w07 -1
 eaten.f1.w07 cost 0
 eaten.f1.w07 sum.f1.w07 1
 eaten.f1.w07 first.f1.w07 1
 eaten.f1.w07 keeps.f1.w06 -1
 eat.f1.w07.1 cost -1.3089722990103085
 eat.f1.w07.1 sum.f1.w07 -1
 eat.f1.w07.2 cost -0.8716589480320646
 eat.f1.w07.2 sum.f1.w07 -1
 eat.f1.w07.3 cost -0.43434559705382064
 eat.f1.w07.3 sum.f1.w07 -1
 left.b0.f1.w07 cost 0
 left.b0.f1.w07 leaves.b0.f1.w07.start.s0.c2.2.0 1
RHS
 RHS pulled.stay0 1
 RHS pulled.stay1 1
 RHS ground.s0.w05 0.7656213132173175
 RHS roots.s0.w05 190.89480011262015
 RHS support.s0.w05 0.9995267157432418
 RHS ground.s0.w06 0.7656213132173175
 RHS roots.s0.w06 190.89480011262015
 RHS support.s0.w06 0.9995267157432418
 RHS ground.s0.w07 0.7656213132173175
 RHS roots.s0.w07 190.89480011262015
 RHS support.s0.w07 0.9995267157432418
 RHS ground.s0.w00 0.7656213132173175
 RHS roots.s0.w00 190.89480011262015
 RHS support.s0.w00 0.9995267157432418
 RHS ground.s0.w01 0.7656213132173175
 RHS roots.s0.w01 190.89480011262015
 RHS support.s0.w01 0.9995267157432418
 RHS ground.s0.w02 0.7656213132173175
 RHS roots.s0.w02 190.89480011262015
 RHS support.s0.w02 0.9995267157432418
 RHS ground.s0.w03 0.7656213132173175
 RHS roots.s0.w03 190.89480011262015
 RHS support.s0.w03 0.9995267157432418
 RHS ground.s0.w04 0.7656213132173175
 RHS roots.s0.w04 190.89480011262015
 RHS support.s0.w04 0.9995267157432418
BOUNDS
 UP BND start.s0.c0.1.5 1
 UP BND plants.s0.c0.1.5 2
 UP BND many.s0.c0.1.5 1
 UP BND start.s0.c2.2.0 1
 UP BND plants.s0.c2.2.0 2
 UP BND pull.stay0.before 1
 UP BND pull.stay0.w00 1
 UP BND pull.stay0.w01 1
 UP BND pull.stay1.before 1
 UP BND pull.stay1.w00 1
 UP BND pull.stay1.w01 1
 UP BND eat.f0.w00.1 0.4177978993406488
 UP BND eat.f0.w00.2 0.4177978993406488
 UP BND eat.f0.w00.3 0.8355957986812976
 UP BND eat.f0.w01.1 0.4158133036367256
 UP BND eat.f0.w01.2 0.4158133036367256
 UP BND eat.f0.w01.3 0.8316266072734512
 UP BND eat.f0.w02.1 1.1434685770203559
 UP BND eat.f0.w02.2 1.1434685770203559
 UP BND eat.f0.w02.3 2.2869371540407117
 UP BND eat.f0.w03.1 1.1558834252161807
 UP BND eat.f0.w03.2 1.1558834252161807
 UP BND eat.f0.w03.3 2.3117668504323614
 UP BND eat.f0.w04.1 1.1961766584000446
 UP BND eat.f0.w04.2 1.1961766584000446
 UP BND eat.f0.w04.3 2.3923533168000892
 UP BND eat.f0.w05.1 1.1306110295506466
 UP BND eat.f0.w05.2 1.1306110295506466
 UP BND eat.f0.w05.3 2.2612220591012933
 UP BND eat.f0.w06.1 0.33137793526170717
 UP BND eat.f0.w06.2 0.33137793526170717
 UP BND eat.f0.w06.3 0.6627558705234143
 UP BND eat.f0.w07.1 0.8516261053581342
 UP BND eat.f0.w07.2 0.8516261053581342
 UP BND eat.f0.w07.3 1.7032522107162684
 UP BND eat.f1.w00.1 0.5130346363406054
 UP BND eat.f1.w00.2 0.5130346363406054
 UP BND eat.f1.w00.3 1.0260692726812108
 UP BND eat.f1.w01.1 0.5224763522359857
 UP BND eat.f1.w01.2 0.5224763522359857
 UP BND eat.f1.w01.3 1.0449527044719713
 UP BND eat.f1.w02.1 0.28667153947658225
 UP BND eat.f1.w02.2 0.28667153947658225
 UP BND eat.f1.w02.3 0.5733430789531645
 UP BND eat.f1.w03.1 0.8461732645113088
 UP BND eat.f1.w03.2 0.8461732645113088
 UP BND eat.f1.w03.3 1.6923465290226176
 UP BND eat.f1.w04.1 1.208124975251943
 UP BND eat.f1.w04.2 1.208124975251943
 UP BND eat.f1.w04.3 2.416249950503886
 UP BND eat.f1.w05.1 0.3460856036810664
 UP BND eat.f1.w05.2 0.3460856036810664
 UP BND eat.f1.w05.3 0.6921712073621328
 UP BND eat.f1.w06.1 0.07376193602847364
 UP BND eat.f1.w06.2 0.07376193602847364
 UP BND eat.f1.w06.3 0.14752387205694728
 UP BND eat.f1.w07.1 1.3977090030271655
 UP BND eat.f1.w07.2 1.3977090030271655
 UP BND eat.f1.w07.3 2.795418006054331
 UP BND left.b0.f1.w07 1
ENDATA
