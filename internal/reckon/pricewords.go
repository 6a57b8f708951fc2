package reckon

import (
	"fmt"
	"math"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/ledger"
)

// monthOf is the month of a plan week's middle.
func monthOf(start cal.Day, week int) time.Month { return (start + cal.Day(7*week+3)).Month() }

// roundUp is the next whole number.
func roundUp(x float64) float64 { return math.Ceil(x) }

// priceWords says a price with its doubt.
func priceWords(h Heard, p WishPrice, more float64) string {
	s := ""
	switch {
	case h.State == "not met":
		s = "It is not met, so it has no price."
		if p.Frees {
			s += " Without it all the others can be met."
		}
		return s
	case p.Meals < p.Noise:
		s = fmt.Sprintf("No difference seen: less than %s.", mealsCount(math.Ceil(p.Noise)))
	default:
		s = fmt.Sprintf("It costs %s over the whole plan, give or take %s.", meals(p.Meals), mealsCount(math.Ceil(p.Noise)))
	}
	if h.Wish.What == ledger.WishBad {
		s = badWords(-p.Meals, p.BadYears, p.Noise)
	}
	if h.Wish.What == ledger.WishWant {
		switch {
		case h.Wish.Meals > 0 && more >= 0.5:
			s += fmt.Sprintf(" For it you pick %s of %s more in that time.", meals(more), h.Wish.Food)
		case h.Wish.Meals > 0:
			s += fmt.Sprintf(" The plan finds no more %s for that time.", h.Wish.Food)
		case more <= -0.5:
			s += fmt.Sprintf(" You pick %s of %s fewer in that time.", meals(-more), h.Wish.Food)
		}
	}
	if p.Frees {
		s += " Giving it up would make room for the wishes that are not met."
	}
	return s
}
