package org.frisket.prepare;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

import org.frisket.model.Element;
import org.frisket.model.FontRef;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.TextSpan;
import org.frisket.model.Wording;
import org.frisket.prepare.internal.ContentCache;
import org.frisket.prepare.internal.FontResolver;
import org.frisket.studio.KeptFonts;
import org.frisket.studio.StudioException;
import org.frisket.studio.StudioFolder;
import org.frisket.typography.FontFace;
import org.frisket.typography.FontLibrary;

/** The fonts a job is made with, and keeping them, so that a reorder years later is the same. */
public final class JobFonts {

	private static final int CACHED = 16;

	private JobFonts() {
	}

	/** What the job says about its fonts, each content once, in the order of the elements. */
	static List<FontRef> references(Job job) {
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
	 * Keeps the font files of a job in the studio's folder, which is made if it is missing. Costs next to nothing if
	 * they are kept already; else they are looked for, which may take as long as reading every font. A font that is not
	 * at hand any more, or not as the job knew it, is passed over: the job's findings speak of it.
	 *
	 * @return how many files were kept that were not before
	 * @throws StudioException if the folder cannot be used
	 * @throws IOException     if a file cannot be written
	 */
	public static int keep(Job job, FontLibrary library, StudioFolder studio) throws IOException {
		KeptFonts kept = studio.keptFonts();
		List<FontRef> missing = references(job).stream().filter(font -> !kept.has(font.getDigest())).toList();
		if (missing.isEmpty()) {
			return 0;
		}
		studio.openForWriting();
		FontResolver resolver = new FontResolver(library, new ContentCache(CACHED));
		int count = 0;
		for (FontRef font : missing) {
			FontFace face = resolver.resolve(font).face().filter(f -> f.digest().equals(font.getDigest())).orElse(null);
			if (face != null) {
				kept.keep(face);
				count++;
			}
		}
		return count;
	}
}
