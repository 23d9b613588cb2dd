package org.frisket.prepare.fonts;

import java.util.Comparator;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

import org.eclipse.osgi.util.NLS;
import org.frisket.prepare.Figures;
import org.frisket.prepare.checks.Limits;
import org.frisket.typography.FontFace;
import org.frisket.typography.face.Embedding;

/**
 * What a list of fonts says of one of them, in the user's language.
 *
 * @param word        whether it can be cut, in a few words
 * @param facts       pieces, x-height and thinnest stroke in a line; empty if nothing was measured
 * @param smallest    the height of a capital H in mm from which on it cuts cleanly; empty if that is not known
 * @param xHeight     the height of a small x in mm as it would be set; empty if the font has none
 * @param licence     the first line of what the font says of its licence; empty if it says nothing
 * @param embedding   how it may be put into documents, in a few words; empty if the font was not read
 * @param terms       the same in full, with the caution that the licence decides; empty if the font was not read
 */
public record FontVerdict(Kind kind, String word, String facts, OptionalDouble smallest, OptionalDouble xHeight,
		String licence, String embedding, String terms) {

	/** What can be said of a font, the best first. */
	public enum Kind {
		CUTS, CAUTION, DRAW_ONLY,
		/** It cannot be read, lacks characters, or leaves no mark. */
		UNFIT
	}

	/** What cuts from the least height on comes first, what cannot be said last. */
	public static final Comparator<FontVerdict> FITTEST = Comparator.comparing(FontVerdict::kind)
			.thenComparingDouble(verdict -> verdict.smallest().orElse(Double.POSITIVE_INFINITY));

	/** The tallest small letters first, fonts without any last. */
	public static final Comparator<FontVerdict> TALLEST = Comparator
			.comparingDouble(verdict -> -verdict.xHeight().orElse(0));

	/** Tenths of a millimetre. */
	private static final double STEPS = 10;

	public FontVerdict {
		Objects.requireNonNull(kind);
		Objects.requireNonNull(word);
	}

	static FontVerdict unfit(String why) {
		return new FontVerdict(Kind.UNFIT, why, "", OptionalDouble.empty(), OptionalDouble.empty(), "", "", "");
	}

	static FontVerdict unfit(FontFace face, String why) {
		return of(face, Kind.UNFIT, why, "", OptionalDouble.empty(), OptionalDouble.empty());
	}

	static FontVerdict drawOnly(FontFace face, double height) {
		OptionalDouble x = xHeight(face, height);
		return of(face, Kind.DRAW_ONLY, Messages.FontVerdict_drawOnly,
				x.isEmpty() ? "" : NLS.bind(Messages.FontVerdict_xHeight, Figures.length(x.getAsDouble(), 1)),
				OptionalDouble.empty(), x);
	}

	/** @param grows whether everything in the wording grows with its height, so that the least height can be foretold */
	static FontVerdict measured(FontFace face, Fitness fitness, Limits limits, boolean grows) {
		OptionalDouble x = xHeight(face, fitness.height());
		String stroke = fitness.thinnestStroke().map(measure -> Figures.length(measure.value(), 2)).orElse("–");
		String facts = NLS.bind(
				fitness.pieces() == 1 ? Messages.FontVerdict_factsOfOne : Messages.FontVerdict_facts,
				new Object[] { fitness.pieces(), x.isEmpty() ? "–" : Figures.length(x.getAsDouble(), 1), stroke });
		if (fitness.cuts()) {
			return of(face, Kind.CUTS, Messages.FontVerdict_cuts, facts, fitness.smallestHeight(), x);
		}
		if (grows && fitness.smallestHeight().isPresent()) {
			double least = Math.ceil(fitness.smallestHeight().getAsDouble() * STEPS) / STEPS;
			return of(face, Kind.CAUTION, NLS.bind(Messages.FontVerdict_notBelow, Figures.length(least, 1)), facts,
					fitness.smallestHeight(), x);
		}
		boolean small = fitness.thinnestStroke().filter(m -> m.value() < limits.thinnestStroke()).isEmpty()
				&& fitness.smallestPiece().isPresent();
		String word = small
				? NLS.bind(Messages.FontVerdict_piece, Figures.length(fitness.smallestPiece().get().value(), 2))
				: NLS.bind(Messages.FontVerdict_stroke, stroke);
		return of(face, Kind.CAUTION, word, facts, OptionalDouble.empty(), x);
	}

	private static FontVerdict of(FontFace face, Kind kind, String word, String facts, OptionalDouble smallest,
			OptionalDouble xHeight) {
		Embedding embedding = face.embeddingTerms();
		String licence = Optional.of(face.licence()).filter(text -> !text.isBlank()).orElse(face.licenceAddress());
		return new FontVerdict(kind, word, facts, smallest, xHeight, licence.strip().lines().findFirst().orElse(""),
				words(embedding.permission()), embedding.words(Locale.getDefault()));
	}

	private static String words(Embedding.Permission permission) {
		return switch (permission) {
		case INSTALLABLE -> Messages.FontVerdict_installable;
		case EDITABLE -> Messages.FontVerdict_editable;
		case PREVIEW_AND_PRINT -> Messages.FontVerdict_previewAndPrint;
		case RESTRICTED -> Messages.FontVerdict_restricted;
		};
	}

	private static OptionalDouble xHeight(FontFace face, double height) {
		double x = face.xHeight();
		return x > 0 ? OptionalDouble.of(x / face.capHeight() * height) : OptionalDouble.empty();
	}

	/** What it says of documents and, last as it may be long, of the licence, in lines; the font's own words as they are. */
	public String small() {
		if (terms.isEmpty()) {
			return "";
		}
		return terms + "\n" + (licence.isEmpty() ? Messages.FontVerdict_noLicence : licence);
	}
}
