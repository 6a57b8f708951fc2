package web

import (
	"fmt"
	"math"
	"strings"

	"bedweek/internal/cal"
	"bedweek/internal/reckon"
)

// StartPicture follows one start through twenty futures: a thread each.
type StartPicture struct {
	*reckon.StartView
	Wide, Tall float64
	Months     []Tick
	Foot       float64
	Rows       []StartThread
	From, To   cal.Day
	Size       SizePicture
	Clipped    bool // something goes on beyond the picture
	StartX     float64
}

// StartThread is one future's thread.
type StartThread struct {
	reckon.Thread
	Y                 float64
	Wait, Pick, After string
	Stop              string // a cross where it failed or was stopped
}

// SizePicture is width, height and meals by week.
type SizePicture struct {
	Wide, Tall         float64
	Ground, MealFoot   float64
	Height, WidthLine  string
	Bars, Dots         string
	MostM              float64
	MostMeals          float64
	MostMY             float64
	MealY              float64
	Rows               []SizeRow
	Months             []Tick
	MostSize, MostMeal string
	Meals              bool
	HX, HY, WX, WY     float64
	PeakH, PeakW       string
}

// SizeRow is one week in words.
type SizeRow struct {
	Week, Width, Height, Meals, Picks string
}

const (
	startLeft = 8.0
	startWide = 350.0
	startTop  = 20.0
	startRow  = 9.0
	sizeTall  = 90.0
	mealTall  = 70.0
)

// drawStart places the threads.
func drawStart(s *reckon.StartView) *StartPicture {
	p := &StartPicture{StartView: s, Wide: 2*startLeft + startWide}
	p.From, p.To = s.Day, s.Day+28
	if s.Shelf != 0 {
		p.From = s.Shelf
	}
	for _, t := range s.Threads {
		p.To = max(p.To, t.End, t.Last)
	}
	if n := len(s.Weeks); n > 0 {
		to := min(p.To, max(s.Weeks[n-1].Monday+7, s.Day+28))
		p.To, p.Clipped = to, to < p.To
	}
	x := func(d cal.Day) float64 {
		d = min(max(d, p.From), p.To)
		return startLeft + startWide*float64(d-p.From)/float64(p.To-p.From)
	}
	p.Months = monthTicks(p.From, p.To, x)
	p.StartX = x(s.Day)
	for i, t := range s.Threads {
		y := startTop + startRow*(float64(i)+0.5)
		r := StartThread{Thread: t, Y: y}
		line := func(a, b cal.Day) string {
			if b <= a || a >= p.To {
				return ""
			}
			return fmt.Sprintf("M%s %sH%s", px(x(a)), px(y), px(math.Max(x(b), x(a)+1)))
		}
		until := t.End
		if t.First != 0 {
			until = t.First
			last := max(t.Last, t.First+1)
			r.Pick, r.After = line(t.First, last), line(last, t.End)
		}
		if s.Shelf != 0 {
			r.Wait = line(s.Shelf, s.Day)
		}
		r.Wait += line(s.Day, until)
		if !t.OK {
			cx := x(max(t.End, s.Day))
			r.Stop = fmt.Sprintf("M%s %sl6 6m0 -6l-6 6", px(math.Min(cx, p.Wide-9)-3), px(y-3))
		}
		p.Rows = append(p.Rows, r)
	}
	p.Foot = startTop + startRow*float64(len(s.Threads))
	p.Tall = p.Foot + 4
	p.Size = drawSize(s)
	return p
}

// monthTicks names the firsts of months where there is room.
func monthTicks(from, to cal.Day, x func(cal.Day) float64) []Tick {
	var out []Tick
	end := -100.0
	for d := from; d < to; d++ {
		_, m, dom := d.Date()
		if dom != 1 {
			continue
		}
		t := Tick{X: x(d)}
		words := m.String()[:3]
		if m == 1 {
			words = fmt.Sprintf("Jan %d", d.Year())
		}
		if w := boldLetter * float64(len(words)); t.X > end && t.X+w < startLeft+startWide+8 {
			t.Words, end = words, t.X+w
		}
		out = append(out, t)
	}
	return out
}

