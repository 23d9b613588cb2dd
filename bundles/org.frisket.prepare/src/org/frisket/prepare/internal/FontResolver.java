package org.frisket.prepare.internal;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.model.FontRef;
import org.frisket.prepare.Placeholder;
import org.frisket.prepare.Severity;
import org.frisket.typography.FontFace;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.source.FontFile;
import org.frisket.typography.source.FontLibrary;
import org.frisket.typography.source.UnknownFontException;

/** Finds the font a wording was made with: by its content if possible, else by the file it came from, else by name. */
public final class FontResolver {

	/** The font, if there is one, and what is to be said about it. */
	public record Resolved(Optional<FontFace> face, List<Shape.Remark> remarks) {
	}

	private final FontLibrary fonts;
	private final ContentCache cache;

	public FontResolver(FontLibrary fonts, ContentCache cache) {
		this.fonts = fonts;
		this.cache = cache;
	}

	public Resolved resolve(FontRef reference) {
		if (reference == null) {
			return new Resolved(Optional.empty(), List.of(new Shape.Remark(Placeholder.FONT_MISSING,
					Severity.BLOCKING, Point.ORIGIN, Messages.FontResolver_none,
					Messages.FontResolver_noneCure)));
		}
		record Key(String name, String style, String digest, String file) {
		}
		Key key = new Key(reference.getName(), reference.getStyle(), reference.getDigest(), reference.getFile());
		return cache.get(key, () -> find(reference));
	}

	private Resolved find(FontRef reference) {
		List<String> reasons = new ArrayList<>();
		Optional<FontFace> face = fromFile(reference, reasons);
		if (face.isEmpty() || !isSame(face.get(), reference)) {
			Optional<FontFace> named = byName(reference, reasons);
			if (named.isPresent() && (face.isEmpty() || isSame(named.get(), reference))) {
				face = named;
			}
		}
		if (face.isPresent() && isSame(face.get(), reference)) {
			return new Resolved(face, List.of());
		}
		// the dearest way last: it reads every font there is
		Optional<FontFace> renamed = byDigest(reference);
		if (renamed.isPresent()) {
			return new Resolved(renamed, List.of());
		}
		return new Resolved(face, List.of(face.map(FontResolver::differs).orElseGet(() -> missing(reference, reasons))));
	}

	private static Shape.Remark differs(FontFace face) {
		return new Shape.Remark("font-differs", Severity.CAUTION, Point.ORIGIN,
				NLS.bind(Messages.FontResolver_differs, face.fullName()), Messages.FontResolver_differsCure);
	}

	private static Shape.Remark missing(FontRef reference, List<String> reasons) {
		return new Shape.Remark(Placeholder.FONT_MISSING, Severity.BLOCKING, Point.ORIGIN,
				reasons.isEmpty() ? NLS.bind(Messages.FontResolver_missing, reference.getName())
						: NLS.bind(Messages.FontResolver_missingBecause, reference.getName(), String.join("; ", reasons)),
				Messages.FontResolver_missingCure);
	}

	private static boolean isSame(FontFace face, FontRef reference) {
		return reference.getDigest() == null || face.digest().equals(reference.getDigest());
	}

	private static Optional<FontFace> fromFile(FontRef reference, List<String> reasons) {
		if (reference.getFile() == null) {
			return Optional.empty();
		}
		try {
			Path file = Path.of(reference.getFile());
			return Files.isRegularFile(file)
					? Optional.of(FontFile.read(file, reference.getName(), reference.getStyle()))
					: Optional.empty();
		} catch (InvalidPathException | UnreadableFontException e) {
			reasons.add(e.getMessage());
			return Optional.empty();
		}
	}

	private Optional<FontFace> byDigest(FontRef reference) {
		if (reference.getDigest() == null) {
			return Optional.empty();
		}
		try {
			return Optional.of(fonts.findByDigest(reference.getDigest(), reference.getName(), reference.getStyle(),
					Monitor.NONE));
		} catch (UnknownFontException | UnreadableFontException e) {
			return Optional.empty();
		}
	}

	private Optional<FontFace> byName(FontRef reference, List<String> reasons) {
		String name = reference.getStyle() == null ? reference.getName()
				: reference.getName() + " " + reference.getStyle();
		try {
			return Optional.of(fonts.find(name));
		} catch (UnknownFontException e) {
			return Optional.empty();
		} catch (UnreadableFontException e) {
			reasons.add(e.getMessage());
			return Optional.empty();
		}
	}
}
