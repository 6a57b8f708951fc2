package reckon

import (
	"fmt"

	"bedweek/internal/water"
)

// Ration is a limit on watering dealt out.
type Ration struct {
	AllowedL, NeededL float64
	Words             string
	Rows              []RationRow // who goes first
}

// RationRow is one space's share.
type RationRow struct {
	Space, Name   string
	WantL, GivenL float64
	Why           string
}

// ration deals out the litres allowed among the spaces that would be dry by
// the next visit; nil without a limit.
func ration(rows []DryRow, allowedL float64) *Ration {
	if allowedL <= 0 {
		return nil
	}
	byID := map[string]DryRow{}
	var needs []water.Need
	r := &Ration{AllowedL: allowedL}
	for _, row := range rows {
		if row.Empty || row.Answer.GiveL <= 0 {
			continue
		}
		byID[row.Space] = row
		needs = append(needs, water.Need{ID: row.Space, Litres: row.Answer.GiveL, Rank: row.rank, DryH: row.Answer.Dry.Likely})
		r.NeededL += row.Answer.GiveL
	}
	short := 0
	for _, s := range water.Ration(allowedL, needs) {
		row := byID[s.ID]
		r.Rows = append(r.Rows, RationRow{Space: s.ID, Name: row.Name, WantL: s.WantL, GivenL: s.GivenL, Why: rankWords(row.rank)})
		if s.GivenL < s.WantL-0.05 {
			short++
		}
	}
	switch {
	case len(needs) == 0:
		r.Words = "Nothing needs water before you are next here."
	case short == 0:
		r.Words = fmt.Sprintf("It is enough: %s are needed of the %s allowed.", litres(r.NeededL), litres(allowedL))
	default:
		r.Words = fmt.Sprintf("Not enough: %s are needed and %s are allowed. %s at the end of the list goes short.", litres(r.NeededL), litres(allowedL), spacesWord(short))
	}
	return r
}

func spacesWord(n int) string {
	if n == 1 {
		return "1 space"
	}
	return fmt.Sprintf("%d spaces", n)
}

func rankWords(rank int) string {
	switch rank {
	case water.RankBlooms:
		return "flowering or filling: short water costs most now"
	case water.RankYoung:
		return "young: roots are short"
	case water.RankGrown:
		return "grown: it can go short for a while"
	}
	return "finished: last in line"
}
