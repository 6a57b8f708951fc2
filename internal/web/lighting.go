package web

import (
	"errors"
	"fmt"
	"net/http"
	"strconv"
	"strings"

	"bedweek/internal/reckon"
)

// lightRoutes are the pages about sun and shade; none without Options.Light.
func (s *site) lightRoutes() []route {
	if s.o.Light == nil {
		return nil
	}
	return []route{
		{"/sky/{id}", s.view(s.sky), s.saveSky},
		{"/light", s.view(s.light), nil},
		{"/light/ask", nil, s.askLight},
	}
}

// lightDesk asks for the light of the garden as it is now.
func (s *site) lightDesk(r *http.Request) (*reckon.LightDesk, error) {
	d, err := s.o.Light(r.Context())
	if err == nil && d == nil {
		err = errGone
	}
	if err != nil {
		return nil, fmt.Errorf("asking for the light: %w", err)
	}
	return d, nil
}

var errClock = errors.New("no time of day")

// clockOf reads "10:40", "10.40" or "1040" as hours; am and pm are taken.
func clockOf(t string) (float64, error) {
	t = strings.ToLower(strings.ReplaceAll(strings.TrimSpace(t), " ", ""))
	pm, am := strings.HasSuffix(t, "pm"), strings.HasSuffix(t, "am")
	t = strings.NewReplacer("pm", "", "am", "", ".", ":", "h", ":").Replace(t)
	h, m, two := strings.Cut(t, ":")
	if !two && (len(t) == 4 || len(t) == 3) {
		h, m = t[:len(t)-2], t[len(t)-2:]
	}
	hour, err := strconv.Atoi(h)
	minute := 0
	if err == nil && m != "" {
		minute, err = strconv.Atoi(m)
	}
	if (pm || am) && (hour < 1 || hour > 12) {
		return 0, errClock
	}
	if pm && hour < 12 {
		hour += 12
	}
	if am && hour == 12 {
		hour = 0
	}
	if err != nil || hour < 0 || hour > 23 || minute < 0 || minute > 59 {
		return 0, errClock
	}
	return float64(hour) + float64(minute)/60, nil
}

// clock writes an hour of the day.
func clock(h float64) string {
	m := int(h*60 + 0.5)
	return fmt.Sprintf("%d:%02d", m/60, m%60)
}
