package org.frisket.orders.work.again;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.model.FontRef;
import org.frisket.model.Job;
import org.frisket.prepare.Severity;
import org.frisket.prepare.fonts.JobFonts;
import org.frisket.studio.StudioFolder;
import org.frisket.typography.FontFace;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.source.FontEntry;
import org.frisket.typography.source.FontLibrary;
import org.frisket.typography.source.UnknownFontException;

/** What has become of the fonts a job was made with. What the studio keeps of them is used, whatever else is at hand. */
final class FontNotes {

	/** As much of a digest as tells two apart for people. */
	private static final int SHORT = 12;

	private final StudioFolder studio;
	private final FontLibrary fonts;

	FontNotes(StudioFolder studio, FontLibrary fonts) {
		this.studio = studio;
		this.fonts = fonts;
	}

	List<Note> of(Job job) {
		List<Note> notes = new ArrayList<>();
		for (FontRef font : JobFonts.references(job)) {
			note(font).ifPresent(notes::add);
		}
		return notes;
	}

	private Optional<Note> note(FontRef font) {
		String name = name(font);
		String was = brief(font.getDigest());
		boolean whole = isKeptWhole(font.getDigest());
		Optional<String> named = digestOf(name);
		boolean same = named.filter(font.getDigest()::equals).isPresent();
		if (whole || same || isElsewhere(font)) {
			return named.filter(digest -> !digest.equals(font.getDigest()))
					.map(digest -> new Note(Severity.NOTE, NLS.bind(Messages.FontNotes_font, name), was,
							brief(digest), Messages.FontNotes_keptUsed))
					.or(() -> damaged(font, name, was, whole));
		}
		return Optional.of(new Note(Severity.BLOCKING, NLS.bind(Messages.FontNotes_font, name), was,
				named.map(FontNotes::brief).orElse(Messages.FontNotes_gone),
				NLS.bind(named.isPresent() ? Messages.FontNotes_otherCure : Messages.FontNotes_goneCure, studio.fonts())));
	}

	/** Kept, but not with the content its name says; the same font is at hand elsewhere. */
	private Optional<Note> damaged(FontRef font, String name, String was, boolean whole) {
		return studio.keptFonts().has(font.getDigest()) && !whole
				? Optional.of(new Note(Severity.CAUTION, NLS.bind(Messages.FontNotes_font, name), was,
						Messages.FontNotes_damaged, NLS.bind(Messages.FontNotes_damagedCure, studio.keptFonts().folder())))
				: Optional.empty();
	}

	private boolean isKeptWhole(String digest) {
		for (FontEntry face : studio.keptFonts().faces(digest)) {
			try {
				if (face.digest().equals(digest)) {
					return true;
				}
			} catch (IOException unreadable) {
				// as if it were not kept
			}
		}
		return false;
	}

	private Optional<String> digestOf(String name) {
		try {
			return Optional.of(fonts.find(name)).map(FontFace::digest);
		} catch (UnknownFontException | UnreadableFontException e) {
			return Optional.empty();
		}
	}

	/** Under another name, perhaps. */
	private boolean isElsewhere(FontRef font) {
		try {
			fonts.findByDigest(font.getDigest(), font.getName(), font.getStyle(), Monitor.NONE);
			return true;
		} catch (UnknownFontException | UnreadableFontException e) {
			return false;
		}
	}

	private static String name(FontRef font) {
		return font.getStyle() == null ? font.getName() : font.getName() + ' ' + font.getStyle();
	}

	private static String brief(String digest) {
		return NLS.bind(Messages.FontNotes_content, digest.substring(0, Math.min(SHORT, digest.length())));
	}
}
