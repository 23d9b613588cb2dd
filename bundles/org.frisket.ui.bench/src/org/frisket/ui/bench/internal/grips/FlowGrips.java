package org.frisket.ui.bench.internal.grips;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.DragTracker;
import org.eclipse.gef.GraphicalViewer;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.commands.CommandStackEvent;
import org.eclipse.gef.editparts.LayerManager;
import org.frisket.geometry.Bounds;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.model.Wording;
import org.frisket.prepare.wording.WordingPath;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.editor.BenchDocument;
import org.frisket.ui.bench.internal.figures.BoxFigure;
import org.frisket.ui.bench.internal.figures.GripFigure;
import org.frisket.ui.bench.internal.nodes.LivePicture;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.parts.JobPart;
import org.frisket.ui.bench.internal.parts.Selection;

/**
 * Round grips on a wording that is alone selected, by which is changed what its lines run along or are fitted into. They
 * stand where the letters are seen, also while these follow a drag.
 */
public final class FlowGrips {

	private final GraphicalViewer viewer;
	private final BenchDocument document;
	private final LivePicture live;
	private final Map<FlowGrip, GripFigure> shown = new EnumMap<>(FlowGrip.class);
	private final BoxFigure box = new BoxFigure();
	private ElementPart part;
	private boolean away;

	/** @param pictures has a picture made of a job as it would be, which nobody changes any more */
	public FlowGrips(GraphicalViewer viewer, BenchDocument document, CanvasZoom zoom, Consumer<Job> pictures) {
		this.viewer = viewer;
		this.document = document;
		live = new LivePicture(document, pictures);
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
	public Map<FlowGrip, GripFigure> shown() {
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
		part = movable.size() == 1 && !away ? movable.get(0) : null;
		Optional<Wording> wording = Optional.ofNullable(part).map(this::seen);
		Transform toJob = part == null ? Transform.IDENTITY : part.picture().placement().then(part.shift());
		Bounds letters = wording.isEmpty() ? Bounds.EMPTY : letters();
		for (FlowGrip grip : FlowGrip.values()) {
			wording.flatMap(w -> grip.place(w, letters)).map(toJob::apply).ifPresentOrElse(place -> show(grip, place),
					() -> hide(grip));
		}
		showBox(wording.flatMap(w -> FlowGrip.box(w, letters)), toJob);
	}

	/** As it is in the job that the picture is of; null if the part is of something else. */
	private Wording seen(ElementPart of) {
		if (!(of.element() instanceof Wording wording)) {
			return null;
		}
		return Optional.ofNullable(document.picture().prepared())
				.flatMap(prepared -> Jobs.element(prepared.job(), wording.getId()))
				// an element that is gone by now may have had the same id
				.filter(Wording.class::isInstance).map(Wording.class::cast).orElse(wording);
	}

	/** Around the letters as they are seen, in the wording's own frame. */
	private Bounds letters() {
		Transform placement = part.picture().placement();
		return placement.determinant() == 0 ? Bounds.EMPTY
				: part.picture().curves().transformed(placement.inverse()).bounds();
	}

	private void show(FlowGrip grip, Point place) {
		GripFigure figure = shown.computeIfAbsent(grip, g -> {
			GripFigure made = new GripFigure(true, () -> tracker(g));
			made.setCursor(g.cursor());
			layer().add(made);
			return made;
		});
		figure.put(pixels(place.x()), pixels(place.y()));
	}

	private void hide(FlowGrip grip) {
		if (shown.containsKey(grip)) {
			layer().remove(shown.remove(grip));
		}
	}

	private void showBox(Optional<Bounds> bounds, Transform toJob) {
		if (bounds.isEmpty()) {
			if (box.getParent() != null) {
				box.getParent().remove(box);
			}
			return;
		}
		Bounds b = bounds.get();
		int[] corners = Stream.of(new Point(b.minX(), b.minY()), new Point(b.maxX(), b.minY()),
				new Point(b.maxX(), b.maxY()), new Point(b.minX(), b.maxY())).map(toJob::apply)
				.flatMap(corner -> Stream.of(pixels(corner.x()), pixels(corner.y()))).mapToInt(Integer::intValue).toArray();
		box.show(corners);
		if (box.getParent() == null) {
			// below the grips
			layer().add(box, 0);
		}
	}

	private DragTracker tracker(FlowGrip grip) {
		return switch (grip) {
		case ARC -> new ArcTracker(viewer, zoom(), part, live);
		case PATH -> new PathTracker(viewer, zoom(), part, WordingPath.of((Wording) part.element()).orElseThrow(), live);
		case BOX_WIDTH, BOX_HEIGHT -> new BoxTracker(viewer, zoom(), part, grip == FlowGrip.BOX_WIDTH, live);
		};
	}

	private int pixels(double mm) {
		return (int) Math.round(mm * zoom().pixelsPerMm());
	}

	private CanvasZoom zoom() {
		return ((JobPart) viewer.getContents()).zoom();
	}

	private IFigure layer() {
		return LayerManager.Helper.find(viewer.getContents()).getLayer(LayerConstants.HANDLE_LAYER);
	}
}
