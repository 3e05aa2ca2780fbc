//go:build window

package main

import (
	"encoding/binary"
	"fmt"
	"hash/maphash"
	"image"
	"io"
	"net"
	"os"
	"strings"
	"testing"
)

// probe asks the X server for pixels over a connection of its own, in well
// under a millisecond for a small frame: often enough to count pictures, which
// a program started for each look is not. It speaks the two requests it needs
// of the X Window System Protocol, version 11, chapters 8 and 10 (GetImage).
type probe struct {
	server net.Conn
	seed   maphash.Seed
}

func newProbe(b *testing.B) *probe {
	b.Helper()
	number, _, _ := strings.Cut(strings.TrimPrefix(os.Getenv("DISPLAY"), ":"), ".")
	server, err := net.Dial("unix", "/tmp/.X11-unix/X"+number)
	if err != nil {
		b.Fatalf("no display %q on this machine: %v", os.Getenv("DISPLAY"), err)
	}
	b.Cleanup(func() { server.Close() })
	hello := make([]byte, 12) // little-endian, version 11.0, no authorization
	hello[0], hello[2] = 'l', 11
	answer := make([]byte, 8)
	if _, err := server.Write(hello); err != nil {
		b.Fatal(err)
	}
	if _, err := io.ReadFull(server, answer); err != nil {
		b.Fatal(err)
	}
	rest := make([]byte, 4*int(binary.LittleEndian.Uint16(answer[6:])))
	if _, err := io.ReadFull(server, rest); err != nil {
		b.Fatal(err)
	}
	if answer[0] != 1 {
		b.Fatalf("the display refuses: %q", rest)
	}
	return &probe{server: server, seed: maphash.MakeSeed()}
}

// pixels is a frame of a window, four bytes a pixel; false while the window is
// not on the screen.
func (p *probe) pixels(window uint32, frame image.Rectangle) ([]byte, bool, error) {
	const getImage, zPixmap, allPlanes = 73, 2, 0xFFFFFFFF
	ask := []byte{getImage, zPixmap}
	ask = binary.LittleEndian.AppendUint16(ask, 5) // length in words
	ask = binary.LittleEndian.AppendUint32(ask, window)
	for _, n := range []int{frame.Min.X, frame.Min.Y, frame.Dx(), frame.Dy()} {
		ask = binary.LittleEndian.AppendUint16(ask, uint16(n))
	}
	ask = binary.LittleEndian.AppendUint32(ask, allPlanes)
	if _, err := p.server.Write(ask); err != nil {
		return nil, false, err
	}
	head := make([]byte, 32)
	if _, err := io.ReadFull(p.server, head); err != nil {
		return nil, false, err
	}
	switch head[0] {
	case 0: // an error, such as BadMatch before the window is mapped
		return nil, false, nil
	case 1:
		data := make([]byte, 4*int(binary.LittleEndian.Uint32(head[4:])))
		_, err := io.ReadFull(p.server, data)
		return data, true, err
	}
	return nil, false, fmt.Errorf("the display answers with %d", head[0])
}

// look is what pixels gives, for a server that must not fail.
func (p *probe) look(b *testing.B, window uint32, frame image.Rectangle) []byte {
	b.Helper()
	data, _, err := p.pixels(window, frame)
	if err != nil {
		b.Fatal(err)
	}
	return data
}

// sum tells pictures apart.
func (p *probe) sum(pixels []byte) uint64 { return maphash.Bytes(p.seed, pixels) }

// tints counts the colours of a frame, up to enough.
func tints(pixels []byte, enough int) int {
	seen := map[uint32]bool{}
	for i := 0; i+4 <= len(pixels) && len(seen) < enough; i += 4 {
		seen[binary.LittleEndian.Uint32(pixels[i:])&0xFFFFFF] = true
	}
	return len(seen)
}
