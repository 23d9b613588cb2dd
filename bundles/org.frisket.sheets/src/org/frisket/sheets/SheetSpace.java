package org.frisket.sheets;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.frisket.geometry.Bounds;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Polygons;
import org.frisket.geometry.Tolerance;
import org.frisket.geometry.Transform;
import org.frisket.model.Placement;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * The room on a laid sheet, asked while parts are dragged or turned: what they would lie on there, before anything is
 * changed. A question takes a few milliseconds at most, whatever is on the sheet, once the shapes that are near have
 * been worked out: that is done when they are first come near to, or by {@link #workOut} for all. Not safe for several
 * threads at once.
 */
public final class SheetSpace {

	private static final double FLATTENING = 0.25;
	/** Segments of a quarter of a circle: within 0.01 % of the gap. */
	private static final int ROUND = 32;

	/**
	 * Where parts would come to lie.
	 *
	 * @param overlapped others that they would lie on
	 * @param near       others that they would be nearer to than the gap
	 * @param edge       in mm from the nearest edge of the sheet; below zero if they stood over it
	 * @param inBounds   whether they would keep the margin
	 */
	public record Answer(List<LaidPart> overlapped, List<LaidPart> near, double edge, boolean inBounds) {

		public Answer {
			overlapped = List.copyOf(overlapped);
			near = List.copyOf(near);
		}

		/** Whether nothing is wrong there. */
		public boolean isFree() {
			return overlapped.isEmpty() && near.isEmpty() && inBounds;
		}
	}

	private static final class Shape {
		final LaidPart part;
		/** Among the parts of the sheet. */
		final int order;
		final Geometry geometry;
		private PreparedGeometry prepared;
		private PreparedGeometry core;
		private PreparedGeometry grown;

		Shape(LaidPart part, int order, Geometry geometry) {
			this.part = part;
			this.order = order;
			this.geometry = geometry;
		}

		PreparedGeometry prepared() {
			if (prepared == null) {
				prepared = PreparedGeometryFactory.prepare(geometry);
			}
			return prepared;
		}

		/** Without its rim. */
		PreparedGeometry core(double rim) {
			if (core == null) {
				core = PreparedGeometryFactory.prepare(geometry.buffer(-rim, ROUND));
			}
			return core;
		}

		PreparedGeometry grown(double by) {
			if (grown == null) {
				grown = PreparedGeometryFactory.prepare(geometry.buffer(by, ROUND));
			}
			return grown;
		}
	}

	private final LaidSheet sheet;
	private final double slack;
	private final double gap;
	private final STRtree tree = new STRtree();
	/** Of parts of this sheet and of others that were asked about, as they lie. */
	private final Map<Placement, Shape> shapes = new IdentityHashMap<>();

	private SheetSpace(LaidSheet sheet, Tolerance tolerance) {
		this.sheet = sheet;
		this.slack = tolerance.mm();
		this.gap = sheet.sheet().getGap();
		for (LaidPart part : sheet.parts()) {
			Shape shape = shape(part);
			tree.insert(shape.geometry.getEnvelopeInternal(), shape);
		}
		tree.build();
	}

	public static SheetSpace of(LaidSheet sheet, Tolerance tolerance) {
		return new SheetSpace(sheet, tolerance);
	}

	/**
	 * Works out at once all that questions need, away from the thread of a screen.
	 *
	 * @throws java.util.concurrent.CancellationException if the monitor cancels
	 */
	public SheetSpace workOut(Monitor monitor) {
		for (LaidPart part : sheet.parts()) {
			monitor.check();
			shape(part).prepared();
			shape(part).core(2 * slack);
			if (gap > slack) {
				shape(part).grown(gap - slack);
			}
		}
		return this;
	}

	private Shape shape(LaidPart part) {
		Shape known = shapes.get(part.placement());
		if (known == null || known.part != part) {
			known = new Shape(part, shapes.size(), Polygons.of(part.room(), slack * FLATTENING));
			shapes.put(part.placement(), known);
		}
		return known;
	}

	/**
	 * One part at another place, of this sheet or another.
	 *
	 * @param x    of the centre of its bounds in mm, as a placement has it; {@code y} likewise
	 * @param turn in degrees, clockwise as seen
	 */
	public Answer at(LaidPart part, double x, double y, double turn) {
		Transform there = LaidSheets.place(part.part().room(), x, y, turn);
		return moved(List.of(part), part.place().inverse().then(there));
	}

	/** Parts moved together; they are not compared with each other. @param by in the frame of the sheet */
	public Answer moved(Collection<LaidPart> parts, Transform by) {
		Set<Placement> own = Collections.newSetFromMap(new IdentityHashMap<>());
		parts.forEach(part -> own.add(part.placement()));
		Map<Placement, Shape> overlapped = new IdentityHashMap<>();
		Map<Placement, Shape> near = new IdentityHashMap<>();
		AffineTransformation move = new AffineTransformation(by.a(), by.c(), by.e(), by.b(), by.d(), by.f());
		double edge = Double.POSITIVE_INFINITY;
		for (LaidPart part : parts) {
			Geometry there = move.transform(shape(part).geometry);
			Envelope box = there.getEnvelopeInternal();
			edge = Math.min(edge, edge(sheet, new Bounds(box.getMinX(), box.getMinY(), box.getMaxX(), box.getMaxY())));
			Envelope around = new Envelope(box);
			around.expandBy(gap);
			for (Object found : tree.query(around)) {
				Shape other = (Shape) found;
				Placement placement = other.part.placement();
				if (own.contains(placement) || overlapped.containsKey(placement)) {
					continue;
				}
				if (overlaps(other, there)) {
					overlapped.put(placement, other);
					near.remove(placement);
				} else if (gap > slack && other.grown(gap - slack).intersects(there)) {
					near.put(placement, other);
				}
			}
		}
		return new Answer(inOrder(overlapped), inOrder(near), edge, edge >= sheet.sheet().getMargin() - slack);
	}

	private static List<LaidPart> inOrder(Map<Placement, Shape> shapes) {
		return shapes.values().stream().sorted(Comparator.comparingInt(shape -> shape.order)).map(shape -> shape.part)
				.toList();
	}

	/** By more than the tolerance: what touches lies on nothing. */
	private boolean overlaps(Shape other, Geometry there) {
		return other.prepared().intersects(there) && other.core(2 * slack).intersects(there);
	}

	/** How far a box is from the nearest edge; below zero if it stands over one. */
	static double edge(LaidSheet sheet, Bounds box) {
		return Math.min(Math.min(box.minX(), box.minY()),
				Math.min(sheet.sheet().getWidth() - box.maxX(), sheet.sheet().getHeight() - box.maxY()));
	}

	/** The parts whose boxes come within the gap of this one's; of those on the sheet only what comes after it. */
	List<LaidPart> after(LaidPart part) {
		Envelope around = new Envelope(shape(part).geometry.getEnvelopeInternal());
		around.expandBy(gap);
		List<Shape> after = new ArrayList<>();
		for (Object found : tree.query(around)) {
			if (((Shape) found).order > shape(part).order) {
				after.add((Shape) found);
			}
		}
		after.sort(Comparator.comparingInt(shape -> shape.order));
		return after.stream().map(shape -> shape.part).toList();
	}

	boolean overlap(LaidPart one, LaidPart other) {
		return overlaps(shape(one), geometry(other));
	}

	/** Its room and all that is nearer to it than the gap. */
	Geometry grown(LaidPart part) {
		return gap > 0 ? shape(part).geometry.buffer(gap, ROUND) : shape(part).geometry;
	}

	/** Within the tolerance of its room. */
	Geometry geometry(LaidPart part) {
		return shape(part).geometry;
	}
}
