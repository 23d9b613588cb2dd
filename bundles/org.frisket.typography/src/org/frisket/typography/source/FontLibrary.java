package org.frisket.typography.source;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;

import org.frisket.geometry.Monitor;
import org.frisket.typography.FontFace;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.face.FontNames;
import org.frisket.typography.internal.source.FontFolders;
import org.frisket.typography.internal.source.Likeness;

/**
 * Finds fonts in several sources, which are asked in their order; a later one is not asked once an earlier one has the
 * font.
 */
public final class FontLibrary {

	private static final int MOST_SUGGESTIONS = 3;

	private final List<FontSource> sources;

	public FontLibrary(List<? extends FontSource> sources) {
		this.sources = List.copyOf(sources);
	}

	/** The fonts that come with the program first, then those of the system. */
	public static FontLibrary standard() {
		return new FontLibrary(List.of(new EmbeddedFontSource(), new SystemFontSource()));
	}

	public List<FontSource> sources() {
		return sources;
	}

	/** @see #find(String, Monitor) */
	public FontFace find(String nameOrPath) throws UnreadableFontException, UnknownFontException {
		return find(nameOrPath, Monitor.NONE);
	}

	/**
	 * @param nameOrPath a font file, if there is one of that name or if it looks like one (with a folder in it, or
	 *                   with a font file's ending, which a source may have in one of its folders); else a family, a
	 *                   family and a style, a full name or a PostScript name, in capitals or not. Of a family alone
	 *                   the plain style is taken.
	 */
	public FontFace find(String nameOrPath, Monitor monitor) throws UnreadableFontException, UnknownFontException {
		String wanted = nameOrPath.strip();
		Optional<Path> file = file(wanted);
		if (file.isPresent()) {
			boolean isElsewhere = file.get().getNameCount() == 1 && !file.get().isAbsolute() && !Files.exists(file.get());
			Optional<FontEntry> listed = isElsewhere ? byFileName(wanted, monitor) : Optional.empty();
			return listed.isPresent() ? listed.get().open() : FontFace.read(file.get());
		}
		for (FontSource source : sources) {
			Optional<FontEntry> found = find(wanted, source.fonts(monitor));
			if (found.isPresent()) {
				return found.get().open();
			}
		}
		throw new UnknownFontException(wanted, suggestions(wanted, monitor));
	}

	/** A file of just this name in a folder of one of the sources. */
	private Optional<FontEntry> byFileName(String name, Monitor monitor) {
		for (FontSource source : sources) {
			for (FontEntry font : source.fonts(monitor)) {
				if (font.file().isPresent() && font.instance().isEmpty() && font.index() == 0
						&& font.file().get().path().endsWith(name)) {
					return Optional.of(font);
				}
			}
		}
		return Optional.empty();
	}

	private static Optional<Path> file(String wanted) throws UnreadableFontException {
		boolean looksLikeFile = wanted.indexOf('/') >= 0 || wanted.indexOf('\\') >= 0
				|| FontFolders.looksLikeFont(wanted);
		try {
			Path path = Path.of(wanted);
			return looksLikeFile || !wanted.isEmpty() && Files.isRegularFile(path) ? Optional.of(path)
					: Optional.empty();
		} catch (InvalidPathException notAPath) {
			if (looksLikeFile) {
				throw new UnreadableFontException(wanted, "that is no file name here");
			}
			return Optional.empty();
		}
	}

	private static Optional<FontEntry> find(String wanted, List<FontEntry> fonts) {
		Optional<FontEntry> plain = fonts.stream().filter(f -> f.family().equalsIgnoreCase(wanted))
				.min(Comparator.comparing(f -> !f.names().isPlain()));
		return plain.isPresent() ? plain : fonts.stream().filter(f -> isCalled(f.names(), wanted)).findFirst();
	}

	private static boolean isCalled(FontNames names, String wanted) {
		return wanted.equalsIgnoreCase(names.family() + " " + names.style())
				|| wanted.equalsIgnoreCase(names.fullName())
				|| !wanted.isEmpty() && wanted.equalsIgnoreCase(names.postScriptName());
	}

	private List<String> suggestions(String wanted, Monitor monitor) {
		TreeSet<String> families = new TreeSet<>();
		for (FontSource source : sources) {
			source.fonts(monitor).forEach(f -> families.add(f.family()));
		}
		String lower = wanted.toLowerCase(Locale.ROOT);
		return families.stream().filter(f -> Likeness.areAlike(lower, f.toLowerCase(Locale.ROOT)))
				.sorted(Comparator.comparingInt(f -> Likeness.distance(lower, f.toLowerCase(Locale.ROOT))))
				.limit(MOST_SUGGESTIONS).toList();
	}

	/** The one of a file's faces that goes by the name, the plain one if there is no style. */
	static Optional<FontEntry> named(List<FontEntry> faces, String family, String style) {
		return faces.stream().filter(f -> f.family().equals(family))
				.filter(f -> style == null ? f.names().isPlain() : f.style().equals(style)).findFirst();
	}

	/**
	 * The font whose file has the given SHA-256, whatever its name has become. Files that a source keeps by their
	 * content come first; after them every file may have to be read.
	 *
	 * @param sha256 in hexadecimal
	 * @param family of the face, for files that hold several; may be null
	 * @param style  of the face; null for the plain one
	 */
	public FontFace findByDigest(String sha256, String family, String style, Monitor monitor)
			throws UnreadableFontException, UnknownFontException {
		for (FontSource source : sources) {
			List<FontEntry> kept = source.kept(sha256).stream().filter(font -> hasDigest(font, sha256)).toList();
			if (!kept.isEmpty()) {
				return named(kept, family, style).orElse(kept.get(0)).open();
			}
		}
		for (FontSource source : sources) {
			for (FontEntry font : source.fonts(monitor)) {
				monitor.check();
				if (hasDigest(font, sha256)) {
					List<FontEntry> faces = source.fonts(monitor).stream()
							.filter(other -> other.place().equals(font.place())).toList();
					return named(faces, family, style).orElse(font).open();
				}
			}
		}
		throw new UnknownFontException("SHA-256 " + sha256, List.of());
	}

	/** @see #findByDigest(String, String, String, Monitor) */
	public FontFace findByDigest(String sha256, Monitor monitor) throws UnreadableFontException, UnknownFontException {
		return findByDigest(sha256, null, null, monitor);
	}

	/** @see #findByDigest(String, String, String, Monitor) */
	public FontFace findByDigest(String sha256) throws UnreadableFontException, UnknownFontException {
		return findByDigest(sha256, Monitor.NONE);
	}

	private static boolean hasDigest(FontEntry font, String sha256) {
		try {
			return font.digest().equalsIgnoreCase(sha256);
		} catch (IOException unreadable) {
			// gone since it was listed: not the one
			return false;
		}
	}
}
