package reckon

import (
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
)

// The plain truths every plan for a maritime climate must show. Source: common
// practice, as growers there would say it; none is in the search. South of the
// equator the months are turned by six.

const (
	tender   = "tomato tomato-bush tomato-cherry pepper-sweet pepper-hot eggplant cucumber summer-squash winter-squash pumpkin melon snap-bean-bush snap-bean-pole runner-bean basil tomatillo sweet-corn"
	standers = "leek kale brussels-sprouts sprouting-broccoli collards"
	sprawl   = "pumpkin winter-squash summer-squash melon"
	direct   = "carrot parsnip radish turnip"
	beeSet   = "cucumber summer-squash winter-squash pumpkin melon runner-bean fava-bean strawberry"
)

func eachDemo(t *testing.T, f func(t *testing.T, c demoCase, r *Result, j PlanJSON)) {
	for _, c := range demoCases() {
		t.Run(c.name, func(t *testing.T) {
			r := demoPlan(t, c)
			f(t, c, r, r.JSON())
		})
	}
}

// ground is the day a planting takes its outdoor ground.
func ground(p PlantingJSON) cal.Day {
	if !p.SetOut.None() {
		return p.SetOut.Likely
	}
	return p.Start.Likely
}

func TestTruthTenderCropsWaitForWarmth(t *testing.T) {
	eachDemo(t, func(t *testing.T, c demoCase, r *Result, j PlanJSON) {
		seen := 0
		for _, p := range j.Plantings {
			if !oneOf(p.Crop, tender) {
				continue
			}
			seen++
			md := c.md(ground(p))
			if md < 415 || md > 731 {
				t.Errorf("%s goes out %s: want mid-April to July (northern months)", p.ID, ground(p))
			}
		}
		if seen == 0 {
			t.Error("the plan holds no tender crop at all")
		}
	})
}

func TestTruthWinterCropsAreSetByAugust(t *testing.T) {
	eachDemo(t, func(t *testing.T, c demoCase, r *Result, j PlanJSON) {
		for _, p := range j.Plantings {
			if !oneOf(p.Crop, standers) || p.FirstPick.None() {
				continue
			}
			pick := c.month(p.FirstPick.Likely)
			if (pick >= 11 || pick <= 2) && c.md(ground(p)) > 910 && p.FirstPick.Likely-ground(p) < 150 {
				t.Errorf("%s set %s is to be picked from %s: standing winter crops are set by August", p.ID, ground(p), p.FirstPick.Likely)
			}
		}
	})
}

func TestTruthGarlicIsPlantedInAutumn(t *testing.T) {
	eachDemo(t, func(t *testing.T, c demoCase, r *Result, j PlanJSON) {
		for _, p := range j.Plantings {
			if p.Crop != "garlic" {
				continue
			}
			if m := c.month(ground(p)); m < 9 || m > 12 {
				t.Errorf("garlic is planted in (northern) month %d (%s), want autumn", m, ground(p))
			}
			if m := c.month(p.FirstPick.Likely); !p.FirstPick.None() && (m < 5 || m > 8) {
				t.Errorf("garlic is lifted in (northern) month %d (%s), want summer", m, p.FirstPick.Likely)
			}
		}
		for _, s := range j.Stays {
			if s.Crop == "garlic" && (c.month(s.Pull) < 5 || c.month(s.Pull) > 8) {
				t.Errorf("standing garlic comes out %s, want summer", s.Pull)
			}
		}
	})
}

func TestTruthSproutingBroccoliBearsBeforeItGoes(t *testing.T) {
	eachDemo(t, func(t *testing.T, c demoCase, r *Result, j PlanJSON) {
		for _, s := range j.Stays {
			if s.Crop == "sprouting-broccoli" && c.md(s.Pull) < 401 {
				t.Errorf("sprouting broccoli is pulled %s, before it has borne", s.Pull)
			}
		}
		for _, p := range j.Plantings {
			if p.Crop == "sprouting-broccoli" && (p.FirstPick.None() || p.Ends.Likely < p.FirstPick.Likely) {
				t.Errorf("%s ends %s, before its first pick %s", p.ID, p.Ends.Likely, p.FirstPick.Likely)
			}
		}
	})
}

func TestTruthRootsAreNeverSetOut(t *testing.T) {
	eachDemo(t, func(t *testing.T, c demoCase, r *Result, j PlanJSON) {
		for _, p := range j.Plantings {
			if oneOf(p.Crop, direct) && p.Way == string(crop.SetOut) {
				t.Errorf("%s is raised and set out", p.ID)
			}
		}
	})
}

func TestTruthLettuceIsNotSownIntoHotGround(t *testing.T) {
	eachDemo(t, func(t *testing.T, c demoCase, r *Result, j PlanJSON) {
		for k, p := range j.Plantings {
			if !oneOf(p.Crop, "lettuce-leaf lettuce-head spinach") || p.Way != string(crop.Sow) {
				continue
			}
			if p.OfTwenty < 12 {
				t.Errorf("%s succeeds in %d of 20: heat at sowing should keep it away", p.ID, p.OfTwenty)
			}
			_ = k
		}
	})
}

