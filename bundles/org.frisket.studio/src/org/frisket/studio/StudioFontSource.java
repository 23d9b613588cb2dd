package org.frisket.studio;

import java.util.List;

import org.frisket.geometry.Monitor;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.source.FolderFontSource;
import org.frisket.typography.source.FontEntry;
import org.frisket.typography.source.FontSource;

/** The studio's own fonts, and behind them those its jobs were made with. Follows the studio to another folder. */
public final class StudioFontSource implements FontSource {

	private static final String ID = "studio";

	private StudioFolder studio;
	private FolderFontSource fonts;

	@Override
	public String id() {
		return ID;
	}

	@Override
	public List<FontEntry> fonts(Monitor monitor) {
		return source().fonts(monitor);
	}

	@Override
	public List<UnreadableFontException> broken(Monitor monitor) {
		return source().broken(monitor);
	}

	@Override
	public List<FontEntry> kept(String sha256) {
		return Studio.folder().keptFonts().faces(sha256);
	}

	private synchronized FolderFontSource source() {
		StudioFolder now = Studio.folder();
		if (!now.equals(studio)) {
			studio = now;
			fonts = new FolderFontSource(ID, now.fonts());
		}
		return fonts;
	}
}
