package org.frisket.prepare.internal.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.CleanResult;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.model.Flow;
import org.frisket.model.PenStyle;
import org.frisket.model.Wording;
import org.frisket.prepare.Severity;
import org.frisket.prepare.Uncleaned;
import org.frisket.prepare.internal.Shape;
import org.frisket.prepare.wording.CaretPlace;
import org.frisket.typography.FontFace;
import org.frisket.typography.MissingGlyph;

/** A wording to one clean region, or to the lines that a pen draws of it. */
public final class WordingStep {

	private WordingStep() {
	}

	/** @param letters that have an inside, held; asked for once */
	public static Shape shape(WordingSource source, WordingText text, Supplier<HeldLetters> letters,
			Tolerance tolerance, Monitor monitor) {
		return made(source, text, letters, tolerance, monitor).withXHeight(LetterHeights.least(source, text.set()));
	}

	private static Shape made(WordingSource source, WordingText text, Supplier<HeldLetters> letters, Tolerance tolerance,
			Monitor monitor) {
		Wording wording = source.wording();
		List<Shape.Remark> remarks = new ArrayList<>(source.remarks());
		for (MissingGlyph missing : text.placed().missing()) {
			remarks.add(missing(missing, source.face()));
		}
		remarks.addAll(text.remarks());
		HeldLetters held = letters.get();
		remarks.addAll(held.remarks());
		if (isToHold(wording)) {
			boolean wholeWords = wording.isJoined() || !wording.getBars().isEmpty();
			for (Words.LoosePiece loose : Words.loosePieces(text.outlined(), held.region(), wholeWords)) {
				remarks.add(loosePiece(loose));
			}
		}
		Uncleaned uncleaned = new Uncleaned(text.placed().outline(), held.clean().repairs(), Transform.IDENTITY);
		if (!text.strokes().isEmpty()) {
			return StrokeLetters.shape(text, held.region(), uncleaned, remarks, tolerance, monitor);
		}
		if (wording.getPenStyle() == PenStyle.OUTLINE) {
			return new Shape(held.region(), List.of(), uncleaned, remarks);
		}
		return Shape.drawn(held.region(), PenLines.of(held.region(), wording, remarks, tolerance, monitor), uncleaned,
				remarks);
	}

	/** The letters that have an inside, with all that holds them. @param memory of what became of letters before */
	public static HeldLetters held(WordingSource source, WordingText text, Memory memory, Tolerance tolerance,
			Monitor monitor) {
		CleanResult clean = new OutlineCleaner(memory).anywhere().clean(text.outlined().outline(), FillRule.NON_ZERO,
				tolerance, monitor);
		return LetterBody.of(clean, source.wording(), text, tolerance, monitor);
	}

	/** Whether its pieces were asked to hang together. What a stencil lets through is to fall out. */
	private static boolean isToHold(Wording wording) {
		return wording.getStencil() <= 0 && (wording.isJoined() || wording.isTieMarks() || !wording.getBars().isEmpty());
	}

	/** Where a caret stands before each character and after the last one, in the wording's own frame. */
	public static List<CaretPlace> carets(WordingSource source, WordingText text, Monitor monitor) {
		List<Point> straight = source.wording().getFlow() == Flow.STACKED ? StackCaretPlaces.of(text.set())
				: CaretPlaces.of(text.set(), monitor);
		return text.curve().map(curve -> curve.carets(text.set(), straight))
				.orElseGet(() -> straight.stream().map(CaretPlace::straight).toList());
	}

	private static Shape.Remark missing(MissingGlyph missing, FontFace face) {
		return new Shape.Remark("glyph-missing", Severity.BLOCKING, Point.ORIGIN,
				NLS.bind(Messages.WordingStep_missing,
						new Object[] { face.fullName(), missing.label(), missing.index() + 1 }),
				Messages.WordingStep_missingCure);
	}

	private static Shape.Remark loosePiece(Words.LoosePiece loose) {
		return new Shape.Remark("loose-piece", Severity.CAUTION, loose.place(),
				NLS.bind(Messages.WordingStep_loose, loose.letter()), Messages.WordingStep_looseCure);
	}
}
