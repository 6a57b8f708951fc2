package web

import (
	"fmt"

	"bedweek/internal/cal"
	"bedweek/internal/crop"
	"bedweek/internal/ledger"
	"bedweek/internal/reckon"
)

// fixturePapers makes invented sheets for a day's spaces and foods.
func fixturePapers(d *reckon.Day) *reckon.Papers {
	p := &reckon.Papers{
		Order:   &reckon.Order{},
		Kitchen: &reckon.Kitchen{WeekOf: d.WeekOf[:4], Words: "Likely enough this week: salad, roots, herbs and berries; too little of 2 others.", UseUp: []string{"Kale: more than you want in the week of 5 October (14 of 20)."}},
		Lesson:  &reckon.Lesson{From: today, Weeks: 60, Plants: 2},
	}
	for i, c := range fixtureCrops[:3] {
		row := reckon.OrderRow{Crop: c.Name, CropID: c.ID, Sort: "seeds", Plants: 12 + i, By: today + cal.Day(4+i),
			Starts: []reckon.OrderStart{{On: today + cal.Day(4+i), Verb: "sow", Plants: 12 + i, Space: fixtureSpaces[i].name}}}
		p.Order.Rows = append(p.Order.Rows, row)
	}
	for i, f := range d.Table[:9] {
		row := reckon.KitchenRow{Food: f.Name, From: []string{"kale, Gate bed"}, Keeps: "5 to 10 days cold"}
		for w := range 4 {
			fw := f.Weeks[w]
			row.Weeks = append(row.Weeks, reckon.KitchenWeek{Wanted: fw.Wanted, Low: fw.Low, Likely: fw.Expected, High: fw.High, Enough: enough(fw), Much: muchIn(fw)})
		}
		if i == 3 {
			row.Keeps, row.From = "", nil
		}
		p.Kitchen.Rows = append(p.Kitchen.Rows, row)
	}
	for i, sp := range d.Spaces {
		if sp.Kind == "lamp shelf" {
			continue
		}
		t := reckon.Turnover{Space: sp.ID, Name: sp.Name, Size: sp.Size, Words: "Kale comes out by about 20 October; snap peas goes in about 24 October.", Tools: []string{"a bucket", "a hand fork"}, Minutes: 35, Who: []string{"Ann"}}
		if len(sp.Lines) > 1 {
			t.Out, t.In = sp.Lines[:1], sp.Lines[1:2]
		}
		for k := range 9 {
			s := reckon.Step{Do: fmt.Sprintf("Do the step no. %d of this space.", k+1), Why: "It has a reason."}
			if k == 4 {
				s.Care = "Dampen dusty mix, open a door, wash hands: it can carry Legionella."
			}
			t.Steps = append(t.Steps, s)
		}
		p.Turnovers = append(p.Turnovers, t)
		y := reckon.YearSheet{Space: sp.ID, Name: sp.Name, Size: sp.Size, From: today - 365, To: today, Words: "2 plantings, 1 of them picked.", Change: "Sow a week sooner."}
		for k := range min(i, 5) {
			row := reckon.YearRow{Planting: fmt.Sprint(sp.ID, k), Crop: fixtureCrops[(i+k)%12].Name, Variety: "Red Anchor", Plants: 6, In: today - 300 + cal.Day(30*k), Guess: k == 0,
				SaidWords: "Not kept.", CameWords: "No pick noted yet."}
			if k > 0 {
				row.First, row.Last, row.Picks, row.Kg, row.Weighed = row.In+60, row.In+90, 3, 1.2, 3
				for w := range cal.Day(k) {
					row.Dots = append(row.Dots, (row.First + 7*w).Monday())
				}
				row.Said = &ledger.ForecastNote{On: row.In, Forecast: ledger.Forecast{Planting: row.Planting, FirstEarly: row.In + 40, FirstLikely: row.In + 50, FirstLate: row.In + 58, OfTwenty: 17}}
				row.Ended, row.Off, row.Differ = row.In+100, 2, "First pick 2 days after the window."
			}
			y.Rows = append(y.Rows, row)
			y.Learned = []string{"Kale was 2 days later than forecast."}
		}
		p.Years = append(p.Years, y)
	}
	p.Lesson.Spaces = []reckon.LessonSpace{{Name: "Raised bed 1", About: "2.9 m², medium 30 cm deep.", Lines: []reckon.LessonLine{
		{Crop: "kale", Plants: 6, Standing: true, First: win(today+3, 3, 3), OfTwenty: 19, Reasons: []string{"It stands already."}},
		{Crop: "snap pea", Plants: 30, Way: "sown outdoors", In: win(today+130, 4, 5), First: win(today+200, 9, 9), OfTwenty: 16, Reasons: []string{"It grows in the cool."}}}},
		{Name: "Bag 1", About: "0.2 m², medium 40 cm deep."}}
	p.Lesson.Crops = []reckon.LessonCrop{{Name: "kale", Figures: []reckon.LessonFigure{{What: "Space between plants", Value: "45 cm (30 to 60)", Source: "EXT-VEG", Basis: "from memory"}}}}
	p.Lesson.Sources = []crop.Source{{Key: "EXT-VEG", Who: "university extension vegetable bulletins", Title: "Home vegetable gardening tables", Year: "various", Where: "recalled"}}
	return p
}

// hostilePapers puts bad words wherever a household's words can stand.
func hostilePapers(p *reckon.Papers, h func(*string)) {
	for i := range p.Order.Rows {
		h(&p.Order.Rows[i].Crop)
		h(&p.Order.Rows[i].Starts[0].Space)
	}
	for i := range p.Kitchen.Rows {
		h(&p.Kitchen.Rows[i].Food)
		for k := range p.Kitchen.Rows[i].From {
			h(&p.Kitchen.Rows[i].From[k])
		}
	}
	h(&p.Kitchen.UseUp[0])
	for i := range p.Turnovers {
		t := &p.Turnovers[i]
		h(&t.Name)
		h(&t.Words)
		h(&t.Size)
		h(&t.Who[0])
		h(&t.Steps[0].Do)
		h(&t.Tools[0])
	}
	for i := range p.Years {
		y := &p.Years[i]
		h(&y.Name)
		h(&y.Words)
		h(&y.Change)
		for k := range y.Rows {
			h(&y.Rows[k].Crop)
			h(&y.Rows[k].Variety)
			h(&y.Rows[k].CameWords)
		}
		for k := range y.Learned {
			h(&y.Learned[k])
		}
	}
}