// drawSize places width and height, and meals a week under them.
func drawSize(s *reckon.StartView) SizePicture {
	p := SizePicture{Wide: 2*startLeft + startWide, Meals: !s.KgNotEat}
	p.Ground = startTop + sizeTall
	p.MealFoot = p.Ground + 22 + mealTall
	p.Tall = p.MealFoot + 4
	if !p.Meals {
		p.Tall = p.Ground + 4
	}
	n := len(s.Weeks)
	if n == 0 {
		return p
	}
	for _, w := range s.Weeks {
		p.MostM = math.Max(p.MostM, math.Max(w.WidthM, w.HeightM))
		p.MostMeals = math.Max(p.MostMeals, w.High)
	}
	from, to := s.Weeks[0].Monday, s.Weeks[n-1].Monday+7
	x := func(d cal.Day) float64 { return startLeft + startWide*float64(d-from)/float64(to-from) }
	p.Months = monthTicks(from, to, x)
	tall := func(v float64) float64 { return p.Ground - sizeTall*v/math.Max(p.MostM, 1e-9) }
	meal := func(v float64) float64 { return p.MealFoot - mealTall*v/math.Max(p.MostMeals, 1e-9) }
	var h, w, bars, dots strings.Builder
	topH, topW := -1.0, -1.0
	for i, k := range s.Weeks {
		a, b := x(k.Monday), x(k.Monday+7)
		verb := map[bool]string{true: "M", false: "L"}[i == 0]
		fmt.Fprintf(&h, "%s%s %sH%s", verb, px(a), px(tall(k.HeightM)), px(b))
		fmt.Fprintf(&w, "%s%s %sH%s", verb, px(a), px(tall(k.WidthM)), px(b))
		if k.HeightM > topH {
			topH, p.HX, p.HY = k.HeightM, (a+b)/2, tall(k.HeightM)
		}
		if k.WidthM > topW {
			topW, p.WX, p.WY = k.WidthM, (a+b)/2, tall(k.WidthM)
		}
		mid := (a + b) / 2
		if k.High > 0 {
			fmt.Fprintf(&bars, "M%s %sV%s", px(mid), px(meal(k.Low)), px(meal(k.High)))
		}
		if k.Likely > 0 {
			fmt.Fprintf(&dots, "M%s %sh0", px(mid), px(meal(k.Likely)))
		}
		r := SizeRow{Week: k.Monday.Long(), Width: cm(k.WidthM), Height: cm(k.HeightM), Meals: "–", Picks: "–"}
		if p.Meals {
			r.Meals = mealSpan(k)
			r.Picks = fmt.Sprintf("%d of %d", k.Picks, s.Futures)
		}
		p.Rows = append(p.Rows, r)
	}
	p.Height, p.WidthLine, p.Bars, p.Dots = h.String(), w.String(), bars.String(), dots.String()
	p.PeakH, p.PeakW = cm(topH)+" tall", cm(topW)+" wide"
	p.HX, p.WX = math.Min(math.Max(p.HX, 40), p.Wide-44), math.Min(math.Max(p.WX, 40), p.Wide-44)
	if math.Abs(p.HY-p.WY) < 15 && math.Abs(p.HX-p.WX) < 90 { // labels would meet
		if p.HY <= p.WY {
			p.WY += 28
		} else {
			p.HY += 28
		}
	}
	p.MostMeal = mealNumber(p.MostMeals)
	p.MealY = meal(p.MostMeals)
	return p
}

func cm(m float64) string { return fmt.Sprintf("%.0f cm", 100*m) }

// mealNumber writes meals of a few plants: fine where there are few.
func mealNumber(x float64) string {
	switch {
	case x == 0:
		return "0"
	case x < 0.05:
		return "under 0.1"
	case x < 10:
		return fmt.Sprintf("%.1f", x)
	}
	return fmt.Sprintf("%.0f", x)
}

func mealSpan(k reckon.SizeWeek) string {
	if k.High == 0 {
		if k.Picks > 0 {
			return "0, rarely a little"
		}
		return "0"
	}
	return fmt.Sprintf("%s (%s to %s)", mealNumber(k.Likely), mealNumber(k.Low), mealNumber(k.High))
}
