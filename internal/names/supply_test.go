package names

import (
	"strings"
	"testing"

	"bedweek/internal/cal"
	"bedweek/internal/chance"
	"bedweek/internal/ledger"
)

// TestSupply: the tin's tested seed is taken first and only as far as it goes;
// seed in doubt is told of and not relied on; the rest is bought.
func TestSupply(t *testing.T) {
	today := cal.Of(2015, 4, 15)
	d := desk(t, event(t, ledger.SeedTested, today-20, ledger.Germination{Lot: "kale-a", Sown: 20, Up: 14}))
	lot := lotOf(t, d, "kale-a")
	one := lot.Need(6).Most
	starts := []Wanted{{On: today + 30, Plants: 6}, {On: today + 10, Plants: 6}}
	s := d.Supply("kale", starts)
	var took Take
	for _, x := range s.Takes {
		if x.ID == "kale-a" {
			took = x
		}
	}
	if s.By != 0 || s.Most != 0 || took.Seeds != 2*one || took.Plants != 12 {
		t.Fatalf("with %d seeds left: buy by %v %d, takes %d for %d; want none and %d for 12", lot.Left, s.By, s.Most, took.Seeds, took.Plants, 2*one)
	}
	if !strings.Contains(took.Words(), "14 of 20") || !strings.Contains(took.Words(), "9 times in 10") {
		t.Error(took.Words())
	}
	const many = 60 // 100 to come up: more than either packet holds
	s = d.Supply("kale", []Wanted{{On: today + 5, Plants: 3}, {On: today + 40, Plants: many, Outdoors: true}})
	if s.By != today+40 || s.Short != many {
		t.Errorf("a start beyond the tin: bought by %v for %d", s.By, s.Short)
	}
	up := Wanted{Plants: many, Outdoors: true}.up()
	fresh := d.bought("kale").Rate
	if chance.AtLeast(s.Least, up, fresh.High) < 0.9 || chance.AtLeast(s.Most, up, fresh.Low) < 0.9 || s.Least >= s.Most || up <= many {
		t.Errorf("buy %d to %d for %d to come up at %v to %v", s.Least, s.Most, up, fresh.High, fresh.Low)
	}
	s = d.Supply("parsnip", []Wanted{{On: today + 5, Plants: 3}})
	if len(s.Takes) == 0 || s.Takes[0].Doubts == "" || s.Takes[0].Seeds != 0 || s.By == 0 {
		t.Errorf("old parsnip seed is relied on: %+v", s)
	}
}
