package org.frisket.editing;

import static org.frisket.editing.RandomEdits.anyOf;
import static org.frisket.editing.RandomEdits.maker;

import java.util.List;

import org.frisket.editing.arranging.Box;
import org.frisket.editing.wording.ChangeBridges;
import org.frisket.editing.wording.ChangeFlow;
import org.frisket.editing.wording.ChangeHold;
import org.frisket.editing.wording.ChangePen;
import org.frisket.editing.wording.ChangeSpan;
import org.frisket.editing.wording.ChangeWording;
import org.frisket.editing.wording.NudgeLetters;
import org.frisket.editing.wording.RepeatForLines;
import org.frisket.editing.wording.TypeWording;
import org.frisket.model.Alignment;
import org.frisket.model.BarKind;
import org.frisket.model.Flow;
import org.frisket.model.Jobs;
import org.frisket.model.Matrix;
import org.frisket.model.PenStyle;

/** Edits of what is written. */
final class WordingMakers {

	private WordingMakers() {
	}

	static void list() {
		maker(ChangeFlow.class, anyOf(
				(job, c) -> c.wording(job, w -> ChangeFlow.to(w, c.of(Flow.values()), Matrix.translation(c.signed(), c.signed()))),
				(job, c) -> c.wording(job, w -> c.outline(job, path -> ChangeFlow.along(w, path))),
				(job, c) -> c.wording(job, w -> ChangeFlow.arcRadius(w, c.length())),
				(job, c) -> c.wording(job, w -> ChangeFlow.arcAngle(w, c.signed())),
				(job, c) -> c.wording(job, w -> ChangeFlow.arc(w, c.length(), c.signed())),
				(job, c) -> c.wording(job, w -> ChangeFlow.arcInside(w, c.coin())),
				(job, c) -> c.wording(job, w -> ChangeFlow.arcInward(w, c.coin())),
				(job, c) -> c.wording(job, w -> ChangeFlow.pathStart(w, c.signed())),
				(job, c) -> c.wording(job, w -> ChangeFlow.pathReversed(w, c.coin())),
				(job, c) -> c.wording(job, w -> ChangeFlow.pathHanging(w, c.coin())),
				(job, c) -> c.wording(job, w -> ChangeFlow.box(w, c.length(), c.length()))));
		maker(ChangeHold.class, anyOf((job, c) -> c.wording(job, w -> ChangeHold.ties(w, c.coin())),
				(job, c) -> c.wording(job, w -> ChangeHold.tieWidth(w, c.length())),
				(job, c) -> c.wording(job, w -> ChangeHold.addBar(w, c.of(BarKind.values()), c.signed(), c.length())),
				(job, c) -> c.wording(job, w -> ChangeHold.removeBar(w, c.below(2))),
				(job, c) -> c.wording(job, w -> ChangeHold.barKind(w, c.below(2), c.of(BarKind.values()))),
				(job, c) -> c.wording(job, w -> ChangeHold.barThickness(w, c.below(2), c.length())),
				(job, c) -> c.wording(job, w -> ChangeHold.barOffset(w, c.below(2), c.signed())),
				(job, c) -> c.wording(job, w -> ChangeHold.barOverhang(w, c.below(2), c.signed()))));
		maker(ChangeBridges.class, anyOf(
				(job, c) -> c.wording(job, w -> ChangeBridges.add(w,
						new ChangeBridges.Place(c.below(5), c.signed(), c.signed(), c.below(5), c.signed(), c.signed()), c.length())),
				(job, c) -> c.wording(job, w -> ChangeBridges.move(w, c.below(3),
						new ChangeBridges.Place(c.below(5), c.signed(), c.signed(), c.below(5), c.signed(), c.signed()))),
				(job, c) -> c.wording(job, w -> ChangeBridges.remove(w, c.below(3))),
				(job, c) -> c.wording(job, w -> ChangeBridges.widths(w, c.length())),
				(job, c) -> c.wording(job, w -> ChangeBridges.stencil(w, c.length() / 20)),
				(job, c) -> c.wording(job, w -> ChangeBridges.island(c.of(ChangeBridges.Change.values()), w, c.below(5),
						c.below(2), List.of(c.signed(), c.signed()))),
				(job, c) -> c.wording(job, w -> ChangeBridges.count(w, c.below(5), c.below(4))),
				(job, c) -> c.wording(job, ChangeBridges::byRule)));
		maker(ChangePen.class, anyOf((job, c) -> c.wording(job, w -> ChangePen.style(w, c.of(PenStyle.values()))),
				(job, c) -> c.wording(job, w -> ChangePen.hatchSpacing(w, c.length())),
				(job, c) -> c.wording(job, w -> ChangePen.hatchAngle(w, c.signed())),
				(job, c) -> c.wording(job, w -> ChangePen.hatchInset(w, c.length()))));
		maker(ChangeSpan.class, anyOf(
				(job, c) -> c.wording(job,
						w -> ChangeSpan.font(w, c.below(9), c.below(12), c.coin() ? null : Jobs.font(c.word(), null, null, null))),
				(job, c) -> c.wording(job, w -> ChangeSpan.height(w, c.below(9), c.below(12), c.length())),
				(job, c) -> c.wording(job, w -> ChangeSpan.features(w, c.below(9), c.below(12), c.of("smcp", "-kern,onum", null)))));
		maker(ChangeWording.class, anyOf((job, c) -> c.wording(job, w -> ChangeWording.text(w, c.word())),
				(job, c) -> c.wording(job, w -> ChangeWording.font(w, Jobs.font(c.word(), null, null, null))),
				(job, c) -> c.wording(job, w -> ChangeWording.height(w, 1 + c.length())),
				(job, c) -> c.wording(job, w -> ChangeWording.lineSpacing(w, 1 + c.length() / 50)),
				(job, c) -> c.wording(job, w -> ChangeWording.tracking(w, c.signed())),
				(job, c) -> c.wording(job, w -> ChangeWording.wordSpacing(w, c.signed())),
				(job, c) -> c.wording(job, w -> ChangeWording.measure(w, c.length())),
				(job, c) -> c.wording(job, w -> ChangeWording.features(w, c.of("smcp", "-liga", null))),
				(job, c) -> c.wording(job, w -> ChangeWording.axes(w, c.of("wght=700", ""))),
				(job, c) -> c.wording(job, w -> ChangeWording.embolden(w, c.signed() / 50)),
				(job, c) -> c.wording(job, w -> ChangeWording.alignment(w, c.of(Alignment.values()))),
				(job, c) -> c.wording(job, w -> ChangeWording.kerning(w, c.coin())),
				(job, c) -> c.wording(job, w -> ChangeWording.ligatures(w, c.coin())),
				(job, c) -> c.wording(job, w -> ChangeWording.join(w, c.length() / 20)),
				(job, c) -> c.wording(job, ChangeWording::part)));
		maker(NudgeLetters.class, anyOf(
				(job, c) -> c.wording(job, w -> NudgeLetters.move(w,
						NudgeLetters.each(c.letters(w), NudgeLetters.By.move(c.signed(), c.signed())))),
				(job, c) -> c.wording(job, w -> NudgeLetters.turn(w, c.letters(w), c.signed())),
				(job, c) -> c.wording(job, w -> NudgeLetters.scale(w, c.letters(w), c.factor())),
				(job, c) -> c.wording(job, w -> NudgeLetters.back(w, c.letters(w)))));
		maker(RepeatForLines.class, (job, c) -> c.wording(job, w -> new RepeatForLines(c.coin() ? List.of(w) : c.some(job), w,
				List.of(c.word(), c.word(), "Anneke\nTable 4"), new Box(0, 0, c.length(), c.length()), new Box(0, 0, 9, 9))));
		maker(TypeWording.class, anyOf((job, c) -> TypeWording.onto(job, c.newWording(), c.word()),
				(job, c) -> c.wording(job, w -> TypeWording.into(w, c.word()))));
	}
}
