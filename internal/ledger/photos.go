package ledger

import (
	"bytes"
	"context"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"sort"
	"strings"
)

// PhotoFolder is where the pictures of a data folder lie, each under its
// digest: photos/ab/abcd….jpg, its thumbnail beside it with ".small.jpg".
func PhotoFolder(dir string) string { return filepath.Join(dir, "photos") }

// photoPath is a picture's place below a photo folder. digest is 64 digits; a
// sound's has its format behind a dot.
func photoPath(folder, digest string) string {
	return filepath.Join(folder, digest[:2], fileOf(digest))
}

// fileOf is the name of a kept file.
func fileOf(digest string) string {
	if len(digest) > 64 {
		return digest
	}
	return digest + ".jpg"
}

// KeepPhoto puts a picture and its thumbnail into the store and returns its
// digest. The file is synced before it gets its name, and the folders after,
// so that an entry that names it never names nothing. The same picture twice
// is one file.
func (l *Ledger) KeepPhoto(picture, small []byte) (digest string, err error) {
	if stopped := l.Stopped(); stopped != nil {
		return "", stopped
	}
	sum := sha256.Sum256(picture)
	digest = hex.EncodeToString(sum[:])
	folder := PhotoFolder(l.dir)
	path := photoPath(folder, digest)
	if err := keepFile(folder, path, picture); err != nil {
		return "", fmt.Errorf("keeping the picture: %w", err)
	}
	if err := keepFile(folder, strings.TrimSuffix(path, ".jpg")+".small.jpg", small); err != nil {
		return "", fmt.Errorf("keeping the small picture: %w", err)
	}
	return digest, nil
}

// keepFile writes a file of the store: temporary name, sync, name, folders.
func keepFile(root, path string, data []byte) (err error) {
	if have, err := os.ReadFile(path); err == nil && bytes.Equal(have, data) {
		return nil
	}
	folder := filepath.Dir(path)
	if err := os.MkdirAll(folder, 0o700); err != nil {
		return noRoom(err)
	}
	f, err := os.CreateTemp(folder, making)
	if err != nil {
		return noRoom(err)
	}
	defer func() {
		if err != nil {
			f.Close()
			os.Remove(f.Name())
		}
	}()
	if _, err := f.Write(data); err != nil {
		return noRoom(err)
	}
	if err := f.Sync(); err != nil {
		return noRoom(err)
	}
	if err := f.Close(); err != nil {
		return noRoom(err)
	}
	if err := os.Rename(f.Name(), path); err != nil {
		return noRoom(err)
	}
	for _, d := range []string{folder, root, filepath.Dir(root)} {
		if err := syncFolder(d); err != nil {
			return fmt.Errorf("keeping the name: %w", err)
		}
	}
	return nil
}

// noRoom turns the system's words for a full disk into ours.
func noRoom(err error) error {
	if fullDisk(err) {
		return fmt.Errorf("%w (%v)", ErrNoSpace, err)
	}
	return err
}

// OpenPhoto reads a picture, or its thumbnail, from the store. The picture is
// compared with its digest: a spoilt one is an error, never shown.
func OpenPhoto(dir, digest string, small bool) ([]byte, error) {
	if !isDigest(digest) {
		return nil, fmt.Errorf("reading a picture: %w", os.ErrNotExist)
	}
	path := photoPath(PhotoFolder(dir), digest)
	if small {
		b, err := os.ReadFile(strings.TrimSuffix(path, ".jpg") + ".small.jpg")
		if err != nil {
			return nil, fmt.Errorf("reading a small picture: %w", err)
		}
		return b, nil
	}
	b, err := os.ReadFile(path)
	if err != nil {
		return nil, fmt.Errorf("reading a picture: %w", err)
	}
	if sum := sha256.Sum256(b); hex.EncodeToString(sum[:]) != digest {
		return nil, fmt.Errorf("reading a picture: %w: %s is not as it was kept", ErrDamaged, filepath.Base(path))
	}
	return b, nil
}

