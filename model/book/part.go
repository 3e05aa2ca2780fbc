package book

// PartID names a part of the book; drawings, findings and files use it.
type PartID string

// The parts of a book. Book, Block and Joint are not cut: they are what findings
// and dimensions speak of. With a quarter covering, PartCovering is the spine
// cloth and PartSide what lies on each board.
const (
	PartBook      PartID = "book"
	PartBlock     PartID = "block"
	PartFolio     PartID = "folio"
	PartInterleaf PartID = "interleaf"
	PartLiner     PartID = "liner"
	PartEndpaper  PartID = "endpaper"
	PartTape      PartID = "tape"
	PartMull      PartID = "mull"
	PartBoard     PartID = "board"
	PartSpine     PartID = "spine-piece"
	PartJoint     PartID = "joint"
	PartCovering  PartID = "covering"
	PartSide      PartID = "side"
	PartRibbon    PartID = "ribbon"
	PartElastic   PartID = "elastic"
	PartLabel     PartID = "label"
	PartBand      PartID = "band"
)
