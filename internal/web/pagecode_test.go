package web

import (
	"net/http/httptest"
	"strings"
	"testing"

	"bedweek/internal/gate"
)

// The code at the foot of a print leads back to the page, where a phone can
// reach it.
func TestPageCode(t *testing.T) {
	long := "/space/gate-bed?note=" + strings.Repeat("a", 200)
	for _, c := range []struct{ url, want string }{
		{"http://127.0.0.1:8030/lines", ""},
		{"http://localhost:8030/lines", ""},
		{"http://[::1]:8030/", ""},
		{"http://192.168.1.7:8030/walk?stop=2", "HTTP://192.168.1.7:8030/walk?stop=2"},
		{"https://garden.home.arpa/lines", "HTTPS://GARDEN.HOME.ARPA/lines"},
		{"http://192.168.1.7:8030" + long, "HTTP://192.168.1.7:8030/space/gate-bed"},
	} {
		got := pageCode(httptest.NewRequest("GET", c.url, nil))
		if c.want == "" {
			if got != "" {
				t.Errorf("%s has a code, though no phone can follow it", c.url)
			}
			continue
		}
		if got == "" || got != gate.ScanCode(c.want) {
			t.Errorf("%s: the code does not lead to %s", c.url, c.want)
		}
	}
}
