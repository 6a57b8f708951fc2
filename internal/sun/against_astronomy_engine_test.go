package sun

import (
	"bufio"
	"os"
	"strconv"
	"strings"
	"testing"
	"time"

	"bedweek/internal/cal"
	"bedweek/internal/geom"
)

// rows reads a table with # remarks and one heading line.
func rows(t *testing.T, name string) [][]string {
	t.Helper()
	f, err := os.Open(name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	var out [][]string
	for s := bufio.NewScanner(f); s.Scan(); {
		if line := s.Text(); !strings.HasPrefix(line, "#") {
			out = append(out, strings.Split(line, ","))
		}
	}
	return out[1:]
}

func number(t *testing.T, s string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

// The promise is 0.01° on the sky at any latitude; the angle between the two
// directions is taken, so that azimuth near the zenith is not asked too much.
func TestAgainstAstronomyEngine(t *testing.T) {
	const tolDeg = 0.01
	worst, sum, n := 0.0, 0.0, 0
	for _, r := range rows(t, "testdata/astronomy_engine.csv") {
		at, err := time.Parse(time.RFC3339, r[0])
		if err != nil {
			t.Fatal(err)
		}
		p := Place{LatDeg: number(t, r[1]), LonDeg: number(t, r[2])}
		got := At(at, p, Air{})
		off := geom.AngleDeg(geom.Direction(got.AzimuthDeg, got.TrueElevDeg), geom.Direction(number(t, r[3]), number(t, r[4])))
		if off > tolDeg {
			t.Errorf("%s at %+v: azimuth %.4f, elevation %.4f; want %s, %s (astronomy-engine): %.4f° apart", r[0], p, got.AzimuthDeg, got.TrueElevDeg, r[3], r[4], off)
		}
		worst, sum, n = max(worst, off), sum+off, n+1
	}
	if n < 300 {
		t.Fatalf("only %d rows compared", n)
	}
	t.Logf("%d instants 1950-2070: worst %.4f°, mean %.4f°", n, worst, sum/float64(n))
}

func TestRiseAgainstAstronomyEngine(t *testing.T) {
	const tolS = 60 // at grazing sun a hundredth of a degree is many seconds
	worst, n := 0.0, 0
	for _, r := range rows(t, "testdata/astronomy_engine_rise.csv") {
		day, err := cal.Parse(r[0])
		if err != nil {
			t.Fatal(err)
		}
		p := Place{LatDeg: number(t, r[1]), LonDeg: number(t, r[2])}
		rise, set := OnUTC(day, p, UpperLimb)
		for i, got := range []time.Time{rise, set} {
			want := r[3+i]
			if want == "none" || got.IsZero() {
				if want != "none" || !got.IsZero() {
					t.Errorf("%s at %+v: %v, want %s (astronomy-engine)", r[0], p, got, want)
				}
				continue
			}
			w, err := time.Parse(time.RFC3339, want)
			if err != nil {
				t.Fatal(err)
			}
			off := got.Sub(w).Abs().Seconds()
			if off > tolS {
				t.Errorf("%s at %+v: %v, want %s (astronomy-engine)", r[0], p, got, want)
			}
			worst, n = max(worst, off), n+1
		}
	}
	if n < 200 {
		t.Fatalf("only %d events compared", n)
	}
	t.Logf("%d events, latitude -75 to 75: worst %.1f s", n, worst)
}
