package main

import (
	"context"
	"encoding/json"
	"errors"
	"io"
	"math/big"
	"strconv"
	"time"

	"grainwise/assets/words"
	"grainwise/model/cutting"
	"grainwise/model/project"
)

// How long the planner may take, in seconds.
const (
	usualSeconds = 10
	leastSeconds = 0.1
	mostSeconds  = 3600
)

// cutCommand is the cutting planner alone: gw cut INSTANCE.json [--seconds N].
func cutCommand(args []string, out io.Writer) (int, error) {
	a, err := parse(args, []string{"seconds"}, nil)
	if err != nil {
		return exitInput, err
	}
	file, err := a.oneFile()
	if err != nil {
		return exitInput, err
	}
	allowed, err := a.seconds()
	if err != nil {
		return exitInput, err
	}
	i, err := project.OpenInstance(file)
	if err != nil {
		return exitInput, err
	}
	ctx, cancel := context.WithTimeout(context.Background(), allowed)
	defer cancel()
	answer, err := answerTo(ctx, i)
	if err != nil {
		return exitInput, inFile(file, i, err)
	}
	encoder := json.NewEncoder(out)
	encoder.SetEscapeHTML(false)
	return exitDone, encoder.Encode(answer)
}

func (a arguments) seconds() (time.Duration, error) {
	if !a.has("seconds") {
		return usualSeconds * time.Second, nil
	}
	text := a.value("seconds")
	n, err := strconv.ParseFloat(text, 64)
	if err != nil || !(n >= leastSeconds && n <= mostSeconds) {
		return 0, inputError("instance.wantSeconds", "found", text, "most", strconv.Itoa(mostSeconds))
	}
	return time.Duration(n * float64(time.Second)), nil
}

// answerTo asks the planner the instance's question.
func answerTo(ctx context.Context, i project.Instance) (any, error) {
	scale := newScale(i)
	switch {
	case i.Value:
		found, err := cutting.MostValuable(ctx, i.Job)
		if err != nil {
			return nil, err
		}
		return scale.valuable(found), nil
	case i.Roll != nil:
		plan, err := cutting.Shortest(ctx, *i.Roll, nil)
		if err != nil {
			return nil, err
		}
		return scale.roll(plan), nil
	}
	plan, err := cutting.Fewest(ctx, i.Job, nil)
	if err != nil {
		return nil, err
	}
	return scale.sheets(plan), nil
}

// inFile says what is wrong with an instance, in its own names and unit.
func inFile(file string, i project.Instance, err error) error {
	var t *cutting.Trouble
	if !errors.As(err, &t) {
		return errors.New(file + ": " + words.Say("instance.noPlan"))
	}
	say := newScale(i).say
	with := words.With{"what": what(i, t), "width": say(t.OverWidth), "height": say(t.OverHeight), "have": t.Have, "need": t.Need}
	key := map[cutting.Fault]string{
		cutting.NotASize: "size", cutting.NotACount: "count", cutting.NotACost: "cost", cutting.LostEdges: "edges",
		cutting.TooLarge: "large", cutting.StockSmall: "stock",
	}[t.Fault]
	switch {
	case key == "":
		key = "much"
	case key == "large" && t.FitsTurned:
		key = "largeTurned"
	case key == "stock" && t.Need <= t.Have:
		key = "stockShort"
	}
	return errors.New(file + ": " + words.Say("instance.trouble."+key, with))
}

// what names the piece or sheet that trouble is about.
func what(i project.Instance, t *cutting.Trouble) string {
	switch {
	case t.Piece >= 0:
		return words.Say("instance.piece", words.With{"id": i.Job.Pieces[t.Piece].ID})
	case t.Sheet >= 0 && t.Sheet < len(i.Job.Sheets):
		return words.Say("instance.sheet", words.With{"id": sheetID(i.Job, t.Sheet)})
	}
	return words.Say("instance.whole")
}

// scale turns the planner's whole numbers back into the instance's unit.
type scale struct {
	project.Instance
	sizes map[int64]json.Number // written so far: a sheet of small pieces repeats few of them
}

func newScale(i project.Instance) scale { return scale{i, map[int64]json.Number{}} }

func (s scale) size(n int64) json.Number {
	size, known := s.sizes[n]
	if !known {
		size = decimal(n, s.Unit)
		s.sizes[n] = size
	}
	return size
}

func (s scale) say(n int64) string { return string(s.size(n)) }

// decimal is n units, exactly.
func decimal(n int64, unit *big.Rat) json.Number {
	r := new(big.Rat).Mul(new(big.Rat).SetInt64(n), unit)
	digits, _ := r.FloatPrec()
	return json.Number(r.FloatString(digits))
}

// sheetID is a sheet's own id, or its number in the instance.
func sheetID(job cutting.Job, sheet int) string {
	if id := job.Sheets[sheet].ID; id != "" {
		return id
	}
	return strconv.Itoa(sheet + 1)
}
