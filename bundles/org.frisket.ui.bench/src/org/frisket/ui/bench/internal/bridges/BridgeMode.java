package org.frisket.ui.bench.internal.bridges;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.commands.CommandStack;
import org.eclipse.gef.commands.CommandStackEvent;
import org.eclipse.swt.widgets.Display;
import org.frisket.editing.wording.ChangeBridges;
import org.frisket.geometry.Point;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.model.Bridge;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.Wording;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.fonts.FontLibraries;
import org.frisket.prepare.wording.BridgeEdits;
import org.frisket.prepare.wording.Bridgework;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.editor.BenchDocument;
import org.frisket.ui.bench.internal.editor.EditCommand;
import org.frisket.ui.bench.internal.parts.JobPart;
import org.frisket.ui.bench.internal.parts.Selection;
import org.frisket.ui.bench.internal.picture.PictureMaker;

/**
 * The mode in which the bridges of one wording are set by hand. It follows the wording through undo and redo, and ends
 * when that can no longer be edited, when another element is selected, and when another tool is taken.
 */
public final class BridgeMode {

	/** What the mode asks of the editor. */
	public interface Host {

		/** While bridges are set, the grips of elements are away. */
		void setSettingBridges(boolean setting);

		/** Says something to the user; null for nothing. */
		void say(String message);
	}

	private static final String KEY = "org.frisket.ui.bench.bridges"; //$NON-NLS-1$

	private final GraphicalViewer viewer;
	private final BenchDocument document;
	private final CommandStack stack;
	private final Host host;
	private final JobPreparer preparer = new JobPreparer(FontLibraries.installed());

	private Wording wording;
	private Bridgework work = Bridgework.NOTHING;
	private boolean upToDate;
	private Point chosen;
	private BridgesFigure figure;
	private BridgeTool tool;
	private Job measuring;

	public BridgeMode(GraphicalViewer viewer, BenchDocument document, CommandStack stack, Host host) {
		this.viewer = viewer;
		this.document = document;
		this.stack = stack;
		this.host = host;
		viewer.setProperty(KEY, this);
		viewer.addSelectionChangedListener(event -> selectionChanged());
		stack.addCommandStackEventListener(this::stackEvent);
	}

	/** Whether bridges are set in this viewer. */
	public static boolean isOn(EditPartViewer viewer) {
		return viewer.getProperty(KEY) instanceof BridgeMode mode && mode.isActive();
	}

	public boolean isActive() {
		return wording != null;
	}

	/** Whether what is shown is that of the wording as it is. */
	public boolean isUpToDate() {
		return isActive() && upToDate;
	}

	/** What holds the wording, as far as it is known; in its own frame. */
	public Bridgework work() {
		return work;
	}

	/** What is written beside the pointer; empty if nothing. */
	public String measure() {
		return tool == null ? "" : tool.measure(); //$NON-NLS-1$
	}

	/** The bridge that is chosen, if there is one where it was. */
	public Optional<BridgeEdits.Held> chosen() {
		return chosen == null ? Optional.empty() : BridgeEdits.at(work, chosen, reach());
	}

	/** Sets the bridges of a wording; not if it is hidden or locked. */
	public void begin(Wording wanted) {
		if (wanted == wording || !isFree(wanted)) {
			return;
		}
		end();
		wording = wanted;
		Selection.select(viewer, List.of(wording));
		tool = new BridgeTool(this, viewer);
		viewer.getEditDomain().setActiveTool(tool);
		viewer.getControl().setFocus();
		figure = BridgesFigure.over(viewer, zoom());
		host.say(null);
		host.setSettingBridges(true);
		measure(wording);
	}

	private static boolean isFree(Element element) {
		return Jobs.jobOf(element) != null && Jobs.isShown(element) && !Jobs.isLocked(element)
				&& PictureMaker.transform(element.getTransform()).determinant() != 0;
	}

	/** Goes back to whole elements; the wording is selected still. */
	public void end() {
		if (!isActive()) {
			return;
		}
		BridgeTool taken = tool;
		wording = null;
		tool = null;
		chosen = null;
		work = Bridgework.NOTHING;
		figure.remove();
		measuring.cancel();
		if (viewer.getEditDomain().getActiveTool() == taken) {
			viewer.getEditDomain().loadDefaultTool();
		}
		host.setSettingBridges(false);
	}

