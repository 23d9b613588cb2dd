package org.frisket.ui.bench.internal.snap;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.GraphicalViewer;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Point;
import org.frisket.geometry.Segment;
import org.frisket.geometry.snap.SnapGrid;
import org.frisket.geometry.snap.SnapKind;
import org.frisket.geometry.snap.Snapper;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;
import org.frisket.ui.bench.internal.parts.ElementPart;
import org.frisket.ui.bench.internal.parts.JobPart;
import org.frisket.ui.bench.internal.parts.Selection;
import org.frisket.ui.bench.internal.surface.GridStep;
import org.frisket.ui.bench.internal.surface.SurfaceOption;

/** What can hold a dragged thing on a bench: what is seen there, and is switched on. */
public final class Snapping {

	private static final String KEY = "org.frisket.ui.bench.snapping"; //$NON-NLS-1$

	private final GraphicalViewer viewer;
	private final Job job;

	public Snapping(GraphicalViewer viewer, Job job) {
		this.viewer = viewer;
		this.job = job;
		viewer.setProperty(KEY, this);
	}

	/** The snapping of a viewer of the bench. */
	public static Snapping of(EditPartViewer viewer) {
		return (Snapping) viewer.getProperty(KEY);
	}

	/** A drag of elements; neither they nor the mats that follow them hold anything. */
	public SnapDrag begin(Collection<ElementPart> moved) {
		return new SnapDrag(viewer, builder(moved, true).build());
	}

	/**
	 * A drag in a path; neither its element nor the mats that follow that hold anything.
	 *
	 * @param path  the element; none if it is only being drawn
	 * @param nodes those nodes of the path that hold all the same, in mm
	 */
	public SnapDrag beginPath(Optional<ElementPart> path, Collection<Point> nodes) {
		Snapper.Builder builder = builder(path.stream().toList(), true);
		if (SurfaceOption.SNAP.isOn() && holds(SnapKind.NODE)) {
			nodes.forEach(builder::node);
		}
		return new SnapDrag(viewer, builder.build());
	}

	/** A drag of a guide, which other guides do not hold. */
	public SnapDrag beginGuide() {
		return new SnapDrag(viewer, builder(List.of(), false).build());
	}

	private Snapper.Builder builder(Collection<ElementPart> moved, boolean withGuides) {
		Snapper.Builder builder = new Snapper.Builder();
		if (!SurfaceOption.SNAP.isOn() || !(viewer.getContents() instanceof JobPart sheet)) {
			return builder;
		}
		if (withGuides && holds(SnapKind.GUIDE) && SurfaceOption.GUIDES.isOn()) {
			job.getGuides().forEach(guide -> builder.guide(guide.isAcross(), guide.getAt()));
		}
		if (holds(SnapKind.GRID) && SurfaceOption.GRID.isOn()) {
			builder.grid(new SnapGrid(GridStep.shown().millimetres(), sheet.sheet()));
		}
		if (holds(SnapKind.EDGE)) {
			builder.edges(sheet.sheet());
		}
		if (holds(SnapKind.CENTRE)) {
			builder.centre(sheet.sheet());
		}
		addElements(builder, moved);
		return builder;
	}

	private void addElements(Snapper.Builder builder, Collection<ElementPart> moved) {
		List<ElementPart> all = Selection.all(viewer);
		Set<Element> carried = carried(all, moved);
		boolean edges = holds(SnapKind.EDGE);
		boolean centres = holds(SnapKind.CENTRE);
		boolean nodes = holds(SnapKind.NODE);
		for (ElementPart part : all) {
			if (carried.contains(part.element())) {
				continue;
			}
			if (edges) {
				builder.edges(part.boundsInMm());
			}
			if (centres) {
				builder.centre(part.boundsInMm());
			}
			// those of a mat are made by the machine, and are far too many
			if (nodes && !Jobs.isFollower(part.element())) {
				addNodes(builder, part);
			}
		}
	}

	private static void addNodes(Snapper.Builder builder, ElementPart part) {
		for (Contour contour : part.picture().curves().contours()) {
			if (!contour.isEmpty() && !contour.isClosed()) {
				builder.node(part.shift().apply(contour.start()));
			}
			for (Segment segment : contour.segments()) {
				builder.node(part.shift().apply(segment.end()));
			}
		}
	}

	/** The moved elements, and whatever follows any of them, directly or through others. */
	private static Set<Element> carried(List<ElementPart> all, Collection<ElementPart> moved) {
		Set<Element> carried = new HashSet<>();
		moved.forEach(part -> carried.add(part.element()));
		boolean grew = true;
		while (grew) {
			grew = false;
			for (ElementPart part : all) {
				grew |= Jobs.sources(part.element()).stream().anyMatch(carried::contains) && carried.add(part.element());
			}
		}
		return carried;
	}

	private static boolean holds(SnapKind kind) {
		return SurfaceOption.of(kind).isOn();
	}
}
