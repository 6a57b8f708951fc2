package stand

// limitWord says in the gardener's words what is wrong with a start just
// outside a window, or just outside its best days.
func (t *Table) limitWord(tr *trial, best bool) string {
	if !tr.gain || best && !tr.gains {
		return NoGain
	}
	if best && tr.fit20 >= fitOf20 && tr.ok20 >= bestOf20 {
		return Less
	}
	switch tr.cause {
	case NotUp:
		if tr.warmSoil {
			return Heat
		}
		return SoilCold
	case ColdSoil:
		return SoilCold
	case Chilled:
		return NightCold
	case Frosted, Unhardened:
		if t.Crop.Warm {
			return NotRipe
		}
		return NightCold
	case Bolted:
		return Bolts
	case TooHot:
		return Heat
	case NoSet:
		if tr.hot {
			return Heat
		}
		return NightCold
	case LongDays:
		return LateFlower
	case NoCold:
		return NoChill
	case TooSlow:
		if t.Crop.Warm {
			return NotRipe
		}
	}
	if tr.swelter && !t.Crop.Warm {
		return Heat
	}
	return ShortDay
}
