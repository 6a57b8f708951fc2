// Package season finds and prices the plan of a season: what to start, where,
// when and how many, and when to pull what stands.
//
// The problem is plain numbers (Problem); reckon makes them from gardens and
// growth. Evaluate prices any plan with straightforward loops. Search finds a
// good plan by a greedy start and a large-neighbourhood local search, with its
// own incremental pricing that shares no code with Evaluate. Brute tries every
// plan of a tiny problem and is the only one that may say Proven. KeepCurve,
// Delay and Without answer "what if" by searching again with a choice forced.
//
// Value is counted in meals and is the mean over the futures of what would be
// eaten in each, less the costs. Weeks count from 0. Given the same problem,
// seed and work, the plan is the same with any number of workers.
//
// Bound proves how much any plan could be worth at most, and CheckBound checks
// that proof without a solver.
//
// Left out: choices that
// differ by future; the litres of a drought week; who can reach what; cover
// against bee-set crops; and how plants stand within a space.
// docs/season.md has the method in full.
package season
