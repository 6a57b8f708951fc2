package reckon

import (
	"sync"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/garden"
	"bedweek/internal/ledger"
	"bedweek/internal/shade"
	"bedweek/internal/weather"
)

// LightDesk answers every question about a garden's sun and shade: the view
// from a space, the garden at an hour, what things cost, and what if. It keeps
// a light field of the year and changes it back after each question, so it may
// be asked from several goroutines, one at a time.
type LightDesk struct {
	mu    sync.Mutex
	light *GardenLight
	scene shade.Scene
	edges []ledger.EdgeNote
	rec   *weather.Record
	norm  *weather.Normals
	zone  *time.Location
	date  cal.Day
	base  [][12]float64 // hours by surface and month
	mol   [][12]float64
	costs []ThingCost
	half  *halfYear
	views map[string]*SkylineView
	tall  tallAnswer
}

// NewLightDesk works out the light of the year about a date, with all
// corrections of skylines. zone tells the clock; nil = mean solar time.
func NewLightDesk(in *Inputs, zone *time.Location) *LightDesk {
	start := shade.YearStart(min(max(in.Date.Year(), 1900), 2100))
	d := &LightDesk{zone: zone, date: in.Date, edges: in.edges(), views: map[string]*SkylineView{},
		rec: in.Record, norm: in.Normals}
	d.light = newGardenLight(gardenOn(in.Garden, in.Date), in.edges(), in.Record, in.Normals, start, 52, shade.QuickLooks(), true, in.Workers)
	d.scene.Bodies = d.light.Bodies
	d.base, d.mol = d.light.monthly()
	return d
}

// monthly is the mean of each surface by month: hours of sun, and light under
// the mean sky.
func (l *GardenLight) monthly() (hours, mol [][12]float64) {
	n := len(l.Field.Surfaces())
	hours, mol = make([][12]float64, n), make([][12]float64, n)
	all := make([]bool, n)
	for s := range all {
		all[s] = true
	}
	l.monthlyOf(all, hours, mol)
	return hours, mol
}

// monthlyOf writes some surfaces' means over what is there.
func (l *GardenLight) monthlyOf(some []bool, hours, mol [][12]float64) {
	for m := range 12 {
		weeks := l.weekLights(l.Weeks(m + 1))
		for s := range some {
			if some[s] {
				o := l.over(s, weeks)
				hours[s][m], mol[s][m] = o.Hours.Mean, o.MolMean.Mean
			}
		}
	}
}

// surfaceOf finds a space's ground among the surfaces.
func (l *GardenLight) surfaceOf(id string) (int, bool) {
	for s := range l.Field.Surfaces() {
		if string(l.Space(s).ID) == id {
			return s, true
		}
	}
	return 0, false
}

// Garden returns the garden whose light it is.
func (d *LightDesk) Garden() *garden.Garden { return d.light.Garden }

// Edges returns the corrections it knows.
func (d *LightDesk) Edges() []ledger.EdgeNote { return d.edges }
