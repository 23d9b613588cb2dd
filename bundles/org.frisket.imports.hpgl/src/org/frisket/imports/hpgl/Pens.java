package org.frisket.imports.hpgl;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;

import org.eclipse.osgi.util.NLS;
import org.frisket.geometry.Contour;
import org.frisket.geometry.Outline;
import org.frisket.geometry.OutlineBuilder;
import org.frisket.geometry.Point;
import org.frisket.geometry.Transform;
import org.frisket.geometry.clean.FillRule;
import org.frisket.imports.ImportedLayer;
import org.frisket.imports.ImportedShape;

/**
 * What the pens draw. What one of them draws without being lifted is one shape; it is closed if it ends where it began.
 * Each pen makes a layer. While a polygon is recorded, moves go there.
 */
final class Pens {

	/** How far cubics may lie from arcs, in mm. */
	private static final double DEVIATION = 0.001;

	private final double step;
	private final Scale scale = new Scale();
	private final Map<Integer, List<ImportedShape>> shapes = new TreeMap<>();
	private int pen = 1;
	private boolean down;
	/** In the numbers of instructions. */
	private Point at = Point.ORIGIN;
	/** What is being drawn, and where it began; null while nothing is. */
	private OutlineBuilder line;
	private Point lineStart;
	/** The polygon being recorded; null outside. */
	private OutlineBuilder polygon;
	private Outline polygonBuffer = Outline.EMPTY;

	/** @param step length of a plotter unit in mm */
	Pens(double step) {
		this.step = step;
	}

	/** Pens go back to where they start only if the plotter begins anew. */
	void reset(boolean anew) {
		finish();
		scale.reset();
		polygon = null;
		polygonBuffer = Outline.EMPTY;
		if (anew) {
			down = false;
			at = Point.ORIGIN;
		}
	}

	/** Number 0 puts the pen away; it changes nothing here. */
	void select(int number) {
		finish();
		if (number > 0) {
			pen = number;
		}
	}

	/** The pen stays where it is on the sheet. */
	void rescale(Consumer<Scale> change) {
		finish();
		Point place = scale.transform().apply(at);
		change.accept(scale);
		try {
			at = scale.transform().inverse().apply(place);
		} catch (ArithmeticException e) {
			at = Point.ORIGIN;
		}
	}

	boolean isDown() {
		return down;
	}

	void setDown(boolean down) {
		if (!down) {
			finish();
		}
		this.down = down;
	}

	Point at() {
		return at;
	}

	void moveTo(Point to) {
		if (polygon != null) {
			if (!down) {
				polygon.close();
				polygon.moveTo(to);
			} else {
				polygon.lineTo(to);
			}
		} else if (down) {
			line().lineTo(to);
		} else {
			finish();
		}
		at = to;
	}

	/** Draws if the pen is down, else only goes to the end. */
	void arc(Point centre, double sweep) {
		Point radius = at.minus(centre);
		Point end = Math.abs(sweep) == 2 * Math.PI ? at : centre.plus(Transform.rotation(sweep).apply(radius));
		if (!down) {
			moveTo(end);
		} else if (radius.length() > 0) {
			OutlineBuilder on = line();
			on.arcAround(centre, radius.length(), radius.length(), 0, Math.atan2(radius.y(), radius.x()), sweep);
			on.lineTo(end);
		}
		at = end;
	}

	/** Draws if the pen is down, else only goes to the end. */
	void curve(Point control1, Point control2, Point end) {
		if (down) {
			line().cubicTo(control1, control2, end);
			at = end;
		} else {
			moveTo(end);
		}
	}

	/** Draws whether the pen is down or not, and leaves it where it is. */
	void circle(double radius) {
		if (polygon != null) {
			circle(polygon, radius);
			polygon.moveTo(at);
		} else {
			finish();
			OutlineBuilder circle = builder();
			circle(circle, radius);
			edge(circle.build());
		}
	}

	private void circle(OutlineBuilder builder, double radius) {
		builder.startArc(at, radius, radius, 0, 0, 2 * Math.PI);
		builder.close();
	}

	/** For arcs as fine as the scale asks. */
	OutlineBuilder builder() {
		Transform t = toMillimetres();
		double stretch = Math.max(Math.hypot(t.a(), t.b()), Math.hypot(t.c(), t.d()));
		return new OutlineBuilder(stretch == 0 ? DEVIATION : DEVIATION / stretch);
	}

	private Transform toMillimetres() {
		return scale.transform().then(Transform.scaling(step, -step));
	}

	/** What is drawn on; begun here if need be. */
	private OutlineBuilder line() {
		if (polygon != null) {
			return polygon;
		}
		if (line == null) {
			line = builder();
			line.moveTo(at);
			lineStart = at;
		}
		return line;
	}

	/** What was drawn since the pen was put down becomes a shape. */
	void finish() {
		if (line != null) {
			if (at.equals(lineStart)) {
				line.close();
			}
			edge(line.build());
			line = null;
		}
	}

	/** Draws an outline as a line. */
	void edge(Outline outline) {
		if (!outline.isEmpty()) {
			add(new ImportedShape.Lines("", outline.transformed(toMillimetres()), 0, ""));
		}
	}

	/** Draws an outline as an area. */
	void fill(Outline outline) {
		List<Contour> closed = outline.contours().stream().filter(Contour::isClosed).toList();
		if (!closed.isEmpty()) {
			add(new ImportedShape.Area("", new Outline(closed).transformed(toMillimetres()), FillRule.EVEN_ODD, ""));
		}
	}

	private void add(ImportedShape shape) {
		shapes.computeIfAbsent(pen, number -> new ArrayList<>()).add(shape);
	}

	/** @param mode 0 begins a polygon, 1 ends one of its parts, 2 ends it */
	void polygonMode(int mode) {
		if (mode == 0) {
			finish();
			polygon = builder();
			polygon.moveTo(at);
		} else if (polygon != null) {
			polygon.close();
			if (mode == 2) {
				polygonBuffer = polygon.build();
				polygon = null;
			} else {
				// the next move is to where the next part begins, whether the pen is down or not
				down = false;
			}
		}
	}

	/** The polygon recorded last; empty if none was. */
	Outline polygon() {
		return polygonBuffer;
	}

	/** All that was drawn, a layer for each pen in the order of their numbers. */
	List<ImportedLayer> layers() {
		finish();
		List<ImportedLayer> layers = new ArrayList<>();
		shapes.forEach((number, drawn) -> layers.add(new ImportedLayer(NLS.bind(Messages.Plotter_layer, number), "", drawn)));
		return layers;
	}
}
