package org.frisket.prepare.fonts;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.prepare.checks.Limits;
import org.frisket.typography.FontFace;
import org.frisket.typography.MissingGlyph;
import org.frisket.typography.SetText;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;
import org.frisket.typography.UnreadableFontException;
import org.frisket.typography.face.AxisSettings;
import org.frisket.typography.source.FontEntry;
import org.frisket.typography.source.FontLibrary;
import org.frisket.typography.source.FontSource;
import org.frisket.typography.source.UnknownFontException;

/** Which fonts a text can be cut in. */
public final class FontFitness {

	/**
	 * A font and how it fares.
	 *
	 * @param file where it lies, for people
	 */
	public record Font(String name, String file, Fitness fitness) {
	}

	/**
	 * @param fonts   the fittest first: by the least height at which they cut cleanly
	 * @param leftOut what cannot be said of the others, one sentence each
	 */
	public record Ranking(List<Font> fonts, List<String> leftOut) {
	}

	private final FontLibrary library;
	private final String text;
	private final double height;
	private final Tolerance tolerance;

	/** @param height of a capital H in mm */
	public FontFitness(FontLibrary library, String text, double height, Tolerance tolerance) {
		this.library = library;
		this.text = text;
		this.height = height;
		this.tolerance = tolerance;
	}

	/**
	 * All fonts of the library that can be read and have the characters; one that lies at several places once, where the
	 * library has it first.
	 */
	public Ranking ofAll(Limits limits, Monitor monitor) {
		List<Outcome> outcomes = entries(monitor).parallelStream().map(entry -> {
			try {
				return outcome(entry.open(), entry.place(), limits, monitor);
			} catch (UnreadableFontException e) {
				return Outcome.leftOut(e.getMessage());
			}
		}).toList();
		return ranking(outcomes);
	}

	/** @param fonts files, or names as a library takes them */
	public Ranking of(List<String> fonts, Limits limits, Monitor monitor)
			throws UnknownFontException, UnreadableFontException {
		List<Outcome> outcomes = new ArrayList<>();
		for (String font : fonts) {
			FontFace face = library.find(font, monitor);
			outcomes.add(outcome(face, place(face, monitor), limits, monitor));
		}
		return ranking(outcomes);
	}

	/** @param same tells fonts of the same content, wherever they lie */
	private record Outcome(Optional<Font> font, Object same, String reason) {

		static Outcome leftOut(String reason) {
			return new Outcome(Optional.empty(), null, reason);
		}
	}

	/** @param settings of a variable font */
	private record Content(String digest, int index, AxisSettings settings) {
	}

	private List<FontEntry> entries(Monitor monitor) {
		List<FontEntry> entries = new ArrayList<>();
		for (FontSource source : library.sources()) {
			entries.addAll(source.fonts(monitor));
		}
		return entries;
	}

	private String place(FontFace face, Monitor monitor) {
		return face.source().map(Object::toString).orElseGet(() -> entries(monitor).stream()
				.filter(entry -> entry.family().equals(face.family()) && entry.style().equals(face.style()))
				.map(FontEntry::place).findFirst().orElse(""));
	}

	private Outcome outcome(FontFace face, String place, Limits limits, Monitor monitor) {
		if (face.isStroke()) {
			return Outcome.leftOut("%s is a font of single lines, which are not cut".formatted(face.fullName()));
		}
		// before anything is set: most fonts lack the characters of another script
		int lacking = text.codePoints().filter(c -> !Character.isWhitespace(c) && !face.covers(c)).findFirst().orElse(-1);
		if (lacking >= 0) {
			return Outcome.leftOut(
					"%s has no glyph for “%s”".formatted(face.fullName(), Character.toString(lacking)));
		}
		SetText set = TextSetter.set(text, face, Setting.ofCapHeight(height), monitor);
		Optional<MissingGlyph> missing = set.missing().stream().findFirst();
		if (missing.isPresent()) {
			return Outcome.leftOut(
					"%s has no glyph for %s".formatted(face.fullName(), missing.get().label()));
		}
		Fitness fitness = Fitness.of(set, limits, tolerance, monitor);
		return fitness.pieces() == 0
				? Outcome.leftOut("%s leaves no mark for it".formatted(face.fullName()))
				: new Outcome(Optional.of(new Font(face.fullName(), place, fitness)),
						new Content(face.digest(), face.index(), face.settings()), "");
	}

	private static Ranking ranking(List<Outcome> outcomes) {
		Comparator<Font> fittest = Comparator.comparingDouble(
				font -> font.fitness().smallestHeight().orElse(Double.POSITIVE_INFINITY));
		Map<Object, Outcome> each = new LinkedHashMap<>();
		outcomes.stream().filter(outcome -> outcome.font().isPresent())
				.forEach(outcome -> each.putIfAbsent(outcome.same(), outcome));
		List<Font> fonts = each.values().stream().flatMap(outcome -> outcome.font().stream())
				.sorted(fittest.thenComparing(Font::name).thenComparing(Font::file)).toList();
		return new Ranking(fonts,
				outcomes.stream().filter(outcome -> outcome.font().isEmpty()).map(Outcome::reason).toList());
	}
}
