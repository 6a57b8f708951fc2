package ledger

import (
	"bytes"
	"context"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

const weatherText = "date,tmax,tmin,rain\n2014-01-01,8,2,1\n"

// weathered is a data folder whose garden names a weather file and one that
// nobody gave.
func weathered(t *testing.T) (dir, name string) {
	t.Helper()
	dir, name = t.TempDir(), BesideName([]byte(weatherText))
	if err := os.WriteFile(filepath.Join(dir, name), []byte(weatherText), 0o600); err != nil {
		t.Fatal(err)
	}
	l := open(t, dir)
	defer l.Close()
	for _, weather := range []string{"never-given.csv", "../" + name, name} {
		text := "garden: A\nplace:\n  latitude: 47 N\n  weather: " + weather + "\n"
		sum := sha256.Sum256([]byte(text))
		add(t, l, event(t, GardenSet, "2015-05-02", Garden{Text: text, SHA256: hex.EncodeToString(sum[:])}))
	}
	if _, err := l.Backup(context.Background(), ""); err != nil {
		t.Fatal(err)
	}
	return dir, name
}

func TestBackupAndRestoreBringWeather(t *testing.T) {
	dir, name := weathered(t)
	p := Backups(dir)[0]
	if len(p.Weather) != 1 || p.Weather[0].Name != name || p.Weather[0].Bytes != int64(len(weatherText)) || !strings.HasPrefix(name, "weather-"+p.Weather[0].SHA256[:8]) {
		t.Fatalf("manifest %+v; want the one file that is there, with its digest", p.Weather)
	}
	auditClean(t, dir)
	path := filepath.Join(dir, name)
	for what, spoil := range map[string]func(){
		"lost":    func() { os.Remove(path) },
		"changed": func() { os.WriteFile(path, []byte("other"), 0o600) },
	} {
		spoil()
		back, err := Restore(dir, p.Path, opts())
		if err != nil || len(back.Proof.Weather) != 1 {
			t.Fatalf("%s: %+v, %v", what, back, err)
		}
		if b, err := os.ReadFile(path); err != nil || string(b) != weatherText {
			t.Errorf("%s: the weather did not come back: %q, %v", what, b, err)
		}
		if b, err := os.ReadFile(filepath.Join(back.Aside, name)); what == "changed" && (err != nil || string(b) != "other") {
			t.Errorf("changed: what lay there is not aside: %q, %v", b, err)
		}
	}
	kept := besideKept(BackupFolder(dir), p.Weather[0])
	patch(t, kept, func(b []byte) []byte { b[3] ^= 1; return b })
	if _, err := VerifyBackup(p.Path); !errors.Is(err, ErrDamaged) || !strings.Contains(err.Error(), name) {
		t.Errorf("a backup with a spoilt weather file was called good: %v", err)
	}
	os.Remove(kept)
	if _, err := VerifyBackup(p.Path); !errors.Is(err, ErrDamaged) {
		t.Errorf("a backup without its weather file was called good: %v", err)
	}
}

func TestExportAndImportBringWeather(t *testing.T) {
	dir, name := weathered(t)
	l := open(t, dir)
	out := filepath.Join(t.TempDir(), "out")
	if err := l.Export(context.Background(), out); err != nil {
		t.Fatal(err)
	}
	readme, _ := os.ReadFile(filepath.Join(out, "README.txt"))
	if sum := Backups(dir)[0].Weather[0].SHA256; !bytes.Contains(readme, []byte(sum)) || !bytes.Contains(readme, []byte(name)) {
		t.Errorf("README.txt does not tell of %s and its digest:\n%s", name, readme)
	}
	to := t.TempDir()
	other := open(t, to)
	if n, err := other.ImportFolder(context.Background(), out); err != nil || n != 3 {
		t.Fatalf("%d entries, %v", n, err)
	}
	if b, err := os.ReadFile(filepath.Join(to, name)); err != nil || string(b) != weatherText {
		t.Errorf("the weather was not taken over: %q, %v", b, err)
	}
	patch(t, filepath.Join(out, name), func(b []byte) []byte { b[3] ^= 1; return b })
	if _, err := open(t, t.TempDir()).ImportFolder(context.Background(), out); !errors.Is(err, ErrDamaged) {
		t.Errorf("a changed weather file was taken over: %v", err)
	}
}
