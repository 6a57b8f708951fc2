package web

import (
	"bytes"
	"compress/gzip"
	"crypto/sha256"
	"embed"
	"encoding/hex"
	"fmt"
	"html/template"
	"io/fs"
	"net/http"
	"path"
	"strings"
)

//go:embed ui
var uiFiles embed.FS

// asset is one file sent as it is, for ever under one name.
type asset struct {
	kind   string
	plain  []byte
	packed []byte
}

// assets are the style sheets and the icon, by their hashed names.
type assets struct {
	byName map[string]asset
	href   map[string]string // "today.css" to "/assets/today.3f2a….css"
}

// kinds are the file types sent.
var kinds = map[string]string{
	".css": "text/css; charset=utf-8",
	".svg": "image/svg+xml",
	".js":  "text/javascript; charset=utf-8",
}

// loadAssets names every sheet by its content.
func loadAssets(files fs.FS) (assets, error) {
	a := assets{byName: map[string]asset{}, href: map[string]string{}}
	err := fs.WalkDir(files, ".", func(p string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		ext := path.Ext(p)
		kind, ok := kinds[ext]
		if !ok {
			return nil
		}
		b, err := fs.ReadFile(files, p)
		if err != nil {
			return fmt.Errorf("reading %s: %w", p, err)
		}
		packed, err := pack(b)
		if err != nil {
			return err
		}
		sum := sha256.Sum256(b)
		base := strings.TrimSuffix(path.Base(p), ext)
		name := base + "." + hex.EncodeToString(sum[:8]) + ext
		a.byName[name] = asset{kind, b, packed}
		a.href[path.Base(p)] = "/assets/" + name
		return nil
	})
	return a, err
}

// pack gzips b.
func pack(b []byte) ([]byte, error) {
	var out bytes.Buffer
	z, err := gzip.NewWriterLevel(&out, gzip.BestCompression)
	if err != nil {
		return nil, fmt.Errorf("packing: %w", err)
	}
	if _, err := z.Write(b); err != nil {
		return nil, fmt.Errorf("packing: %w", err)
	}
	if err := z.Close(); err != nil {
		return nil, fmt.Errorf("packing: %w", err)
	}
	return out.Bytes(), nil
}

// takesGzip reports whether the browser accepts gzip.
func takesGzip(r *http.Request) bool {
	for _, part := range strings.Split(r.Header.Get("Accept-Encoding"), ",") {
		name, q, _ := strings.Cut(strings.TrimSpace(part), ";")
		if strings.TrimSpace(name) == "gzip" && !strings.HasPrefix(strings.ReplaceAll(q, " ", ""), "q=0") {
			return true
		}
	}
	return false
}

// serveAsset sends one file that never changes under its name.
func (s *site) serveAsset(w http.ResponseWriter, r *http.Request) {
	a, ok := s.assets.byName[r.PathValue("name")]
	if !ok {
		s.fail(w, r, ErrNotThere)
		return
	}
	h := w.Header()
	h.Set("Content-Type", a.kind)
	h.Set("Cache-Control", "public, max-age=31536000, immutable")
	h.Set("Vary", "Accept-Encoding")
	body := a.plain
	if takesGzip(r) {
		h.Set("Content-Encoding", "gzip")
		body = a.packed
	}
	h.Set("Content-Length", fmt.Sprint(len(body)))
	w.Write(body)
}

// loadPages reads every page with the frame around it: ui/<page>/<page>.html.
func loadPages(files fs.FS) (map[string]*template.Template, error) {
	base, err := template.New("base").Funcs(helpers).ParseFS(files, "ui/base/*.html")
	if err != nil {
		return nil, fmt.Errorf("reading the frame: %w", err)
	}
	names, err := fs.Glob(files, "ui/*/*.html")
	if err != nil {
		return nil, fmt.Errorf("listing pages: %w", err)
	}
	pages := map[string]*template.Template{}
	for _, n := range names {
		name := strings.TrimSuffix(path.Base(n), ".html")
		if path.Base(path.Dir(n)) == "base" {
			continue
		}
		t, err := base.Clone()
		if err != nil {
			return nil, fmt.Errorf("reading page %s: %w", name, err)
		}
		if _, err = t.ParseFS(files, n); err != nil {
			return nil, fmt.Errorf("reading page %s: %w", name, err)
		}
		pages[name] = t.Lookup(path.Base(n))
	}
	return pages, nil
}
