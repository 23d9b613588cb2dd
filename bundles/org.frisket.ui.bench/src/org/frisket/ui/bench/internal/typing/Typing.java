package org.frisket.ui.bench.internal.typing;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.gef.DragTracker;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.Request;
import org.eclipse.gef.commands.CommandStack;
import org.eclipse.gef.commands.CommandStackEvent;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.frisket.editing.elements.DeleteElements;
import org.frisket.geometry.Point;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Wording;
import org.frisket.prepare.wording.CaretPlace;
import org.frisket.typography.TextSetter;
import org.frisket.ui.bench.TextRange;
import org.frisket.ui.bench.internal.editor.EditCommand;
import org.frisket.ui.bench.internal.figures.CaretFigure;
import org.frisket.ui.bench.internal.figures.RangeFigure;
import org.frisket.ui.bench.internal.parts.Selection;

/**
 * Wordings are typed on the bench itself. All that is typed until the caret leaves is one step of undo; the picture
 * follows as it is made. The caret leaves with Escape, with a press of the button elsewhere, and before any other
 * change of the job.
 */
public final class Typing {

	private static final String KEY = "org.frisket.ui.bench.typing"; //$NON-NLS-1$

	private final GraphicalViewer viewer;
	private final CommandStack stack;
	private final TypingHost host;
	private final TypingStep step;
	private final EmptyBench empty;
	private final TypingPointer pointer;
	private final TypedRange range;

	private Wording wording;
	private TypedText text;
	private WordingCaret caret;
	/** Whether it is this that changes the job just now. */
	private boolean own;

	public Typing(GraphicalViewer viewer, Job job, CommandStack stack, TypingHost host) {
		this.viewer = viewer;
		this.stack = stack;
		this.host = host;
		step = new TypingStep(job, stack);
		empty = new EmptyBench(viewer, job);
		range = new TypedRange(host);
		viewer.setProperty(KEY, this);
		Control control = viewer.getControl();
		control.addListener(SWT.KeyDown, new TypingKeys(this));
		pointer = new TypingPointer(viewer, this);
		control.addListener(SWT.MouseDown, pointer::pressed);
		control.addListener(SWT.MouseDoubleClick, pointer::pressedTwice);
		ElementSelection elements = new ElementSelection(viewer, this);
		viewer.addSelectionChangedListener(event -> elements.changed());
		stack.addCommandStackEventListener(this::stackEvent);
	}

	/** The typing of a viewer; null if nothing can be typed there. */
	public static Typing of(EditPartViewer viewer) {
		return (Typing) viewer.getProperty(KEY);
	}

	/** Whether there is a caret on the bench. */
	public boolean isActive() {
		return text != null;
	}

	/** The wording that is typed; in no job yet while it is empty. */
	public Wording wording() {
		return wording;
	}

	/** The words typed so far; null if there is no caret. */
	public String text() {
		return text == null ? null : text.text();
	}

	/** The caret as it is seen; null if there is none. */
	public CaretFigure caret() {
		return caret == null ? null : caret.figure();
	}

	/** The letters that are selected in a wording that lies in the job; empty if none are. */
	public Optional<TextRange> range() {
		return TypedRange.of(wording, text);
	}

	/** The letters as they are seen selected; null if there is no caret. */
	public RangeFigure rangeFigure() {
		return caret == null ? null : caret.rangeFigure();
	}

	/** Begins a new wording with its first letter at a place in mm. */
	public void begin(Point place) {
		end(false);
		wording = NewWording.at(place);
		begin(""); //$NON-NLS-1$
	}

	/** Begins a new wording where there is room for it. */
	public void begin() {
		begin(openPlace());
	}

	/** Where something new begins: at the left of an empty sheet, otherwise at the left of what is seen; in mm. */
	public Point openPlace() {
		return empty.openPlace();
	}

	/** Puts the caret at the end of a wording that lies on the bench; not if it is locked. */
	public void edit(Wording existing) {
		Layer layer = Jobs.layerOf(existing);
		if (layer == null || layer.isLocked()) {
			return;
		}
		end(false);
		wording = existing;
		begin(existing.getText() == null ? "" : existing.getText()); //$NON-NLS-1$
		host.follow(existing.getId());
	}