func TestTruthCornStandsInBlocks(t *testing.T) {
	eachDemo(t, func(t *testing.T, c demoCase, r *Result, j PlanJSON) {
		for _, p := range j.Plantings {
			if p.Crop == "sweet-corn" && p.Plants < 9 {
				t.Errorf("%s: %d plants are no block", p.ID, p.Plants)
			}
		}
	})
}

func TestTruthSprawlersHaveRoom(t *testing.T) {
	eachDemo(t, func(t *testing.T, c demoCase, r *Result, j PlanJSON) {
		for _, p := range j.Plantings {
			if !oneOf(p.Crop, sprawl) {
				continue
			}
			for _, sp := range r.in.Garden.Spaces {
				if string(sp.ID) == p.Space && (sp.Kind == "railing planter" || sp.Kind == "hanging planter" || sp.Kind == "tier") {
					t.Errorf("%s sprawls in a %s", p.ID, sp.Kind)
				}
			}
			if oneOf(p.Crop, "summer-squash winter-squash pumpkin") && p.AreaM2/float64(p.Plants) < 0.6 {
				t.Errorf("%s: %.2f m2 a plant, want most of a square metre", p.ID, p.AreaM2/float64(p.Plants))
			}
		}
	})
}

func TestTruthFamiliesRestFromTheirMedium(t *testing.T) {
	eachDemo(t, func(t *testing.T, c demoCase, r *Result, j PlanJSON) {
		early, all := 0, 0
		for _, pl := range r.Plan.Plantings {
			o := r.Problem.Options[pl.Option]
			b := r.Problem.Spaces[o.Space].Batch
			if b < 0 || o.Interval < 52 {
				continue
			}
			all++
			last, ok := r.Problem.Batches[b].Last[o.Family]
			if !ok || o.Week-last >= o.Interval {
				continue
			}
			early++
			// Only lawful when no other space could have taken it.
			for i, sp := range r.Problem.Spaces {
				if sp.Batch == b || sp.Batch < 0 {
					continue
				}
				l2, had := r.Problem.Batches[sp.Batch].Last[o.Family]
				if (!had || o.Week-l2 >= o.Interval) && r.freeFor(i, pl.Option) {
					t.Errorf("%s returns to its medium after %d weeks (want %d) while %s is free", o.ID, o.Week-last, o.Interval, sp.ID)
				}
			}
		}
		t.Logf("%d of %d plantings with an interval of a year or more return early", early, all)
	})
}

// freeFor reports whether a space stands empty through the whole time of an
// option and has the same crop, way and week on offer.
func (r *Result) freeFor(space, option int) bool {
	o := r.Problem.Options[option]
	offer := false
	for _, x := range r.Problem.Options {
		if x.Space == space && x.Crop == o.Crop && x.Week == o.Week {
			offer = true
		}
	}
	if !offer {
		return false
	}
	for i, st := range r.Problem.Stays {
		if st.Space == space && r.Plan.Pull[i] >= o.Week {
			return false
		}
	}
	for _, pl := range r.Plan.Plantings {
		x := r.Problem.Options[pl.Option]
		if x.Space == space && x.Week <= o.End && x.End >= o.Week {
			return false
		}
	}
	return true
}

func TestTruthNoFirstPickFallsInTheDarkWeeks(t *testing.T) {
	eachDemo(t, func(t *testing.T, c demoCase, r *Result, j PlanJSON) {
		for _, p := range j.Plantings {
			if p.FirstPick.None() || oneOf(p.Crop, "calendula sweet-alyssum phacelia borage nasturtium sunflower") {
				continue
			}
			md := c.md(p.FirstPick.Likely)
			if (md >= 1201 || md <= 120) && p.FirstPick.Likely-ground(p) < 75 {
				t.Errorf("%s started %s has its first pick %s, in the dark weeks, without having grown before them", p.ID, ground(p), p.FirstPick.Likely)
			}
		}
	})
}

func TestTruthNothingBeeSetUnderAClosedNet(t *testing.T) {
	eachDemo(t, func(t *testing.T, c demoCase, r *Result, j PlanJSON) {
		for _, p := range j.Plantings {
			for _, sp := range r.in.Garden.Spaces {
				for _, cv := range sp.Covers {
					if string(sp.ID) == p.Space && cv.Always && cv.Kind == "insect net" && oneOf(p.Crop, beeSet) {
						t.Errorf("%s must be set by bees, under a closed net", p.ID)
					}
				}
			}
		}
	})
}

