package org.frisket.prepare.tests;

import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.typography.face.FontNames;
import org.frisket.typography.source.EmbeddedFontSource;
import org.frisket.typography.source.FontEntry;
import org.frisket.typography.source.FontSource;

/** A source from another bundle: a font of the product under a name of its own. */
public final class OneFontSource implements FontSource {

	@Override
	public String id() {
		return "one";
	}

	@Override
	public List<FontEntry> fonts(Monitor monitor) {
		FontEntry known = new EmbeddedFontSource().fonts(monitor).get(0);
		return List.of(new FontEntry(new FontNames("Quayside", "Regular", "Quayside Regular", ""), known.place(),
				known::open, known::digest));
	}
}
