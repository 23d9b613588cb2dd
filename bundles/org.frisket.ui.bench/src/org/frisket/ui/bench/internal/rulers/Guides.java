package org.frisket.ui.bench.internal.rulers;

import java.util.List;

import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.commands.CommandStackEvent;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.frisket.editing.Edit;
import org.frisket.editing.arranging.AddGuide;
import org.frisket.editing.arranging.MoveGuide;
import org.frisket.editing.arranging.RemoveGuide;
import org.frisket.model.Guide;
import org.frisket.model.Job;
import org.frisket.ui.LengthText;
import org.frisket.ui.bench.internal.canvas.BenchRootPart;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.editor.EditCommand;

/** The guides of the job on a bench: which one is chosen, and how they are laid, moved and taken away. */
public final class Guides {

	private static final String KEY = "org.frisket.ui.bench.guides"; //$NON-NLS-1$

	private final GraphicalViewer viewer;
	private final Job job;
	private final GuideLayer layer;
	private Guide chosen;

	public Guides(GraphicalViewer viewer, Job job) {
		this.viewer = viewer;
		this.job = job;
		layer = (GuideLayer) LayerManager.Helper.find(viewer.getRootEditPart()).getLayer(GuideLayer.KEY);
		layer.setGuides(this);
		viewer.setProperty(KEY, this);
		viewer.getEditDomain().getCommandStack().addCommandStackEventListener(this::stackEvent);
		viewer.addSelectionChangedListener(event -> choose(null));
		viewer.getControl().addListener(SWT.MouseDown, this::pressed);
	}

	/** The guides of a viewer; null if it shows none. */
	public static Guides of(EditPartViewer viewer) {
		return (Guides) viewer.getProperty(KEY);
	}

	private void stackEvent(CommandStackEvent event) {
		if (event.isPostChangeEvent()) {
			layer.repaint();
		}
	}

	private void pressed(Event event) {
		IFigure figure = ((FigureCanvas) viewer.getControl()).getLightweightSystem().getRootFigure()
				.findFigureAt(event.x, event.y);
		if (figure != layer) {
			choose(null);
		}
	}

	/** All guides of the job, in the order in which they were laid. */
	List<Guide> all() {
		return job.getGuides();
	}

	/** The guide that was clicked; null if none is chosen. */
	public Guide chosen() {
		return chosen != null && job.getGuides().contains(chosen) ? chosen : null;
	}

	void choose(Guide guide) {
		if (chosen != guide) {
			chosen = guide;
			layer.repaint();
		}
	}

	GraphicalViewer viewer() {
		return viewer;
	}

	Job job() {
		return job;
	}

	GuideLayer layer() {
		return layer;
	}

	CanvasZoom zoom() {
		return ((BenchRootPart) viewer.getRootEditPart()).zoom();
	}

	/** Takes the chosen guide away. Says whether there was one. */
	public boolean removeChosen() {
		Guide guide = chosen();
		if (guide != null) {
			execute(new RemoveGuide(guide));
		}
		return guide != null;
	}

	/** Asks for the place of a new guide and lays it there. */
	public void addTyped(boolean across) {
		InputDialog dialog = dialog(Messages.Guides_add, across, ""); //$NON-NLS-1$
		if (dialog.open() == Window.OK) {
			execute(new AddGuide(job, across, PlaceText.parse(dialog.getValue())));
		}
	}

	/** Asks for the exact place of a guide and lays it there. */
	void moveTyped(Guide guide) {
		InputDialog dialog = dialog(Messages.Guides_move, guide.isAcross(), LengthText.of(guide.getAt()));
		if (dialog.open() == Window.OK) {
			execute(new MoveGuide(guide, PlaceText.parse(dialog.getValue())));
		}
	}

	private InputDialog dialog(String title, boolean across, String text) {
		return new InputDialog(viewer.getControl().getShell(), title,
				across ? Messages.Guides_placeAcross : Messages.Guides_placeDown, text, PlaceText::trouble);
	}

	void execute(Edit edit) {
		viewer.getEditDomain().getCommandStack().execute(new EditCommand(edit));
	}
}
