package book

// PartID names a part of the book; drawings, findings and files use it.
type PartID string

// The parts of a book on a pleated liner. Block, Joint and Case are not cut:
// they are what findings and dimensions speak of.
const (
	PartBook      PartID = "book"
	PartBlock     PartID = "block"
	PartFolio     PartID = "folio"
	PartInterleaf PartID = "interleaf"
	PartLiner     PartID = "liner"
	PartBoard     PartID = "board"
	PartSpine     PartID = "spine-piece"
	PartJoint     PartID = "joint"
	PartCovering  PartID = "covering"
)
