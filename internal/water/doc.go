// Package water says what a growing space drinks, when it runs dry and how
// much to give.
//
// Sources. [FAO56] R. G. Allen, L. S. Pereira, D. Raes and M. Smith, Crop
// evapotranspiration, FAO Irrigation and Drainage Paper 56 (1998): crop
// coefficients, water a soil holds, stress, drying of the surface. [FAO29]
// R. S. Ayers and D. W. Westcot, Water quality for agriculture, FAO Irrigation
// and Drainage Paper 29 rev. 1 (1985): salts. [IFAS] J. Million and T. Yeager,
// University of Florida IFAS EP529 / ENH1268: leaching fraction. The figures of
// media and crops stand in media.txt and crops.txt with their own sources.
//
// Conventions. Litres, metres, millimetres (1 mm on 1 m2 is 1 litre), days and
// hours. A store runs from 0, where plants wilt for good, to full, what stays
// after free draining. Depletion counts the other way, mm below full. Leaf
// spread is the ground area under the leaves; it may pass the rim, and demand
// follows it, never the rim.
//
// Engines are pure: weather, dates and seed are arguments.
//
// Range: any climate weather can describe; spaces from 1 to 100,000 litres.
// docs/water.md says how well it does and what is left out: frozen medium, ground
// water under beds, water held on leaves, wind round corners, and the wet
// circle's true shape.
package water
