package main

import (
	"context"
	"fmt"
	"os"
	"path/filepath"

	"bedweek/internal/ledger"
)

const helpRestore = `bedweek restore [-look] BACKUP [DATA]

Put the record of a data folder back to a backup. The backup is proven first.
The record as it stands is backed up when it can be read, and kept aside in
DATA/aside either way. No program may have the folder open.

  bedweek restore my-data/backups/20260412T080000.000Z-000000412.db my-data

  -look   only say what the record holds and the backup does not

Exit 0: restored and proven. 1: it was not, and nothing was changed. 2: wrong
usage.
`

const helpDrill = `bedweek drill [DATA]

Try every backup of a data folder: restore each into a new folder, check it,
count it, write one entry, and throw the folder away. The record itself is not
touched. The page "Is it safe?" tells when this was last done.

  bedweek drill my-data

Exit 0: all came back. 1: one did not, said in words. 2: wrong usage.
`

const helpImport = `bedweek import EXPORT [DATA]

Take over the entries of an exported folder that are not in a data folder yet.
Every digest is checked first, and a backup is made before.

  bedweek import my-export my-data

Exit 0: taken over. 1: it could not be, and nothing was changed. 2: wrong usage.
`

func backWords(b ledger.Back) string {
	s := fmt.Sprintf("Restored and proven: %d entries, %d plantings, %d pictures. This is epoch %d.", b.Proof.Entries, b.Proof.Plantings, b.Proof.Photos, b.Epoch)
	if b.Before.File != "" {
		s += " The record as it stood is in " + b.Before.File + "."
	}
	if b.Aside != "" {
		s += " Its files lie in " + b.Aside + "."
	}
	return s
}

func runRestore(_ context.Context, w *world, args []string) int {
	fs := flags("restore")
	look := fs.Bool("look", false, "")
	names, code, done := parse(w, fs, helpRestore, args)
	if done {
		return code
	}
	if len(names) < 1 || len(names) > 2 {
		return wrong(w, "restore", "name the backup, then the data folder")
	}
	dir, err := dataFolder(names[1:])
	if err != nil {
		return wrong(w, "restore", "%v", err)
	}
	if _, err := os.Stat(names[0]); err != nil {
		return wrong(w, "restore", "%s: there is no such file", names[0])
	}
	loss, err := ledger.WouldLose(dir, names[0])
	if err != nil {
		fmt.Fprintf(w.err, "bedweek restore: %v\n", err)
		return exitNo
	}
	fmt.Fprintf(w.out, "The backup: %s.\n", loss.Backup.Words())
	switch {
	case loss.Count < 0:
		fmt.Fprintln(w.out, "How many entries are newer is not known.")
	default:
		fmt.Fprintf(w.out, "%d entries are newer than it.\n", loss.Count)
	}
	if loss.NotKnown != "" {
		fmt.Fprintf(w.out, "The record as it stands cannot be read: %s\n", loss.NotKnown)
	}
	if *look {
		return exitDone
	}
	b, err := ledger.Restore(dir, names[0], ledger.Options{Now: w.now})
	if err != nil {
		fmt.Fprintf(w.err, "bedweek restore: %v\n", err)
		return exitNo
	}
	fmt.Fprintln(w.out, backWords(b))
	return exitDone
}

func runDrill(ctx context.Context, w *world, args []string) int {
	names, code, done := parse(w, flags("drill"), helpDrill, args)
	if done {
		return code
	}
	if len(names) > 1 {
		return wrong(w, "drill", "name one data folder")
	}
	dir, err := dataFolder(names)
	if err != nil {
		return wrong(w, "drill", "%v", err)
	}
	if _, err := os.Stat(dir); err != nil {
		return wrong(w, "drill", "%s: there is no such folder", dir)
	}
	d, err := ledger.Drill(ctx, dir, "", ledger.Options{Now: w.now})
	if err != nil {
		fmt.Fprintf(w.err, "bedweek drill: %v\n", err)
		return exitNo
	}
	fmt.Fprintln(w.out, d.Words)
	return exitDone
}

func runImport(ctx context.Context, w *world, args []string) int {
	names, code, done := parse(w, flags("import"), helpImport, args)
	if done {
		return code
	}
	if len(names) < 1 || len(names) > 2 {
		return wrong(w, "import", "name the exported folder, then the data folder")
	}
	if _, err := os.Stat(filepath.Join(names[0], "events.json")); err != nil {
		return wrong(w, "import", "%s holds no events.json", names[0])
	}
	dir, err := dataFolder(names[1:])
	if err != nil {
		return wrong(w, "import", "%v", err)
	}
	l, err := ledger.Open(dir, ledger.Options{Now: w.now})
	if err != nil {
		fmt.Fprintf(w.err, "bedweek import: %v\n", err)
		return exitNo
	}
	defer l.Close()
	n, err := l.ImportFolder(ctx, names[0])
	if err != nil {
		fmt.Fprintf(w.err, "bedweek import: %v\n", err)
		return exitNo
	}
	fmt.Fprintf(w.out, "%d entries were taken over.\n", n)
	return exitDone
}
