// Package stand grows one crop in one space, day by day, through every
// future, and says when it can be picked, how much, and why it fails.
//
// Method: daily rates of development, growth, cold and fruit set are worked
// out once for a crop, a space and a future (Table) and shared by all start
// days; the kernel then only adds them up. Development is thermal time with
// cardinal temperatures averaged over the day. Size follows the expolinear
// curve of [GOUDRIAAN90] in "good days": days weighted by warmth and light.
// docs/growth.md tells each process, its source and its accuracy.
//
// Conventions: days are cal.Day; temperatures are air temperatures in °C at
// screen height; light is the day's photosynthetic light in mol/m²; yields
// are kg per plant at its wide spacing. South of the equator nothing changes
// but day length, which follows the latitude's sign.
//
// Accuracy: first picks within about two weeks in seasons the book's days
// were printed for. Left out: pests, disease, weeds, feeding, neighbours'
// shade (the caller lowers Env.Light), starts kept too long in their pots.
package stand
