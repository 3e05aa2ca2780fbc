package project

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"grainwise/model/measure"
)

// An offer is kept with the project, and a project without one has none in its file.
func TestOfferIsKept(t *testing.T) {
	p := Demo()
	if data, err := p.Encode(); err != nil || strings.Contains(string(data), `"offer"`) {
		t.Fatalf("nothing offered, and yet: %v", err)
	}
	p.Offer = Offer{Title: "Low Water", Media: "pencil, ink", Price: measure.Money{Minor: 5800, Currency: "EUR"}, Ready: measure.Date{Year: 2027, Month: 3, Day: 14}}
	data, err := p.Encode()
	if err != nil {
		t.Fatal(err)
	}
	q, err := Decode(data, "offer")
	if err != nil || q.Offer != p.Offer || !q.Equal(p) {
		t.Errorf("%+v, %v", q.Offer, err)
	}
	p.Offer.Media = ""
	if q.Equal(p) {
		t.Error("another offer is the same project")
	}
}

func TestBadOffers(t *testing.T) {
	data, err := Demo().Encode()
	if err != nil {
		t.Fatal(err)
	}
	for offer, says := range map[string]string{
		`{"price": "58"}`:                              "amount",
		`{"ready": "2027-02-30"}`:                      "day",
		`{"media": "a\nb"}`:                            "media",
		`{"title": "` + strings.Repeat("x", 81) + `"}`: "at most 80",
		`{"cost": "58.00 EUR"}`:                        "cost",
		`["58.00 EUR"]`:                                "offer",
	} {
		bad := strings.Replace(string(data), "\n  \"notes\"", "\n  \"offer\": "+offer+", \"notes\"", 1)
		if _, err := Decode([]byte(bad), "bad"); err == nil || !strings.Contains(err.Error(), says) {
			t.Errorf("%s: %v", offer, err)
		}
	}
}

// How a studio shows itself is kept with it; a picture that is none is refused by
// its place, and what was in the file stays.
func TestStudioShowing(t *testing.T) {
	file := StudioIn(t.TempDir())
	want := Studio{Showing: Showing{Name: "Curlew Slack Bindery", Line: "over the boat-shed", Logo: []byte("\x89PNG\r\n\x1a\nrest")}}
	if err := file.Write(want); err != nil {
		t.Fatal(err)
	}
	if got, err := file.Read(); err != nil || !got.Equal(want) {
		t.Errorf("%+v, %v", got, err)
	}
	if again := want; again.Equal(Studio{}) {
		t.Error("a studio that shows itself is the empty one")
	}
	for key, value := range map[string]string{"logo": `"bm8gcGljdHVyZQ=="`, "name": `7`, "line": `"a\nb"`} {
		path := filepath.Join(t.TempDir(), "studio.json")
		text := `{"format":"grainwise-studio","version":1,"tools":{},"showing":{"` + key + `":` + value + `}}`
		if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
		_, err := OpenStudio(path)
		if err == nil || !strings.Contains(err.Error(), key) {
			t.Errorf("%s: %v", key, err)
		}
	}
}
