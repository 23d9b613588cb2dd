package org.frisket.prepare.internal;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Memory;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Outline;
import org.frisket.geometry.Point;
import org.frisket.geometry.Region;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.CleanResult;
import org.frisket.geometry.clean.FillRule;
import org.frisket.geometry.clean.OutlineCleaner;
import org.frisket.model.Wording;
import org.frisket.prepare.Severity;
import org.frisket.prepare.Uncleaned;
import org.frisket.typography.Alignment;
import org.frisket.typography.FontFace;
import org.frisket.typography.Joiner;
import org.frisket.typography.MissingGlyph;
import org.frisket.typography.SetText;
import org.frisket.typography.Setting;
import org.frisket.typography.TextSetter;

/** A wording to one clean region: set, joined if asked, united. */
final class WordingStep {

	private WordingStep() {
	}

	/** @param memory of what became of letters that lie together */
	static Shape shape(Wording wording, SetText text, List<Shape.Remark> fontRemarks, Memory memory, Tolerance tolerance,
			Monitor monitor) {
		List<Shape.Remark> remarks = new ArrayList<>(fontRemarks);
		for (MissingGlyph missing : text.missing()) {
			remarks.add(missing(missing, text.face()));
		}
		Outline letters = text.outline();
		CleanResult clean = new OutlineCleaner(memory).clean(letters, FillRule.NON_ZERO, tolerance, monitor);
		Region region = clean.region();
		if (wording.isJoined()) {
			for (Words.LoosePiece loose : Words.loosePieces(text, region)) {
				remarks.add(loosePiece(loose));
			}
		}
		return new Shape(region, List.of(), new Uncleaned(letters, clean.repairs(), Transform.IDENTITY), remarks);
	}

	/** The letters of a wording where they stand in its own frame, joined if it asks for it. */
	static SetText text(Wording wording, FontFace face, Tolerance tolerance, Monitor monitor) {
		SetText text = TextSetter.set(wording.getText(), face, setting(wording), monitor);
		return wording.isJoined() ? Joiner.join(text, wording.getTouch(), tolerance, monitor).text() : text;
	}

	static Setting setting(Wording wording) {
		Alignment alignment = switch (wording.getAlignment()) {
		case LEFT -> Alignment.LEFT;
		case CENTRE -> Alignment.CENTRE;
		case RIGHT -> Alignment.RIGHT;
		};
		return Setting.ofCapHeight(wording.getHeight()).withLineSpacing(wording.getLineSpacing() / Setting.LINE_DISTANCE)
				.withTracking(wording.getTracking()).withAlignment(alignment).withKerning(wording.isKerning())
				.withLigatures(wording.isLigatures());
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