// photosNamed lists the pictures and sounds that entries name, each once, in
// order: a digest, with a dot and its format when it is a sound.
func photosNamed(events []Event) []string {
	seen := map[string]bool{}
	for _, e := range events {
		if e.Kind != Pictured && e.Kind != Voiced {
			continue
		}
		switch b, _ := Decode(e); b := b.(type) {
		case Photo:
			seen[b.SHA256] = true
		case Sound:
			seen[b.SHA256+"."+b.Format] = true
		}
	}
	out := make([]string, 0, len(seen))
	for d := range seen {
		out = append(out, d)
	}
	sort.Strings(out)
	return out
}

// copyPhotos brings pictures, with their thumbnails, from one store to
// another, unless they are there, and proves each one that was named.
func copyPhotos(ctx context.Context, from, to string, digests []string) (bytesIn int64, err error) {
	for _, d := range digests {
		if err := ctx.Err(); err != nil {
			return 0, err
		}
		src, dst := photoPath(from, d), photoPath(to, d)
		if sum, _, err := fileDigest(dst); err != nil || sum != d[:64] {
			b, err := os.ReadFile(src)
			if err != nil {
				return 0, fmt.Errorf("picture %s: %w", d[:12], err)
			}
			if sum := sha256.Sum256(b); hex.EncodeToString(sum[:]) != d[:64] {
				return 0, fmt.Errorf("picture %s: %w: it is not as it was kept", d[:12], ErrDamaged)
			}
			if err := keepFile(to, dst, b); err != nil {
				return 0, fmt.Errorf("picture %s: %w", d[:12], err)
			}
			if small, err := os.ReadFile(strings.TrimSuffix(src, ".jpg") + ".small.jpg"); err == nil {
				if err := keepFile(to, strings.TrimSuffix(dst, ".jpg")+".small.jpg", small); err != nil {
					return 0, err
				}
			}
		}
	}
	return provePhotos(to, digests)
}

// provePhotos reads every named picture and compares it with its digest.
func provePhotos(folder string, digests []string) (total int64, err error) {
	for _, d := range digests {
		sum, n, err := fileDigest(photoPath(folder, d))
		if errors.Is(err, os.ErrNotExist) {
			return 0, fmt.Errorf("%w: picture %s is not there", ErrDamaged, d[:12])
		}
		if err != nil {
			return 0, err
		}
		if sum != d[:64] {
			return 0, fmt.Errorf("%w: picture %s is not as it was kept", ErrDamaged, d[:12])
		}
		total += n
	}
	return total, nil
}

// restorePhotos brings back every picture of a backup that is missing or
// spoilt in the data folder.
func restorePhotos(dir, backup string) error {
	events, err := eventsOf(backup)
	if err != nil {
		return err
	}
	_, err = copyPhotos(context.Background(), PhotoFolder(filepath.Dir(backup)), PhotoFolder(dir), photosNamed(events))
	if err != nil {
		return fmt.Errorf("bringing back the pictures: %w", err)
	}
	return nil
}

// folderSize adds up the files below a folder; 0 when it is not there.
func folderSize(folder string) int64 {
	var n int64
	filepath.WalkDir(folder, func(_ string, d fs.DirEntry, err error) error {
		if err == nil && d.Type().IsRegular() {
			if st, err := d.Info(); err == nil {
				n += st.Size()
			}
		}
		return nil
	})
	return n
}

func copySynced(from, to string) error {
	in, err := os.Open(from)
	if err != nil {
		return err
	}
	defer in.Close()
	out, err := os.OpenFile(to, os.O_CREATE|os.O_EXCL|os.O_WRONLY, 0o600)
	if err != nil {
		return noRoom(err)
	}
	if _, err := io.Copy(out, in); err != nil {
		out.Close()
		return noRoom(err)
	}
	if err := out.Sync(); err != nil {
		out.Close()
		return noRoom(err)
	}
	return out.Close()
}