	/** Asks for what holds the wording as it is now. */
	private void measure(Wording now) {
		upToDate = false;
		if (measuring != null) {
			measuring.cancel();
		}
		Display display = viewer.getControl().getDisplay();
		org.frisket.model.Job snapshot = document.snapshot();
		String id = now.getId();
		measuring = Job.create(Messages.BridgeMode_measuring, monitor -> {
			try {
				Bridgework found = Jobs.element(snapshot, id).filter(Wording.class::isInstance).map(Wording.class::cast)
						.map(copy -> preparer.bridgework(copy, Tolerance.DEFAULT, monitor::isCanceled))
						.orElse(Bridgework.NOTHING);
				if (!display.isDisposed()) {
					display.asyncExec(() -> measured(now, found, monitor.isCanceled()));
				}
				return Status.OK_STATUS;
			} catch (CancellationException e) {
				return Status.CANCEL_STATUS;
			} catch (RuntimeException | LinkageError bug) {
				ILog.of(BridgeMode.class).error(Messages.BridgeMode_failed, bug);
				return Status.OK_STATUS;
			}
		});
		measuring.setSystem(true);
		measuring.setPriority(Job.SHORT);
		measuring.schedule();
	}

	private void measured(Wording of, Bridgework found, boolean overtaken) {
		if (wording == of && !overtaken) {
			work = found;
			upToDate = true;
			refresh();
			host.say(BridgeEdits.all(work).isEmpty() && work.islands().isEmpty() ? Messages.BridgeMode_none : null);
		}
	}

	CanvasZoom zoom() {
		return ((JobPart) viewer.getContents()).zoom();
	}

	Transform toJob() {
		return PictureMaker.transform(wording.getTransform());
	}

	/** A place of the job in mm as one of the wording's own frame. */
	Point toOwn(Point job) {
		return toJob().inverse().apply(job);
	}

	/** How near to a bridge it is taken hold of, in mm of the wording's own frame. */
	double reach() {
		return BridgesFigure.REACH_PX / zoom().pixelsPerMm() / Math.sqrt(Math.abs(toJob().determinant()));
	}

	/** @param place in the own frame; null for none */
	void choose(Point place) {
		chosen = place;
		refresh();
	}

	/** Adds a bridge at a place of the own frame. */
	void add(Point place) {
		BridgeEdits.add(wording, work, place, width()).ifPresent(edit -> execute(edit, place));
	}

	/** As the one that was set last, or as the ties of dots. */
	private double width() {
		List<Bridge> bridges = wording.getBridges();
		return bridges.isEmpty() ? wording.getTieWidth() : bridges.get(bridges.size() - 1).getWidth();
	}

	void move(BridgeEdits.Held held, Point goal) {
		BridgeEdits.move(wording, work, held, goal).ifPresent(edit -> execute(edit, goal));
	}

	/** Takes the chosen bridge away. */
	public void removeChosen() {
		chosen().flatMap(held -> BridgeEdits.remove(wording, held)).ifPresent(edit -> execute(edit, null));
	}

	private void execute(ChangeBridges edit, Point then) {
		chosen = then;
		stack.execute(new EditCommand(edit));
	}

	/** Shows where a bridge that is dragged is to go, in the own frame. */
	void preview(BridgeEdits.Held held, Point goal) {
		figure.show(work, toJob(), held, held, goal);
	}

	void refresh() {
		if (isActive()) {
			figure.show(work, toJob(), chosen().orElse(null), null, null);
		}
	}

	private void stackEvent(CommandStackEvent event) {
		if (event.isPostChangeEvent() && isActive()) {
			if (isFree(wording)) {
				tool.giveUpDrag();
				measure(wording);
			} else {
				end();
			}
		}
	}

	private void selectionChanged() {
		List<Element> selected = Selection.elements(viewer);
		if (isActive() && !selected.isEmpty() && !selected.contains(wording)) {
			end();
		}
	}
}
