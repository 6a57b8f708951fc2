NAME season
ROWS
 N cost
 E pulled.stay0
 L water.w00
 L water.w01
 L water.w02
 L water.w03
 L water.w04
 L water.w05
 L water.w06
 L total.g
 L total.h
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
COLUMNS
 M MARKER 'MARKER' 'INTORG'
 pull.stay0.w02 cost 0.15021374160178042
 pull.stay0.w02 pulled.stay0 1
 pull.stay0.w02 water.w00 1.08733407729916
 pull.stay0.w02 water.w01 0.13951594830463532
 pull.stay0.w02 water.w02 0.2615997715563405
 pull.stay0.w02 picked.f1.w00 -0.36343926191329956
 pull.stay0.w02 picked.f1.w01 -0.8098334074020386
 pull.stay0.w02 picked.f1.w02 -1.1407203674316406
 pull.stay0.w03 cost 0.15021374160178042
 pull.stay0.w03 pulled.stay0 1
 pull.stay0.w03 water.w00 1.08733407729916
 pull.stay0.w03 water.w01 0.13951594830463532
 pull.stay0.w03 water.w02 0.2615997715563405
 pull.stay0.w03 water.w03 0.6495322052135102
 pull.stay0.w03 picked.f1.w00 -0.36343926191329956
 pull.stay0.w03 picked.f1.w01 -0.8098334074020386
 pull.stay0.w03 picked.f1.w02 -1.1407203674316406
 pull.stay0.w03 picked.f1.w03 -1.4870657920837402
 pull.stay0.w04 cost 0.15021374160178042
 pull.stay0.w04 pulled.stay0 1
 pull.stay0.w04 water.w00 1.08733407729916
 pull.stay0.w04 water.w01 0.13951594830463532
 pull.stay0.w04 water.w02 0.2615997715563405
 pull.stay0.w04 water.w03 0.6495322052135102
 pull.stay0.w04 water.w04 1.1032702387299378
 pull.stay0.w04 picked.f1.w00 -0.36343926191329956
 pull.stay0.w04 picked.f1.w01 -0.8098334074020386
 pull.stay0.w04 picked.f1.w02 -1.1407203674316406
 pull.stay0.w04 picked.f1.w03 -1.4870657920837402
 pull.stay0.w04 picked.f1.w04 -0.8729568719863892
 pull.stay0.w05 cost 0.15021374160178042
 pull.stay0.w05 pulled.stay0 1
 pull.stay0.w05 water.w00 1.08733407729916
 pull.stay0.w05 water.w01 0.13951594830463532
 pull.stay0.w05 water.w02 0.2615997715563405
 pull.stay0.w05 water.w03 0.6495322052135102
 pull.stay0.w05 water.w04 1.1032702387299378
 pull.stay0.w05 water.w05 0.0948579713766784
 pull.stay0.w05 picked.f1.w00 -0.36343926191329956
 pull.stay0.w05 picked.f1.w01 -0.8098334074020386
 pull.stay0.w05 picked.f1.w02 -1.1407203674316406
 pull.stay0.w05 picked.f1.w03 -1.4870657920837402
 pull.stay0.w05 picked.f1.w04 -0.8729568719863892
 pull.stay0.w06 cost 0.15021374160178042
 pull.stay0.w06 pulled.stay0 1
 pull.stay0.w06 water.w00 1.08733407729916
 pull.stay0.w06 water.w01 0.13951594830463532
 pull.stay0.w06 water.w02 0.2615997715563405
 pull.stay0.w06 water.w03 0.6495322052135102
 pull.stay0.w06 water.w04 1.1032702387299378
 pull.stay0.w06 water.w05 0.0948579713766784
 pull.stay0.w06 water.w06 1.6178181479011657
 pull.stay0.w06 picked.f1.w00 -0.36343926191329956
 pull.stay0.w06 picked.f1.w01 -0.8098334074020386
 pull.stay0.w06 picked.f1.w02 -1.1407203674316406
 pull.stay0.w06 picked.f1.w03 -1.4870657920837402
 pull.stay0.w06 picked.f1.w04 -0.8729568719863892
 pull.stay0.w07 cost -0.18388606745387176
 pull.stay0.w07 pulled.stay0 1
 pull.stay0.w07 water.w00 1.08733407729916
 pull.stay0.w07 water.w01 0.13951594830463532
 pull.stay0.w07 water.w02 0.2615997715563405
 pull.stay0.w07 water.w03 0.6495322052135102
 pull.stay0.w07 water.w04 1.1032702387299378
 pull.stay0.w07 water.w05 0.0948579713766784
 pull.stay0.w07 water.w06 1.6178181479011657
 pull.stay0.w07 picked.f1.w00 -0.36343926191329956
 pull.stay0.w07 picked.f1.w01 -0.8098334074020386
 pull.stay0.w07 picked.f1.w02 -1.1407203674316406
 pull.stay0.w07 picked.f1.w03 -1.4870657920837402
 pull.stay0.w07 picked.f1.w04 -0.8729568719863892
 M MARKER 'MARKER' 'INTEND'
 overwater.w00 cost 0.1427077586285485
 overwater.w00 water.w00 -1
 overwater.w01 cost 0.1427077586285485
 overwater.w01 water.w01 -1
 overwater.w02 cost 0.1427077586285485
 overwater.w02 water.w02 -1
 overwater.w03 cost 0.1427077586285485
 overwater.w03 water.w03 -1
 overwater.w04 cost 0.1427077586285485
 overwater.w04 water.w04 -1
 overwater.w05 cost 0.1427077586285485
 overwater.w05 water.w05 -1
 overwater.w06 cost 0.1427077586285485
 overwater.w06 water.w06 -1
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
 eat.f0.w00.1 cost -1.7251774473780312
 eat.f0.w00.1 sum.f0.w00 -1
 eat.f0.w00.2 cost -1.5952961086214792
 eat.f0.w00.2 sum.f0.w00 -1
 eat.f0.w00.3 cost -1.465414769864927
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
 eat.f0.w01.1 cost -1.7251774473780312
 eat.f0.w01.1 sum.f0.w01 -1
 eat.f0.w01.2 cost -1.5952961086214792
 eat.f0.w01.2 sum.f0.w01 -1
 eat.f0.w01.3 cost -1.465414769864927
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
 eat.f0.w02.1 cost -1.7251774473780312
 eat.f0.w02.1 sum.f0.w02 -1
 eat.f0.w02.2 cost -1.5952961086214792
 eat.f0.w02.2 sum.f0.w02 -1
 eat.f0.w02.3 cost -1.465414769864927
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
 eat.f0.w03.1 cost -1.7251774473780312
 eat.f0.w03.1 sum.f0.w03 -1
 eat.f0.w03.2 cost -1.5952961086214792
 eat.f0.w03.2 sum.f0.w03 -1
 eat.f0.w03.3 cost -1.465414769864927
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
 eat.f0.w04.1 cost -1.7251774473780312
 eat.f0.w04.1 sum.f0.w04 -1
 eat.f0.w04.2 cost -1.5952961086214792
 eat.f0.w04.2 sum.f0.w04 -1
 eat.f0.w04.3 cost -1.465414769864927
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
 eat.f0.w05.1 cost -1.7251774473780312
 eat.f0.w05.1 sum.f0.w05 -1
 eat.f0.w05.2 cost -1.5952961086214792
 eat.f0.w05.2 sum.f0.w05 -1
 eat.f0.w05.3 cost -1.465414769864927
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
 eat.f0.w06.1 cost -1.7251774473780312
 eat.f0.w06.1 sum.f0.w06 -1
 eat.f0.w06.2 cost -1.5952961086214792
 eat.f0.w06.2 sum.f0.w06 -1
 eat.f0.w06.3 cost -1.465414769864927
 eat.f0.w06.3 sum.f0.w06 -1
 used.f0.w07 cost 0
 used.f0.w07 picked.f0.w07 1
 used.f0.w07 rises.f0.w07 1
 used.f0.w07 first.f0.w07 -1
 eaten.f0.w07 cost 0
 eaten.f0.w07 sum.f0.w07 1
 eaten.f0.w07 first.f0.w07 1
 eaten.f0.w07 keeps.f0.w06 -1
 eat.f0.w07.1 cost -1.7251774473780312
 eat.f0.w07.1 sum.f0.w07 -1
 eat.f0.w07.2 cost -1.5952961086214792
 eat.f0.w07.2 sum.f0.w07 -1
 eat.f0.w07.3 cost -1.465414769864927
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
 eat.f1.w00.1 cost -1.144612979013056
 eat.f1.w00.1 sum.f1.w00 -1
 eat.f1.w00.2 cost -1.1291682776331289
 eat.f1.w00.2 sum.f1.w00 -1
 eat.f1.w00.3 cost -1.113723576253202
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
 eat.f1.w01.1 cost -1.144612979013056
 eat.f1.w01.1 sum.f1.w01 -1
 eat.f1.w01.2 cost -1.1291682776331289
 eat.f1.w01.2 sum.f1.w01 -1
 eat.f1.w01.3 cost -1.113723576253202
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
 eat.f1.w02.1 cost -1.144612979013056
 eat.f1.w02.1 sum.f1.w02 -1
 eat.f1.w02.2 cost -1.1291682776331289
 eat.f1.w02.2 sum.f1.w02 -1
 eat.f1.w02.3 cost -1.113723576253202
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
 eat.f1.w03.1 cost -1.144612979013056
 eat.f1.w03.1 sum.f1.w03 -1
 eat.f1.w03.2 cost -1.1291682776331289
 eat.f1.w03.2 sum.f1.w03 -1
 eat.f1.w03.3 cost -1.113723576253202
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
 eat.f1.w04.1 cost -1.144612979013056
 eat.f1.w04.1 sum.f1.w04 -1
 eat.f1.w04.2 cost -1.1291682776331289
 eat.f1.w04.2 sum.f1.w04 -1
 eat.f1.w04.3 cost -1.113723576253202
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
 eat.f1.w05.1 cost -1.144612979013056
 eat.f1.w05.1 sum.f1.w05 -1
 eat.f1.w05.2 cost -1.1291682776331289
 eat.f1.w05.2 sum.f1.w05 -1
 eat.f1.w05.3 cost -1.113723576253202
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
 eat.f1.w06.1 cost -1.144612979013056
 eat.f1.w06.1 sum.f1.w06 -1
 eat.f1.w06.2 cost -1.1291682776331289
 eat.f1.w06.2 sum.f1.w06 -1
 eat.f1.w06.3 cost -1.113723576253202
 eat.f1.w06.3 sum.f1.w06 -1
 used.f1.w07 cost 0
 used.f1.w07 picked.f1.w07 1
 used.f1.w07 rises.f1.w07 1
 used.f1.w07 first.f1.w07 -1
 eaten.f1.w07 cost 0
 eaten.f1.w07 sum.f1.w07 1
 eaten.f1.w07 first.f1.w07 1
 eaten.f1.w07 keeps.f1.w06 -1
 eat.f1.w07.1 cost -1.144612979013056
 eat.f1.w07.1 sum.f1.w07 -1
 eat.f1.w07.2 cost -1.1291682776331289
 eat.f1.w07.2 sum.f1.w07 -1
 eat.f1.w07.3 cost -1.113723576253202
 eat.f1.w07.3 sum.f1.w07 -1