func TestTruthNotEverythingIsClearedInOneWeek(t *testing.T) {
	eachDemo(t, func(t *testing.T, c demoCase, r *Result, j PlanJSON) {
		type held struct{ space, from, to int }
		var all []held
		for i, st := range r.Problem.Stays {
			all = append(all, held{st.Space, 0, r.Plan.Pull[i]})
		}
		for _, pl := range r.Plan.Plantings {
			o := r.Problem.Options[pl.Option]
			all = append(all, held{o.Space, o.Week, o.End})
		}
		for w := range r.Problem.Weeks - 1 {
			bare := 0
			for sp := range r.Problem.Spaces {
				here, stays := 0, 0
				for _, h := range all {
					if h.space == sp && h.from <= w && w <= h.to {
						here++
						if h.to > w {
							stays++
						}
					}
				}
				if here > 0 && stays == 0 {
					bare++
				}
			}
			if 2*bare >= len(r.Problem.Spaces) {
				t.Errorf("week %d: %d of %d spaces are cleared at once", w, bare, len(r.Problem.Spaces))
			}
		}
	})
}

func TestTruthMoreThanFiveKindsOnTheTable(t *testing.T) {
	eachDemo(t, func(t *testing.T, c demoCase, r *Result, j PlanJSON) {
		kinds := map[string]bool{}
		for _, p := range j.Plantings {
			kinds[p.Crop] = true
		}
		if len(kinds) <= 5 {
			t.Errorf("only %d kinds are grown: %v", len(kinds), kinds)
		}
	})
}

func TestTruthMustsStand(t *testing.T) {
	eachDemo(t, func(t *testing.T, c demoCase, r *Result, j PlanJSON) {
		if r.Infeasible() {
			t.Fatalf("the musts cannot be met: %v", j.Conflict)
		}
		for _, m := range r.in.Garden.Musts {
			n := 0
			for _, p := range j.Plantings {
				if p.Crop == string(m.Crop) {
					n += p.Plants
				}
			}
			for _, s := range j.Stays {
				if s.Crop == string(m.Crop) {
					n += s.Plants
				}
			}
			if n < m.Plants {
				t.Errorf("must %d %s: %d in the plan", m.Plants, m.Crop, n)
			}
		}
		for _, nv := range r.in.Garden.Nevers {
			for _, p := range j.Plantings {
				if p.Crop == string(nv.Crop) && (nv.Space == "" || p.Space == string(nv.Space)) {
					t.Errorf("%s is in the plan against a never", p.ID)
				}
			}
		}
	})
}

func TestTruthTallStandsOnThePoleSide(t *testing.T) {
	eachDemo(t, func(t *testing.T, c demoCase, r *Result, j PlanJSON) {
		for w := range r.Problem.Weeks {
			tall := make([]float64, len(r.Problem.Spaces))
			for _, pl := range r.Plan.Plantings {
				o := r.Problem.Options[pl.Option]
				if o.TallFrom >= 0 && w >= o.TallFrom && w <= o.End && w >= o.Week {
					tall[o.Space] += float64(pl.Plants) * o.Footprint[min(w-o.Week, len(o.Footprint)-1)]
				}
			}
			for i, sp := range r.Problem.Spaces {
				if tall[i] > sp.TallM2+1e-6 {
					t.Fatalf("week %d: %.2f m2 of tall plants in %s, where %.2f do no harm", w, tall[i], sp.ID, sp.TallM2)
				}
			}
		}
	})
}

func TestTruthNothingIsSetOutAtMidwinter(t *testing.T) {
	eachDemo(t, func(t *testing.T, c demoCase, r *Result, j PlanJSON) {
		for k, p := range j.Plantings {
			kind := r.model.entries[r.model.entry[r.Plan.Plantings[k].Option]].Crop
			if kind.AutumnPlant || kind.Dormant || kind.FirstYears.Value > 0 {
				continue
			}
			if md := c.md(ground(p)); md >= 1201 || md <= 115 {
				t.Errorf("%s goes into the ground %s: in the dark weeks nothing is gained by it", p.ID, ground(p))
			}
		}
	})
}

func TestTruthOldLeavesAreOverByJune(t *testing.T) {
	const leaves = "arugula spinach corn-salad miners-lettuce mizuna cilantro"
	eachDemo(t, func(t *testing.T, c demoCase, r *Result, j PlanJSON) {
		for _, p := range j.Plantings {
			if !oneOf(p.Crop, leaves) || c.month(ground(p)) < 7 || p.Ends.Likely-ground(p) < 180 {
				continue
			}
			if md := c.md(p.Ends.Likely); md > 531 && md < 901 {
				t.Errorf("%s started %s stands until %s: leaves that stood the winter are in seed by then", p.ID, ground(p), p.Ends.Likely)
			}
		}
	})
}

func TestTruthHerbsOfYearsAreNotDugUpWithinOne(t *testing.T) {
	eachDemo(t, func(t *testing.T, c demoCase, r *Result, j PlanJSON) {
		for k, p := range j.Plantings {
			o := r.Problem.Options[r.Plan.Plantings[k].Option]
			kind := r.model.entries[r.model.entry[r.Plan.Plantings[k].Option]].Crop
			if kind.Perennial && kind.Harvest == crop.CutAgain && o.End < r.in.Weeks-1 && o.End-o.Week < 52 {
				t.Errorf("%s is planted %s and dug up %d weeks later", p.ID, ground(p), o.End-o.Week)
			}
		}
	})
}
