package main

import (
	"context"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"

	"bedweek/internal/ledger"
)

const helpAudit = `bedweek audit [-json] [DATA]

Check a data folder: the database, every digest and the chain of them, the
plantings against a fresh replay, and each backup. It only reads. DATA is
bedweek-data in your home folder unless given.

  bedweek audit my-data

Exit 0: in order. 1: something is wrong, said in words. 2: wrong usage.
`

const helpBackup = `bedweek backup [DATA] [FOLDER]

Make a backup of a data folder, open it again, check and count it, and only
then call it one. It is kept in DATA/backups, or in FOLDER.

  bedweek backup my-data

Exit 0: proven. 1: it could not be made or did not prove. 2: wrong usage.
`

const helpExport = `bedweek export [DATA] FOLDER

Write everything noted as CSV and JSON, with a README that explains every
column, into a new folder.

  bedweek export my-data my-export

Exit 0: written. 1: it could not be. 2: wrong usage.
`

func runAudit(_ context.Context, w *world, args []string) int {
	fs := flags("audit")
	asJSON := fs.Bool("json", false, "")
	names, code, done := parse(w, fs, helpAudit, args)
	if done {
		return code
	}
	if len(names) > 1 {
		return wrong(w, "audit", "name one data folder")
	}
	dir, err := dataFolder(names)
	if err != nil {
		return wrong(w, "audit", "%v", err)
	}
	if _, err := os.Stat(dir); err != nil {
		return wrong(w, "audit", "%s: there is no such folder", dir)
	}
	r := ledger.Audit(dir)
	if *asJSON {
		enc := json.NewEncoder(w.out)
		enc.SetIndent("", "  ")
		err = enc.Encode(r)
	} else {
		_, err = fmt.Fprint(w.out, r)
	}
	if err != nil || !r.OK {
		return exitNo
	}
	return exitDone
}

func runBackup(ctx context.Context, w *world, args []string) int {
	names, code, done := parse(w, flags("backup"), helpBackup, args)
	if done {
		return code
	}
	folder := ""
	if len(names) == 2 {
		folder, names = names[1], names[:1]
	}
	return withLedger(w, "backup", names, func(l *ledger.Ledger) error {
		p, err := l.Backup(ctx, folder)
		if err == nil {
			fmt.Fprintf(w.out, "Proven backup: %s\n", p.Words())
		}
		return err
	})
}

func runExport(ctx context.Context, w *world, args []string) int {
	names, code, done := parse(w, flags("export"), helpExport, args)
	if done {
		return code
	}
	if len(names) < 1 || len(names) > 2 {
		return wrong(w, "export", "name the folder to write")
	}
	to := names[len(names)-1]
	return withLedger(w, "export", names[:len(names)-1], func(l *ledger.Ledger) error {
		err := l.Export(ctx, to)
		if err == nil {
			fmt.Fprintf(w.out, "Written to %s; begin with README.txt there.\n", filepath.Clean(to))
		}
		return err
	})
}

// withLedger opens a data folder that must be there already.
func withLedger(w *world, cmd string, names []string, f func(*ledger.Ledger) error) int {
	if len(names) > 1 {
		return wrong(w, cmd, "too many names")
	}
	dir, err := dataFolder(names)
	if err != nil {
		return wrong(w, cmd, "%v", err)
	}
	if _, err := os.Stat(dir); err != nil {
		return wrong(w, cmd, "%s: there is no such folder", dir)
	}
	l, err := ledger.Open(dir, ledger.Options{Now: w.now})
	if err != nil {
		fmt.Fprintf(w.err, "bedweek %s: %v\n", cmd, err)
		return exitNo
	}
	defer l.Close()
	if err := f(l); err != nil {
		fmt.Fprintf(w.err, "bedweek %s: %v\n", cmd, err)
		return exitNo
	}
	return exitDone
}
