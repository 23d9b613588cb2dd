package org.frisket.editing.wording;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Nudge;
import org.frisket.model.TextChange;
import org.frisket.model.Wording;

/**
 * Moves, turns or scales single letters of a wording away from where they were set, each about its own middle. A letter
 * is the part of the text that it stands for: several characters for a ligature or a letter with accents.
 */
public final class NudgeLetters extends RecordingEdit {

	/** Least and greatest scale of a letter. */
	public static final double LEAST_SCALE = 0.05;
	public static final double GREATEST_SCALE = 20;

	/**
	 * What is added to a letter's nudge.
	 *
	 * @param dx    mm to the right along its line
	 * @param dy    mm down
	 * @param turn  degrees, clockwise to the viewer
	 * @param scale a factor
	 */
	public record By(double dx, double dy, double turn, double scale) {

		public static final By NOTHING = new By(0, 0, 0, 1);

		public static By move(double dx, double dy) {
			return new By(dx, dy, 0, 1);
		}

		public static By turn(double degrees) {
			return new By(0, 0, degrees, 1);
		}

		public static By scale(double factor) {
			return new By(0, 0, 0, factor);
		}

		private boolean isSound() {
			return Double.isFinite(dx) && Double.isFinite(dy) && Double.isFinite(turn) && Double.isFinite(scale)
					&& scale > 0;
		}
	}

	/** A letter, and what is added to its nudge. */
	public record Step(TextChange.Part letter, By by) {
	}

	private final Wording wording;
	private final List<Step> steps;
	private final boolean back;

	private NudgeLetters(String name, Wording wording, List<Step> steps, boolean back) {
		super(name);
		this.wording = wording;
		this.steps = List.copyOf(steps);
		this.back = back;
	}

	/** Moves letters, each by mm of its own frame: on a curve that is turned with it. */
	public static NudgeLetters move(Wording wording, List<Step> steps) {
		return new NudgeLetters(of(Messages.NudgeLetters_moveOne, Messages.NudgeLetters_move, steps.size()), wording,
				steps, false);
	}

	/** Turns letters by degrees, clockwise to the viewer. */
	public static NudgeLetters turn(Wording wording, List<TextChange.Part> letters, double degrees) {
		return new NudgeLetters(of(Messages.NudgeLetters_turnOne, Messages.NudgeLetters_turn, letters.size()), wording,
				each(letters, By.turn(degrees)), false);
	}

	/** Scales letters by a factor; none gets smaller or larger than letters may. */
	public static NudgeLetters scale(Wording wording, List<TextChange.Part> letters, double factor) {
		return new NudgeLetters(of(Messages.NudgeLetters_scaleOne, Messages.NudgeLetters_scale, letters.size()),
				wording, each(letters, By.scale(factor)), false);
	}

	/** Puts letters back where they were set. */
	public static NudgeLetters back(Wording wording, List<TextChange.Part> letters) {
		return new NudgeLetters(of(Messages.NudgeLetters_backOne, Messages.NudgeLetters_back, letters.size()), wording,
				each(letters, By.NOTHING), true);
	}

	/** The same added to each of several letters. */
	public static List<Step> each(List<TextChange.Part> letters, By by) {
		return letters.stream().map(letter -> new Step(letter, by)).toList();
	}

	/** What a letter is nudged by now; of a ligature's characters each may have a nudge, and they add up. */
	public static By of(Wording wording, TextChange.Part letter) {
		By sum = By.NOTHING;
		for (Nudge nudge : wording.getNudges()) {
			if (isOf(nudge, letter)) {
				sum = new By(sum.dx + nudge.getDx(), sum.dy + nudge.getDy(), sum.turn + nudge.getTurn(),
						sum.scale * nudge.getScale());
			}
		}
		return sum;
	}

	private static String of(String one, String several, int letters) {
		return letters == 1 ? one : NLS.bind(several, letters);
	}

	@Override
	public boolean canApply() {
		return Targets.free(wording) && steps.stream().allMatch(step -> step.by.isSound() && isInText(step.letter))
				&& steps.stream().anyMatch(this::changes);
	}

	private boolean isInText(TextChange.Part letter) {
		return letter.start() >= 0 && letter.start() < letter.end()
				&& letter.end() <= LetterMarks.textOf(wording).length();
	}

	private boolean changes(Step step) {
		if (back) {
			return wording.getNudges().stream().anyMatch(nudge -> isOf(nudge, step.letter));
		}
		By now = of(wording, step.letter);
		return !sum(now, step.by).equals(now);
	}

	private static boolean isOf(Nudge nudge, TextChange.Part letter) {
		return nudge.getIndex() >= letter.start() && nudge.getIndex() < letter.end();
	}

	/** Moves and turns as a person reads them, without what is left of adding; whole turns are none. */
	private static By sum(By now, By more) {
		double turn = Math.IEEEremainder(rounded(now.turn + more.turn), 360);
		double scale = more.scale == 1 ? now.scale
				: Math.max(LEAST_SCALE, Math.min(GREATEST_SCALE, rounded(now.scale * more.scale)));
		return new By(rounded(now.dx + more.dx), rounded(now.dy + more.dy), turn == -180 ? 180 : turn + 0.0, scale);
	}

	private static double rounded(double value) {
		double steps = 1e6;
		// beyond this there is nothing after the point to round
		return Math.abs(value) > 1e9 ? value : Math.rint(value * steps) / steps + 0.0;
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(wording);
	}

	@Override
	protected void change() {
		for (Step step : steps) {
			if (!back && !changes(step)) {
				continue;
			}
			By after = back ? By.NOTHING : sum(of(wording, step.letter), step.by);
			put(step.letter, after);
		}
	}

	/** One nudge for the letter, or none; nudges stand in the order of the text. */
	private void put(TextChange.Part letter, By by) {
		Optional<Nudge> kept = wording.getNudges().stream().filter(nudge -> isOf(nudge, letter)).findFirst();
		wording.getNudges().removeIf(nudge -> isOf(nudge, letter) && (by.equals(By.NOTHING) || nudge != kept.get()));
		if (by.equals(By.NOTHING)) {
			return;
		}
		Nudge nudge = kept.orElseGet(FrisketFactory.INSTANCE::createNudge);
		nudge.setDx(by.dx);
		nudge.setDy(by.dy);
		nudge.setTurn(by.turn);
		nudge.setScale(by.scale);
		if (kept.isEmpty()) {
			nudge.setIndex(letter.start());
			int at = (int) wording.getNudges().stream().sorted(Comparator.comparingInt(Nudge::getIndex))
					.takeWhile(other -> other.getIndex() < letter.start()).count();
			wording.getNudges().add(Math.min(at, wording.getNudges().size()), nudge);
		}
	}
}
