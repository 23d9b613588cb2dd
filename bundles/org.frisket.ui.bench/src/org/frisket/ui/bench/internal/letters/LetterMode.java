package org.frisket.ui.bench.internal.letters;

import java.util.List;
import java.util.Optional;

import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.commands.CommandStack;
import org.eclipse.gef.commands.CommandStackEvent;
import org.frisket.editing.wording.NudgeLetters;
import org.frisket.editing.wording.NudgeLetters.By;
import org.frisket.editing.wording.NudgeLetters.Step;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.TextChange;
import org.frisket.model.Wording;
import org.frisket.prepare.wording.LetterPlace;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.editor.BenchDocument;
import org.frisket.ui.bench.internal.editor.EditCommand;
import org.frisket.ui.bench.internal.nodes.LivePicture;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.parts.JobPart;
import org.frisket.ui.bench.internal.parts.Selection;
import org.frisket.ui.bench.internal.picture.PictureMaker;
import org.frisket.ui.bench.internal.snap.SnapDrag;
import org.frisket.ui.bench.internal.snap.Snapping;

/**
 * The mode in which letters of one wording are nudged. It follows the wording through undo and redo and through other
 * texts, and ends when that can no longer be edited, when another element is selected, and when another tool is taken.
 */
public final class LetterMode {

	/** What the mode asks of the editor. */
	public interface Host {

		/** Has a picture made of a job as it would be, which nobody changes any more. */
		void preview(Job job);

		/** The places of letters are wanted of the wording of this id, now and with every further picture; null for none. */
		void followLetters(String id);

		/** While letters are nudged, some keys mean other things, and the grips of elements are away. */
		void setNudgingLetters(boolean nudging);

		/** Says something to the user; null for nothing. */
		void say(String message);
	}

	private static final String KEY = "org.frisket.ui.bench.letters"; //$NON-NLS-1$

	private final GraphicalViewer viewer;
	private final CommandStack stack;
	private final Host host;
	private final LivePicture live;

	private Wording wording;
	private String text = ""; //$NON-NLS-1$
	private List<LetterPlace> letters = List.of();
	private LetterChoice choice = LetterChoice.NONE;
	private LettersFigure figure;
	private LetterTool tool;
	private Point pointer;

	public LetterMode(GraphicalViewer viewer, BenchDocument document, CommandStack stack, Host host) {
		this.viewer = viewer;
		this.stack = stack;
		this.host = host;
		live = new LivePicture(document, host::preview);
		viewer.setProperty(KEY, this);
		viewer.addSelectionChangedListener(event -> selectionChanged());
		stack.addCommandStackEventListener(this::stackEvent);
	}

	/** Whether the letters of this element are nudged on its bench. */
	public static boolean isOn(EditPartViewer viewer, Element element) {
		return viewer.getProperty(KEY) instanceof LetterMode mode && mode.isActive() && mode.wording == element;
	}

	public boolean isActive() {
		return wording != null;
	}

	/** The wording whose letters are nudged; null if none are. */
	public Wording wording() {
		return wording;
	}

	/** Its letters in its own frame, in the order of the text; none before its picture is there. */
	public List<LetterPlace> letters() {
		return letters;
	}

	public LetterChoice choice() {
		return choice;
	}

	/** Where the grip is that turns the leading letter, in mm of the job. */
	public Optional<Point> turnGrip() {
		return frames().turnGrip();
	}

	/** Where the grip is that scales the leading letter, in mm of the job. */
	public Optional<Point> scaleGrip() {
		return frames().scaleGrip();
	}

	/** What is written beside the pointer; empty if nothing. */
	public String measure() {
		return tool == null ? "" : tool.measure(); //$NON-NLS-1$
	}

	/** Nudges the letters of a wording; not if it is hidden or locked. */
	public void begin(Wording wanted) {
		if (wanted == wording || !isFree(wanted)) {
			return;
		}
		end();
		if (transform(wanted).determinant() == 0) {
			host.say(Messages.LetterMode_flat);
			return;
		}
		wording = wanted;
		text = textOf(wanted);
		Selection.select(viewer, List.of(wanted));
		tool = new LetterTool(this, viewer);
		viewer.getEditDomain().setActiveTool(tool);
		viewer.getControl().setFocus();
		figure = LettersFigure.over(viewer, zoom());
		host.say(null);
		host.setNudgingLetters(true);
		host.followLetters(wanted.getId());
		refresh();
		refreshPart(wanted);
	}

	private static boolean isFree(Element element) {
		return Jobs.jobOf(element) != null && Jobs.isShown(element) && !Jobs.isLocked(element);
	}