RHS
 RHS pulled.stay0 1
 RHS water.w00 3.424990351839905
 RHS water.w01 0.42252808421531807
 RHS water.w02 1.8730314814984796
 RHS water.w03 5.000961104871677
 RHS water.w04 4.265325630850662
 RHS water.w05 3.487786174046428
 RHS water.w06 1.655340116599793
 RHS total.g 2
 RHS total.h 2
BOUNDS
 UP BND pull.stay0.w02 1
 UP BND pull.stay0.w03 1
 UP BND pull.stay0.w04 1
 UP BND pull.stay0.w05 1
 UP BND pull.stay0.w06 1
 UP BND pull.stay0.w07 1
 UP BND eat.f0.w00.1 1.1288465086511756
 UP BND eat.f0.w00.2 1.1288465086511756
 UP BND eat.f0.w00.3 2.2576930173023513
 UP BND eat.f0.w01.1 1.1801469548740446
 UP BND eat.f0.w01.2 1.1801469548740446
 UP BND eat.f0.w01.3 2.3602939097480893
 UP BND eat.f0.w02.1 0.5247494852490936
 UP BND eat.f0.w02.2 0.5247494852490936
 UP BND eat.f0.w02.3 1.0494989704981872
 UP BND eat.f0.w03.1 0.6019513398554337
 UP BND eat.f0.w03.2 0.6019513398554337
 UP BND eat.f0.w03.3 1.2039026797108674
 UP BND eat.f0.w04.1 0.6266013804202584
 UP BND eat.f0.w04.2 0.6266013804202584
 UP BND eat.f0.w04.3 1.2532027608405167
 UP BND eat.f0.w05.1 0.16472268002763263
 UP BND eat.f0.w05.2 0.16472268002763263
 UP BND eat.f0.w05.3 0.32944536005526526
 UP BND eat.f0.w06.1 1.1923537758975342
 UP BND eat.f0.w06.2 1.1923537758975342
 UP BND eat.f0.w06.3 2.3847075517950684
 UP BND eat.f0.w07.1 0.862224234975886
 UP BND eat.f0.w07.2 0.862224234975886
 UP BND eat.f0.w07.3 1.724448469951772
 UP BND eat.f1.w00.1 0.20408249506835896
 UP BND eat.f1.w00.2 0.20408249506835896
 UP BND eat.f1.w00.3 0.4081649901367179
 UP BND eat.f1.w01.1 0.3511275735135249
 UP BND eat.f1.w01.2 0.3511275735135249
 UP BND eat.f1.w01.3 0.7022551470270498
 UP BND eat.f1.w02.1 0.5171540110550348
 UP BND eat.f1.w02.2 0.5171540110550348
 UP BND eat.f1.w02.3 1.0343080221100696
 UP BND eat.f1.w03.1 0.2172303541432395
 UP BND eat.f1.w03.2 0.2172303541432395
 UP BND eat.f1.w03.3 0.434460708286479
 UP BND eat.f1.w04.1 0.8285494853227191
 UP BND eat.f1.w04.2 0.8285494853227191
 UP BND eat.f1.w04.3 1.6570989706454382
 UP BND eat.f1.w05.1 0.10691056469871574
 UP BND eat.f1.w05.2 0.10691056469871574
 UP BND eat.f1.w05.3 0.21382112939743148
 UP BND eat.f1.w06.1 1.158387417124745
 UP BND eat.f1.w06.2 1.158387417124745
 UP BND eat.f1.w06.3 2.31677483424949
 UP BND eat.f1.w07.1 1.3941190901708083
 UP BND eat.f1.w07.2 1.3941190901708083
 UP BND eat.f1.w07.3 2.7882381803416165
ENDATA
