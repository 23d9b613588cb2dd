package org.frisket.prepare.fonts;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.frisket.model.Element;
import org.frisket.model.FontRef;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.TextSpan;
import org.frisket.model.WholeFile;
import org.frisket.model.Wording;
import org.frisket.prepare.internal.ContentCache;
import org.frisket.prepare.internal.FontResolver;
import org.frisket.studio.KeptFonts;
import org.frisket.studio.StudioException;
import org.frisket.studio.StudioFolder;
import org.frisket.typography.FontFace;
import org.frisket.typography.source.FontLibrary;

/** The fonts a job is made with, and keeping them, so that a reorder years later is the same. */
public final class JobFonts {

	private static final int CACHED = 16;

	private JobFonts() {
	}

	/** What the job says about its fonts, each content once, in the order of the elements. */
	public static List<FontRef> references(Job job) {
		Map<String, FontRef> references = new LinkedHashMap<>();
		Jobs.elements(job).stream().flatMap(JobFonts::references).filter(font -> font != null && font.getDigest() != null)
				.forEach(font -> references.putIfAbsent(font.getDigest(), font));
		return List.copyOf(references.values());
	}

	private static Stream<FontRef> references(Element element) {
		return element instanceof Wording wording
				? Stream.concat(Stream.of(wording).map(Wording::getFont), wording.getSpans().stream().map(TextSpan::getFont))
				: Stream.empty();
	}

	/**
	 * What became of the fonts that were not kept before.
	 *
	 * @param count  of files that are kept from now on
	 * @param failed fonts that could not be kept, in the order of the job
	 */
	public record Kept(int count, List<NotKept> failed) {

		public Kept {
			failed = List.copyOf(failed);
		}
	}

	/**
	 * A font that could not be kept.
	 *
	 * @param font   its name, for people
	 * @param digest of its file
	 * @param folder where it was to be kept
	 * @param reason for people
	 */
	public record NotKept(String font, String digest, Path folder, String reason) {
	}

	/**
	 * Keeps the font files of a job in the studio's folder, which is made if it is missing. Costs next to nothing if
	 * they are kept already; else they are looked for, which may take as long as reading every font. A font that is not
	 * at hand any more, or not as the job knew it, is passed over: the job's findings speak of it. One that cannot be
	 * written does not keep the others from it.
	 */
	public static Kept keep(Job job, FontLibrary library, StudioFolder studio) {
		KeptFonts kept = studio.keptFonts();
		List<FontRef> missing = references(job).stream().filter(font -> !kept.has(font.getDigest())).toList();
		if (missing.isEmpty()) {
			return new Kept(0, List.of());
		}
		try {
			studio.openForWriting();
		} catch (StudioException e) {
			return new Kept(0, missing.stream().map(font -> notKept(font, studio.path(), e.reason())).toList());
		}
		FontResolver resolver = new FontResolver(library, new ContentCache(CACHED));
		int count = 0;
		List<NotKept> failed = new ArrayList<>();
		for (FontRef font : missing) {
			FontFace face = resolver.resolve(font).face().filter(f -> f.digest().equals(font.getDigest())).orElse(null);
			if (face != null) {
				try {
					kept.keep(face);
					count++;
				} catch (IOException e) {
					failed.add(notKept(font, kept.folder(), WholeFile.reason(e)));
				}
			}
		}
		return new Kept(count, failed);
	}

	private static NotKept notKept(FontRef font, Path folder, String reason) {
		String name = font.getStyle() == null ? font.getName() : font.getName() + " " + font.getStyle();
		return new NotKept(name, font.getDigest(), folder, reason);
	}
}
