package web

import (
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"net/http"
	"net/url"
	"sort"
	"strings"
)

// worker sends the script that keeps pages for use without a signal. Its
// cache is named by the content of all assets: nobody counts versions.
func (s *site) worker(w http.ResponseWriter, r *http.Request) {
	var names []string
	for n := range s.assets.byName {
		if !strings.HasPrefix(n, "worker.") {
			names = append(names, "/assets/"+n)
		}
	}
	sort.Strings(names)
	list, err := json.Marshal(names)
	if err != nil {
		s.fail(w, r, err)
		return
	}
	body := s.assets.byName[strings.TrimPrefix(s.assets.href["worker.js"], "/assets/")].plain
	sum := sha256.Sum256(append(list, body...))
	w.Header().Set("Content-Type", "text/javascript; charset=utf-8")
	w.Header().Set("Cache-Control", "no-cache")
	fmt.Fprintf(w, "const NAME = 'bedweek-%s';\nconst ASSETS = %s;\n%s", hex.EncodeToString(sum[:8]), list, body)
}

// offline lists the pages worth keeping on a device.
func (s *site) offline(w http.ResponseWriter, r *http.Request) {
	day, err := s.o.Day(r.Context())
	if err != nil {
		s.fail(w, r, err)
		return
	}
	paths := []string{"/", "/lines", "/unsent", "/quick", "/quick?what=picked", "/quick?what=wet", "/quick?what=looks", "/quick?what=lost"}
	if s.o.Keeping.KeepSound != nil {
		paths = append(paths, "/quick?what=photo", "/quick?what=voice")
	}
	if s.o.Names != nil {
		desk, err := s.namesDesk(r.Context())
		if err != nil {
			s.fail(w, r, err)
			return
		}
		paths = append(paths, "/seeds")
		for _, t := range desk.Trays() {
			if step, _ := stepOf(t.Next); step != "" {
				paths = append(paths, "/plant/"+url.PathEscape(t.ID)+"/move/"+step)
			}
		}
	}
	if day != nil {
		for n := range len(day.Walk(walkAsk(r, day)).Stops) + 1 {
			paths = append(paths, stopAt(n+1))
		}
		for _, sp := range day.Spaces {
			at := "/space/" + url.PathEscape(sp.ID)
			paths = append(paths, at)
			for _, k := range noteKinds {
				paths = append(paths, at+"/note/"+k.Value)
			}
		}
	}
	sendJSON(w, paths)
}
