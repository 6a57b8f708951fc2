package water

import "sort"

// DryTenthMM is what the air asks of a full crop beyond the rain, mm a day, in
// a dry spell: the mean of so many days before a day of the sky, at the dry
// tenth of the futures and never below 0. light and rainShare are the place's
// shares of sun (by month) and rain. Only days the sky has are counted.
func (s *Sky) DryTenthMM(light [12]float64, rainShare float64, before, days int) float64 {
	from, to := max(0, before-days), min(before, s.Days)
	if len(s.days) == 0 || from >= to {
		return 0
	}
	lacks := make([]float64, len(s.days))
	for f, run := range s.days {
		for d := from; d < to; d++ {
			lacks[f] += run[d].et0MM(light[s.month[d]]) - run[d].rainMM*rainShare
		}
		lacks[f] = max(0, lacks[f]/float64(to-from))
	}
	sort.Float64s(lacks)
	at := dryTenth * float64(len(lacks)-1)
	i := int(at)
	if i+1 >= len(lacks) {
		return lacks[len(lacks)-1]
	}
	return lacks[i] + (at-float64(i))*(lacks[i+1]-lacks[i])
}

// dryTenth is the share of the futures in which it is less dry.
const dryTenth = 0.9

// CarriedL is the litres a day to bring for an area under a crop that fills it,
// where the air asks dryMM of grass: [FAO56] table 12's coefficient in
// mid-season, which has the bare surface in it, and what is lost on the way. A
// mulch lets part of the surface's share pass; staked is on tall supports.
// exposure is what wind and walls do to the demand, 1 = a bed among others.
func (c Crop) CarriedL(dryMM, areaM2, exposure, mulch float64, staked bool) float64 {
	kc := c.KcMid
	if staked {
		kc = max(kc, c.KcStaked)
	}
	if mulch > 0 {
		kc -= (1 - mulch) * max(0, c.KcMid-c.KcbMid)
	}
	return dryMM * exposure * kc * areaM2 / lineShare
}
