package org.frisket.ui.bench.internal.looks;

import java.util.Map;

import org.eclipse.gef.EditPart;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.swt.widgets.Event;
import org.frisket.ui.bench.internal.canvas.BenchRootPart;
import org.frisket.ui.bench.internal.editor.BenchDocument;

/** How one bench looks at its job now, and what that takes. */
public final class Looks {

	private static final String KEY = "org.frisket.ui.bench.looks"; //$NON-NLS-1$

	private final GraphicalViewer viewer;
	private final BenchDocument document;
	private final Runnable changed;
	private final CleaningJob cleaning;
	private final LookLayer layer;
	private final HeldKey beforeKey;
	private final Runnable pictureListener = this::pictureMade;
	private BenchLook look = BenchLook.PREVIEW;
	/** What {@link BenchLook#BEFORE} was switched on from. */
	private BenchLook other = BenchLook.PREVIEW;
	private Map<String, CleaningPicture> before = Map.of();

	/** @param changed called when another look was chosen */
	public Looks(GraphicalViewer viewer, BenchDocument document, Runnable changed) {
		this.viewer = viewer;
		this.document = document;
		this.changed = changed;
		cleaning = new CleaningJob(viewer.getControl().getDisplay(), this::cleaningFound);
		layer = ((BenchRootPart) viewer.getRootEditPart()).lookLayer();
		layer.setLegend(graphics -> new Legend(this, viewer, document).paint(graphics, layer));
		beforeKey = new HeldKey(viewer.getControl(), this::toggleBefore);
		viewer.setProperty(KEY, this);
		document.addPictureListener(pictureListener);
		document.tried().addListener(this::triedChanged);
	}

	/** How a viewer looks at its job. */
	public static BenchLook look(EditPartViewer viewer) {
		return viewer.getProperty(KEY) instanceof Looks looks ? looks.look() : BenchLook.PREVIEW;
	}

	/** What an element was before it was cleaned; null while that is not known, or not asked for. */
	public static CleaningPicture before(EditPartViewer viewer, String id) {
		return viewer.getProperty(KEY) instanceof Looks looks && looks.look() == BenchLook.BEFORE
				&& !looks.document.tried().isSeen() ? looks.before.get(id) : null;
	}

	/** How the job is seen now: before an edit that is weighed, it is seen as it was drawn. */
	public BenchLook look() {
		return document.tried().isThere() && !document.tried().isSeen() ? BenchLook.BEFORE : look;
	}

	/** The look that was chosen. */
	BenchLook chosen() {
		return look;
	}

	/** Looks as it was remembered; as it does now if nothing of use was. */
	public void restore(String remembered) {
		for (BenchLook each : BenchLook.values()) {
			if (each.name().equals(remembered)) {
				show(each);
			}
		}
	}

	public void show(BenchLook chosen) {
		if (look == chosen) {
			return;
		}
		if (chosen == BenchLook.BEFORE) {
			other = look;
		}
		look = chosen;
		pictureMade();
		refresh();
		changed.run();
	}

	/**
	 * To the look before cleaning, or from there back to what it was switched on from; while an edit is weighed, to the job
	 * without it and back. Only for as long as a key is held, if it is held.
	 *
	 * @param trigger what asked for it; may be null
	 */
	public void toggleBefore(Event trigger) {
		beforeKey.press(trigger);
	}

	private void toggleBefore() {
		if (document.tried().isThere()) {
			// what is weighed is the nearer question
			document.tried().toggle();
			return;
		}
		show(look == BenchLook.BEFORE ? other : BenchLook.BEFORE);
	}

	/** Whether it is known what every element was before cleaning. */
	public boolean isBeforeKnown() {
		return !before.isEmpty() || document.picture().elements().isEmpty();
	}

	Map<String, CleaningPicture> before() {
		return before;
	}

	private void triedChanged() {
		pictureMade();
		refresh();
		changed.run();
	}

	private void pictureMade() {
		if (look() == BenchLook.BEFORE) {
			cleaning.request(document.picture().prepared());
		}
		if (look() != BenchLook.PREVIEW) {
			// the layer lies over the whole bench, and nothing of it would be spared
			layer.repaint();
		}
	}

	private void cleaningFound(Map<String, CleaningPicture> found) {
		before = found;
		if (look() == BenchLook.BEFORE && !viewer.getControl().isDisposed()) {
			refresh();
		}
	}

	private void refresh() {
		EditPart contents = viewer.getContents();
		if (contents != null) {
			contents.refresh();
			for (Object part : contents.getChildren()) {
				((EditPart) part).refresh();
			}
		}
		layer.repaint();
	}

	public void close() {
		document.removePictureListener(pictureListener);
		cleaning.close();
	}
}
