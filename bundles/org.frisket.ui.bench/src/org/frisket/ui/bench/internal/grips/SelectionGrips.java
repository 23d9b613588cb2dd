package org.frisket.ui.bench.internal.grips;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.commands.CommandStackEvent;
import org.eclipse.gef.editparts.LayerManager;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.model.Mat;
import org.frisket.model.WeedLines;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.editor.BenchDocument;
import org.frisket.ui.bench.internal.figures.GripFigure;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.parts.JobPart;
import org.frisket.ui.bench.internal.parts.Selection;

/**
 * Shows grips around what is selected and keeps them there. Elements have eight and one to turn them by; a mat alone,
 * which is derived, has four that change its distance; mats that follow what is selected have none.
 */
public final class SelectionGrips {

	private static final int AWAY_PX = 10;
	private static final int STEM_PX = 34;

	private final GraphicalViewer viewer;
	private final Map<Grip, GripFigure> shown = new EnumMap<>(Grip.class);
	private List<ElementPart> parts = List.of();
	private boolean away;
	private Bounds box = Bounds.EMPTY;

	public SelectionGrips(GraphicalViewer viewer, BenchDocument document, CanvasZoom zoom) {
		this.viewer = viewer;
		viewer.addSelectionChangedListener(event -> refresh());
		document.addPictureListener(this::refresh);
		viewer.getEditDomain().getCommandStack().addCommandStackEventListener(this::stackEvent);
		zoom.addListener(factor -> refresh());
	}

	private void stackEvent(CommandStackEvent event) {
		if (event.isPostChangeEvent()) {
			refresh();
		}
	}

	/** The grips that are seen. */
	public Map<Grip, GripFigure> shown() {
		return Map.copyOf(shown);
	}

	/** Takes the grips away for a time, or brings them back. */
	public void setAway(boolean isAway) {
		away = isAway;
		refresh();
	}

	private void refresh() {
		if (viewer.getControl() == null || viewer.getControl().isDisposed()) {
			return;
		}
		List<ElementPart> movable = Selection.movableParts(viewer);
		List<ElementPart> own = movable.stream().filter(part -> !(part.element() instanceof Mat)
				&& !(part.element() instanceof WeedLines)).toList();
		boolean isMat = own.isEmpty() && movable.size() == 1 && movable.get(0).element() instanceof Mat;
		parts = isMat ? movable : own;
		box = parts.stream().map(ElementPart::boundsInMm).reduce(Bounds.EMPTY, Bounds::with);
		for (Grip grip : Grip.values()) {
			boolean wanted = !away && !box.isEmpty() && (!isMat || grip.isSide());
			if (wanted) {
				show(grip);
			} else if (shown.containsKey(grip)) {
				layer().remove(shown.remove(grip));
			}
		}
	}

	private void show(Grip grip) {
		GripFigure figure = shown.get(grip);
		if (figure == null) {
			figure = new GripFigure(grip == Grip.TURN, () -> tracker(grip));
			figure.setCursor(grip.cursor());
			layer().add(figure);
			shown.put(grip, figure);
		}
		double scale = zoom().pixelsPerMm();
		Point place = grip.on(box);
		int away = grip == Grip.TURN ? STEM_PX : AWAY_PX;
		figure.put((int) Math.round(place.x() * scale) + grip.across() * away,
				(int) Math.round(place.y() * scale) + grip.down() * away);
	}

	private DragTracker tracker(Grip grip) {
		if (parts.get(0).element() instanceof Mat) {
			return new DistanceTracker(viewer, zoom(), grip, box, parts.get(0));
		}
		return grip == Grip.TURN ? new TurnTracker(viewer, zoom(), box, parts)
				: new ScaleTracker(viewer, zoom(), grip, box, parts);
	}

	private CanvasZoom zoom() {
		return ((JobPart) viewer.getContents()).zoom();
	}

	private IFigure layer() {
		return LayerManager.Helper.find(viewer.getContents()).getLayer(LayerConstants.HANDLE_LAYER);
	}
}
