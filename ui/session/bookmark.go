package session

// Bookmark keeps all that can be undone as it stands, and the steps that led
// there. What it returns puts it back; it does nothing once another project has
// taken this one's place. What has been saved meanwhile stays saved.
func (s *Session) Bookmark() (back func()) {
	here, steps, begun := s.state(), s.steps.Clone(), s.begun
	return func() {
		if s.begun != begun {
			return
		}
		s.steps, s.moving, s.latest = steps, "", Change{}
		s.become(here)
	}
}