	private void begin(String words) {
		text = new TypedText(words, TextSetter.LONGEST_TEXT);
		viewer.deselectAll();
		viewer.getControl().setFocus();
		host.setTyping(true);
		caret = new WordingCaret(viewer);
		showCaret();
	}

	/** Puts characters in at the caret. */
	public void insert(String characters) {
		change(t -> host.say(t.insert(characters) ? null
				: NLS.bind(Messages.Typing_tooLong, TextSetter.LONGEST_TEXT)));
	}

	/** Takes the character after the caret away. */
	public void deleteAfter() {
		change(TypedText::deleteAfter);
	}

	/** Selects all that is typed. */
	public void selectAll() {
		change(TypedText::selectAll);
	}

	public boolean hasSelection() {
		return isActive() && text.hasSelection();
	}

	/** The selected letters, or all where none are. */
	public String copied() {
		return text.hasSelection() ? text.selected() : text.text();
	}

	/** Takes the selected letters away. */
	public void deleteSelection() {
		change(TypedText::deleteSelection);
	}

	/** Moves the caret, and selects what it passes if the selection is to be extended. */
	void move(Consumer<TypedText> by, boolean extending) {
		change(t -> {
			if (extending) {
				t.extend(by);
			} else {
				by.accept(t);
				t.release();
			}
		});
	}

	void change(Consumer<TypedText> change) {
		String before = text.text();
		change.accept(text);
		if (!text.text().equals(before)) {
			own = true;
			try {
				write();
			} finally {
				own = false;
			}
		}
		if (isActive()) {
			showCaret();
		}
	}

	private void write() {
		switch (step.write(wording, text)) {
		case BEGUN -> {
			if (wording.getId() != null) {
				host.follow(wording.getId());
			}
		}
		case WITHDRAWN -> {
			caret.setPlaces(List.of());
			wording = NewWording.like(wording);
		}
		case CONTINUED -> host.retyped();
		}
	}

	/** Takes the caret away and, if asked, selects what was typed. A wording left without words is deleted. */
	public void end(boolean select) {
		if (!isActive()) {
			return;
		}
		boolean emptied = step.hasEmptied(text);
		Wording typed = close();
		if (emptied) {
			stack.undo();
			stack.execute(new EditCommand(new DeleteElements(List.of(typed))));
		} else if (select) {
			Selection.select(viewer, List.of(typed));
		}
	}

	private Wording close() {
		Wording typed = wording;
		caret.remove();
		caret = null;
		text = null;
		step.end();
		wording = null;
		host.follow(null);
		host.setTyping(false);
		host.say(null);
		range.tell(range());
		return typed;
	}

	/** What was worked out for the words that are there now. */
	public void caretsMade(List<CaretPlace> places) {
		if (isActive()) {
			caret.setPlaces(places);
			showCaret();
			caret.reveal();
		}
	}

	private void showCaret() {
		caret.show(wording, text.caret());
		caret.showRange(wording, text.selectionStart(), text.selectionEnd());
		range.tell(range());
	}

	private void stackEvent(CommandStackEvent event) {
		if (own || !isActive()) {
			return;
		}
		if (event.getCommand() instanceof EditCommand command && TypingStep.isOfLetters(command.edit(), wording)) {
			// the caret stays; what is typed from now on is another step
			step.end();
		} else if (event.isPreChangeEvent()) {
			close();
		}
	}

	/** What follows a press of the button within the wording that is typed; null for any other press. */
	public static DragTracker tracker(EditPartViewer viewer, Request request) {
		Typing typing = of(viewer);
		return typing == null ? null : typing.pointer.tracker(request);
	}

	WordingCaret wordingCaret() {
		return caret;
	}

	/** Where the carets of the wording that is typed are. */
	List<Point> places() {
		return caret.places();
	}

	/** Whether a first character begins a wording. */
	boolean isAwaited() {
		return empty.isTypedOn();
	}
}
