package gate

import (
	"crypto/rand"
	"crypto/sha256"
	"crypto/subtle"
	"encoding/hex"
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"time"
	"unicode"
	"unicode/utf8"
)

// Device is one paired phone.
type Device struct {
	ID      string    `json:"id"`
	Name    string    `json:"name"`
	Token   string    `json:"token"` // SHA-256 of the session token, hexadecimal
	Made    time.Time `json:"made"`
	Seen    time.Time `json:"seen"`
	Revoked time.Time `json:"revoked,omitzero"`

	Waiting int       `json:"waiting"` // notes it still held when last heard of
	Heard   time.Time `json:"heard,omitzero"`
	Oldest  time.Time `json:"oldest,omitzero"`
	kept    time.Time // when Heard was last written
}

// devicesName is the file with all devices.
const devicesName = "devices.json"

// digits are those of secrets: no letters that are taken for figures.
const digits = "0123456789ABCDEFGHJKMNPQRSTVWXYZ"

// secret returns n random digits of base 32: 5 bits each.
func secret(n int) string {
	b := make([]byte, n)
	rand.Read(b) // never fails: it ends the program when there is no randomness
	for i := range b {
		b[i] = digits[b[i]&31]
	}
	return string(b)
}

func hashed(token string) string {
	sum := sha256.Sum256([]byte(token))
	return hex.EncodeToString(sum[:])
}

func loadDevices(dir string) ([]Device, error) {
	b, err := os.ReadFile(filepath.Join(dir, devicesName))
	if errors.Is(err, os.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, fmt.Errorf("reading the phones: %w", err)
	}
	var out []Device
	if err := json.Unmarshal(b, &out); err != nil {
		return nil, fmt.Errorf("reading %s: %w", filepath.Join(dir, devicesName), err)
	}
	return out, nil
}

// save writes all devices, whole or not at all. The caller holds the lock.
func (g *Gate) save() error {
	b, err := json.MarshalIndent(g.devices, "", "\t")
	if err != nil {
		return fmt.Errorf("writing the phones: %w", err)
	}
	return writeFile(filepath.Join(g.o.Dir, devicesName), append(b, '\n'))
}

// writeFile writes a file under a temporary name, syncs it and names it.
func writeFile(path string, data []byte) error {
	f, err := os.CreateTemp(filepath.Dir(path), ".new-")
	if err != nil {
		return fmt.Errorf("writing %s: %w", filepath.Base(path), err)
	}
	_, err = f.Write(data)
	if err == nil {
		err = f.Sync()
	}
	if e := f.Close(); err == nil {
		err = e
	}
	if err == nil {
		err = os.Rename(f.Name(), path)
	}
	if err != nil {
		os.Remove(f.Name())
		return fmt.Errorf("writing %s: %w", filepath.Base(path), err)
	}
	return nil
}

// byToken finds the device a token belongs to; false when none, or shut out.
func (g *Gate) byToken(token string) (Device, bool) {
	if len(token) != tokenDigits {
		return Device{}, false
	}
	h := hashed(token)
	g.mu.Lock()
	defer g.mu.Unlock()
	now := g.o.Now()
	found, ok := Device{}, false
	for i := range g.devices {
		d := &g.devices[i]
		if subtle.ConstantTimeCompare([]byte(d.Token), []byte(h)) == 1 && d.Revoked.IsZero() {
			if now.Sub(d.Seen) > time.Hour {
				d.Seen = now
				g.save() // a lost date does no harm
			}
			found, ok = *d, true
		}
	}
	return found, ok
}

// Devices lists all phones ever paired.
func (g *Gate) Devices() []Device {
	g.mu.Lock()
	defer g.mu.Unlock()
	return append([]Device(nil), g.devices...)
}

// Hear keeps how many notes a device still holds.
func (g *Gate) Hear(name string, waiting int, oldest time.Time) {
	g.mu.Lock()
	defer g.mu.Unlock()
	for i := range g.devices {
		d := &g.devices[i]
		if d.Name == name && d.Revoked.IsZero() {
			told := d.Waiting == waiting && (waiting == 0 || d.Oldest.Equal(oldest)) && g.o.Now().Sub(d.kept) < time.Hour
			d.Waiting, d.Heard, d.Oldest = waiting, g.o.Now(), oldest
			if !told { // the disk need not hear each time that all is home
				d.kept = d.Heard
				g.save()
			}
		}
	}
}

// cleanName gives the name a person typed, fit to be kept; "" = none.
func cleanName(s string) string {
	s = strings.Join(strings.Fields(strings.ToValidUTF8(s, "")), " ")
	s = strings.Map(func(r rune) rune {
		if unicode.IsControl(r) || unicode.In(r, unicode.Cf) {
			return -1
		}
		return r
	}, s)
	for utf8.RuneCountInString(s) > 40 {
		_, n := utf8.DecodeLastRuneInString(s)
		s = s[:len(s)-n]
	}
	return strings.TrimSpace(s)
}

// freeName makes a name that no other device has. The caller holds the lock.
func (g *Gate) freeName(name string) string {
	if name == "" {
		name = "phone"
	}
	taken := map[string]bool{"home": true, "this machine": true}
	for _, d := range g.devices {
		taken[d.Name] = true
	}
	for n, base := 2, name; taken[name]; n++ {
		name = fmt.Sprintf("%s %d", base, n)
	}
	return name
}
