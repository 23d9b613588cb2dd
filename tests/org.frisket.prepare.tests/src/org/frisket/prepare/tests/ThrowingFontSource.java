package org.frisket.prepare.tests;

import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.typography.source.FontEntry;
import org.frisket.typography.source.FontSource;

/** A source from another bundle that fails. */
public final class ThrowingFontSource implements FontSource {

	@Override
	public String id() {
		return "throwing";
	}

	@Override
	public List<FontEntry> fonts(Monitor monitor) {
		throw new IllegalStateException("the shelf fell down");
	}
}
