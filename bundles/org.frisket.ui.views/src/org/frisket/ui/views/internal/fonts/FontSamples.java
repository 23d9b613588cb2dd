package org.frisket.ui.views.internal.fonts;

import org.eclipse.swt.widgets.Display;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.source.FontEntry;

/** Words set in fonts, as the fonts' own outlines with capitals 1 high on a baseline at 0; made in the background. */
public final class FontSamples {

	private static final int KEPT = 600;
	private static final int WAITING = 48;

	private record Key(FontEntry font, String words) {
	}

	private final MadeLater<Key, Outline> made;

	/** @param changed run on the UI thread when there are more samples */
	public FontSamples(Display display, Runnable changed) {
		made = new MadeLater<>(Messages.FontSamples_job, KEPT, WAITING, FontSamples::outline, display, changed);
	}

	/** The words in a font; null while they are not made, empty if the font cannot be read or has none of them. */
	public Outline sample(FontEntry font, String words) {
		return made.get(new Key(font, words));
	}

	private static Outline outline(Key key, Monitor monitor) {
		try {
			return TextSetter.set(key.words(), key.font().open(), Setting.ofCapHeight(1), monitor).outline();
		} catch (UnreadableFontException e) {
			return Outline.EMPTY;
		}
	}

	/** Makes no more. */
	public void close() {
		made.close();
	}
}
