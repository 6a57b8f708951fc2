package reckon

import (
	"fmt"
	"math"
	"time"

	"bedweek/internal/crop"
	"bedweek/internal/ledger"
)

// WishWords says a wish in a short sentence.
func WishWords(w ledger.Wish, in *Inputs) string {
	name := w.Crop
	if c, ok := in.Book.Crop(crop.ID(w.Crop)); ok {
		name = c.Name
	}
	where := " anywhere"
	if w.Space != "" {
		where = " in " + spaceNameOf(in, w.Space)
	}
	switch w.What {
	case ledger.WishLock:
		return sentence(fmt.Sprintf("keep %s%s as planned: %s, %s", name, where, plants(w.Plants), week(w.Since)))
	case ledger.WishRefuse:
		return sentence(fmt.Sprintf("no %s%s from %s to %s", name, where, w.Since.Long(), w.Until.Long()))
	case ledger.WishMust:
		return sentence(fmt.Sprintf("at least %s of %s%s, whatever happens", plants(w.Plants), name, where))
	case ledger.WishNever:
		return sentence(fmt.Sprintf("never %s%s", name, where))
	case ledger.WishWant:
		word, n := "more", w.Meals
		if n < 0 {
			word, n = "less", -n
		}
		when := "all year"
		if w.First != 0 {
			when = "in " + time.Month(w.First).String()
			if w.Last != w.First {
				when = "from " + time.Month(w.First).String() + " to " + time.Month(w.Last).String()
			}
		}
		return sentence(fmt.Sprintf("%s %s, %s a week, %s", word, w.Food, mealsCount(n), when))
	case ledger.WishAway:
		return sentence(fmt.Sprintf("nobody is here from %s to %s", w.Since.Long(), w.Until.Long()))
	case ledger.WishMinutes:
		word, n := "more", w.Minutes
		if n < 0 {
			word, n = "fewer", -n
		}
		return sentence(fmt.Sprintf("%.0f minutes a week %s", n, word))
	case ledger.WishWater:
		if w.Litres == 0 {
			return "No water to carry: with 0 L a day in a dry week, all spaces together."
		}
		return sentence(fmt.Sprintf("with %g L of water a day in a dry week, all spaces together", w.Litres))
	case ledger.WishBad:
		return sentence("plan for bad years: " + w.Level)
	case ledger.WishReturn:
		for _, k := range in.State.Kept {
			if k.Event == w.Plan {
				return sentence("go back to the plan \"" + k.Name + "\"")
			}
		}
		return "Go back to a kept plan that was taken back."
	}
	return sentence(w.What)
}

// mealsCount is a number of meals with a half at most.
func mealsCount(x float64) string {
	x = math.Round(x*2) / 2
	if x == 1 {
		return "1 meal"
	}
	return fmt.Sprintf("%g meals", x)
}
