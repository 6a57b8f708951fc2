package garden

import (
	"fmt"

	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/token"
)

// wants reads foods and meals: a number, a mapping, or a list of mappings for
// a food wanted differently through the year.
func (r *reader) wants(f fields) (wants []Want) {
	p, ok := f.pairs["wants"]
	if !ok || null(p.value) {
		return nil
	}
	foods, ok := r.pairs(p.value, "wants")
	if !ok {
		return nil
	}
	for _, food := range foods {
		if !r.nameFits(food.key, food.at, "a food") {
			continue
		}
		if r.book != nil && !r.book.Food(food.key) {
			r.unknownFood(food)
			continue
		}
		for _, n := range r.items(food.value) {
			if w, ok := r.want(food, n); ok {
				wants = append(wants, w)
			}
		}
		if null(food.value) {
			r.at(food.at, food.key+" without meals", "Write how many meals a week, as "+clip(food.key)+": 4")
		}
		if len(wants) > maxWishes {
			r.at(p.at, "too many wants", fmt.Sprintf("A garden file holds at most %d.", maxWishes))
			break
		}
	}
	return wants
}

func (r *reader) want(food pair, n ast.Node) (Want, bool) {
	w := Want{Food: FoodID(food.key), Liking: 1}
	meals := bound{0, 200, true}
	if text, tk, ok := scalar(n); ok {
		w.Meals = r.number(text, tk, "meals", meals, "a week", "meals")
		return w, true
	}
	f, ok := r.fields(n, wantShape(), food.at)
	if !ok {
		return w, false
	}
	w.Meals = f.number("meals", meals, "a week")
	if f.has("liking") {
		w.Liking = f.number("liking", bound{0, 5, true})
	}
	if text, tk, ok := f.text("months"); ok {
		if w.From, w.To, ok = months(text); !ok {
			r.at(tk, "months "+clip(text), "Write June, June to October, or all year.")
		}
	}
	r.listed(f, "crops", 40, func(n ast.Node, at *token.Token) {
		if text, tk, ok := r.single(n, at, "crops"); ok {
			w.Crops = append(w.Crops, r.crop(text, tk))
		}
	})
	return w, true
}

func (r *reader) musts(f fields) (musts []Must) {
	r.listed(f, "musts", maxWishes, func(n ast.Node, at *token.Token) {
		f, ok := r.fields(n, mustShape(), at)
		if !ok {
			return
		}
		musts = append(musts, Must{Crop: f.crop("crop"), Plants: f.whole("plants", bound{1, 5000, false}),
			Space: SpaceID(f.refer("space", "spaces"))})
	})
	return musts
}

func (r *reader) nevers(f fields) (nevers []Never) {
	r.listed(f, "nevers", maxWishes, func(n ast.Node, at *token.Token) {
		if text, tk, ok := scalar(n); ok {
			nevers = append(nevers, Never{Crop: r.crop(text, tk)})
			return
		}
		f, ok := r.fields(n, neverShape(), at)
		if !ok {
			return
		}
		nevers = append(nevers, Never{Crop: f.crop("crop"), Space: SpaceID(f.refer("space", "spaces"))})
	})
	return nevers
}

func (r *reader) seeds(f fields) (seeds []Seed) {
	taken := map[string]bool{}
	var at []*token.Token
	r.listed(f, "seeds", maxLots, func(n ast.Node, tk *token.Token) {
		f, ok := r.fields(n, seedShape(), tk)
		if !ok {
			return
		}
		s := Seed{Crop: f.crop("crop"), Variety: f.name("variety"), Year: f.year("year")}
		if text, _, ok := f.text("count"); ok && text != "plenty" {
			s.Count = f.whole("count", bound{1, 1000000, false})
		}
		if text, tk, ok := f.text("id"); ok && r.id(text, tk) {
			if taken[text] {
				r.at(tk, "seed lot "+text+" given twice", "Give each lot an id of its own, or leave ids out.")
			}
			s.ID, taken[text] = text, true
		}
		seeds, at = append(seeds, s), append(at, tk)
	})
	for i := range seeds {
		for n := 1; seeds[i].ID == ""; n++ {
			if id := fmt.Sprintf("%s-%d", seeds[i].Crop, n); !taken[id] {
				seeds[i].ID, taken[id] = id, true
			}
		}
	}
	return seeds
}

// unknownFood reports a food the book does not have, with the nearest or all.
func (r *reader) unknownFood(p pair) {
	remedy := "Foods are listed in docs/formats.md, such as salad, roots or herbs."
	if book, ok := r.book.(interface{ FoodNames() []string }); ok {
		remedy = "The foods are " + list(book.FoodNames()) + "."
		if name, ok := nearest(p.key, book.FoodNames()); ok {
			remedy = "Did you mean " + name + "?"
		}
	}
	r.at(p.at, "unknown food "+clip(p.key), remedy)
}
