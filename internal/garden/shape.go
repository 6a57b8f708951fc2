package garden

import (
	"strings"
	"time"
)

// key is one key of a mapping in the file.
type key struct {
	name   string
	needed bool
	words  []string // the only values it takes; nil = free
}

// shape is one kind of mapping in the file. The published schema holds a
// definition of the same name; a test keeps the two alike.
type shape struct {
	name string // of the schema's definition
	what string // in faults: "a space"
	keys []key
}

func (s shape) key(name string) (key, bool) {
	for _, k := range s.keys {
		if k.name == name {
			return k, true
		}
	}
	return key{}, false
}

func (s shape) names() []string {
	var names []string
	for _, k := range s.keys {
		names = append(names, k.name)
	}
	return names
}

// shapes lists every mapping of the file.
func shapes() []shape {
	return []shape{fileShape(), placeShape(), personShape(), mediumShape(), grewShape(), spaceShape(),
		supportShape(), coverShape(), standingShape(), otherShape(), obstacleShape(), wantShape(), mustShape(),
		neverShape(), seedShape(), shelfShape(), monthsShape()}
}

func fileShape() shape {
	return shape{"file", "a garden file", []key{
		{name: "garden", needed: true}, {name: "place", needed: true}, {name: "from"},
		{name: "minutes a week"}, {name: "water a day"}, {name: "plan for bad years", words: BadYearSteps()}, {name: "people"}, {name: "media"}, {name: "obstacles"},
		{name: "spaces", needed: true}, {name: "wants"}, {name: "musts"}, {name: "nevers"},
		{name: "seeds"}, {name: "shelf"}, {name: "guessed"},
	}}
}

func placeShape() shape {
	return shape{"place", "the place", []key{
		{name: "latitude", needed: true}, {name: "longitude", needed: true}, {name: "elevation"},
		{name: "zone"}, {name: "sheltered", words: yesNo()}, {name: "weather"}, {name: "months"},
		{name: "months from"},
	}}
}

func personShape() shape {
	return shape{"person", "a person", []key{
		{name: "name", needed: true}, {name: "seated", words: yesNo()}, {name: "reach"}, {name: "lift"},
		{name: "minutes a week"},
	}}
}

func mediumShape() shape {
	return shape{"medium", "a batch of medium", []key{
		{name: "kind", needed: true, words: []string{"potting mix", "garden soil", "compost blend", "coir mix"}},
		{name: "since"}, {name: "history"},
	}}
}

func grewShape() shape {
	return shape{"grew", "a line of history", []key{{name: "crop"}, {name: "family"}, {name: "until", needed: true}}}
}

func spaceShape() shape {
	return shape{"space", "a space", []key{
		{name: "name"},
		{name: "kind", needed: true, words: []string{string(RaisedBed), string(ElevatedBed), string(Bag),
			string(PocketBag), string(Reservoir), string(Tier), string(Railing), string(Hanging), string(Ground),
			string(Bench), string(LampShelf), string(Heap)}},
		{name: "east"}, {name: "north"}, {name: "turn"}, {name: "length"}, {name: "width"}, {name: "across"},
		{name: "shape"}, {name: "floor"}, {name: "rim"}, {name: "depth"}, {name: "volume"}, {name: "pockets"}, {name: "medium"},
		{name: "water", words: []string{"drip", "can", "reservoir", "rain"}}, {name: "emitter flow"}, {name: "emitter spacing"},
		{name: "line spacing"}, {name: "reservoir"}, {name: "tier share"}, {name: "mulch"}, {name: "stands on"}, {name: "bears"}, {name: "dark", words: yesNo()},
		{name: "tall", words: yesNo()}, {name: "supports"}, {name: "covers"}, {name: "reached by"}, {name: "standing"},
		{name: OtherKey}, {name: "guessed"}, {name: "ended"},
	}}
}

func supportShape() shape {
	return shape{"support", "a support", []key{
		{name: "kind", needed: true, words: []string{"trellis", "arch", "cage", "stakes", "strings"}},
		{name: "length", needed: true}, {name: "height", needed: true},
		{name: "side", words: []string{"pole", "equator", "east", "west", "middle"}},
	}}
}

func coverShape() shape {
	return shape{"cover", "a cover", []key{
		{name: "kind", needed: true, words: []string{"insect net", "bird net", "fleece", "shade cloth", "cloche"}},
		{name: "light"}, {name: "on"},
	}}
}

func standingShape() shape {
	return shape{"standing", "a planting", []key{
		{name: "id"}, {name: "crop", needed: true}, {name: "variety"}, {name: "one of"}, {name: "since"},
		{name: "set out"}, {name: "count", needed: true},
		{name: "looks", words: []string{"well", "poor", "bolting", "finished", "young"}},
		{name: "keep", words: yesNo()},
	}}
}

func obstacleShape() shape {
	return shape{"obstacle", "an obstacle", []key{
		{name: "name"}, {name: "kind", needed: true, words: []string{"box", "wall", "post", "tree", "roof"}},
		{name: "east", needed: true}, {name: "north", needed: true}, {name: "turn"}, {name: "length"}, {name: "width"},
		{name: "across"}, {name: "height", needed: true}, {name: "base"}, {name: "light in leaf"}, {name: "light bare"},
		{name: "in leaf"},
	}}
}

func wantShape() shape {
	return shape{"want", "a want", []key{{name: "meals", needed: true}, {name: "liking"}, {name: "months"}, {name: "crops"}}}
}

func mustShape() shape {
	return shape{"must", "a must", []key{{name: "crop", needed: true}, {name: "plants", needed: true}, {name: "space"}}}
}

func neverShape() shape {
	return shape{"never", "a never", []key{{name: "crop", needed: true}, {name: "space"}}}
}

func seedShape() shape {
	return shape{"seed", "a seed lot", []key{
		{name: "id"}, {name: "crop", needed: true}, {name: "variety"}, {name: "year"}, {name: "count"},
	}}
}

func shelfShape() shape {
	return shape{"shelf", "the lamp shelf", []key{{name: "places", needed: true}, {name: "light"}, {name: "warmth"}}}
}

func yesNo() []string { return []string{"yes", "no"} }

func monthsShape() shape {
	sh := shape{name: "months", what: "the months"}
	for m := time.January; m <= time.December; m++ {
		sh.keys = append(sh.keys, key{name: strings.ToLower(m.String()), needed: true})
	}
	return sh
}
