package season

import (
	"math"
	"math/rand/v2"
)

// taste is how a refill ranks what it could plant.
type taste struct {
	by    int     // what is ranked by
	noise float64 // share by which a rank may be off, 0 = none
	short bool    // now and then plant fewer than pay best, to leave room
}

// What a refill ranks by.
const (
	byWorth  = iota
	byRoot   // worth over the root of the ground it takes
	byGround // worth over the ground
	byRent   // worth over the rent of the room it takes
)

// freeRent is what is added to a rent before dividing by it, in meals: ground
// that costs nothing is not worth everything.
const freeRent = 0.3

// choice is an option waiting to be planted.
type choice struct {
	score float64
	luck  float64
	opt   int32
	n     int32
	at    int // how many were planted when it was weighed
}

// refill plants what pays best in the given spaces, one batch after another,
// weighing again what an earlier batch may have changed, until nothing pays.
func (s *state) refill(spaces []int32, t taste, rng *rand.Rand) {
	m := s.m
	s.heap = s.heap[:0]
	planted, atFirst := 0, 0
	futures := s.futures
	if futures {
		// Weigh the mean harvest first; the futures when its turn comes.
		s.futures, atFirst = false, -1
	}
	for _, sp := range spaces {
		for _, i := range m.bySpace[sp] {
			if s.plants[i] > 0 || (s.banned != nil && s.banned[i]) || (s.dull != nil && s.dull[i]) {
				continue
			}
			luck := 1.0
			if t.noise > 0 {
				luck += float64(t.noise * (rng.Float64() - 0.5))
			}
			if n, worth, ok := s.batch(int(i)); ok && worth > dust {
				s.push(choice{score: s.score(int(i), n, worth, t) * luck, luck: luck, opt: i, n: int32(n), at: atFirst})
			}
		}
	}
	s.futures = futures
	for len(s.heap) > 0 {
		c := s.pop()
		if c.at != planted {
			// The number comes from the mean harvest, the worth from the futures.
			s.futures = false
			n, worth, ok := s.batch(int(c.opt))
			s.futures = futures
			if ok && futures {
				worth = s.weigh(int(c.opt), n)
			}
			if !ok || worth <= dust {
				continue
			}
			c.n, c.score, c.at = int32(n), s.score(int(c.opt), n, worth, t)*c.luck, planted
			if len(s.heap) > 0 && s.before(&s.heap[0], &c) {
				s.push(c)
				continue
			}
		}
		n, least := int(c.n), m.opts[c.opt].min
		if t.short && n > least && rng.IntN(3) == 0 {
			if fewer := least + rng.IntN(n-least); s.weigh(int(c.opt), fewer) > dust {
				n = fewer
			}
		}
		s.plant(int(c.opt), n)
		planted++
	}
}

// dust is the least worth, in meals, a change must have to be made.
const dust = 1e-7

// score ranks n plants of option i that are worth so much.
func (s *state) score(i, n int, worth float64, t taste) float64 {
	ground := s.m.opts[i].ground * float64(n)
	switch t.by {
	case byRoot:
		return worth / math.Sqrt(ground)
	case byGround:
		return worth / ground
	case byRent:
		return worth / (freeRent + s.m.guide.batch[i] + float64(s.m.guide.rent[i]*float64(n)))
	}
	return worth
}

// before says whether a comes before b: the higher score, then the lower ID.
func (s *state) before(a, b *choice) bool {
	if a.score != b.score {
		return a.score > b.score
	}
	return s.m.rank[a.opt] < s.m.rank[b.opt]
}

func (s *state) push(c choice) {
	h := append(s.heap, c)
	at := len(h) - 1
	for at > 0 {
		up := (at - 1) / 2
		if !s.before(&h[at], &h[up]) {
			break
		}
		h[at], h[up] = h[up], h[at]
		at = up
	}
	s.heap = h
}

func (s *state) pop() choice {
	h := s.heap
	top := h[0]
	last := len(h) - 1
	h[0] = h[last]
	h = h[:last]
	at := 0
	for {
		a := 2*at + 1
		if a >= last {
			break
		}
		if b := a + 1; b < last && s.before(&h[b], &h[a]) {
			a = b
		}
		if !s.before(&h[a], &h[at]) {
			break
		}
		h[at], h[a] = h[a], h[at]
		at = a
	}
	s.heap = h
	return top
}

// step is one change of the plan, to be undone if the round does not pay.
type step struct {
	opt, stay int32 // one of them, the other -1
	before    int   // plants or pull week before
}

// plant puts a batch in and notes it.
func (s *state) plant(i, n int) {
	s.add(i, n)
	s.steps = append(s.steps, step{opt: int32(i), stay: -1, before: 0})
}

// uproot takes a batch out and notes it.
func (s *state) uproot(i int) {
	n := s.remove(i)
	s.steps = append(s.steps, step{opt: int32(i), stay: -1, before: n})
}

// repull moves a pull week and notes it.
func (s *state) repull(i, to int) {
	if from := s.pull[i]; from != to {
		s.setPull(i, to)
		s.steps = append(s.steps, step{opt: -1, stay: int32(i), before: from})
	}
}

// undo takes all noted steps back; value is what the plan was worth before.
func (s *state) undo(value float64) {
	for k := len(s.steps) - 1; k >= 0; k-- {
		st := s.steps[k]
		switch {
		case st.opt < 0:
			s.setPull(int(st.stay), st.before)
		case st.before == 0:
			s.shift(int(st.opt), int(s.plants[st.opt]), -1)
		default:
			s.put(int(st.opt), st.before)
		}
	}
	s.steps = s.steps[:0]
	s.value = value
}

// tune gives each planting of the spaces its best number and each stay its
// best pull week, the rest as it is.
func (s *state) tune(spaces []int32) {
	for _, sp := range spaces {
		for _, i := range s.m.staysIn[sp] {
			s.tunePull(int(i))
		}
		for k := len(s.in[sp]) - 1; k >= 0; k-- {
			if k >= len(s.in[sp]) {
				continue
			}
			i := int(s.in[sp][k])
			if s.locked[i] {
				continue
			}
			n := int(s.plants[i])
			now := s.value
			s.uproot(i)
			best, worth, ok := s.batch(i)
			switch {
			case ok && worth > now-s.value+dust && best != n:
				s.plant(i, best)
			case now-s.value >= 0:
				s.plant(i, n)
				s.value = now
			}
		}
	}
}

// tunePull gives a stay its best pull week beside what is planted.
func (s *state) tunePull(i int) {
	st := &s.m.stays[i]
	if s.fixed != nil && s.fixed[i] {
		return
	}
	best, at := dust, s.pull[i]
	for w := st.first; w <= st.last; w++ {
		if w > s.pull[i] && !s.pullRoom(i, w) {
			break
		}
		if worth := s.weighPull(i, w); worth > best {
			best, at = worth, w
		}
	}
	s.repull(i, at)
}