	private static String textOf(Wording wording) {
		return wording.getText() == null ? "" : wording.getText(); //$NON-NLS-1$
	}

	/** Goes back to whole elements; the wording is selected still. */
	public void end() {
		if (!isActive()) {
			return;
		}
		Wording nudged = wording;
		LetterTool taken = tool;
		wording = null;
		tool = null;
		letters = List.of();
		choice = LetterChoice.NONE;
		host.followLetters(null);
		live.stop(false);
		figure.remove();
		figure = null;
		if (viewer.getEditDomain().getActiveTool() == taken) {
			viewer.getEditDomain().loadDefaultTool();
		}
		host.setNudgingLetters(false);
		refreshPart(nudged);
	}

	private void refreshPart(Wording shown) {
		if (viewer.getEditPartRegistry().get(shown) instanceof ElementPart part && part.getParent() != null) {
			part.refresh();
		}
	}

	/** What was worked out for the wording as it is, or as it would be after the drag. */
	public void lettersMade(List<LetterPlace> places) {
		if (isActive()) {
			letters = places;
			refresh();
		}
	}

	/** Chooses letters, and no others. */
	public void choose(LetterChoice chosen) {
		choice = chosen;
		refresh();
	}

	/** Moves the chosen letters by mm of the job. */
	public void nudge(double dx, double dy) {
		Transform toOwn = transform(wording).inverse();
		Point own = toOwn.apply(new Point(dx, dy)).minus(toOwn.apply(Point.ORIGIN));
		execute(NudgeLetters.move(wording, choice.of(letters).stream().map(letter -> {
			Point along = letter.alongLine(own);
			return new Step(LetterFrames.part(letter), By.move(along.x(), along.y()));
		}).toList()));
	}

	/** Does what a key asks for. */
	public void act(LetterAct act) {
		switch (act) {
		case NEXT, PREVIOUS -> step(act == LetterAct.NEXT);
		case BACK -> execute(NudgeLetters.back(wording, frames().chosenParts()));
		default -> execute(act.degrees() != 0 ? NudgeLetters.turn(wording, frames().chosenParts(), act.degrees())
				: NudgeLetters.scale(wording, frames().chosenParts(), act.factor()));
		}
	}

	private void step(boolean forward) {
		choose(choice.stepped(letters, forward));
		choice.lead(letters).ifPresent(letter -> zoom().reveal(frames().middle(letter)));
	}

	void execute(NudgeLetters edit) {
		boolean changes = edit.canApply();
		live.stop(changes);
		if (changes) {
			stack.execute(new EditCommand(edit));
		}
	}

	/** Shows the wording, and what follows it, as a drag would leave it. */
	void preview(LetterDrag drag) {
		String id = wording.getId();
		live.show(job -> Jobs.element(job, id).filter(Wording.class::isInstance).map(Wording.class::cast)
				.map(drag::edit).filter(NudgeLetters::canApply).ifPresent(NudgeLetters::apply));
	}

	/** Shows the wording as it is. */
	void endPreview() {
		live.stop(false);
	}

	/** @param place in mm of the job; null if the pointer has left */
	void pointerAt(Point place) {
		pointer = place;
		refresh();
	}

	private void refresh() {
		if (figure != null && isActive()) {
			figure.show(frames(), pointer);
		}
	}

	LetterFrames frames() {
		return new LetterFrames(letters, choice, transform(wording), zoom().pixelsPerMm());
	}

	CanvasZoom zoom() {
		return ((JobPart) viewer.getContents()).zoom();
	}

	private static Transform transform(Wording wording) {
		return PictureMaker.transform(wording.getTransform());
	}

	/** A drag of letters, which neither their wording nor what follows that holds. */
	SnapDrag snapping() {
		return Snapping.of(viewer)
				.begin(Selection.all(viewer).stream().filter(part -> part.element() == wording).toList());
	}

	private void stackEvent(CommandStackEvent event) {
		if (!event.isPostChangeEvent() || !isActive()) {
			return;
		}
		if (!isFree(wording) || transform(wording).determinant() == 0) {
			end();
			return;
		}
		tool.giveUpDrag();
		live.stop(true);
		if (!textOf(wording).equals(text)) {
			choice = choice.follow(TextChange.between(text, textOf(wording)));
			text = textOf(wording);
			// those of the other text come with its picture
			letters = List.of();
		}
		refresh();
	}

	private void selectionChanged() {
		List<Element> selected = Selection.elements(viewer);
		if (isActive() && !selected.isEmpty() && !selected.contains(wording)) {
			end();
		}
	}
}
