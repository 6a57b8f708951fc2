package main

import (
	"os"
	"path/filepath"
	"testing"
)

// A garden file from elsewhere brings its weather file with it, and a newer
// one of the same name takes the place of the older.
func TestWeatherFileComesWithItsGarden(t *testing.T) {
	from, dir := t.TempDir(), t.TempDir()
	path := filepath.Join(from, "garden.yaml")
	if err := takeWeather(dir, path, "w.csv"); err != nil {
		t.Errorf("a file that is not there, as with -weather: %v", err)
	}
	for _, text := range []string{"one", "two", "two"} {
		os.WriteFile(filepath.Join(from, "w.csv"), []byte(text), 0o600)
		if err := takeWeather(dir, path, "w.csv"); err != nil {
			t.Fatal(err)
		}
		if b, err := os.ReadFile(filepath.Join(dir, "w.csv")); err != nil || string(b) != text {
			t.Errorf("beside the record lies %q, %v; want %q", b, err, text)
		}
	}
}
