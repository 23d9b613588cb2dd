package org.frisket.ui.bench.internal.letters;

import java.text.NumberFormat;
import java.util.List;

import org.eclipse.osgi.util.NLS;
import org.frisket.editing.wording.NudgeLetters;
import org.frisket.editing.wording.NudgeLetters.By;
import org.frisket.editing.wording.NudgeLetters.Step;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.geometry.snap.SnapResult;
import org.frisket.model.Wording;
import org.frisket.prepare.wording.LetterPlace;
import org.frisket.ui.LengthText;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.snap.SnapDrag;

/** What is dragged of the chosen letters. Places of the pointer are mm of the job. */
sealed interface LetterDrag {

	/** Follows the pointer from where it was pressed. */
	void follow(Point pressed, Point pointer, boolean shift, boolean free);

	/** What it comes to, for the wording or a copy of it. */
	NudgeLetters edit(Wording wording);

	/** What is written beside the pointer. */
	String measure();

	/** All of them by the same way, held by the box of the one under the pointer. */
	final class Move implements LetterDrag {

		private final LetterFrames frames;
		private final Bounds box;
		private final CanvasZoom zoom;
		private final SnapDrag snap;
		private Point shift = Point.ORIGIN;

		Move(LetterFrames frames, LetterPlace held, CanvasZoom zoom, SnapDrag snap) {
			this.frames = frames;
			this.zoom = zoom;
			this.snap = snap;
			box = frames.box(held);
		}

		@Override
		public void follow(Point pressed, Point pointer, boolean oneWay, boolean free) {
			Point by = pointer.minus(pressed);
			boolean across = Math.abs(by.x()) >= Math.abs(by.y());
			double dx = oneWay && !across ? 0 : zoom.rounded(by.x());
			double dy = oneWay && across ? 0 : zoom.rounded(by.y());
			Bounds there = new Bounds(box.minX() + dx, box.minY() + dy, box.maxX() + dx, box.maxY() + dy);
			SnapResult held = free ? SnapResult.NONE : snap.snap(there);
			shift = new Point(oneWay && !across ? 0 : dx + held.dx(), oneWay && across ? 0 : dy + held.dy());
			snap.show(held, held.applied(there));
		}

		@Override
		public NudgeLetters edit(Wording wording) {
			Point own = frames.toJob().inverse().apply(shift).minus(frames.toJob().inverse().apply(Point.ORIGIN));
			List<Step> steps = frames.choice().of(frames.letters()).stream().map(letter -> {
				Point along = letter.alongLine(own);
				return new Step(LetterFrames.part(letter), By.move(along.x(), along.y()));
			}).toList();
			return NudgeLetters.move(wording, steps);
		}

		@Override
		public String measure() {
			return LengthText.place(shift.x(), shift.y());
		}
	}

	/** Each about its own middle by whole degrees; Shift keeps to steps of 15. */
	final class Turn implements LetterDrag {

		private static final int WIDE_STEP = 15;

		private final LetterFrames frames;
		private final Point middle;
		private double degrees;

		Turn(LetterFrames frames, LetterPlace lead) {
			this.frames = frames;
			middle = frames.middle(lead);
		}

		@Override
		public void follow(Point pressed, Point pointer, boolean shift, boolean free) {
			Point from = pressed.minus(middle);
			Point to = pointer.minus(middle);
			double turned = Math.toDegrees(Math.atan2(to.y(), to.x()) - Math.atan2(from.y(), from.x()));
			// seen in a mirror, the other way is clockwise
			double way = frames.toJob().determinant() < 0 ? -1 : 1;
			int step = shift ? WIDE_STEP : 1;
			degrees = Math.IEEEremainder(way * Math.rint(turned / step) * step, 360) + 0.0;
		}

		@Override
		public NudgeLetters edit(Wording wording) {
			return NudgeLetters.turn(wording, frames.chosenParts(), degrees);
		}

		@Override
		public String measure() {
			return NLS.bind(Messages.LetterDrag_degrees, NumberFormat.getIntegerInstance().format(degrees));
		}
	}

	/** Each about its own middle by whole percents; Shift keeps to steps of 10. */
	final class Scale implements LetterDrag {

		private static final int WIDE_STEP = 10;

		private final LetterFrames frames;
		private final Point middle;
		private double percent = 100;

		Scale(LetterFrames frames, LetterPlace lead) {
			this.frames = frames;
			middle = frames.middle(lead);
		}

		@Override
		public void follow(Point pressed, Point pointer, boolean shift, boolean free) {
			int step = shift ? WIDE_STEP : 1;
			double wanted = 100 * pointer.distance(middle) / Math.max(1e-9, pressed.distance(middle));
			percent = Math.max(step, Math.rint(wanted / step) * step);
		}

		@Override
		public NudgeLetters edit(Wording wording) {
			return NudgeLetters.scale(wording, frames.chosenParts(), percent / 100);
		}

		@Override
		public String measure() {
			return NLS.bind(Messages.LetterDrag_percent, NumberFormat.getIntegerInstance().format(percent));
		}
	}
}
